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
    "EVERYDAY_MARK",
    "GROUPS",
    "Adapter",
    "AdapterFigures",
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

EVERYDAY_MARK = " / "
"""Between the everyday names of plug and jack: "PL-259 / SO-239"."""

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

SHEET_UNITS = {
    "m": "mm",
    "m²": "mm²",
    "Hz": "MHz",
    "1/Hz": "1/GHz",
    "F/m": "pF/m",
    "dB/m": "dB/100 m",
    "Ω/m": "Ω/km",
}
"""What data sheets print where we have SI."""


def _unit(unit: str, sheet_unit: str = "") -> dict[str, str]:
    return {"unit": unit, "sheet_unit": sheet_unit or SHEET_UNITS.get(unit, unit)}


Order = Annotated[int, Meta(ge=0, le=1000, title="Place in lists")]
Names = Annotated[list[Name], Meta(max_length=20)]
Frequency = Annotated[float, Meta(ge=1e4, le=2e11, extra=_unit("Hz"))]
Watts = Annotated[float, Meta(ge=1e-3, le=1e6, extra=_unit("W"))]
Temperature = Annotated[float, Meta(ge=-100, le=600, extra=_unit("°C"))]
Exposure = Literal["indoor", "sheltered", "exposed", "immersed"]


def Unit(unit: str, least: float | None = None, most: float | None = None, sheet_unit: str = "") -> Meta:
    """The unit that travels with a field, the range of its values, and what data sheets print in place of the unit."""
    return Meta(extra={**_unit(unit, sheet_unit), "least": least, "most": most})


def Words(title: str, hint: str = "") -> Meta:
    """What people call a field whose name does not say so, and what else they have to know of it."""
    return Meta(title=title, description=hint) if hint else Meta(title=title)


GROUPS = ("Size and metal", "Electrical", "Heat", "Wear and sealing", "What it mates with")
"""What a form shows together, in this order."""

SIZE, ELECTRICAL, HEAT, WEAR, FITS = (Meta(extra={"group": group}) for group in GROUPS)

TypedNames = Annotated[
    list[Name], Meta(max_length=30), Words("Also typed as", "What people type for it beside its name")
]
"""What people type for an entry beside its name; case, spaces and hyphens don't count."""


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
    ambient_temperature_c: Annotated[Temperature, Words("Air temperature")]
    contact_temperature_c: Annotated[Temperature, Words("Hottest contact")]
    altitude_m: Annotated[float, Meta(ge=0, le=30_000, extra=_unit("m", "m"))]
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

    at_dc: Annotated[Quantity, Unit("1", 1, 10), Words("Greatest VSWR at DC")]
    slope_per_hz: Annotated[Quantity, Unit("1/Hz", 0, 1e-7), Words("Growth of the greatest VSWR")]


class InsertionLoss(Struct, forbid_unknown_fields=True, frozen=True):
    """The most that a mated pair loses up to a frequency; of kind `standard` it is guaranteed.

    Reflection is included, as by the method of MIL-PRF-39012E, 4.6.24.
    """

    loss_db: Annotated[Quantity, Unit("dB", 1e-3, 10), Words("Insertion loss, at most")]
    at_frequency_hz: Annotated[Frequency, Words("Insertion loss holds to")]


