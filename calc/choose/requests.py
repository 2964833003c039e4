"""What a caller may ask of a joint: what it carries, where it sits and how it is used."""

from typing import Annotated, Literal

from msgspec import Meta, field

from ..physics.scenario import Bands, Diameter, Frequency, Identifier, Power, Scenario

__all__ = ["ChooseRequest"]


class ChooseRequest(Scenario, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The demands on one joint. A named cable brings its own dielectric and diameter."""

    use: Annotated[Literal["transmit", "receive"], Meta(description="Whether power goes through the joint")] = (
        "transmit"
    )
    bands: Annotated[Bands, Meta(description="Amateur bands the joint must carry")] = field(
        default_factory=lambda: ["20m"]
    )
    frequencies_hz: Annotated[
        list[Frequency], Meta(max_length=200, description="Spot frequencies it must carry too")
    ] = field(default_factory=list)
    power_w: Power = 100.0
    margin_asked_db: Annotated[
        float,
        Meta(ge=0, le=20, description="Margin a connector should have to come first", extra={"unit": "dB"}),
    ] = 3.0
    dc_current_a: Annotated[
        float,
        Meta(ge=0, le=50, description="Direct current up the coax beside the RF; 0 for none", extra={"unit": "A"}),
    ] = 0.0
    dc_voltage_v: Annotated[
        float, Meta(ge=0, le=100, description="Its voltage; counts with a current", extra={"unit": "V"})
    ] = 12.0
    installation: Annotated[
        Identifier,
        Meta(
            description="Where the joint sits, an id of the catalogue: weather, shaking and sealing are at least that"
            " place's"
        ),
    ] = "fixed"
    port: Annotated[Identifier | None, Meta(description="Connector of the port it plugs into; left out, none")] = None
    largest_diameter_m: Annotated[
        Diameter | None, Meta(description="Room for the mated body; left out, not checked", extra={"unit": "m"})
    ] = None
    plan: Annotated[Identifier | None, Meta(description="The connector you have in mind; it comes first")] = None
