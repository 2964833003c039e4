"""Covers without a search: a greedy one to begin with, and dropping what a cover can spare."""

import numpy as np

from .bits import BitSet, bits, mask
from .residual import residual_of

__all__ = ["first_cover", "without_redundant"]


def first_cover(groups: list[list[BitSet]]) -> BitSet:
    """The smallest of the greedy covers with alternatives up to a length, for every length."""
    found = []
    for longest in range(1, max(alternative.bit_count() for group in groups for alternative in group) + 1):
        short = [
            [alternative for alternative in group if alternative.bit_count() <= longest] or group for group in groups
        ]
        found.append(without_redundant(groups, _greedy(short)))
    return min(found, key=int.bit_count)


def without_redundant(groups: list[list[BitSet]], cover: BitSet) -> BitSet:
    """The cover without elements that it can spare, the highest numbers dropped first."""
    for element in sorted(bits(cover), reverse=True):
        smaller = cover & ~(1 << element)
        if all(any(alternative & smaller == alternative for alternative in group) for group in groups):
            cover = smaller
    return cover


def _greedy(groups: list[list[BitSet]]) -> BitSet:
    """Covers the group with the fewest alternatives first, by the one whose elements are of most use to all groups."""
    residual = residual_of(groups)
    width = int(residual.entry_element.max()) + 1
    chosen, excluded = np.zeros(width, dtype=bool), np.zeros(width, dtype=bool)
    while residual.group_count:
        hardest = np.flatnonzero(residual.group == np.bincount(residual.group).argmin())
        worth = residual.sums_by_alternative(residual.usefulness(width)[residual.entry_element]) / residual.lengths
        best = residual.entries[:, hardest[worth[hardest].argmax()]]
        chosen[residual.entry_element[best[best < residual.dual.size]]] = True
        residual, chosen = residual.reduced(chosen, excluded, width)
    return mask(np.flatnonzero(chosen))
