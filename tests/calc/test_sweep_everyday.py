"""The judge of sweeps on everyday lines and parts: it accuses few sound ones, and what it names is right.

A small sample, on seeds of its own; `tests/benchmarks/everyday.py` has the numbers.
"""

import json
import statistics
from collections import Counter

import pytest
from everyday.lines import draw_case
from everyday.parts import draw_part_case
from everyday.score import outcome, read_part

from jointwise.calc.operations import call

SEED = 2_000_001
LINES = 8
MOST_ACCUSED = 0.1
LEAST_RIGHT = 0.75
MOST_WRONG = 0.1
MOST_OVERCONFIDENT = 0.1
MOST_LEFT = 0.002
PARTS = 12
MOST_PARTS_FAILED = 0.3

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def outcomes():
    """How lines with no fault, one and two were judged."""

    def judged(seed, faults):
        drawn = draw_case(seed, faults)
        return outcome(drawn, json.loads(call("sweep", json.dumps(drawn.request).encode())))

    return {faults: [judged(SEED + at, faults) for at in range(LINES)] for faults in (0, 1, 2)}


def test_few_sound_lines_are_accused(outcomes):
    """No joint and no cable of a sound line is called bad."""
    assert Counter(one.verdict for one in outcomes[0])["accused"] <= MOST_ACCUSED * LINES


@pytest.mark.parametrize("faults", [1, 2])
def test_what_is_accused_is_bad(outcomes, faults):
    """A fault that shows is found in its place, and no other place is accused."""
    verdicts = Counter(one.verdict for one in outcomes[faults] if one.visible)
    assert verdicts["right"] >= LEAST_RIGHT * verdicts.total()
    assert verdicts["wrong"] <= MOST_WRONG * verdicts.total()


def test_sure_is_earned(outcomes):
    """The answers are on average no surer than they are right."""
    told = [one for found in outcomes.values() for each in found for one in each.told]
    said, right = (statistics.fmean(values) for values in zip(*told, strict=True))
    assert said - right <= MOST_OVERCONFIDENT


@pytest.mark.parametrize("seed", [5013136, 5013211, 5013048, 5013214])
def test_what_sound_lines_look_like_is_no_fault(seed):
    """A fault that could be anywhere, or before an antenna at the first joint, has some odds on sound lines too."""
    answer = json.loads(call("sweep", json.dumps(draw_case(seed, 0).request).encode()))["line"]
    assert answer["finding"] == "sound"


@pytest.mark.parametrize("seed", [4431, 4550, 4659])
def test_what_wanders_along_a_cable_is_no_residue(seed):
    """Of sound lines of few cells a fit leaves hardly more than their noise, however much they wander."""
    answer = json.loads(call("sweep", json.dumps(draw_case(seed, 0).request).encode()))["line"]
    assert answer["finding"] == "sound"
    assert answer["noise"] < MOST_LEFT


@pytest.mark.parametrize("seed", [8082, 8239, 7422, 7350])
def test_a_joint_that_lets_nothing_through_is_no_shorter_line(seed):
    """An open contact or a short is found where it is, though cables a little shorter would explain its echo too."""
    drawn = draw_case(seed, 1)
    [fault] = drawn.truth
    assert fault.what in ("open", "short")

    one = outcome(drawn, json.loads(call("sweep", json.dumps(drawn.request).encode())))

    assert one.verdict == "right"


def test_the_line_that_is_shown_is_the_line_that_was_fitted():
    """A cable meets one wave more at all points of this sweep than at those that are fitted."""
    drawn = draw_case(5009051, 2)

    answer = json.loads(call("sweep", json.dumps(drawn.request).encode()))

    assert outcome(drawn, answer).verdict == "right"


def test_a_bad_joint_is_no_bad_cable_beside_another_fault():
    """What is seldom met in a cable is laid to the joint near it, of two faults as of one."""
    drawn = draw_case(5009308, 2)
    resistance = drawn.truth[1]
    assert resistance.what == "resistance"
    assert not resistance.in_cable

    answer = json.loads(call("sweep", json.dumps(drawn.request).encode()))

    faults = answer["line"]["faults"]
    assert [fault["where"] for fault in faults] == ["joint", "joint"]
    assert {fault["element"] for fault in faults} == {fault.element for fault in drawn.truth}


