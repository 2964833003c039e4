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
LINES = 20
MOST_ACCUSED = 0.1
LEAST_RIGHT = 0.75
MOST_WRONG = 0.1
MOST_OVERCONFIDENT = 0.1
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
