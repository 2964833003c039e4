"""A Struct's fields as seen from outside: a query string, a command line, a help text.

Both doors bring text. Here it becomes the JSON that the core reads, and what
does not read as its field's type stays text, so that the core refuses it with
the same sentence whichever door it came by.
"""

import json
from collections.abc import Mapping, Sequence
from functools import lru_cache
from typing import Any, NamedTuple, cast

import msgspec
from msgspec import Struct, inspect

__all__ = ["Field", "fields", "plain", "request_body"]

RANGE_WORDS = {"ge": "from {}", "gt": "above {}", "le": "to {}", "lt": "below {}"}


class Field(NamedTuple):
    """One field: `type` is what a single value is read as, `many` says that it is a list of them."""

    name: str
    type: type[int] | type[float] | type[bool] | type[str]
    many: bool
    nullable: bool
    default: Any
    description: str
    unit: str
    allowed: str


@lru_cache
def fields(struct: type[Struct]) -> dict[str, Field]:
    """The fields of a Struct by name, in the order of its declaration."""
    declared = cast(inspect.StructType, inspect.type_info(struct))
    return {field.encode_name: _field(field) for field in declared.fields}


def request_body(struct: type[Struct], texts: Mapping[str, Sequence[str]]) -> bytes:
    """The JSON request that the texts of each name stand for.

    Lists may be comma separated, repeated, or both. Nothing is refused here:
    unknown names and unreadable values are passed on for the core to name.
    """
    known = fields(struct)
    request = {_clean(name): _value(known.get(name), [_clean(text) for text in given]) for name, given in texts.items()}
    return json.dumps(request).encode()  # writes NaN and infinity too, for the core to refuse by field


def plain(value: Any) -> str:
    """A value as text that reads back as the same value."""
    if isinstance(value, list):
        return ",".join(map(plain, value))
    if isinstance(value, bool):
        return str(value).lower()
    return repr(value).removesuffix(".0") if isinstance(value, float) else str(value)


def _field(field: inspect.Field) -> Field:
    description, unit, declared = _unwrap(field.type, "", "")
    members = getattr(declared, "types", (declared,))
    single = next(member for member in members if not isinstance(member, inspect.NoneType))
    description, unit, single = _unwrap(single, description, unit)
    many = False
    if isinstance(single, inspect.ListType):
        many = True
        _, unit, single = _unwrap(single.item_type, description, unit)
    return Field(
        name=field.encode_name,
        type=_python_type(single),
        many=many,
        nullable=len(members) > 1,
        default=field.default_factory() if callable(field.default_factory) else field.default,
        description=description,
        unit=unit,
        allowed=_allowed(single),
    )


def _unwrap(declared: inspect.Type, description: str, unit: str) -> tuple[str, str, inspect.Type]:
    while isinstance(declared, inspect.Metadata):
        description = description or (declared.extra_json_schema or {}).get("description", "")
        unit = unit or (declared.extra or {}).get("unit", "")
        declared = declared.type
    return description, unit, declared


def _python_type(single: inspect.Type) -> type:
    names = {inspect.FloatType: float, inspect.IntType: int, inspect.BoolType: bool}
    return names.get(type(single), str)


def _allowed(single: inspect.Type) -> str:
    if isinstance(single, inspect.LiteralType):
        return ", ".join(map(str, single.values))
    bounds = {name: getattr(single, name, None) for name in RANGE_WORDS}
    return " ".join(RANGE_WORDS[name].format(plain(at)) for name, at in bounds.items() if at is not None)


def _value(field: Field | None, given: Sequence[str]) -> Any:
    if field is not None and field.nullable and given == ["null"]:
        return None
    if field is not None and field.many:
        return [_scalar(field.type, part.strip()) for text in given if text for part in text.split(",")]
    if field is None or len(given) > 1:
        return given if len(given) > 1 else given[0]
    return _scalar(field.type, given[0])


def _scalar(type_: type, text: str) -> Any:
    try:
        return msgspec.convert(text, type_, strict=False)
    except msgspec.ValidationError:
        return text


def _clean(text: str) -> str:
    """Undecodable bytes of a command line can't go into JSON."""
    return text.encode(errors="replace").decode()
