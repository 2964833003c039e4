"""What a caller may ask about a whole line: its elements in order from the transmitter, and its load."""

from typing import Annotated, Literal

from msgspec import Meta, Struct, field

from ..physics.scenario import AddedResistance, Condition, Exposure, Frequency, Identifier, Power, Surroundings
from ..waves.touchstone import MOST_CHARACTERS

__all__ = [
    "CableRun",
    "DummyLoad",
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
    "ResonantAntenna",
    "Section",
    "Touchstone",
    "Transformer",
    "Transmitter",
    "Tuner",
    "WireRun",
]

Name = Annotated[str, Meta(max_length=60, description="What you call it")]
Touchstone = Annotated[str, Meta(max_length=MOST_CHARACTERS, description="Text of a Touchstone file")]
Resistance = Annotated[float, Meta(ge=0, le=1e6, extra={"unit": "Ω"})]
Reactance = Annotated[float, Meta(ge=-1e6, le=1e6, extra={"unit": "Ω"})]
Loss = Annotated[float, Meta(ge=0, le=100, description="Insertion loss, matched", extra={"unit": "dB"})]
PowerLimit = Annotated[
    Annotated[float, Meta(ge=0.001, le=1e6)] | None,
    Meta(description="Rated average power; left out, not checked", extra={"unit": "W"}),
]
VoltageLimit = Annotated[
    Annotated[float, Meta(ge=1, le=1e6)] | None,
    Meta(description="Rated peak voltage; left out, not checked", extra={"unit": "V"}),
]
Length = Annotated[float, Meta(ge=0.01, le=10_000, description="Length of the run", extra={"unit": "m"})]


