"""A mated pair in a line: a short lossy section of its own impedance, and what limits it."""

from dataclasses import dataclass
from typing import ClassVar, NamedTuple

import numpy as np

from ..formulas import voltage
from ..formulas.formula import Broadcast, Number
from ..physics.gates import GATES, Demand, GateResult, gate_results, gate_table
from ..physics.house_limits import house_power
from ..physics.limits import HeatPath, air_density, dissipation, heat_path, heat_power, match_limit, worst_section
from ..physics.ratings import CAUTIOUS, Ratings
from ..physics.station import Station
from ..waves.two_port import TwoPort, Waves, joint_loss, joint_section
from .elements import Joint
from .link import Link, LinkKind, LumpedModel
from .stress import SMALLEST_SHARE, Allowed, HotSpot, Stress

__all__ = ["JointLink", "JointModel", "LossySection", "joint_model"]

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
    path: HeatPath

    def section(self, frequency: Broadcast, away_from_ohm: Broadcast | None = None) -> LossySection:
        """The section at frequencies [Hz], on the side of its design impedance away from the line's or from another."""
        z_0 = self.station.impedance_ohm
        shares = dissipation(self.ratings, frequency, self.station.added_resistance_ohm, z_0)
        impedance, radians = worst_section(self.ratings, frequency, z_0 if away_from_ohm is None else away_from_ohm)
        # conductors heat by the current and the dielectric by the voltage, which a real impedance would mix up
        series, shunt = shares.conductor * z_0 / impedance + 1j * radians, shares.dielectric + 1j * radians
        return LossySection(impedance * np.sqrt(series / shunt), np.sqrt(series * shunt), shares.contact * z_0)

    def two_port(self, frequency: Broadcast) -> TwoPort:
        """The chain matrix at frequencies [Hz]."""
        return joint_section(*self.section(frequency))

    def stress(self, waves: Waves, plane: int, frequency: Broadcast) -> Stress:
        """What the waves do to it between `plane` and the next."""
        lost = joint_loss(*self.section(frequency), waves.voltage[plane + 1], waves.current[plane + 1])
        stress = super().stress(waves, plane, frequency)
        return stress._replace(heat_share=np.maximum(lost, SMALLEST_SHARE))

    def allowed(self, frequency: Broadcast, stress: Stress) -> Allowed:
        """What it allows under that stress."""
        return Allowed(
            heat_w=heat_power(self.path, stress.heat_share, 1.0, self.station),
            voltage_w=voltage.voltage_allowed_power(self.peak_v, self.station.impedance_ohm, stress.voltage_factor),
            match_db=match_limit(self.ratings, frequency, self.station).margin_db,
        )

    def derived(self, frequency: float, stress: Stress) -> Allowed:
        """The same at one frequency [Hz], with the heat path computed once more to be recorded."""
        return joint_model(self.ratings, self.station).allowed(frequency, stress)

    @property
    def peak_v(self) -> Broadcast:
        """The rated peak voltage in this air [V]."""
        return voltage.allowed_peak_voltage(self.ratings.working_voltage_rms_v, air_density(self.station))

    @property
    def hot_spot(self) -> HotSpot:
        """The centre contact."""
        path = self.path
        return HotSpot(path.allowed_temperature_c, path.resistance_k_per_w, path.time_share, path.solar_rise_k)


def joint_model(ratings: Ratings[Number], station: Station) -> JointModel:
    """The model of a joint whose contacts and cables are those of the station given."""
    return JointModel(station, ratings, heat_path(ratings, station))


@dataclass(frozen=True, eq=False, kw_only=True)
class JointLink(Link):
    """A mated pair of one family."""

    kind: ClassVar[LinkKind] = "joint"
    models: tuple[JointModel, JointModel]
    given: Joint
    """The joint as it was asked about; an adapter's two links share it."""
    demands: list[Demand]

    def gates(self, frequency_hz: float, power_w: float) -> list[GateResult]:
        """Every gate of its family."""
        model = self.models[CAUTIOUS]
        return gate_results(self.family, self.demands, frequency_hz, power_w, model.station, model.path)

    def refused(self, frequency: np.ndarray, power_w: float) -> np.ndarray:
        """Where a hard gate of its family fails, by frequency [Hz]."""
        model, powers = self.models[CAUTIOUS], np.array([power_w], dtype=np.float64)
        failed = gate_table([self.family], [self.demands], frequency, powers, model.station, model.path)
        return np.any(failed[HARD], axis=0)[0, :, 0]

    def house_power_w(self, frequency: np.ndarray) -> np.ndarray:
        """Most power the station's own rules allow its family [W] by frequency [Hz]."""
        return house_power([self.family], frequency)[0]
