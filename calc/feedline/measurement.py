"""Measurements given with a request: read, and refused where a line can't use them."""

import numpy as np

from ..errors import InputError
from ..numeric.units import engineering
from ..waves.measured import Measured, is_passive
from ..waves.touchstone import read_touchstone

__all__ = ["refuse_out_of_reach", "usable_measurement"]


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
