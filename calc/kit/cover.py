"""The smallest set that holds, for every group, one of the group's alternatives whole: exact search with a bound.

Whether a cover of so many elements exists is decided for one more element
after the other, from the lower bound on, until one is found or the best cover
known is proven. A node of that search knows which elements are in and which
are out; what must follow is drawn first (`rest.py`), then the node is left when
its lower bound goes beyond what is allowed (`bound.py`). It is split on a star:
a set of elements of which a cover holds none, exactly one, or two at least.
The adapters that fit one port are a star. Knowing that a port has one adapter,
and which, says far more than that one adapter is in or out.
"""

from collections.abc import Iterator
from contextlib import suppress
from itertools import combinations
from typing import NamedTuple

import numpy as np

from jointwise.calc.kit.bits import bits, flags, mask
from jointwise.calc.kit.bound import bounded
from jointwise.calc.kit.rest import Rest, rest_of

__all__ = ["NO_STRUCTURE", "Cover", "Structure", "smallest_cover", "without_spares"]

STEP_WORK = 1500  # incidences as long as the rest of a step takes
NODE_STEPS = 6  # of a bound, as long as the rest of a node takes
FIRST_STEPS, STEPS, STEPS_AGAIN = 200, 45, 10  # of the bound: at the root, at a node, after elements were barred
MEND_SHARE = 4  # one in so much of the work goes into mending the first cover
MEND_STRIDES, MEND_FREED, MEND_NODES = 3, 7, 60  # how far apart, how many elements are taken out; nodes in each try


class Structure(NamedTuple):
    """What is known of the elements; it makes the search faster, never another."""

    stars: list[int]
    """Sets of elements to split on."""
    mirrors: list[tuple[int, int]]
    """Two sets of elements whose exchange, one by one, leaves all groups together as they are."""


NO_STRUCTURE = Structure([], [])


class Cover(NamedTuple):
    """The best cover found, how small any cover can be at least, and the nodes searched."""

    chosen: int
    lower_bound: int
    nodes: int


class _Node(NamedTuple):
    """Part of all covers: those with the elements of `chosen` and none of `out`."""

    rest: Rest
    chosen: np.ndarray
    out: np.ndarray
    stars: int
    """Those not yet split on."""
    mirrors: int
    """Those that nothing chosen tells apart from their image."""


class _Spent(Exception):
    """The work is done."""


def smallest_cover(groups: list[list[int]], most_work: int, structure: Structure = NO_STRUCTURE) -> Cover:
    """The smallest cover of groups of alternatives; each group has at least one, none of them empty.

    After `most_work` the best cover found is returned with a bound that holds
    for every cover.
    """
    if not groups:
        return Cover(0, 0, 0)
    return _Search(_essential(groups), most_work, structure).cover()


