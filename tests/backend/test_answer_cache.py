"""The answers a process keeps: the same bytes as computed anew, told apart by all they depend on, bounded."""

import pytest

from jointwise.backend.answer_cache import AnswerCache
from jointwise.calc.errors import InputError
from jointwise.calc.operations import OPERATIONS

CELL = OPERATIONS["cell"]


def test_an_answer_is_made_once():
    """What was made under a key is given again, with the same tag."""
    answers, made = AnswerCache(100), []

    first = answers.get("key", lambda: made.append(1) or b"answer")

    assert answers.get("key", lambda: made.append(1) or b"other") == first
    assert made == [1]


def test_the_one_unused_for_longest_goes_first():
    """Answers stay within their bytes; what was asked for last stays."""
    answers = AnswerCache(10)
    for name in ("old", "used"):
        answers.get(name, lambda: b"12345")
    answers.get("old", lambda: b"again")

    answers.get("new", lambda: b"12345")

    assert answers.get("old", lambda: b"anew").body == b"12345"
    assert answers.get("used", lambda: b"anew").body == b"anew"


def test_an_answer_too_long_to_keep_is_told_all_the_same():
    """Without room nothing is kept, and every answer is given."""
    answers = AnswerCache(0)

    assert [answers.get("key", lambda text=text: text).body for text in (b"one", b"two")] == [b"one", b"two"]


@pytest.mark.parametrize(
    ("one", "other", "same"),
    [
        (b'{"family":"n","band":"2m"}', b'{ "band": "2m", "vswr": 1.5, "family": "n" }', True),
        (b'{"family":"n","band":"2m"}', b'{"family":"n","band":"2m","power_w":1e2}', True),
        (b'{"family":"n","band":"2m"}', b'{"family":"n","band":"70cm"}', False),
        (b'{"family":"n","band":"2m"}', b'{"family":"n","band":"2m","vswr":1.5000000000000002}', False),
    ],
)
def test_a_key_tells_requests_apart_however_they_are_written(one, other, same):
    """Requests that mean the same have the same key, others have not."""
    answers = AnswerCache(0)

    assert (answers.key(CELL, one) == answers.key(CELL, other)) is same


def test_a_key_tells_operations_apart():
    """The same request of two operations has two keys."""
    answers = AnswerCache(0)

    assert answers.key(OPERATIONS["matrix"], b"{}") != answers.key(OPERATIONS["choose"], b"{}")


def test_a_bad_request_has_no_key():
    """A request that can't be answered is refused, not kept."""
    with pytest.raises(InputError, match="vswr is 0"):
        AnswerCache(0).key(CELL, b'{"family":"n","band":"2m","vswr":0}')
