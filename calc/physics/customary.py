"""The cable that is customary on a family."""

from ..catalogue import catalogue, per_edition
from ..catalogue.defaults import customary_cable_of

__all__ = ["customary_cable"]


@per_edition(maxsize=256)
def customary_cable(family: str) -> str:
    """The id of the family's customary cable in the catalogue in force."""
    return customary_cable_of(catalogue().interfaces[family], catalogue())
