"""How unusual the parameters of a fitted line are.

Each has the standard normal distribution, but the waves of impedance along one cable, smooth or rough, have a size in
common: together they have a multivariate t distribution, a scale mixture of normal ones. Source: textbook statistics.
"""

import math

import numpy as np

from .arrays import RealArray
from .swept_line import SweptLine

__all__ = ["pull_of", "unusual"]

SMOOTH, LEAST_FREEDOM = 0.35, 1.0
"""About the least size of a smooth cable's waves, of the usual one: so many degrees of freedom the distribution has
for each wave, as its square, and so many at least."""


def _freedom(waves: int) -> float:
    return max(waves * SMOOTH**2, LEAST_FREEDOM)


def pull_of(line: SweptLine, x: RealArray) -> RealArray:
    """By how much the square of each parameter counts near to some parameters, those of faults among them."""
    pull = np.ones(x.size)
    for at in line.cables:
        own = line.waves(at)
        count, squares = own.stop - own.start, float(x[own] @ x[own])
        pull[own] = (_freedom(count) + count) / (_freedom(count) + squares)
    return pull


def unusual(line: SweptLine, x: RealArray) -> float:
    """Twice the negative logarithm of the prior density, but for a constant: of normal ones the sum of squares."""
    total = float(x @ x)
    for at in line.cables:
        own = line.waves(at)
        count, squares = own.stop - own.start, float(x[own] @ x[own])
        total += (_freedom(count) + count) * math.log1p(squares / _freedom(count)) - squares
    return total
