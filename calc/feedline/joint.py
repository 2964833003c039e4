"""A mated pair in a line: a short lossy section of its own impedance, and what it stands."""

from typing import NamedTuple

import numpy as np

from ..formulas import voltage
from ..formulas.formula import Number
from ..physics.limits import HeatPath, air_density, dissipation, heat_path, heat_power, match_limit, worst_section
from ..physics.ratings import Ratings
from ..physics.station import Station
from ..waves.two_port import TwoPort, Waves, joint_loss, joint_section
from .stress import SMALLEST_SHARE, Allowed, Stress, lumped_stress

__all__ = ["JointModel", "Section", "joint_model"]


class Section(NamedTuple):
    """The joint as a lossy line section: impedance [Ω], angle gamma*l [Np + j rad], contacts in its middle [Ω]."""

    impedance: np.ndarray
    angle: np.ndarray
    contact_ohm: np.ndarray


class JointModel(NamedTuple):
    """One end of a family's ratings at one place; with a table view, many families along axis 0."""

    ratings: Ratings[Number]
    station: Station
    path: HeatPath

    def section(self, frequency: np.ndarray) -> Section:
        """The section at frequencies [Hz]."""
        z_0 = self.station.impedance_ohm
        shares = dissipation(self.ratings, frequency, self.station.added_resistance_ohm, z_0)
        impedance, radians = worst_section(self.ratings, frequency, z_0)
        # conductors heat by the current and the dielectric by the voltage, which a real impedance would mix up
        series, shunt = shares.conductor * z_0 / impedance + 1j * radians, shares.dielectric + 1j * radians
        return Section(impedance * np.sqrt(series / shunt), np.sqrt(series * shunt), shares.contact * z_0)

    def two_port(self, frequency: np.ndarray) -> TwoPort:
        """The chain matrix at frequencies [Hz]."""
        return joint_section(*self.section(frequency))

    def stress(self, waves: Waves, at: int, frequency: np.ndarray) -> Stress:
        """What the waves do to it as element `at`."""
        lost = joint_loss(*self.section(frequency), waves.voltage[at + 1], waves.current[at + 1])
        stress = lumped_stress(waves, at, self.station.impedance_ohm)
        return stress._replace(heat_share=np.maximum(lost, SMALLEST_SHARE))

    def allowed(self, frequency: np.ndarray, stress: Stress) -> Allowed:
        """What it allows under that stress."""
        return Allowed(
            heat_w=heat_power(self.path, stress.heat_share, 1.0, self.station),
            voltage_w=voltage.voltage_allowed_power(self.peak_v, self.station.impedance_ohm, stress.voltage_factor),
            match_db=match_limit(self.ratings, frequency, self.station).margin_db,
        )

    @property
    def peak_v(self) -> np.ndarray:
        """The rated peak voltage in this air [V]."""
        return voltage.allowed_peak_voltage(self.ratings.working_voltage_rms_v, air_density(self.station))


def joint_model(ratings: Ratings[Number], station: Station) -> JointModel:
    """The model of a joint whose contacts and cables are those of the station given."""
    return JointModel(ratings, station, heat_path(ratings, station))
