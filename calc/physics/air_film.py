"""The film of air around a cylinder at the station."""

from typing import NamedTuple

from ..formulas import air, films
from ..formulas.formula import Broadcast, Number
from .station import Station

__all__ = ["AirFilm", "Surface", "air_film"]


class Surface(NamedTuple):
    """What a film depends on."""

    diameter_m: Number
    emissivity: Number
    absorptance: Number
    film_share: Number
    """Share of the law of convection counted on [1]."""
    rise_share: Number
    """Share of the rise allowed that is the surface's [1]."""


class AirFilm(NamedTuple):
    """Between a metre of a cylinder and the air."""

    resistance_k_m_per_w: Broadcast
    solar_rise_k: Broadcast


def air_film(surface: Surface, allowed_temperature_c: Number, station: Station) -> AirFilm:
    """The film by the rise that the limit leaves to the surface, at the station's altitude and in its sun."""
    air_c = station.ambient_temperature_c
    rise = films.surface_rise(surface.rise_share, allowed_temperature_c, air_c)
    film_c = films.film_temperature(air_c, rise)
    pressure = air.pressure_ratio(air.geopotential_altitude(station.altitude_m))
    viscosity = films.kinematic_viscosity(film_c, pressure)
    rayleigh = films.rayleigh_number(rise, surface.diameter_m, film_c, viscosity)
    convection = films.convection_coefficient(
        surface.film_share, films.air_conductivity(film_c), surface.diameter_m, rayleigh
    )
    radiation = films.radiation_coefficient(surface.emissivity, air_c, rise)
    resistance = films.surface_resistance_to_air(convection, radiation, surface.diameter_m)
    if station.irradiance_w_per_m2 == 0:
        return AirFilm(resistance, 0.0)
    sun = films.solar_rise(station.irradiance_w_per_m2, surface.absorptance, surface.diameter_m, resistance)
    return AirFilm(resistance, sun)
