"""Reducing a covering problem before it is searched: dominated alternatives and dominated groups drop out."""

from collections.abc import Iterator

from .bits import BitSet

__all__ = ["without_dominated"]


def without_dominated(groups: list[list[BitSet]]) -> list[list[BitSet]]:
    """The groups with their undominated alternatives only, without the groups that another one covers anyway."""
    essential: list[list[BitSet]] = []
    for group in sorted((_undominated(group) for group in groups), key=len):
        if not any(_implies(other, group) for other in essential):
            essential.append(group)
    return essential


def _implies(group: list[BitSet], other: list[BitSet]) -> bool:
    """Whether covering the group covers the other: each of its alternatives contains one of the other's."""
    return all(any(small & alternative == small for small in other) for alternative in group)


def _undominated(group: list[BitSet]) -> list[BitSet]:
    """The alternatives that contain no other alternative, in a fixed order."""
    minimal: dict[BitSet, None] = {}
    for alternative in sorted(set(group), key=lambda alternative: (alternative.bit_count(), alternative)):
        if not any(subset in minimal for subset in _proper_subsets(alternative)):
            minimal[alternative] = None
    return list(minimal)


def _proper_subsets(alternative: BitSet) -> Iterator[BitSet]:
    """Every subset but the set itself and the empty one."""
    subset = (alternative - 1) & alternative
    while subset:
        yield subset
        subset = (subset - 1) & alternative
