"""A run of cable in a line: its waves, its hottest metre and its highest voltage."""

from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..catalogue import catalogue
from ..catalogue.schema import Cable
from ..formulas import line, voltage
from ..formulas.formula import Broadcast, Number
from ..numeric.units import engineering
from ..physics.cable_fit import attenuation_coefficients
from ..physics.cable_heat import CablePath, cable_limit, cable_path, conductor_rises
from ..physics.cable_ratings import CableRatings, cable_cutoff
from ..physics.gates import EXPOSURES, GateResult, cable_te11, heat_room
from ..physics.heat_limit import HeatLimit, Wave
from ..physics.limits import LimitId
from ..physics.ratings import CAUTIOUS
from ..physics.scenario import Surroundings
from ..physics.station import Station
from ..waves.two_port import TwoPort, Waves, line_section
from .any_phase import ReflectionSize, worst_through
from .link import Link, LinkKind
from .stress import Allowed, Stress

__all__ = ["CableLink", "CableModel", "cable_marks", "cable_model"]

Constants = tuple[Broadcast, Broadcast, Broadcast]

LOSS_ROUNDS = 2  # each brings the place of a maximum nearer by about beta over alpha


@dataclass(frozen=True, eq=False)
class CableModel:
    """One end of a cable's ratings and its length [m]; with table ratings, many cables along axis 0."""

    ratings: CableRatings[Number]
    length_m: float
    station: Station
    path: CablePath
    heat_limit: ClassVar[LimitId] = "cable"
    tuned: ClassVar[bool] = False

    def constants(self, frequency: Broadcast) -> Constants:
        """Attenuation constants of conductors and dielectric [Np/m] and phase constant [rad/m]."""
        warm = line.conductor_temperature_factor(self.station.ambient_temperature_c)
        k_1, k_2 = self.ratings.conductor_coefficient(frequency), self.ratings.k_2
        total = line.attenuation_constant(line.cable_attenuation(k_1, warm, frequency, k_2))
        dielectric = line.attenuation_constant(k_2 * frequency)
        conductor = total - dielectric
        surface = line.surface_phase_constant(frequency, self.ratings.velocity_factor)
        return conductor, dielectric, line.phase_constant(surface, conductor)

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix at frequencies [Hz]."""
        conductor, dielectric, beta = self.constants(frequency)
        impedance = self.impedance(conductor, dielectric, beta)
        return line_section(impedance, (conductor + dielectric + 1j * beta) * self.length_m)

    def impedance(self, conductor: Broadcast, dielectric: Broadcast, beta: Broadcast) -> Broadcast:
        """Characteristic impedance [Ω] with what the losses and the conductors' inside bring, by the constants."""
        surface, nominal = beta - conductor, self.ratings.impedance_ohm
        resistance = line.impedance_resistance(nominal, conductor, surface)
        return resistance + 1j * line.impedance_reactance(nominal, dielectric, conductor, surface)

    def stress(self, waves: Waves, plane: int, frequency: Broadcast) -> Stress:
        """The worst of both ends and of the first and last voltage and current maxima.

        Between them no maximum is higher: the sum of a falling and a rising
        exponential is greatest at an end.
        """
        constants = self.constants(frequency)
        conductor, dielectric, _ = constants
        squared_v, squared_i = self._squares(waves, plane, constants, self._places(waves, plane, constants))
        z_0, z_cable = self.station.impedance_ohm, self.ratings.impedance_ohm
        heat_per_metre = 2 * (conductor * squared_i * z_cable + dielectric * squared_v / z_cable)
        hottest = np.expand_dims(heat_per_metre.argmax(axis=0), 0)
        at_hottest_v, at_hottest_i = (
            np.take_along_axis(np.broadcast_to(one, heat_per_metre.shape), hottest, axis=0)[0]
            for one in (squared_v, squared_i)
        )
        return Stress(
            heat_share=heat_per_metre.max(axis=0),
            voltage_factor=squared_v.max(axis=0) / z_0,
            current_factor=squared_i.max(axis=0) * z_0,
            forward_factor=np.abs(waves.at(plane).forward(z_0)) ** 2,
            hottest=Wave(at_hottest_v / z_0, at_hottest_i * z_0),
        )

    def along(
        self, waves: Waves, plane: int, frequency: Broadcast, places: np.ndarray
    ) -> tuple[np.ndarray, np.ndarray]:
        """Voltage [V] and current [A], rms for 1 W, at places [m] from the end towards the transmitter."""
        squared_v, squared_i = self._squares(waves, plane, self.constants(frequency), places)
        return np.sqrt(squared_v), np.sqrt(squared_i)

    def heat(self, frequency: Broadcast, stress: Stress) -> HeatLimit:
        """What its hottest metre allows."""
        rises = conductor_rises(self.ratings, self.path, frequency, stress.hottest, self.station)
        return cable_limit(self.ratings, self.path, rises, self.station)

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What it allows under that stress."""
        voltage_w = voltage.voltage_allowed_power(self.peak_v, self.station.impedance_ohm, stress.voltage_factor)
        return Allowed(self.heat(frequency, stress).allowed_w, voltage_w)

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency [Hz], after the constants that its stress came from, with its path recorded."""
        self.constants(frequency)
        return cable_model(self.ratings, self.length_m, self.station).allowed(frequency, stress)

    def settled(self, frequency: Broadcast, beyond: Broadcast) -> "CableModel":
        """Itself: there is nothing to set."""
        return self

    def return_loss_db(self, frequency: Broadcast) -> None:
        """Nothing: a cable is what reflections are measured against."""

    def any_phase(self, frequency: Broadcast, load: ReflectionSize) -> ReflectionSize:
        """The sizes of the reflection at its near end when no phase is known: a step, a lossy run and a step back."""
        conductor, dielectric, beta = self.constants(frequency)
        impedance, z_0 = self.impedance(conductor, dielectric, beta), self.station.impedance_ohm
        step = (impedance - z_0) / (impedance + z_0)
        returned = np.exp(-2 * (conductor + dielectric) * self.length_m)
        inside = returned * worst_through(-step, 1 - step**2, step, load.worst)
        likely_inside = returned * line.likely_reflection(np.abs(step), load.likely)
        return ReflectionSize(
            worst=worst_through(step, 1 - step**2, -step, inside),
            likely=line.likely_reflection(np.abs(step), likely_inside),
        )

    @property
    def peak_v(self) -> Broadcast:
        """The rated peak voltage of the cable [V]: its insulation is solid, so the air does not matter."""
        return voltage.allowed_peak_voltage(self.ratings.working_voltage_rms_v, 1.0)

    def _places(self, waves: Waves, plane: int, constants: Constants) -> np.ndarray:
        """Both ends, and the two first and two last maxima of voltage and of current [m]; axis 0.

        Without loss the waves' sum is greatest where they are in phase, at phi = 0. With loss
        it is where 2 beta sin(phi) = -alpha (|forward|² - |backward|²) / (|forward| |backward|).
        """
        conductor, dielectric, beta = constants
        alpha, length, turn = conductor + dielectric, self.length_m, 2 * np.pi
        forward, backward = self._travelling(waves, plane, constants)
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
            onward = np.abs(forward) ** 2 * np.exp(-2 * alpha * np.clip(places, 0.0, length))
            returning = np.abs(backward) ** 2 * np.exp(-2 * alpha * (length - np.clip(places, 0.0, length)))
            sine = np.clip(-alpha * (onward - returning) / (2 * beta * product), -1.0, 1.0)
            places = in_phase + np.arcsin(sine) / (2 * beta)
        ends = [np.zeros_like(first[0]), np.full_like(first[0], length)]
        return np.clip(np.concatenate([np.stack(ends), places]), 0.0, length)

    def _travelling(self, waves: Waves, plane: int, constants: Constants) -> tuple[np.ndarray, np.ndarray]:
        """Forward wave at the near end and backward wave at the far end [V], each where it is greatest."""
        impedance = self.impedance(*constants)
        return (
            (waves.voltage[plane] + impedance * waves.current[plane]) / 2,
            (waves.voltage[plane + 1] - impedance * waves.current[plane + 1]) / 2,
        )

    def _squares(
        self, waves: Waves, plane: int, constants: Constants, places: np.ndarray
    ) -> tuple[np.ndarray, np.ndarray]:
        """Squares of voltage and current at places [m] along the run."""
        conductor, dielectric, beta = constants
        gamma = conductor + dielectric + 1j * beta
        forward, backward = self._travelling(waves, plane, constants)
        onward = forward * np.exp(-gamma * places)
        returning = backward * np.exp(-gamma * (self.length_m - places))
        return np.abs(onward + returning) ** 2, np.abs((onward - returning) / self.impedance(*constants)) ** 2


