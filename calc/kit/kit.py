"""The adapters to carry: the smallest set that joins every pair of ports, beside what is owned already."""

from ..catalogue import catalogue
from ..physics.cautions import CAUTIONS
from .adapters import AdapterType, adapter_name, stock_of, trade
from .joint_figures import joint_figures
from .pair_result import pair_result
from .port_names import port_names
from .price import goal_price
from .requests import Goal, KitRequest
from .required_pairs import required_pairs
from .results import AdapterCount, GoalPrice, KitResult, PairResult
from .smallest_kits import SmallestKit, smallest_kits, task_of
from .verdict import headline, stated_words, verdict

__all__ = ["kit"]


def kit(request: KitRequest) -> KitResult:
    """The smallest set of adapters to add for the goal, proven where the search ends, and what the other goal costs.

    Raises InputError naming the field for unknown families and senseless pairs.
    """
    asked = required_pairs(request)
    figures = joint_figures(request, {pair.duty for _, pair in asked})
    task = task_of(request, [pair for _, pair in asked], figures)
    kits = smallest_kits(task)
    chosen, stock, names = kits[request.goal], stock_of(task.types), port_names(request.ports)
    pairs = [
        pair_result(request, numbers, [names[at] for at in numbers], pair, figures[pair.duty], chosen, stock)
        for numbers, pair in asked
    ]
    price = goal_price(request.goal, kits["fewest"], kits["best_joints"], asked, figures, names)
    return _result(request.goal, chosen, pairs, price, bool(task.owned))


def _result(goal: Goal, smallest: SmallestKit, pairs: list[PairResult], price: GoalPrice, owns_any: bool) -> KitResult:
    size, lower_bound = smallest.size, smallest.lower_bound
    joined = [pair.joined for pair in pairs if pair.joined]
    joined_by_owned = sum(1 for pair in pairs if pair.joined_by_owned)
    return KitResult(
        goal=goal,
        adapters=[_adapter_count(one, count) for one, count in sorted(smallest.added.items(), key=_in_catalogue_order)],
        added=size,
        lower_bound=lower_bound,
        gap=size - lower_bound,
        optimal=smallest.is_smallest,
        nodes=smallest.nodes,
        pairs=pairs,
        joined=len(joined),
        joined_by_owned=joined_by_owned,
        total_loss_db=sum(joined_by.loss_db for joined_by in joined),
        price=price,
        headline=headline(size, pairs, owns_any),
        verdict=verdict(goal, size, lower_bound, pairs, joined_by_owned, owns_any),
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
