"""The smallest set that holds, for every group, one of the group's alternatives whole: exact search with a bound.

Sets are bit sets in Python integers. A node of the search knows which elements
are in and which are out. What must follow is drawn first; then the node is left
when its lower bound can't beat the best cover known, or split: on a *star*, a
set of elements that belong together, by whether it holds no more elements than
now or at least one more, or else on one element, in or out.
"""

import heapq
from collections.abc import Iterator
from itertools import count
from typing import NamedTuple

from jointwise.calc.kit.bound import bits, lower_bound

__all__ = ["Cover", "smallest_cover", "without_spares"]

MOST_WORK = 300_000
"""Alternatives looked at, summed over the nodes of the search: some ten seconds at most."""
GREEDY_EVERY = 8  # nodes; more often costs more than it finds
FREE_POWER = 0.5  # a star is split on by how much its free elements help, over this power of their number


class Cover(NamedTuple):
    """The best cover found, how small any cover can be at least, and the nodes searched."""

    chosen: int
    lower_bound: int
    nodes: int


class _Node(NamedTuple):
    """Part of all covers: those with the elements of `chosen`, none of `out`, and each star's demand."""

    chosen: int
    out: int
    demands: tuple[int, ...]
    bound: int


class _Reduced(NamedTuple):
    chosen: int
    groups: list[list[int]]


def smallest_cover(groups: list[list[int]], stars: list[int], most_work: int = MOST_WORK) -> Cover:
    """The smallest cover of groups of alternatives; each group has at least one, none of them empty.

    `stars` guide the search and do not change the answer. After `most_work`
    the best cover found is returned with a bound that holds for every cover.
    """
    groups = _essential(groups)
    best = _first_cover(groups)
    turn = count()
    open_nodes = [(0, next(turn), _Node(0, 0, (0,) * len(stars), 0))]
    nodes = work = 0
    while open_nodes and work < most_work:
        *_, node = heapq.heappop(open_nodes)
        if node.bound >= best.bit_count():
            continue
        nodes += 1
        work += sum(len(group) for group in groups)
        reduced = _follow(groups, stars, node)
        if reduced is None or reduced.chosen.bit_count() >= best.bit_count():
            continue
        if not reduced.groups:
            best = reduced.chosen
            continue
        if nodes % GREEDY_EVERY == 1:
            found = without_spares(groups, _greedy(reduced.groups, reduced.chosen))
            best = min(best, found, key=int.bit_count)
        bound = _node_bound(reduced, stars, node, best.bit_count())
        if bound < best.bit_count():
            known = node._replace(chosen=reduced.chosen, bound=bound)
            for child in _children(known, reduced.groups, stars):
                heapq.heappush(open_nodes, (bound, -next(turn), child))
    least = min([best.bit_count(), *(bound for bound, *_ in open_nodes)])
    return Cover(best, least, nodes)


def _essential(groups: list[list[int]]) -> list[list[int]]:
    """The groups with their smallest alternatives only, without those that another group's cover meets anyway."""
    kept: list[list[int]] = []
    for group in sorted((_smallest(group) for group in groups), key=len):
        if not any(_implies(other, group) for other in kept):
            kept.append(group)
    return kept


def _implies(one: list[int], other: list[int]) -> bool:
    """Whether every alternative of the one holds an alternative of the other."""
    return all(any(small & alternative == small for small in other) for alternative in one)


def _smallest(group: list[int]) -> list[int]:
    """The alternatives that hold no other alternative, in a fixed order."""
    kept: list[int] = []
    for alternative in sorted(set(group), key=lambda one: (one.bit_count(), one)):
        if not any(small & alternative == small for small in kept):
            kept.append(alternative)
    return kept


def _follow(groups: list[list[int]], stars: list[int], node: _Node) -> _Reduced | None:
    """What a node must hold beside its own choice, and what is left to cover; None when it can't be covered."""
    chosen = node.chosen
    while True:
        forced, left = chosen, []
        for group in groups:
            alternatives = _smallest([one & ~chosen for one in group if not one & node.out])
            if not alternatives:
                return None
            if alternatives[0] == 0:
                continue
            left.append(alternatives)
            common = alternatives[0]
            for alternative in alternatives:
                common &= alternative
            forced |= common
        for star, demand in zip(stars, node.demands, strict=True):
            usable = star & ~node.out
            if usable.bit_count() < demand:
                return None
            if usable.bit_count() == demand:
                forced |= usable
        if forced == chosen:
            return _Reduced(chosen, left)
        chosen = forced


