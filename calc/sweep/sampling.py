"""Picking some of a sweep's points."""

import numpy as np

from .arrays import IndexArray

__all__ = ["evenly_spaced", "scattered"]

GOLDEN_RATIO = 0.6180339887498949


def evenly_spaced(size: int, most: int) -> IndexArray:
    """At most so many of `size` indices, evenly spaced from the first to the last."""
    return np.linspace(0, size - 1, min(size, most)).round().astype(np.int64)


def scattered(size: int, most: int) -> IndexArray:
    """At most so many of `size` indices, one in each of as many equal parts, unevenly, so that no echo folds back."""
    if size <= most:
        return np.arange(size, dtype=np.int64)
    at = np.arange(most, dtype=np.int64)
    return ((at + at * GOLDEN_RATIO % 1) * (size / most)).astype(np.int64)
