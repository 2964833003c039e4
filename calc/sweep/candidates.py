"""The faults that explain a sweep, as answered."""

import numpy as np

from .arrays import RealArray
from .digits import four_figures
from .fit import Fit
from .places import JointPlace
from .results import Candidate, FittedSize
from .selection import INDISTINCT, Selection

__all__ = ["candidates_of"]

MOST_CANDIDATES = 6
CERTAIN_SIZE = 1.5  # of the logarithm: a size less well known than that is none


def candidates_of(selection: Selection, places: dict[int, JointPlace]) -> list[Candidate]:
    """The best fault of every joint, and other faults of the best joint that explain the sweep nearly as well."""
    best, intact = selection.best, selection.intact.criterion()
    joint, least = best.hypothesis.element, best.criterion()
    same_joint = [
        fit for fit in selection.faulty if fit.hypothesis.element == joint and fit.criterion() - least < INDISTINCT
    ]
    other_joints = [fit for at, fit in selection.best_of_joint.items() if at != joint and fit.criterion() < intact]
    chosen = sorted({id(fit): fit for fit in [best, *same_joint, *other_joints]}.values(), key=Fit.criterion)
    shown = [fit for fit in chosen if fit is best or bool((_log_deviations(fit) < CERTAIN_SIZE).all())]
    return [_candidate(fit, places, intact) for fit in shown[:MOST_CANDIDATES]]


def _candidate(fit: Fit, places: dict[int, JointPlace], intact: float) -> Candidate:
    fault = fit.hypothesis
    return Candidate(
        element=fault.element,
        joint=places[fault.element].name,
        kind=fault.kind.id,
        name=fault.kind.name,
        sizes=_fitted_sizes(fit),
        evidence=round(intact - fit.criterion(), 1),
        misfit=four_figures(fit.residual),
    )


def _log_deviations(fit: Fit) -> RealArray:
    """Standard deviations of the logarithms of the sizes: (sizes,)."""
    return np.sqrt(np.maximum(np.diag(fit.covariance)[fit.parameters.size :], 0.0))


def _fitted_sizes(fit: Fit) -> list[FittedSize]:
    deviations = np.minimum(_log_deviations(fit), CERTAIN_SIZE)
    return [
        FittedSize(
            name=size.name,
            unit=size.unit,
            value=four_figures(value),
            low=four_figures(value * np.exp(-deviation)),
            high=four_figures(value * np.exp(deviation)),
        )
        for size, value, deviation in zip(fit.hypothesis.kind.sizes, fit.sizes, deviations, strict=True)
    ]
