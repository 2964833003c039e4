"""A lower bound for the smallest cover, by sharing each element's cost out among those who ask for it.

Every element costs 1. Each asker, a group that needs one of its alternatives
whole or a star that needs some of its elements, is given a share of the cost of
every element it could use, and the shares of an element add up to 1. What an
asker must then pay at least, its cheapest alternative, adds up over all askers
to no more than any cover costs: linear programming duality. The shares are
shifted, step by step, towards those who would pay.
"""

from collections.abc import Iterable

import numpy as np

__all__ = ["lower_bound"]

STEPS = 120
FIRST_PUSH = 0.6  # share of itself by which a share that is paid grows in the first step
WHOLE = 1e-9  # a bound this little below a whole number counts as that number


def lower_bound(groups: list[list[int]], stars: list[tuple[int, int]], enough: int) -> int:
    """A number of elements that every cover has at least.

    `groups` hold alternatives as bit sets, none empty; `stars` are bit sets
    with how many of their elements must be in. Stops as soon as it is `enough`.
    """
    problem = _Shares(groups, stars)
    best = 0.0
    for step in range(STEPS):
        paid = problem.paid()
        best = max(best, paid)
        if np.ceil(best - WHOLE) >= enough:
            break
        problem.shift(FIRST_PUSH / (1 + step / 10))
    return int(np.ceil(best - WHOLE))


class _Shares:
    """The shares of all elements' costs, as flat arrays over (asker, element) entries."""

    def __init__(self, groups: list[list[int]], stars: list[tuple[int, int]]) -> None:
        entries: dict[tuple[int, int], int] = {}
        self.members, self.ends, self.firsts = [], [], []
        for asker, group in enumerate(groups):
            self.firsts.append(len(self.ends))
            for alternative in group:
                self.members += [entries.setdefault((asker, bit), len(entries)) for bit in bits(alternative)]
                self.ends.append(len(self.members))
        self.members = np.array(self.members, dtype=np.intp)
        self.starts = np.array([0, *self.ends[:-1]], dtype=np.intp)
        self.group_of = np.repeat(np.arange(len(groups)), [len(group) for group in groups])
        asked = [(len(groups) + at, bit) for at, (star, _) in enumerate(stars) for bit in bits(star)]
        self.star_entries = np.arange(len(entries), len(entries) + len(asked))
        self.star_of = np.array([asker - len(groups) for asker, _ in asked], dtype=np.intp)
        self.demand = np.array([demand for _, demand in stars], dtype=np.float64)
        keys = [*entries, *asked]
        elements = {bit: at for at, bit in enumerate(sorted({bit for _, bit in keys}))}
        self.element = np.array([elements[bit] for _, bit in keys], dtype=np.intp)
        self.elements = len(elements)
        self.share = np.ones(len(keys))
        self._level()

    def paid(self) -> float:
        """What all askers pay together; remembers which entries they pay."""
        self.pays = np.zeros(self.share.size)
        total = 0.0
        if self.firsts:
            price = np.add.reduceat(self.share[self.members], self.starts)
            cheapest = np.minimum.reduceat(price, self.firsts)
            chosen = price <= cheapest[self.group_of] * (1 + 1e-12)
            tied = np.bincount(self.group_of, weights=chosen)
            weight = chosen / tied[self.group_of]
            lengths = np.diff([*self.starts, self.members.size])
            self.pays += np.bincount(self.members, weights=np.repeat(weight, lengths), minlength=self.share.size)
            total += cheapest.sum()
        if self.demand.size:
            # a star pays its cheapest elements, as many as it asks for
            shares = self.share[self.star_entries]
            order = np.lexsort((shares, self.star_of))
            first = np.searchsorted(self.star_of, np.arange(self.demand.size))
            rank = np.empty(order.size)
            rank[order] = np.arange(order.size) - first[self.star_of[order]]
            cheap = rank < self.demand[self.star_of]
            self.pays[self.star_entries] += cheap
            total += shares[cheap].sum()
        return float(total)

    def shift(self, push: float) -> None:
        """Let the shares that are paid grow at the expense of the others."""
        self.share *= 1 + push * self.pays
        self._level()

    def _level(self) -> None:
        self.share /= np.bincount(self.element, weights=self.share, minlength=self.elements)[self.element]


def bits(mask: int) -> Iterable[int]:
    """The indexes of the bits set, ascending."""
    while mask:
        low = mask & -mask
        yield low.bit_length() - 1
        mask ^= low
