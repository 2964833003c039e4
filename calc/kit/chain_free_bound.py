"""How many adapters every kit adds at least, whatever its chains: for where there are too many chains to find all."""

from collections.abc import Iterable

from ..catalogue.mating import mates_of
from ..cover.bits import mask
from ..cover.dual_ascent import lower_bound
from .adapters import AdapterType
from .required_pairs import RequiredPair

__all__ = ["chain_free_bound"]


def chain_free_bound(pairs: list[RequiredPair], types: Iterable[AdapterType], owned: Iterable[AdapterType]) -> int:
    """How many adapters of these types a kit adds at least that joins all these pairs, none of which `owned` ones join.

    Each end that nothing owned fits takes an adapter of its own or shares one
    with another end. And where families must be connected, directly or through
    one another, it takes one adapter fewer than there are families.
    """
    types, owned = sorted(types), list(owned)
    return max(_bound_by_ends(pairs, types, owned), _bound_by_families(pairs, types, owned), int(bool(pairs)))


def _bound_by_ends(pairs: list[RequiredPair], types: list[AdapterType], owned: list[AdapterType]) -> int:
    """A plain set-covering bound: every such end has one of the adapters that fit it."""
    ends = dict.fromkeys(end for pair in pairs for end in (pair.first, pair.second))
    unfitted = [end for end in ends if not any(end in mates_of(side) for adapter in owned for side in adapter)]
    groups = [
        [mask([at]) for at, adapter in enumerate(types) if any(end in mates_of(side) for side in adapter)]
        for end in unfitted
    ]
    return lower_bound(groups) if groups else 0


def _bound_by_families(pairs: list[RequiredPair], types: list[AdapterType], owned: list[AdapterType]) -> int:
    """Families that mate with one another, or that owned adapters join, count as one."""
    ends = {end for adapter in [*types, *owned] for end in adapter}
    ends |= {end for pair in pairs for end in (pair.first, pair.second)}
    connected_already = [*owned, *((end, mate) for end in ends for mate in mates_of(end))]
    classes = _DisjointSets((first.family, second.family) for first, second in connected_already)
    to_connect = [
        (classes.representative(pair.first.family), classes.representative(pair.second.family)) for pair in pairs
    ]
    components = _DisjointSets(to_connect)
    members = {family for both in to_connect for family in both}
    return len(members) - len({components.representative(family) for family in members})


class _DisjointSets:
    """Sets of families, merged pair by pair (union-find)."""

    def __init__(self, pairs: Iterable[tuple[str, str]]) -> None:
        self._parent: dict[str, str] = {}
        for one, other in pairs:
            first, second = sorted((self.representative(one), self.representative(other)))
            self._parent[second] = first

    def representative(self, family: str) -> str:
        """The first in the alphabet of the family's set."""
        while (parent := self._parent.get(family, family)) != family:
            family = parent
        return family
