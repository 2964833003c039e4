"""Chains of adapters between two ports: every one that mates, may carry the duty and keeps the loss."""

from collections.abc import Iterator
from typing import NamedTuple

from ..catalogue.mating import ConnectorEnd, mates_of
from .adapters import AdapterType, Stock
from .joint_figures import JointFigures

__all__ = ["AdapterChain", "chains", "joints_of", "loss_in_steps", "mated_loss_db"]

LOSS_STEP_DB = 1e-6
"""Losses that differ by less count as equal, so that rounding never chooses an adapter."""


class AdapterChain(NamedTuple):
    """Adapters from the first port to the second, each as (end towards the first, end towards the second)."""

    adapters: tuple[AdapterType, ...]
    loss_db: float
    """All joints, and the step between the ports' impedances."""


def mated_loss_db(figures: JointFigures, first: ConnectorEnd, second: ConnectorEnd) -> float:
    """Loss of a mated pair [dB]; of two families the greater counts."""
    return max(figures.loss_db[first.family], figures.loss_db[second.family])


def joints_of(
    first: ConnectorEnd, second: ConnectorEnd, chain: AdapterChain
) -> list[tuple[ConnectorEnd, ConnectorEnd]]:
    """The mated pairs of a chain between two ports, in order."""
    ends = [first, *(end for adapter in chain.adapters for end in adapter), second]
    return list(zip(ends[::2], ends[1::2], strict=True))


def loss_in_steps(chain: AdapterChain) -> int:
    """Loss of a chain in whole steps, to compare and to add."""
    return round(chain.loss_db / LOSS_STEP_DB)


def chains(
    first: ConnectorEnd,
    second: ConnectorEnd,
    figures: JointFigures,
    stock: Stock,
    most_in_series: int,
    most_loss_db: float,
) -> Iterator[AdapterChain]:
    """Every chain that joins two ports with no adapter in it that could be left out.

    Ports that mate as they are have one chain, without an adapter.
    """
    if not (figures.allows(first.family) and figures.allows(second.family)):
        return
    if second in mates_of(first):
        loss_db = figures.impedance_step_loss_db + mated_loss_db(figures, first, second)
        if loss_db <= most_loss_db:
            yield AdapterChain((), loss_db)
        return
    yield from _with_adapters(first, second, figures, stock, most_in_series, most_loss_db)


def _with_adapters(
    first: ConnectorEnd,
    second: ConnectorEnd,
    figures: JointFigures,
    stock: Stock,
    most_in_series: int,
    most_loss_db: float,
) -> Iterator[AdapterChain]:
    """Depth first; an open chain is its adapters, the end they lead to, what could mate before, and the loss so far."""
    last_ends = [end for end in mates_of(second) if figures.allows(end.family)]
    no_adapters: tuple[AdapterType, ...] = ()
    no_ends: frozenset[ConnectorEnd] = frozenset()
    open_chains = [(no_adapters, first, no_ends, figures.impedance_step_loss_db)]
    while open_chains:
        adapters, face, mated_earlier, loss_db = open_chains.pop()
        mates = mates_of(face)
        for near in mates:
            # what could have met an earlier end makes the adapters between superfluous
            if near in mated_earlier or not figures.allows(near.family):
                continue
            loss_so_far_db = loss_db + mated_loss_db(figures, face, near)
            if loss_so_far_db > most_loss_db:
                continue
            far_ends = stock.get(near, {})
            for far in last_ends:
                total_db = loss_so_far_db + mated_loss_db(figures, far, second)
                if far in far_ends and total_db <= most_loss_db:
                    yield AdapterChain((*adapters, (near, far)), total_db)
            if len(adapters) + 1 < most_in_series:
                mated = mated_earlier.union(mates)
                open_chains += [
                    ((*adapters, (near, far)), far, mated, loss_so_far_db)
                    for far in far_ends
                    if far not in last_ends and figures.allows(far.family)
                ]
