"""A run of cable as distributed conductors and dielectric, uneven along its length, damaged or whole."""

import tomllib
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import NamedTuple

import numpy as np
from scipy.optimize import nnls
from scipy.special import ive

from .waves import C_LIGHT, chain_pieces, run

CATALOGUE = Path(__file__).parents[2] / "calc" / "catalogue" / "cables"
MU_0 = 4e-7 * np.pi
COPPER = 1.72e-8  # Ωm
SCREEN_THICKNESS_M = 0.15e-3  # a braid of thin wires
HIGHEST_FITTED_HZ = 2e9
DB = 20 / np.log(10)
PIECES_IN_A_WAVE = 5
SHORTEST_PIECE_M, LONGEST_PIECE_M = 0.02, 0.5
WANDER_TERMS = 24


class Nominal(NamedTuple):
    """What its sheet says of a cable, and the conductor and dielectric loss that explain its attenuation."""

    impedance_ohm: float
    velocity: float
    inner_radius_m: float
    screen_radius_m: float
    conductor: float
    """Of smooth copper."""
    tangent: float


@dataclass
class Damage:
    """A stretch of a cable that is not as it was made; shares of its good values."""

    start_m: float
    length_m: float
    impedance: float = 1.0
    """Of the conductors' distance: velocity stays."""
    permittivity: float = 1.0
    tangent: float = 0.0
    """More than before."""
    resistance_ohm_per_m: float = 0.0


@dataclass
class Unevenness:
    """How impedance varies along a cable: a sum of waves, of which one is the ripple of its making."""

    sizes: np.ndarray
    per_m: np.ndarray
    phases: np.ndarray

    def at(self, place_m):
        """Impedance over its mean at places [m]."""
        return 1 + (self.sizes * np.cos(np.multiply.outer(place_m, self.per_m) + self.phases)).sum(axis=-1)


@dataclass
class Cable:
    """A run of cable as it really is."""

    nominal: Nominal
    length_m: float
    impedance: float
    velocity: float
    """Over the sheet's."""
    conductor_loss: float
    dielectric_loss: float
    uneven: Unevenness
    damages: list[Damage] = field(default_factory=list)

    def section(self, frequency, damaged=True):
        """Its scattering at frequencies [Hz]."""
        damages = self.damages if damaged else []
        edges = self._edges(frequency, damages)
        lengths, places = np.diff(edges), (edges[1:] + edges[:-1]) / 2
        width, permittivity = self.uneven.at(places), np.ones_like(places)
        tangent, resistance = np.zeros_like(places), np.zeros_like(places)
        for one in damages:
            inside = (places > one.start_m) & (places < one.start_m + one.length_m)
            width[inside] *= one.impedance
            permittivity[inside] *= one.permittivity
            tangent[inside] += one.tangent
            resistance[inside] += one.resistance_ohm_per_m
        omega = 2 * np.pi * frequency
        impedance, velocity = self.nominal.impedance_ohm * self.impedance, self.nominal.velocity * self.velocity
        inductance, capacitance = impedance / (velocity * C_LIGHT), 1 / (impedance * velocity * C_LIGHT)
        inside = internal_impedance(self.nominal, frequency) * self.nominal.conductor * self.conductor_loss
        series = 1j * omega * inductance * width[:, None] + inside + resistance[:, None]
        losing = 1 - 1j * (self.nominal.tangent * self.dielectric_loss + tangent[:, None])
        shunt = 1j * omega * capacitance * (permittivity / width)[:, None] * losing
        return chain_pieces(run(np.sqrt(series / shunt), np.sqrt(series * shunt) * lengths[:, None]))

    def _edges(self, frequency, damages):
        shortest_wave = self.nominal.velocity * C_LIGHT / frequency[-1]
        piece = np.clip(shortest_wave / PIECES_IN_A_WAVE, SHORTEST_PIECE_M, LONGEST_PIECE_M)
        even = np.linspace(0, self.length_m, int(np.ceil(self.length_m / piece)) + 1)
        ends = [end for one in damages for end in (one.start_m, one.start_m + one.length_m)]
        return np.unique(np.concatenate([even, np.clip(ends, 0, self.length_m)]))


