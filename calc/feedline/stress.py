"""What the waves do to each element, for 1 W at the source, and what power that allows."""

from typing import NamedTuple

import numpy as np

from ..formulas import voltage
from ..formulas.formula import Broadcast
from ..physics.heat_limit import Wave
from ..waves.two_port import Waves

__all__ = ["SMALLEST_SHARE", "Allowed", "Stress", "lumped_stress", "voltage_allowed_w", "worse"]

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
    hottest: Wave
    """The wave at the hottest place; of a short element the greatest voltage and current of both its ends."""


class Allowed(NamedTuple):
    """Largest source power by heat and by voltage [W], infinite where nothing limits."""

    heat_w: Broadcast
    voltage_w: Broadcast


def worse(first: Stress, second: Stress) -> Stress:
    """The worse of two in every respect."""
    return Stress(
        heat_share=np.maximum(first.heat_share, second.heat_share),
        voltage_factor=np.maximum(first.voltage_factor, second.voltage_factor),
        current_factor=np.maximum(first.current_factor, second.current_factor),
        forward_factor=np.maximum(first.forward_factor, second.forward_factor),
        hottest=Wave(*map(np.maximum, first.hottest, second.hottest)),
    )


def lumped_stress(waves: Waves, plane: int, impedance: float) -> Stress:
    """The stress of a short element between `plane` and the next, by the exact waves at both."""
    before, after = waves.at(plane), waves.at(plane + 1)
    volts, amperes = waves.voltage[plane : plane + 2], waves.current[plane : plane + 2]
    voltage_factor = (np.abs(volts) ** 2).max(axis=0) / impedance
    current_factor = (np.abs(amperes) ** 2).max(axis=0) * impedance
    return Stress(
        heat_share=np.maximum(before.power_w - after.power_w, SMALLEST_SHARE),
        voltage_factor=voltage_factor,
        current_factor=current_factor,
        forward_factor=np.abs(before.forward(impedance)) ** 2,
        hottest=Wave(voltage_factor, current_factor),
    )


def voltage_allowed_w(peak_v: Broadcast, impedance: float, stress: Stress) -> Broadcast:
    """Largest source power [W] that a peak voltage [V] allows under a stress against the line's impedance [Ω]."""
    if not np.any(np.isfinite(peak_v)):  # nothing to derive
        return np.full(np.shape(stress.voltage_factor), np.inf)
    return voltage.voltage_allowed_power(peak_v, impedance, stress.voltage_factor)
