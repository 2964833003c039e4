"""The temperature of a cable far from any joint, layer by layer, and of its conductors as fins.

All heat is proportional to power, so rises are reckoned for 1 W.
"""

import numpy as np

from .formula import Number, formula
from .symbols import VELOCITY_FACTOR

__all__ = [
    "fin_conductance",
    "foam_capacity",
    "foam_conductivity",
    "gas_share",
    "heat_in_metre",
    "inner_conductor_rise",
    "inner_share",
    "layer_capacity",
    "rod_capacity",
    "screen_rise",
    "shell_resistance",
    "time_constant",
]

_K = ("thermal conductivity", "W/(m·K)", 0.01, 500)
_R_A = ("thermal resistance between jacket and air", "K·m/W", 0.05, 500)
_R_J = ("thermal resistance of the jacket", "K·m/W", 0, 20)
_R_D = ("thermal resistance of the insulation", "K·m/W", 0.01, 50)
_Q_C = ("heat of both conductors in a metre", "W/m", 0, 10)
_Q_D = ("heat of the insulation in a metre", "W/m", 0, 10)
_TIME_SHARE = ("share of the time that counts", "1", 1e-7, 1)
_INNER = ("diameter inside", "m", 5e-5, 0.1)
_OUTER = ("diameter outside", "m", 1e-4, 0.2)
_CAPACITY = ("heat capacity of the material", "J/(m³·K)", 1e5, 1e7)


@formula(
    title="Share of gas in a foamed insulation",
    equation="phi = Max((2*epsilon_p + 1)*(epsilon_p - 1/v**2)/((epsilon_p - 1)*(1/v**2 + 2*epsilon_p)), 0)",
    symbols={
        "phi": ("share of the volume that is gas", "1"),
        "epsilon_p": ("relative permittivity of the plastic", "1", 1.5, 5),
        "v": VELOCITY_FACTOR,
    },
    validity="bubbles in plastic, by the law of Maxwell; none in a solid insulation",
    source="maxwell_foam",
)
def gas_share(epsilon_p: Number, v: Number) -> Number:
    foamed = 1 / v**2
    return np.maximum((2 * epsilon_p + 1) * (epsilon_p - foamed) / ((epsilon_p - 1) * (foamed + 2 * epsilon_p)), 0)


@formula(
    title="Thermal conductivity of a foamed insulation",
    equation="k_d = k_p*(2*k_p + 0.026 - 2*phi*(k_p - 0.026))/(2*k_p + 0.026 + phi*(k_p - 0.026))",
    symbols={
        "k_d": _K,
        "k_p": ("thermal conductivity of the plastic", "W/(m·K)", 0.05, 1),
        "phi": ("share of the volume that is gas", "1", 0, 1),
    },
    validity="bubbles of a gas that conducts like air, 0.026 W/(m·K), by the law of Maxwell",
    source="maxwell_foam",
)
def foam_conductivity(k_p: Number, phi: Number) -> Number:
    return k_p * (2 * k_p + 0.026 - 2 * phi * (k_p - 0.026)) / (2 * k_p + 0.026 + phi * (k_p - 0.026))


@formula(
    title="Heat capacity of a foamed insulation",
    equation="c_d = c_p*(1 - phi)",
    symbols={
        "c_d": ("heat capacity of the insulation", "J/(m³·K)"),
        "c_p": ("heat capacity of the plastic", "J/(m³·K)", 1e5, 1e7),
        "phi": ("share of the volume that is gas", "1", 0, 0.95),
    },
    validity="the gas holds next to none",
    source="derived",
)
def foam_capacity(c_p: Number, phi: Number) -> Number:
    return c_p * (1 - phi)


@formula(
    title="Thermal resistance of a metre of a layer",
    equation="R_l = log(D_o/D_i)/(2*pi*k)",
    symbols={"R_l": ("thermal resistance of a metre", "K·m/W"), "D_o": _OUTER, "D_i": _INNER, "k": _K},
    validity="radial conduction; touching layers",
    holds=lambda D_o, D_i: D_i <= D_o,
    source="incropera",
)
def shell_resistance(D_o: Number, D_i: Number, k: Number) -> Number:
    return np.log(D_o / D_i) / (2 * np.pi * k)


