"""Measured S-parameters: given at other frequencies, and whether they could come from a part without a source."""

from typing import NamedTuple

import numpy as np

from ..errors import InputError

__all__ = ["Measured", "at_frequencies", "covered", "is_passive"]

PASSIVE = 1 + 1e-6  # largest singular value; the excess is the rounding of six printed digits
SPAN_SLACK = 1e-12  # a decimal number of GHz is rarely exact in Hz


class Measured(NamedTuple):
    """S-parameters of a file: `s` [1] of shape (frequencies, ports, ports), all ports at one reference."""

    frequencies_hz: np.ndarray
    s: np.ndarray
    reference_ohm: float
    notes: list[str]


def covered(measured: Measured, frequencies_hz: np.ndarray) -> np.ndarray:
    """Which of the frequencies [Hz] lie in the file's own range; a bool array."""
    asked = np.asarray(frequencies_hz, dtype=np.float64)
    lowest, highest = measured.frequencies_hz[0], measured.frequencies_hz[-1]
    return (asked >= lowest * (1 - SPAN_SLACK)) & (asked <= highest * (1 + SPAN_SLACK))


def at_frequencies(measured: Measured, frequencies_hz: np.ndarray, field: str) -> np.ndarray:
    """S [1] at other frequencies [Hz], shape (frequencies, ports, ports).

    Real and imaginary part are interpolated linearly between the neighbours in the file. Raises
    InputError for `field` when a frequency lies outside the file's range.
    """
    asked = np.atleast_1d(np.asarray(frequencies_hz, dtype=np.float64))
    if not covered(measured, asked).all():
        raise InputError(
            field,
            f"asked for {_span(asked.min(), asked.max())}",
            f"frequencies in the file's own range, {_span(*measured.frequencies_hz[[0, -1]])}",
        )
    ports = measured.s.shape[-1]
    s = np.empty((asked.size, ports, ports), dtype=np.complex128)
    for place in np.ndindex(ports, ports):
        given = measured.s[:, *place]
        s.real[:, *place] = np.interp(asked, measured.frequencies_hz, given.real)
        s.imag[:, *place] = np.interp(asked, measured.frequencies_hz, given.imag)
    return s


def is_passive(s: np.ndarray) -> np.ndarray:
    """Whether one-port or two-port S [1] gives out no more power than it takes in; a bool array.

    That is so when the largest singular value is at most 1, but for the rounding of printed digits. The two
    of a two-port, a >= b, follow from a² + b² = sum of |S|² and a b = |det S|: (a ± b)² = sum of |S|² ± 2 |det S|.
    """
    squares = np.sum(s.real**2 + s.imag**2, axis=(-2, -1))
    if s.shape[-1] == 1:
        return np.sqrt(squares) <= PASSIVE
    determinant = np.abs(s[..., 0, 0] * s[..., 1, 1] - s[..., 0, 1] * s[..., 1, 0])
    total = np.sqrt(squares + 2 * determinant)
    difference = np.sqrt(np.maximum(squares - 2 * determinant, 0.0))
    return (total + difference) / 2 <= PASSIVE


def _span(lowest_hz: float, highest_hz: float) -> str:
    return f"{lowest_hz / 1e6:.12g} MHz to {highest_hz / 1e6:.12g} MHz"
