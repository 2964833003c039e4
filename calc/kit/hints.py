"""What makes the search for a kit faster: which adapters fit a port, and which families may be turned or exchanged."""

from collections.abc import Callable, Iterable, Iterator
from itertools import combinations

from ..catalogue.mating import OPPOSITE, ConnectorEnd, mates_of
from ..cover.bits import BitSet, bits, mask
from ..cover.branch_and_bound import SearchHints
from .adapters import AdapterType, adapter_type
from .hubs import HUB_COUNTS, through_hubs
from .required_pairs import RequiredPair

__all__ = ["search_hints"]

Renaming = Callable[[ConnectorEnd], ConnectorEnd]


def search_hints(pairs: list[RequiredPair], groups: list[list[BitSet]], adapters: list[AdapterType]) -> SearchHints:
    """What is known of `adapters`, the elements, where each of these pairs has its group of alternatives.

    The adapters that fit an end are a branching set. Where plug and jack of a
    family may be exchanged everywhere, or two families, and the same has to be
    joined by the same means as before, that is a symmetry. The adapters through
    a few hubs mostly suffice.
    """
    ends = dict.fromkeys(end for pair in pairs for end in (pair.first, pair.second))
    branching_sets = [
        mask(at for at, adapter in enumerate(adapters) if any(side in mates_of(end) for side in adapter))
        for end in ends
    ]
    to_join = {frozenset((pair.first, pair.second)) for pair in pairs}
    every_group = {frozenset(group) for group in groups}
    images = [
        image
        for renaming in _renamings(sorted({end.family for adapter in adapters for end in adapter}))
        if {frozenset(map(renaming, both)) for both in to_join} == to_join and (image := _image(adapters, renaming))
    ]
    symmetries = [image for image in images if all(_mapped(group, image) in every_group for group in every_group)]
    return SearchHints(branching_sets, symmetries, [_through_hubs(adapters, ends, count) for count in HUB_COUNTS])


def _through_hubs(adapters: list[AdapterType], ends: Iterable[ConnectorEnd], count: int) -> BitSet:
    types = through_hubs(adapters, {end.family for end in ends}, count)
    return mask(at for at, adapter in enumerate(adapters) if adapter in types)


def _renamings(families: list[str]) -> Iterator[Renaming]:
    """A family turned round; two exchanged, plug for plug; two exchanged, plug for jack."""
    for family in families:
        yield _exchange({family: family}, turned=True)
    for first, second in combinations(families, 2):
        yield _exchange({first: second, second: first}, turned=False)
        yield _exchange({first: second, second: first}, turned=True)


def _exchange(partner: dict[str, str], turned: bool) -> Renaming:
    """Ends of these families become ends of their partners, plug for jack where turned; all others stay."""

    def renaming(end: ConnectorEnd) -> ConnectorEnd:
        if end.family not in partner:
            return end
        return ConnectorEnd(partner[end.family], OPPOSITE[end.gender] if turned else end.gender)

    return renaming


def _image(adapters: list[AdapterType], renaming: Renaming) -> list[int] | None:
    """For each adapter the one it becomes, copies in their order; None where there is no such adapter for each copy."""
    numbers: dict[AdapterType, list[int]] = {}
    for at, adapter in enumerate(adapters):
        numbers.setdefault(adapter, []).append(at)
    image = [0] * len(adapters)
    for (first, second), copies in numbers.items():
        image_copies = numbers.get(adapter_type(renaming(first), renaming(second)), [])
        if len(image_copies) != len(copies):
            return None
        for at, becomes in zip(copies, image_copies, strict=True):
            image[at] = becomes
    return image


def _mapped(group: frozenset[BitSet], image: list[int]) -> frozenset[BitSet]:
    return frozenset(mask(image[element] for element in bits(alternative)) for alternative in group)
