"""Skin effect and the conductor resistance of a coaxial section."""

import numpy as np

from .constants import MU_0
from .formula import Number, formula
from .symbols import BORE, CENTRE_DIAMETER, FREQUENCY

__all__ = ["conductor_resistance", "skin_depth", "surface_resistance"]

_METAL = {
    "f": FREQUENCY,
    "sigma": ("conductivity", "S/m", 1e5, 1e8),
    "mu_r": ("relative permeability", "1", 1, 1000),
}


@formula(
    title="Skin depth",
    equation="delta_s = 1/sqrt(pi*f*mu_0*mu_r*sigma)",
    symbols={"delta_s": ("skin depth", "m"), **_METAL},
    validity="good conductor, sigma much above omega epsilon",
    source="microwave_textbook",
)
def skin_depth(f: Number, sigma: Number, mu_r: Number) -> Number:
    return 1 / np.sqrt(np.pi * f * MU_0 * mu_r * sigma)


@formula(
    title="Surface resistance",
    equation="R_s = sqrt(pi*f*mu_0*mu_r/sigma)",
    symbols={"R_s": ("surface resistance", "Ω"), **_METAL},
    validity="metal thicker than about three skin depths; smooth surface",
    source="microwave_textbook",
)
def surface_resistance(f: Number, sigma: Number, mu_r: Number) -> Number:
    return np.sqrt(np.pi * f * MU_0 * mu_r / sigma)


@formula(
    title="Resistance of a coaxial section per metre",
    equation="R_m = R_si/(pi*d) + R_so/(pi*D)",
    symbols={
        "R_m": ("series resistance per metre", "Ω/m"),
        "R_si": ("surface resistance of the centre conductor", "Ω", 1e-6, 10),
        "R_so": ("surface resistance of the outer conductor", "Ω", 1e-6, 10),
        "d": CENTRE_DIAMETER,
        "D": BORE,
    },
    validity="skin depth well below both radii",
    source="microwave_textbook",
)
def conductor_resistance(R_si: Number, R_so: Number, d: Number, D: Number) -> Number:
    return R_si / (np.pi * d) + R_so / (np.pi * D)
