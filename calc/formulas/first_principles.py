"""Second way to the heat limit: conduction, convection and radiation from the geometry.

Also tells how much of the thermal resistance lies between body and air, and
how much of that is convection, which the altitude correction needs.
"""

import numpy as np

from .constants import SIGMA_SB, ZERO_CELSIUS_K
from .formula import formula

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


@formula(
    title="Conductance from centre contact to body",
    equation="G_i = 2*pi*(k_s*l_s + k_a*(l - l_s))/log(D/d)",
    symbols={
        "G_i": ("radial thermal conductance", "W/K"),
        "k_s": ("thermal conductivity of the supports", "W/(m·K)"),
        "l_s": ("length of the supports", "m"),
        "k_a": ("thermal conductivity of what fills the rest", "W/(m·K)"),
        "l": ("length of the section", "m"),
        "D": ("bore of the outer conductor", "m"),
        "d": ("diameter of the centre conductor", "m"),
    },
    validity="radial conduction only; gaps too small for convection",
    source="incropera",
)
def radial_conductance(k_s, l_s, k_a, l, D, d):
    return 2 * np.pi * (k_s * l_s + k_a * (l - l_s)) / np.log(D / d)


@formula(
    title="Film coefficient of natural convection, horizontal cylinder",
    equation="h_c = 1.32*(dt/D_b)**0.25",
    symbols={
        "h_c": ("film coefficient at sea level", "W/(m²·K)"),
        "dt": ("rise of the body over the air", "K"),
        "D_b": ("diameter of the body", "m"),
    },
    validity="laminar, air near room temperature: 1e4 < Rayleigh number < 1e9",
    source="holman",
)
def convection_coefficient(dt, D_b):
    return 1.32 * (dt / D_b) ** 0.25


@formula(
    title="Film coefficient of radiation",
    equation="h_r = 4*epsilon*sigma_SB*(t_a + 273.15 + dt/2)**3",
    symbols={
        "h_r": ("film coefficient of radiation", "W/(m²·K)"),
        "epsilon": ("emissivity of the body", "1"),
        "t_a": ("air temperature", "°C"),
        "dt": ("rise of the body over the air", "K"),
    },
    validity="small body in large surroundings at air temperature; dt well below absolute temperature",
    source="incropera",
)
def radiation_coefficient(epsilon, t_a, dt):
    return 4 * epsilon * SIGMA_SB * (t_a + ZERO_CELSIUS_K + dt / 2) ** 3


@formula(
    title="Conductance along the two cables",
    equation="G_f = 2*sqrt(h*pi*D_c*k_m*A_c)",
    symbols={
        "G_f": ("conductance by both cables as long fins", "W/K"),
        "h": ("film coefficient at the cable", "W/(m²·K)"),
        "D_c": ("outer diameter of the cable", "m"),
        "k_m": ("thermal conductivity of the conductors", "W/(m·K)"),
        "A_c": ("cross-section of the conductors", "m²"),
    },
    validity="cables long against the fin length, no heat of their own",
    source="incropera",
)
def cable_conductance(h, D_c, k_m, A_c):
    return 2 * np.sqrt(h * np.pi * D_c * k_m * A_c)


@formula(
    title="Conductance from body to air",
    equation="G_b = (h_c + h_r)*pi*D_b*l_b + G_f",
    symbols={
        "G_b": ("thermal conductance from body to air", "W/K"),
        "h_c": ("film coefficient of convection", "W/(m²·K)"),
        "h_r": ("film coefficient of radiation", "W/(m²·K)"),
        "D_b": ("diameter of the body", "m"),
        "l_b": ("length of the body", "m"),
        "G_f": ("conductance by the cables", "W/K"),
    },
    validity="body at one temperature",
    source="incropera",
)
def body_conductance(h_c, h_r, D_b, l_b, G_f):
    return (h_c + h_r) * np.pi * D_b * l_b + G_f


@formula(
    title="Thermal resistance by first principles",
    equation="R_e = 1/G_i + 1/G_b",
    symbols={
        "R_e": ("thermal resistance from centre contact to air", "K/W"),
        "G_i": ("conductance from centre contact to body", "W/K"),
        "G_b": ("conductance from body to air", "W/K"),
    },
    validity="an estimate within a factor of about three; never decides a margin",
    source="derived",
)
def estimated_resistance(G_i, G_b):
    return 1 / G_i + 1 / G_b


@formula(
    title="Share of the thermal resistance between body and air",
    equation="b = (1/G_b)/(1/G_i + 1/G_b)",
    symbols={
        "b": ("share between body and air", "1"),
        "G_i": ("conductance from centre contact to body", "W/K"),
        "G_b": ("conductance from body to air", "W/K"),
    },
    validity="as for the estimate it comes from",
    source="derived",
)
def body_share(G_i, G_b):
    return (1 / G_b) / (1 / G_i + 1 / G_b)


@formula(
    title="Convective share of the body's heat shedding",
    equation="k = 1 - h_r*pi*D_b*l_b/G_b",
    symbols={
        "k": ("convective share", "1"),
        "h_r": ("film coefficient of radiation", "W/(m²·K)"),
        "D_b": ("diameter of the body", "m"),
        "l_b": ("length of the body", "m"),
        "G_b": ("conductance from body to air", "W/K"),
    },
    validity="the cables' shedding is counted as convection, the conservative way",
    source="derived",
)
def convective_share(h_r, D_b, l_b, G_b):
    return 1 - h_r * np.pi * D_b * l_b / G_b
