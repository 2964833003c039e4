"""The adapters to carry: the smallest set that joins every pair of ports, beside what is owned already."""

from collections import Counter
from typing import NamedTuple

from ..catalogue import catalogue
from ..cover.bits import bits
from ..cover.branch_and_bound import smallest_cover
from ..physics.cautions import CAUTIONS
from .adapters import AdapterType, adapter_name, families_of, owned_adapters, stock_of, trade
from .alternatives import alternatives
from .chain_free_bound import chain_free_bound
from .dominated_families import without_dominated_families
from .exchange import with_least_loss
from .hints import search_hints
from .joint_figures import joint_figures
from .pair_result import pair_result
from .requests import KitRequest
from .required_pairs import impedances_differ, required_pairs
from .results import AdapterCount, KitResult, PairResult
from .verdict import stated_words, verdict

__all__ = ["kit"]


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

UNPROVABLE = 2  # times less work where chains were left out, as the search then proves nothing


def kit(request: KitRequest) -> KitResult:
    """The smallest set of adapters to add, proven where the search ends.

    Raises InputError naming the field for unknown families and senseless pairs.
    """
    effort = EFFORTS[request.search]
    asked = required_pairs(request)
    owned = owned_adapters(request)
    figures = joint_figures(request, {pair.duty for _, pair in asked})
    pairs = [pair for pair in dict.fromkeys(pair for _, pair in asked) if not impedances_differ(request, pair)]
    fixed = {port.family for port in request.ports}.union(*map(families_of, owned))
    every_type = set(trade()) | set(owned)
    types = without_dominated_families(every_type, fixed, figures.values())
    found = alternatives(request, pairs, figures, types, owned, effort.chains)
    open_pairs = [pair for pair in pairs if found.by_pair[pair] and all(option.added for option in found.by_pair[pair])]
    groups = [[option.added for option in found.by_pair[pair]] for pair in open_pairs]
    work = effort.work if found.complete else effort.work // UNPROVABLE
    cover = smallest_cover(groups, work, search_hints(open_pairs, groups, found.elements))
    lower_bound = cover.lower_bound if found.complete else chain_free_bound(open_pairs, types, owned)
    chosen = with_least_loss([found.by_pair[pair] for pair in open_pairs], cover.chosen, effort.evaluations)
    stock = stock_of(every_type)
    results = [
        pair_result(request, numbers, pair, figures[pair.duty], found.by_pair.get(pair, []), chosen, stock)
        for numbers, pair in asked
    ]
    return _result(Counter(found.elements[bit] for bit in bits(chosen)), lower_bound, cover.nodes, results)


def _result(added: Counter[AdapterType], lower_bound: int, nodes: int, pairs: list[PairResult]) -> KitResult:
    size = added.total()
    joined = [pair.joined for pair in pairs if pair.joined]
    joined_by_owned = sum(1 for pair in pairs if pair.joined_by_owned)
    return KitResult(
        adapters=[_adapter_count(one, count) for one, count in sorted(added.items(), key=_in_catalogue_order)],
        added=size,
        lower_bound=lower_bound,
        gap=size - lower_bound,
        optimal=size == lower_bound,
        nodes=nodes,
        pairs=pairs,
        joined=len(joined),
        joined_by_owned=joined_by_owned,
        total_loss_db=sum(joined_by.loss_db for joined_by in joined),
        verdict=verdict(size, lower_bound, len(pairs), len(joined), joined_by_owned),
        cautions=CAUTIONS,
    )


def _in_catalogue_order(counted: tuple[AdapterType, int]) -> list[tuple[int, str]]:
    return [(catalogue().interfaces[end.family].order, end.gender) for end in counted[0]]


def _adapter_count(adapter: AdapterType, count: int) -> AdapterCount:
    entry = trade()[adapter]
    first, second = adapter
    return AdapterCount(
        name=adapter_name(adapter),
        one_family=first.family,
        one_gender=first.gender,
        other_family=second.family,
        other_gender=second.gender,
        count=count,
        source=entry.source,
        kind=entry.kind,
        pack=_pack(entry.id, first.family, second.family),
        stated=stated_words(entry, adapter),
    )


def _pack(adapter: str, *families: str) -> str:
    """The first pack that one of these comes from."""
    tables = catalogue()
    packs = [tables.pack_of("adapters", adapter), *(tables.pack_of("interfaces", family) for family in families)]
    return next((pack for pack in packs if pack), "")
