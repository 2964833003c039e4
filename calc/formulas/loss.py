"""What share of the power a mated pair turns into heat, by cause, and the loss in decibels."""

import numpy as np

from .constants import C_0
from .formula import Number, formula
from .symbols import FREQUENCY, LINE_IMPEDANCE, SMALL

__all__ = [
    "conductor_share",
    "contact_share",
    "dielectric_share",
    "dissipated_share",
    "dissipative_loss",
    "mismatch_loss",
]


_SHARE = "share of the power of a matched wave"


@formula(
    title="Share lost in the conductors",
    equation="a_c = R_m*l/Z_0",
    symbols={
        "a_c": (f"{_SHARE} lost to skin effect", "1"),
        "R_m": ("series resistance per metre", "Ω/m", 1e-4, 1000),
        "l": ("length of the mated section", "m", 1e-4, 0.1),
        "Z_0": LINE_IMPEDANCE,
    },
    validity="section much shorter than a wavelength of loss: a_c << 1",
    holds=lambda R_m, l, Z_0: R_m * l < SMALL * Z_0,
    source="microwave_textbook",
)
def conductor_share(R_m: Number, l: Number, Z_0: Number) -> Number:
    return R_m * l / Z_0


@formula(
    title="Share lost in the dielectric",
    equation="a_d = 2*pi*f*sqrt(epsilon_r)*tan_delta*l/c_0",
    symbols={
        "a_d": (f"{_SHARE} lost in the insulation", "1"),
        "f": FREQUENCY,
        "epsilon_r": ("relative permittivity of the supports", "1", 1, 10),
        "tan_delta": ("loss tangent of the supports", "1", 0, 0.1),
        "l": ("length of the solid supports", "m", 1e-4, 0.1),
    },
    validity="a_d << 1; matched wave",
    holds=lambda f, epsilon_r, tan_delta, l: 2 * np.pi * f * np.sqrt(epsilon_r) * tan_delta * l < SMALL * C_0,
    source="microwave_textbook",
)
def dielectric_share(f: Number, epsilon_r: Number, tan_delta: Number, l: Number) -> Number:
    return 2 * np.pi * f * np.sqrt(epsilon_r) * tan_delta * l / C_0


@formula(
    title="Share lost in the contacts",
    equation="a_k = (R_i + R_o + R_a)/Z_0",
    symbols={
        "a_k": (f"{_SHARE} lost in the contacts", "1"),
        "R_i": ("centre-contact resistance", "Ω", 0, 0.1),
        "R_o": ("outer-contact resistance", "Ω", 0, 0.1),
        "R_a": ("resistance added by wear, corrosion or your measurement", "Ω", 0, 6),
        "Z_0": LINE_IMPEDANCE,
    },
    validity="a_k << 1; resistances as measured at direct current",
    holds=lambda R_i, R_o, R_a, Z_0: R_i + R_o + R_a < SMALL * Z_0,
    source="derived",
)
def contact_share(R_i: Number, R_o: Number, R_a: Number, Z_0: Number) -> Number:
    return (R_i + R_o + R_a) / Z_0


@formula(
    title="Share of the power turned into heat",
    equation="a = Min(a_c + a_d + a_k, 0.99)",
    symbols={
        "a": (f"{_SHARE} turned into heat", "1"),
        "a_c": ("lost in the conductors", "1", 0, 3),
        "a_d": ("lost in the dielectric", "1", 0, 3),
        "a_k": ("lost in the contacts", "1", 0, 3),
    },
    validity="short joint; a sum above 0.99 is no working joint and is held there",
    source="derived",
)
def dissipated_share(a_c: Number, a_d: Number, a_k: Number) -> Number:
    return np.minimum(a_c + a_d + a_k, 0.99)


@formula(
    title="Dissipative insertion loss",
    equation="L_d = -10*log(1 - a, 10)",
    symbols={"L_d": ("dissipative loss", "dB"), "a": ("share turned into heat", "1", 0, 0.99)},
    validity="0 <= a < 1",
    source="derived",
)
def dissipative_loss(a: Number) -> Number:
    return -10 * np.log1p(-a) / np.log(10)


@formula(
    title="Mismatch loss of the joint",
    equation="L_m = -10*log(1 - Gamma**2, 10)",
    symbols={"L_m": ("mismatch loss", "dB"), "Gamma": ("reflection of the joint alone", "1", 0, 0.999)},
    validity="0 <= Gamma < 1; matched on both sides",
    source="microwave_textbook",
)
def mismatch_loss(Gamma: Number) -> Number:
    return -10 * np.log1p(-(Gamma**2)) / np.log(10)
