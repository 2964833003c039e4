"""A balun, an unun or a choke in a line: an ideal transformer behind its loss, with the limits of its data sheet."""

from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..formulas import line
from ..formulas.formula import Broadcast
from ..waves.two_port import TwoPort, Waves, cascade
from .elements import Transformer
from .link import Link, LinkKind
from .rated import RatedModel
from .stress import Stress

__all__ = ["TransformerLink", "TransformerModel", "transformer_marks"]

LEAST_CHOKING_OHM = 1000.0
"""Of a choke that keeps the outside of the line quiet: well over 1 kΩ on every band used (common practice)."""


@dataclass(frozen=True, eq=False)
class TransformerModel(RatedModel):
    """A transformer of given impedance ratio, antenna's side over transmitter's [1], and matched loss [dB].

    Its limits are those of the transmitter's side.
    """

    ratio: float
    loss_db: float

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix: an attenuator matched to the line, and an ideal transformer behind it."""
        nepers, z_0, turns = float(line.attenuation_constant(self.loss_db)), self.station.impedance_ohm, self.ratio**0.5
        attenuator = TwoPort(np.cosh(nepers), z_0 * np.sinh(nepers), np.sinh(nepers) / z_0, np.cosh(nepers))
        return TwoPort(*map(np.complex128, cascade([attenuator, TwoPort(1 / turns, 0.0, 0.0, turns)])))

    def matched_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Between the line's impedance and that transformed [dB]."""
        return np.full(np.shape(frequency), self.loss_db)

    def stress(self, waves: Waves, plane: int, frequency: Broadcast) -> Stress:
        """What the waves do to it between `plane` and the next: voltage and current of the transmitter's side."""
        both, z_0 = super().stress(waves, plane, frequency), self.station.impedance_ohm
        voltage_factor = np.abs(waves.voltage[plane]) ** 2 / z_0
        return both._replace(voltage_factor=voltage_factor, current_factor=np.abs(waves.current[plane]) ** 2 * z_0)

    def return_loss_db(self, frequency: Broadcast) -> None:
        """Nothing: it is there to change the impedance."""


@dataclass(frozen=True, eq=False, kw_only=True)
class TransformerLink(Link):
    """A balun, an unun or a choke."""

    kind: ClassVar[LinkKind] = "transformer"
    models: tuple[TransformerModel, TransformerModel]


def transformer_marks(name: str, given: Transformer) -> list[str]:
    """A sentence where it lets current through on the outside of the line, by its choking impedance where given."""
    if given.choking_ohm is None or given.choking_ohm >= LEAST_CHOKING_OHM:
        return []
    least = f"well over {LEAST_CHOKING_OHM:g} Ω keeps current off the outside of the line"
    return [f"{name} chokes by {given.choking_ohm:g} Ω; {least}."]
