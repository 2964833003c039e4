"""Searching for the fault: the intact line, and every fault at every joint, each from several starts.

Starts are tried on some of the frequencies; what does best there is fitted to all of them. Hypotheses are compared
by the Bayesian information criterion: how much a fault lowers the objective of a fit, less log(numbers) for each of
its sizes.
"""

from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray
from .fit import Fit, fitted
from .model import LineModel
from .observation import Observation, Start
from .sampling import scattered
from .starts import (
    SEARCH_POINTS,
    SHORT_ROUNDS,
    aligned_parameters,
    estimated_starts,
    followed_upwards,
    lower_bands,
    screened_starts,
    wet_starts,
)

__all__ = ["HypothesisFits", "fit_hypotheses"]

ROUNDS = 30
ELIMINATIONS = 2
"""Times that short fits are made and the worse two thirds of the starts are dropped."""

MARGIN = 40.0
"""A fault whose criterion is as much worse than the best is dropped."""

MOST_FAULTS = 12
"""Faults that are fitted to the end, beside the best of each joint."""


class HypothesisFits(NamedTuple):
    """The intact line, and the best of each fault at each joint that was fitted to the end."""

    intact: Fit
    faulty: list[Fit]


def fit_hypotheses(line: LineModel, measured: ComplexArray) -> HypothesisFits:
    """Fit a line to a measured reflection, (frequencies,), intact and with each fault."""
    full = Observation.of(line, measured)
    coarse, bands = full.at(scattered(measured.size, SEARCH_POINTS)), lower_bands(full)
    no_sizes = np.zeros(0, dtype=np.float64)
    aligned = aligned_parameters(coarse)
    as_described = Start(None, np.zeros_like(aligned), no_sizes)
    intact_starts = [Start(None, aligned, no_sizes), *followed_upwards(bands, [as_described])]
    intact = min(fitted(coarse, intact_starts, ROUNDS), key=Fit.criterion)
    wet = followed_upwards(bands, wet_starts(bands))
    wet += [start._replace(parameters=intact.parameters) for start in wet]
    coarsest = coarse.at(np.arange(0, coarse.measured.size, 2, dtype=np.int64))
    starts = [*screened_starts(coarsest, aligned), *estimated_starts(coarse, intact), *wet]
    for _ in range(ELIMINATIONS):
        fits = fitted(coarse, starts, SHORT_ROUNDS)
        starts = [fit.start for fit in _promising(fits, max(len(fits) // 3, MOST_FAULTS))]
    converged = fitted(coarse, starts, ROUNDS)
    best_of_faults = list(_best_by(lambda fit: fit.hypothesis.number, converged).values())
    faulty = fitted(full, [fit.start for fit in _promising(best_of_faults, MOST_FAULTS, MARGIN)], ROUNDS)
    best = min(faulty, key=Fit.criterion)
    again = [intact.start, Start(None, best.parameters, no_sizes)]
    return HypothesisFits(min(fitted(full, again, ROUNDS), key=Fit.criterion), faulty)


def _promising(fits: list[Fit], most: int, margin: float = np.inf) -> list[Fit]:
    """The best of each joint and so many of all, none worse than the best by more than a margin."""
    ordered = sorted(fits, key=Fit.criterion)
    limit = ordered[0].criterion() + margin
    chosen = [*_best_by(lambda fit: fit.hypothesis.element, fits).values(), *ordered[:most]]
    return [fit for fit in {id(fit): fit for fit in chosen}.values() if fit.criterion() < limit]


def _best_by(key: Callable[[Fit], int], fits: list[Fit]) -> dict[int, Fit]:
    """The best fit of each key: a fault's number, or a joint's element."""
    return {key(fit): fit for fit in sorted(fits, key=Fit.criterion, reverse=True)}
