"""A lower bound for the smallest cover, by sharing each element's cost out among the groups that could use it.

Every element costs 1. Each group is given a share of the cost of every element
in its alternatives, and the shares of an element add up to 1. What a group must
then pay at least, its cheapest alternative, adds up over all groups to no more
than any cover costs: linear programming duality. The shares are shifted, step
by step, towards those who would pay.
"""

from collections.abc import Iterable
from typing import NamedTuple

import numpy as np

__all__ = ["Bound", "Shares", "bits", "lower_bound"]

STEPS = 120
FIRST_PUSH = 0.6  # share of itself by which a share that is paid grows in the first step
LEAST_SHARE = 1e-6  # what a group comes back with when it asks for an element again
WHOLE = 1e-9  # a bound this little below a whole number counts as that number
CLEAR = 1e-7  # by how much an element must be too dear before it is barred


class Bound(NamedTuple):
    """At least so many elements are still to be added; the shares that show it; elements barred as too dear."""

    least: int
    shares: np.ndarray
    barred: int


def lower_bound(groups: list[list[int]]) -> int:
    """A number of elements that every cover has at least; alternatives are bit sets, none empty."""
    shares = Shares(groups)
    return shares.bound(0, 0, shares.even, STEPS, len(groups) * shares.width + 1).least


class Shares:
    """The shares of all elements' costs, as flat arrays over (group, element) entries.

    An incidence is an element in an alternative; all incidences of a group in
    one element have the same entry.
    """

    def __init__(self, groups: list[list[int]]) -> None:
        entries: dict[tuple[int, int], int] = {}
        incidences, starts, firsts = [], [], []
        for at, group in enumerate(groups):
            firsts.append(len(starts))
            for alternative in group:
                starts.append(len(incidences))
                incidences += [entries.setdefault((at, bit), len(entries)) for bit in bits(alternative)]
        self.entry = np.array(incidences, dtype=np.intp)
        self.starts, self.firsts = np.array(starts, dtype=np.intp), np.array(firsts, dtype=np.intp)
        self.group = np.array([at for at, _ in entries], dtype=np.intp)
        self.element = np.array([bit for _, bit in entries], dtype=np.intp)
        self.width = 8 * -(-(int(self.element.max()) + 1) // 8)  # bits, in whole bytes
        lengths = np.diff([*starts, len(incidences)])
        self.alternative = np.repeat(np.arange(len(starts)), lengths)
        self.group_of = np.repeat(np.arange(len(groups)), np.diff([*firsts, len(starts)]))
        self.by_entry = np.argsort(self.entry, kind="stable")
        self.entry_starts = np.searchsorted(self.entry[self.by_entry], np.arange(len(entries)))
        self.even = np.ones(len(entries), dtype=np.float32)

    @property
    def size(self) -> int:
        """How many incidences each step goes through."""
        return self.entry.size

    def bound(self, chosen: int, out: int, first: np.ndarray, steps: int, beat: int) -> Bound:
        """What covers with the elements of `chosen` and none of `out` need more, from the shares to begin with.

        No group may have all its alternatives out. Stops as soon as no fewer
        than `beat` are needed; bars what no cover with fewer can hold.
        """
        share, dead = self._start(chosen, out, first)
        least = -1.0
        for step in range(steps):
            price = np.add.reduceat(share[self.entry], self.starts)
            price[dead] = np.inf
            cheapest = np.minimum.reduceat(price, self.firsts)
            paid = float(cheapest.sum())
            if paid > least:
                least, best, prices, payments = paid, share, price, cheapest
            if np.ceil(least - WHOLE) >= beat:
                return Bound(beat, best.astype(np.float32), 0)
            picked = price <= cheapest[self.group_of] * (1 + 1e-12)
            weight = picked / np.bincount(self.group_of, weights=picked)[self.group_of]
            pays = np.bincount(self.entry, weights=weight[self.alternative], minlength=share.size)
            share = self._levelled(share * (1 + FIRST_PUSH / (1 + step / 10) * pays))
        whole = int(np.ceil(least - WHOLE))
        dear = least + 1 - self._relief(best, prices, payments) > beat - 1 + CLEAR
        return Bound(whole, best.astype(np.float32), _mask(dear) & ~chosen & ~out)

    def _start(self, chosen: int, out: int, first: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Shares among the groups that are not yet met, and which alternatives are out."""
        held, barred = self._flags(chosen)[self.element], self._flags(out)[self.element]
        dead = np.logical_or.reduceat(barred[self.entry], self.starts)
        whole = np.logical_and.reduceat(held[self.entry], self.starts)
        met = np.zeros(self.firsts.size, dtype=bool)
        met[self.group_of[whole]] = True
        asks = ~met[self.group] & ~held & ~barred
        return self._levelled(np.where(asks, np.maximum(first.astype(np.float64), LEAST_SHARE), 0.0)), dead

    def _levelled(self, share: np.ndarray) -> np.ndarray:
        total = np.bincount(self.element, weights=share, minlength=self.width)[self.element]
        return share / np.where(total > 0, total, 1.0)

    def _relief(self, share: np.ndarray, price: np.ndarray, cheapest: np.ndarray) -> np.ndarray:
        """By how much all payments together fall when an element costs nothing, by element."""
        without = (price[self.alternative] - share[self.entry])[self.by_entry]
        falls = np.maximum(cheapest[self.group] - np.minimum.reduceat(without, self.entry_starts), 0.0)
        return np.bincount(self.element, weights=falls, minlength=self.width)

    def _flags(self, mask: int) -> np.ndarray:
        held = mask & ((1 << self.width) - 1)
        octets = np.frombuffer(held.to_bytes(self.width // 8, "little"), dtype=np.uint8)
        return np.unpackbits(octets, bitorder="little").astype(bool)


def _mask(flags: np.ndarray) -> int:
    return int.from_bytes(np.packbits(flags, bitorder="little").tobytes(), "little")


def bits(mask: int) -> Iterable[int]:
    """The indexes of the bits set, ascending."""
    while mask:
        low = mask & -mask
        yield low.bit_length() - 1
        mask ^= low
