"""Bad input is refused with one sentence: the field, the value and what is allowed; nothing else escapes."""

import json
import math

import msgspec
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from scenarios import FAMILIES, examples

from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.errors import InputError
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.operations import OPERATIONS, call

CELL = {"family": "n", "band": "2m"}

BAD_MATRIX = [  # request fields, field named, words of the sentence
    ({"powers_w": [-1]}, "powers_w[0]", "-1; allowed: a number from 0 to 100000"),
    ({"powers_w": [5, 1e9]}, "powers_w[1]", "1000000000.0; allowed: a number from 0 to 100000"),
    ({"powers_w": []}, "powers_w", "a list of 1 to 24 entries"),
    ({"powers_w": [1] * 25}, "powers_w", "a list of 1 to 24 entries"),
    ({"powers_w": 100}, "powers_w", "100; allowed: a list"),
    ({"powers_w": ["100"]}, "powers_w[0]", '"100"; allowed: a number'),
    ({"vswr": 0.99}, "vswr", "0.99; allowed: a number from 1 to 20"),
    ({"vswr": 21}, "vswr", "21; allowed: a number from 1 to 20"),
    ({"vswr": None}, "vswr", "null; allowed: a number from 1 to 20"),
    ({"vswr": True}, "vswr", "true; allowed: a number from 1 to 20"),
    ({"vswr": "1.5"}, "vswr", '"1.5"; allowed: a number from 1 to 20'),
    ({"vswr": [1.5]}, "vswr", "[1.5]; allowed: a number from 1 to 20"),
    ({"frequencies_hz": [0]}, "frequencies_hz[0]", "0; allowed: a number from 100000 to 5e+10"),
    (
        {"frequencies_hz": [6e10]},
        "frequencies_hz[0]",
        "60000000000.0; allowed: a number from 100000 to 5e+10",
    ),
    ({"frequencies_hz": [1e6] * 201}, "frequencies_hz", "a list of 0 to 200 entries"),
    ({"families": ["no_such"]}, "families[0]", '"no_such"; allowed: one of uhf,'),
    ({"families": ["n", "N"]}, "families[1]", '"N"; allowed: a name of small letters'),
    ({"families": []}, "families", "a list of 1 to 100 entries"),
    ({"bands": ["2m", "11m"]}, "bands[1]", '"11m"; allowed: one of 2200m,'),
    ({"bands": []}, "bands", "at least one band or spot frequency"),
    ({"bands": ["1_25m"], "region": 1}, "bands[0]", "a band of Region 1; this one is allocated in Region 2"),
    ({"region": 0}, "region", "0; allowed: a whole number from 1 to 3"),
    ({"region": 4}, "region", "4; allowed: a whole number from 1 to 3"),
    ({"region": 1.5}, "region", "1.5; allowed: a whole number from 1 to 3"),
    ({"mode": "shouting"}, "mode", '"shouting"; allowed: one of ssb,'),
    ({"condition": "brand new"}, "condition", '"brand new"; allowed: a name'),
    ({"cable": "jam"}, "cable", '"jam"; allowed: one of rg_174,'),
    ({"cable": "RG-58"}, "cable", '"RG-58"; allowed: a name of small letters'),
    ({"cable_dielectric": "ptfe"}, "cable_dielectric", '"ptfe"; allowed: only the fields region,'),
    ({"exposure": "damp"}, "exposure", '"damp"; allowed: one of exposed, immersed, indoor, sheltered'),
    ({"power_is": "peak"}, "power_is", '"peak"; allowed: one of forward, net'),
    ({"added_sealing": "yes"}, "added_sealing", '"yes"; allowed: true or false'),
    ({"on_time_s": 15}, "off_time_s", "null; allowed: a time in seconds"),
    ({"off_time_s": 15}, "on_time_s", "null; allowed: a time in seconds"),
    ({"on_time_s": 1, "off_time_s": 1, "transmit_share": 0.5}, "transmit_share", "0.5; allowed: left out"),
    ({"colour": "blue"}, "colour", '"blue"; allowed: only the fields region,'),
    (
        {"powers_w": [1] * 24, "frequencies_hz": [1e6] * 200, "families": ["n"] * 100},
        "powers_w",
        "at most 100000 cells",
    ),
]

