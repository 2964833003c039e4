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

from .bits import bits, flags, mask
from .bound import CLEAR, bounded
from .look_ahead import outlook
from .residual import Rest, rest_of

__all__ = ["NO_STRUCTURE", "Cover", "Structure", "smallest_cover", "without_spares"]

STEP_WORK = 5000  # numbers gone through as long as the rest of a step takes
NODE_STEPS = 6  # of a bound, as long as the rest of a node takes
FIRST_STEPS, STEPS, STEPS_AGAIN = 400, 60, 12  # of the bound: at the root, at a node, after elements were barred
PART_SHARE = 8  # one in so much of the work, at most, goes into the search within a part
MEND_SHARE = 4  # one in so much of the work goes into mending the first cover
MEND_STRIDES, MEND_FREED, MEND_NODES = 3, 7, 60  # how far apart, how many elements are taken out; nodes in each try


class Structure(NamedTuple):
    """What is known of the elements; it makes the search faster, never another."""

    stars: list[int]
    """Sets of elements to split on."""
    symmetries: list[list[int]]
    """For each element another one, or itself: the elements put for one another leave all groups together as before."""
    parts: list[int]
    """Sets of elements; a cover of each alone is looked for first, where a group has alternatives within it."""


NO_STRUCTURE = Structure([], [], [])


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
    symmetries: int
    """Those that leave this part of all covers as it is."""


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
        self.width = int(self.rest.entry_element.max()) + 1
        everything = (1 << self.width) - 1
        self.stars = [flags(star & everything, self.width) for star in structure.stars]
        images = structure.symmetries
        self.moving = [mask(at for at, image in enumerate(images) if image[bit] != bit) for bit in range(self.width)]
        self.lowering = [mask(at for at, image in enumerate(images) if image[bit] < bit) for bit in range(self.width)]
        self.upsetting = [
            mask(at for at, image in enumerate(images) if mask(image[bit] for bit in bits(star)) != star)
            for star in structure.stars
        ]
        self.best = _first_cover(groups)
        self.least = 0

    def cover(self) -> Cover:
        """Search until the best is proven or the work is done."""
        for part in self.structure.parts:
            self._look_within(part)
        with suppress(_Spent):
            self._prove()
        return Cover(self.best, self.least, self.nodes)

    def _look_within(self, part: int) -> None:
        """Search for a cover of the part's elements alone: few elements are soon searched."""
        groups = [[one for one in group if one & ~part == 0] or group for group in self.groups]
        work = self.work // PART_SHARE
        search = _Search(_essential(groups), work, self.structure._replace(symmetries=[], parts=[]))
        found = search.cover()
        self.work -= work - search.work
        self.nodes += found.nodes
        self.best = min(self.best, found.chosen, key=int.bit_count)

    def _prove(self) -> None:
        first = bounded(self.rest, self.width, FIRST_STEPS, self.rest.size)
        self.work -= first.steps * (STEP_WORK + self.rest.size)
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
        stars = (1 << len(self.stars)) - 1
        symmetries = 0 if chosen else (1 << len(self.structure.symmetries)) - 1
        start = _Node(self.rest, flags(chosen, self.width), np.zeros(self.width, dtype=bool), stars, symmetries)
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
            open_nodes.append(self._parts(reduced, most))
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
            if self.work < 0:
                raise _Spent
            allowed = most - np.count_nonzero(chosen)
            bound = bounded(rest, self.width, steps, allowed)
            self.work -= (bound.steps + NODE_STEPS) * (STEP_WORK + rest.size)
            if bound.least > allowed:
                return None
            node = node._replace(rest=rest._replace(share=bound.share))
            dear = bound.dear & (rest.asked(self.width) > 0)
            if not dear.any():
                return node
            node, steps = node._replace(out=node.out | dear), STEPS_AGAIN

    def _parts(self, node: _Node, most: int) -> Iterator[_Node]:
        """The node split on the star that leaves the least to search."""
        asked = node.rest.asked(self.width) > 0
        allowed = most - np.count_nonzero(node.chosen) + CLEAR
        rated = []
        for at in bits(node.stars):
            held, free = np.count_nonzero(node.chosen[self.stars[at]]), self.stars[at] & asked
            if held < 2 and free.any():
                symmetries = node.symmetries & ~self.upsetting[at]
                least = outlook(node.rest, free)
                spared = [held > 0 or bool(lowering & symmetries) for lowering in self.lowering]
                least[:-1][spared] = np.inf
                rated.append((_toil(least, allowed), at, held, least))
        if not rated:
            yield from self._with_or_without(node, int(node.rest.helpful(self.width).argmax()))
            return
        _, at, held, least = min(rated, key=lambda one: one[:2])
        free = np.flatnonzero(self.stars[at] & asked)
        node = node._replace(stars=node.stars & ~(1 << at), symmetries=node.symmetries & ~self.upsetting[at])
        closed = node._replace(out=node.out | self.stars[at] & ~node.chosen)
        for one in sorted(free, key=lambda one: least[one]):
            if least[one] <= allowed:
                yield self._having(closed, int(one))
        if least[-1] <= allowed:
            yield closed
        more = [mask(some) for some in combinations(free, 2 - held)]
        if more:
            yield node._replace(rest=node.rest.also(more))

    def _with_or_without(self, node: _Node, one: int) -> Iterator[_Node]:
        yield self._having(node, one)
        without = flags(1 << one, self.width)
        yield node._replace(out=node.out | without, symmetries=node.symmetries & ~self.moving[one])

    def _having(self, node: _Node, one: int) -> _Node:
        chosen = flags(1 << one, self.width)
        return node._replace(
            chosen=node.chosen | chosen, out=node.out & ~chosen, symmetries=node.symmetries & ~self.moving[one]
        )


