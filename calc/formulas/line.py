"""Cables and reflections on a line: attenuation, propagation, what loss hides, what mismatch adds."""

import numpy as np

from .constants import C_0
from .formula import Number, formula
from .symbols import FREQUENCY, SMALL, VELOCITY_FACTOR

__all__ = [
    "additional_loss",
    "attenuation_constant",
    "cable_attenuation",
    "clad_coefficient",
    "conductor_temperature_factor",
    "decibels",
    "hidden_reflection",
    "impedance_reactance",
    "impedance_resistance",
    "likely_reflection",
    "mismatch_lower",
    "mismatch_upper",
    "phase_constant",
    "power_ratio",
    "reflection_seen",
    "surface_phase_constant",
    "worst_reflection",
]

_X = ("figure in decibels: loss, gain or noise figure", "dB", -60, 120)
_R = ("ratio of powers: loss factor, gain or noise factor", "1", 1e-6, 1e12)
_A_M = ("attenuation per metre", "dB/m", 0, 10)
_Q_T = ("conductor loss against that at 20 °C", "1", 0.8, 1.8)
_K_1 = ("conductor coefficient at 20 °C", "dB/(m·√Hz)", 1e-7, 1e-4)
_BETA = ("phase constant", "rad/m", 1e-3, 1e3)
_BETA_0 = ("phase constant without the conductors' inside", "rad/m", 1e-3, 1e3)
_L_P = ("loss factor of the matched line: power in over power out", "1", 1.0001, 1e4)
_GAMMA = ("reflection coefficient of the load, magnitude", "1", 0, 0.999)
_GAMMA_I = ("reflection coefficient seen through the loss, magnitude", "1", 1e-6, 0.999)
_PAIR = {
    "Gamma_1": ("reflection coefficient of one part, magnitude", "1", 1e-6, 0.999),
    "Gamma_2": ("reflection coefficient of the other part, magnitude", "1", 1e-6, 0.999),
}


@formula(
    title="Power ratio of a figure in decibels",
    equation="r = 10**(X/10)",
    symbols={"r": _R, "X": _X},
    validity="any figure that compares powers",
    source="microwave_textbook",
)
def power_ratio(X: Number) -> Number:
    return 10 ** (X / 10)


@formula(
    title="Decibels of a power ratio",
    equation="X = 10*log(r, 10)",
    symbols={"X": _X, "r": _R},
    validity="r > 0",
    source="microwave_textbook",
)
def decibels(r: Number) -> Number:
    return 10 * np.log10(r)


@formula(
    title="Conductor loss against that at 20 °C",
    equation="q_t = sqrt(1 + 0.00393*(t - 20))",
    symbols={"q_t": _Q_T, "t": ("temperature of the conductors", "°C", -60, 500)},
    validity="copper, silvered or not, where skin effect rules: surface resistance goes with the root of resistivity",
    source="iec_60028",
)
def conductor_temperature_factor(t: Number) -> Number:
    return np.sqrt(1 + 0.00393 * (t - 20))


@formula(
    title="Attenuation of the cable",
    equation="a_m = k_1*q_t*sqrt(f) + k_2*f",
    symbols={
        "a_m": _A_M,
        "k_1": _K_1,
        "q_t": _Q_T,
        "f": FREQUENCY,
        "k_2": ("dielectric coefficient", "dB/(m·Hz)", 0, 1e-9),
    },
    validity="within the range of the figures that k_1 and k_2 were fitted to; matched line",
    source="microwave_textbook",
)
def cable_attenuation(k_1: Number, q_t: Number, f: Number, k_2: Number) -> Number:
    return k_1 * q_t * np.sqrt(f) + k_2 * f


