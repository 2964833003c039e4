"""The temperature of a mated pair: two nodes, centre contact and body, with the cables' conductors as fins.

Heat balances of the two nodes, solved; a side without a cable has no conductance.
"""

import numpy as np

from .formula import Number, formula
from .symbols import BORE, CENTRE_DIAMETER, LINE_IMPEDANCE, SECTION_LENGTH, bore_clears

__all__ = [
    "body_capacity",
    "body_conductance",
    "body_heat",
    "body_rise",
    "centre_heat",
    "contact_capacity",
    "contact_rise",
    "hot_conductivity",
    "node_resistance",
    "radial_conductance",
    "shared_by_body",
]

_G_CB = ("conductance from centre contact to body", "W/K", 1e-4, 10)
_G_B = ("conductance from body to air", "W/K", 1e-4, 10)
_TIME_SHARE = ("share of the time that counts", "1", 1e-7, 1)
_RISE = ("K", -400, 1e3)
_INNER_FINS = {
    "G_i1": ("conductance into the first cable's inner conductor", "W/K", 0, 10),
    "G_i2": ("conductance into the second cable's inner conductor", "W/K", 0, 10),
}
_INNER_RISES = {
    "u_i1": ("rise of the first cable's inner conductor, far away", *_RISE),
    "u_i2": ("rise of the second cable's inner conductor, far away", *_RISE),
}
_HEAT = ("W", 0, 20)
_FACTOR = ("heat over that of a matched wave", "1", 0, 400)


@formula(
    title="Conductivity of a metal that is hot",
    equation="sigma_t = sigma/(1 + 0.00393*(t - 20))",
    symbols={
        "sigma_t": ("conductivity at temperature", "S/m"),
        "sigma": ("conductivity at 20 °C", "S/m", 1e5, 1e8),
        "t": ("temperature", "°C", -60, 500),
    },
    validity="coefficient of copper, which pure metals share and alloys stay below",
    source="iec_60028",
)
def hot_conductivity(sigma: Number, t: Number) -> Number:
    return sigma / (1 + 0.00393 * (t - 20))


@formula(
    title="Heat made at the centre by 1 W",
    equation="Q_c = h*((R_si*l/(pi*d) + R_i + R_a)/Z_0 + a_d/2)",
    symbols={
        "Q_c": ("heat made at the centre", "W"),
        "h": _FACTOR,
        "R_si": ("surface resistance of the centre conductor", "Ω", 1e-6, 10),
        "l": SECTION_LENGTH,
        "d": CENTRE_DIAMETER,
        "R_i": ("centre-contact resistance", "Ω", 0, 0.1),
        "R_a": ("resistance added by wear, corrosion or your measurement", "Ω", 0, 6),
        "Z_0": LINE_IMPEDANCE,
        "a_d": ("share lost in the dielectric", "1", 0, 3),
    },
    validity="what is added counts at the centre; half of the dielectric's heat counts as made inside",
    source="derived",
)
def centre_heat(
    h: Number, R_si: Number, l: Number, d: Number, R_i: Number, R_a: Number, Z_0: Number, a_d: Number
) -> Number:
    return h * ((R_si * l / (np.pi * d) + R_i + R_a) / Z_0 + a_d / 2)


@formula(
    title="Heat made in the body by 1 W",
    equation="Q_b = Max(h*a - Q_c, 0)",
    symbols={
        "Q_b": ("heat made in the body", "W"),
        "h": _FACTOR,
        "a": ("share of a matched wave's power turned into heat", "1", 1e-6, 0.99),
        "Q_c": ("heat made at the centre", *_HEAT),
    },
    validity="what isn't made at the centre is made in the body",
    source="derived",
)
def body_heat(h: Number, a: Number, Q_c: Number) -> Number:
    return np.maximum(h * a - Q_c, 0)


@formula(
    title="Conductance from centre contact to body",
    equation="G_cb = 2*pi*(k_s*l_s + k_a*(l - l_s))/log(D/d)",
    symbols={
        "G_cb": ("radial thermal conductance", "W/K"),
        "k_s": ("thermal conductivity of the supports", "W/(m·K)", 0.01, 10),
        "l_s": ("length of the supports", "m", 1e-5, 0.1),
        "k_a": ("thermal conductivity of what fills the rest", "W/(m·K)", 0.01, 10),
        "l": SECTION_LENGTH,
        "D": BORE,
        "d": CENTRE_DIAMETER,
    },
    validity="radial conduction only; gaps too small for convection",
    holds=lambda l_s, l, D, d: l_s <= l and bore_clears(D, d),
    source="incropera",
)
def radial_conductance(k_s: Number, l_s: Number, k_a: Number, l: Number, D: Number, d: Number) -> Number:
    return 2 * np.pi * (k_s * l_s + k_a * (l - l_s)) / np.log(D / d)


@formula(
    title="Conductance from body to air",
    equation="G_b = l_b/R_a",
    symbols={
        "G_b": ("thermal conductance from body to air", "W/K"),
        "l_b": ("length of the mated body", "m", 1e-4, 1),
        "R_a": ("thermal resistance between a metre of it and the air", "K·m/W", 0.05, 500),
    },
    validity="body at one temperature; its ends shed nothing",
    source="derived",
)
def body_conductance(l_b: Number, R_a: Number) -> Number:
    return l_b / R_a


