"""Looking for the fault: the line as it should be, and every fault at every joint, each from several starts.

Starts are tried on few of the frequencies, what does best there is fitted to all of them. Which fault is
judged by how much it makes a fit's figure smaller, less log(points) for each of its sizes (the Bayesian
information criterion).
"""

from collections.abc import Callable
from itertools import product as product_of
from typing import NamedTuple

import numpy as np

from ..physics.ratings import GENEROUS
from ..waves.two_port import TwoPort
from .faults import Fault, Lack, faults_of
from .fit import FLOOR, Fit, Guess, Seen, Sensitivities, fitted, products, sensitivities
from .model import Line, Planes, reflected

__all__ = ["Fits", "fit_all", "fitted_reflection", "least_resistances", "scattered", "spaced"]

Number = np.ndarray
FEW_ROUNDS, ROUNDS = 3, 30
HEATS = 2
"""Times that few rounds are fitted and the worse two thirds of the starts are left behind."""

SOUGHT_POINTS = 96
"""Frequencies that starts are tried on."""

WORTH = 40.0
"""A start that is as much worse than the best on those is not gone on with."""

MOST_WORTH = 12
"""Faults that are fitted to the end, beside the best of each joint."""

REFINED = 4
"""Starts of each joint, of those tried in place, that are fitted."""

PHASE_STEP = 0.8  # rad at the upper edge, between two places tried
REACH = 3.0  # standard deviations of cable length that are tried
MOST_STRETCHES, MOST_SHIFTS = 401, 41
EASY_RADIANS = 2.0  # phase by which the whole line may be off in the lowest band
FEWEST_POINTS = 8  # of a band
GOLDEN = 0.6180339887498949
TINY = 1e-12
LEAST_LEFT = 1e-4  # of what a resistance between matched ends shows; below it the line hides one there


class Fits(NamedTuple):
    """The line as it should be, and the best of each fault at each joint that was tried to the end."""

    sound: Fit
    faulty: list[Fit]