@formula(
    title="Conductor coefficient of a clad core between two published figures",
    equation="k_1 = k_a*(k_b/k_a)**(log(f/f_a)/log(f_b/f_a))",
    symbols={
        "k_1": _K_1,
        "k_a": ("coefficient that meets the lower figure", "dB/(m·√Hz)", 1e-7, 1e-4),
        "k_b": ("coefficient that meets the higher figure", "dB/(m·√Hz)", 1e-7, 1e-4),
        "f": FREQUENCY,
        "f_a": ("frequency of the lower figure", "Hz", 1e5, 1e8),
        "f_b": ("frequency of the higher figure", "Hz", 1e5, 1e10),
    },
    validity="meets both figures; below the lowest of all its power of frequency is drawn on",
    holds=lambda f_a, f_b: 1.4 * f_a < f_b,
    source="derived",
)
def clad_coefficient(k_a: Number, k_b: Number, f: Number, f_a: Number, f_b: Number) -> Number:
    return k_a * (k_b / k_a) ** (np.log(f / f_a) / np.log(f_b / f_a))


@formula(
    title="Attenuation constant",
    equation="alpha = a_m*log(10)/20",
    symbols={"alpha": ("attenuation constant", "Np/m"), "a_m": _A_M},
    validity="exact; the real part of the propagation constant",
    source="derived",
)
def attenuation_constant(a_m: Number) -> Number:
    return a_m * np.log(10) / 20


@formula(
    title="Phase constant without the conductors' inside",
    equation="beta_0 = 2*pi*f/(c_0*v)",
    symbols={"beta_0": _BETA_0, "f": FREQUENCY, "v": VELOCITY_FACTOR},
    validity="the velocity factor is that of high frequencies, where currents flow in the skin alone",
    source="microwave_textbook",
)
def surface_phase_constant(f: Number, v: Number) -> Number:
    return 2 * np.pi * f / (C_0 * v)


@formula(
    title="Phase constant",
    equation="beta = beta_0 + alpha_c",
    symbols={
        "beta": _BETA,
        "beta_0": _BETA_0,
        "alpha_c": ("attenuation constant of the conductors", "Np/m", 0, 0.5),
    },
    validity="skin effect: the conductors' inner reactance is as large as their resistance, so it slows the wave",
    holds=lambda beta_0, alpha_c: alpha_c < SMALL * beta_0,
    source="microwave_textbook",
)
def phase_constant(beta_0: Number, alpha_c: Number) -> Number:
    return beta_0 + alpha_c


@formula(
    title="Resistive part of a lossy line's impedance",
    equation="R_c = Z_0*(1 + alpha_c/beta_0)",
    symbols={
        "R_c": ("real part of the characteristic impedance", "Ω"),
        "Z_0": ("characteristic impedance at high frequencies", "Ω", 25, 1000),
        "alpha_c": ("attenuation constant of the conductors", "Np/m", 0, 0.5),
        "beta_0": _BETA_0,
    },
    validity="low loss; the conductors' inner inductance raises it at low frequencies",
    holds=lambda alpha_c, beta_0: alpha_c < SMALL * beta_0,
    source="microwave_textbook",
)
def impedance_resistance(Z_0: Number, alpha_c: Number, beta_0: Number) -> Number:
    return Z_0 * (1 + alpha_c / beta_0)


@formula(
    title="Reactive part of a lossy line's impedance",
    equation="X_c = Z_0*(alpha_d - alpha_c)/beta_0",
    symbols={
        "X_c": ("imaginary part of the characteristic impedance", "Ω"),
        "Z_0": ("characteristic impedance at high frequencies", "Ω", 25, 1000),
        "alpha_d": ("attenuation constant of the dielectric", "Np/m", 0, 0.5),
        "alpha_c": ("attenuation constant of the conductors", "Np/m", 0, 0.5),
        "beta_0": _BETA_0,
    },
    validity="low loss: alpha_c + alpha_d << beta_0",
    holds=lambda alpha_d, alpha_c, beta_0: alpha_c + alpha_d < SMALL * beta_0,
    source="microwave_textbook",
)
def impedance_reactance(Z_0: Number, alpha_d: Number, alpha_c: Number, beta_0: Number) -> Number:
    return Z_0 * (alpha_d - alpha_c) / beta_0


