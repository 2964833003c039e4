"""Pressure and density of the air at the joint (standard atmosphere)."""

import numpy as np

from .constants import ZERO_CELSIUS_K
from .formula import Number, formula

__all__ = ["air_density_ratio", "geopotential_altitude", "pressure_ratio"]

_H = ("geopotential altitude", "m", 0, 32_000)
_PRESSURE = ("pressure over the pressure at sea level", "1", 0.01, 1.1)


@formula(
    title="Geopotential altitude",
    equation="H = 6356766*h/(6356766 + h)",
    symbols={"H": _H, "h": ("height above sea level", "m", 0, 32_000)},
    validity="0 <= h <= 32 km; nominal earth radius 6356766 m",
    source="icao_7488",
)
def geopotential_altitude(h: Number) -> Number:
    return 6356766 * h / (6356766 + h)


@formula(
    title="Air pressure against sea level",
    equation="p_r = Piecewise((1 - 0.0065*H/288.15, H <= 11000), (1, True))**5.25588"
    " * Piecewise((1, H <= 11000), (0.223361*exp(-(Min(H, 20000) - 11000)/6341.62), True))"
    " * Piecewise((1, H <= 20000), ((1 + 0.001*(H - 20000)/216.65)**(-34.1632), True))",
    symbols={
        "p_r": _PRESSURE,
        "H": _H,
    },
    validity="0 <= H <= 32 km: troposphere, tropopause and lower stratosphere",
    source="icao_7488",
)
def pressure_ratio(H: Number) -> Number:
    troposphere = (1 - 0.0065 * np.minimum(H, 11000) / 288.15) ** 5.25588
    tropopause = 0.223361 * np.exp(-(np.minimum(np.maximum(H, 11000), 20000) - 11000) / 6341.62)
    stratosphere = (1 + 0.001 * np.maximum(H - 20000, 0) / 216.65) ** -34.1632
    return np.where(H <= 11000, troposphere, tropopause * stratosphere)[()]


@formula(
    title="Relative air density",
    equation="delta = p_r*298.15/(t + 273.15)",
    symbols={
        "delta": ("air density against 25 °C at sea level", "1"),
        "p_r": _PRESSURE,
        "t": ("air temperature", "°C", -60, 80),
    },
    validity="dry air as an ideal gas; 25 °C and 760 mm of mercury give 1",
    source="peek_1929",
)
def air_density_ratio(p_r: Number, t: Number) -> Number:
    return p_r * 298.15 / (t + ZERO_CELSIUS_K)
