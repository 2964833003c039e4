"""The page on three sizes of screen and on a wide one: what fits, what sticks, what a finger can hit."""

from pathlib import Path
from typing import Any

import expected
import pytest
from playwright.sync_api import Page, expect
from reading import assert_numbers, cell, drawn, settled, sheet
from visits import DESKTOP, PHONE, ROOT, SIZES, TABLET, Visit

RESULTS = ROOT / "test-results"
FINGER_PX = 44
LEAST_TARGET_PX = 24
LEAST_SLIDER_PX = 140
MOST_SHIFT = 0.02
LINK = "#family=n&band=2m&power_w=400"


def screenshot(page: Page, name: str) -> Path:
    """Save what the page looks like, for people to look at."""
    RESULTS.mkdir(exist_ok=True)
    path = RESULTS / f"{name}.png"
    page.screenshot(path=path)
    return path


@pytest.mark.parametrize("size", SIZES)
def test_page_is_as_wide_as_the_screen(visit: Visit, size: str) -> None:
    """On every size of screen the page itself does not scroll sideways, with and without a sheet."""
    page = settled(visit(**SIZES[size]))
    if size == "phone":
        page.get_by_role("button", name="Whole table").tap()
    widths = "() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]"

    first = page.evaluate(widths)
    screenshot(page, f"first-{size}")
    cell(page, "n", "160m").click()
    drawn(page)
    screenshot(page, f"derivation-{size}")

    assert first[0] <= first[1]
    scrolled, own = page.evaluate(widths)
    assert scrolled <= own


def test_whole_width_of_the_matrix_is_on_a_tablet(visit: Visit) -> None:
    """Sixteen bands and nineteen families lie between the edges of a tablet's screen."""
    page = settled(visit(**TABLET))

    edges = page.evaluate(
        """() => readers.everywhere('td[data-family]').map((one) => one.getBoundingClientRect())
          .map(({left, right}) => [left, right])"""
    )

    assert len(edges) == len(expected.asked("catalogue")["families"]) * expected.TABLET_COLUMNS
    assert all(left >= 0 and right <= TABLET["viewport"]["width"] for left, right in edges)


def test_numbers_fit_their_cells(visit: Visit) -> None:
    """No number is cut off by its cell on a tablet, at any power level."""
    page = settled(visit("#vswr=20&mode=carrier&power_w=1500", **TABLET))

    cut = page.evaluate(
        """() => readers.everywhere('td[data-family]').filter((one) => one.scrollWidth > one.clientWidth)
          .map((one) => one.textContent)"""
    )

    assert cut == []


def test_finger_hits_every_cell_of_a_tablet(visit: Visit) -> None:
    """Every cell, and every head of a row or column, is at least 44 px wide and high on a tablet."""
    page = settled(visit(**TABLET))

    buttons = page.get_by_role("grid").locator("button, td")
    sizes = buttons.evaluate_all(
        "(all) => all.map((one) => one.getBoundingClientRect()).map(({width, height}) => [width, height])"
    )

    assert min(width for width, _ in sizes) >= FINGER_PX
    assert min(height for _, height in sizes) >= FINGER_PX


@pytest.mark.parametrize("size", SIZES)
def test_every_control_is_large_enough(visit: Visit, size: str) -> None:
    """Everything that can be pressed is at least 24 px wide and high, in the page and in a derivation."""
    page = visit(LINK, **SIZES[size])
    drawn(page)

    small = page.evaluate(
        """(least) => readers.everywhere('button, select, summary, input:not([type=radio]), label:has(input)')
          .filter((one) => one.checkVisibility() && !(one.matches('[type=checkbox]') && one.closest('label')))
          .map((one) => [one.outerHTML.slice(0, 60), one.getBoundingClientRect()])
          .filter(([, {width, height}]) => width < least || height < least)
          .map(([markup, {width, height}]) => `${markup}: ${width} x ${height}`)""",
        LEAST_TARGET_PX,
    )

    assert small == []


