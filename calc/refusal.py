"""Turning a failed decode into one sentence: field, value received, what is allowed."""

import json
import math
import re
from typing import Any, TypeVar

import msgspec
import numpy as np

from .catalogue.schema import ADDRESS, NAME
from .errors import InputError, shown

__all__ = ["MOST_BYTES", "decoded", "refusal"]

Decoded = TypeVar("Decoded")
MOST_BYTES = 4_000_000
"""Longest request: one that is refused only after it was read whole stays within 2 s and 256 MB too."""

DEEPEST = 50
"""Brackets within brackets a text may have; no request and no pack has more than eight."""

STEPS = np.zeros(256, dtype=np.int8)
"""How much deeper each byte leads."""
STEPS[list(b"[{")], STEPS[list(b"]}")] = 1, -1
MOST_NAMED = 8
"""Fields of an object that a sentence still lists."""

WORDS_OF_PATTERN = {
    NAME: "a text of 1 to 80 characters that begins with none of = + - @ and no blank",
    ADDRESS: "an address that begins with https:// or http://, at most 300 characters",
}


def decoded(body: bytes, request: type[Decoded]) -> Decoded:
    """The body read as JSON into its type. Raises InputError naming the field that can't be taken."""
    _refuse_unbounded(body)
    try:
        return msgspec.json.decode(body, type=request)
    except (msgspec.DecodeError, UnicodeDecodeError) as error:
        raise refusal(error, body, request) from None


def _refuse_unbounded(body: bytes) -> None:
    """In the browser a decoder that runs out of stack takes Python down with it, so it never gets there."""
    begins = body[:200].decode("utf-8", "replace")
    if len(body) > MOST_BYTES:
        raise InputError("request", begins, f"at most {MOST_BYTES} bytes; this one has {len(body)}")
    if body.count(b"[") + body.count(b"{") <= DEEPEST:
        return
    depth = np.cumsum(STEPS[np.frombuffer(body, dtype=np.uint8)], dtype=np.int32)
    if depth.max() > DEEPEST:
        raise InputError("request", begins, f"brackets nested up to {DEEPEST} deep")


def refusal(error: Exception, body: bytes, request: type[msgspec.Struct]) -> InputError:
    """The InputError for a body that did not decode as `request`."""
    try:
        # takes NaN and Infinity, so that they can be named
        received = json.loads(body.decode(), object_pairs_hook=_given_once)
    except InputError as twice:
        return twice
    except ValueError as broken:
        return InputError("request", body[:200].decode("utf-8", "replace"), f"a JSON object; this is broken: {broken}")
    told = str(error)
    # a name that is not ours may itself read like the end of the message
    named = re.search(r"(unknown) field `(.*)`$", told, re.DOTALL)
    path: list[str | int] = []
    if not (named and named.group(2) in received):
        named = re.search(r"(unknown|missing required) field `(.*?)`(?: - at `\$[^`]*`)?$", told, re.DOTALL)
        path = _path(told)
    if not path and (endless := _not_finite(received)):
        return _refuse_endless(received, request, endless)
    value, kind = _at(received, msgspec.inspect.type_info(request), path)
    if named and named.group(1) == "unknown":
        allowed = f"only the fields {', '.join(_names(_bare(kind, value)))}"
        return InputError(_field([*path, named.group(2)]), value.get(named.group(2)), allowed)
    if named:
        tags = _tags(kind)
        told_by = named.group(2) not in _names(_bare(kind, value))[1:]
        allowed = f"one of {', '.join(tags)}" if tags and told_by else "a value, as this field can't be left out"
        return InputError(_field([*path, named.group(2)]), None, allowed)
    return InputError(_field(path), value, _allowed(kind))


def _refuse_endless(received: Any, request: type[msgspec.Struct], path: list[str | int]) -> InputError:
    """A NaN or infinity at a path, which may lead beyond what the request knows."""
    whole = msgspec.inspect.type_info(request)
    for known in range(len(path), -1, -1):
        try:
            value, kind = _at(received, whole, path[:known])
        except (AttributeError, StopIteration):
            continue
        names = _names(_bare(kind, value))
        if known < len(path) and names:
            return InputError(_field(path[: known + 1]), value[path[known]], f"only the fields {', '.join(names)}")
        return InputError(_field(path[:known]), value, _allowed(kind))
    raise AssertionError("the request itself is always known")


def _field(path: list[str | int]) -> str:
    """The path as a user reads it: elements[2].length_m; a name that is not ours may be of any length."""
    parts = [part if isinstance(part, int) else shown(part).strip('"') for part in path]
    words = (f"[{part}]" if isinstance(part, int) else f".{part}" for part in parts)
    return "".join(words).removeprefix(".") or "request"


def _given_once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    fields: dict[str, Any] = {}
    for name, value in pairs:
        if name in fields:
            raise InputError(_field([name]), fields[name], "a field given once, not twice")
        fields[name] = value
    return fields


