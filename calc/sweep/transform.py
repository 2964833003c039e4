"""Reflection against distance: a windowed inverse transform of a sweep, the line's velocity and loss taken out.

The sum is taken directly, so that every frequency has the phase and the loss of the cables up to
each place, and frequencies need not be even. A sweep that reaches down to a few steps above zero is
taken with its mirror image below zero (low-pass: real, twice as sharp), any other as it is (band-pass).
Source: analyser_guide_2010 for range and resolution, kaiser_window_1980 for the window.
"""

from typing import NamedTuple

import numpy as np

from ..formulas.constants import C_0
from ..physics.ratings import GENEROUS
from .model import Line

__all__ = ["Path", "Transform", "Way", "transform_of", "way_of"]

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


class Way(NamedTuple):
    """A line in sections: where each starts [m], turn [rad] and loss [Np] up to there, and of each metre of it."""

    starts_m: Number
    so_far: Number
    per_metre: Number

    def path(self, places: Number) -> Path:
        """To some places [m]; one where joints stand lies before them."""
        at = np.where(places > 0, np.searchsorted(self.starts_m, places) - 1, 0)
        beyond = (places - self.starts_m[at])[:, None]
        return Path(places, *(self.so_far[at, one] + beyond * self.per_metre[at, one] for one in (0, 1)))


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

    def kernel(self, path: Path) -> Number:
        """What each frequency counts at each place: (places, frequencies)."""
        return self.weights * np.exp(2 * np.minimum(path.nepers, MOST_NEPERS) + 2j * path.radians)

    def seen(self, reflection: Number, kernel: Number) -> Number:
        """The echo at each place: real and signed for low-pass, else complex."""
        whole = reflection @ kernel.T
        if not self.low_pass:
            return whole / self.weights.sum()
        return (2 * whole.real + self.bridge * self.at_zero) / (2 * self.weights.sum() + self.bridge)

    def noise(self, level: float, kernel: Number) -> Number:
        """How large noise of a level, rms of the reflection, shows at each place."""
        raised = (kernel.real**2 + kernel.imag**2).sum(axis=-1)
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


def way_of(line: Line, values: Number) -> Way:
    """The way along a fitted line; beyond its end it goes on in the last cable without more loss."""
    none, last = np.zeros_like(line.frequency_hz), 2 * np.pi * line.frequency_hz / C_0
    start, radians, nepers = 0.0, none, none
    starts, so_far, per_metre = [], [], []
    for at, piece in enumerate(line.pieces):
        model = piece.link.models[GENEROUS]
        if piece.link.kind == "cable":
            own = line.unknowns(values, at)
            conductor, dielectric, beta = model.constants(line.frequency_hz)
            last = beta * (1 + own[0] * line.spreads.length)
            lost = (conductor + dielectric) * max(1 + own[2] * line.spreads.loss, 0.0)
            starts, so_far, per_metre = [*starts, start], [*so_far, (radians, nepers)], [*per_metre, (last, lost)]
            radians, nepers = radians + last * model.length_m, nepers + lost * model.length_m
            start += model.length_m
        elif piece.link.kind == "joint":
            radians = radians + model.section(line.frequency_hz).angle.imag
    return Way(
        np.array([0.0, *starts, start]),
        np.array([(none, none), *so_far, (radians, nepers)]),
        np.array([(last, none), *per_metre, (last, none)]),
    )
