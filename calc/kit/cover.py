"""The smallest set that holds, for every group, one of the group's alternatives whole: exact search with a bound.

Sets are bit sets in Python integers. A node of the search knows which elements
are in and which are out. What must follow is drawn first; then the node is left
when its lower bound can't beat the best cover known, or split on one element,
in or out.
"""

import heapq
from itertools import count
from typing import NamedTuple

import numpy as np

from jointwise.calc.kit.bound import Bound, Shares, bits

__all__ = ["Cover", "smallest_cover", "without_spares"]

STEP_WORK = 1500  # incidences as long as the rest of a step takes
FIRST_STEPS, STEPS, STEPS_AGAIN = 200, 25, 5  # of the bound: at the root, at a node, after elements were barred
GREEDY_EVERY = 8  # nodes; more often costs more than it finds
GREEDY_STEPS = 400  # as many steps of a bound take as long


class Cover(NamedTuple):
    """The best cover found, how small any cover can be at least, and the nodes searched."""

    chosen: int
    lower_bound: int
    nodes: int


class _Node(NamedTuple):
    """Part of all covers: those with the elements of `chosen` and none of `out`."""

    chosen: int
    out: int
    shares: np.ndarray
    """The parent's, to begin the bound with."""


class _Reduced(NamedTuple):
    chosen: int
    groups: list[list[int]]


def smallest_cover(groups: list[list[int]], most_work: int) -> Cover:
    """The smallest cover of groups of alternatives; each group has at least one, none of them empty.

    After `most_work` the best cover found is returned with a bound that holds
    for every cover.
    """
    if not groups:
        return Cover(0, 0, 0)
    search = _Search(_essential(groups), most_work)
    least = search.run()
    return Cover(search.best, least, search.nodes)


class _Search:
    """The best cover known, the nodes still open by their bound, and the work that is left."""

    def __init__(self, groups: list[list[int]], most_work: int) -> None:
        self.groups, self.work = groups, most_work
        self.best = _first_cover(groups)
        self.shares = Shares(groups)
        self.nodes = 0

    def run(self) -> int:
        """Search until the best is proven or the work is done; returns what every cover needs at least."""
        turn = count()
        open_nodes = [(0, next(turn), _Node(0, 0, self.shares.even))]
        while open_nodes and self.work > 0:
            known, _, node = heapq.heappop(open_nodes)
            if known >= self.best.bit_count():
                continue
            self.nodes += 1
            bound, children = self._split(node)
            for child in children:
                heapq.heappush(open_nodes, (max(known, bound), -next(turn), child))
        return min([self.best.bit_count(), *(known for known, *_ in open_nodes)])

    def _split(self, node: _Node) -> tuple[int, list[_Node]]:
        """A node's bound and its two parts, of which the last is looked at first; none when no part can be smaller."""
        steps = STEPS if self.nodes > 1 else FIRST_STEPS
        while True:
            reduced = _follow(self.groups, node)
            if reduced is None or reduced.chosen.bit_count() >= self.best.bit_count():
                return 0, []
            if not reduced.groups:
                self.best = reduced.chosen
                return 0, []
            if self.nodes % GREEDY_EVERY == 1 and steps > STEPS_AGAIN:
                self.work -= GREEDY_STEPS * (STEP_WORK + self.shares.size)
                found = without_spares(self.groups, _greedy(reduced.groups, reduced.chosen))
                self.best = min(self.best, found, key=int.bit_count)
            held = reduced.chosen.bit_count()
            bound = self._bound(node, reduced, steps)
            if held + bound.least >= self.best.bit_count():
                return 0, []
            node = _Node(reduced.chosen, node.out | bound.barred, bound.shares)
            if not bound.barred:
                break
            steps = STEPS_AGAIN
        use = _use(reduced.groups)
        one = 1 << max(use, key=lambda bit: (use[bit], -bit))
        return held + bound.least, [node._replace(chosen=node.chosen | one), node._replace(out=node.out | one)]

    def _bound(self, node: _Node, reduced: _Reduced, steps: int) -> Bound:
        self.work -= steps * (STEP_WORK + self.shares.size)
        beat = self.best.bit_count() - reduced.chosen.bit_count()
        return self.shares.bound(reduced.chosen, node.out, node.shares, steps, beat)


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


def _follow(groups: list[list[int]], node: _Node) -> _Reduced | None:
    """What a node must hold beside its own choice, and what is left to cover; None when it can't be covered."""
    chosen = node.chosen
    while True:
        forced, left = chosen, []
        for group in groups:
            alternatives = [one & ~chosen for one in group if not one & node.out]
            if not alternatives:
                return None
            if not all(alternatives):
                continue
            left.append(alternatives)
            common = alternatives[0]
            for alternative in alternatives:
                common &= alternative
            forced |= common
        if forced == chosen:
            return _Reduced(chosen, left)
        chosen = forced


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
