"""The links of a line with what is not known of each left to chance."""

from collections.abc import Iterable
from functools import reduce
from typing import NamedTuple, Protocol

import numpy as np

from ..feedline.joint import JointLink, joints_of_every_grade
from ..feedline.link import Link
from ..feedline.part import PartLink
from ..feedline.run import RunLink
from ..feedline.stress import Stress
from ..feedline.tuner import SetTuner, TunerLink
from ..formulas.formula import Broadcast
from ..numeric.draws import Stream
from ..physics.heat_limit import Wave
from ..physics.ratings import CAUTIOUS
from ..waves.two_port import MOST_NEPERS, TwoPort, Waves

__all__ = ["Plane", "RandomLink", "random_link"]


class Plane(NamedTuple):
    """Voltage [V] and current [A], rms, at one plane: draws x frequencies."""

    voltage: np.ndarray
    current: np.ndarray

    @property
    def power(self) -> np.ndarray:
        """Net power through the plane [W]."""
        return np.real(self.voltage * np.conj(self.current))

    def through(self, port: TwoPort) -> "Plane":
        """The plane in front of a two-port."""
        v, i = self
        return Plane(port.a * v + port.b * i, port.c * v + port.d * i)

    def travelling(self, impedance: Broadcast) -> tuple[np.ndarray, np.ndarray]:
        """Voltages of the forward and the backward wave [V]."""
        return (self.voltage + impedance * self.current) / 2, (self.voltage - impedance * self.current) / 2


class RandomLink(Protocol):
    """A link made ready for draws at some frequencies."""

    @property
    def scale(self) -> Broadcast:
        """The factor of power by which its two-ports are drawn too small, so that a lossy run does not overflow [1]."""

    def draw(self, random: Stream, draws: int, after: Plane) -> TwoPort:
        """Its two-port, draws x frequencies, by the plane behind it."""

    def strain(self, before: Plane, after: Plane) -> np.ndarray:
        """The power that passes over the one allowed [1] by the planes at both ends, draws x frequencies."""


class _HeatShares(NamedTuple):
    """Shares of the power allowed by heat that 1 W lost, a matched voltage and a matched current each take [1/W].

    All rises are proportional to what heats, so shares add up.
    """

    lost: np.ndarray
    voltage: np.ndarray
    current: np.ndarray

    def of(self, lost: Broadcast, voltage: Broadcast, current: Broadcast) -> np.ndarray:
        """The share taken by a loss [W] and by squares of voltage and current over those of 1 W in a matched wave."""
        total: np.ndarray = self.lost * lost + self.voltage * voltage + self.current * current
        return total


def _shares(allowed_w: Iterable[Broadcast]) -> _HeatShares:
    """What a loss, a voltage and a current take of what heat allows, by the power [W] each alone leaves."""
    return _HeatShares(*(1 / np.asarray(power) for power in allowed_w))


def _units(frequency: np.ndarray) -> list[Stress]:
    """A stress by loss alone, one by voltage alone and one by current alone."""
    one, none = np.ones_like(frequency), np.zeros_like(frequency)
    waves = ((one, Wave(none, none)), (none, Wave(one, none)), (none, Wave(none, one)))
    return [Stress(lost, wave.voltage, wave.current, none, wave) for lost, wave in waves]


class _RandomJoint:
    """A joint of any grade from typical to worst, above its design impedance or below."""

    scale = 1.0

    def __init__(self, link: JointLink, frequency: np.ndarray) -> None:
        self._grades = [one[:, 0] for one in joints_of_every_grade(*link.models, frequency)[:4]]
        model = link.models[CAUTIOUS]
        self._z_0 = model.station.impedance_ohm
        by_unit = [model.places(frequency, stress) for stress in _units(frequency)]
        self._heat = [_shares(limit.allowed_w for limit in place) for place in zip(*by_unit, strict=True)]
        self._peak_v = model.peak_v

    def draw(self, random: Stream, draws: int, after: Plane) -> TwoPort:
        """A joint of any grade on either side."""
        chosen = random.integers(len(self._grades[0]), draws)
        return TwoPort(*(np.take(one, chosen, axis=0) for one in self._grades))

    def strain(self, before: Plane, after: Plane) -> np.ndarray:
        """By what it turns into heat and what the wave makes its cables, and by the voltage before it."""
        lost = before.power - after.power
        voltage, current = np.abs(before.voltage) ** 2, np.abs(before.current) ** 2
        wave = voltage / self._z_0, current * self._z_0
        hottest = reduce(np.maximum, (place.of(lost, *wave) for place in self._heat))
        return np.maximum(hottest, 2 * voltage / self._peak_v**2)


