"""Answers are whole: typed JSON with no NaN and no hole, whatever the station."""

import json

import msgspec
import numpy as np
import pytest
from examples import EXAMPLES
from hypothesis import example, given
from hypothesis import strategies as st
from scenarios import BANDS, FAMILIES, LIMIT_FIELDS, POWERS_W, STATIONS, examples, numbers, refused, table

from jointwise.calc.operations import OPERATIONS, call

NO_HEAT_ROOM = {"ambient_temperature_c": 80.0, "solar_irradiance_w_per_m2": 1200.0}


def not_a_number(word):
    """Refuse the words that JSON does not have."""
    raise AssertionError(f"{word} in an answer")


def answer(operation, **fields):
    """The typed result of an operation, by way of its JSON: a null where a number must stand fails."""
    text = call(operation, json.dumps(fields).encode())
    json.loads(text, parse_constant=not_a_number)
    return msgspec.json.decode(text, type=OPERATIONS[operation].result)


@examples(40)
@given(station=STATIONS)
@example(station=NO_HEAT_ROOM)
def test_a_matrix_is_whole(station):
    """The matrix decodes as its own type: no NaN, no infinity, no null but where one is promised."""
    result = answer("matrix", **station, bands=BANDS, powers_w=POWERS_W)

    assert numbers(result.margin_db).shape == (len(FAMILIES), len(BANDS), len(POWERS_W))


@examples(60)
@given(
    station=STATIONS,
    family=st.sampled_from(FAMILIES),
    band=st.sampled_from(BANDS),
    watts=st.sampled_from(POWERS_W),
)
@example(station=NO_HEAT_ROOM, family="n", band="20m", watts=0.0)
@example(station=NO_HEAT_ROOM, family="n", band="20m", watts=5.0)
def test_a_cell_is_whole(station, family, band, watts):
    """A cell decodes as its own type, with a sentence for every limit and gate."""
    result = answer("cell", **station, family=family, band=band, power_w=watts)

    no_margin = result.refused_by is not None or watts == 0
    assert (result.margin_db is None) == (result.margin_high_db is None) == no_margin
    assert sorted(limit.id for limit in result.limits) == ["cable", "contact", "voltage"]
    assert all(limit.sentence for limit in result.limits)
    assert all(gate.sentence for gate in result.gates)
    assert all(one.sentence for one in result.ratings)
    assert result.match.sentence
    assert "nan" not in result.verdict


def test_the_catalogue_is_whole():
    """The catalogue decodes as its own type and holds every family."""
    assert [family.id for family in answer("catalogue").families] == FAMILIES


@examples(60)
@given(station=STATIONS)
@example(station=NO_HEAT_ROOM)
def test_a_margin_is_missing_only_where_refused(station):
    """A cell has no margin just where a hard gate refuses it or one listens, and then no binding limit."""
    result = table(**station)
    missing = refused(result) | (np.array(POWERS_W) == 0)

    assert (np.isnan(numbers(result.margin_db)) == missing).all()
    assert (np.isnan(numbers(result.margin_high_db)) == missing).all()
    assert ((np.array(result.binding) < 0) == missing).all()


@examples(60)
@given(station=STATIONS)
@example(station=NO_HEAT_ROOM)
def test_what_a_limit_allows_is_missing_only_where_all_is_refused(station):
    """What limits allow, and the return loss, are null just where gates other than the match refuse every power."""
    result = table(**station)
    refusals, match = np.array(result.refused_by), [gate.id for gate in result.gates].index("match")
    refused_anyway = ((refusals >= 0) & (refusals != match)).all(axis=-1)[..., None]

    for field in (*LIMIT_FIELDS, "return_loss_db"):
        assert (np.isnan(numbers(getattr(result, field))) == refused_anyway).all(), field


@examples(40)
@given(station=STATIONS)
def test_a_refusal_and_a_mark_have_a_sentence(station):
    """Each gate that refuses or marks a cell has a sentence at its family's head."""
    result = table(**station)
    marks = np.array(result.marks)

    for row, family in enumerate(result.families):
        refusing = {result.gates[index].id for index in np.unique(result.refused_by[row]) if index >= 0}
        marking = {gate.id for bit, gate in enumerate(result.gates) if (marks[row] >> bit & 1).any()}
        assert all(family.gate_reasons[gate] for gate in refusing | marking)


def test_every_operation_has_an_example():
    """The list of requests has one for each operation, and the first of each is answered."""
    without = [name for name in OPERATIONS if name not in EXAMPLES]

    assert not without, (
        f"frontend/payload/cases.json has no request of {without}: add one that is answered, and some bad"
    )
    for operation, request in EXAMPLES.items():
        if operation in OPERATIONS:
            answer(operation, **request)


@pytest.mark.parametrize("operation", OPERATIONS)
def test_the_same_request_has_the_same_answer(operation):
    """An operation answers the same bytes twice."""
    body = json.dumps(EXAMPLES[operation]).encode()

    assert call(operation, body) == call(operation, body)
