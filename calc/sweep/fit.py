"""Fitting a line to a sweep from many starts at once, each with a fault of its own or none.

A fit minimises `numbers * log(squares) + sum of x²`: the squared residual with a noise of unknown level, and
the parameters' prior. Gauss-Newton with Levenberg's damping; Source: textbook least squares. All starts are one
array, so that the core is as quick in the browser as its arrays are.
"""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from ..waves.two_port import TwoPort
from .arrays import ComplexArray, RealArray
from .chain_solution import input_reflection
from .faults import Fault, faults_of
from .jacobian import faults_by_start, inner_products, jacobian, solved_chains, unknowns_of
from .model import LineModel
from .observation import Observation, Start

__all__ = ["NOISE_FLOOR", "Fit", "fitted", "fitted_reflection"]

FITTED_AT_ONCE = 4096
"""Frequencies times starts in one array; more would only need more memory."""

DAMPING = (1e-3, 0.2, 10.0, 1e9)
"""Where it starts, its fall on success and rise on failure, and where the fit gives up."""

LEAST_GAIN = 0.05  # of the objective: a step that wins less is the last
NOISE_FLOOR = 1e-3
"""Least noise a fit assumes, against a full reflection: beyond the accuracy of an analyser in the field."""

LARGEST_LOG_STEP = 1.5
TINY = 1e-12
FURTHEST = 6.0
"""Standard deviations a fit may move a good part's parameters."""


