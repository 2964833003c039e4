"""The one door to the core: a table of operations and `call`, JSON in, JSON out.

Both homes of the core use `call` and nothing else, so that they can't drift.
"""

from collections.abc import Callable
from typing import Any, NamedTuple

import msgspec

from jointwise.calc.catalogue import Edition, in_force
from jointwise.calc.cell import cell
from jointwise.calc.choose.choose import choose
from jointwise.calc.choose.requests import ChooseRequest
from jointwise.calc.choose.results import ChooseResult
from jointwise.calc.describe import describe
from jointwise.calc.errors import InputError
from jointwise.calc.fitout.fitout import fitout
from jointwise.calc.fitout.requests import FitoutRequest
from jointwise.calc.fitout.results import FitoutResult
from jointwise.calc.kit.kit import kit
from jointwise.calc.kit.requests import KitRequest
from jointwise.calc.kit.results import KitResult
from jointwise.calc.line.line import line
from jointwise.calc.line.requests import LineRequest, SpreadRequest
from jointwise.calc.line.results import LineResult, SpreadResult
from jointwise.calc.line.spread import spread
from jointwise.calc.matrix import matrix
from jointwise.calc.refusal import decoded
from jointwise.calc.requests import CatalogueRequest, CellRequest, MatrixRequest
from jointwise.calc.results import CatalogueResult, CellResult, MatrixResult
from jointwise.calc.snapshot.requests import SnapshotRequest
from jointwise.calc.snapshot.results import SnapshotResult
from jointwise.calc.snapshot.snapshot import snapshot
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.sweep.results import SweepResult
from jointwise.calc.sweep.sweep import sweep

__all__ = ["OPERATIONS", "InputError", "Operation", "call", "canonical"]


class Operation(NamedTuple):
    """A question the core answers."""

    name: str
    summary: str
    request: type[msgspec.Struct]
    result: type[msgspec.Struct]
    answer: Callable[[Any], Any]
    cacheable: bool


OPERATIONS = {
    operation.name: operation
    for operation in (
        Operation(
            "matrix",
            "Margin of every interface family at every band and power level.",
            MatrixRequest,
            MatrixResult,
            matrix,
            cacheable=True,
        ),
        Operation(
            "cell",
            "One margin with its derivation, gates, losses and curves.",
            CellRequest,
            CellResult,
            cell,
            cacheable=True,
        ),
        Operation(
            "snapshot",
            "A matrix with every derivation, packed for a club's website.",
            SnapshotRequest,
            SnapshotResult,
            snapshot,
            cacheable=True,
        ),
        Operation(
            "choose",
            "Which families meet every demand on a joint, ranked, and why the others do not.",
            ChooseRequest,
            ChooseResult,
            choose,
            cacheable=True,
        ),
        Operation(
            "line",
            "What reaches the antenna through a whole line, its weakest part, and what would help.",
            LineRequest,
            LineResult,
            line,
            cacheable=False,
        ),
        Operation(
            "spread",
            "How far unknown electrical lengths and the tolerance of joints spread a line's answer.",
            SpreadRequest,
            SpreadResult,
            spread,
            cacheable=False,
        ),
        Operation(
            "sweep",
            "Which joint of a line is worse than it should be, by a measured sweep of it.",
            SweepRequest,
            SweepResult,
            sweep,
            cacheable=False,
        ),
        Operation(
            "fitout",
            "How to fit, seal and look after every joint of a line.",
            FitoutRequest,
            FitoutResult,
            fitout,
            cacheable=False,
        ),
        Operation(
            "kit",
            "Which adapters to carry so that every port can be joined.",
            KitRequest,
            KitResult,
            kit,
            cacheable=False,
        ),
        Operation(
            "catalogue",
            "Every catalogue value with source and kind, the formulas and the sources.",
            CatalogueRequest,
            CatalogueResult,
            describe,
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
