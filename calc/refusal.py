"""Reading a request: its type, or one sentence with the field, the value received and what is allowed."""

import json
from typing import TypeVar

import msgspec
import numpy as np

from .errors import InputError, shown
from .fields import Declared, Flag, List, Map, Number, Object, OneOf, Shape, Text, Variants, object_of

__all__ = ["MOST_REQUEST_BYTES", "decoded", "first_fault", "refuse_given_twice", "refuse_unbounded"]

Request = TypeVar("Request", bound=msgspec.Struct)
Path = tuple[str | int, ...]
"""The names and indexes that lead to a place in a request."""

MOST_REQUEST_BYTES = 4_000_000
"""Longest request: one that is refused only after all of it was read stays within 2 s and 256 MB too."""

DEEPEST = 50
"""Brackets within brackets a text may have; no request and no pack has more than eight."""

DEEPER = np.zeros(256, dtype=np.int8)
"""How much deeper each byte leads."""
DEEPER[list(b"[{")], DEEPER[list(b"]}")] = 1, -1


def decoded(body: bytes, request: type[Request]) -> Request:
    """The body read as JSON into its type. Raises InputError naming the first field that can't be taken."""
    refuse_unbounded(body)
    try:
        read = msgspec.json.decode(body, type=request)
    except (msgspec.DecodeError, UnicodeDecodeError):
        raise _refusal(body, object_of(request)) from None
    refuse_given_twice(body)
    return read


def first_fault(received: object, request: Object) -> InputError | None:
    """The first place, in the order in which the decoder reads, where a JSON value is no such request; None if none."""
    try:
        if _fits(received, request, ()):
            return None
    except InputError as fault:
        return fault
    except UnicodeEncodeError:
        pass
    return InputError("request", received, request.allowed)


def refuse_unbounded(body: bytes) -> None:
    """Raise InputError for a text too long or too deeply nested to be read.

    In the browser a decoder that runs out of stack takes Python down with it, so it never gets there."""
    if len(body) > MOST_REQUEST_BYTES:
        raise InputError("request", _beginning(body), f"at most {MOST_REQUEST_BYTES} bytes; this one has {len(body)}")
    if body.count(b"[") + body.count(b"{") <= DEEPEST:
        return
    depth = np.cumsum(DEEPER[np.frombuffer(body, dtype=np.uint8)], dtype=np.int32)
    if depth.max() > DEEPEST:
        raise InputError("request", _beginning(body), f"brackets nested up to {DEEPEST} deep")


def refuse_given_twice(body: bytes) -> None:
    """Raise InputError for a field that is given twice, of which the decoder takes the last without a word."""
    try:
        _received(body)
    except InputError:
        raise
    except ValueError:  # broken, which the decoder's refusal says
        return


def _received(body: bytes) -> object:
    """A JSON text as plain values; takes NaN and Infinity, so that they can be named."""
    return json.loads(body.decode(), object_pairs_hook=_given_once)


def _refusal(body: bytes, request: Object) -> InputError:
    """Why the decoder did not take a body."""
    try:
        received = _received(body)
    except InputError as twice:
        return twice
    except ValueError as broken:
        return InputError("request", _beginning(body), f"a JSON object; this is broken: {broken}")
    # the walk finds what the decoder found: tests compare them, and were they to differ this is still a sentence
    return first_fault(received, request) or InputError("request", received, request.allowed)


def _beginning(body: bytes) -> str:
    return body[:200].decode("utf-8", "replace")


def _given_once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    fields: dict[str, object] = {}
    for name, value in pairs:
        if name in fields:
            raise InputError(_field((name,)), fields[name], "a field given once, not twice")
        fields[name] = value
    return fields


def _field(path: Path) -> str:
    """The path as a user reads it: elements[2].length_m; a name that is not ours may be of any length."""
    parts = [part if isinstance(part, int) else shown(part).strip('"') for part in path]
    words = (f"[{part}]" if isinstance(part, int) else f".{part}" for part in parts)
    return "".join(words).removeprefix(".") or "request"


def _refuse_unfit(value: object, declared: Declared, path: Path) -> None:
    """Raise InputError for the first place in a value that is not as declared, the value itself included."""
    if value is None and declared.nullable:
        return
    _refuse_half_character(value)
    if not _fits(value, declared.shape, path):
        raise InputError(_field(path), value, declared.allowed)


def _fits(value: object, shape: Shape, path: Path) -> bool:
    """Whether a value is of a shape. Raises InputError when it is but for a place within it."""
    match shape:
        case Number() | Text() | OneOf() | Flag():
            return shape.takes(value)
        case List():
            if not isinstance(value, list):
                return False
            for at, entry in enumerate(value):
                _refuse_unfit(entry, shape.entry, (*path, at))
            return shape.shortest <= len(value) and (shape.longest is None or len(value) <= shape.longest)
        case Map():
            return isinstance(value, dict) and all(
                _is_fit(name, shape.key) and _is_fit(entry, shape.value) for name, entry in value.items()
            )
        case Object():
            if not isinstance(value, dict):
                return False
            _refuse_unfit_fields(value, shape, path)
            return True
        case Variants():
            if not isinstance(value, dict):
                return False
            tag = _tag(value.get(shape.tag_field), tuple(shape.objects), (*path, shape.tag_field))
            _refuse_unfit_fields(value, shape.objects[tag], path)
            return True


def _is_fit(value: object, declared: Declared) -> bool:
    """Whether a value is as declared, all that is in it included."""
    try:
        _refuse_unfit(value, declared, ())
    except InputError:
        return False
    return True


def _refuse_unfit_fields(received: dict[str, object], declared: Object, path: Path) -> None:
    for name, value in received.items():
        _refuse_half_character(name)
        place = (*path, name)
        if name in declared.fields:
            _refuse_unfit(value, declared.fields[name], place)
        elif name == declared.tag_field:
            _tag(value, (declared.tag,), place)
        else:
            raise InputError(_field(place), value, f"only the fields {', '.join(declared.names)}")
    for name, field in declared.fields.items():
        if field.required and name not in received:
            raise InputError(_field((*path, name)), None, "a value, as this field can't be left out")


def _refuse_half_character(value: object) -> None:
    """Raise UnicodeEncodeError for half of a surrogate pair, which JSON can spell and which is no text."""
    if isinstance(value, str):
        value.encode()


def _tag(received: object, tags: tuple[str, ...], path: Path) -> str:
    """The tag that names a variant. Raises InputError when there is no such variant."""
    _refuse_half_character(received)
    if not isinstance(received, str) or received not in tags:
        raise InputError(_field(path), received, f"one of {', '.join(tags)}")
    return received
