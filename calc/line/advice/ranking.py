"""Which changes make a difference, and which of them come first.

Rules of thumb of the trade (common practice): first a line that stands its power, then what
reaches the antenna; and of alternatives the one that is easiest to handle, if it brings most of
what the best one does.
"""

import math
from collections.abc import Callable, Hashable
from typing import NamedTuple

import numpy as np

from .candidates import Candidate
from .promises import Promise

__all__ = ["Gain", "Ranked", "best_first", "gain_of", "helps_margin"]

NOTICED_DB = 0.1
"""Smallest gain at the antenna that anyone would notice on transmit (common practice)."""

FINE_DB = 3.0
"""Margin from which on more of it makes no difference."""

MARGIN_NOTICED_DB = 0.5
"""Smallest gain of a margin below that which counts (common practice)."""

MOST_OF = 0.75
"""Share of the best gain, in dB, that an easier alternative must bring to come before it (common practice)."""

ALTERNATIVES = 4
"""Of changes about the same parts that make a difference, so many are listed."""

MOST_ALIKE = 4
"""Of changes that make no difference, so many are listed."""


class Gain(NamedTuple):
    """Over the draws: median, 10th and 90th percentile of what is gained at the antenna [dB]."""

    median_db: float
    low_db: float
    high_db: float

    @property
    def noticed(self) -> bool:
        """Whether it is larger than its spread and than what anyone would notice."""
        return self.low_db > 0 and self.median_db >= NOTICED_DB

    @property
    def costs_power(self) -> bool:
        """Whether less reaches the antenna by as much as would be noticed."""
        return self.median_db <= -NOTICED_DB


class Ranked(NamedTuple):
    """A change with what it brings."""

    candidate: Candidate
    gain: Gain
    promise: Promise
    same: bool


def gain_of(draws_db: np.ndarray) -> list[Gain]:
    """Of each change by its draws: candidates x draws."""
    low, median, high = np.percentile(draws_db, [10, 50, 90], axis=1)
    return [Gain(*map(float, one)) for one in zip(median, low, high, strict=True)]


def helps_margin(before: Promise, after: Promise) -> bool:
    """Whether a line that is refused, over its limit or tight gains by the change."""
    if math.isnan(after.margin_db):
        return False
    if math.isnan(before.margin_db):
        return True
    return before.margin_db < FINE_DB and after.margin_db - before.margin_db >= MARGIN_NOTICED_DB


def best_first(ranked: list[Ranked], effort: Callable[[Candidate], tuple[float, ...]]) -> list[Ranked]:
    """In the order of what they are worth, `effort` being how hard each is to handle; alternatives are cut short."""
    differ = [one for one in ranked if not one.same]
    alike = sorted((one for one in ranked if one.same), key=lambda one: (-_state(one), -one.gain.median_db))
    about: dict[Hashable, list[Ranked]] = {}
    for one in differ:
        about.setdefault((one.candidate.kind, one.candidate.about), []).append(one)
    worth: dict[int, tuple[float, ...]] = {}
    kept: list[Ranked] = []
    for alternatives in about.values():
        alternatives.sort(key=_worth)
        best = alternatives[0]
        near = [one for one in alternatives if _is_near(one, best)]
        first = min(near, key=lambda one: effort(one.candidate))
        # the easiest stands for the best, so that it comes before it
        worth[id(first)] = (*_worth(best)[:-1], -math.inf)
        alternatives.remove(first)
        kept += [first, *alternatives[: ALTERNATIVES - 1]]
    kept.sort(key=lambda one: worth.get(id(one), _worth(one)))
    return kept + alike[:MOST_ALIKE]


def _is_near(one: Ranked, best: Ranked) -> bool:
    if _state(one) < _state(best):
        return False
    return one.gain.median_db >= MOST_OF * best.gain.median_db


def _state(one: Ranked) -> float:
    """How the line then stands its power: margin up to where it is fine, below all if a part is still refused [dB]."""
    margin = one.promise.margin_db
    return -math.inf if math.isnan(margin) else min(margin, FINE_DB)


def _worth(one: Ranked) -> tuple[float, ...]:
    """The best first."""
    return -_state(one), -round(one.gain.median_db, 1), len(one.candidate.replaced), -one.gain.median_db
