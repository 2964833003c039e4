"""The one door to the core: a table of operations and `call`, JSON in, JSON out.

Server and browser use `call` and nothing else, so that they can't drift.
An operation's code is imported when it is first asked for: a page that starts
needs the matrix alone, and a browser takes long to import all.
"""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property
from typing import Any, Generic, NamedTuple, TypeVar

import msgspec

from .catalogue import Edition, in_force
from .errors import InputError
from .numeric.measures import spoken_in
from .refusal import decoded

__all__ = ["OPERATIONS", "InputError", "Operation", "Task", "call", "canonical"]

Request = TypeVar("Request", bound=msgspec.Struct)
Result = TypeVar("Result", bound=msgspec.Struct)


class Task(NamedTuple, Generic[Request, Result]):
    """The function of an operation, what it takes and what it gives."""

    answer: Callable[[Request], Result]
    request: type[Request]
    result: type[Result]


@dataclass(frozen=True)
class Operation:
    """A question the core answers."""

    name: str
    summary: str
    load: Callable[[], Task[Any, Any]]
    """Imports the operation's room."""
    cacheable: bool
    longest_s: int = 60
    """How long an answer may take, in s; a core that is silent for longer is taken for lost."""

    @cached_property
    def task(self) -> Task[Any, Any]:
        """The operation's function with its types, imported once."""
        return self.load()

    @property
    def request(self) -> type[msgspec.Struct]:
        """What may be asked."""
        return self.task.request

    @property
    def result(self) -> type[msgspec.Struct]:
        """What is answered."""
        return self.task.result


def _matrix() -> Task[Any, Any]:
    from .matrix.matrix import matrix
    from .matrix.requests import MatrixRequest
    from .matrix.results import MatrixResult

    return Task(matrix, MatrixRequest, MatrixResult)


def _cell() -> Task[Any, Any]:
    from .cell.cell import cell
    from .cell.requests import CellRequest
    from .cell.results import CellResult

    return Task(cell, CellRequest, CellResult)


def _question() -> Task[Any, Any]:
    from .question.question import question
    from .question.requests import QuestionRequest
    from .question.results import QuestionResult

    return Task(question, QuestionRequest, QuestionResult)


def _snapshot() -> Task[Any, Any]:
    from .matrix.snapshot.requests import SnapshotRequest
    from .matrix.snapshot.results import SnapshotResult
    from .matrix.snapshot.snapshot import snapshot

    return Task(snapshot, SnapshotRequest, SnapshotResult)


def _choose() -> Task[Any, Any]:
    from .choose.choose import choose
    from .choose.requests import ChooseRequest
    from .choose.results import ChooseResult

    return Task(choose, ChooseRequest, ChooseResult)


def _line() -> Task[Any, Any]:
    from .line.line import line
    from .line.requests import LineRequest
    from .line.results import LineResult

    return Task(line, LineRequest, LineResult)


def _spread() -> Task[Any, Any]:
    from .spread.requests import SpreadRequest
    from .spread.results import SpreadResult
    from .spread.spread import spread

    return Task(spread, SpreadRequest, SpreadResult)


def _sweep() -> Task[Any, Any]:
    from .sweep.requests import SweepRequest
    from .sweep.results import SweepResult
    from .sweep.sweep import judge_sweep

    return Task(judge_sweep, SweepRequest, SweepResult)


def _span() -> Task[Any, Any]:
    from .span.requests import SpanRequest
    from .span.results import SpanResult
    from .span.span import span

    return Task(span, SpanRequest, SpanResult)


def _fitout() -> Task[Any, Any]:
    from .fitout.fitout import fitout
    from .fitout.requests import FitoutRequest
    from .fitout.results import FitoutResult

    return Task(fitout, FitoutRequest, FitoutResult)


def _kit() -> Task[Any, Any]:
    from .kit.kit import kit
    from .kit.requests import KitRequest
    from .kit.results import KitResult

    return Task(kit, KitRequest, KitResult)


def _catalogue() -> Task[Any, Any]:
    from .datasheets.datasheets import datasheets
    from .datasheets.requests import CatalogueRequest
    from .datasheets.results import CatalogueResult

    return Task(datasheets, CatalogueRequest, CatalogueResult)


OPERATIONS = {
    operation.name: operation
    for operation in (
        Operation(
            "matrix",
            "Margin of every connector on every band at every power level.",
            _matrix,
            cacheable=True,
        ),
        Operation(
            "cell",
            "One margin with its derivation, gates, losses and curves.",
            _cell,
            cacheable=True,
        ),
        Operation(
            "question",
            "One question about one joint, typed or filled in: verdict, largest safe power, what would help.",
            _question,
            cacheable=True,
        ),
        Operation(
            "snapshot",
            "A matrix with every derivation, packed for a club's website.",
            _snapshot,
            cacheable=True,
        ),
        Operation(
            "choose",
            "Which connectors meet every demand on a joint, ranked, and why the others do not.",
            _choose,
            cacheable=True,
        ),
        Operation(
            "line",
            "What reaches the antenna through a whole line, its weakest part, and what would help.",
            _line,
            cacheable=False,
        ),
        Operation(
            "spread",
            "How far unknown electrical lengths and the tolerance of joints spread a line's answer.",
            _spread,
            cacheable=False,
        ),
        Operation(
            "sweep",
            "Which joint of a line is worse than it should be, by a measured sweep of it.",
            _sweep,
            cacheable=False,
        ),
        Operation(
            "span",
            "How to set an analyser so that a sweep shows most of a line, and why.",
            _span,
            cacheable=False,
        ),
        Operation(
            "fitout",
            "How to fit, seal and look after every joint of a line.",
            _fitout,
            cacheable=False,
        ),
        Operation(
            "kit",
            "Which adapters to carry so that every port can be joined.",
            _kit,
            cacheable=False,
            longest_s=300,  # a thorough search, on a slow tablet
        ),
        Operation(
            "catalogue",
            "Every catalogue value with source and kind, the formulas and the sources.",
            _catalogue,
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
    task = OPERATIONS[name].task
    with in_force(edition):
        request = decoded(body, task.request)
        with spoken_in(getattr(request, "units", "metric")):
            return msgspec.json.encode(task.answer(request))


def canonical(name: str, body: bytes, edition: Edition | None = None) -> bytes:
    """The same request with every field in its place, however it was written. Raises as `call` does."""
    with in_force(edition):
        return msgspec.json.encode(decoded(body, OPERATIONS[name].request))
