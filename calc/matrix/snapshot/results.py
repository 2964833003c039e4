"""What a snapshot holds. A derivation is packed: what many cells share is stored once, and is named by its index.

A cell names a chain for each limit, a chain its steps, a step its formula and
values. Numbers are cut to what a reader can use.
"""

from typing import Literal

from msgspec import Struct

from ...formulas.formula import SymbolSheet
from ..results import MatrixResult
from .requests import SnapshotRequest

__all__ = ["Derivations", "PackedStep", "PackedValue", "ShortFormula", "SnapshotResult"]


class ShortFormula(Struct, frozen=True):
    """A formula as a derivation shows it; inputs are in the order of a step's values."""

    id: str
    title: str
    mathml: str
    source: str
    inputs: list[SymbolSheet]
    result: SymbolSheet


class PackedValue(Struct, frozen=True, array_like=True):
    """A number put in; `source` and `kind` are indexes, -1 for a number that was computed or asked for."""

    value: float
    source: int
    kind: int


class PackedStep(Struct, frozen=True, array_like=True):
    """One call of a formula: `formula` and `purpose` are indexes, `inputs` indexes into `values`."""

    formula: int
    purpose: int
    inputs: list[int]
    result: float


class Derivations(Struct, frozen=True):
    """The steps to every limit of every cell, at the cautious end of the ratings and before any power is put in."""

    formulas: list[ShortFormula]
    """The first is the margin's own, which follows on a chain that ends with a power."""
    purposes: list[str]
    sources: list[str]
    """Titles."""
    kinds: list[str]
    values: list[PackedValue]
    steps: list[PackedStep]
    chains: list[list[int]]
    """Indexes into `steps`, in the order of the calculation."""
    cells: list[list[list[int]]]
    """[family][column][limit]: index into `chains`; the limits in the order of the matrix, and the match last."""


class SnapshotResult(Struct, frozen=True):
    """A matrix, what it was asked with, and how every cell of it was computed."""

    format: Literal["jointwise snapshot 2"]
    request: SnapshotRequest
    names: dict[str, str]
    """What the request chose by an id of the catalogue, by field: mode, condition and, where one is named, cable."""
    matrix: MatrixResult
    derivations: Derivations
    cautions: list[str]
