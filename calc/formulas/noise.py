"""Noise on the receive side: what the antenna hears, what the line and the receiver add, what that costs."""

import numpy as np

from .constants import T_0
from .formula import Number, formula
from .symbols import FREQUENCY

__all__ = [
    "cascade_noise_factor",
    "external_noise_figure",
    "external_noise_floor",
    "lossy_noise_factor",
    "snr_cost",
    "system_noise_factor",
]


@formula(
    title="Median external noise",
    equation="F_m = c - d*log(f/1e6, 10)",
    symbols={
        "F_m": ("median external noise figure over k T_0 b", "dB"),
        "c": ("median at 1 MHz", "dB", 40, 80),
        "d": ("fall per decade of frequency", "dB", 20, 30),
        "f": FREQUENCY,
    },
    validity="within the frequency range of the environment; short vertical antenna over perfect ground",
    source="itu_r_p372",
)
def external_noise_figure(c: Number, d: Number, f: Number) -> Number:
    return c - d * np.log10(f / 1e6)


@formula(
    title="External noise with the galactic floor",
    equation="F_a = Max(F_m, F_g)",
    symbols={
        "F_a": ("external noise figure at the antenna", "dB"),
        "F_m": ("median of man-made noise", "dB", -20, 100),
        "F_g": ("median of galactic noise", "dB", -20, 80),
    },
    validity="above the critical frequency of the ionosphere, which shuts galactic noise out below",
    source="itu_r_p372",
)
def external_noise_floor(F_m: Number, F_g: Number) -> Number:
    return np.maximum(F_m, F_g)


@formula(
    title="Noise factor of a lossy part",
    equation="f_l = 1 + (l_p - 1)*(t + 273.15)/T_0",
    symbols={
        "f_l": ("noise factor of the lossy part", "1"),
        "l_p": ("loss factor: power in over power out", "1", 1.0001, 1e4),
        "t": ("temperature of the part", "°C", -60, 80),
    },
    validity="matched passive part at one temperature; at 290 K its noise figure is its loss",
    source="satellite_textbook",
)
def lossy_noise_factor(l_p: Number, t: Number) -> Number:
    return 1 + (l_p - 1) * (t + 273.15) / T_0


@formula(
    title="Noise factor of a part and all behind it",
    equation="f_n = f_1 + (f_2 - 1)/g_1",
    symbols={
        "f_n": ("noise factor of both", "1"),
        "f_1": ("noise factor of the part in front", "1", 1, 1e5),
        "f_2": ("noise factor of all behind it", "1", 1, 1e5),
        "g_1": ("available gain of the part in front; below 1 for a loss", "1", 1e-4, 1e4),
    },
    validity="matched parts; more parts follow by repeating it from the receiver towards the antenna",
    source="radar_textbook",
)
def cascade_noise_factor(f_1: Number, f_2: Number, g_1: Number) -> Number:
    return f_1 + (f_2 - 1) / g_1


@formula(
    title="Noise factor of the receiving system",
    equation="f_s = f_a + (f_c - 1) + l_c*(f_t - 1) + l_c*l_t*(f_r - 1)",
    symbols={
        "f_s": ("noise factor of the system, referred to a lossless antenna", "1"),
        "f_a": ("external noise factor", "1", 1e-3, 1e8),
        "f_c": ("noise factor of the antenna circuit", "1", 1, 1e5),
        "l_c": ("loss factor of the antenna circuit", "1", 1.0001, 1e4),
        "f_t": ("noise factor of the line", "1", 1, 1e5),
        "l_t": ("loss factor of the line", "1", 1.0001, 1e4),
        "f_r": ("noise factor of the receiver", "1", 1, 1e5),
    },
    validity="matched parts, receiver free of spurious responses",
    source="itu_r_p372_system",
)
def system_noise_factor(f_a: Number, f_c: Number, l_c: Number, f_t: Number, l_t: Number, f_r: Number) -> Number:
    return f_a + (f_c - 1) + l_c * (f_t - 1) + l_c * l_t * (f_r - 1)


@formula(
    title="Cost in signal-to-noise ratio",
    equation="C = 10*log(f_w/f_o, 10)",
    symbols={
        "C": ("signal-to-noise ratio given away", "dB"),
        "f_w": ("noise factor of the system with the part", "1", 1, 1e5),
        "f_o": ("noise factor of the system without it", "1", 1, 1e5),
    },
    validity="both referred to the same point in front of the part, where the signal is the same",
    source="derived",
)
def snr_cost(f_w: Number, f_o: Number) -> Number:
    return 10 * np.log10(f_w / f_o)
