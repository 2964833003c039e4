"""Pages that carry generated and hostile stations: right to the digit with scripts off, and nothing in them runs."""

import json
import math
import re
from decimal import ROUND_HALF_UP, Decimal
from pathlib import Path
from typing import Any

import pytest
from engines import ENGINES, SAVED
from expected import decibels, printed
from playwright.sync_api import Browser, BrowserContext, Page
from stations import HOSTILE, stations
from test_saved_engines import CHARTS_OWN
from test_saved_own import own
from visits import DESKTOP, START_MS

from jointwise.backend.station_file import requests
from jointwise.backend.station_file.reading import StationFile, read
from jointwise.calc.numeric.units import engineering
from jointwise.calc.operations import InputError, call

STATIONS = stations(24)
SAMPLE = STATIONS[4:7]
"""One with a pack, one without a kit, one with sweeps."""

HOSTILE_CHARACTERS = 4_000_000
MARKS = ("<script", "</script", "<meta", "<link", "<style", "<!--", '<data id="part-', "<svg", "<img")
"""What a page without content has as often."""

COUNTED = """() => [
  document.querySelectorAll('meta, link, img, iframe, object, embed, base, form').length,
  [...document.scripts].some((one) => one.type === '' && one.textContent.includes('window.ran=1')),
]"""
"""What a page has beside its own elements, as many as without content; whether a name has become a script."""

POLICY = re.compile(r'<meta http-equiv="Content-Security-Policy" content="([^"]+)">')


def page_with(content: Any, target: Path) -> Path:
    """The saved page as it carries a station."""
    inert = json.dumps(content, ensure_ascii=False, separators=(",", ":")).replace("<", "\\u003c")
    target.write_text(SAVED.read_text("utf-8").replace('id="carried">null<', f'id="carried">{inert}<'), "utf-8")
    return target


def resaved(context: BrowserContext, file: Path, target: Path) -> Path:
    """The page saved by its own button, once its core has answered."""
    page = context.new_page()
    page.set_default_timeout(60_000)
    page.goto(file.as_uri())
    page.wait_for_function("() => document.querySelector('jw-app').stage === 'ready'", timeout=START_MS)
    own(page)
    with page.expect_download(timeout=START_MS) as saving:
        page.locator("#save-page").click()
    saving.value.save_as(target)
    assert page.evaluate("() => window.ran ?? null") is None
    page.close()
    return target


def answered(file: StationFile, operation: str, request: Any) -> Any:
    """The core's answer in this process; None where it refuses."""
    try:
        return json.loads(call(operation, json.dumps(request).encode(), file.edition()))
    except InputError:
        return None


def loss(db: float | None) -> str:
    """A loss as the tables print it, halves up."""
    return "–" if db is None else f"{Decimal(db or 0).quantize(Decimal('0.01'), ROUND_HALF_UP)} dB"


def largest(watts: float | None) -> str:
    """A largest power as the tables print it: cut to three figures, so that what is printed holds."""
    if watts is None:
        return "–"
    scale = 10.0 ** (math.floor(math.log10(watts)) - 2)
    return engineering(float(f"{math.floor(watts / scale) * scale:.3g}"), "W")


def rows(page: Page, caption: str) -> list[list[str]] | None:
    """The cells of the table of a caption, as text; None where there is none. In markup every line ends alike."""
    return page.evaluate(
        """(caption) => {
          const tables = [...document.querySelectorAll('table.plain')];
          const table = tables.find((one) => one.caption?.textContent === caption);
          const cells = (row) => [...row.cells].map((cell) => cell.firstChild?.data ?? cell.textContent);
          return table ? [...table.tBodies[0].rows].map(cells) : null;
        }""",
        caption,
    )


def lines_ended_alike(text: str) -> str:
    """Text as it comes out of markup, in which a carriage return is the end of a line."""
    return text.replace("\r\n", "\n").replace("\r", "\n")


