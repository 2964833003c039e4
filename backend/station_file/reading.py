"""Reading a station file, or the page that carries one: every document that can be taken, and why the others can't."""

import json
import re
from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from jointwise.calc.catalogue import Edition
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import Document
from jointwise.calc.errors import InputError, shown
from jointwise.calc.fields import object_of
from jointwise.calc.refusal import first_fault

from ..refused import refused_words
from .documents import FORMAT, VERSION, Kept

__all__ = ["MOST_BYTES", "StationFile", "read"]

MOST_BYTES = 60_000_000
"""A saved page is 10 MB; what it carries may be a few sweeps of 8 MB."""

CARRIED_IN_PAGE = re.compile(r'<script type="application/json" id="carried">(.*?)</script>', re.DOTALL)
"""Where a saved page has it; nothing in the text ends the element."""

HALF_CHARACTER = re.compile("[\ud800-\udfff]")
"""Half of a surrogate pair, which JSON can spell and which is no text."""

LONGEST_NAME = 60
LONGEST_DATE = 10


class KeptPack(NamedTuple):
    """A pack in a file, and whether it counts."""

    name: str
    text: str
    counts: bool


class StationFile(NamedTuple):
    """What a file holds; `kept` are the documents that were read, `unread` says in a sentence why others were not."""

    name: str
    date: str
    kept: dict[str, Any]
    unread: list[str]

    @property
    def packs(self) -> list[KeptPack]:
        """The packs as the page lays them over the catalogue: the server's first, then one's own."""
        packs = self.kept.get("packs", {"own": [], "server": []})
        return [
            *(KeptPack(_called(pack), pack["text"], True) for pack in packs["server"]),
            *(KeptPack(_called(pack), pack["text"], pack.get("on", False)) for pack in packs["own"]),
        ]

    @property
    def lines(self) -> list[dict[str, Any]]:
        """The lines, each with name and request."""
        return self.kept.get("lines", {"lines": []})["lines"]

    @property
    def sweeps(self) -> list[dict[str, Any]]:
        """The kept sweeps."""
        return self.kept.get("sweeps", [])

    @property
    def book(self) -> list[dict[str, Any]]:
        """The records of the joint book."""
        return self.kept.get("joints", {"joints": []})["joints"]

    def line(self, name: str) -> dict[str, Any]:
        """The line of a name, or of a number from 1. Raises InputError naming those there are."""
        return _named("Line", name, self.lines)

    def sweep(self, name: str) -> dict[str, Any]:
        """The sweep of a file name, the latest of several, or of a number from 1. Raises InputError as `line` does."""
        return _named("Sweep", name, self.sweeps)

    def edition(self) -> Edition | None:
        """The catalogue with the packs that count; None without any. Raises InputError naming the pack."""
        counting = [Document(pack.name, pack.text.encode()) for pack in self.packs if pack.counts]
        return edition_of(counting) if counting else None


def read(content: str) -> StationFile:
    """The station in a text. Raises InputError for what is no station file, and for one of a newer version."""
    carried = CARRIED_IN_PAGE.search(content)
    try:
        value = json.loads(carried[1] if carried else content.removeprefix("\ufeff"))
    except (ValueError, RecursionError):
        allowed = "a station file, or a page saved with a station in it"
        raise InputError("station file", content[:200], allowed) from None
    if value is None:
        raise InputError("station file", None, "a page saved with a station in it; this one was saved without")
    if not isinstance(value, dict) or value.get("format") != FORMAT:
        found = value.get("format") if isinstance(value, dict) else value
        raise InputError("format", found, f'"{FORMAT}"')
    if value.get("version") != VERSION:
        raise InputError("version", value.get("version"), f"{VERSION}; a newer file asks for a newer Jointwise")
    kept = value.get("kept")
    if not isinstance(kept, dict):
        raise InputError("kept", kept, "a JSON object")
    name, date = (_text(value, *field) for field in (("name", LONGEST_NAME), ("date", LONGEST_DATE)))
    faults = {key: _fault(key, document) for key, document in kept.items()}
    return StationFile(
        name=name,
        date=date,
        kept={key: document for key, document in kept.items() if not faults[key]},
        unread=[fault for fault in faults.values() if fault],
    )


def _named(what: str, name: str, entries: Sequence[dict[str, Any]]) -> dict[str, Any]:
    by_name = {entry["name"]: entry for entry in entries}
    if name in by_name:
        return by_name[name]
    if name.isdecimal() and 1 <= int(name) <= len(entries):
        return entries[int(name) - 1]
    known = ", ".join(f"{at + 1} {shown(entry['name'])}" for at, entry in enumerate(entries))
    raise InputError(what, name, f"one of {known}" if known else "nothing, as the file has none")


def _called(pack: Mapping[str, Any]) -> str:
    return pack.get("name", "") or "pack"


def _text(value: Mapping[str, Any], field: str, longest: int) -> str:
    text = value.get(field)
    if not isinstance(text, str) or len(text) > longest or HALF_CHARACTER.search(text):
        raise InputError(field, text, f"a text of at most {longest} characters")
    return text


def _fault(key: str, document: object) -> str:
    """Why a document can't be taken, in a sentence; empty where it can."""
    if key not in object_of(Kept).fields:
        known = ", ".join(object_of(Kept).fields)
        return f"{shown(key)} is not known to this version; known: {known}."
    fault = first_fault({key: document}, object_of(Kept))
    return refused_words(fault, Kept) if fault else ""
