"""One two-port of a feedline: what everything else may ask of a cable, a joint or a part."""

from dataclasses import dataclass, field
from typing import ClassVar, Literal, Protocol, cast

import numpy as np

from ..formulas import line
from ..formulas.formula import Broadcast
from ..physics.gates import GateResult
from ..physics.heat_limit import HeatLimit
from ..physics.limits import LimitId
from ..physics.station import Station
from ..waves.two_port import TwoPort, Waves, scattering
from .any_phase import ReflectionSize, through_two_port
from .stress import Allowed, Stress, lumped_stress

__all__ = ["Link", "LinkKind", "LinkModel", "LumpedModel"]

LinkKind = Literal["cable", "joint", "part", "measured", "transformer", "section", "wires", "tuner", "load"]


class LinkModel(Protocol):
    """An element at one end of its ratings. Frequencies are in Hz; all arrays broadcast, the last axis is theirs."""

    @property
    def station(self) -> Station:
        """The numbers around it."""

    @property
    def length_m(self) -> float:
        """Along the line [m]; 0 of what is short."""

    @property
    def peak_v(self) -> Broadcast:
        """Largest peak voltage allowed [V], infinite where none is known."""

    @property
    def heat_limit(self) -> LimitId:
        """Which limit its heat is."""

    def heat(self, frequency: Broadcast, stress: Stress) -> HeatLimit | None:
        """What heat allows under a stress; none where no temperature limits it."""

    def return_loss_db(self, frequency: Broadcast) -> Broadcast | None:
        """Of the element alone [dB]; none for what is meant to be of another impedance: a cable, a transformer."""

    def matched_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Between ends that match it [dB]; of what has no impedance of its own, between the line's."""

    @property
    def tuned(self) -> bool:
        """Whether it is set by what it looks at."""

    def settled(self, frequency: Broadcast, beyond: Broadcast) -> "LinkModel":
        """The model as it is set when it looks at the reflection `beyond`, towards the antenna; a tuner's varies."""

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix."""

    def stress(self, waves: Waves, plane: int, frequency: Broadcast) -> Stress:
        """What the waves do to it between `plane` and the next."""

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What it allows under that stress."""

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency, computed from the ratings on, so that every formula is recorded."""

    def any_phase(self, frequency: Broadcast, load: ReflectionSize) -> ReflectionSize:
        """The sizes of the reflection at its near end when no phase is known, by those of its load."""

    def other_side(self) -> "LinkModel | None":
        """The same on the other side of its impedance; none where there is but one."""


@dataclass(frozen=True, eq=False)
class LumpedModel:
    """What is alike in all elements that are short against the wave."""

    station: Station
    length_m: ClassVar[float] = 0.0
    tuned: ClassVar[bool] = False

    def settled(self, frequency: Broadcast, beyond: Broadcast) -> LinkModel:
        """Itself: there is nothing to set."""
        return cast(LinkModel, self)  # whatever derives from it is a whole one

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix at frequencies [Hz]."""
        raise NotImplementedError

    def matched_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Between ends of the line's impedance [dB]."""
        return -line.decibels(np.abs(scattering(self.two_port(frequency), self.station.impedance_ohm)[2]) ** 2)

    def stress(self, waves: Waves, plane: int, frequency: Broadcast) -> Stress:
        """What the waves do to it between `plane` and the next."""
        return lumped_stress(waves, plane, self.station.impedance_ohm)

    def other_side(self) -> LinkModel | None:
        """None: what is known of it lies on no side."""
        return None

    def any_phase(self, frequency: Broadcast, load: ReflectionSize) -> ReflectionSize:
        """The sizes of the reflection at its near end when no phase is known, by those of its load."""
        return through_two_port(self.two_port(frequency), self.station.impedance_ohm, load)


@dataclass(frozen=True, eq=False, kw_only=True)
class Link:
    """An element of the line, or one of the two joints of an adapter; nothing refuses it unless it says so."""

    kind: ClassVar[LinkKind]
    element: int
    name: str
    models: tuple[LinkModel, LinkModel]
    """By the cautious and the generous end of the ratings."""
    pack: str = ""
    """Name of the pack its cable or family comes from; empty for a built-in one."""
    family: str = ""
    """Of a joint."""
    marks: list[str] = field(default_factory=list)
    """Doubts about it that are no gate."""
    at_voltage_limit: str = ""
    """A sentence on what happens at its voltage limit, where that is no breakdown."""

    def gates(self, frequency_hz: float, power_w: float) -> list[GateResult]:
        """Every gate at a frequency [Hz] and power [W], each with its sentence."""
        return []

    def refused(self, frequency: np.ndarray, power_w: float) -> np.ndarray:
        """Where a hard gate fails, by frequency [Hz]."""
        return np.zeros(np.shape(frequency), dtype=bool)

    def house_power_w(self, frequency: np.ndarray) -> np.ndarray:
        """Most power the station's own rules allow [W] by frequency [Hz]; infinite where there is none."""
        return np.full(np.shape(frequency), np.inf)
