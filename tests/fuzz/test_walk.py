"""The walk that words a refusal finds a fault exactly where the decoder finds one, whatever the body."""

import json
from typing import Annotated, Literal

import msgspec
import pytest
from hypothesis import HealthCheck, example, given, seed, settings
from msgspec import Meta
from mutants import SEEDS, spoilt

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.pack import Pack
from jointwise.calc.errors import InputError
from jointwise.calc.fields import object_of
from jointwise.calc.operations import OPERATIONS
from jointwise.calc.refusal import decoded, first_fault

TYPES = {name: operation.request for name, operation in OPERATIONS.items()} | {"pack": Pack}
TABLES = {"interfaces": "n", "cables": "rg_213", "bands": "2m", "modes": "ft8"}
ENTRIES = {name: [msgspec.to_builtins(getattr(catalogue(), name)[entry])] for name, entry in TABLES.items()}
PACK = {"id": "own", "name": "Own", "version": "1", "sources": [], "default_powers_w": [5], **ENTRIES}

SLICE = settings(max_examples=600, deadline=None, database=None, suppress_health_check=list(HealthCheck))


def is_decoded(name, body):
    """Whether the decoder takes a body."""
    try:
        msgspec.json.decode(body, type=TYPES[name])
    except (msgspec.DecodeError, UnicodeDecodeError):
        return False
    return True


def assert_agreement(name, body):
    """The walk finds a fault if and only if the decoder does, and the refusal is the walk's."""
    fault = first_fault(json.loads(body), object_of(TYPES[name]))

    assert (fault is None) == is_decoded(name, body)
    if fault is not None:
        with pytest.raises(InputError) as refused:
            decoded(body, TYPES[name])
        assert str(refused.value) == str(fault)


@pytest.mark.parametrize(("name", "request_"), [*SEEDS, ("pack", PACK)])
def test_walk_and_decoder_agree_on_what_is_spoilt_below(name, request_):
    """On every request that the comparison begins from, most of which can be taken."""
    assert_agreement(name, json.dumps(request_).encode())


def test_every_operation_has_a_request_that_can_be_taken():
    """The comparison begins from a valid request of every operation and a valid pack."""
    assert {name for name, request in SEEDS if is_decoded(name, json.dumps(request).encode())} == set(OPERATIONS)
    assert is_decoded("pack", json.dumps(PACK).encode())


@seed(1)
@SLICE
@given(asked=spoilt())
@example(asked=("matrix", b'{"vswr": 1%s}' % (b"0" * 400)))
@example(asked=("matrix", b'{"altitude_m": -0.0, "region": 2.0}'))
@example(asked=("matrix", b'{"mode": "ssb\\n"}'))
@example(asked=("matrix", b'{"altitude_m": 1e999}'))
@example(asked=("matrix", b'{"altitude_m": 1.7976931348623159e308}'))
@example(asked=("matrix", b'{"": 1}'))
@example(asked=("line", b'{"elements": [{"cable": "rg_213", "length_m": 1, "kind": "\\ud800"}]}'))
@example(asked=("sweep", b'{"load": {"kind": "end", "what": "open", "": 1}}'))
def test_walk_and_decoder_agree_on_requests(asked):
    """On a valid request with a few places spoilt."""
    assert_agreement(*asked)


@seed(1)
@SLICE
@given(asked=spoilt([("pack", PACK)]))
@example(asked=("pack", json.dumps(PACK | {"sources": None}).encode()))
@example(asked=("pack", json.dumps(PACK | {"bands": [{"id": "own", "name": "Own", "regions": {"4": {}}}]}).encode()))
def test_walk_and_decoder_agree_on_packs(asked):
    """On a valid pack with a few places spoilt."""
    assert_agreement(*asked)


UNREAD = [
    (Annotated[float, Meta(gt=0)], "bounds"),
    (Annotated[float, Meta(lt=1)], "bounds"),
    (Annotated[float, Meta(ge=1)], "bounds"),
    (Annotated[int, Meta(multiple_of=2)], "bounds"),
    (Annotated[str, Meta(pattern="^a")], "beside a pattern"),
    (int | str, "no reading"),
    (Literal[1, 2], "no reading"),
]


@pytest.mark.parametrize(("declared", "words"), UNREAD)
def test_a_declaration_without_a_reading_is_noticed(declared, words):
    """A constraint that the walk would overlook stops whoever reads the type."""
    struct = msgspec.defstruct("Unread", [("field", declared)], forbid_unknown_fields=True)

    with pytest.raises(TypeError, match=words):
        object_of(struct)
