"""The recipes of DEVELOPERS.md, "Adding", followed in a copy of the sources: what they add passes the tests."""

import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
COPIED = [".package", "backend", "calc", "frontend/assemble", "frontend/payload", "frontend/src", "tests"]


@pytest.fixture
def sources(tmp_path):
    """A copy of the sources to add to."""
    for folder in COPIED:
        shutil.copytree(ROOT / folder, tmp_path / folder, symlinks=True, ignore=shutil.ignore_patterns("__pycache__"))
    for file in ("pyproject.toml", "frontend/tables.mjs"):
        shutil.copy(ROOT / file, tmp_path / file)
    for folder in ("dist", "frontend/node_modules"):
        (tmp_path / folder).symlink_to(ROOT / folder)
    return tmp_path


def run(sources, *command):
    """What a command prints that is run on the copy; fails with what it says."""
    environment = os.environ | {"PYTHONPATH": str(sources / ".package"), "PYTHONDONTWRITEBYTECODE": "1"}
    done = subprocess.run(command, cwd=sources, env=environment, capture_output=True, text=True, check=False)

    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def run_tests(sources, *tests):
    """Run some tests on the copy."""
    run(sources, sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", *tests)


def append(path, text):
    """Put an entry, or a function, at the end of a file."""
    path.write_text(f"{path.read_text('utf-8')}\n{text}", "utf-8")


def change(path, before, after):
    """Change the one place of a file where a text stands."""
    text = path.read_text("utf-8")
    assert text.count(before) == 1, f"{path.name} has {before!r} {text.count(before)} times"
    path.write_text(text.replace(before, after), "utf-8")


def copy_entry(path, new, **values):
    """A family or cable with another id, and other numbers or words in some fields, in a file of its own."""
    text = path.read_text("utf-8")
    for field, value in {"id": f'"{new}"', "name": '"Added"', **values}.items():
        text, found = re.subn(rf"^({field} = (?:{{ value = )?)[^,\n]+", rf"\g<1>{value}", text, count=1, flags=re.M)
        assert found, field
    path.with_name(f"{new}.toml").write_text(text, "utf-8")


BARRELS = """[[adapter]]
id = "added"
joins = ["added", "n", "sma"]
source = "common_practice"
kind = "common practice"
"""
PLATINGS = """[[plating_sold]]
id = "added"
inner = ["gold"]
outer = ["nickel", "silver"]
source = "common_practice"
kind = "common practice"
"""
MATING = """[[mating]]
id = "added_and_tnc"
plug = "added"
jack = "tnc"
verdict = "does not fit"
text = "The threads differ."
source = "memory"
kind = "memory"
"""


def test_a_family_is_added(sources):
    """A family is its file with its customary cable, its barrels, its platings, and how it meets others."""
    tables = sources / "calc/catalogue"
    sizes = {"vswr_typical": 1.15, "body_diameter_m": 16e-3, "customary_cable": '"rg_223"'}
    copy_entry(tables / "interfaces/tnc.toml", "added", order=1000, **sizes)
    append(tables / "adapters.toml", BARRELS)
    append(tables / "galvanic.toml", PLATINGS)
    append(tables / "matings.toml", MATING)

    run_tests(
        sources,
        *("tests/calc/test_entries.py", "tests/published/test_choices.py", "tests/published/test_situations.py"),
        *("tests/published/test_matings.py", "tests/assemble/test_static_tables.py"),
        "tests/calc/test_fitout.py::test_the_fitting_tables_cover_the_catalogue",
        "tests/calc/test_kit.py::test_every_family_is_in_the_trade",
        "tests/calc/test_snapshot.py::test_too_many_cells_are_refused",
    )


MODE = """[[mode]]
id = "added"
name = "Added"
duty_factor = { value = 0.3, source = "common_practice", kind = "common practice" }
"""
CONDITION = """[[condition]]
id = "added"
name = "Added"
added_resistance_ohm = { value = 0.01, source = "common_practice", kind = "common practice" }
"""
BAND = """[[band]]
id = "added"
name = "Added"
[band.regions.1]
low_hz = 76000000000
high_hz = 77500000000
source = "itu_rr_art_5"
kind = "memory"
"""


def test_a_cable_and_entries_of_tables_are_added(sources):
    """A cable is its file with its build, and its screen; a mode, a condition, a band is an entry of its table."""
    tables = sources / "calc/catalogue"
    build = {"screen_diameter_m": 3.7e-3, "screen_area_m2": 1.5e-6, "jacket_material": '"pe"'}
    copy_entry(tables / "cables/rg_58.toml", "added", order=1000, outer_diameter_m=5.1e-3, **build)
    change(tables / "fitting.toml", '"rg_58", "rg_59"', '"rg_58", "added", "rg_59"')
    append(tables / "modes.toml", MODE)
    append(tables / "conditions.toml", CONDITION)
    append(tables / "bands.toml", BAND)

    run_tests(
        sources,
        *("tests/calc/test_entries.py", "tests/calc/test_cables.py", "tests/published/test_bands.py"),
        *("tests/published/test_duty.py", "tests/published/test_situations.py"),
        "tests/calc/test_fitout.py::test_the_fitting_tables_cover_the_catalogue",
    )


FORMULA = """
@formula(
    title="Added",
    equation="V_r = v*Gamma",
    symbols={"V_r": ("voltage reflected", "V"), "v": ("voltage sent", "V", 0, 1e4), "Gamma": _GAMMA},
    validity="as declared",
    source="microwave_textbook",
)
def added(v: Number, Gamma: Number) -> Number:
    return v * Gamma
"""


def test_a_formula_is_added(sources):
    """A formula is a declared function in the module of its subject."""
    subject = sources / "calc/formulas/match.py"
    append(subject, FORMULA)
    change(subject, "__all__ = [\n", '__all__ = [\n    "added",\n')

    run_tests(sources, "tests/calc/test_equations.py", "-k", "added")
    run_tests(sources, "tests/calc/test_entries.py", "-k", "source")


REQUESTS = '''"""What a caller may ask of an added operation."""

from typing import Annotated

from msgspec import Meta, Struct

__all__ = ["AddedRequest"]


class AddedRequest(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A length."""

    length_m: Annotated[float, Meta(ge=0, le=100, description="A length", extra={"unit": "m"})]
'''
RESULTS = '''"""What an added operation answers."""

from msgspec import Struct

__all__ = ["AddedResult"]


class AddedResult(Struct, frozen=True):
    """Twice the length."""

    length_m: float
'''
ROOM = '''"""The operation added: twice a length."""

from .requests import AddedRequest
from .results import AddedResult

__all__ = ["added"]


def added(request: AddedRequest) -> AddedResult:
    """Twice the length."""
    return AddedResult(2 * request.length_m)
'''
LOADER = """def _added() -> Task[Any, Any]:
    from .added.added import added
    from .added.requests import AddedRequest
    from .added.results import AddedResult

    return Task(added, AddedRequest, AddedResult)


OPERATIONS = {
"""
ROW = """        Operation(
            "added",
            "Twice a length.",
            _added,
            cacheable=True,
        ),
    )
}
"""
CASES = r"""
  {"operation": "added", "body": "{\"length_m\":1}"},
  {"operation": "added", "body": "{\"length_m\":-1}"},
"""


def test_an_operation_is_added(sources):
    """An operation is a room, a loader with its row, and requests that ask it."""
    room, door = sources / "calc/added", sources / "calc/operations.py"
    room.mkdir()
    for name, text in {
        "__init__": '"""Twice a length."""\n',
        "requests": REQUESTS,
        "results": RESULTS,
        "added": ROOM,
    }.items():
        (room / f"{name}.py").write_text(text, "utf-8")
    change(door, "OPERATIONS = {\n", LOADER)
    change(door, "    )\n}\n", ROW)
    change(sources / "frontend/payload/cases.json", "[\n", f"[{CASES}")

    run_tests(sources, "tests/calc/test_rooms.py", "tests/calc/test_answers.py::test_every_operation_has_an_example")
    run_tests(
        sources,
        *("tests/calc/test_answers.py", "tests/calc/test_packs.py", "tests/calc/test_refusals.py"),
        *("tests/backend/test_app.py", "tests/backend/test_bounds.py", "tests/backend/test_texts.py"),
        *("tests/backend/test_openapi.py", "-k", "added or openapi_3_1"),
    )


VIEW = """/** The view Added. */
import {html} from 'lit';

export const added = {
  id: 'added',
  label: 'Added',
  fields: ({requests: {line}}) => ({added: {power_w: line.power_w}}),
  words: () => ({'added.power_w': {label: 'Power'}}),
  element: () => html`<p class="view">Added</p>`,
};
"""
START_DATA = """
import json
from jointwise.assemble.start_data import start_data
print(json.dumps(start_data()))
"""


def test_a_view_is_added(sources):
    """A view is a folder with its descriptor and a line in the list: the switch offers it, its fields are there."""
    views = sources / "frontend/src/app/views.js"
    (sources / "frontend/src/added").mkdir()
    (sources / "frontend/src/added/view.js").write_text(VIEW, "utf-8")
    change(views, "import {choose}", "import {added} from '../added/view.js';\nimport {choose}")
    change(views, "sweep];", "sweep, added];")

    (sources / "frontend/build").mkdir()
    (sources / "frontend/build/start-data.json").write_text(run(sources, sys.executable, "-c", START_DATA), "utf-8")
    page = json.loads(run(sources, "node", "tests/payload/switch.mjs"))
    assert re.search(r"<button data-view=added [^<]*>Added</button>", page["switch"])
    assert page["views"][-2:] == ["added", "packs"]
    assert page["fields"]["added"] == ["power_w"]
    run(sources, "node", "--test", "tests/payload/rooms.test.mjs")
