"""What a caller may ask of the core, with the range of every field.

The ranges are declared once, in these Structs: the HTTP schema, the page's form and
the error sentences are all made from them. Names carry their SI unit;
temperatures are in degrees Celsius because every rating is printed that way.
"""

from typing import Annotated, Literal

from msgspec import Meta, Struct

from ..numeric.measures import Units

__all__ = [
    "AddedResistance",
    "Bands",
    "Condition",
    "Diameter",
    "Exposure",
    "Frequency",
    "Identifier",
    "Power",
    "Scenario",
    "SpokenUnits",
    "Surroundings",
]

Identifier = Annotated[
    str,
    Meta(
        min_length=1,
        max_length=40,
        pattern="^[a-z0-9_]+$",
        extra={"allowed": "a name of small letters, digits and _, at most 40 characters"},
    ),
]
Frequency = Annotated[float, Meta(ge=1e5, le=5e10, extra={"unit": "Hz"})]
Power = Annotated[
    float,
    Meta(ge=0, le=1e5, description="Peak envelope power; 0 means receive only", extra={"unit": "W"}),
]

Bands = Annotated[list[Identifier], Meta(max_length=100)]
Share = Annotated[float, Meta(ge=0.001, le=1)]
Duration = Annotated[float, Meta(ge=0.01, le=86400)]
Diameter = Annotated[float, Meta(ge=0.0005, le=0.1)]
Exposure = Literal["indoor", "sheltered", "exposed", "immersed"]
Condition = Annotated[Identifier, Meta(description="State of the contacts, an id of the catalogue")]
SpokenUnits = Annotated[
    Units, Meta(description="What lengths, temperatures and torques are told in; numbers keep their SI units")
]
AddedResistance = Annotated[
    float, Meta(ge=0, le=5, description="Extra contact resistance you measured", extra={"unit": "Ω"})
]


class Surroundings(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The station and the site, whatever stands in its line."""

    region: Annotated[int, Meta(ge=1, le=3, description="ITU Region whose band edges count")] = 1
    mode: Annotated[Identifier, Meta(description="Emission mode, an id of the catalogue")] = "ssb"
    power_is: Annotated[
        Literal["forward", "net"],
        Meta(description="Whether the powers are the forward wave's or what the load accepts"),
    ] = "forward"
    transmit_share: Annotated[
        Share | None,
        Meta(
            description="Share of the time on the air, 0 to 1; left out, the mode's own rhythm counts",
        ),
    ] = None
    on_time_s: Annotated[
        Duration | None, Meta(description="Length of one over; needs off_time_s", extra={"unit": "s"})
    ] = None
    off_time_s: Annotated[
        Duration | None,
        Meta(description="Pause between two overs; needs on_time_s", extra={"unit": "s"}),
    ] = None
    system_impedance_ohm: Annotated[
        float, Meta(ge=25, le=150, description="Impedance of the line", extra={"unit": "Ω"})
    ] = 50.0
    return_loss_asked_db: Annotated[
        float,
        Meta(ge=6, le=40, description="Least return loss of the joint alone", extra={"unit": "dB"}),
    ] = 14.0
    ambient_temperature_c: Annotated[
        float, Meta(ge=-60, le=80, description="Air temperature", extra={"unit": "°C"})
    ] = 40.0
    solar_irradiance_w_per_m2: Annotated[
        float, Meta(ge=0, le=1400, description="Sun on the joint; 0 in shade", extra={"unit": "W/m²"})
    ] = 0.0
    altitude_m: Annotated[float, Meta(ge=0, le=30000, description="Height above sea level", extra={"unit": "m"})] = 0.0
    exposure: Annotated[
        Exposure,
        Meta(description="What weather reaches the joint"),
    ] = "indoor"
    added_sealing: Annotated[bool, Meta(description="Whether the mated joint is sealed with tape or a boot")] = False
    vibration: Annotated[Literal["none", "vehicle", "severe"], Meta(description="Vibration at the joint")] = "none"
    matings_per_year: Annotated[float, Meta(ge=0, le=10000, description="How often the joint is swapped in a year")] = (
        5.0
    )
    service_life_years: Annotated[
        float, Meta(ge=0.1, le=100, description="How long it must last", extra={"unit": "years"})
    ] = 10.0
    units: SpokenUnits = "metric"


class Scenario(Surroundings, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The station around one joint: everything but family, frequency and power."""

    vswr: Annotated[float, Meta(ge=1, le=20, description="SWR on the line at the joint")] = 1.5
    cable: Annotated[
        Identifier | None,
        Meta(description="Cable at the joint, an id of the catalogue; left out, the usual one of the connector"),
    ] = None
    cable_diameter_m: Annotated[
        Diameter | None,
        Meta(
            description="Outer diameter of a cable that isn't in the catalogue; left out, not checked",
            extra={"unit": "m"},
        ),
    ] = None
    condition: Condition = "new"
    added_resistance_ohm: AddedResistance = 0.0
