"""Fitting the line to a sweep, once as it should be and once with every fault at every joint.

A fit makes `points * log(squares) + sum of x²` small: the squared differences to the measurement
with a noise of unknown level, and what is usual among good parts as a prior. Gauss-Newton with
Levenberg's damping; Source: textbook least squares. Which fault is judged by how much it makes that smaller,
less log(points) for each of its sizes (the Bayesian information criterion).
"""

from itertools import product as product_of
from typing import NamedTuple

import numpy as np

from jointwise.calc.sweep.faults import Fault, faults_of
from jointwise.calc.sweep.model import Line, Planes
from jointwise.calc.twoport import TwoPort
from jointwise.calc.views import GENEROUS

__all__ = ["Fit", "Fits", "fit_all", "fitted_reflection", "least_resistance", "spaced"]

Number = np.ndarray
FIRST_ROUNDS, ROUNDS = 5, 30
WORTH = 200.0  # a fit that is as much worse after its first rounds is not gone on with
DAMPING = (1e-3, 0.2, 10.0, 1e9)
"""Where it starts, its fall on success and rise on failure, and where the fit gives up."""
ENOUGH = 1e-4  # of the judged figure: a step that wins less is the last
FLOOR = 1e-3
"""Least noise a fit goes by, against a full reflection: beyond the accuracy of an analyser in the field."""
PHASE_STEP = 0.8  # rad at the upper edge, between two places tried
REACH = 3.0  # standard deviations of cable length that are tried
MOST_STRETCHES, MOST_SHIFTS = 401, 41
EASY_RADIANS = 2.0  # phase by which the whole line may be off in the lowest band
FEWEST_POINTS = 8  # of a band
SCREENED_POINTS = 161
REFINED = 9
"""Faults of each joint that are fitted to the end."""
LARGEST_LOG_STEP = 1.5
STEP = 1e-5  # of the logarithm of a size, for its slope
TINY = 1e-12
LEAST_LEFT = 1e-4  # of what a resistance between matched ends shows; below it the line hides one there
FURTHEST = 6.0
"""Standard deviations a fit may move a good part's numbers."""


class Fit(NamedTuple):
    """One fit: the good parts' numbers, the fault and its sizes as logarithms, and how well it does."""

    fault: Fault | None
    values: Number
    logs: Number
    figure: float
    squares: float
    covariance: Number
    """Of values and then logs."""

    @property
    def sizes(self) -> list[float]:
        """The sizes in their units."""
        return [float(one) for one in np.exp(self.logs)]


class Fits(NamedTuple):
    """The line as it should be, and the best of each fault at each joint that was tried to the end."""

    sound: Fit
    faulty: list[Fit]
    points: int

    def score(self, fit: Fit) -> float:
        """What a fault is judged by: lower is better."""
        return fit.figure + len(fit.logs) * float(np.log(self.points))


def fit_all(line: Line, measured: Number) -> Fits:
    """Fit a line to a measured reflection, sound and with each fault."""
    start, bands = _aligned(line, measured), _bands(line, measured)
    starts = [start, _risen(bands, None, np.zeros_like(start), np.zeros(0))[0]]
    sound = min((_fit(line, measured, None, one, np.zeros(0)) for one in starts), key=lambda one: one.figure)
    tried = [*_screened(line, measured, start), *_soaked(line, bands)]
    rough = [_fit(line, measured, *one, rounds=FIRST_ROUNDS) for one in tried]
    reach = min((one.figure for one in rough), default=0.0) + WORTH
    best_of = {}
    for one in rough:
        best_of[one.fault.joint] = min(best_of.get(one.fault.joint, one), one, key=lambda fit: fit.figure)
    faulty = [
        _fit(line, measured, one.fault, one.values, one.logs)
        if one.figure < reach or one is best_of[one.fault.joint]
        else one
        for one in rough
    ]
    best = min(faulty, key=lambda one: one.figure, default=sound)
    if best.figure < sound.figure:
        again = _fit(line, measured, None, best.values, np.zeros(0))
        sound = min(sound, again, key=lambda one: one.figure)
    return Fits(sound, faulty, 2 * measured.size)


def spaced(size: int, most: int) -> Number:
    """At most so many of `size` places, evenly spaced from the first to the last."""
    return np.linspace(0, size - 1, min(size, most)).round().astype(np.int64)


