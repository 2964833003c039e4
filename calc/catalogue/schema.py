"""The shape of the catalogue, and so of packs: every value with its source and kind.

A field's unit stands here, once, and travels with the value in every answer;
so does the range a value of a pack must lie in, and what a pattern allows is
said in words beside it.
An `Interval` holds the lowest and the highest credible figure; where only one
figure is known both ends repeat it.
"""

from typing import Annotated, Literal

from msgspec import Meta, Struct

from ..numeric.measures import prose

__all__ = [
    "Adapter",
    "AntennaView",
    "Assumption",
    "Atmosphere",
    "Attenuation",
    "Band",
    "BandEdges",
    "Cable",
    "CableBuild",
    "CableDielectric",
    "CablePower",
    "Condition",
    "HouseLimit",
    "Installation",
    "Interface",
    "Interval",
    "Label",
    "Material",
    "Mating",
    "Mode",
    "NoiseEnvironment",
    "PackSource",
    "PackSummary",
    "PowerRating",
    "Quantity",
    "SiteWord",
    "SmallWords",
    "Source",
    "Transmitter",
    "WireLine",
    "ZenithAttenuation",
]

Kind = Literal["standard", "datasheet", "handbook", "common practice", "memory"]
ID = "^(?!constructor$)[a-z0-9][a-z0-9_]*$"
"""No name that means something to the tables of a page's script: it can't begin with an underscore either."""

NAME = r"^[^\s=+@-]"
"""No name that a spreadsheet takes for a formula."""

ADDRESS = r"^(https?://\S+)?$"
"""No address that runs a script."""

Id = Annotated[
    str,
    Meta(
        pattern=ID,
        min_length=1,
        max_length=40,
        extra={"allowed": "a name of small letters, digits and _, at most 40 characters"},
    ),
]
Name = Annotated[
    str,
    Meta(
        pattern=NAME,
        min_length=1,
        max_length=80,
        extra={"allowed": "a text of 1 to 80 characters that begins with none of = + - @ and no blank"},
    ),
]
Text = Annotated[str, Meta(max_length=600)]
Named = Annotated[str, Meta(min_length=1, max_length=100)]
"""An id of another table, or a word of the trade."""

Order = Annotated[int, Meta(ge=0, le=1000)]
Names = Annotated[list[Name], Meta(max_length=20)]
TypedNames = Annotated[list[Name], Meta(max_length=30)]
"""What people type for an entry beside its name; case, spaces and hyphens don't count."""

Frequency = Annotated[float, Meta(ge=1e4, le=2e11)]
Watts = Annotated[float, Meta(ge=1e-3, le=1e6)]
Temperature = Annotated[float, Meta(ge=-100, le=600)]
Exposure = Literal["indoor", "sheltered", "exposed", "immersed"]


def Unit(unit: str, least: float | None = None, most: float | None = None) -> Meta:
    """The unit that travels with a field, and the range of its values."""
    return Meta(extra={"unit": unit, "least": least, "most": most})


class Quantity(Struct, forbid_unknown_fields=True, frozen=True):
    """One number with where it comes from."""

    value: float
    source: Named
    kind: Kind
    note: Text = ""


class Interval(Struct, forbid_unknown_fields=True, frozen=True):
    """The lowest and the highest credible figure, each with its source."""

    low: Quantity
    high: Quantity


class Label(Struct, forbid_unknown_fields=True, frozen=True):
    """One word or phrase with where it comes from."""

    value: Annotated[str, Meta(max_length=200)]
    source: Named
    kind: Kind
    note: Text = ""


class PowerRating(Struct, forbid_unknown_fields=True, frozen=True):
    """A published or remembered average power of a matched mated pair, with the conditions it holds under."""

    power_w: Watts
    frequency_hz: Frequency
    ambient_temperature_c: Temperature
    contact_temperature_c: Temperature
    altitude_m: Annotated[float, Meta(ge=0, le=30_000)]
    source: Named
    kind: Kind
    note: Text = ""
    cable: Named | None = None
    """On which cable, an id of the catalogue; left out, on the family's customary one."""


class Section(Struct, forbid_unknown_fields=True, frozen=True):
    """A mated pair without constant impedance, as a short line section."""

    impedance_ohm: Annotated[Interval, Unit("Ω", 5, 500)]
    electrical_length_m: Annotated[Interval, Unit("m", 1e-4, 1)]


class VswrLimit(Struct, forbid_unknown_fields=True, frozen=True):
    """The greatest VSWR allowed: at_dc + slope_per_hz * frequency."""

    at_dc: Annotated[Quantity, Unit("1", 1, 10)]
    slope_per_hz: Annotated[Quantity, Unit("1/Hz", 0, 1e-7)]