def assert_tables(page: Page, content: Any) -> None:
    """Matrix, lines, kit and sheets of the page are the core's, to the last digit."""
    file = read(json.dumps(content))
    matrix = answered(file, "matrix", requests.matrix_request(file, file.edition()))
    [caption] = page.evaluate(
        "() => [...document.querySelectorAll('caption')].map((one) => one.textContent)"
        ".filter((one) => one.startsWith('Margin in dB, '))"
    )
    shown = [cell for _, *cells in rows(page, caption) for cell in cells]
    numbers = [cell if re.match(r"([+−]|RL )\d", cell) else None for cell in shown]
    assert numbers == printed(matrix, content["kept"]["station"]["settings"]["power_w"])

    text = page.locator("body").text_content()
    for line in file.lines:
        parts_caption = lines_ended_alike(f"Parts of {line['name']}, from the transmitter")
        told = answered(file, "line", requests.line_request(file, line))
        sheets = answered(file, "fitout", requests.fitout_request(file, line))
        if told is None or sheets is None:
            assert rows(page, parts_caption) is None
            continue
        cells = [
            [
                lines_ended_alike(f"{at + 1} {part['name']}"),
                part["refusal"] or ("–" if part["margin_db"] is None else f"{decibels(part['margin_db'])} dB"),
                largest(part["largest_power_w"]),
                loss(part["loss_db"]),
            ]
            for at, part in enumerate(told["parts"])
        ]
        parts = rows(page, parts_caption)
        assert [[name, margin, most, lost] for name, margin, _, most, lost in parts] == cells
        headings = [lines_ended_alike(sheet["heading"]) for sheet in sheets["joints"]]
        assert lines_ended_alike(told["verdict"]) in text
        assert [heading for heading in headings if heading not in text] == []
        assert all(f"loss {loss(sheet['label']['expected_loss_db'])}" in text for sheet in sheets["joints"])
    if "kit" in file.kept:
        kit = answered(file, "kit", requests.kit_request(file))
        carried = [[f"☐ {one['name']}", str(one["count"])] for one in kit["adapters"]]
        assert (rows(page, "Adapters to carry") or []) == carried
        assert lines_ended_alike(kit["verdict"]) in text


def assert_right_without_scripts(browser: Browser, context: BrowserContext, content: Any, folder: Path) -> None:
    """The page that such a station is saved in has the core's tables with scripts off."""
    file = resaved(context, page_with(content, folder / "with.html"), folder / "saved.html")
    plain = browser.new_context(**DESKTOP, offline=True, java_script_enabled=False)
    page = plain.new_page()
    page.goto(file.as_uri())
    assert_tables(page, content)
    plain.close()


@pytest.mark.parametrize("at", range(len(SAMPLE)))
def test_without_scripts_a_few_stations_are_right(
    browser: Browser, elsewhere: BrowserContext, tmp_path: Path, at: int
) -> None:
    """A sample of the generated stations: matrix, lines, kit and sheets, against the core of this process."""
    assert_right_without_scripts(browser, elsewhere, SAMPLE[at], tmp_path)


@pytest.mark.nightly
@pytest.mark.parametrize("at", range(len(STATIONS)))
def test_without_scripts_many_stations_are_right(
    browser: Browser, elsewhere: BrowserContext, tmp_path: Path, at: int
) -> None:
    """The same of two dozen."""
    assert_right_without_scripts(browser, elsewhere, STATIONS[at], tmp_path)


def hostile() -> Any:
    """A station whose every name would break out, with 4 MB of the like in it."""
    content = json.loads(json.dumps(STATIONS[4]))
    kept = content["kept"]
    everything = "".join(HOSTILE)
    kept["sweeps"] = [
        {
            "date": "2026-11-29",
            "line": name[:60],
            "ports": 1,
            "name": everything[:200],
            "text": everything * (HOSTILE_CHARACTERS // len(everything)),
            "verdict": everything,
            "joints": [],
            "resistance_ohm": None,
        }
        for name in HOSTILE[:1]
    ]
    for at, line in enumerate(kept["lines"]["lines"]):
        line["name"] = HOSTILE[at]
    kept["lines"]["current"] = 0
    kept["station"]["name"] = HOSTILE[2]
    return content | {"name": "".join(HOSTILE[:3])[:60]}


@pytest.mark.parametrize("engine", ENGINES)
def test_hostile_content_runs_in_no_engine(engine: str, tmp_path: Path) -> None:
    """The page shows the names as they are, keeps its policy, asks nobody, and nothing that they hold has run."""
    content = hostile()
    file = page_with(content, tmp_path / "hostile.html")
    with ENGINES[engine]() as view:
        view.open("#view=line")
        view.ready()
        built = view.run(COUNTED)
        view.go(f"{file.as_uri()}#view=line")
        view.ready()
        name = content["kept"]["lines"]["lines"][0]["name"]
        assert view.comes("(name) => readers.everywhere('#name')[0]?.value === name", name)
        assert view.run("() => window.ran ?? null") is None
        assert view.run(COUNTED) == built
        assert view.asked() == []
        assert set(view.wrong()) <= CHARTS_OWN


def test_hostile_content_leaves_the_file_as_it_is(elsewhere: BrowserContext, tmp_path: Path) -> None:
    """Saved by its own button the page has the structure and the policy of one without content, and saved again it is
    the same byte for byte."""
    first = resaved(elsewhere, page_with(hostile(), tmp_path / "hostile.html"), tmp_path / "first.html")
    second = resaved(elsewhere, first, tmp_path / "second.html")

    mine, built = first.read_text("utf-8"), SAVED.read_text("utf-8")
    assert second.read_bytes() == first.read_bytes()
    assert len(mine) > len(built) + HOSTILE_CHARACTERS // 2
    assert [mine.count(mark) for mark in MARKS] == [built.count(mark) for mark in MARKS]
    assert POLICY.findall(mine) == POLICY.findall(built)