def _toil(least: np.ndarray, allowed: float) -> float:
    """How much is left to search, each part counting the less the more elements it has at least; to compare."""
    left = np.square(np.square(1 + np.maximum(allowed - least[least <= allowed], 0)))
    return float(left.sum())


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
    kept: dict[int, None] = {}
    for alternative in sorted(set(group), key=lambda one: (one.bit_count(), one)):
        if not any(part in kept for part in _subsets(alternative)):
            kept[alternative] = None
    return list(kept)


def _subsets(alternative: int) -> Iterator[int]:
    """Every set of its elements but itself and none."""
    part = (alternative - 1) & alternative
    while part:
        yield part
        part = (part - 1) & alternative


def _first_cover(groups: list[list[int]]) -> int:
    """A cover to begin with: greedy, with long alternatives barred or not."""
    found = []
    for longest in range(1, max(one.bit_count() for group in groups for one in group) + 1):
        short = [[one for one in group if one.bit_count() <= longest] or group for group in groups]
        found.append(without_spares(groups, _greedy(short)))
    return min(found, key=int.bit_count)


def _greedy(groups: list[list[int]]) -> int:
    """A cover that serves the group with the fewest ways left first, by the way that helps the others most."""
    rest = rest_of(groups)
    width = int(rest.entry_element.max()) + 1
    chosen, none = np.zeros(width, dtype=bool), np.zeros(width, dtype=bool)
    while rest.groups:
        hardest = np.flatnonzero(rest.group == np.bincount(rest.group).argmin())
        worth = rest.gathered(rest.helpful(width)[rest.entry_element]) / rest.lengths
        best = rest.entries[:, hardest[worth[hardest].argmax()]]
        chosen[rest.entry_element[best[best < rest.share.size]]] = True
        rest, chosen = rest.left(chosen, none, width)
    return mask(np.flatnonzero(chosen))


def without_spares(groups: list[list[int]], chosen: int) -> int:
    """The cover without elements that it can spare."""
    for bit in sorted(bits(chosen), reverse=True):
        without = chosen & ~(1 << bit)
        if all(any(one & without == one for one in group) for group in groups):
            chosen = without
    return chosen
