"""Which changes make a difference, and which of them come first.

Rules of thumb of the trade (common practice): first a line that stands its power, then what
reaches the antenna; and of alternatives the one that is easiest to handle, if it brings most of
what the best one does.
"""

import math
from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from .candidate import Candidate
from .effort import NOTICED_DB

__all__ = ["Gain", "Ranked", "best_first", "gains_of", "ranked", "stands"]

LOST_DB = 0.02
"""More than this is no rounding any more: a change that loses it is not offered."""

FINE_DB = 3.0
"""Margin from which on more of it makes no difference."""

MARGIN_NOTICED_DB = 0.5
"""Smallest gain of a margin below that which counts (common practice)."""

MOST_OF = 0.85
"""Share of the best gain that an easier alternative must bring to come before it (common practice)."""

ALTERNATIVES = 3
"""Of changes about the same parts so many are listed."""

ASKED_OF = ("joint", "ends", "everywhere", "adapter")
"""Kinds of change of which it is worth saying that they make no difference: many believe they do."""

MOST_LISTED = 12
MOST_ALIKE = 4
"""Of changes that make a difference, and of those that make none."""


class Gain(NamedTuple):
    """Over the draws: median, 10th and 90th percentile of what is gained at the antenna [dB]."""

    median_db: float
    low_db: float
    high_db: float


class Ranked(NamedTuple):
    """A change with what it brings."""

    candidate: Candidate
    gain: Gain
    worth_db: float
    """Gained at the antenna beyond what it must bring to be worth the work."""
    margin_db: float
    """Smallest of the changed line; not a number where a part of it is refused."""
    same: bool
    handling: tuple[float, ...]


def gains_of(draws_db: np.ndarray) -> list[Gain]:
    """Of each change by its draws: candidates x draws."""
    low, median, high = np.percentile(draws_db, [10, 50, 90], axis=1).tolist()
    return [Gain(*one) for one in zip(median, low, high, strict=True)]


def stands(margin_db: float) -> bool:
    """Whether a line stands its power with a margin to spare, so that more of it is no gain."""
    return margin_db >= FINE_DB


def ranked(
    candidate: Candidate,
    gain: Gain,
    toll_db: float,
    margins_db: tuple[float, float],
    handling: Callable[[Candidate], tuple[float, ...]],
) -> Ranked | None:
    """A change held against the line as it is, by both smallest margins; none where it is not to be offered.

    It is not where less reaches the antenna, or brings more without being worth the
    work, or puts a line over its limit.
    """
    before, after = margins_db
    helps = _helps_margin(before, after)
    noticed = gain.low_db > 0 and gain.median_db >= NOTICED_DB
    worth = gain.median_db - toll_db
    over = after < 0 and not after > before
    if not math.isfinite(gain.median_db) or gain.median_db < -LOST_DB or over or (noticed and worth < 0 and not helps):
        return None
    return Ranked(candidate, gain, worth, after, not noticed and not helps, handling(candidate))


def best_first(found: list[Ranked]) -> list[Ranked]:
    """The best first, with few alternatives each; behind them some that make no difference."""
    differ = [one for group in _about([one for one in found if not one.same]) for one in _alternatives(group)]
    differ.sort(key=lambda pair: pair[0])
    asked = [one for one in found if one.same and one.candidate.kind in ASKED_OF and one.gain.median_db > 0]
    alike = [min(group, key=lambda one: one.handling) for group in _about(asked)]
    alike.sort(key=lambda one: -one.gain.median_db)
    return [one for _, one in differ[:MOST_LISTED]] + alike[:MOST_ALIKE]


def _helps_margin(before: float, after: float) -> bool:
    """Whether a line that is refused, over its limit or tight gains by the change."""
    if math.isnan(after):
        return False
    return math.isnan(before) or (not stands(before) and after - before >= MARGIN_NOTICED_DB)


def _about(found: list[Ranked]) -> list[list[Ranked]]:
    """Changes about the same parts."""
    groups: dict[tuple[object, ...], list[Ranked]] = {}
    for one in found:
        groups.setdefault((one.candidate.kind, one.candidate.about), []).append(one)
    return list(groups.values())


def _alternatives(group: list[Ranked]) -> list[tuple[tuple[float, ...], Ranked]]:
    """The easiest that brings most of what the best does, in the best one's place; then those that bring most."""
    group = sorted(group, key=_place)
    best = group[0]
    enough_db = MOST_OF * best.worth_db if best.worth_db > 0 else -math.inf
    near = [one for one in group if _state(one) >= _state(best) and one.worth_db >= enough_db]
    first = min(near, key=lambda one: one.handling)
    others = [one for one in group if one is not first][: ALTERNATIVES - 1]
    return [(_place(best)[:-1], first), *((_place(one), one) for one in others)]


def _state(one: Ranked) -> float:
    """How the line then stands its power: margin in whole decibels up to where it is fine; below all if refused."""
    return -math.inf if math.isnan(one.margin_db) else float(np.floor(min(one.margin_db, FINE_DB)))


def _place(one: Ranked) -> tuple[float, ...]:
    return -_state(one), -round(one.worth_db, 1), len(one.candidate.replaced), -one.gain.median_db
