"""One end of a cable's ratings with what is documented of its power: of one cable, or of many as columns."""

from itertools import chain

import numpy as np

from ..catalogue import per_edition
from ..formulas.formula import Sourced
from .cable_ratings import CableRatings, bare_cable_ratings
from .evidence import documented_of_cable
from .ratings import RatingEnd

__all__ = ["cable_ratings", "table_of_cable_ratings"]


@per_edition(maxsize=256)
def cable_ratings(cable: str, end: RatingEnd) -> CableRatings[Sourced]:
    """Scalars of one end of a cable's ratings, each a `Sourced` float."""
    ratings = bare_cable_ratings(cable, end)
    if end == "high":
        return ratings
    documented = documented_of_cable(cable)
    return ratings._replace(documented_power_w=documented.power_w, computed_for_it_w=documented.computed_w)


def table_of_cable_ratings(cables: list[str], end: RatingEnd) -> CableRatings[np.ndarray]:
    """Columns of shape (len(cables), 1) of one end of the ratings."""
    return _table(tuple(cables), end)


@per_edition(maxsize=64)
def _table(cables: tuple[str, ...], end: RatingEnd) -> CableRatings[np.ndarray]:
    *columns, clad = zip(*(cable_ratings(cable, end) for cable in cables), strict=True)
    figures = (np.array(column, dtype=np.float64)[:, None] for column in columns)
    return CableRatings._make([*figures, tuple(chain.from_iterable(clad))])
