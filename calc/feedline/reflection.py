"""How large the reflection at the transmitter can be when no phase is known."""

import numpy as np

from ..physics.ratings import CAUTIOUS
from .any_phase import ReflectionSize
from .feedline import Feedline

__all__ = ["bounds"]


def bounds(feedline: Feedline, frequency: np.ndarray) -> ReflectionSize:
    """Sizes of the reflection at the transmitter by frequency [Hz], from the antenna back over every step."""
    at_antenna = np.abs(feedline.load.likely(frequency)).max(axis=0)
    size = ReflectionSize(at_antenna, at_antenna)
    for link in reversed(feedline.links):
        other = link.models[CAUTIOUS].other_side()
        models = [*link.models, other] if other else link.models
        by_end = [model.any_phase(frequency, size) for model in models]
        # away from its own impedance a typical joint may reflect more than the worst
        size = ReflectionSize(np.max([one.worst for one in by_end], axis=0), by_end[CAUTIOUS].likely)
    return size
