"""The cell, computed on scalars, is the matrix, computed on arrays; and its curves pass through it."""

from math import log10

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from scenarios import BANDS, FAMILIES, LIMIT_FIELDS, POWERS_W, STATIONS, examples, table

from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.curves import FREQUENCIES_HZ
from jointwise.calc.cell.curves import POWERS_W as CURVE_POWERS_W
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.physics.customary import customary_cable

SAME = 1e-12

PLACES = st.tuples(st.sampled_from(FAMILIES), st.integers(0, len(BANDS) - 1), st.integers(0, len(POWERS_W) - 1))
NO_HEAT_ROOM = {"ambient_temperature_c": 80.0, "solar_irradiance_w_per_m2": 1200.0}
"""A site at which the sun alone brings a contact to its limit: nothing may be sent, but one may listen."""


def both_forms(station, place):
    """The same cell of the matrix and on its own, and the cell's place in the matrix."""
    family, column, power = place
    row = FAMILIES.index(family)
    alone = cell(CellRequest(**station, family=family, band=BANDS[column], power_w=POWERS_W[power]))
    return table(**station), alone, (row, column, power)


def at(nested, place):
    """The entry of a nested list at a place."""
    for index in place:
        nested = nested[index]
    return nested


def same(value, expected):
    """Whether two numbers, or two absent ones, agree to 1e-12."""
    if value is None or expected is None:
        return value is expected
    return value == pytest.approx(expected, rel=SAME, abs=SAME)


@examples(150)
@given(station=STATIONS, place=PLACES)
@example(station=NO_HEAT_ROOM, place=("n", 1, 0))
def test_a_cell_has_the_margins_of_the_matrix(station, place):
    """Both ends of a cell's margin, and whether it is undecided, are the matrix's."""
    result, alone, cell_at = both_forms(station, place)

    assert same(alone.margin_db, at(result.margin_db, cell_at))
    assert same(alone.margin_high_db, at(result.margin_high_db, cell_at))
    assert alone.undecided == at(result.undecided, cell_at)
    assert alone.frequency_hz == result.columns[cell_at[1]].high_hz


@examples(150)
@given(station=STATIONS, place=PLACES)
def test_a_cell_binds_and_refuses_as_the_matrix(station, place):
    """A cell's binding limit, refusal and marks are the matrix's."""
    result, alone, cell_at = both_forms(station, place)
    index, refusal = at(result.binding, cell_at), at(result.refused_by, cell_at)
    failed = [gate.id for gate in alone.gates if not gate.passed and not gate.hard]

    assert alone.refused_by == (None if refusal < 0 else result.gates[refusal].id)
    if index >= 0:
        assert result.limits[index] == next(limit.id for limit in alone.limits if limit.binding)
    assert (index >= 0) == (alone.margin_db is not None)
    assert failed == [gate.id for bit, gate in enumerate(result.gates) if at(result.marks, cell_at) >> bit & 1]


@examples(150)
@given(station=STATIONS, place=PLACES)
def test_a_cell_has_the_limits_of_the_matrix(station, place):
    """What each limit allows, and the return loss of the joint alone, are the matrix's where both are given."""
    result, alone, cell_at = both_forms(station, place)
    told = {f"{limit.id}_allowed_w": (limit.allowed_w, limit.allowed_high_w) for limit in alone.limits}
    told["return_loss_db"] = alone.match.return_loss_db, alone.match.return_loss_high_db

    assert set(told) == {*LIMIT_FIELDS, "return_loss_db"}
    for field, ends in told.items():
        given_ends = at(getattr(result, field), cell_at[:2])
        if alone.refused_by is None or given_ends[0] is not None:
            assert all(same(own, other) for own, other in zip(ends, given_ends, strict=True)), field


@examples(60)
@given(station=STATIONS, place=PLACES)
def test_a_cell_is_of_the_cable_asked_for_or_the_customary_one(station, place):
    """A cell names its cable and whether it was asked for; naming the customary one changes no number."""
    _, alone, (_, column, power) = both_forms(station, place)
    named = station | {"cable": alone.cable_id}
    again = cell(CellRequest(**named, family=place[0], band=BANDS[column], power_w=POWERS_W[power]))

    assert alone.cable_given == (station.get("cable") is not None)
    assert alone.cable_id == (station.get("cable") or customary_cable(place[0]))
    assert again.limits == alone.limits
    assert (again.cable_given, again.match) == (True, alone.match)


@examples(150)
@given(station=STATIONS, place=PLACES)
@example(station={}, place=("f", 1, 0))
def test_a_cell_has_the_largest_power_of_the_matrix(station, place):
    """The largest power of a cell that is not refused is the matrix's."""
    result, alone, cell_at = both_forms(station, place)

    if alone.refused_by is None:
        expected = at(result.largest_power_w, cell_at[:2])
        assert same(alone.largest_power_w, expected)


@examples(60)
@given(station=STATIONS, place=PLACES)
def test_a_figure_from_memory_is_lower_in_the_cell_as_in_the_matrix(station, place):
    """A family is marked just where a rating of its cell, not documented, would come to less than what is computed."""
    result, alone, (row, _, _) = both_forms(station, place)
    limits = {limit.id: limit.allowed_w for limit in alone.limits}
    lower = [
        one for one in alone.ratings if one.role == "not documented" and one.here_w < limits[one.part] * (1 - SAME)
    ]

    if min(limits["contact"], limits["cable"]) > 0:
        assert result.rating_below[row] == bool(lower)


@examples(60)
@given(station=STATIONS, family=st.sampled_from(FAMILIES), spot=st.integers(0, len(FREQUENCIES_HZ) - 1))
def test_curves_against_frequency_pass_through_the_cell(station, family, spot):
    """The curves against frequency have the cell's margins at the cell's own frequency."""
    frequency = float(FREQUENCIES_HZ[spot])
    alone = cell(CellRequest(**station, family=family, frequency_hz=frequency, power_w=50.0))

    for limit in alone.limits:
        assert same(alone.curves.margin_by_frequency_db[limit.id][spot], limit.margin_db)
        assert same(alone.curves.margin_high_by_frequency_db[limit.id][spot], limit.margin_high_db)
    assert same(alone.curves.return_loss_by_frequency_db[spot], alone.match.return_loss_db)
    assert same(alone.curves.return_loss_high_by_frequency_db[spot], alone.match.return_loss_high_db)


@examples(60)
@given(station=STATIONS, family=st.sampled_from(FAMILIES), power=st.floats(0.1, 10_000))
def test_curves_against_power_pass_through_the_cell(station, family, power):
    """The curves against power are straight lines of 10 dB a decade through the cell, at both ends."""
    alone = cell(CellRequest(**station, family=family, band="2m", power_w=power))
    falls = np.array([10 * log10(watts / power) for watts in CURVE_POWERS_W])

    for limit in alone.limits:
        both = (
            (alone.curves.margin_by_power_db, limit.margin_db),
            (alone.curves.margin_high_by_power_db, limit.margin_high_db),
        )
        for curves, margin_db in both:
            if margin_db is not None:
                curve = np.array(curves[limit.id], dtype=float)
                assert curve == pytest.approx(margin_db - falls, rel=SAME, abs=1e-11)
