"""Temperature of the centre contact, anchored on the published average-power rating."""

import numpy as np

from .formula import formula

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

_P = ("peak envelope power", "W")
_DUTY = ("duty factor of the mode while keyed, mean over peak", "1")
_SHARE = ("share of the time that counts for heat", "1")
_H = ("standing-wave factor of power", "1")
_A = ("share of the power turned into heat", "1")
_R = ("thermal resistance from centre contact to air", "K/W")


@formula(
    title="Share of the time that counts for heat, periodic overs",
    equation="s_t = (1 - exp(-t_on/tau))/(1 - exp(-(t_on + t_off)/tau))",
    symbols={
        "s_t": _SHARE,
        "t_on": ("length of one over", "s"),
        "t_off": ("pause between overs", "s"),
        "tau": ("thermal time constant of the contact", "s"),
    },
    validity="first-order heating, periodic steady state: temperature at the end of an over",
    source="derived",
)
def cycle_share(t_on, t_off, tau):
    return np.expm1(-t_on / tau) / np.expm1(-(t_on + t_off) / tau)


@formula(
    title="Average power that heats the joint",
    equation="P_avg = P*D_m*s_t",
    symbols={"P_avg": ("average power", "W"), "P": _P, "D_m": _DUTY, "s_t": _SHARE},
    validity="speech and keying are fast against the joint's time constant",
    source="fcc_oet_65b",
)
def average_power(P, D_m, s_t):
    return P * D_m * s_t


@formula(
    title="Standing-wave factor, forward power given",
    equation="h_s = (1 + Gamma)**2",
    symbols={"h_s": _H, "Gamma": ("reflection on the line at the joint", "1")},
    validity="joint at the current (or voltage) maximum: the conservative place",
    source="derived",
)
def hot_spot_forward(Gamma):
    return (1 + Gamma) ** 2


@formula(
    title="Standing-wave factor, net power given",
    equation="h_s = S",
    symbols={"h_s": _H, "S": ("voltage standing wave ratio at the joint", "1")},
    validity="joint at the current (or voltage) maximum; V² max = P Z_0 S at fixed net power",
    source="derived",
)
def hot_spot_net(S):
    return S * 1.0


@formula(
    title="Thermal resistance behind the published rating",
    equation="R_r = (t_r - t_ar)/(P_r*a_r)",
    symbols={
        "R_r": _R,
        "t_r": ("contact temperature behind the rating", "°C"),
        "t_ar": ("air temperature behind the rating", "°C"),
        "P_r": ("rated average power", "W"),
        "a_r": ("share turned into heat at the rating's frequency", "1"),
    },
    validity="matched line, steady state, at the rating's own conditions",
    source="derived",
)
def rated_thermal_resistance(t_r, t_ar, P_r, a_r):
    return (t_r - t_ar) / (P_r * a_r)


@formula(
    title="Thermal resistance at the site's altitude",
    equation="R_th = R_r*(1 + b*(1/(1 - k + k*sqrt(p_r)) - 1))",
    symbols={
        "R_th": _R,
        "R_r": ("thermal resistance behind the rating", "K/W"),
        "b": ("share of it between body and air", "1"),
        "k": ("convective share of the body's heat shedding", "1"),
        "p_r": ("air pressure over that behind the rating", "1"),
    },
    validity="laminar natural convection: film coefficient follows the square root of pressure",
    source="incropera",
)
def site_thermal_resistance(R_r, b, k, p_r):
    return R_r * (1 + b * (1 / (1 - k + k * np.sqrt(p_r)) - 1))


@formula(
    title="Rise of the body in the sun",
    equation="dt_s = E*alpha*D_b*l_b*R_b",
    symbols={
        "dt_s": ("temperature rise by the sun", "K"),
        "E": ("irradiance", "W/m²"),
        "alpha": ("absorptance of the surface", "1"),
        "D_b": ("diameter of the mated body", "m"),
        "l_b": ("length of the mated body", "m"),
        "R_b": ("thermal resistance from body to air", "K/W"),
    },
    validity="sun square on the side of the body, no wind",
    source="derived",
)
def solar_rise(E, alpha, D_b, l_b, R_b):
    return E * alpha * D_b * l_b * R_b


@formula(
    title="Power allowed by heat",
    equation="P_h = Max(t_max - t_a - dt_s, 0)/(R_th*a*h_s*D_m*s_t)",
    symbols={
        "P_h": ("peak envelope power allowed by heat", "W"),
        "t_max": ("allowed contact temperature", "°C"),
        "t_a": ("air temperature in the shade", "°C"),
        "dt_s": ("temperature rise by the sun", "K"),
        "R_th": _R,
        "a": _A,
        "h_s": _H,
        "D_m": _DUTY,
        "s_t": _SHARE,
    },
    validity="steady state; joint at a current maximum",
    source="derived",
)
def heat_allowed_power(t_max, t_a, dt_s, R_th, a, h_s, D_m, s_t):
    return np.maximum(t_max - t_a - dt_s, 0) / (R_th * a * h_s * D_m * s_t)


@formula(
    title="Temperature of the centre contact",
    equation="t_c = t_a + dt_s + P_avg*h_s*a*R_th",
    symbols={
        "t_c": ("temperature of the centre contact", "°C"),
        "t_a": ("air temperature in the shade", "°C"),
        "dt_s": ("temperature rise by the sun", "K"),
        "P_avg": ("average power", "W"),
        "h_s": _H,
        "a": _A,
        "R_th": _R,
    },
    validity="steady state; joint at a current maximum",
    source="derived",
)
def contact_temperature(t_a, dt_s, P_avg, h_s, a, R_th):
    return t_a + dt_s + P_avg * h_s * a * R_th


@formula(
    title="Margin",
    equation="M = 10*log(P_a, 10) - 10*log(P, 10)",
    symbols={"M": ("margin", "dB"), "P_a": ("allowed peak envelope power", "W"), "P": _P},
    validity="P > 0; 0 dB is at the limit",
    source="derived",
)
def margin(P_a, P):
    return 10 * np.log10(P_a) - 10 * np.log10(P)
