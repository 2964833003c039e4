"""Temperature of the centre contact, anchored on the published average-power rating."""

import numpy as np

from .formula import Number, formula
from .symbols import PEAK_POWER, STANDING_WAVE_FACTOR

__all__ = [
    "average_power",
    "contact_temperature",
    "cycle_share",
    "heat_allowed_power",
    "hot_spot_forward",
    "hot_spot_net",
    "margin",
    "rated_thermal_resistance",
    "site_thermal_resistance",
    "solar_rise",
]

_DUTY = ("duty factor of the mode while keyed, mean over peak", "1", 0.01, 1)
_SHARE = ("share of the time that counts for heat", "1", 1e-7, 1)
_A = ("share of the power turned into heat", "1", 1e-6, 0.99)
_AIR = ("air temperature in the shade", "°C", -60, 80)
_SUN = ("temperature rise by the sun", "K", 0, 100)
_R = ("thermal resistance from centre contact to air", "K/W", 0.1, 1e5)


@formula(
    title="Share of the time that counts for heat, periodic overs",
    equation="s_t = (1 - exp(-t_on/tau))/(1 - exp(-(t_on + t_off)/tau))",
    symbols={
        "s_t": _SHARE,
        "t_on": ("length of one over", "s", 0.01, 86_400),
        "t_off": ("pause between overs", "s", 0.01, 86_400),
        "tau": ("thermal time constant of the contact", "s", 1, 1e4),
    },
    validity="first-order heating, periodic steady state: temperature at the end of an over",
    source="derived",
)
def cycle_share(t_on: Number, t_off: Number, tau: Number) -> Number:
    return np.expm1(-t_on / tau) / np.expm1(-(t_on + t_off) / tau)


@formula(
    title="Average power that heats the joint",
    equation="P_avg = P*D_m*s_t",
    symbols={"P_avg": ("average power", "W"), "P": PEAK_POWER, "D_m": _DUTY, "s_t": _SHARE},
    validity="speech and keying are fast against the joint's time constant",
    source="fcc_oet_65b",
)
def average_power(P: Number, D_m: Number, s_t: Number) -> Number:
    return P * D_m * s_t


@formula(
    title="Standing-wave factor, forward power given",
    equation="h_s = (1 + Gamma)**2",
    symbols={"h_s": STANDING_WAVE_FACTOR, "Gamma": ("reflection on the line at the joint", "1", 0, 1)},
    validity="joint at the current (or voltage) maximum: the conservative place",
    source="derived",
)
def hot_spot_forward(Gamma: Number) -> Number:
    return (1 + Gamma) ** 2


@formula(
    title="Standing-wave factor, net power given",
    equation="h_s = S",
    symbols={"h_s": STANDING_WAVE_FACTOR, "S": ("voltage standing wave ratio at the joint", "1", 1, 20)},
    validity="joint at the current (or voltage) maximum; V² max = P Z_0 S at fixed net power",
    source="derived",
)
def hot_spot_net(S: Number) -> Number:
    return S * 1.0


@formula(
    title="Thermal resistance behind the published rating",
    equation="R_r = (t_r - t_ar)/(P_r*a_r)",
    symbols={
        "R_r": _R,
        "t_r": ("contact temperature behind the rating", "°C", 60, 250),
        "t_ar": ("air temperature behind the rating", "°C", -60, 80),
        "P_r": ("rated average power", "W", 1, 1e4),
        "a_r": ("share turned into heat at the rating's frequency", "1", 1e-6, 0.99),
    },
    validity="matched line, steady state, at the rating's own conditions",
    holds=lambda t_r, t_ar: t_ar < t_r,
    source="derived",
)
def rated_thermal_resistance(t_r: Number, t_ar: Number, P_r: Number, a_r: Number) -> Number:
    return (t_r - t_ar) / (P_r * a_r)


@formula(
    title="Thermal resistance at the site's altitude",
    equation="R_th = R_r*(1 + b*(1/(1 - k + k*sqrt(p_r)) - 1))",
    symbols={
        "R_th": _R,
        "R_r": ("thermal resistance behind the rating", "K/W", 0.1, 1e5),
        "b": ("share of it between body and air", "1", 0, 1),
        "k": ("convective share of the body's heat shedding", "1", 0, 1),
        "p_r": ("air pressure over that behind the rating", "1", 0.01, 1.1),
    },
    validity="laminar natural convection: film coefficient follows the square root of pressure",
    source="incropera",
)
def site_thermal_resistance(R_r: Number, b: Number, k: Number, p_r: Number) -> Number:
    return R_r * (1 + b * (1 / (1 - k + k * np.sqrt(p_r)) - 1))


@formula(
    title="Rise of the body in the sun",
    equation="dt_s = E*alpha*D_b*l_b*R_b",
    symbols={
        "dt_s": _SUN,
        "E": ("irradiance", "W/m²", 0, 1400),
        "alpha": ("absorptance of the surface", "1", 0.01, 1),
        "D_b": ("diameter of the mated body", "m", 1e-3, 0.1),
        "l_b": ("length of the mated body", "m", 1e-4, 0.1),
        "R_b": ("thermal resistance from body to air", "K/W", 0.1, 500),
    },
    validity="sun square on the side of the body, no wind",
    source="derived",
)
def solar_rise(E: Number, alpha: Number, D_b: Number, l_b: Number, R_b: Number) -> Number:
    return E * alpha * D_b * l_b * R_b


@formula(
    title="Power allowed by heat",
    equation="P_h = Max(t_max - t_a - dt_s, 0)/(R_th*a*h_s*D_m*s_t)",
    symbols={
        "P_h": ("peak envelope power allowed by heat", "W"),
        "t_max": ("allowed contact temperature", "°C", 60, 250),
        "t_a": _AIR,
        "dt_s": _SUN,
        "R_th": _R,
        "a": _A,
        "h_s": STANDING_WAVE_FACTOR,
        "D_m": _DUTY,
        "s_t": _SHARE,
    },
    validity="steady state; joint at a current maximum",
    source="derived",
)
def heat_allowed_power(
    t_max: Number, t_a: Number, dt_s: Number, R_th: Number, a: Number, h_s: Number, D_m: Number, s_t: Number
) -> Number:
    return np.maximum(t_max - t_a - dt_s, 0) / (R_th * a * h_s * D_m * s_t)


@formula(
    title="Temperature of the centre contact",
    equation="t_c = t_a + dt_s + P_avg*h_s*a*R_th",
    symbols={
        "t_c": ("temperature of the centre contact", "°C"),
        "t_a": _AIR,
        "dt_s": _SUN,
        "P_avg": ("average power", "W", 0, 1e5),
        "h_s": STANDING_WAVE_FACTOR,
        "a": _A,
        "R_th": _R,
    },
    validity="steady state; joint at a current maximum",
    source="derived",
)
def contact_temperature(t_a: Number, dt_s: Number, P_avg: Number, h_s: Number, a: Number, R_th: Number) -> Number:
    return t_a + dt_s + P_avg * h_s * a * R_th


@formula(
    title="Margin",
    equation="M = 10*log(P_a, 10) - 10*log(P, 10)",
    symbols={"M": ("margin", "dB"), "P_a": ("allowed peak envelope power", "W", 1e-5, 1e9), "P": PEAK_POWER},
    validity="P > 0; 0 dB is at the limit",
    holds=lambda P: P > 0,
    source="derived",
)
def margin(P_a: Number, P: Number) -> Number:
    return 10 * np.log10(P_a) - 10 * np.log10(P)