def internal_impedance(nominal, frequency):
    """Impedance inside copper conductors of that size [Ω/m]: a round wire, and a screen of some thickness."""
    wave = (1 + 1j) * np.sqrt(np.pi * frequency * MU_0 / COPPER)
    radius = nominal.inner_radius_m
    wire = COPPER * wave / (2 * np.pi * radius) * ive(0, wave * radius) / ive(1, wave * radius)
    screen = COPPER * wave / (2 * np.pi * nominal.screen_radius_m) / np.tanh(wave * SCREEN_THICKNESS_M)
    return wire + screen


def losses_db_per_m(cable, frequency):
    """What smooth copper takes, and a dielectric of a loss tangent of 1, at frequencies [Hz]."""
    conductor = internal_impedance(cable, frequency).real / (2 * cable.impedance_ohm) * DB
    return conductor, np.pi * frequency / (cable.velocity * C_LIGHT) * DB


def attenuation_db_per_m(cable, frequency):
    """By its sheet, at frequencies [Hz]."""
    conductor, dielectric = losses_db_per_m(cable, frequency)
    return cable.conductor * conductor + cable.tangent * dielectric


@cache
def nominal(name):
    """A cable of the catalogue by its id."""
    entry = tomllib.loads((CATALOGUE / f"{name}.toml").read_text(encoding="utf-8"))
    impedance, velocity = entry["impedance_ohm"]["value"], entry["velocity_factor"]["value"]
    radii = [entry["build"][f"{what}_diameter_m"]["value"] / 2 for what in ("inner", "dielectric")]
    bare = Nominal(impedance, velocity, *radii, 1.0, 0.0)
    points = [(one["frequency_hz"], one["db_per_m"]) for one in entry["attenuation"]]
    frequency, loss = np.array([one for one in points if one[0] <= HIGHEST_FITTED_HZ]).T
    conductor, dielectric = losses_db_per_m(bare, frequency)
    (by_conductor, tangent), _ = nnls(np.array([conductor, dielectric]).T / loss[:, None], np.ones_like(loss))
    return bare._replace(conductor=float(by_conductor), tangent=float(tangent))


def draw_unevenness(rng):
    """A wander of 0.2 to 1 % over 0.2 to 3 m, and a ripple of a period of 0.2 to 3 m."""
    wander, over_m = rng.uniform(0.002, 0.01), rng.uniform(0.2, 3)
    ripple, period_m = rng.uniform(0.0003, 0.003), np.exp(rng.uniform(np.log(0.2), np.log(3)))
    sizes = np.append(np.full(WANDER_TERMS, wander * np.sqrt(2 / WANDER_TERMS)), ripple)
    per_m = np.append(np.clip(rng.standard_cauchy(WANDER_TERMS), -20, 20) / over_m, 2 * np.pi / period_m)
    return Unevenness(sizes, per_m, rng.uniform(0, 2 * np.pi, WANDER_TERMS + 1))


def draw_cable(rng, name, described_m, careful=False):
    """A run of a cable described as so long [m]; a careful one keeps within its sheet, but for measured length."""
    loss = rng.uniform(0.9, 1.08) if careful else rng.uniform(0.85, 1.3)
    return Cable(
        nominal(name),
        described_m * (1 + rng.uniform(-0.05, 0.05)),
        1 + np.clip(rng.normal(0, 0.01 if careful else 0.015), -0.04, 0.04),
        1 + rng.uniform(-0.03, 0.03),
        loss * rng.uniform(0.98, 1.02),
        loss * rng.uniform(0.8, 1.2),
        draw_unevenness(rng),
    )
