"""Less loss with as many adapters: exchanging one for another as long as that helps."""

from math import inf

from ..cover.bits import BitSet, bits
from ..cover.greedy import without_redundant
from .alternatives import Alternative
from .chains import loss_in_steps

__all__ = ["with_least_loss"]

_Priced = list[tuple[BitSet, int]]
"""A pair's alternatives, least loss first: the adapters each adds, and its loss in steps."""


def with_least_loss(pairs: list[list[Alternative]], kit: BitSet, most_evaluations: int) -> BitSet:
    """The kit after every exchange of one adapter that lowers the loss summed over all pairs, the best first.

    Each pair gives its alternatives, least loss first. Exchanging ends before
    the losses of pairs would be evaluated more than `most_evaluations` times.
    """
    priced = [[(option.added, loss_in_steps(option.chain)) for option in options] for options in pairs]
    candidates = 0
    for options in priced:
        for added, _ in options:
            candidates |= added
    evaluations, loss = 0, _total_loss(priced, kit)
    while True:
        # no exchange of one brings what lacks two
        near = [[option for option in options if (option[0] & ~kit).bit_count() < 2] for options in priced]
        exchanges = [kit & ~(1 << out) | 1 << new for out in bits(kit) for new in bits(candidates & ~kit)]
        evaluations += len(priced) * len(exchanges)
        if evaluations > most_evaluations:
            break
        best_loss, best = min(((_total_loss(near, other), other) for other in exchanges), default=(loss, kit))
        if best_loss >= loss:
            break
        loss, kit = best_loss, best
    return without_redundant([[option.added for option in options] for options in pairs], kit)


def _total_loss(pairs: list[_Priced], kit: BitSet) -> float:
    """Loss summed over all pairs in steps, infinite where one is not joined."""
    total = 0
    for options in pairs:
        loss = next((loss for added, loss in options if added & kit == added), None)
        if loss is None:
            return inf
        total += loss
    return total