BAD_CELL = [
    ({"family": "n"}, "band", "null; allowed: either a band or a spot frequency, one of the two"),
    ({"family": "n", "band": "2m", "frequency_hz": 1e8}, "band", '"2m"; allowed: either a band or'),
    ({"band": "2m"}, "family", "null; allowed: a value, as this field can't be left out"),
    ({"family": "zz", "band": "2m"}, "family", '"zz"; allowed: one of uhf,'),
    ({"family": "n", "band": "zz"}, "band", '"zz"; allowed: one of 2200m,'),
    ({"family": "n", "frequency_hz": 0}, "frequency_hz", "0; allowed: a number from 100000 to 5e+10"),
    (CELL | {"power_w": -0.001}, "power_w", "-0.001; allowed: a number from 0 to 100000"),
]

BROKEN = [  # bodies that are not JSON objects
    b"",
    b"{",
    b"{'vswr': 2}",
    b'{"vswr": 2,}',
    b'{"vswr": 2} trailing',
    b"[]",
    b"null",
    b"7",
    b'"matrix"',
    b"\xff\xfe\x00",
    b'{"vswr": ' + b"9" * 5000 + b"}",
    '{"vswr": 2}'.encode("utf-16"),
]

NOT_FINITE = [b"NaN", b"Infinity", b"-Infinity", b"1e999"]
DEPTHS = [10, 100, 500, *range(700, 1001), 5000, 100_000]  # each one around the interpreter's own limit
NESTED = [b'{"powers_w": [1, %s]}', b'{"vswr": %s}', b"%s", b'{"families": [%s]}']

CELL_FIELDS = CellRequest.__struct_fields__
COMPANIONS = {"on_time_s": {"off_time_s": 1.0}, "off_time_s": {"on_time_s": 1.0}}


def refusal(operation, body):
    """The InputError that a body raises."""
    with pytest.raises(InputError) as caught:
        call(operation, body)
    assert str(caught.value).encode()  # it must be possible to send the sentence
    return caught.value


def numeric_limits(request):
    """Field, lowest and highest value of every bounded number of a request."""
    limits = []
    for field in msgspec.inspect.type_info(request).fields:
        kind = field.type
        while isinstance(kind, msgspec.inspect.Metadata):
            kind = kind.type
        if isinstance(kind, msgspec.inspect.UnionType):
            kind = next(one for one in kind.types if not isinstance(one, msgspec.inspect.NoneType))
        while isinstance(kind, msgspec.inspect.Metadata):
            kind = kind.type
        if isinstance(kind, msgspec.inspect.FloatType):
            limits.append((field.name, kind.ge, kind.le))
    return limits


def within_request(field, value):
    """A cell request in which only this field is out of the ordinary."""
    place = {"family": "n"} if field == "frequency_hz" else CELL
    return json.dumps(place | COMPANIONS.get(field, {}) | {field: value}).encode()


@pytest.mark.parametrize(("fields", "field", "words"), BAD_MATRIX)
def test_a_bad_matrix_request_is_refused(fields, field, words):
    """A bad field of a matrix request is refused by name, with the value and what is allowed."""
    error = refusal("matrix", json.dumps(fields).encode())

    assert field in error.field
    assert words in str(error)
    assert str(error) == f"{error.field} is {error.value}; allowed: {error.allowed}."


@pytest.mark.parametrize(("fields", "field", "words"), BAD_CELL)
def test_a_bad_cell_request_is_refused(fields, field, words):
    """A bad field of a cell request is refused by name, with the value and what is allowed."""
    error = refusal("cell", json.dumps(fields).encode())

    assert error.field == field
    assert words in str(error)


@pytest.mark.parametrize("operation", OPERATIONS)
@pytest.mark.parametrize("body", BROKEN)
def test_a_body_that_is_no_json_object_is_refused(body, operation):
    """A broken body is refused as a whole, for every operation."""
    assert refusal(operation, body).field == "request"


@pytest.mark.parametrize("word", NOT_FINITE)
@pytest.mark.parametrize("field", ["vswr", "altitude_m", "powers_w"])
def test_a_number_that_is_not_finite_is_refused_by_name(field, word):
    """NaN and infinity are refused at the field where they stand."""
    value = b"[%s]" % word if field == "powers_w" else word

    error = refusal("matrix", b'{"%s": %s}' % (field.encode(), value))

    assert error.field.startswith(field)
    assert error.value in {"NaN", "Infinity", "-Infinity"}


@pytest.mark.parametrize("pattern", NESTED)
def test_deep_nesting_is_refused(pattern):
    """Nesting of any depth is refused, never a crash."""
    for depth in DEPTHS:
        assert refusal("matrix", pattern % (b"[" * depth + b"]" * depth)).allowed


