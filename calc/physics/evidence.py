"""Published and remembered powers, held against what is computed at their own conditions.

A documented one below the computed cautious end brings that down; one from
memory or habit never decides.
"""

from typing import NamedTuple, TypeVar

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import CablePower, Kind, PowerRating
from ..formulas.formula import Sourced
from .cable_heat import cable_limit
from .cable_ratings import bare_cable_ratings
from .customary import customary_cable
from .limits import cable_heat, contact_heat
from .ratings import ENDS, NOTHING_DOCUMENTED, Documented, RatingEnd, bare_ratings
from .station import Station

__all__ = [
    "UNDOCUMENTED",
    "CableEvidence",
    "FamilyEvidence",
    "cable_evidence",
    "documented_of_cable",
    "documented_of_family",
    "family_evidence",
    "rated_lower",
]

UNDOCUMENTED: set[Kind] = {"common practice", "memory"}
"""The kinds of value that no text vouches for."""


class FamilyEvidence(NamedTuple):
    """A power of a mated pair, the cable it counts for, and what is computed at its conditions [W]."""

    rating: PowerRating
    cable: str
    computed_w: float
    """At the cautious end,"""
    computed_high_w: float
    """and at the generous one."""


class CableEvidence(NamedTuple):
    """A power of a cable and what is computed at its conditions [W]."""

    rating: CablePower
    computed_w: float
    computed_high_w: float


AnyEvidence = TypeVar("AnyEvidence", FamilyEvidence, CableEvidence)


@per_edition(maxsize=256)
def cable_evidence(cable: str) -> list[CableEvidence]:
    """Every power listed for a cable, without regard to any of them."""
    return [
        CableEvidence(rating, *(_cable_power(cable, rating, end) for end in ENDS))
        for rating in catalogue().cables[cable].power
    ]


@per_edition(maxsize=256)
def family_evidence(family: str) -> list[FamilyEvidence]:
    """Every power listed for a family; documented powers of its cables are regarded, its own are not."""
    found = []
    for rating in catalogue().interfaces[family].average_power:
        cable = rating.cable if rating.cable in catalogue().cables else customary_cable(family)
        found.append(FamilyEvidence(rating, cable, *(_family_power(family, cable, rating, end) for end in ENDS)))
    return found


@per_edition(maxsize=256)
def documented_of_cable(cable: str) -> Documented:
    """The documented power of a cable that lies farthest below what is computed."""
    return _lowest(cable_evidence(cable))


@per_edition(maxsize=256)
def documented_of_family(family: str) -> Documented:
    """The documented power of a family that lies farthest below what is computed."""
    return _lowest(family_evidence(family))


@per_edition(maxsize=1024)
def rated_lower(family: str, cable: str | None) -> bool:
    """Whether a power from memory or habit, of a family or of its cable, lies below the computed cautious end.

    `cable` is the id of the one at the joint, or None for the customary one.
    """
    return _remembered_lower(family_evidence(family)) or _remembered_lower(
        cable_evidence(cable or customary_cable(family))
    )


def _remembered_lower(evidence: list[AnyEvidence]) -> bool:
    documented = _lowest(evidence)
    share = min(float(documented.power_w / documented.computed_w), 1.0)
    return any(one.rating.kind in UNDOCUMENTED and one.rating.power_w < share * one.computed_w for one in evidence)


def _lowest(evidence: list[AnyEvidence]) -> Documented:
    documented = [one for one in evidence if one.rating.kind not in UNDOCUMENTED]
    lowest = min(documented, key=lambda one: one.rating.power_w / one.computed_w, default=None)
    if lowest is None or lowest.rating.power_w >= lowest.computed_w:
        return NOTHING_DOCUMENTED
    rating = lowest.rating
    return Documented(Sourced(rating.power_w, rating.source, rating.kind), Sourced(lowest.computed_w, "derived", ""))


def _cable_power(cable: str, rating: CablePower, end: RatingEnd) -> float:
    stated_c = Sourced(rating.conductor_temperature_c, rating.source, rating.kind)
    ratings = bare_cable_ratings(cable, end)._replace(highest_temperature_c=stated_c)
    station = _carrier(float(ratings.impedance_ohm), rating.ambient_temperature_c, 0.0)
    path, rises = cable_heat(ratings, rating.frequency_hz, station)
    return float(cable_limit(ratings, path, rises, station).allowed_w)


def _family_power(family: str, cable: str, rating: PowerRating, end: RatingEnd) -> float:
    allowed_c = rating.contact_temperature_c
    documented = documented_of_cable(cable) if end == "low" else NOTHING_DOCUMENTED
    # few ratings say on which cable they hold: none can stand for a cable hotter than it may get
    beside = bare_cable_ratings(cable, end)._replace(
        documented_power_w=documented.power_w, computed_for_it_w=documented.computed_w
    )
    ratings = bare_ratings(family, end)._replace(highest_temperature_c=Sourced(allowed_c, rating.source, rating.kind))
    station = _carrier(
        float(catalogue().interfaces[family].nominal_impedance_ohm.value),
        rating.ambient_temperature_c,
        rating.altitude_m,
    )
    heated = cable_heat(beside, rating.frequency_hz, station)
    return float(contact_heat(ratings, beside, heated, rating.frequency_hz, station).allowed_w)


def _carrier(impedance_ohm: float, ambient_c: float, altitude_m: float) -> Station:
    """Continuous carrier on a matched line in still air and shade, as powers are rated."""
    return Station(
        impedance_ohm=impedance_ohm,
        vswr=1.0,
        forward=True,
        duty_factor=Sourced(1.0, "", ""),
        rhythm=None,
        transmit_share=1.0,
        return_loss_asked_db=0.0,
        ambient_temperature_c=ambient_c,
        irradiance_w_per_m2=0.0,
        altitude_m=altitude_m,
        added_resistance_ohm=0.0,
        cable=None,
        cabled_sides=2,
    )
