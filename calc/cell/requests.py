"""What a caller may ask of one cell."""

from typing import Annotated

from msgspec import Meta

from ..physics.scenario import Frequency, Identifier, Power, Scenario

__all__ = ["CellRequest"]


class CellRequest(Scenario, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """One cell of the matrix with its derivation: a band or a spot frequency."""

    family: Annotated[Identifier, Meta(description="Connector, an id of the catalogue")]
    band: Annotated[Identifier | None, Meta(description="Amateur band; or give frequency_hz")] = None
    frequency_hz: Annotated[
        Frequency | None, Meta(description="Spot frequency; or give band", extra={"unit": "Hz"})
    ] = None
    power_w: Power = 100.0
