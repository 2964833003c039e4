"""The transmitter of a line: what it holds to at a bad load."""

from typing import NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..errors import known
from ..formulas.formula import Broadcast
from ..formulas.match import reflection_of_vswr
from ..formulas.transmitter import folded_share
from .elements import FeedlineRequest

__all__ = ["HOLDS_AT_ANY", "TransmitterModel", "transmitter_of"]

HOLDS_AT_ANY = np.inf


class TransmitterModel(NamedTuple):
    """Up to which VSWR it holds its forward power; beyond, its reflected power. Infinite: at any."""

    name: str
    holds_to_vswr: float

    def share(self, reflection: Broadcast) -> Broadcast:
        """Its forward power over that at a match [1], by the magnitude of the reflection it looks at."""
        if self.holds_to_vswr == HOLDS_AT_ANY:
            return np.ones(np.shape(reflection))
        held = reflection_of_vswr(self.holds_to_vswr)
        return folded_share(held, np.maximum(reflection, held))


def transmitter_of(request: FeedlineRequest) -> TransmitterModel:
    """That of a request; where net power is given it holds at any. Raises InputError for an unknown behaviour."""
    row = known("transmitter.behaviour", request.transmitter.behaviour, catalogue().transmitters)
    if request.power_is == "net":
        return TransmitterModel(row.name, HOLDS_AT_ANY)
    own = request.transmitter.holds_to_vswr
    if own is None:
        own = HOLDS_AT_ANY if row.holds_to_vswr is None else row.holds_to_vswr.value
    return TransmitterModel(row.name, own)
