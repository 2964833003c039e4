"""What it adds to the bound at once to choose exactly one element of a star, or none: before any of it is searched."""

import numpy as np

from .residual import Rest

__all__ = ["outlook"]


def outlook(rest: Rest, star: np.ndarray) -> np.ndarray:
    """How many more elements covers have at least, that have one element and no other of a star; last, none of it.

    The star is given as flags by element; infinite where there is no such cover
    and for elements that are not of the star. The shares of `rest` must be those
    of a bound (`bound.py`), as the prices are; alternatives that hold other
    elements of the star are left out, and the one element's cost is paid once
    and for all.
    """
    firsts, count = rest.firsts, rest.share.size
    price = rest.gathered(rest.share)
    of_star = star[rest.entry_element]
    held = rest.gathered(of_star)
    without = np.minimum.reduceat(np.where(held == 0, price, np.inf), firsts)
    elements = np.flatnonzero(star)
    rest_price = np.full(count + 1, np.inf)
    for row in rest.entries:
        np.minimum.at(rest_price, row[held == 1], price[held == 1])
    column = np.zeros(star.size, dtype=np.intp)
    column[elements] = np.arange(elements.size)
    at = rest.entry_group[of_star], column[rest.entry_element[of_star]]
    cheapest = np.repeat(without[:, np.newaxis], elements.size, axis=1)
    cheapest[at] = np.minimum(cheapest[at], rest_price[:count][of_star] - rest.share[of_star])
    least = np.full(star.size + 1, np.inf)
    least[elements] = 1 + cheapest.sum(axis=0)
    least[-1] = without.sum()
    return least
