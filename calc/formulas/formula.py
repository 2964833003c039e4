"""Declaring a formula once, and recording the calls that made a number.

`@formula(...)` puts equation, symbols with units and ranges, validity and
source beside a small numpy function. The declared function is what the matrix
calls on arrays and what the derivation calls on scalars. While `recording()`
is active every call is logged with the numbers put in, so what is shown is
what was computed.
"""

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from functools import cached_property, wraps
from inspect import signature
from typing import Any, Literal, ParamSpec

import numpy as np
from msgspec import Struct

__all__ = [
    "FORMULAS",
    "Broadcast",
    "Formula",
    "Number",
    "Sourced",
    "Step",
    "Symbol",
    "SymbolSheet",
    "SymbolValue",
    "formula",
    "purpose",
    "recording",
]

Arguments = ParamSpec("Arguments")
Number = float | np.ndarray
"""What a formula is called with: scalars and arrays, which broadcast."""

Broadcast = Any
"""What comes of them: an array if one of them is an array, else a float; no type says so, nor do numpy's own."""

RatingsUsed = Literal["both", "low", "high"]
"""Which end of the ratings a step was computed from."""

Declared = tuple[str, str] | tuple[str, str, float, float]
"""A symbol's meaning and unit, and of an argument the least and the most it may be."""


class SymbolValue(Struct, frozen=True):
    """One symbol of a formula with the number put in; source is set for catalogue values."""

    symbol: str
    meaning: str
    unit: str
    value: float
    source: str = ""
    kind: str = ""


class Step(Struct, frozen=True):
    """One call of a formula: what went in, what came out."""

    formula: str
    purpose: str
    end: RatingsUsed
    inputs: list[SymbolValue]
    result: SymbolValue


class SymbolSheet(Struct, frozen=True):
    """A symbol of a formula."""

    symbol: str
    meaning: str
    unit: str


class Sourced(float):
    """A catalogue number that remembers its source and kind until it is put into a formula."""

    source: str
    kind: str

    def __new__(cls, value: float, source: str, kind: str) -> "Sourced":
        number = super().__new__(cls, value)
        number.source = source
        number.kind = kind
        return number


@dataclass(frozen=True)
class Symbol:
    """What a letter means, its unit ("1" when it has none), and of an argument its range in that unit."""

    meaning: str
    unit: str
    least: float = -np.inf
    most: float = np.inf


@dataclass(frozen=True)
class Formula:
    """A declared formula: result = expression, in the notation of the symbols.

    `validity` is what users read; `allows` is what of it can be executed.
    """

    id: str
    title: str
    equation: str
    symbols: dict[str, Symbol]
    validity: str
    source: str
    function: Callable[..., Number]
    holds: Callable[..., bool] | None = None
    """A condition between arguments, by their names."""

    @cached_property
    def result(self) -> str:
        """The symbol on the left of the equation."""
        return self.equation.partition("=")[0].strip()

    @cached_property
    def arguments(self) -> tuple[str, ...]:
        """The symbols of the function, in call order."""
        return tuple(signature(self.function).parameters)

    def allows(self, *values: float) -> bool:
        """Whether arguments, in call order, lie in their ranges and meet the condition between them."""
        given = dict(zip(self.arguments, values, strict=True))
        if not all(self.symbols[name].least <= value <= self.symbols[name].most for name, value in given.items()):
            return False
        return self.holds is None or bool(self.holds(*(given[name] for name in signature(self.holds).parameters)))


FORMULAS: dict[str, Formula] = {}


class _Recorder:
    def __init__(self, end: RatingsUsed) -> None:
        self.steps: list[Step] = []
        self.end = end
        self.purpose = ""


_recorder: ContextVar[_Recorder | None] = ContextVar("recorder", default=None)


@contextmanager
def recording(end: RatingsUsed = "both") -> Iterator[list[Step]]:
    """Log every formula called inside the block; `end` says which end of the ratings it used."""
    recorder = _Recorder(end)
    token = _recorder.set(recorder)
    try:
        yield recorder.steps
    finally:
        _recorder.reset(token)


@contextmanager
def purpose(words: str) -> Iterator[None]:
    """Say in the record what the calls inside the block are for."""
    recorder = _recorder.get()
    if recorder is None:
        yield
        return
    before, recorder.purpose = recorder.purpose, words
    try:
        yield
    finally:
        recorder.purpose = before


def formula(
    *,
    title: str,
    equation: str,
    symbols: Mapping[str, Declared],
    validity: str,
    source: str,
    holds: Callable[..., bool] | None = None,
) -> Callable[[Callable[Arguments, Number]], Callable[Arguments, Broadcast]]:
    """Declare the decorated function as a formula.

    `equation` is "result = expression" in plain infix notation; the symbols are
    the function's arguments, each with meaning, unit, least and most, and the
    result with meaning and unit. Where `validity` bounds arguments by each
    other, `holds` says so of those that it names as its own arguments. The
    docstring is made from the declaration, so that nothing is typed twice.
    Raises ValueError for a declaration that does not fit its function.
    """

    def declare(function: Callable[Arguments, Number]) -> Callable[Arguments, Broadcast]:
        declared = Formula(
            id=function.__name__,
            title=title,
            equation=equation,
            symbols={name: Symbol(*words) for name, words in symbols.items()},
            validity=validity,
            source=source,
            function=function,
            holds=holds,
        )
        names = declared.arguments
        if set(symbols) != {*names, declared.result}:
            raise ValueError(f"{declared.id}: the declared symbols are not its arguments and result")
        if unbounded := [name for name in names if not np.isfinite(declared.symbols[name].least)]:
            raise ValueError(f"{declared.id}: no range declared for {', '.join(unbounded)}")

        @wraps(function)
        def called(*values: Arguments.args, **named: Arguments.kwargs) -> Broadcast:
            result = function(*values, **named)
            recorder = _recorder.get()
            if recorder is not None:
                put_in = [*values, *(named[name] for name in names[len(values) :])]
                recorder.steps.append(_step(declared, recorder, put_in, result))
            return result

        called.__doc__ = _docstring(declared)
        FORMULAS[declared.id] = declared
        return called

    return declare


def _step(declared: Formula, recorder: _Recorder, put_in: list[Any], result: Any) -> Step:
    return Step(
        formula=declared.id,
        purpose=recorder.purpose,
        end=recorder.end,
        inputs=[_value(declared, name, value) for name, value in zip(declared.arguments, put_in, strict=True)],
        result=_value(declared, declared.result, result),
    )


def _value(declared: Formula, name: str, value: Any) -> SymbolValue:
    symbol = declared.symbols[name]
    return SymbolValue(
        symbol=name,
        meaning=symbol.meaning,
        unit=symbol.unit,
        value=float(value),
        source=getattr(value, "source", ""),
        kind=getattr(value, "kind", ""),
    )


def _docstring(declared: Formula) -> str:
    lines = [f"{declared.title}: {declared.equation}.", ""]
    lines += [f"{name}: {symbol.meaning} [{symbol.unit}]{_range(symbol)}" for name, symbol in declared.symbols.items()]
    lines += ["", f"Valid: {declared.validity}. Source: {declared.source}. Scalars or numpy arrays."]
    return "\n".join(lines)


def _range(symbol: Symbol) -> str:
    return f", {symbol.least:g} to {symbol.most:g}" if np.isfinite(symbol.least) else ""
