"""The page on three sizes of screen and on a wide one: what fits, what sticks, what a finger can hit."""

from pathlib import Path

import expected
import pytest
from playwright.sync_api import Page, expect
from reading import cell, drawn, settled
from visits import DESKTOP, PHONE, ROOT, SIZES, TABLET, WIDE, Visit

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
        """() => readers.everywhere('td[data-family] .number').filter((one) => one.scrollWidth > one.clientWidth)
          .map((one) => one.textContent)"""
    )

    assert cut == []


def test_finger_hits_every_cell_of_a_tablet(visit: Visit) -> None:
    """Every cell, and every head of a row or column, is at least 44 px wide and high on a tablet."""
    page = settled(visit(**TABLET))

    buttons = page.get_by_role("grid").locator("button")
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

    cell(page, "2_92mm", "3cm").scroll_into_view_if_needed()
    page.wait_for_function(f"({UNCOVERED})", arg="th[data-band='3cm'] button")

    assert page.evaluate(UNCOVERED, "th[data-family='2_92mm'] button")
    assert page.evaluate(UNCOVERED, "td[data-family='2_92mm'][data-band='3cm'] button")


def test_head_of_a_phone_s_matrix_begins_in_its_place(visit: Visit) -> None:
    """Before any scrolling the heads of the bands stand at the top of the matrix."""
    page = settled(visit(**PHONE))

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


@pytest.mark.parametrize(("size", "unfolded"), [(DESKTOP, False), (WIDE, True)], ids=["desktop", "wide"])
def test_legend_explains_what_is_drawn(visit: Visit, size: dict, unfolded: bool) -> None:
    """The ladder is explained where cells have one, the lines of power levels where they stand unfolded."""
    legend = settled(visit(**size)).locator("jw-legend")

    expect(legend.get_by_text("the ladder")).to_be_visible(visible=not unfolded)
    expect(legend.get_by_text("upright line")).to_be_visible(visible=not unfolded)
    expect(legend.get_by_text("one line for each power level")).to_be_visible(visible=unfolded)
    expect(legend.get_by_text("undecided").filter(visible=True)).to_have_count(1)


def test_lower_figures_from_memory_are_marked_on_a_wide_screen(visit: Visit) -> None:
    """Where a power figure from memory is lower, the outlined line of an unfolded cell with a margin says so."""
    page = settled(visit(**WIDE))
    matrix = expected.matrix_of()

    marked = page.evaluate(
        """() => readers.everywhere('td[data-family] .rung[data-chosen]').map((one) => one.innerText.includes('↓'))"""
    )

    lower = [below for below in matrix["rating_below"] for _ in matrix["columns"]]
    margins = expected.margins(matrix)
    assert marked == [below and margin is not None for below, margin in zip(lower, margins, strict=True)]


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


def test_rungs_unfold_on_a_wide_screen(visit: Visit) -> None:
    """On a wide screen every cell prints the core's margin of every power level."""
    page = settled(visit(**WIDE))
    matrix = expected.matrix_of()
    margins = [margin for family in matrix["margin_db"] for levels in family for margin in levels]

    screenshot(page, "first-wide")
    rungs = page.locator("td[data-family] [data-power]").evaluate_all("(all) => all.map((one) => one.innerText.trim())")

    assert len(rungs) == len(margins)
    for text, margin in zip(rungs, margins, strict=True):
        if margin is not None:
            assert text.endswith(expected.decibels(margin))


def test_rung_opens_its_own_power(visit: Visit) -> None:
    """On a wide screen a click on a rung opens the derivation at that rung's power."""
    page = settled(visit(**WIDE))

    cell(page, "n", "2m").locator("[data-power='1500']").click()
    drawn(page)

    wanted = expected.asked("cell", family="n", band="2m", power_w=1500)["verdict"]
    expect(page.locator("#verdict")).to_have_text(wanted)


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
