"""Two-ports as chain matrices, and the exact waves on a chain of them.

All arrays broadcast; 2x2 products are written out, because elementwise
products are quick wherever the core runs and matrix products are not.
Currents flow towards the antenna; phasors are rms.
Sources: chain and scattering parameters, microwave_textbook.
"""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from ..formulas.formula import Broadcast

__all__ = [
    "MOST_NEPERS",
    "TwoPort",
    "Waves",
    "cascade",
    "drive",
    "from_scattering",
    "joint_loss",
    "joint_section",
    "line_section",
    "reverse",
    "scattering",
    "seen_through",
]

MOST_GROWTH = 1e100  # of waves along a chain, before their growth is kept aside: with one more run it stays finite
MOST_NEPERS = 115.0  # 1000 dB: beyond that nothing measurable is left, and cosh must stay finite


class TwoPort(NamedTuple):
    """Chain matrix: V1 = a V2 + b I2, I1 = c V2 + d I2; determinant 1 when reciprocal."""

    a: Broadcast
    b: Broadcast
    c: Broadcast
    d: Broadcast
    determinant: Broadcast = np.complex128(1)


def line_section(impedance: Broadcast, angle: Broadcast) -> TwoPort:
    """A line of characteristic impedance [Ω] and complex angle gamma*l [Np + j rad]."""
    bounded = np.minimum(np.real(angle), MOST_NEPERS) + 1j * np.imag(angle)
    cosh, sinh = np.cosh(bounded), np.sinh(bounded)
    return TwoPort(cosh, impedance * sinh, sinh / impedance, cosh)


def joint_section(impedance: Broadcast, angle: Broadcast, contact_ohm: Broadcast) -> TwoPort:
    """A line section with a series resistance [Ω] in its middle, where the contacts meet."""
    cosh, sinh = np.cosh(angle / 2), np.sinh(angle / 2)
    square, product = cosh**2 + sinh**2, cosh * sinh
    through = square + product * contact_ohm / impedance
    return TwoPort(
        through,
        2 * product * impedance + cosh**2 * contact_ohm,
        2 * product / impedance + sinh**2 * contact_ohm / impedance**2,
        through,
    )


def joint_loss(
    impedance: Broadcast, angle: Broadcast, contact_ohm: Broadcast, voltage: Broadcast, current: Broadcast
) -> Broadcast:
    """Power turned into heat in a `joint_section` [W], by voltage [V] and current [A], rms, at its load end.

    From what the section changes in both, not as a difference of two powers:
    of a good joint that would leave four digits fewer.
    """
    cosh, sinh = np.cosh(angle / 2), np.sinh(angle / 2)
    product = cosh * sinh
    more = 2 * sinh**2 + product * contact_ohm / impedance
    voltage_more = more * voltage + (2 * product * impedance + cosh**2 * contact_ohm) * current
    current_more = (2 * product / impedance + sinh**2 * contact_ohm / impedance**2) * voltage + more * current
    return np.real(
        voltage_more * np.conj(current) + voltage * np.conj(current_more) + voltage_more * np.conj(current_more)
    )


def from_scattering(s11: Broadcast, s12: Broadcast, s21: Broadcast, s22: Broadcast, reference_ohm: float) -> TwoPort:
    """The chain matrix of scattering parameters; s21 must not be 0."""
    twice, z = 2 * s21, reference_ohm
    return TwoPort(
        ((1 + s11) * (1 - s22) + s12 * s21) / twice,
        z * ((1 + s11) * (1 + s22) - s12 * s21) / twice,
        ((1 - s11) * (1 - s22) - s12 * s21) / (twice * z),
        ((1 - s11) * (1 + s22) + s12 * s21) / twice,
        s12 / s21,
    )


def scattering(port: TwoPort, reference_ohm: float) -> tuple[Broadcast, Broadcast, Broadcast, Broadcast]:
    """s11, s12, s21, s22 against one reference [Ω]."""
    b, c = port.b / reference_ohm, port.c * reference_ohm
    below = port.a + b + c + port.d
    return (
        (port.a + b - c - port.d) / below,
        2 * port.determinant / below,
        2 / below,
        (-port.a + b - c + port.d) / below,
    )


