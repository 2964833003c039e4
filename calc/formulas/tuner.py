"""Coils and capacitors of a tuner, what its setting allows, and the trade's estimates of its loss and voltage."""

import numpy as np

from .formula import Number, formula
from .symbols import FREQUENCY

__all__ = [
    "capacitive_reactance",
    "component_resistance",
    "current_allowed_power",
    "inductive_reactance",
    "l_match_loss",
    "l_match_quality",
    "tee_capacitor_voltage",
    "tee_loss",
    "tuner_voltage_allowed_power",
]

_X = ("reactance, magnitude", "Ω", 1e-3, 1e6)
_Q = ("quality of the coil", "1", 5, 1e4)
_C = ("capacitance", "F", 1e-13, 1e-7)
_S = ("SWR of a resistive load below the line's impedance", "1", 1.01, 50)


@formula(
    title="Reactance of a coil",
    equation="X = 2*pi*f*L",
    symbols={"X": _X, "f": FREQUENCY, "L": ("inductance", "H", 1e-10, 1e-3)},
    validity="well below the coil's own resonance",
    source="microwave_textbook",
)
def inductive_reactance(f: Number, L: Number) -> Number:
    return 2 * np.pi * f * L


@formula(
    title="Reactance of a capacitor",
    equation="X = 1/(2*pi*f*C)",
    symbols={"X": _X, "f": FREQUENCY, "C": _C},
    validity="well below the capacitor's own resonance",
    source="microwave_textbook",
)
def capacitive_reactance(f: Number, C: Number) -> Number:
    return 1 / (2 * np.pi * f * C)


@formula(
    title="Series resistance of a coil or capacitor",
    equation="R_s = X/Q",
    symbols={"R_s": ("series resistance", "Ω"), "X": _X, "Q": ("quality of the coil or capacitor", "1", 5, 1e5)},
    validity="the definition of Q, at the frequency it is given for",
    source="microwave_textbook",
)
def component_resistance(X: Number, Q: Number) -> Number:
    return X / Q


@formula(
    title="Power allowed by a capacitor's voltage",
    equation="P_v = V_a**2/(2*Z_0*h_v)",
    symbols={
        "P_v": ("peak envelope power allowed by voltage", "W"),
        "V_a": ("peak voltage the capacitor stands", "V", 1, 1e6),
        "Z_0": ("impedance the tuner matches to", "Ω", 25, 150),
        "h_v": ("square of the voltage over that of the matched wave", "1", 1e-9, 1e9),
    },
    validity="voltage grows with the square root of power",
    source="derived",
)
def tuner_voltage_allowed_power(V_a: Number, Z_0: Number, h_v: Number) -> Number:
    return V_a**2 / (2 * Z_0 * h_v)


@formula(
    title="Power allowed by a coil's current",
    equation="P_i = I_a**2*Z_0/(h_i*d*u)",
    symbols={
        "P_i": ("peak envelope power allowed by current", "W"),
        "I_a": ("current the coil carries for good, rms", "A", 1e-3, 1e4),
        "Z_0": ("impedance the tuner matches to", "Ω", 25, 150),
        "h_i": ("square of the current over that of the matched wave", "1", 1e-9, 1e9),
        "d": ("duty factor of the mode", "1", 0.05, 1),
        "u": ("share of the time on transmit", "1", 0.01, 1),
    },
    validity="heat of the coil goes with the mean square of its current",
    source="derived",
)
def current_allowed_power(I_a: Number, Z_0: Number, h_i: Number, d: Number, u: Number) -> Number:
    return I_a**2 * Z_0 / (h_i * d * u)


@formula(
    title="Quality an L network needs",
    equation="Q_n = sqrt(R/r - 1)",
    symbols={
        "Q_n": ("reactance over resistance in the low arm", "1"),
        "R": ("higher resistance", "Ω", 1, 1e5),
        "r": ("lower resistance", "Ω", 0.1, 1e4),
    },
    validity="two resistances, lossless arms: the reactances are Q_n*r in series and R/Q_n across; exact",
    holds=lambda R, r: 1.01 * r < R,
    source="amateur_handbook_l_match",
)
def l_match_quality(R: Number, r: Number) -> Number:
    return np.sqrt(R / r - 1)


@formula(
    title="Loss of an L network, estimate",
    equation="L_t = 4.343*sqrt(s - 1)/Q",
    symbols={"L_t": ("loss in the coil", "dB"), "s": _S, "Q": _Q},
    validity="small loss, lossless capacitor, resistive load below the line's impedance",
    source="tee_network_losses_1997",
)
def l_match_loss(s: Number, Q: Number) -> Number:
    return 4.343 * np.sqrt(s - 1) / Q


@formula(
    title="Loss of a T network, estimate",
    equation="L_t = 0.014*(s + sqrt(s))/(C*f*Q)",
    symbols={"L_t": ("loss in the coil", "dB"), "s": _S, "C": _C, "f": FREQUENCY, "Q": _Q},
    validity="below about 1 dB; the capacitor at the load at its largest, 50 Ω, resistive load below it",
    source="tee_network_losses_1997",
)
def tee_loss(s: Number, C: Number, f: Number, Q: Number) -> Number:
    return 0.014 * (s + np.sqrt(s)) / (C * f * Q)


@formula(
    title="Peak voltage on a T network's capacitor",
    equation="V_c = sqrt(P*s)/(10*pi*f*C)",
    symbols={
        "V_c": ("peak voltage across the capacitor at the load", "V"),
        "P": ("power into the load", "W", 0, 1e5),
        "s": _S,
        "f": FREQUENCY,
        "C": _C,
    },
    validity="50 Ω, resistive load below it",
    source="tee_network_losses_1997",
)
def tee_capacitor_voltage(P: Number, s: Number, f: Number, C: Number) -> Number:
    return np.sqrt(P * s) / (10 * np.pi * f * C)
