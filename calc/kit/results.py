"""What the core answers about adapters. Units are in the keys; margins are cautious, losses those of good parts."""

from typing import Literal

from msgspec import Struct

from ..catalogue.mating import Gender

__all__ = ["AdapterCount", "ChainJoint", "JoinedBy", "KitResult", "PairResult", "Reason", "UsedAdapter"]

Reason = Literal["", "impedance", "port", "loss", "series", "stand", "trade"]


class AdapterCount(Struct, frozen=True):
    """Adapters of one type to add."""

    name: str
    one_family: str
    one_gender: Gender
    other_family: str
    other_gender: Gender
    count: int
    source: str
    kind: str
    pack: str
    """Name of the pack the adapter or a family of its ends comes from; empty where all is built in."""
    stated: str
    """What a data sheet states for it, to hold against the loss of its joints; empty where nothing is known."""


class UsedAdapter(Struct, frozen=True):
    """One adapter of a chain, its one end towards the pair's first port."""

    name: str
    one_family: str
    one_gender: Gender
    other_family: str
    other_gender: Gender


class ChainJoint(Struct, frozen=True):
    """One mated pair of a chain; `notes` say what to mind: a mating that needs care, a soft gate."""

    one_family: str
    one_gender: Gender
    other_family: str
    other_gender: Gender
    margin_db: float
    loss_db: float
    notes: list[str]


class JoinedBy(Struct, frozen=True):
    """The adapters between two ports in order, none where they mate as they are."""

    adapters: list[UsedAdapter]
    joints: list[ChainJoint]
    margin_db: float
    """The smallest of its joints."""
    loss_db: float
    """All joints, and the mismatch where the ports' impedances differ."""


class PairResult(Struct, frozen=True):
    """One needed pair: how it is joined with the kit and with what is owned alone."""

    ports: list[int]
    frequency_hz: float
    power_w: float
    joined: JoinedBy | None
    joined_by_owned: JoinedBy | None
    reason: Reason
    """Why no adapter can join it; empty where one can."""
    sentence: str
    trap: str
    """What comes of mating the two ports as they are, where they look as if they would; else empty."""


class KitResult(Struct, frozen=True):
    """The smallest set of adapters to add, with the proof of how small it is.

    First the fewest adapters; then, as long as the exchange of one of them for
    another lowers the loss summed over all pairs, it is exchanged.
    """

    adapters: list[AdapterCount]
    added: int
    lower_bound: int
    """No kit that joins these pairs is smaller."""
    gap: int
    optimal: bool
    nodes: int
    """Nodes of the search."""
    pairs: list[PairResult]
    joined: int
    joined_by_owned: int
    total_loss_db: float
    """Summed over the pairs that are joined."""
    verdict: str
    cautions: list[str]