class InsertionLoss(Struct, forbid_unknown_fields=True, frozen=True):
    """The most that a mated pair loses up to a frequency; of kind `standard` it is guaranteed.

    Reflection is included, as by the method of MIL-PRF-39012E, 4.6.24.
    """

    loss_db: Annotated[Quantity, Unit("dB", 1e-3, 10)]
    at_frequency_hz: Frequency


class Interface(Struct, forbid_unknown_fields=True, frozen=True):
    """One interface family; geometry is that of the mating plane."""

    id: Id
    name: Name
    order: Order
    summary: Text
    also_called: Names

    nominal_impedance_ohm: Annotated[Quantity, Unit("Ω", 10, 300)]
    constant_impedance: bool
    inner_diameter_m: Annotated[Quantity, Unit("m", 1e-05, 0.2)]
    outer_diameter_m: Annotated[Quantity, Unit("m", 0.0001, 0.5)]
    dielectric: Label
    section_length_m: Annotated[Quantity, Unit("m", 0.0001, 1)]
    bead_length_m: Annotated[Quantity, Unit("m", 1e-05, 1)]
    bead_material: Label
    body_diameter_m: Annotated[Quantity, Unit("m", 0.001, 1)]
    body_length_m: Annotated[Quantity, Unit("m", 0.001, 1)]
    inner_plating: Label
    outer_plating: Label

    rated_frequency_hz: Annotated[Interval, Unit("Hz", 1e06, 2e11)]
    vswr_limit: VswrLimit
    vswr_typical: Annotated[Quantity, Unit("1", 1.001, 10)]
    insertion_loss: InsertionLoss

    working_voltage_rms_v: Annotated[Interval, Unit("V", 1, 100000)]
    proof_voltage_rms_v: Annotated[Interval, Unit("V", 1, 200000)]
    centre_contact_resistance_ohm: Annotated[Interval, Unit("Ω", 1e-06, 1)]
    outer_contact_resistance_ohm: Annotated[Interval, Unit("Ω", 1e-06, 1)]
    average_power: Annotated[list[PowerRating], Meta(max_length=100)]
    """Evidence, which the computed heat limit is held against."""
    lowest_temperature_c: Annotated[Quantity, Unit("°C", -100, 100)]
    highest_temperature_c: Annotated[Quantity, Unit("°C", 20, 500)]

    durability_matings: Annotated[Interval, Unit("matings", 1, 1e06)]
    coupling: Label
    coupling_torque_nm: Annotated[Interval, Unit("N·m", 0, 500)]
    sealing_mated: Label
    exposure_mated: Exposure
    vibration: Label
    cable_diameter_m: Annotated[Interval, Unit("m", 0.0001, 0.2)]
    gender: Label
    receive_only: bool
    receive_only_reason: Text = ""
    stainless_torque_nm: Annotated[Interval | None, Unit("N·m", 0, 500)] = None
    """Of parts of stainless steel, where `coupling_torque_nm` is that of brass; left out, one range holds for both."""
    tightened_by: Label | None = None
    """Left out, a threaded coupling is tightened by a torque wrench."""
    customary_cable: Label | None = None
    """An id of the catalogue; left out, the thickest cable of like impedance that the family takes."""
    generous_dielectric: Label | None = None
    """That of the better parts sold, where `dielectric` is that of the worse."""
    generous_bead_material: Label | None = None
    """That of the better parts sold, where `bead_material` is that of the worse."""
    section: Section | None = None
    everyday_cable_diameter_m: Annotated[Interval | None, Unit("m", 0.0001, 0.2)] = None
    """Of the cables the trade puts it on unasked; left out, of all it is made for."""
    everyday_lowest_frequency_hz: Annotated[Quantity | None, Unit("Hz", 1e04, 2e11)] = None
    """From where on the trade fits it unasked; left out, at any frequency."""
    everyday_highest_power_w: Annotated[Quantity | None, Unit("W", 1e-3, 1e6)] = None
    """Up to where the trade fits it unasked; left out, as far as its limits go."""
    special_use: Label | None = None
    """What it is made for, where that isn't the everyday joint of a station."""
    typed_as: TypedNames = []


class Mating(Struct, forbid_unknown_fields=True, frozen=True):
    """A plug and a jack of two different families that meet in practice, and what comes of it.

    With `either_way` it holds for the other family's plug and jack as well.
    """

    id: Id
    plug: Id
    jack: Id
    verdict: Literal["mates", "mates with care", "not held", "no contact", "does not fit", "damages"]
    text: Text
    source: Named
    kind: Kind
    either_way: bool = False


