"""What the same frequencies are asked about several times over: by the waves, by the stress, by the limits."""

from collections.abc import Callable
from functools import wraps
from typing import Any, TypeVar

import numpy as np

from ..formulas.formula import Broadcast

__all__ = ["last_asked"]

Answer = TypeVar("Answer")


def last_asked(method: Callable[[Any, Broadcast], Answer]) -> Callable[[Any, Broadcast], Answer]:
    """Remember a model's answer for the array of frequencies it was asked last; never for one frequency, whose
    formulas are recorded."""
    name = f"{method.__qualname__} at"

    @wraps(method)
    def answer(model: Any, frequency: Broadcast) -> Answer:
        if not isinstance(frequency, np.ndarray):
            return method(model, frequency)
        last = model.__dict__.get(name)
        if last is None or last[0] is not frequency:
            last = model.__dict__[name] = frequency, method(model, frequency)
        found: Answer = last[1]
        return found

    return answer
