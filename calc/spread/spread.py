"""How far an answer spreads when electrical lengths, phases and the tolerance of joints are not known.

Draws run in blocks of fixed size, and of each block only counts are kept, so
that memory does not grow with the draws. Each block has a stream of random
numbers of its own, made from the seed and its number.
"""

from typing import NamedTuple

import numpy as np

from ..errors import InputError
from ..feedline.elements import GivenVswr
from ..feedline.feedline import Feedline, Link, feedline_of
from ..feedline.reflection import bounds
from ..feedline.solve import refused
from ..feedline.stress import Stress
from ..formulas.line import decibels
from ..formulas.match import vswr_of_reflection
from ..numeric.draws import Stream
from ..numeric.json_numbers import number, numbers
from ..physics.columns import columns
from ..physics.limits import heat_power
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import MOST_NEPERS, TwoPort, from_scattering, joint_section, scattering
from .requests import MOST_DRAWN, SpreadRequest
from .results import SpreadBand, SpreadResult

__all__ = ["PERCENTILES", "spread"]

BLOCK = 500
"""Draws at a time: a block of all bands stays within the processor's cache."""

PERCENTILES = [5.0, 25.0, 50.0, 75.0, 95.0]
BINS = 2000
GRADES = 33
"""Steps from a typical joint to the worst its standard allows; a draw takes one of them."""

LEAST_SPAN = 1e-6  # of a histogram: what does not spread still needs a bin
TOTAL = 1 - 1e-12
"""Of a reflection: a VSWR beyond a million millions is no number worth drawing."""


class _Draws(NamedTuple):
    """Answers of one block, each draws x bands."""

    vswr: np.ndarray
    loss_db: np.ndarray
    margin_db: np.ndarray


@np.errstate(divide="ignore", invalid="ignore", over="ignore")  # no number becomes null
def spread(request: SpreadRequest) -> SpreadResult:
    """Draw lines at random and tell how VSWR, loss and the smallest margin spread in each band.

    Each cable's electrical length is off by up to `length_tolerance` either
    way, each joint lies anywhere between a typical part and the worst its
    standard allows, each part and an antenna known by its VSWR alone reflect
    at any angle. Raises InputError as `line` does.
    """
    most = MOST_DRAWN // len(request.elements)
    if request.draws > most:
        words = f"at most {most} for {len(request.elements)} elements, as draws times elements stay within {MOST_DRAWN}"
        raise InputError("draws", request.draws, words)
    feedline = feedline_of(request)
    bands = [feedline.column, *(band for band in columns(request.region, None, []) if band.id != feedline.column.id)]
    frequency = np.array([(band.low_hz + band.high_hz) / 2 for band in bands], dtype=np.float64)
    drawer = _Drawer(request, feedline, frequency)
    tally = None
    for block, first in enumerate(range(0, request.draws, BLOCK)):
        draws = drawer.block(Stream(request.seed, block), min(BLOCK, request.draws - first))
        tally = tally or _Tally(draws)
        tally.add(draws)
    worst, likely = bounds(feedline, frequency)
    vswr, loss, margin = tally.percentiles()
    answers = [
        SpreadBand(
            column=band,
            vswr=numbers(vswr[row]),
            loss_db=numbers(loss[row]),
            margin_db=[None] * len(PERCENTILES) if drawer.refused[row] else numbers(margin[row]),
            worst_vswr=number(vswr_of_reflection(worst[row])) if worst[row] < 1 else None,
            likely_vswr=number(vswr_of_reflection(likely[row])) if likely[row] < 1 else None,
        )
        for row, band in enumerate(bands)
    ]
    return SpreadResult(draws=request.draws, seed=request.seed, percentiles=PERCENTILES, bands=answers)


