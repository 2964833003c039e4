"""Impedance of a coaxial section and the frequency where its second wave begins (TE11)."""

import numpy as np

from .constants import C_0, ETA_0
from .formula import Number, formula
from .symbols import BORE, CENTRE_DIAMETER, PERMITTIVITY, bore_clears

__all__ = ["characteristic_impedance", "te11_condition", "te11_cutoff", "te11_root", "te11_rule"]


@formula(
    title="Characteristic impedance of a coaxial section",
    equation="Z_c = eta_0*log(D/d)/(2*pi*sqrt(epsilon_r))",
    symbols={"Z_c": ("characteristic impedance", "Ω"), "D": BORE, "d": CENTRE_DIAMETER, "epsilon_r": PERMITTIVITY},
    validity="D > d; lossless limit",
    holds=bore_clears,
    source="microwave_textbook",
)
def characteristic_impedance(D: Number, d: Number, epsilon_r: Number) -> Number:
    return ETA_0 * np.log(D / d) / (2 * np.pi * np.sqrt(epsilon_r))


@formula(
    title="TE11 condition of a coaxial section (zero at cutoff)",
    equation="e = (besselj(0,x)-besselj(1,x)/x)*(bessely(0,x*q)-bessely(1,x*q)/(x*q))"
    " - (besselj(0,x*q)-besselj(1,x*q)/(x*q))*(bessely(0,x)-bessely(1,x)/x)",
    symbols={
        "e": ("mismatch of the boundary condition", "1"),
        "x": ("cutoff wave number times the centre conductor's radius", "1", 0.05, 2),
        "q": ("bore over centre-conductor diameter, D/d", "1", 1.05, 12),
    },
    validity="0 < x*q < 6 (the series used for the Bessel functions), q > 1",
    holds=lambda x, q: x * q < 6,
    source="microwave_textbook",
)
def te11_condition(x: Number, q: Number) -> Number:
    return _j1_slope(x) * _y1_slope(x * q) - _j1_slope(x * q) * _y1_slope(x)


@formula(
    title="TE11 cutoff frequency",
    equation="f_c = c_0*x/(pi*d*sqrt(epsilon_r))",
    symbols={
        "f_c": ("cutoff frequency of the first higher wave", "Hz"),
        "x": ("first root of the TE11 condition", "1", 0.05, 2),
        "d": CENTRE_DIAMETER,
        "epsilon_r": PERMITTIVITY,
    },
    validity="uniform section, filled evenly",
    source="microwave_textbook",
)
def te11_cutoff(x: Number, d: Number, epsilon_r: Number) -> Number:
    return C_0 * x / (np.pi * d * np.sqrt(epsilon_r))


@formula(
    title="TE11 cutoff by the average circumference",
    equation="f_a = 2*c_0/(pi*(D+d)*sqrt(epsilon_r))",
    symbols={"f_a": ("approximate cutoff frequency", "Hz"), "D": BORE, "d": CENTRE_DIAMETER, "epsilon_r": PERMITTIVITY},
    validity="rule of thumb; 2 to 3 % low at 50 Ω",
    holds=bore_clears,
    source="microwave_textbook",
)
def te11_rule(D: Number, d: Number, epsilon_r: Number) -> Number:
    return 2 * C_0 / (np.pi * (D + d) * np.sqrt(epsilon_r))


def te11_root(q: Number) -> np.ndarray:
    """First root x of `te11_condition` for the diameter ratio q = D/d [1], 1.05 <= q <= 12.

    Secant steps from the average-circumference rule 2/(1+q), which lies close
    enough over that range. Scalars or numpy arrays.
    """
    rule = 2 / (1 + np.asarray(q, dtype=np.float64))
    before, x = rule, 1.01 * rule
    value_before, value = te11_condition(before, q), te11_condition(x, q)
    for _ in range(SECANT_STEPS):
        rise = value - value_before
        step = np.where(rise == 0, 0.0, value * (x - before) / np.where(rise == 0, 1.0, rise))
        before, value_before = x, value
        x = x - step
        value = te11_condition(x, q)
    return x


SECANT_STEPS = 7  # two more than the slowest ratio needs to converge


_TERMS = np.arange(30)
_FACTORIAL = np.array([float(np.prod(np.arange(1.0, k + 1))) for k in range(32)])
_HARMONIC = np.array([sum(1 / n for n in range(1, k + 1)) for k in range(32)])
_EULER_GAMMA = 0.5772156649015329


def _j(order: int, x: Number) -> Number:
    """Bessel function of the first kind by its ascending series (DLMF 10.2.2), 0 < x < 6."""
    terms = _powers(x, order) * (-1.0) ** _TERMS / (_FACTORIAL[_TERMS] * _FACTORIAL[_TERMS + order])
    return terms.sum(axis=-1)


def _j1_slope(x: Number) -> Number:
    return _j(0, x) - _j(1, x) / x


def _y1_slope(x: Number) -> Number:
    return _y0(x) - _y1(x) / x


def _y0(x: Number) -> Number:
    """Second kind, order 0, by its ascending series (DLMF 10.8.2)."""
    terms = _powers(x, 0) * (-1.0) ** (_TERMS + 1) * _HARMONIC[_TERMS] / _FACTORIAL[_TERMS] ** 2
    return 2 / np.pi * ((np.log(x / 2) + _EULER_GAMMA) * _j(0, x) + terms.sum(axis=-1))


def _y1(x: Number) -> Number:
    """Second kind, order 1, by its ascending series (DLMF 10.8.1)."""
    digamma = _HARMONIC[_TERMS] + _HARMONIC[_TERMS + 1] - 2 * _EULER_GAMMA
    series = _powers(x, 1) * (-1.0) ** _TERMS * digamma
    series = (series / (_FACTORIAL[_TERMS] * _FACTORIAL[_TERMS + 1])).sum(axis=-1)
    return -2 / (np.pi * x) + 2 / np.pi * np.log(x / 2) * _j(1, x) - series / np.pi


def _powers(x: Number, order: int) -> np.ndarray:
    return (np.asarray(x, dtype=np.float64)[..., None] / 2) ** (2 * _TERMS + order)
