"""The payload: what it holds, and that its core answers as the one on this machine."""

import gzip
import hashlib
import io
import json
import math
import subprocess
import zipfile
from pathlib import Path
from typing import Any

import pytest

from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import Document
from jointwise.calc.operations import OPERATIONS, InputError, call

ROOT = Path(__file__).parents[2]
SCRIPTS = ROOT / "frontend/payload"
ALL = json.loads((SCRIPTS / "cases.json").read_text())
CASES = list({case["operation"]: case for case in reversed(ALL)}.values()) + [case for case in ALL if "packs" in case]
"""One of each operation, and those with packs: all others are asked in a browser (e2e/test_same_answers.py)."""

TOLERANCE = 1e-12
"""Elementwise maths differs by 6e-16 between the two homes, and a margin is a sum of some of it."""


def node(script: str, *arguments: str) -> str:
    """What a script of the payload prints."""
    command = ["node", str(SCRIPTS / script), *arguments]
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


@pytest.fixture(scope="module")
def payload(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A payload made from the sources as they are."""
    folder = tmp_path_factory.mktemp("payload")
    node("payload.mjs", str(folder))
    return folder


@pytest.fixture(scope="module")
def answers(payload: Path, tmp_path_factory: pytest.TempPathFactory) -> list[Any]:
    """What the payload's core says to every case."""
    cases = tmp_path_factory.mktemp("cases") / "cases.json"
    cases.write_text(json.dumps(CASES))
    return json.loads(node("ask.mjs", str(payload), str(cases)))


def described(payload: Path) -> dict[str, dict[str, Any]]:
    """The parts by name."""
    return {part["name"]: part for part in json.loads((payload / "payload.json").read_text())["parts"]}


def native(case: dict[str, Any]) -> Any:
    """The answer of the core on this machine, in the worker's form."""
    packs = [Document(pack["label"], pack["text"].encode()) for pack in case.get("packs", ())]
    try:
        return json.loads(call(case["operation"], case["body"].encode(), edition_of(packs) if packs else None))
    except InputError as error:
        return {"detail": str(error), "field": error.field, "value": error.value, "allowed": error.allowed}


def differences(one: Any, other: Any, path: str = "") -> list[str]:
    """Where two answers differ by more than the tolerance."""
    if isinstance(one, float) and isinstance(other, int | float):
        close = math.isclose(one, other, rel_tol=TOLERANCE, abs_tol=TOLERANCE)
        return [] if close else [f"{path}: {one!r}, {other!r}"]
    if isinstance(one, dict) and isinstance(other, dict) and one.keys() == other.keys():
        return [found for key in one for found in differences(one[key], other[key], f"{path}.{key}")]
    if isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        return [
            found for i, pair in enumerate(zip(one, other, strict=True)) for found in differences(*pair, f"{path}[{i}]")
        ]
    return [] if one == other else [f"{path}: {one!r}, {other!r}"]


@pytest.mark.parametrize("index", [index for index, case in enumerate(CASES) if case["operation"] in OPERATIONS])
def test_the_browsers_core_answers_as_this_one(answers: list[Any], index: int) -> None:
    """Every request gets the same answer in both homes."""
    found = differences(native(CASES[index]), answers[index])

    assert found == []


def test_a_fault_is_answered_with_a_reference_only(answers: list[Any]) -> None:
    """What is unforeseen reaches the user as one neutral sentence."""
    (index,) = (index for index, case in enumerate(CASES) if case["operation"] not in OPERATIONS)

    assert answers[index].keys() == {"detail"}
    assert "unheard_of" not in answers[index]["detail"]


def test_the_same_sources_give_the_same_bytes(payload: Path, tmp_path: Path) -> None:
    """A second run makes the same files."""
    node("payload.mjs", str(tmp_path))

    made = {path.name: path.read_bytes() for path in payload.iterdir()}
    assert made == {path.name: path.read_bytes() for path in tmp_path.iterdir()}


def test_the_list_tells_what_the_parts_are(payload: Path) -> None:
    """Size and hash in payload.json are those of the files."""
    for part in described(payload).values():
        data = (payload / part["file"]).read_bytes()

        assert (part["bytes"], part["sha256"]) == (len(data), hashlib.sha256(data).hexdigest())
        assert part["unpacked_bytes"] == len(gzip.decompress(data))


def test_no_source_goes_along(payload: Path) -> None:
    """The archives hold compiled modules, side modules, the catalogue and licences, and each licence."""
    for name in ("stdlib", "packages", "core"):
        archive = zipfile.ZipFile(io.BytesIO(gzip.decompress((payload / f"{name}.part").read_bytes())))
        kinds = {Path(file).suffix for file in archive.namelist() if ".dist-info/licenses/" not in file}

        assert kinds <= {".pyc", ".so", ".json"}
