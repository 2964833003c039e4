"""A line as two-ports with free parameters: what is not known of its good parts, which a fit may move.

Every parameter is counted in standard deviations of what is usual, so that its prior is the standard normal
distribution: 0 is the part as described and 1 a common deviation.

- a cable: its electrical length, its impedance, its loss;
- a joint: its grade, from a typical part towards the worst its standard allows, or as far to the other side;
- a part: the phase of its reflection, as a small series inductance and shunt capacitance;
- the load: its reflection, as a smooth complex curve over frequency.

Parameters are arrays along axis 0: (parameters,) of one line, or (parameters, starts, 1) of many at once. Matrix
entries and reflections are then (frequencies,) or (starts, frequencies).
"""

from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from ..feedline.cable import CableLink, CableModel
from ..feedline.feedline import Feedline
from ..feedline.joint import JointLink, LossySection
from ..feedline.link import Link
from ..feedline.part import PartLink
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import MOST_NEPERS, TwoPort, cascade, joint_section
from .arrays import ComplexArray, IndexArray, NumberArray, RealArray

__all__ = ["CablePrior", "LineModel", "ParametricTwoPort", "line_model"]

GRADE_DEVIATION = 0.6
"""Standard deviation of a joint's grade: nineteen of twenty lie within 1.2 times the step to the standard's limit."""

LEAST_PART_REFLECTION = 0.02  # a part between matched ends is never known better


class CablePrior(NamedTuple):
    """Usual deviations of a cable's electrical length, impedance and loss: standard deviations, as shares."""

    length: float
    impedance: float
    loss: float


class ParametricTwoPort(NamedTuple):
    """A link with free parameters: its chain matrix by them, and what the derivatives of that are made of."""

    link: Link
    parameter_count: int
    matrix: Callable[[RealArray], TwoPort]
    derivatives: Callable[[RealArray, TwoPort], list[TwoPort]]
    """By the parameters and the matrix there."""
    factors: tuple[tuple[int, NumberArray | float], ...]
    """Of each parameter, the index of its derivative among those, and what that is to be multiplied by."""


class LineModel(NamedTuple):
    """All two-ports from the analyser on and the load's reflection, over frequencies [Hz]."""

    frequency_hz: RealArray
    impedance_ohm: float
    two_ports: list[ParametricTwoPort]
    load: ComplexArray
    """(frequencies,): the load's reflection as described."""
    load_basis: ComplexArray
    """(terms, frequencies): what one deviation of each of the load's parameters adds to its reflection."""
    prior: CablePrior
    offsets: list[int]
    """Where each two-port's parameters start among all of them, and where the load's do."""

    @property
    def parameter_count(self) -> int:
        """How many parameters there are, the load's included."""
        return self.offsets[-1] + len(self.load_basis)

    @property
    def cables(self) -> dict[int, CableModel]:
        """The cables as described, by their positions among the two-ports."""
        links = enumerate(two_port.link for two_port in self.two_ports)
        return {position: link.models[GENEROUS] for position, link in links if isinstance(link, CableLink)}

    @property
    def cable_positions(self) -> list[int]:
        """Positions of the cables among the two-ports."""
        return list(self.cables)

    @property
    def joint_positions(self) -> list[int]:
        """Positions of the joints among the two-ports."""
        return [at for at, two_port in enumerate(self.two_ports) if isinstance(two_port.link, JointLink)]

    def cable(self, position: int) -> CableModel:
        """The cable at a position, as described."""
        return self.cables[position]

    def at(self, points: IndexArray) -> "LineModel":
        """The same line at some of the frequencies."""
        frequency = self.frequency_hz[points]
        two_ports = [_parametric(own.link, frequency, self.impedance_ohm, self.prior) for own in self.two_ports]
        return self._replace(
            frequency_hz=frequency, two_ports=two_ports, load=self.load[points], load_basis=self.load_basis[:, points]
        )

    def own_parameters(self, parameters: RealArray, position: int) -> RealArray:
        """Those of one two-port among all."""
        return parameters[self.offsets[position] : self.offsets[position + 1]]

    def matrix(self, parameters: RealArray, position: int) -> TwoPort:
        """The chain matrix of one two-port."""
        return self.two_ports[position].matrix(self.own_parameters(parameters, position))

    def matrices(self, parameters: RealArray) -> list[TwoPort]:
        """The chain matrix of every two-port."""
        return [self.matrix(parameters, position) for position in range(len(self.two_ports))]

    def load_reflection(self, parameters: RealArray) -> ComplexArray:
        """The reflection of the load."""
        own = parameters[self.offsets[-1] :]
        return sum((value * term for value, term in zip(own, self.load_basis, strict=True)), self.load)


def line_model(feedline: Feedline, frequency: RealArray, prior: CablePrior, load_basis: ComplexArray) -> LineModel:
    """A feedline with free parameters at the frequencies of a sweep [Hz]."""
    z_0 = feedline.station.impedance_ohm
    two_ports = [_parametric(link, frequency, z_0, prior) for link in feedline.links]
    offsets = [0]
    for two_port in two_ports:
        offsets.append(offsets[-1] + two_port.parameter_count)
    return LineModel(frequency, z_0, two_ports, feedline.load.likely(frequency)[0], load_basis, prior, offsets)


