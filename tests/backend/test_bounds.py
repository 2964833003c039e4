"""All that can be asked is bounded: the description states each bound, and one more is refused by its name."""

import json

import pytest

from jointwise.backend.openapi import document
from jointwise.calc.errors import InputError
from jointwise.calc.kit.requests import MOST_PAIRS, MOST_PORTS
from jointwise.calc.matrix.requests import MOST_CELLS
from jointwise.calc.operations import OPERATIONS, call
from jointwise.calc.refusal import MOST_REQUEST_BYTES
from jointwise.calc.spread.requests import MOST_DRAWN
from jointwise.calc.waves.touchstone import MOST_CHARACTERS

JOINT = {"kind": "joint", "family": "n"}
LOAD = {"kind": "vswr", "vswr": 2}
LINE = {"elements": [JOINT], "load": LOAD, "band": "2m"}
PORT = {"family": "n", "gender": "plug", "highest_frequency_hz": 1e8}
OWNED = {"one_family": "n", "one_gender": "plug", "other_family": "bnc", "other_gender": "jack"}
POINTS = [{"frequency_hz": 1e5 + at, "resistance_ohm": 50} for at in range(2001)]
SPOTS = [1e6 + at for at in range(201)]

ONE_OVER = [  # operation, request, field named, words of the sentence, bound as the description states it
    ("matrix", {"families": ["n"] * 101}, "families", "1 to 100 entries", 100),
    ("matrix", {"bands": ["2m"] * 101}, "bands", "0 to 100 entries", 100),
    ("matrix", {"frequencies_hz": SPOTS}, "frequencies_hz", "0 to 200 entries", 200),
    ("matrix", {"powers_w": [1] * 25}, "powers_w", "1 to 24 entries", 24),
    (
        "matrix",
        {"families": ["n"] * 21, "bands": [], "frequencies_hz": SPOTS[:200], "powers_w": [1] * 24},
        "families x columns x powers_w",
        "at most 100000 cells",
        MOST_CELLS,
    ),
    ("choose", {"bands": ["2m"] * 101}, "bands", "0 to 100 entries", 100),
    ("choose", {"frequencies_hz": SPOTS}, "frequencies_hz", "0 to 200 entries", 200),
    ("line", LINE | {"elements": [JOINT] * 61}, "elements", "1 to 60 entries", 60),
    ("line", LINE | {"load": {"kind": "table", "points": POINTS}}, "load.points", "2 to 2000 entries", 2000),
    (
        "line",
        LINE | {"load": {"kind": "measured", "touchstone": "!" * (MOST_CHARACTERS + 1)}},
        "load.touchstone",
        "at most 3000000 characters",
        MOST_CHARACTERS,
    ),
    ("line", LINE | {"elements": [JOINT | {"name": "x" * 61}]}, "elements[0].name", "at most 60 characters", 60),
    ("spread", LINE | {"draws": 100_001}, "draws", "100 to 100000", 100_000),
    ("spread", LINE | {"elements": [JOINT] * 60, "draws": 10_001}, "draws", "stay within 600000", MOST_DRAWN),
    ("fitout", {"elements": [JOINT] * 61, "band": "2m"}, "elements", "1 to 60 entries", 60),
    ("kit", {"ports": [PORT] * 61}, "ports", "2 to 60 entries", MOST_PORTS),
    ("kit", {"ports": [PORT] * 2, "pairs": [[0, 1]] * 401}, "pairs", "0 to 400 entries", MOST_PAIRS),
    ("kit", {"ports": [PORT] * 2, "owned": [OWNED] * 201}, "owned", "0 to 200 entries", 200),
    ("catalogue", " " * MOST_REQUEST_BYTES, "request", "at most 4000000 bytes", MOST_REQUEST_BYTES),
]
BOUNDED_BY = {
    "string": ({"maxLength"}, {"enum"}, {"const"}, {"pattern"}),
    "array": ({"maxItems"},),
    "integer": ({"minimum", "maximum"}, {"enum"}),
    "number": ({"minimum", "maximum"},),
}
"""Which words of a schema bound a value, by its type."""


def unbounded(schema, schemas, path):
    """Paths below a schema where a value of any size could stand."""
    if "$ref" in schema:
        name = schema["$ref"].rsplit("/", 1)[1]
        return [] if name in path else unbounded(schemas[name], schemas, (*path, name))
    found = [
        one for other in ("anyOf", "oneOf") for part in schema.get(other, ()) for one in unbounded(part, schemas, path)
    ]
    kind = schema.get("type")
    if kind in BOUNDED_BY and not any(words <= schema.keys() for words in BOUNDED_BY[kind]):
        found.append(".".join(path))
    if kind == "object" and schema.get("additionalProperties") is not False:
        found.append(".".join(path))
    for name, inside in schema.get("properties", {}).items():
        found += unbounded(inside, schemas, (*path, name))
    return found + (unbounded(schema["items"], schemas, (*path, "[]")) if "items" in schema else [])


@pytest.mark.parametrize("operation", OPERATIONS.values(), ids=OPERATIONS)
def test_nothing_in_a_request_is_unbounded(operation):
    """The description of every request bounds each of its lists, texts and numbers, and takes no unknown field."""
    schemas = document()["components"]["schemas"]

    assert unbounded({"$ref": f"#/{operation.request.__name__}"}, schemas, ()) == []


@pytest.mark.parametrize(("operation", "request_", "field", "words", "bound"), ONE_OVER)
def test_one_more_than_the_bound_is_refused_by_name(operation, request_, field, words, bound):
    """A request one over a bound is refused with the field and the bound, which the description states too."""
    body = json.dumps(request_).encode()

    with pytest.raises(InputError) as refused:
        call(operation, body)

    assert refused.value.field == field
    assert words in str(refused.value)
    assert str(bound) in json.dumps(document()["paths"] | document()["components"]["schemas"])


def test_the_sentence_about_a_long_name_is_short():
    """A field with a name of a million letters is refused without repeating them."""
    with pytest.raises(InputError) as refused:
        call("matrix", b'{"%s": 1}' % (b"k" * 1_000_000))

    assert len(str(refused.value)) < 1000


@pytest.mark.parametrize("name", ["x` - at `$.vswr", "x` - at `$.load", "a\nb", "a`b", "` - at `$"])
@pytest.mark.parametrize("other", [{}, {"vswr": 2}])
def test_a_name_that_reads_like_a_message_is_refused_by_name(name, other):
    """An unknown field is named as it is, whatever its name looks like, at the top and inside a list."""
    for operation, request_ in (
        ("matrix", other | {name: 1}),
        ("line", LINE | {"elements": [JOINT | {name: 1}]}),
    ):
        with pytest.raises(InputError) as refused:
            call(operation, json.dumps(request_).encode())

        assert refused.value.field.endswith(json.dumps(name).strip('"'))
        assert "only the fields" in refused.value.allowed
