"""Waves along a chain of reciprocal two-ports, as scattering parameters against one impedance.

With a forward wave of 1 sent in, a change of what a plane sees moves the input reflection by the square of the
forward wave there: all derivatives of a sweep come of that. Reflections and waves stay bounded however long and
lossy a line is. Source: microwave_textbook.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

import numpy as np

from ..waves.two_port import MOST_NEPERS
from .arrays import ComplexArray, IndexArray, NumberArray

__all__ = ["LineWaves", "Lumped", "Scattering", "line_scattering", "lumped_scattering"]


class Scattering(NamedTuple):
    """Reflection at the near end, what passes either way, reflection at the far end: (..., frequencies)."""

    near: ComplexArray
    through: ComplexArray
    far: ComplexArray

    def at(self, points: IndexArray) -> "Scattering":
        """The same at some of the frequencies."""
        near, through, far = (np.take(entry, points) for entry in self)
        return Scattering(near, through, far)

    def row(self, number: int) -> "Scattering":
        """One two-port of several."""
        return Scattering(self.near[number], self.through[number], self.far[number])

    def ahead(self, load: ComplexArray) -> ComplexArray:
        """Reflection at the near end, ended in a load of some reflection."""
        return self.near + self.through**2 * load / (1 - self.far * load)

    def back(self, source: ComplexArray) -> ComplexArray:
        """Reflection at the far end, begun with a source of some reflection."""
        return self.far + self.through**2 * source / (1 - self.near * source)


class Lumped(NamedTuple):
    """An impedance in series [Ω] and behind it an admittance across the line [S], over frequency."""

    series: NumberArray
    shunt: NumberArray


@dataclass(frozen=True)
class LineWaves:
    """Of a chain of two-ports from the analyser to the load, at the planes between them."""

    ports: Sequence[Scattering]
    ahead: ComplexArray
    """Reflection of what lies ahead of each plane: (planes, frequencies)."""

    @classmethod
    def of(cls, ports: Sequence[Scattering], load: ComplexArray) -> "LineWaves":
        """The waves of a chain that ends in a load."""
        ahead = np.empty((len(ports) + 1, load.size), dtype=np.complex128)
        ahead[-1] = load
        for plane in range(len(ports) - 1, -1, -1):
            ahead[plane] = ports[plane].ahead(ahead[plane + 1])
        return cls(ports, ahead)

    @cached_property
    def forward(self) -> ComplexArray:
        """The forward wave at each plane, of one of 1 V at the input: (planes, frequencies)."""
        forward = np.ones_like(self.ahead)
        for plane, port in enumerate(self.ports):
            forward[plane + 1] = forward[plane] * port.through / (1 - port.far * self.ahead[plane + 1])
        return forward

    @cached_property
    def voltage(self) -> ComplexArray:
        """Voltage at each plane, in volts of a forward wave of 1 V at the input."""
        return self.forward * (1 + self.ahead)

    @cached_property
    def current(self) -> ComplexArray:
        """Current there times the reference impedance, in the same volts."""
        return self.forward * (1 - self.ahead)


def line_scattering(impedance: NumberArray, angle: NumberArray, reference_ohm: float) -> Scattering:
    """A line of characteristic impedance [Ω] and complex angle gamma*l [Np + j rad]."""
    step = (impedance - reference_ohm) / (impedance + reference_ohm)
    once = np.exp(-np.minimum(angle.real, MOST_NEPERS) - 1j * angle.imag)
    below = 1 - (step * once) ** 2
    reflection = step * (1 - once**2) / below
    return Scattering(reflection, (1 - step**2) * once / below, reflection)


def lumped_scattering(lumped: Lumped, reference_ohm: float) -> Scattering:
    """Lumped elements against a reference [Ω]."""
    z, y = lumped.series / reference_ohm, lumped.shunt * reference_ohm
    product = z * y
    below = 2 + product + z + y
    return Scattering((product + z - y) / below, 2 / below, (z - y - product) / below)
