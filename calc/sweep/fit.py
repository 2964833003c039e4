"""Fitting a line, intact or with faults, to a sweep, and what the fit says for it.

The noise is of unknown level with a floor, so that a fit minimises `numbers * log(mean square + floor²)`, with as many
numbers as are independent, and how unusual its parameters are. Gauss-Newton with Levenberg's damping. The evidence is
the logarithm of the marginal likelihood in Laplace's approximation. Source: textbook statistics.
"""

import math
from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray, RealArray
from .faults import PlacedFault
from .prediction import Prediction, predicted
from .swept_line import SweptLine
from .usual import pull_of, unusual

__all__ = ["NOISE_FLOOR", "Fit", "fitted"]

DAMPING = (1e-3, 0.2, 8.0, 1e6)
"""Where it starts, its fall on success and rise on failure, and where the fit gives up."""

LEAST_GAIN = 0.05  # of the objective: a step that wins less is the last
NOISE_FLOOR = 1.5e-3
"""Least noise a fit assumes, of each real number: beyond the accuracy of an analyser in the field."""

SINGLE_THREADED = 500_000
"""Multiplications up to which numpy's matrix product stays in one thread: waiting for others takes it longer."""

LARGEST_STEP = 1.5
FURTHEST = 3.5
"""Deviations a fit may move a parameter."""


class Fit(NamedTuple):
    """One fit of a line with some faults or none."""

    faults: tuple[PlacedFault, ...]
    x: RealArray
    """The line's parameters, then each fault's."""
    prediction: Prediction
    residual: ComplexArray
    noise_variance: float
    """Of each real number."""
    objective: float
    pull: RealArray
    """By how much the square of each parameter counts."""
    curvature: RealArray
    """The inverse of the posterior covariance."""
    evidence: float
    """Logarithm of the marginal likelihood."""

    @property
    def misfit(self) -> float:
        """Rms of the reflection that it leaves unexplained."""
        return float(np.sqrt(np.mean(np.abs(self.residual) ** 2)))


def fitted(
    line: SweptLine, measured: ComplexArray, start: RealArray, faults: Sequence[PlacedFault] = (), rounds: int = 12
) -> Fit:
    """The fit from a start, after at most so many steps."""
    x = np.clip(start, -FURTHEST, FURTHEST)
    first, fall, rise, last = DAMPING
    damping, share = first, line.numbers / (2 * measured.size)
    pull, free = pull_of(line, x), line.free(x.size)
    prediction, residual, objective, variance = _state(line, measured, x, faults)
    normal, gradient = _normal_equations(prediction.slopes[free], residual)
    for _ in range(rounds):
        curvature = normal * (share / variance)
        diagonal = np.einsum("ii->i", curvature)
        diagonal += pull[free]
        diagonal *= 1 + damping
        step = np.linalg.solve(curvature, gradient * (share / variance) - pull[free] * x[free])
        step *= min(1.0, LARGEST_STEP / max(np.abs(step).max(), LARGEST_STEP * 1e-9))
        tried = x.copy()
        tried[free] = np.clip(x[free] + step, -FURTHEST, FURTHEST)
        new = _state(line, measured, tried, faults)
        gain = objective - new[2]
        if gain > 0:
            x, pull = tried, pull_of(line, tried)
            prediction, residual, objective, variance = new
            normal, gradient = _normal_equations(prediction.slopes[free], residual)
            damping *= fall
            if gain < LEAST_GAIN:
                break
        else:
            damping *= rise
            if damping > last:
                break
    curvature = np.diag(pull)
    curvature[np.ix_(free, free)] += normal * (share / variance)
    _, log_determinant = np.linalg.slogdet(curvature)
    evidence = -float(objective + log_determinant) / 2
    return Fit(tuple(faults), x, prediction, residual, variance, objective, pull, curvature, evidence)


def _state(
    line: SweptLine, measured: ComplexArray, x: RealArray, faults: Sequence[PlacedFault]
) -> tuple[Prediction, ComplexArray, float, float]:
    prediction = predicted(line, x, faults)
    residual = measured - prediction.shown
    squares = float(np.sum(np.abs(residual) ** 2))
    variance = squares / (2 * measured.size) + NOISE_FLOOR**2
    return prediction, residual, line.numbers * float(np.log(variance)) + unusual(line, x), variance


def _normal_equations(slopes: ComplexArray, residual: ComplexArray) -> tuple[RealArray, RealArray]:
    """The products of all pairs of parameters' derivatives, and of each with the residual."""
    rows = slopes.view(np.float64)
    step = max(math.isqrt(SINGLE_THREADED // rows.shape[1]), 1)
    normal = np.empty((len(rows), len(rows)))
    # block by block, and as it is symmetric only half of them
    for first in range(0, len(rows), step):
        block = rows[first : first + step]
        for second in range(0, first + 1, step):
            products = block @ rows[second : second + step].T
            normal[first : first + step, second : second + step] = products
            normal[second : second + step, first : first + step] = products.T
    return normal, rows @ residual.view(np.float64)
