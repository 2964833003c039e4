"""The smallest cover, by branch and bound.

Whether a cover of at most so many elements exists is decided for one number
after the other, from the lower bound upwards, until the incumbent is proven
smallest. At a node some elements are chosen and some excluded. What follows
from that is drawn first (`residual.py`); the node is pruned when its lower bound
exceeds the number allowed, and reduced costs exclude further elements
(`dual_ascent.py`). Then it is branched on a branching set: a cover has exactly
one of its elements, none of them, or two at least. Where most covers have one
element of the set, this says far more than branching on a single element, which
is left for when no set remains.
"""

from collections.abc import Iterator
from contextlib import suppress
from itertools import combinations
from typing import NamedTuple

import numpy as np

from .bits import BitSet, Flags, bits, flags, mask
from .dual_ascent import BOUND_TOLERANCE, dual_ascent
from .greedy import first_cover
from .look_ahead import look_ahead
from .preprocess import without_dominated
from .residual import Floats, Infeasible, Residual, residual_of

__all__ = ["NO_HINTS", "Cover", "SearchHints", "smallest_cover"]

# work is counted in numbers that the dual ascent goes through
STEP_OVERHEAD = 5000  # numbers, of a step of the ascent
NODE_OVERHEAD = 6  # steps, of a node
# steps of the ascent: at the root, at a node, and there again once elements were excluded
ROOT_STEPS, NODE_STEPS, REPEAT_STEPS = 400, 60, 12

RESTRICTION_SHARE = 8  # one in so much of the work, at most, goes into the search of a restriction
IMPROVEMENT_SHARE = 4  # one in so much of the work goes into improving the first incumbent
# improving: how far apart the elements lie that are freed, how many they are, and the node limit of each search
MOST_STRIDE, FREED, IMPROVEMENT_NODES = 3, 7, 60


class SearchHints(NamedTuple):
    """What is known of the elements. It makes the search faster; the smallest cover is as large without it."""

    branching_sets: list[BitSet]
    """Sets of which covers mostly have one element, or none."""
    symmetries: list[list[int]]
    """Permutations of the elements, the image of each, that leave the groups as a whole unchanged."""
    restrictions: list[BitSet]
    """Sets of elements that may suffice: each is searched first, within the groups it has alternatives for."""


NO_HINTS = SearchHints([], [], [])


class Cover(NamedTuple):
    """The best cover found, a lower bound for every cover, and how many nodes were searched."""

    chosen: BitSet
    lower_bound: int
    nodes: int


class _Node(NamedTuple):
    """The covers with all elements of `chosen` and none of `excluded`."""

    residual: Residual
    chosen: Flags
    excluded: Flags
    branching_sets: BitSet
    """Numbers of those not yet branched on."""
    symmetries: BitSet
    """Numbers of those that map these covers onto themselves."""


class _Branching(NamedTuple):
    """A branching set at a node."""

    number: int
    chosen_count: int
    """How many of its elements are chosen."""
    free: list[int]
    """Its elements that are neither chosen nor excluded, and of use."""
    bound: Floats
    """Lower bounds of the children (`look_ahead.py`); infinite for those that need no search."""


class _WorkLimitReached(Exception):
    """The work allowed is done."""


def smallest_cover(groups: list[list[BitSet]], most_work: int, hints: SearchHints = NO_HINTS) -> Cover:
    """The smallest cover of the groups; each has an alternative at least, and no alternative is empty.

    After `most_work` the incumbent is returned with the lower bound proven so far.
    """
    if not groups:
        return Cover(0, 0, 0)
    return _Search(without_dominated(groups), most_work, hints).cover()


