"""The one door to the core: a table of operations and `call`, JSON in, JSON out.

Both homes of the core use `call` and nothing else, so that they can't drift.
An operation's code is imported when it is first asked for: a page that starts
needs the matrix alone, and a browser takes long to import all.
"""

from collections.abc import Callable
from importlib import import_module
from typing import Any, NamedTuple

import msgspec

from jointwise.calc.catalogue import Edition, in_force
from jointwise.calc.errors import InputError
from jointwise.calc.refusal import decoded

__all__ = ["OPERATIONS", "InputError", "Operation", "call", "canonical"]


class Operation(NamedTuple):
    """A question the core answers."""

    name: str
    summary: str
    place: str
    """Where its function stands: module:function, from one request Struct to one result Struct."""
    cacheable: bool
    longest_s: int = 60
    """How long an answer may take, in s; a core that is silent for longer is taken for lost."""

    @property
    def answer(self) -> Callable[[Any], Any]:
        """From the request to the result."""
        module, function = self.place.split(":")
        return getattr(import_module(f"jointwise.calc.{module}"), function)

    @property
    def request(self) -> type[msgspec.Struct]:
        """What may be asked."""
        return self.answer.__annotations__["request"]

    @property
    def result(self) -> type[msgspec.Struct]:
        """What is answered."""
        return self.answer.__annotations__["return"]


OPERATIONS = {
    operation.name: operation
    for operation in (
        Operation(
            "matrix",
            "Margin of every interface family at every band and power level.",
            "matrix:matrix",
            cacheable=True,
        ),
        Operation(
            "cell",
            "One margin with its derivation, gates, losses and curves.",
            "cell:cell",
            cacheable=True,
        ),
        Operation(
            "snapshot",
            "A matrix with every derivation, packed for a club's website.",
            "snapshot.snapshot:snapshot",
            cacheable=True,
        ),
        Operation(
            "choose",
            "Which families meet every demand on a joint, ranked, and why the others do not.",
            "choose.choose:choose",
            cacheable=True,
        ),
        Operation(
            "line",
            "What reaches the antenna through a whole line, its weakest part, and what would help.",
            "line.line:line",
            cacheable=False,
        ),
        Operation(
            "spread",
            "How far unknown electrical lengths and the tolerance of joints spread a line's answer.",
            "line.spread:spread",
            cacheable=False,
        ),
        Operation(
            "sweep",
            "Which joint of a line is worse than it should be, by a measured sweep of it.",
            "sweep.sweep:sweep",
            cacheable=False,
        ),
        Operation(
            "fitout",
            "How to fit, seal and look after every joint of a line.",
            "fitout.fitout:fitout",
            cacheable=False,
        ),
        Operation(
            "kit",
            "Which adapters to carry so that every port can be joined.",
            "kit.kit:kit",
            cacheable=False,
            longest_s=300,  # a thorough search, on a slow tablet
        ),
        Operation(
            "catalogue",
            "Every catalogue value with source and kind, the formulas and the sources.",
            "describe:describe",
            cacheable=True,
        ),
    )
}


def call(name: str, body: bytes, edition: Edition | None = None) -> bytes:
    """Answer one operation: JSON request in, JSON result out.

    The packs of an `edition` count, without one the built-in catalogue alone.
    Raises KeyError for an unknown operation and InputError, whose text is one
    sentence for the user, for a request that can't be answered.
    """
    operation = OPERATIONS[name]
    with in_force(edition):
        return msgspec.json.encode(operation.answer(decoded(body, operation.request)))


def canonical(name: str, body: bytes, edition: Edition | None = None) -> bytes:
    """The same request with every field in its place, however it was written. Raises as `call` does."""
    with in_force(edition):
        return msgspec.json.encode(decoded(body, OPERATIONS[name].request))
