"""The shape of the catalogue: every value with its source and kind.

A field's unit stands here, once, and travels with the value in every answer.
An `Interval` holds the lowest and the highest credible figure; where only one
figure is known both ends repeat it.
"""

from typing import Annotated, Literal

from msgspec import Meta, Struct

__all__ = [
    "Adapter",
    "Assumption",
    "Attenuation",
    "Band",
    "BandEdges",
    "Cable",
    "CableDielectric",
    "CablePower",
    "Condition",
    "Installation",
    "Interface",
    "Interval",
    "Label",
    "Material",
    "Mating",
    "Mode",
    "NoiseEnvironment",
    "PowerRating",
    "Quantity",
    "Source",
]

Kind = Literal["standard", "datasheet", "handbook", "common practice", "memory"]
Id = Annotated[str, Meta(pattern="^[a-z0-9_]+$", max_length=40)]


class Quantity(Struct, forbid_unknown_fields=True, frozen=True):
    """One number with where it comes from."""

    value: float
    source: str
    kind: Kind
    note: str = ""


class Interval(Struct, forbid_unknown_fields=True, frozen=True):
    """The lowest and the highest credible figure, each with its source."""

    low: Quantity
    high: Quantity


class Label(Struct, forbid_unknown_fields=True, frozen=True):
    """One word or phrase with where it comes from."""

    value: str
    source: str
    kind: Kind
    note: str = ""


class PowerRating(Struct, forbid_unknown_fields=True, frozen=True):
    """An average-power rating together with the conditions it holds under."""

    power_w: Annotated[float, Meta(gt=0)]
    frequency_hz: Annotated[float, Meta(gt=0)]
    ambient_temperature_c: float
    contact_temperature_c: float
    altitude_m: float
    source: str
    kind: Kind
    note: str = ""


class PowerRatings(Struct, forbid_unknown_fields=True, frozen=True):
    """The most cautious and the most generous credible rating."""

    low: PowerRating
    high: PowerRating


class Section(Struct, forbid_unknown_fields=True, frozen=True):
    """A mated pair without constant impedance, as a short line section."""

    impedance_ohm: Interval
    electrical_length_m: Interval


class VswrLimit(Struct, forbid_unknown_fields=True, frozen=True):
    """The greatest VSWR allowed: at_dc + slope_per_hz * frequency."""

    at_dc: Quantity
    slope_per_hz: Quantity


class InsertionLoss(Struct, forbid_unknown_fields=True, frozen=True):
    """The guaranteed loss of a mated pair, reflection included, growing with the square root of frequency."""

    loss_db: Quantity
    at_frequency_hz: Annotated[float, Meta(gt=0)]


def Unit(unit: str) -> Meta:
    """The unit that travels with a field."""
    return Meta(extra={"unit": unit})


class Interface(Struct, forbid_unknown_fields=True, frozen=True):
    """One interface family; geometry is that of the mating plane."""

    id: Id
    name: str
    order: int
    summary: str
    also_called: list[str]

    nominal_impedance_ohm: Annotated[Quantity, Unit("Ω")]
    constant_impedance: bool
    inner_diameter_m: Annotated[Quantity, Unit("m")]
    outer_diameter_m: Annotated[Quantity, Unit("m")]
    dielectric: Label
    section_length_m: Annotated[Quantity, Unit("m")]
    bead_length_m: Annotated[Quantity, Unit("m")]
    bead_material: Label
    body_diameter_m: Annotated[Quantity, Unit("m")]
    body_length_m: Annotated[Quantity, Unit("m")]
    inner_plating: Label
    outer_plating: Label

    rated_frequency_hz: Annotated[Interval, Unit("Hz")]
    vswr_limit: VswrLimit
    vswr_typical: Annotated[Quantity, Unit("1")]
    insertion_loss: InsertionLoss

    working_voltage_rms_v: Annotated[Interval, Unit("V")]
    proof_voltage_rms_v: Annotated[Interval, Unit("V")]
    altitude_voltage_rms_v: Annotated[Quantity, Unit("V")]
    centre_contact_resistance_ohm: Annotated[Interval, Unit("Ω")]
    outer_contact_resistance_ohm: Annotated[Interval, Unit("Ω")]
    average_power: PowerRatings
    lowest_temperature_c: Annotated[Quantity, Unit("°C")]
    highest_temperature_c: Annotated[Quantity, Unit("°C")]
    thermal_time_constant_s: Annotated[Interval, Unit("s")]

    durability_matings: Annotated[Interval, Unit("matings")]
    coupling: Label
    coupling_torque_nm: Annotated[Interval, Unit("N·m")]
    sealing_mated: Label
    exposure_mated: Literal["indoor", "sheltered", "exposed", "immersed"]
    vibration: Label
    cable_diameter_m: Annotated[Interval, Unit("m")]
    cable_conductor_area_m2: Annotated[Quantity, Unit("m²")]
    gender: Label
    receive_only: bool
    receive_only_reason: str = ""
    section: Section | None = None


class Mating(Struct, forbid_unknown_fields=True, frozen=True):
    """A plug and a jack of two different families that meet in practice, and what comes of it.

    With `either_way` it holds for the other family's plug and jack as well.
    """

    id: Id
    plug: Id
    jack: Id
    verdict: Literal["mates", "mates with care", "not held", "no contact", "does not fit", "damages"]
    text: str
    source: str
    kind: Kind
    either_way: bool = False


class Adapter(Struct, forbid_unknown_fields=True, frozen=True):
    """What the trade sells with this family at one end: the families at the other, plug and jack either way.

    The family's own name stands for its barrels, plug to plug and jack to jack.
    """

    id: Id
    joins: list[Id]
    source: str
    kind: Kind


