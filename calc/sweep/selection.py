"""Choosing between the hypotheses: no fault, or one at one of the joints."""

from typing import NamedTuple

import numpy as np

from ..physics.ratings import assumption
from .fit import Fit
from .results import Finding
from .search import HypothesisFits

__all__ = ["Selection", "selection_of"]

INDISTINCT = 6.0
"""Evidence within which two joints explain a sweep alike: odds of 20 to 1."""

NO_FIT = 0.1
"""What the best explanation leaves, rms of the reflection, above which the line must be another one."""

MOST_CERTAIN = 0.99
"""The highest probability that is stated: the faults thought of are not all there are."""


class Selection(NamedTuple):
    """What the fits say. Joints are given by their elements."""

    finding: Finding
    intact: Fit
    best: Fit
    """Of the faults."""
    found: bool
    """The evidence for a fault is strong enough."""
    faulty: list[Fit]
    """The best of every fault that was fitted to the end."""
    best_of_joint: dict[int, Fit]
    """The best joint first."""
    indistinct: list[int]
    """Joints that explain the sweep as well as the best, itself included."""
    probabilities: dict[int, float]
    """Of each joint that it is the bad one, if one is; empty where nothing is found."""

    @property
    def selected(self) -> Fit:
        """The fit that explains the sweep."""
        return self.best if self.found else self.intact


def selection_of(fits: HypothesisFits) -> Selection:
    """Compare the fits by the Bayesian information criterion."""
    ordered = sorted(fits.faulty, key=Fit.criterion)
    best = ordered[0]
    best_of_joint: dict[int, Fit] = {}
    for fit in ordered:
        best_of_joint.setdefault(fit.hypothesis.element, fit)
    found = fits.intact.criterion() - best.criterion() > float(assumption("sweep_evidence"))
    selected = best if found else fits.intact
    indistinct = [joint for joint, fit in best_of_joint.items() if fit.criterion() - best.criterion() < INDISTINCT]
    return Selection(
        finding=_finding(selected.residual, found, indistinct),
        intact=fits.intact,
        best=best,
        found=found,
        faulty=fits.faulty,
        best_of_joint=best_of_joint,
        indistinct=indistinct,
        probabilities=_probabilities(best_of_joint) if found else {},
    )


def _finding(residual: float, found: bool, indistinct: list[int]) -> Finding:
    if residual > NO_FIT:
        return "no fit"
    if not found:
        return "sound"
    return "unclear" if len(indistinct) > 1 else "suspect"


def _probabilities(best_of_joint: dict[int, Fit]) -> dict[int, float]:
    best = min(map(Fit.criterion, best_of_joint.values()))
    odds = {joint: float(np.exp(-(fit.criterion() - best) / 2)) for joint, fit in best_of_joint.items()}
    total = sum(odds.values())
    return {joint: round(min(one / total, MOST_CERTAIN), 3) for joint, one in odds.items()}
