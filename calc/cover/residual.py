"""The residual problem: what is still to be covered once some elements are chosen and others excluded.

As an integer program: every element e costs 1 and is chosen or not (x_e = 1 or
0), every group takes one of its alternatives (its y_a add up to 1), and what an
alternative holds must be chosen: for each group and element, the sum of y_a
over the group's alternatives that hold the element is at most x_e. A group and
an element that some alternative of it holds are called an entry: one of these
constraints, with one dual variable (`dual_ascent.py`). Everything is kept in
flat arrays, so that a step over the whole problem is a few array operations.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from .bits import BitSet, Flags, bits

__all__ = ["Floats", "Infeasible", "Residual", "residual_of", "sums_at"]

Floats = NDArray[np.float64]
Indexes = NDArray[np.intp]

FIRST_DUAL = 1.0  # of every entry, before the dual variables of an element are scaled to add up to its cost


def sums_at(indexes: Indexes, values: Floats, count: int) -> Floats:
    """For each number below `count` the sum of the values whose index it is."""
    return np.asarray(np.bincount(indexes, weights=values, minlength=count), dtype=np.float64)


class Infeasible(Exception):
    """No cover keeps to what is chosen, what is excluded and the number of elements allowed."""


class Residual(NamedTuple):
    """Groups in order, their alternatives in order, and the entries of those."""

    group: Indexes
    """By alternative, ascending."""
    entries: Indexes
    """A column of entries by alternative; short ones are filled up with the number of all entries."""
    entry_group: Indexes
    entry_element: Indexes
    dual: Floats
    """By entry: the group's share of the element's cost."""
    group_count: int

    @property
    def size(self) -> int:
        """How many numbers a step over all entries of all alternatives goes through."""
        return self.entries.size

    @property
    def first_alternatives(self) -> Indexes:
        """The first alternative of each group."""
        return np.flatnonzero(np.diff(self.group, prepend=-1))

    @property
    def lengths(self) -> Indexes:
        """How many elements each alternative has."""
        return np.count_nonzero(self.entries < self.dual.size, axis=0)

    def sums_by_alternative(self, by_entry: Floats | Flags) -> Floats:
        """For each alternative the sum over its entries."""
        return np.append(by_entry, 0)[self.entries].sum(axis=0)

    def sums_by_entry(self, by_alternative: Floats) -> Floats:
        """For each entry the sum over the alternatives that hold it."""
        count = self.dual.size
        sums = np.zeros(count + 1)
        for row in self.entries:
            sums += sums_at(row, by_alternative, count + 1)
        return sums[:count]

    def usefulness(self, width: int) -> Floats:
        """By element, of `width`: summed over the alternatives that hold it, more for short ones and small groups."""
        worth = 1 / (np.bincount(self.group)[self.group] * self.lengths)
        return sums_at(self.entry_element, self.sums_by_entry(worth), width)

    def group_counts(self, width: int) -> Indexes:
        """By element, of `width`: how many groups have it in some alternative."""
        return np.bincount(self.entry_element, minlength=width)

    def reduced(self, chosen: Flags, excluded: Flags, most: int) -> "tuple[Residual, Flags]":
        """What remains to be covered, and the elements chosen with those that must be.

        An element that every remaining alternative of a group holds must be
        chosen. Raises Infeasible when no cover has at most `most` elements in all.
        """
        barred = np.append(excluded[self.entry_element], False)[self.entries].any(axis=0)
        while True:
            allowed = most - np.count_nonzero(chosen)
            lacking = np.append(~chosen[self.entry_element], False)[self.entries]
            missing = np.count_nonzero(lacking, axis=0)
            covered = np.zeros(self.group_count, dtype=bool)
            covered[self.group[~barred & (missing == 0)]] = True
            usable = ~barred & ~covered[self.group] & (missing <= allowed)
            usable_count = np.bincount(self.group[usable], minlength=self.group_count)
            if allowed < 0 or np.any(usable_count[~covered] == 0):
                raise Infeasible
            lacking &= usable
            holders = np.bincount(self.entries[lacking], minlength=self.dual.size)
            forced = self.entry_element[(holders > 0) & (holders == usable_count[self.entry_group])]
            if not forced.size:
                return self._restricted(usable & ~self._dominated(lacking, missing), lacking, ~covered), chosen
            chosen = chosen.copy()
            chosen[forced] = True

    def _dominated(self, lacking: Flags, missing: Indexes) -> Flags:
        """Which lack the one element that another of their group lacks: a later copy of it, or one that lacks more."""
        count = missing.size
        rank = np.where(missing == 1, np.arange(count), count)
        single = lacking & (missing == 1)
        first = np.full(self.dual.size + 1, count, dtype=np.intp)
        np.minimum.at(first, self.entries[single], np.broadcast_to(rank, single.shape)[single])
        return np.any(lacking & (first[self.entries] < rank), axis=0)

    def _restricted(self, alternatives: Flags, lacking: Flags, groups: Flags) -> "Residual":
        """These alternatives with what they lack, and these groups only, numbered anew."""
        lacking = lacking[:, alternatives]
        columns = self.entries[:, alternatives]
        entries = np.zeros(self.dual.size, dtype=bool)
        entries[columns[lacking]] = True
        count = int(np.count_nonzero(entries))
        new_group, new_entry = (np.cumsum(remaining, dtype=np.intp) - 1 for remaining in (groups, entries))
        renumbered = np.where(lacking, np.append(new_entry, count)[columns], count)
        longest = np.count_nonzero(lacking, axis=0).max(initial=0)
        return Residual(
            new_group[self.group[alternatives]],
            np.ascontiguousarray(np.sort(renumbered, axis=0)[:longest]),
            new_group[self.entry_group[entries]],
            self.entry_element[entries],
            self.dual[entries],
            int(np.count_nonzero(groups)),
        )

    def with_group(self, group: list[BitSet]) -> "Residual":
        """The same problem with one more group."""
        added, count = residual_of([group]), self.dual.size
        longest = max(len(self.entries), len(added.entries))
        own_columns, added_columns = (
            np.pad(problem.entries, ((0, longest - len(problem.entries)), (0, 0)), constant_values=problem.dual.size)
            for problem in (self, added)
        )
        new_count = count + added.dual.size
        return Residual(
            np.append(self.group, added.group + self.group_count),
            np.hstack([np.where(own_columns == count, new_count, own_columns), added_columns + count]),
            np.append(self.entry_group, added.entry_group + self.group_count),
            np.append(self.entry_element, added.entry_element),
            np.append(self.dual, np.full(added.dual.size, self.dual.mean())),
            self.group_count + 1,
        )


def residual_of(groups: list[list[BitSet]]) -> Residual:
    """The problem with nothing chosen or excluded yet; there is a group at least, and no alternative is empty."""
    entry_numbers: dict[tuple[int, int], int] = {}
    columns = [
        [entry_numbers.setdefault((number, element), len(entry_numbers)) for element in bits(alternative)]
        for number, group in enumerate(groups)
        for alternative in group
    ]
    count = len(entry_numbers)
    entries = np.full((max(map(len, columns)), len(columns)), count, dtype=np.intp)
    for number, column in enumerate(columns):
        entries[: len(column), number] = column
    by_entry = np.array(list(entry_numbers), dtype=np.intp)
    group_of_alternative = np.repeat(np.arange(len(groups)), [len(group) for group in groups])
    return Residual(
        group_of_alternative, entries, by_entry[:, 0], by_entry[:, 1], np.full(count, FIRST_DUAL), len(groups)
    )
