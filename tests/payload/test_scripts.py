"""The page's side of the worker and the making of its script: the tests in JavaScript beside this file."""

import subprocess
from pathlib import Path

import pytest

SCRIPTS = sorted(Path(__file__).parent.glob("*.test.mjs"))


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda path: path.name)
def test_script_passes(script: Path) -> None:
    """Every test of the file passes under Node."""
    done = subprocess.run(["node", "--test", str(script)], capture_output=True, text=True, check=False)

    assert done.returncode == 0, done.stdout
