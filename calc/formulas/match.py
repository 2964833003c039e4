"""Reflection of a joint: a short line section of its own impedance, solved exactly."""

import numpy as np

from .constants import C_0
from .formula import Number, formula
from .symbols import FREQUENCY, LINE_IMPEDANCE, PERMITTIVITY, SECTION_LENGTH

__all__ = [
    "electrical_angle",
    "electrical_length",
    "limit_impedance",
    "match_margin",
    "reflection_of_vswr",
    "return_loss",
    "section_reflection",
    "vswr_limit",
    "vswr_of_reflection",
    "worst_angle",
]

_GAMMA = ("magnitude of the reflection coefficient", "1", 0, 1)
_VSWR = ("voltage standing wave ratio", "1", 1, 20)


@formula(
    title="Reflection from VSWR",
    equation="Gamma = (S - 1)/(S + 1)",
    symbols={"Gamma": _GAMMA, "S": _VSWR},
    validity="S >= 1",
    source="microwave_textbook",
)
def reflection_of_vswr(S: Number) -> Number:
    return (S - 1) / (S + 1)


@formula(
    title="VSWR from reflection",
    equation="S = (1 + Gamma)/(1 - Gamma)",
    symbols={"S": _VSWR, "Gamma": _GAMMA},
    validity="0 <= Gamma < 1",
    holds=lambda Gamma: Gamma < 1,
    source="microwave_textbook",
)
def vswr_of_reflection(Gamma: Number) -> Number:
    return (1 + Gamma) / (1 - Gamma)


@formula(
    title="Return loss",
    equation="RL = -20*log(Max(Gamma, 1e-6), 10)",
    symbols={"RL": ("return loss", "dB"), "Gamma": _GAMMA},
    validity="0 <= Gamma <= 1; shown as 120 dB at most, beyond any measurement",
    source="microwave_textbook",
)
def return_loss(Gamma: Number) -> Number:
    return -20 * np.log10(np.maximum(Gamma, 1e-6))


@formula(
    title="VSWR limit of the mated pair",
    equation="S = S_0 + s*f",
    symbols={
        "S": _VSWR,
        "S_0": ("limit at direct current", "1", 1, 2),
        "s": ("growth of the limit with frequency", "1/Hz", 0, 1e-9),
        "f": FREQUENCY,
    },
    validity="up to the rated frequency of the family",
    source="mil_prf_39012",
)
def vswr_limit(S_0: Number, s: Number, f: Number) -> Number:
    return S_0 + s * f


@formula(
    title="Impedance of the worst section within the VSWR limit",
    equation="Z_c = Piecewise((Z_n*sqrt(S), Z_n >= Z_0), (Z_n/sqrt(S), True))",
    symbols={
        "Z_c": ("impedance of the section", "Ω"),
        "Z_n": ("design impedance of the family", "Ω", 25, 150),
        "S": _VSWR,
        "Z_0": LINE_IMPEDANCE,
    },
    validity="a quarter-wave section of Z_c in a line of Z_n shows just the VSWR S",
    source="derived",
)
def limit_impedance(Z_n: Number, S: Number, Z_0: Number) -> Number:
    return np.where(Z_n >= Z_0, Z_n * np.sqrt(S), Z_n / np.sqrt(S))[()]


@formula(
    title="Electrical length",
    equation="l_e = l*sqrt(epsilon_r)",
    symbols={
        "l_e": ("electrical length of the section", "m"),
        "l": SECTION_LENGTH,
        "epsilon_r": PERMITTIVITY,
    },
    validity="evenly filled section",
    source="microwave_textbook",
)
def electrical_length(l: Number, epsilon_r: Number) -> Number:
    return l * np.sqrt(epsilon_r)


@formula(
    title="Electrical angle of the section",
    equation="theta = 2*pi*f*l_e/c_0",
    symbols={
        "theta": ("electrical angle", "rad"),
        "f": FREQUENCY,
        "l_e": ("electrical length", "m", 1e-4, 0.1),
    },
    validity="any frequency below the TE11 cutoff",
    source="microwave_textbook",
)
def electrical_angle(f: Number, l_e: Number) -> Number:
    return 2 * np.pi * f * l_e / C_0


@formula(
    title="Angle at which the section reflects most",
    equation="theta_w = Min(theta, pi/2)",
    symbols={
        "theta_w": ("worst angle up to the section's own", "rad"),
        "theta": ("electrical angle", "rad", 0, 100),
    },
    validity="above a quarter wave the length is not known well enough to count on a better one",
    source="derived",
)
def worst_angle(theta: Number) -> Number:
    return np.minimum(theta, np.pi / 2)


@formula(
    title="Reflection of a line section between matched lines",
    equation="Gamma = Abs(Z_c/Z_0 - Z_0/Z_c)*sin(theta)/sqrt(4*cos(theta)**2 + (Z_c/Z_0 + Z_0/Z_c)**2*sin(theta)**2)",
    symbols={
        "Gamma": _GAMMA,
        "Z_c": ("impedance of the section", "Ω", 10, 300),
        "Z_0": LINE_IMPEDANCE,
        "theta": ("electrical angle", "rad", 0, np.pi),
    },
    validity="lossless section, 0 <= theta <= pi; exact",
    source="microwave_textbook",
)
def section_reflection(Z_c: Number, Z_0: Number, theta: Number) -> Number:
    ratio = Z_c / Z_0
    sine, cosine = np.sin(theta), np.cos(theta)
    return np.abs(ratio - 1 / ratio) * sine / np.sqrt(4 * cosine**2 + (ratio + 1 / ratio) ** 2 * sine**2)


@formula(
    title="Match margin",
    equation="M = RL - RL_a",
    symbols={
        "M": ("margin", "dB"),
        "RL": ("return loss of the joint alone", "dB", 0, 120),
        "RL_a": ("return loss asked for", "dB", 6, 40),
    },
    validity="both in decibels of reflected power",
    source="derived",
)
def match_margin(RL: Number, RL_a: Number) -> Number:
    return RL - RL_a
