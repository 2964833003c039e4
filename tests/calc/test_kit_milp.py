"""Kits of larger stations against an integer-programming solver, which is given every chain found by plain trying."""

import random
from collections import Counter

import numpy as np
import pytest
from kits import answer, owned, port, tried_pairs, types_of
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import coo_array

from jointwise.calc.kit.adapters import trade

pytestmark = pytest.mark.slow

FAMILIES = ["uhf", "n", "bnc", "sma", "tnc", "rp_sma", "mini_uhf", "smb", "f", "bnc_75"]
SECONDS = 60  # what the solver is given; it then holds a bound of its own


def station(seed, families, density, count=20):
    """A random station: ports of so many families, a share of all pairs, a few adapters owned."""
    dice = random.Random(seed)
    drawn = dice.sample(FAMILIES, families)
    ports = [port(dice.choice(drawn), dice.choice(["plug", "jack"])) for _ in range(count)]
    pairs = [[one, other] for one in range(count) for other in range(one) if dice.random() < density]
    adapters = [owned(f"{one[0]} {one[1]}", f"{two[0]} {two[1]}") for one, two in dice.sample(list(trade()), 5)]
    return {"ports": ports, "pairs": pairs, "owned": adapters}


def solved(pairs, owned_types):
    """Smallest kit and greatest lower bound by the solver: x counts added types, y picks a chain for each pair."""
    open_pairs = [chains for chains in pairs if not any(chain <= owned_types for chain in chains)]
    distinct = list({frozenset(frozenset(chain.items()) for chain in chains): chains for chains in open_pairs}.values())
    types = sorted({kind for chains in distinct for chain in chains for kind in chain})
    column = {kind: at for at, kind in enumerate(types)}
    entries, least, most = [], [], []  # entries: row, column, value
    picks = len(types)
    for chains in distinct:
        entries += [(len(least), picks + at, 1) for at in range(len(chains))]
        least, most = [*least, 1], [*most, 1]
        for kind in {kind for chain in chains for kind in chain}:
            entries.append((len(least), column[kind], 1))
            entries += [(len(least), picks + at, -chain[kind]) for at, chain in enumerate(chains) if kind in chain]
            least, most = [*least, -owned_types[kind]], [*most, np.inf]
        picks += len(chains)
    if not distinct:
        return 0, 0
    rows, columns, values = zip(*entries, strict=True)
    matrix = coo_array((values, (rows, columns)), shape=(len(least), picks)).tocsr()
    cost = np.concatenate([np.ones(len(types)), np.zeros(picks - len(types))])
    upper = np.concatenate([np.full(len(types), 4), np.ones(picks - len(types))])
    result = milp(
        cost,
        integrality=np.ones(picks),
        bounds=Bounds(0, upper),
        constraints=LinearConstraint(matrix, np.array(least), np.array(most)),
        options={"time_limit": SECONDS},
    )
    return round(result.fun), int(np.ceil(result.mip_dual_bound - 1e-6))


@pytest.mark.parametrize(
    ("seed", "families", "density", "most_in_series"),
    [
        (1, 3, 1.0, 2),
        (2, 4, 0.2, 2),
        (3, 5, 0.1, 2),
        (4, 6, 0.1, 2),
        (5, 8, 0.05, 2),
        (6, 10, 0.05, 2),
        (7, 4, 0.4, 2),
        (5, 3, 1.0, 3),
        (6, 3, 0.3, 3),
        (9, 4, 0.1, 3),
    ],
)
def test_the_kit_of_twenty_ports_is_as_small_as_the_solver_s(seed, families, density, most_in_series):
    """Twenty ports: the proven smallest kit has as many adapters as the solver's proven smallest."""
    question = station(seed, families, density)
    result = answer(**question, most_in_series=most_in_series, search="thorough")
    tried = tried_pairs(question["ports"], question["pairs"], most_in_series, question["owned"])
    smallest, bound = solved(tried, types_of(question["owned"]))

    assert result.optimal
    assert result.added == smallest == bound
    assert result.joined == len(tried)


def test_a_large_kit_and_its_bound_hold_the_smallest_between_them():
    """Forty ports: neither the kit nor its lower bound contradicts what the solver proves."""
    question = station(11, 7, 0.1, 40)
    result = answer(**question)
    tried = tried_pairs(question["ports"], question["pairs"], 2, question["owned"])
    smallest, bound = solved(tried, types_of(question["owned"]))

    assert result.lower_bound <= smallest
    assert bound <= result.added
    assert sum(Counter(types_of(result.adapters)).values()) == result.added
