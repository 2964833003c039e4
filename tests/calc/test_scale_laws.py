"""Laws that the margins must keep whatever the catalogue holds."""

from math import log10

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from scenarios import BANDS, FAMILIES, LIMIT_FIELDS, POWERS_W, STATIONS, examples, numbers, refused, table, worst

from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest

DOUBLING_DB = 10 * log10(2)
HEAT_FIELDS = ["contact_allowed_w", "cable_allowed_w"]


def alone(station, family, power_w):
    """A family's cell on 2 m."""
    return cell(CellRequest(**station, family=family, band="2m", power_w=power_w))


@examples(60)
@given(station=STATIONS, family=st.sampled_from(FAMILIES), watts=st.floats(0.01, 50_000))
def test_doubling_the_power_costs_three_decibels(station, family, watts):
    """Twice the power lowers the margin of every limit by 10 log 2, at both ends, and leaves the match alone."""
    single, double = (alone(station, family, power_w) for power_w in (watts, 2 * watts))
    doubled = {limit.id: limit for limit in double.limits}

    assert double.match == single.match
    for limit in single.limits:
        if limit.margin_db is not None:
            assert limit.margin_db - doubled[limit.id].margin_db == pytest.approx(DOUBLING_DB, abs=1e-12)
            assert limit.margin_high_db - doubled[limit.id].margin_high_db == pytest.approx(DOUBLING_DB, abs=1e-12)


@examples(60)
@given(station=STATIONS, watts=st.floats(0.01, 50_000))
def test_doubling_the_power_in_the_matrix(station, watts):
    """Where no gate refuses either, twice the power costs the matrix just 10 log 2, whatever limit binds."""
    result = table(**station | {"powers_w": [watts, 2 * watts]})
    binding = np.array(result.binding)
    held = ~refused(result).any(axis=-1)

    assert (binding[..., 0] == binding[..., 1])[held].all()
    for margins in (numbers(result.margin_db), numbers(result.margin_high_db)):
        falls = (margins[..., 0] - margins[..., 1])[held]
        assert falls == pytest.approx(DOUBLING_DB, abs=1e-12)


@pytest.mark.parametrize("field", [*LIMIT_FIELDS, "return_loss_db"])
@examples(60)
@given(station=STATIONS)
def test_each_limits_conservative_end_is_never_above_its_optimistic_end(field, station):
    """For each limit, and for the match, the cautious ratings never allow more than the generous ones."""
    ends = numbers(getattr(table(**station), field))
    low, high = ends[..., 0], ends[..., 1]

    assert (np.isfinite(low) == np.isfinite(high)).all()
    assert worst(low - high * (1 + 1e-12), np.isfinite(low)) <= 0


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


@examples(60)
@given(station=STATIONS)
@example(station={})
def test_the_largest_power_and_the_margin_agree(station):
    """Where no gate refuses, a margin is what the largest power that holds has over the power, and so has its sign."""
    result = table(**station)
    largest, margins = numbers(result.largest_power_w)[..., None], numbers(result.margin_db)
    held = ~refused(result) & (np.array(POWERS_W) > 0)
    decibels = 10 * np.log10(largest) - 10 * np.log10(np.maximum(POWERS_W, 1e-9))

    assert np.isfinite(margins[held]).all()
    assert (np.isnan(largest) | (largest > 0)).all()
    assert np.isfinite(np.broadcast_to(largest, margins.shape)[held]).all()
    assert ((margins >= 0) == (decibels >= 0))[held].all()
    assert margins[held] == pytest.approx(decibels[held], abs=1e-9)


@examples(60)
@given(station=STATIONS)
@example(station={})
def test_receive_has_no_margin(station):
    """At 0 W, refused or not, there is no margin, no binding limit and nothing undecided."""
    result = table(**station)
    receive = POWERS_W.index(0.0)

    assert np.isnan(numbers(result.margin_db)[..., receive]).all()
    assert np.isnan(numbers(result.margin_high_db)[..., receive]).all()
    assert (np.array(result.binding)[..., receive] == -1).all()
    assert not np.array(result.undecided)[..., receive].any()


