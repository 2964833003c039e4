"""The catalogue as an answer: data sheets, tables, formulas and sources."""

from msgspec import Struct

from ..catalogue.schema import (
    Adapter,
    AntennaView,
    Atmosphere,
    Attenuation,
    Band,
    Cable,
    CableDielectric,
    CablePower,
    Condition,
    HouseLimit,
    Interface,
    Mating,
    Mode,
    NoiseEnvironment,
    PackSummary,
    PowerRating,
    Source,
    Transmitter,
    WireLine,
)
from ..formulas.formula import SymbolSheet

__all__ = ["CableSheet", "CatalogueResult", "DataSheet", "FormulaSheet"]


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
    power: list[PowerRating]
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
    From law_low_hz to fit_low_hz k1 is no constant: the law goes through each
    figure with `through`.
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
    law_low_hz: float
    fit_low_hz: float
    fit_high_hz: float
    fit_note: str
    values: list[DataValue]
    attenuation: list[Attenuation]
    power: list[CablePower]
    pack: str = ""


class CatalogueResult(Struct, frozen=True):
    """The catalogue as data: families, cables, two-wire lines, matings, adapters, bands and the rest, and sources."""

    families: list[DataSheet]
    cables: list[CableSheet]
    wire_lines: list[WireLine]
    matings: list[Mating]
    adapters: list[Adapter]
    bands: list[Band]
    modes: list[Mode]
    cable_dielectrics: list[CableDielectric]
    conditions: list[Condition]
    noise_environments: list[NoiseEnvironment]
    antenna_views: list[AntennaView]
    atmospheres: list[Atmosphere]
    transmitters: list[Transmitter]
    formulas: list[FormulaSheet]
    sources: list[Source]
    """A value of a pack names its source led by the pack's id and a point."""
    cautions: list[str]
    packs: list[PackSummary]
    house_limits: list[HouseLimit]
    default_powers_w: list[float]
    entry: Interface | None
    """The family asked for, as a pack holds it."""
    cable: Cable | None
    """The cable asked for, likewise."""
