"""The line as a sweep sees it, with what is not known of good parts as numbers that a fit may move.

Every such number counts in standard deviations of what is usual, so that 0 is the part as
described and 1 a common deviation:

- a cable: its electrical length, its impedance, its loss;
- a joint: its grade, from a typical part towards the worst its standard allows, or as far to the other side;
- a part: the phase of its reflection, as a small series inductance and shunt capacitance;
- the end of the line: its reflection, as a smooth complex curve over frequency.
"""

from collections.abc import Callable, Iterable
from typing import NamedTuple

import numpy as np

from ..feedline.feedline import Feedline, Link
from ..feedline.joint import Section
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import MOST_NEPERS, TwoPort, joint_section

__all__ = ["Line", "Piece", "Planes", "Spreads", "line_of", "product", "reflected"]

GRADE = 0.6
"""Standard deviation of a joint's grade: nineteen of twenty lie within 1.2 of the way to the standard's limit."""

LEAST_PART_REFLECTION = 0.02  # a part between matched ends is never known better

Number = np.ndarray


class Spreads(NamedTuple):
    """Standard deviations of a cable's electrical length, impedance and loss, as shares."""

    length: float
    impedance: float
    loss: float


class Piece(NamedTuple):
    """One link: its chain matrix by its own unknowns, and how that moves with them."""

    link: Link
    count: int
    port: Callable[[Number], TwoPort]
    slopes: Callable[[Number, TwoPort], list[TwoPort]]
    shares: tuple[tuple[int, Number], ...]
    """Of each unknown, which of the slopes is its own and times what."""


class Line(NamedTuple):
    """All pieces from the analyser on and the reflection of the line's end, over frequencies [Hz]."""

    frequency_hz: Number
    impedance_ohm: float
    pieces: list[Piece]
    load: Number
    load_terms: Number
    """(terms, frequencies), complex: what each unknown of the end adds to its reflection."""
    spreads: Spreads
    starts: list[int]
    """Where each piece's unknowns start among all of them, and where the end's do."""

    @property
    def count(self) -> int:
        """How many unknowns there are."""
        return self.starts[-1] + len(self.load_terms)

    def at(self, points: Number) -> "Line":
        """The same line at some of the frequencies."""
        frequency = self.frequency_hz[points]
        pieces = [_piece(piece.link, frequency, self.impedance_ohm, self.spreads) for piece in self.pieces]
        return self._replace(
            frequency_hz=frequency, pieces=pieces, load=self.load[points], load_terms=self.load_terms[:, points]
        )

    def unknowns(self, values: Number, at: int) -> Number:
        """Those of one piece."""
        return values[self.starts[at] : self.starts[at + 1]]

    def port(self, values: Number, at: int) -> TwoPort:
        """The chain matrix of one piece."""
        return self.pieces[at].port(self.unknowns(values, at))

    def ports(self, values: Number) -> list[TwoPort]:
        """The chain matrix of every piece."""
        return [self.port(values, at) for at in range(len(self.pieces))]

    def end(self, values: Number) -> Number:
        """The reflection of the line's end."""
        terms = values[self.starts[-1] :]
        return sum((value * term for value, term in zip(terms, self.load_terms, strict=True)), self.load)


