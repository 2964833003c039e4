"""One joint at one column and power judged: its limits at both ends of the ratings, its gates, and what decides."""

from typing import NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..catalogue.schema import Cable, Interface
from ..errors import known
from .columns import Column
from .customary import customary_cable
from .derivation import Limits, limits_at_both_ends
from .gates import HOUSE, Demand, GateResult, gate_results, site_demands
from .house_limits import house_power
from .limits import LimitId
from .margins import LIMITS
from .scenario import Scenario
from .station import Station, station_of

__all__ = ["Judgement", "judged"]


class Judgement(NamedTuple):
    """What is known of a joint; of a pair, the cautious figure stands first."""

    interface: Interface
    column: Column
    power_w: float
    station: Station
    cable: Cable
    demands: list[Demand]
    low: Limits
    high: Limits
    return_loss_db: tuple[float, float]
    """Of the joint alone."""
    gates: list[GateResult]
    refusing: GateResult | None
    """The first hard gate that fails."""
    computed_db: tuple[float | None, float | None]
    """The smallest margins, even where a gate refuses; None in receive and where there is no room at all."""
    binding: LimitId | None
    """The limit of the smallest cautious margin."""
    largest_power_w: float | None
    """The most by the cautious figures and the station's own rules; None where a gate refuses any power."""

    @property
    def margins_db(self) -> tuple[float | None, float | None]:
        """The smallest margins, none where a gate refuses."""
        return self.computed_db if self.refusing is None else (None, None)

    @property
    def uncertain(self) -> bool:
        """Whether the sign of the margin depends on which sources one believes."""
        low, high = self.margins_db
        return low is not None and high is not None and low < 0 <= high


def judged(family: str, column: Column, power_w: float, scenario: Scenario) -> Judgement:
    """Judge one family at the upper edge of a column. Raises InputError for unknown names."""
    interface = known("family", family, catalogue().interfaces)
    station = station_of(scenario)
    frequency = column.high_hz
    low, high = limits_at_both_ends(family, power_w, frequency, station)
    no_room = bool(low.contact.has_no_room(station) or low.cable.has_no_room(station))
    return_loss_db = float(low.match.return_loss_db), float(high.match.return_loss_db)
    demands = site_demands(family, scenario)
    cable = catalogue().cables[scenario.cable or customary_cable(family)]
    gates = gate_results(family, demands, frequency, power_w, station, no_room, return_loss_db, cable)
    refusing = next((gate for gate in gates if gate.hard and not gate.passed), None)
    refused = interface.receive_only or (refusing is not None and refusing.id != HOUSE)
    computed_db = _least(low), _least(high)
    return Judgement(
        interface=interface,
        column=column,
        power_w=power_w,
        station=station,
        cable=cable,
        demands=demands,
        low=low,
        high=high,
        return_loss_db=return_loss_db,
        gates=gates,
        refusing=refusing,
        computed_db=computed_db,
        binding=None if computed_db[0] is None else _binding(low),
        largest_power_w=None if refused else _largest_w(low, float(house_power([family], np.array([frequency]))[0, 0])),
    )


def _binding(limits: Limits) -> LimitId:
    """The limit with the smallest margin; in a tie the first."""
    margins = {limit: margin for limit in LIMITS if (margin := limits.margins_db[limit]) is not None}
    return min(margins, key=margins.__getitem__)


def _least(limits: Limits) -> float | None:
    """The smallest margin [dB]; none in receive."""
    return min((margin for margin in limits.margins_db.values() if margin is not None), default=None)


def _largest_w(low: Limits, house_w: float) -> float | None:
    largest = float(min(low.contact.allowed_w, low.cable.allowed_w, low.voltage.allowed_w, house_w))
    return largest if largest > 0 else None
