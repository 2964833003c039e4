"""How long a kit is searched for: counted in steps, not timed, so that the same request has one answer everywhere."""

from typing import NamedTuple

__all__ = ["QUICK", "THOROUGH", "Effort"]


class Effort(NamedTuple):
    """The bounds of one search."""

    chains: int
    """Of all pairs together; beyond so many only those of two adapters are looked at, and the bound says so."""
    work: int
    """Incidences gone through, summed over the steps of all bounds."""
    looks: int
    """At a pair, to see what the exchange of an adapter brings it."""


QUICK = Effort(chains=25_000, work=60_000_000, looks=400_000)
"""Less than two seconds, measured in tests/benchmarks/limits.py."""
THOROUGH = Effort(chains=80_000, work=1_600_000_000, looks=3_000_000)
"""Up to some fifteen seconds."""
