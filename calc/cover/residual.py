"""What is left to cover, as flat arrays: groups of alternatives without what is chosen, what is out and what is spare.

An element in a group, whatever alternatives of the group hold it, is an entry;
an entry has the group's share of the element's cost (`bound.py`).
"""

from typing import NamedTuple

import numpy as np

from .bits import bits

__all__ = ["Rest", "rest_of"]

FIRST_SHARE = 1.0  # of a group in an element, before it is levelled


class Rest(NamedTuple):
    """Groups in order, their alternatives in order, the entries of those."""

    group: np.ndarray
    """By alternative."""
    entries: np.ndarray
    """A column of entries by alternative; where it has fewer, the number of all entries stands instead."""
    entry_group: np.ndarray
    """By entry, as are the next two."""
    entry_element: np.ndarray
    share: np.ndarray
    groups: int

    @property
    def size(self) -> int:
        """How many numbers are gone through."""
        return self.entries.size

    @property
    def firsts(self) -> np.ndarray:
        """The first alternative of each group."""
        return np.flatnonzero(np.diff(self.group, prepend=-1))

    @property
    def lengths(self) -> np.ndarray:
        """How many elements each alternative has."""
        return np.count_nonzero(self.entries < self.share.size, axis=0)

    def gathered(self, by_entry: np.ndarray) -> np.ndarray:
        """Of something by entry the sum over those of each alternative."""
        return np.append(by_entry, 0)[self.entries].sum(axis=0)

    def spread(self, by_alternative: np.ndarray) -> np.ndarray:
        """Of something by alternative the sum over those that hold each entry."""
        count = self.share.size
        return sum(np.bincount(row, weights=by_alternative, minlength=count + 1) for row in self.entries)[:count]

    def helpful(self, width: int) -> np.ndarray:
        """How much each of `width` elements helps: summed over alternatives, the fewer and the smaller the more."""
        worth = 1 / (np.bincount(self.group)[self.group] * self.lengths)
        return np.bincount(self.entry_element, weights=self.spread(worth), minlength=width)

    def asked(self, width: int) -> np.ndarray:
        """How many groups have each of `width` elements in some alternative."""
        return np.bincount(self.entry_element, minlength=width)

    def left(self, chosen: np.ndarray, out: np.ndarray, most: int) -> "tuple[Rest, np.ndarray] | None":
        """What is left, and what must be chosen then; None when no cover has at most `most` elements in all.

        An element that every alternative of a group holds is chosen too.
        """
        barred = np.append(out[self.entry_element], False)[self.entries].any(axis=0)
        while True:
            room = most - np.count_nonzero(chosen)
            lacking = np.append(~chosen[self.entry_element], False)[self.entries]
            missing = np.count_nonzero(lacking, axis=0)
            met = np.zeros(self.groups, dtype=bool)
            met[self.group[~barred & (missing == 0)]] = True
            alive = ~barred & ~met[self.group] & (missing <= room)
            ways = np.bincount(self.group[alive], minlength=self.groups)
            if room < 0 or np.any(ways[~met] == 0):
                return None
            lacking &= alive
            holding = np.bincount(self.entries[lacking], minlength=self.share.size)
            forced = self.entry_element[(holding > 0) & (holding == ways[self.entry_group])]
            if not forced.size:
                return self._with(alive & ~self._spare(lacking, missing), lacking, ~met), chosen
            chosen = chosen.copy()
            chosen[forced] = True

    def _spare(self, lacking: np.ndarray, missing: np.ndarray) -> np.ndarray:
        """Which alternatives lack all that an earlier one lacks, or a shorter one, of a single missing element."""
        count = missing.size
        own = np.where(missing == 1, np.arange(count), count)
        single = lacking & (missing == 1)
        first = np.full(self.share.size + 1, count, dtype=np.intp)
        np.minimum.at(first, self.entries[single], np.broadcast_to(own, single.shape)[single])
        return (lacking & (first[self.entries] < own)).any(axis=0)

    def _with(self, alive: np.ndarray, lacking: np.ndarray, groups: np.ndarray) -> "Rest":
        """These alternatives with what they lack, and these groups only, numbered anew."""
        lacking = lacking[:, alive]
        entries = np.zeros(self.share.size, dtype=bool)
        entries[self.entries[:, alive][lacking]] = True
        count = np.count_nonzero(entries)
        group, entry = (np.cumsum(kept, dtype=np.intp) - 1 for kept in (groups, entries))
        renamed = np.where(lacking, np.append(entry, count)[self.entries[:, alive]], count)
        longest = np.count_nonzero(lacking, axis=0).max(initial=0)
        return Rest(
            group[self.group[alive]],
            np.ascontiguousarray(np.sort(renamed, axis=0)[:longest]),
            group[self.entry_group[entries]],
            self.entry_element[entries],
            self.share[entries],
            int(np.count_nonzero(groups)),
        )

    def also(self, group: list[int]) -> "Rest":
        """The same and one more group."""
        more, count = rest_of([group]), self.share.size
        longest = max(len(self.entries), len(more.entries))
        padded = [
            np.pad(one.entries, ((0, longest - len(one.entries)), (0, 0)), constant_values=one.share.size)
            for one in (self, more)
        ]
        none = count + more.share.size
        return Rest(
            np.append(self.group, more.group + self.groups),
            np.hstack([np.where(padded[0] == count, none, padded[0]), padded[1] + count]),
            np.append(self.entry_group, more.entry_group + self.groups),
            np.append(self.entry_element, more.entry_element),
            np.append(self.share, np.full(more.share.size, self.share.mean())),
            self.groups + 1,
        )


def rest_of(groups: list[list[int]]) -> Rest:
    """Everything still to be covered; alternatives are bit sets, none of them empty."""
    numbers: dict[tuple[int, int], int] = {}
    columns = [
        [numbers.setdefault((at, bit), len(numbers)) for bit in bits(alternative)]
        for at, group in enumerate(groups)
        for alternative in group
    ]
    entries = np.full((max(map(len, columns)), len(columns)), len(numbers), dtype=np.intp)
    for at, column in enumerate(columns):
        entries[: len(column), at] = column
    by_entry = np.array(list(numbers), dtype=np.intp)
    group = np.repeat(np.arange(len(groups)), [len(one) for one in groups])
    shares = np.full(len(numbers), FIRST_SHARE)
    return Rest(group, entries, by_entry[:, 0], by_entry[:, 1], shares, len(groups))