class Interface(Struct, forbid_unknown_fields=True, frozen=True):
    """One interface family; geometry is that of the mating plane."""

    id: Id
    name: Name
    order: Order
    summary: Annotated[Text, Words("In one sentence")]
    also_called: Names

    nominal_impedance_ohm: Annotated[Quantity, Unit("Ω", 10, 300), ELECTRICAL]
    constant_impedance: Annotated[bool, ELECTRICAL]
    inner_diameter_m: Annotated[
        Quantity, Unit("m", 1e-05, 0.2), Words("Inner diameter", "Of the inner conductor at the mating plane"), SIZE
    ]
    outer_diameter_m: Annotated[
        Quantity,
        Unit("m", 0.0001, 0.5),
        Words("Outer diameter", "Bore of the outer conductor at the mating plane"),
        SIZE,
    ]
    dielectric: Annotated[Label, SIZE]
    section_length_m: Annotated[
        Quantity,
        Unit("m", 0.0001, 1),
        Words("Length of the mated pair", "Plug and jack joined, from cable to cable"),
        SIZE,
    ]
    bead_length_m: Annotated[
        Quantity, Unit("m", 1e-05, 1), Words("Length of its beads", "Solid supports of both halves together"), SIZE
    ]
    bead_material: Annotated[Label, SIZE]
    body_diameter_m: Annotated[Quantity, Unit("m", 0.001, 1), SIZE]
    body_length_m: Annotated[Quantity, Unit("m", 0.001, 1), SIZE]
    inner_plating: Annotated[Label, Words("Plating inside", "Of the centre contact"), SIZE]
    outer_plating: Annotated[Label, Words("Plating outside", "Of the body"), SIZE]

    rated_frequency_hz: Annotated[Interval, Unit("Hz", 1e06, 2e11), ELECTRICAL]
    vswr_limit: Annotated[VswrLimit, ELECTRICAL]
    vswr_typical: Annotated[Quantity, Unit("1", 1.001, 10), Words("Usual VSWR", "Of a good mated pair"), ELECTRICAL]
    insertion_loss: Annotated[InsertionLoss, ELECTRICAL]

    working_voltage_rms_v: Annotated[Interval, Unit("V", 1, 100000), ELECTRICAL]
    proof_voltage_rms_v: Annotated[Interval, Unit("V", 1, 200000), ELECTRICAL]
    centre_contact_resistance_ohm: Annotated[Interval, Unit("Ω", 1e-06, 1, "mΩ"), ELECTRICAL]
    outer_contact_resistance_ohm: Annotated[Interval, Unit("Ω", 1e-06, 1, "mΩ"), ELECTRICAL]
    average_power: Annotated[
        list[PowerRating],
        Meta(max_length=100),
        Words("Power rating", "What is stated for it; held against what is computed"),
        HEAT,
    ]
    lowest_temperature_c: Annotated[Quantity, Unit("°C", -100, 100), HEAT]
    highest_temperature_c: Annotated[Quantity, Unit("°C", 20, 500), HEAT]

    durability_matings: Annotated[Interval, Unit("matings", 1, 1e06), Words("Matings it stands"), WEAR]
    coupling: Annotated[Label, WEAR]
    coupling_torque_nm: Annotated[Interval, Unit("N·m", 0, 500), WEAR]
    sealing_mated: Annotated[Label, Words("Sealing when mated", "None, or an IP code such as IP67"), WEAR]
    exposure_mated: Annotated[Exposure, Words("Weather it stands when mated"), WEAR]
    vibration: Annotated[Label, Words("Shaking it stands"), WEAR]
    cable_diameter_m: Annotated[Interval, Unit("m", 0.0001, 0.2), Words("Cables it takes, diameter"), FITS]
    gender: Annotated[Label, Words("Plug and jack", "How to tell one from the other"), FITS]
    receive_only: Annotated[bool, ELECTRICAL]
    receive_only_reason: Annotated[Text, Words("Why it is for receiving only"), ELECTRICAL] = ""
    stainless_torque_nm: Annotated[
        Interval | None, Unit("N·m", 0, 500), Words("Coupling torque of stainless parts"), WEAR
    ] = None
    """Of parts of stainless steel, where `coupling_torque_nm` is that of brass; left out, one range holds for both."""
    tightened_by: Annotated[Label | None, WEAR] = None
    """Left out, a threaded coupling is tightened by a torque wrench."""
    customary_cable: Annotated[
        Label | None, Words("Customary cable", "Left out, the thickest of like impedance that it takes"), FITS
    ] = None
    generous_dielectric: Annotated[Label | None, Words("Dielectric of better parts"), SIZE] = None
    """That of the better parts sold, where `dielectric` is that of the worse."""
    generous_bead_material: Annotated[Label | None, Words("Bead material of better parts"), SIZE] = None
    """That of the better parts sold, where `bead_material` is that of the worse."""
    section: Annotated[Section | None, Words("As a section of line"), ELECTRICAL] = None
    everyday_cable_diameter_m: Annotated[
        Interval | None, Unit("m", 0.0001, 0.2), Words("Cables the trade puts it on, diameter"), FITS
    ] = None
    """Of the cables the trade puts it on unasked; left out, of all it is made for."""
    everyday_lowest_frequency_hz: Annotated[
        Quantity | None, Unit("Hz", 1e04, 2e11), Words("The trade fits it from"), FITS
    ] = None
    """From where on the trade fits it unasked; left out, at any frequency."""
    everyday_highest_power_w: Annotated[
        Quantity | None, Unit("W", 1e-3, 1e6), Words("The trade fits it up to"), FITS
    ] = None
    """Up to where the trade fits it unasked; left out, as far as its limits go."""
    special_use: Annotated[Label | None, Words("What it is made for"), FITS] = None
    """What it is made for, where that isn't the everyday joint of a station."""
    typed_as: TypedNames = []

    @property
    def everyday_names(self) -> str:
        """The everyday names of plug and jack, "PL-259 / SO-239"; empty where they have none of their own."""
        return next((name for name in self.also_called if EVERYDAY_MARK in name), "")

    @property
    def spoken_name(self) -> str:
        """Its name with the everyday ones: "UHF (PL-259 / SO-239)"."""
        return f"{self.name} ({self.everyday_names})" if self.everyday_names else self.name


