"""What is left to cover, as flat arrays: groups of alternatives without what is chosen, what is out and what is spare.

An incidence is an element in an alternative; all incidences of a group in one
element have the same entry, which holds the group's share of the element's
cost (`bound.py`).
"""

from typing import NamedTuple

import numpy as np

from jointwise.calc.kit.bits import bits

__all__ = ["Rest", "rest_of"]

FIRST_SHARE = 1.0  # of a group in an element, before it is levelled


class Rest(NamedTuple):
    """Groups in order, their alternatives in order, the incidences of those in order."""

    group: np.ndarray
    """By alternative."""
    alternative: np.ndarray
    """By incidence, as are the next two."""
    element: np.ndarray
    entry: np.ndarray
    entry_group: np.ndarray
    entry_element: np.ndarray
    share: np.ndarray
    """By entry, as are the last two."""
    groups: int

    @property
    def size(self) -> int:
        """How many incidences are gone through."""
        return self.element.size

    def helpful(self, width: int) -> np.ndarray:
        """How much each of `width` elements helps: summed over alternatives, the fewer and the smaller the more."""
        ways, lengths = np.bincount(self.group), np.bincount(self.alternative)
        worth = 1 / (ways[self.group] * lengths)
        return np.bincount(self.element, weights=worth[self.alternative], minlength=width)

    def asked(self, width: int) -> np.ndarray:
        """How many groups have each of `width` elements in some alternative."""
        return np.bincount(self.entry_element, minlength=width)

    def left(self, chosen: np.ndarray, out: np.ndarray, most: int) -> "tuple[Rest, np.ndarray] | None":
        """What is left, and what must be chosen then; None when no cover has at most `most` elements in all.

        An element that every alternative of a group holds is chosen too.
        """
        alternatives = self.group.size
        lengths = np.bincount(self.alternative, minlength=alternatives)
        dead = np.zeros(alternatives, dtype=bool)
        dead[self.alternative[out[self.element]]] = True
        while True:
            held = chosen[self.element]
            missing = lengths - np.bincount(self.alternative[held], minlength=alternatives)
            met = np.zeros(self.groups, dtype=bool)
            met[self.group[~dead & (missing == 0)]] = True
            alive = ~dead & ~met[self.group] & (missing <= most - np.count_nonzero(chosen))
            ways = np.bincount(self.group[alive], minlength=self.groups)
            if np.count_nonzero(chosen) > most or np.any(ways[~met] == 0):
                return None
            live = alive[self.alternative] & ~held
            holding = np.bincount(self.entry[live], minlength=self.share.size)
            forced = self.entry_element[(holding > 0) & (holding == ways[self.entry_group])]
            if not forced.size:
                return self._with(self._unspared(alive, live, missing), live, ~met), chosen
            chosen = chosen.copy()
            chosen[forced] = True

    def _unspared(self, alive: np.ndarray, live: np.ndarray, missing: np.ndarray) -> np.ndarray:
        """The alternatives alive without those that hold another one of a single missing element."""
        single = live & (missing == 1)[self.alternative]
        first = np.full(self.share.size, self.group.size, dtype=np.intp)
        np.minimum.at(first, self.entry[single], self.alternative[single])
        spare = np.zeros(alive.size, dtype=bool)
        spare[self.alternative[live & (self.alternative > first[self.entry])]] = True
        longer = live & (first[self.entry] < self.group.size) & (missing > 1)[self.alternative]
        spare[self.alternative[longer]] = True
        return alive & ~spare

    def _with(self, alive: np.ndarray, live: np.ndarray, groups: np.ndarray) -> "Rest":
        """These alternatives, these incidences of theirs and these groups only, numbered anew."""
        live = live & alive[self.alternative]
        entries = np.zeros(self.share.size, dtype=bool)
        entries[self.entry[live]] = True
        group, alternative, entry = (np.cumsum(kept, dtype=np.intp) - 1 for kept in (groups, alive, entries))
        return Rest(
            group[self.group[alive]],
            alternative[self.alternative[live]],
            self.element[live],
            entry[self.entry[live]],
            group[self.entry_group[entries]],
            self.entry_element[entries],
            self.share[entries],
            int(np.count_nonzero(groups)),
        )

    def also(self, group: list[int]) -> "Rest":
        """The same and one more group."""
        more = rest_of([group])
        return Rest(
            np.append(self.group, more.group + self.groups),
            np.append(self.alternative, more.alternative + self.group.size),
            np.append(self.element, more.element),
            np.append(self.entry, more.entry + self.share.size),
            np.append(self.entry_group, more.entry_group + self.groups),
            np.append(self.entry_element, more.entry_element),
            np.append(self.share, np.full(more.share.size, self.share.mean())),
            self.groups + 1,
        )


def rest_of(groups: list[list[int]]) -> Rest:
    """Everything still to be covered; alternatives are bit sets, none of them empty."""
    entries: dict[tuple[int, int], int] = {}
    group_of, alternative_of, elements, entry_of = [], [], [], []
    for at, group in enumerate(groups):
        for alternative in group:
            for bit in bits(alternative):
                alternative_of.append(len(group_of))
                elements.append(bit)
                entry_of.append(entries.setdefault((at, bit), len(entries)))
            group_of.append(at)
    flat = [group_of, alternative_of, elements, entry_of, [at for at, _ in entries], [bit for _, bit in entries]]
    return Rest(*(np.array(one, dtype=np.intp) for one in flat), np.full(len(entries), FIRST_SHARE), len(groups))
