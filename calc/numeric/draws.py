"""Random numbers from a seed, the same wherever the core runs and with every version of numpy.

SplitMix64 (Steele, Lea and Flood, "Fast splittable pseudorandom number
generators", 2014, from memory): the state is a counter, so a whole array is drawn at once.
numpy's own generators would add a quarter to what the browser has to load.
"""

import numpy as np

__all__ = ["Stream"]

STEP = np.uint64(0x9E3779B97F4A7C15)
MIX = ((30, 0xBF58476D1CE4E5B9), (27, 0x94D049BB133111EB))
LAST_SHIFT = np.uint64(31)
MANTISSA_SHIFT, MANTISSA_STEP = np.uint64(11), 2.0**-53
"""A double holds 53 of the 64 bits."""


class Stream:
    """An endless sequence; streams of one seed and different numbers are unrelated."""

    def __init__(self, seed: int, number: int = 0) -> None:
        # a mixed seed, so that neighbouring numbers start far apart
        self._state = _mixed(_words(seed)) + _mixed(_words(number)) if number else _words(seed)

    def words(self, count: int) -> np.ndarray:
        """The next `count` words of 64 bits."""
        counters = self._state + STEP * np.arange(1, count + 1, dtype=np.uint64)
        self._state = counters[-1:]
        return _mixed(counters)

    def uniform(self, count: int) -> np.ndarray:
        """The next `count` numbers, uniform from 0 up to below 1."""
        return (self.words(count) >> MANTISSA_SHIFT) * MANTISSA_STEP

    def integers(self, below: int, count: int) -> np.ndarray:
        """The next `count` integers, uniform from 0 up to below `below`."""
        return (self.uniform(count) * below).astype(np.int64)


def _words(value: int) -> np.ndarray:
    # an array of one: a lone scalar would warn when it wraps around
    return np.array([value], dtype=np.uint64)


def _mixed(words: np.ndarray) -> np.ndarray:
    for shift, factor in MIX:
        words = (words ^ (words >> np.uint64(shift))) * np.uint64(factor)
    return words ^ (words >> LAST_SHIFT)
