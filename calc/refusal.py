"""Turning a failed decode into one sentence: field, value received, what is allowed."""

import json
import math
import re
from typing import Any

import msgspec

from jointwise.calc.errors import InputError

__all__ = ["refusal"]


def refusal(error: Exception, body: bytes, request: type[msgspec.Struct]) -> InputError:
    """The InputError for a body that did not decode as `request`."""
    try:
        # takes NaN and Infinity, so that they can be named
        received = json.loads(body.decode(), object_pairs_hook=_given_once)
    except InputError as twice:
        return twice
    except ValueError as broken:
        return InputError("request", body[:200].decode("utf-8", "replace"), f"a JSON object; this is broken: {broken}")
    path = _path(str(error)) or _not_finite(received)
    unknown = re.search(r"unknown field `(.*)`", str(error))
    if unknown:
        name = unknown.group(1)
        return InputError(name, received.get(name), f"only the fields {', '.join(request.__struct_fields__)}")
    missing = re.search(r"missing required field `(.*)`", str(error))
    if missing:
        return InputError(missing.group(1), None, "a value, as this field can't be left out")
    field = "".join(part if isinstance(part, str) else f"[{part}]" for part in path) or "request"
    value = received
    for part in path:
        value = value[part]
    return InputError(field, value, _allowed(_type_at(request, path)))


def _given_once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    fields: dict[str, Any] = {}
    for name, value in pairs:
        if name in fields:
            raise InputError(name, fields[name], "a field given once, not twice")
        fields[name] = value
    return fields


def _not_finite(received: Any) -> list[str | int]:
    """Path of the first NaN or infinity, which JSON has no word for."""
    fields = received.items() if isinstance(received, dict) else ()
    for name, value in fields:
        for path, number in ([name], value), *(([name, i], v) for i, v in enumerate(_list(value))):
            if isinstance(number, float) and not math.isfinite(number):
                return path
    return []


def _list(value: Any) -> list:
    return value if isinstance(value, list) else []


def _path(message: str) -> list[str | int]:
    """The keys and indexes of a path like $.powers_w[2]; dict values give no key, and there are none here."""
    found = re.search(r" - at `\$(.*)`$", message)
    parts = re.findall(r"\.([A-Za-z_0-9]+)|\[(\d+)\]", found.group(1)) if found else []
    return [name or int(index) for name, index in parts]


def _type_at(request: type[msgspec.Struct], path: list[str | int]) -> Any:
    kind: Any = msgspec.inspect.type_info(request)
    for part in path:
        kind = _bare(kind)
        if isinstance(part, int):
            kind = kind.item_type
        else:
            kind = next(field.type for field in kind.fields if field.encode_name == part)
    return kind


def _bare(kind: Any) -> Any:
    """The type inside annotations and beside null."""
    while isinstance(kind, msgspec.inspect.Metadata):
        kind = kind.type
    if isinstance(kind, msgspec.inspect.UnionType):
        return _bare(next(one for one in kind.types if not isinstance(one, msgspec.inspect.NoneType)))
    return kind


def _allowed(kind: Any) -> str:
    words = _words(_bare(kind))
    optional = _is_optional(kind)
    return f"{words}, or left out" if optional else words


def _is_optional(kind: Any) -> bool:
    while isinstance(kind, msgspec.inspect.Metadata):
        kind = kind.type
    return isinstance(kind, msgspec.inspect.UnionType)


def _words(kind: Any) -> str:
    if isinstance(kind, (msgspec.inspect.FloatType, msgspec.inspect.IntType)):
        noun = "a whole number" if isinstance(kind, msgspec.inspect.IntType) else "a number"
        return f"{noun} from {kind.ge:g} to {kind.le:g}" if kind.ge is not None else noun
    if isinstance(kind, msgspec.inspect.LiteralType):
        return f"one of {', '.join(str(value) for value in kind.values)}"
    if isinstance(kind, msgspec.inspect.BoolType):
        return "true or false"
    if isinstance(kind, msgspec.inspect.StrType):
        return "a name of small letters, digits and _, at most 40 characters"
    if isinstance(kind, msgspec.inspect.ListType):
        lengths = f"{kind.min_length or 0} to {kind.max_length}" if kind.max_length else "any number of"
        return f"a list of {lengths} entries, each {_words(_bare(kind.item_type))}"
    return "a JSON object"