def _not_finite(received: Any) -> list[str | int]:
    """Path of the first NaN or infinity, which JSON has no word for."""
    if not isinstance(received, (dict, list)):
        return []
    entries = received.items() if isinstance(received, dict) else enumerate(received)
    for name, value in entries:
        if isinstance(value, float) and not math.isfinite(value):
            return [name]
        if below := _not_finite(value):
            return [name, *below]
    return []


def _path(message: str) -> list[str | int]:
    """The keys and indexes of a path like $.powers_w[2]; it ends where values of a dict give no key."""
    found = re.search(r" - at `(?:key` in `)?\$([^`]*?)(\[\.\.\.\][^`]*)?`$", message)
    parts = re.findall(r"\.([A-Za-z_0-9]+)|\[(\d+)\]", found.group(1)) if found else []
    return [name or int(index) for name, index in parts]


def _at(value: Any, kind: Any, path: list[str | int]) -> tuple[Any, Any]:
    """What was received at a path, and the type that belongs there."""
    for part in path:
        kind = _step(kind, value, part)
        value = value[part]
    return value, kind


def _step(kind: Any, value: Any, part: str | int) -> Any:
    inside = _bare(kind, value)
    if isinstance(part, int):
        return inside.item_type
    if isinstance(inside, msgspec.inspect.UnionType) or part == inside.tag_field:
        return msgspec.inspect.LiteralType(_tags(kind))  # the very field that tells the kinds apart
    return next(field.type for field in inside.fields if field.encode_name == part)


def _bare(kind: Any, value: Any) -> Any:
    """The type inside annotations, beside null, and of several kinds the one that the value names."""
    while isinstance(kind, msgspec.inspect.Metadata):
        kind = kind.type
    if not isinstance(kind, msgspec.inspect.UnionType):
        return kind
    kinds = [one for one in kind.types if not isinstance(one, msgspec.inspect.NoneType)]
    if len(kinds) == 1:
        return _bare(kinds[0], value)
    return next((one for one in kinds if isinstance(value, dict) and value.get(one.tag_field) == one.tag), kind)


def _tags(kind: Any) -> list[str]:
    """The names of the kinds a tagged value may have."""
    while isinstance(kind, msgspec.inspect.Metadata):
        kind = kind.type
    kinds = kind.types if isinstance(kind, msgspec.inspect.UnionType) else (kind,)
    return [one.tag for one in kinds if getattr(one, "tag", None)]


def _names(kind: Any) -> list[str]:
    own = [kind.tag_field] if getattr(kind, "tag_field", None) else []
    return own + [field.encode_name for field in getattr(kind, "fields", ())]


def _allowed(kind: Any) -> str:
    words = _words(_bare(kind, None))
    optional = _is_optional(kind)
    return f"{words}, or left out" if optional else words


def _is_optional(kind: Any) -> bool:
    while isinstance(kind, msgspec.inspect.Metadata):
        kind = kind.type
    return isinstance(kind, msgspec.inspect.UnionType) and any(
        isinstance(one, msgspec.inspect.NoneType) for one in kind.types
    )


def _words(kind: Any) -> str:
    if isinstance(kind, (msgspec.inspect.FloatType, msgspec.inspect.IntType)):
        noun = "a whole number" if isinstance(kind, msgspec.inspect.IntType) else "a number"
        form = "d" if isinstance(kind, msgspec.inspect.IntType) else "g"
        return f"{noun} from {kind.ge:{form}} to {kind.le:{form}}" if kind.ge is not None else noun
    if isinstance(kind, msgspec.inspect.LiteralType):
        return f"one of {', '.join(str(value) for value in kind.values)}"
    if isinstance(kind, msgspec.inspect.BoolType):
        return "true or false"
    if isinstance(kind, msgspec.inspect.StrType) and kind.pattern is None:
        least = f"{kind.min_length} to" if kind.min_length else "at most"
        return f"a text of {least} {kind.max_length} characters"
    if isinstance(kind, msgspec.inspect.StrType) and kind.pattern in WORDS_OF_PATTERN:
        return WORDS_OF_PATTERN[kind.pattern]
    if isinstance(kind, msgspec.inspect.StrType):
        return "a name of small letters, digits and _, at most 40 characters"
    if isinstance(kind, msgspec.inspect.ListType):
        lengths = f"{kind.min_length or 0} to {kind.max_length}" if kind.max_length else "any number of"
        return f"a list of {lengths} entries, each {_words(_bare(kind.item_type, None))}"
    if isinstance(kind, msgspec.inspect.UnionType):
        return f"a JSON object of kind {', '.join(_tags(kind))}"
    if isinstance(kind, msgspec.inspect.DictType):
        return f"an object that has for {_words(kind.key_type)} each {_words(kind.value_type)}"
    fields = [field.encode_name for field in getattr(kind, "fields", ()) if field.required]
    return f"a JSON object with {', '.join(fields)}" if 0 < len(fields) <= MOST_NAMED else "a JSON object"
