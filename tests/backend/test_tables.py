"""Results as plain text."""

import msgspec
import pytest

from jointwise.backend import tables
from jointwise.calc.matrix.results import MatrixResult
from jointwise.calc.operations import InputError
from jointwise.calc.physics.columns import Column
from jointwise.calc.physics.families import FamilyHead
from jointwise.calc.physics.gates import GateKind

REASONS = {"deep": "It is not waterproof.", "wear": "It wears out.", "match": "It reflects too much."}
RESULT = MatrixResult(
    families=[
        FamilyHead("one", "One", "", False, REASONS),
        FamilyHead("three", "Three", "", False, REASONS),
    ],
    columns=[
        Column("20m", "20 m", 14e6, 14.35e6),
        Column("2m", "2 m", 144e6, 146e6),
        Column("3cm", "3 cm", 10e9, 10.5e9),
    ],
    powers_w=[0.0, 50.0, 400.0],
    limits=["contact", "cable", "voltage"],
    gates=[GateKind("deep", "Water", True), GateKind("wear", "Wear", False), GateKind("match", "Match", True)],
    margin_db=[[[None, 12.345, -1.0], [None, -0.04, -9.0], [None] * 3], [[None] * 3, [None, 3.0, -6.0], [None] * 3]],
    margin_high_db=[[[None, 14.0, 1.0], [None, 0.5, -8.0], [None] * 3], [[None] * 3, [None, 4.0, -5.0], [None] * 3]],
    binding=[[[-1, 0, 0], [-1, 1, 1], [-1] * 3], [[-1] * 3, [-1, 2, 0], [-1] * 3]],
    refused_by=[[[-1, -1, -1], [-1, -1, -1], [2, 2, 2]], [[-1, 0, 0], [-1, -1, -1], [2, 2, 2]]],
    marks=[[[0, 0, 0]] * 3, [[0, 0, 0], [2, 2, 2], [0, 0, 0]]],
    undecided=[[[False, False, True], [False, True, False], [False] * 3], [[False] * 3] * 3],
    rating_below=[False, True],
    contact_allowed_w=[[[1.0, 2.0]] * 3] * 2,
    cable_allowed_w=[[[1.0, 2.0]] * 3] * 2,
    voltage_allowed_w=[[[1.0, 2.0]] * 3] * 2,
    return_loss_db=[[[25.7, 30.0], [20.0, 21.0], [7.8, 9.0]], [[33.0, 40.0], [18.2, 19.0], [5.0, 6.0]]],
    largest_power_w=[[1.0, 1.0, None], [None, 1.0, None]],
)

AT_50_W = """\
Margin in dB at 50 W: 0 is at the limit, below it is over.

        20 m     2 m   3 cm
One    +12.3   -0.0?  RL 8!
Three     --  +3.0<a  RL 5!

?  uncertain: the sources disagree on which side of the limit it lies
<  a power figure from memory is lower than the margin shown
RL  return loss of the joint alone in dB; on receive there is no power to carry
!  One (3 cm): It reflects too much.
--  Three (20 m): It is not waterproof.
a  Three (2 m): It wears out.
!  Three (3 cm): It reflects too much."""

IN_RECEIVE = """\
Return loss in dB, receive only (0 W).

        20 m     2 m   3 cm
One    RL 26   RL 20  RL 8!
Three  RL 33  RL 18a  RL 5!
"""


def test_matrix_shows_margins_and_marks_with_their_reasons():
    """The table prints each margin to a tenth of a dB with its marks, and below what each mark means."""
    assert tables.matrix(RESULT) == AT_50_W


def test_receive_shows_the_return_loss():
    """Where no power is sent each cell prints the return loss, in whole decibels, and what misses it says so."""
    assert tables.matrix(RESULT, 0).startswith(IN_RECEIVE)


@pytest.mark.parametrize(
    ("powers_w", "shown"),
    [
        ([0, 50, 400], "Margin in dB at 50 W"),
        ([100, 5, 0], "Margin in dB at 100 W"),
        ([400, 1500], "Margin in dB at 400 W"),
        ([0], "Return loss in dB, receive only"),
    ],
)
def test_matrix_shows_the_usual_power(powers_w, shown):
    """Without a choice the largest power up to 100 W is shown, or the smallest when all are above."""
    levels = len(powers_w)
    names = ("margin_db", "marks", "undecided", "refused_by")
    cut = {name: [[(cell * 3)[:levels] for cell in row] for row in getattr(RESULT, name)] for name in names}
    result = msgspec.structs.replace(RESULT, powers_w=[float(power) for power in powers_w], **cut)

    assert tables.matrix(result).startswith(shown)


def test_matrix_shows_the_power_asked_for():
    """The power asked for is the one shown."""
    assert "-9.0" in tables.matrix(RESULT, 400)
    assert "-9.0" not in tables.matrix(RESULT, 50)


@pytest.mark.parametrize("power", [75.0, float("nan")])
def test_power_that_was_not_computed_is_refused(power):
    """A power that is not among the computed ones is refused with the list of those."""
    with pytest.raises(InputError, match=r"^show_power is .* allowed: one of the powers 0,50,400"):
        tables.matrix(RESULT, power)
