"""What the search for a fault tries: joints moved, altered stretches by their edge, joints taken for elsewhere."""

import numpy as np
import pytest
import skrf
from skrf.media import DefinedGammaZ0
from swept_lines import CELL_M, FREQUENCY, MATCHED, line_of, usual

from jointwise.calc.feedline.elements import CableRun, KnownEnd
from jointwise.calc.feedline.feedline import feedline_at
from jointwise.calc.physics.columns import spot_column
from jointwise.calc.sweep.dark_joints import dark_fits
from jointwise.calc.sweep.faults import AT_A_JOINT, IN_A_CABLE, PlacedFault
from jointwise.calc.sweep.fit import fitted
from jointwise.calc.sweep.mistaken_joints import mistaken_fits
from jointwise.calc.sweep.moves import Move, moved, moved_cables, shown_by
from jointwise.calc.sweep.prediction import predicted
from jointwise.calc.sweep.prior import SweepSettings
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.sweep.screening import screened_stretches
from jointwise.calc.sweep.search import Hypotheses, fit_hypotheses
from jointwise.calc.sweep.selection import selection_of
from jointwise.calc.sweep.settling import settled
from jointwise.calc.sweep.starts import place_of
from jointwise.calc.sweep.swept_line import swept_line

[SOAKED] = [kind for kind in IN_A_CABLE if kind.id == "soaked"]
[SQUEEZED] = [kind for kind in IN_A_CABLE if kind.id == "capacitance"]
[GAP] = [kind for kind in AT_A_JOINT if kind.id == "gap"]
[SHORT], [SHORTED] = ([kind for kind in kinds if kind.id == "short"] for kinds in (AT_A_JOINT, IN_A_CABLE))


@pytest.mark.parametrize(("cable", "other", "longer_m"), [(0, None, 0.3), (0, 1, -0.2), (0, 2, 0.25), (2, None, -0.1)])
def test_what_a_move_shows_is_what_the_moved_line_shows(cable, other, longer_m):
    """Of joints moved alone, or with those behind them up to a later cable."""
    line = line_of([6.0, 3.0, 8.0])
    cables = list(line.cables)
    fit = fitted(line, predicted(line, usual(line)).shown, usual(line), (), 0)
    move = Move(cables[cable], None if other is None else cables[other], longer_m, None)

    cables_moved = moved_cables(line, fit, move.cable, move.next, np.array([longer_m]))
    [shown] = shown_by(line, fit, fit.prediction.back(), move, cables_moved)

    _, x = moved(line, fit, move)
    assert shown == pytest.approx(predicted(line, x).shown - fit.prediction.shown, abs=1e-9)


def test_a_wet_stretch_slows_and_loses_as_a_medium_does():
    """Against a chain of scikit-rf: water raises a cable's permittivity and its loss tangent.

    Source: impedance and velocity fall as the root of the permittivity rises (microwave_textbook, TEM line).
    """
    elements, permittivity, tangent, length_m, place_m = [CableRun(cable="rg_213", length_m=9.0)], 1.4, 0.03, 0.7, 4.0
    request = SweepRequest(elements=elements, load=MATCHED, touchstone="")
    line = swept_line(
        feedline_at(request, elements, MATCHED, spot_column(1e8)), FREQUENCY, SweepSettings(0.05, 6, MATCHED)
    )
    [at] = line.cables
    wanted = length_m, permittivity**-0.5, tangent
    sizes = [np.log(value / size.middling) / size.spread for value, size in zip(wanted, SOAKED.sizes, strict=True)]
    band = skrf.Frequency.from_f(FREQUENCY, unit="Hz")
    gamma, impedance = line.propagation(usual(line), at), line.cable_impedance(usual(line), at)
    root = permittivity**0.5
    wet_gamma = gamma * root + (gamma * root).imag * tangent / 2
    dry = DefinedGammaZ0(band, gamma=gamma, z0=impedance, z0_port=50)
    wet = DefinedGammaZ0(band, gamma=wet_gamma, z0=impedance / root, z0_port=50)
    chain = dry.line(place_m, "m") ** wet.line(length_m, "m") ** dry.line(9.0 - place_m - length_m, "m")

    shown = predicted(line, np.array([*usual(line), *sizes, 0.0]), [PlacedFault(SOAKED, at, place_m, 0.1)]).shown

    assert shown == pytest.approx(chain.s[:, 0, 0], abs=1e-9)


@pytest.mark.parametrize("absorbed", [False, True])
def test_a_stretch_is_found_by_one_of_its_edges(absorbed):
    """Its length and its delay too, whether or not the cable was fitted longer for it."""
    line, place_m, length_m = line_of([20.0, 5.0]), 7.0, 0.52
    [cable, _] = line.cables
    own = np.log(length_m / SOAKED.sizes[0].middling) / SOAKED.sizes[0].spread
    delay_m = SOAKED.stretch(np.array([own, 0.7, 0.0])).delay_m
    shorter = usual(line)
    if absorbed:
        shorter[line.offsets[cable]] -= delay_m / line.cable(cable).length_m / line.prior.length
    measured = predicted(
        line, np.array([*shorter, own, 0.7, 0.0, 0.0]), [PlacedFault(SOAKED, cable, place_m, 0.1)]
    ).shown

    fit = fitted(line, measured, usual(line), (), 0)
    best = screened_stretches(line, fit, cable, place_m + (0.0 if absorbed else length_m), CELL_M / 4)[0]

    assert best.fault.kind is SOAKED
    assert best.fault.about_m == pytest.approx(place_m, abs=CELL_M / 2)
    assert SOAKED.sizes[0].of(best.sizes[0]) == pytest.approx(length_m, abs=CELL_M / 2)
    assert (best.shorter_m > 0) == absorbed


