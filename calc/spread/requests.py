"""What a caller may ask about the spread of a line's answer."""

from typing import Annotated

from msgspec import Meta

from ..feedline.elements import FeedlineRequest

__all__ = ["MOST_DRAWN", "SpreadRequest"]

MOST_DRAWN = 600_000
"""Elements of all draws together: the usual draws of the longest line, within 2 s."""


class SpreadRequest(FeedlineRequest, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """How far unknown electrical lengths and the tolerance of joints spread the answer."""

    draws: Annotated[
        int, Meta(ge=100, le=100_000, description=f"Lines drawn at random; times the elements at most {MOST_DRAWN}")
    ] = 10_000
    seed: Annotated[int, Meta(ge=0, le=2**32 - 1, description="Same seed, same draws")] = 1
    length_tolerance: Annotated[
        float, Meta(ge=0, le=0.5, description="Greatest relative error of each cable's electrical length")
    ] = 0.02
