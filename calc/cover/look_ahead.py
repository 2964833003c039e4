"""Look-ahead branching: the lower bound of every child of a branching set, before any of them is searched."""

import numpy as np

from .bits import Flags
from .residual import Floats, Residual

__all__ = ["look_ahead"]


def look_ahead(residual: Residual, branching_set: Flags) -> Floats:
    """Lower bounds for the covers with exactly one element of the set, by that element; last, for those with none.

    Infinite for elements outside the set and where there is no such cover. The
    dual variables of `residual` must be those of a bound (`dual_ascent.py`). They
    stay as they are: alternatives with other elements of the set drop out, and
    the one element's cost is paid in full, so that it is free to every group.
    """
    firsts, count = residual.first_alternatives, residual.dual.size
    price = residual.sums_by_alternative(residual.dual)
    in_set = branching_set[residual.entry_element]
    set_members = residual.sums_by_alternative(in_set)
    payment_with_none = np.minimum.reduceat(np.where(set_members == 0, price, np.inf), firsts)
    elements = np.flatnonzero(branching_set)
    cheapest_holder = np.full(count + 1, np.inf)
    for row in residual.entries:
        np.minimum.at(cheapest_holder, row[set_members == 1], price[set_members == 1])
    column = np.zeros(branching_set.size, dtype=np.intp)
    column[elements] = np.arange(elements.size)
    at = residual.entry_group[in_set], column[residual.entry_element[in_set]]
    payment = np.repeat(payment_with_none[:, np.newaxis], elements.size, axis=1)
    payment[at] = np.minimum(payment[at], cheapest_holder[:count][in_set] - residual.dual[in_set])
    bound = np.full(branching_set.size + 1, np.inf)
    bound[elements] = 1 + payment.sum(axis=0)
    bound[-1] = payment_with_none.sum()
    return bound
