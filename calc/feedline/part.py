"""A lumped or measured two-port in a line, with the limits its data sheet gives."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..formulas import line, match, voltage
from ..formulas.formula import Broadcast
from ..physics.limits import LimitId
from ..waves.measured import Measured, at_frequencies, covered
from ..waves.two_port import TwoPort, from_scattering, scattering
from .link import Link, LinkKind, LumpedModel
from .stress import Allowed, Stress

__all__ = ["MeasuredLink", "MeasuredModel", "PartLink", "PartModel", "part_notes", "within"]


@dataclass(frozen=True, eq=False)
class PartModel(LumpedModel):
    """A part of given loss [dB], reflection [1] and limits [W average, V peak]; infinite where not given."""

    loss_db: float
    reflection: float
    power_limit_w: float
    peak_v: float
    heat_limit: ClassVar[LimitId] = "rating"

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix: a short part, its reflection in quadrature and no more passed than that leaves."""
        through = np.sqrt(np.minimum(1 / line.power_ratio(self.loss_db), 1 - self.reflection**2))
        reflected = 1j * self.reflection
        return from_scattering(reflected, through, through, reflected, self.station.impedance_ohm)

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What it allows under that stress; its average power counts key down through a whole over."""
        heat_w = self.power_limit_w / (stress.forward_factor * self.station.duty_factor * self.station.transmit_share)
        if np.isfinite(self.peak_v):
            voltage_w = voltage.voltage_allowed_power(self.peak_v, self.station.impedance_ohm, stress.voltage_factor)
        else:  # nothing to derive
            voltage_w = np.full(np.shape(stress.voltage_factor), np.inf)
        return Allowed(heat_w, voltage_w)

    def heat(self, frequency: Broadcast, stress: Stress) -> None:
        """Nothing: its power limit says nothing of temperatures."""

    def return_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Of the part alone [dB]."""
        return np.full(np.shape(frequency), match.return_loss(self.reflection))

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency [Hz]."""
        return self.allowed(frequency, stress)


@dataclass(frozen=True, eq=False)
class MeasuredModel(LumpedModel):
    """A measured two-port; its limits are not known."""

    measured: Measured
    peak_v: ClassVar[float] = np.inf
    heat_limit: ClassVar[LimitId] = "rating"

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix at frequencies [Hz], not a number where the measurement does not reach."""
        s = within(self.measured, frequency)
        return from_scattering(s[..., 0, 0], s[..., 0, 1], s[..., 1, 0], s[..., 1, 1], self.measured.reference_ohm)

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """Nothing is known that would limit it."""
        unlimited = np.full(np.shape(stress.heat_share), np.inf)
        return Allowed(unlimited, unlimited)

    def heat(self, frequency: Broadcast, stress: Stress) -> None:
        """Nothing is known of its temperature."""

    def return_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Of the part alone [dB]."""
        return match.return_loss(np.abs(scattering(self.two_port(frequency), self.station.impedance_ohm)[0]))

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """Nothing: what was measured follows from no formula."""
        return Allowed(np.inf, np.inf)


@dataclass(frozen=True, eq=False, kw_only=True)
class PartLink(Link):
    """A part known by the figures of its data sheet."""

    kind: ClassVar[LinkKind] = "part"
    models: tuple[PartModel, PartModel]


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
