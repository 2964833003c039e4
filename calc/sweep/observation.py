"""What is to be explained, and where a fit of it starts."""

from typing import NamedTuple

from .arrays import ComplexArray, IndexArray, RealArray
from .faults import Fault, faults_of
from .model import LineModel

__all__ = ["Observation", "Start"]


class Observation(NamedTuple):
    """A measured reflection, (frequencies,), the line it was measured on, and every fault that line may have."""

    line: LineModel
    faults: list[Fault]
    measured: ComplexArray

    @classmethod
    def of(cls, line: LineModel, measured: ComplexArray) -> "Observation":
        """With every fault of the line."""
        return cls(line, faults_of(line), measured)

    @property
    def numbers(self) -> int:
        """How many real numbers were measured."""
        return 2 * self.measured.size

    def at(self, points: IndexArray) -> "Observation":
        """The same at some of the frequencies."""
        return Observation.of(self.line.at(points), self.measured[points])


class Start(NamedTuple):
    """Where a fit starts: a fault by its number or none, the line's parameters, the logarithms of the fault's sizes."""

    fault: int | None
    parameters: RealArray
    log_sizes: RealArray