@pytest.mark.parametrize(
    "body",
    [
        b'{"powers_w": [1, -1], "powers_w": [1]}',
        b'{"powers_w": [-1], "powers_w": 3}',
        b'{"vswr": 0.5, "vswr": 2}',
        b'{"families": ["A"], "families": {}}',
    ],
)
def test_a_field_given_twice_is_refused(body):
    """A body with a bad field that is given again is refused at that field."""
    assert refusal("matrix", body).field.startswith(("powers_w", "vswr", "families"))


def test_a_field_given_twice_is_refused_with_the_value_that_was_wrong():
    """The sentence never calls a value wrong that lies in the range it names."""
    assert refusal("matrix", b'{"vswr": 0.5, "vswr": 2}').value != "2"


@pytest.mark.parametrize("body", [b'{"mode": "\\ud800"}', b'{"\\ud800": 1}', b'{"families": ["\\udfff"]}'])
def test_half_a_character_is_refused_in_a_sentence_that_can_be_sent(body):
    """A lone surrogate is refused, and the sentence can be encoded."""
    assert refusal("matrix", body)


@pytest.mark.parametrize(("field", "low", "high"), numeric_limits(CellRequest))
def test_the_limits_themselves_are_allowed(field, low, high):
    """Both limits of a field's range are answered."""
    for limit in (low, high):
        assert call("cell", within_request(field, limit))


@pytest.mark.parametrize(("field", "low", "high"), numeric_limits(CellRequest))
def test_the_next_number_outside_a_limit_is_refused(field, low, high):
    """The next representable number on the far side of each limit is refused at its field."""
    for outside in (math.nextafter(low, -math.inf), math.nextafter(high, math.inf)):
        error = refusal("cell", within_request(field, outside))
        assert error.field == field
        assert f"from {low:g} to {high:g}" in error.allowed


@pytest.mark.parametrize(("field", "low", "high"), numeric_limits(CellRequest))
def test_the_next_number_inside_a_limit_is_allowed(field, low, high):
    """The next representable number on the near side of each limit is answered."""
    for inside in (math.nextafter(low, math.inf), math.nextafter(high, -math.inf)):
        assert call("cell", within_request(field, inside))


def test_every_number_of_a_request_has_limits():
    """No number of a request is unbounded, and all that matter are among them."""
    limits = numeric_limits(CellRequest)

    assert all(low is not None and high is not None for _, low, high in limits)
    assert {"vswr", "power_w", "frequency_hz", "altitude_m"} <= {field for field, _, _ in limits}


def test_an_unknown_operation_is_a_key_error():
    """An operation that does not exist is a KeyError with its name."""
    with pytest.raises(KeyError, match="nonsense"):
        call("nonsense", b"{}")


JSON_VALUES = st.recursive(
    st.one_of(st.none(), st.booleans(), st.integers(), st.floats(), st.text(max_size=8), st.sampled_from(FAMILIES)),
    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(st.text(max_size=4), inner, max_size=3)),
    max_leaves=6,
)
FIELD_NAMES = sorted({*MatrixRequest.__struct_fields__, *CELL_FIELDS})
REQUESTS = st.dictionaries(st.one_of(st.sampled_from(FIELD_NAMES), st.text(max_size=6)), JSON_VALUES, max_size=4)


def answered_or_refused(operation, body):
    """Whether a body has an answer or an InputError that can be sent; anything else escapes."""
    try:
        return bool(call(operation, body))
    except InputError as error:
        return bool(str(error).encode())


@pytest.mark.parametrize("operation", OPERATIONS)
@examples(300)
@given(fields=REQUESTS)
@example(fields={"vswr": float("nan"), "colour": float("inf")})
def test_any_json_is_answered_or_refused(operation, fields):
    """Any JSON object is answered or refused with a sentence, never anything else."""
    assert answered_or_refused(operation, json.dumps(fields).encode())


@pytest.mark.parametrize("operation", OPERATIONS)
@examples(200)
@given(value=JSON_VALUES)
def test_any_json_value_is_answered_or_refused(operation, value):
    """Any JSON value as the whole body is answered or refused with a sentence."""
    assert answered_or_refused(operation, json.dumps(value).encode())


@pytest.mark.parametrize("operation", OPERATIONS)
@examples(200)
@given(body=st.binary(max_size=40))
def test_any_bytes_are_answered_or_refused(operation, body):
    """Any bytes are answered or refused with a sentence."""
    assert answered_or_refused(operation, body)
