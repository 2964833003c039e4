"""The law of a cable's attenuation from its published figures: two coefficients, and more below a clad core."""

from collections.abc import Iterable
from typing import NamedTuple

import numpy as np

from ..catalogue.schema import Attenuation

__all__ = ["AttenuationFit", "LowFigure", "attenuation_coefficients"]


class LowFigure(NamedTuple):
    """A published figure below those fitted, that the law goes through."""

    figure: Attenuation
    k1: float
    """Conductor coefficient that meets it, with the k2 fitted [dB/(m·√Hz)]."""


class AttenuationFit(NamedTuple):
    """alpha = k1*sqrt(f) + k2*f between f_low and f_high.

    Below f_low k1 is that of the low figures, and between two of them a power of frequency.
    """

    k1: float
    """Conductor coefficient [dB/(m·√Hz)]."""
    k2: float
    """Dielectric coefficient [dB/(m·Hz)]."""
    residual: float
    """Largest |fitted/published - 1| of the figures fitted."""
    f_low: float
    """Lowest frequency fitted [Hz]."""
    f_high: float
    """Highest frequency fitted [Hz]."""
    low: tuple[LowFigure, ...] = ()
    """By frequency; none but of clad cores."""

    @property
    def lowest(self) -> float:
        """Lowest frequency of all figures that the law meets [Hz]."""
        return min([self.f_low, *(low.figure.frequency_hz for low in self.low)])


def attenuation_coefficients(points: Iterable[Attenuation]) -> AttenuationFit:
    """Least-squares k1, k2 of alpha = k1*sqrt(f) + k2*f [dB/m, Hz], neither below 0, from the points with `fit`.

    The conductors lose with the root of frequency (skin effect), the dielectric
    in proportion to it (constant loss tangent). The squares are those of the
    relative error: a cable's loss grows a hundredfold over its range, and in
    decibels per metre the highest frequencies alone would decide. Where a steel
    core carries current under its copper the loss hardly falls any more: there the
    law goes through the points with `through`.

    Raises ValueError when the points hold fewer than two frequencies.
    """
    points = list(points)
    fitted = [point for point in points if point.fit]
    f = np.array([point.frequency_hz for point in fitted], dtype=np.float64)
    alpha = np.array([point.db_per_m for point in fitted], dtype=np.float64)
    if len(set(f.tolist())) < 2:
        raise ValueError("attenuation: two coefficients need figures at two frequencies or more")
    conductor, dielectric = np.sqrt(f) / alpha, f / alpha
    k1, k2 = _two_shares_of_one(conductor, dielectric)
    residual = np.max(np.abs(k1 * conductor + k2 * dielectric - 1))
    low = tuple(
        LowFigure(point, (point.db_per_m - k2 * point.frequency_hz) / point.frequency_hz**0.5)
        for point in points
        if point.through
    )
    return AttenuationFit(k1, k2, float(residual), float(f.min()), float(f.max()), low)


def _two_shares_of_one(x: np.ndarray, y: np.ndarray) -> tuple[float, float]:
    """a, b, neither below 0, for which a*x + b*y is nearest to 1 in least squares."""
    scale_x, scale_y = np.sqrt(np.sum(x * x)), np.sqrt(np.sum(y * y))
    x, y = x / scale_x, y / scale_y
    overlap, sum_x, sum_y = np.sum(x * y), np.sum(x), np.sum(y)
    a, b = sum_x - overlap * sum_y, sum_y - overlap * sum_x
    determinant = 1 - overlap**2
    if b < 0:
        a, b, determinant = sum_x, 0.0, 1.0
    elif a < 0:
        a, b, determinant = 0.0, sum_y, 1.0
    return float(a / determinant / scale_x), float(b / determinant / scale_y)
