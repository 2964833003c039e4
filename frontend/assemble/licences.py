"""The licence texts of everything `dist/` holds, gathered from where each part came from."""

import zipfile
from pathlib import Path

__all__ = ["licences"]

PACKAGES = {
    "@lit/context": "LICENSE",
    "@noble/hashes": "LICENSE",
    "culori": "LICENSE",
    "lit": "LICENSE",
    "plotly.js": "LICENSE",
    "qr": "LICENSE-MIT",
}
"""Of the page's own packages those whose code is bundled, with the file of the text; lit's parts share theirs."""


def licences(project: Path) -> str:
    """Every licence text under the name of its part, plain text."""
    frontend = project / "frontend"
    texts = {"Jointwise": (project / "LICENSE").read_text("utf-8")}
    for package, file in PACKAGES.items():
        texts[package] = (frontend / "node_modules" / package / file).read_text("utf-8")
    for path in sorted((frontend / "licences").glob("*.txt")):
        texts[path.stem.capitalize()] = path.read_text("utf-8")
    for wheel in sorted((frontend / "runtime").glob("*.whl")):
        with zipfile.ZipFile(wheel) as archive:
            for name in sorted(archive.namelist()):
                if "/licenses/" in name:
                    texts[name.replace(".dist-info/licenses", "")] = archive.read(name).decode("utf-8")
    return "\n\n".join(f"=== {name} ===\n\n{text.strip()}" for name, text in texts.items())
