"""Moving the joints of a fitted line to where the sweep shows them.

A fit follows a joint's echo only from within about half a cell of distance, and cables are seldom so well known: from
farther it leaves the joint where it is and lays its echo to something else. So each joint is tried all along where it
may be, alone and with all that lies behind it.
"""

import numpy as np

from .arrays import ComplexArray
from .fit import Fit, fitted
from .moves import Move, changes_of, lengths_of, moved, moved_cables, prior_gain, shown_by
from .screening import FollowedScore, thinned
from .swept_line import SweptLine

__all__ = ["settled"]

MOST_MOVES, MOST_TRIED, TRIED_FITS = 8, 800, 3
"""Moves one after another, and for each of them so many tried and so many fitted."""
TRIED_JOINTS = tuple(np.array([0.0, other, 0.0]) for other in (-1.5, 0.0, 1.5))
"""Parameters of a moved joint: where it was taken to be it was fitted to what is there."""
ROUNDS = 5
LEAST_GAIN = 2.0
"""Evidence that a move must win."""


def settled(line: SweptLine, measured: ComplexArray, fit: Fit, cell_m: float) -> Fit:
    """The fit after a few moves of its joints; the line is that of the fit, with cells of so many metres."""
    for _ in range(MOST_MOVES):
        starts = [moved(line, fit, move) for move in _best_moves(line, fit, cell_m / 4)]
        fits = [fitted(line, measured, x, faults, ROUNDS) for faults, x in starts]
        best = max(fits, key=lambda one: one.evidence, default=fit)
        if best.evidence <= fit.evidence + LEAST_GAIN:
            break
        fit = best
    return fit


def _best_moves(line: SweptLine, fit: Fit, step_m: float) -> list[Move]:
    """The moves in steps of so many metres that promise most."""
    line, fit = thinned(line, fit)
    changes = changes_of(line)
    score, back, found = FollowedScore(fit), fit.prediction.back(), []
    for cable, behind in changes:
        longer = lengths_of(line, fit, cable, behind, step_m, MOST_TRIED // len(changes))
        if not longer.size:
            continue
        prior, cables = prior_gain(line, fit, cable, behind, longer), moved_cables(line, fit, cable, behind, longer)
        for joints in (None, *TRIED_JOINTS):
            gains = prior + score.of(shown_by(line, fit, back, Move(cable, behind, 0.0, joints), cables))
            peak = int(np.argmax(gains))
            if gains[peak] > LEAST_GAIN:
                found.append((float(gains[peak]), Move(cable, behind, float(longer[peak]), joints)))
    return [move for _, move in sorted(found, key=lambda one: -one[0])[:TRIED_FITS]]