def _node_bound(reduced: _Reduced, stars: list[int], node: _Node, beat: int) -> int:
    """A number of elements that every cover of the node has at least."""
    wanted = [
        (star & ~reduced.chosen & ~node.out, demand - (star & reduced.chosen).bit_count())
        for star, demand in zip(stars, node.demands, strict=True)
    ]
    wanted = [(star, demand) for star, demand in wanted if demand > 0]
    held = reduced.chosen.bit_count()
    return max(node.bound, held + lower_bound(reduced.groups, wanted, beat - held))


def _children(node: _Node, groups: list[list[int]], stars: list[int]) -> Iterator[_Node]:
    """The node's covers in disjoint parts, the more promising first."""
    use = _use(groups)
    wanted = sum(1 << bit for bit in use)
    best_star, best_score = None, 0.0
    for at, (star, demand) in enumerate(zip(stars, node.demands, strict=True)):
        free = star & wanted & ~node.out & ~node.chosen
        if free and demand <= (star & node.chosen).bit_count():
            score = sum(use[bit] for bit in bits(free)) / free.bit_count() ** FREE_POWER
            if score > best_score:
                best_star, best_score = at, score
    if best_star is None:
        bit = max(use, key=lambda one: (use[one], -one))
        yield node._replace(chosen=node.chosen | 1 << bit)
        yield node._replace(out=node.out | 1 << bit)
        return
    star = stars[best_star]
    held = star & node.chosen
    free = star & ~node.out & ~held
    more = list(node.demands)
    if held:
        more[best_star] = held.bit_count() + 1
        yield node._replace(demands=tuple(more))
        yield node._replace(out=node.out | free)
        return
    more[best_star] = 2
    yield node._replace(demands=tuple(more))
    for bit in sorted(bits(free), key=lambda one: -use.get(one, 0.0)):
        yield node._replace(chosen=node.chosen | 1 << bit, out=node.out | free & ~(1 << bit))
    if not held:
        yield node._replace(out=node.out | free)


def _first_cover(groups: list[list[int]]) -> int:
    """A good cover to begin with: greedy, with long alternatives barred or not, then taken apart and mended."""
    found = []
    for longest in range(1, max((one.bit_count() for group in groups for one in group), default=0) + 1):
        short = [[one for one in group if one.bit_count() <= longest] or group for group in groups]
        found.append(_mended(short, without_spares(groups, _greedy(short, 0))))
    return min(found, key=int.bit_count, default=0)


def _mended(groups: list[list[int]], chosen: int) -> int:
    """The cover after taking out one element after the other and covering anew without it, while that helps."""
    for bit in bits(chosen):
        barred = 1 << bit
        others = [[one for one in group if not one & barred] for group in groups]
        if all(others):
            mended = without_spares(groups, _greedy(others, chosen & ~barred))
            if mended.bit_count() < chosen.bit_count():
                return _mended(groups, mended)
    return chosen


def _greedy(groups: list[list[int]], chosen: int) -> int:
    """A cover that serves the group with the fewest ways left first, by the way that helps the others most."""
    while True:
        left = [[one & ~chosen for one in group] for group in groups]
        left = [group for group in left if all(group)]
        if not left:
            return chosen
        use = _use(left)
        hardest = min(left, key=len)
        chosen |= max(hardest, key=lambda one: sum(use[bit] for bit in bits(one)) / one.bit_count())


def _use(groups: list[list[int]]) -> dict[int, float]:
    """How much each element helps: summed over alternatives, the fewer and the smaller the more."""
    use: dict[int, float] = {}
    for group in groups:
        for alternative in group:
            worth = 1 / (len(group) * alternative.bit_count())
            for bit in bits(alternative):
                use[bit] = use.get(bit, 0.0) + worth
    return use


def without_spares(groups: list[list[int]], chosen: int) -> int:
    """The cover without elements that it can spare."""
    for bit in sorted(bits(chosen), reverse=True):
        without = chosen & ~(1 << bit)
        if all(any(one & without == one for one in group) for group in groups):
            chosen = without
    return chosen
