"""The catalogue: what is built in, and packs of a user's own laid over it. `catalogue()` is the one in force."""

from .edition import Edition, catalogue, in_force, per_edition
from .tables import Catalogue

__all__ = ["Catalogue", "Edition", "catalogue", "in_force", "per_edition"]
