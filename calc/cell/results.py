"""What the core answers about one cell. Every number's unit is in its key or beside it."""

from msgspec import Struct

from ..formulas.formula import Step
from ..physics.columns import Column
from ..physics.families import FamilyHead
from ..physics.gates import GateResult
from ..physics.limits import LimitId
from ..physics.losses import LossShares

__all__ = ["CellResult", "CrossCheck", "Curves", "LimitResult"]


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
