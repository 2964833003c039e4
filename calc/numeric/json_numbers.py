"""Numbers as an answer gives them: null where there is none, no digits that are rounding."""

from typing import Any

import numpy as np

__all__ = ["Numbers", "fine", "nested", "number", "numbers", "share_of"]

Numbers = list[float | None]

DECIMALS = 9
SHARE_DECIMALS = 12


def number(value: float) -> float | None:
    """The value, or None when it is not finite."""
    return float(value) if np.isfinite(value) else None


def numbers(values: np.ndarray) -> Numbers:
    """Each value, or None where it is not finite."""
    return [number(value) for value in values]


def nested(values: np.ndarray) -> list[Any]:
    """An array as nested lists, with None where a value is not finite."""
    listed = values.astype(object)
    listed[~np.isfinite(values)] = None
    return listed.tolist()


def fine(value: float) -> float | None:
    """The value to a billionth of its unit: a small loss is a difference, whose last digits are rounding."""
    return round(float(value), DECIMALS) if np.isfinite(value) else None


def share_of(power_w: float, share: float) -> float | None:
    """A share [1] of the power [W]; the share is cut to twelve decimals, as a small one is a difference too."""
    return round(float(share), SHARE_DECIMALS) * power_w if np.isfinite(share) else None
