"""A lumped or measured two-port in a line, with the limits its data sheet gives."""

from typing import NamedTuple

import numpy as np

from ..formulas import line, match, voltage
from ..physics.station import Station
from ..waves.measured import Measured, at_frequencies, covered
from ..waves.two_port import TwoPort, Waves, from_scattering, scattering
from .stress import Allowed, Stress, lumped_stress

__all__ = ["MeasuredModel", "PartModel", "within"]


class PartModel(NamedTuple):
    """A part of given loss [dB], reflection [1] and limits [W average, V peak]; infinite where not given."""

    loss_db: float
    reflection: float
    power_limit_w: float
    voltage_limit_v: float
    station: Station

    def two_port(self, frequency: np.ndarray) -> TwoPort:
        """The chain matrix: a short part, its reflection in quadrature and no more passed than that leaves."""
        through = np.sqrt(np.minimum(1 / line.power_ratio(self.loss_db), 1 - self.reflection**2))
        reflected = 1j * self.reflection
        return from_scattering(reflected, through, through, reflected, self.station.impedance_ohm)

    def stress(self, waves: Waves, at: int, frequency: np.ndarray) -> Stress:
        """What the waves do to it as element `at`."""
        return lumped_stress(waves, at, self.station.impedance_ohm)

    def allowed(self, frequency: np.ndarray, stress: Stress) -> Allowed:
        """What it allows under that stress; its average power counts key down through a whole over."""
        heat_w = self.power_limit_w / (stress.forward_factor * self.station.duty_factor * self.station.transmit_share)
        if np.isfinite(self.voltage_limit_v):
            volts = voltage.voltage_allowed_power(
                self.voltage_limit_v, self.station.impedance_ohm, stress.voltage_factor
            )
        else:  # nothing to derive
            volts = np.full(np.shape(stress.voltage_factor), np.inf)
        return Allowed(
            heat_w, volts, match.match_margin(match.return_loss(self.reflection), self.station.return_loss_asked_db)
        )


class MeasuredModel(NamedTuple):
    """A measured two-port; its limits are not known."""

    measured: Measured
    station: Station

    def two_port(self, frequency: np.ndarray) -> TwoPort:
        """The chain matrix at frequencies [Hz], not a number where the measurement does not reach."""
        s = within(self.measured, frequency)
        return from_scattering(s[..., 0, 0], s[..., 0, 1], s[..., 1, 0], s[..., 1, 1], self.measured.reference_ohm)

    def stress(self, waves: Waves, at: int, frequency: np.ndarray) -> Stress:
        """What the waves do to it as element `at`."""
        return lumped_stress(waves, at, self.station.impedance_ohm)

    def allowed(self, frequency: np.ndarray, stress: Stress) -> Allowed:
        """Nothing is known that would limit it but its match."""
        reflection = np.abs(scattering(self.two_port(frequency), self.station.impedance_ohm)[0])
        margin = match.match_margin(match.return_loss(reflection), self.station.return_loss_asked_db)
        none = np.full(np.shape(margin), np.inf)
        return Allowed(none, none, margin)


def within(measured: Measured, frequency: np.ndarray) -> np.ndarray:
    """The measurement at frequencies [Hz], not a number where it does not reach."""
    inside = covered(measured, frequency)
    held = np.clip(frequency, measured.frequencies_hz[0], measured.frequencies_hz[-1])
    return np.where(inside[..., None, None], at_frequencies(measured, held, "touchstone"), np.nan)
