"""The heat limit by first principles: conduction, convection and radiation from the geometry.

Also how much of the thermal resistance lies between body and air, and how much
of that is convection, which the altitude correction needs.
"""

import numpy as np

from .constants import SIGMA_SB, ZERO_CELSIUS_K
from .formula import Number, formula
from .symbols import BORE, CENTRE_DIAMETER, SECTION_LENGTH, bore_clears

__all__ = [
    "body_conductance",
    "body_share",
    "cable_conductance",
    "convection_coefficient",
    "convective_share",
    "estimated_resistance",
    "radial_conductance",
    "radiation_coefficient",
]

_RISE = ("rise of the body over the air", "K", 0.1, 100)
_BODY_DIAMETER = ("diameter of the body", "m", 1e-3, 0.1)
_BODY_LENGTH = ("length of the body", "m", 1e-4, 0.1)
_RADIATION = ("film coefficient of radiation", "W/(m²·K)", 0.1, 100)
_INNER_CONDUCTANCE = ("conductance from centre contact to body", "W/K", 1e-3, 10)
_BODY_CONDUCTANCE = ("conductance from body to air", "W/K", 1e-3, 10)


@formula(
    title="Conductance from centre contact to body",
    equation="G_i = 2*pi*(k_s*l_s + k_a*(l - l_s))/log(D/d)",
    symbols={
        "G_i": ("radial thermal conductance", "W/K"),
        "k_s": ("thermal conductivity of the supports", "W/(m·K)", 0.01, 10),
        "l_s": ("length of the supports", "m", 1e-4, 0.1),
        "k_a": ("thermal conductivity of what fills the rest", "W/(m·K)", 0.01, 10),
        "l": SECTION_LENGTH,
        "D": BORE,
        "d": CENTRE_DIAMETER,
    },
    validity="radial conduction only; gaps too small for convection",
    holds=lambda l_s, l, D, d: l_s <= l and bore_clears(D, d),
    source="incropera",
)
def radial_conductance(k_s: Number, l_s: Number, k_a: Number, l: Number, D: Number, d: Number) -> Number:
    return 2 * np.pi * (k_s * l_s + k_a * (l - l_s)) / np.log(D / d)


@formula(
    title="Film coefficient of natural convection, horizontal cylinder",
    equation="h_c = 1.32*(dt/D_b)**0.25",
    symbols={
        "h_c": ("film coefficient at sea level", "W/(m²·K)"),
        "dt": _RISE,
        "D_b": _BODY_DIAMETER,
    },
    validity="laminar, air near room temperature: 1e4 < Rayleigh number < 1e9",
    source="holman",
)
def convection_coefficient(dt: Number, D_b: Number) -> Number:
    return 1.32 * (dt / D_b) ** 0.25


@formula(
    title="Film coefficient of radiation",
    equation="h_r = 4*epsilon*sigma_SB*(t_a + 273.15 + dt/2)**3",
    symbols={
        "h_r": _RADIATION,
        "epsilon": ("emissivity of the body", "1", 0.01, 1),
        "t_a": ("air temperature", "°C", -60, 80),
        "dt": _RISE,
    },
    validity="small body in large surroundings at air temperature; dt well below absolute temperature",
    source="incropera",
)
def radiation_coefficient(epsilon: Number, t_a: Number, dt: Number) -> Number:
    return 4 * epsilon * SIGMA_SB * (t_a + ZERO_CELSIUS_K + dt / 2) ** 3


@formula(
    title="Conductance along the two cables",
    equation="G_f = 2*sqrt(h*pi*D_c*k_m*A_c)",
    symbols={
        "G_f": ("conductance by both cables as long fins", "W/K"),
        "h": ("film coefficient at the cable", "W/(m²·K)", 0.1, 100),
        "D_c": ("outer diameter of the cable", "m", 1e-3, 0.05),
        "k_m": ("thermal conductivity of the conductors", "W/(m·K)", 1, 500),
        "A_c": ("cross-section of the conductors", "m²", 1e-8, 1e-3),
    },
    validity="cables long against the fin length, no heat of their own",
    source="incropera",
)
def cable_conductance(h: Number, D_c: Number, k_m: Number, A_c: Number) -> Number:
    return 2 * np.sqrt(h * np.pi * D_c * k_m * A_c)


@formula(
    title="Conductance from body to air",
    equation="G_b = (h_c + h_r)*pi*D_b*l_b + G_f",
    symbols={
        "G_b": ("thermal conductance from body to air", "W/K"),
        "h_c": ("film coefficient of convection", "W/(m²·K)", 0.1, 100),
        "h_r": _RADIATION,
        "D_b": _BODY_DIAMETER,
        "l_b": _BODY_LENGTH,
        "G_f": ("conductance by the cables", "W/K", 0, 10),
    },
    validity="body at one temperature",
    source="incropera",
)
def body_conductance(h_c: Number, h_r: Number, D_b: Number, l_b: Number, G_f: Number) -> Number:
    return (h_c + h_r) * np.pi * D_b * l_b + G_f


@formula(
    title="Thermal resistance by first principles",
    equation="R_e = 1/G_i + 1/G_b",
    symbols={
        "R_e": ("thermal resistance from centre contact to air", "K/W"),
        "G_i": _INNER_CONDUCTANCE,
        "G_b": _BODY_CONDUCTANCE,
    },
    validity="an estimate within a factor of about three; never decides a margin",
    source="derived",
)
def estimated_resistance(G_i: Number, G_b: Number) -> Number:
    return 1 / G_i + 1 / G_b


@formula(
    title="Share of the thermal resistance between body and air",
    equation="b = (1/G_b)/(1/G_i + 1/G_b)",
    symbols={
        "b": ("share between body and air", "1"),
        "G_i": _INNER_CONDUCTANCE,
        "G_b": _BODY_CONDUCTANCE,
    },
    validity="as for the estimate it comes from",
    source="derived",
)
def body_share(G_i: Number, G_b: Number) -> Number:
    return (1 / G_b) / (1 / G_i + 1 / G_b)


@formula(
    title="Convective share of the body's heat shedding",
    equation="k = 1 - h_r*pi*D_b*l_b/G_b",
    symbols={
        "k": ("convective share", "1"),
        "h_r": _RADIATION,
        "D_b": _BODY_DIAMETER,
        "l_b": _BODY_LENGTH,
        "G_b": _BODY_CONDUCTANCE,
    },
    validity="the cables' shedding is counted as convection, the conservative way",
    holds=lambda h_r, D_b, l_b, G_b: h_r * np.pi * D_b * l_b < 0.99 * G_b,
    source="derived",
)
def convective_share(h_r: Number, D_b: Number, l_b: Number, G_b: Number) -> Number:
    return 1 - h_r * np.pi * D_b * l_b / G_b
