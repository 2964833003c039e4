"""The model behind a sweep's verdict: derivatives, faults put in without fitting, the echoes of an unknown line."""

import re

import numpy as np
import pytest
import skrf
from lines import ask, touchstone
from scipy.stats import multivariate_t
from skrf.media import DefinedGammaZ0
from test_sweep import medium_of

from jointwise.calc.feedline.elements import CableRun, GivenVswr, Joint, KnownEnd, Part
from jointwise.calc.feedline.feedline import feedline_at
from jointwise.calc.physics.columns import spot_column
from jointwise.calc.sweep.faults import AT_A_JOINT, CAPACITIVE, IN_A_CABLE, PlacedFault
from jointwise.calc.sweep.fit import fitted
from jointwise.calc.sweep.prediction import predicted
from jointwise.calc.sweep.prior import SweepSettings, load_basis
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.sweep.results import Deviation
from jointwise.calc.sweep.sampling import scattered
from jointwise.calc.sweep.screening import FollowedScore, place_grid, screened
from jointwise.calc.sweep.settling import settled
from jointwise.calc.sweep.swept_line import swept_line
from jointwise.calc.sweep.usual import LEAST_FREEDOM, SMOOTH, pull_of, unusual
from jointwise.calc.sweep.verdict import assumed_sentences

ELEMENTS = [
    Joint(family="uhf"),
    CableRun(cable="rg_58", length_m=7.0),
    Joint(family="n", adapter_to="bnc"),
    Part(loss_db=0.3, vswr=1.2),
    CableRun(cable="rg_213", length_m=12.0),
    Joint(family="uhf"),
]
SHORT = KnownEnd(what="short")
FREQUENCY = np.linspace(1e6, 5e8, 120)
FIRST_JOINT, FIRST_CABLE, SECOND_CABLE = 0, 1, 5
FAULTS = [
    *([PlacedFault(kind, FIRST_JOINT)] for kind in AT_A_JOINT),
    *([PlacedFault(kind, FIRST_CABLE, 3.0, 0.1)] for kind in IN_A_CABLE),
    # as long as the cable allows
    *([PlacedFault(kind, FIRST_CABLE, 6.95, 0.02)] for kind in IN_A_CABLE if kind.is_stretch),
    [PlacedFault(AT_A_JOINT[0], FIRST_JOINT), PlacedFault(IN_A_CABLE[5], SECOND_CABLE, 4.0, 0.2)],
]


def line():
    """A line with every kind of part, swept with a short at its end."""
    request = SweepRequest(elements=ELEMENTS, load=SHORT, touchstone="")
    return swept_line(feedline_at(request, ELEMENTS, SHORT, spot_column(1e8)), FREQUENCY, SweepSettings(0.02, 6, SHORT))


@pytest.mark.parametrize("faults", FAULTS, ids=lambda faults: " ".join(fault.kind.id for fault in faults))
def test_derivatives_are_differences(faults):
    """The reflection moves with each parameter as its derivative says."""
    own, step = line(), 1e-5
    count = own.parameter_count + sum(fault.parameter_count for fault in faults)
    x = np.random.default_rng(0).normal(size=count) * 0.5
    # how impedance wanders along a cable counts to first order only, which is enough for a smooth one
    for cable in own.cables:
        x[own.waves(cable)] *= 0.2
    at = predicted(own, x, faults)

    for number in range(count):
        moved = x.copy()
        moved[number] += step
        difference = (predicted(own, moved, faults).shown - at.shown) / step
        assert np.abs(difference - at.slopes[number]).max() <= 0.05 * np.abs(difference).max() + 1e-9


def test_waves_too_short_for_low_frequencies_stay_as_they_are():
    """Where the wavelengths of a part of a sweep meet no wave of a cable, a fit of that part leaves it alone."""
    own = line()
    low = own.at(np.arange(20))
    x = np.random.default_rng(0).normal(size=own.parameter_count) * 0.2
    measured = predicted(own, np.zeros(own.parameter_count)).shown[:20]

    found = fitted(low, measured, x, (), 3).x

    left = np.setdiff1d(np.arange(x.size), low.free(x.size))
    met = [low.waves_met(cable) for cable in low.cables]
    assert left.size > 50
    assert np.array_equal(found[left], x[left])
    assert all(np.any(found[waves] != x[waves]) for waves in met)
    assert own.free(x.size).size == x.size


