"""What the heat limits of a contact and of a cable share."""

from typing import NamedTuple

import numpy as np

from ..formulas import heat, match
from ..formulas.formula import Broadcast, Number
from .station import Station

__all__ = ["HeatLimit", "Wave", "is_documented", "lower", "standing_wave", "time_share"]


class Wave(NamedTuple):
    """Squares of voltage and current over those of a matched wave of the source's power [1]."""

    voltage: Broadcast
    current: Broadcast


class HeatLimit(NamedTuple):
    """Power allowed by the heat of one place [W], and what its temperature follows from."""

    allowed_w: Broadcast
    allowed_temperature_c: Broadcast
    solar_rise_k: Broadcast
    rise_k_per_w: Broadcast
    """For 1 W of average power."""

    def has_no_room(self, station: Station) -> Broadcast:
        """Whether air and sun alone reach the temperature allowed."""
        return station.ambient_temperature_c + self.solar_rise_k >= self.allowed_temperature_c

    def temperature_c(self, power_w: Number, station: Station) -> Broadcast:
        """Temperature reached at a peak envelope power [W]."""
        return heat.temperature_reached(
            station.ambient_temperature_c, self.solar_rise_k, power_w, station.duty_factor, self.rise_k_per_w
        )


def standing_wave(station: Station) -> Wave:
    """At the maximum of both on the station's standing wave: the conservative place."""
    if station.forward:
        factor = heat.hot_spot_forward(match.reflection_of_vswr(station.vswr))
    else:
        factor = heat.hot_spot_net(station.vswr)
    return Wave(factor, factor)


def time_share(station: Station, time_constant_s: Number) -> Broadcast:
    """Share of the time on the air that counts for what heats with a time constant [s]."""
    if station.rhythm is None:
        return station.transmit_share
    return heat.cycle_share(*station.rhythm, time_constant_s)


def lower(first_c: Number, second_c: Number) -> Broadcast:
    """The lower of two temperatures [°C]; a scalar keeps its source."""
    if isinstance(first_c, np.ndarray) or isinstance(second_c, np.ndarray):
        return np.minimum(first_c, second_c)
    return min(first_c, second_c)


def is_documented(power_w: Number) -> bool:
    """Whether there is any documented power [W]; of many, each without one is infinite."""
    return bool(np.isfinite(power_w).any())
