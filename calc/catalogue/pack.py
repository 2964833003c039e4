"""A pack: a user's own entries for the catalogue, as one JSON document; its shape, its reading, its JSON Schema.

A pack adds entries or overrides built-in ones. It holds data only: no formula
can be changed by it.
"""

from typing import Annotated, Any, NamedTuple

import msgspec
from msgspec import Meta, Struct

from ..errors import HIDDEN, InputError
from ..fields import Field, Object, Range, object_of, objects_in
from ..refusal import decoded, refuse_given_twice, refuse_unbounded
from .earlier import brought_up_to_date
from .schema import (
    Adapter,
    Band,
    Cable,
    HouseLimit,
    Id,
    Interface,
    Interval,
    Mating,
    Mode,
    Name,
    PackSource,
    Quantity,
    Section,
    Text,
    WireLine,
)

__all__ = ["MOST_PACK_BYTES", "TABLES", "Document", "Overrides", "Pack", "ReadPack", "pack_schema", "read_pack"]

MOST_PACK_BYTES = 1_000_000
"""Longest pack; a longer one is refused before anything of it is read."""

DIALECT = "https://json-schema.org/draft/2020-12/schema"

Ids = Annotated[list[Id], Meta(max_length=100)]


class Document(NamedTuple):
    """The text of a pack, and what to call it in a refusal: a file name, or nothing."""

    label: str
    text: bytes


class Overrides(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The ids of the built-in entries that a pack means to replace; only these it may."""

    interfaces: Ids = []
    cables: Ids = []
    wire_lines: Ids = []
    adapters: Ids = []
    matings: Ids = []
    bands: Ids = []
    modes: Ids = []


class Pack(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Entries to lay over the catalogue. Every value names a source: one of the pack's own, or a built-in one."""

    id: Annotated[Id, Meta(description="Short name; it stands before the ids of the pack's sources")]
    name: Annotated[
        Name, Meta(title="Name of the pack", description="Name shown beside everything that comes from the pack")
    ]
    version: Annotated[str, Meta(min_length=1, max_length=40, title="Version or date")]
    sources: Annotated[list[PackSource], Meta(max_length=200, description="Where the values come from")]
    note: Annotated[Text, Meta(title="What the pack is for")] = ""
    overrides: Overrides = Overrides()
    interfaces: Annotated[
        list[Interface], Meta(max_length=60, title="Connector", description="Kinds of connector")
    ] = []
    cables: Annotated[list[Cable], Meta(max_length=60, title="Cable", description="Cables")] = []
    wire_lines: Annotated[list[WireLine], Meta(max_length=60, title="Two-wire line", description="Two-wire lines")] = []
    adapters: Annotated[list[Adapter], Meta(max_length=60, title="Adapters", description="What the trade sells")] = []
    matings: Annotated[
        list[Mating],
        Meta(max_length=200, title="Meeting of two connectors", description="What comes of two connectors meeting"),
    ] = []
    bands: Annotated[list[Band], Meta(max_length=60, title="Band", description="Amateur bands")] = []
    modes: Annotated[list[Mode], Meta(max_length=60, title="Mode", description="Emission modes")] = []
    default_powers_w: Annotated[
        list[Annotated[float, Meta(ge=0, le=1e5, extra={"unit": "W"})]],
        Meta(max_length=24, title="Default powers", description="Power levels of a matrix that asks for none [W]"),
    ] = []
    house_limits: Annotated[
        list[HouseLimit], Meta(max_length=100, title="House limit", description="Most power by the station's own rules")
    ] = []


TABLES = Overrides.__struct_fields__
"""The tables of the catalogue that a pack may add to and override in."""


class ReadPack(NamedTuple):
    """A pack; sentences on what of an earlier version was changed in reading it, and its text as it is then."""

    pack: Pack
    changed: list[str]
    today: str
    """Empty where nothing was changed."""


def read_pack(document: Document) -> ReadPack:
    """The pack in a document, of this version or an earlier one.

    Raises InputError naming the field, the value and what is allowed.
    """
    if len(document.text) > MOST_PACK_BYTES:
        raise InputError("pack", "too long", f"a document of up to {MOST_PACK_BYTES} bytes")
    refuse_unbounded(document.text)
    refuse_given_twice(document.text)
    text, changed = brought_up_to_date(document.text)
    pack = decoded(text, Pack)
    _refuse_hidden("", msgspec.to_builtins(pack))
    for table in ("interfaces", "cables", "wire_lines", "modes"):
        for at, entry in enumerate(getattr(pack, table)):
            _refuse_beyond_range(f"{table}[{at}]", entry)
    return ReadPack(pack, changed, text.decode() if changed else "")


def pack_schema() -> dict[str, Any]:
    """The JSON Schema of a pack, made from the types; ranges of sourced values included."""
    schema = msgspec.json.schema(Pack)
    for declared in objects_in(object_of(Pack)):
        properties = schema["$defs"][declared.struct.__name__]["properties"]
        for field in declared.fields.values():
            if field.range is not None:
                value = {"properties": {"value": {"minimum": field.range.least, "maximum": field.range.most}}}
                ends = {"properties": {"low": value, "high": value}}
                bounds = ends if _is_interval(field) else value
                properties[field.name] = {**properties[field.name], **bounds, "x-unit": field.unit}
    return {"$schema": DIALECT, "title": "Jointwise pack", **schema}


def _is_interval(field: Field) -> bool:
    return isinstance(field.shape, Object) and field.shape.struct is Interval


def _refuse_hidden(path: str, value: object) -> None:
    """Raise InputError for the first text that holds what is not seen but steers a terminal or a line of text."""
    match value:
        case str():
            if HIDDEN.search(value):
                raise InputError(path, value, "a text without control characters and marks of direction")
        case list():
            for at, entry in enumerate(value):
                _refuse_hidden(f"{path}[{at}]", entry)
        case dict():
            for name, entry in value.items():
                _refuse_hidden(path, name)
                _refuse_hidden(f"{path}.{name}".removeprefix("."), entry)


def _refuse_beyond_range(path: str, entry: Struct) -> None:
    """Raise InputError for the first sourced value of an entry that lies outside the range of its field."""
    for field in object_of(type(entry)).fields.values():
        value, field_path = getattr(entry, field.name), f"{path}.{field.name}"
        if field.range is not None and isinstance(value, Quantity):
            _refuse_outside(f"{field_path}.value", value.value, field.unit, field.range)
        elif field.range is not None and isinstance(value, Interval):
            _refuse_outside(f"{field_path}.low.value", value.low.value, field.unit, field.range)
            _refuse_outside(f"{field_path}.high.value", value.high.value, field.unit, field.range)
            # a section's ends are the cautious and the generous one, whichever is larger
            if value.low.value > value.high.value and not isinstance(entry, Section):
                allowed = f"no more than the high end, {value.high.value}"
                raise InputError(f"{field_path}.low.value", value.low.value, allowed)
        elif isinstance(value, Struct):
            _refuse_beyond_range(field_path, value)


def _refuse_outside(path: str, value: float, unit: str, allowed: Range) -> None:
    if not allowed.least <= value <= allowed.most:
        words = f"a number from {allowed.least:g} to {allowed.most:g} {unit}".removesuffix(" 1")
        raise InputError(path, value, words)
