"""What a tuner is set to and what its parts bear, in numbers and a sentence."""

from typing import Literal

import numpy as np
from msgspec import Struct

from ..formulas.line import decibels
from ..formulas.match import vswr_of_reflection
from ..numeric.rounding import significant
from ..numeric.units import engineering
from ..waves.matching import MATCHED
from ..waves.two_port import Waves
from .tuner import COIL, TunerModel

__all__ = ["TunerPart", "TunerState", "tuner_state"]

AT_ITS_LARGEST = 1e-6  # share below it that still counts

PLACES = {
    True: ("in series, transmitter side", "across", "in series, antenna side"),
    False: ("across, transmitter side", "in series", "across, antenna side"),
}
"""Of near capacitor, coil and far capacitor, by whether the network is a T."""

NAMES = ("the capacitor on the transmitter side", "the coil", "the capacitor on the antenna side")


class TunerPart(Struct, frozen=True):
    """One part of a tuner as it is set."""

    what: Literal["coil", "capacitor"]
    place: str
    henry: float | None
    farad: float | None
    peak_voltage_v: float
    current_a: float
    """Rms."""
    lost_w: float


class TunerState(Struct, frozen=True):
    """A tuner as it is set, at the power sent."""

    reachable: bool
    """Whether it matches; else this is the nearest it can do."""
    parts: list[TunerPart]
    """From the transmitter on; a capacitor the setting does without is left out."""
    sentence: str


def tuner_state(tuner: TunerModel, waves: Waves, plane: int, frequency: np.ndarray, power_w: float) -> TunerState:
    """The state at the one frequency [Hz] that the waves, for 1 W, are of; `plane` is the one before the tuner.

    The tuner is set by what the waves say that it looks at.
    """
    seen = waves.reflection(tuner.station.impedance_ohm)[plane + 1]
    tuned = tuner.settled(frequency, seen)
    tee, near, coil, far, reflection = (np.ravel(one)[0] for one in tuned.setting)
    inside = tuned.branches(waves, plane, frequency)
    peak_v = np.sqrt(2 * power_w) * np.abs(inside.voltage[:, 0])
    current_a = np.sqrt(power_w) * np.abs(inside.current[:, 0])
    lost_w = power_w * inside.lost_w[:, 0]
    parts = [
        TunerPart(
            what="coil" if part == COIL else "capacitor",
            place=place,
            henry=float(size) if part == COIL else None,
            farad=None if part == COIL else float(size),
            peak_voltage_v=float(peak_v[part]),
            current_a=float(current_a[part]),
            lost_w=float(lost_w[part]),
        )
        for part, (place, size) in enumerate(zip(PLACES[bool(tee)], (near, coil, far), strict=True))
        if part == COIL or 0 < size < np.inf
    ]
    if not reflection < MATCHED:
        return TunerState(reachable=False, parts=parts, sentence=_short_of(tuner, float(reflection), (near, coil, far)))
    return TunerState(reachable=True, parts=parts, sentence=_matched(parts, waves.power_w[plane : plane + 2, 0]))


def _matched(parts: list[TunerPart], power: np.ndarray) -> str:
    lost = sum(part.lost_w for part in parts)
    coil = next(part for part in parts if part.what == "coil")
    most = max((part.peak_voltage_v for part in parts if part.what == "capacitor"), default=0.0)
    voltage = f"{most:.0f} V peak on a capacitor, " if most else ""
    heat, share_db = engineering(significant(lost, 3), "W"), float(decibels(power[0] / power[1]))
    return f"It matches and turns {heat} into heat ({share_db:.2f} dB); {voltage}{coil.current_a:.2g} A in the coil."


def _short_of(tuner: TunerModel, reflection: float, farad_henry_farad: tuple[float, float, float]) -> str:
    limits = (tuner.parts.largest_capacitor_f, tuner.parts.largest_coil_h, tuner.parts.largest_capacitor_f)
    full = [
        name
        for name, size, most in zip(NAMES, farad_henry_farad, limits, strict=True)
        if np.isclose(size, most, rtol=AT_ITS_LARGEST, atol=0)
    ]
    vswr = float(vswr_of_reflection(reflection)) if reflection < 1 else np.inf
    nearest = f"It can't match this load; the nearest it comes to is an SWR of {vswr:.3g}"
    if not full:
        return f"{nearest}."
    return f"{nearest}, with {' and '.join(full)} at {'its' if len(full) == 1 else 'their'} largest."
