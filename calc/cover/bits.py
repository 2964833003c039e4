"""Sets of small numbers as bits of one integer, or as an array of flags."""

from collections.abc import Iterable, Iterator

import numpy as np
from numpy.typing import NDArray

__all__ = ["BitSet", "Flags", "bits", "flags", "mask"]

BitSet = int
"""A set of numbers from 0 on; bit n is set where it contains n."""

Flags = NDArray[np.bool_]


def bits(members: BitSet) -> Iterator[int]:
    """The numbers in the set, ascending."""
    while members:
        low = members & -members
        yield low.bit_length() - 1
        members ^= low


def mask(numbers: Iterable[int]) -> BitSet:
    """The set of these numbers, each given once."""
    return sum(1 << int(number) for number in numbers)


def flags(members: BitSet, width: int) -> Flags:
    """For each number below `width` whether it is in the set."""
    is_member = np.zeros(width, dtype=bool)
    is_member[list(bits(members))] = True
    return is_member
