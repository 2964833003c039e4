"""What calibration leaves of an analyser's errors, smooth over frequency, and the noise of its trace."""

from typing import NamedTuple

import numpy as np

from .waves import C_LIGHT, Section, join


class Quality(NamedTuple):
    """Bounds of each error, even between them; levels in dB of reflection."""

    directivity_db: tuple[float, float]
    match_db: tuple[float, float]
    tracking_db: tuple[float, float]
    plane_m: float
    noise: tuple[float, float]
    noisier_above_hz: float
    """From there on an analyser that uses harmonics has NOISIER times as much."""


QUALITIES = {
    "hobbyist": Quality((-38, -30), (-36, -26), (-46, -34), 0.030, (5e-4, 3e-3), 300e6),
    "good": Quality((-45, -38), (-45, -36), (-54, -44), 0.003, (1e-4, 5e-4), np.inf),
}
NOISIER = 3.0
LONGEST_DELAY_S = 1.2e-9
"""Of what leaves an error: within the analyser, its cable and its standards."""
TERMS = 3
RISING = 0.5
"""How much of an error may grow with frequency, as standards do that are not what their model says."""


def smooth_error(rng, frequency, bounds_db):
    """A complex error of some rms level, of a few waves of short delay."""
    sizes = rng.normal(size=(TERMS, 2)) @ [1, 1j]
    delays = rng.uniform(0, LONGEST_DELAY_S, TERMS)
    waves = np.exp(-2j * np.pi * np.multiply.outer(frequency, delays)) @ sizes
    rising = RISING * rng.random()
    waves = waves * (1 - rising + rising * frequency / frequency[-1])
    return waves * 10 ** (rng.uniform(*bounds_db) / 20) / np.sqrt(np.mean(np.abs(waves) ** 2))


class Port(NamedTuple):
    """The errors of one port."""

    directivity: np.ndarray
    match: np.ndarray
    tracking: np.ndarray
    """Of a reflection; 1 without an error."""

    def measured(self, reflection):
        """What it shows of a reflection."""
        return self.directivity + self.tracking * reflection / (1 - self.match * reflection)

    def section(self):
        """The errors as a two-port before the device."""
        return Section(self.directivity, np.sqrt(self.tracking), self.match)


def draw_port(rng, frequency, quality):
    """The errors of a port of some quality."""
    bounds = QUALITIES[quality]
    plane = np.exp(-4j * np.pi * frequency * rng.uniform(-bounds.plane_m, bounds.plane_m) / C_LIGHT)
    return Port(
        smooth_error(rng, frequency, bounds.directivity_db),
        smooth_error(rng, frequency, bounds.match_db),
        (1 + smooth_error(rng, frequency, bounds.tracking_db)) * plane,
    )


def draw_noise(rng, frequency, quality):
    """Complex noise of a trace, (frequencies,)."""
    bounds = QUALITIES[quality]
    level = np.exp(rng.uniform(*np.log(bounds.noise))) * np.where(frequency > bounds.noisier_above_hz, NOISIER, 1)
    return level * (rng.normal(size=(frequency.size, 2)) @ [1, 1j]) / np.sqrt(2)


def measured_part(section, first, second):
    """What two ports show of a section: theirs before and behind it."""
    behind = second.section()
    turned = Section(behind.far, behind.through, behind.near)
    return join(join(first.section(), section), turned)
