"""The licences of all that a page holds can be read from it, and its version."""

import pytest
from playwright.sync_api import Browser, expect
from visits import DESKTOP, ROOT, Visit

from jointwise.assemble.version import VERSION

SAVED = ROOT / "dist" / "jointwise.html"
TEXTS = ["Mozilla Public License Version 2.0", "PYTHON SOFTWARE FOUNDATION LICENSE", "Redistribution and use in source"]
"""A line of the longest licences."""


def test_served_page_links_the_texts(visit: Visit) -> None:
    """The served page names each licence and links a file with their texts."""
    page = visit()
    expect(page.get_by_text("Pyodide (MPL 2.0)")).to_be_visible()

    address = page.get_by_role("link", name="Licences", exact=True).evaluate("(link) => link.href")
    texts = page.request.get(address).text()

    assert all(text in texts for text in TEXTS)


@pytest.mark.parametrize("scripts", [True, False], ids=["scripts", "no scripts"])
def test_saved_page_holds_the_texts(browser: Browser, scripts: bool) -> None:
    """The saved page names its version and each licence, also without scripts, and unfolds their texts with them."""
    context = browser.new_context(**DESKTOP, offline=True, java_script_enabled=scripts)
    page = context.new_page()
    page.goto(SAVED.as_uri())
    expect(page.get_by_text(f"Jointwise {VERSION}, ©")).to_be_visible()
    expect(page.get_by_text("Pyodide (MPL 2.0)")).to_be_visible()

    page.get_by_text("Licences", exact=True).click()

    wanted = TEXTS if scripts else ["They lie packed in this page"]
    for text in wanted:
        expect(page.locator("#licences pre")).to_contain_text(text)
    context.close()
