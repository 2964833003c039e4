"""The three limits of a joint: heat, voltage and match.

Each is computed from one end of a family's ratings, a frequency in hertz and a
`Station`. Scalars or broadcasting arrays: the matrix and the derivation call
the same functions.
"""

from typing import Literal, NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..formulas import air, first_principles, heat, loss, match, skin, voltage
from ..formulas.formula import Broadcast, Number, Sourced, purpose
from .ratings import Ratings
from .sourced import sourced
from .station import Station

__all__ = [
    "Heat",
    "HeatPath",
    "LimitId",
    "Match",
    "Shares",
    "ThermalEstimate",
    "Voltage",
    "air_density",
    "assumption",
    "dissipation",
    "first_principles_power",
    "heat_limit",
    "heat_path",
    "heat_power",
    "match_limit",
    "standing_wave_factor",
    "voltage_limit",
    "worst_section",
]

LimitId = Literal["heat", "voltage", "match"]


class Shares(NamedTuple):
    """Shares of a matched wave's power turned into heat [1]."""

    conductor: Broadcast
    dielectric: Broadcast
    contact: Broadcast
    total: Broadcast


class ThermalEstimate(NamedTuple):
    """The first-principles estimate: resistances in K/W, shares of them [1]."""

    resistance: Broadcast
    body_resistance: Broadcast
    body_share: Broadcast
    convective_share: Broadcast


class HeatPath(NamedTuple):
    """Between a contact and the air: what its temperature follows from, whatever wave passes it."""

    allowed_temperature_c: Broadcast
    """Of the contact or the cable, the lower [°C]."""
    resistance_k_per_w: Broadcast
    time_share: Broadcast
    """Share of the time that counts for heat [1]."""
    solar_rise_k: Broadcast
    estimate: ThermalEstimate


class Heat(NamedTuple):
    """Power allowed by heat [W], by the path, the share turned into heat [1] and the standing-wave factor [1]."""

    allowed_w: Broadcast
    path: HeatPath
    share: Broadcast
    factor: Broadcast


class Voltage(NamedTuple):
    """Power allowed by voltage [W], the allowed peak [V] and the standing-wave factor [1]."""

    allowed_w: Broadcast
    allowed_peak_v: Broadcast
    factor: Broadcast


class Match(NamedTuple):
    """Margin of the return loss [dB] and the reflection of the joint alone [1]."""

    margin_db: Broadcast
    return_loss_db: Broadcast
    reflection: Broadcast


def assumption(name: str) -> Sourced:
    """A number of the assumptions table, with its source."""
    return sourced(catalogue().assumptions[name].quantity)


def dissipation(ratings: Ratings[Number], frequency: Number, added_ohm: float, impedance: float) -> Shares:
    """Shares of a matched wave's power lost in a mated pair with `added_ohm` of contact resistance."""
    inner = skin.surface_resistance(frequency, ratings.inner_conductivity, ratings.inner_permeability)
    outer = skin.surface_resistance(frequency, ratings.outer_conductivity, ratings.outer_permeability)
    metre = skin.conductor_resistance(inner, outer, ratings.inner_diameter_m, ratings.outer_diameter_m)
    conductor = loss.conductor_share(metre, ratings.section_length_m, impedance)
    dielectric = loss.dielectric_share(
        frequency, ratings.bead_permittivity, ratings.bead_loss_tangent, ratings.bead_length_m
    )
    contact = loss.contact_share(
        ratings.centre_contact_resistance_ohm, ratings.outer_contact_resistance_ohm, added_ohm, impedance
    )
    return Shares(conductor, dielectric, contact, loss.dissipated_share(conductor, dielectric, contact))


def standing_wave_factor(station: Station) -> Broadcast:
    """Factor of power at a voltage or current maximum against a matched line [1]."""
    if station.forward:
        return heat.hot_spot_forward(match.reflection_of_vswr(station.vswr))
    return heat.hot_spot_net(station.vswr)


def heat_path(ratings: Ratings[Number], station: Station) -> HeatPath:
    """The thermal path from the centre contact to the air."""
    with purpose("at the rating's frequency"):
        rated = dissipation(ratings, ratings.rated_frequency_hz, 0.0, station.impedance_ohm)
    behind = heat.rated_thermal_resistance(
        ratings.rated_contact_c, ratings.rated_ambient_c, ratings.rated_power_w, rated.total
    )
    with purpose("where the heat leaves"):
        estimate = _estimate(ratings, station)
    resistance = heat.site_thermal_resistance(
        behind, estimate.body_share, estimate.convective_share, _pressure_against_rating(ratings, station)
    )
    rise = heat.solar_rise(
        station.irradiance_w_per_m2,
        assumption("surface_absorptance"),
        ratings.body_diameter_m,
        ratings.body_length_m,
        estimate.body_resistance,
    )
    hottest = _lower(ratings.highest_temperature_c, station.cable_temperature_c)
    return HeatPath(hottest, resistance, _time_share(ratings, station), rise, estimate)


