"""Reflection against distance: what was measured, what the intact line would show, and the threshold of an echo."""

import math
from typing import NamedTuple

import numpy as np

from ..formulas.sweep import window_side_lobe
from ..physics.ratings import assumption
from .arrays import ComplexArray, NumberArray, RealArray
from .digits import MILLIONTH_DECIMALS, to_millionths
from .results import DistanceProfile
from .swept_line import SweptLine
from .transform import DistanceTransform, propagation_along

__all__ = ["DistanceChart", "Echoes"]

MOST_PLACES, PLACES_PER_M = 601, 1e4
"""So many, each a whole tenth of a millimetre, which every machine prints alike."""

TRANSFORMED_AT_ONCE = 65536
"""Frequencies times distances in one array."""

MARGIN_SHARE = 0.15  # of the line, shown beyond its load
LEAST_MARGIN_M = 0.5


class Echoes(NamedTuple):
    """At some distances, (distances,): measured, of the intact line, of an earlier sweep, and the threshold."""

    measured: NumberArray
    expected: NumberArray
    earlier: NumberArray | None
    threshold: RealArray


class DistanceChart:
    """The transform of a sweep along its fitted line.

    `reflections` are (2 or 3, frequencies): measured, of the intact line, and an earlier sweep's where there is one;
    `noise` is the rms of the residual.
    """

    def __init__(
        self,
        line: SweptLine,
        transform: DistanceTransform,
        reflections: ComplexArray,
        noise: float,
        parameters: RealArray,
    ) -> None:
        self.transform = transform
        self._reflections, self._noise = reflections, noise
        self._profile = propagation_along(line, parameters)
        length_m = line.length_m
        begin, end = -MARGIN_SHARE * length_m / 4, length_m * (1 + MARGIN_SHARE) + LEAST_MARGIN_M
        step = math.ceil((end - begin) * PLACES_PER_M / (MOST_PLACES - 1))
        steps = math.floor(begin * PLACES_PER_M) + step * np.arange(MOST_PLACES, dtype=np.int64)
        self._distance_m = steps / PLACES_PER_M
        self._along, self._noise_along = self._transformed(self._distance_m)

    def profile(self) -> DistanceProfile:
        """All along the line."""
        shown = np.real if self.transform.low_pass else np.abs
        echoes = self._echoes(self._along, self._noise_along)
        return DistanceProfile(
            distance_m=[round(float(distance), MILLIONTH_DECIMALS) for distance in self._distance_m],
            measured=to_millionths(shown(echoes.measured)),
            expected=to_millionths(shown(echoes.expected)),
            earlier=[] if echoes.earlier is None else to_millionths(shown(echoes.earlier)),
            threshold=to_millionths(echoes.threshold),
        )

    def at(self, distance_m: RealArray) -> Echoes:
        """At some distances [m]."""
        return self._echoes(*self._transformed(distance_m))

    def _transformed(self, distance_m: RealArray) -> tuple[NumberArray, RealArray]:
        """The echoes of each reflection, and what noise shows, some distances at a time."""
        size = max(TRANSFORMED_AT_ONCE // self._reflections.shape[-1], 1)
        echoes, noise = [], []
        for first in range(0, distance_m.size, size):
            kernel = self.transform.kernel(self._profile.at(distance_m[first : first + size]))
            echoes.append(self.transform.echoes(self._reflections, kernel))
            noise.append(self.transform.noise(self._noise, kernel))
        return np.concatenate(echoes, axis=1), np.concatenate(noise)

    def _echoes(self, echoes: NumberArray, noise: RealArray) -> Echoes:
        """An echo must exceed the noise there, and the side lobes of the strongest echo."""
        side_lobes = float(np.abs(self._along[0]).max()) * 10 ** (-window_side_lobe(self.transform.shape) / 20)
        threshold = float(assumption("sweep_detection_factor")) * noise + side_lobes
        return Echoes(echoes[0], echoes[1], echoes[2] if len(echoes) > 2 else None, threshold)
