"""Results as plain text."""

import msgspec
import pytest

from jointwise.backend import tables
from jointwise.calc.matrix.results import MatrixResult
from jointwise.calc.operations import InputError
from jointwise.calc.physics.columns import Column
from jointwise.calc.physics.families import FamilyHead
from jointwise.calc.physics.gates import GateKind

REASONS = {"deep": "It is not waterproof.", "wear": "It wears out."}
RESULT = MatrixResult(
    families=[
        FamilyHead("one", "One", "", False, REASONS),
        FamilyHead("three", "Three", "", False, REASONS),
    ],
    columns=[Column("20m", "20 m", 14e6, 14.35e6), Column("2m", "2 m", 144e6, 146e6)],
    powers_w=[0.0, 50.0, 400.0],
    limits=["heat", "voltage", "match"],
    gates=[GateKind("deep", "Water", True), GateKind("wear", "Wear", False)],
    margin_db=[[[20.0, 12.345, -1.0], [20.0, -0.04, -9.0]], [[20.0, None, None], [9.0, 3.0, -6.0]]],
    margin_high_db=[[[20.0, 14.0, 1.0], [20.0, 0.5, -8.0]], [[20.0, None, None], [9.0, 4.0, -5.0]]],
    binding=[[[2, 0, 0], [2, 0, 0]], [[2, -1, -1], [2, 0, 0]]],
    refused_by=[[[-1, -1, -1], [-1, -1, -1]], [[-1, 0, 0], [-1, -1, -1]]],
    marks=[[[0, 0, 0], [0, 0, 0]], [[0, 0, 0], [2, 2, 2]]],
    undecided=[[[False, False, True], [False, True, False]], [[False] * 3, [False] * 3]],
    heat_disagrees=[[False, False], [False, False]],
    heat_allowed_w=[[[1.0, 2.0]] * 2] * 2,
    voltage_allowed_w=[[[1.0, 2.0]] * 2] * 2,
    match_margin_db=[[[1.0, 2.0]] * 2] * 2,
    largest_power_w=[[1.0, 1.0], [None, 1.0]],
)

AT_50_W = """\
Margin in dB at 50 W: 0 is the limit, more is room left.

        20 m    2 m
One    +12.3  -0.0?
Three     --  +3.0a

?  undecided: the sign depends on which source one believes
--  Three (20 m): It is not waterproof.
a  Three (2 m): It wears out."""


def test_matrix_shows_margins_and_marks_with_their_reasons():
    """The table prints each margin to a tenth of a dB with its marks, and below what each mark means."""
    assert tables.matrix(RESULT) == AT_50_W


@pytest.mark.parametrize(
    ("powers_w", "shown"),
    [([0, 50, 400], "50 W"), ([100, 5, 0], "100 W"), ([400, 1500], "400 W"), ([0], "receive")],
)
def test_matrix_shows_the_usual_power(powers_w, shown):
    """Without a choice the largest power up to 100 W is shown, or the smallest when all are above."""
    levels = len(powers_w)
    names = ("margin_db", "marks", "undecided", "refused_by")
    cut = {name: [[(cell * 3)[:levels] for cell in row] for row in getattr(RESULT, name)] for name in names}
    result = msgspec.structs.replace(RESULT, powers_w=[float(power) for power in powers_w], **cut)

    assert tables.matrix(result).startswith(f"Margin in dB at {shown}")


def test_matrix_shows_the_power_asked_for():
    """The power asked for is the one shown."""
    assert "-9.0" in tables.matrix(RESULT, 400)
    assert "-9.0" not in tables.matrix(RESULT, 50)


@pytest.mark.parametrize("power", [75.0, float("nan")])
def test_power_that_was_not_computed_is_refused(power):
    """A power that is not among the computed ones is refused with the list of those."""
    with pytest.raises(InputError, match=r"^show_power is .* allowed: one of the powers 0,50,400"):
        tables.matrix(RESULT, power)
