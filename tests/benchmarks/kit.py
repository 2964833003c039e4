"""How many kits of twenty ports are proven smallest within the work the operation allows, and how far off the rest are.

Run with `python tests/benchmarks/kit.py [adapters in series ...]`; one and two take a minute, three five minutes, four
half an hour. Each station is searched quickly and thoroughly.
The baseline is the bound by ends alone: the fewest adapters that touch every end which must be joined.
"""

import random
import sys
import time
from itertools import product

import msgspec

from jointwise.calc.catalogue.mating import ConnectorEnd, mates_of
from jointwise.calc.cover.dual_ascent import lower_bound
from jointwise.calc.kit.adapters import trade
from jointwise.calc.kit.kit import kit
from jointwise.calc.kit.requests import KitRequest, Port

PORTS = 20
FAMILIES = ["uhf", "n", "bnc", "sma", "tnc", "rp_sma", "mini_uhf", "smb", "mcx", "mmcx", "7_16", "4_3_10", "c"]
FAMILIES += ["hn", "3_5mm", "2_92mm"]
SHAPES = {"every pair": 1.0, "two halves": None, "0.3 of all pairs": 0.3, "0.1 of all pairs": 0.1}
COUNTS = [3, 6, 9, 12, 16]  # families
SEEDS = range(2)


def station(shape: str, families: int, seed: int, most_in_series: int) -> KitRequest:
    """A random station: twenty ports of so many families, some of the pairs."""
    dice = random.Random(f"{seed}{families}{shape}")
    drawn = dice.sample(FAMILIES, families)
    ports = [
        Port(family=dice.choice(drawn), gender=dice.choice(["plug", "jack"]), highest_frequency_hz=30e6, power_w=10.0)
        for _ in range(PORTS)
    ]
    every = [[one, other] for one in range(PORTS) for other in range(one)]
    if SHAPES[shape] is None:
        pairs = [pair for pair in every if (pair[0] < PORTS // 2) != (pair[1] < PORTS // 2)]
    else:
        pairs = [pair for pair in every if dice.random() < SHAPES[shape]]
    return KitRequest(ports=ports, pairs=pairs, most_in_series=most_in_series, most_loss_db=20.0)


def by_ends(request: KitRequest) -> int:
    """The bound of the baseline."""
    ends = {ConnectorEnd(request.ports[at].family, request.ports[at].gender) for pair in request.pairs for at in pair}
    bit = {one: 1 << at for at, one in enumerate(sorted(trade()))}
    fitting = [[bit[one] for one in bit if any(end in mates_of(side) for side in one)] for end in sorted(ends)]
    return lower_bound(fitting)


def main() -> None:
    """Print a row for each station, then how many are proven."""
    lengths = [int(given) for given in sys.argv[1:]] or [1, 2, 3]
    summary = []
    for most_in_series, shape in product(lengths, SHAPES):
        totals = dict.fromkeys(["quick", "quick gap", "thorough", "thorough gap", "by ends gap"], 0)
        for families, seed in product(COUNTS, SEEDS):
            request = station(shape, families, seed, most_in_series)
            row = f"  {most_in_series} in series, {shape:17}{families:3} families:"
            for word in ("quick", "thorough"):
                start = time.process_time()
                result = kit(msgspec.structs.replace(request, search=word))
                taken = time.process_time() - start
                totals[word] += result.optimal
                totals[f"{word} gap"] += result.gap
                row += f" {word} {result.added:3} of at least {result.lower_bound:3} in {taken:5.1f} s;"
            totals["by ends gap"] += result.added - by_ends(request)
            print(row, f"{result.nodes} nodes", flush=True)
        summary.append([most_in_series, shape, *totals.values()])
    stations = len(COUNTS) * len(SEEDS)
    print(f"\nproven smallest, of {stations} stations each, and all their gaps together; baseline: bound by ends alone")
    print(f"{'in series':10}{'':18}{'quick':>8}{'gap':>6}{'thorough':>10}{'gap':>6}{'by ends':>9}")
    for most_in_series, shape, *numbers in summary:
        print(f"{most_in_series:<10}{shape:18}{numbers[0]:8}{numbers[1]:6}{numbers[2]:10}{numbers[3]:6}{numbers[4]:9}")


if __name__ == "__main__":
    main()
