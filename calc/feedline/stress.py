"""What the waves do to each element, for 1 W at the source, and what power that allows."""

from typing import NamedTuple

import numpy as np

from ..formulas.formula import Broadcast
from ..waves.two_port import Waves

__all__ = ["SMALLEST_SHARE", "Allowed", "HotSpot", "Stress", "lumped_stress"]

SMALLEST_SHARE = 1e-15  # rounding may leave a lossless element a little below nothing


class Stress(NamedTuple):
    """Against a matched wave of the source's power, at the worst place of an element."""

    heat_share: Broadcast
    """Share of the source's power turned into heat [1]; in a cable, in a metre at its hottest place [1/m]."""
    voltage_factor: Broadcast
    """Square of the voltage over that of the matched wave [1]."""
    current_factor: Broadcast
    """Square of the current over that of the matched wave [1]."""
    forward_factor: Broadcast
    """Power of the forward wave into the element over the source's [1]."""


class Allowed(NamedTuple):
    """Largest source power by heat and by voltage [W], infinite where nothing limits; margin of the match [dB]."""

    heat_w: Broadcast
    voltage_w: Broadcast
    match_db: Broadcast


class HotSpot(NamedTuple):
    """What the temperature of an element's hottest place follows from, by the share of the power turned into heat."""

    allowed_temperature_c: Broadcast
    resistance_k_per_w: Broadcast
    """To the air [K/W]; of a cable, that of one metre [K m/W]."""
    time_share: Broadcast
    """Share of the time on the air that counts for its temperature [1]."""
    solar_rise_k: Broadcast


def lumped_stress(waves: Waves, plane: int, impedance: float) -> Stress:
    """The stress of a short element between `plane` and the next, by the exact waves at both."""
    before, after = waves.at(plane), waves.at(plane + 1)
    voltage, current = waves.voltage[plane : plane + 2], waves.current[plane : plane + 2]
    return Stress(
        heat_share=np.maximum(before.power_w - after.power_w, SMALLEST_SHARE),
        voltage_factor=(np.abs(voltage) ** 2).max(axis=0) / impedance,
        current_factor=(np.abs(current) ** 2).max(axis=0) * impedance,
        forward_factor=np.abs(before.forward(impedance)) ** 2,
    )
