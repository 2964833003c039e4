"""What the core answers. Every number's unit is in its key or beside it.

Arrays of the matrix are nested lists indexed [family][column] or
[family][column][power]. A refused cell holds null, never NaN or infinity.
"""

from typing import Literal

from msgspec import Struct

from jointwise.calc.catalogue.schema import (
    Adapter,
    Attenuation,
    Band,
    CableDielectric,
    CablePower,
    Condition,
    HouseLimit,
    Interface,
    Mating,
    Mode,
    NoiseEnvironment,
    PackSummary,
    Source,
)

__all__ = [
    "CableSheet",
    "CatalogueResult",
    "CellResult",
    "Column",
    "CrossCheck",
    "Curves",
    "DataSheet",
    "FamilyHead",
    "FormulaSheet",
    "GateKind",
    "GateResult",
    "LimitResult",
    "LossShares",
    "MatrixResult",
    "Step",
    "SymbolValue",
]

LimitId = Literal["heat", "voltage", "match"]


class FamilyHead(Struct, frozen=True):
    """A matrix row: the family and the one sentence a failing gate of it says."""

    id: str
    name: str
    summary: str
    receive_only: bool
    gate_reasons: dict[str, str]
    pack: str = ""
    """Name of the pack the family comes from; empty for a built-in one, here and wherever it stands."""


class Column(Struct, frozen=True):
    """A matrix column: a band of the Region, or one spot frequency (both edges equal).

    Margins are computed at `high_hz`: every limit falls with frequency.
    """

    id: str
    name: str
    low_hz: float
    high_hz: float
    pack: str = ""


class GateKind(Struct, frozen=True):
    """A pass/fail check; a hard one replaces the margin, a soft one stands beside it."""

    id: str
    name: str
    hard: bool


class MatrixResult(Struct, frozen=True):
    """Margins in dB of power; see the module docstring for the index order."""

    families: list[FamilyHead]
    columns: list[Column]
    powers_w: list[float]
    limits: list[LimitId]
    gates: list[GateKind]
    margin_db: list[list[list[float | None]]]
    """Conservative end; it decides the colour."""
    margin_high_db: list[list[list[float | None]]]
    """Optimistic end, from the most generous credible figures."""
    binding: list[list[list[int]]]
    """Index into `limits` of the smallest conservative margin; -1 when refused."""
    refused_by: list[list[list[int]]]
    """Index into `gates` of the first failed hard gate; -1 when none."""
    marks: list[list[list[int]]]
    """Failed soft gates, ascending indexes into `gates` as bits (bit i for gate i)."""
    undecided: list[list[list[bool]]]
    """True where the sign of the margin depends on which source one believes."""
    heat_disagrees: list[list[bool]]
    """True where the two ways to the heat limit differ by more than a factor of three."""
    heat_allowed_w: list[list[list[float | None]]]
    """[family][column][low, high]: largest power by heat alone; null when refused at any power."""
    voltage_allowed_w: list[list[list[float | None]]]
    """[family][column][low, high]: largest power by voltage alone; null when refused."""
    match_margin_db: list[list[list[float | None]]]
    """[family][column][low, high]: return loss above the one asked for; null when refused."""
    largest_power_w: list[list[float | None]]
    """Largest power that keeps every conservative margin at 0 dB or above; null when there is none."""


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


class LimitResult(Struct, frozen=True):
    """One limit at the cell, conservative and optimistic, with its steps."""

    id: LimitId
    name: str
    binding: bool
    margin_db: float | None
    margin_high_db: float | None
    """null in receive, where power limits do not apply."""
    allowed_w: float | None
    allowed_high_w: float | None
    """null for the match, which does not depend on power."""
    sentence: str
    steps: list[Step]


class GateResult(Struct, frozen=True):
    """One gate at the cell: the value, the limit it met, and a sentence."""

    id: str
    name: str
    hard: bool
    passed: bool
    sentence: str
    source: str
    kind: str


class LossShares(Struct, frozen=True):
    """Loss of the mated pair in dB by cause; expected never mixes with guaranteed."""

    contact_db: float
    conductor_db: float
    dielectric_db: float
    mismatch_db: float
    expected_db: float
    guaranteed_db: float
    guaranteed_source: str
    guaranteed_kind: str


