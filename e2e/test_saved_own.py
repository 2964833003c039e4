"""A page that carries the reader's own station: saved from the served page and from itself, and taken in elsewhere."""

import json
import re
from pathlib import Path

import pytest
from engines import SAVED
from playwright.sync_api import Browser, BrowserContext, Page, expect
from reading import settled, share
from visits import DESKTOP, START_MS, Visit

NAME = 'Hut </script><img src=x onerror="window.ran=1"> & co \u202e'
"""Would break out of the page where it were ever taken for markup."""


def opened(context: BrowserContext, file: Path, fragment: str = "") -> Page:
    """A page from disk, once its core has answered."""
    page = context.new_page()
    page.set_default_timeout(START_MS)
    page.goto(file.as_uri() + fragment)
    page.wait_for_function("() => document.querySelector('jw-app').stage === 'ready'", timeout=START_MS)
    return page


def saved(page: Page, target: Path, name: str | None = None) -> Path:
    """What the page's own button saves."""
    own(page)
    if name is not None:
        page.locator("#save-name").fill(name)
    with page.expect_download(timeout=START_MS) as saving:
        page.locator("#save-page").click()
    saving.value.save_as(target)
    page.get_by_role("dialog").get_by_role("button", name="Close").click()
    return target


def own(page: Page) -> None:
    """Open what saves and opens a page of one's own."""
    share(page).get_by_role("button", name="Save or open my page").click()


def test_a_page_carries_the_station_and_saves_itself_the_same(
    visit: Visit, elsewhere: BrowserContext, tmp_path: Path
) -> None:
    """Lines kept in the served page are in the file, which shows them at once, and saved again is the same file."""
    page = settled(visit("#view=line"))
    page.locator("#name").fill(NAME)
    page.locator("#name").blur()
    first = saved(page, tmp_path / "first.html", "Hill hut")

    there = opened(elsewhere, first, "#view=line")
    expect(there.locator("#name")).to_have_value(NAME)
    assert there.evaluate("() => window.ran") is None
    second = saved(there, tmp_path / "second.html")
    assert second.read_bytes() == first.read_bytes()

    built, mine = SAVED.read_text(), first.read_text()
    for mark in ("<script", "<meta http-equiv", '<data id="part-'):
        assert mine.count(mark) == built.count(mark)


def test_without_scripts_the_own_station_can_be_read(visit: Visit, browser: Browser, tmp_path: Path) -> None:
    """With scripts off the file holds the line by its name, with the core's own sentence about it."""
    page = settled(visit("#view=line"))
    page.locator("#name").fill("Garden line")
    page.locator("#name").blur()
    told = page.evaluate("() => readers.everywhere('jw-line-verdict')[0].shadowRoot.textContent")
    sentence = re.search(r"[\d.]+ W of [\d.]+ W reach the antenna", " ".join(told.split()))[0]
    file = saved(page, tmp_path / "own.html", "Garden")
    context = browser.new_context(**DESKTOP, offline=True, java_script_enabled=False)
    plain = context.new_page()
    plain.goto(file.as_uri())

    expect(plain.get_by_role("heading", name="Garden", exact=True)).to_be_visible()
    expect(plain.get_by_role("heading", name="Line: Garden line")).to_be_visible()
    assert sentence in plain.locator("body").inner_text()
    expect(plain.get_by_role("heading", name="Checklist")).to_be_visible()
    context.close()


def test_a_file_comes_in_beside_what_is_there(visit: Visit, tmp_path: Path) -> None:
    """A saved page or a station file adds its lines by name; a station of one's own is replaced only when asked."""
    page = settled(visit("#view=line"))
    page.locator("#name").fill("From the file")
    page.locator("#name").blur()
    own(page)
    with page.expect_download() as saving:
        page.locator("#save-station").click()
    file = tmp_path / "station.json"
    saving.value.save_as(file)
    assert json.loads(file.read_text())["kept"]["lines"]["lines"][0]["name"] == "From the file"

    other = settled(visit("#view=line"))
    other.locator("#name").fill("Here before")
    other.locator("#name").blur()
    own(other)
    other.locator("#open-station").set_input_files(file)
    other.wait_for_function(
        "() => ['From the file', 'Here before'].every((name) => "
        "readers.everywhere('#lines option').some(({textContent}) => textContent.trim() === name))"
    )


def test_ones_own_station_is_replaced_only_when_asked(visit: Visit, tmp_path: Path) -> None:
    """Where there are two stations the reader is asked, and lines that came in are there either way."""
    page = settled(visit("#view=line"))
    page.locator("#name").fill("From the file")
    page.locator("#name").blur()
    page.locator("#station").click()
    page.get_by_label("Name of the station").fill("Theirs")
    page.get_by_label("Name of the station").blur()
    own(page)
    with page.expect_download() as saving:
        page.locator("#save-station").click()
    file = tmp_path / "station.json"
    saving.value.save_as(file)

    for button, name in (("#keep-own", "Mine"), ("#replace-own", "Theirs")):
        other = settled(visit("#view=line"))
        other.locator("#station").click()
        other.get_by_label("Name of the station").fill("Mine")
        other.get_by_label("Name of the station").blur()
        own(other)
        other.locator("#open-station").set_input_files(file)
        other.locator(button).click()
        expect(other.locator("jw-saving")).to_have_count(0)
        settled(other).locator("#station").click()
        expect(other.get_by_label("Name of the station")).to_have_value(name)
        other.wait_for_function(
            "() => readers.everywhere('#name')[0].value === 'From the file' || "
            "readers.everywhere('#lines option').some(({textContent}) => textContent.trim() === 'From the file')"
        )


@pytest.mark.parametrize("text", ["nonsense", '{"format": "other"}', "<p>a page</p>"])
def test_what_is_no_station_is_refused(visit: Visit, text: str) -> None:
    """Any other file changes nothing, and the reader is told why."""
    page = settled(visit("#view=line"))
    own(page)
    page.locator("#open-station").set_input_files(
        {"name": "x.json", "mimeType": "application/json", "buffer": text.encode()}
    )
    expect(page.get_by_text("Nothing was changed.")).to_be_visible()
    assert page.evaluate("() => localStorage.getItem('jointwise-lines')") is None
