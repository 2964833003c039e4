"""How far a line's answer spreads."""

from msgspec import Struct

from ..numeric.json_numbers import Numbers
from ..physics.columns import Column

__all__ = ["SpreadBand", "SpreadResult"]


class SpreadBand(Struct, frozen=True):
    """How one band's answer spreads; percentiles in the order of `SpreadResult.percentiles`."""

    column: Column
    vswr: Numbers
    loss_db: Numbers
    margin_db: Numbers
    worst_vswr: float | None
    likely_vswr: float | None
    """By the root of the sum of squares."""


class SpreadResult(Struct, frozen=True):
    """Random draws of what is not known: electrical lengths, phases and the tolerance of joints."""

    draws: int
    seed: int
    percentiles: list[float]
    bands: list[SpreadBand]
