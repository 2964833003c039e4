"""A run of two-wire line: window line, ribbon or open wire."""

from dataclasses import dataclass
from typing import ClassVar

from ..catalogue.schema import WireLine
from ..formulas import voltage
from ..formulas.formula import Broadcast, Number
from ..numeric.measures import temperature_words
from ..physics.gates import EXPOSURES
from ..physics.limits import air_density
from ..physics.scenario import Surroundings
from ..physics.wire_ratings import WireRatings
from .link import LinkKind
from .marks import figure_marks
from .remembered import remembered
from .run import Constants, RunLink, RunModel, fitted_constants

__all__ = ["WireLink", "WireModel", "wire_marks"]

DRIEST_WET = EXPOSURES.index("exposed")
"""From this exposure on rain and ice reach the line."""


@dataclass(frozen=True, eq=False)
class WireModel(RunModel):
    """One end of a two-wire line's ratings and its length [m]; no heat limits it, as nothing closes it in."""

    ratings: WireRatings[Number]

    @property
    def nominal_ohm(self) -> Broadcast:
        """Characteristic impedance without loss [Ω]."""
        return self.ratings.impedance_ohm

    @property
    def peak_v(self) -> Broadcast:
        """The rated peak voltage in this air [V]: there is air between the wires, or around their ends."""
        return voltage.allowed_peak_voltage(self.ratings.working_voltage_rms_v, air_density(self.station))

    @remembered
    def constants(self, frequency: Broadcast) -> Constants:
        """Attenuation constants of conductors and dielectric [Np/m] and phase constant [rad/m], clean and dry."""
        return fitted_constants(self.ratings, frequency, self.station)


@dataclass(frozen=True, eq=False, kw_only=True)
class WireLink(RunLink):
    """A run of one two-wire line."""

    kind: ClassVar[LinkKind] = "wires"
    models: tuple[WireModel, WireModel]


def wire_marks(entry: WireLine, frequency: float, site: Surroundings) -> list[str]:
    """A sentence for each soft doubt about a two-wire line at a frequency [Hz] and a site."""
    marks = figure_marks(entry, entry.spoken_name, frequency, site)
    if site.ambient_temperature_c > entry.highest_temperature_c.value:
        highest = temperature_words(entry.highest_temperature_c.value)
        here = temperature_words(site.ambient_temperature_c)
        marks.append(f"{entry.spoken_name} is rated up to {highest}; the site: {here}.")
    if EXPOSURES.index(site.exposure) >= DRIEST_WET:
        marks.append(f"{entry.spoken_name} counts as clean and dry. {entry.wet.value}")
    marks.append(f"Keep {entry.spoken_name} a few spacings away from metal, walls and the ground.")
    return marks
