"""Packs for the tests: built as plain data, read as the core reads them. All that is in them is invented."""

import json

import msgspec

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import Document
from jointwise.calc.operations import call

HEAD = {
    "id": "club",
    "name": "Invented club",
    "version": "1",
    "sources": [{"id": "sheet", "title": "Invented sheet", "seen": "read"}],
}
LIMIT = {"id": "old_panel", "power_w": 50, "reason": "Old panel.", "source": "sheet", "kind": "common practice"}


def built_in(table, id_, **changed):
    """A built-in entry as plain data, with other fields."""
    return msgspec.to_builtins(getattr(catalogue(), table)[id_]) | changed


def value(number, source="sheet", kind="datasheet"):
    """A sourced value."""
    return {"value": number, "source": source, "kind": kind}


def edition(*packs, **fields):
    """The edition of one pack with some fields, or of several whole packs."""
    texts = [json.dumps(pack).encode() for pack in packs or [HEAD | fields]]
    return edition_of([Document(f"{at}.json", text) for at, text in enumerate(texts)])


def ask(operation, edition_=None, **request):
    """An answer as plain data."""
    return json.loads(call(operation, json.dumps(request).encode(), edition_))