class _Drawer:
    """The chain made ready for draws at frequencies [Hz]."""

    def __init__(self, request: SpreadRequest, feedline: Feedline, frequency: np.ndarray) -> None:
        self._power_w, self._built, self._frequency = request.power_w, feedline, frequency
        self._z_0 = feedline.station.impedance_ohm
        self._any_angle = isinstance(request.load, GivenVswr)
        self._load = feedline.load(frequency)
        self._links = [_drawn(link, frequency, request.length_tolerance) for link in feedline.links]
        self.refused = np.any([refused(feedline, link, frequency, request.power_w) for link in feedline.links], axis=0)

    @np.errstate(divide="ignore", invalid="ignore")  # what no draw lets through is infinite
    def block(self, random: Stream, draws: int) -> _Draws:
        """Solve `draws` random lines at every frequency, from the load back to the transmitter."""
        load = np.broadcast_to(self._load, (draws, self._frequency.size))
        if self._any_angle:
            load = load * np.exp(2j * np.pi * random.uniform(draws)[:, None])
        after = _Plane(1 + load, (1 - load) / self._z_0)
        delivered = after.power
        strain = np.zeros_like(delivered)
        for link in reversed(self._links):
            port = link.draw(random, draws)
            before = after.through(port)
            strain = np.maximum(strain * link.scale, link.strain(before, after))
            delivered = delivered * link.scale
            after = before
        forward, backward = after.travelling(self._z_0)
        source = after.power if self._built.net else np.abs(forward) ** 2 / self._z_0
        reflection = np.minimum(np.abs(backward / forward), TOTAL)
        margin = -decibels(strain / source * self._power_w)
        return _Draws(vswr_of_reflection(reflection), -decibels(delivered / source), margin)


