"""The line of many starts at once, each with its fault, and how its reflection moves with every unknown.

Unknowns are (starts, unknowns): the line's parameters, then the logarithms of up to two sizes of a fault.
"""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from ..waves.two_port import TwoPort
from .arrays import ComplexArray, RealArray
from .chain_solution import ChainSolution
from .faults import Fault
from .observation import Observation, Start

__all__ = ["FaultyChains", "faults_by_start", "inner_products", "jacobian", "solved_chains", "unknowns_of"]

MOST_SIZES = 2
LOG_STEP = 1e-5  # of the logarithm of a size, for its difference quotient
SINGLE_THREADED = 200_000
"""Multiplications up to which numpy's matrix product stays in one thread: waiting for others takes it longer."""


class FaultyChains(NamedTuple):
    """Matrices of each two-port without and with the faults of the starts, and the chains with them solved."""

    intact: list[TwoPort]
    faulty: list[TwoPort]
    solution: ChainSolution


def faults_by_start(observation: Observation, starts: Sequence[Start]) -> list[Fault | None]:
    """The fault of each start."""
    return [None if start.fault is None else observation.faults[start.fault] for start in starts]


def unknowns_of(starts: Sequence[Start], parameter_count: int) -> RealArray:
    """The unknowns of each start; a size that a fault does not have is 0."""
    x = np.zeros((len(starts), parameter_count + MOST_SIZES), dtype=np.float64)
    for row, start in enumerate(starts):
        x[row, :parameter_count] = start.parameters
        x[row, parameter_count : parameter_count + start.log_sizes.size] = start.log_sizes
    return x


def solved_chains(observation: Observation, faults: Sequence[Fault | None], x: RealArray) -> FaultyChains:
    """Solve the chain of every start."""
    line = observation.line
    parameters, sizes = _parameters_and_sizes(observation, x)
    intact = line.matrices(parameters)
    faulty = [_with_faults(position, matrix, faults, sizes) for position, matrix in enumerate(intact)]
    return FaultyChains(intact, faulty, ChainSolution.of(faulty, line.load_reflection(parameters), line.impedance_ohm))


def jacobian(
    observation: Observation, faults: Sequence[Fault | None], x: RealArray, chains: FaultyChains
) -> ComplexArray:
    """Derivative of each start's reflection by each of its unknowns: (starts, unknowns, frequencies)."""
    line = observation.line
    parameters, sizes = _parameters_and_sizes(observation, x)
    found = np.zeros((*x.shape, observation.measured.size), dtype=np.complex128)
    for position, two_port in enumerate(line.two_ports):
        changes = [
            _with_faults(position, TwoPort(*change[:4]), faults, sizes)
            for change in two_port.derivatives(line.own_parameters(parameters, position), chains.intact[position])
        ]
        moved = chains.solution.derivatives(position, chains.faulty[position], changes)
        for own, (which, factor) in enumerate(two_port.factors):
            found[:, line.offsets[position] + own] = moved[which] * factor
    by_load = chains.solution.load_derivative(chains.faulty[-1])
    for own, term in enumerate(line.load_basis):
        found[:, line.offsets[-1] + own] = by_load * term
    for row, fault in enumerate(faults):
        if fault is not None:
            count = len(fault.kind.sizes)
            first = line.parameter_count
            found[row, first : first + count] = _by_log_sizes(fault, row, sizes[row], chains)
    return found


def inner_products(rows: ComplexArray, others: ComplexArray) -> RealArray:
    """Of each row with each of the others, real and imaginary parts as numbers of their own: (..., rows, others)."""
    left, right = rows.view(np.float64), others.view(np.float64).swapaxes(-1, -2)
    step = max(SINGLE_THREADED // (left.shape[-2] * right.shape[-1]), 1)
    blocks = [slice(start, start + step) for start in range(0, left.shape[-1], step)]
    return sum((left[..., block] @ right[..., block, :] for block in blocks), start=np.zeros(()))


def _parameters_and_sizes(observation: Observation, x: RealArray) -> tuple[RealArray, RealArray]:
    """The line's parameters as (parameters, starts, 1) and the faults' sizes as (starts, sizes)."""
    count = observation.line.parameter_count
    return x[:, :count].T[..., None], np.exp(x[:, count:])


def _with_faults(position: int, matrix: TwoPort, faults: Sequence[Fault | None], sizes: RealArray) -> TwoPort:
    """A two-port's matrix, or a change of it, with the fault of each start that changes it."""
    faulty = [(row, fault) for row, fault in enumerate(faults) if fault and fault.position == position]
    if not faulty:
        return matrix
    shape = np.broadcast_shapes((len(faults), 1), *(entry.shape for entry in matrix[:4]))
    matrix = TwoPort(*(np.broadcast_to(entry, shape) for entry in matrix[:4]))
    changed = TwoPort(*(entry.copy() for entry in matrix[:4]))
    for row, fault in faulty:
        own = _fault_matrix(fault, _matrix_of_row(matrix, row), sizes[row])
        for entry, value in zip(changed[:4], own[:4], strict=True):
            entry[row] = value
    return changed


def _fault_matrix(fault: Fault, own: TwoPort, sizes: RealArray) -> TwoPort:
    return fault.matrix(own, list(sizes[: len(fault.kind.sizes)]))


def _matrix_of_row(matrix: TwoPort, row: int) -> TwoPort:
    return TwoPort(*(entry[row] for entry in matrix[:4]))


def _by_log_sizes(fault: Fault, row: int, sizes: RealArray, chains: FaultyChains) -> list[ComplexArray]:
    """Difference quotients of one start's reflection by the logarithms of its fault's sizes."""
    before, intact = (_matrix_of_row(matrices[fault.position], row) for matrices in (chains.faulty, chains.intact))
    solution = chains.solution.single(fault.position, row)
    found = []
    for own in range(len(fault.kind.sizes)):
        stepped = sizes.copy()
        stepped[own] *= np.exp(LOG_STEP)
        after = _fault_matrix(fault, intact, stepped)
        change = TwoPort(*((new - old) / LOG_STEP for new, old in zip(after[:4], before[:4], strict=True)))
        found.append(solution.derivatives(0, before, [change])[0])
    return found
