"""The limits of one joint and its match, each with the record of the calls that made its number."""

from typing import NamedTuple

import msgspec

from ..formulas import match
from ..formulas.formula import Number, Step, recording
from ..formulas.heat import margin
from .cable_heat import cable_limit
from .cable_table import cable_ratings
from .customary import customary_cable
from .family_ratings import family_ratings
from .heat_limit import HeatLimit
from .limits import LimitId, Match, Voltage, cable_heat, contact_heat, match_of, voltage_limit
from .ratings import ENDS, RatingEnd
from .station import Station

__all__ = ["Limits", "limits_at_both_ends"]


class Limits(NamedTuple):
    """The limits at one end of the ratings, and their steps by limit; those to the match too."""

    cable: HeatLimit
    contact: HeatLimit
    voltage: Voltage
    match: Match
    margins_db: dict[LimitId, float | None]
    steps: dict[LimitId, list[Step]]
    match_steps: list[Step]

    def allowed_w(self, limit: LimitId) -> float:
        """Largest power by one limit [W]."""
        if limit == "voltage":
            return float(self.voltage.allowed_w)
        return float((self.cable if limit == "cable" else self.contact).allowed_w)


def limits_at_both_ends(family: str, power_w: float, frequency: float, station: Station) -> tuple[Limits, Limits]:
    """The limits of a joint at a power [W] and frequency [Hz], the more cautious of each first."""
    first, second = (_limits(family, power_w, frequency, station, end) for end in ENDS)
    # which end is the more cautious can change with frequency and line impedance
    swapped: dict[LimitId, bool] = {
        "cable": first.cable.allowed_w > second.cable.allowed_w,
        "contact": first.contact.allowed_w > second.contact.allowed_w,
        "voltage": first.voltage.allowed_w > second.voltage.allowed_w,
    }
    match_swapped = bool(first.match.return_loss_db > second.match.return_loss_db)
    return (
        _chosen("low", first, second, swapped, match_swapped),
        _chosen("high", second, first, swapped, match_swapped),
    )


def _chosen(end: RatingEnd, own: Limits, other: Limits, swapped: dict[LimitId, bool], match_swapped: bool) -> Limits:
    by_limit: dict[LimitId, Limits] = {limit: other if swap else own for limit, swap in swapped.items()}
    matched = other if match_swapped else own
    return Limits(
        cable=by_limit["cable"].cable,
        contact=by_limit["contact"].contact,
        voltage=by_limit["voltage"].voltage,
        match=matched.match,
        margins_db={limit: chosen.margins_db[limit] for limit, chosen in by_limit.items()},
        steps={limit: _of_end(end, chosen.steps[limit]) for limit, chosen in by_limit.items()},
        match_steps=_of_end(end, matched.match_steps),
    )


def _of_end(end: RatingEnd, steps: list[Step]) -> list[Step]:
    """The steps as those of the end that they stand for."""
    return [step if step.end == end else msgspec.structs.replace(step, end=end) for step in steps]


def _limits(family: str, power_w: float, frequency: float, station: Station, end: RatingEnd) -> Limits:
    ratings, cable = family_ratings(family, end), cable_ratings(station.cable or customary_cable(family), end)
    with recording(end) as beside_steps:
        beside = cable_heat(cable, frequency, station)
    with recording(end) as cable_steps:
        cable_heats = cable_limit(cable, beside.path, beside.rises, station)
        cable_margin = _margin(cable_heats.allowed_w, power_w)
    with recording(end) as contact_steps:
        contact = contact_heat(ratings, cable, beside, frequency, station)
        contact_margin = _margin(contact.allowed_w, power_w)
    with recording(end) as voltage_steps:
        volts = voltage_limit(ratings, station)
        voltage_margin = _margin(volts.allowed_w, power_w)
    with recording(end) as match_steps:
        reflection = match_of(ratings, frequency, station)
        match.match_margin(reflection.return_loss_db, station.return_loss_asked_db)
    return Limits(
        cable=cable_heats,
        contact=contact,
        voltage=volts,
        match=reflection,
        margins_db={"cable": cable_margin, "contact": contact_margin, "voltage": voltage_margin},
        steps={
            "cable": beside_steps + cable_steps,
            "contact": beside_steps + contact_steps,
            "voltage": voltage_steps,
        },
        match_steps=match_steps,
    )


def _margin(allowed_w: Number, power_w: float) -> float | None:
    """Margin [dB]; None in receive, and where nothing is allowed, which a gate then refuses."""
    return float(margin(allowed_w, power_w)) if power_w > 0 and allowed_w > 0 else None