class Adapter(Struct, forbid_unknown_fields=True, frozen=True):
    """What the trade sells with this family at one end: the families at the other, plug and jack either way.

    The family's own name stands for its barrels, plug to plug and jack to jack.
    """

    id: Id
    joins: Annotated[list[Id], Meta(min_length=1, max_length=50)]
    source: Named
    kind: Kind


class BandEdges(Struct, forbid_unknown_fields=True, frozen=True):
    """Band edges in one ITU Region."""

    low_hz: Frequency
    high_hz: Frequency
    source: Named
    kind: Kind
    note: Text = ""


class Band(Struct, forbid_unknown_fields=True, frozen=True):
    """An amateur band; a Region without an allocation is left out of `regions`."""

    id: Id
    name: Name
    regions: dict[Literal["1", "2", "3"], BandEdges]
    typed_as: TypedNames = []


class Mode(Struct, forbid_unknown_fields=True, frozen=True):
    """An emission mode: mean over peak power while keyed, and the rhythm of its overs."""

    id: Id
    name: Name
    duty_factor: Annotated[Quantity, Unit("1", 1e-3, 1)]
    on_time_s: Annotated[Quantity | None, Unit("s", 0.01, 86400)] = None
    off_time_s: Annotated[Quantity | None, Unit("s", 0.01, 86400)] = None
    note: Text = ""
    typed_as: TypedNames = []
    """The first is how a sentence says it."""


class Material(Struct, forbid_unknown_fields=True, frozen=True):
    """A conductor (conductivity, permeability) or a dielectric (permittivity, loss, heat conduction)."""

    id: Id
    name: str
    conductivity_s_per_m: Annotated[Quantity | None, Unit("S/m")] = None
    relative_permeability: Annotated[Quantity | None, Unit("1")] = None
    relative_permittivity: Annotated[Quantity | None, Unit("1")] = None
    loss_tangent: Annotated[Quantity | None, Unit("1")] = None
    thermal_conductivity_w_per_m_k: Annotated[Interval | None, Unit("W/(m·K)")] = None
    heat_capacity_j_per_m3_k: Annotated[Quantity | None, Unit("J/(m³·K)")] = None
    density_kg_per_m3: Annotated[Quantity | None, Unit("kg/m³")] = None
    emissivity: Annotated[Interval | None, Unit("1")] = None
    """Of its surface, as far as heat radiates: far infrared, near room temperature."""


class CableDielectric(Struct, forbid_unknown_fields=True, frozen=True):
    """A kind of cable insulation and its plastic; how much gas fills it follows from the velocity factor."""

    id: Id
    name: str
    material: Id


class Attenuation(Struct, forbid_unknown_fields=True, frozen=True):
    """A published loss of a matched line at one frequency; without `fit` it is held out to check the fit.

    With `through` it is not held out: it lies below the figures fitted, where current
    enters a clad core, and the law goes through it.
    """

    frequency_hz: Frequency
    db_per_m: Annotated[float, Meta(ge=1e-6, le=1000)]
    source: Named
    kind: Kind
    note: Text = ""
    fit: bool = True
    through: bool = False


class CablePower(Struct, forbid_unknown_fields=True, frozen=True):
    """An average-power rating of a matched cable with its conditions.

    Evidence, which the computed heat limit is held against.
    """

    frequency_hz: Frequency
    power_w: Watts
    ambient_temperature_c: Temperature
    conductor_temperature_c: Temperature
    source: Named
    kind: Kind
    note: Text = ""


class CableBuild(Struct, forbid_unknown_fields=True, frozen=True):
    """What carries a cable's heat: the sizes of its layers from the inside out, and what they are made of.

    Metals and plastics are ids of the materials.
    """

    inner_diameter_m: Annotated[Quantity, Unit("m", 1e-05, 0.1)]
    """Over the strands where it is stranded."""
    dielectric_diameter_m: Annotated[Quantity, Unit("m", 1e-04, 0.2)]
    screen_diameter_m: Annotated[Quantity, Unit("m", 1e-04, 0.2)]
    """Over the outer conductor."""
    inner_area_m2: Annotated[Quantity, Unit("m²", 1e-09, 0.01)]
    """Of the metal in a cross-section of the inner conductor."""
    screen_area_m2: Annotated[Quantity, Unit("m²", 1e-09, 0.01)]
    """Of the metal in a cross-section of the outer conductor."""
    inner_metal: Label
    screen_metal: Label
    jacket_material: Label | None = None
    """Left out, the outer conductor is bare."""


