"""How many adapters any kit adds at least, whatever chains it takes: for where there are too many to look at."""

from collections.abc import Iterable

from ..catalogue.mating import mates_of
from ..cover.bound import lower_bound
from .chains import AdapterType
from .needs import Need

__all__ = ["least_added"]


def least_added(needs: list[Need], types: Iterable[AdapterType], held: Iterable[AdapterType]) -> int:
    """A number no kit is below that joins all these needs, none of which is met with the adapters `held`.

    Each end that nothing held fits takes an adapter of its own or shares one
    with another end. And ends that must be joined by way of one another lie in
    families that adapters connect, a family less one at least.
    """
    types, held = sorted(types), list(held)
    return max(_by_ends(needs, types, held), _by_families(needs, types, held), int(bool(needs)))


def _by_ends(needs: list[Need], types: list[AdapterType], held: list[AdapterType]) -> int:
    ends = dict.fromkeys(end for need in needs for end in (need.first, need.second))
    bare = [end for end in ends if not any(end in mates_of(side) for one in held for side in one)]
    groups = [[1 << at for at, one in enumerate(types) if any(end in mates_of(side) for side in one)] for end in bare]
    return lower_bound(groups) if groups else 0


def _by_families(needs: list[Need], types: list[AdapterType], held: list[AdapterType]) -> int:
    """Counted by families that neither mate with one another nor are joined by what is held."""
    sides = {side for one in [*types, *held] for side in one} | {
        end for need in needs for end in (need.first, need.second)
    }
    near = [*held, *((side, mate) for side in sides for mate in mates_of(side))]
    close = _Together((one.family, other.family) for one, other in near)
    apart = [(close.of(need.first.family), close.of(need.second.family)) for need in needs]
    wanted = _Together(apart)
    families = {family for pair in apart for family in pair}
    return len(families) - len({wanted.of(family) for family in families})


class _Together:
    """Families put together by pairs."""

    def __init__(self, pairs: Iterable[tuple[str, str]]) -> None:
        self.known_as: dict[str, str] = {}
        for one, other in pairs:
            first, second = sorted((self.of(one), self.of(other)))
            self.known_as[second] = first

    def of(self, family: str) -> str:
        """The family that stands for all that are put together with this one."""
        while (other := self.known_as.get(family, family)) != family:
            family = other
        return family
