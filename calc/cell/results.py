"""What the core answers about one cell. Every number's unit is in its key or beside it."""

from typing import Literal

from msgspec import Struct

from ..formulas.formula import Step
from ..physics.columns import Column
from ..physics.families import FamilyHead
from ..physics.gates import GateResult
from ..physics.limits import LimitId
from ..physics.losses import LossShares

__all__ = ["CellResult", "Curves", "LimitResult", "MatchResult", "RatingCheck"]


class LimitResult(Struct, frozen=True):
    """One limit at the cell, conservative and optimistic, with its steps."""

    id: LimitId
    name: str
    binding: bool
    margin_db: float | None
    margin_high_db: float | None
    """null in receive, where power limits do not apply."""
    allowed_w: float
    allowed_high_w: float
    sentence: str
    steps: list[Step]


class MatchResult(Struct, frozen=True):
    """The return loss of the joint alone against the one asked for, conservative and optimistic, with its steps."""

    asked_db: float
    return_loss_db: float
    return_loss_high_db: float
    state: Literal["holds", "depends", "misses"]
    """Whether both hold, only the optimistic one, or none."""
    sentence: str
    steps: list[Step]


class RatingCheck(Struct, frozen=True):
    """A power that someone states for the contact or the cable, held against what is computed."""

    part: Literal["contact", "cable"]
    power_w: float
    frequency_hz: float
    ambient_temperature_c: float
    hottest_temperature_c: float
    """Of the contact or the cable's centre conductor, at that power."""
    cable: str
    """Name of the cable that it counts for."""
    source: str
    kind: str
    note: str
    computed_w: float
    """At the rating's own conditions, by the conservative figures but for documented ratings,"""
    computed_high_w: float
    """and by the optimistic ones."""
    here_w: float
    """The rating carried over to this cell, by the conservative figures."""
    role: Literal["decides", "higher", "not documented"]
    sentence: str


class Curves(Struct, frozen=True):
    """Limits and match against frequency (at the cell's power), limits against power (at the cell's frequency)."""

    frequency_hz: list[float]
    margin_by_frequency_db: dict[LimitId, list[float | None]]
    margin_high_by_frequency_db: dict[LimitId, list[float | None]]
    return_loss_by_frequency_db: list[float | None]
    return_loss_high_by_frequency_db: list[float | None]
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
    cable_id: str
    """The cable at the joint,"""
    cable_name: str
    cable_given: bool
    """and whether it was asked for; else it is the family's customary one."""
    contact_temperature_c: float
    allowed_temperature_c: float
    cable_temperature_c: float
    """Of its centre conductor, far from the joint."""
    cable_allowed_temperature_c: float
    peak_voltage_v: float
    largest_power_w: float | None
    limits: list[LimitResult]
    match: MatchResult
    gates: list[GateResult]
    losses: LossShares
    ratings: list[RatingCheck]
    air_breakdown: list[Step]
    """For information: onset in the air gap by two classical laws."""
    curves: Curves
    cautions: list[str]
