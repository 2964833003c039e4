"""A mated pair in a line: a short lossy section of its own impedance, and what limits it."""

from dataclasses import dataclass, replace
from typing import Any, ClassVar, NamedTuple

import numpy as np

from ..formulas import voltage
from ..formulas.formula import Broadcast, Number
from ..physics.cable_heat import cable_path, conductor_rises
from ..physics.dissipation import Shares, dissipation
from ..physics.gates import GATES, Demand, GateResult, gate_results, gate_table
from ..physics.heat_limit import HeatLimit
from ..physics.house_limits import house_power
from ..physics.joint_heat import JointPath, Sides, contact_limit, joint_path, places
from ..physics.limits import LimitId, air_density, match_of, worst_section
from ..physics.ratings import CAUTIOUS, Ratings
from ..physics.station import Station
from ..waves.two_port import TwoPort, Waves, joint_loss, joint_section
from .elements import Joint
from .link import Link, LinkKind, LumpedModel
from .remembered import remembered
from .stress import SMALLEST_SHARE, Allowed, Stress

__all__ = ["JointLink", "JointModel", "LossySection", "joint_model", "joints_of_every_grade"]

SIDES_OHM = (0.0, np.inf)
"""What a joint above and one below its design impedance lie away from [Ω]; a standard's limit allows both."""

GRADES = 33
"""Steps from a typical joint to the worst its standard allows, on each side."""

HARD = np.array([gate.hard for gate in GATES])


class LossySection(NamedTuple):
    """The joint as a lossy line section: impedance [Ω], angle gamma*l [Np + j rad], contacts in its middle [Ω]."""

    impedance: np.ndarray
    angle: np.ndarray
    contact_ohm: np.ndarray


@dataclass(frozen=True, eq=False)
class JointModel(LumpedModel):
    """One end of a family's ratings at one place; with table ratings, many families along axis 0."""

    ratings: Ratings[Number]
    cables: Sides
    path: JointPath
    away_from_ohm: Broadcast | None = None
    """What it lies away from with its impedance; None for the line's own [Ω]."""
    heat_limit: ClassVar[LimitId] = "contact"

    def section(self, frequency: Broadcast, away_from_ohm: Broadcast | None = None) -> LossySection:
        """The section at frequencies [Hz], on the side of its design impedance away from another one [Ω].

        Without one it is the model's own.
        """
        z_0, shares = self.station.impedance_ohm, self._cold(frequency)
        away_from = self.away_from_ohm if away_from_ohm is None else away_from_ohm
        impedance, radians = worst_section(self.ratings, frequency, z_0 if away_from is None else away_from)
        # conductors heat by the current and the dielectric by the voltage, which a real impedance would mix up
        series, shunt = shares.conductor * z_0 / impedance + 1j * radians, shares.dielectric + 1j * radians
        return LossySection(impedance * np.sqrt(series / shunt), np.sqrt(series * shunt), shares.contact * z_0)

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix at frequencies [Hz]."""
        return joint_section(*self._own_section(frequency))

    def other_side(self) -> "JointModel | None":
        """The same joint as far on the other side of its design impedance; none where its impedance is known."""
        above = np.asarray(self.ratings.design_impedance_ohm >= self.station.impedance_ohm)
        if self.away_from_ohm is not None or not np.any(self.ratings.match_vswr_at_dc > 1):
            return None
        return replace(self, away_from_ohm=np.where(above, np.inf, 0.0)[()])

    def stress(self, waves: Waves, plane: int, frequency: Broadcast) -> Stress:
        """What the waves do to it between `plane` and the next."""
        lost = joint_loss(*self._own_section(frequency), waves.voltage[plane + 1], waves.current[plane + 1])
        stress = super().stress(waves, plane, frequency)
        return stress._replace(heat_share=np.maximum(lost, SMALLEST_SHARE))

    def heat(self, frequency: Broadcast, stress: Stress) -> HeatLimit:
        """What its contact allows, with its cables as hot as the wave at the joint makes them."""
        return contact_limit(*self._heated(frequency, stress))

    def places(self, frequency: Broadcast, stress: Stress) -> list[HeatLimit]:
        """What its contact and each conductor soldered to it allow."""
        return places(*self._heated(frequency, stress))

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What it allows under that stress."""
        return Allowed(
            heat_w=self.heat(frequency, stress).allowed_w,
            voltage_w=voltage.voltage_allowed_power(self.peak_v, self.station.impedance_ohm, stress.voltage_factor),
        )

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency [Hz], with the paths of heat computed once more to be recorded."""
        return joint_model(self.ratings, self.cables, self.station).allowed(frequency, stress)

    def return_loss_db(self, frequency: Broadcast) -> Broadcast:
        """Of the joint alone [dB]."""
        return match_of(self.ratings, frequency, self.station).return_loss_db

    @property
    def peak_v(self) -> Broadcast:
        """The rated peak voltage in this air [V]."""
        return voltage.allowed_peak_voltage(self.ratings.working_voltage_rms_v, air_density(self.station))

    def has_no_room(self) -> Broadcast:
        """Whether air and sun alone make its contact or one of its cables too hot."""
        air_c, path = self.station.ambient_temperature_c, self.path
        full = air_c + path.solar_rise_k >= path.allowed_temperature_c
        for cable, side in zip(self.cables, path.sides, strict=True):
            if cable is not None and side is not None:
                full = full | (air_c + side.solar_rise_k >= cable.highest_temperature_c)
        return full

    @remembered
    def _own_section(self, frequency: Broadcast) -> LossySection:
        return self.section(frequency)

    @remembered
    def _cold(self, frequency: Broadcast) -> Shares:
        """Shares lost of a matched wave's power, at 20 °C."""
        station = self.station
        return dissipation(self.ratings, frequency, station.added_resistance_ohm, station.impedance_ohm)

    def _heated(self, frequency: Broadcast, stress: Stress) -> tuple[Any, ...]:
        station, cold = self.station, self._cold(frequency)
        rises = [
            None if cable is None or side is None else conductor_rises(cable, side, frequency, stress.hottest, station)
            for cable, side in zip(self.cables, self.path.sides, strict=True)
        ]
        return self.ratings, self.path, rises, stress.heat_share / cold.total, frequency, station


