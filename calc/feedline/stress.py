"""What the waves do to each element, for 1 W at the source, and what power that allows."""

from typing import NamedTuple

import numpy as np

from ..waves.two_port import Waves

__all__ = ["SMALLEST_SHARE", "Allowed", "Stress", "lumped_stress"]

SMALLEST_SHARE = 1e-15  # rounding may leave a lossless element a little below nothing


class Stress(NamedTuple):
    """Against a matched wave of the source's power, at the worst place of an element."""

    heat_share: np.ndarray
    """Share of the source's power turned into heat [1]; in a cable, in a metre at its hottest place [1/m]."""
    voltage_factor: np.ndarray
    """Square of the voltage over that of the matched wave [1]."""
    current_factor: np.ndarray
    """Square of the current over that of the matched wave [1]."""
    forward_factor: np.ndarray
    """Power of the forward wave into the element over the source's [1]."""


class Allowed(NamedTuple):
    """Largest source power by heat and by voltage [W], infinite where nothing limits; margin of the match [dB]."""

    heat_w: np.ndarray
    voltage_w: np.ndarray
    match_db: np.ndarray


def lumped_stress(waves: Waves, at: int, impedance: float) -> Stress:
    """The stress of a short element between planes `at` and `at` + 1, by the exact waves at both."""
    before, after = waves.at(at), waves.at(at + 1)
    voltage, current = waves.voltage[at : at + 2], waves.current[at : at + 2]
    return Stress(
        heat_share=np.maximum(before.power_w - after.power_w, SMALLEST_SHARE),
        voltage_factor=(np.abs(voltage) ** 2).max(axis=0) / impedance,
        current_factor=(np.abs(current) ** 2).max(axis=0) * impedance,
        forward_factor=np.abs(before.forward(impedance)) ** 2,
    )
