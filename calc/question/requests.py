"""What a caller may ask about one joint, in words or in fields."""

from typing import Annotated

from msgspec import Meta

from ..physics.scenario import Frequency, Identifier, Power, Scenario

__all__ = ["QuestionRequest"]


class QuestionRequest(Scenario, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A question as it is typed, and fields for what it leaves out: what is typed wins over the fields."""

    text: Annotated[
        str, Meta(max_length=300, description='The question as typed, such as "so239 1kw ft8 10m swr 3"')
    ] = ""
    family: Annotated[Identifier | None, Meta(description="Connector, an id of the catalogue")] = None
    band: Annotated[Identifier | None, Meta(description="Amateur band; or give frequency_hz")] = None
    frequency_hz: Annotated[
        Frequency | None, Meta(description="Spot frequency; or give band", extra={"unit": "Hz"})
    ] = None
    power_w: Power = 100.0
