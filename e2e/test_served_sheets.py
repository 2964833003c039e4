"""The sheets beside the derivation (a family's data, a band's limits, the method), and the sheets of paper."""

import io
import re
from unicodedata import normalize

import expected
import pytest
from playwright.sync_api import expect
from pypdf import PdfReader
from reading import more, settled, sheet
from visits import Visit


def test_family_row_opens_its_data_sheet(visit: Visit) -> None:
    """The head of a row opens everything that the catalogue holds about the family."""
    page = settled(visit())
    family = next(one for one in expected.asked("catalogue")["families"] if one["id"] == "7_16")

    page.get_by_role("button", name="7/16, data sheet").click()

    expect(sheet(page).get_by_role("heading", name="7/16")).to_be_visible()
    rows = page.locator("jw-data-sheet tr[data-field]")
    expect(rows).to_have_count(len(family["values"]))
    for row, value in zip(rows.all(), family["values"], strict=True):
        expect(row).to_contain_text(value["name"])
        expect(row.locator(".kind")).to_have_text(value["kinds"])


def test_data_sheet_warns_of_near_relatives(visit: Visit) -> None:
    """The data sheet of a family with dangerous near relatives says what not to mate."""
    page = visit("#family=n")
    family = next(one for one in expected.asked("catalogue")["families"] if one["id"] == "n")

    assert len(family["hazards"]) > 0
    for hazard in family["hazards"]:
        expect(page.locator("jw-data-sheet")).to_contain_text(hazard["text"])


def test_band_column_opens_its_limits(visit: Visit) -> None:
    """The head of a column opens all limits of that band, one line per family, with the core's numbers."""
    page = settled(visit())
    place = expected.FIRST_BANDS.index("2m")
    numbers = expected.numbers()[place :: expected.TABLET_COLUMNS]

    page.get_by_role("button", name="2 m, all limits", exact=True).click()

    expect(sheet(page).get_by_role("heading", name="All limits on 2 m")).to_be_visible()
    rows = page.locator("jw-band-limits tr[data-family]")
    expect(rows).to_have_count(len(numbers))
    for row, number in zip(rows.all(), numbers, strict=True):
        expect(row.get_by_role("cell").first).to_have_text(number or "rx only")


def test_method_shows_every_formula(visit: Visit) -> None:
    """The method view shows each formula of the core once, in MathML, with all sources after them."""
    page = settled(visit())
    catalogue = expected.asked("catalogue")

    more(page).get_by_role("button", name="Method").click()

    articles = page.locator("jw-methods article")
    expect(articles).to_have_count(len(catalogue["formulas"]))
    expect(articles.locator("math")).to_have_count(len(catalogue["formulas"]))
    expect(page.locator("jw-methods ul li")).to_have_count(len(catalogue["sources"]))


def test_escape_closes_the_method(visit: Visit) -> None:
    """Escape closes the method view, and the focus goes back to the menu it was chosen from."""
    page = settled(visit())
    more(page).get_by_role("button", name="Method").click()
    expect(page.locator("jw-methods")).to_be_visible()

    page.keyboard.press("Escape")

    expect(sheet(page)).to_be_hidden()
    assert page.evaluate("() => readers.focused().getRootNode().host.id") == "more"


SHEETS_OF_PAPER = {"": 1, "view=choose": 2, "view=line": 4, "view=kit": 1, "view=sweep": 1}
"""What a view takes at most on A4, by its fragment."""


@pytest.mark.parametrize("view", SHEETS_OF_PAPER)
def test_paper_says_whose_it_is_and_of_what_day(visit: Visit, view: str) -> None:
    """A view takes few sheets, each with station, day and number at its foot; no caution twice, nothing to press."""
    page = settled(visit(f"#{view}", prepare=lambda context: context.clock.set_fixed_time("2026-11-29T12:00:00")))
    page.get_by_role("button", name="Station", exact=True).click()
    page.get_by_label("Name of the station").fill('Hill "hut"')
    page.keyboard.press("Tab")
    page.keyboard.press("Escape")
    settled(page)

    pages = PdfReader(io.BytesIO(page.pdf(format="A4", prefer_css_page_size=True))).pages
    texts = [re.sub(r"\s+", " ", normalize("NFKC", one.extract_text())) for one in pages]

    assert len(texts) <= SHEETS_OF_PAPER[view]
    for at, text in enumerate(texts, start=1):
        assert 'Hill "hut" · 29 November 2026 · Jointwise' in text
        assert f"Sheet {at} of {len(texts)}" in text
    whole = " ".join(texts)
    assert all(whole.count(normalize("NFKC", one)) <= 1 for one in expected.asked("catalogue")["cautions"])
    assert re.findall(r"Calculating|Starting|Undo|Copy link|Share and save", whole) == []
