"""What a caller may ask about a whole line: its elements in order from the transmitter, and its load."""

from typing import Annotated, Literal

from msgspec import Meta, Struct

from ..physics.scenario import AddedResistance, Condition, Exposure, Frequency, Identifier, Power, Surroundings
from ..waves.touchstone import MOST_CHARACTERS

__all__ = [
    "CableRun",
    "Element",
    "FeedlineRequest",
    "GivenImpedance",
    "GivenVswr",
    "ImpedancePoint",
    "ImpedanceTable",
    "Joint",
    "KnownEnd",
    "Length",
    "Load",
    "MeasuredLoad",
    "MeasuredPart",
    "Part",
    "Touchstone",
]

Name = Annotated[str, Meta(max_length=60, description="What you call it")]
Touchstone = Annotated[str, Meta(max_length=MOST_CHARACTERS, description="Text of a Touchstone file")]
Resistance = Annotated[float, Meta(ge=0, le=1e6, extra={"unit": "Ω"})]
Reactance = Annotated[float, Meta(ge=-1e6, le=1e6, extra={"unit": "Ω"})]
Loss = Annotated[float, Meta(ge=0, le=100, description="Insertion loss, matched", extra={"unit": "dB"})]
Length = Annotated[float, Meta(ge=0.01, le=10_000, description="Length of the run", extra={"unit": "m"})]


class CableRun(Struct, tag_field="kind", tag="cable", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A run of one cable."""

    cable: Annotated[Identifier, Meta(description="A cable of the catalogue")]
    length_m: Length
    name: Name = ""


class Joint(Struct, tag_field="kind", tag="joint", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A mated pair of one family; with `adapter_to`, an adapter with a mated pair at either end."""

    family: Annotated[Identifier, Meta(description="Interface family")]
    adapter_to: Annotated[
        Identifier | None, Meta(description="Family on the antenna side of an adapter; left out, no adapter")
    ] = None
    condition: Condition = "new"
    added_resistance_ohm: AddedResistance = 0.0
    exposure: Annotated[Exposure | None, Meta(description="Weather at this joint; left out, the site's")] = None
    name: Name = ""


class Part(Struct, tag_field="kind", tag="part", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An arrester, switch, filter, meter or divider, by the figures of its data sheet."""

    loss_db: Loss
    vswr: Annotated[float, Meta(ge=1, le=20, description="VSWR of the part between matched ends")] = 1.0
    power_limit_w: Annotated[
        Annotated[float, Meta(ge=0.001, le=1e6)] | None,
        Meta(description="Average power it stands; left out, not checked", extra={"unit": "W"}),
    ] = None
    voltage_limit_v: Annotated[
        Annotated[float, Meta(ge=1, le=1e6)] | None,
        Meta(description="Peak voltage it stands; left out, not checked", extra={"unit": "V"}),
    ] = None
    name: Name = ""


class MeasuredPart(Struct, tag_field="kind", tag="measured", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A two-port you measured, port 1 towards the transmitter."""

    touchstone: Touchstone
    name: Name = ""


Element = CableRun | Joint | Part | MeasuredPart


class GivenVswr(Struct, tag_field="kind", tag="vswr", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An antenna known by its VSWR, the same at every frequency."""

    vswr: Annotated[float, Meta(ge=1, le=100)]
    angle_deg: Annotated[float, Meta(ge=-360, le=360, description="Angle of its reflection", extra={"unit": "°"})] = 0.0


class GivenImpedance(Struct, tag_field="kind", tag="impedance", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An antenna of one impedance at every frequency."""

    resistance_ohm: Resistance
    reactance_ohm: Reactance = 0.0


class ImpedancePoint(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The antenna's impedance at one frequency."""

    frequency_hz: Frequency
    resistance_ohm: Resistance
    reactance_ohm: Reactance = 0.0


class ImpedanceTable(Struct, tag_field="kind", tag="table", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An antenna known at several frequencies, rising; its reflection runs straight between them."""

    points: Annotated[list[ImpedancePoint], Meta(min_length=2, max_length=2000)]


class MeasuredLoad(Struct, tag_field="kind", tag="measured", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A one-port you measured at the antenna."""

    touchstone: Touchstone


class KnownEnd(Struct, tag_field="kind", tag="end", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """What a line ends in while it is measured without its antenna."""

    what: Literal["short", "open", "matched"]


Load = GivenVswr | GivenImpedance | ImpedanceTable | MeasuredLoad


class FeedlineRequest(Surroundings, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A line, its station and site, and the frequency it is looked at."""

    elements: Annotated[
        list[Element], Meta(min_length=1, max_length=60, description="In order, from the transmitter to the antenna")
    ]
    load: Annotated[Load, Meta(description="The antenna")]
    power_w: Power = 100.0
    band: Annotated[Identifier | None, Meta(description="Amateur band, looked at in its middle")] = None
    frequency_hz: Annotated[
        Frequency | None, Meta(description="Spot frequency; or give band", extra={"unit": "Hz"})
    ] = None
