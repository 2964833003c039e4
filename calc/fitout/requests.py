"""What a caller may ask about fitting a line: its elements in order from the transmitter, the site and the day."""

from typing import Annotated

from msgspec import Meta

from ..feedline.elements import Element
from ..physics.scenario import Frequency, Identifier, Power, Surroundings

__all__ = ["FitoutRequest"]


class FitoutRequest(Surroundings, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Sheets for every joint of a line, or for one joint alone: a line of one element."""

    elements: Annotated[
        list[Element], Meta(min_length=1, max_length=60, description="In order, from the transmitter to the antenna")
    ]
    station: Annotated[str, Meta(max_length=60, description="What you call the station")] = ""
    date: Annotated[str, Meta(max_length=10, description="Day of fitting as YYYY-MM-DD; empty, none is printed")] = ""
    power_w: Power = 100.0
    band: Annotated[Identifier | None, Meta(description="Amateur band of the first measurement")] = None
    frequency_hz: Annotated[
        Frequency | None, Meta(description="Spot frequency; or give band", extra={"unit": "Hz"})
    ] = None
