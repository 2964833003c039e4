"""The reflection of what a line ends in: an antenna known in one of several ways, or a known end."""

from collections.abc import Callable

import numpy as np

from ..errors import InputError
from ..formulas.match import reflection_of_vswr
from .elements import GivenImpedance, GivenVswr, ImpedanceTable, KnownEnd, Load, MeasuredLoad
from .measurement import refuse_out_of_reach, usable_reflection
from .part import within

__all__ = ["LoadReflection", "load_notes", "load_reflection"]

LoadReflection = Callable[[np.ndarray], np.ndarray]
"""Reflection [1] at any frequencies [Hz]."""

FIELD = "load.touchstone"

KNOWN_ENDS = {"short": -1.0, "open": 1.0, "matched": 0.0}
"""Their reflection."""


def load_reflection(load: Load | KnownEnd, impedance: float, wanted_hz: float) -> LoadReflection:
    """The reflection against `impedance` [Ω] at any frequencies [Hz], not a number where the load is not known.

    Raises InputError for figures that do not reach `wanted_hz`.
    """
    if isinstance(load, GivenVswr):
        return _constant(reflection_of_vswr(load.vswr) * np.exp(1j * np.deg2rad(load.angle_deg)))
    if isinstance(load, GivenImpedance):
        return _constant(_reflection(load.resistance_ohm, load.reactance_ohm, impedance))
    if isinstance(load, KnownEnd):
        return _constant(complex(KNOWN_ENDS[load.what]))
    if isinstance(load, ImpedanceTable):
        return _table(load, impedance, wanted_hz)
    measured, _ = usable_reflection(load.touchstone, FIELD)
    refuse_out_of_reach(FIELD, measured.frequencies_hz, wanted_hz)
    # from the file's reference to the line's
    step = (measured.reference_ohm - impedance) / (measured.reference_ohm + impedance)

    def reflection_at(frequency: np.ndarray) -> np.ndarray:
        at_reference = within(measured, frequency)[..., 0, 0]
        return (at_reference + step) / (1 + at_reference * step)

    return reflection_at


def load_notes(load: Load | KnownEnd) -> list[str]:
    """A sentence on what of a load's measurement had to be mended."""
    return usable_reflection(load.touchstone, FIELD).notes if isinstance(load, MeasuredLoad) else []


def _constant(reflection: complex) -> LoadReflection:
    return lambda frequency: np.full(np.shape(frequency), reflection)


def _table(load: ImpedanceTable, impedance: float, wanted_hz: float) -> LoadReflection:
    frequencies = np.array([point.frequency_hz for point in load.points], dtype=np.float64)
    for before in np.flatnonzero(np.diff(frequencies) <= 0).tolist():
        index = before + 1
        field = f"load.points[{index}].frequency_hz"
        raise InputError(field, load.points[index].frequency_hz, "more than the one before")
    refuse_out_of_reach("load.points", frequencies, wanted_hz)
    reflections = np.array([_reflection(point.resistance_ohm, point.reactance_ohm, impedance) for point in load.points])

    def reflection_at(frequency: np.ndarray) -> np.ndarray:
        inside = (frequency >= frequencies[0]) & (frequency <= frequencies[-1])
        real, imaginary = (np.interp(frequency, frequencies, part) for part in (reflections.real, reflections.imag))
        return np.where(inside, real + 1j * imaginary, np.nan)

    return reflection_at


def _reflection(resistance: float, reactance: float, impedance: float) -> complex:
    load = complex(resistance, reactance)
    return (load - impedance) / (load + impedance)