class Planes(NamedTuple):
    """A line solved: in front of each piece the product of all before it, behind it voltage and current.

    Each stands at a scale of its own, or a long lossy line would overflow; a reflection is the same at any scale.
    """

    before: list[TwoPort]
    behind: list[tuple[Number, Number]]
    impedance_ohm: float

    @classmethod
    def of(cls, ports: list[TwoPort], end: Number, impedance_ohm: float) -> "Planes":
        """Solve the chain of some two-ports and the reflection of its end."""
        behind = [_scaled(1 + end, (1 - end) / impedance_ohm, impedance_ohm)]
        for port in reversed(ports[1:]):
            behind.append(_scaled(*_through(port, *behind[-1]), impedance_ohm))
        one, none = np.ones(end.shape, dtype=np.complex128), np.zeros(end.shape, dtype=np.complex128)
        before = [TwoPort(one, none, none, one)]
        for port in ports[:-1]:
            whole = product(before[-1], port)
            share = 1 / (_size(whole.a) + _size(whole.b) / impedance_ohm)
            before.append(TwoPort(*(part * share for part in whole[:4])))
        return cls(before, behind[::-1], impedance_ohm)

    def alone(self, at: int, row: int) -> "Planes":
        """One row of many lines solved at once, at one piece."""
        before, (v, i) = self.before[at], self.behind[at]
        own = TwoPort(*(np.broadcast_to(part, v.shape)[row] for part in before[:4]))
        return Planes([own], [(v[row], i[row])], self.impedance_ohm)

    def reflection(self, at: int, port: TwoPort) -> Number:
        """What the analyser sees with `port` in the place of one piece."""
        v, i = _through(self.before[at], *_through(port, *self.behind[at]))
        return (v - self.impedance_ohm * i) / (v + self.impedance_ohm * i)

    def slopes(self, at: int, port: TwoPort, changes: list[TwoPort]) -> list[Number]:
        """How that moves with each change of the piece's matrix."""
        before, (v, i) = self.before[at], self.behind[at]
        first, second = self._weights(before, *_through(port, v, i))
        return [first * (one.a * v + one.b * i) + second * (one.c * v + one.d * i) for one in changes]

    def end_slope(self, last: TwoPort) -> Number:
        """How it moves with the reflection of the line's end."""
        before, (v, i) = self.before[-1], self.behind[-1]
        first, second = self._weights(before, *_through(last, v, i))
        # the state there is 1 + Γ and (1 - Γ)/Z at some scale
        scale = (v + self.impedance_ohm * i) / 2
        dv, di = _through(last, scale, -scale / self.impedance_ohm)
        return first * dv + second * di

    def _weights(self, before: TwoPort, v: Number, i: Number) -> tuple[Number, Number]:
        """What a change of voltage and of current in front of a piece counts at the analyser."""
        v, i = _through(before, v, i)
        share = 2 * self.impedance_ohm / (v + self.impedance_ohm * i) ** 2
        return share * (i * before.a - v * before.c), share * (i * before.b - v * before.d)


def reflected(ports: Iterable[TwoPort], end: Number, impedance_ohm: float) -> Number:
    """What the analyser sees of the two-ports, given from the end back: no more than one need be kept at a time."""
    v, i = 1 + end, (1 - end) / impedance_ohm
    for port in ports:
        v, i = _scaled(*_through(port, v, i), impedance_ohm)
    return (v - impedance_ohm * i) / (v + impedance_ohm * i)


def product(one: TwoPort, other: TwoPort) -> TwoPort:
    """Two two-ports, one after the other."""
    return TwoPort(
        one.a * other.a + one.b * other.c,
        one.a * other.b + one.b * other.d,
        one.c * other.a + one.d * other.c,
        one.c * other.b + one.d * other.d,
    )


def line_of(feedline: Feedline, frequency: Number, spreads: Spreads, load_terms: Number) -> Line:
    """The chain made ready for a sweep at frequencies [Hz]."""
    z_0 = feedline.station.impedance_ohm
    pieces = [_piece(link, frequency, z_0, spreads) for link in feedline.links]
    starts = [0]
    for piece in pieces:
        starts.append(starts[-1] + piece.count)
    return Line(frequency, z_0, pieces, feedline.load(frequency), load_terms, spreads, starts)


def _through(port: TwoPort, v: Number, i: Number) -> tuple[Number, Number]:
    return port.a * v + port.b * i, port.c * v + port.d * i


def _scaled(v: Number, i: Number, impedance: float) -> tuple[Number, Number]:
    share = 1 / (_size(v) + impedance * _size(i))
    return v * share, i * share


def _size(number: Number) -> Number:
    """About the absolute value, without its root."""
    return np.abs(number.real) + np.abs(number.imag)


