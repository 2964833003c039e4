"""The address holds the whole state: links, the history and their mistakes."""

import expected
import pytest
from playwright.sync_api import expect
from reading import assert_numbers, fragment, settled, share, sheet
from visits import Visit

STATION = "#mode=rtty&vswr=3&exposure=exposed&power_w=400"
SCENARIO = {"mode": "rtty", "vswr": 3, "exposure": "exposed"}


def test_link_restores_the_station(visit: Visit) -> None:
    """A page opened with a link shows the numbers and the controls of whoever made it."""
    page = visit(STATION)

    assert_numbers(page, expected.numbers(400, **SCENARIO))
    expect(page.locator("#mode")).to_have_value("rtty")
    expect(page.locator("#vswr")).to_have_value("3")
    expect(page.locator("#exposure")).to_have_value("exposed")
    expect(page.get_by_role("radio", name="400 W")).to_be_checked()


def test_link_restores_an_open_cell(visit: Visit) -> None:
    """A link made with a derivation open opens the same derivation."""
    page = visit("#family=n&band=2m&power_w=400")

    expect(sheet(page).get_by_role("heading", name="N on 2 m")).to_be_visible()
    expect(page.locator("#verdict")).to_have_text(expected.asked("cell", family="n", band="2m", power_w=400)["verdict"])


def test_copied_link_opens_the_same_view(visit: Visit) -> None:
    """What the page puts on the clipboard restores the view in another page."""
    page = settled(visit(STATION, permissions=["clipboard-read", "clipboard-write"]))

    share(page).get_by_role("button", name="Copy link").click()
    expect(page.get_by_text("Link copied.")).to_be_visible()
    link = page.evaluate("() => navigator.clipboard.readText()")
    other = page.context.new_page()
    other.goto(link)

    assert fragment(other) == STATION[1:]
    assert_numbers(other, expected.numbers(400, **SCENARIO))


def test_back_restores_the_step_before(visit: Visit) -> None:
    """The browser's back button undoes one change after the other, and forward brings them again."""
    page = settled(visit())
    page.locator("#mode").select_option("fm")
    assert_numbers(page, expected.numbers(mode="fm"))
    page.locator("#exposure").select_option("immersed")
    assert_numbers(page, expected.numbers(mode="fm", exposure="immersed"))

    page.go_back()
    assert_numbers(page, expected.numbers(mode="fm"))
    page.go_back()
    assert_numbers(page, expected.numbers())
    page.go_forward()
    assert_numbers(page, expected.numbers(mode="fm"))


def test_back_closes_an_open_cell(visit: Visit) -> None:
    """Opening a cell is a step of the history, so back closes it."""
    page = settled(visit())
    page.locator("td[data-family=n][data-band='20m']").click()
    expect(sheet(page)).to_be_visible()

    page.go_back()

    expect(sheet(page)).to_be_hidden()


def test_a_link_may_name_the_first_view(visit: Visit) -> None:
    """The matrix, which needs no name, is shown by its name too, and nothing is called unknown."""
    page = settled(visit("#view=matrix&vswr=3"))

    assert_numbers(page, expected.numbers(vswr=3))
    expect(page.get_by_role("status").filter(has_text="does not know")).to_have_count(0)


@pytest.mark.parametrize("unknown", ["colour=blue", "cable_dielectric=ptfe"])
def test_unknown_field_is_named_and_the_rest_restored(visit: Visit, unknown: str) -> None:
    """A link with a field the page does not know, or knows no more, says which, and restores everything else."""
    page = visit(f"#vswr=3&{unknown}")

    expect(page.get_by_role("status").filter(has_text=unknown)).to_be_visible()
    assert_numbers(page, expected.numbers(vswr=3))


def test_value_of_the_wrong_kind_is_named(visit: Visit) -> None:
    """A number field that holds a word in a link is named, and keeps its first value."""
    page = visit("#vswr=high&mode=fm")

    expect(page.get_by_role("status").filter(has_text="vswr=high")).to_be_visible()
    assert_numbers(page, expected.numbers(mode="fm"))


def test_unknown_band_gets_the_cores_sentence(visit: Visit) -> None:
    """A link with a band that does not exist shows what the core says to it."""
    page = visit("#bands=20m,19m", forgiven="status of 400")

    expect(
        page.get_by_role("alert").filter(has_text="Bands, second entry: “19m”; allowed: one of 2200 m")
    ).to_be_visible()


@pytest.mark.parametrize("rubbish", ["powers_w=" + "5," * 20_000, "a&" * 20_000])
def test_a_link_that_is_too_long_is_not_read(visit: Visit, rubbish: str) -> None:
    """A link longer than any of the page is told in a short sentence, and the page is that of a first visit."""
    page = visit(f"#{rubbish}")

    expect(page.get_by_role("status").filter(has_text="longer than")).to_be_visible()
    assert_numbers(page, expected.numbers())
