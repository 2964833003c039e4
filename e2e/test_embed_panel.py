"""Putting the matrix on a website: the panel of the page, and the walk that the README describes."""

import json
import re
from pathlib import Path

import expected
import pytest
from click.testing import CliRunner
from hosts import STRICT, File, website
from playwright.sync_api import Browser, Page, expect
from reading import settled, share
from visits import AXE, DESKTOP, ROOT, SIZES, START_MS, Visit, clean

from jointwise.backend.cli import main

SAVED = ROOT / "dist" / "jointwise.html"

README = (ROOT / "README.md").read_text()
STATION = {"mode": "fm", "vswr": 3}


def panel(page: Page) -> Page:
    """The page, once the panel shows its preview."""
    page.locator("jw-website jointwise-matrix td[data-row]").first.wait_for()
    return page


def preview(page: Page) -> list[str]:
    """What the cells of the preview print, words for refusals left out."""
    return [text for text in page.locator("jw-website td[data-row]").all_text_contents() if text[0] in "+−R"]


def printed(**scenario: object) -> list[str]:
    """What a matrix prints, words for refusals left out."""
    return [text for text in expected.numbers(**scenario) if text]


def saved(page: Page, button: str) -> bytes:
    """The file that a button of the panel saves."""
    with page.expect_download() as waiting:
        page.get_by_role("button", name=button).click()
    return Path(waiting.value.path()).read_bytes()


def on_a_website(browser: Browser, line: str, files: dict[str, bytes]) -> list[str | None]:
    """What visitors read of a strict website with the line in its page and the files beside it."""
    page_ = f'<!doctype html><html lang="en"><meta charset="utf-8"><title>A club</title><h1>A club</h1>{line}</html>'
    kinds = {".js": "text/javascript", ".json": "application/json"}
    there = {f"/{name}": File(body, kinds[Path(name).suffix]) for name, body in files.items()}
    with (
        website({"/": File(page_.encode(), policy=STRICT), **there}) as club,
        clean(browser, club.address, None) as context,
    ):
        page = context.new_page()
        page.goto(club.address)
        page.locator("jointwise-matrix td[data-row]").first.wait_for()
        return page.evaluate("() => readers.numbers()")


def test_what_the_panel_saves_shows_the_matrix_elsewhere(visit: Visit, browser: Browser) -> None:
    """The line and the two files of the panel, put on another website, show the margins that the page showed."""
    page = settled(visit("#mode=fm&vswr=3"))
    share(page).get_by_role("button", name="Put on a website").click()
    panel(page)
    assert preview(page) == printed(**STATION)

    line = page.locator("#snippet").input_value()
    files = {"embed.js": saved(page, "Save embed.js"), "club-matrix.json": saved(page, "Save club-matrix.json")}

    assert files["embed.js"] == (ROOT / "dist/site/embed.js").read_bytes()
    assert line.count("\n") == 0
    assert on_a_website(browser, line, files) == expected.numbers(**STATION)


def test_choices_stand_in_the_line_and_in_the_preview(visit: Visit) -> None:
    """Theme, language and form chosen in the panel are in the line, and the preview has them at once."""
    page = panel(visit("#view=website"))
    page.locator("#site-theme").select_option("dark")
    page.locator("#site-lang").select_option("de")
    page.locator("#site-compact").check()
    page.locator("#site-page").fill("jointwise.html")

    expect(page.locator("#snippet")).to_have_value(
        re.compile(r'<jointwise-matrix src="club-matrix.json" .*link="jointwise.html" theme="dark" lang="de" compact>')
    )
    expect(page.locator("jw-website jointwise-matrix h2")).to_have_text("Leistungsreserve von HF-Steckern")
    expect(page.locator("jw-website jointwise-matrix .root[data-compact][data-theme=dark]")).to_be_visible()


def test_the_panel_follows_the_controls(visit: Visit) -> None:
    """A change of the station beside the open panel changes the preview."""
    page = panel(visit("#view=website", **DESKTOP))

    page.locator("#vswr").fill("3")
    page.keyboard.press("Tab")

    expect(page.locator("jw-website td[data-row]").first).to_have_text(printed(vswr=3)[0])
    assert preview(page) == printed(vswr=3)


@pytest.mark.parametrize("way", ["server", "frame"])
def test_the_other_lines_name_this_server(visit: Visit, address: str, way: str) -> None:
    """The lines for a server and for a frame hold its address and the scenario, and nothing of the open panel."""
    page = panel(visit("#vswr=3&view=website"))

    page.locator(f"[data-way={way}]").click()

    line = page.locator("#snippet").input_value()
    assert f"{address}{'embed.html' if way == 'frame' else ''}#vswr=3" in line
    assert "website" not in line


@pytest.mark.parametrize("size", SIZES)
def test_rules_find_nothing(visit: Visit, size: str) -> None:
    """No accessibility rule is broken by the panel."""
    page = panel(
        visit("#families=uhf,n&view=website", prepare=lambda context: context.add_init_script(path=AXE), **SIZES[size])
    )

    found = page.evaluate(
        "() => axe.run({include: [{fromShadowDom: ['jw-app', 'jw-sheet']}]}, {resultTypes: ['violations']})"
        ".then(({violations}) => violations.map(({help, nodes}) => [help, nodes.slice(0, 3).map(({html}) => html)]))"
    )

    assert found == []


def test_the_saved_file_has_the_panel_too(browser: Browser) -> None:
    """Opened from disk with no network, the panel makes snapshot and line, and shows them without a request."""
    context = browser.new_context(**DESKTOP, offline=True)
    asked: list[str] = []
    context.on("request", lambda request: asked.append(request.url))
    page = context.new_page()
    page.goto(f"{SAVED.as_uri()}#mode=fm&vswr=3&view=website")
    page.locator("jw-website jointwise-matrix td[data-row]").first.wait_for(timeout=START_MS)

    assert preview(page) == printed(**STATION)
    assert saved(page, "Save embed.js") == (ROOT / "dist/site/embed.js").read_bytes()
    assert json.loads(saved(page, "Save club-matrix.json"))["request"]["vswr"] == STATION["vswr"]
    assert [url for url in asked if not url.startswith(("file:", "blob:", "data:"))] == []
    context.close()


def section(heading: str) -> str:
    """A section of the README."""
    return re.search(rf"^## {heading}\n(.*?)(?=^## )", README, re.M | re.S)[1]


def test_the_readme_s_walk_ends_at_a_matrix(browser: Browser) -> None:
    """At most three steps, and the command and the line they hold put a matrix on a website."""
    text = section("On your club's website")
    steps = re.findall(r"^\d\. ", text, re.M)
    command = re.search(r"jointwise (snapshot .*) > club-matrix\.json", text)[1]
    line = re.search(r"^\s*(<script src=.*</jointwise-matrix>)$", text, re.M)[1]

    made = CliRunner().invoke(main, command.split()).stdout.encode()

    assert 1 <= len(steps) <= 3
    files = {"embed.js": (ROOT / "dist/site/embed.js").read_bytes(), "club-matrix.json": made}
    shown = json.loads(made)
    assert on_a_website(browser, line, files) == expected.printed(shown["matrix"], shown["matrix"]["powers_w"][3])
