"""What the fields of a Struct may hold, read from its declaration.

Refusals, options of a command line, the page's forms, the range of a pack's
values and the units of a data sheet are all made from this one reading.
"""

import math
import re
from collections.abc import Iterator
from functools import lru_cache
from typing import Any, NamedTuple

import msgspec
from msgspec import Struct, inspect

__all__ = [
    "Declared",
    "Field",
    "Flag",
    "List",
    "Map",
    "Number",
    "Object",
    "OneOf",
    "Range",
    "Shape",
    "Text",
    "Variants",
    "object_of",
    "objects_in",
]

UNIT_SUFFIXES = (
    "_ohm_per_m",
    "_f_per_m",
    "_ohm",
    "_m2",
    "_m",
    "_hz",
    "_rms_v",
    "_c",
    "_s",
    "_nm",
    "_matings",
    "_db",
    "_w",
)
"""Of a field's name: the unit stands beside the value, so the words of the name leave it out."""

MOST_NAMED = 8
"""Fields of an object that a sentence still lists."""


class Range(NamedTuple):
    """The least and the greatest number of a sourced value, in the unit of its field."""

    least: float
    most: float


class Number(Struct, frozen=True):
    """A finite number, whole or not, from `least` to `most`; both None without bounds."""

    whole: bool
    least: float | None
    most: float | None

    @property
    def allowed(self) -> str:
        """What may be given, in words."""
        noun, form = ("a whole number", "d") if self.whole else ("a number", "g")
        if self.least is None or self.most is None:
            return noun
        return f"{noun} from {self.least:{form}} to {self.most:{form}}"

    def takes(self, value: object) -> bool:
        """Whether a value read from JSON may be given."""
        if isinstance(value, bool) or not isinstance(value, int if self.whole else (int, float)):
            return False
        if self.least is None or self.most is None:
            return self.whole or _is_finite(value)
        return self.least <= value <= self.most


class Flag(Struct, frozen=True):
    """True or false."""

    @property
    def allowed(self) -> str:
        """What may be given, in words."""
        return "true or false"

    def takes(self, value: object) -> bool:
        """Whether a value read from JSON may be given."""
        return isinstance(value, bool)


class OneOf(Struct, frozen=True):
    """One of some words."""

    words: tuple[str, ...]

    @property
    def allowed(self) -> str:
        """What may be given, in words."""
        return f"one of {', '.join(self.words)}"

    def takes(self, value: object) -> bool:
        """Whether a value read from JSON may be given."""
        return isinstance(value, str) and value in self.words


class Text(Struct, frozen=True):
    """A text; with a pattern, `allowed` is the sentence declared with it."""

    shortest: int
    longest: int | None
    pattern: re.Pattern[str] | None
    allowed: str

    def takes(self, value: object) -> bool:
        """Whether a value read from JSON may be given."""
        if not isinstance(value, str) or len(value) < self.shortest:
            return False
        if self.longest is not None and len(value) > self.longest:
            return False
        return self.pattern is None or self.pattern.search(value) is not None


class List(Struct, frozen=True):
    """A list of like entries."""

    entry: "Declared"
    shortest: int
    longest: int | None

    @property
    def allowed(self) -> str:
        """What may be given, in words."""
        lengths = f"{self.shortest} to {self.longest}" if self.longest else "any number of"
        return f"a list of {lengths} entries, each {self.entry.shape.allowed}"


class Map(Struct, frozen=True):
    """An object whose names are data themselves."""

    key: "Declared"
    value: "Declared"

    @property
    def allowed(self) -> str:
        """What may be given, in words."""
        return f"an object that has for {self.key.shape.allowed} each {self.value.shape.allowed}"


class Object(Struct, frozen=True):
    """An object with the fields of a Struct, by name in the order of their declaration."""

    struct: type[Struct]
    fields: dict[str, "Field"]
    tag_field: str | None
    """The field that names the variant, where the Struct is one of several."""
    tag: str
    """What it holds then; "" otherwise."""

    @property
    def allowed(self) -> str:
        """What may be given, in words."""
        required = [field.name for field in self.fields.values() if field.required]
        return f"a JSON object with {', '.join(required)}" if 0 < len(required) <= MOST_NAMED else "a JSON object"

    @property
    def names(self) -> list[str]:
        """The names of all fields, that of the variant included."""
        return [*([self.tag_field] if self.tag_field else []), *self.fields]


class Variants(Struct, frozen=True):
    """One of several objects, which one of its fields tells apart."""

    tag_field: str
    objects: dict[str, Object]
    """By tag."""

    @property
    def allowed(self) -> str:
        """What may be given, in words."""
        return f"a JSON object of kind {', '.join(self.objects)}"


Shape = Number | Flag | OneOf | Text | List | Map | Object | Variants


class Declared(Struct, frozen=True, kw_only=True):
    """What is declared of a value: its shape, whether it may be null, what it is, its unit ("" for none)."""

    shape: Shape
    nullable: bool
    description: str
    unit: str
    range: Range | None
    """Of the sourced value in it, where a pack may give one."""
    title: str
    """What people call it, where its name does not say so; else empty."""
    group: str
    """Of the fields that a form shows together; empty for none."""
    sheet_unit: str
    """The unit that data sheets give it in; "" for none."""

    @property
    def allowed(self) -> str:
        """What may be given, in words."""
        return f"{self.shape.allowed}, or left out" if self.nullable else self.shape.allowed