@formula(
    title="Share of the centre's heat that the body takes",
    equation="s = G_cb/(G_cb + G_i1 + G_i2)",
    symbols={"s": ("share of the centre's heat that goes to the body", "1"), "G_cb": _G_CB, **_INNER_FINS},
    validity="the rest flows into the cables' inner conductors",
    source="derived",
)
def shared_by_body(G_cb: Number, G_i1: Number, G_i2: Number) -> Number:
    return G_cb / (G_cb + G_i1 + G_i2)


@formula(
    title="Rise of the body",
    equation="u_b = ((Q_b + s*Q_c)*s_b + s*(G_i1*u_i1 + G_i2*u_i2) + G_o1*u_o1 + G_o2*u_o2 + G_b*u_a)"
    "/(G_b + G_o1 + G_o2 + s*(G_i1 + G_i2))",
    symbols={
        "u_b": ("rise of the body", "K"),
        "Q_c": ("heat made at the centre", *_HEAT),
        "Q_b": ("heat made in the body", *_HEAT),
        "s_b": _TIME_SHARE,
        "s": ("share of the centre's heat that goes to the body", "1", 0, 1),
        **_INNER_FINS,
        **_INNER_RISES,
        "G_o1": ("conductance into the first cable's outer conductor", "W/K", 0, 10),
        "u_o1": ("rise of the first cable's outer conductor, far away", *_RISE),
        "G_o2": ("conductance into the second cable's outer conductor", "W/K", 0, 10),
        "u_o2": ("rise of the second cable's outer conductor, far away", *_RISE),
        "G_b": _G_B,
        "u_a": ("rise of the body by the sun if it stood alone", *_RISE),
    },
    validity="heat balance of body and centre together, steady but for the shares of time",
    source="derived",
)
def body_rise(
    Q_c: Number,
    Q_b: Number,
    s_b: Number,
    s: Number,
    G_i1: Number,
    u_i1: Number,
    G_i2: Number,
    u_i2: Number,
    G_o1: Number,
    u_o1: Number,
    G_o2: Number,
    u_o2: Number,
    G_b: Number,
    u_a: Number,
) -> Number:
    brought = s * (G_i1 * u_i1 + G_i2 * u_i2) + G_o1 * u_o1 + G_o2 * u_o2 + G_b * u_a
    return ((Q_b + s * Q_c) * s_b + brought) / (G_b + G_o1 + G_o2 + s * (G_i1 + G_i2))


@formula(
    title="Rise of the centre contact",
    equation="u_c = (Q_c*s_c + G_cb*u_b + G_i1*u_i1 + G_i2*u_i2)/(G_cb + G_i1 + G_i2)",
    symbols={
        "u_c": ("rise of the centre contact", "K"),
        "Q_c": ("heat made at the centre", *_HEAT),
        "s_c": _TIME_SHARE,
        "G_cb": _G_CB,
        "u_b": ("rise of the body", *_RISE),
        **_INNER_FINS,
        **_INNER_RISES,
    },
    validity="heat balance of the centre, steady but for the share of time",
    source="derived",
)
def contact_rise(
    Q_c: Number,
    s_c: Number,
    G_cb: Number,
    u_b: Number,
    G_i1: Number,
    u_i1: Number,
    G_i2: Number,
    u_i2: Number,
) -> Number:
    return (Q_c * s_c + G_cb * u_b + G_i1 * u_i1 + G_i2 * u_i2) / (G_cb + G_i1 + G_i2)


@formula(
    title="Heat capacity of the body",
    equation="C_b = c*x_m*pi*D_b**2*l_b/4",
    symbols={
        "C_b": ("heat capacity of the mated body", "J/K"),
        "c": ("heat capacity of its metal", "J/(m³·K)", 1e5, 1e7),
        "x_m": ("share of the body's volume that is metal", "1", 0.05, 1),
        "D_b": ("diameter of the mated body", "m", 1e-3, 0.2),
        "l_b": ("length of the mated body", "m", 1e-4, 1),
    },
    validity="the plastics in it left out",
    source="derived",
)
def body_capacity(c: Number, x_m: Number, D_b: Number, l_b: Number) -> Number:
    return c * x_m * np.pi * D_b**2 * l_b / 4


@formula(
    title="Heat capacity of the centre contact",
    equation="C_c = c*pi*d**2*l/4",
    symbols={
        "C_c": ("heat capacity of the centre contact", "J/K"),
        "c": ("heat capacity of its metal", "J/(m³·K)", 1e5, 1e7),
        "d": CENTRE_DIAMETER,
        "l": SECTION_LENGTH,
    },
    validity="solid pin over the length of the mated section",
    source="derived",
)
def contact_capacity(c: Number, d: Number, l: Number) -> Number:
    return c * np.pi * d**2 * l / 4


@formula(
    title="Thermal resistance around a node",
    equation="R_n = 1/(G_1 + G_2 + G_3)",
    symbols={
        "R_n": ("thermal resistance of all paths from the node", "K/W"),
        "G_1": ("conductance of a path", "W/K", 1e-4, 10),
        "G_2": ("conductance of another path, 0 where there is none", "W/K", 0, 10),
        "G_3": ("conductance of a third path, 0 where there is none", "W/K", 0, 10),
    },
    validity="all paths side by side",
    source="derived",
)
def node_resistance(G_1: Number, G_2: Number, G_3: Number) -> Number:
    return 1 / (G_1 + G_2 + G_3)
