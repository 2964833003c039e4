"""What the core answers. Every number's unit is in its key or beside it.

Arrays of the matrix are nested lists indexed [family][column] or
[family][column][power]. A refused cell holds null, never NaN or infinity.
"""

from msgspec import Struct

from ..physics.columns import Column
from ..physics.families import FamilyHead
from ..physics.gates import GateKind
from ..physics.limits import LimitId

__all__ = ["MatrixResult"]


class MatrixResult(Struct, frozen=True):
    """Margins in dB of power; see the module docstring for the index order."""

    families: list[FamilyHead]
    columns: list[Column]
    powers_w: list[float]
    limits: list[LimitId]
    gates: list[GateKind]
    margin_db: list[list[list[float | None]]]
    """Conservative end; it decides the colour. null in receive, where no power limit counts."""
    margin_high_db: list[list[list[float | None]]]
    """Optimistic end, from the most generous credible figures."""
    binding: list[list[list[int]]]
    """Index into `limits` of the smallest conservative margin; -1 when refused and in receive."""
    refused_by: list[list[list[int]]]
    """Index into `gates` of the first failed hard gate; -1 when none."""
    marks: list[list[list[int]]]
    """Failed soft gates, ascending indexes into `gates` as bits (bit i for gate i)."""
    undecided: list[list[list[bool]]]
    """True where the sign of the margin depends on which source one believes."""
    rating_below: list[bool]
    """[family]: true where a power from memory or habit lies below the conservative end, which it can't decide."""
    contact_allowed_w: list[list[list[float | None]]]
    """[family][column][low, high]: largest power by the heat of the contact; null when more than match refuses."""
    cable_allowed_w: list[list[list[float | None]]]
    """[family][column][low, high]: largest power by the heat of the cable alone; null as above."""
    voltage_allowed_w: list[list[list[float | None]]]
    """[family][column][low, high]: largest power by voltage alone; null as above."""
    return_loss_db: list[list[list[float | None]]]
    """[family][column][low, high]: of the joint alone; null as above."""
    largest_power_w: list[list[float | None]]
    """Largest power that keeps every conservative margin at 0 dB or above; null when there is none."""
