"""The head of a family's row: its name, and the sentence of each gate."""

from msgspec import Struct

from ..catalogue import catalogue
from .gates import Demand, family_reasons

__all__ = ["FamilyHead", "family_head"]


class FamilyHead(Struct, frozen=True):
    """A matrix row: the family and the one sentence a failing gate of it says."""

    id: str
    name: str
    summary: str
    receive_only: bool
    gate_reasons: dict[str, str]
    pack: str = ""
    """Name of the pack the family comes from; empty for a built-in one, as in every result."""


def family_head(family: str, demands: list[Demand]) -> FamilyHead:
    """The head of a family's row, with the sentence of each gate."""
    interface = catalogue().interfaces[family]
    return FamilyHead(
        id=family,
        name=interface.name,
        summary=interface.summary,
        receive_only=interface.receive_only,
        gate_reasons=family_reasons(family, demands),
        pack=catalogue().pack_of("interfaces", family),
    )
