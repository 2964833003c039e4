"""Reflection against distance: a windowed inverse transform of a sweep, the line's velocity and loss removed.

The sum is formed directly, so that every frequency has the phase and the loss of the cables up to
each distance, and frequencies need not be even. A sweep that reaches down to a few steps above zero is
joined by its mirror image below zero (low-pass: real, twice as sharp), any other is not (band-pass).
Source: analyser_guide_2010 for range and resolution, kaiser_window_1980 for the window.
"""

from typing import NamedTuple

import numpy as np

from ..formulas.constants import C_0
from .arrays import ComplexArray, NumberArray, RealArray
from .swept_line import CablePart, JointPart, SweptLine

__all__ = ["DistanceTransform", "Propagation", "PropagationProfile", "distance_transform", "propagation_along"]

LOW_PASS_STEPS, LOW_PASS_SHARE = 2.5, 0.01
"""Steps above zero, or share of the upper edge, up to which the gap may be bridged."""

MOST_COMPENSATED_NEPERS = 2.3
"""Loss that is made up for, there or back [Np]: 20 dB; beyond it noise alone would be raised."""


class Propagation(NamedTuple):
    """Distances [m], (distances,), and phase [rad] and loss [Np] of a wave up to each: (distances, frequencies)."""

    distance_m: RealArray
    radians: RealArray
    nepers: RealArray


class PropagationProfile(NamedTuple):
    """A line in sections: where each starts, phase and loss up to there, and of each metre of it.

    Starts are (sections,), the others (sections, 2, frequencies): phase [rad], then loss [Np].
    """

    starts_m: RealArray
    up_to_start: RealArray
    per_metre: RealArray

    def at(self, distance_m: RealArray) -> Propagation:
        """Up to some distances [m]; one at the border of two sections belongs to the former."""
        section = np.where(distance_m > 0, np.searchsorted(self.starts_m, distance_m) - 1, 0)
        beyond = (distance_m - self.starts_m[section])[:, None]
        radians, nepers = (self.up_to_start[section, row] + beyond * self.per_metre[section, row] for row in (0, 1))
        return Propagation(distance_m, radians, nepers)


class DistanceTransform(NamedTuple):
    """A window over a sweep's frequencies, ready to sum."""

    low_pass: bool
    shape: float
    """Of the Kaiser window."""
    span_hz: float
    """Width of the spectrum; twice the upper edge for low-pass."""
    step_hz: float
    weights: RealArray
    """(frequencies,)"""
    bridge: float
    """Weight of the gap around zero."""
    at_zero: float
    """Reflection there, where a line lets its load through as it is."""

    def kernel(self, propagation: Propagation) -> ComplexArray:
        """What each frequency counts at each distance: (distances, frequencies)."""
        nepers = np.minimum(propagation.nepers, MOST_COMPENSATED_NEPERS)
        return self.weights * np.exp(2 * nepers + 2j * propagation.radians)

    def echoes(self, reflection: ComplexArray, kernel: ComplexArray) -> NumberArray:
        """The echo at each distance, (..., distances): real and signed for low-pass, else complex."""
        total = reflection @ kernel.T
        if not self.low_pass:
            return total / self.weights.sum()
        return (2 * total.real + self.bridge * self.at_zero) / (2 * self.weights.sum() + self.bridge)

    def noise(self, level: float, kernel: ComplexArray) -> RealArray:
        """How large noise of a level, rms of the reflection, shows at each distance: (distances,)."""
        gain = (kernel.real**2 + kernel.imag**2).sum(axis=-1)
        if not self.low_pass:
            return level * np.sqrt(gain) / self.weights.sum()
        return level * np.sqrt(2 * gain) / (2 * self.weights.sum() + self.bridge)


def distance_transform(frequency: RealArray, shape: float, at_zero: float) -> DistanceTransform:
    """The transform of a sweep at rising frequencies [Hz] with a Kaiser window of some shape."""
    steps = np.diff(frequency)
    step, low, high = float(np.max(steps)), float(frequency[0]), float(frequency[-1])
    low_pass = low <= max(LOW_PASS_STEPS * step, LOW_PASS_SHARE * high)
    widths = np.concatenate([steps[:1], (steps[1:] + steps[:-1]) / 2, steps[-1:]])
    position = frequency / high if low_pass else 2 * (frequency - low) / (high - low) - 1
    weights = widths * _kaiser(position, shape)
    # what the mirror images leave free around zero; half a step on either side belongs to them
    bridge = max(2 * low - float(steps[0]), 0.0) * _kaiser(np.zeros(1), shape)[0] if low_pass else 0.0
    span = 2 * high if low_pass else high - low
    return DistanceTransform(low_pass, shape, span, step, weights, float(bridge), at_zero)


def propagation_along(line: SweptLine, x: RealArray) -> PropagationProfile:
    """That of a fitted line; beyond its load it goes on in the last cable without more loss."""
    none, per_metre = np.zeros_like(line.frequency_hz), 2 * np.pi * line.frequency_hz / C_0
    start, radians, nepers = 0.0, none, none
    starts: list[float] = []
    up_to_start: list[tuple[RealArray, RealArray]] = []
    slopes: list[tuple[RealArray, RealArray]] = []
    for at, part in enumerate(line.parts):
        if isinstance(part, CablePart):
            gamma = line.propagation(x, at)
            per_metre, attenuation = gamma.imag, gamma.real
            starts.append(start)
            up_to_start.append((radians, nepers))
            slopes.append((per_metre, attenuation))
            radians, nepers = radians + per_metre * part.length_m, nepers + attenuation * part.length_m
            start += part.length_m
        elif isinstance(part, JointPart):
            radians = radians + 2 * np.pi * line.frequency_hz * part.delay_s
    return PropagationProfile(
        np.array([0.0, *starts, start]),
        np.array([(none, none), *up_to_start, (radians, nepers)]),
        np.array([(per_metre, none), *slopes, (per_metre, none)]),
    )


def _kaiser(position: RealArray, shape: float) -> RealArray:
    """The Kaiser window at positions from -1 to 1."""
    return np.i0(shape * np.sqrt(np.maximum(1 - position**2, 0.0))) / np.i0(shape)
