"""Every power that someone states for a joint's family or cable, beside what is computed, and what it does."""

from collections.abc import Iterator
from typing import Literal

from ..catalogue import catalogue
from ..physics.derivation import Limits
from ..physics.evidence import (
    UNDOCUMENTED,
    CableEvidence,
    FamilyEvidence,
    cable_evidence,
    documented_of_cable,
    documented_of_family,
    family_evidence,
)
from ..physics.ratings import Documented
from .results import RatingCheck

__all__ = ["rating_checks"]

Part = Literal["contact", "cable"]
Role = Literal["decides", "higher", "not documented"]

ROLES: dict[Role, str] = {
    "decides": "It is documented and lies below what is computed, so it decides.",
    "higher": "It is documented and lies no lower than what decides.",
    "not documented": "No document vouches for it, so it does not decide.",
}


def rating_checks(family: str, cable: str, limits: Limits) -> list[RatingCheck]:
    """The ratings of a family, then those of the cable at the joint; `limits` are the cell's cautious ones."""
    return [*_of_family(family, limits), *_of_cable(cable, limits)]


def _of_family(family: str, limits: Limits) -> Iterator[RatingCheck]:
    documented = documented_of_family(family)
    for one in family_evidence(family):
        hottest_c = one.rating.contact_temperature_c
        yield _check("contact", one, hottest_c, one.cable, documented, limits)


def _of_cable(cable: str, limits: Limits) -> Iterator[RatingCheck]:
    documented = documented_of_cable(cable)
    for one in cable_evidence(cable):
        yield _check("cable", one, one.rating.conductor_temperature_c, cable, documented, limits)


def _check(
    part: Part,
    one: FamilyEvidence | CableEvidence,
    hottest_c: float,
    cable: str,
    documented: Documented,
    limits: Limits,
) -> RatingCheck:
    rating = one.rating
    share, decisive = rating.power_w / one.computed_w, float(documented.power_w / documented.computed_w)
    # the limit holds the decisive rating already
    here_w = limits.allowed_w(part) * share / min(decisive, 1.0)
    role: Role = "decides" if share <= decisive and share < 1 else "higher"
    if rating.kind in UNDOCUMENTED:
        role = "not documented"
    return RatingCheck(
        part=part,
        power_w=rating.power_w,
        frequency_hz=rating.frequency_hz,
        ambient_temperature_c=rating.ambient_temperature_c,
        hottest_temperature_c=hottest_c,
        cable=catalogue().cables[cable].spoken_name,
        source=rating.source,
        kind=rating.kind,
        note=rating.note,
        computed_w=one.computed_w,
        computed_high_w=one.computed_high_w,
        here_w=here_w,
        role=role,
        sentence=ROLES[role],
    )
