"""What a model computes from the frequency alone, once for the array that a whole solution is made at."""

from collections.abc import Callable
from functools import wraps
from typing import Any, TypeVar

import numpy as np

from ..formulas.formula import Broadcast

__all__ = ["remembered"]

Value = TypeVar("Value")


def remembered(method: Callable[[Any, Broadcast], Value]) -> Callable[[Any, Broadcast], Value]:
    """A method of frequencies [Hz] that keeps its last answer for the very same array.

    A single frequency is always computed anew, so that a record of calls is whole.
    """
    name = f"_{method.__name__}_remembered"

    @wraps(method)
    def called(self: Any, frequency: Broadcast) -> Value:
        if not isinstance(frequency, np.ndarray):
            return method(self, frequency)
        kept: tuple[np.ndarray, Value] | None = self.__dict__.get(name)
        if kept is None or kept[0] is not frequency:
            kept = self.__dict__[name] = frequency, method(self, frequency)
        return kept[1]

    return called
