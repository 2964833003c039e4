"""A tuner in a line: it finds its own setting at every frequency, and shows what goes on inside it."""

from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..formulas import tuner as formulas
from ..formulas.formula import Broadcast
from ..physics.limits import LimitId
from ..waves.tuner import Branches, Parts, Setting, branches, settled, tuner_two_port
from ..waves.two_port import TwoPort, Waves
from .any_phase import ReflectionSize
from .link import Link, LinkKind, LumpedModel
from .stress import SMALLEST_SHARE, Allowed, Stress, lumped_stress

__all__ = ["SetTuner", "TunerLink", "TunerModel"]

PHASES = 12
SHARES = (0.0, 1 / 3, 2 / 3, 1.0)  # of its size: a part that ends may match a bad load and not a good one
NEAR, COIL, FAR = range(3)
CAPACITORS = [NEAR, FAR]


@dataclass(frozen=True, eq=False)
class TunerModel(LumpedModel):
    """A tuner before it is tuned; its limits are infinite where not given."""

    parts: Parts
    peak_v: float
    """Across a capacitor [V]."""
    current_a: float
    """Through the coil [A], rms."""
    heat_limit: ClassVar[LimitId] = "rating"
    tuned: ClassVar[bool] = True

    def settled(self, frequency: Broadcast, beyond: Broadcast) -> "SetTuner":
        """The tuner as it is set when it looks at the reflection `beyond`, at each of the frequencies [Hz]."""
        setting = settled(self.parts, frequency, beyond, self.station.impedance_ohm)
        return SetTuner(self.station, self.parts, self.peak_v, self.current_a, setting)

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix at frequencies [Hz] as it would be between matched ends."""
        return self.settled(frequency, 0.0).two_port(frequency)

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What voltage on its capacitors and current in its coil allow; the current counts as its mean square."""
        station = self.station
        unlimited = np.full(np.shape(stress.voltage_factor), np.inf)
        heat_w = voltage_w = unlimited
        if np.isfinite(self.current_a):
            heat_w = formulas.current_allowed_power(
                self.current_a,
                station.impedance_ohm,
                stress.current_factor,
                station.duty_factor,
                station.transmit_share,
            )
        if np.isfinite(self.peak_v):
            voltage_w = formulas.tuner_voltage_allowed_power(self.peak_v, station.impedance_ohm, stress.voltage_factor)
        return Allowed(heat_w, voltage_w)

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency [Hz]."""
        return self.allowed(frequency, stress)

    def heat(self, frequency: Broadcast, stress: Stress) -> None:
        """Nothing: its limits say nothing of temperatures."""

    def return_loss_db(self, frequency: Broadcast) -> None:
        """Nothing: it is there to reflect what the line does not."""

    def any_phase(self, frequency: Broadcast, load: ReflectionSize) -> ReflectionSize:
        """What it leaves of a load at any phase: nothing where it can match them all.

        Where it can't, the sizes are those of the phases tried, between which a little more may be left.
        """
        turns = np.multiply.outer(SHARES, np.exp(2j * np.pi * np.arange(PHASES) / PHASES)).ravel()
        beyond = np.multiply.outer(turns, load.worst)
        left = settled(self.parts, frequency, beyond, self.station.impedance_ohm).reflection
        return ReflectionSize(worst=left.max(axis=0), likely=np.sqrt((left[-PHASES:] ** 2).mean(axis=0)))


@dataclass(frozen=True, eq=False)
class SetTuner(TunerModel):
    """A tuner as it is set, at each of the frequencies and loads it was tuned for."""

    setting: Setting

    def settled(self, frequency: Broadcast, beyond: Broadcast) -> "SetTuner":
        """Itself: it is set."""
        return self

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix of its setting, frequencies [Hz] in the shape it was tuned for."""
        return tuner_two_port(self.parts, self.setting, frequency)

    def branches(self, waves: Waves, plane: int, frequency: Broadcast) -> Branches:
        """Voltage [V] and current [A], rms, of its parts by the waves at `plane` and the next."""
        before, after = waves.at(plane), waves.at(plane + 1)
        return branches(self.parts, self.setting, frequency, before, after)

    def stress(self, waves: Waves, plane: int, frequency: Broadcast) -> Stress:
        """What the waves do to it: the voltage on its worst capacitor, the current in its coil."""
        inside, impedance = self.branches(waves, plane, frequency), self.station.impedance_ohm
        voltage = np.abs(inside.voltage[CAPACITORS]).max(axis=0)
        return lumped_stress(waves, plane, impedance)._replace(
            voltage_factor=np.maximum(voltage**2 / impedance, SMALLEST_SHARE),
            current_factor=np.abs(inside.current[COIL]) ** 2 * impedance,
        )

    def any_phase(self, frequency: Broadcast, load: ReflectionSize) -> ReflectionSize:
        """The sizes of the reflection at its near end when it stays as it is set."""
        return LumpedModel.any_phase(self, frequency, load)


@dataclass(frozen=True, eq=False, kw_only=True)
class TunerLink(Link):
    """A tuner in a line."""

    kind: ClassVar[LinkKind] = "tuner"
    models: tuple[TunerModel, TunerModel]