class Cable(Struct, forbid_unknown_fields=True, frozen=True):
    """One coaxial cable, or one class of like cables."""

    id: Id
    name: Name
    order: Order
    summary: Text
    also_called: Names
    dielectric: Id
    construction: Literal["solid", "stranded", "semi-rigid", "corrugated"]
    outdoor_use: Exposure

    impedance_ohm: Annotated[Quantity, Unit("Ω", 10, 300)]
    velocity_factor: Annotated[Quantity, Unit("1", 0.2, 1)]
    capacitance_f_per_m: Annotated[Quantity, Unit("F/m", 1e-12, 1e-09)]
    outer_diameter_m: Annotated[Quantity, Unit("m", 0.0001, 0.5)]
    centre_conductor: Label
    jacket: Label

    attenuation_temperature_c: Annotated[Quantity, Unit("°C", -50, 150)]
    attenuation: Annotated[list[Attenuation], Meta(min_length=2, max_length=100)]
    power: Annotated[list[CablePower], Meta(max_length=100)]
    working_voltage_rms_v: Annotated[Interval, Unit("V", 1, 100000)]
    lowest_temperature_c: Annotated[Quantity, Unit("°C", -100, 100)]
    highest_temperature_c: Annotated[Quantity, Unit("°C", 20, 500)]
    fixed_bend_radius_m: Annotated[Quantity, Unit("m", 0.001, 20)]
    repeated_bend_radius_m: Annotated[Quantity | None, Unit("m", 0.001, 20)] = None
    inner_resistance_ohm_per_m: Annotated[Quantity | None, Unit("Ω/m", 1e-06, 100)] = None
    outer_resistance_ohm_per_m: Annotated[Quantity | None, Unit("Ω/m", 1e-06, 100)] = None
    build: CableBuild | None = None
    """Left out, that of the nearest cable of like insulation and impedance, scaled to its diameter."""
    fit_note: Text = ""
    """Why the fit leaves much, or ends where it does."""
    typed_as: TypedNames = []

    @property
    def spoken_name(self) -> str:
        """Its name, with the size in it in the units spoken."""
        return prose(self.name)


class WireLine(Struct, forbid_unknown_fields=True, frozen=True):
    """One two-wire line, or one class of like lines; its figures are those of a clean and dry one."""

    id: Id
    name: Name
    order: Order
    summary: Text
    also_called: Names
    construction: Literal["window", "ribbon", "open wire"]
    outdoor_use: Exposure

    impedance_ohm: Annotated[Quantity, Unit("Ω", 50, 1000)]
    velocity_factor: Annotated[Quantity, Unit("1", 0.2, 1)]
    wire: Label
    wet: Label
    """A sentence on what rain and ice do to it."""
    attenuation_temperature_c: Annotated[Quantity, Unit("°C", -50, 150)]
    attenuation: Annotated[list[Attenuation], Meta(min_length=2, max_length=100)]
    working_voltage_rms_v: Annotated[Interval, Unit("V", 1, 100000)]
    lowest_temperature_c: Annotated[Quantity, Unit("°C", -100, 100)]
    highest_temperature_c: Annotated[Quantity, Unit("°C", 20, 500)]
    wire_diameter_m: Annotated[Quantity | None, Unit("m", 1e-05, 0.1)] = None
    """Over the strands where it is stranded."""
    spacing_m: Annotated[Quantity | None, Unit("m", 1e-04, 2)] = None
    """Between the wires' middles."""
    fit_note: Text = ""
    """Why the fit leaves much, or ends where it does."""

    @property
    def spoken_name(self) -> str:
        """Its name, with the size in it in the units spoken."""
        return prose(self.name)


class Installation(Struct, forbid_unknown_fields=True, frozen=True):
    """Where a joint sits, and the weather, the shaking and the sealing that come with the place at least."""

    id: Id
    name: str
    least_exposure: Label
    least_vibration: Label
    taped: bool = False
    """Whether joints there are taped or booted as a matter of course."""
    typed_as: TypedNames = []


class Condition(Struct, forbid_unknown_fields=True, frozen=True):
    """State of the contacts and the resistance it adds at the centre contact."""

    id: Id
    name: str
    added_resistance_ohm: Annotated[Quantity, Unit("Ω")]
    typed_as: TypedNames = []


class SiteWord(Struct, forbid_unknown_fields=True, frozen=True):
    """What people type of a joint's site and use, and the field of a scenario or the power [W] it stands for."""

    id: Id
    typed_as: TypedNames
    field: Named
    value: bool | float | str