def fitted_reflection(line: Line, fit: Fit, *, sound: bool = False) -> Number:
    """What the line shows with the numbers of a fit, or would show without its fault."""
    fault = None if sound or fit.fault is None else _same(fit.fault, line)
    ports = _ports(line, fault, fit.values, fit.logs)
    return Planes.of(ports, line.end(fit.values), line.impedance_ohm).reflection(0, ports[0])


def least_resistance(line: Line, measured: Number, fit: Fit, place: int, evidence: float) -> float:
    """The smallest resistance in series at a joint that a sweep like this would show [Ω]; infinite where it shows none.

    A linear estimate at a fit: its standard deviation with the good parts' numbers free, times the
    root of the evidence asked for.
    """
    x = np.concatenate([fit.values, fit.logs])
    state = _state(line, measured, fit.fault, x)
    points = 2 * measured.size
    noise = state.squares / points + FLOOR**2
    slopes = _slopes(line, fit.fault, x, state)[: fit.values.size]
    own = state.ports[place]
    none = np.zeros_like(own.a)
    ohm = state.planes.slopes(place, own, [TwoPort(none, own.a, none, own.c)])[0]
    normal, shared = _products(slopes, slopes), _products(slopes, ohm[None, :])[:, 0]
    held = np.linalg.solve(normal / noise + np.eye(fit.values.size), shared / noise)
    alone = float((np.abs(ohm) ** 2).sum())
    left = alone - float((shared * held).sum())
    if not left > LEAST_LEFT * points * resistance_slope(line.impedance_ohm) ** 2:
        return np.inf
    return float(np.sqrt((evidence + np.log(points)) * noise / left))


def resistance_slope(impedance: float) -> float:
    """How the reflection between matched ends moves with a small resistance in series [1/Ω]."""
    return 1 / (2 * impedance)


def _ports(line: Line, fault: Fault | None, values: Number, logs: Number) -> list[TwoPort]:
    ports = line.ports(values)
    if fault is not None:
        ports[fault.at] = fault.port(ports[fault.at], list(np.exp(logs)))
    return ports


def _aligned(line: Line, measured: Number) -> Number:
    """A start for the fit: all cables longer or shorter by the one share that fits best."""
    start = np.zeros(line.count, dtype=np.float64)
    cables = [at for at, piece in enumerate(line.pieces) if piece.link.kind == "cable"]
    if not cables:
        return start
    steps = _steps(line, cables, MOST_STRETCHES)
    values = np.zeros((line.count, steps.size, 1), dtype=np.float64)
    for at in cables:
        values[line.starts[at]] = steps[:, None]
    ports = line.ports(values)
    seen = Planes.of(ports, line.end(values), line.impedance_ohm).reflection(0, ports[0])
    return values[:, int(np.argmin((np.abs(seen - measured) ** 2).sum(axis=-1))), 0]


