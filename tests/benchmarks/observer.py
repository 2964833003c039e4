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
from jointwise.calc.sweep.prediction import predicted
from jointwise.calc.sweep.prior import SweepSettings
from jointwise.calc.sweep.sampling import scattered
from jointwise.calc.sweep.swept_line import swept_line

ERRORS = 0.01
DETECTABLE = 2 * norm.isf(ERRORS)
"""Deviations between the hypotheses from which on the observer misses at most 1 % at 1 % of false alarms."""
POINTS = 201
SHIFTS, TRIED, MOST_STEPS = np.linspace(-3, 3, 121), 2, 40


def separations(drawn, noises):
    """How far the fault of a drawn line exceeds what good parts explain, in standard deviations."""
    points = scattered(drawn.frequency_hz.size, POINTS)
    frequency = drawn.frequency_hz[points]
    request = drawn.request(drawn.reflection)
    built = feedline_at(request, request.elements, request.load, spot_column(float(frequency.mean())))
    line = swept_line(built, frequency, SweepSettings(request.length_tolerance, 1.0, request.load))
    x = np.zeros(line.parameter_count)
    for at, (length, impedance, loss) in zip(line.cables, drawn.deviations, strict=True):
        first, prior = line.offsets[at], line.prior
        x[first], x[first + 4] = length / prior.length, impedance / prior.impedance
        x[first + 2] = loss / prior.conductor_loss
    beside = [line.offsets[at] for at in range(len(line.parts) - 1) if abs(line.link(at).element - drawn.joint) == 1]
    found, closest = [], x
    for noise in noises:
        # some of the points are worth all of them with less noise
        level = noise * np.sqrt(points.size / drawn.frequency_hz.size)
        intact, x = _fitted(line, drawn.intact[points], level, x)
        starts = [x, closest, *_shifted(line, drawn.reflection[points], level, x, beside)]
        faulty, closest = min((_fitted(line, drawn.reflection[points], level, start) for start in starts), key=_first)
        found.append(float(np.sqrt(max(faulty - intact, 0.0))))
    return found


def _first(pair):
    return pair[0]


def _shifted(line, reflection, level, start, lengths):
    """The likeliest of the starts with some lengths shifted."""
    starts = np.repeat(start[None, :], SHIFTS.size, axis=0)
    starts[:, lengths] += SHIFTS[:, None]
    return starts[np.argsort([(_residual(line, reflection, level, x) ** 2).sum() for x in starts])[:TRIED]]


def _residual(line, reflection, level, x):
    """What the model misses, in standard deviations, and its parameters in theirs."""
    gap = (predicted(line, x).shown - reflection) * np.sqrt(2) / level
    return np.concatenate([gap.real, gap.imag, x])


def _jacobian(line, level, x):
    """Derivatives of that by every parameter."""
    rows = predicted(line, x).slopes * np.sqrt(2) / level
    return np.concatenate([rows.real.T, rows.imag.T, np.eye(line.parameter_count)])


def _fitted(line, reflection, level, start):
    """Least squares: (sum of squares, parameters)."""
    found = least_squares(
        lambda x: _residual(line, reflection, level, x),
        start,
        jac=lambda x: _jacobian(line, level, x),
        max_nfev=MOST_STEPS,
        xtol=1e-6,
    )
    return 2 * found.cost, found.x
