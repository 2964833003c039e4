"""Requests and settings written as texts: a query string, a command line, an environment.

Here text becomes the JSON that the core reads, and what does not read as its
field's type stays text, so that the core refuses it with the same sentence
whichever door it came by.
"""

import json
from collections.abc import Mapping, Sequence
from typing import Any

import msgspec
from msgspec import Struct

from jointwise.calc.fields import Declared, Field, Flag, List, Number, OneOf, object_of

__all__ = ["plain", "range_words", "request_body", "single", "unit_of"]


def request_body(struct: type[Struct], texts: Mapping[str, Sequence[str]]) -> bytes:
    """The JSON request that the texts of each name stand for.

    Lists may be comma separated, repeated, or both. Nothing is refused here:
    unknown names and unreadable values are passed on for the core to name.
    """
    fields = object_of(struct).fields
    request = {
        _encodable(name): _value(fields.get(name), [_encodable(text) for text in given])
        for name, given in texts.items()
    }
    return json.dumps(request).encode()  # writes NaN and infinity too, for the core to refuse by field


def plain(value: object) -> str:
    """A value as text that reads back as the same value."""
    if isinstance(value, list):
        return ",".join(map(plain, value))
    if isinstance(value, bool):
        return str(value).lower()
    return repr(value).removesuffix(".0") if isinstance(value, float) else str(value)


def single(field: Declared) -> Declared:
    """What one text of a field is read as: the field itself, or an entry of its list."""
    return field.shape.entry if isinstance(field.shape, List) else field


def unit_of(field: Declared) -> str:
    """The unit of a field, or of the entries of its list; "" for none."""
    return field.unit or single(field).unit


def range_words(field: Declared) -> str:
    """What one text of a field may say, as a help text has it; "" where there is nothing to list."""
    match single(field).shape:
        case OneOf(words=words):
            return ", ".join(words)
        case Number(least=least, most=most):
            bounds = (("from", least), ("to", most))
            return " ".join(f"{word} {plain(bound)}" for word, bound in bounds if bound is not None)
        case _:
            return ""


def _value(field: Field | None, texts: Sequence[str]) -> Any:
    if field is not None and field.nullable and texts == ["null"]:
        return None
    if field is not None and isinstance(field.shape, List):
        return [_read(field, part.strip()) for text in texts if text for part in text.split(",")]
    if field is None or len(texts) > 1:
        return texts if len(texts) > 1 else texts[0]
    return _read(field, texts[0])


def _read(field: Field, text: str) -> object:
    """One text as its number or as true or false; any other stays text."""
    match single(field).shape:
        case Number(whole=whole):
            wanted: type[object] = int if whole else float
        case Flag():
            wanted = bool
        case _:
            return text
    try:
        return msgspec.convert(text, wanted, strict=False)
    except msgspec.ValidationError:
        return text


def _encodable(text: str) -> str:
    """Undecodable bytes of a command line can't go into JSON."""
    return text.encode(errors="replace").decode()
