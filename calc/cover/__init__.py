"""The covering problem: the smallest set of elements such that every group has one alternative wholly chosen.

An alternative is a set of elements, a group a list of alternatives. Where every
alternative is a single element this is the plain set-covering problem.

`branch_and_bound.smallest_cover` searches for the smallest cover and proves it,
with `SearchHints` of what is known of the elements; `dual_ascent.lower_bound`
gives a bound without any search; `greedy.without_redundant` drops from a cover
what it can spare; `bits` holds sets as the bits of one integer. `residual`,
`look_ahead` and `preprocess` serve the search alone.
"""
