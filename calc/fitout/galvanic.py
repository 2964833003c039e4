"""Metals that can meet in a joint, by the difference of their anodic indexes.

Only the surfaces count, plating before base metal (MIL-DTL-14072F, from memory).
"""

from itertools import combinations_with_replacement

from ..catalogue import catalogue
from ..catalogue.fitting import GalvanicMetal, PlatingSold
from ..catalogue.schema import Cable, Interface
from ..physics.gates import WEATHER_WORDS
from ..physics.scenario import Exposure
from .pairs import screen_of
from .results import Contact, GalvanicCheck

__all__ = ["galvanic_checks", "metal_of"]

DIGITS = 2
"""Of the published indexes: a difference has no more."""

REMEDIES: dict[Contact, str] = {
    "outer contacts": "take both halves of one plating, and keep the joint dry",
    "centre contacts": "take both halves of one plating, and keep the joint dry",
    "cable conductor": "solder it well and seal the cable entry",
    "cable screen": "seal the cable entry",
}


def galvanic_checks(interface: Interface, cables: list[Cable], exposure: Exposure) -> list[GalvanicCheck]:
    """The worst pair of platings the family is sold with, outside and inside, and each cable's conductors."""
    usual = PlatingSold(interface.id, [interface.inner_plating.value], [interface.outer_plating.value], "", "memory")
    sold = catalogue().platings_sold.get(interface.id, usual)
    contacts: list[tuple[Contact, GalvanicMetal, GalvanicMetal]] = [
        ("outer contacts", *_farthest(sold.outer)),
        ("centre contacts", *_farthest(sold.inner)),
        *(
            ("cable conductor", metal_of(cable.centre_conductor.value), metal_of(interface.inner_plating.value))
            for cable in cables
        ),
        *(
            ("cable screen", metal_of(screen.surface), metal_of(interface.outer_plating.value))
            for cable in cables
            if (screen := screen_of(cable)) and screen.surface
        ),
    ]
    checks = [_check(*contact, exposure) for contact in contacts]
    return list({check.sentence + check.contact: check for check in checks}.values())


def metal_of(name: str) -> GalvanicMetal:
    """The metal at the surface of a material, a centre conductor or a screen of the catalogue."""
    return next(metal for metal in catalogue().galvanic_metals.values() if name in metal.found_as)


def _farthest(names: list[str]) -> tuple[GalvanicMetal, GalvanicMetal]:
    metals = [metal_of(name) for name in names]
    return max(combinations_with_replacement(metals, 2), key=lambda pair: _difference(*pair))


def _difference(first: GalvanicMetal, second: GalvanicMetal) -> float:
    """Of their anodic indexes [V]."""
    return round(abs(first.anodic_index_v.value - second.anodic_index_v.value), DIGITS)


def _check(contact: Contact, first: GalvanicMetal, second: GalvanicMetal, exposure: Exposure) -> GalvanicCheck:
    limit, site = catalogue().galvanic_limits[exposure].largest_difference_v, WEATHER_WORDS[exposure]
    difference = _difference(first, second)
    passed = difference <= limit.value
    origins = (first.anodic_index_v, second.anodic_index_v, limit)
    metals = f"{first.name} on {second.name}"
    verdict = "allowed" if passed else f"too far apart in the damp: {REMEDIES[contact]}"
    return GalvanicCheck(
        contact=contact,
        one=first.name,
        other=second.name,
        difference_v=difference,
        limit_v=limit.value,
        passed=passed,
        sentence=f"{metals.capitalize()}: {difference:.2f} V; {site}: up to {limit.value:.2f} V; {verdict}.",
        sources=list(dict.fromkeys(origin.source for origin in origins)),
        kinds=list(dict.fromkeys(origin.kind for origin in origins)),
    )
