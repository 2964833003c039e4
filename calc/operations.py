"""The one door to the core: a table of operations and `call`, JSON in, JSON out.

Both homes of the core use `call` and nothing else, so that they can't drift.
"""

import re
from collections.abc import Callable
from typing import Any, NamedTuple

import msgspec

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
from jointwise.calc.refusal import refusal
from jointwise.calc.requests import CatalogueRequest, CellRequest, MatrixRequest
from jointwise.calc.results import CatalogueResult, CellResult, MatrixResult
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.sweep.results import SweepResult
from jointwise.calc.sweep.sweep import sweep

__all__ = ["OPERATIONS", "InputError", "Operation", "call"]

DEEPEST = 50
"""Brackets within brackets a request may have; its own shape has three."""


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


def call(name: str, body: bytes) -> bytes:
    """Answer one operation: JSON request in, JSON result out.

    Raises KeyError for an unknown operation and InputError, whose text is one
    sentence for the user, for a request that can't be answered.
    """
    operation = OPERATIONS[name]
    _refuse_deep_nesting(body)
    try:
        request = msgspec.json.decode(body, type=operation.request)
    except (msgspec.DecodeError, UnicodeDecodeError) as error:
        raise refusal(error, body, operation.request) from None
    return msgspec.json.encode(operation.answer(request))


def _refuse_deep_nesting(body: bytes) -> None:
    """In the browser a decoder that runs out of stack takes Python down with it, so it never gets there."""
    depth = deepest = 0
    for bracket in re.findall(rb"[\[{\]}]", body):
        depth += 1 if bracket in b"[{" else -1
        deepest = max(deepest, depth)
    if deepest > DEEPEST:
        raise InputError("request", body[:200].decode("utf-8", "replace"), f"brackets nested up to {DEEPEST} deep")