@formula(
    title="Heat in a metre for 1 W of power",
    equation="q = 2*alpha*h",
    symbols={
        "q": ("heat in a metre for 1 W", "W/m"),
        "alpha": ("attenuation constant of the conductors or of the insulation", "Np/m", 0, 5),
        "h": ("square of current or voltage over that of a matched wave", "1", 0, 400),
    },
    validity="alpha much below 1 Np/m; conductors by the current, insulation by the voltage",
    source="microwave_textbook",
)
def heat_in_metre(alpha: Number, h: Number) -> Number:
    return 2 * alpha * h


@formula(
    title="Share of the conductors' heat in the inner one",
    equation="x_i = D_d/(D_d + d_i)",
    symbols={
        "x_i": ("share of the inner conductor", "1"),
        "D_d": ("diameter over the insulation", "m", 1e-4, 0.2),
        "d_i": ("diameter of the inner conductor", "m", 5e-5, 0.1),
    },
    validity="skin effect in surfaces of like metal; a braid loses more, which would leave the inner one cooler",
    source="microwave_textbook",
)
def inner_share(D_d: Number, d_i: Number) -> Number:
    return D_d / (D_d + d_i)


@formula(
    title="Rise of the screen by 1 W",
    equation="u_o = (q_c + q_d)*(R_a + R_j)*s_o",
    symbols={
        "u_o": ("rise of the outer conductor", "K"),
        "q_c": _Q_C,
        "q_d": _Q_D,
        "R_a": _R_A,
        "R_j": _R_J,
        "s_o": _TIME_SHARE,
    },
    validity="far from any joint",
    source="derived",
)
def screen_rise(q_c: Number, q_d: Number, R_a: Number, R_j: Number, s_o: Number) -> Number:
    return (q_c + q_d) * (R_a + R_j) * s_o


@formula(
    title="Rise of the inner conductor by 1 W",
    equation="u_i = u_o + (x_i*q_c + q_d/2)*R_d*s_i",
    symbols={
        "u_i": ("rise of the inner conductor", "K"),
        "u_o": ("rise of the outer conductor", "K", 0, 1e3),
        "x_i": ("share of the conductors' heat in the inner one", "1", 0.1, 1),
        "q_c": _Q_C,
        "q_d": _Q_D,
        "R_d": _R_D,
        "s_i": _TIME_SHARE,
    },
    validity="far from any joint; half of the insulation's heat counts as made inside",
    source="derived",
)
def inner_conductor_rise(u_o: Number, x_i: Number, q_c: Number, q_d: Number, R_d: Number, s_i: Number) -> Number:
    return u_o + (x_i * q_c + q_d / 2) * R_d * s_i


@formula(
    title="Conductance along a conductor into its cable",
    equation="G_f = sqrt(k*A/R)",
    symbols={
        "G_f": ("thermal conductance of a long fin", "W/K"),
        "k": _K,
        "A": ("cross-section of its metal", "m²", 1e-9, 0.01),
        "R": ("thermal resistance of a metre from it outwards", "K·m/W", 0.01, 500),
    },
    validity="cable long against the length of the fin, some centimetres",
    source="incropera",
)
def fin_conductance(k: Number, A: Number, R: Number) -> Number:
    return np.sqrt(k * A / R)


@formula(
    title="Heat capacity of a metre of a layer",
    equation="C_l = c*pi*(D_o**2 - D_i**2)/4",
    symbols={"C_l": ("heat capacity of a metre", "J/(m·K)"), "c": _CAPACITY, "D_o": _OUTER, "D_i": _INNER},
    validity="layer that fills its ring",
    holds=lambda D_o, D_i: D_i <= D_o,
    source="derived",
)
def layer_capacity(c: Number, D_o: Number, D_i: Number) -> Number:
    return c * np.pi * (D_o**2 - D_i**2) / 4


@formula(
    title="Heat capacity of a metre of a conductor",
    equation="C_r = c*A",
    symbols={
        "C_r": ("heat capacity of a metre", "J/(m·K)"),
        "c": _CAPACITY,
        "A": ("cross-section of its metal", "m²", 1e-9, 0.01),
    },
    validity="metal alone, without the gaps of strands",
    source="derived",
)
def rod_capacity(c: Number, A: Number) -> Number:
    return c * A


@formula(
    title="Thermal time constant",
    equation="tau = C*R",
    symbols={
        "tau": ("thermal time constant", "s"),
        "C": ("heat capacity, of a metre or of the body", "J/K", 1e-4, 1e5),
        "R": ("thermal resistance, of a metre or of the body", "K/W", 1e-3, 1e5),
    },
    validity="one node of one temperature",
    source="incropera",
)
def time_constant(C: Number, R: Number) -> Number:
    return C * R
