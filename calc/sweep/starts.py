"""Where fits start: the intact line aligned to the sweep, and every fault at every joint with sizes to try."""

from collections.abc import Iterator
from itertools import product as combinations

import numpy as np

from .arrays import RealArray
from .chain_solution import ChainSolution, input_reflection
from .faults import Fault
from .fit import Fit, fitted
from .linear_estimate import lumped_estimates
from .model import LineModel
from .observation import Observation, Start
from .sampling import scattered

__all__ = [
    "SEARCH_POINTS",
    "SHORT_ROUNDS",
    "aligned_parameters",
    "estimated_starts",
    "followed_upwards",
    "lower_bands",
    "screened_starts",
    "wet_starts",
]

SHORT_ROUNDS = 3
"""Steps of a fit that only sorts starts."""

SEARCH_POINTS = 96
"""Frequencies that starts are tried on."""

REFINED = 4
"""Starts of each joint, of those tried in place, that are fitted."""

PHASE_STEP = 0.8  # rad at the upper edge, between two lengths tried
REACH = 3.0  # standard deviations of cable length that are tried
MOST_STRETCHES, MOST_SHIFTS = 401, 41
SAFE_RADIANS = 2.0  # phase by which all the cables together may be off in the lowest band
FEWEST_BAND_POINTS = 8
LEAST_RADIANS = 1e-12


def aligned_parameters(observation: Observation) -> RealArray:
    """All cables longer or shorter by the one share that fits best: (parameters,)."""
    line = observation.line
    cables = line.cable_positions
    parameters = np.zeros((line.parameter_count, 1, 1), dtype=np.float64)
    if not cables:
        return parameters[:, 0, 0]
    steps = _length_steps(line, cables, MOST_STRETCHES)
    parameters = np.repeat(parameters, steps.size, axis=1)
    for cable in cables:
        parameters[line.offsets[cable]] = steps[:, None]
    matrices = (line.matrix(parameters, position) for position in reversed(range(len(line.two_ports))))
    reflection = input_reflection(matrices, line.load_reflection(parameters), line.impedance_ohm)
    squares = (np.abs(reflection - observation.measured) ** 2).sum(axis=-1)
    return parameters[:, int(np.argmin(squares)), 0]


def lower_bands(observation: Observation) -> list[Observation]:
    """The lower part of the sweep, where no cable is off by a turn of phase, and wider ones up to half of it."""
    line = observation.line
    uncertain = sum(2 * _radians(line, cable) for cable in line.cable_positions) * line.prior.length * REACH
    top = line.frequency_hz[-1]
    edge = top * min(SAFE_RADIANS / max(uncertain, LEAST_RADIANS), 0.5)
    found = []
    while edge <= top / 2:
        within = int((line.frequency_hz <= edge).sum())
        if within >= FEWEST_BAND_POINTS:
            found.append(observation.at(scattered(within, SEARCH_POINTS)))
        edge *= 2
    return found


def followed_upwards(bands: list[Observation], starts: list[Start]) -> list[Start]:
    """Starts led from the lowest band up, each fitted a little, so that phases never slip a turn."""
    for band in bands:
        starts = [fit.start for fit in fitted(band, starts, SHORT_ROUNDS)]
    return starts


def wet_starts(bands: list[Observation]) -> list[Start]:
    """Water slows the wave, so that what lies behind must be found anew: where to start in the lowest band."""
    if not bands:
        return []
    lowest = bands[0]
    parameters = np.zeros((lowest.line.parameter_count, 1, 1), dtype=np.float64)
    solution = _solution(lowest.line, parameters)
    wet = [fault for fault in lowest.faults if fault.kind.id.startswith("wet")]
    return [_best_start(lowest, solution, parameters, fault, aligned=False)[1] for fault in wet]


def screened_starts(observation: Observation, parameters: RealArray) -> list[Start]:
    """Of each joint the faults, with place and sizes, that come nearest to the measurement without a fit."""
    line, chosen = observation.line, []
    for joint in dict.fromkeys(fault.joint_position for fault in observation.faults):
        faults = [fault for fault in observation.faults if fault.joint_position == joint]
        for tried in (_shifted(line, joint, parameters), parameters[:, None, None]):
            solution = _solution(line, tried)
            best = [_best_start(observation, solution, tried, fault, aligned=True) for fault in faults]
            chosen += [start for _, start in sorted(best, key=_squares)[:REFINED]]
    return chosen