@pytest.mark.parametrize("size", [0.05, 0.3, 1.0, 2.0])
def test_waves_of_one_cable_are_as_unusual_as_their_common_size_is(size):
    """The density of a cable's waves is scipy.stats.multivariate_t's, and a fit is drawn along its slope."""
    own = line()
    x = np.random.default_rng(0).normal(size=own.parameter_count) * 0.7
    for cable in own.cables:
        x[own.waves(cable)] *= size
    groups = [x[own.waves(cable)] for cable in own.cables]

    others = float(x @ x) - sum(float(waves @ waves) for waves in groups)
    densities = [
        multivariate_t(shape=np.eye(waves.size), df=max(waves.size * SMOOTH**2, LEAST_FREEDOM)) for waves in groups
    ]
    expected = others + 2 * sum(
        one.logpdf(0 * waves) - one.logpdf(waves) for one, waves in zip(densities, groups, strict=True)
    )
    assert unusual(own, x) == pytest.approx(expected)
    step = 1e-5 * np.random.default_rng(1).normal(size=x.size)
    change = unusual(own, x + step) - unusual(own, x - step)
    assert change == pytest.approx(4 * float(pull_of(own, x) * x @ step), rel=1e-5)


def test_a_screened_fault_scores_best_where_it_is():
    """Of all places and kinds, the one that a sweep was made with lowers its residual most."""
    own = line()
    fault = PlacedFault(AT_A_JOINT[0], FIRST_JOINT)
    measured = predicted(own, np.append(np.zeros(own.parameter_count), 0.5), [fault]).shown

    best = screened(own, fitted(own, measured, np.zeros(own.parameter_count), (), 0), place_grid(own, 0.5))[0]

    assert (best.fault.part, best.fault.kind.id) == (FIRST_JOINT, "resistance")


@pytest.mark.parametrize(("place_m", "size"), [(32.15, -0.8), (2.02, -1.5), (2.02, 1.0)])
def test_a_short_damage_in_a_long_cable_is_seen_where_it_is(place_m, size):
    """A place is looked for as finely as the sweep resolves it, however long a line is and however small the damage."""
    elements = [Joint(family="n"), CableRun(cable="rg_213", length_m=54.0), Joint(family="n")]
    end, cell_m, swept = KnownEnd(what="open"), 0.1, np.linspace(1e6, 1.3e9, 1601)
    frequency = swept[scattered(swept.size, 240)]
    request = SweepRequest(elements=elements, load=end, touchstone="")
    own = swept_line(feedline_at(request, elements, end, spot_column(1e8)), frequency, SweepSettings(0.02, 6, end))
    [cable], usual = own.cables, np.zeros(own.parameter_count)
    measured = predicted(own, np.append(usual, [size, 0.0]), [PlacedFault(CAPACITIVE, cable, place_m, 0.1)]).shown

    best = screened(own, fitted(own, measured, usual, (), 0), place_grid(own, cell_m / 2))[0]

    assert best.fault.part == cable
    assert best.fault.about_m == pytest.approx(place_m, abs=cell_m)


@pytest.mark.parametrize("cells", [0.0, 0.2, 0.7, 1.3, 2.6, 7.4, 15.5])
def test_what_comes_back_from_an_antenna_comes_at_any_delay(cells):
    """An echo of any delay is a sum of those that stand for an antenna, none of them larger than is usual."""
    frequency = np.linspace(2e6, 200e6, 240)
    basis = load_basis(frequency, GivenVswr(vswr=1.5))
    echo = 0.5 * 0.9**cells * np.exp(-2j * np.pi * cells * frequency / (frequency[-1] - frequency[0]))

    rows = np.concatenate([basis.real, basis.imag], axis=1)
    wanted = np.concatenate([echo.real, echo.imag])
    usual = np.linalg.solve(rows @ rows.T / 0.005**2 + np.eye(len(rows)), rows @ wanted / 0.005**2)

    assert np.sqrt(np.mean((usual @ rows - wanted) ** 2)) < 0.01
    assert np.abs(usual).max() < 2.0


def test_a_change_scores_by_what_becomes_less_odd():
    """What does to a sweep what odd parts do wins the logarithm of the prior that they cost: half their squares, about.

    Without it, too, the parameters follow, as far as linear: that is taken off, and is a little less than nothing.
    """
    own = line()
    odd = np.zeros(own.parameter_count)
    odd[own.offsets[FIRST_JOINT] : own.offsets[FIRST_JOINT] + 2] = 2.0, -3.0
    fit = fitted(own, predicted(own, odd).shown, odd, (), 0)

    [score] = FollowedScore(fit).of((odd @ fit.prediction.slopes)[None])

    assert score == pytest.approx(odd @ odd / 2, rel=0.1)