@pytest.mark.parametrize("size", ["tablet", "desktop"])
def test_band_heads_stay_in_sight(visit: Visit, size: str) -> None:
    """With the last family in sight, the heads of the bands are still on the screen and nothing covers them."""
    page = settled(visit(**SIZES[size]))

    cell(page, "2_92mm", "160m").scroll_into_view_if_needed()
    page.wait_for_function(f"({UNCOVERED})", arg="th[data-band='160m'] button")

    assert page.evaluate(UNCOVERED, "th[data-family='2_92mm'] button")


def test_band_heads_come_along_on_a_phone(visit: Visit) -> None:
    """On a phone, whose matrix scrolls sideways, heads of bands and families stay in sight at the far corner too."""
    page = settled(visit(**PHONE))
    page.get_by_role("button", name="Whole table").tap()

    cell(page, "2_92mm", "3cm").scroll_into_view_if_needed()
    page.wait_for_function(f"({UNCOVERED})", arg="th[data-band='3cm'] button")

    assert page.evaluate(UNCOVERED, "th[data-family='2_92mm'] button")
    assert page.evaluate(UNCOVERED, "td[data-family='2_92mm'][data-band='3cm']")


def test_head_of_a_phone_s_matrix_begins_in_its_place(visit: Visit) -> None:
    """Before any scrolling the heads of the bands stand at the top of the matrix."""
    page = settled(visit(**PHONE))
    page.get_by_role("button", name="Whole table").tap()

    gaps = page.evaluate(
        """() => ['.frame', 'thead th'].map((one) => readers.everywhere('jw-matrix')[0].shadowRoot.querySelector(one))
          .map((one) => one.getBoundingClientRect().top)"""
    )

    assert gaps[1] == pytest.approx(gaps[0], abs=2)


@pytest.mark.parametrize("size", ["tablet", "desktop"])
def test_sliders_have_room(visit: Visit, size: str) -> None:
    """A slider is long enough to be aimed at, also on a tablet held upright."""
    page = settled(visit(**SIZES[size]))

    lengths = [slider.bounding_box()["width"] for slider in page.get_by_role("slider").all()]

    assert len(lengths) == 2
    assert min(lengths) >= LEAST_SLIDER_PX


def test_marks_stand_in_the_chosen_row_alone(visit: Visit) -> None:
    """Cells are number and colour; the row of a chosen cell has its marks, and their words stand below the table."""
    page = settled(visit())
    marks = page.locator("jw-matrix td .marks")
    expect(marks).to_have_count(0)

    cell(page, "bnc", "70cm").click()
    drawn(page)

    expect(marks).to_have_count(expected.TABLET_COLUMNS)
    expect(page.locator("tr:has(th[data-family=bnc]) .marks")).to_have_count(expected.TABLET_COLUMNS)
    levels = page.locator("jw-marks ol li")
    assert levels.evaluate_all("(all) => all.map((one) => one.querySelector('b').textContent)") == [
        expected.printed(expected.matrix_of(), power)[2 * expected.TABLET_COLUMNS + expected.FIRST_BANDS.index("70cm")]
        for power in expected.matrix_of()["powers_w"]
    ]


def test_marks_stand_everywhere_where_they_are_asked_for(visit: Visit) -> None:
    """With "Show marks" every cell has the signs of its checks, and each sign has its words."""
    page = settled(visit("#vswr=3&exposure=exposed"))
    matrix = expected.matrix_of(vswr=3, exposure="exposed")
    level = matrix["powers_w"].index(expected.FIRST_POWER)

    page.get_by_role("button", name="Show marks").click()
    expect(page.locator("jw-matrix td .marks")).to_have_count(len(expected.printed(matrix)))
    signs = page.locator("jw-matrix td .marks b").evaluate_all("(all) => all.map((one) => one.dataset.signs)")

    marked = [levels[level] for row in matrix["marks"] for levels in row]
    undecided = [levels[level] for row in matrix["undecided"] for levels in row]
    assert [len(one.replace("↓", "").replace("?", "")) for one in signs] == [bits.bit_count() for bits in marked]
    assert ["?" in one for one in signs] == undecided
    told = set(page.locator("jw-marks dt").all_text_contents())
    assert {sign for one in signs for sign in one} <= told


