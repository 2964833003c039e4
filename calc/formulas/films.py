"""The film of air on a body or a cable: natural convection by the handbook's law, and radiation."""

import numpy as np

from .constants import SIGMA_SB, ZERO_CELSIUS_K
from .formula import Number, formula

__all__ = [
    "air_conductivity",
    "convection_coefficient",
    "film_temperature",
    "kinematic_viscosity",
    "radiation_coefficient",
    "rayleigh_number",
    "solar_rise",
    "surface_resistance_to_air",
    "surface_rise",
]

_RISE = ("rise of the surface over the air", "K", 0.1, 400)
_DIAMETER = ("diameter of the cylinder", "m", 5e-4, 0.2)
_FILM_T = ("temperature of the film", "°C", -60, 300)
_CONVECTION = ("film coefficient of convection", "W/(m²·K)", 0.1, 200)
_RADIATION = ("film coefficient of radiation", "W/(m²·K)", 0.01, 100)
_VISCOSITY = ("kinematic viscosity of the air", "m²/s", 1e-6, 1e-2)
_CONDUCTIVITY = ("thermal conductivity of the air", "W/(m·K)", 0.01, 0.1)
_RAYLEIGH = ("Rayleigh number", "1", 1e-6, 1e12)


@formula(
    title="Rise of the surface at which its film is reckoned",
    equation="dt = s_r*Max(t_max - t_a, 1)",
    symbols={
        "dt": _RISE,
        "s_r": ("share of the rise allowed that is the surface's", "1", 0.1, 1),
        "t_max": ("allowed temperature", "°C", 20, 500),
        "t_a": ("air temperature", "°C", -60, 80),
    },
    validity="a film grows slowly with its rise, so one rise serves every power; 1 K where none is allowed",
    source="derived",
)
def surface_rise(s_r: Number, t_max: Number, t_a: Number) -> Number:
    return s_r * np.maximum(t_max - t_a, 1)


@formula(
    title="Temperature of the film",
    equation="t_f = t_a + dt/2",
    symbols={"t_f": _FILM_T, "t_a": ("air temperature", "°C", -60, 80), "dt": _RISE},
    validity="mean of surface and air, as the law of convection has it",
    source="churchill_chu_1975",
)
def film_temperature(t_a: Number, dt: Number) -> Number:
    return t_a + dt / 2


@formula(
    title="Thermal conductivity of air",
    equation="k_a = 2.64638e-3*(t_f + 273.15)**1.5/(t_f + 273.15 + 245.4*10**(-12/(t_f + 273.15)))",
    symbols={"k_a": _CONDUCTIVITY, "t_f": _FILM_T},
    validity="dry air at any pressure on the ground",
    source="air_properties",
)
def air_conductivity(t_f: Number) -> Number:
    kelvin = t_f + ZERO_CELSIUS_K
    return 2.64638e-3 * kelvin**1.5 / (kelvin + 245.4 * 10 ** (-12 / kelvin))


@formula(
    title="Kinematic viscosity of air",
    equation="nu = 1.458e-6*(t_f + 273.15)**1.5/(t_f + 383.55)*287.05287*(t_f + 273.15)/(101325*p_r)",
    symbols={"nu": _VISCOSITY, "t_f": _FILM_T, "p_r": ("pressure over the pressure at sea level", "1", 0.01, 1.1)},
    validity="dry air as an ideal gas, viscosity by Sutherland's law",
    source="air_properties",
)
def kinematic_viscosity(t_f: Number, p_r: Number) -> Number:
    kelvin = t_f + ZERO_CELSIUS_K
    return 1.458e-6 * kelvin**1.5 / (t_f + 383.55) * 287.05287 * kelvin / (101325 * p_r)


@formula(
    title="Rayleigh number of a cylinder in air",
    equation="Ra = 0.70*9.80665*dt*D_s**3/((t_f + 273.15)*nu**2)",
    symbols={"Ra": _RAYLEIGH, "dt": _RISE, "D_s": _DIAMETER, "t_f": _FILM_T, "nu": _VISCOSITY},
    validity="Prandtl number of air 0.70; air expands as an ideal gas",
    source="churchill_chu_1975",
)
def rayleigh_number(dt: Number, D_s: Number, t_f: Number, nu: Number) -> Number:
    return 0.70 * 9.80665 * dt * D_s**3 / ((t_f + ZERO_CELSIUS_K) * nu**2)


@formula(
    title="Film coefficient of natural convection, horizontal cylinder",
    equation="h_c = s_f*k_a/D_s*(0.60 + 0.387*Ra**(1/6)/(1 + (0.559/0.70)**(9/16))**(8/27))**2",
    symbols={
        "h_c": _CONVECTION,
        "s_f": ("share of the law counted on", "1", 0.5, 1.5),
        "k_a": _CONDUCTIVITY,
        "D_s": _DIAMETER,
        "Ra": _RAYLEIGH,
    },
    validity="long horizontal cylinder in still air, Rayleigh number up to 1e12; Prandtl number of air 0.70",
    source="churchill_chu_1975",
)
def convection_coefficient(s_f: Number, k_a: Number, D_s: Number, Ra: Number) -> Number:
    return s_f * k_a / D_s * (0.60 + 0.387 * Ra ** (1 / 6) / (1 + (0.559 / 0.70) ** (9 / 16)) ** (8 / 27)) ** 2


@formula(
    title="Film coefficient of radiation",
    equation="h_r = 4*epsilon*sigma_SB*(t_a + 273.15 + dt/2)**3",
    symbols={
        "h_r": _RADIATION,
        "epsilon": ("emissivity of the surface", "1", 0.01, 1),
        "t_a": ("air temperature", "°C", -60, 80),
        "dt": _RISE,
    },
    validity="small body in large surroundings at air temperature; rise well below the absolute temperature",
    source="incropera",
)
def radiation_coefficient(epsilon: Number, t_a: Number, dt: Number) -> Number:
    return 4 * epsilon * SIGMA_SB * (t_a + ZERO_CELSIUS_K + dt / 2) ** 3


@formula(
    title="Thermal resistance between a metre of surface and the air",
    equation="R_a = 1/((h_c + h_r)*pi*D_s)",
    symbols={
        "R_a": ("thermal resistance of a metre", "K·m/W"),
        "h_c": _CONVECTION,
        "h_r": _RADIATION,
        "D_s": _DIAMETER,
    },
    validity="cylinder free in still air",
    source="incropera",
)
def surface_resistance_to_air(h_c: Number, h_r: Number, D_s: Number) -> Number:
    return 1 / ((h_c + h_r) * np.pi * D_s)


@formula(
    title="Rise of a surface in the sun",
    equation="dt_s = E*alpha*D_s*R_a",
    symbols={
        "dt_s": ("temperature rise by the sun", "K"),
        "E": ("irradiance", "W/m²", 0, 1400),
        "alpha": ("absorptance of the surface", "1", 0.01, 1),
        "D_s": _DIAMETER,
        "R_a": ("thermal resistance between a metre of it and the air", "K·m/W", 0.05, 500),
    },
    validity="sun square on the side of the cylinder, no wind",
    source="derived",
)
def solar_rise(E: Number, alpha: Number, D_s: Number, R_a: Number) -> Number:
    return E * alpha * D_s * R_a
