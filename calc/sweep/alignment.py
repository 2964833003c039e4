"""Bringing the cables' lengths near enough for a fit: first at low frequencies, where a wrong length matters little.

A fit follows the phase of a far echo only if that is off by less than about a radian. So a line is fitted to the
lowest part of the sweep, and what comes out to twice as much of it, and so on. Where the lowest part is not low
enough, all the cables are first made longer or shorter by the one share that fits best.
"""

from collections.abc import Sequence

import numpy as np

from .arrays import ComplexArray, IndexArray, RealArray
from .faults import PlacedFault
from .fit import Fit, Start, fitted
from .prediction import shown_with
from .sampling import scattered
from .swept_line import SweptLine

__all__ = ["aligned_fits", "followed_up", "lower_bands", "stretched"]

SAFE_RADIANS = 1.5
"""Phase of the end's echo by which usual lengths may be off in the lowest band."""
GROWTH = 1.8
FEWEST_BAND_POINTS, MOST_BAND_POINTS = 12, 96
STAGE_ROUNDS = 6
LAG = 100.0
"""Evidence by which a fit may lag behind another one in a band, and still be followed; chosen on training lines."""
PHASE_STEP = 0.8
REACH = 2.5  # deviations of length that are tried
MOST_STRETCHES, KEPT_STRETCHES = 81, 3


def lower_bands(line: SweptLine) -> list[IndexArray]:
    """Points of rising parts of the sweep, the last of them all of it."""
    frequency = line.frequency_hz
    radians = 2 * sum(float(cable.beta[-1] * cable.length_m) for cable in line.cables.values()) * line.prior.length
    top = frequency[-1] * min(SAFE_RADIANS / max(radians, SAFE_RADIANS), 1.0)
    counts = []
    while top < frequency[-1] / GROWTH:
        count = int(np.searchsorted(frequency, top))
        if count >= FEWEST_BAND_POINTS:
            counts.append(count)
        top *= GROWTH
    most = line.points_of(MOST_BAND_POINTS)
    return [scattered(count, most) for count in [*counts, frequency.size]]


def aligned_fits(line: SweptLine, measured: ComplexArray, bands: list[IndexArray]) -> list[list[Fit]]:
    """Fits of the intact line in each band, for each start the lowest band leaves open."""
    starts: list[Start] = [((), x) for x in stretched(line.at(bands[0]), measured[bands[0]])]
    return followed_up(line, measured, bands, starts)


def followed_up(
    line: SweptLine, measured: ComplexArray, bands: list[IndexArray], starts: list[Start]
) -> list[list[Fit]]:
    """From each start the fit in each band, begun where the one before ended; those that lag behind are given up."""
    followed: list[list[Fit]] = [[] for _ in starts]
    for points in bands:
        own, seen = line.at(points), measured[points]
        for fits, start in zip(followed, starts, strict=True):
            faults, x = (fits[-1].faults, fits[-1].x) if fits else start
            fits.append(fitted(own, seen, x, faults, STAGE_ROUNDS))
        least = max((fits[-1].evidence for fits in followed), default=0.0) - LAG
        near = [number for number, fits in enumerate(followed) if fits[-1].evidence > least]
        followed, starts = [followed[number] for number in near], [starts[number] for number in near]
    return followed


def stretched(
    line: SweptLine, measured: ComplexArray, faults: Sequence[PlacedFault] = (), sizes: Sequence[float] = ()
) -> list[RealArray]:
    """Parameters with all cables longer or shorter by the shares that fit best; of a low band none.

    With the sizes of faults at joints behind them.
    """
    radians = 2 * sum(float(cable.beta[-1] * cable.length_m) for cable in line.cables.values()) * line.prior.length
    x = np.concatenate([np.zeros(line.parameter_count), sizes])
    if radians * 1.01 < SAFE_RADIANS or not line.cables:
        return [x]
    count = min(int(2 * REACH * radians / PHASE_STEP) + 1, MOST_STRETCHES)
    found = []
    for share in np.linspace(-REACH, REACH, count):
        own = x.copy()
        own[[line.offsets[at] for at in line.cables]] = share
        squares = float(np.sum(np.abs(measured - shown_with(line, own, faults)) ** 2))
        found.append((squares, share, own))
    found.sort(key=lambda one: one[0])
    chosen: list[tuple[float, float, RealArray]] = []
    spacing = 2 * REACH / max(count - 1, 1)
    for one in found:
        if all(abs(one[1] - other[1]) > 1.5 * spacing for other in chosen):
            chosen.append(one)
        if len(chosen) == KEPT_STRETCHES:
            break
    return [own for _, _, own in chosen]