def _piece(link: Link, frequency: Number, z_0: float, spreads: Spreads) -> Piece:
    if link.kind == "cable":
        return _cable(link, frequency, spreads)
    if link.kind == "joint":
        return _joint(link, frequency)
    model = link.models[GENEROUS]
    port = TwoPort(*(np.broadcast_to(one, frequency.shape) for one in model.two_port(frequency)[:4]))
    if link.kind == "measured":
        return Piece(link, 0, lambda x: port, lambda x, own: [], ())
    return _part(link, port, frequency, z_0, max(abs(model.reflection), LEAST_PART_REFLECTION))


def _cable(link: Link, frequency: Number, spreads: Spreads) -> Piece:
    model = link.models[GENEROUS]
    conductor, dielectric, beta = model.constants(frequency)
    nepers, radians = (conductor + dielectric) * model.length_m, beta * model.length_m
    impedance = model.impedance(conductor, dielectric, beta)

    def port(x: Number) -> TwoPort:
        lost = np.clip(nepers * (1 + x[2] * spreads.loss), 0.0, MOST_NEPERS)
        grown = np.exp(lost + 1j * radians * (1 + x[0] * spreads.length))
        cosh, sinh = (grown + 1 / grown) / 2, (grown - 1 / grown) / 2
        own = impedance * (1 + x[1] * spreads.impedance)
        return TwoPort(cosh, own * sinh, sinh / own, cosh)

    def slopes(x: Number, own: TwoPort) -> list[TwoPort]:
        step = impedance * (1 + x[1] * spreads.impedance)
        higher = spreads.impedance / (1 + x[1] * spreads.impedance)
        none = np.zeros_like(own.a)
        turned = TwoPort(own.b / step, own.a * step, own.a / step, own.b / step)
        return [turned, TwoPort(none, own.b * higher, -own.c * higher, none)]

    shares = ((0, 1j * radians * spreads.length), (1, 1.0), (0, nepers * spreads.loss))
    return Piece(link, 3, port, slopes, shares)


def _joint(link: Link, frequency: Number) -> Piece:
    """A joint as a parabola through three grades, which is quick and as good as the joint is known."""
    typical, worst = (link.models[end].section(frequency) for end in (GENEROUS, CAUTIOUS))
    low, middle, high = (_graded(typical, worst, grade) for grade in (-GRADE, 0.0, GRADE))
    rise = [(up - down) / 2 for down, up in zip(low, high, strict=True)]
    bend = [(up + down) / 2 - own for down, own, up in zip(low, middle, high, strict=True)]

    def port(x: Number) -> TwoPort:
        grade = x[0]
        return TwoPort(*(own + grade * (up + grade * more) for own, up, more in zip(middle, rise, bend, strict=True)))

    def slopes(x: Number, own: TwoPort) -> list[TwoPort]:
        return [TwoPort(*(up + 2 * x[0] * more for up, more in zip(rise, bend, strict=True)))]

    return Piece(link, 1, port, slopes, ((0, 1.0),))


def _graded(typical: Section, worst: Section, grade: float) -> tuple[Number, ...]:
    """A joint some way from typical to worst, or to the other side."""
    section = joint_section(
        typical.impedance * np.exp(np.log(worst.impedance / typical.impedance) * grade),
        typical.angle * np.exp(np.log(worst.angle / typical.angle) * grade),
        typical.contact_ohm,
    )
    return tuple(section[:4])


def _part(link: Link, port: TwoPort, frequency: Number, z_0: float, reflection: float) -> Piece:
    """A part with a small series inductance and shunt capacitance before it, each of the part's own reflection."""
    small = 2 * reflection * frequency / frequency[-1]
    one, none = np.ones(frequency.shape, dtype=np.complex128), np.zeros(frequency.shape, dtype=np.complex128)

    def shifted(x: Number) -> TwoPort:
        series, shunt = 1j * x[0] * small * z_0, 1j * x[1] * small / z_0
        return product(TwoPort(1 + series * shunt, series, shunt, one), port)

    def slopes(x: Number, own: TwoPort) -> list[TwoPort]:
        series, shunt = 1j * small * z_0, 1j * small / z_0
        by_series = product(TwoPort(x[1] * series * shunt, series, none, none), port)
        return [by_series, product(TwoPort(x[0] * series * shunt, none, shunt, none), port)]

    return Piece(link, 2, shifted, slopes, ((0, 1.0), (1, 1.0)))
