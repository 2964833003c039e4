"""Asking the core on the command line: a refusal is one sentence in the words of the options."""

from typing import Any

import click
import msgspec

from jointwise.calc.catalogue import Edition
from jointwise.calc.operations import OPERATIONS, InputError, call

from .refused import refused_words

__all__ = ["Refused", "called", "result_of"]


class Refused(click.ClickException):
    """Input that can't be taken: one sentence, and the exit code of a usage error."""

    exit_code = 2


def called(name: str, body: bytes, edition: Edition | None) -> bytes:
    """The core's answer to a request of an operation. Raises Refused in the words of the options."""
    try:
        return call(name, body, edition)
    except InputError as error:
        raise Refused(refused_words(error, OPERATIONS[name].request)) from error


def result_of(name: str, answer: bytes) -> Any:
    """An answer of an operation, read."""
    return msgspec.json.decode(answer, type=OPERATIONS[name].result)