def cable_model(ratings: CableRatings[Number], length_m: float, station: Station) -> CableModel:
    """The model of a run of cable at a station."""
    return CableModel(ratings, length_m, station, cable_path(ratings, station))


@dataclass(frozen=True, eq=False, kw_only=True)
class CableLink(Link):
    """A run of one cable."""

    kind: ClassVar[LinkKind] = "cable"
    models: tuple[CableModel, CableModel]
    cable: str
    """Its id in the catalogue."""

    def gates(self, frequency_hz: float, power_w: float) -> list[GateResult]:
        """Whether one wave alone travels in it, and when it transmits, whether it has room for heat."""
        model = self.models[CAUTIOUS]
        gates = [cable_te11(catalogue().cables[self.cable], frequency_hz)]
        if power_w > 0:
            gates.append(heat_room(model.ratings.highest_temperature_c, model.path.solar_rise_k, model.station))
        return gates

    def refused(self, frequency: np.ndarray, power_w: float) -> np.ndarray:
        """Where one of them fails, by frequency [Hz]."""
        hot = not all(gate.passed for gate in self.gates(0.0, power_w))
        return hot | (frequency >= cable_cutoff(self.models[CAUTIOUS].ratings))


def cable_marks(entry: Cable, frequency: float, site: Surroundings) -> list[str]:
    """A sentence for each soft doubt about a cable at a frequency [Hz] and a site."""
    marks = []
    fit = attenuation_coefficients(entry.attenuation)
    if not fit.lowest <= frequency <= fit.f_high:
        reach = f"{engineering(fit.lowest, 'Hz')} to {engineering(fit.f_high, 'Hz')}"
        marks.append(f"Published loss figures of {entry.name} reach from {reach}; beyond them the law is drawn on.")
    if EXPOSURES.index(site.exposure) > EXPOSURES.index(entry.outdoor_use):
        marks.append(f"The jacket of {entry.name} stands: {entry.outdoor_use}; the site: {site.exposure}.")
    lowest_c = entry.lowest_temperature_c.value
    if site.ambient_temperature_c < lowest_c:
        marks.append(f"{entry.name} is rated down to {lowest_c:g} °C; the site: {site.ambient_temperature_c:g} °C.")
    return marks
