"""What the core answers about adapters. Units are in the keys; margins are cautious, losses those of good parts."""

from typing import Literal

from msgspec import Struct

from ..catalogue.mating import Gender
from .requests import Goal

__all__ = [
    "AdapterCount",
    "ChainJoint",
    "GoalPrice",
    "JoinedBy",
    "KitResult",
    "PairQuality",
    "PairResult",
    "Reason",
    "UsedAdapter",
]

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
    margin_db: float | None
    """None in receive."""
    return_loss_db: float
    loss_db: float
    notes: list[str]


class JoinedBy(Struct, frozen=True):
    """The adapters between two ports in order, none where they mate as they are."""

    adapters: list[UsedAdapter]
    joints: list[ChainJoint]
    margin_db: float | None
    """The smallest of its joints; none in receive."""
    return_loss_db: float
    """Of all joints at worst: their VSWRs multiplied, and that of a step between the ports' impedances."""
    loss_db: float
    """All joints, and the mismatch where the ports' impedances differ."""


class PairResult(Struct, frozen=True):
    """One needed pair: how it is joined with the kit and with what is owned alone."""

    ports: list[int]
    names: list[str]
    """What the two ports are called."""
    frequency_hz: float
    power_w: float
    joined: JoinedBy | None
    joined_by_owned: JoinedBy | None
    reason: Reason
    """Why no adapter can join it; empty where one can."""
    cause: str
    """The same in a clause, as in the headline."""
    sentence: str
    trap: str
    """What comes of mating the two ports as they are, where they look as if they would; else empty."""


class PairQuality(Struct, frozen=True):
    """What joins a pair in one of two kits that are compared."""

    ports: list[int]
    margin_db: float | None
    """None in receive."""
    return_loss_db: float
    loss_db: float


class GoalPrice(Struct, frozen=True):
    """The kit of the goal that was not asked for, as a brief search finds it."""

    goal: Goal
    added: int
    optimal: bool
    pairs_changed: int
    """How many pairs the best joints join better than the fewest adapters do."""
    fewest: PairQuality | None
    """The pair with the greatest difference, in the kit of the fewest; none where there is no difference."""
    best_joints: PairQuality | None
    """The same pair in the kit with the best joints."""
    sentence: str
    """What the other goal costs and brings."""


class KitResult(Struct, frozen=True):
    """The smallest set of adapters to add for the goal, with the proof of how small it is.

    First the fewest adapters; then, as long as the exchange of one of them for
    another lowers the loss summed over all pairs, it is exchanged. Where the best
    joints take no more adapters than the fewest, both goals have that kit.
    """

    goal: Goal
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
    price: GoalPrice
    headline: str
    """What can't be joined and why, and how many adapters join the rest."""
    verdict: str
    """The headline, whether fewer adapters could do, and what those owned do alone."""
    cautions: list[str]
