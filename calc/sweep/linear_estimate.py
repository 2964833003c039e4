"""Linear estimates at a fit: what a lumped element at a joint would explain, the line's parameters being free."""

from typing import NamedTuple

import numpy as np

from ..waves.two_port import TwoPort
from .arrays import ComplexArray, RealArray
from .faults import LumpedEstimate
from .fit import Fit
from .jacobian import faults_by_start, inner_products, jacobian, solved_chains, unknowns_of
from .model import LineModel
from .observation import Observation

__all__ = ["least_resistances", "lumped_estimates"]

LEAST_VISIBLE = 1e-4  # of what a resistance between matched ends shows; below it the line hides one there


class _Sensitivities(NamedTuple):
    """Residual of a fit, (frequencies,), and derivatives of its reflection, (parameters or positions, frequencies)."""

    residual: ComplexArray
    by_parameter: ComplexArray
    by_ohm: ComplexArray
    """By a resistance in series behind a two-port."""
    by_siemens: ComplexArray
    """By a conductance across the line there."""


def least_resistances(
    line: LineModel, measured: ComplexArray, fit: Fit, positions: list[int], evidence: float
) -> list[float]:
    """The smallest resistance in series behind each position that a sweep like this would show [Ω]; infinite for none.

    Its standard deviation at a fit times the root of the evidence asked for.
    """
    observation = Observation.of(line, measured)
    numbers, noise = observation.numbers, fit.noise_variance
    sensitivities = _sensitivities(observation, fit, positions)
    information, _ = _parameters_projected_out(sensitivities, sensitivities.by_ohm, noise)
    visible = information > LEAST_VISIBLE * numbers * (1 / (2 * line.impedance_ohm)) ** 2
    least = np.sqrt((evidence + np.log(numbers)) * noise / np.where(visible, information, 1.0))
    return [float(ohm) if shown else np.inf for ohm, shown in zip(least, visible, strict=True)]


def lumped_estimates(observation: Observation, intact: Fit, positions: list[int]) -> list[LumpedEstimate]:
    """What the residual of the intact line asks for behind each position."""
    j_omega = 2j * np.pi * observation.line.frequency_hz
    sensitivities = _sensitivities(observation, intact, positions)
    by_ohm, by_siemens = sensitivities.by_ohm, sensitivities.by_siemens
    rows = [by_ohm, j_omega * by_ohm, by_ohm / j_omega, j_omega * by_siemens, by_siemens]
    information, shared = _parameters_projected_out(sensitivities, np.concatenate(rows), intact.noise_variance)
    found = (shared / np.maximum(information, np.finfo(np.float64).tiny)).reshape(len(rows), len(positions))
    return [LumpedEstimate._make([*column, observation.line.impedance_ohm]) for column in found.T]


def _sensitivities(observation: Observation, fit: Fit, positions: list[int]) -> _Sensitivities:
    line = observation.line
    faults, x = faults_by_start(observation, [fit.start]), unknowns_of([fit.start], line.parameter_count)
    chains = solved_chains(observation, faults, x)
    by_ohm, by_siemens = [], []
    for position in positions:
        own = chains.faulty[position]
        zero = np.zeros_like(own.a)
        changes = [TwoPort(zero, own.a, zero, own.c), TwoPort(own.b, zero, own.d, zero)]
        ohm, siemens = chains.solution.derivatives(position, own, changes)
        by_ohm.append(ohm[0])
        by_siemens.append(siemens[0])
    residual = observation.measured - chains.solution.reflection(0, chains.faulty[0])[0]
    by_parameter = jacobian(observation, faults, x, chains)[0, : line.parameter_count]
    return _Sensitivities(residual, by_parameter, np.array(by_ohm), np.array(by_siemens))


def _parameters_projected_out(
    sensitivities: _Sensitivities, rows: ComplexArray, noise: float
) -> tuple[RealArray, RealArray]:
    """Products of each row with itself and with the residual, less what the line's parameters can imitate."""
    by_parameter, residual = sensitivities.by_parameter, sensitivities.residual[None, :]
    normal, shared = inner_products(by_parameter, by_parameter), inner_products(by_parameter, rows)
    imitated = np.linalg.solve(normal / noise + np.eye(len(normal)), shared / noise)
    information = (np.abs(rows) ** 2).sum(axis=-1) - (shared * imitated).sum(axis=0)
    by_residual = inner_products(rows, residual)[:, 0]
    return information, by_residual - (inner_products(by_parameter, residual) * imitated).sum(axis=0)
