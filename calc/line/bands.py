"""The line over all bands of the Region: a curve over frequency, and the worst of each band."""

from typing import NamedTuple

import numpy as np

from ..feedline.feedline import Feedline
from ..feedline.solve import Solutions, largest_power_w, margins, solve_both_ends
from ..formulas.line import decibels
from ..numeric.json_numbers import number, numbers
from ..physics.columns import Column
from ..physics.limits import LimitId
from ..physics.ratings import CAUTIOUS, GENEROUS
from .quantities import vswr
from .results import BandLine, LineSweep

__all__ = ["BandSolutions", "line_bands", "line_sweep", "solve_bands"]

POINTS_PER_BAND, POINTS_OF_ANY_PHASE = 9, 3
"""Of a load of unknown phase fewer do: wherever the standing wave lies, it lies there at some phase."""
HEAT_AND_VOLTAGE = 2


class BandSolutions(NamedTuple):
    """The line solved over all bands, as many frequencies [Hz] in each."""

    bands: list[Column]
    points: int
    """In each band."""
    frequency: np.ndarray
    solutions: Solutions
    margins_db: np.ndarray
    """By end, link, limit (heat, voltage) and frequency."""
    refused: np.ndarray
    """By link and frequency."""


def solve_bands(feedline: Feedline, bands: list[Column], power_w: float) -> BandSolutions:
    """Solve the line at a few frequencies of each band, from edge to edge."""
    points = POINTS_PER_BAND if feedline.load.known else POINTS_OF_ANY_PHASE
    edges = [band.low_hz for band in bands], [band.high_hz for band in bands]
    frequency = np.linspace(*edges, points, axis=1).ravel()
    solutions = solve_both_ends(feedline, frequency)
    shape = (HEAT_AND_VOLTAGE, frequency.size)
    by_end = [[np.broadcast_to(margins(one, power_w), shape) for one in solution.allowed] for solution in solutions]
    refused = np.array([link.refused(frequency, power_w) for link in feedline.links])
    return BandSolutions(bands, points, frequency, solutions, np.sort(by_end, axis=0), refused)


def line_sweep(solved: BandSolutions) -> LineSweep:
    """Loss, VSWR and smallest margin at every frequency."""
    smallest = np.where(solved.refused.any(axis=0), np.nan, solved.margins_db[CAUTIOUS].min(axis=(0, 1)))
    likely, worst = solved.solutions.generous, solved.solutions.cautious
    return LineSweep(
        band=[band.id for band in solved.bands for _ in range(solved.points)],
        frequency_hz=solved.frequency.tolist(),
        loss_db=numbers(-decibels(likely.waves.power_w[-1])),
        vswr=[vswr(one) for one in likely.reflection],
        margin_db=numbers(smallest),
        loss_high_db=numbers(-decibels(worst.waves.power_w[-1])),
        vswr_high=[vswr(one) for one in worst.reflection],
    )


def line_bands(feedline: Feedline, solved: BandSolutions) -> list[BandLine]:
    """The worst of each band."""
    loss_high, loss = (-decibels(solution.waves.power_w[-1]) for solution in solved.solutions)
    reflected_high, reflected = (np.abs(solution.reflection) for solution in solved.solutions)
    allowed = [largest_power_w(one) for solution in solved.solutions for one in solution.allowed]
    allowed += [link.house_power_w(solved.frequency) for link in feedline.links]
    largest = np.min([np.broadcast_to(one, solved.frequency.shape) for one in allowed], axis=0)
    answers = []
    for row, band in enumerate(solved.bands):
        points = slice(row * solved.points, (row + 1) * solved.points)
        refused = np.flatnonzero(solved.refused[:, points].any(axis=1)).tolist()
        low = solved.margins_db[CAUTIOUS][..., points].min(axis=2)
        known = np.isfinite(low).any() and not np.isnan(low).any() and not refused
        weakest, limit = np.unravel_index(int(np.nan_to_num(low, nan=np.inf).argmin()), low.shape)
        answers.append(
            BandLine(
                column=band,
                loss_db=number(loss[points].max()),
                vswr=vswr(reflected[points].max()),
                loss_high_db=number(loss_high[points].max()),
                vswr_high=vswr(reflected_high[points].max()),
                margin_db=number(low.min()) if known else None,
                margin_high_db=number(solved.margins_db[GENEROUS][..., points].min()) if known else None,
                weakest=int(weakest) if known else None,
                binding=_limit(feedline, int(weakest), int(limit)) if known else None,
                largest_power_w=number(largest[points].min()) if known else None,
                refused=refused,
            )
        )
    return answers


def _limit(feedline: Feedline, link: int, limit: int) -> LimitId:
    return "voltage" if limit else feedline.links[link].models[CAUTIOUS].heat_limit
