"""The adapters to carry: what joins each pair, the smallest set that joins them all, and what is owned already."""

from collections import Counter
from collections.abc import Iterator
from itertools import islice
from typing import NamedTuple

from ..catalogue import catalogue
from ..catalogue.mating import ConnectorEnd, end_name, meeting
from ..cover.cover import smallest_cover
from ..physics.cautions import CAUTIONS
from .chains import AdapterChain, AdapterType, Stock, adapter_type, chains, joint_loss, loss_steps, stock, trade
from .effort import EFFORTS, Effort
from .exchange import exchanged
from .explain import impedances_differ, obstacle
from .hubs import FEW, through_hubs, useful
from .least import least_added
from .needs import Need, needs, owned
from .requests import KitRequest
from .results import AdapterCount, ChainJoint, JoinedBy, KitResult, PairResult, UsedAdapter
from .stand import Duty, Standing, standings
from .structure import structure

__all__ = ["kit"]

ALWAYS_LOOKED_AT = 2  # adapters in series
UNPROVEN = 2  # times less work


class _Ways(NamedTuple):
    """The chains of every need, each with the added adapters it takes as a bit set, least loss first."""

    by_need: dict[Need, list[tuple[int, AdapterChain]]]
    elements: list[AdapterType]
    """The added adapter of each bit; the second of a type is another bit."""
    complete: bool


def kit(request: KitRequest) -> KitResult:
    """The smallest set of adapters to add, proven where the search ends.

    Raises InputError naming the field for unknown families and senseless pairs.
    """
    effort = EFFORTS[request.search]
    pairs = needs(request)
    held = owned(request)
    duties = standings(request, {need.duty for _, need in pairs})
    wanted = [need for need in dict.fromkeys(need for _, need in pairs) if not impedances_differ(request, need)]
    fixed = {port.family for port in request.ports} | {end.family for one in held for end in one}
    everything = set(trade()) | set(held)
    worthwhile = useful(everything, fixed, duties.values())
    ways = _ways(request, wanted, duties, worthwhile, held, effort)
    open_needs = [need for need in wanted if ways.by_need[need] and all(taken for taken, _ in ways.by_need[need])]
    groups = [[taken for taken, _ in ways.by_need[need]] for need in open_needs]
    # what leaves chains out can't be proven, so it is searched for a shorter time
    work = effort.work if ways.complete else effort.work // UNPROVEN
    cover = smallest_cover(groups, work, structure(open_needs, groups, ways.elements))
    bound = cover.lower_bound if ways.complete else least_added(open_needs, worthwhile, held)
    chosen = exchanged([ways.by_need[need] for need in open_needs], cover.chosen, effort.looks)
    results = [
        _pair_result(request, pair, need, duties[need.duty], ways, chosen, stock(everything)) for pair, need in pairs
    ]
    added = Counter(ways.elements[bit] for bit in range(len(ways.elements)) if chosen >> bit & 1)
    return _result(added, bound, cover.nodes, results)


def _ways(
    request: KitRequest,
    wanted: list[Need],
    duties: dict[Duty, Standing],
    types: set[AdapterType],
    held: Counter[AdapterType],
    effort: Effort,
) -> _Ways:
    available = stock(types)
    found, longest = _longest_chains(request, wanted, duties, [available], effort.chains)
    complete = longest == request.most_in_series
    if not complete:
        families = {end.family for need in wanted for end in (need.first, need.second)}
        narrow = [stock(through_hubs(types, families, count)) for count in reversed(FEW)]
        through, _ = _longest_chains(request, wanted, duties, narrow, effort.chains)
        for need, joined in found.items():
            joined += through[need]
            joined += _long_chains(request, need, duties[need.duty], stock(held), effort.chains)
            joined += [] if joined else _long_chains(request, need, duties[need.duty], available, effort.chains)
    index: dict[tuple[AdapterType, int], int] = {}
    by_need = {}
    for need, joined in found.items():
        taken = [(_added(chain, held, index), chain) for chain in dict.fromkeys(joined) if _to_be_had(chain, held)]
        by_need[need] = sorted(taken, key=lambda way: (loss_steps(way[1]), len(way[1].adapters), way[1].adapters))
    return _Ways(by_need, [one for one, _ in index], complete)


def _longest_chains(
    request: KitRequest, wanted: list[Need], duties: dict[Duty, Standing], stocks: list[Stock], most: int
) -> tuple[dict[Need, list[AdapterChain]], int]:
    """Every need's chains up to the greatest length at which one of the stocks, the first, has not too many."""
    tried = ((longest, one) for longest in range(request.most_in_series, 0, -1) for one in stocks)
    return next(
        (found, longest)
        for longest, one in tried
        if (found := _all_chains(request, wanted, duties, one, longest, most)) is not None
    )


def _all_chains(
    request: KitRequest, wanted: list[Need], duties: dict[Duty, Standing], available: Stock, longest: int, most: int
) -> dict[Need, list[AdapterChain]] | None:
    """Every need's chains up to a length; None when there are too many and the length may be cut."""
    found, total = {}, 0
    for need in wanted:
        joined: list[AdapterChain] = []
        for chain in chains(need.first, need.second, duties[need.duty], available, longest, request.most_loss_db):
            joined.append(chain)
            if longest > ALWAYS_LOOKED_AT and total + len(joined) > most:
                return None
        found[need] = joined
        total += len(joined)
    return found


