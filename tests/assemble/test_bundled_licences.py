"""Every package whose code the pages hold is named among the licences."""

import json
import re
from pathlib import Path

from jointwise.assemble.licences import PACKAGES, licences

ROOT = Path(__file__).parents[2]
FRONTEND = ROOT / "frontend"


def test_every_bundled_package_has_its_licence():
    """What the sources import is declared, and the licences are gathered for just what is declared."""
    imported = {
        re.match(r"@[^/]+/[^/]+|[^/]+", name)[0]
        for file in FRONTEND.joinpath("src").rglob("*.js")
        for name in re.findall(r"^(?:import|export)\b.*?from '([@a-z][^']*)'", file.read_text("utf-8"), re.M)
    }
    declared = json.loads((FRONTEND / "package.json").read_text())["dependencies"]

    assert imported <= declared.keys()
    assert sorted(PACKAGES) == sorted(declared)


def test_every_wheel_and_runtime_has_its_licence():
    """Each wheel packed for the browser, and Pyodide and Python themselves, head a text that is not empty."""
    texts = dict(re.findall(r"^=== (.*?) ===\n\n(.*?)(?=\n\n=== |\Z)", licences(ROOT), re.M | re.S))
    wheels = {wheel.name.split("-")[0] for wheel in FRONTEND.joinpath("runtime").glob("*.whl")}

    assert wheels | {"Jointwise", "Pyodide", "Python"} <= {name.split("-")[0] for name in texts}
    assert all(len(text) > 200 for text in texts.values())
