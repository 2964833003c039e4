"""The two ways to the heat limit, side by side: `pytest -s` prints the table."""

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest

SPOTS_HZ = [30e6, 432e6, 1296e6]
FACTOR = 3  # design: where the two ways differ by more than three, the cell says so
FAMILIES = list(catalogue().interfaces)


def cross_check(family, frequency_hz):
    """A family's two ways to the heat limit at one frequency, with 100 W of carrier."""
    return cell(CellRequest(family=family, frequency_hz=frequency_hz, mode="carrier")).cross_check


def nearest(check):
    """First principles over the nearer end of the rating, 1 inside its range."""
    estimate = check.first_principles_allowed_w
    if estimate < check.rating_allowed_w:
        return estimate / check.rating_allowed_w
    return max(estimate / check.rating_allowed_high_w, 1)


def test_the_two_ways_are_shown_for_every_family():
    """Every family has two positive ways to its heat limit at 30, 432 and 1296 MHz."""
    print(f"\n{'family':10}{'MHz':>6}{'rating W':>18}{'first principles W':>21}{'ratio':>7}")
    for family in FAMILIES:
        for spot in SPOTS_HZ:
            check = cross_check(family, spot)
            rating = f"{check.rating_allowed_w:.0f} to {check.rating_allowed_high_w:.0f}"
            flag = "" if check.agrees else "  differs"
            estimate = check.first_principles_allowed_w
            print(f"{family:10}{spot / 1e6:6.0f}{rating:>18}{estimate:21.0f}{check.ratio:7.2f}{flag}")

            assert min(check.rating_allowed_w, estimate) > 0


@pytest.mark.parametrize("frequency_hz", SPOTS_HZ)
@pytest.mark.parametrize("family", FAMILIES)
def test_what_is_flagged_is_outside_a_factor_of_three(family, frequency_hz):
    """A cell says that the two ways differ just where their ratio lies outside a third to three."""
    check = cross_check(family, frequency_hz)

    assert check.ratio == pytest.approx(nearest(check), rel=1e-12)
    assert check.agrees == (1 / FACTOR <= nearest(check) <= FACTOR)


@pytest.mark.parametrize("family", FAMILIES)
def test_the_matrix_flags_what_the_cell_flags(family):
    """The matrix marks the same disagreement as the cell at every frequency."""
    request = MatrixRequest(families=[family], bands=[], frequencies_hz=SPOTS_HZ, powers_w=[100.0], mode="carrier")

    flagged = matrix(request).heat_disagrees[0]

    assert flagged == [not cross_check(family, spot).agrees for spot in SPOTS_HZ]


@pytest.mark.parametrize("family", FAMILIES)
def test_the_check_never_decides(family):
    """The heat limit is the rating's, whatever first principles say."""
    answer = cell(CellRequest(family=family, frequency_hz=432e6, mode="carrier"))
    heat = next(limit for limit in answer.limits if limit.id == "heat")

    assert heat.allowed_w == answer.cross_check.rating_allowed_w
    assert heat.allowed_high_w == answer.cross_check.rating_allowed_high_w
