"""The judge of sweeps on real lines: measured boards with connectors, sound and with a stepped stretch."""

import pytest
from everyday.score import read
from measured_lines import board_edition, measured_lines
from packs import ask

MOST_ACCUSED = 1
"""Of thirty sound lines."""

MOST_MISBLAMED = 0
"""Of twelve lines with a damage in their board, those that have a joint called bad."""

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def readings():
    """Each line and what its answer says."""
    return [(line, read(ask("sweep", board_edition(), **line.request))) for line in measured_lines()]


def test_few_sound_real_lines_are_accused(readings):
    """The boards are evenly made and their connectors whole."""
    sound = [reading for line, reading in readings if line.damage_m is None]
    assert len(sound) == 30
    assert sum(bool(one.blames or one.maybe) for one in sound) <= MOST_ACCUSED


def test_a_damaged_real_line_has_no_joint_blamed(readings):
    """A wide and a narrow stretch in the middle of a board is no fault of its connectors."""
    damaged = [reading for line, reading in readings if line.damage_m is not None]
    assert len(damaged) == 12
    blamed = [[one for one in reading.blames if not one.in_cable] for reading in damaged]
    assert sum(map(bool, blamed)) <= MOST_MISBLAMED