class SmallWords(Struct, forbid_unknown_fields=True, frozen=True):
    """Words of a sentence that say nothing of the station: those passed over, and those that deny what follows."""

    id: Literal["filler", "denial"]
    words: list[Name]


class NoiseEnvironment(Struct, forbid_unknown_fields=True, frozen=True):
    """Median external noise of a kind of place, c - d log10(f/MHz) over k T_0 b, and its spread in time."""

    id: Id
    name: str
    median_at_1_mhz_db: Annotated[Quantity, Unit("dB")]
    fall_per_decade_db: Annotated[Quantity, Unit("dB")]
    upper_decile_db: Annotated[Quantity, Unit("dB")]
    lower_decile_db: Annotated[Quantity, Unit("dB")]
    frequency_hz: Annotated[Interval, Unit("Hz")]


class AntennaView(Struct, forbid_unknown_fields=True, frozen=True):
    """What an antenna looks at: how much of its noise comes from the earth, from man and from the galaxy."""

    id: Id
    name: str
    earth_share: Annotated[Quantity, Unit("1")]
    man_made_share: Annotated[Quantity, Unit("1")]
    galactic_at_1_mhz_db: Annotated[Quantity, Unit("dB")]
    galactic_fall_per_decade_db: Annotated[Quantity, Unit("dB")]
    elevation_deg: Annotated[Quantity, Unit("°")] | None = None
    """Left out, the elevation asked for."""


class Transmitter(Struct, forbid_unknown_fields=True, frozen=True):
    """What a kind of transmitter does at a bad load."""

    id: Id
    name: str
    holds_to_vswr: Annotated[Quantity | None, Unit("1", 1, 100)] = None
    """It holds its forward power up to this VSWR, and from there on its reflected power; left out, at any."""


class ZenithAttenuation(Struct, forbid_unknown_fields=True, frozen=True):
    """The loss of clear air straight up at one frequency."""

    frequency_hz: Frequency
    db: Annotated[float, Meta(ge=0, le=100)]
    source: Named
    kind: Kind
    note: Text = ""


class Atmosphere(Struct, forbid_unknown_fields=True, frozen=True):
    """Air, by what it absorbs straight up; between the frequencies by their logarithms."""

    id: Id
    name: str
    zenith_attenuation: list[ZenithAttenuation]


class Source(Struct, forbid_unknown_fields=True, frozen=True):
    """Where a value or a formula comes from, and how it was seen; the id of one of a pack is led by the pack's."""

    id: Annotated[str, Meta(max_length=81)]
    title: Annotated[str, Meta(min_length=1, max_length=300)]
    seen: Literal["read", "as quoted", "from memory", "computed"]
    address: Annotated[
        str,
        Meta(
            pattern=ADDRESS,
            max_length=300,
            extra={"allowed": "an address that begins with https:// or http://, at most 300 characters"},
        ),
    ] = ""
    body: Annotated[str, Meta(max_length=100)] = ""
    """Its author or the body that publishes it; empty where that was not seen, as in the two below."""
    year: Annotated[str, Meta(max_length=60)] = ""
    """When, as exactly as it is known; of an edition where there are several."""
    place: Annotated[str, Meta(max_length=100)] = ""
    """Where in it: a table, page, clause or chapter."""

    @property
    def reference(self) -> str:
        """All that is known of it, to be read: title (body, year, place)."""
        origin = ", ".join(part for part in (self.body, self.year, self.place) if part)
        return f"{self.title} ({origin})" if origin else self.title


class PackSource(Source, forbid_unknown_fields=True, frozen=True):
    """A source as a pack lists it."""

    id: Id


class HouseLimit(Struct, forbid_unknown_fields=True, frozen=True):
    """The most power [W] a station's own rule allows through some families on some bands; without a list, all."""

    id: Id
    power_w: Annotated[float, Meta(ge=0, le=1e5)]
    reason: Annotated[str, Meta(min_length=1, max_length=300)]
    source: Named
    kind: Kind
    interfaces: Annotated[list[Id], Meta(max_length=100)] = []
    bands: Annotated[list[Id], Meta(max_length=100)] = []


class PackSummary(Struct, frozen=True):
    """A pack in force and what it did, each as "table/id", and the path within it where only values changed."""

    id: str
    name: str
    version: str
    note: str
    added: list[str]
    changed: list[str]
    taken: list[str] = []
    """A sentence on each thing that its entries leave out and what stands for it, and on what is no longer used."""


class Assumption(Struct, forbid_unknown_fields=True, frozen=True):
    """A number the physics needs beside the interface itself."""

    id: Id
    name: str
    unit: str
    quantity: Quantity
    """The cautious figure where `generous` is another."""
    generous: Quantity | None = None
