"""The limits of a joint (heat of its contact, heat of its cable, voltage), and its match.

Each is computed from one end of a family's ratings, a frequency in hertz and a
`Station`. Scalars or broadcasting arrays: the matrix and the derivation call
the same functions.
"""

from typing import Literal, NamedTuple

from ..formulas import air, match, voltage
from ..formulas.formula import Broadcast, Number
from .cable_heat import CablePath, ConductorRises, cable_path, conductor_rises
from .cable_ratings import CableRatings
from .heat_limit import HeatLimit, standing_wave
from .joint_heat import contact_limit, joint_path
from .ratings import Ratings
from .station import Station

__all__ = [
    "LIMIT_NAMES",
    "CableHeat",
    "LimitId",
    "Match",
    "Voltage",
    "air_density",
    "cable_heat",
    "contact_heat",
    "match_of",
    "voltage_limit",
    "worst_section",
]

LimitId = Literal["contact", "cable", "rating", "voltage"]
"""What a power can be limited by."""

LIMIT_NAMES: dict[LimitId, str] = {
    "contact": "heat of the contact",
    "cable": "heat of the cable",
    "rating": "rated power",
    "voltage": "voltage",
}


class CableHeat(NamedTuple):
    """A cable far from any joint: its path to the air, and the rises of its conductors."""

    path: CablePath
    rises: ConductorRises


class Voltage(NamedTuple):
    """Power allowed by voltage [W], the allowed peak [V] and the standing-wave factor [1]."""

    allowed_w: Broadcast
    allowed_peak_v: Broadcast
    factor: Broadcast


class Match(NamedTuple):
    """Return loss of the joint alone [dB] and its reflection [1]."""

    return_loss_db: Broadcast
    reflection: Broadcast


def cable_heat(cable: CableRatings[Number], frequency: Number, station: Station) -> CableHeat:
    """How a cable heats on the station's standing wave."""
    path = cable_path(cable, station)
    return CableHeat(path, conductor_rises(cable, path, frequency, standing_wave(station), station))


def contact_heat(
    ratings: Ratings[Number], cable: CableRatings[Number], beside: CableHeat, frequency: Number, station: Station
) -> HeatLimit:
    """What the contact allows on the station's standing wave, that cable ending on one side or on both."""
    on_both = station.cabled_sides == 2
    cables, sides = (cable, cable if on_both else None), (beside.path, beside.path if on_both else None)
    path = joint_path(ratings, cables, sides, station)
    rises = [beside.rises, beside.rises if on_both else None]
    return contact_limit(ratings, path, rises, standing_wave(station).current, frequency, station)


def voltage_limit(ratings: Ratings[Number], station: Station) -> Voltage:
    """Peak envelope power at which the joint's peak voltage reaches the rated one."""
    allowed_peak = voltage.allowed_peak_voltage(ratings.working_voltage_rms_v, air_density(station))
    factor = standing_wave(station).voltage
    allowed = voltage.voltage_allowed_power(allowed_peak, station.impedance_ohm, factor)
    return Voltage(allowed, allowed_peak, factor)


def worst_section(ratings: Ratings[Number], frequency: Number, impedance: Number) -> tuple[Broadcast, Broadcast]:
    """Impedance [Ω] and electrical angle [rad] of the worst section the family's match figures allow."""
    limit = match.vswr_limit(ratings.match_vswr_at_dc, ratings.match_vswr_slope_per_hz, frequency)
    section = match.limit_impedance(ratings.design_impedance_ohm, limit, impedance)
    length = match.electrical_length(ratings.match_length_m, ratings.match_permittivity)
    return section, match.electrical_angle(frequency, length)


def match_of(ratings: Ratings[Number], frequency: Number, station: Station) -> Match:
    """Return loss of the joint alone."""
    impedance, angle = worst_section(ratings, frequency, station.impedance_ohm)
    reflection = match.section_reflection(impedance, station.impedance_ohm, match.worst_angle(angle))
    return Match(match.return_loss(reflection), reflection)


def air_density(station: Station) -> Broadcast:
    """Relative air density at the station [1]; 25 °C at sea level is 1."""
    pressure = air.pressure_ratio(air.geopotential_altitude(station.altitude_m))
    return air.air_density_ratio(pressure, station.ambient_temperature_c)
