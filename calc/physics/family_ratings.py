"""One end of a family's ratings with what is documented of its power: of one family, or of many as columns."""

import numpy as np

from ..catalogue import catalogue, per_edition
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
    rows, figures = _rows(), _figures(end)
    # take, unlike an index, leaves each column in one piece, which numpy passes faster
    return Ratings._make(figures.take([rows[family] for family in families], axis=1)[..., None])


@per_edition(maxsize=1)
def _rows() -> dict[str, int]:
    return {family: row for row, family in enumerate(catalogue().interfaces)}


@per_edition(maxsize=2)
def _figures(end: RatingEnd) -> np.ndarray:
    """Each figure, in the order of the record, of every family."""
    return np.array([family_ratings(family, end) for family in catalogue().interfaces], dtype=np.float64).T
