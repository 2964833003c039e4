"""Declaring a formula once, and recording the calls that made a number.

`@formula(...)` puts equation, symbols with units, validity and source beside a
small numpy function. The declared function is what the matrix calls on arrays
and what the derivation calls on scalars. While `recording()` is active every
call is logged with the numbers put in, so what is shown is what was computed.
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from functools import wraps
from inspect import signature
from typing import Any, Literal

from msgspec import Struct

__all__ = ["FORMULAS", "Formula", "Sourced", "Step", "Symbol", "SymbolValue", "formula", "purpose", "recording"]


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
    end: Literal["both", "low", "high"]
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
    """What a letter stands for, and its unit ("1" when it has none)."""

    meaning: str
    unit: str


@dataclass(frozen=True)
class Formula:
    """A declared formula: result = expression, in the notation of the symbols."""

    id: str
    title: str
    equation: str
    symbols: dict[str, Symbol]
    validity: str
    source: str
    function: Callable[..., Any]

    @property
    def result(self) -> str:
        """The symbol on the left of the equation."""
        return self.equation.partition("=")[0].strip()

    @property
    def arguments(self) -> tuple[str, ...]:
        """The symbols of the function, in call order."""
        return tuple(signature(self.function).parameters)


FORMULAS: dict[str, Formula] = {}


class _Recorder:
    def __init__(self, end: str) -> None:
        self.steps: list[Step] = []
        self.end = end
        self.purpose = ""


_recorder: ContextVar[_Recorder | None] = ContextVar("recorder", default=None)


@contextmanager
def recording(end: str = "both") -> Iterator[list[Step]]:
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
    *, title: str, equation: str, symbols: dict[str, tuple[str, str]], validity: str, source: str
) -> Callable[[Callable[..., Any]], Callable[..., Any]]:
    """Declare the decorated function as a formula.

    `equation` is "result = expression" in plain infix notation; the symbols are
    the function's arguments and the result, each with meaning and unit. The
    docstring is made from the declaration, so that nothing is typed twice.
    """

    def declare(function: Callable[..., Any]) -> Callable[..., Any]:
        declared = Formula(
            id=function.__name__,
            title=title,
            equation=equation,
            symbols={name: Symbol(*words) for name, words in symbols.items()},
            validity=validity,
            source=source,
            function=function,
        )
        names = declared.arguments
        if set(declared.symbols) != {*names, declared.result}:
            raise ValueError(f"{declared.id}: the declared symbols are not its arguments and result")

        @wraps(function)
        def called(*values: Any) -> Any:
            result = function(*values)
            recorder = _recorder.get()
            if recorder is not None:
                recorder.steps.append(_step(declared, recorder, names, values, result))
            return result

        called.__doc__ = _docstring(declared)
        FORMULAS[declared.id] = declared
        return called

    return declare


def _step(declared: Formula, recorder: _Recorder, names: tuple[str, ...], values: tuple, result: Any) -> Step:
    return Step(
        formula=declared.id,
        purpose=recorder.purpose,
        end=recorder.end,
        inputs=[_value(declared, name, value) for name, value in zip(names, values, strict=True)],
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
    lines += [f"{name}: {symbol.meaning} [{symbol.unit}]" for name, symbol in declared.symbols.items()]
    lines += ["", f"Valid: {declared.validity}. Source: {declared.source}. Scalars or numpy arrays."]
    return "\n".join(lines)
