"""The search for the smallest cover, its bound and what follows from a choice, each against trying every subset."""

import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from scenarios import examples

from jointwise.calc.cover.bits import bits, flags, mask
from jointwise.calc.cover.bound import CLEAR, bounded, lower_bound
from jointwise.calc.cover.cover import NO_STRUCTURE, Structure, smallest_cover
from jointwise.calc.cover.look_ahead import outlook
from jointwise.calc.cover.residual import rest_of
from jointwise.calc.kit.effort import EFFORTS

WIDTH = 8
SETS = st.sets(st.integers(0, WIDTH - 1), max_size=WIDTH).map(mask)
ALTERNATIVES = st.sets(st.integers(0, WIDTH - 1), min_size=1, max_size=3).map(mask)
GROUPS = st.lists(st.lists(ALTERNATIVES, min_size=1, max_size=5), min_size=1, max_size=7)


def covers(groups):
    """Every subset that covers all groups."""
    return [
        subset for subset in range(1 << WIDTH) if all(any(one & subset == one for one in group) for group in groups)
    ]


def smallest(groups):
    """How many elements the smallest cover has."""
    return min(subset.bit_count() for subset in covers(groups))


def moved(group, image):
    """The group with each element put for another one."""
    return [mask(image[bit] for bit in bits(one)) for one in group]


def assert_smallest(groups, structure):
    """The search finds a cover as small as trying every subset does, and proves it."""
    cover = smallest_cover(groups, EFFORTS["quick"].work, structure)

    assert cover.chosen in covers(groups)
    assert cover.chosen.bit_count() == cover.lower_bound == smallest(groups)


@examples(150)
@given(groups=GROUPS, stars=st.lists(SETS, max_size=4))
def test_a_cover_is_the_smallest_of_all(groups, stars):
    """The search is exact whatever sets it is told to split on, or to look within first."""
    assert_smallest(groups, NO_STRUCTURE)
    assert_smallest(groups, Structure(stars, [], []))
    assert_smallest(groups, Structure(stars, [], stars))


@examples(100)
@given(groups=GROUPS, stars=st.lists(SETS, max_size=2), turn=st.permutations(range(WIDTH)))
def test_symmetries_leave_the_smallest(groups, stars, turn):
    """The search is exact where covers are left out as images of others, whether stars are turned over or not."""
    turned, images = groups, [list(range(WIDTH))]
    while images[-1] != list(range(WIDTH)) or len(images) == 1:
        images.append([turn[bit] for bit in images[-1]])
        turned = turned + [moved(group, images[-1]) for group in groups]
    assert_smallest(turned, Structure(stars, images[1:], []))


@examples(100)
@given(groups=GROUPS, work=st.integers(0, 4_000_000), stars=st.lists(SETS, max_size=3))
def test_a_search_cut_short_still_bounds(groups, work, stars):
    """Cut short, the search gives a cover and a bound with the smallest cover between them."""
    cover = smallest_cover(groups, work, Structure(stars, [], []))

    assert cover.lower_bound <= smallest(groups) <= cover.chosen.bit_count()
    assert cover.chosen in covers(groups)


@examples(150)
@given(groups=GROUPS, chosen=SETS, out=SETS, most=st.integers(1, WIDTH))
def test_what_follows_holds_for_every_cover(groups, chosen, out, most):
    """Forced elements are in every cover that is allowed, barred ones in none, and none is below the bound."""
    out &= ~chosen
    allowed = [one for one in covers(groups) if one & chosen == chosen and not one & out and one.bit_count() <= most]
    left = rest_of(groups).left(flags(chosen, WIDTH), flags(out, WIDTH), most)
    if left is None:
        assert not allowed
        return
    rest, held = left
    assert all(one & mask(np.flatnonzero(held)) == mask(np.flatnonzero(held)) for one in allowed)
    if rest.groups:
        bound = bounded(rest, WIDTH, 20, most - np.count_nonzero(held))
        assert all(np.count_nonzero(held) + bound.least <= one.bit_count() for one in allowed)
        assert not any(one & mask(np.flatnonzero(bound.dear & ~held)) for one in allowed)


@examples(150)
@given(groups=GROUPS, star=SETS)
def test_what_a_star_leaves_to_search_is_never_too_little(groups, star):
    """No cover with one element of a star and no other, or with none of it, is smaller than the outlook says."""
    rest = rest_of(groups)
    shares = bounded(rest, WIDTH, 20, WIDTH).share
    least = outlook(rest._replace(share=shares), flags(star, WIDTH))

    for one in covers(groups):
        held = list(bits(one & star))
        if len(held) < 2:
            assert least[held[0] if held else WIDTH] <= one.bit_count() + CLEAR


@examples(150)
@given(groups=GROUPS)
def test_no_cover_is_below_the_bound(groups):
    """The bound by shares alone is never above the smallest cover."""
    assert lower_bound(groups) <= smallest(groups)
