"""What an SWR meter of limited directivity shows."""

import numpy as np

from .formula import Number, formula

__all__ = ["least_reading", "most_reading"]

_GAMMA = ("reflection coefficient behind the meter, magnitude", "1", 0, 0.9)
_D = ("directivity of the meter", "dB", 10, 80)


@formula(
    title="Greatest reflection that a meter may show",
    equation="Gamma_m = Min(Gamma + 10**(-D/20), 1)",
    symbols={"Gamma_m": ("greatest reading", "1"), "Gamma": _GAMMA, "D": _D},
    validity="what leaks past its couplers adds to the reflection in phase",
    source="microwave_textbook",
)
def most_reading(Gamma: Number, D: Number) -> Number:
    return np.minimum(Gamma + 10 ** (-D / 20), 1)


@formula(
    title="Least reflection that a meter may show",
    equation="Gamma_n = Max(Gamma - 10**(-D/20), 0)",
    symbols={"Gamma_n": ("least reading", "1"), "Gamma": _GAMMA, "D": _D},
    validity="what leaks past its couplers takes from the reflection in phase",
    source="microwave_textbook",
)
def least_reading(Gamma: Number, D: Number) -> Number:
    return np.maximum(Gamma - 10 ** (-D / 20), 0)
