"""A run of line that is long against the wave: its waves, wherever they are greatest, whatever it is made of."""

from dataclasses import dataclass
from typing import ClassVar, Protocol, Self

import numpy as np

from ..formulas import line
from ..formulas.formula import Broadcast
from ..physics.heat_limit import HeatLimit, Wave
from ..physics.limits import LimitId
from ..physics.station import Station
from ..waves.two_port import TwoPort, Waves, line_section
from .any_phase import ReflectionSize, worst_through
from .link import Link
from .stress import Allowed, Stress, voltage_allowed_w

__all__ = ["Constants", "FittedRatings", "RunLink", "RunModel", "fitted_constants"]

Constants = tuple[Broadcast, Broadcast, Broadcast]
"""Attenuation constants of conductors and dielectric [Np/m] and phase constant [rad/m]."""

LOSS_ROUNDS = 4  # each brings the place of a maximum nearer by about beta over alpha: four for lossy cable below 1 MHz


class FittedRatings(Protocol):
    """What the law fitted to published losses says of a line."""

    @property
    def velocity_factor(self) -> Broadcast:
        """Speed of the wave over that of light [1]."""

    @property
    def k_2(self) -> Broadcast:
        """Dielectric coefficient of the attenuation [dB/(m·Hz)]."""

    def conductor_coefficient(self, frequency: Broadcast) -> Broadcast:
        """Conductor coefficient of the attenuation at 20 °C [dB/(m·√Hz)] by frequency [Hz]."""


def fitted_constants(ratings: FittedRatings, frequency: Broadcast, station: Station) -> Constants:
    """The constants by the fitted law at frequencies [Hz], the conductors as warm as a station's air."""
    warm = line.conductor_temperature_factor(station.ambient_temperature_c)
    k_1, k_2 = ratings.conductor_coefficient(frequency), ratings.k_2
    total = line.attenuation_constant(line.cable_attenuation(k_1, warm, frequency, k_2))
    dielectric = line.attenuation_constant(k_2 * frequency)
    conductor = total - dielectric
    surface = line.surface_phase_constant(frequency, ratings.velocity_factor)
    return conductor, dielectric, line.phase_constant(surface, conductor)


