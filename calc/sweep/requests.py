"""What a caller may ask about a measured sweep: the file, and the line it was measured on."""

from typing import Annotated

from msgspec import Meta

from ..feedline.elements import Element, KnownEnd, Load, Touchstone
from ..physics.scenario import Surroundings

__all__ = ["SweepRequest"]


class SweepRequest(Surroundings, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Which joint of a line is worse than it should be, by a one-port sweep of it; or how good a two-port part is."""

    elements: Annotated[
        list[Element],
        Meta(
            max_length=16,
            description="In order, from the analyser on; of a two-port, what is in it; none to be told the echoes only",
        ),
    ]
    load: Annotated[
        Load | KnownEnd | None,
        Meta(description="What the line ended in during the sweep; not used for a two-port or with no elements"),
    ] = None
    touchstone: Annotated[Touchstone, Meta(description="Text of the sweep's Touchstone file, one or two ports")]
    earlier: Annotated[
        Touchstone | None, Meta(description="Text of an earlier sweep of the same line, to compare with")
    ] = None
    velocity_factor: Annotated[float, Meta(ge=0.3, le=1, description="Of the cable, where no elements are given")] = (
        0.66
    )
    length_tolerance: Annotated[
        float, Meta(ge=0.001, le=0.1, description="Greatest relative error of each cable's electrical length")
    ] = 0.02
    window_shape: Annotated[
        Annotated[float, Meta(ge=0.5, le=14)] | None,
        Meta(description="Shape of the Kaiser window; left out, the usual one"),
    ] = None