class _Search:
    """The incumbent, the lower bound, and the work that remains."""

    def __init__(self, groups: list[list[BitSet]], most_work: int, hints: SearchHints) -> None:
        self.groups, self.work, self.nodes = groups, most_work, 0
        self.hints = hints
        self.root = residual_of(groups)
        self.width = int(self.root.entry_element.max()) + 1
        everything = (1 << self.width) - 1
        self.branching_sets = [flags(members & everything, self.width) for members in hints.branching_sets]
        images = list(enumerate(hints.symmetries))
        # numbers of symmetries: by element, those that move it and those that give it a lower number; by branching
        # set, those that do not map it onto itself
        self.moving = [mask(at for at, image in images if image[element] != element) for element in range(self.width)]
        self.lowering = [mask(at for at, image in images if image[element] < element) for element in range(self.width)]
        self.breaking = [
            mask(at for at, image in images if mask(image[element] for element in bits(members)) != members)
            for members in hints.branching_sets
        ]
        self.incumbent = first_cover(groups)
        self.lower_bound = 0

    def cover(self) -> Cover:
        """Search until the incumbent is proven smallest or the work is done."""
        for restriction in self.hints.restrictions:
            self._search_within(restriction)
        with suppress(_WorkLimitReached):
            self._close_gap()
        return Cover(self.incumbent, self.lower_bound, self.nodes)

    def _search_within(self, restriction: BitSet) -> None:
        """Search for an incumbent among these elements alone; fewer elements are soon searched."""
        groups = [
            [alternative for alternative in group if alternative & ~restriction == 0] or group for group in self.groups
        ]
        work = self.work // RESTRICTION_SHARE
        search = _Search(without_dominated(groups), work, self.hints._replace(symmetries=[], restrictions=[]))
        found = search.cover()
        self.work -= work - search.work
        self.nodes += found.nodes
        self.incumbent = min(self.incumbent, found.chosen, key=int.bit_count)

    def _close_gap(self) -> None:
        bound = dual_ascent(self.root, self.width, ROOT_STEPS, self.root.size)
        self.work -= bound.steps * (STEP_OVERHEAD + self.root.size)
        self.root = self.root._replace(dual=bound.dual)
        self.lower_bound = bound.least
        self._improve_incumbent(self.work - self.work // IMPROVEMENT_SHARE)
        while self.lower_bound < self.incumbent.bit_count():
            found = self._cover_of_at_most(self.lower_bound, 0)
            if found:
                self.incumbent = found
            else:
                self.lower_bound += 1

    def _improve_incumbent(self, work_to_leave: int) -> None:
        """Free every so many-th element of the incumbent and search for fewer in their place, while that helps."""
        failures = 0
        while self.lower_bound < self.incumbent.bit_count() and self.work > work_to_leave:
            elements = list(bits(self.incumbent))
            size = len(elements)
            stride, first = 1 + failures // size, failures % size
            if stride > MOST_STRIDE:
                break
            freed = {elements[(first + stride * at) % size] for at in range(FREED)}
            found = self._cover_of_at_most(size - 1, self.incumbent & ~mask(freed), IMPROVEMENT_NODES)
            self.incumbent, failures = (found, 0) if found else (self.incumbent, failures + 1)

    def _cover_of_at_most(self, most: int, chosen: BitSet, node_limit: int | None = None) -> BitSet:
        """A cover with these elements and at most `most` in all; 0 when there is none, or the node limit is reached."""
        every_set, every_symmetry = (1 << len(self.branching_sets)) - 1, (1 << len(self.hints.symmetries)) - 1
        excluded = np.zeros(self.width, dtype=bool)
        root = _Node(self.root, flags(chosen, self.width), excluded, every_set, 0 if chosen else every_symmetry)
        open_nodes: list[Iterator[_Node]] = [iter([root])]
        last_node = node_limit and self.nodes + node_limit
        while open_nodes and (last_node is None or self.nodes < last_node):
            node = next(open_nodes[-1], None)
            if node is None:
                open_nodes.pop()
                continue
            self.nodes += 1
            try:
                node = self._propagated(node, most)
            except Infeasible:
                continue
            if not node.residual.group_count:
                return mask(np.flatnonzero(node.chosen))
            open_nodes.append(self._children(node, most))
        return 0

    def _propagated(self, node: _Node, most: int) -> _Node:
        """The node with all that follows; raises Infeasible when it has no cover of at most `most` elements."""
        steps = NODE_STEPS
        while True:
            residual, chosen = node.residual.reduced(node.chosen, node.excluded, most)
            node = node._replace(residual=residual, chosen=chosen)
            if not residual.group_count:
                return node
            if self.work < 0:
                raise _WorkLimitReached
            allowed = most - int(np.count_nonzero(chosen))
            bound = dual_ascent(residual, self.width, steps, allowed)
            self.work -= (bound.steps + NODE_OVERHEAD) * (STEP_OVERHEAD + residual.size)
            if bound.least > allowed:
                raise Infeasible
            node = node._replace(residual=residual._replace(dual=bound.dual))
            excluded = bound.excluded & (residual.group_counts(self.width) > 0)
            if not excluded.any():
                return node
            node, steps = node._replace(excluded=node.excluded | excluded), REPEAT_STEPS

    def _children(self, node: _Node, most: int) -> Iterator[_Node]:
        allowed = most - np.count_nonzero(node.chosen) + BOUND_TOLERANCE
        branching = self._best_branching(node, allowed)
        if branching:
            yield from self._branch_on_set(node, branching, allowed)
        else:
            yield from self._branch_on_element(node, int(node.residual.usefulness(self.width).argmax()))

    def _best_branching(self, node: _Node, allowed: float) -> _Branching | None:
        """The branching set that is expected to leave the least to search; None when there is none left."""
        undecided = node.residual.group_counts(self.width) > 0
        candidates = []
        for at in bits(node.branching_sets):
            chosen_count = int(np.count_nonzero(node.chosen[self.branching_sets[at]]))
            free = self.branching_sets[at] & undecided
            if chosen_count < 2 and free.any():
                symmetries = node.symmetries & ~self.breaking[at]
                bound = look_ahead(node.residual, free)
                # one chosen already leaves no case of exactly one more; a symmetric image is searched in place of some
                skipped = [chosen_count > 0 or bool(lowering & symmetries) for lowering in self.lowering]
                bound[:-1][skipped] = np.inf
                candidates.append(_Branching(at, chosen_count, np.flatnonzero(free).tolist(), bound))
        return min(candidates, key=lambda branching: _expected_search(branching.bound, allowed), default=None)

    def _branch_on_set(self, node: _Node, branching: _Branching, allowed: float) -> Iterator[_Node]:
        """Exactly one element of the set, the lowest bound first; none but those chosen; two at least."""
        at, bound = branching.number, branching.bound
        node = node._replace(
            branching_sets=node.branching_sets & ~(1 << at), symmetries=node.symmetries & ~self.breaking[at]
        )
        with_no_more = node._replace(excluded=node.excluded | self.branching_sets[at] & ~node.chosen)
        for element in sorted(branching.free, key=lambda element: bound[element]):
            if bound[element] <= allowed:
                yield self._with_element(with_no_more, element)
        if bound[-1] <= allowed:
            yield with_no_more
        two_at_least = [mask(added) for added in combinations(branching.free, 2 - branching.chosen_count)]
        if two_at_least:
            yield node._replace(residual=node.residual.with_group(two_at_least))

    def _branch_on_element(self, node: _Node, element: int) -> Iterator[_Node]:
        yield self._with_element(node, element)
        excluded = node.excluded | flags(1 << element, self.width)
        yield node._replace(excluded=excluded, symmetries=node.symmetries & ~self.moving[element])

    def _with_element(self, node: _Node, element: int) -> _Node:
        added = flags(1 << element, self.width)
        return node._replace(
            chosen=node.chosen | added,
            excluded=node.excluded & ~added,
            symmetries=node.symmetries & ~self.moving[element],
        )


def _expected_search(bound: Floats, allowed: float) -> float:
    """A measure of how much the children leave to search: a child counts the more, the further its bound is below."""
    slack = np.maximum(allowed - bound[bound <= allowed], 0)
    return float(np.square(np.square(1 + slack)).sum())
