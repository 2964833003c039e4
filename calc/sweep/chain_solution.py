"""The voltages and currents along a chain of two-ports, and how its input reflection moves with each of them.

Chain matrices are those of `waves.two_port`; their entries broadcast to (frequencies,) for one chain or
(starts, frequencies) for many at once. Reflections are against one impedance [Ω].
"""

from collections.abc import Iterable, Sequence
from typing import NamedTuple

import numpy as np

from ..waves.two_port import TwoPort, cascade
from .arrays import ComplexArray, RealArray

__all__ = ["ChainSolution", "input_reflection"]


class ChainSolution(NamedTuple):
    """A chain solved: in front of each two-port the product of all before it, behind it voltage and current.

    Each is at a scale of its own, or a long lossy line would overflow; a reflection is the same at any scale.
    """

    before: list[TwoPort]
    behind: list[tuple[ComplexArray, ComplexArray]]
    impedance_ohm: float

    @classmethod
    def of(cls, matrices: Sequence[TwoPort], load: ComplexArray, impedance_ohm: float) -> "ChainSolution":
        """Solve the chain of some matrices that ends in a load of some reflection."""
        behind = [_scaled(1 + load, (1 - load) / impedance_ohm, impedance_ohm)]
        for matrix in reversed(matrices[1:]):
            behind.append(_scaled(*_in_front(matrix, *behind[-1]), impedance_ohm))
        one, zero = np.ones(load.shape, dtype=np.complex128), np.zeros(load.shape, dtype=np.complex128)
        before = [TwoPort(one, zero, zero, one)]
        for matrix in matrices[:-1]:
            product = cascade((before[-1], matrix))
            scale = 1 / (_rough_size(product.a) + _rough_size(product.b) / impedance_ohm)
            before.append(TwoPort(*(entry * scale for entry in product[:4])))
        return cls(before, behind[::-1], impedance_ohm)

    def single(self, position: int, row: int) -> "ChainSolution":
        """The solution of one row of many chains, at one two-port only."""
        before, (v, i) = self.before[position], self.behind[position]
        own = TwoPort(*(np.broadcast_to(entry, v.shape)[row] for entry in before[:4]))
        return ChainSolution([own], [(v[row], i[row])], self.impedance_ohm)

    def reflection(self, position: int, matrix: TwoPort) -> ComplexArray:
        """Input reflection of the chain with `matrix` in the place of one two-port."""
        v, i = _in_front(self.before[position], *_in_front(matrix, *self.behind[position]))
        return (v - self.impedance_ohm * i) / (v + self.impedance_ohm * i)

    def derivatives(self, position: int, matrix: TwoPort, changes: Sequence[TwoPort]) -> list[ComplexArray]:
        """Derivative of the input reflection along each change of one two-port's matrix."""
        before, (v, i) = self.before[position], self.behind[position]
        by_voltage, by_current = self._weights(before, *_in_front(matrix, v, i))
        return [
            by_voltage * (change.a * v + change.b * i) + by_current * (change.c * v + change.d * i)
            for change in changes
        ]

    def load_derivative(self, last: TwoPort) -> ComplexArray:
        """Derivative of the input reflection by the load's; `last` is the matrix of the last two-port."""
        before, (v, i) = self.before[-1], self.behind[-1]
        by_voltage, by_current = self._weights(before, *_in_front(last, v, i))
        # voltage and current there are 1 + Γ and (1 - Γ)/Z at some scale
        scale = (v + self.impedance_ohm * i) / 2
        dv, di = _in_front(last, scale, -scale / self.impedance_ohm)
        return by_voltage * dv + by_current * di

    def _weights(self, before: TwoPort, v: ComplexArray, i: ComplexArray) -> tuple[ComplexArray, ComplexArray]:
        """Derivatives of the input reflection by voltage and current in front of a two-port."""
        v, i = _in_front(before, v, i)
        factor = 2 * self.impedance_ohm / (v + self.impedance_ohm * i) ** 2
        return factor * (i * before.a - v * before.c), factor * (i * before.b - v * before.d)


def input_reflection(matrices: Iterable[TwoPort], load: ComplexArray, impedance_ohm: float) -> ComplexArray:
    """Input reflection of two-ports given from the load back: no more than one need be kept at a time."""
    v, i = 1 + load, (1 - load) / impedance_ohm
    for matrix in matrices:
        v, i = _scaled(*_in_front(matrix, v, i), impedance_ohm)
    return (v - impedance_ohm * i) / (v + impedance_ohm * i)


def _in_front(matrix: TwoPort, v: ComplexArray, i: ComplexArray) -> tuple[ComplexArray, ComplexArray]:
    """Voltage and current in front of a two-port by those behind it."""
    return matrix.a * v + matrix.b * i, matrix.c * v + matrix.d * i


def _scaled(v: ComplexArray, i: ComplexArray, impedance_ohm: float) -> tuple[ComplexArray, ComplexArray]:
    scale = 1 / (_rough_size(v) + impedance_ohm * _rough_size(i))
    return v * scale, i * scale


def _rough_size(value: ComplexArray) -> RealArray:
    """About the absolute value, without its root."""
    return np.abs(value.real) + np.abs(value.imag)
