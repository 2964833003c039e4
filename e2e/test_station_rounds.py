"""Two hundred stations through the page's own modules: no content, no byte and no structure is lost on the way."""

import json
import subprocess
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from engines import ENGINES, SAVED, View
from jsonschema import Draft202012Validator
from stations import stations

from jointwise.assemble.start_data import start_data
from jointwise.backend.station_file import requests
from jointwise.backend.station_file.documents import station_schema
from jointwise.backend.station_file.reading import StationFile, read
from jointwise.calc.operations import canonical

SCRIPT = Path(__file__).with_name("rounds.mjs")
STATIONS = stations(200)
SAMPLE = STATIONS[:8]

FEW_BYTES = 4_000
"""A page with a station is larger than one without by that station, and by next to nothing."""

Bundle = Callable[[str], Path]


@pytest.fixture(scope="module")
def bundle(tmp_path_factory: pytest.TempPathFactory) -> Bundle:
    """Makes one script of the page's modules, for Node (esm) or for a browser (iife)."""
    folder = tmp_path_factory.mktemp("rounds")
    start = folder / "start-data.json"
    start.write_text(json.dumps(start_data()), "utf-8")

    def made(form: str) -> Path:
        script = folder / {"esm": "rounds.mjs", "iife": "rounds.js"}[form]
        if not script.exists():
            subprocess.run(["node", str(SCRIPT), "bundle", str(start), str(script), form], check=True)
        return script

    return made


@pytest.fixture(scope="module")
def in_node(bundle: Bundle, tmp_path_factory: pytest.TempPathFactory) -> list[Any]:
    """What becomes of each station in Node."""
    files = tmp_path_factory.mktemp("files") / "files.json"
    files.write_text(json.dumps([json.dumps(one) for one in STATIONS]), "utf-8")
    command = ["node", str(SCRIPT), "run", str(bundle("esm")), str(files)]
    return json.loads(subprocess.run(command, check=True, capture_output=True, text=True).stdout)


def test_every_station_is_as_the_schema_says_and_can_be_read() -> None:
    """What the page could keep is valid by the published schema, and the command line reads all of it."""
    schema = Draft202012Validator(station_schema())

    assert [error.message for one in STATIONS for error in schema.iter_errors(one)] == []
    assert [read(json.dumps(one)).unread for one in STATIONS] == [[]] * len(STATIONS)


def test_every_file_comes_back_as_it_went_in(in_node: list[Any]) -> None:
    """From the file into a browser and back into a file, twice: the same content, and then the same bytes."""
    assert [result["kept"] for result in in_node] == STATIONS
    assert all(result["same"] for result in in_node)


def test_page_and_command_line_ask_the_core_the_same(in_node: list[Any]) -> None:
    """Of each station the matrix, its lines, their sheets, the kit and the sweeps are one request in both."""
    asked = 0
    for content, result in zip(STATIONS, in_node, strict=True):
        file = read(json.dumps(content))
        for operation, ours, pages in of_both(file, result["requests"]):
            asked += 1
            assert whole(file, operation, ours) == whole(file, operation, pages)

    assert asked > 1000


def of_both(file: StationFile, pages: Any) -> list[tuple[str, Any, Any]]:
    """Each request of a station, as the command line and as the page make it."""
    edition = file.edition()
    ours: list[tuple[str, Any, Any]] = [("matrix", requests.matrix_request(file, edition), pages["matrix"])]
    for operation, made in (("line", requests.line_request), ("fitout", requests.fitout_request)):
        of_lines = zip(file.lines, pages[operation], strict=True)
        ours += [(operation, made(file, line), page) for line, page in of_lines]
    if "kit" in file.kept:
        ours.append(("kit", requests.kit_request(file), pages["kit"]))
    swept = zip(file.sweeps, pages["sweep"], strict=True)
    return ours + [("sweep", requests.sweep_request(file, sweep, "short"), page) for sweep, page in swept]


def whole(file: StationFile, operation: str, request: Any) -> bytes:
    """A request with every field in its place."""
    return canonical(operation, json.dumps(request).encode(), file.edition())


def harness(bundle: Bundle, contents: list[Any], folder: Path) -> Path:
    """A page with the modules, the saved page as a text, and the stations; no policy keeps what breaks out."""
    held = json.dumps({"page": SAVED.read_text("utf-8"), "files": [json.dumps(one) for one in contents]})
    inert = held.replace("<", "\\u003c")
    file = folder / "harness.html"
    file.write_text(
        '<!doctype html><meta charset="utf-8"><title>rounds</title>'
        f'<script type="application/json" id="held">{inert}</script><script src="{bundle("iife").as_uri()}"></script>',
        "utf-8",
    )
    return file


def rounds(view: View, at: int) -> Any:
    """What becomes of one station of the harness; without the text of its page."""
    return view.run(
        """async (at) => {
          const {page, files} = JSON.parse(document.querySelector('#held').textContent);
          const {text, ...round} = await rounds.pageRounds(files[at], page);
          return {...round, file: rounds.fileRounds(files[at])};
        }""",
        at,
    )


def assert_rounds(engine: str, bundle: Bundle, contents: list[Any], folder: Path) -> None:
    """Each station comes out of a file, and out of a page written anew, as it went in; nothing in it ran."""
    with ENGINES[engine]() as view:
        view.go(harness(bundle, contents, folder).as_uri())
        for at, content in enumerate(contents):
            result = rounds(view, at)
            assert result["kept"] == content
            assert result["file"] == {"kept": content, "same": True}
            assert [result[name] for name in ("same", "asFile", "structure", "policy")] == [True] * 4
            assert result["larger"] <= len(json.dumps(content, ensure_ascii=False)) * 2 + FEW_BYTES
        assert view.run("() => window.ran ?? null") is None


@pytest.mark.parametrize("engine", ENGINES)
def test_a_few_stations_in_every_engine(engine: str, bundle: Bundle, tmp_path: Path) -> None:
    """A sample of the stations, through a page in each engine."""
    assert_rounds(engine, bundle, SAMPLE, tmp_path)


@pytest.mark.nightly
@pytest.mark.parametrize("engine", ENGINES)
def test_every_station_in_every_engine(engine: str, bundle: Bundle, tmp_path: Path) -> None:
    """All of them, through a page in each engine."""
    assert_rounds(engine, bundle, STATIONS, tmp_path)
