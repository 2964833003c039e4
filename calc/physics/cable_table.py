"""One end of a cable's ratings with what is documented of its power: of one cable, or of many as columns."""

import numpy as np

from ..catalogue import catalogue, per_edition
from ..formulas.formula import Sourced
from .cable_ratings import CableRatings, CladCoefficients, bare_cable_ratings
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


@per_edition(maxsize=16)
def _table(cables: tuple[str, ...], end: RatingEnd) -> CableRatings[np.ndarray]:
    rows, figures, clad = _rows(), _figures(end), _clad()
    chosen = [rows[cable] for cable in cables]
    # take, unlike an index, leaves each column in one piece, which numpy passes faster
    return CableRatings._make([*figures.take(chosen, axis=1)[..., None], tuple(clad[row] for row in chosen)])


@per_edition(maxsize=1)
def _rows() -> dict[str, int]:
    return {cable: row for row, cable in enumerate(catalogue().cables)}


@per_edition(maxsize=2)
def _figures(end: RatingEnd) -> np.ndarray:
    """Each figure, in the order of the record, of every cable."""
    return np.array([cable_ratings(cable, end)[:-1] for cable in catalogue().cables], dtype=np.float64).T


@per_edition(maxsize=1)
def _clad() -> list[CladCoefficients | None]:
    """Of every cable, alike at both ends."""
    return [cable_ratings(cable, "low").clad[0] for cable in catalogue().cables]
