"""How many adapters the trade's types take from a port to each family."""

from ..catalogue import catalogue, per_edition

__all__ = ["NONE_SOLD", "adapters_from"]

NONE_SOLD = 9
"""Stands for no chain of adapters at all: more than any chain takes."""


@per_edition(maxsize=64)
def adapters_from(port: str) -> dict[str, int]:
    """By family the fewest adapters in series from a port of a family, 0 for that family itself."""
    joins: dict[str, set[str]] = {family: set() for family in catalogue().interfaces}
    for entry in catalogue().adapters.values():
        for family in entry.joins:
            joins[entry.id].add(family)
            joins[family].add(entry.id)
    found, reached, count = {port: 0}, {port}, 0
    while reached:
        count += 1
        reached = {family for near in reached for family in joins[near]} - found.keys()
        found |= dict.fromkeys(reached, count)
    return {family: found.get(family, NONE_SOLD) for family in joins}