class Field(Declared, frozen=True, kw_only=True):
    """A field of an object; one that is required has no default."""

    name: str
    required: bool
    default: Any

    @property
    def label(self) -> str:
        """What people call it: its title, or its name in words without the unit."""
        if self.title:
            return self.title
        stem = next(
            (self.name.removesuffix(suffix) for suffix in UNIT_SUFFIXES if self.name.endswith(suffix)), self.name
        )
        words = stem.replace("_", " ")
        rms = ", rms" if self.name.endswith("_rms_v") else ""
        return words[0].upper() + words[1:].replace("vswr", "VSWR") + rms


@lru_cache
def object_of(struct: type[Struct]) -> Object:
    """The object that a Struct declares. Raises TypeError for a declaration that has no reading here."""
    return _object(inspect.type_info(struct))


def objects_in(shape: Shape) -> Iterator[Object]:
    """Every object in a shape, itself included, as often as it is named."""
    match shape:
        case List(entry=entry):
            yield from objects_in(entry.shape)
        case Map(value=value):
            yield from objects_in(value.shape)
        case Variants(objects=objects):
            for one in objects.values():
                yield from objects_in(one)
        case Object(fields=fields):
            yield shape
            for field in fields.values():
                yield from objects_in(field.shape)


def _object(declared: inspect.Type) -> Object:
    if not isinstance(declared, inspect.StructType) or not declared.forbid_unknown_fields or declared.array_like:
        raise TypeError(f"{declared} is not read as an object with these fields alone")
    fields = {field.encode_name: _field(field) for field in declared.fields}
    return Object(declared.cls, fields, declared.tag_field, str(declared.tag or ""))


def _field(field: inspect.Field) -> Field:
    if field.default_factory is not msgspec.NODEFAULT:
        default = field.default_factory()
    else:
        default = None if field.required else field.default
    return Field(
        name=field.encode_name,
        required=field.required,
        default=default,
        **msgspec.structs.asdict(_declared(field.type)),
    )


def _declared(declared: inspect.Type) -> Declared:
    """What annotations, around a type and within `X | None`, say of it; the outermost goes first."""
    description, title, nullable = "", "", False
    extra: dict[str, Any] = {}
    while True:
        if isinstance(declared, inspect.Metadata):
            description = description or (declared.extra_json_schema or {}).get("description", "")
            title = title or (declared.extra_json_schema or {}).get("title", "")
            extra = {**(declared.extra or {}), **extra}
            declared = declared.type
        elif isinstance(declared, inspect.UnionType) and declared.includes_none:
            nullable = True
            others = tuple(one for one in declared.types if not isinstance(one, inspect.NoneType))
            declared = others[0] if len(others) == 1 else inspect.UnionType(others)
        else:
            break
    bounded = extra.get("least") is not None
    return Declared(
        shape=_shape(declared, extra.get("allowed")),
        nullable=nullable,
        description=description,
        unit=extra.get("unit", ""),
        range=Range(extra["least"], extra["most"]) if bounded else None,
        title=title,
        group=extra.get("group", ""),
        sheet_unit=extra.get("sheet_unit", extra.get("unit", "")),
    )


def _shape(declared: inspect.Type, allowed: str | None) -> Shape:
    match declared:
        case inspect.IntType(gt=None, lt=None, multiple_of=None, ge=least, le=most) if _both(least, most):
            return Number(True, least, most)
        case inspect.FloatType(gt=None, lt=None, multiple_of=None, ge=least, le=most) if _both(least, most):
            return Number(False, least, most)
        case inspect.BoolType():
            return Flag()
        case inspect.LiteralType(values=words) if all(isinstance(word, str) for word in words):
            return OneOf(tuple(map(str, words)))
        case inspect.StrType(pattern=pattern) if pattern is None or allowed is not None:
            return _text(declared, allowed)
        case inspect.ListType():
            return List(_declared(declared.item_type), declared.min_length or 0, declared.max_length)
        case inspect.DictType(min_length=None, max_length=None):
            return Map(_declared(declared.key_type), _declared(declared.value_type))
        case inspect.StructType():
            return _object(declared)
        case inspect.UnionType(types=types) if all(isinstance(one, inspect.StructType) for one in types):
            objects = [_object(one) for one in types]
            if (tag_field := objects[0].tag_field) is not None:
                return Variants(tag_field, {one.tag: one for one in objects})
    raise TypeError(f"{declared} has no reading: give both bounds as ge and le, and beside a pattern what it allows")


def _both(least: float | None, most: float | None) -> bool:
    return (least is None) == (most is None)


def _text(declared: inspect.StrType, allowed: str | None) -> Text:
    shortest, longest = declared.min_length or 0, declared.max_length
    if allowed is None:
        lengths = f"{shortest} to {longest}" if shortest else f"at most {longest}"
        allowed = "a text" if longest is None else f"a text of {lengths} characters"
    pattern = None if declared.pattern is None else re.compile(declared.pattern)
    return Text(shortest, longest, pattern, allowed)


def _is_finite(number: float) -> bool:
    try:
        return math.isfinite(number)
    except OverflowError:  # a whole number beyond every float
        return False
