"""Values of a catalogue entry as a data sheet shows them: named in words, with unit, sources and kinds."""

from collections.abc import Iterable

from ..catalogue.schema import Cable, CableBuild, Interface, Interval, Label, Quantity
from ..fields import object_of
from .results import DataValue

__all__ = ["data_value", "data_values"]


def data_values(entry: Cable | CableBuild | Interface) -> list[DataValue]:
    """The sourced values among the fields of an entry, in the order of their declaration."""
    values = []
    for field in object_of(type(entry)).fields.values():
        value = getattr(entry, field.name)
        if isinstance(value, (Quantity, Label)):
            values.append(data_value(field.name, field.label, field.unit, value, value))
        elif isinstance(value, Interval):
            values.append(data_value(field.name, field.label, field.unit, value.low, value.high))
    return values


def data_value(field: str, label: str, unit: str, low: Quantity | Label, high: Quantity | Label) -> DataValue:
    """A value with both its ends, in its unit."""
    return DataValue(
        field=field,
        name=label,
        unit=unit,
        low=low.value,
        high=high.value,
        sources=_distinct((low.source, high.source)),
        kinds=_distinct((low.kind, high.kind)),
        note=" ".join(_distinct(note for note in (low.note, high.note) if note)),
    )


def _distinct(words: Iterable[str]) -> list[str]:
    return list(dict.fromkeys(words))
