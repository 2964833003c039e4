"""Fitting a line, intact or with faults, to a sweep, and what the fit says for it.

The noise is of unknown level with a floor, so that a fit minimises `numbers * log(mean square + floor²)`, with as many
numbers as are independent, and how unusual its parameters are. Gauss-Newton with Levenberg's damping. The evidence is
the logarithm of the marginal likelihood in Laplace's approximation. Source: textbook statistics.
"""

import math
from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray, IndexArray, RealArray
from .faults import PlacedFault
from .prediction import Prediction, predicted
from .swept_line import SweptLine
from .usual import pull_of, unusual

__all__ = ["NOISE_FLOOR", "Descent", "Fit", "Start", "fitted"]

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
    numbers: float
    """How many independent real numbers it was fitted to."""
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

    def at(self, points: IndexArray) -> "Fit":
        """What it shows and leaves at some of the frequencies; what it says stays that of all of them."""
        return self._replace(prediction=self.prediction.at(points), residual=self.residual[points])


Start = tuple[tuple[PlacedFault, ...], RealArray]
"""Faults, and the parameters of line and faults."""


def fitted(
    line: SweptLine, measured: ComplexArray, start: RealArray, faults: Sequence[PlacedFault] = (), rounds: int = 12
) -> Fit:
    """The fit from a start, after at most so many steps."""
    descent = Descent(line, measured, start, faults)
    descent.go(rounds)
    return descent.fit()


class _State(NamedTuple):
    """What some parameters leave of a sweep."""

    x: RealArray
    prediction: Prediction
    residual: ComplexArray
    variance: float
    objective: float


class Descent:
    """A fit on its way from a start, step by step."""

    def __init__(
        self, line: SweptLine, measured: ComplexArray, start: RealArray, faults: Sequence[PlacedFault] = ()
    ) -> None:
        self._line, self._measured, self._faults = line, measured, tuple(faults)
        self._free, self._share = line.free(start.size), line.numbers / (2 * measured.size)
        self._damping, self._ended = DAMPING[0], False
        self._state = self._state_at(np.clip(start, -FURTHEST, FURTHEST))
        self._products: tuple[RealArray, RealArray] | None = None

    @property
    def objective(self) -> float:
        """What it minimises, where it is."""
        return self._state.objective

    def go(self, rounds: int) -> None:
        """At most so many steps more; none where the last one won next to nothing."""
        _, fall, rise, last = DAMPING
        for _ in range(rounds):
            if self._ended:
                break
            tried = self._state_at(self._stepped())
            gain = self.objective - tried.objective
            if gain > 0:
                self._state, self._products = tried, None
                self._damping *= fall
                self._ended = gain < LEAST_GAIN
            else:
                self._damping *= rise
                self._ended = self._damping > last

    def fit(self) -> Fit:
        """The fit that it has come to."""
        state, free, pull = self._state, self._free, pull_of(self._line, self._state.x)
        curvature = np.diag(pull)
        curvature[np.ix_(free, free)] += self._products_here()[0] * (self._share / state.variance)
        _, log_determinant = np.linalg.slogdet(curvature)
        evidence = -float(state.objective + log_determinant) / 2
        of_state = (state.x, state.prediction, state.residual, self._line.numbers, state.variance, state.objective)
        return Fit(self._faults, *of_state, pull, curvature, evidence)

    def _stepped(self) -> RealArray:
        """The parameters one step further, as damped as it is now."""
        x, free, weight = self._state.x, self._free, self._share / self._state.variance
        normal, gradient = self._products_here()
        pull = pull_of(self._line, x)[free]
        curvature = normal * weight
        diagonal = np.einsum("ii->i", curvature)
        diagonal += pull
        diagonal *= 1 + self._damping
        step = np.linalg.solve(curvature, gradient * weight - pull * x[free])
        step *= min(1.0, LARGEST_STEP / max(np.abs(step).max(), LARGEST_STEP * 1e-9))
        tried = x.copy()
        tried[free] = np.clip(x[free] + step, -FURTHEST, FURTHEST)
        return tried

    def _state_at(self, x: RealArray) -> _State:
        line, measured = self._line, self._measured
        prediction = predicted(line, x, self._faults)
        residual = measured - prediction.shown
        variance = float(np.sum(np.abs(residual) ** 2)) / (2 * measured.size) + NOISE_FLOOR**2
        return _State(x, prediction, residual, variance, line.numbers * float(np.log(variance)) + unusual(line, x))

    def _products_here(self) -> tuple[RealArray, RealArray]:
        if self._products is None:
            self._products = _normal_equations(self._state.prediction.slopes[self._free], self._state.residual)
        return self._products


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
