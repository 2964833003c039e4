"""Chains of adapters between two ports: every one that mates, stands the duty and keeps the loss."""

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from ..catalogue import catalogue, per_edition
from ..catalogue.mating import ConnectorEnd, mates_of
from ..catalogue.schema import Adapter
from .stand import Standing

__all__ = [
    "AdapterChain",
    "AdapterType",
    "Stock",
    "adapter_type",
    "chains",
    "joint_loss",
    "loss_steps",
    "stock",
    "trade",
]

LOSS_STEP_DB = 1e-6
"""Losses that differ by less count as equal, so that rounding never chooses an adapter."""

AdapterType = tuple[ConnectorEnd, ConnectorEnd]
"""The two ends of an adapter in a fixed order."""


class AdapterChain(NamedTuple):
    """Adapters from the first port to the second, each as (end towards the first, end towards the second)."""

    adapters: tuple[AdapterType, ...]
    loss_db: float


class Stock(NamedTuple):
    """The other ends of the adapters that may be used, by the end that meets what comes before."""

    by_end: dict[ConnectorEnd, dict[ConnectorEnd, None]]


def adapter_type(one: ConnectorEnd, other: ConnectorEnd) -> AdapterType:
    """The type of an adapter with these two ends."""
    return (one, other) if one <= other else (other, one)


@per_edition(maxsize=1)
def trade() -> dict[AdapterType, Adapter]:
    """Every type of adapter the trade sells, with the catalogue entry that says so."""
    return {
        adapter_type(ConnectorEnd(entry.id, one), ConnectorEnd(family, other)): entry
        for entry in catalogue().adapters.values()
        for family in entry.joins
        for one in ("plug", "jack")
        for other in ("plug", "jack")
        if family != entry.id or one == other
    }


def stock(types: Iterable[AdapterType]) -> Stock:
    """Adapters of these types, each to be used either way round."""
    by_end: dict[ConnectorEnd, dict[ConnectorEnd, None]] = {}
    for one, other in sorted(types):
        by_end.setdefault(one, {})[other] = None
        by_end.setdefault(other, {})[one] = None
    return Stock(by_end)


def joint_loss(standing: Standing, one: ConnectorEnd, other: ConnectorEnd) -> float:
    """Loss of a mated pair [dB]; of two families the greater counts."""
    return max(standing.loss_db[one.family], standing.loss_db[other.family])


def loss_steps(chain: AdapterChain) -> int:
    """Loss of a chain in whole steps, to compare and to add."""
    return round(chain.loss_db / LOSS_STEP_DB)


def chains(
    first: ConnectorEnd,
    second: ConnectorEnd,
    standing: Standing,
    available: Stock,
    most_in_series: int,
    most_loss_db: float,
) -> Iterator[AdapterChain]:
    """Every chain that joins two ports with no adapter in it that could be left out, the ports' own mating first."""
    if not (standing.stands(first.family) and standing.stands(second.family)):
        return
    if second in mates_of(first):
        lost = standing.step_loss_db + joint_loss(standing, first, second)
        if lost <= most_loss_db:
            yield AdapterChain((), lost)
        return
    yield from _longer(first, second, standing, available, most_in_series, most_loss_db)


def _longer(
    first: ConnectorEnd,
    second: ConnectorEnd,
    standing: Standing,
    available: Stock,
    most_in_series: int,
    most_loss_db: float,
) -> Iterator[AdapterChain]:
    last = [end for end in mates_of(second) if standing.stands(end.family)]
    open_chains = [((), first, frozenset(), standing.step_loss_db)]
    while open_chains:
        adapters, face, met, lost = open_chains.pop()
        meets = mates_of(face)
        for near in meets:
            # what could have met an earlier end makes the adapters between superfluous
            if near in met or not standing.stands(near.family):
                continue
            so_far = lost + joint_loss(standing, face, near)
            if so_far > most_loss_db:
                continue
            fars = available.by_end.get(near, ())
            for far in last:
                total = so_far + joint_loss(standing, far, second)
                if far in fars and total <= most_loss_db:
                    yield AdapterChain((*adapters, (near, far)), total)
            if len(adapters) + 1 < most_in_series:
                passed = met.union(meets)
                open_chains += [
                    ((*adapters, (near, far)), far, passed, so_far)
                    for far in fars
                    if far not in last and standing.stands(far.family)
                ]