class CableRun(Struct, tag_field="kind", tag="cable", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A run of one cable."""

    cable: Annotated[Identifier, Meta(description="A cable of the catalogue")]
    length_m: Length
    name: Name = ""


class Joint(Struct, tag_field="kind", tag="joint", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A mated pair of one family; with `adapter_to`, an adapter with a mated pair at either end."""

    family: Annotated[Identifier, Meta(description="Connector, an id of the catalogue")]
    adapter_to: Annotated[
        Identifier | None, Meta(description="Connector on the antenna side of an adapter; left out, no adapter")
    ] = None
    condition: Condition = "new"
    added_resistance_ohm: AddedResistance = 0.0
    exposure: Annotated[Exposure | None, Meta(description="Weather at this joint; left out, the site's")] = None
    name: Name = ""


class WireRun(Struct, tag_field="kind", tag="wires", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A run of two-wire line: window line, ribbon or open wire, clean and dry."""

    line: Annotated[Identifier, Meta(description="A two-wire line of the catalogue")]
    length_m: Length
    name: Name = ""


class Part(Struct, tag_field="kind", tag="part", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An arrester, switch, filter, meter, attenuator or divider, by the figures of its data sheet."""

    what: Annotated[
        Literal["arrester", "switch", "meter", "attenuator", "filter", "divider", "other"],
        Meta(description="What it is; the voltage limit of an arrester is where it fires"),
    ] = "other"
    loss_db: Loss
    vswr: Annotated[float, Meta(ge=1, le=20, description="SWR of the part between matched ends")] = 1.0
    power_limit_w: PowerLimit = None
    voltage_limit_v: VoltageLimit = None
    directivity_db: Annotated[
        Annotated[float, Meta(ge=0, le=80)] | None,
        Meta(description="Directivity of a meter; left out, what it reads is not reckoned", extra={"unit": "dB"}),
    ] = None
    name: Name = ""


class MeasuredPart(Struct, tag_field="kind", tag="measured", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A two-port you measured, port 1 towards the transmitter."""

    touchstone: Touchstone
    power_limit_w: PowerLimit = None
    voltage_limit_v: VoltageLimit = None
    name: Name = ""


class Tuner(Struct, tag_field="kind", tag="tuner", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A tuner of a coil and capacitors; it matches what it sees to the system's impedance at every frequency."""

    network: Annotated[Literal["l", "t", "pi"], Meta(description="How coil and capacitors are arranged")] = "t"
    coil_q: Annotated[float, Meta(ge=5, le=10_000, description="Quality of the coil")] = 100.0
    capacitor_q: Annotated[float, Meta(ge=5, le=100_000, description="Quality of the capacitors")] = 1000.0
    largest_capacitor_f: Annotated[
        Annotated[float, Meta(ge=1e-12, le=1e-7)] | None,
        Meta(description="What each capacitor goes up to; left out, as is usual in its network", extra={"unit": "F"}),
    ] = None
    largest_coil_h: Annotated[
        float, Meta(ge=1e-9, le=1e-3, description="What the coil goes up to", extra={"unit": "H"})
    ] = 30e-6
    voltage_limit_v: Annotated[
        Annotated[float, Meta(ge=1, le=1e6)] | None,
        Meta(description="Rated peak voltage of each capacitor; left out, not checked", extra={"unit": "V"}),
    ] = None
    current_limit_a: Annotated[
        Annotated[float, Meta(ge=0.001, le=10_000)] | None,
        Meta(description="Rated current of the coil, rms; left out, not checked", extra={"unit": "A"}),
    ] = None
    name: Name = ""


class Transformer(Struct, tag_field="kind", tag="transformer", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A balun, an unun or a common-mode choke, by the figures of its data sheet."""

    ratio: Annotated[
        float,
        Meta(ge=0.01, le=100, description="Impedance on the antenna side over that on the transmitter's; a choke: 1"),
    ] = 1.0
    loss_db: Loss = 0.2
    choking_ohm: Annotated[
        Annotated[float, Meta(ge=1, le=1e6)] | None,
        Meta(description="Common-mode impedance at the frequency; left out, not checked", extra={"unit": "Ω"}),
    ] = None
    power_limit_w: PowerLimit = None
    voltage_limit_v: Annotated[
        Annotated[float, Meta(ge=1, le=1e6)] | None,
        Meta(description="Rated peak voltage on the transmitter's side; left out, not checked", extra={"unit": "V"}),
    ] = None
    name: Name = ""


class Section(Struct, tag_field="kind", tag="section", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A transformer section: a length of line of another impedance, a quarter wave as a rule."""

    impedance_ohm: Annotated[
        float, Meta(ge=10, le=1000, description="Characteristic impedance of the section", extra={"unit": "Ω"})
    ]
    length_m: Length
    velocity_factor: Annotated[float, Meta(ge=0.2, le=1, description="Speed of the wave over that of light")] = 1.0
    loss_db: Annotated[
        float, Meta(ge=0, le=100, description="Loss of the whole section, matched", extra={"unit": "dB"})
    ] = 0.0
    voltage_limit_v: VoltageLimit = None
    name: Name = ""


Element = CableRun | Joint | Part | MeasuredPart | Transformer | Section | WireRun | Tuner


class GivenVswr(Struct, tag_field="kind", tag="vswr", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An antenna known by its VSWR, the same at every frequency."""

    vswr: Annotated[float, Meta(ge=1, le=100)]
    angle_deg: Annotated[
        Annotated[float, Meta(ge=-360, le=360)] | None,
        Meta(description="Angle of its reflection; left out, any may be", extra={"unit": "°"}),
    ] = None


class ResonantAntenna(Struct, tag_field="kind", tag="resonant", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An antenna known by its resonance; whether its resistance there is high or low a VSWR does not say."""

    resonance_hz: Frequency
    vswr: Annotated[float, Meta(ge=1, le=20, description="SWR at resonance")] = 1.2
    bandwidth_hz: Annotated[float, Meta(ge=100, le=1e10, description="Between both edges", extra={"unit": "Hz"})]
    bandwidth_vswr: Annotated[float, Meta(ge=1.01, le=20, description="SWR at both edges of the bandwidth")] = 2.0


class DummyLoad(Struct, tag_field="kind", tag="dummy", kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A resistor in place of an antenna."""

    vswr: Annotated[float, Meta(ge=1, le=20)] = 1.1
    power_limit_w: Annotated[
        Annotated[float, Meta(ge=0.001, le=1e6)] | None,
        Meta(description="Rated average power; left out, not checked", extra={"unit": "W"}),
    ] = None


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


Load = GivenVswr | GivenImpedance | ImpedanceTable | MeasuredLoad | ResonantAntenna | DummyLoad


class Transmitter(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """What the transmitter does at a bad load; without meaning where net power is given."""

    behaviour: Annotated[Identifier, Meta(description="An id of the catalogue's transmitters")] = "transceiver"
    holds_to_vswr: Annotated[
        Annotated[float, Meta(ge=1.01, le=100)] | None,
        Meta(description="Full power up to this SWR; left out, as its kind does"),
    ] = None


class FeedlineRequest(Surroundings, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A line, its station and site, and the frequency it is looked at."""

    elements: Annotated[
        list[Element], Meta(min_length=1, max_length=60, description="In order, from the transmitter to the antenna")
    ]
    load: Annotated[Load, Meta(description="The antenna")]
    power_w: Power = 100.0
    transmitter: Annotated[Transmitter, Meta(description="What it does at a bad load")] = field(
        default_factory=Transmitter
    )
    band: Annotated[Identifier | None, Meta(description="Amateur band, looked at in its middle")] = None
    frequency_hz: Annotated[
        Frequency | None, Meta(description="Spot frequency; or give band", extra={"unit": "Hz"})
    ] = None
