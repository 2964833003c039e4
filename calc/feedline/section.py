"""A transformer section: a length of line of an impedance of its own, known by its figures."""

from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..formulas import line
from ..formulas.formula import Broadcast
from .link import LinkKind
from .run import Constants, RunLink, RunModel

__all__ = ["SectionLink", "SectionModel"]


@dataclass(frozen=True, eq=False)
class SectionModel(RunModel):
    """A section of given impedance [Ω], velocity factor [1], matched loss over its length [dB] and limit [V peak].

    Its loss is shared between conductors and dielectric so that its impedance is real at every frequency.
    """

    impedance_ohm: float
    velocity_factor: float
    loss_db: float
    voltage_limit_v: float

    @property
    def nominal_ohm(self) -> Broadcast:
        """Characteristic impedance [Ω]."""
        return self.impedance_ohm

    @property
    def peak_v(self) -> Broadcast:
        """Largest peak voltage allowed [V], infinite where none is given."""
        return self.voltage_limit_v

    def constants(self, frequency: Broadcast) -> Constants:
        """Attenuation constants of conductors and dielectric [Np/m] and phase constant [rad/m]."""
        beta = line.surface_phase_constant(frequency, self.velocity_factor)
        half = np.full(np.shape(frequency), line.attenuation_constant(self.loss_db / self.length_m) / 2)
        return half, half, beta

    def impedance(self, conductor: Broadcast, dielectric: Broadcast, beta: Broadcast) -> Broadcast:
        """Characteristic impedance [Ω]: as given, as a line without distortion has it."""
        return self.impedance_ohm + 0j * beta


@dataclass(frozen=True, eq=False, kw_only=True)
class SectionLink(RunLink):
    """A transformer section."""

    kind: ClassVar[LinkKind] = "section"
    models: tuple[SectionModel, SectionModel]
