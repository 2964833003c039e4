"""A refusal as a reader of the command line has it: the label of the field, the value, what is allowed.

The labels are the words of the options' help; whoever writes JSON gets the field's path from the core itself.
"""

import math
import re
from typing import NamedTuple

from msgspec import Struct

from jointwise.calc.fields import Declared, List, Number, Object, Variants, object_of
from jointwise.calc.numeric.units import engineering
from jointwise.calc.operations import InputError

from .texts import plain

__all__ = ["refused_words"]

PREFIXED = {"A", "F", "H", "Hz", "V", "W", "Ω"}
"""Units that take a prefix where they are printed."""

ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"]


class _Place(NamedTuple):
    label: str
    declared: Declared | None


def refused_words(error: InputError, request: type[Struct]) -> str:
    """One sentence about a field of a request; that of the core where it is about none."""
    place = _place(error.field, object_of(request))
    if place is None:
        return str(error)
    declared = place.declared
    is_own = declared is not None and error.allowed == declared.allowed
    allowed = _range(declared) if declared is not None and is_own else error.allowed
    return f"{place.label}: {_value(error, declared)}; allowed: {allowed}."


def _place(path: str, root: Object) -> _Place | None:
    """The labels that lead to a field, and what is declared of it; None for what is no path in a request."""
    labels: list[str] = []
    declared: Declared | None = None
    objects = [root]
    for name, index in re.findall(r"(\w+)|\[(\d+)\]", path):
        if index and declared is not None and isinstance(declared.shape, List):
            declared = declared.shape.entry
            labels.append(f"{_ordinal(int(index))} entry")
        elif (field := next((one.fields[name] for one in objects if name in one.fields), None)) is not None:
            declared = field
            labels.append(re.split("[;,:]", field.description)[0] or _humanised(name))
        else:
            return None
        objects = _objects(declared)
    return _Place(", ".join([labels[0], *(_small(label) for label in labels[1:])]), declared) if labels else None


def _objects(declared: Declared) -> list[Object]:
    match declared.shape:
        case Object():
            return [declared.shape]
        case Variants(objects=objects):
            return list(objects.values())
        case _:
            return []


def _value(error: InputError, declared: Declared | None) -> str:
    received, unit = error.received, declared.unit if declared is not None else ""
    if isinstance(received, (int, float)) and not isinstance(received, bool) and math.isfinite(received):
        return _quantity(received, unit)
    return "nothing" if received is None else error.value


def _range(declared: Declared) -> str:
    shape = declared.shape
    if not isinstance(shape, Number) or shape.least is None or shape.most is None:
        return declared.allowed
    least, most = (_quantity(edge, declared.unit) for edge in (shape.least, shape.most))
    _, _, unit = most.partition(" ")
    # one unit is enough for both edges
    least = least.removesuffix(f" {unit}") if unit else least
    least = "0" if shape.least == 0 else least
    whole, left_out = "whole, " if shape.whole else "", ", or left out" if declared.nullable else ""
    return f"{whole}{least} to {most}{left_out}"


def _quantity(number: float, unit: str) -> str:
    if unit in PREFIXED:
        return engineering(number, unit).replace("-", "−")
    return f"{plain(number)} {unit}".strip().replace("-", "−")


def _ordinal(index: int) -> str:
    return ORDINALS[index] if index < len(ORDINALS) else f"{index + 1}th"


def _humanised(name: str) -> str:
    return name.replace("_", " ").capitalize()


def _small(label: str) -> str:
    return label if label[:2].isupper() else label[:1].lower() + label[1:]