@dataclass(frozen=True, eq=False)
class RunModel:
    """A length [m] of line at a station; nothing of it is limited by heat unless it says so."""

    station: Station
    length_m: float
    heat_limit: ClassVar[LimitId] = "rating"
    tuned: ClassVar[bool] = False

    @property
    def nominal_ohm(self) -> Broadcast:
        """Characteristic impedance without loss [Ω]."""
        raise NotImplementedError

    @property
    def peak_v(self) -> Broadcast:
        """Largest peak voltage allowed [V], infinite where none is known."""
        raise NotImplementedError

    def constants(self, frequency: Broadcast) -> Constants:
        """Attenuation constants of conductors and dielectric [Np/m] and phase constant [rad/m]."""
        raise NotImplementedError

    def impedance(self, conductor: Broadcast, dielectric: Broadcast, beta: Broadcast) -> Broadcast:
        """Characteristic impedance [Ω] with what the losses and the conductors' inside bring, by the constants."""
        surface, nominal = beta - conductor, self.nominal_ohm
        resistance = line.impedance_resistance(nominal, conductor, surface)
        return resistance + 1j * line.impedance_reactance(nominal, dielectric, conductor, surface)

    def two_port(self, frequency: Broadcast, longer: Broadcast = 0.0) -> TwoPort:
        """The chain matrix at frequencies [Hz], of a run electrically longer by a share."""
        conductor, dielectric, beta = self.constants(frequency)
        beta = beta * (1 + longer)  # the losses' reactance goes with loss over phase, or a longer run gave out power
        impedance = self.impedance(conductor, dielectric, beta)
        return line_section(impedance, (conductor + dielectric + 1j * beta) * self.length_m)

    def stress(self, waves: Waves, plane: int, frequency: Broadcast) -> Stress:
        """The worst of both ends and of the first and last voltage and current maxima.

        Between them no maximum is higher: the sum of a falling and a rising
        exponential is greatest at an end.
        """
        constants = self.constants(frequency)
        conductor, dielectric, _ = constants
        squared_v, squared_i = self._squares(waves, plane, constants, self._places(waves, plane, constants))
        z_0, z_line = self.station.impedance_ohm, self.nominal_ohm
        heat_per_metre = 2 * (conductor * squared_i * z_line + dielectric * squared_v / z_line)
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

    def settled(self, frequency: Broadcast, beyond: Broadcast) -> Self:
        """Itself: there is nothing to set."""
        return self

    def heat(self, frequency: Broadcast, stress: Stress) -> HeatLimit | None:
        """Nothing: no temperature limits it."""
        return None

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What it allows under that stress."""
        return Allowed(
            heat_w=np.full(np.shape(stress.voltage_factor), np.inf),
            voltage_w=voltage_allowed_w(self.peak_v, self.station.impedance_ohm, stress),
        )

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency [Hz], after the constants that its stress came from."""
        self.constants(frequency)
        return self.allowed(frequency, stress)

    def other_side(self) -> None:
        """None: its impedance is what it is."""

    def return_loss_db(self, frequency: Broadcast) -> None:
        """Nothing: a line is what reflections are measured against."""

    def matched_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Between ends of its own impedance [dB]."""
        conductor, dielectric, _ = self.constants(frequency)
        return (conductor + dielectric) * self.length_m / line.attenuation_constant(1.0)

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

    def _places(self, waves: Waves, plane: int, constants: Constants) -> np.ndarray:
        """Both ends, and the two first and two last maxima of voltage and of current [m]; axis 0.

        Without loss the waves' sum is greatest where they are in phase, at phi = 0. With loss
        it is where 2 beta sin(phi) = -alpha (|forward|² - |backward|²) / (|forward| |backward|).
        """
        conductor, dielectric, beta = constants
        alpha, length = conductor + dielectric, self.length_m
        forward, backward = self._travelling(waves, plane, constants)
        # angle of the reflection at both ends; the backward wave is known at the far one
        near = np.angle(backward * np.conj(forward)) - beta * length
        far = near + 2 * beta * length
        first = [_within_a_turn(shift - near) / (2 * beta) for shift in (0.0, np.pi)]
        last = [length - _within_a_turn(far - shift) / (2 * beta) for shift in (0.0, np.pi)]
        half_wave = np.pi / beta
        in_phase = np.stack([*first, *last, *(place + half_wave for place in (*first, *last))])
        product = np.maximum(np.abs(forward * backward) * np.exp(-alpha * length), np.finfo(np.float64).tiny)
        onward_w, returning_w = _square(forward), _square(backward)
        places = in_phase
        for _ in range(LOSS_ROUNDS):
            within = np.clip(places, 0.0, length)
            onward = onward_w * np.exp(-2 * alpha * within)
            returning = returning_w * np.exp(-2 * alpha * (length - within))
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
        alpha, length = conductor + dielectric, self.length_m
        forward, backward = self._travelling(waves, plane, constants)
        onward = _square(forward) * np.exp(-2 * alpha * places)
        returning = _square(backward) * np.exp(-2 * alpha * (length - places))
        both = forward * np.conj(backward)
        apart = np.angle(both) + beta * (length - 2 * places)
        mixed = 2 * np.abs(both) * np.exp(-alpha * length) * np.cos(apart)
        # what cancels may fall below nothing by rounding
        voltage, current = (np.maximum(onward + returning + sign * mixed, 0.0) for sign in (1, -1))
        return voltage, current / _square(self.impedance(*constants))


@dataclass(frozen=True, eq=False, kw_only=True)
class RunLink(Link):
    """A run of line, whatever it is made of."""

    models: tuple[RunModel, RunModel]


def _square(value: Broadcast) -> Broadcast:
    """Of a complex number's size."""
    return np.real(value) ** 2 + np.imag(value) ** 2


def _within_a_turn(angle: Broadcast) -> Broadcast:
    """An angle from 0 to a whole turn [rad]."""
    return angle - 2 * np.pi * np.floor(angle / (2 * np.pi))
