"""The bound of what any method could find: an observer that knows the line, the fault, its size and the noise.

What it can't know is how far the good parts are off, beyond what is usual. The most likely intact line is fitted to
the reflection without noise; what it can't imitate, against the noise, is the separation of both hypotheses in
standard deviations (the deflection of the likelihood ratio; Source: textbook detection theory, as S. M. Kay,
Fundamentals of Statistical Signal Processing, volume II, chapter 4, from memory).
"""

import numpy as np
from scipy.optimize import least_squares
from scipy.stats import norm

from jointwise.calc.feedline.feedline import feedline_at
from jointwise.calc.physics.columns import spot_column
from jointwise.calc.sweep.line_check import Setting, swept_line
from jointwise.calc.sweep.model import Planes
from jointwise.calc.sweep.search import scattered

ERRORS = 0.01
DETECTABLE = 2 * norm.isf(ERRORS)
"""Deviations between the hypotheses from which on the observer misses at most 1 % at 1 % of false alarms."""
POINTS = 201
SHIFTS, TRIED, MOST = np.linspace(-3, 3, 121), 2, 40


def separations(drawn, noises):
    """How far the fault of a drawn line stands out from what good parts explain, in standard deviations."""
    few = scattered(drawn.frequency_hz.size, POINTS)
    frequency = drawn.frequency_hz[few]
    request = drawn.request(drawn.reflection)
    built = feedline_at(request, request.elements, request.load, spot_column(float(frequency.mean())))
    line = swept_line(built, frequency, Setting(request.length_tolerance, 1.0, request.load))
    values, off = np.zeros(line.count), iter(drawn.off)
    for at, piece in enumerate(line.pieces):
        if piece.link.kind == "cable":
            values[line.starts[at] :][: piece.count] = np.array(next(off)) / line.spreads
    beside = [line.starts[at] for at, piece in enumerate(line.pieces) if abs(piece.link.element - drawn.joint) == 1]
    found, closest = [], values
    for noise in noises:
        # fewer points looked at are as many with less noise
        level = noise * np.sqrt(few.size / drawn.frequency_hz.size)
        intact, values = _fitted(line, drawn.intact[few], level, values)
        starts = [values, closest, *_shifted(line, drawn.reflection[few], level, values, beside)]
        faulty, closest = min((_fitted(line, drawn.reflection[few], level, one) for one in starts), key=_first)
        found.append(float(np.sqrt(max(faulty - intact, 0.0))))
    return found


def _first(pair):
    return pair[0]


def _shifted(line, seen, level, start, lengths):
    """The likeliest few of the starts with some lengths shifted."""
    starts = np.repeat(start[None, :], SHIFTS.size, axis=0)
    starts[:, lengths] += SHIFTS[:, None]
    return starts[np.argsort([(_missing(line, seen, level, one) ** 2).sum() for one in starts])[:TRIED]]


def _missing(line, seen, level, x):
    """What the model misses, in standard deviations, and its numbers in theirs."""
    ports = line.ports(x)
    gap = (Planes.of(ports, line.end(x), line.impedance_ohm).reflection(0, ports[0]) - seen) * np.sqrt(2) / level
    return np.concatenate([gap.real, gap.imag, x])


def _slopes(line, level, x):
    """How that moves with every number."""
    ports = line.ports(x)
    planes = Planes.of(ports, line.end(x), line.impedance_ohm)
    rows = []
    for at, piece in enumerate(line.pieces):
        moved = planes.slopes(at, ports[at], piece.slopes(line.unknowns(x, at), ports[at]))
        rows += [moved[which] * share for which, share in piece.shares]
    end = planes.end_slope(ports[-1])
    rows = np.array([*rows, *(end * term for term in line.load_terms)]) * np.sqrt(2) / level
    return np.concatenate([rows.real.T, rows.imag.T, np.eye(line.count)])


def _fitted(line, seen, level, start):
    """Least squares: (sum of squares, values)."""
    found = least_squares(
        lambda x: _missing(line, seen, level, x), start, jac=lambda x: _slopes(line, level, x), max_nfev=MOST, xtol=1e-6
    )
    return 2 * found.cost, found.x
