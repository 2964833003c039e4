"""Ratios of waves as an answer gives them: decibels, VSWR, impedance; null where there is no finite number."""

import numpy as np

from ..formulas.line import decibels
from ..formulas.match import return_loss, vswr_of_reflection
from ..numeric.json_numbers import fine
from .results import Terminal

__all__ = ["loss_db", "terminal", "vswr"]


def terminal(reflection: complex, impedance: float, known: bool) -> Terminal:
    """What is seen at a plane of reflection against `impedance` [Ω]; no impedance where its phase is not known."""
    seen = impedance * (1 + np.complex128(reflection)) / (1 - np.complex128(reflection))
    return Terminal(
        vswr=vswr(reflection),
        return_loss_db=fine(return_loss(np.abs(reflection))),
        resistance_ohm=fine(seen.real) if known else None,
        reactance_ohm=fine(seen.imag) if known else None,
    )


def vswr(reflection: complex) -> float | None:
    """Of a reflection; none for a total one."""
    magnitude = float(np.abs(reflection))
    return fine(vswr_of_reflection(magnitude)) if magnitude < 1 else None


def loss_db(ratio: float) -> float | None:
    """Loss of a power ratio out over in [dB]; none where nothing comes out."""
    return fine(-decibels(ratio)) if np.isfinite(ratio) and ratio > 0 else None
