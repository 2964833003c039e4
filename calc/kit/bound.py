"""A lower bound for the smallest cover, by sharing each element's cost out among the groups that could use it.

Every element costs 1. Each group is given a share of the cost of every element
in its alternatives, and the shares of an element add up to 1. What a group must
then pay at least, its cheapest alternative, adds up over all groups to no more
than any cover costs: linear programming duality. The shares are shifted, step
by step, towards those who would pay.
"""

from typing import NamedTuple

import numpy as np

from jointwise.calc.kit.rest import Rest, rest_of

__all__ = ["Bound", "bounded", "lower_bound"]

STEPS = 120
FIRST_PUSH = 0.6  # share of itself by which a share that is paid grows in the first step
LEAST_SHARE = 1e-6  # what a group comes back with when it asks for an element again
WHOLE = 1e-9  # a bound this little below a whole number counts as that number
CLEAR = 1e-7  # by how much an element must be too dear before it is barred


class Bound(NamedTuple):
    """At least so many elements are still to be added; the shares that show it; by element whether it is too dear."""

    least: int
    share: np.ndarray
    dear: np.ndarray


def lower_bound(groups: list[list[int]]) -> int:
    """A number of elements that every cover has at least; alternatives are bit sets, none empty."""
    rest = rest_of(groups)
    return bounded(rest, int(rest.element.max()) + 1, STEPS, rest.size).least


def bounded(rest: Rest, width: int, steps: int, most: int) -> Bound:
    """What covers need at least, elements being numbered below `width`, and which none with at most `most` can hold.

    Stops as soon as more than `most` are needed.
    """
    starts, firsts = (np.flatnonzero(np.diff(order, prepend=-1)) for order in (rest.alternative, rest.group))
    share, least = _levelled(rest, np.maximum(rest.share, LEAST_SHARE), width), -1.0
    for step in range(steps):
        price = np.add.reduceat(share[rest.entry], starts)
        cheapest = np.minimum.reduceat(price, firsts)
        paid = float(cheapest.sum())
        if paid > least:
            least, best, prices, payments = paid, share, price, cheapest
        if np.ceil(least - WHOLE) > most:
            return Bound(most + 1, best, np.zeros(width, dtype=bool))
        picked = price <= cheapest[rest.group] * (1 + 1e-12)
        weight = picked / np.bincount(rest.group, weights=picked)[rest.group]
        pays = np.bincount(rest.entry, weights=weight[rest.alternative], minlength=share.size)
        share = _levelled(rest, share * (1 + FIRST_PUSH / (1 + step / 10) * pays), width)
    relief = _relief(rest, best, prices, payments, width)
    return Bound(int(np.ceil(least - WHOLE)), best, least + 1 - relief > most + CLEAR)


def _levelled(rest: Rest, share: np.ndarray, width: int) -> np.ndarray:
    return share / np.bincount(rest.entry_element, weights=share, minlength=width)[rest.entry_element]


def _relief(rest: Rest, share: np.ndarray, price: np.ndarray, cheapest: np.ndarray, width: int) -> np.ndarray:
    """By how much all payments together fall when an element costs nothing, by element; 0 for those of no use."""
    without = np.full(share.size, np.inf)
    np.minimum.at(without, rest.entry, price[rest.alternative] - share[rest.entry])
    falls = np.maximum(cheapest[rest.entry_group] - without, 0.0)
    return np.bincount(rest.entry_element, weights=falls, minlength=width)