class _Plane(NamedTuple):
    """Voltage [V] and current [A], rms, at one plane: draws x bands."""

    voltage: np.ndarray
    current: np.ndarray

    @property
    def power(self) -> np.ndarray:
        return np.real(self.voltage * np.conj(self.current))

    def through(self, port: TwoPort) -> "_Plane":
        """The plane in front of a two-port."""
        v, i = self
        return _Plane(port.a * v + port.b * i, port.c * v + port.d * i)

    def travelling(self, impedance: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Voltages of the forward and the backward wave [V]."""
        return (self.voltage + impedance * self.current) / 2, (self.voltage - impedance * self.current) / 2


class _JointDraws:
    """A joint of any grade from typical to worst."""

    scale = 1.0

    def __init__(self, link: Link, frequency: np.ndarray) -> None:
        worst, typical = (link.models[end].section(frequency) for end in (CAUTIOUS, GENEROUS))
        grade = np.linspace(0, 1, GRADES)[:, None]
        impedance = typical.impedance ** (1 - grade) * worst.impedance**grade
        angle = typical.angle + (worst.angle - typical.angle) * grade
        contact = typical.contact_ohm + (worst.contact_ohm - typical.contact_ohm) * grade
        shape = (GRADES, frequency.size)
        self._grades = [np.broadcast_to(one, shape) for one in joint_section(impedance, angle, contact)[:4]]
        model = link.models[CAUTIOUS]
        self._heat_w = heat_power(model.path, 1.0, 1.0, model.station)
        self._peak_v = model.peak_v

    def draw(self, random: Stream, draws: int) -> TwoPort:
        chosen = random.integers(GRADES, draws)
        return TwoPort(*(np.take(one, chosen, axis=0) for one in self._grades))

    def strain(self, before: _Plane, after: _Plane) -> np.ndarray:
        heat = (before.power - after.power) / self._heat_w
        return np.maximum(heat, 2 * np.abs(before.voltage) ** 2 / self._peak_v**2)


class _CableDraws:
    """A run of cable whose electrical length is not known well."""

    def __init__(self, link: Link, frequency: np.ndarray, tolerance: float) -> None:
        self._model, self._tolerance = link.models[CAUTIOUS], tolerance
        self._conductor, self._dielectric, beta = self._model.constants(frequency)
        self._impedance = self._model.impedance(self._conductor, self._dielectric, beta)
        self._angle = beta * self._model.length_m
        nepers = np.minimum((self._conductor + self._dielectric) * self._model.length_m, MOST_NEPERS)
        self._there, self._back = np.exp(1j * self._angle), np.exp(-2 * nepers - 1j * self._angle)
        # amplitudes are kept those of the far end, or a long lossy run overflows
        self.scale = np.exp(-2 * nepers)
        ones = np.ones_like(frequency)
        self._budget_w = self._model.allowed(frequency, Stress(ones, ones, ones, ones)).heat_w
        self._peak_v = self._model.peak_v

    def draw(self, random: Stream, draws: int) -> TwoPort:
        error = self._tolerance * (2 * random.uniform(draws)[:, None] - 1)
        turn = np.exp(1j * error * self._angle)
        there, back = self._there * turn, self._back * np.conj(turn)
        cosh, sinh = (there + back) / 2, (there - back) / 2
        return TwoPort(cosh, self._impedance * sinh, sinh / self._impedance, cosh)

    def strain(self, before: _Plane, after: _Plane) -> np.ndarray:
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
        z = self._model.ratings.impedance_ohm
        heat = 2 * (self._conductor * current * z + self._dielectric * voltage / z) / self._budget_w
        return np.maximum(heat, 2 * voltage / self._peak_v**2)


class _FixedDraws:
    """A part or a measured two-port: a part's angles are not known, a measurement's are."""

    scale = 1.0

    def __init__(self, link: Link, frequency: np.ndarray) -> None:
        self._model, self._any_angle = link.models[CAUTIOUS], link.kind == "part"
        self._port = self._model.two_port(frequency)
        ones = np.ones_like(frequency)
        allowed = self._model.allowed(frequency, Stress(ones, ones, ones, ones))
        self._heat_w, self._voltage_w = allowed.heat_w, allowed.voltage_w

    def draw(self, random: Stream, draws: int) -> TwoPort:
        if not self._any_angle:
            return self._port
        turn = np.exp(2j * np.pi * random.uniform(draws)[:, None])
        s11, s12, s21, s22 = scattering(self._port, self._model.station.impedance_ohm)
        return from_scattering(s11 * turn, s12 * turn, s21 * turn, s22 * turn, self._model.station.impedance_ohm)

    def strain(self, before: _Plane, after: _Plane) -> np.ndarray:
        z_0 = self._model.station.impedance_ohm
        forward, _ = before.travelling(z_0)
        heat = np.abs(forward) ** 2 / z_0 / self._heat_w
        return np.maximum(heat, np.abs(before.voltage) ** 2 / z_0 / self._voltage_w)


def _drawn(link: Link, frequency: np.ndarray, tolerance: float) -> _JointDraws | _CableDraws | _FixedDraws:
    if link.kind == "joint":
        return _JointDraws(link, frequency)
    return _CableDraws(link, frequency, tolerance) if link.kind == "cable" else _FixedDraws(link, frequency)


def _within(turn: np.ndarray, angle: np.ndarray) -> np.ndarray:
    """Whether waves up to a full turn [rad] apart come into phase in a run of this electrical angle [rad]."""
    return np.where(turn < 0, turn + 2 * np.pi, turn) <= 2 * angle


def _greater(before: np.ndarray, after: np.ndarray, scale: np.ndarray) -> np.ndarray:
    return np.maximum(np.abs(before) ** 2, np.abs(after) ** 2 * scale)


class _Tally:
    """Counts of the draws in bins; the first block sets their range, and what lies beyond goes to the end bins."""

    def __init__(self, first: _Draws) -> None:
        values = np.stack(first)
        low, high = values.min(axis=1), values.max(axis=1)
        span = np.maximum(high - low, LEAST_SPAN)
        self._low = np.where(np.isfinite(span), low - span / 2, 0.0)
        self._width = np.where(np.isfinite(span), 2 * span / BINS, 1.0)
        self._valid = np.isfinite(span)
        self._counts = np.zeros((*low.shape, BINS), dtype=np.int64)

    def add(self, draws: _Draws) -> None:
        """Count a block."""
        quantities, bands, _ = self._counts.shape
        for quantity in range(quantities):
            scaled = (draws[quantity] - self._low[quantity]) / self._width[quantity]
            bins = np.clip(np.nan_to_num(scaled, nan=0.0), 0, BINS - 1).astype(np.int64)
            flat = bins + np.arange(bands, dtype=np.int64) * BINS
            self._counts[quantity] += np.bincount(flat.ravel(), minlength=bands * BINS).reshape(bands, BINS)

    def percentiles(self) -> np.ndarray:
        """Percentiles, quantity x band x percentile; not a number where draws were not finite."""
        reached = np.cumsum(self._counts, axis=-1)
        wanted = np.array(PERCENTILES)[:, None, None] / 100 * reached[..., -1]
        at = (reached[None] < wanted[..., None]).sum(axis=-1)
        values = self._low + (at + 0.5) * self._width
        return np.moveaxis(np.where(self._valid, values, np.nan), 0, -1)
