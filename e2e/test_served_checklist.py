"""The checklist: what to pack and what to do on arrival, ticked on the screen, on paper and without scripts."""

import io
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect
from pypdf import PdfReader
from reading import settled
from test_saved_own import own, saved
from test_served_accessibility import violations, with_axe
from test_served_fitout import of_line, plain
from visits import DESKTOP, SIZES, Visit


def opened(page: Page) -> Page:
    """The page with its checklist before it, answered."""
    own(page)
    page.get_by_role("button", name="Checklist", exact=True).click()
    expect(page.get_by_role("heading", name="On arrival, before power")).to_be_visible()
    return page


def test_ticks_are_kept_and_cleared_and_had_back(visit: Visit) -> None:
    """A box stays ticked after a reload; all are cleared by one button, which can be undone."""
    page = opened(settled(visit("#view=line")))
    joint = of_line()["joints"][4]
    box = page.get_by_label(f"{joint['label']['name']}, {joint['label']['family']}: looked at")
    box.check()
    page.get_by_label("Spare plug and jack of UHF").check()
    page.reload()
    opened(settled(page))

    expect(box).to_be_checked()
    page.get_by_role("button", name="Clear all ticks").click()
    expect(box).not_to_be_checked()
    page.get_by_role("button", name="Undo", exact=True).last.click()

    expect(box).to_be_checked()
    expect(page.get_by_text("2 ticked.")).to_be_visible()


def test_it_holds_kit_tools_spares_and_every_joint(visit: Visit) -> None:
    """Every tool of the core's sheets is to be packed, and every joint is looked at."""
    page = opened(settled(visit("#view=line")))

    text = plain(page.locator("jw-checklist .lists").inner_text())

    sheets = of_line()["joints"]
    assert [tool["text"] for sheet in sheets for tool in sheet["tools"] if plain(tool["text"]) not in text] == []
    assert [
        sheet for sheet in sheets if f"{sheet['label']['name']}, {sheet['label']['family']}: looked" not in text
    ] == []
    expect(page.get_by_role("group", name="Adapters")).to_be_visible()


def test_it_goes_alone_to_one_sheet_of_paper(visit: Visit) -> None:
    """Printed, there is one upright page with the checklist and nothing else; closed, the page is as before."""
    page = opened(settled(visit("#view=line")))

    [sheet] = PdfReader(io.BytesIO(page.pdf(format="A4", prefer_css_page_size=True))).pages

    text = plain(sheet.extract_text())
    assert "To pack" in text
    assert "On arrival, before power" in text
    assert "Save my page" not in text
    assert sheet.mediabox.height > sheet.mediabox.width
    page.keyboard.press("Escape")
    expect(page.locator("jw-paper")).to_have_count(0)
    expect(page.get_by_role("button", name="Checklist", exact=True)).to_be_focused()


def test_a_saved_page_has_the_ticks_without_scripts(visit: Visit, browser: Browser, tmp_path: Path) -> None:
    """The file read with scripts off shows which boxes were ticked."""
    page = opened(settled(visit("#view=line")))
    page.get_by_label("Spare plug and jack of UHF").check()
    page.keyboard.press("Escape")
    page.get_by_role("dialog").get_by_role("button", name="Close").click()
    file = saved(page, tmp_path / "own.html")

    context = browser.new_context(**DESKTOP, offline=True, java_script_enabled=False)
    there = context.new_page()
    there.goto(file.as_uri())

    expect(there.get_by_text("☑ Spare plug and jack of UHF")).to_be_visible()
    expect(there.get_by_text("☐ Spare plug and jack of N,")).to_be_visible()
    context.close()


@pytest.mark.parametrize("size", SIZES)
def test_rules_find_nothing(visit: Visit, size: str) -> None:
    """No accessibility rule is broken by the checklist, and nothing of it is wider than the screen."""
    page = opened(settled(visit("#view=line", prepare=with_axe, reduced_motion="reduce", **SIZES[size])))

    assert violations(page) == []
    assert page.evaluate("() => readers.everywhere('jw-paper, dialog').every((one) => one.scrollWidth <= innerWidth)")
