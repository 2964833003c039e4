"""Measurements given with a request: read, and refused where a line can't use them."""

from typing import NamedTuple

import numpy as np

from ..errors import InputError
from ..numeric.units import engineering
from ..waves.measured import Measured, is_passive
from ..waves.touchstone import read_touchstone

__all__ = ["MeasuredReflection", "refuse_out_of_reach", "usable_measurement", "usable_reflection"]


MOST_REFLECTED = 1.05
"""What noise and calibration may leave of a reflection that can't be above 1 (common practice)."""

NEARLY_ALL = 1 - 1e-6
"""What such a reflection counts as."""


class MeasuredReflection(NamedTuple):
    """The measurement of a one-port, and sentences on how it was read and where it had to be clipped."""

    measured: Measured
    notes: list[str]


def usable_reflection(text: str, field: str) -> MeasuredReflection:
    """A one-port Touchstone text whose reflection may lie a little above 1 by noise or calibration; it is clipped.

    Raises InputError for `field` for any other, or one far above 1.
    """
    measured = read_touchstone(text, field)
    size = np.abs(measured.s[:, 0, 0])
    above = int(np.argmax(size))
    if measured.s.shape[-1] != 1 or is_passive(measured.s).all() or size[above] > MOST_REFLECTED:
        return MeasuredReflection(usable_measurement(text, field, 1), _of_the_antenna(measured))
    s = measured.s * np.minimum(NEARLY_ALL / size, 1)[:, None, None]
    note = (
        f"The antenna's file reflects up to {size[above]:.3f} of what it gets, at"
        f" {engineering(measured.frequencies_hz[above], 'Hz')}: noise or calibration. It counts as all of it."
    )
    return MeasuredReflection(measured._replace(s=s), [*_of_the_antenna(measured), note])


def _of_the_antenna(measured: Measured) -> list[str]:
    return [f"The antenna's file: {note}" for note in measured.notes]


def usable_measurement(text: str, field: str, ports: int) -> Measured:
    """A Touchstone text of so many ports. Raises InputError for `field` for any other, or one that isn't passive."""
    measured = read_touchstone(text, field)
    if measured.s.shape[-1] != ports:
        wanted = "one-port" if ports == 1 else "two-port"
        raise InputError(field, f"{measured.s.shape[-1]} ports", f"a {wanted} file")
    passive = is_passive(measured.s)
    if not passive.all():
        active_hz = measured.frequencies_hz[int(np.argmin(passive))]
        raise InputError(field, f"more power out than in at {engineering(active_hz, 'Hz')}", "a passive part")
    if ports == 2 and not (np.abs(measured.s[:, 1, 0]) > 0).all():
        raise InputError(field, "s21 = 0", "a two-port that lets something through")
    return measured


def refuse_out_of_reach(field: str, frequencies: np.ndarray, wanted_hz: float) -> None:
    """Raise InputError for figures over rising `frequencies` [Hz] that do not reach the one wanted."""
    low, high = float(frequencies[0]), float(frequencies[-1])
    if not low <= wanted_hz <= high:
        span = f"{engineering(low, 'Hz')} to {engineering(high, 'Hz')}"
        raise InputError(field, span, f"figures that reach {engineering(wanted_hz, 'Hz')}")
