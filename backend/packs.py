"""Where the packs of a server or a command come from: files, a folder, and installed packages.

A package publishes packs by an entry point of group `jointwise.packs` that
names a function without arguments; it returns the packs' JSON texts as bytes.
"""

import logging
from codecs import BOM_UTF8
from collections.abc import Iterable
from fnmatch import fnmatch
from importlib.metadata import entry_points
from pathlib import Path

from jointwise.calc.catalogue import Edition
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import MOST_PACK_BYTES, Document
from jointwise.calc.operations import InputError

__all__ = ["GROUP", "documents", "edition_of_files", "from_files", "from_folder", "from_packages"]

GROUP = "jointwise.packs"

logger = logging.getLogger(__name__)


def edition_of_files(paths: Iterable[Path]) -> Edition | None:
    """The catalogue with the packs of some files; None when there are none. Raises InputError naming the file."""
    found = from_files(paths)
    return edition_of(found) if found else None


def documents(folder: str) -> list[Document]:
    """The packs of a server: those of installed packages, then those of its folder if it has one."""
    return from_packages() + (from_folder(Path(folder)) if folder else [])


def from_files(paths: Iterable[Path]) -> list[Document]:
    """The documents in some files. Raises InputError for a file that can't be read."""
    return [_read(path) for path in paths]


def from_folder(folder: Path) -> list[Document]:
    """The documents of a folder: its files named *.json in order of their names; what else lies there is logged.

    A hidden file is what an editor or a copy under way leaves behind, and reading a pipe would wait for ever.
    """
    try:
        found = sorted(folder.iterdir())
        packs = [path for path in found if fnmatch(path.name, "[!.]*.json") and path.is_file()]
    except OSError as error:
        allowed = f"a folder that can be read, or nothing; {error.strerror}"
        raise InputError("packs_folder", str(folder), allowed) from error
    if strays := [path.name for path in found if path not in packs]:
        logger.warning("Not taken as packs from %r: %s.", str(folder), ", ".join(map(repr, strays)))
    return from_files(packs)


def from_packages() -> list[Document]:
    """The documents that installed packages publish."""
    found = []
    for point in sorted(entry_points(group=GROUP), key=lambda point: point.name):
        label = f"entry point {point.name}"
        try:  # a package may fail in any way
            texts = list(point.load()())
        except Exception as error:
            raise InputError(label, f"{type(error).__name__}: {error}", "a function that returns packs") from error
        for text in texts:
            if not isinstance(text, bytes):
                raise InputError(label, type(text).__name__, "packs as bytes")
            found.append(Document(label, text))
    return found


def _read(path: Path) -> Document:
    try:
        with path.open("rb") as file:
            # one byte more than a pack may have is enough to refuse it by its length
            return Document(path.name, file.read(MOST_PACK_BYTES + 1).removeprefix(BOM_UTF8))
    except OSError as error:
        raise InputError("pack", str(path), f"a file that can be read; {error.strerror}") from error