class CrossCheck(Struct, frozen=True):
    """The heat limit found two ways; first principles never decide the margin."""

    rating_allowed_w: float
    rating_allowed_high_w: float
    first_principles_allowed_w: float
    ratio: float
    """First principles over the nearer end of the rating; 1 inside the range."""
    agrees: bool
    steps: list[Step]


class Curves(Struct, frozen=True):
    """Each limit against frequency (at the cell's power) and power (at the cell's frequency)."""

    frequency_hz: list[float]
    margin_by_frequency_db: dict[LimitId, list[float | None]]
    margin_high_by_frequency_db: dict[LimitId, list[float | None]]
    power_w: list[float]
    margin_by_power_db: dict[LimitId, list[float | None]]
    margin_high_by_power_db: dict[LimitId, list[float | None]]


class CellResult(Struct, frozen=True):
    """One cell with its derivation; limits come binding first."""

    family: FamilyHead
    column: Column
    power_w: float
    frequency_hz: float
    margin_db: float | None
    margin_high_db: float | None
    undecided: bool
    refused_by: str | None
    verdict: str
    contact_temperature_c: float | None
    allowed_temperature_c: float
    peak_voltage_v: float
    largest_power_w: float | None
    limits: list[LimitResult]
    gates: list[GateResult]
    losses: LossShares
    cross_check: CrossCheck
    air_breakdown: list[Step]
    """For information: onset in the air gap by two classical laws."""
    curves: Curves
    cautions: list[str]


class SymbolSheet(Struct, frozen=True):
    """A symbol of a formula."""

    symbol: str
    meaning: str
    unit: str


class FormulaSheet(Struct, frozen=True):
    """A declared formula as the method page shows it; mathml is made from the equation."""

    id: str
    title: str
    equation: str
    mathml: str
    symbols: list[SymbolSheet]
    validity: str
    source: str


class DataValue(Struct, frozen=True):
    """One catalogue value of a family, ready to show; low equals high when there is one figure."""

    field: str
    name: str
    unit: str
    low: float | str
    high: float | str
    sources: list[str]
    kinds: list[str]
    note: str


class DataSheet(Struct, frozen=True):
    """Everything the catalogue holds about a family."""

    id: str
    name: str
    summary: str
    also_called: list[str]
    values: list[DataValue]
    hazards: list["HazardText"]
    pack: str = ""


class HazardText(Struct, frozen=True):
    """A near relative and why mating it is dangerous."""

    family: str
    text: str
    source: str
    kind: str


class CableSheet(Struct, frozen=True):
    """Everything the catalogue holds about a cable, with the law fitted to its attenuation.

    The law is k1*sqrt(f) + k2*f at the attenuation temperature, good from
    fit_low_hz to fit_high_hz; `residual` is its largest relative error there.
    """

    id: str
    name: str
    summary: str
    also_called: list[str]
    dielectric: str
    construction: str
    outdoor_use: str
    k1_db_per_m_sqrt_hz: float
    k2_db_per_m_hz: float
    residual: float
    fit_low_hz: float
    fit_high_hz: float
    fit_note: str
    values: list[DataValue]
    attenuation: list[Attenuation]
    power: list[CablePower]
    pack: str = ""


class CatalogueResult(Struct, frozen=True):
    """The catalogue as data: families, cables, matings, adapters, bands, modes and the rest, formulas and sources."""

    families: list[DataSheet]
    cables: list[CableSheet]
    matings: list[Mating]
    adapters: list[Adapter]
    bands: list[Band]
    modes: list[Mode]
    cable_dielectrics: list[CableDielectric]
    conditions: list[Condition]
    noise_environments: list[NoiseEnvironment]
    formulas: list[FormulaSheet]
    sources: list[Source]
    """A value of a pack names its source led by the pack's id and a point."""
    cautions: list[str]
    packs: list[PackSummary]
    house_limits: list[HouseLimit]
    default_powers_w: list[float]
    entry: Interface | None
    """The family asked for, as a pack holds it."""
