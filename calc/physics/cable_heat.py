"""How hot a cable gets far from any joint, and what power that allows it."""

from typing import NamedTuple

from ..formulas import cable_heat, heat, line
from ..formulas.formula import Broadcast, Number, purpose
from .air_film import Surface, air_film
from .cable_ratings import CableRatings
from .heat_limit import HeatLimit, Wave, is_documented, time_share
from .station import Station

__all__ = ["CablePath", "ConductorRises", "cable_limit", "cable_path", "conductor_rises"]


class CablePath(NamedTuple):
    """A metre of cable from its inner conductor to the air, whatever wave passes it."""

    to_air: Broadcast
    """Thermal resistances of a metre [K·m/W]: of the film,"""
    jacket: Broadcast
    """of the jacket,"""
    insulation: Broadcast
    """and of the insulation."""
    inner_share: Broadcast
    """Share of the conductors' heat in the inner one [1]."""
    surface_time_share: Broadcast
    """Share of the time that counts for the cable as a whole [1],"""
    core_time_share: Broadcast
    """and for the inner conductor over its screen [1]."""
    inner_fin: Broadcast
    """Conductance along the inner conductor [W/K],"""
    outer_fin: Broadcast
    """and along the outer one [W/K]."""
    solar_rise_k: Broadcast


class ConductorRises(NamedTuple):
    """Rises of the conductors over air and sun for 1 W of average power [K/W]."""

    inner: Broadcast
    outer: Broadcast


def cable_path(ratings: CableRatings[Number], station: Station) -> CablePath:
    """The layers of a cable and its film, reckoned at the rise that its own highest temperature allows."""
    surface = Surface(
        ratings.outer_diameter_m,
        ratings.emissivity,
        ratings.absorptance,
        ratings.film_share,
        ratings.surface_rise_share,
    )
    with purpose("the cable, far from the joint"):
        film = air_film(surface, ratings.highest_temperature_c, station)
        jacket = cable_heat.shell_resistance(
            ratings.outer_diameter_m, ratings.screen_diameter_m, ratings.jacket_thermal_conductivity
        )
        gas = cable_heat.gas_share(ratings.plastic_permittivity, ratings.velocity_factor)
        insulation = cable_heat.shell_resistance(
            ratings.dielectric_diameter_m,
            ratings.inner_diameter_m,
            cable_heat.foam_conductivity(ratings.plastic_thermal_conductivity, gas),
        )
        surface_share, core_share = _time_shares(ratings, station, gas, film.resistance_k_m_per_w, insulation)
        return CablePath(
            to_air=film.resistance_k_m_per_w,
            jacket=jacket,
            insulation=insulation,
            inner_share=cable_heat.inner_share(ratings.dielectric_diameter_m, ratings.inner_diameter_m),
            surface_time_share=surface_share,
            core_time_share=core_share,
            inner_fin=cable_heat.fin_conductance(ratings.inner_thermal_conductivity, ratings.inner_area_m2, insulation),
            outer_fin=cable_heat.fin_conductance(
                ratings.screen_thermal_conductivity, ratings.screen_area_m2, film.resistance_k_m_per_w + jacket
            ),
            solar_rise_k=film.solar_rise_k,
        )


def conductor_rises(
    ratings: CableRatings[Number], path: CablePath, frequency: Number, wave: Wave, station: Station
) -> ConductorRises:
    """Rises of both conductors by a wave, the cable's loss being that at its highest temperature."""
    with purpose("the cable, far from the joint"):
        hot = line.conductor_temperature_factor(ratings.highest_temperature_c)
        k_1, k_2 = ratings.conductor_coefficient(frequency), ratings.k_2
        total = line.attenuation_constant(line.cable_attenuation(k_1, hot, frequency, k_2))
        insulation = line.attenuation_constant(k_2 * frequency)
        step = ratings.impedance_ohm / station.impedance_ohm
        conductors_heat = cable_heat.heat_in_metre(total - insulation, wave.current * step)
        insulation_heat = cable_heat.heat_in_metre(insulation, wave.voltage / step)
        outer = cable_heat.screen_rise(
            conductors_heat, insulation_heat, path.to_air, path.jacket, path.surface_time_share
        )
        inner = cable_heat.inner_conductor_rise(
            outer, path.inner_share, conductors_heat, insulation_heat, path.insulation, path.core_time_share
        )
        if is_documented(ratings.documented_power_w):
            powers = ratings.computed_for_it_w, ratings.documented_power_w
            inner, outer = (heat.documented_rise(rise, *powers) for rise in (inner, outer))
    return ConductorRises(inner, outer)


def cable_limit(ratings: CableRatings[Number], path: CablePath, rises: ConductorRises, station: Station) -> HeatLimit:
    """Peak envelope power at which the inner conductor reaches the highest temperature of its cable."""
    return HeatLimit(
        allowed_w=heat.heat_allowed_power(
            ratings.highest_temperature_c,
            station.ambient_temperature_c,
            path.solar_rise_k,
            rises.inner,
            station.duty_factor,
        ),
        allowed_temperature_c=ratings.highest_temperature_c,
        solar_rise_k=path.solar_rise_k,
        rise_k_per_w=rises.inner,
    )


def _time_shares(
    ratings: CableRatings[Number], station: Station, gas: Number, to_air: Number, insulation: Number
) -> tuple[Broadcast, Broadcast]:
    """Shares of the time that count for the cable as a whole and for its core, each with its own time constant."""
    if station.rhythm is None:
        return station.transmit_share, station.transmit_share
    inner = cable_heat.rod_capacity(ratings.inner_heat_capacity, ratings.inner_area_m2)
    filling = cable_heat.layer_capacity(
        cable_heat.foam_capacity(ratings.plastic_heat_capacity, gas),
        ratings.dielectric_diameter_m,
        ratings.inner_diameter_m,
    )
    screen = cable_heat.rod_capacity(ratings.screen_heat_capacity, ratings.screen_area_m2)
    jacket = cable_heat.layer_capacity(
        ratings.jacket_heat_capacity, ratings.outer_diameter_m, ratings.screen_diameter_m
    )
    whole = cable_heat.time_constant(inner + filling + screen + jacket, to_air)
    core = cable_heat.time_constant(inner + filling / 2, insulation)
    return time_share(station, whole), time_share(station, core)
