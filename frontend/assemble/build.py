"""Makes `dist/`: the served page under dist/site, and the one-file page dist/jointwise.html.

The bundles and the payload come from Node; everything is put together here.
The same sources give the same bytes.
"""

import base64
import hashlib
import json
import shutil
import subprocess
from pathlib import Path

from .licences import licences
from .page import check, expanded, part_element, policy, script_text, sizes
from .start_data import start_data
from .static_tables import markup
from .version import PROJECT, VERSION

__all__ = ["build"]

FRONTEND = PROJECT / "frontend"
MADE = FRONTEND / "build"
SITE = PROJECT / "dist" / "site"
ONE_FILE = PROJECT / "dist" / "jointwise.html"

COPIED = [
    *("app.js", "app.css", "charts.js", "codes.js", "licences.txt"),
    *("embed.js", "embed.html", "embed.css", "frame.js"),
    *("icon.svg", "manifest.webmanifest", "icon-192.png", "icon-512.png"),
]

FRAME = ["embed.html", "embed.css", "frame.js"]
"""The page for a frame; it always comes from the server, whose header says who may frame it."""

SERVED_HEAD = """<meta name="build" content="{build}">
<link rel="icon" href="icon.svg" type="image/svg+xml">
<link rel="apple-touch-icon" href="icon-192.png">
<link rel="manifest" href="manifest.webmanifest">
<link rel="stylesheet" href="app.css?build={build}">
<script type="module" src="app.js?build={build}"></script>"""
"""A page asks for the files of its own build by name, also once a newer one has taken over."""

SERVED_LICENCES = '<p><a href="licences.txt">Licences</a></p>'
TITLE = "Jointwise"
NOTHING_CARRIED = '<script type="application/json" id="carried">null</script>'
"""Where a page that a reader saves has the reader's own station."""

FIRST, LAST = ["page"], ["charts", "embed", "codes", "licences"]
"""What the one-file page holds packed before the payload, so that it survives a cut, and after, so that Python is
begun before it is read."""


def build() -> None:
    """Build everything and print the bytes by part. Raises CalledProcessError when a step of Node fails."""
    _prepare()
    tables = markup()
    _write_site(tables)
    _write_one_file(tables)


def _prepare() -> None:
    """Everything Node makes, in frontend/build."""
    for folder in (FRONTEND, FRONTEND / "runtime"):
        if not (folder / "node_modules").exists():
            _run("npm", "ci", "--no-audit", "--no-fund", "--prefix", str(folder))
    MADE.mkdir(exist_ok=True)
    (MADE / "start-data.json").write_text(json.dumps(start_data(), ensure_ascii=False, separators=(",", ":")))
    (MADE / "licences.txt").write_text(licences(PROJECT), "utf-8")
    _run("node", str(FRONTEND / "build.mjs"))
    _run("node", str(FRONTEND / "payload" / "payload.mjs"), str(MADE / "payload"))


def _run(*command: str) -> None:
    subprocess.run(command, check=True, cwd=PROJECT)  # noqa: S603  (the project's own scripts)


def _template(**parts: str) -> str:
    page = expanded((FRONTEND / "src" / "index.html").read_text("utf-8"), {"version": VERSION, **parts})
    check(page)
    return page


def _write_site(tables: str) -> None:
    shutil.rmtree(SITE, ignore_errors=True)
    SITE.mkdir(parents=True)
    for name in COPIED:
        shutil.copyfile(MADE / name, SITE / name)
    shutil.copytree(MADE / "payload", SITE / "payload")
    files = {path.relative_to(SITE).as_posix(): _integrity(path) for path in sorted(SITE.rglob("*")) if path.is_file()}
    for name in FRAME:
        del files[name]
    unnamed = json.dumps([files, _served_page(tables, build="")])
    version = hashlib.sha256(unnamed.encode()).hexdigest()[:16]
    (SITE / "index.html").write_text(_served_page(tables, version), "utf-8")
    files["./"] = _integrity(SITE / "index.html")
    known = json.dumps({"version": version, "files": files}, separators=(",", ":"))
    worker = (MADE / "service-worker.js").read_text("utf-8")
    (SITE / "service-worker.js").write_text(f"const BUILD={known};\n{worker}", "utf-8")


def _served_page(tables: str, build: str) -> str:
    head = SERVED_HEAD.format(build=build)
    parts = {"head": head, "tables": tables, "licences": SERVED_LICENCES}
    return _template(title=TITLE, policy="", carried="", code="", payload="", **parts)


def _integrity(path: Path) -> str:
    """The integrity value of a file (Subresource Integrity)."""
    return f"sha256-{base64.b64encode(hashlib.sha256(path.read_bytes()).digest()).decode()}"


def _write_one_file(tables: str) -> None:
    start = script_text((MADE / "start.js").read_text("utf-8"))
    scripts = [start, *((MADE / name).read_text("utf-8") for name in ("file.js", "charts.js", "embed.js", "codes.js"))]
    description = (MADE / "payload" / "payload.json").read_text("utf-8")
    files = {name: MADE / f"{name}.part" for name in FIRST}
    files |= {part["name"]: MADE / "payload" / part["file"] for part in json.loads(description)["parts"]}
    files |= {name: MADE / f"{name}.part" for name in LAST}
    lines = {name: base64.b64encode(path.read_bytes()).decode() for name, path in files.items()}
    icon = base64.b64encode((MADE / "icon.svg").read_bytes()).decode()
    style = (MADE / "app.css").read_text("utf-8")
    parts = {
        "title": TITLE,
        "policy": f'<meta http-equiv="Content-Security-Policy" content="{policy(scripts)}">',
        "head": f'<link rel="icon" href="data:image/svg+xml;base64,{icon}">\n<style>{style}</style>',
        "tables": tables,
        "carried": NOTHING_CARRIED,
        "code": "\n".join(
            [
                f'<script type="application/json" id="payload">{description.strip()}</script>',
                f"<script>{start}</script>",
            ]
        ),
        "payload": "\n".join(part_element(name, line) for name, line in lines.items()),
        "licences": (FRONTEND / "src/saved/licences.html").read_text("utf-8").rstrip(),
    }
    page = _template(**parts)
    ONE_FILE.write_text(page, "utf-8")
    unpacked = {name: text for name, text in parts.items() if name != "payload"}
    print(sizes(unpacked | {f"part {name}": line for name, line in lines.items()}))
    print(f"{len(page.encode()):>12,} {ONE_FILE.name}")
