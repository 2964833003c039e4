"""Peak voltage and current along the runs of a line: cables, two-wire lines, transformer sections."""

import numpy as np

from ..feedline.feedline import Feedline
from ..feedline.run import RunLink
from ..feedline.solve import Solution
from ..numeric.json_numbers import numbers
from ..physics.ratings import CAUTIOUS
from .results import StandingWave

__all__ = ["standing_wave"]

POINTS_PER_RUN = 81


def standing_wave(feedline: Feedline, cautious: Solution, power_w: float) -> StandingWave:
    """Evenly spaced places on every run, by the line solved at the one frequency looked at."""
    distance: list[float] = []
    voltage: list[float | None] = []
    current: list[float | None] = []
    frequency = np.array([feedline.frequency_hz])
    peak = np.sqrt(2 * power_w)
    for index, link in enumerate(feedline.links):
        if not isinstance(link, RunLink):
            continue
        model = link.models[CAUTIOUS]
        places = np.linspace(0, model.length_m, POINTS_PER_RUN)
        v, i = model.along(cautious.waves, index, frequency, places)
        distance += (feedline.distance_m(index) + places).tolist()
        voltage += numbers(v * peak)
        current += numbers(i * peak)
    return StandingWave(distance, voltage, current)
