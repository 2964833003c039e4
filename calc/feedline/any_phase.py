"""How large the reflection of a load of known size can get through a two-port when no phase is known."""

from typing import NamedTuple

import numpy as np

from ..formulas.line import likely_reflection
from ..waves.two_port import TwoPort, scattering

__all__ = ["ReflectionSize", "through_two_port", "worst_through"]


class ReflectionSize(NamedTuple):
    """Sizes of a reflection whose phase is not known [1]."""

    worst: np.ndarray
    """With every phase at its worst."""
    likely: np.ndarray
    """The root of the sum of squares."""


def through_two_port(port: TwoPort, impedance: float, load: ReflectionSize) -> ReflectionSize:
    """The sizes at the near end of a two-port, those of its load being given against `impedance` [Ω]."""
    s11, s12, s21, s22 = scattering(port, impedance)
    return ReflectionSize(
        worst=worst_through(s11, s12 * s21, s22, load.worst),
        likely=likely_reflection(np.abs(s11), np.abs(s12 * s21) * load.likely),
    )


def worst_through(s11: np.ndarray, through: np.ndarray, s22: np.ndarray, load: np.ndarray) -> np.ndarray:
    """Greatest reflection seen through a two-port when the load's, of known magnitude, has any phase.

    The loads are then seen on a circle; `through` is s12 s21.
    """
    below = 1 - np.abs(s22 * load) ** 2
    centre = s11 + through * np.conj(s22) * load**2 / below
    return np.abs(centre) + np.abs(through) * load / below
