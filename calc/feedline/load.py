"""The reflection of what a line ends in: an antenna known in one of several ways, or a known end."""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ..errors import InputError
from ..formulas.antenna import edge_reactance, quality_factor, resonant_reactance
from ..formulas.match import reflection_of_vswr
from .elements import (
    DummyLoad,
    GivenImpedance,
    GivenVswr,
    ImpedanceTable,
    KnownEnd,
    Load,
    MeasuredLoad,
    ResonantAntenna,
)
from .measurement import refuse_out_of_reach, usable_reflection
from .part import within

__all__ = ["LIKELY_PHASES", "MATCHED", "LoadReflection", "load_notes", "load_reflection"]

FIELD = "load.touchstone"

KNOWN_ENDS = {"short": -1.0, "open": 1.0, "matched": 0.0}
"""Their reflection."""

LIKELY_PHASES = 12
"""Even steps round the circle where an answer is drawn over many frequencies: each errs by half a step, 15°, which is
a seventh of a decibel at the most."""


@dataclass(frozen=True)
class LoadReflection:
    """Reflection [1] at any frequencies [Hz], in each way that the load can be by what is known of it.

    `choice` names such a way by a number from 0 up to 1 along axis 0; the answer has its ways there,
    a single one where all is known, and the frequencies along its last axis.
    """

    at: Callable[[np.ndarray, np.ndarray], np.ndarray]
    ways: int
    """How many there are; 0 for a whole circle of them."""

    def choices(self, most: int) -> np.ndarray:
        """Even steps through its ways, `most` where there is a circle of them."""
        count = self.ways or most
        return np.arange(count) / count

    def likely(self, frequency: np.ndarray) -> np.ndarray:
        """Every way it can be, `LIKELY_PHASES` of a circle."""
        return self.at(frequency, self.choices(LIKELY_PHASES))

    @property
    def known(self) -> bool:
        """Whether it can be but one way."""
        return self.ways == 1


def load_reflection(load: Load | KnownEnd, impedance: float, wanted_hz: float) -> LoadReflection:
    """The reflection against `impedance` [Ω] at any frequencies [Hz], not a number where the load is not known.

    Raises InputError for figures that do not reach `wanted_hz`, and for an antenna
    whose bandwidth contradicts its VSWR.
    """
    if isinstance(load, GivenVswr | DummyLoad):
        return _of_vswr(load)
    if isinstance(load, ResonantAntenna):
        return _resonant(load, impedance)
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

    return _only(reflection_at)


def load_notes(load: Load | KnownEnd) -> list[str]:
    """A sentence on what of a load's measurement had to be mended."""
    return usable_reflection(load.touchstone, FIELD).notes if isinstance(load, MeasuredLoad) else []


def _only(reflection_at: Callable[[np.ndarray], np.ndarray]) -> LoadReflection:
    """That of a load which is known."""

    def at(frequency: np.ndarray, choice: np.ndarray) -> np.ndarray:
        reflection = reflection_at(frequency)
        return np.broadcast_to(reflection, (np.size(choice), *np.shape(frequency)))

    return LoadReflection(at, 1)


def _constant(reflection: complex | np.ndarray) -> LoadReflection:
    return _only(lambda frequency: np.full(np.shape(frequency), reflection))


def _of_vswr(load: GivenVswr | DummyLoad) -> LoadReflection:
    size = float(reflection_of_vswr(load.vswr))
    angle = load.angle_deg if isinstance(load, GivenVswr) else None
    if angle is not None or size == 0:
        return _constant(size * np.exp(1j * np.deg2rad(angle or 0.0)))

    def at(frequency: np.ndarray, choice: np.ndarray) -> np.ndarray:
        circle = size * np.exp(2j * np.pi * np.ravel(choice))
        return np.broadcast_to(circle[:, None], (circle.size, *np.shape(frequency)))

    return LoadReflection(at, 0)


def _resonant(load: ResonantAntenna, impedance: float) -> LoadReflection:
    """Its resistance lies above the line's impedance or below: a VSWR does not say."""
    if load.bandwidth_vswr <= load.vswr:
        raise InputError("load.bandwidth_vswr", load.bandwidth_vswr, f"more than the SWR at resonance, {load.vswr:g}")
    if load.bandwidth_hz >= load.resonance_hz:
        raise InputError("load.bandwidth_hz", load.bandwidth_hz, "less than the frequency of resonance")
    edge = reflection_of_vswr(load.bandwidth_vswr)
    resistances = [impedance / load.vswr] + ([impedance * load.vswr] if load.vswr > 1 else [])
    qualities = [
        quality_factor(edge_reactance(edge, resistance, impedance), load.resonance_hz, resistance, load.bandwidth_hz)
        for resistance in resistances
    ]

    def at(frequency: np.ndarray, choice: np.ndarray) -> np.ndarray:
        chosen = (np.ravel(choice) * len(resistances)).astype(int)
        curves = [
            _reflection(resistance, resonant_reactance(resistance, quality, frequency, load.resonance_hz), impedance)
            for resistance, quality in zip(resistances, qualities, strict=True)
        ]
        return np.stack(curves)[chosen]

    return LoadReflection(at, len(resistances))


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

    return _only(reflection_at)


def _reflection(resistance: float, reactance: float | np.ndarray, impedance: float) -> complex | np.ndarray:
    load = resistance + 1j * reactance
    return (load - impedance) / (load + impedance)


MATCHED = _constant(0j)
"""That of a load which reflects nothing."""