def joint_model(ratings: Ratings[Number], cables: Sides, station: Station) -> JointModel:
    """The model of a joint whose contacts are those of the station given, and the cables that end in it."""
    near, far = (None if cable is None else cable_path(cable, station) for cable in cables)
    return JointModel(station, ratings, cables, joint_path(ratings, cables, (near, far), station))


def joints_of_every_grade(cautious: JointModel, generous: JointModel, frequency: np.ndarray) -> TwoPort:
    """Chain matrices from typical to the worst its standard allows, above its design impedance and below, along axis 0.

    Then the rows of the ratings, a single one where they are scalars, and the frequencies [Hz].
    """
    away_from = np.reshape(SIDES_OHM, (-1, 1, 1, 1))
    worst, typical = (model.section(frequency, away_from) for model in (cautious, generous))
    grade = np.linspace(0, 1, GRADES).reshape(-1, 1, 1)
    port = joint_section(
        impedance=typical.impedance ** (1 - grade) * worst.impedance**grade,
        angle=typical.angle + (worst.angle - typical.angle) * grade,
        contact_ohm=typical.contact_ohm + (worst.contact_ohm - typical.contact_ohm) * grade,
    )
    return TwoPort(*(one.reshape(-1, *one.shape[2:]) for one in port[:4]))


@dataclass(frozen=True, eq=False, kw_only=True)
class JointLink(Link):
    """A mated pair of one family."""

    kind: ClassVar[LinkKind] = "joint"
    models: tuple[JointModel, JointModel]
    given: Joint
    """The joint as it was asked about; an adapter's two links share it."""
    demands: list[Demand]

    def gates(self, frequency_hz: float, power_w: float) -> list[GateResult]:
        """Every gate of its family but for the match, which the line as a whole shows."""
        model = self.models[CAUTIOUS]
        return gate_results(
            self.family, self.demands, frequency_hz, power_w, model.station, bool(model.has_no_room()), None, None
        )

    def refused(self, frequency: np.ndarray, power_w: float) -> np.ndarray:
        """Where a hard gate of its family fails, by frequency [Hz]."""
        model, powers = self.models[CAUTIOUS], np.array([power_w], dtype=np.float64)
        no_room = np.full((1, 1), model.has_no_room())
        failed = gate_table([self.family], [self.demands], frequency, powers, no_room, None, None)
        return np.any(failed[HARD], axis=0)[0, :, 0]

    def house_power_w(self, frequency: np.ndarray) -> np.ndarray:
        """Most power the station's own rules allow its family [W] by frequency [Hz]."""
        return house_power([self.family], frequency)[0]