class BandEdges(Struct, forbid_unknown_fields=True, frozen=True):
    """Band edges in one ITU Region."""

    low_hz: float
    high_hz: float
    source: str
    kind: Kind
    note: str = ""


class Band(Struct, forbid_unknown_fields=True, frozen=True):
    """An amateur band; a Region without an allocation is left out of `regions`."""

    id: Id
    name: str
    regions: dict[str, BandEdges]


class Mode(Struct, forbid_unknown_fields=True, frozen=True):
    """An emission mode: mean over peak power while keyed, and the rhythm of its overs."""

    id: Id
    name: str
    duty_factor: Quantity
    on_time_s: Quantity | None = None
    off_time_s: Quantity | None = None
    note: str = ""


class Material(Struct, forbid_unknown_fields=True, frozen=True):
    """A conductor (conductivity, permeability) or a dielectric (permittivity, loss, heat conduction)."""

    id: Id
    name: str
    conductivity_s_per_m: Annotated[Quantity | None, Unit("S/m")] = None
    relative_permeability: Annotated[Quantity | None, Unit("1")] = None
    relative_permittivity: Annotated[Quantity | None, Unit("1")] = None
    loss_tangent: Annotated[Quantity | None, Unit("1")] = None
    thermal_conductivity_w_per_m_k: Annotated[Quantity | None, Unit("W/(m·K)")] = None


class CableDielectric(Struct, forbid_unknown_fields=True, frozen=True):
    """Cable insulation and the hottest its centre conductor may get."""

    id: Id
    name: str
    highest_temperature_c: Annotated[Quantity, Unit("°C")]


class Attenuation(Struct, forbid_unknown_fields=True, frozen=True):
    """A published loss of a matched cable at one frequency; without `fit` it is held out to check the fit."""

    frequency_hz: Annotated[float, Meta(gt=0)]
    db_per_m: Annotated[float, Meta(gt=0)]
    source: str
    kind: Kind
    note: str = ""
    fit: bool = True


class CablePower(Struct, forbid_unknown_fields=True, frozen=True):
    """An average-power rating of a matched cable with its conditions.

    Where sources differ, `end` tells the cautious figure from the generous one.
    Between the frequencies a cable stands the same heat per metre.
    """

    frequency_hz: Annotated[float, Meta(gt=0)]
    power_w: Annotated[float, Meta(gt=0)]
    ambient_temperature_c: float
    conductor_temperature_c: float
    source: str
    kind: Kind
    note: str = ""
    end: Literal["both", "low", "high"] = "both"


class Cable(Struct, forbid_unknown_fields=True, frozen=True):
    """One coaxial cable, or one class of like cables."""

    id: Id
    name: str
    order: int
    summary: str
    also_called: list[str]
    dielectric: Id
    construction: Literal["solid", "stranded", "semi-rigid", "corrugated"]
    outdoor_use: Literal["indoor", "sheltered", "exposed", "immersed"]

    impedance_ohm: Annotated[Quantity, Unit("Ω")]
    velocity_factor: Annotated[Quantity, Unit("1")]
    capacitance_f_per_m: Annotated[Quantity, Unit("F/m")]
    outer_diameter_m: Annotated[Quantity, Unit("m")]
    centre_conductor: Label
    jacket: Label

    attenuation_temperature_c: Annotated[Quantity, Unit("°C")]
    attenuation: Annotated[list[Attenuation], Meta(min_length=2)]
    power: Annotated[list[CablePower], Meta(min_length=1)]
    working_voltage_rms_v: Annotated[Interval, Unit("V")]
    lowest_temperature_c: Annotated[Quantity, Unit("°C")]
    highest_temperature_c: Annotated[Quantity, Unit("°C")]
    fixed_bend_radius_m: Annotated[Quantity, Unit("m")]
    repeated_bend_radius_m: Annotated[Quantity | None, Unit("m")] = None
    inner_resistance_ohm_per_m: Annotated[Quantity | None, Unit("Ω/m")] = None
    outer_resistance_ohm_per_m: Annotated[Quantity | None, Unit("Ω/m")] = None
    fit_note: str = ""
    """Why the fit leaves much, or ends where it does."""


class Installation(Struct, forbid_unknown_fields=True, frozen=True):
    """A way a station is put up, and the weather and shaking that come with it at least."""

    id: Id
    name: str
    least_exposure: Label
    least_vibration: Label


class Condition(Struct, forbid_unknown_fields=True, frozen=True):
    """State of the contacts and the resistance it adds at the centre contact."""

    id: Id
    name: str
    added_resistance_ohm: Annotated[Quantity, Unit("Ω")]


class NoiseEnvironment(Struct, forbid_unknown_fields=True, frozen=True):
    """Median external noise of a kind of place, c - d log10(f/MHz) over k T_0 b, and its spread in time."""

    id: Id
    name: str
    median_at_1_mhz_db: Annotated[Quantity, Unit("dB")]
    fall_per_decade_db: Annotated[Quantity, Unit("dB")]
    upper_decile_db: Annotated[Quantity, Unit("dB")]
    lower_decile_db: Annotated[Quantity, Unit("dB")]
    frequency_hz: Annotated[Interval, Unit("Hz")]


class Source(Struct, forbid_unknown_fields=True, frozen=True):
    """Where a value or a formula comes from, and how it was seen."""

    id: str
    title: str
    seen: Literal["read", "as quoted", "from memory", "computed"]
    address: str = ""


class Assumption(Struct, forbid_unknown_fields=True, frozen=True):
    """A number the physics needs beside the interface itself."""

    id: Id
    name: str
    unit: str
    quantity: Quantity
