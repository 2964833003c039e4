"""Hubs: the few families through which most of the others are reached."""

from collections.abc import Iterable

from ..catalogue.mating import OPPOSITE, ConnectorEnd, mates_of
from .adapters import AdapterType, families_of

__all__ = ["HUB_COUNTS", "through_hubs"]

HUB_COUNTS = (1, 2)
"""How many hubs a kit is searched through before it is searched through all families."""


def through_hubs(types: Iterable[AdapterType], joined: set[str], count: int) -> set[AdapterType]:
    """The adapters with an end of one of so many hubs, or of a family that mates with one.

    Each hub is the family that reaches most of the families `joined` that no
    earlier one reached.
    """
    types = set(types)
    adjacent: dict[str, set[str]] = {}
    for first, second in types:
        adjacent.setdefault(first.family, {first.family}).add(second.family)
        adjacent.setdefault(second.family, {second.family}).add(first.family)
    with_mates = {family: {family, *_mating(family)} for family in adjacent}
    reach = {family: {end for mate in mates for end in adjacent.get(mate, ())} for family, mates in with_mates.items()}
    hubs: set[str] = set()
    unreached = set(joined)
    for _ in range(count):
        candidates = sorted(adjacent.keys() - hubs)
        if not candidates:
            break
        hub = max(candidates, key=lambda family: (len(reach[family] & unreached), len(reach[family])))
        hubs |= with_mates[hub]
        unreached -= reach[hub]
    return {adapter for adapter in types if not families_of(adapter).isdisjoint(hubs)}


def _mating(family: str) -> set[str]:
    return {mate.family for gender in OPPOSITE for mate in mates_of(ConnectorEnd(family, gender))}
