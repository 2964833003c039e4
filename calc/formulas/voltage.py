"""Peak voltage at the joint, the voltage it is rated for, and the air gap's own breakdown."""

import numpy as np

from .formula import Number, formula
from .symbols import BORE, CENTRE_DIAMETER, LINE_IMPEDANCE, PEAK_POWER, STANDING_WAVE_FACTOR, bore_clears

__all__ = [
    "air_gap",
    "allowed_peak_voltage",
    "peak_voltage",
    "peek_onset_voltage",
    "uniform_breakdown_voltage",
    "voltage_allowed_power",
]

_DELTA = ("relative air density", "1", 5e-3, 1.5)


@formula(
    title="Peak voltage at a voltage maximum",
    equation="V_p = sqrt(2*P*Z_0*h_s)",
    symbols={
        "V_p": ("peak voltage", "V"),
        "P": PEAK_POWER,
        "Z_0": LINE_IMPEDANCE,
        "h_s": STANDING_WAVE_FACTOR,
    },
    validity="lossless line around the joint",
    source="derived",
)
def peak_voltage(P: Number, Z_0: Number, h_s: Number) -> Number:
    return np.sqrt(2 * P * Z_0 * h_s)


@formula(
    title="Allowed peak voltage",
    equation="V_a = sqrt(2)*V_w*Min(1, delta)",
    symbols={
        "V_a": ("allowed peak voltage", "V"),
        "V_w": ("rated working voltage at sea level, rms", "V", 1, 1e4),
        "delta": _DELTA,
    },
    validity="breakdown follows air density; denser air never raises a rating",
    source="derived",
)
def allowed_peak_voltage(V_w: Number, delta: Number) -> Number:
    return np.sqrt(2) * V_w * np.minimum(1, delta)


@formula(
    title="Power allowed by voltage",
    equation="P_v = V_a**2/(2*Z_0*h_s)",
    symbols={
        "P_v": ("peak envelope power allowed by voltage", "W"),
        "V_a": ("allowed peak voltage", "V", 1, 1e4),
        "Z_0": LINE_IMPEDANCE,
        "h_s": STANDING_WAVE_FACTOR,
    },
    validity="joint at a voltage maximum",
    source="derived",
)
def voltage_allowed_power(V_a: Number, Z_0: Number, h_s: Number) -> Number:
    return V_a**2 / (2 * Z_0 * h_s)


@formula(
    title="Air gap of the mating plane",
    equation="g = (D - d)/2",
    symbols={
        "g": ("radial gap", "m"),
        "D": BORE,
        "d": CENTRE_DIAMETER,
    },
    validity="coaxial conductors",
    holds=bore_clears,
    source="derived",
)
def air_gap(D: Number, d: Number) -> Number:
    return (D - d) / 2


@formula(
    title="Breakdown of a uniform air gap (Paschen fit)",
    equation="V_b = 2.422e6*delta*g + 6.08e4*sqrt(delta*g)",
    symbols={
        "V_b": ("breakdown voltage, peak", "V"),
        "delta": _DELTA,
        "g": ("radial gap", "m", 1e-4, 0.1),
    },
    validity="1e-4 m < delta*g < 0.2 m; uniform field, so optimistic for a thin pin",
    holds=lambda delta, g: 1e-4 < delta * g < 0.2,
    source="paschen_fit",
)
def uniform_breakdown_voltage(delta: Number, g: Number) -> Number:
    return 2.422e6 * delta * g + 6.08e4 * np.sqrt(delta * g)


@formula(
    title="Corona onset between coaxial cylinders (Peek)",
    equation="V_k = 3.1e6*delta*(1 + 0.0308/sqrt(delta*d/2))*d/2*log(D/d)",
    symbols={
        "V_k": ("onset voltage, peak", "V"),
        "delta": _DELTA,
        "d": CENTRE_DIAMETER,
        "D": BORE,
    },
    validity="polished, dry, D/d above about 2.7; Peek's constants of concentric cylinders: 31 kV/cm, 0.308 cm^0.5",
    holds=lambda d, D: 2.7 * d < D,
    source="peek_cylinders",
)
def peek_onset_voltage(delta: Number, d: Number, D: Number) -> Number:
    return 3.1e6 * delta * (1 + 0.0308 / np.sqrt(delta * d / 2)) * d / 2 * np.log(D / d)
