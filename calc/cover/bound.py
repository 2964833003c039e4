"""A lower bound for the smallest cover, by sharing each element's cost out among the groups that could use it.

Every element costs 1. Each group is given a share of the cost of every element
in its alternatives, and the shares of an element add up to 1. What a group must
then pay at least, its cheapest alternative, adds up over all groups to no more
than any cover costs: linear programming duality. The shares are shifted, step
by step, towards those who would pay, a group being taken to pay for all its
alternatives near the cheapest, the nearer the more; each step keeps part of
the one before (ascent with momentum on a smoothed dual). Nothing but the basic
operations is used, no exponential, so that every machine goes the same way.
"""

from typing import NamedTuple

import numpy as np

from .residual import Rest, rest_of

__all__ = ["CLEAR", "Bound", "bounded", "lower_bound"]

STEPS = 300
# tuned on nodes of the searches for three stations of tests/benchmarks/kit.py
NEAR, NEAR_STEPS = 0.008, 40  # a price that far above the cheapest counts little; halved after so many steps
PUSH, PUSH_STEPS = 0.4, 50  # by how much a share that pays grows in a step; halved after so many steps
KEPT = 0.9  # of the step before
LEAST_SHARE = 1e-6  # what a group comes back with when it asks for an element again
WHOLE = 1e-9  # a bound this little below a whole number counts as that number
CLEAR = 1e-7  # by how much a bound must be beyond what is allowed


class Bound(NamedTuple):
    """At least so many elements are still to be added, by these shares."""

    least: int
    share: np.ndarray
    dear: np.ndarray
    """By element whether it is too dear to be in a cover."""
    steps: int
    """It took."""


def lower_bound(groups: list[list[int]]) -> int:
    """A number of elements that every cover has at least; alternatives are bit sets, none empty."""
    rest = rest_of(groups)
    return bounded(rest, int(rest.entry_element.max()) + 1, STEPS, rest.size).least


def bounded(rest: Rest, width: int, steps: int, most: int) -> Bound:
    """What covers need at least, elements being numbered below `width`, and which none with at most `most` can hold.

    Stops as soon as more than `most` are needed.
    """
    firsts, least, push = rest.firsts, -1.0, 0.0
    share = _levelled(rest, np.maximum(rest.share, LEAST_SHARE), width)
    for step in range(steps):
        price = rest.gathered(share)
        cheapest = np.minimum.reduceat(price, firsts)
        paid = float(cheapest.sum())
        if paid > least:
            least, best, prices, payments = paid, share, price, cheapest
        if np.ceil(least - WHOLE) > most:
            return Bound(most + 1, best, np.zeros(width, dtype=bool), step + 1)
        beyond = (price - cheapest[rest.group]) * ((1 + step / NEAR_STEPS) / NEAR)
        weight = _fading(beyond)
        weight /= np.add.reduceat(weight, firsts)[rest.group]
        push = KEPT * push + rest.spread(weight)
        share = _levelled(rest, np.maximum(share, LEAST_SHARE) * (1 + PUSH / (1 + step / PUSH_STEPS) * push), width)
    relief = _relief(rest, best, prices, payments, width)
    return Bound(int(np.ceil(least - WHOLE)), best, least + 1 - relief > most + CLEAR, steps)


def _fading(beyond: np.ndarray) -> np.ndarray:
    """From 1 at nothing beyond towards 0, much as an exponential."""
    eighth = 1 + beyond / 8
    return 1 / np.square(np.square(np.square(eighth)))


def _levelled(rest: Rest, share: np.ndarray, width: int) -> np.ndarray:
    return share / np.bincount(rest.entry_element, weights=share, minlength=width)[rest.entry_element]


def _relief(rest: Rest, share: np.ndarray, price: np.ndarray, cheapest: np.ndarray, width: int) -> np.ndarray:
    """By how much all payments together fall when an element costs nothing, by element; 0 for those of no use."""
    without = np.full(share.size + 1, np.inf)
    for row in rest.entries:
        np.minimum.at(without, row, price)
    falls = np.maximum(cheapest[rest.entry_group] - (without[: share.size] - share), 0.0)
    return np.bincount(rest.entry_element, weights=falls, minlength=width)
