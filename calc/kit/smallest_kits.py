"""The smallest kits for the two goals, with what is known of how small they could be."""

from collections import Counter
from typing import NamedTuple

from ..cover.bits import BitSet, bits
from ..cover.branch_and_bound import smallest_cover
from .adapters import AdapterType, families_of, owned_adapters, trade
from .alternatives import Alternative, Alternatives, alternatives, chain_within
from .chain_free_bound import chain_free_bound
from .chain_quality import with_best_joints
from .chains import AdapterChain
from .dominated_families import without_dominated_families
from .exchange import with_least_loss
from .hints import search_hints
from .joint_figures import Duty, JointFigures
from .requests import Goal, KitRequest
from .required_pairs import RequiredPair, impedances_differ

__all__ = ["KitTask", "SmallestKit", "smallest_kits", "task_of"]


class Effort(NamedTuple):
    """How much is looked at: counted, not timed, so that the same request has one answer everywhere."""

    chains: int
    """Of all pairs together."""
    work: int
    """Of the search for the smallest cover."""
    evaluations: int
    """Of the loss of a pair, when adapters are exchanged."""


EFFORTS = {
    # some two seconds at most, measured in tests/benchmarks/limits.py
    "quick": Effort(chains=25_000, work=100_000_000, evaluations=400_000),
    # proves all kits of twenty ports with up to three adapters in series in tests/benchmarks/kit.py
    "thorough": Effort(chains=250_000, work=8_000_000_000, evaluations=3_000_000),
}
"""By what a request asks for."""

BESIDE = EFFORTS["quick"]._replace(work=EFFORTS["quick"].work // 4)
"""For the goal that was not asked for, whose kit is told beside the other's."""

UNPROVABLE = 2  # times less work where chains were left out, as the search then proves nothing


class KitTask(NamedTuple):
    """What is to be joined, and by what."""

    request: KitRequest
    pairs: list[RequiredPair]
    """Unlike ones whose impedances allow it."""
    figures: dict[Duty, JointFigures]
    owned: Counter[AdapterType]
    types: set[AdapterType]
    """All that could be used."""


class PermittedChains(NamedTuple):
    """What may join each pair by a goal."""

    types: set[AdapterType]
    effort: Effort
    found: Alternatives
    by_pair: dict[RequiredPair, list[Alternative]]
    """Of those found, what the goal allows."""

    def chains(self, pair: RequiredPair) -> list[AdapterChain]:
        """Every chain that may join the pair."""
        return [option.chain for option in self.by_pair.get(pair, [])]


class SmallestKit(NamedTuple):
    """A kit, and what it was chosen from."""

    permitted: PermittedChains
    chosen: BitSet
    lower_bound: int
    nodes: int

    @property
    def size(self) -> int:
        """How many adapters it adds."""
        return self.chosen.bit_count()

    @property
    def is_smallest(self) -> bool:
        """Whether that is proven."""
        return self.size == self.lower_bound

    @property
    def added(self) -> Counter[AdapterType]:
        """The adapters it adds."""
        return Counter(self.permitted.found.elements[bit] for bit in bits(self.chosen))

    def chain(self, pair: RequiredPair) -> AdapterChain | None:
        """What joins the pair with this kit."""
        return chain_within(self.permitted.by_pair.get(pair, []), self.chosen)

    def owned_chain(self, pair: RequiredPair) -> AdapterChain | None:
        """What joins the pair with nothing but what is owned."""
        return chain_within(self.permitted.found.by_pair.get(pair, []), 0)


def task_of(request: KitRequest, pairs: list[RequiredPair], figures: dict[Duty, JointFigures]) -> KitTask:
    """The task of a request for these pairs. Raises InputError for an unknown family of an owned adapter."""
    owned = owned_adapters(request)
    joinable = [pair for pair in dict.fromkeys(pairs) if not impedances_differ(request, pair)]
    return KitTask(request, joinable, figures, owned, set(trade()) | set(owned))


def smallest_kits(task: KitTask) -> dict[Goal, SmallestKit]:
    """The smallest kits of both goals; for the one that is not asked for it is searched briefly.

    A kit that serves both goals is the kit of both.
    """
    goal, asked = task.request.goal, EFFORTS[task.request.search]
    fewest = _smallest(task, _permitted(task, "fewest", asked if goal == "fewest" else BESIDE))
    permitted = _permitted(task, "best_joints", asked if goal == "best_joints" else BESIDE, fewest.permitted)
    has_best_joints = all(fewest.chain(pair) in permitted.chains(pair) for pair in task.pairs)
    if has_best_joints and (fewest.is_smallest or fewest.permitted.effort.work >= permitted.effort.work):
        return {"fewest": fewest, "best_joints": fewest}
    best = _smallest(task, permitted)
    # no kit with the best joints is smaller than the fewest can be
    best = best._replace(lower_bound=max(best.lower_bound, fewest.lower_bound))
    if best.size <= fewest.size:
        fewest = best._replace(lower_bound=fewest.lower_bound, nodes=fewest.nodes)
    return {"fewest": fewest, "best_joints": best}


def _permitted(task: KitTask, goal: Goal, effort: Effort, known: PermittedChains | None = None) -> PermittedChains:
    """What may join the pairs by a goal; what was found for another may be known."""
    request, pairs, figures, owned, every_type = task
    fixed = {port.family for port in request.ports}.union(*map(families_of, owned))
    types = without_dominated_families(every_type, fixed, figures.values(), goal)
    if known and (known.types, known.effort.chains) == (types, effort.chains):
        found = known.found
    else:
        found = alternatives(request, pairs, figures, types, owned, effort.chains)
    by_pair = found.by_pair
    if goal == "best_joints":
        by_pair = {pair: with_best_joints(pair, options, figures[pair.duty]) for pair, options in by_pair.items()}
    return PermittedChains(types, effort, found, by_pair)


def _smallest(task: KitTask, permitted: PermittedChains) -> SmallestKit:
    """The smallest kit that joins every pair by one of its alternatives."""
    types, effort, found, by_pair = permitted
    open_pairs = [pair for pair in task.pairs if by_pair[pair] and all(option.added for option in by_pair[pair])]
    groups = [[option.added for option in by_pair[pair]] for pair in open_pairs]
    work = effort.work if found.complete else effort.work // UNPROVABLE
    cover = smallest_cover(groups, work, search_hints(open_pairs, groups, found.elements))
    lower_bound = cover.lower_bound if found.complete else chain_free_bound(open_pairs, types, task.owned)
    chosen = with_least_loss([by_pair[pair] for pair in open_pairs], cover.chosen, effort.evaluations)
    return SmallestKit(permitted, chosen, lower_bound, cover.nodes)
