"""The three limits of a joint: heat, voltage and match.

Each takes one end of a family's ratings (`views`), a frequency in hertz and a
`Station`. Scalars or broadcasting arrays: the matrix and the derivation call
the same functions.
"""

from types import SimpleNamespace
from typing import Any, Literal, NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..formulas import air, first_principles, heat, loss, match, skin, voltage
from ..formulas.formula import Sourced, purpose
from .station import Station

__all__ = [
    "Heat",
    "HeatPath",
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

Number = Any  # float or numpy array: every function broadcasts


class Shares(NamedTuple):
    """Shares of a matched wave's power turned into heat [1]."""

    conductor: Number
    dielectric: Number
    contact: Number
    total: Number


class ThermalEstimate(NamedTuple):
    """The first-principles estimate: resistances in K/W, shares of them [1]."""

    resistance: Number
    body_resistance: Number
    body_share: Number
    convective_share: Number


class HeatPath(NamedTuple):
    """What a contact's temperature follows from, whatever wave passes it."""

    allowed_temperature_c: Number
    resistance_k_per_w: Number
    time_share: Number
    solar_rise_k: Number
    estimate: ThermalEstimate


class Heat(NamedTuple):
    """Power allowed by heat [W], and what the contact temperature [°C] follows from."""

    allowed_w: Number
    allowed_temperature_c: Number
    resistance_k_per_w: Number
    time_share: Number
    solar_rise_k: Number
    estimate: ThermalEstimate
    share: Number
    factor: Number


class Voltage(NamedTuple):
    """Power allowed by voltage [W], the allowed peak [V] and the standing-wave factor [1]."""

    allowed_w: Number
    allowed_peak_v: Number
    factor: Number


class Match(NamedTuple):
    """Margin of the return loss [dB] and the reflection of the joint alone [1]."""

    margin_db: Number
    return_loss_db: Number
    reflection: Number


def assumption(name: str) -> Sourced:
    """A number of the assumptions table, with its source."""
    quantity = catalogue().assumptions[name].quantity
    return Sourced(quantity.value, quantity.source, quantity.kind)


def dissipation(ratings: SimpleNamespace, frequency: Number, added_ohm: float, impedance: float) -> Shares:
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


def standing_wave_factor(station: Station) -> Number:
    """Factor of power at a voltage or current maximum against a matched line [1]."""
    if station.forward:
        return heat.hot_spot_forward(match.reflection_of_vswr(station.vswr))
    return heat.hot_spot_net(station.vswr)


def heat_path(ratings: SimpleNamespace, station: Station) -> HeatPath:
    """What stands between the centre contact and the air, and what room the air leaves."""
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


def heat_limit(ratings: SimpleNamespace, frequency: Number, station: Station) -> Heat:
    """Peak envelope power at which the centre contact reaches the allowed temperature."""
    path = heat_path(ratings, station)
    with purpose("at the operating frequency"):
        share = dissipation(ratings, frequency, station.added_resistance_ohm, station.impedance_ohm).total
    factor = standing_wave_factor(station)
    return Heat(heat_power(path, share, factor, station), *path, share, factor)


def heat_power(path: HeatPath, share: Number, factor: Number, station: Station) -> Number:
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


def first_principles_power(ratings: SimpleNamespace, limit: Heat, station: Station) -> Number:
    """Peak envelope power by the geometry alone [W]: the cross-check of `heat_limit`."""
    resistance = heat.site_thermal_resistance(
        limit.estimate.resistance,
        limit.estimate.body_share,
        limit.estimate.convective_share,
        _pressure_against_rating(ratings, station),
    )
    return heat_power(limit._replace(resistance_k_per_w=resistance), limit.share, limit.factor, station)


def voltage_limit(ratings: SimpleNamespace, station: Station) -> Voltage:
    """Peak envelope power at which the joint's peak voltage reaches the rated one."""
    allowed_peak = voltage.allowed_peak_voltage(ratings.working_voltage_rms_v, air_density(station))
    factor = standing_wave_factor(station)
    allowed = voltage.voltage_allowed_power(allowed_peak, station.impedance_ohm, factor)
    return Voltage(allowed, allowed_peak, factor)


def worst_section(ratings: SimpleNamespace, frequency: Number, impedance: Number) -> tuple[Number, Number]:
    """Impedance [Ω] and electrical angle [rad] of the worst section the family's match figures allow."""
    limit = match.vswr_limit(ratings.match_vswr_at_dc, ratings.match_vswr_slope_per_hz, frequency)
    section = match.limit_impedance(ratings.design_impedance_ohm, limit, impedance)
    length = match.electrical_length(ratings.match_length_m, ratings.match_permittivity)
    return section, match.electrical_angle(frequency, length)


def match_limit(ratings: SimpleNamespace, frequency: Number, station: Station) -> Match:
    """Return loss of the joint alone against the one asked for."""
    impedance, angle = worst_section(ratings, frequency, station.impedance_ohm)
    reflection = match.section_reflection(impedance, station.impedance_ohm, match.worst_angle(angle))
    return_loss = match.return_loss(reflection)
    margin = match.match_margin(return_loss, station.return_loss_asked_db)
    return Match(margin, return_loss, reflection)


def air_density(station: Station) -> Number:
    """Relative air density at the station [1]; 25 °C at sea level is 1."""
    pressure = air.pressure_ratio(air.geopotential_altitude(station.altitude_m))
    return air.air_density_ratio(pressure, station.ambient_temperature_c)


def _pressure_against_rating(ratings: SimpleNamespace, station: Station) -> Number:
    station = air.pressure_ratio(air.geopotential_altitude(station.altitude_m))
    rated = air.pressure_ratio(air.geopotential_altitude(ratings.rated_altitude_m))
    return station / rated


def _time_share(ratings: SimpleNamespace, station: Station) -> Number:
    if station.rhythm is None:
        return station.transmit_share
    return heat.cycle_share(*station.rhythm, ratings.time_constant_s)


def _estimate(ratings: SimpleNamespace, station: Station) -> ThermalEstimate:
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


def _lower(one: Number, other: Number) -> Number:
    """The lower of two temperatures; a scalar keeps its source."""
    if isinstance(one, np.ndarray):
        return np.minimum(one, other)
    return min(one, other)
