"""A run of cable in a line: attenuation fitted to published points, and what its hottest metre stands."""

from types import SimpleNamespace
from typing import NamedTuple

import numpy as np

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import Cable, CablePower
from ..formulas import heat, line, voltage
from ..formulas.formula import Sourced, purpose
from ..numeric.units import engineering
from ..physics.gates import EXPOSURES
from ..physics.ratings import RatingEnd
from ..physics.station import Station
from ..waves.cable_fit import attenuation_coefficients
from ..waves.two_port import TwoPort, Waves, line_section
from .stress import Allowed, Stress

__all__ = ["CableModel", "cable_marks", "cable_ratings", "table_of_cable_ratings"]

LOSS_ROUNDS = 2  # each brings the place of a maximum nearer by about beta over alpha


class CableModel(NamedTuple):
    """One end of a cable's ratings and its length [m]; with a table view, many cables along axis 0."""

    ratings: SimpleNamespace
    length_m: float
    station: Station

    def constants(self, frequency: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Attenuation constants of conductors and dielectric [Np/m] and phase constant [rad/m]."""
        warm = line.conductor_temperature_factor(self.station.ambient_temperature_c)
        whole = line.attenuation_constant(line.cable_attenuation(self.ratings.k_1, warm, frequency, self.ratings.k_2))
        dielectric = line.attenuation_constant(self.ratings.k_2 * frequency)
        return whole - dielectric, dielectric, line.phase_constant(frequency, self.ratings.velocity_factor)

    def two_port(self, frequency: np.ndarray) -> TwoPort:
        """The chain matrix at frequencies [Hz]."""
        conductor, dielectric, beta = self.constants(frequency)
        impedance = self.impedance(conductor, dielectric, beta)
        return line_section(impedance, (conductor + dielectric + 1j * beta) * self.length_m)

    def impedance(self, conductor: np.ndarray, dielectric: np.ndarray, beta: np.ndarray) -> np.ndarray:
        """Characteristic impedance [Ω] with the reactance that the losses bring, by the constants."""
        reactance = line.impedance_reactance(self.ratings.impedance_ohm, dielectric, conductor, beta)
        return self.ratings.impedance_ohm + 1j * reactance

    def stress(self, waves: Waves, at: int, frequency: np.ndarray) -> Stress:
        """The worst of both ends and of the first and last voltage and current maxima.

        Between them no maximum is higher: the sum of a falling and a rising
        exponential is greatest at an end.
        """
        constants = self.constants(frequency)
        conductor, dielectric, _ = constants
        squared_v, squared_i = self._squares(waves, at, constants, self._places(waves, at, constants))
        z_0, own = self.station.impedance_ohm, self.ratings.impedance_ohm
        heat_per_metre = 2 * (conductor * squared_i * own + dielectric * squared_v / own)
        return Stress(
            heat_share=heat_per_metre.max(axis=0),
            voltage_factor=squared_v.max(axis=0) / z_0,
            current_factor=squared_i.max(axis=0) * z_0,
            forward_factor=np.abs(waves.at(at).forward(z_0)) ** 2,
        )

    def along(self, waves: Waves, at: int, frequency: np.ndarray, places: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Voltage [V] and current [A], rms for 1 W, at places [m] from the end towards the transmitter."""
        squared_v, squared_i = self._squares(waves, at, self.constants(frequency), places)
        return np.sqrt(squared_v), np.sqrt(squared_i)

    def allowed(self, frequency: np.ndarray, stress: Stress) -> Allowed:
        """What it allows under that stress; a cable is judged key down through a whole over."""
        share = self.station.transmit_share
        allowed = heat.heat_allowed_power(
            self.ratings.highest_temperature_c,
            self.station.ambient_temperature_c,
            0.0,
            self.thermal_resistance(),
            stress.heat_share,
            1.0,
            self.station.duty_factor,
            share,
        )
        volts = voltage.voltage_allowed_power(self.peak_v, self.station.impedance_ohm, stress.voltage_factor)
        return Allowed(allowed, volts, np.full(np.shape(allowed), np.inf))

    @property
    def peak_v(self) -> np.ndarray:
        """The rated peak voltage of the cable [V]: its insulation is solid, so the air does not matter."""
        return voltage.allowed_peak_voltage(self.ratings.working_voltage_rms_v, 1.0)

    def thermal_resistance(self) -> np.ndarray:
        """From the centre conductor of one metre to the air [K m/W], behind the rating that binds."""
        with purpose("in one metre of the cable"):
            return heat.rated_thermal_resistance(
                self.ratings.rated_conductor_c,
                self.ratings.rated_ambient_c,
                self.ratings.rated_power_w,
                self.ratings.rated_share,
            )

    def _places(self, waves: Waves, at: int, constants: tuple) -> np.ndarray:
        """Both ends, and the two first and two last maxima of voltage and of current [m]; axis 0.

        Without loss the waves' sum is greatest where they are in phase, at phi = 0. With loss
        it is where 2 beta sin(phi) = -alpha (|forward|² - |backward|²) / (|forward| |backward|).
        """
        conductor, dielectric, beta = constants
        alpha, length, turn = conductor + dielectric, self.length_m, 2 * np.pi
        forward, backward = self._travelling(waves, at, constants)
        # angle of the reflection at both ends; the backward wave is known at the far one
        near = np.angle(backward * np.conj(forward)) - beta * length
        far = near + 2 * beta * length
        first = [np.mod(shift - near, turn) / (2 * beta) for shift in (0.0, np.pi)]
        last = [length - np.mod(far - shift, turn) / (2 * beta) for shift in (0.0, np.pi)]
        half_wave = np.pi / beta
        in_phase = np.stack([*first, *last, *(place + half_wave for place in (*first, *last))])
        product = np.maximum(np.abs(forward * backward) * np.exp(-alpha * length), np.finfo(np.float64).tiny)
        places = in_phase
        for _ in range(LOSS_ROUNDS):
            there = np.abs(forward) ** 2 * np.exp(-2 * alpha * np.clip(places, 0.0, length))
            back = np.abs(backward) ** 2 * np.exp(-2 * alpha * (length - np.clip(places, 0.0, length)))
            sine = np.clip(-alpha * (there - back) / (2 * beta * product), -1.0, 1.0)
            places = in_phase + np.arcsin(sine) / (2 * beta)
        ends = [np.zeros_like(first[0]), np.full_like(first[0], length)]
        return np.clip(np.concatenate([np.stack(ends), places]), 0.0, length)

    def _travelling(self, waves: Waves, at: int, constants: tuple) -> tuple[np.ndarray, np.ndarray]:
        """Forward wave at the near end and backward wave at the far end [V]: each is the greatest of its kind there."""
        impedance = self.impedance(*constants)
        return (
            (waves.voltage[at] + impedance * waves.current[at]) / 2,
            (waves.voltage[at + 1] - impedance * waves.current[at + 1]) / 2,
        )

    def _squares(self, waves: Waves, at: int, constants: tuple, places: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Squares of voltage and current at places [m] along the run."""
        conductor, dielectric, beta = constants
        gamma = conductor + dielectric + 1j * beta
        forward, backward = self._travelling(waves, at, constants)
        there = forward * np.exp(-gamma * places)
        back = backward * np.exp(-gamma * (self.length_m - places))
        return np.abs(there + back) ** 2, np.abs((there - back) / self.impedance(*constants)) ** 2


def cable_ratings(cable: str, end: RatingEnd) -> SimpleNamespace:
    """Scalars of one end of a cable's ratings, each a `Sourced` float."""
    return SimpleNamespace(**_values(cable, end))


def cable_marks(entry: Cable, frequency: float, exposure: str) -> list[str]:
    """A sentence for each soft doubt about a cable at a frequency [Hz] in some weather."""
    marks = []
    fit = attenuation_coefficients(entry.attenuation)
    if not fit.f_low <= frequency <= fit.f_high:
        reach = f"{engineering(fit.f_low, 'Hz')} to {engineering(fit.f_high, 'Hz')}"
        marks.append(f"Published loss figures of {entry.name} reach from {reach}; beyond them the law is drawn on.")
    if EXPOSURES.index(exposure) > EXPOSURES.index(entry.outdoor_use):
        marks.append(f"The jacket of {entry.name} stands: {entry.outdoor_use}; the site: {exposure}.")
    return marks


def table_of_cable_ratings(cables: list[str], end: RatingEnd) -> SimpleNamespace:
    """Columns of shape (len(cables), 1) of one end of the ratings."""
    rows = [_values(cable, end) for cable in cables]
    return SimpleNamespace(**{name: np.array([float(row[name]) for row in rows])[:, None] for name in rows[0]})


@per_edition(maxsize=256)
def _values(cable: str, end: RatingEnd) -> dict[str, Sourced]:
    entry = catalogue().cables[cable]
    fit = attenuation_coefficients(entry.attenuation)
    k_1, k_2 = fit.k1 / float(line.conductor_temperature_factor(entry.attenuation_temperature_c.value)), fit.k2
    rating = _rating(entry, k_1, k_2, end)
    working = getattr(entry.working_voltage_rms_v, end)
    plain = {
        "velocity_factor": entry.velocity_factor,
        "impedance_ohm": entry.impedance_ohm,
        "highest_temperature_c": entry.highest_temperature_c,
        "working_voltage_rms_v": working,
    }
    values = {name: Sourced(value.value, value.source, value.kind) for name, value in plain.items()}
    rated = {
        "rated_power_w": rating.power_w,
        "rated_conductor_c": rating.conductor_temperature_c,
        "rated_ambient_c": rating.ambient_temperature_c,
        "rated_share": _share_per_metre(k_1, k_2, rating),
    }
    values |= {name: Sourced(value, rating.source, rating.kind) for name, value in rated.items()}
    return values | {"k_1": Sourced(k_1, "fitted", ""), "k_2": Sourced(k_2, "fitted", "")}


def _rating(entry: Cable, k_1: float, k_2: float, end: RatingEnd) -> CablePower:
    """The rating that allows a metre the least heat for its rise, or with "high" the most."""
    ratings = [one for one in entry.power if one.end in ("both", end)]

    def conductance(one: CablePower) -> float:
        rise = one.conductor_temperature_c - one.ambient_temperature_c
        return one.power_w * _share_per_metre(k_1, k_2, one) / rise

    return min(ratings, key=conductance) if end == "low" else max(ratings, key=conductance)


def _share_per_metre(k_1: float, k_2: float, rating: CablePower) -> float:
    """Share of a matched wave's power lost in a metre at the rating's frequency [1/m]."""
    warm = line.conductor_temperature_factor(rating.ambient_temperature_c)
    return 2 * float(line.attenuation_constant(line.cable_attenuation(k_1, warm, rating.frequency_hz, k_2)))
