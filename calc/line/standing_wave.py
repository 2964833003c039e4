"""Peak voltage and current along the runs of a line: cables, two-wire lines, transformer sections."""

import numpy as np

from ..feedline.feedline import Feedline
from ..feedline.run import RunLink, RunModel
from ..numeric.json_numbers import numbers
from ..physics.ratings import CAUTIOUS
from ..waves.two_port import Waves
from .results import StandingWave

__all__ = ["standing_wave"]

POINTS_PER_RUN = 81

DRAWN_AS_WAVE = 10.0
"""Half waves up to which a standing wave can be told by eye; a longer line is drawn as its envelope."""

WITHIN_HALF_A_WAVE = np.linspace(-0.5, 0.5, 17)
"""Where, in half waves around a place, its envelope is looked for."""


def standing_wave(feedline: Feedline, waves: Waves, power_w: float) -> StandingWave:
    """Evenly spaced places on every run, by the line solved at the one frequency looked at for every way of its load.

    With more than one way, and on a line of many half waves, it gives the most and the least at every place.
    """
    frequency = np.array([feedline.frequency_hz])
    runs = [(index, link.models[CAUTIOUS]) for index, link in enumerate(feedline.links) if isinstance(link, RunLink)]
    half_waves = sum(float(_half_waves_per_metre(model, frequency)) * model.length_m for _, model in runs)
    ways = waves.voltage.shape[1]
    envelope = half_waves > DRAWN_AS_WAVE and ways == 1
    distance: list[float] = []
    along: list[np.ndarray] = []
    for index, model in runs:
        places = np.linspace(0, model.length_m, POINTS_PER_RUN)
        around = places
        if envelope:
            steps = WITHIN_HALF_A_WAVE[:, None] / _half_waves_per_metre(model, frequency)
            around = np.clip(places + steps, 0.0, model.length_m)
        both = np.array(model.along(waves, index, frequency, around.ravel())) * np.sqrt(2 * power_w)
        # of every place, all there is to choose from: ways of the load, or places around it
        choice = both.reshape(2, -1, POINTS_PER_RUN)
        along.append(np.array([choice.max(axis=1), choice.min(axis=1)]))
        distance += (feedline.distance_m(index) + places).tolist()
    most, least = np.concatenate(along, axis=-1) if along else np.empty((2, 2, 0))
    ranged = envelope or ways > 1
    return StandingWave(
        distance_m=distance,
        voltage_v=numbers(most[0]),
        current_a=numbers(most[1]),
        half_waves=half_waves,
        voltage_low_v=numbers(least[0]) if ranged else None,
        current_low_a=numbers(least[1]) if ranged else None,
    )


def _half_waves_per_metre(model: RunModel, frequency: np.ndarray) -> float:
    return float(model.constants(frequency)[2][0]) / np.pi
