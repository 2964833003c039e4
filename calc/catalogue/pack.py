"""A pack: a user's own entries for the catalogue, as one JSON document; its shape, its reading, its JSON Schema.

A pack adds entries or overrides built-in ones. It holds data only: no formula
can be changed by it.
"""

from typing import Annotated, Any, NamedTuple

import msgspec
from msgspec import Meta, Struct

from ..errors import InputError
from ..refusal import decoded
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
)

__all__ = ["MOST_BYTES", "TABLES", "Document", "Overrides", "Pack", "pack_schema", "ranges", "read_pack"]

MOST_BYTES = 1_000_000
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
    adapters: Ids = []
    matings: Ids = []
    bands: Ids = []
    modes: Ids = []


class Pack(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Entries to lay over the catalogue. Every value names a source: one of the pack's own, or a built-in one."""

    id: Annotated[Id, Meta(description="Short name; it stands before the ids of the pack's sources")]
    name: Annotated[Name, Meta(description="Name shown beside everything that comes from the pack")]
    version: Annotated[str, Meta(min_length=1, max_length=40, description="Version or date of the pack")]
    sources: Annotated[list[PackSource], Meta(max_length=200, description="Where the values come from")]
    note: Annotated[Text, Meta(description="What the pack is for")] = ""
    overrides: Overrides = Overrides()
    interfaces: Annotated[list[Interface], Meta(max_length=60, description="Interface families")] = []
    cables: Annotated[list[Cable], Meta(max_length=60, description="Cables")] = []
    adapters: Annotated[list[Adapter], Meta(max_length=60, description="What the trade sells")] = []
    matings: Annotated[list[Mating], Meta(max_length=200, description="What comes of two families meeting")] = []
    bands: Annotated[list[Band], Meta(max_length=60, description="Amateur bands")] = []
    modes: Annotated[list[Mode], Meta(max_length=60, description="Emission modes")] = []
    default_powers_w: Annotated[
        list[Annotated[float, Meta(ge=0, le=1e5)]],
        Meta(max_length=24, description="Power levels of a matrix that asks for none [W]"),
    ] = []
    house_limits: Annotated[
        list[HouseLimit], Meta(max_length=100, description="Most power by the station's own rules")
    ] = []


TABLES = Overrides.__struct_fields__
"""The tables of the catalogue that a pack may add to and override in."""


def read_pack(document: Document) -> Pack:
    """The pack in a document. Raises InputError naming the field, the value and what is allowed."""
    if len(document.text) > MOST_BYTES:
        raise InputError("pack", "too long", f"a document of up to {MOST_BYTES} bytes")
    pack = decoded(document.text, Pack)
    for name in ("interfaces", "cables", "modes"):
        for at, entry in enumerate(getattr(pack, name)):
            _refuse_beyond_range(f"{name}[{at}]", entry)
    return pack


def pack_schema() -> dict[str, Any]:
    """The JSON Schema of a pack, made from the types; ranges of sourced values included."""
    schema = msgspec.json.schema(Pack)
    for definition, struct in ((one.__name__, one) for one in _with_ranges()):
        properties = schema["$defs"][definition]["properties"]
        for name, (unit, least, most) in ranges(struct).items():
            bounds = {"properties": {"value": {"minimum": least, "maximum": most}}}
            ends = {"properties": {"low": bounds, "high": bounds}}
            is_interval = "Interval" in str(properties[name])
            properties[name] = {**properties[name], **(ends if is_interval else bounds), "x-unit": unit}
    return {"$schema": DIALECT, "title": "Jointwise pack", **schema}


def ranges(struct: type[Struct]) -> dict[str, tuple[str, float, float]]:
    """Unit, least and most value of the fields of a type that have a range."""
    found = {}
    for field in msgspec.structs.fields(struct):
        for meta in getattr(field.type, "__metadata__", ()):
            if (meta.extra or {}).get("least") is not None:
                found[field.name] = (meta.extra["unit"], meta.extra["least"], meta.extra["most"])
    return found


def _with_ranges() -> list[type[Struct]]:
    kinds = [Interface, Cable, Mode]
    inner = [field.type for kind in kinds for field in msgspec.structs.fields(kind)]
    return kinds + [one for one in _structs(inner) if ranges(one)]


def _structs(types: list[Any]) -> list[type[Struct]]:
    """The struct types among some types, unions taken apart."""
    flat = [part for one in types for part in getattr(one, "__args__", ()) or (one,)]
    return list(dict.fromkeys(one for one in flat if isinstance(one, type) and issubclass(one, Struct)))


def _refuse_beyond_range(path: str, entry: Struct) -> None:
    bounds = ranges(type(entry))
    for name in entry.__struct_fields__:
        value, here = getattr(entry, name), f"{path}.{name}"
        if name in bounds and isinstance(value, Quantity):
            _refuse_outside(f"{here}.value", value.value, *bounds[name])
        elif name in bounds and isinstance(value, Interval):
            _refuse_outside(f"{here}.low.value", value.low.value, *bounds[name])
            _refuse_outside(f"{here}.high.value", value.high.value, *bounds[name])
            # a section's ends are the cautious and the generous one, whichever is larger
            if value.low.value > value.high.value and not isinstance(entry, Section):
                raise InputError(f"{here}.low.value", value.low.value, f"no more than the high end, {value.high.value}")
        elif isinstance(value, Struct):
            _refuse_beyond_range(here, value)


def _refuse_outside(field: str, value: float, unit: str, least: float, most: float) -> None:
    if not least <= value <= most:
        raise InputError(field, value, f"a number from {least:g} to {most:g} {unit}".removesuffix(" 1"))