class _Search:
    """The best cover known, the bound that is proven, and the work that is left."""

    def __init__(self, groups: list[list[int]], most_work: int, structure: Structure) -> None:
        self.groups, self.work, self.nodes = groups, most_work, 0
        self.structure = structure
        self.rest = rest_of(groups)
        self.width = int(self.rest.element.max()) + 1
        everything = (1 << self.width) - 1
        self.stars = [flags(star & everything, self.width) for star in structure.stars]
        self.touches = [
            mask(at for at, sides in enumerate(structure.mirrors) if any(side >> bit & 1 for side in sides))
            for bit in range(self.width)
        ]
        self.images = [
            mask(at for at, (_, image) in enumerate(structure.mirrors) if image >> bit & 1) for bit in range(self.width)
        ]
        self.best = _first_cover(groups)
        self.least = 0

    def cover(self) -> Cover:
        """Search until the best is proven or the work is done."""
        with suppress(_Spent):
            self._prove()
        return Cover(self.best, self.least, self.nodes)

    def _prove(self) -> None:
        first = bounded(self.rest, self.width, FIRST_STEPS, self.rest.size)
        self.work -= FIRST_STEPS * (STEP_WORK + self.rest.size)
        self.rest = self.rest._replace(share=first.share)
        self.least = first.least
        self._mend(self.work - self.work // MEND_SHARE)
        while self.least < self.best.bit_count():
            found = self._within(self.least, 0)
            if found:
                self.best = found
            else:
                self.least += 1

    def _mend(self, until: int) -> None:
        """Take every so many-th element out of the best cover and search for fewer instead, as long as that helps."""
        vain = 0
        while self.least < self.best.bit_count() and self.work > until:
            elements = list(bits(self.best))
            size = len(elements)
            stride, first = 1 + vain // size, vain % size
            if stride > MEND_STRIDES:
                break
            freed = {elements[(first + stride * at) % size] for at in range(MEND_FREED)}
            found = self._within(size - 1, self.best & ~mask(freed), MEND_NODES)
            self.best, vain = (found, 0) if found else (self.best, vain + 1)

    def _within(self, most: int, chosen: int, most_nodes: int | None = None) -> int:
        """A cover with the chosen elements and at most `most` in all; 0 when there is none, or the nodes are up."""
        stars, mirrors = (1 << len(self.stars)) - 1, 0 if chosen else (1 << len(self.structure.mirrors)) - 1
        start = _Node(self.rest, flags(chosen, self.width), np.zeros(self.width, dtype=bool), stars, mirrors)
        open_nodes, until = [iter([start])], most_nodes and self.nodes + most_nodes
        while open_nodes and (until is None or self.nodes < until):
            node = next(open_nodes[-1], None)
            if node is None:
                open_nodes.pop()
                continue
            self.nodes += 1
            reduced = self._reduced(node, most)
            if reduced is None:
                continue
            if not reduced.rest.groups:
                return mask(np.flatnonzero(reduced.chosen))
            open_nodes.append(self._parts(reduced))
        return 0

    def _reduced(self, node: _Node, most: int) -> _Node | None:
        """The node with all that follows; None when it has no cover of at most `most` elements."""
        steps = STEPS
        while True:
            left = node.rest.left(node.chosen, node.out, most)
            if left is None:
                return None
            rest, chosen = left
            node = node._replace(rest=rest, chosen=chosen)
            if not rest.groups:
                return node
            self.work -= (steps + NODE_STEPS) * (STEP_WORK + rest.size)
            if self.work < 0:
                raise _Spent
            allowed = most - np.count_nonzero(chosen)
            bound = bounded(rest, self.width, steps, allowed)
            if bound.least > allowed:
                return None
            node = node._replace(rest=rest._replace(share=bound.share))
            dear = bound.dear & (rest.asked(self.width) > 0)
            if not dear.any():
                return node
            node, steps = node._replace(out=node.out | dear), STEPS_AGAIN

    def _parts(self, node: _Node) -> Iterator[_Node]:
        """The node split on the star that has the fewest elements to choose among, for what asks for them."""
        asked, helpful = node.rest.asked(self.width), node.rest.helpful(self.width)
        rated = []
        for at in bits(node.stars):
            star = self.stars[at]
            held, free = np.count_nonzero(node.chosen[star]), np.flatnonzero(star & (asked > 0))
            if held < 2 and free.size:
                rated.append((free.size / ((1 + asked[free].max()) * (1 + held)), at, held, free))
        if not rated:
            yield from self._with_or_without(node, int(helpful.argmax()))
            return
        _, at, held, free = min(rated, key=lambda one: one[:2])
        node = node._replace(stars=node.stars & ~(1 << at))
        closed = node._replace(out=node.out | self.stars[at] & ~node.chosen)
        if held == 0:
            for one in sorted(free, key=lambda one: -helpful[one]):
                if not self.images[one] & node.mirrors:
                    yield self._having(closed, int(one))
        yield closed
        more = [mask(some) for some in combinations(free, 2 - held)]
        if more:
            yield node._replace(rest=node.rest.also(more))

    def _with_or_without(self, node: _Node, one: int) -> Iterator[_Node]:
        yield self._having(node, one)
        without = flags(1 << one, self.width)
        yield node._replace(out=node.out | without, mirrors=node.mirrors & ~self.touches[one])

    def _having(self, node: _Node, one: int) -> _Node:
        chosen = flags(1 << one, self.width)
        return node._replace(
            chosen=node.chosen | chosen, out=node.out & ~chosen, mirrors=node.mirrors & ~self.touches[one]
        )


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


def _first_cover(groups: list[list[int]]) -> int:
    """A cover to begin with: greedy, with long alternatives barred or not."""
    found = []
    for longest in range(1, max(one.bit_count() for group in groups for one in group) + 1):
        short = [[one for one in group if one.bit_count() <= longest] or group for group in groups]
        found.append(without_spares(groups, _greedy(short)))
    return min(found, key=int.bit_count)


def _greedy(groups: list[list[int]]) -> int:
    """A cover that serves the group with the fewest ways left first, by the way that helps the others most."""
    chosen = 0
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