def fit_all(line: Line, measured: Number) -> Fits:
    """Fit a line to a measured reflection, sound and with each fault."""
    seen = Seen.of(line, measured)
    few, bands = seen.at(scattered(measured.size, SOUGHT_POINTS)), _bands(seen)
    nothing = np.zeros(0, dtype=np.float64)
    aligned = _aligned(few)
    starts = [Guess(None, aligned, nothing), *_risen(bands, [Guess(None, np.zeros_like(aligned), nothing)])]
    sound = min(fitted(few, starts, ROUNDS), key=Fit.score)
    wet = _risen(bands, _soaked(bands))
    wet += [guess._replace(values=sound.values) for guess in wet]
    half = few.at(np.arange(0, few.measured.size, 2, dtype=np.int64))
    guesses = [*_screened(half, aligned), *_weak(few, sound), *wet]
    for _ in range(HEATS):
        fits = fitted(few, guesses, FEW_ROUNDS)
        guesses = [fit.guess for fit in _worth(fits, max(len(fits) // 3, MOST_WORTH))]
    settled = fitted(few, guesses, ROUNDS)
    worth = _worth(list(_by(lambda fit: fit.fault.index, settled).values()), MOST_WORTH, WORTH)
    faulty = fitted(seen, [fit.guess for fit in worth], ROUNDS)
    best = min(faulty, key=Fit.score)
    again = [sound.guess, Guess(None, best.values, nothing)]
    return Fits(min(fitted(seen, again, ROUNDS), key=Fit.score), faulty)


def spaced(size: int, most: int) -> Number:
    """At most so many of `size` places, evenly spaced from the first to the last."""
    return np.linspace(0, size - 1, min(size, most)).round().astype(np.int64)


def scattered(size: int, most: int) -> Number:
    """At most so many of `size` places, one in each of as many equal parts, unevenly, so that no echo folds back."""
    if size <= most:
        return np.arange(size, dtype=np.int64)
    at = np.arange(most, dtype=np.int64)
    return ((at + at * GOLDEN % 1) * (size / most)).astype(np.int64)


def fitted_reflection(line: Line, fit: Fit, *, sound: bool = False) -> Number:
    """What the line shows with the numbers of a fit, or would show without its fault."""
    fault = None if sound or fit.fault is None else faults_of(line)[fit.fault.index]

    def port(at: int) -> TwoPort:
        own = line.port(fit.values, at)
        return fault.port(own, fit.sizes) if fault and fault.at == at else own

    return reflected(map(port, reversed(range(len(line.pieces)))), line.end(fit.values), line.impedance_ohm)


def least_resistances(line: Line, measured: Number, fit: Fit, places: list[int], evidence: float) -> list[float]:
    """The smallest resistance in series at each place that a sweep like this would show [Ω]; infinite where none does.

    A linear estimate at a fit: its standard deviation with the good parts' numbers free, times the
    root of the evidence asked for.
    """
    points, noise = 2 * measured.size, fit.squares / (2 * measured.size) + FLOOR**2
    seen = Seen.of(line, measured)
    moved = sensitivities(seen, fit, places)
    left, _ = _alone(moved, moved.by_ohm, noise)
    enough = left > LEAST_LEFT * points * (1 / (2 * line.impedance_ohm)) ** 2
    least = np.sqrt((evidence + np.log(points)) * noise / np.where(enough, left, 1.0))
    return [float(one) if shown else np.inf for one, shown in zip(least, enough, strict=True)]


def _alone(moved: Sensitivities, by: Number, noise: float) -> tuple[Number, Number]:
    """Of each row its products with itself and with what is missing, where no good part's number can take its place."""
    normal, shared = products(moved.by_number, moved.by_number), products(moved.by_number, by)
    held = np.linalg.solve(normal / noise + np.eye(len(normal)), shared / noise)
    missing = moved.missing[None, :]
    own = (np.abs(by) ** 2).sum(axis=-1) - (shared * held).sum(axis=0)
    return own, products(by, missing)[:, 0] - (products(moved.by_number, missing) * held).sum(axis=0)


def _weak(seen: Seen, sound: Fit) -> list[Guess]:
    """Each fault right at a joint with the small size that the best sound line lacks, by a linear estimate."""
    places = list(dict.fromkeys(fault.place for fault in seen.faults))
    turn = 2j * np.pi * seen.line.frequency_hz
    moved = sensitivities(seen, sound, places)
    rows = [moved.by_ohm, turn * moved.by_ohm, moved.by_ohm / turn, turn * moved.by_siemens, moved.by_siemens]
    noise = sound.squares / seen.points + FLOOR**2
    own, shared = _alone(moved, np.concatenate(rows), noise)
    found = (shared / np.maximum(own, np.finfo(np.float64).tiny)).reshape(len(rows), len(places))
    guesses = []
    for fault in seen.faults:
        sizes = fault.kind.small(Lack(*found[:, places.index(fault.place)], seen.line.impedance_ohm))
        bounds = np.array([(size.least, size.most) for size in fault.kind.sizes], dtype=np.float64)
        if sizes and max(sizes) > 0:
            guesses.append(Guess(fault.index, sound.values, np.log(np.clip(sizes, bounds[:, 0], bounds[:, 1]))))
    return guesses


def _worth(fits: list[Fit], most: int, margin: float = np.inf) -> list[Fit]:
    """The fits to go on with: the best of each joint and of all, none worse than the best by more than a margin."""
    ordered = sorted(fits, key=Fit.score)
    chosen = [*_by(lambda fit: fit.fault.joint, fits).values(), *ordered[:most]]
    return [fit for fit in {id(fit): fit for fit in chosen}.values() if fit.score() < ordered[0].score() + margin]


def _by(what: Callable[[Fit], int], fits: list[Fit]) -> dict[int, Fit]:
    """The best fit of each fault, or each joint."""
    return {what(fit): fit for fit in sorted(fits, key=Fit.score, reverse=True)}


def _aligned(seen: Seen) -> Number:
    """A start for the fit: all cables longer or shorter by the one share that fits best."""
    line = seen.line
    cables = [at for at, piece in enumerate(line.pieces) if piece.link.kind == "cable"]
    values = np.zeros((line.count, 1, 1), dtype=np.float64)
    if not cables:
        return values[:, 0, 0]
    steps = _steps(line, cables, MOST_STRETCHES)
    values = np.repeat(values, steps.size, axis=1)
    for at in cables:
        values[line.starts[at]] = steps[:, None]
    ports = (line.port(values, at) for at in reversed(range(len(line.pieces))))
    missing = reflected(ports, line.end(values), line.impedance_ohm) - seen.measured
    return values[:, int(np.argmin((np.abs(missing) ** 2).sum(axis=-1))), 0]


def _bands(seen: Seen) -> list[Seen]:
    """The lower part of the sweep, where no cable is off by a turn of phase, and wider ones up to half of it."""
    line = seen.line
    cables = [at for at, piece in enumerate(line.pieces) if piece.link.kind == "cable"]
    off = sum(2 * _radians(line, at) for at in cables) * line.spreads.length * REACH
    top = line.frequency_hz[-1]
    edge = top * min(EASY_RADIANS / max(off, TINY), 0.5)
    found = []
    while edge <= top / 2:
        within = int((line.frequency_hz <= edge).sum())
        if within >= FEWEST_POINTS:
            found.append(seen.at(scattered(within, SOUGHT_POINTS)))
        edge *= 2
    return found


def _risen(bands: list[Seen], guesses: list[Guess]) -> list[Guess]:
    """Starts led from the lowest band up, each a few rounds, so that phases never slip a turn."""
    for band in bands:
        guesses = [fit.guess for fit in fitted(band, guesses, FEW_ROUNDS)]
    return guesses


def _soaked(bands: list[Seen]) -> list[Guess]:
    """Water slows the wave, so that what lies behind must be found anew: where to start in the lowest band."""
    if not bands:
        return []
    lowest = bands[0]
    values = np.zeros((lowest.line.count, 1, 1), dtype=np.float64)
    planes = _planes(lowest.line, values)
    wet = [fault for fault in lowest.faults if fault.kind.id.startswith("wet")]
    return [_tried(lowest, planes, values, fault, aligned=False)[1] for fault in wet]


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


def _screened(seen: Seen, start: Number) -> list[Guess]:
    """Of each joint the few faults, with place and sizes, that come nearest to the measurement as they stand."""
    chosen = []
    for place in dict.fromkeys(fault.place for fault in seen.faults):
        faults = [fault for fault in seen.faults if fault.place == place]
        for values in (_shifts(seen.line, place, start), start[:, None, None]):
            planes = _planes(seen.line, values)
            tried = [_tried(seen, planes, values, fault, aligned=True) for fault in faults]
            chosen += [guess for _, guess in sorted(tried, key=lambda one: one[0])[:REFINED]]
    return chosen


def _planes(line: Line, values: Number) -> Planes:
    return Planes.of(line.ports(values), line.end(values), line.impedance_ohm)


def _tried(seen: Seen, planes: Planes, values: Number, fault: Fault, *, aligned: bool) -> tuple[float, Guess]:
    """The best start of one fault, and the squares it leaves."""
    piece, own = seen.line.pieces[fault.at], seen.line.unknowns(values, fault.at)
    best = None
    for sizes in product_of(*(size.starts for size in fault.kind.sizes)):
        start = own.copy()
        if aligned and piece.link.kind == "cable":
            # the far end was aligned without the water, which slows the wave
            length = min(sizes[0], piece.link.models[GENEROUS].length_m)
            slowed = length * (np.sqrt(1 + sizes[1]) - 1)
            start[0] -= slowed / (piece.link.models[GENEROUS].length_m * seen.line.spreads.length)
        port = fault.port(piece.port(start), list(sizes))
        squares = (np.abs(planes.reflection(fault.at, port) - seen.measured) ** 2).sum(axis=-1).ravel()
        shift = int(np.argmin(squares))
        if best is None or squares[shift] < best[0]:
            chosen = values[:, shift, 0].copy()
            chosen[seen.line.starts[fault.at] : seen.line.starts[fault.at + 1]] = start[:, shift, 0]
            best = (
                float(squares[shift]),
                Guess(fault.index, chosen, np.log(np.array(sizes, dtype=np.float64))),
            )
    return best