class Mating(Struct, forbid_unknown_fields=True, frozen=True):
    """A plug and a jack of two different families that meet in practice, and what comes of it.

    With `either_way` it holds for the other family's plug and jack as well.
    """

    id: Id
    plug: Annotated[Id, Words("Plug of")]
    jack: Annotated[Id, Words("Jack of")]
    verdict: Literal["mates", "mates with care", "not held", "no contact", "does not fit", "damages"]
    text: Annotated[Text, Words("What comes of it")]
    source: Named
    kind: Kind
    either_way: Annotated[bool, Words("The same for the other family's plug and jack")] = False


class AdapterFigures(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """What a data sheet states for an adapter to one of the families, matched, up to a frequency.

    Evidence, which the loss computed for its two joints is held against.
    """

    to: Id
    loss_db: Annotated[Annotated[float, Meta(ge=0, le=20, extra=_unit("dB"))] | None, Words("Insertion loss")] = None
    return_loss_db: Annotated[Annotated[float, Meta(ge=0, le=60, extra=_unit("dB"))] | None, Words("Return loss")] = (
        None
    )
    up_to_frequency_hz: Annotated[Frequency, Words("Up to")]
    source: Named
    kind: Kind
    note: Text = ""


class Adapter(Struct, forbid_unknown_fields=True, frozen=True):
    """What the trade sells with this family at one end: the families at the other, plug and jack either way.

    The family's own name stands for its barrels, plug to plug and jack to jack.
    """

    id: Id
    joins: Annotated[list[Id], Meta(min_length=1, max_length=50), Words("At the other end")]
    source: Named
    kind: Kind
    figures: Annotated[list[AdapterFigures], Meta(max_length=100), Words("Figure of a data sheet")] = []


class BandEdges(Struct, forbid_unknown_fields=True, frozen=True):
    """Band edges in one ITU Region."""

    low_hz: Annotated[Frequency, Words("From")]
    high_hz: Annotated[Frequency, Words("To")]
    source: Named
    kind: Kind
    note: Text = ""


class Band(Struct, forbid_unknown_fields=True, frozen=True):
    """An amateur band; a Region without an allocation is left out of `regions`."""

    id: Id
    name: Name
    regions: Annotated[dict[Literal["1", "2", "3"], BandEdges], Words("Region")]
    typed_as: TypedNames = []


class Mode(Struct, forbid_unknown_fields=True, frozen=True):
    """An emission mode: mean over peak power while keyed, and the rhythm of its overs."""

    id: Id
    name: Name
    duty_factor: Annotated[Quantity, Unit("1", 1e-3, 1), Words("Duty factor", "Mean over peak power while keyed")]
    on_time_s: Annotated[Quantity | None, Unit("s", 0.01, 86400), Words("An over lasts")] = None
    off_time_s: Annotated[Quantity | None, Unit("s", 0.01, 86400), Words("and the pause after it")] = None
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
    db_per_m: Annotated[float, Meta(ge=1e-6, le=1000, extra=_unit("dB/m")), Words("Loss")]
    source: Named
    kind: Kind
    note: Text = ""
    fit: Annotated[bool, Words("Counts in the fit")] = True
    through: Annotated[bool, Words("Of a clad core")] = False


class CablePower(Struct, forbid_unknown_fields=True, frozen=True):
    """An average-power rating of a matched cable with its conditions.

    Evidence, which the computed heat limit is held against.
    """

    frequency_hz: Frequency
    power_w: Watts
    ambient_temperature_c: Annotated[Temperature, Words("Air temperature")]
    conductor_temperature_c: Annotated[Temperature, Words("Hottest conductor")]
    source: Named
    kind: Kind
    note: Text = ""


class CableBuild(Struct, forbid_unknown_fields=True, frozen=True):
    """What carries a cable's heat: the sizes of its layers from the inside out, and what they are made of.

    Metals and plastics are ids of the materials.
    """

    inner_diameter_m: Annotated[
        Quantity, Unit("m", 1e-05, 0.1), Words("Inner conductor, diameter", "Over the strands where it is stranded")
    ]
    dielectric_diameter_m: Annotated[Quantity, Unit("m", 1e-04, 0.2), Words("Insulation, diameter")]
    screen_diameter_m: Annotated[Quantity, Unit("m", 1e-04, 0.2), Words("Outer conductor, diameter")]
    inner_area_m2: Annotated[Quantity, Unit("m²", 1e-09, 0.01), Words("Inner conductor, metal", "In a cross-section")]
    screen_area_m2: Annotated[Quantity, Unit("m²", 1e-09, 0.01), Words("Outer conductor, metal", "In a cross-section")]
    inner_metal: Annotated[Label, Words("Inner conductor is of")]
    screen_metal: Annotated[Label, Words("Outer conductor is of")]
    jacket_material: Annotated[Label | None, Words("Jacket is of", "Left out, the outer conductor is bare")] = None


class Cable(Struct, forbid_unknown_fields=True, frozen=True):
    """One coaxial cable, or one class of like cables."""

    id: Id
    name: Name
    order: Order
    summary: Annotated[Text, Words("In one sentence")]
    also_called: Names
    dielectric: Annotated[Id, SIZE]
    construction: Annotated[Literal["solid", "stranded", "semi-rigid", "corrugated"], Words("Construction"), SIZE]
    outdoor_use: Annotated[Exposure, Words("Weather it stands"), WEAR]

    impedance_ohm: Annotated[Quantity, Unit("Ω", 10, 300), ELECTRICAL]
    velocity_factor: Annotated[Quantity, Unit("1", 0.2, 1), ELECTRICAL]
    capacitance_f_per_m: Annotated[Quantity, Unit("F/m", 1e-12, 1e-09), ELECTRICAL]
    outer_diameter_m: Annotated[Quantity, Unit("m", 0.0001, 0.5), SIZE]
    centre_conductor: Annotated[Label, SIZE]
    jacket: Annotated[Label, SIZE]

    attenuation_temperature_c: Annotated[Quantity, Unit("°C", -50, 150), Words("Attenuation holds at"), ELECTRICAL]
    attenuation: Annotated[
        list[Attenuation],
        Meta(min_length=2, max_length=100),
        Words("Attenuation", "At two frequencies at least"),
        ELECTRICAL,
    ]
    power: Annotated[
        list[CablePower],
        Meta(max_length=100),
        Words("Power rating", "What is stated for it; held against what is computed"),
        HEAT,
    ]
    working_voltage_rms_v: Annotated[Interval, Unit("V", 1, 100000), ELECTRICAL]
    lowest_temperature_c: Annotated[Quantity, Unit("°C", -100, 100), HEAT]
    highest_temperature_c: Annotated[Quantity, Unit("°C", 20, 500), HEAT]
    fixed_bend_radius_m: Annotated[Quantity, Unit("m", 0.001, 20), Words("Bend radius, fixed"), WEAR]
    repeated_bend_radius_m: Annotated[Quantity | None, Unit("m", 0.001, 20), Words("Bend radius, repeated"), WEAR] = (
        None
    )
    inner_resistance_ohm_per_m: Annotated[Quantity | None, Unit("Ω/m", 1e-06, 100), ELECTRICAL] = None
    outer_resistance_ohm_per_m: Annotated[Quantity | None, Unit("Ω/m", 1e-06, 100), ELECTRICAL] = None
    build: Annotated[
        CableBuild | None,
        Words(
            "Layers", "Left out, those of the nearest cable of like insulation and impedance, scaled to its diameter"
        ),
        SIZE,
    ] = None
    fit_note: Annotated[Text, Words("Note on the fit"), ELECTRICAL] = ""
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
    summary: Annotated[Text, Words("In one sentence")]
    also_called: Names
    construction: Annotated[Literal["window", "ribbon", "open wire"], Words("Construction"), SIZE]
    outdoor_use: Annotated[Exposure, Words("Weather it stands"), WEAR]

    impedance_ohm: Annotated[Quantity, Unit("Ω", 50, 1000), ELECTRICAL]
    velocity_factor: Annotated[Quantity, Unit("1", 0.2, 1), ELECTRICAL]
    wire: Annotated[Label, SIZE]
    wet: Annotated[Label, Words("Wet", "What rain and ice do to it"), WEAR]
    attenuation_temperature_c: Annotated[Quantity, Unit("°C", -50, 150), Words("Attenuation holds at"), ELECTRICAL]
    attenuation: Annotated[
        list[Attenuation],
        Meta(min_length=2, max_length=100),
        Words("Attenuation", "At two frequencies at least"),
        ELECTRICAL,
    ]
    working_voltage_rms_v: Annotated[Interval, Unit("V", 1, 100000), ELECTRICAL]
    lowest_temperature_c: Annotated[Quantity, Unit("°C", -100, 100), HEAT]
    highest_temperature_c: Annotated[Quantity, Unit("°C", 20, 500), HEAT]
    wire_diameter_m: Annotated[Quantity | None, Unit("m", 1e-05, 0.1), SIZE] = None
    """Over the strands where it is stranded."""
    spacing_m: Annotated[Quantity | None, Unit("m", 1e-04, 2), Words("Spacing", "Between the wires' middles"), SIZE] = (
        None
    )
    fit_note: Annotated[Text, Words("Note on the fit"), ELECTRICAL] = ""
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
    title: Annotated[str, Meta(min_length=1, max_length=300), Words("Title of the source")]
    seen: Annotated[Literal["read", "as quoted", "from memory", "computed"], Words("How it was seen")]
    address: Annotated[
        str,
        Words("Web address"),
        Meta(
            pattern=ADDRESS,
            max_length=300,
            extra={"allowed": "an address that begins with https:// or http://, at most 300 characters"},
        ),
    ] = ""
    body: Annotated[str, Meta(max_length=100), Words("By whom")] = ""
    """Its author or the body that publishes it; empty where that was not seen, as in the two below."""
    year: Annotated[str, Meta(max_length=60)] = ""
    """When, as exactly as it is known; of an edition where there are several."""
    place: Annotated[str, Meta(max_length=100), Words("Page or table")] = ""
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
    power_w: Annotated[float, Meta(ge=0, le=1e5, extra=_unit("W")), Words("At most, in PEP")]
    reason: Annotated[str, Meta(min_length=1, max_length=300), Words("Because")]
    source: Named
    kind: Kind
    interfaces: Annotated[list[Id], Meta(max_length=100), Words("Through", "None chosen: all")] = []
    bands: Annotated[list[Id], Meta(max_length=100), Words("On", "None chosen: all")] = []


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
    today: str = ""
    """The text of a pack of an earlier version in today's shape; empty for one that has it."""


class Assumption(Struct, forbid_unknown_fields=True, frozen=True):
    """A number the physics needs beside the interface itself."""

    id: Id
    name: str
    unit: str
    quantity: Quantity
    """The cautious figure where `generous` is another."""
    generous: Quantity | None = None
