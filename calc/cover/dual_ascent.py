"""A lower bound for the smallest cover: dual ascent on the linear relaxation.

The dual program shares each element's cost of 1 out among the groups that could
use it: one dual variable for each entry, those of an element adding up to 1. The
price of an alternative is the sum of its dual variables; a group pays the price
of its cheapest alternative. By weak duality all payments together are no more
than any cover costs.

The ascent runs on a smoothed dual: a group's payment is taken to come from all
its alternatives near the cheapest, the nearer the more, and a dual variable
grows the more of a payment it carries. Each step keeps part of the one before
(momentum). Only the four basic operations are used, no exponential, so that
every machine rounds alike and takes the same steps.
"""

from typing import NamedTuple

import numpy as np

from .bits import BitSet, Flags
from .residual import Floats, Residual, residual_of, sums_at

__all__ = ["BOUND_TOLERANCE", "DualBound", "dual_ascent", "lower_bound"]

STEPS = 300  # for a bound without a search
# tuned on nodes of three searches that take long
SMOOTHING, SMOOTHING_STEPS = 0.008, 40  # excess price that counts little; halved after so many steps
STEP_SIZE, STEP_SIZE_STEPS = 0.4, 50  # by how much a dual variable grows; halved after so many steps
MOMENTUM = 0.9  # part kept of the step before
LEAST_DUAL = 1e-6  # so that a dual variable can grow again
INTEGER_TOLERANCE = 1e-9  # a bound this little above a whole number is not rounded up
BOUND_TOLERANCE = 1e-7  # by how much a fractional bound must exceed what is allowed


class DualBound(NamedTuple):
    """What a dual solution proves."""

    least: int
    """How many elements every cover of the residual problem has at least."""
    dual: Floats
    """By entry."""
    excluded: Flags
    """By element: in no cover within the allowance, by its reduced cost."""
    steps: int
    """How many it took."""


def lower_bound(groups: list[list[BitSet]]) -> int:
    """How many elements every cover has at least; there is a group at least, and no alternative is empty."""
    residual = residual_of(groups)
    return dual_ascent(residual, int(residual.entry_element.max()) + 1, STEPS, residual.size).least


def dual_ascent(residual: Residual, width: int, steps: int, most: int) -> DualBound:
    """The lower bound after so many steps, and the elements that no cover of at most `most` elements has.

    Elements are numbered below `width`. Starts from the dual variables of
    `residual` and stops as soon as more than `most` elements are proven necessary.
    """
    firsts = residual.first_alternatives
    dual = _scaled(residual, np.maximum(residual.dual, LEAST_DUAL), width)
    best, momentum = -1.0, np.zeros(dual.size)
    for step in range(steps):
        price = residual.sums_by_alternative(dual)
        payment = np.minimum.reduceat(price, firsts)
        total = float(payment.sum())
        if total > best:
            best, best_dual, best_price, best_payment = total, dual, price, payment
        if np.ceil(best - INTEGER_TOLERANCE) > most:
            return DualBound(most + 1, best_dual, np.zeros(width, dtype=bool), step + 1)
        excess = (price - payment[residual.group]) * ((1 + step / SMOOTHING_STEPS) / SMOOTHING)
        weight = _decay(excess)
        weight /= np.add.reduceat(weight, firsts)[residual.group]
        momentum = MOMENTUM * momentum + residual.sums_by_entry(weight)
        growth = 1 + STEP_SIZE / (1 + step / STEP_SIZE_STEPS) * momentum
        dual = _scaled(residual, np.maximum(dual, LEAST_DUAL) * growth, width)
    saving = _savings(residual, best_dual, best_price, best_payment, width)
    excluded = best + 1 - saving > most + BOUND_TOLERANCE
    return DualBound(int(np.ceil(best - INTEGER_TOLERANCE)), best_dual, excluded, steps)


def _decay(excess: Floats) -> Floats:
    """From 1 where there is no excess towards 0, much as an exponential."""
    eighth = 1 + excess / 8
    return 1 / np.square(np.square(np.square(eighth)))


def _scaled(residual: Residual, dual: Floats, width: int) -> Floats:
    """The dual variables with those of each element adding up to its cost of 1."""
    return dual / sums_at(residual.entry_element, dual, width)[residual.entry_element]


def _savings(residual: Residual, dual: Floats, price: Floats, payment: Floats, width: int) -> Floats:
    """By element: by how much all payments together fall once it is free; 1 less this is its reduced cost.

    A cover with the element costs its 1 and then at least what the groups still
    pay, so it costs no less than the bound and this reduced cost together.
    """
    cheapest_holder = np.full(dual.size + 1, np.inf)
    for row in residual.entries:
        np.minimum.at(cheapest_holder, row, price)
    saved = np.maximum(payment[residual.entry_group] - (cheapest_holder[: dual.size] - dual), 0.0)
    return sums_at(residual.entry_element, saved, width)
