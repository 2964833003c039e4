"""What the page's form for packs is made of: every part of a pack, as its types and checks declare it."""

from typing import Any

from msgspec import Struct, to_builtins

from jointwise.calc.catalogue import catalogue as tables
from jointwise.calc.catalogue.checks import CHOICES, choices_of
from jointwise.calc.catalogue.pack import TABLES, Pack
from jointwise.calc.catalogue.schema import Interval, Label, Quantity
from jointwise.calc.fields import Declared, Field, Flag, List, Map, Number, Object, OneOf, Text, object_of, objects_in

__all__ = ["pack_shapes"]

SOURCED = {Quantity: "quantity", Interval: "interval", Label: "label"}
"""Values that travel with where they come from; everything else with fields of its own is a part."""


def pack_shapes() -> dict[str, dict[str, dict[str, Any]]]:
    """The fields of every part of a pack, by the name of its Struct."""
    parts = {part.struct for part in objects_in(object_of(Pack))} - set(SOURCED)
    return {part.__name__: _fields(part) for part in sorted(parts, key=lambda part: part.__name__)}


def _fields(struct: type[Struct]) -> dict[str, dict[str, Any]]:
    return {name: _described(struct, field) for name, field in object_of(struct).fields.items()}


def _described(struct: type[Struct], field: Field) -> dict[str, Any]:
    facts: dict[str, Any] = {"label": field.label, "required": field.required}
    if field.description:
        facts["hint"] = field.description
    if field.group:
        facts["group"] = field.group
    if not field.required:
        facts["default"] = to_builtins(field.default)
    return {**facts, **_facts(field), **_choices(struct, field.name)}


def _facts(declared: Declared) -> dict[str, Any]:
    """What may stand there, and in which unit: the core's, and that of data sheets."""
    unit = {"unit": declared.unit, "sheet_unit": declared.sheet_unit}
    match declared.shape:
        case Number(least=least, most=most):
            return {"type": "number", **unit, "min": least, "max": most}
        case Flag():
            return {"type": "boolean"}
        case OneOf(words=words):
            return {"type": "choice", "choices": {word: word for word in words}}
        case Text(shortest=shortest, longest=longest):
            return {"type": "text", "shortest": shortest, "longest": longest}
        case List(entry=entry, shortest=shortest, longest=longest):
            return {"type": "list", "of": _facts(entry), "least": shortest, "most": longest}
        case Map(key=Declared(shape=OneOf(words=keys)), value=value):
            return {"type": "map", "keys": list(keys), "of": _facts(value)}
        case Object(struct=struct) if struct in SOURCED:
            bounds = {"min": declared.range.least, "max": declared.range.most} if declared.range else {}
            return {"type": SOURCED[struct], **unit, **bounds}
        case Object(struct=struct):
            return {"type": "part", "of": struct.__name__}
    raise TypeError(f"{declared.shape} has no place in a form")


def _choices(struct: type[Struct], name: str) -> dict[str, Any]:
    """What a field chooses among: a table that packs add to, by its name, or words each with its name."""
    choice = CHOICES.get(struct, {}).get(name)
    if choice is None:
        return {}
    return (
        {"table": choice}
        if isinstance(choice, str) and choice in TABLES
        else {"choices": dict(choices_of(choice, tables()))}
    )
