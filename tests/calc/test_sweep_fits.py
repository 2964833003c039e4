"""Fits of a swept line, many at a time: the best stay those that they would be, each fitted to its end."""

import numpy as np
import pytest
from swept_lines import CELL_M, FREQUENCY, line_of, usual

from jointwise.calc.sweep import screening
from jointwise.calc.sweep.alignment import followed_up, lower_bands
from jointwise.calc.sweep.faults import AT_A_JOINT, PlacedFault
from jointwise.calc.sweep.fit import Descent, fitted
from jointwise.calc.sweep.prediction import predicted
from jointwise.calc.sweep.racing import raced
from jointwise.calc.sweep.screening import FollowedScore, place_grid, screened, thinned
from jointwise.calc.sweep.starts import trial_starts

[RESISTANCE] = [kind for kind in AT_A_JOINT if kind.id == "resistance"]
ROUNDS = 10


@pytest.fixture(scope="module")
def line():
    """Two cables between three joints."""
    return line_of([6.0, 3.0])


@pytest.fixture(scope="module")
def measured(line):
    """Shown with a bad contact at the middle joint, cables nearly as described, and some noise."""
    middle, x, draw = list(line.joints)[1], usual(line), np.random.default_rng(5)
    x[[line.offsets[at] for at in line.cables]] = 0.1, -0.1
    shown = predicted(line, np.append(x, 0.8), [PlacedFault(RESISTANCE, middle)]).shown
    return shown + 0.002 * (draw.normal(size=FREQUENCY.size) + 1j * draw.normal(size=FREQUENCY.size))


@pytest.fixture(scope="module")
def intact(line, measured):
    """The fit without the fault."""
    return fitted(line, measured, usual(line), (), ROUNDS)


def test_a_fit_goes_on_where_it_stopped(line, measured):
    """Damping among it: two steps and three are five."""
    descent = Descent(line, measured, usual(line))
    descent.go(2)
    descent.go(3)

    assert descent.fit().x.tolist() == fitted(line, measured, usual(line), (), 5).x.tolist()


def test_who_wins_a_race_would_win_it_to_the_end(line, measured, intact):
    """Some are given up on the way, the best is not."""
    starts = trial_starts(line, intact, place_grid(line, CELL_M / 2), 12)
    every = [fitted(line, measured, x, faults, ROUNDS) for faults, x in starts]

    won = raced(line, measured, starts, 2, ROUNDS)

    assert 0 < len(won) < len(starts)
    assert max(fit.evidence for fit in won) == max(fit.evidence for fit in every)


def test_a_race_of_none_has_no_winner(line, measured):
    """Nothing that looks like a fault leaves nothing to fit."""
    assert raced(line, measured, [], 2, ROUNDS) == []


def test_an_alignment_far_behind_is_given_up(line, measured):
    """One with cables of other lengths than the sweep shows, in the first band that tells."""
    far = usual(line)
    far[[line.offsets[at] for at in line.cables]] = 3.0
    bands = lower_bands(line)

    followed = followed_up(line, measured, bands[1:], [((), far), ((), usual(line))])

    assert [len(fits) for fits in followed] == [len(bands) - 1]
    alone = followed_up(line, measured, bands[1:], [((), usual(line))])
    assert followed[0][-1].x.tolist() == alone[0][-1].x.tolist()


@pytest.mark.parametrize("rounds", [0, ROUNDS])
def test_no_change_wins_nothing(line, measured, rounds):
    """At some of the points, and before the end of a fit, the parameters alone win something, which is no trial's."""
    fit = fitted(line, measured, usual(line), (), rounds)
    own, few = thinned(line, fit)

    [won] = FollowedScore(few).of(np.zeros((1, own.frequency_hz.size), dtype=np.complex128))

    assert own.frequency_hz.size < line.frequency_hz.size
    assert won == pytest.approx(0.0, abs=1e-6)


def test_half_of_the_points_tell_the_same_fault(line, intact, monkeypatch):
    """The bad contact first, and with about the evidence that all of the points give it."""
    places = place_grid(line, CELL_M / 2)
    by_some = screened(line, intact, places)[0]
    monkeypatch.setattr(screening, "MOST_SCREENED", FREQUENCY.size)
    by_all = screened(line, intact, places)[0]

    assert by_some.fault == by_all.fault
    assert (by_all.fault.kind, by_all.fault.part) == (RESISTANCE, list(line.joints)[1])
    assert by_some.score == pytest.approx(by_all.score, rel=0.3)


@pytest.mark.parametrize(("cables", "points"), [(2, 240), (6, 222), (8, 173)])
def test_a_line_of_many_parts_is_fitted_at_fewer_points(cables, points):
    """Of few parts at all of them; of many in proportion, so that its answer takes no longer."""
    assert line_of([5.0] * cables).points_of(240) == points
