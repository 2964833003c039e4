"""Physical constants, frozen so that the core has the same digits wherever it runs.

CODATA 2018 and the ICAO standard atmosphere (Doc 7488/3), as printed there, and
the 290 K that noise factors are referred to. The Lorenz number is that of free electrons, pi**2/3*(k/e)**2.
"""

from typing import NamedTuple

__all__ = ["CONSTANTS", "C_0", "EPSILON_0", "ETA_0", "L_0", "MU_0", "SIGMA_SB", "T_0", "ZERO_CELSIUS_K", "Constant"]


class Constant(NamedTuple):
    """A constant as it appears in a declared equation."""

    value: float
    unit: str
    meaning: str


C_0 = 299_792_458.0  # m/s, exact
MU_0 = 1.25663706212e-6  # H/m
EPSILON_0 = 8.8541878128e-12  # F/m
ETA_0 = 376.730313668  # Ω
SIGMA_SB = 5.670374419e-8  # W/(m²·K⁴)
ZERO_CELSIUS_K = 273.15  # K, exact
T_0 = 290.0  # K, by definition
L_0 = 2.443004509e-8  # V²/K², from CODATA's k and e

CONSTANTS = {
    "c_0": Constant(C_0, "m/s", "speed of light in vacuum"),
    "mu_0": Constant(MU_0, "H/m", "magnetic constant"),
    "epsilon_0": Constant(EPSILON_0, "F/m", "electric constant"),
    "eta_0": Constant(ETA_0, "Ω", "impedance of free space"),
    "sigma_SB": Constant(SIGMA_SB, "W/(m²·K⁴)", "Stefan-Boltzmann constant"),
    "L_0": Constant(L_0, "V²/K²", "Lorenz number"),
    "T_0": Constant(T_0, "K", "reference temperature of noise"),
}