def _parametric(link: Link, frequency: RealArray, z_0: float, prior: CablePrior) -> ParametricTwoPort:
    if isinstance(link, CableLink):
        return _parametric_cable(link, frequency, prior)
    if isinstance(link, JointLink):
        return _parametric_joint(link, frequency)
    matrix = link.models[GENEROUS].two_port(frequency)
    fixed = TwoPort(*(np.broadcast_to(entry, frequency.shape) for entry in matrix[:4]))
    if isinstance(link, PartLink):
        reflection = max(abs(link.models[GENEROUS].reflection), LEAST_PART_REFLECTION)
        return _parametric_part(link, fixed, frequency, z_0, reflection)
    return ParametricTwoPort(link, 0, lambda x: fixed, lambda x, own: [], ())


def _parametric_cable(link: CableLink, frequency: RealArray, prior: CablePrior) -> ParametricTwoPort:
    model = link.models[GENEROUS]
    conductor, dielectric, beta = model.constants(frequency)
    nepers, radians = (conductor + dielectric) * model.length_m, beta * model.length_m
    impedance = model.impedance(conductor, dielectric, beta)

    def matrix(x: RealArray) -> TwoPort:
        attenuation = np.clip(nepers * (1 + x[2] * prior.loss), 0.0, MOST_NEPERS)
        growth = np.exp(attenuation + 1j * radians * (1 + x[0] * prior.length))
        cosh, sinh = (growth + 1 / growth) / 2, (growth - 1 / growth) / 2
        z = impedance * (1 + x[1] * prior.impedance)
        return TwoPort(cosh, z * sinh, sinh / z, cosh)

    def derivatives(x: RealArray, own: TwoPort) -> list[TwoPort]:
        z = impedance * (1 + x[1] * prior.impedance)
        relative = prior.impedance / (1 + x[1] * prior.impedance)
        zero = np.zeros_like(own.a)
        by_angle = TwoPort(own.b / z, own.a * z, own.a / z, own.b / z)
        return [by_angle, TwoPort(zero, own.b * relative, -own.c * relative, zero)]

    factors = ((0, 1j * radians * prior.length), (1, 1.0), (0, nepers * prior.loss))
    return ParametricTwoPort(link, 3, matrix, derivatives, factors)


def _parametric_joint(link: JointLink, frequency: RealArray) -> ParametricTwoPort:
    """A joint as a parabola through three grades, which is quick and as good as the joint is known."""
    typical, worst = (link.models[end].section(frequency) for end in (GENEROUS, CAUTIOUS))
    low, middle, high = (_graded(typical, worst, grade) for grade in (-GRADE_DEVIATION, 0.0, GRADE_DEVIATION))
    linear = [(up - down) / 2 for down, up in zip(low, high, strict=True)]
    square = [(up + down) / 2 - own for down, own, up in zip(low, middle, high, strict=True)]

    def matrix(x: RealArray) -> TwoPort:
        grade = x[0]
        return TwoPort(*(c0 + grade * (c1 + grade * c2) for c0, c1, c2 in zip(middle, linear, square, strict=True)))

    def derivatives(x: RealArray, own: TwoPort) -> list[TwoPort]:
        return [TwoPort(*(c1 + 2 * x[0] * c2 for c1, c2 in zip(linear, square, strict=True)))]

    return ParametricTwoPort(link, 1, matrix, derivatives, ((0, 1.0),))


def _graded(typical: LossySection, worst: LossySection, grade: float) -> tuple[ComplexArray, ...]:
    """Matrix entries of a joint between typical (grade 0) and worst (1), or on the other side of typical."""
    section = joint_section(
        typical.impedance * np.exp(np.log(worst.impedance / typical.impedance) * grade),
        typical.angle * np.exp(np.log(worst.angle / typical.angle) * grade),
        typical.contact_ohm,
    )
    return tuple(section[:4])


def _parametric_part(
    link: Link, fixed: TwoPort, frequency: RealArray, z_0: float, reflection: float
) -> ParametricTwoPort:
    """A part with a small series inductance and shunt capacitance before it, each of the part's own reflection."""
    small = 2 * reflection * frequency / frequency[-1]
    one, zero = np.ones(frequency.shape, dtype=np.complex128), np.zeros(frequency.shape, dtype=np.complex128)

    def matrix(x: RealArray) -> TwoPort:
        series, shunt = 1j * x[0] * small * z_0, 1j * x[1] * small / z_0
        return cascade((TwoPort(1 + series * shunt, series, shunt, one), fixed))

    def derivatives(x: RealArray, own: TwoPort) -> list[TwoPort]:
        series, shunt = 1j * small * z_0, 1j * small / z_0
        by_series = cascade((TwoPort(x[1] * series * shunt, series, zero, zero), fixed))
        return [by_series, cascade((TwoPort(x[0] * series * shunt, zero, shunt, zero), fixed))]

    return ParametricTwoPort(link, 2, matrix, derivatives, ((0, 1.0), (1, 1.0)))
