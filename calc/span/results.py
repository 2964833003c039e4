"""What the core answers before a sweep. Units are in the keys."""

from typing import Literal

from msgspec import Struct

from ..formulas.formula import Step

__all__ = ["Closest", "Limit", "SpanResult"]


Limit = Literal["analyser", "points", "loss"]


class Closest(Struct, frozen=True):
    """The two joints of the line that lie nearest to each other with cable between them."""

    names: list[str]
    apart_m: float
    told_apart: bool
    """Whether this sweep shows them as two."""


class SpanResult(Struct, frozen=True):
    """The settings of the analyser, what such a sweep shows, and why."""

    low_hz: float
    high_hz: float
    points: int
    step_hz: float
    length_m: float
    """Of the line."""
    range_m: float
    """Echoes from beyond fold back."""
    resolution_m: float
    """Echoes nearer to each other show as one."""
    transform: Literal["low-pass", "band-pass"]
    loss_db: float
    """Of the line at the upper edge, there and back; 0 where the line isn't described."""
    limited_by: Limit
    """What keeps the upper edge from being higher."""
    closest: Closest | None
    reasons: list[str]
    steps: list[Step]
    cautions: list[str]
