"""Make the payload's archives inside the very Python that will read them.

Compiled modules fit one Python only. Public functions: `library`, `wheel`,
`core`, `archive`.
"""

import io
import json
import marshal
import tomllib
import zipfile
from collections.abc import Collection, Mapping
from importlib.util import MAGIC_NUMBER, source_hash
from pathlib import Path
from typing import Any

__all__ = ["archive", "core", "library", "wheel"]

LIBRARY = "/lib/python314.zip"
SITE = "/lib/python3.14/site-packages"
WITHOUT_DOCSTRINGS = 2
"""What `compile` calls the level of -OO; a reader of the page never sees a library's docstrings."""

ONLY_DOCSTRINGS = {"numpy/_core/_add_newdocs.py", "numpy/_core/_add_newdocs_scalars.py"}
"""Modules that give docstrings to what is written in C, and do nothing else."""

UNCHECKED_HASH = (1).to_bytes(4, "little")
"""The flags of a compiled module (PEP 552): its source is not packed, so there is nothing to compare the hash with."""

REGULAR_FILE = 0o100644 << 16
EARLIEST_DATE = (1980, 1, 1, 0, 0, 0)
"""The first a zip archive knows."""


def library(source: Path, modules: Collection[str]) -> dict[str, bytes]:
    """The named modules of the standard library, compiled. Raises ValueError for one it does not have."""
    return _chosen(zipfile.ZipFile(source), modules, LIBRARY)


def wheel(source: Path, modules: Collection[str] | None) -> dict[str, bytes]:
    """The named modules of a wheel, or all, compiled, with the licences it carries.

    Raises ValueError for a name the wheel does not have.
    """
    with zipfile.ZipFile(source) as opened:
        licences = {name: opened.read(name) for name in opened.namelist() if ".dist-info/licenses/" in name}
        top = {name.split("/")[0] for name in opened.namelist()}
        wanted = None if modules is None else [name for name in modules if name.split(".")[0] in top]
        return licences | _chosen(opened, wanted, SITE)


def core(folder: Path, worker: Path) -> dict[str, bytes]:
    """The calculation core with its catalogue, and the worker's door to it, as the package `jointwise`."""
    files = {"jointwise/worker.pyc": _compiled(worker.read_bytes(), f"{SITE}/jointwise/worker.py", WITHOUT_DOCSTRINGS)}
    for path in folder.rglob("*"):
        name = f"jointwise/calc/{path.relative_to(folder).as_posix()}"
        if path.suffix == ".py":
            files[f"{name}c"] = _compiled(path.read_bytes(), f"{SITE}/{name}", WITHOUT_DOCSTRINGS)
    files["jointwise/calc/catalogue/packed.json"] = json.dumps(_tables(folder / "catalogue")).encode()
    return files


def archive(files: Mapping[str, bytes]) -> bytes:
    """A zip of these files, sorted and undated.

    Stored, not packed: a part is packed in one piece, which is smaller, and
    unpacked by the browser, which is faster.
    """
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w", zipfile.ZIP_STORED) as opened:
        for name, data in sorted(files.items()):
            entry = zipfile.ZipInfo(name, EARLIEST_DATE)
            entry.external_attr = REGULAR_FILE
            opened.writestr(entry, data)
    return target.getvalue()


def _tables(folder: Path) -> dict[str, Any]:
    """The files of the catalogue as its own reader joins them: by name, and those in a folder as a list by its name."""
    tables: dict[str, Any] = {}
    for path in sorted(folder.rglob("*.toml")):
        table = tomllib.loads(path.read_text("utf-8"))
        if path.parent == folder:
            tables[path.stem] = table
        else:
            tables.setdefault(path.parent.name, []).append(table)
    return tables


def _chosen(opened: zipfile.ZipFile, modules: Collection[str] | None, place: str) -> dict[str, bytes]:
    available = {_module(name): name for name in opened.namelist() if name.endswith((".py", ".so"))}
    missing = sorted(set(modules or ()) - set(available))
    if missing:
        raise ValueError(f"{opened.filename} has no module {', '.join(missing)}")
    names = [available[module] for module in (available if modules is None else modules)]
    return dict(_importable(name, opened.read(name), place) for name in names)


def _module(name: str) -> str:
    path, _, file = name.rpartition("/")
    stem = file.split(".")[0]
    return ".".join([*path.split("/"), stem] if path else [stem]).removesuffix(".__init__")


def _importable(name: str, data: bytes, place: str) -> tuple[str, bytes]:
    if name.endswith(".so"):
        return name, data
    source = b"" if name in ONLY_DOCSTRINGS else data
    return f"{name}c", _compiled(source, f"{place}/{name}", WITHOUT_DOCSTRINGS)


def _compiled(source: bytes, name: str, level: int) -> bytes:
    code = compile(source, name, "exec", dont_inherit=True, optimize=level)
    return MAGIC_NUMBER + UNCHECKED_HASH + source_hash(source) + marshal.dumps(code)
