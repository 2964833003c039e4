"""The limits of one joint, each with the record of the calls that made its number."""

from typing import NamedTuple

from ..formulas.formula import Number, Sourced, Step, recording
from ..formulas.heat import margin
from .limits import Heat, LimitId, Match, Voltage, heat_limit, match_limit, voltage_limit
from .ratings import ENDS, RatingEnd, Ratings, family_ratings
from .station import Station

__all__ = ["Limits", "both_ends", "limits_at"]


class Limits(NamedTuple):
    """The limits at one end of the ratings with their steps by limit."""

    heat: Heat
    voltage: Voltage
    match: Match
    margins_db: dict[LimitId, float | None]
    steps: dict[LimitId, list[Step]]


def both_ends(family: str, frequency: float, station: Station) -> dict[LimitId, list[Ratings[Sourced]]]:
    """For each limit both ends of the ratings, the more cautious at a frequency [Hz] first."""
    both = [family_ratings(family, end) for end in ENDS]
    return {
        "heat": sorted(both, key=lambda ratings: heat_limit(ratings, frequency, station).allowed_w),
        "voltage": both,
        "match": sorted(both, key=lambda ratings: match_limit(ratings, frequency, station).margin_db),
    }


def limits_at(
    power_w: float,
    frequency: float,
    station: Station,
    end: RatingEnd,
    by_limit: dict[LimitId, list[Ratings[Sourced]]],
) -> Limits:
    """The limits of a joint at a power [W] and frequency [Hz], each with the steps that led to it.

    `by_limit` is what `both_ends` gives, `end` which of the two.
    """
    ratings = {limit: ordered[ENDS.index(end)] for limit, ordered in by_limit.items()}
    with recording(end) as heat_steps:
        heat = heat_limit(ratings["heat"], frequency, station)
        heat_margin = _power_margin(heat.allowed_w, power_w)
    with recording(end) as voltage_steps:
        volts = voltage_limit(ratings["voltage"], station)
        voltage_margin = _power_margin(volts.allowed_w, power_w)
    with recording(end) as match_steps:
        reflection = match_limit(ratings["match"], frequency, station)
    return Limits(
        heat,
        volts,
        reflection,
        {"heat": heat_margin, "voltage": voltage_margin, "match": float(reflection.margin_db)},
        {"heat": heat_steps, "voltage": voltage_steps, "match": match_steps},
    )


def _power_margin(allowed_w: Number, power_w: float) -> float | None:
    """Margin [dB]; None in receive, and where nothing is allowed, which a gate then refuses."""
    return float(margin(allowed_w, power_w)) if power_w > 0 and allowed_w > 0 else None
