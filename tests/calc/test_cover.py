"""The search for the smallest cover, its bound and what follows from a choice, each against trying every subset."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scenarios import examples

from jointwise.calc.cover.bits import bits, flags, mask
from jointwise.calc.cover.branch_and_bound import NO_HINTS, SearchHints, smallest_cover
from jointwise.calc.cover.dual_ascent import BOUND_TOLERANCE, dual_ascent, lower_bound
from jointwise.calc.cover.greedy import first_cover, without_redundant
from jointwise.calc.cover.look_ahead import look_ahead
from jointwise.calc.cover.preprocess import without_dominated
from jointwise.calc.cover.residual import Infeasible, residual_of

ENOUGH_WORK = 100_000_000
WIDTH = 8
SETS = st.sets(st.integers(0, WIDTH - 1), max_size=WIDTH).map(mask)
ALTERNATIVES = st.sets(st.integers(0, WIDTH - 1), min_size=1, max_size=3).map(mask)
GROUPS = st.lists(st.lists(ALTERNATIVES, min_size=1, max_size=5), min_size=1, max_size=7)


def covers(groups):
    """Every subset that covers all groups."""
    return [
        subset
        for subset in range(1 << WIDTH)
        if all(any(alternative & subset == alternative for alternative in group) for group in groups)
    ]


def smallest(groups):
    """How many elements the smallest cover has."""
    return min(subset.bit_count() for subset in covers(groups))


def mapped(group, image):
    """The group with each element replaced by its image."""
    return [mask(image[element] for element in bits(alternative)) for alternative in group]


def assert_smallest(groups, hints):
    """The search finds a cover as small as trying every subset does, and proves it."""
    cover = smallest_cover(groups, ENOUGH_WORK, hints)

    assert cover.chosen in covers(groups)
    assert cover.chosen.bit_count() == cover.lower_bound == smallest(groups)


@pytest.mark.slow
@examples(150)
@given(groups=GROUPS, branching_sets=st.lists(SETS, max_size=4))
def test_a_cover_is_the_smallest_of_all(groups, branching_sets):
    """The search is exact whatever sets it is told to branch on, or to search within first."""
    assert_smallest(groups, NO_HINTS)
    assert_smallest(groups, SearchHints(branching_sets, [], []))
    assert_smallest(groups, SearchHints(branching_sets, [], branching_sets))


@pytest.mark.slow
@examples(100)
@given(groups=GROUPS, branching_sets=st.lists(SETS, max_size=2), permutation=st.permutations(range(WIDTH)))
def test_symmetries_leave_the_smallest(groups, branching_sets, permutation):
    """The search is exact where covers are left out as images of others, whether branching sets are mapped or not."""
    symmetric, images = groups, [list(range(WIDTH))]
    while images[-1] != list(range(WIDTH)) or len(images) == 1:
        images.append([permutation[element] for element in images[-1]])
        symmetric = symmetric + [mapped(group, images[-1]) for group in groups]
    assert_smallest(symmetric, SearchHints(branching_sets, images[1:], []))


@pytest.mark.slow
@examples(100)
@given(groups=GROUPS, work=st.integers(0, 4_000_000), branching_sets=st.lists(SETS, max_size=3))
def test_a_search_cut_short_still_bounds(groups, work, branching_sets):
    """Cut short, the search gives a cover and a bound with the smallest cover between them."""
    cover = smallest_cover(groups, work, SearchHints(branching_sets, [], []))

    assert cover.lower_bound <= smallest(groups) <= cover.chosen.bit_count()
    assert cover.chosen in covers(groups)


@examples(150)
@given(groups=GROUPS, chosen=SETS, excluded=SETS, most=st.integers(1, WIDTH))
def test_what_follows_holds_for_every_cover(groups, chosen, excluded, most):
    """Forced elements are in every cover that is allowed, excluded ones in none, and none is below the bound."""
    excluded &= ~chosen
    allowed = [
        cover
        for cover in covers(groups)
        if cover & chosen == chosen and not cover & excluded and cover.bit_count() <= most
    ]
    try:
        residual, forced = residual_of(groups).reduced(flags(chosen, WIDTH), flags(excluded, WIDTH), most)
    except Infeasible:
        assert not allowed
        return
    count = np.count_nonzero(forced)
    assert all(mask(np.flatnonzero(forced)) & ~cover == 0 for cover in allowed)
    if residual.group_count:
        bound = dual_ascent(residual, WIDTH, 20, most - count)
        assert all(count + bound.least <= cover.bit_count() for cover in allowed)
        assert not any(cover & mask(np.flatnonzero(bound.excluded & ~forced)) for cover in allowed)


@examples(150)
@given(groups=GROUPS, branching_set=SETS)
def test_no_cover_of_a_child_is_below_its_look_ahead(groups, branching_set):
    """No cover with one element of a branching set and no other, or with none of it, is smaller than looked ahead."""
    residual = residual_of(groups)
    dual = dual_ascent(residual, WIDTH, 20, WIDTH).dual
    bound = look_ahead(residual._replace(dual=dual), flags(branching_set, WIDTH))

    for cover in covers(groups):
        members = list(bits(cover & branching_set))
        if len(members) < 2:
            assert bound[members[0] if members else WIDTH] <= cover.bit_count() + BOUND_TOLERANCE


@pytest.mark.slow
@examples(150)
@given(groups=GROUPS)
def test_no_cover_is_below_the_bound(groups):
    """The bound without a search is never above the smallest cover."""
    assert lower_bound(groups) <= smallest(groups)


@examples(100)
@given(groups=GROUPS)
def test_dominated_groups_and_alternatives_decide_nothing(groups):
    """The same sets of elements cover what remains as cover everything."""
    reduced = without_dominated(groups)

    assert set(covers(reduced)) == set(covers(groups))


@examples(100)
@given(groups=GROUPS)
def test_a_first_cover_has_nothing_to_spare(groups):
    """The greedy cover covers all groups, and without any one element it does not."""
    cover = first_cover(groups)
    every = set(covers(groups))

    assert cover in every
    assert not any(cover & ~(1 << element) in every for element in bits(cover))
    assert without_redundant(groups, (1 << WIDTH) - 1) in every