def seen_through(port: TwoPort, load_reflection: Broadcast, impedance: float) -> Broadcast:
    """The reflection looking into a two-port that ends in a load, both against an impedance [Ω]."""
    voltage, current = 1 + load_reflection, (1 - load_reflection) / impedance
    ahead, behind = port.a * voltage + port.b * current, impedance * (port.c * voltage + port.d * current)
    return (ahead - behind) / (ahead + behind)


def cascade(ports: Sequence[TwoPort]) -> TwoPort:
    """The chain of two-ports in order, as one."""
    chain = ports[0]
    for port in ports[1:]:
        chain = TwoPort(
            chain.a * port.a + chain.b * port.c,
            chain.a * port.b + chain.b * port.d,
            chain.c * port.a + chain.d * port.c,
            chain.c * port.b + chain.d * port.d,
            chain.determinant * port.determinant,
        )
    return chain


def reverse(port: TwoPort) -> TwoPort:
    """The two-port seen from its other end."""
    a, b, c, d, determinant = port
    return TwoPort(d / determinant, b / determinant, c / determinant, a / determinant, 1 / determinant)


class Waves(NamedTuple):
    """Voltage [V] and current [A], rms, at every plane of a chain: axis 0 runs from source to load.

    For 1 W: forward wave or net power into the chain, as `drive` was asked.
    """

    voltage: Broadcast
    current: Broadcast

    def at(self, plane: int) -> "Waves":
        """Those of one plane."""
        return Waves(self.voltage[plane], self.current[plane])

    @property
    def power_w(self) -> Broadcast:
        """Net power through each plane [W]."""
        return np.real(self.voltage * np.conj(self.current))

    def forward(self, impedance: float) -> Broadcast:
        """Amplitude of the forward wave [sqrt(W)] against an impedance [Ω]."""
        return (self.voltage + impedance * self.current) / (2 * np.sqrt(impedance))

    def backward(self, impedance: float) -> Broadcast:
        """Amplitude of the backward wave [sqrt(W)] against an impedance [Ω]."""
        return (self.voltage - impedance * self.current) / (2 * np.sqrt(impedance))

    def reflection(self, impedance: float) -> Broadcast:
        """Reflection looking towards the load, against an impedance [Ω]."""
        return self.backward(impedance) / self.forward(impedance)


def drive(ports: Sequence[TwoPort], load_reflection: Broadcast, impedance: float, *, net: bool) -> Waves:
    """The waves on a chain that ends in a load, from a source of `impedance` [Ω].

    The chain is walked from the load back to the source, so that every plane
    comes out with one 2x2 product each. `load_reflection` is against the same
    impedance. 1 W is the source's forward wave, or with `net` what it delivers.
    """
    shape = np.broadcast_shapes(np.shape(load_reflection), *(np.shape(part) for port in ports for part in port[:4]))
    voltage = np.empty((len(ports) + 1, *shape), dtype=np.complex128)
    current = np.empty_like(voltage)
    voltage[-1] = 1 + load_reflection
    current[-1] = (1 - load_reflection) / impedance
    growth: dict[int, np.ndarray] = {}
    reach = 1.0
    for plane in range(len(ports) - 1, -1, -1):
        port, v, i = ports[plane], voltage[plane + 1], current[plane + 1]
        voltage[plane] = port.a * v + port.b * i
        current[plane] = port.c * v + port.d * i
        reach *= _most_growth(port, impedance)
        if not reach < MOST_GROWTH:
            # what leaves is brought back to 1 and the growth kept aside, or a long lossy chain overflows
            growth[plane] = np.abs(voltage[plane]) + impedance * np.abs(current[plane])
            voltage[plane] /= growth[plane]
            current[plane] /= growth[plane]
            reach = 1.0
    for plane in sorted(growth):
        # amplitudes are those over the source's plane
        voltage[plane + 1 :] *= 1 / growth[plane]
        current[plane + 1 :] *= 1 / growth[plane]
    waves = Waves(voltage, current)
    at_source = waves.power_w[0] if net else np.abs(waves.forward(impedance)[0]) ** 2
    norm = 1 / np.sqrt(at_source)
    return Waves(waves.voltage * norm, waves.current * norm)


def _most_growth(port: TwoPort, impedance: float) -> float:
    """A bound on how much larger the waves are in front of a two-port than behind it."""
    return float(
        np.max(np.abs(port.a) + np.abs(port.b) / impedance + np.abs(port.c) * impedance + np.abs(port.d), initial=1.0)
    )
