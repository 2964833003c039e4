"""A short slice of what `make fuzz` does at length, always the same, and all inputs that once were trouble."""

import pytest
from hypothesis import HealthCheck, example, given, seed, settings
from mutants import spoilt
from parsers import FOUND, PARSERS, reader

from jointwise.calc.errors import InputError
from jointwise.calc.operations import call

TROUBLE = [
    pytest.param(file.parent.name, file, id=f"{file.parent.name}/{file.name}") for file in sorted(FOUND.glob("*/*"))
]


def answered_or_refused(read, data):
    """Whether an input has an answer or a sentence that can be sent; anything else escapes."""
    try:
        read(data)
    except InputError as refused:
        return bool(str(refused).encode())
    return True


@pytest.mark.parametrize("parser", PARSERS)
def test_seeds_can_be_read(parser):
    """The texts that the fuzzing of a parser begins from are whole."""
    for text in PARSERS[parser].seeds:
        PARSERS[parser].read(text.encode())


@pytest.mark.parametrize(("name", "file"), TROUBLE)
def test_what_once_was_trouble_is_none(name, file):
    """An input that broke a parser or an operation is answered or refused with a sentence."""
    assert answered_or_refused(reader(name), file.read_bytes())


@seed(1)
@settings(max_examples=400, deadline=None, database=None, suppress_health_check=list(HealthCheck))
@given(asked=spoilt())
@example(asked=("matrix", b'{"x` - at `$.vswr": 1}'))
@example(asked=("line", b'{"elements":[{"kind":"joint","x` - at `$.load":1}]}'))
def test_a_spoilt_request_is_answered_or_refused(asked):
    """A valid request with a few places spoilt is answered or refused with a sentence."""
    operation, body = asked
    assert answered_or_refused(lambda data: call(operation, data), body)
