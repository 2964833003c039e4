"""What a transmitter does at a bad load."""

import numpy as np

from .formula import Number, formula

__all__ = ["folded_share"]


@formula(
    title="Share of its power that a transmitter keeps",
    equation="g = Min(1, (Gamma_h/Gamma_t)**2)",
    symbols={
        "g": ("forward power over that at a match", "1"),
        "Gamma_h": ("reflection up to which it holds its power, magnitude", "1", 0, 1),
        "Gamma_t": ("reflection at its output, magnitude", "1", 1e-6, 1),
    },
    validity="a protection that lets reflected power grow no further; how steeply real ones act differs",
    source="fold_back_reports",
)
def folded_share(Gamma_h: Number, Gamma_t: Number) -> Number:
    return np.minimum(1, (Gamma_h / Gamma_t) ** 2)
