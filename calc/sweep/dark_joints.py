"""Joints that let nothing through: an open contact, a short.

A fit of the intact line takes the echo of such a joint for the end's, and its cables for as much shorter. So they are
fitted from the lowest band on, each joint in turn.
"""

import numpy as np

from .alignment import followed_up, lower_bands, stretched
from .arrays import ComplexArray
from .faults import PlacedFault
from .fit import Fit, fitted
from .screening import judged_until_m
from .settling import settled
from .starts import AT_JOINT_BY_ID, starts_at
from .swept_line import SweptLine

__all__ = ["dark_fits"]

DARK = (("short", (0.0, 0.0)), ("gap", (-1.0, 0.0)))
BEGUN, OF_EACH, FOLLOWED, SETTLED, ROUNDS = 12, 2, 6, 2, 5
"""How many are fitted in the lowest band, how many of them with one fault at one joint, how many are followed into all
of the sweep, and of how many the joints are moved; rounds of a fit."""


def dark_fits(line: SweptLine, measured: ComplexArray, cell_m: float, least: float) -> list[Fit]:
    """The fits to all of the sweep that look best in its lowest band and have some evidence at least."""
    bands, until_m = lower_bands(line), judged_until_m(line, cell_m)
    lowest, seen = line.at(bands[0]), measured[bands[0]]
    # joints with no cable between them send the same echo
    at_place = {line.begin_m(at): at for at in reversed(line.joints)}
    begun: list[Fit] = []
    for place, at in at_place.items():
        if place > until_m:
            continue
        for kind, sizes in DARK:
            faults = (PlacedFault(AT_JOINT_BY_ID[kind], at),)
            begun += [fitted(lowest, seen, x, faults, 0) for x in stretched(lowest, seen, faults, sizes)]
    begun = _few_of_each(sorted(begun, key=lambda fit: fit.objective), OF_EACH)[:BEGUN]
    begun = [fitted(lowest, seen, fit.x, fit.faults, ROUNDS) for fit in begun]
    begun.sort(key=lambda fit: -fit.evidence)
    whole = [*bands[1:], np.arange(line.frequency_hz.size)]
    starts = [(fit.faults, fit.x) for fit in begun[:FOLLOWED]]
    followed = [fits[-1] for fits in followed_up(line, measured, whole, starts)]
    found: list[Fit] = []
    for dark in _few_of_each(sorted(followed, key=lambda fit: -fit.evidence), 1)[:SETTLED]:
        if dark.evidence > least:
            own, place = dark.x[: line.parameter_count], line.begin_m(dark.faults[0].part)
            beside = [at for at in line.joints if line.begin_m(at) == place]
            starts = [start for at in beside for start in starts_at(line, measured, dark, own, at)]
            kinds = [dark, *(fitted(line, measured, x, other, ROUNDS) for other, x in starts)]
            found.append(settled(line, measured, max(kinds, key=lambda fit: fit.evidence), cell_m))
    return found


def _few_of_each(fits: list[Fit], most: int) -> list[Fit]:
    """The first so many with the same fault at the same joint."""
    kept: list[Fit] = []
    for fit in fits:
        if sum(other.faults == fit.faults for other in kept) < most:
            kept.append(fit)
    return kept
