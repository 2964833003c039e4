"""Reflection against distance: a windowed inverse transform of a sweep, the line's velocity and loss taken out.

The sum is taken directly, so that every frequency has the phase and the loss of the cables up to
each place, and frequencies need not be even. A sweep that reaches down to a few steps above zero is
taken with its mirror image below zero (low-pass: real, twice as sharp), any other as it is (band-pass).
Source: analyser_guide_2010 for range and resolution, kaiser_window_1980 for the window.
"""

from typing import NamedTuple

import numpy as np

from jointwise.calc.constants import C_0
from jointwise.calc.sweep.model import Line
from jointwise.calc.views import GENEROUS

__all__ = ["Path", "Transform", "path_of", "transform_of"]

Number = np.ndarray
LOW_PASS_STEPS, LOW_PASS_SHARE = 2.5, 0.01
"""Steps above zero, or share of the upper edge, up to which the gap may be bridged."""
MOST_NEPERS = 2.3
"""Loss that is made up for, one way [Np]: 20 dB; beyond it noise alone would be raised."""


class Path(NamedTuple):
    """Places along a line [m], and turn [rad] and loss [Np] of a wave up to each: (places, frequencies)."""

    distance_m: Number
    radians: Number
    nepers: Number


class Transform(NamedTuple):
    """A window over a sweep's frequencies, ready to sum."""

    low_pass: bool
    shape: float
    span_hz: float
    """Width of the spectrum; twice the upper edge for low-pass."""
    step_hz: float
    weights: Number
    bridge: float
    """Weight of the gap around zero."""
    at_zero: float
    """Reflection there, where a line lets its end through as it is."""

    def seen(self, reflection: Number, path: Path) -> Number:
        """The echo at each place of a path: real and signed for low-pass, else complex."""
        turned = self.weights * reflection * np.exp(2j * path.radians + 2 * np.minimum(path.nepers, MOST_NEPERS))
        whole = turned.sum(axis=-1)
        if not self.low_pass:
            return whole / self.weights.sum()
        return (2 * whole.real + self.bridge * self.at_zero) / (2 * self.weights.sum() + self.bridge)

    def noise(self, level: float, path: Path) -> Number:
        """How large noise of a level, rms of the reflection, shows at each place."""
        raised = (self.weights**2 * np.exp(4 * np.minimum(path.nepers, MOST_NEPERS))).sum(axis=-1)
        if not self.low_pass:
            return level * np.sqrt(raised) / self.weights.sum()
        return level * np.sqrt(2 * raised) / (2 * self.weights.sum() + self.bridge)


def transform_of(frequency: Number, shape: float, at_zero: float) -> Transform:
    """The transform of a sweep at rising frequencies [Hz] with a Kaiser window of some shape."""
    steps = np.diff(frequency)
    step, low, high = float(np.max(steps)), float(frequency[0]), float(frequency[-1])
    low_pass = low <= max(LOW_PASS_STEPS * step, LOW_PASS_SHARE * high)
    own = np.concatenate([steps[:1], (steps[1:] + steps[:-1]) / 2, steps[-1:]])
    place = frequency / high if low_pass else 2 * (frequency - low) / (high - low) - 1
    weights = own * _kaiser(place, shape)
    # what the mirror images leave free around zero; half a step on either side belongs to them
    bridge = max(2 * low - float(steps[0]), 0.0) * _kaiser(np.zeros(1), shape)[0] if low_pass else 0.0
    return Transform(low_pass, shape, 2 * high if low_pass else high - low, step, weights, float(bridge), at_zero)


def _kaiser(place: Number, shape: float) -> Number:
    """The Kaiser window at places from -1 to 1."""
    return np.i0(shape * np.sqrt(np.maximum(1 - place**2, 0.0))) / np.i0(shape)


def path_of(line: Line, values: Number, places: Number) -> Path:
    """The path along a fitted line; places [m] beyond its end go on in the last cable without more loss."""
    shape = (places.size, line.frequency_hz.size)
    radians, nepers = np.zeros(shape, dtype=np.float64), np.zeros(shape, dtype=np.float64)
    start, last = 0.0, 2 * np.pi * line.frequency_hz / C_0
    for at, piece in enumerate(line.pieces):
        model = piece.link.models[GENEROUS]
        if piece.link.kind == "cable":
            own = line.unknowns(values, at)
            conductor, dielectric, beta = model.constants(line.frequency_hz)
            within = np.clip(places - start, 0.0, model.length_m)[:, None]
            last = beta * (1 + own[0] * line.spreads.length)
            radians += within * last
            nepers += within * (conductor + dielectric) * max(1 + own[2] * line.spreads.loss, 0.0)
            start += model.length_m
        elif piece.link.kind == "joint":
            radians += np.where((places > start)[:, None], model.section(line.frequency_hz).angle.imag, 0.0)
    radians += np.maximum(places - start, 0.0)[:, None] * last + np.minimum(places, 0.0)[:, None] * last
    return Path(places, radians, nepers)
