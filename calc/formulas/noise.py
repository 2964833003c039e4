"""Noise on the receive side: what the antenna hears, what the line and the receiver add, what that costs."""

import numpy as np

from .constants import T_0
from .formula import Number, formula
from .symbols import FREQUENCY

__all__ = [
    "air_mass",
    "antenna_temperature",
    "cascade_noise_factor",
    "external_noise_figure",
    "external_noise_floor",
    "lossy_noise_factor",
    "noise_factor",
    "noise_temperature",
    "sky_temperature",
    "snr_cost",
    "system_noise_factor",
]

_T_A = "noise temperature of the antenna"


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
    title="Noise temperature of a noise figure over k T_0 b",
    equation="T_x = T_0*10**(F/10)",
    symbols={
        "T_x": ("noise temperature", "K"),
        "F": ("noise figure over k T_0 b", "dB", -60, 100),
    },
    validity="of external noise and of a whole system; that of a part by itself is less by T_0",
    source="itu_r_p372",
)
def noise_temperature(F: Number) -> Number:
    return T_0 * 10 ** (F / 10)


@formula(
    title="External noise factor of an antenna temperature",
    equation="f_a = T_a/T_0",
    symbols={
        "f_a": ("external noise factor", "1"),
        "T_a": (_T_A, "K", 1e-2, 1e12),
    },
    validity="antenna without loss of its own",
    source="itu_r_p372_system",
)
def noise_factor(T_a: Number) -> Number:
    return T_a / T_0


@formula(
    title="Way through the air against that straight up",
    equation="m = (sqrt((r*sin(pi*e/180))**2 + 2*r*h + h**2) - r*sin(pi*e/180))/h",
    symbols={
        "m": ("way through the air over its height", "1"),
        "e": ("elevation of the beam", "°", 0, 90),
        "r": ("radius of the earth by which rays run straight", "m", 6e6, 1e7),
        "h": ("height of air of one density", "m", 1e3, 2e4),
    },
    validity="a shell of air of one density around the earth",
    source="derived",
)
def air_mass(e: Number, r: Number, h: Number) -> Number:
    up = r * np.sin(np.pi * e / 180)
    return (np.sqrt(up**2 + 2 * r * h + h**2) - up) / h


@formula(
    title="Noise temperature of the sky behind the air",
    equation="T_s = T_m*(1 - 10**(-A_z*m/10)) + T_c*10**(-A_z*m/10)",
    symbols={
        "T_s": ("noise temperature of the sky", "K"),
        "A_z": ("loss of the air straight up", "dB", 0, 5),
        "m": ("way through the air against that straight up", "1", 1, 100),
        "T_m": ("mean temperature at which the air radiates", "K", 200, 320),
        "T_c": ("cosmic background", "K", 0, 10),
    },
    validity="clear air; galactic noise is added elsewhere",
    source="itu_r_p372_sky",
)
def sky_temperature(A_z: Number, m: Number, T_m: Number, T_c: Number) -> Number:
    passed = 10 ** (-A_z * m / 10)
    return T_m * (1 - passed) + T_c * passed


@formula(
    title="Noise temperature of an antenna",
    equation="T_a = s*T_e + (1 - s)*T_s + T_g + p*T_h",
    symbols={
        "T_a": (_T_A, "K"),
        "s": ("share of the antenna's pattern that looks at the earth", "1", 0, 1),
        "T_e": ("noise temperature of the earth", "K", 200, 320),
        "T_s": ("noise temperature of the sky", "K", 0, 320),
        "T_g": ("galactic noise as a temperature", "K", 0, 1e9),
        "p": ("share of man-made noise that comes in", "1", 0, 1),
        "T_h": ("man-made noise as a temperature", "K", 0, 1e9),
    },
    validity="30 MHz and above; powers add, antenna without loss of its own, neither sun nor moon in its beam",
    source="derived",
)
def antenna_temperature(s: Number, T_e: Number, T_s: Number, T_g: Number, p: Number, T_h: Number) -> Number:
    return s * T_e + (1 - s) * T_s + T_g + p * T_h


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
