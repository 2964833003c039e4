"""A mated pair as it really is: a short length of some impedance with a lump in it, a contact and a little loss."""

from dataclasses import dataclass

import numpy as np

from .waves import C_LIGHT, across, chain, in_series, run

NEPER = np.log(10) / 20
UNEVEN_FAMILIES = {"uhf"}  # made for no impedance


@dataclass
class JointDraw:
    """One joint, or one end of an adapter."""

    impedance_ohm: float
    length_m: float
    """As a wave in air counts it."""
    shunt_f: float
    series_h: float
    contact_ohm: float
    loss_db: float
    """At 1 GHz, growing with its root."""

    def section(self, frequency, fault=None):
        """Its scattering at frequencies [Hz], with what is wrong in its middle."""
        omega = 2 * np.pi * frequency
        half = run(self.impedance_ohm + 0j, self._angle(frequency) / 2)
        middle = [in_series(self.contact_ohm + 1j * omega * self.series_h), across(1j * omega * self.shunt_f)]
        return chain([half, *middle, *([fault(frequency)] if fault else []), half])

    def _angle(self, frequency):
        loss = self.loss_db * NEPER * np.sqrt(frequency / 1e9)
        return loss + 2j * np.pi * frequency * self.length_m / C_LIGHT


def draw_joint(rng, family, careful=False):
    """A joint drawn on its own; a careful one is nearer to its standard."""
    low, high = (28, 46) if family in UNEVEN_FAMILIES else ((47, 53) if careful else (42, 58))
    lump = rng.uniform(0, 0.3 if careful else 1)
    capacitive = rng.random() < 0.5
    return JointDraw(
        rng.uniform(low, high),
        rng.uniform(0.015, 0.05),
        lump * 0.3e-12 if capacitive else 0.0,
        0.0 if capacitive else lump * 0.8e-9,
        float(np.exp(rng.uniform(np.log(1e-3), np.log(0.01 if careful else 0.1)))),
        rng.uniform(0.0, 0.02 if careful else 0.06),
    )
