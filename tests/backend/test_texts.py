"""Text from outside becoming the JSON that the core reads."""

import json

import pytest

from jointwise.backend.texts import plain, range_words, request_body, single
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.fields import Number, OneOf, object_of
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.operations import OPERATIONS

READ = [
    (CellRequest, "vswr", ["2"], 2),
    (CellRequest, "vswr", ["1e1"], 10),
    (CellRequest, "vswr", ["two"], "two"),
    (CellRequest, "vswr", ["-inf"], float("-inf")),
    (CellRequest, "vswr", ["1e999"], "1e999"),
    (CellRequest, "vswr", ["2", "3"], ["2", "3"]),
    (CellRequest, "region", ["2"], 2),
    (CellRequest, "added_sealing", ["true"], True),
    (CellRequest, "added_sealing", ["false"], False),
    (CellRequest, "band", ["null"], None),
    (CellRequest, "family", ["null"], "null"),
    (CellRequest, "family", ["10"], "10"),
    (CellRequest, "frequency_hz", ["1.44e8"], 1.44e8),
    (CellRequest, "colour", ["red"], "red"),
    (CellRequest, "family", ["\udcff"], "?"),
    (MatrixRequest, "families", ["n, sma"], ["n", "sma"]),
    (MatrixRequest, "families", ["n,sma", "f"], ["n", "sma", "f"]),
    (MatrixRequest, "families", ["n,,sma"], ["n", "", "sma"]),
    (MatrixRequest, "families", [""], []),
    (MatrixRequest, "families", ["null"], None),
    (MatrixRequest, "powers_w", ["0,1.5,x"], [0, 1.5, "x"]),
]


@pytest.mark.parametrize(("struct", "name", "texts", "value"), READ)
def test_text_is_read_as_its_field_declares(struct, name, texts, value):
    """Text becomes the value that its field declares, or stays text for the core to refuse."""
    read = json.loads(request_body(struct, {name: texts}))[name]

    assert read == value
    assert isinstance(read, bool) == isinstance(value, bool)


@pytest.mark.parametrize("value", [True, False, 1e-3, 5e10, 0.1 + 0.2, 7, "n", [0.0, 1500.0]])
def test_plain_text_reads_back(value):
    """A value written as plain text reads back as that value."""
    name = {bool: "added_sealing", float: "vswr", int: "region", str: "family", list: "powers_w"}[type(value)]
    struct = MatrixRequest if name == "powers_w" else CellRequest

    assert json.loads(request_body(struct, {name: [plain(value)]}))[name] == value


@pytest.mark.parametrize("operation", OPERATIONS.values(), ids=OPERATIONS)
def test_every_field_explains_itself(operation):
    """Each field of each request has a description, and each number its range."""
    for field in object_of(operation.request).fields.values():
        assert field.description, field.name
        assert range_words(field) or not isinstance(single(field).shape, Number | OneOf), field.name
