"""The shape of what the catalogue knows about fitting joints: rules of the trade, sealing, inspection, metals."""

from typing import Annotated, Literal

from msgspec import Meta, Struct, field

from .schema import Id, Kind, Quantity, Unit

__all__ = [
    "Attachment",
    "GalvanicLimit",
    "GalvanicMetal",
    "Inspection",
    "IpNumeral",
    "PlatingSold",
    "Rule",
    "Screen",
    "SealingLayer",
    "SheetPart",
]

SheetPart = Literal["tools", "cable", "mate", "sealing", "water", "relief", "bonding", "measure", "inspect"]
Exposures = list[Literal["indoor", "sheltered", "exposed", "immersed"]]
Months = Annotated[int, Meta(ge=1)]
Length = Annotated[float, Meta(gt=0)]


class Rule(Struct, forbid_unknown_fields=True, frozen=True):
    """One sentence of the trade; words in braces are filled in.

    `only` names circumstances and the words each may have; without it the
    rule holds everywhere.
    """

    id: Id
    part: SheetPart
    text: str
    source: str
    kind: Kind
    only: dict[str, list[str]] = field(default_factory=dict)


class Attachment(Struct, forbid_unknown_fields=True, frozen=True):
    """A way to put a half on a cable; an empty list or no thickness allows all."""

    id: Id
    name: str
    source: str
    kind: Kind
    families: list[Id] = field(default_factory=list)
    constructions: list[str] = field(default_factory=list)
    thickest_m: Length | None = None


class Screen(Struct, forbid_unknown_fields=True, frozen=True):
    """How the screen of some cables is built, and the metal of it that corrodes first, where that is known."""

    id: Id
    name: str
    cables: list[Id]
    source: str
    kind: Kind
    surface: str = ""


class SealingLayer(Struct, forbid_unknown_fields=True, frozen=True):
    """A layer of tape over a mated joint: its width, the share each turn laps, how far it reaches beyond the bodies."""

    id: Id
    name: str
    text: str
    exposures: Exposures
    width_m: Length
    overlap: Annotated[float, Meta(ge=0, lt=1)]
    beyond_m: Length
    passes: Annotated[int, Meta(ge=1)]
    source: str
    kind: Kind


class Inspection(Struct, forbid_unknown_fields=True, frozen=True):
    """Months between two inspections in one exposure (its id), by shaking."""

    id: Id
    none: Months
    vehicle: Months
    severe: Months
    source: str
    kind: Kind
    note: str = ""


class IpNumeral(Struct, forbid_unknown_fields=True, frozen=True):
    """The meaning of one numeral of the IP code of IEC 60529."""

    id: Id
    text: str
    source: str
    kind: Kind
    note: str = ""


class GalvanicMetal(Struct, forbid_unknown_fields=True, frozen=True):
    """A metal at a surface, its anodic index against gold, and the names the catalogue has for such surfaces."""

    id: Id
    name: str
    anodic_index_v: Annotated[Quantity, Unit("V")]
    found_as: list[str]


class GalvanicLimit(Struct, forbid_unknown_fields=True, frozen=True):
    """The largest difference of anodic indexes that two metals in contact may have in one exposure (its id)."""

    id: Id
    largest_difference_v: Annotated[Quantity, Unit("V")]


class PlatingSold(Struct, forbid_unknown_fields=True, frozen=True):
    """Surfaces of the centre and outer contacts that parts of one family (its id) are sold with."""

    id: Id
    inner: Annotated[list[Id], Meta(min_length=1)]
    outer: Annotated[list[Id], Meta(min_length=1)]
    source: str
    kind: Kind