def test_a_joint_is_moved_to_where_its_echo_is():
    """A joint many cells off, the end where it should be: a fit alone does not find it."""
    elements = [Joint(family="uhf"), CableRun(cable="rg_213", length_m=12.0)] * 2 + [Joint(family="uhf")]
    end, frequency = KnownEnd(what="matched"), np.linspace(1e6, 1e9, 200)
    request = SweepRequest(elements=elements, load=end, touchstone="")
    own = swept_line(feedline_at(request, elements, end, spot_column(1e8)), frequency, SweepSettings(0.02, 6, end))
    true, cell_m = np.zeros(own.parameter_count), 0.1
    true[[own.offsets[at] for at in own.cables]] = 1.5, -1.5
    measured = predicted(own, true).shown

    fit = fitted(own, measured, np.zeros(own.parameter_count))
    found = settled(own, measured, fit, cell_m)

    assert fit.misfit > 0.01
    assert found.misfit < 0.002
    assert own.begin_m(max(own.cables)) * own.prior.length * 1.5 > 4 * cell_m
    assert found.x[own.offsets[next(iter(own.cables))]] == pytest.approx(1.5, abs=0.1)


def unknown_line(what):
    """A sweep, by scikit-rf, of 12 m of cable."""
    band = skrf.Frequency(1, 500, 401, "MHz")
    medium = medium_of(band)
    return touchstone(band.f, (medium.line(12.0, "m") ** getattr(medium, what)()).s)


@pytest.mark.parametrize(("what", "sign"), [("short", "lower"), ("open", "higher")])
def test_echoes_of_a_line_not_described(what, sign):
    """With the velocity factor alone the end's echo lies where the line ends, and says how it ends."""
    answer = ask("sweep", elements=[], touchstone=unknown_line(what), velocity_factor=0.66)

    strongest = max(answer["echoes"]["echoes"], key=lambda echo: echo["reflection"])
    assert (answer["line"], answer["part"]) == (None, None)
    assert strongest["distance_m"] == pytest.approx(12.0, abs=answer["echoes"]["resolution_m"])
    assert strongest["sign"] == sign
    assert f"{strongest['distance_m']:.3g} m" in answer["verdict"]


def test_a_longer_cable_is_said():
    """A verdict on a cable that is longer than told says by how much it was taken longer."""
    band = skrf.Frequency(1, 500, 401, "MHz")
    medium = medium_of(band)
    elements = [{"kind": "joint", "family": "n"}, {"kind": "cable", "cable": "rg_213", "length_m": 20.0}]
    text = touchstone(band.f, (medium.line(21.2, "m") ** medium.short()).s)

    answer = ask("sweep", elements=elements, load={"kind": "end", "what": "short"}, touchstone=text)

    assert answer["line"]["finding"] == "sound"
    assert any("longer than said" in words for words in answer["line"]["assumed"])
    assert "longer than said" in answer["verdict"]


def test_a_cable_that_loses_twice_what_it_should_is_not_called_good():
    """A verdict does not say above what a line below it denies."""
    band = skrf.Frequency(1, 500, 401, "MHz")
    worn = medium_of(band)
    worn = DefinedGammaZ0(band, gamma=2 * worn.gamma.real + 1j * worn.gamma.imag, z0=50)
    elements = [{"kind": "joint", "family": "n"}, {"kind": "cable", "cable": "rg_213", "length_m": 20.0}]
    text = touchstone(band.f, (worn.line(20.0, "m") ** worn.short()).s)

    answer = ask("sweep", elements=elements, load={"kind": "end", "what": "short"}, touchstone=text)

    assert answer["line"]["finding"] == "sound"
    assert answer["verdict"].startswith("No joint is worse than it should be")
    [words] = [words for words in answer["line"]["assumed"] if "loss" in words]
    assert re.search(r"counts with 9[0-9] % more loss than its sheet says", words)


def test_a_number_of_three_digits_is_written_out():
    """Two figures of 107 % are 110 %, not 1.1e+02 %."""
    lost = Deviation(element=1, part="RG-58", what="loss", share=1.07, uncertainty=0.1, usual=0.2)

    assert assumed_sentences([lost], 0.05) == ["RG-58 (element 2) counts with 110 % more loss than its sheet says."]


def test_a_line_needs_what_it_ended_in():
    """Without what the line ended in during the sweep there is nothing to compare with."""
    with pytest.raises(ValueError, match="load"):
        ask("sweep", elements=[{"kind": "joint", "family": "n"}], touchstone=unknown_line("short"))
