"""What a caller may ask before a sweep: the line, or its length and velocity alone, and what the analyser can do."""

from typing import Annotated

from msgspec import Meta, field

from ..feedline.elements import Element, Length
from ..physics.scenario import Frequency, Surroundings

__all__ = ["SpanRequest"]


class SpanRequest(Surroundings, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Which span and how many points an analyser is set to, so that its sweep can judge a line."""

    elements: Annotated[
        list[Element],
        Meta(max_length=16, description="In order, from the analyser on; empty, length and velocity factor count"),
    ] = field(default_factory=list)
    length_m: Annotated[Length, Meta(description="About how long the line is, where it isn't described")] = 30.0
    velocity_factor: Annotated[
        float, Meta(ge=0.3, le=1, description="Of a cable that isn't described", extra={"unit": "1"})
    ] = 0.66
    lowest_hz: Annotated[Frequency, Meta(description="Where your analyser's range begins")] = 1e6
    highest_hz: Annotated[Frequency, Meta(description="Where your analyser's range ends")] = 9e8
    most_points: Annotated[int, Meta(ge=16, le=10_001, description="Most points your analyser sweeps")] = 201
