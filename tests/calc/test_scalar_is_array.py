"""The cell, computed on scalars, is the matrix, computed on arrays; and its curves pass through it."""

from math import log10

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from scenarios import BANDS, FAMILIES, POWERS_W, STATIONS, examples, table

from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.curves import FREQUENCIES_HZ
from jointwise.calc.cell.curves import POWERS_W as CURVE_POWERS_W
from jointwise.calc.cell.requests import CellRequest

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
    assert index < 0 or result.limits[index] == next(limit.id for limit in alone.limits if limit.binding)
    assert failed == [gate.id for bit, gate in enumerate(result.gates) if at(result.marks, cell_at) >> bit & 1]


@examples(150)
@given(station=STATIONS, place=PLACES)
def test_a_cell_has_the_limits_of_the_matrix(station, place):
    """The powers that heat and voltage allow, and the match margin, are the matrix's where both are given."""
    result, alone, cell_at = both_forms(station, place)
    limits = {limit.id: limit for limit in alone.limits}

    if alone.refused_by is None:
        for limit, field in (("heat", "heat_allowed_w"), ("voltage", "voltage_allowed_w")):
            low, high = at(getattr(result, field), cell_at[:2])
            assert same(limits[limit].allowed_w, low)
            assert same(limits[limit].allowed_high_w, high)
        low, high = at(result.match_margin_db, cell_at[:2])
        assert same(limits["match"].margin_db, low)
        assert same(limits["match"].margin_high_db, high)


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
def test_the_cross_check_flags_the_cells_of_the_matrix(station, place):
    """The two ways to the heat limit disagree in a cell just where the matrix says so."""
    result, alone, cell_at = both_forms(station, place)

    if alone.cross_check.rating_allowed_w > 0:
        assert alone.cross_check.agrees != at(result.heat_disagrees, cell_at[:2])


@examples(60)
@given(station=STATIONS, family=st.sampled_from(FAMILIES), spot=st.integers(0, len(FREQUENCIES_HZ) - 1))
def test_curves_against_frequency_pass_through_the_cell(station, family, spot):
    """The curves against frequency have the cell's margins at the cell's own frequency."""
    frequency = float(FREQUENCIES_HZ[spot])
    alone = cell(CellRequest(**station, family=family, frequency_hz=frequency, power_w=50.0))

    for limit in alone.limits:
        assert same(alone.curves.margin_by_frequency_db[limit.id][spot], limit.margin_db)
        assert same(alone.curves.margin_high_by_frequency_db[limit.id][spot], limit.margin_high_db)


@examples(60)
@given(station=STATIONS, family=st.sampled_from(FAMILIES), power=st.floats(0.1, 10_000))
def test_curves_against_power_pass_through_the_cell(station, family, power):
    """The curves against power are straight lines of 10 dB a decade through the cell; the match is level."""
    alone = cell(CellRequest(**station, family=family, band="2m", power_w=power))

    for limit in alone.limits:
        curve = alone.curves.margin_by_power_db[limit.id]
        if limit.margin_db is not None:
            slope = 0 if limit.id == "match" else 10
            expected = [limit.margin_db - slope * log10(watts / power) for watts in CURVE_POWERS_W]
            assert np.array(curve, dtype=float) == pytest.approx(np.array(expected), rel=SAME, abs=1e-11)