@examples(60)
@given(station=STATIONS, tenths=st.integers(60, 400))
@example(station={}, tenths=140)
def test_the_match_gates_agree_with_the_return_loss(station, tenths):
    """Each cell's match holds, depends on the sources or misses as its return losses stand to the one asked for."""
    asked_db = tenths / 10
    result = table(**station | {"return_loss_asked_db": asked_db})
    gates = [gate.id for gate in result.gates]
    low, high = np.moveaxis(numbers(result.return_loss_db), -1, 0)[..., None]
    known, refusals, marks = np.isfinite(low), np.array(result.refused_by), np.array(result.marks)
    earlier = (refusals >= 0) & (refusals < gates.index("match"))

    misses, depends = high < asked_db, (low < asked_db) & (high >= asked_db)
    doubted = (marks >> gates.index("match_doubt") & 1).astype(bool)
    assert ((refusals == gates.index("match")) == misses)[known & ~earlier].all()
    assert (doubted == depends)[np.broadcast_to(known, marks.shape)].all()
    # what is refused at every power for something else has no return loss to show
    other = (refusals >= 0) & (refusals != gates.index("match")) & (refusals != gates.index("house"))
    assert (np.isnan(low[..., 0]) <= other.any(axis=-1)).all()


@examples(40)
@given(station=STATIONS, family=st.sampled_from(FAMILIES), column=st.integers(0, len(BANDS) - 1))
def test_the_match_of_a_cell_is_told_three_ways(station, family, column):
    """A cell's state of the match follows from its return losses, and so do its gates."""
    answer = cell(CellRequest(**station, family=family, band=BANDS[column]))
    match, passed = answer.match, {gate.id: gate.passed for gate in answer.gates}

    holds, misses = match.return_loss_db >= match.asked_db, match.return_loss_high_db < match.asked_db
    assert match.asked_db == station["return_loss_asked_db"]
    assert match.state == ("holds" if holds else "misses" if misses else "depends")
    assert passed["match"] == (not misses)
    assert passed.get("match_doubt") == (None if holds or misses else False)
    assert (answer.refused_by == "match") <= misses


@examples(40)
@given(station=STATIONS, vswr=st.floats(1, 20))
def test_net_and_forward_differ_by_the_power_that_comes_back(station, vswr):
    """Power allowed as net is that allowed as forward, less what the load reflects: 1 - Γ²."""
    forward, net = (table(**station | {"vswr": vswr, "power_is": meaning}) for meaning in ("forward", "net"))
    accepted = 1 - ((vswr - 1) / (vswr + 1)) ** 2

    for field in LIMIT_FIELDS:
        expected = numbers(getattr(forward, field)) * accepted
        assert numbers(getattr(net, field)) == pytest.approx(expected, rel=1e-12, nan_ok=True)


@examples(40)
@given(station=STATIONS, share=st.floats(0.001, 1))
def test_heat_goes_with_the_share_of_the_time(station, share):
    """The power allowed by heat, of contact and cable, is that of sending all the time, over the transmit share."""
    still = {field: value for field, value in station.items() if field not in {"on_time_s", "off_time_s"}}
    always, part = (table(**still | {"transmit_share": s}) for s in (1.0, share))

    for field in HEAT_FIELDS:
        all_time, some_time = numbers(getattr(always, field)), numbers(getattr(part, field))
        assert some_time == pytest.approx(all_time / share, rel=1e-12, nan_ok=True)


@examples(40)
@given(station=STATIONS)
def test_an_endless_over_is_a_share_of_one(station):
    """Overs far longer than any time constant, of contact, body or cable, heat like sending all the time."""
    timing = {"on_time_s", "off_time_s", "transmit_share"}
    still = {field: value for field, value in station.items() if field not in timing}
    always, overs = table(**still, transmit_share=1.0), table(**still, on_time_s=86_400.0, off_time_s=0.01)

    for field in HEAT_FIELDS:
        assert numbers(getattr(overs, field)) == pytest.approx(numbers(getattr(always, field)), rel=1e-9, nan_ok=True)


def test_a_table_in_parts_is_the_table_whole():
    """Asking family by family and band by band gives the numbers of one request."""
    whole = numbers(table().margin_db)

    parts = [[numbers(table(families=[f], bands=[b]).margin_db)[0, 0] for b in BANDS] for f in FAMILIES]

    assert np.array(parts) == pytest.approx(whole, rel=1e-13, nan_ok=True)
