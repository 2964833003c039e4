"""Laws that the margins must keep whatever the catalogue holds."""

from math import log10

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scenarios import BANDS, FAMILIES, STATIONS, examples, numbers, refused, table, worst

from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.physics.margins import LIMITS

DOUBLING_DB = 10 * log10(2)
ENDS = ["heat_allowed_w", "voltage_allowed_w", "match_margin_db"]


def margins_alone(station, family, power_w):
    """A family's margin on 2 m by limit."""
    answer = cell(CellRequest(**station, family=family, band="2m", power_w=power_w))
    return {limit.id: limit.margin_db for limit in answer.limits}


@examples(60)
@given(station=STATIONS, family=st.sampled_from(FAMILIES), watts=st.floats(0.01, 50_000))
def test_doubling_the_power_costs_three_decibels(station, family, watts):
    """Twice the power lowers the heat and voltage margins by 10 log 2 and leaves the match alone."""
    single, double = (margins_alone(station, family, power_w) for power_w in (watts, 2 * watts))

    assert double["match"] == single["match"]
    for limit in ("heat", "voltage"):
        if single[limit] is not None:
            assert single[limit] - double[limit] == pytest.approx(DOUBLING_DB, abs=1e-12)


@examples(60)
@given(station=STATIONS, watts=st.floats(0.01, 50_000))
def test_doubling_the_power_in_the_matrix(station, watts):
    """Where heat or voltage binds both, twice the power costs the matrix just 10 log 2."""
    result = table(**station | {"powers_w": [watts, 2 * watts]})
    margins, binding = numbers(result.margin_db), np.array(result.binding)
    powered = [LIMITS.index("heat"), LIMITS.index("voltage")]
    by_power = (binding[..., 0] == binding[..., 1]) & np.isin(binding[..., 0], powered)

    falls = (margins[..., 0] - margins[..., 1])[by_power]
    assert falls == pytest.approx(DOUBLING_DB, abs=1e-12)


@pytest.mark.parametrize("field", ENDS)
@examples(60)
@given(station=STATIONS)
def test_each_limits_conservative_end_is_never_above_its_optimistic_end(field, station):
    """For each limit the cautious ratings never allow more than the generous ones."""
    ends = numbers(getattr(table(**station), field))
    low, high = ends[..., 0], ends[..., 1]
    given_both = np.isfinite(low) & np.isfinite(high)

    assert worst(low / high - 1, given_both & (high > 0)) <= 1e-12
    assert worst(low - high, given_both & (high <= 0)) <= 1e-12


@examples(60)
@given(station=STATIONS)
def test_the_conservative_margin_is_never_above_the_optimistic_one(station):
    """A cell's margin is never above the optimistic end of its range."""
    result = table(**station)
    low, high = numbers(result.margin_db), numbers(result.margin_high_db)
    given_both = np.isfinite(low) & np.isfinite(high)

    assert worst(low - high, given_both) <= 1e-12


@examples(60)
@given(station=STATIONS)
def test_undecided_is_where_the_sign_depends_on_the_source(station):
    """A cell is undecided just where its range crosses 0 dB."""
    result = table(**station)
    low, high = numbers(result.margin_db), numbers(result.margin_high_db)

    expected = ~refused(result) & (low < 0) & (high >= 0)
    assert (np.array(result.undecided) == expected).all()


@examples(40)
@given(station=STATIONS, family=st.sampled_from(FAMILIES), column=st.integers(0, len(BANDS) - 1))
def test_the_largest_power_is_at_the_limit(station, family, column):
    """At the largest power the conservative margin is 0 dB; a little more power is over."""
    largest = table(**station | {"families": [family]}).largest_power_w[0][column]

    if largest is not None and largest < 90_000:
        powers = [largest, largest * 1.01]
        again = matrix(MatrixRequest(**station, families=[family], bands=[BANDS[column]], powers_w=powers))
        at_limit, over = again.margin_db[0][0]
        assert at_limit == pytest.approx(0, abs=1e-9)
        assert over < 0


@examples(40)
@given(station=STATIONS, vswr=st.floats(1, 20))
def test_net_and_forward_differ_by_the_power_that_comes_back(station, vswr):
    """Power allowed as net is that allowed as forward, less what the load reflects: 1 - Γ²."""
    forward, net = (table(**station | {"vswr": vswr, "power_is": meaning}) for meaning in ("forward", "net"))
    accepted = 1 - ((vswr - 1) / (vswr + 1)) ** 2

    for field in ("heat_allowed_w", "voltage_allowed_w"):
        expected = numbers(getattr(forward, field)) * accepted
        assert numbers(getattr(net, field)) == pytest.approx(expected, rel=1e-12, nan_ok=True)


@examples(40)
@given(station=STATIONS, share=st.floats(0.001, 1))
def test_heat_goes_with_the_share_of_the_time(station, share):
    """The power allowed by heat is that of sending all the time, over the transmit share."""
    still = {field: value for field, value in station.items() if field not in {"on_time_s", "off_time_s"}}
    always, part = (numbers(table(**still | {"transmit_share": s}).heat_allowed_w) for s in (1.0, share))

    both = np.isfinite(always) & (always > 0)
    assert part[both] == pytest.approx(always[both] / share, rel=1e-12)


@examples(40)
@given(station=STATIONS)
def test_an_endless_over_is_a_share_of_one(station):
    """Overs far longer than any time constant heat like sending all the time."""
    timing = {"on_time_s", "off_time_s", "transmit_share"}
    still = {field: value for field, value in station.items() if field not in timing}
    always = numbers(table(**still, transmit_share=1.0).heat_allowed_w)
    overs = numbers(table(**still, on_time_s=86_400.0, off_time_s=0.01).heat_allowed_w)

    assert overs == pytest.approx(always, rel=1e-9, nan_ok=True)


def test_a_table_in_parts_is_the_table_whole():
    """Asking family by family and band by band gives the numbers of one request."""
    whole = numbers(table().margin_db)

    parts = [[numbers(table(families=[f], bands=[b]).margin_db)[0, 0] for b in BANDS] for f in FAMILIES]

    assert np.array(parts) == pytest.approx(whole, rel=1e-13, nan_ok=True)
