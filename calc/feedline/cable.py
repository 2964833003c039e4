"""A run of cable in a line: its waves, its hottest metre and its highest voltage."""

from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..catalogue import catalogue
from ..catalogue.schema import Cable
from ..formulas import voltage
from ..formulas.formula import Broadcast, Number
from ..physics.cable_heat import CablePath, cable_limit, cable_path, conductor_rises
from ..physics.cable_ratings import CableRatings, cable_cutoff
from ..physics.gates import GateResult, cable_te11, heat_room
from ..physics.heat_limit import HeatLimit
from ..physics.limits import LimitId
from ..physics.ratings import CAUTIOUS
from ..physics.scenario import Surroundings
from ..physics.station import Station
from .link import LinkKind
from .marks import figure_marks
from .remembered import remembered
from .run import Constants, RunLink, RunModel, fitted_constants
from .stress import Allowed, Stress, voltage_allowed_w

__all__ = ["CableLink", "CableModel", "cable_marks", "cable_model"]


@dataclass(frozen=True, eq=False)
class CableModel(RunModel):
    """One end of a cable's ratings and its length [m]; with table ratings, many cables along axis 0."""

    ratings: CableRatings[Number]
    path: CablePath
    heat_limit: ClassVar[LimitId] = "cable"

    @property
    def nominal_ohm(self) -> Broadcast:
        """Characteristic impedance without loss [Ω]."""
        return self.ratings.impedance_ohm

    @remembered
    def constants(self, frequency: Broadcast) -> Constants:
        """Attenuation constants of conductors and dielectric [Np/m] and phase constant [rad/m]."""
        return fitted_constants(self.ratings, frequency, self.station)

    def heat(self, frequency: Broadcast, stress: Stress) -> HeatLimit:
        """What its hottest metre allows."""
        rises = conductor_rises(self.ratings, self.path, frequency, stress.hottest, self.station)
        return cable_limit(self.ratings, self.path, rises, self.station)

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What it allows under that stress."""
        voltage_w = voltage_allowed_w(self.peak_v, self.station.impedance_ohm, stress)
        return Allowed(self.heat(frequency, stress).allowed_w, voltage_w)

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency [Hz], after the constants that its stress came from, with its path recorded."""
        self.constants(frequency)
        return cable_model(self.ratings, self.length_m, self.station).allowed(frequency, stress)

    @property
    def peak_v(self) -> Broadcast:
        """The rated peak voltage of the cable [V]: its insulation is solid, so the air does not matter."""
        return voltage.allowed_peak_voltage(self.ratings.working_voltage_rms_v, 1.0)


def cable_model(ratings: CableRatings[Number], length_m: float, station: Station) -> CableModel:
    """The model of a run of cable at a station."""
    return CableModel(station, length_m, ratings, cable_path(ratings, station))


@dataclass(frozen=True, eq=False, kw_only=True)
class CableLink(RunLink):
    """A run of one cable."""

    kind: ClassVar[LinkKind] = "cable"
    models: tuple[CableModel, CableModel]
    cable: str
    """Its id in the catalogue."""

    def gates(self, frequency_hz: float, power_w: float) -> list[GateResult]:
        """Whether one wave alone travels in it, and when it transmits, whether it has room for heat."""
        model = self.models[CAUTIOUS]
        gates = [cable_te11(catalogue().cables[self.cable], frequency_hz)]
        if power_w > 0:
            gates.append(heat_room(model.ratings.highest_temperature_c, model.path.solar_rise_k, model.station))
        return gates

    def refused(self, frequency: np.ndarray, power_w: float) -> np.ndarray:
        """Where one of them fails, by frequency [Hz]."""
        hot = not all(gate.passed for gate in self.gates(0.0, power_w))
        return hot | (frequency >= cable_cutoff(self.models[CAUTIOUS].ratings))


def cable_marks(entry: Cable, frequency: float, site: Surroundings) -> list[str]:
    """A sentence for each soft doubt about a cable at a frequency [Hz] and a site."""
    return figure_marks(entry, f"The jacket of {entry.spoken_name}", frequency, site)