class _RandomRun:
    """A run of line whose electrical length is not known well."""

    def __init__(self, link: RunLink, frequency: np.ndarray, tolerance: float) -> None:
        model, self._tolerance = link.models[CAUTIOUS], tolerance
        conductor, dielectric, beta = model.constants(frequency)
        self._impedance = model.impedance(conductor, dielectric, beta)
        self._z_0 = model.station.impedance_ohm
        self._angle = beta * model.length_m
        nepers = np.minimum((conductor + dielectric) * model.length_m, MOST_NEPERS)
        self._onward, self._returning = np.exp(1j * self._angle), np.exp(-2 * nepers - 1j * self._angle)
        # amplitudes are kept those of the far end
        self.scale = np.exp(-2 * nepers)
        self._heat = _shares(model.allowed(frequency, stress).heat_w for stress in _units(frequency))
        self._peak_v = model.peak_v

    def draw(self, random: Stream, draws: int, after: Plane) -> TwoPort:
        """A run of any length within the tolerance."""
        error = self._tolerance * (2 * random.uniform(draws)[:, None] - 1)
        turn = np.exp(1j * error * self._angle)
        onward, returning = self._onward * turn, self._returning * np.conj(turn)
        cosh, sinh = (onward + returning) / 2, (onward - returning) / 2
        # the losses' reactance goes with loss over phase; left as it was, a longer run would give out power
        impedance = self._impedance.real + 1j * self._impedance.imag / np.maximum(1 + error, 1.0)
        return TwoPort(cosh, impedance * sinh, sinh / impedance, cosh)

    def strain(self, before: Plane, after: Plane) -> np.ndarray:
        """By the waves' greatest sum where a maximum lies within the run, else by its ends."""
        forward, backward = before.travelling(self._impedance)
        ratio = backward * np.conj(forward)
        sums = (np.abs(forward) + np.abs(backward)) ** 2
        turn = -np.angle(ratio)
        voltage = np.where(_within(turn, self._angle), sums, _greater(before.voltage, after.voltage, self.scale))
        squared_z = np.abs(self._impedance) ** 2
        current = np.where(
            _within(turn - np.pi, self._angle), sums / squared_z, _greater(before.current, after.current, self.scale)
        )
        heat = self._heat.of(0.0, voltage / self._z_0, current * self._z_0)
        return np.maximum(heat, 2 * voltage / self._peak_v**2)


class _KnownPart:
    """A two-port that was measured, its angles too."""

    scale = 1.0

    def __init__(self, link: Link, frequency: np.ndarray) -> None:
        model, ones = link.models[CAUTIOUS], np.ones_like(frequency)
        self._z_0 = model.station.impedance_ohm
        self._port = model.two_port(frequency)
        self._heat_w, self._voltage_w = model.allowed(frequency, Stress(ones, ones, ones, ones, Wave(ones, ones)))

    def draw(self, random: Stream, draws: int, after: Plane) -> TwoPort:
        """What was measured."""
        return self._port

    def strain(self, before: Plane, after: Plane) -> np.ndarray:
        """By the forward wave and the voltage before it."""
        forward, _ = before.travelling(self._z_0)
        heat = np.abs(forward) ** 2 / self._z_0 / self._heat_w
        return np.maximum(heat, np.abs(before.voltage) ** 2 / self._z_0 / self._voltage_w)


class _RandomPart(_KnownPart):
    """A part known by its data sheet, which gives no angles."""

    def __init__(self, link: PartLink, frequency: np.ndarray) -> None:
        super().__init__(link, frequency)
        self._model, self._frequency = link.models[CAUTIOUS], frequency

    def draw(self, random: Stream, draws: int, after: Plane) -> TwoPort:
        """The part at any angle."""
        return self._model.turned(self._frequency, np.exp(2j * np.pi * random.uniform(draws)[:, None]))


class _RandomTuner:
    """A tuner that is tuned anew to whatever line is drawn behind it."""

    scale = 1.0

    def __init__(self, link: TunerLink, frequency: np.ndarray) -> None:
        self._model, self._frequency = link.models[CAUTIOUS], frequency

    def draw(self, random: Stream, draws: int, after: Plane) -> TwoPort:
        """Set to what it looks at."""
        return self._set(after).two_port(self._frequency)

    def strain(self, before: Plane, after: Plane) -> np.ndarray:
        """By the voltage on its worst capacitor and the current in its coil."""
        tuner = self._set(after)
        stress = tuner.stress(Waves(*(np.stack(ends) for ends in zip(before, after, strict=True))), 0, self._frequency)
        heat_w, voltage_w = tuner.allowed(self._frequency, stress)
        return np.maximum(1 / heat_w, 1 / voltage_w)

    def _set(self, after: Plane) -> SetTuner:
        forward, backward = after.travelling(self._model.station.impedance_ohm)
        return self._model.settled(self._frequency, backward / forward)


def random_link(link: Link, frequency: np.ndarray, tolerance: float) -> RandomLink:
    """The link made ready for draws at frequencies [Hz]; `tolerance` is that of a run's electrical length."""
    if isinstance(link, JointLink):
        return _RandomJoint(link, frequency)
    if isinstance(link, RunLink):
        return _RandomRun(link, frequency, tolerance)
    if isinstance(link, TunerLink):
        return _RandomTuner(link, frequency)
    return _RandomPart(link, frequency) if isinstance(link, PartLink) else _KnownPart(link, frequency)


def _within(turn: np.ndarray, angle: np.ndarray) -> np.ndarray:
    """Whether waves up to a full turn [rad] apart come into phase in a run of this electrical angle [rad]."""
    return np.where(turn < 0, turn + 2 * np.pi, turn) <= 2 * angle


def _greater(before: np.ndarray, after: np.ndarray, scale: np.ndarray) -> np.ndarray:
    return np.maximum(np.abs(before) ** 2, np.abs(after) ** 2 * scale)
