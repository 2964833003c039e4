"""What a sweep can show of a line: its range, what it can separate, and what a bad contact does to it."""

import numpy as np

from .constants import C_0
from .formula import Number, formula
from .symbols import LINE_IMPEDANCE, VELOCITY_FACTOR

__all__ = [
    "added_resistance",
    "alias_free_distance",
    "dissipated_loss",
    "even_step",
    "separating_span",
    "sweep_resolution",
    "window_broadening",
    "window_side_lobe",
]

_K_B = ("broadening by the window", "1", 1, 7)
_B_W = ("shape of the Kaiser window", "1", 0.5, 20)
_F_S = (
    "width of the spectrum: the sweep's, or from its mirror image below zero where it reaches down there",
    "Hz",
    1e5,
    1e11,
)
_R_A = ("resistance added in series", "Ω")
_L_D = ("loss by heat", "dB", 1e-9, 60)


@formula(
    title="Distance a sweep reaches",
    equation="d_m = c_0*v/(2*f_d)",
    symbols={
        "d_m": ("distance beyond which echoes fold back to the start", "m"),
        "v": VELOCITY_FACTOR,
        "f_d": ("step between two frequencies", "Hz", 100, 1e9),
    },
    validity="even steps; an echo goes there and back",
    source="analyser_guide_2010",
)
def alias_free_distance(v: Number, f_d: Number) -> Number:
    return C_0 * v / (2 * f_d)


@formula(
    title="Step between frequencies that reaches a distance",
    equation="f_d = c_0*v/(2*d_m)",
    symbols={
        "f_d": ("step between two frequencies", "Hz"),
        "v": VELOCITY_FACTOR,
        "d_m": ("distance beyond which echoes fold back to the start", "m", 0.01, 1e6),
    },
    validity="even steps; the distance a sweep reaches, solved for its step",
    source="analyser_guide_2010",
)
def even_step(v: Number, d_m: Number) -> Number:
    return C_0 * v / (2 * d_m)


@formula(
    title="Broadening by a Kaiser window",
    equation="k_b = sqrt(1 + (b_w/pi)**2)",
    symbols={"k_b": _K_B, "b_w": _B_W},
    validity="first zero of the window's transform against that of no window; exact",
    source="kaiser_window_1980",
)
def window_broadening(b_w: Number) -> Number:
    return np.sqrt(1 + (b_w / np.pi) ** 2)


@formula(
    title="Side lobes of a Kaiser window",
    equation="A_s = 20*log((exp(b_w) - exp(-b_w))/(2*0.217234*b_w), 10)",
    symbols={"A_s": ("main lobe over the highest side lobe", "dB"), "b_w": _B_W},
    validity="many points; 0.217234 is the highest side lobe of sin(x)/x",
    source="kaiser_window_1980",
)
def window_side_lobe(b_w: Number) -> Number:
    return 20 * np.log10(np.sinh(b_w) / (0.217234 * b_w))


@formula(
    title="Distance a sweep can separate",
    equation="d_r = c_0*v*k_b/(2*f_s)",
    symbols={
        "d_r": ("least distance between two echoes that show apart", "m"),
        "v": VELOCITY_FACTOR,
        "k_b": _K_B,
        "f_s": _F_S,
    },
    validity="two echoes of like size, as far apart as the window's first zero",
    source="analyser_guide_2010",
)
def sweep_resolution(v: Number, k_b: Number, f_s: Number) -> Number:
    return C_0 * v * k_b / (2 * f_s)


@formula(
    title="Width of the spectrum that separates two joints",
    equation="f_s = c_0*v*k_b/(2*d_j)",
    symbols={"f_s": _F_S, "v": VELOCITY_FACTOR, "k_b": _K_B, "d_j": ("distance between the joints", "m", 0.01, 100)},
    validity="the resolution solved for the width",
    source="analyser_guide_2010",
)
def separating_span(v: Number, k_b: Number, d_j: Number) -> Number:
    return C_0 * v * k_b / (2 * d_j)


@formula(
    title="Loss by heat of a two-port",
    equation="L_d = 10*log((1 - S_11**2)/S_21**2, 10)",
    symbols={
        "L_d": _L_D,
        "S_11": ("size of the reflection at port 1", "1", 0, 0.999),
        "S_21": ("size of what passes", "1", 1e-6, 1),
    },
    validity="matched at port 2; power that neither passes nor returns",
    source="microwave_textbook",
)
def dissipated_loss(S_11: Number, S_21: Number) -> Number:
    return 10 / np.log(10) * (np.log1p(-(S_11**2)) - 2 * np.log(S_21))


@formula(
    title="Resistance behind an added loss by heat",
    equation="R_a = Z_0*(10**(L_d/10) - 1)",
    symbols={"R_a": _R_A, "Z_0": LINE_IMPEDANCE, "L_d": _L_D},
    validity="all of the added loss from one resistance in series before a matched end; exact",
    source="microwave_textbook",
)
def added_resistance(Z_0: Number, L_d: Number) -> Number:
    return Z_0 * np.expm1(L_d * np.log(10) / 10)
