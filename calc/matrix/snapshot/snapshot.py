"""A snapshot: the matrix, and for each cell the record of the calls that led to its limits.

What depends on the power is the last step alone, so one derivation serves all
power levels of a cell. Heat, voltage and match are recorded for each; steps
that cells share (a voltage limit is the same on every band) are stored once.
"""

from typing import TypeVar

import msgspec

from ...catalogue import catalogue
from ...errors import InputError
from ...formulas.formula import FORMULAS, Formula, Step, SymbolSheet, SymbolValue
from ...formulas.mathml import mathml
from ...numeric.rounding import rounded, significant
from ...physics.cautions import CAUTIONS
from ...physics.derivation import limits_at_both_ends
from ...physics.station import station_of
from ..matrix import matrix
from ..requests import MatrixRequest
from ..results import MatrixResult
from .requests import SnapshotRequest
from .results import Derivations, PackedStep, PackedValue, ShortFormula, SnapshotResult

__all__ = ["snapshot"]

Entry = TypeVar("Entry")

MARGIN_DIGITS = 6
"""Of the matrix: more than any cell prints."""

STEP_DIGITS = 5
"""Of a derivation, one more than it prints."""

MOST_CELLS = 1000
"""Families times columns: all families on all bands are four hundred."""

RECEIVE_W = 0.0
"""No power, no last step."""


def snapshot(request: SnapshotRequest) -> SnapshotResult:
    """The matrix of a request with its derivations. Raises InputError as a matrix does, or for too many cells."""
    fields = {name: getattr(request, name) for name in MatrixRequest.__struct_fields__}
    margins = matrix(MatrixRequest(**fields))
    cells = len(margins.families) * len(margins.columns)
    if cells > MOST_CELLS:
        raise InputError("bands", cells, f"up to {MOST_CELLS} cells, families times bands and spot frequencies")
    tables = catalogue()
    names = {"mode": tables.modes[request.mode].name, "condition": tables.conditions[request.condition].name}
    if request.cable is not None:
        names["cable"] = tables.cables[request.cable].spoken_name
    return SnapshotResult(
        format="jointwise snapshot 2",
        request=request,
        names=names,
        matrix=msgspec.convert(rounded(msgspec.to_builtins(margins), MARGIN_DIGITS), MatrixResult),
        derivations=_derivations(request, margins),
        cautions=CAUTIONS,
    )


class _Packer:
    """Takes steps in and gives indexes out; each table holds distinct entries in the order they came."""

    def __init__(self) -> None:
        self.formulas: dict[str, int] = {"margin": 0}
        self.purposes: dict[str, int] = {}
        self.sources: dict[str, int] = {}
        self.kinds: dict[str, int] = {}
        self.values: dict[tuple[float, int, int], int] = {}
        self.steps: dict[tuple[int, int, tuple[int, ...], float], int] = {}
        self.chains: dict[tuple[int, ...], int] = {}

    def chain(self, steps: list[Step]) -> int:
        """The index of a chain of steps."""
        return _index(self.chains, tuple(self._step(step) for step in steps))

    def _step(self, step: Step) -> int:
        formula, purpose = _index(self.formulas, step.formula), _index(self.purposes, step.purpose)
        inputs = tuple(self._value(value) for value in step.inputs)
        return _index(self.steps, (formula, purpose, inputs, significant(step.result.value, STEP_DIGITS)))

    def _value(self, value: SymbolValue) -> int:
        source = _index(self.sources, value.source) if value.source else -1
        kind = _index(self.kinds, value.kind) if value.kind else -1
        return _index(self.values, (significant(value.value, STEP_DIGITS), source, kind))


def _index(table: dict[Entry, int], entry: Entry) -> int:
    return table.setdefault(entry, len(table))


def _derivations(request: SnapshotRequest, margins: MatrixResult) -> Derivations:
    packer = _Packer()
    station = station_of(request)
    cells = []
    for family in margins.families:
        row = []
        for column in margins.columns:
            cautious, _ = limits_at_both_ends(family.id, RECEIVE_W, column.high_hz, station)
            chains = [*(cautious.steps[limit] for limit in margins.limits), cautious.match_steps]
            row.append([packer.chain(steps) for steps in chains])
        cells.append(row)
    return Derivations(
        formulas=[_short(FORMULAS[name]) for name in packer.formulas],
        purposes=list(packer.purposes),
        sources=[_reference(name) for name in packer.sources],
        kinds=list(packer.kinds),
        values=[PackedValue(*value) for value in packer.values],
        steps=[PackedStep(formula, purpose, list(inputs), result) for formula, purpose, inputs, result in packer.steps],
        chains=[list(chain) for chain in packer.chains],
        cells=cells,
    )


def _short(formula: Formula) -> ShortFormula:
    sheets = {name: SymbolSheet(name, symbol.meaning, symbol.unit) for name, symbol in formula.symbols.items()}
    return ShortFormula(
        id=formula.id,
        title=formula.title,
        mathml=mathml(formula.equation),
        source=_reference(formula.source),
        inputs=[sheets[name] for name in formula.arguments],
        result=sheets[formula.result],
    )


def _reference(source: str) -> str:
    """What is known of a source; a formula may also be "derived"."""
    sources = catalogue().sources
    return sources[source].reference if source in sources else source
