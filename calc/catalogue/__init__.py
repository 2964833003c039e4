"""The catalogue: what is built in, and packs of a user's own laid over it. `catalogue()` is the one in force."""

from jointwise.calc.catalogue.edition import Edition, catalogue, in_force, per_edition
from jointwise.calc.catalogue.tables import Catalogue

__all__ = ["Catalogue", "Edition", "catalogue", "in_force", "per_edition"]