def _long_chains(
    request: KitRequest, need: Need, standing: Standing, available: Stock, most: int
) -> Iterator[AdapterChain]:
    """A need's chains of full length, as many as are looked at."""
    limits = (request.most_in_series, request.most_loss_db)
    return islice(chains(need.first, need.second, standing, available, *limits), most)


def _to_be_had(chain: AdapterChain, held: Counter[AdapterType]) -> bool:
    """Whether the trade sells what the chain takes beside the adapters owned."""
    return all(one in trade() for one in Counter(adapter_type(*adapter) for adapter in chain.adapters) - held)


def _added(chain: AdapterChain, held: Counter[AdapterType], index: dict[tuple[AdapterType, int], int]) -> int:
    """The adapters a chain takes beside those owned, as a bit set; new ones are given the next bit."""
    taken = 0
    for one, count in Counter(adapter_type(*adapter) for adapter in chain.adapters).items():
        for copy in range(held[one], count):
            taken |= 1 << index.setdefault((one, copy - held[one]), len(index))
    return taken


def _pair_result(
    request: KitRequest,
    pair: list[int],
    need: Need,
    standing: Standing,
    ways: _Ways,
    chosen: int,
    everything: Stock,
) -> PairResult:
    options = ways.by_need.get(need, [])
    best, bare = (next((chain for taken, chain in options if taken & with_ == taken), None) for with_ in (chosen, 0))
    meets = meeting(need.first, need.second)
    reason, sentence = ("", _told(best)) if best else obstacle(request, need, standing, everything)
    return PairResult(
        ports=pair,
        frequency_hz=need.duty.frequency_hz,
        power_w=need.duty.power_w,
        joined=best and _joined(best, need, standing),
        joined_by_owned=bare and _joined(bare, need, standing),
        reason=reason,
        sentence=sentence,
        trap=meets.sentence if meets.trap else "",
    )


def _told(chain: AdapterChain) -> str:
    if not chain.adapters:
        return "They mate as they are."
    return f"Joined by {', then '.join(_name(adapter) for adapter in chain.adapters)}."


def _name(adapter: AdapterType) -> str:
    return f"{end_name(adapter[0])} to {end_name(adapter[1])}"


def _joined(chain: AdapterChain, need: Need, standing: Standing) -> JoinedBy:
    faces = [need.first, *(end for adapter in chain.adapters for end in adapter), need.second]
    joints = [_joint(one, other, standing) for one, other in zip(faces[::2], faces[1::2], strict=True)]
    return JoinedBy(
        adapters=[UsedAdapter(_name(adapter), *adapter[0], *adapter[1]) for adapter in chain.adapters],
        joints=joints,
        margin_db=min(joint.margin_db for joint in joints),
        loss_db=chain.loss_db,
    )


def _joint(one: ConnectorEnd, other: ConnectorEnd, standing: Standing) -> ChainJoint:
    meets = meeting(one, other)
    families = dict.fromkeys((one.family, other.family))
    notes = [meets.sentence] if meets.sentence else []
    return ChainJoint(
        *one,
        *other,
        margin_db=min(standing.margin_db[family] for family in families),
        loss_db=joint_loss(standing, one, other),
        notes=notes + [note for family in families for note in standing.notes[family]],
    )


def _result(added: Counter[AdapterType], bound: int, nodes: int, pairs: list[PairResult]) -> KitResult:
    size = added.total()
    joined = [pair for pair in pairs if pair.joined]
    by_owned = sum(1 for pair in pairs if pair.joined_by_owned)
    return KitResult(
        adapters=[_count(one, count) for one, count in sorted(added.items(), key=lambda item: _shown(item[0]))],
        added=size,
        lower_bound=bound,
        gap=size - bound,
        optimal=size == bound,
        nodes=nodes,
        pairs=pairs,
        joined=len(joined),
        joined_by_owned=by_owned,
        total_loss_db=sum(pair.joined.loss_db for pair in joined),
        verdict=_verdict(size, bound, len(pairs), len(joined), by_owned),
        cautions=CAUTIONS,
    )


def _count(one: AdapterType, count: int) -> AdapterCount:
    entry = trade()[one]
    first, second = one
    return AdapterCount(
        name=_name(one),
        one_family=first.family,
        one_gender=first.gender,
        other_family=second.family,
        other_gender=second.gender,
        count=count,
        source=entry.source,
        kind=entry.kind,
        pack=_pack(entry.id, first.family, second.family),
    )


def _pack(adapter: str, *families: str) -> str:
    tables = catalogue()
    packs = [tables.pack_of("adapters", adapter), *(tables.pack_of("interfaces", family) for family in families)]
    return next((pack for pack in packs if pack), "")


def _shown(one: AdapterType) -> list[tuple[int, str]]:
    return [(catalogue().interfaces[end.family].order, end.gender) for end in one]


def _verdict(size: int, bound: int, pairs: int, joined: int, by_owned: int) -> str:
    what = f"{size} more adapter{'' if size == 1 else 's'}" if size else "Nothing to add"
    whole = "all" if joined == pairs else f"{joined} of {pairs}"
    proof = "no smaller set does" if size == bound else f"at least {bound} are needed"
    told = f"{what}: {whole} pairs can be joined, {by_owned} with what you have"
    return f"{told}; {proof}." if size else f"{told}."