UNCOVERED = """(selector) => {
  const [element] = readers.everywhere(selector);
  const {left, top, width, height} = element.getBoundingClientRect();
  let at = document.elementFromPoint(left + width / 2, top + height / 2);
  while (at?.shadowRoot) {
    const inside = at.shadowRoot.elementFromPoint(left + width / 2, top + height / 2);
    if (!inside || inside === at) break;
    at = inside;
  }
  return element.contains(at);
}"""
"""Whether the middle of an element is on the screen with nothing over it."""


def test_focused_cell_is_not_under_the_heads(visit: Visit) -> None:
    """A cell that takes the focus by keyboard lies clear of the sticky heads."""
    page = settled(visit(**DESKTOP))
    cell(page, "2_92mm", "20m").focus()

    for _ in range(18):
        page.keyboard.press("ArrowUp")
        assert page.evaluate(
            f"() => {{ readers.focused().setAttribute('data-here', ''); const seen = ({UNCOVERED})('[data-here]');"
            " readers.focused().removeAttribute('data-here'); return seen; }"
        )


def test_a_phone_lists_one_band(visit: Visit) -> None:
    """A phone shows the connectors on one band with number and word, and steps from band to band."""
    page = settled(visit(**PHONE))
    matrix = expected.matrix_of()

    def on(band: str) -> expected.Numbers:
        return [row[expected.FIRST_BANDS.index(band)] for row in rows_of(matrix)]

    assert_numbers(page, on("20m"))
    page.get_by_role("button", name="Band after").tap()
    assert_numbers(page, on("17m"))
    page.get_by_label("Band in the list").select_option("70cm")
    assert_numbers(page, on("70cm"))

    page.get_by_role("button", name="Whole table").tap()
    assert_numbers(page, expected.printed(matrix))
    page.get_by_role("button", name="One band").tap()
    assert_numbers(page, on("70cm"))


def rows_of(matrix: Any) -> list[expected.Numbers]:
    """What the cells print, row by row."""
    printed, width = expected.printed(matrix), len(matrix["columns"])
    return [printed[at : at + width] for at in range(0, len(printed), width)]


@pytest.mark.parametrize(("across", "band"), [(-200, "17m"), (200, "30m")], ids=["left", "right"])
def test_a_swipe_turns_the_band(visit: Visit, across: int, band: str) -> None:
    """A finger drawn to the left over the list brings the next band, to the right the one before."""
    page = settled(visit(**PHONE))
    session = page.context.new_cdp_session(page)
    cell(page, "n", "20m").scroll_into_view_if_needed()
    x = 195
    y = cell(page, "n", "20m").bounding_box()["y"] + 10

    for kind, at in (("touchStart", x), ("touchMove", x + across / 2), ("touchMove", x + across), ("touchEnd", None)):
        points = [] if at is None else [{"x": min(max(at, 5), 385), "y": y}]
        session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})

    expect(cell(page, "n", band)).to_be_visible()
    expect(cell(page, "n", "20m")).to_have_count(0)


def test_a_chosen_cell_brings_its_band_along(visit: Visit) -> None:
    """A link to a cell shows its band on a phone, and its sheet stands at the bottom."""
    page = visit("#family=n&band=2m", **PHONE)
    drawn(page)

    expect(cell(page, "n", "2m")).to_have_count(1)
    box = sheet(page).bounding_box()
    assert box["y"] > 0
    assert box["y"] + box["height"] == pytest.approx(PHONE["viewport"]["height"], abs=1)


def test_conditions_fold_on_a_phone(visit: Visit) -> None:
    """On a phone the conditions are one line until they are asked for, and work from there."""
    page = settled(visit(**PHONE))
    expect(page.locator("#vswr")).to_be_hidden()

    page.get_by_role("button", name="Conditions").tap()

    expect(page.locator("#vswr")).to_be_visible()
    expect(page.locator("#mode")).to_be_visible()


@pytest.mark.parametrize("link", ["", "#vswr=3&mode=fm"], ids=["first", "link"])
@pytest.mark.parametrize("size", SIZES)
def test_nothing_jumps_while_the_page_loads(visit: Visit, size: str, link: str) -> None:
    """From the first paint to the core's answer the layout shifts by next to nothing."""
    page = settled(visit(link, **SIZES[size]))

    page.evaluate("() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))")

    assert page.evaluate("() => readers.shift()") < MOST_SHIFT
