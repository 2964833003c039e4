"""What is alike in short elements that bear what their data sheets say, and no more is known of their heat."""

from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..formulas.formula import Broadcast
from ..physics.limits import LimitId
from .link import LumpedModel
from .stress import Allowed, Stress, voltage_allowed_w

__all__ = ["RatedModel"]


@dataclass(frozen=True, eq=False)
class RatedModel(LumpedModel):
    """A short element of given limits [W average, V peak]; infinite where not given, and so not checked."""

    power_limit_w: float
    peak_v: float
    heat_limit: ClassVar[LimitId] = "rating"

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What it allows under that stress; its average power counts key down through a whole over."""
        if np.isfinite(self.power_limit_w):
            heat_w = self.power_limit_w / (
                stress.forward_factor * self.station.duty_factor * self.station.transmit_share
            )
        else:
            heat_w = np.full(np.shape(stress.forward_factor), np.inf)
        return Allowed(heat_w, voltage_allowed_w(self.peak_v, self.station.impedance_ohm, stress))

    def heat(self, frequency: Broadcast, stress: Stress) -> None:
        """Nothing: its power limit says nothing of temperatures."""

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency [Hz]."""
        return self.allowed(frequency, stress)
