"""What a caller may ask about adapters: the ports, which pairs of them to join, and what is owned already."""

from typing import Annotated, Literal

from msgspec import Meta, Struct, field

from ..catalogue.mating import Gender
from ..physics.scenario import Frequency, Identifier, Scenario

__all__ = ["Goal", "KitRequest", "OwnedAdapter", "Port"]

Goal = Literal["fewest", "best_joints"]

MOST_PORTS = 60
MOST_PAIRS = 400
MOST_IN_SERIES = 4

PortIndex = Annotated[int, Meta(ge=0, le=MOST_PORTS - 1)]
Pair = Annotated[list[PortIndex], Meta(min_length=2, max_length=2)]


class Port(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A connector on the user's gear, or on the end of a cable."""

    family: Annotated[Identifier, Meta(description="Connector, an id of the catalogue")]
    gender: Annotated[Gender, Meta(description="Plug or jack, by the coupling: the plug has the nut or ring")]
    highest_frequency_hz: Annotated[
        Frequency, Meta(description="Highest frequency this gear is used at", extra={"unit": "Hz"})
    ]
    power_w: Annotated[
        float,
        Meta(
            ge=0,
            le=1e5,
            description="Largest peak envelope power it gives or takes; 0 means receive only",
            extra={"unit": "W"},
        ),
    ] = 100.0
    impedance_ohm: Annotated[
        Annotated[float, Meta(ge=25, le=150)] | None,
        Meta(
            description="Impedance behind a connector that has none of its own; left out, the line's",
            extra={"unit": "Ω"},
        ),
    ] = None
    name: Annotated[str, Meta(max_length=60, description="What you call it")] = ""


class OwnedAdapter(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Adapters of one type that are in the bag already."""

    one_family: Annotated[Identifier, Meta(description="Connector at the one end")]
    one_gender: Annotated[Gender, Meta(description="Gender of the one end")]
    other_family: Annotated[Identifier, Meta(description="Connector at the other end")]
    other_gender: Annotated[Gender, Meta(description="Gender of the other end")]
    count: Annotated[int, Meta(ge=1, le=20, description="How many of them")] = 1


class KitRequest(Scenario, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Which adapters to add so that every needed pair of ports can be joined, one pair at a time.

    Two ports are joined at the lower of their highest frequencies and the lower of their powers.
    """

    ports: Annotated[list[Port], Meta(min_length=2, max_length=MOST_PORTS, description="The ports of your gear")]
    pairs: Annotated[
        Annotated[list[Pair], Meta(max_length=MOST_PAIRS)] | None,
        Meta(description="Which ports must join which, by number from 0; left out, every two"),
    ] = None
    owned: Annotated[list[OwnedAdapter], Meta(max_length=200, description="The adapters you have")] = field(
        default_factory=list
    )
    goal: Annotated[
        Goal,
        Meta(
            description="The fewest adapters, or the fewest of those whose joints are as good as they can be for"
            " what each pair carries"
        ),
    ] = "fewest"
    most_in_series: Annotated[int, Meta(ge=1, le=MOST_IN_SERIES, description="Most adapters between two ports")] = 2
    most_loss_db: Annotated[
        float, Meta(ge=0.01, le=20, description="Greatest loss between two ports", extra={"unit": "dB"})
    ] = 0.5
    impedance_steps: Annotated[bool, Meta(description="Whether 50 Ω may meet 75 Ω, at the price of the mismatch")] = (
        False
    )
    search: Annotated[
        Literal["quick", "thorough"],
        Meta(description="How long to look for a smaller kit while none is proven smallest: a second or a minute"),
    ] = "quick"
