"""Counts of draws in bins, and the percentiles they give: memory does not grow with the draws."""

import numpy as np

from .random_line import Draws

__all__ = ["PERCENTILES", "Tally"]

PERCENTILES = [5.0, 25.0, 50.0, 75.0, 95.0]
BINS = 2000
LEAST_SPAN = 1e-6  # of a histogram: what does not spread still needs a bin


class Tally:
    """Counts of the draws in bins; the first block sets their range, and what lies beyond goes to the end bins."""

    def __init__(self, first: Draws) -> None:
        values = np.stack(first)
        low, high = values.min(axis=1), values.max(axis=1)
        span = np.maximum(high - low, LEAST_SPAN)
        self._low = np.where(np.isfinite(span), low - span / 2, 0.0)
        self._width = np.where(np.isfinite(span), 2 * span / BINS, 1.0)
        self._valid = np.isfinite(span)
        self._counts = np.zeros((*low.shape, BINS), dtype=np.int64)
        self.add(first)

    def add(self, draws: Draws) -> None:
        """Count a block."""
        quantities, bands, _ = self._counts.shape
        for quantity in range(quantities):
            scaled = (draws[quantity] - self._low[quantity]) / self._width[quantity]
            bins = np.clip(np.nan_to_num(scaled, nan=0.0), 0, BINS - 1).astype(np.int64)
            flat = bins + np.arange(bands, dtype=np.int64) * BINS
            self._counts[quantity] += np.bincount(flat.ravel(), minlength=bands * BINS).reshape(bands, BINS)

    def percentiles(self) -> np.ndarray:
        """Percentiles, quantity x band x percentile; not a number where draws were not finite."""
        reached = np.cumsum(self._counts, axis=-1)
        wanted = np.array(PERCENTILES)[:, None, None] / 100 * reached[..., -1]
        bins = (reached[None] < wanted[..., None]).sum(axis=-1)
        values = self._low + (bins + 0.5) * self._width
        return np.moveaxis(np.where(self._valid, values, np.nan), 0, -1)
