"""How large the reflection at the transmitter can be when no phase is known."""

import numpy as np

from ..formulas.line import likely_reflection
from ..physics.ratings import CAUTIOUS
from ..waves.two_port import scattering
from .feedline import Feedline

__all__ = ["bounds"]


def bounds(feedline: Feedline, frequency: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Worst and likely reflection at the transmitter [1] by frequency [Hz], from the antenna back over every step.

    The worst takes every phase at its worst, the likely is the root of the sum of squares.
    """
    z_0 = feedline.station.impedance_ohm
    worst = likely = np.abs(feedline.load(frequency))
    for link in reversed(feedline.links):
        model = link.models[CAUTIOUS]
        if link.kind == "cable":
            conductor, dielectric, beta = model.constants(frequency)
            impedance = model.impedance(conductor, dielectric, beta)
            step = (impedance - z_0) / (impedance + z_0)
            kept = np.exp(-2 * (conductor + dielectric) * model.length_m)
            inside = kept * _worst_seen(-step, 1 - step**2, step, worst)
            worst = _worst_seen(step, 1 - step**2, -step, inside)
            likely = likely_reflection(np.abs(step), kept * likely_reflection(np.abs(step), likely))
        else:
            # away from its own impedance a typical joint may reflect more than the worst
            ends = [scattering(one.two_port(frequency), z_0) for one in link.models]
            worst = np.maximum(*(_worst_seen(s11, s12 * s21, s22, worst) for s11, s12, s21, s22 in ends))
            s11, s12, s21, _ = ends[CAUTIOUS]
            likely = likely_reflection(np.abs(s11), np.abs(s12 * s21) * likely)
    return worst, likely


def _worst_seen(s11: np.ndarray, through: np.ndarray, s22: np.ndarray, load: np.ndarray) -> np.ndarray:
    """Greatest reflection seen through a two-port when the load's, of known magnitude, has any phase.

    The loads are then seen on a circle; `through` is s12 s21.
    """
    below = 1 - np.abs(s22 * load) ** 2
    centre = s11 + through * np.conj(s22) * load**2 / below
    return np.abs(centre) + np.abs(through) * load / below
