"""A scenario with its names looked up: the numbers around a joint that the limits need."""

from typing import Literal, NamedTuple

from ..catalogue import catalogue
from ..catalogue.schema import Quantity
from ..errors import InputError, known
from ..formulas.formula import Sourced
from .scenario import Scenario
from .sourced import sourced

__all__ = ["Rhythm", "Station", "station_of"]


class Rhythm(NamedTuple):
    """Overs of `on_time_s` with pauses of `off_time_s`, in seconds."""

    on_time_s: float
    off_time_s: float


class Station(NamedTuple):
    """The numbers around a joint, in SI units and degrees Celsius."""

    impedance_ohm: float
    vswr: float
    forward: bool
    duty_factor: Sourced
    rhythm: Rhythm | None
    transmit_share: float
    return_loss_asked_db: float
    ambient_temperature_c: float
    irradiance_w_per_m2: float
    altitude_m: float
    added_resistance_ohm: float
    cable: str | None
    """The cable at the joint, an id of the catalogue; without one, each family's customary cable."""
    cabled_sides: Literal[1, 2]
    """On how many sides of the joint a cable ends; on the other there is a port on a panel."""


def station_of(scenario: Scenario) -> Station:
    """Look the scenario's names up. Raises InputError for an unknown name or half a rhythm."""
    tables = catalogue()
    mode = known("mode", scenario.mode, tables.modes)
    if scenario.cable is not None:
        known("cable", scenario.cable, tables.cables)
    condition = known("condition", scenario.condition, tables.conditions)
    return Station(
        impedance_ohm=scenario.system_impedance_ohm,
        vswr=scenario.vswr,
        forward=scenario.power_is == "forward",
        duty_factor=sourced(mode.duty_factor),
        rhythm=_rhythm(scenario, mode.on_time_s, mode.off_time_s),
        transmit_share=1.0 if scenario.transmit_share is None else scenario.transmit_share,
        return_loss_asked_db=scenario.return_loss_asked_db,
        ambient_temperature_c=scenario.ambient_temperature_c,
        irradiance_w_per_m2=scenario.solar_irradiance_w_per_m2,
        altitude_m=scenario.altitude_m,
        added_resistance_ohm=condition.added_resistance_ohm.value + scenario.added_resistance_ohm,
        cable=scenario.cable,
        cabled_sides=2,
    )


def _rhythm(scenario: Scenario, on: Quantity | None, off: Quantity | None) -> Rhythm | None:
    """The overs asked for, else the mode's own, else none: a share of the time or all of it."""
    asked_on, asked_off = scenario.on_time_s, scenario.off_time_s
    if (asked_on is None) != (asked_off is None):
        missing = "on_time_s" if asked_on is None else "off_time_s"
        raise InputError(missing, None, "a time in seconds, as the other of the two is given")
    if asked_on is not None and asked_off is not None:
        if scenario.transmit_share is not None:
            raise InputError("transmit_share", scenario.transmit_share, "left out when overs and pauses are given")
        return Rhythm(asked_on, asked_off)
    if scenario.transmit_share is None and on is not None and off is not None:
        return Rhythm(sourced(on), sourced(off))
    return None