class Fit(NamedTuple):
    """One fit: the fault or none, the line's parameters, the logarithms of the fault's sizes, and how well it does."""

    fault: Fault | None
    parameters: RealArray
    log_sizes: RealArray
    objective: float
    residual_squares: float
    covariance: RealArray
    """Posterior, of parameters and then logarithms of sizes."""
    numbers: int
    """How many real numbers were fitted."""

    @property
    def hypothesis(self) -> Fault:
        """The fault of a fit that has one."""
        if self.fault is None:
            raise ValueError("the intact line has no fault")
        return self.fault

    def criterion(self) -> float:
        """Lower is better: the Bayesian information criterion, for which each size of the fault counts."""
        return self.objective + len(self.log_sizes) * float(np.log(self.numbers))

    @property
    def residual(self) -> float:
        """Rms of the reflection that the fit leaves unexplained."""
        return float(np.sqrt(self.residual_squares / (self.numbers // 2)))

    @property
    def noise_variance(self) -> float:
        """What the residual says of the noise, with its floor: of each real number."""
        return self.residual_squares / self.numbers + NOISE_FLOOR**2

    @property
    def sizes(self) -> list[float]:
        """The sizes in their units."""
        return [float(size) for size in np.exp(self.log_sizes)]

    @property
    def start(self) -> Start:
        """To go on from here, with all the frequencies or others."""
        return Start(None if self.fault is None else self.fault.number, self.parameters, self.log_sizes)


class _NormalEquations(NamedTuple):
    """Of each start: squares of the residual, products of the derivatives with each other and with the residual."""

    squares: RealArray
    matrix: RealArray
    gradient: RealArray


def fitted(observation: Observation, starts: Sequence[Start], rounds: int) -> list[Fit]:
    """The fit from each start, after at most so many steps."""
    most = max(FITTED_AT_ONCE // observation.measured.size, 1)
    blocks = [starts[first : first + most] for first in range(0, len(starts), most)]
    return [fit for block in blocks for fit in _gauss_newton(observation, block, rounds)]


def fitted_reflection(line: LineModel, fit: Fit, *, intact: bool = False) -> ComplexArray:
    """What the line shows with the parameters of a fit, or would show without its fault: (frequencies,)."""
    fault = None if intact or fit.fault is None else faults_of(line)[fit.fault.number]

    def matrix(position: int) -> TwoPort:
        own = line.matrix(fit.parameters, position)
        return fault.matrix(own, fit.sizes) if fault and fault.position == position else own

    positions = reversed(range(len(line.two_ports)))
    return input_reflection(map(matrix, positions), line.load_reflection(fit.parameters), line.impedance_ohm)


def _gauss_newton(observation: Observation, starts: Sequence[Start], rounds: int) -> list[Fit]:
    faults = faults_by_start(observation, starts)
    count, numbers = observation.line.parameter_count, observation.numbers
    x = unknowns_of(starts, count)
    low, high, prior = _bounds_and_prior(faults, x, count)
    first, fall, rise, last = DAMPING
    damping = np.full(len(starts), first, dtype=np.float64)
    squares, normal, gradient = _normal_equations(observation, faults, x)
    objective = _objective(numbers, squares, prior, x)
    diagonal = np.arange(x.shape[1], dtype=np.int64)
    live = np.arange(len(starts), dtype=np.int64)
    for _ in range(rounds):
        noise = squares[live] / numbers + NOISE_FLOOR**2
        curvature = normal[live] / noise[:, None, None]
        curvature[:, diagonal, diagonal] += prior[live]
        curvature[:, diagonal, diagonal] += damping[live, None] * (curvature[:, diagonal, diagonal] + TINY)
        descent = gradient[live] / noise[:, None] - prior[live] * x[live]
        step = np.linalg.solve(curvature, descent[..., None])[..., 0]
        step[:, count:] = np.clip(step[:, count:], -LARGEST_LOG_STEP, LARGEST_LOG_STEP)
        tried = np.clip(x[live] + step, low[live], high[live])
        new = _normal_equations(observation, [faults[row] for row in live], tried)
        new_objective = _objective(numbers, new.squares, prior[live], tried)
        gain = objective[live] - new_objective
        better = gain > 0
        rows = live[better]
        x[rows], objective[rows] = tried[better], new_objective[better]
        squares[rows], normal[rows], gradient[rows] = (part[better] for part in new)
        damping[live] *= np.where(better, fall, rise)
        live = live[~((gain >= 0) & (gain < LEAST_GAIN)) & (damping[live] <= last)]
        if not live.size:
            break
    curvature = normal / (squares / numbers + NOISE_FLOOR**2)[:, None, None]
    curvature[:, diagonal, diagonal] += prior + TINY
    covariance = np.linalg.inv(curvature).astype(np.float64, copy=False)
    found = []
    for row, (fault, start) in enumerate(zip(faults, starts, strict=True)):
        own = count + start.log_sizes.size
        found.append(
            Fit(
                fault=fault,
                parameters=x[row, :count],
                log_sizes=x[row, count:own],
                objective=float(objective[row]),
                residual_squares=float(squares[row]),
                covariance=covariance[row, :own, :own],
                numbers=numbers,
            )
        )
    return found


def _bounds_and_prior(
    faults: Sequence[Fault | None], x: RealArray, parameter_count: int
) -> tuple[RealArray, RealArray, RealArray]:
    """Bounds of each start's unknowns, and the inverse variance of their prior: 0 of a fault's sizes."""
    low, high, prior = np.full_like(x, -FURTHEST), np.full_like(x, FURTHEST), np.ones_like(x)
    for row, fault in enumerate(faults):
        for at, size in enumerate(fault.kind.sizes if fault else (), start=parameter_count):
            low[row, at], high[row, at], prior[row, at] = np.log(size.least), np.log(size.most), 0.0
    return low, high, prior


def _normal_equations(observation: Observation, faults: Sequence[Fault | None], x: RealArray) -> _NormalEquations:
    chains = solved_chains(observation, faults, x)
    residual = observation.measured - chains.solution.reflection(0, chains.faulty[0])
    slopes = jacobian(observation, faults, x, chains)
    return _NormalEquations(
        squares=(np.abs(residual) ** 2).sum(axis=-1),
        matrix=inner_products(slopes, slopes),
        gradient=inner_products(slopes, residual[:, None])[..., 0],
    )


def _objective(numbers: int, squares: RealArray, prior: RealArray, x: RealArray) -> RealArray:
    return numbers * np.log(squares / numbers + NOISE_FLOOR**2) + (prior * x**2).sum(axis=-1)
