"""What a fault would show at a joint of a fitted line, once all else that may be off has followed it."""

from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray
from .fit import Fit
from .swept_line import SweptLine

__all__ = ["Visibility", "visibilities"]

MODERATE = {"ohm": 20.0, "henry": 1e-7, "farad": 1e-11}
"""Faults that a sweep must be able to show at a joint to judge it: any one of them is enough."""
LINEAR_OHM, LINEAR_FARAD = 50.0, 5e-11
"""Beyond a line's impedance the reflection no longer grows with a resistance in series; a wet joint adds less
capacitance than that (common practice, no source)."""


class Visibility(NamedTuple):
    """What shows at a joint: the least resistance in series [Ω] and capacitance across [F], infinite for none."""

    least_ohm: float
    least_farad: float
    judged: bool
    """Whether anything shows."""


def visibilities(line: SweptLine, fit: Fit, parts: list[int], evidence: float, floor: float) -> list[Visibility]:
    """Of some joints by their parts, at a fit: what would reach some evidence and make some reflection, rms."""
    count = line.parameter_count
    noise = fit.noise_variance * 2 * line.frequency_hz.size / line.numbers
    rows = fit.prediction.slopes[:count].view(np.float64)
    normal = rows @ rows.T / noise + np.eye(count)
    found = []
    for part in parts:
        [plane] = [plane for plane, piece in enumerate(fit.prediction.pieces) if piece.part == part and piece.is_lumped]
        current, voltage = fit.prediction.waves.current[plane], fit.prediction.waves.voltage[plane + 1]
        omega, seen, z_0 = 2 * np.pi * line.frequency_hz, fit.prediction.by_reflection, line.impedance_ohm
        by_ohm = seen * current**2 / (2 * z_0)
        by_siemens = -seen * voltage**2 * z_0 / 2

        def least(slope: ComplexArray) -> float:
            """The least size that reaches both."""
            values = slope.view(np.float64)
            shared = rows @ values / noise
            information = float(values @ values) / noise - float(shared @ np.linalg.solve(normal, shared))
            made = float(np.sqrt(np.mean(np.abs(slope) ** 2)))
            if information <= 0 or made <= 0:
                return np.inf
            return max(np.sqrt(2 * evidence / information), floor / made)

        ohm = least(by_ohm)
        henry, farad = least(1j * omega * by_ohm), least(1j * omega * by_siemens)
        judged = ohm < MODERATE["ohm"] or henry < MODERATE["henry"] or farad < MODERATE["farad"]
        ohm, farad = ohm if ohm < LINEAR_OHM else np.inf, farad if farad < LINEAR_FARAD else np.inf
        found.append(Visibility(ohm, farad, judged))
    return found