@formula(
    title="Reflection seen through a loss",
    equation="Gamma_i = Gamma/l_p",
    symbols={"Gamma_i": _GAMMA_I, "Gamma": _GAMMA, "l_p": _L_P},
    validity="matched line; in decibels, return loss seen = return loss of the load + twice the loss",
    source="exam_training_return_loss",
)
def reflection_seen(Gamma: Number, l_p: Number) -> Number:
    return Gamma / l_p


@formula(
    title="Reflection hidden behind a loss",
    equation="Gamma = Gamma_i*l_p",
    symbols={"Gamma": _GAMMA, "Gamma_i": _GAMMA_I, "l_p": _L_P},
    validity="matched line, Gamma < 1; a larger one says that the loss is smaller than stated",
    source="exam_training_return_loss",
)
def hidden_reflection(Gamma_i: Number, l_p: Number) -> Number:
    return Gamma_i * l_p


@formula(
    title="Loss added to the line by the standing wave",
    equation="L_x = 10*log((l_p**2 - Gamma**2)/(l_p**2*(1 - Gamma**2)), 10)",
    symbols={"L_x": ("loss on top of the matched loss", "dB"), "l_p": _L_P, "Gamma": _GAMMA},
    validity="exact for a real characteristic impedance; on a cable shorter than a half wave it can err even in sign",
    source="amateur_handbook_line_loss",
)
def additional_loss(l_p: Number, Gamma: Number) -> Number:
    # the equation as 1 + a small share keeps its digits near no loss and near a match
    return 10 * np.log1p(Gamma**2 * (1 - l_p**-2) / (1 - Gamma**2)) / np.log(10)


@formula(
    title="Mismatch uncertainty, upper limit",
    equation="M_u = 20*log(1 + Gamma_1*Gamma_2, 10)",
    symbols={"M_u": ("greatest gain of the two reflections against their own losses", "dB"), **_PAIR},
    validity="any phase between the two; exact",
    source="power_sensor_manual",
)
def mismatch_upper(Gamma_1: Number, Gamma_2: Number) -> Number:
    return 20 * np.log1p(Gamma_1 * Gamma_2) / np.log(10)


@formula(
    title="Mismatch uncertainty, lower limit",
    equation="M_l = 20*log(1 - Gamma_1*Gamma_2, 10)",
    symbols={"M_l": ("greatest loss of the two reflections beyond their own losses", "dB"), **_PAIR},
    validity="any phase between the two, Gamma_1*Gamma_2 < 1; exact",
    source="power_sensor_manual",
)
def mismatch_lower(Gamma_1: Number, Gamma_2: Number) -> Number:
    return 20 * np.log1p(-Gamma_1 * Gamma_2) / np.log(10)


@formula(
    title="Worst reflection of two parts",
    equation="Gamma_w = (Gamma_1 + Gamma_2)/(1 + Gamma_1*Gamma_2)",
    symbols={"Gamma_w": ("greatest reflection of both, magnitude", "1"), **_PAIR},
    validity="lossless parts in phase, exact: their VSWRs multiply; more parts follow by repeating it",
    source="derived",
)
def worst_reflection(Gamma_1: Number, Gamma_2: Number) -> Number:
    return (Gamma_1 + Gamma_2) / (1 + Gamma_1 * Gamma_2)


@formula(
    title="Likely reflection of two parts",
    equation="Gamma_q = sqrt(Gamma_1**2 + Gamma_2**2)",
    symbols={"Gamma_q": ("root of the mean square over unknown phases", "1"), **_PAIR},
    validity="small reflections, Gamma_1*Gamma_2 << 1, at unrelated phases; more parts follow by repeating it",
    holds=lambda Gamma_1, Gamma_2: Gamma_1 * Gamma_2 < SMALL,
    source="derived",
)
def likely_reflection(Gamma_1: Number, Gamma_2: Number) -> Number:
    return np.hypot(Gamma_1, Gamma_2)
