"""One end of a family's ratings with what is documented of its power: of one family, or of many as columns."""

import numpy as np

from ..catalogue import per_edition
from ..formulas.formula import Sourced
from .evidence import documented_of_family
from .ratings import RatingEnd, Ratings, bare_ratings

__all__ = ["family_ratings", "table_ratings"]


@per_edition(maxsize=256)
def family_ratings(family: str, end: RatingEnd) -> Ratings[Sourced]:
    """One end of a family's ratings, each number with its source. Raises KeyError for an unknown family."""
    ratings = bare_ratings(family, end)
    if end == "high":
        return ratings
    documented = documented_of_family(family)
    return ratings._replace(documented_power_w=documented.power_w, computed_for_it_w=documented.computed_w)


def table_ratings(families: list[str], end: RatingEnd) -> Ratings[np.ndarray]:
    """One end of the ratings of many families, as columns of shape (len(families), 1)."""
    return _table(tuple(families), end)


@per_edition(maxsize=16)
def _table(families: tuple[str, ...], end: RatingEnd) -> Ratings[np.ndarray]:
    rows = [family_ratings(family, end) for family in families]
    return Ratings._make(np.array(figures, dtype=np.float64)[:, None] for figures in zip(*rows, strict=True))