def test_a_short_where_no_joint_was_described_is_the_joint_that_may_be_there():
    """A short is seldom met in a cable: the joint that usual lengths bring there is named."""
    drawn = draw_case(5009142, 1)
    [short] = drawn.truth
    assert short.what == "short"

    answer = json.loads(call("sweep", json.dumps(drawn.request).encode()))

    [fault] = answer["line"]["faults"]
    assert (fault["element"], fault["where"]) == (short.element, "joint")


def test_lengths_that_fit_nearly_as_well_are_tried_too():
    """A soaked end of a line is found though cables two deviations too short explain most of its echo."""
    drawn = draw_case(5009105, 1)
    assert drawn.truth[0].what == "wet"

    one = outcome(drawn, json.loads(call("sweep", json.dumps(drawn.request).encode())))

    assert one.verdict == "right"


@pytest.mark.parametrize("seed", [6062, 6074, 6122, 2000012])
def test_an_antenna_matched_nowhere_is_not_told_from_its_joint(seed):
    """A last joint that lets nothing through to the antenna is named beside it, and neither is called bad."""
    drawn = draw_case(seed, 1)
    [fault] = drawn.truth
    assert drawn.end == "antenna"
    assert fault.element == len(drawn.request["elements"]) - 1

    answer = json.loads(call("sweep", json.dumps(drawn.request).encode()))

    check = answer["line"]
    assert check["finding"] == "end"
    assert check["end"]["element"] == fault.element
    assert check["end"]["lowest_vswr"] > 2 * check["end"]["described_vswr"]
    assert not check["faults"]
    assert answer["verdict"].startswith("The antenna or ")
    assert f"(element {fault.element + 1}) is bad" in answer["verdict"]


def test_an_antenna_that_takes_nothing_by_description_is_no_finding():
    """A load without resistance reflects all, as described."""
    drawn = draw_case(6074, 1)
    load = {"kind": "impedance", "resistance_ohm": 0.0}

    answer = json.loads(call("sweep", json.dumps(drawn.request | {"load": load}).encode()))

    assert answer["line"]["end"] is None


def test_the_joint_at_an_antenna_of_one_number_is_not_called_sound():
    """Whatever is wrong there is another antenna to the analyser: the headline says that it can't be judged."""
    judged = []
    for at in range(LINES):
        drawn = draw_case(SEED + at, 0)
        if drawn.end == "antenna":
            answer = json.loads(call("sweep", json.dumps(drawn.request).encode()))
            joints = answer["line"]["joints"]
            judged.append((joints[-1]["state"], "can't judge" in answer["verdict"], answer["line"]["end"]))
    assert set(judged) == {("hidden", True, None)}


@pytest.mark.parametrize(("seed", "end", "hidden"), [(6026, "short", "Water"), (6013, "open", "A bad contact")])
def test_an_end_hides_what_it_leaves_no_voltage_or_current_for(seed, end, hidden):
    """At a short water does not show, at an open end no contact; the answer says so of the last joint and no other."""
    drawn = draw_case(seed, 0)
    assert drawn.end == end

    answer = json.loads(call("sweep", json.dumps(drawn.request).encode()))

    joints = answer["line"]["joints"]
    shown = "least_capacitance_f" if end == "short" else "least_resistance_ohm"
    assert [joint[shown] is None for joint in joints] == [False] * (len(joints) - 1) + [True]
    other = {"short": "an open end", "open": "a short"}[end]
    [advice] = [one for one in answer["advice"] if one.startswith(f"{hidden} would not show at ")]
    assert advice.endswith(f"sweep again with {other}.")


def test_few_parts_within_their_limits_are_failed():
    """A jumper or adapter that keeps its limits is not failed for what calibration left."""
    kept = failed = 0
    for at in range(PARTS):
        drawn = draw_part_case(SEED + at, faulty=False)
        reading = read_part(json.loads(call("sweep", json.dumps(drawn.request).encode())))
        if reading.is_within(drawn.real):
            kept, failed = kept + 1, failed + reading.failed
    assert kept > 0
    assert failed <= MOST_PARTS_FAILED * kept
