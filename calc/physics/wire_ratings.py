"""One end of a two-wire line's ratings as plain numbers, with attenuation fitted to published points."""

from typing import Generic, NamedTuple, TypeVar

from ..catalogue import catalogue, per_edition
from ..formulas.formula import Broadcast, Number, Sourced
from .cable_ratings import CladCoefficients, attenuation_law
from .ratings import RatingEnd
from .sourced import sourced

__all__ = ["WireRatings", "wire_ratings"]

Value = TypeVar("Value", bound=Number, covariant=True)


class WireRatings(NamedTuple, Generic[Value]):
    """One end of a two-wire line's ratings, clean and dry."""

    velocity_factor: Value
    """Speed of the wave over that of light [1]."""
    impedance_ohm: Value
    """Characteristic impedance without loss [Ω]."""
    working_voltage_rms_v: Value
    """Rated working voltage between the wires, rms [V]."""
    k_1: Value
    """Conductor coefficient of the attenuation at 20 °C, but for clad wires at low frequencies [dB/(m·√Hz)]."""
    k_2: Value
    """Dielectric coefficient of the attenuation [dB/(m·Hz)]."""
    clad: CladCoefficients | None
    """Of clad wires with figures of their own at low frequencies."""

    def conductor_coefficient(self, frequency: Broadcast) -> Broadcast:
        """Conductor coefficient of the attenuation at 20 °C [dB/(m·√Hz)] at a frequency or at many [Hz]."""
        return self.clad.at(frequency) if self.clad else self.k_1


@per_edition(maxsize=64)
def wire_ratings(line: str, end: RatingEnd) -> WireRatings[Sourced]:
    """Scalars of one end of a two-wire line's ratings, each a `Sourced` float."""
    entry = catalogue().wire_lines[line]
    k_1, k_2, clad = attenuation_law(entry)
    return WireRatings(
        velocity_factor=sourced(entry.velocity_factor),
        impedance_ohm=sourced(entry.impedance_ohm),
        working_voltage_rms_v=sourced(getattr(entry.working_voltage_rms_v, end)),
        k_1=k_1,
        k_2=k_2,
        clad=clad,
    )
