"""What a direct current up the coax heats, by the same network as the power.

It goes through the whole of a conductor, not through its skin: a metre has the resistance of its
metal's section, and a contact that of its film alone. The pins between are left out; they are
thick for their length.
"""

from typing import NamedTuple

import numpy as np

from ..formulas import cable_heat, direct_current
from ..formulas.formula import Broadcast, Number, purpose
from .cable_heat import CablePath, ConductorRises, cable_path
from .cable_ratings import CableRatings, bare_cable_ratings
from .cable_table import table_of_cable_ratings
from .customary import customary_cable
from .family_ratings import table_ratings
from .joint_heat import direct_current_rises, joint_path
from .limits import voltage_limit
from .ratings import ENDS
from .station import Station

__all__ = ["DirectCurrent", "allowed_current", "drop_v_per_m"]

STEADY = 1.0
"""Share of the time that counts: a supply is on all day."""
ROOM_C = 20.0
"""Where the loss of voltage in a cable is told."""


class DirectCurrent(NamedTuple):
    """What each family stands on its cable: ends x families, the more cautious first."""

    cable_a: np.ndarray
    """By the heat of the cable, without power beside it [A]."""
    contact_a: np.ndarray
    """By the heat of the contact, without power beside it [A]."""
    peak_v: np.ndarray
    """Peak voltage allowed [V]."""


def allowed_current(families: list[str], station: Station) -> DirectCurrent:
    """The direct current that heat allows at each family's joint, and the peak voltage it is rated for."""
    cable_ids = [station.cable or customary_cable(family) for family in families]
    ends = np.empty((len(ENDS), len(DirectCurrent._fields), len(families)))
    for at, end in enumerate(ENDS):
        ratings, cables = table_ratings(families, end), table_of_cable_ratings(cable_ids, end)
        path = cable_path(cables, station)
        rises = _rises(cables, path)
        on_both = station.cabled_sides == 2
        joint = joint_path(ratings, (cables, cables if on_both else None), (path, path if on_both else None), station)
        beside = [rises, rises if on_both else None]
        contact, *_ = direct_current_rises(ratings, joint, beside, station.added_resistance_ohm)
        at_contact = _current(joint.allowed_temperature_c, joint.solar_rise_k, contact, station)
        at_pin = _current(joint.allowed_temperature_c, path.solar_rise_k, rises.inner, station)
        at_cable = _current(cables.highest_temperature_c, path.solar_rise_k, rises.inner, station)
        columns = at_cable, np.minimum(at_contact, at_pin), voltage_limit(ratings, station).allowed_peak_v
        for row, column in zip(ends[at], columns, strict=True):
            row[:] = column[:, 0]
    return DirectCurrent(*np.sort(ends, axis=0).swapaxes(0, 1))


def drop_v_per_m(cable: str, current_a: float) -> float:
    """Voltage that a current [A] loses in a metre of a cable of the catalogue at 20 °C, there and back."""
    return float(direct_current.voltage_drop(current_a, *_resistances(bare_cable_ratings(cable, "low"), ROOM_C)))


def _rises(cables: CableRatings[Number], path: CablePath) -> ConductorRises:
    """Rises of the conductors by 1 A, far from any joint [K], as hot as the cable may get."""
    with purpose("the cable, by direct current"):
        inner_ohm, outer_ohm = _resistances(cables, cables.highest_temperature_c)
        heat = inner_ohm + outer_ohm  # by 1 A a metre makes as many watts as it has ohms
        outer = cable_heat.screen_rise(heat, 0.0, path.to_air, path.jacket, STEADY)
        inner = cable_heat.inner_conductor_rise(outer, inner_ohm / heat, heat, 0.0, path.insulation, STEADY)
    return ConductorRises(inner, outer)


def _resistances(cables: CableRatings[Number], temperature_c: Number) -> tuple[Broadcast, Broadcast]:
    """Of a metre of the inner and of the outer conductor [Ω/m]."""
    return (
        direct_current.conductor_resistance(temperature_c, cables.inner_thermal_conductivity, cables.inner_area_m2),
        direct_current.conductor_resistance(temperature_c, cables.screen_thermal_conductivity, cables.screen_area_m2),
    )


def _current(allowed_c: Broadcast, solar_rise_k: Broadcast, rise_k: Broadcast, station: Station) -> Broadcast:
    return direct_current.current_allowed(allowed_c, station.ambient_temperature_c, solar_rise_k, rise_k)
