"""Sets of small numbers as bits of one integer."""

from collections.abc import Iterable

import numpy as np

__all__ = ["bits", "flags", "mask"]


def bits(set_: int) -> Iterable[int]:
    """The numbers in the set, ascending."""
    while set_:
        low = set_ & -set_
        yield low.bit_length() - 1
        set_ ^= low


def mask(numbers: Iterable[int]) -> int:
    """The set of these numbers."""
    return sum(1 << int(number) for number in numbers)


def flags(set_: int, width: int) -> np.ndarray:
    """For each number below `width` whether it is in the set."""
    held = np.zeros(width, dtype=bool)
    held[list(bits(set_))] = True
    return held