def test_a_joint_that_was_taken_for_where_a_kink_is():
    """A kink sends more of an echo than the joint near it, and a fit takes it for the joint."""
    line = line_of([7.0, 3.0, 15.0], KnownEnd(what="short"))
    first, second, third = line.cables
    kink_m, kink = 0.45, PlacedFault(SQUEEZED, second, 0.45, 0.05)
    measured = predicted(line, np.array([*usual(line), 0.3, 0.0]), [kink]).shown
    taken = usual(line)
    taken[[line.offsets[at] for at in (first, third)]] = np.array([kink_m / 7.0, -kink_m / 15.0]) / line.prior.length
    intact = fitted(line, measured, taken, (), 10)

    best = max(mistaken_fits(line, measured, CELL_M, intact), key=lambda fit: fit.evidence)

    assert intact.x[line.offsets[first]] * line.prior.length * 7.0 > 2 * CELL_M
    assert best.evidence > intact.evidence + 100
    place = place_of(line, best.faults[-1], best.x[line.parameter_count :])
    assert place == pytest.approx(7.0 + kink_m, abs=CELL_M)


def test_an_open_contact_whose_echo_was_taken_for_the_end():
    """Each joint is tried: a fit of the intact line makes its cables shorter until its end is where the contact is."""
    line = line_of([17.0, 1.2], KnownEnd(what="open"))
    middle = list(line.joints)[1]
    true = usual(line)
    true[[line.offsets[at] for at in line.cables]] = 0.4, 1.0
    measured = predicted(line, np.append(true, [-2.0, 0.0]), [PlacedFault(GAP, middle)]).shown

    best = max(dark_fits(line, measured, CELL_M, -np.inf), key=lambda fit: fit.evidence)

    assert best.faults[0].part == middle
    assert best.misfit < 0.01


@pytest.mark.parametrize(("noise", "named", "beside"), [(0.1, "joint", ["cable"]), (0.01, "cable", [])])
def test_a_short_in_a_cable_is_laid_to_the_joint_that_may_be_there(noise, named, beside):
    """A short is seldom met in a cable: the joint that usual lengths bring there is named unless it explains less."""
    line, away_m, draw = line_of([17.0, 5.0], KnownEnd(what="open")), 0.45, np.random.default_rng(1)
    [first, second], middle = line.cables, list(line.joints)[1]
    in_cable, at_joint = PlacedFault(SHORTED, second, away_m, CELL_M / 4), PlacedFault(SHORT, middle)
    here, there = np.append(usual(line), np.zeros(3)), np.append(usual(line), np.zeros(2))
    there[line.offsets[first]] = away_m / 17.0 / line.prior.length
    seen = predicted(line, here, [in_cable]).shown
    seen = seen + noise * (draw.normal(size=FREQUENCY.size) + 1j * draw.normal(size=FREQUENCY.size))
    fits = [fitted(line, seen, here, [in_cable], 20), fitted(line, seen, there, [at_joint], 20)]

    found = selection_of(line, Hypotheses(fitted(line, seen, usual(line), (), 20), fits, [], []), CELL_M)

    [fault] = found.named
    assert fault.suspicion.where == named
    assert [one.where for one in fault.beside] == beside


def test_joints_at_rest_stay():
    """A fit that is right is not moved."""
    line = line_of([6.0, 3.0])
    fit = fitted(line, predicted(line, usual(line)).shown, usual(line))

    assert settled(line, predicted(line, usual(line)).shown, fit, CELL_M) is fit


def test_what_no_line_explains_is_given_up():
    """Noise has no second fault looked for, and its fits are kept for the verdict that says so."""
    line = line_of([6.0, 3.0])
    draw = np.random.default_rng(3)

    found = fit_hypotheses(
        line, 0.5 * draw.normal(size=FREQUENCY.size) + 0.5j * draw.normal(size=FREQUENCY.size), CELL_M
    )

    assert found.intact.misfit > 0.5
    assert not found.double
    assert not found.swapped


def test_a_wet_stretch_taken_for_a_leak_at_its_edge():
    """Water in a long stretch of cable begins as a leak does; from there every length is tried."""
    line = line_of([19.0])
    [cable] = line.cables
    soaked = np.array([1.2, 0.6, 0.0, 0.0])
    measured = predicted(line, np.append(usual(line), soaked), [PlacedFault(SOAKED, cable, 6.7, 0.1)]).shown

    found = fit_hypotheses(line, measured, CELL_M).single[0]

    assert found.faults[-1].kind.id == "soaked"
    assert place_of(line, found.faults[-1], found.x[line.parameter_count :]) == pytest.approx(7.5, abs=0.2)
