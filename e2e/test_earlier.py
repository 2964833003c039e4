"""What earlier versions saved and kept is read: a page of 0.4.0 with a line in it, and what its browser kept.

`earlier/` holds the page as that version saved it, without its code and tables, and what the browsers of 0.2.0 and
0.4.0 kept, by their keys.
"""

import json
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner
from jsonschema import Draft202012Validator
from playwright.sync_api import Page, expect
from reading import settled
from test_saved_own import own
from visits import Visit

from jointwise.backend.cli import main
from jointwise.backend.station_file.documents import station_schema

EARLIER = Path(__file__).with_name("earlier")
PAGE = EARLIER / "page-0.4.0.html"
KEPT = sorted(EARLIER.glob("kept-*.json"))
NAME = "Früher </script> line"
"""Of the line in each of them."""


def has_line(page: Page) -> None:
    """Wait until the line is shown, or is among those that can be."""
    page.wait_for_function(
        "(name) => readers.everywhere('#name')[0]?.value === name || "
        "readers.everywhere('#lines option').some(({textContent}) => textContent.trim() === name)",
        arg=NAME,
    )


def documents(file: Path) -> dict[str, Any]:
    """What a browser kept, by its keys without what all begin with."""
    kept = json.loads(file.read_text("utf-8"))
    return {key.removeprefix("jointwise-"): json.loads(text) for key, text in kept.items()}


def test_a_page_of_the_version_before_is_taken_in(visit: Visit) -> None:
    """Opened in today's page it brings its line, beside what is there."""
    page = settled(visit("#view=line"))
    own(page)

    page.locator("#open-station").set_input_files(PAGE)

    has_line(page)
    assert json.loads(page.evaluate("() => localStorage.getItem('jointwise-lines')"))["lines"][-1]["name"] == NAME


@pytest.mark.parametrize("file", KEPT, ids=lambda file: file.stem)
def test_what_a_browser_kept_is_read(visit: Visit, file: Path) -> None:
    """What was kept before an update is there after it; nothing of it is set aside."""
    kept = json.loads(file.read_text("utf-8"))
    fill = f"""if (location.protocol === 'http:' && !localStorage.length)
      for (const [key, text] of Object.entries({json.dumps(kept)})) localStorage.setItem(key, text);"""

    page = settled(visit("#view=line", prepare=lambda context: context.add_init_script(fill)))

    has_line(page)
    for view in ("kit", "sweep"):
        page.evaluate("(view) => (location.hash = `view=${view}`)", view)
        expect(page.locator(f"jw-{view}-view")).to_be_visible()
    assert page.evaluate("() => Object.keys(localStorage).filter((key) => key.endsWith('set-aside'))") == []


@pytest.mark.parametrize("file", [PAGE, *KEPT], ids=lambda file: file.stem)
def test_the_command_line_reads_it(file: Path, tmp_path: Path) -> None:
    """Such a page, and a station file of such documents, is as the schema says and can be asked about."""
    source = file
    if file in KEPT:
        head = {"format": "jointwise station", "version": 1, "name": "Old hut", "date": "2026-11-29"}
        content = head | {"kept": documents(file)}
        assert Draft202012Validator(station_schema()).is_valid(content)
        source = tmp_path / "station.json"
        source.write_text(json.dumps(content), "utf-8")

    listed = CliRunner().invoke(main, ["station", str(source), "--json"])
    asked = CliRunner().invoke(main, ["station", str(source), "line", NAME, "--json"])

    assert json.loads(listed.stdout)["unread"] == []
    assert json.loads(asked.stdout)["verdict"].startswith("On 20 m")
