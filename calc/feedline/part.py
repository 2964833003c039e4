"""A lumped or measured two-port in a line, with the limits its data sheet gives."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..formulas import line, match
from ..formulas.formula import Broadcast
from ..waves.measured import Measured, at_frequencies, covered
from ..waves.two_port import TwoPort, from_scattering, scattering
from .link import Link, LinkKind
from .rated import RatedModel

__all__ = ["MeasuredLink", "MeasuredModel", "PartLink", "PartModel", "part_notes", "within"]


@dataclass(frozen=True, eq=False)
class PartModel(RatedModel):
    """A part of given loss [dB] and reflection [1]."""

    loss_db: float
    reflection: float

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix: a short part, its reflection in quadrature and no more passed than that leaves."""
        through = np.sqrt(np.minimum(1 / line.power_ratio(self.loss_db), 1 - self.reflection**2))
        reflected = 1j * self.reflection
        return from_scattering(reflected, through, through, reflected, self.station.impedance_ohm)

    def turned(self, frequency: Broadcast, turn: Broadcast) -> TwoPort:
        """The chain matrix with all its angles turned by a factor of size 1: a data sheet gives none."""
        s11, s12, s21, s22 = (one * turn for one in scattering(self.two_port(frequency), self.station.impedance_ohm))
        return from_scattering(s11, s12, s21, s22, self.station.impedance_ohm)

    def return_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Of the part alone [dB]."""
        return np.full(np.shape(frequency), match.return_loss(self.reflection))


@dataclass(frozen=True, eq=False)
class MeasuredModel(RatedModel):
    """A measured two-port."""

    measured: Measured

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix at frequencies [Hz], not a number where the measurement does not reach."""
        s = within(self.measured, frequency)
        return from_scattering(s[..., 0, 0], s[..., 0, 1], s[..., 1, 0], s[..., 1, 1], self.measured.reference_ohm)

    def return_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Of the part alone [dB]."""
        return match.return_loss(np.abs(scattering(self.two_port(frequency), self.station.impedance_ohm)[0]))


@dataclass(frozen=True, eq=False, kw_only=True)
class PartLink(Link):
    """A part known by the figures of its data sheet."""

    kind: ClassVar[LinkKind] = "part"
    models: tuple[PartModel, PartModel]
    directivity_db: float | None
    """Of a meter; none where it is not known."""


@dataclass(frozen=True, eq=False, kw_only=True)
class MeasuredLink(Link):
    """A part known by its measurement."""

    kind: ClassVar[LinkKind] = "measured"
    models: tuple[MeasuredModel, MeasuredModel]


def part_notes(links: Sequence[Link]) -> list[str]:
    """Sentences on how the files of measured parts were read."""
    files = [link for link in links if isinstance(link, MeasuredLink)]
    return [f"The file of {link.name}: {note}" for link in files for note in link.models[0].measured.notes]


def within(measured: Measured, frequency: Broadcast) -> np.ndarray:
    """The measurement at frequencies [Hz], not a number where it does not reach."""
    inside = covered(measured, frequency)
    clipped = np.clip(frequency, measured.frequencies_hz[0], measured.frequencies_hz[-1])
    return np.where(inside[..., None, None], at_frequencies(measured, clipped, "touchstone"), np.nan)