def heat_limit(ratings: Ratings[Number], frequency: Number, station: Station) -> Heat:
    """Peak envelope power at which the centre contact reaches the allowed temperature."""
    path = heat_path(ratings, station)
    with purpose("at the operating frequency"):
        share = dissipation(ratings, frequency, station.added_resistance_ohm, station.impedance_ohm).total
    factor = standing_wave_factor(station)
    return Heat(heat_power(path, share, factor, station), path, share, factor)


def heat_power(path: HeatPath, share: Number, factor: Number, station: Station) -> Broadcast:
    """Peak envelope power that heats the contact to its limit [W], by the share turned into heat."""
    return heat.heat_allowed_power(
        path.allowed_temperature_c,
        station.ambient_temperature_c,
        path.solar_rise_k,
        path.resistance_k_per_w,
        share,
        factor,
        station.duty_factor,
        path.time_share,
    )


def first_principles_power(ratings: Ratings[Number], limit: Heat, station: Station) -> Broadcast:
    """Peak envelope power by the geometry alone [W]: the cross-check of `heat_limit`."""
    estimate = limit.path.estimate
    resistance = heat.site_thermal_resistance(
        estimate.resistance,
        estimate.body_share,
        estimate.convective_share,
        _pressure_against_rating(ratings, station),
    )
    return heat_power(limit.path._replace(resistance_k_per_w=resistance), limit.share, limit.factor, station)


def voltage_limit(ratings: Ratings[Number], station: Station) -> Voltage:
    """Peak envelope power at which the joint's peak voltage reaches the rated one."""
    allowed_peak = voltage.allowed_peak_voltage(ratings.working_voltage_rms_v, air_density(station))
    factor = standing_wave_factor(station)
    allowed = voltage.voltage_allowed_power(allowed_peak, station.impedance_ohm, factor)
    return Voltage(allowed, allowed_peak, factor)


def worst_section(ratings: Ratings[Number], frequency: Number, impedance: Number) -> tuple[Broadcast, Broadcast]:
    """Impedance [Ω] and electrical angle [rad] of the worst section the family's match figures allow."""
    limit = match.vswr_limit(ratings.match_vswr_at_dc, ratings.match_vswr_slope_per_hz, frequency)
    section = match.limit_impedance(ratings.design_impedance_ohm, limit, impedance)
    length = match.electrical_length(ratings.match_length_m, ratings.match_permittivity)
    return section, match.electrical_angle(frequency, length)


def match_limit(ratings: Ratings[Number], frequency: Number, station: Station) -> Match:
    """Return loss of the joint alone against the one asked for."""
    impedance, angle = worst_section(ratings, frequency, station.impedance_ohm)
    reflection = match.section_reflection(impedance, station.impedance_ohm, match.worst_angle(angle))
    return_loss = match.return_loss(reflection)
    margin = match.match_margin(return_loss, station.return_loss_asked_db)
    return Match(margin, return_loss, reflection)


def air_density(station: Station) -> Broadcast:
    """Relative air density at the station [1]; 25 °C at sea level is 1."""
    pressure = air.pressure_ratio(air.geopotential_altitude(station.altitude_m))
    return air.air_density_ratio(pressure, station.ambient_temperature_c)


def _pressure_against_rating(ratings: Ratings[Number], station: Station) -> Broadcast:
    site = air.pressure_ratio(air.geopotential_altitude(station.altitude_m))
    rated = air.pressure_ratio(air.geopotential_altitude(ratings.rated_altitude_m))
    return site / rated


def _time_share(ratings: Ratings[Number], station: Station) -> Broadcast:
    if station.rhythm is None:
        return station.transmit_share
    return heat.cycle_share(*station.rhythm, ratings.time_constant_s)


def _estimate(ratings: Ratings[Number], station: Station) -> ThermalEstimate:
    rise = assumption("body_rise_k")
    inner = first_principles.radial_conductance(
        ratings.bead_thermal_conductivity,
        ratings.bead_length_m,
        ratings.fill_thermal_conductivity,
        ratings.section_length_m,
        ratings.outer_diameter_m,
        ratings.inner_diameter_m,
    )
    convection = first_principles.convection_coefficient(rise, ratings.body_diameter_m)
    radiation = first_principles.radiation_coefficient(
        assumption("surface_emissivity"), station.ambient_temperature_c, rise
    )
    cables = first_principles.cable_conductance(
        convection + radiation,
        ratings.cable_diameter_m,
        ratings.conductor_thermal_conductivity,
        ratings.cable_conductor_area_m2,
    )
    body = first_principles.body_conductance(
        convection, radiation, ratings.body_diameter_m, ratings.body_length_m, cables
    )
    return ThermalEstimate(
        resistance=first_principles.estimated_resistance(inner, body),
        body_resistance=1 / body,
        body_share=first_principles.body_share(inner, body),
        convective_share=first_principles.convective_share(
            radiation, ratings.body_diameter_m, ratings.body_length_m, body
        ),
    )


def _lower(contact_c: Number, cable_c: Number) -> Broadcast:
    """The lower of two temperatures [°C]; a scalar keeps its source."""
    if isinstance(contact_c, np.ndarray) or isinstance(cable_c, np.ndarray):
        return np.minimum(contact_c, cable_c)
    return min(contact_c, cable_c)
