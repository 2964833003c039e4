"""Less loss with as many adapters: exchanging one for another as long as that helps."""

from ..cover.bits import bits
from ..cover.cover import without_spares
from .chains import AdapterChain, loss_steps

__all__ = ["exchanged"]


def exchanged(needs: list[list[tuple[int, AdapterChain]]], chosen: int, most_looks: int) -> int:
    """The set after every exchange of one adapter that lowers the loss summed over all needs, the best first.

    Each need gives its chains with the added adapters they take, least loss first; `most_looks` at a need end it.
    """
    priced = [[(taken, loss_steps(chain)) for taken, chain in ways] for ways in needs]
    candidates = 0
    for taken, _ in (way for ways in priced for way in ways):
        candidates |= taken
    looks, lost = 0, _loss(priced, chosen)
    while True:
        # no exchange of one brings what lacks two
        near = [[way for way in ways if (way[0] & ~chosen).bit_count() < 2] for ways in priced]
        options = [chosen & ~(1 << out) | 1 << new for out in bits(chosen) for new in bits(candidates & ~chosen)]
        looks += len(priced) * len(options)
        if looks > most_looks:
            break
        found = [(other, swapped) for swapped in options if (other := _loss(near, swapped)) is not None]
        least = min(found, default=(lost, chosen))
        if least[0] >= lost:
            break
        lost, chosen = least
    return without_spares([[taken for taken, _ in ways] for ways in needs], chosen)


def _loss(needs: list[list[tuple[int, int]]], chosen: int) -> int | None:
    """Loss summed over all needs in steps, None where one is not met."""
    total = 0
    for ways in needs:
        steps = next((steps for taken, steps in ways if taken & chosen == taken), None)
        if steps is None:
            return None
        total += steps
    return total
