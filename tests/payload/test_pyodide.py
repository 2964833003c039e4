"""The core's tests and a slice of numpy's, run by the very Python that goes along, here under Node."""

import json
import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PAYLOAD = ROOT / "dist/site/payload"
WHEELS = ROOT / "frontend/build/wheels"
"""`make test` fetches the tools, `make nightly` numpy's tests too."""
PINNED = Path(__file__).with_name("numpy.txt")

TAIL_LINES = 60
FEW = ["--deselect=tests/calc/test_cover.py", "--hypothesis-profile=few"]
"""Searches, and all examples, take the browser's Python minutes."""


def printed(*command: str | Path) -> str:
    """What a script prints; fails with its last lines when it ends in an error."""
    done = subprocess.run(
        ["node", *command],
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        check=False,
    )
    assert done.returncode == 0, "\n".join(done.stdout.splitlines()[-TAIL_LINES:])
    return done.stdout


@pytest.mark.parametrize("less", [pytest.param(FEW, id="few"), pytest.param([], marks=pytest.mark.nightly, id="all")])
def test_the_core_passes_its_own_tests(less: list[str]) -> None:
    """The payload's core passes all tests of what can differ there, and skips none."""
    found = printed(ROOT / "frontend/payload/core-tests.mjs", PAYLOAD, WHEELS / "tools", "-rs", *less)

    assert re.search(r"\d+ passed", found), found
    assert [line for line in found.splitlines() if line.startswith("SKIPPED")] == []


def test_the_wheels_are_the_recorded_ones() -> None:
    """Both committed wheels install, have the recorded hashes and ask for nothing their Python does not offer."""
    printed(ROOT / "frontend/runtime/smoke.mjs")


@pytest.mark.nightly
def test_numpy_passes_its_own_tests() -> None:
    """The committed numpy is the recorded one, fits its Python, and passes its own tests of what the core uses."""
    found = printed(ROOT / "frontend/runtime/smoke.mjs", WHEELS / "tools", WHEELS / "numpy")

    assert re.search(r"\d+ passed", found), found


def test_the_tests_are_of_the_numpy_that_goes_along() -> None:
    """The wheel that the nightly run takes numpy's tests from has the version of the one committed."""
    versions = json.loads((PAYLOAD / "payload.json").read_text())["versions"]

    assert re.findall(r"^numpy==(\S+)", PINNED.read_text(), re.MULTILINE) == [versions["numpy"]]
