"""How long a kit is searched for: counted in steps, not timed, so that the same request has one answer everywhere."""

from typing import NamedTuple

__all__ = ["EFFORTS", "Effort"]


class Effort(NamedTuple):
    """The bounds of one search."""

    chains: int
    """Of all pairs together; where there are more, only shorter ones and those through few families are looked at."""
    work: int
    """Numbers gone through, summed over the steps of all bounds."""
    looks: int
    """At a pair, to see what the exchange of an adapter brings it."""


EFFORTS = {
    # some two seconds at most, measured in tests/benchmarks/limits.py
    "quick": Effort(chains=25_000, work=100_000_000, looks=400_000),
    # proves all kits of twenty ports with up to three adapters in series in tests/benchmarks/kit.py
    "thorough": Effort(chains=250_000, work=8_000_000_000, looks=3_000_000),
}
"""By what a request asks for."""
