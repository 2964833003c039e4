"""Direct current up a coaxial line: what it heats, and what it leaves to the radio-frequency power beside it."""

import numpy as np

from .constants import L_0
from .formula import Number, formula

__all__ = [
    "conductor_resistance",
    "current_allowed",
    "heat_share_left",
    "voltage_drop",
    "voltage_share_left",
]

_CURRENT = ("direct current", "A", 0, 50)


@formula(
    title="Resistance of a metre of conductor at direct current",
    equation="R_m = L_0*(t + 273.15)/(k*A)",
    symbols={
        "R_m": ("resistance of a metre", "Ω/m"),
        "t": ("temperature of the conductor", "°C", -60, 500),
        "k": ("thermal conductivity of its metal", "W/(m·K)", 10, 1e3),
        "A": ("cross-section of its metal", "m²", 1e-9, 1e-3),
    },
    validity="law of Wiedemann and Franz: within a tenth for copper, aluminium and steel, clad ones too",
    source="memory",
)
def conductor_resistance(t: Number, k: Number, A: Number) -> Number:
    return L_0 * (t + 273.15) / (k * A)


@formula(
    title="Direct current allowed by heat",
    equation="I_a = sqrt(Max(t_max - t_a - dt_s, 0)/u_1)",
    symbols={
        "I_a": ("direct current allowed by heat", "A"),
        "t_max": ("allowed temperature", "°C", 20, 500),
        "t_a": ("air temperature in the shade", "°C", -60, 80),
        "dt_s": ("temperature rise by the sun", "K", 0, 100),
        "u_1": ("temperature rise by 1 A", "K", 1e-6, 1e4),
    },
    validity="without power beside it; the rise goes with the square of the current",
    source="derived",
)
def current_allowed(t_max: Number, t_a: Number, dt_s: Number, u_1: Number) -> Number:
    return np.sqrt(np.maximum(t_max - t_a - dt_s, 0) / u_1)


@formula(
    title="Share of the power allowed by heat that direct current leaves",
    equation="x_h = Max(1 - (I/I_a)**2, 0)",
    symbols={
        "x_h": ("share left", "1"),
        "I": _CURRENT,
        "I_a": ("direct current allowed by heat", "A", 1e-2, 1e4),
    },
    validity="the rises by the current and by the power add up",
    source="derived",
)
def heat_share_left(I: Number, I_a: Number) -> Number:
    return np.maximum(1 - (I / I_a) ** 2, 0)


@formula(
    title="Share of the power allowed by voltage that a direct voltage leaves",
    equation="x_v = Max(1 - V/V_a, 0)**2",
    symbols={
        "x_v": ("share left", "1"),
        "V": ("direct voltage", "V", 0, 100),
        "V_a": ("allowed peak voltage", "V", 1, 1e4),
    },
    validity="the peaks add up",
    source="derived",
)
def voltage_share_left(V: Number, V_a: Number) -> Number:
    return np.maximum(1 - V / V_a, 0) ** 2


@formula(
    title="Voltage lost in a metre of line",
    equation="V_m = I*(R_i + R_o)",
    symbols={
        "V_m": ("voltage lost in a metre, there and back", "V/m"),
        "I": _CURRENT,
        "R_i": ("resistance of a metre of the inner conductor", "Ω/m", 0, 1e2),
        "R_o": ("resistance of a metre of the outer conductor", "Ω/m", 0, 1e2),
    },
    validity="joints left out, which add milliohms",
    source="derived",
)
def voltage_drop(I: Number, R_i: Number, R_o: Number) -> Number:
    return I * (R_i + R_o)
