"""From the rise that 1 W makes to the power that heat allows: time on the air, standing wave, margin."""

import numpy as np

from .formula import Number, formula
from .symbols import PEAK_POWER, STANDING_WAVE_FACTOR

__all__ = [
    "cycle_share",
    "documented_rise",
    "heat_allowed_power",
    "hot_spot_forward",
    "hot_spot_net",
    "margin",
    "temperature_reached",
]

_DUTY = ("duty factor of the mode while keyed, mean over peak", "1", 0.01, 1)
_SHARE = ("share of the time that counts for heat", "1", 1e-7, 1)
_AIR = ("air temperature in the shade", "°C", -60, 80)
_SUN = ("temperature rise by the sun", "K", 0, 100)
_RISE = ("temperature rise by 1 W of average power", "K", 1e-9, 1e3)


@formula(
    title="Share of the time that counts for heat, periodic overs",
    equation="s_t = (1 - exp(-t_on/tau))/(1 - exp(-(t_on + t_off)/tau))",
    symbols={
        "s_t": _SHARE,
        "t_on": ("length of one over", "s", 0.01, 86_400),
        "t_off": ("pause between overs", "s", 0.01, 86_400),
        "tau": ("thermal time constant", "s", 0.01, 1e5),
    },
    validity="first-order heating, periodic steady state: temperature at the end of an over",
    source="derived",
)
def cycle_share(t_on: Number, t_off: Number, tau: Number) -> Number:
    return np.expm1(-t_on / tau) / np.expm1(-(t_on + t_off) / tau)


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
    title="Power allowed by heat",
    equation="P_h = Max(t_max - t_a - dt_s, 0)/(u*D_m)",
    symbols={
        "P_h": ("peak envelope power allowed by heat", "W"),
        "t_max": ("allowed temperature", "°C", 20, 500),
        "t_a": _AIR,
        "dt_s": _SUN,
        "u": _RISE,
        "D_m": _DUTY,
    },
    validity="rises in proportion to power, films held at those of the limit",
    source="derived",
)
def heat_allowed_power(t_max: Number, t_a: Number, dt_s: Number, u: Number, D_m: Number) -> Number:
    return np.maximum(t_max - t_a - dt_s, 0) / (u * D_m)


@formula(
    title="Rise held at a documented rating",
    equation="u_d = u*Max(P_n/P_r, 1)",
    symbols={
        "u_d": ("temperature rise by 1 W of average power", "K"),
        "u": ("the same, computed", "K", 1e-9, 1e3),
        "P_n": ("power computed at the conditions of the rating", "W", 1e-3, 1e9),
        "P_r": ("documented average power", "W", 1e-3, 1e6),
    },
    validity="rating and computation err alike at other conditions; a rating above the computed power changes nothing",
    source="derived",
)
def documented_rise(u: Number, P_n: Number, P_r: Number) -> Number:
    return u * np.maximum(P_n / P_r, 1)


@formula(
    title="Temperature at a power",
    equation="t = t_a + dt_s + P*D_m*u",
    symbols={
        "t": ("temperature reached", "°C"),
        "t_a": _AIR,
        "dt_s": _SUN,
        "P": PEAK_POWER,
        "D_m": _DUTY,
        "u": _RISE,
    },
    validity="films held at those of the limit: near it exact, below it a little cool",
    source="derived",
)
def temperature_reached(t_a: Number, dt_s: Number, P: Number, D_m: Number, u: Number) -> Number:
    return t_a + dt_s + P * D_m * u


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
