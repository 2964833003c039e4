"""What makes the search for a kit faster: which adapters fit a port, and which families may be turned or exchanged."""

from collections.abc import Callable, Iterable, Iterator
from itertools import combinations

from ..catalogue.mating import OPPOSITE, ConnectorEnd, mates_of
from ..cover.bits import bits, mask
from ..cover.cover import Structure
from .chains import AdapterType, adapter_type
from .hubs import FEW, through_hubs
from .needs import Need

__all__ = ["structure"]


def structure(needs: list[Need], groups: list[list[int]], adapters: list[AdapterType]) -> Structure:
    """The structure of a kit for these needs, each with the group of its alternatives; the elements are `adapters`.

    The adapters that fit an end are a star. Where plug and jack of a family may
    be exchanged everywhere, or two families, and the same has to be joined by
    the same means as before, that is a symmetry.
    """
    ends = dict.fromkeys(end for need in needs for end in (need.first, need.second))
    stars = [mask(at for at, one in enumerate(adapters) if any(side in mates_of(end) for side in one)) for end in ends]
    wanted = {frozenset((need.first, need.second)) for need in needs}
    whole = {frozenset(group) for group in groups}
    images = [
        image
        for renamed in _renamings(sorted({end.family for one in adapters for end in one}))
        if {frozenset(map(renamed, pair)) for pair in wanted} == wanted and (image := _image(adapters, renamed))
    ]
    symmetries = [image for image in images if all(_turned(group, image) in whole for group in whole)]
    return Structure(stars, symmetries, [_through(adapters, ends, count) for count in FEW])


def _through(adapters: list[AdapterType], ends: Iterable[ConnectorEnd], count: int) -> int:
    types = through_hubs(adapters, {end.family for end in ends}, count)
    return mask(at for at, one in enumerate(adapters) if one in types)


def _renamings(families: list[str]) -> Iterator[Callable[[ConnectorEnd], ConnectorEnd]]:
    """A family turned round; two exchanged, plug for plug; two exchanged, plug for jack."""
    for family in families:
        yield lambda end, family=family: ConnectorEnd(end.family, OPPOSITE[end.gender]) if end.family == family else end
    for one, other in combinations(families, 2):
        partner = {one: other, other: one}
        yield lambda end, partner=partner: ConnectorEnd(partner.get(end.family, end.family), end.gender)
        yield (
            lambda end, partner=partner: (
                ConnectorEnd(partner[end.family], OPPOSITE[end.gender]) if end.family in partner else end
            )
        )


def _image(adapters: list[AdapterType], renamed: Callable[[ConnectorEnd], ConnectorEnd]) -> list[int] | None:
    """For each adapter the one it becomes, copies in their order; None where the trade does not sell it."""
    places: dict[AdapterType, list[int]] = {}
    for at, one in enumerate(adapters):
        places.setdefault(one, []).append(at)
    image = [0] * len(adapters)
    for one, copies in places.items():
        become = places.get(adapter_type(*map(renamed, one)), [])
        if len(become) != len(copies):
            return None
        for at, turned in zip(copies, become, strict=True):
            image[at] = turned
    return image


def _turned(group: frozenset[int], image: list[int]) -> frozenset[int]:
    return frozenset(mask(image[bit] for bit in bits(alternative)) for alternative in group)