def _bands(line: Line, measured: Number) -> list[tuple[Line, Number]]:
    """The lower part of the sweep, where no cable is off by a turn of phase, and wider ones up to half of it."""
    cables = [at for at, piece in enumerate(line.pieces) if piece.link.kind == "cable"]
    off = sum(2 * _radians(line, at) for at in cables) * line.spreads.length * REACH
    edge = line.frequency_hz[-1] * min(EASY_RADIANS / max(off, TINY), 0.5)
    found = []
    while edge <= line.frequency_hz[-1] / 2:
        points = np.flatnonzero(line.frequency_hz <= edge)
        if points.size >= FEWEST_POINTS:
            thinned = points[:: max(points.size // SCREENED_POINTS, 1)]
            found.append((line.at(thinned), measured[thinned]))
        edge *= 2
    return found


def _risen(
    bands: list[tuple[Line, Number]], fault: Fault | None, values: Number, logs: Number
) -> tuple[Number, Number]:
    """A start led from the lowest band up, each a few rounds, so that phases never slip a turn."""
    for line, seen in bands:
        own = None if fault is None else _same(fault, line)
        fit = _fit(line, seen, own, values, logs, rounds=FIRST_ROUNDS)
        values, logs = fit.values, fit.logs
    return values, logs


def _same(fault: Fault, line: Line) -> Fault:
    """The same fault of another copy of the line."""
    return next(one for one in faults_of(line) if (one.place, one.kind) == (fault.place, fault.kind))


def _soaked(line: Line, bands: list[tuple[Line, Number]]) -> list[tuple[Fault, Number, Number]]:
    """Water slows the wave, so that what lies behind must be found anew: each led up from low frequencies."""
    found = []
    if not bands:
        return found
    lowest, seen = bands[0]
    values = np.zeros((line.count, 1, 1), dtype=np.float64)
    for fault in faults_of(lowest):
        if not fault.kind.id.startswith("wet"):
            continue
        _, _, _, logs = _tried(lowest, seen, fault, values, aligned=False)
        found.append((_same(fault, line), *_risen(bands, fault, values[:, 0, 0], logs)))
    return found


def _steps(line: Line, cables: list[int], most: int) -> Number:
    """Standard deviations of cable length to try, so close that no turn of phase is missed."""
    radians = sum(2 * _radians(line, at) for at in cables) * line.spreads.length
    count = int(min(most, np.ceil(2 * REACH * radians / PHASE_STEP)))
    return np.linspace(-REACH, REACH, count | 1, dtype=np.float64)


def _radians(line: Line, at: int) -> float:
    """Electrical length of a cable at the upper edge [rad]."""
    model = line.pieces[at].link.models[GENEROUS]
    return float(model.constants(line.frequency_hz[-1:])[2][0] * model.length_m)


def _shifts(line: Line, place: int, start: Number) -> Number:
    """Starts with the joint nearer and farther while the whole line keeps its length: (values, shifts, 1)."""
    cables = [at for at, piece in enumerate(line.pieces) if piece.link.kind == "cable"]
    before, after = [at for at in cables if at < place], [at for at in cables if at > place]
    if not before or not after:
        return start[:, None, None]
    steps = _steps(line, [before[-1]], MOST_SHIFTS)
    values = np.repeat(start[:, None, None], steps.size, axis=1)
    values[line.starts[before[-1]]] += steps[:, None]
    values[line.starts[after[0]]] -= steps[:, None] * _radians(line, before[-1]) / _radians(line, after[0])
    return values


def _screened(line: Line, measured: Number, start: Number) -> list[tuple[Fault, Number, Number]]:
    """Of each joint the few faults, with place and sizes, that come nearest to the measurement as they stand."""
    few = spaced(measured.size, SCREENED_POINTS)
    coarse, seen = line.at(few), measured[few]
    chosen = []
    for faults in _by_joint(faults_of(coarse)):
        tried = [_tried(coarse, seen, fault, _shifts(coarse, fault.place, start), aligned=True) for fault in faults]
        tried.sort(key=lambda one: one[0])
        chosen += [(faults_index, values, logs) for _, faults_index, values, logs in tried[:REFINED]]
    return [(_same(fault, line), values, logs) for fault, values, logs in chosen]


def _by_joint(faults: list[Fault]) -> list[list[Fault]]:
    joints = list(dict.fromkeys(fault.joint for fault in faults))
    return [[fault for fault in faults if fault.joint == joint] for joint in joints]


def _tried(
    line: Line, seen: Number, fault: Fault, values: Number, *, aligned: bool
) -> tuple[float, Fault, Number, Number]:
    """The best start of one fault: (squares, fault, values, logarithms of its sizes)."""
    ports = line.ports(values)
    planes = Planes.of(ports, line.end(values), line.impedance_ohm)
    piece, own = line.pieces[fault.at], line.unknowns(values, fault.at)
    best = None
    for sizes in product_of(*(size.starts for size in fault.kind.sizes)):
        start = own.copy()
        if aligned and piece.link.kind == "cable":
            # the far end was aligned without the water, which slows the wave
            length = min(sizes[0], piece.link.models[GENEROUS].length_m)
            slowed = length * (np.sqrt(1 + sizes[1]) - 1)
            start[0] -= slowed / (piece.link.models[GENEROUS].length_m * line.spreads.length)
        port = fault.port(piece.port(start), list(sizes))
        squares = (np.abs(planes.reflection(fault.at, port) - seen) ** 2).sum(axis=-1).ravel()
        shift = int(np.argmin(squares))
        if best is None or squares[shift] < best[0]:
            chosen = values.copy()
            chosen[line.starts[fault.at] : line.starts[fault.at + 1]] = start
            best = float(squares[shift]), fault, chosen[:, shift, 0], np.log(np.array(sizes, dtype=np.float64))
    return best


def _fit(line: Line, measured: Number, fault: Fault | None, values: Number, logs: Number, rounds: int = ROUNDS) -> Fit:
    """Gauss-Newton with Levenberg's damping from a start."""
    bounds = [] if fault is None else [(np.log(size.least), np.log(size.most)) for size in fault.kind.sizes]
    low = np.array([-FURTHEST] * values.size + [one for one, _ in bounds], dtype=np.float64)
    high = np.array([FURTHEST] * values.size + [one for _, one in bounds], dtype=np.float64)
    prior = np.array([1.0] * values.size + [0.0] * logs.size, dtype=np.float64)
    points = 2 * measured.size
    damping, fall, rise, end = DAMPING

    def judged(x: Number, squares: float) -> float:
        return points * float(np.log(squares / points + FLOOR**2)) + float((prior * x**2).sum())

    x = np.concatenate([values, logs])
    state = _state(line, measured, fault, x)
    figure = judged(x, state.squares)
    normal, slope = _normal(line, fault, x, state)
    for _ in range(rounds):
        noise = state.squares / points + FLOOR**2
        curved, down = normal / noise + np.diag(prior), slope / noise - prior * x
        step = np.linalg.solve(curved + damping * np.diag(np.diag(curved) + TINY), down)
        step[values.size :] = np.clip(step[values.size :], -LARGEST_LOG_STEP, LARGEST_LOG_STEP)
        there = np.clip(x + step, low, high)
        then = _state(line, measured, fault, there)
        better = judged(there, then.squares)
        won = figure - better
        if won > 0:
            x, state, figure, damping = there, then, better, damping * fall
            normal, slope = _normal(line, fault, x, state)
        else:
            damping *= rise
        if 0 <= won < ENOUGH or damping > end:
            break
    noise = state.squares / points + FLOOR**2
    curved = normal / noise + np.diag(prior)
    covariance = np.linalg.inv(curved + np.diag(np.full(x.size, TINY)))
    return Fit(fault, x[: values.size], x[values.size :], figure, state.squares, covariance)


class _State(NamedTuple):
    """The line at some numbers and how far it is from the measurement."""

    ports: list[TwoPort]
    own: TwoPort | None
    """What the piece with the fault would be without it."""
    planes: Planes
    missing: Number
    squares: float


def _state(line: Line, measured: Number, fault: Fault | None, x: Number) -> _State:
    values, logs = x[: line.count], x[line.count :]
    ports, own = line.ports(values), None
    if fault is not None:
        own = ports[fault.at]
        ports[fault.at] = fault.port(own, list(np.exp(logs)))
    planes = Planes.of(ports, line.end(values), line.impedance_ohm)
    missing = measured - planes.reflection(0, ports[0])
    return _State(ports, own, planes, missing, float((np.abs(missing) ** 2).sum()))


def _normal(line: Line, fault: Fault | None, x: Number, state: _State) -> tuple[Number, Number]:
    """Products of the slopes with each other and with what is missing."""
    slopes = _slopes(line, fault, x, state)
    return _products(slopes, slopes), _products(slopes, state.missing[None, :])[:, 0]


def _products(some: Number, others: Number) -> Number:
    return some.real @ others.real.T + some.imag @ others.imag.T


def _slopes(line: Line, fault: Fault | None, x: Number, state: _State) -> Number:
    """How what is seen moves with every number: (numbers, frequencies)."""
    values, logs = x[: line.count], x[line.count :]
    rows, by_size = [], []
    for at, piece in enumerate(line.pieces):
        own = state.own if fault and fault.at == at else state.ports[at]
        changes = piece.slopes(line.unknowns(values, at), own)
        if fault and fault.at == at:
            sizes = list(np.exp(logs))
            changes = [fault.port(one, sizes) for one in changes]
            by_size = state.planes.slopes(at, state.ports[at], _by_size(fault, own, logs, state.ports[at]))
        rows += state.planes.slopes(at, state.ports[at], changes)
    end = state.planes.end_slope(state.ports[-1])
    return np.array([*rows, *(end * term for term in line.load_terms), *by_size])


def _by_size(fault: Fault, own: TwoPort, logs: Number, now: TwoPort) -> list[TwoPort]:
    """How the faulty piece moves with the logarithm of each size."""
    changes = []
    for one in range(logs.size):
        moved = logs.copy()
        moved[one] += STEP
        there = fault.port(own, list(np.exp(moved)))
        changes.append(TwoPort(*((new - old) / STEP for new, old in zip(there[:4], now[:4], strict=True))))
    return changes
