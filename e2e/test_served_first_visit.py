"""A first visit shows a useful matrix before anything is touched."""

import expected
from playwright.sync_api import expect
from reading import assert_numbers, key_steps, settled
from visits import TABLET, Visit

FAMILIES = len(expected.asked("catalogue")["families"])


def test_title_names_the_tool(visit: Visit) -> None:
    """The tab of the page bears the name of the tool."""
    expect(visit()).to_have_title("Jointwise")


def test_every_family_meets_every_band(visit: Visit) -> None:
    """Every interface family has a cell on each of sixteen bands, in the core's order."""
    page = settled(visit())
    matrix = expected.matrix_of()

    shown = page.evaluate("() => readers.cells().map(({family, band}) => [family, band])")

    assert len(shown) == FAMILIES * expected.TABLET_COLUMNS
    assert shown == [[family["id"], column["id"]] for family in matrix["families"] for column in matrix["columns"]]


def test_numbers_are_the_cores(visit: Visit) -> None:
    """Every cell prints the margin that the core computes for it."""
    page = settled(visit())

    assert_numbers(page, expected.numbers())


def test_numbers_stand_before_the_core_answers(visit: Visit) -> None:
    """The margins are there while the core still owes its first answer."""
    page = visit(prepare=lambda context: context.route("**/api/v1/matrix", lambda _: None))

    assert_numbers(page, expected.numbers())


def test_colours_are_the_keys(visit: Visit) -> None:
    """Every cell with a margin has the colours of the key's step that the margin falls in."""
    page = settled(visit())
    steps = key_steps(page)
    margins = expected.margins(expected.matrix_of())

    shown = page.evaluate("() => readers.cells().map(({ink, ground}) => [ink, ground])")

    wanted = [next(([s.ink, s.ground] for s in steps if s.low <= m < s.high), None) for m in margins if m is not None]
    assert [pair for pair, margin in zip(shown, margins, strict=True) if margin is not None] == wanted


def test_refused_cells_say_why(visit: Visit) -> None:
    """The spoken name of a refused cell says which check refuses it."""
    page = settled(visit())
    matrix = expected.matrix_of()
    level = matrix["powers_w"].index(expected.FIRST_POWER)
    found = [levels[level] for family in matrix["refused_by"] for levels in family]
    refusals = [matrix["gates"][gate]["name"] for gate in found if gate >= 0]

    spoken = page.locator("td[data-family][aria-label*=': refused']")

    assert len(refusals) > 0
    expect(spoken).to_have_count(len(refusals))
    for button, name in zip(spoken.all(), refusals, strict=True):
        said = "return loss" if name == "Match" else name
        assert said in button.get_attribute("aria-label")


def test_key_stands_in_one_line_above_the_matrix(visit: Visit) -> None:
    """The five steps are named above the first row, all on one line."""
    page = settled(visit())

    tops = page.locator("jw-key [data-step]").evaluate_all("(all) => all.map((one) => one.getBoundingClientRect().y)")

    assert [step.low for step in key_steps(page)] == [float("-inf"), 0, 1, 3, 10]
    assert len(set(tops)) == 1
    assert tops[0] < page.get_by_role("grid").bounding_box()["y"]


def test_cautions_are_all_there(visit: Visit) -> None:
    """Every caution of the core can be read on the page itself."""
    page = settled(visit())

    expect(page.locator("jw-cautions li")).to_have_text(expected.asked("catalogue")["cautions"])


def test_matrix_is_a_grid_with_headers(visit: Visit) -> None:
    """Assistive technology meets a named grid with a header for each family and each band."""
    page = settled(visit())
    grid = page.get_by_role("grid", name="Connectors against bands: margin in dB at 100 W")

    expect(grid.get_by_role("rowheader")).to_have_count(FAMILIES)
    expect(grid.get_by_role("gridcell")).to_have_count(FAMILIES * expected.TABLET_COLUMNS)
    expect(grid.locator("th[scope=col]")).to_have_count(expected.TABLET_COLUMNS)


def test_tablet_does_not_scroll_sideways(visit: Visit) -> None:
    """On a tablet neither the page nor the matrix is wider than the screen."""
    page = settled(visit(**TABLET))

    widths = page.evaluate(
        """() => [document.documentElement, ...readers.everywhere('jw-matrix .frame, .frame')]
          .map((one) => [one.scrollWidth, one.clientWidth])"""
    )

    assert len(widths) > 1
    assert all(scrolled <= own for scrolled, own in widths)