def estimated_starts(observation: Observation, intact: Fit) -> list[Start]:
    """Each fault right at a joint with the small size that the residual of the intact line asks for."""
    joints = list(dict.fromkeys(fault.joint_position for fault in observation.faults))
    estimates = dict(zip(joints, lumped_estimates(observation, intact, joints), strict=True))
    starts = []
    for fault in observation.faults:
        sizes = fault.kind.estimated_sizes(estimates[fault.joint_position])
        bounds = np.array([(size.least, size.most) for size in fault.kind.sizes], dtype=np.float64)
        if sizes and max(sizes) > 0:
            log_sizes = np.log(np.clip(sizes, bounds[:, 0], bounds[:, 1]))
            starts.append(Start(fault.number, intact.parameters, log_sizes))
    return starts


def _squares(tried: tuple[float, Start]) -> float:
    return tried[0]


def _radians(line: LineModel, cable: int) -> float:
    """Electrical length of a cable at the upper edge [rad]."""
    model = line.cable(cable)
    return float(model.constants(line.frequency_hz[-1:])[2][0] * model.length_m)


def _length_steps(line: LineModel, cables: list[int], most: int) -> RealArray:
    """Standard deviations of cable length to try, so close that no turn of phase is missed."""
    radians = sum(2 * _radians(line, cable) for cable in cables) * line.prior.length
    count = int(min(most, np.ceil(2 * REACH * radians / PHASE_STEP)))
    return np.linspace(-REACH, REACH, count | 1, dtype=np.float64)


def _shifted(line: LineModel, joint: int, parameters: RealArray) -> RealArray:
    """The joint nearer and farther while the line keeps its length: (parameters, shifts, 1)."""
    cables = line.cable_positions
    before, after = [at for at in cables if at < joint], [at for at in cables if at > joint]
    if not before or not after:
        return parameters[:, None, None]
    steps = _length_steps(line, [before[-1]], MOST_SHIFTS)
    shifted = np.repeat(parameters[:, None, None], steps.size, axis=1)
    shifted[line.offsets[before[-1]]] += steps[:, None]
    shifted[line.offsets[after[0]]] -= steps[:, None] * _radians(line, before[-1]) / _radians(line, after[0])
    return shifted


def _solution(line: LineModel, parameters: RealArray) -> ChainSolution:
    return ChainSolution.of(line.matrices(parameters), line.load_reflection(parameters), line.impedance_ohm)


def _best_start(
    observation: Observation, solution: ChainSolution, parameters: RealArray, fault: Fault, *, aligned: bool
) -> tuple[float, Start]:
    """The best start of one fault, and the squares of its residual."""
    return min(_tried_sizes(observation, solution, parameters, fault, aligned=aligned), key=_squares)


def _tried_sizes(
    observation: Observation, solution: ChainSolution, parameters: RealArray, fault: Fault, *, aligned: bool
) -> Iterator[tuple[float, Start]]:
    """Of each combination of sizes the best of the parameters, (parameters, shifts, 1), and its squares."""
    line, at = observation.line, fault.position
    for sizes in combinations(*(size.starts for size in fault.kind.sizes)):
        own = line.own_parameters(parameters, at).copy()
        if aligned and at in line.cable_positions:
            # the far end was aligned without the water, which slows the wave
            cable = line.cable(at)
            slowing = min(sizes[0], cable.length_m) * (np.sqrt(1 + sizes[1]) - 1)
            own[0] -= slowing / (cable.length_m * line.prior.length)
        matrix = fault.matrix(line.two_ports[at].matrix(own), list(sizes))
        squares = (np.abs(solution.reflection(at, matrix) - observation.measured) ** 2).sum(axis=-1).ravel()
        shift = int(np.argmin(squares))
        chosen = parameters[:, shift, 0].copy()
        chosen[line.offsets[at] : line.offsets[at + 1]] = own[:, shift, 0]
        yield float(squares[shift]), Start(fault.number, chosen, np.log(np.array(sizes, dtype=np.float64)))
