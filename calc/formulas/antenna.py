"""An antenna near its resonance as a resistance and a reactance in series."""

import numpy as np

from .formula import Number, formula
from .symbols import FREQUENCY

__all__ = ["edge_reactance", "quality_factor", "resonant_reactance"]

_R_A = ("resistance of the antenna at resonance", "Ω", 0.1, 5000)
_F_R = ("frequency of resonance", "Hz", 1e5, 5e10)
_Q = ("quality factor of the antenna", "1", 0.1, 1e4)
_X_E = ("size of its reactance at either edge of its bandwidth", "Ω")


@formula(
    title="Reactance at the edge of an antenna's bandwidth",
    equation="X_e = sqrt((Gamma**2*(R_a + Z_0)**2 - (R_a - Z_0)**2)/(1 - Gamma**2))",
    symbols={
        "X_e": _X_E,
        "Gamma": ("reflection coefficient at the edge, magnitude", "1", 0.3, 0.99),
        "R_a": ("resistance of the antenna at resonance", "Ω", 20, 150),
        "Z_0": ("impedance of the line", "Ω", 25, 150),
    },
    validity="reflects more at the edge than at resonance",
    holds=lambda Gamma, R_a, Z_0: Gamma * (R_a + Z_0) > np.abs(R_a - Z_0),
    source="derived",
)
def edge_reactance(Gamma: Number, R_a: Number, Z_0: Number) -> Number:
    return np.sqrt((Gamma**2 * (R_a + Z_0) ** 2 - (R_a - Z_0) ** 2) / (1 - Gamma**2))


@formula(
    title="Quality factor by the bandwidth",
    equation="Q_a = X_e*f_r/(R_a*B)",
    symbols={
        "Q_a": _Q,
        "X_e": (*_X_E, 0.1, 1e4),
        "f_r": _F_R,
        "R_a": _R_A,
        "B": ("bandwidth between both edges", "Hz", 1e3, 1e10),
    },
    validity="a series circuit: its edges lie at frequencies whose product is that of resonance, squared",
    source="microwave_textbook",
)
def quality_factor(X_e: Number, f_r: Number, R_a: Number, B: Number) -> Number:
    return X_e * f_r / (R_a * B)


@formula(
    title="Reactance of an antenna off its resonance",
    equation="X = R_a*Q_a*(f - f_r)*(f + f_r)/(f*f_r)",
    symbols={
        "X": ("reactance", "Ω"),
        "R_a": _R_A,
        "Q_a": _Q,
        "f": FREQUENCY,
        "f_r": _F_R,
    },
    validity="near resonance, where one series circuit stands for the antenna; other bands of it are not known",
    source="microwave_textbook",
)
def resonant_reactance(R_a: Number, Q_a: Number, f: Number, f_r: Number) -> Number:
    return R_a * Q_a * (f - f_r) * (f + f_r) / (f * f_r)
