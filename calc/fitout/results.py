"""What the core answers about fitting a line. Units are in the keys; null where there is no finite number."""

from typing import Literal

from msgspec import Struct

from ..catalogue.mating import Gender
from ..physics.columns import Column
from ..physics.gates import GateResult
from ..physics.scenario import Exposure

__all__ = [
    "Advice",
    "Bend",
    "Contact",
    "ContactLife",
    "FitoutResult",
    "GalvanicCheck",
    "Half",
    "InspectionPlan",
    "JointEnd",
    "JointLabel",
    "JointSheet",
    "Layer",
    "LineMeasurement",
    "NearRelative",
    "QuantityRow",
    "Sealing",
    "Torque",
    "WorkStep",
]

Contact = Literal["outer contacts", "centre contacts", "cable conductor", "cable screen"]
JointEnd = Literal["whole", "transmitter", "antenna"]
"""Which end of an adapter a mated pair is at; the whole where there is no adapter."""


class Advice(Struct, frozen=True):
    """One sentence of the trade with where it comes from."""

    text: str
    source: str
    kind: str


class Half(Struct, frozen=True):
    """One half of a mated pair: on a cable, on a device, or on the adapter."""

    half: Gender
    on: str
    cable: str | None
    cable_diameter_m: float | None
    """Size of the cable entry to order; null off a cable."""
    attachment: str
    """How it is put on its cable; empty off a cable."""


class WorkStep(Struct, frozen=True):
    """One step of the work; `at` names the cable it is done on, empty for the pair."""

    at: str
    text: str
    source: str
    kind: str


class Torque(Struct, frozen=True):
    """Coupling torque, lowest and highest credible; all 0 where there is nothing to tighten.

    Where brass and stainless steel differ the numbers are those of brass.
    """

    tightened_by: str
    """Hand, torque wrench or either; empty where there is nothing to tighten."""
    tightened: bool
    low_nm: float
    high_nm: float
    low_in_lb: float
    high_in_lb: float
    figures: str
    """Both units, by metal where it matters; empty where there is nothing to tighten."""
    sentence: str
    """The figures, and what the tool is where it is no torque wrench."""
    sources: list[str]
    kinds: list[str]
    notes: list[str]


class Layer(Struct, frozen=True):
    """A layer of tape, from the inside out, and the length of it one joint takes."""

    name: str
    text: str
    length_m: float
    source: str
    kind: str


class Sealing(Struct, frozen=True):
    """The weather the mated pair is fit for, what the site asks, and the layers that bring it there."""

    mated: str
    """IP code of IEC 60529, or "none"."""
    mated_meaning: list[Advice]
    stands_mated: Exposure
    stands_sealed: Exposure
    asked: Exposure
    refused: bool
    """Whether nothing that can be put on it makes it fit for the site."""
    sentence: str
    source: str
    kind: str
    preparation: list[Advice]
    layers: list[Layer]
    water: list[Advice]
    """Drip loop and drain."""


class Bend(Struct, frozen=True):
    """The smallest bends of a cable; `repeated_radius_m` is null where it may be bent only once."""

    cable: str
    name: str
    fixed_radius_m: float
    fixed_source: str
    fixed_kind: str
    repeated_radius_m: float | None
    repeated_source: str
    repeated_kind: str


class GalvanicCheck(Struct, frozen=True):
    """Two metals that can meet in the joint, and whether the exposure allows it."""

    contact: Contact
    one: str
    other: str
    difference_v: float
    limit_v: float
    passed: bool
    sentence: str
    sources: list[str]
    kinds: list[str]


class InspectionPlan(Struct, frozen=True):
    """When to inspect next and what to check; `due` is empty without a day of fitting."""

    interval_months: int
    due: str
    note: str
    source: str
    kind: str
    checks: list[Advice]


class ContactLife(Struct, frozen=True):
    """Matings against durability; `lasts_years` is null when it is never swapped."""

    matings_per_year: float
    durability_low: float
    durability_high: float
    lasts_years: float | None
    sentence: str
    source: str
    kind: str


class NearRelative(Struct, frozen=True):
    """Another family that meets this one badly."""

    family: str
    name: str
    verdict: str
    text: str
    source: str
    kind: str


class JointLabel(Struct, frozen=True):
    """What the label says; `fragment` opens the page at this joint's derivation."""

    name: str
    family: str
    date: str
    frequency_hz: float
    expected_loss_db: float
    expected_return_loss_db: float
    least_return_loss_db: float
    """That a part just within its standard has."""
    fragment: str


class JointSheet(Struct, frozen=True):
    """One mated pair. An adapter has two, one at either end."""

    number: int
    element: int
    end: JointEnd
    heading: str
    family: str
    family_name: str
    pack: str
    """Name of the pack the family comes from; empty for a built-in one."""
    exposure: Exposure
    halves: list[Half]
    """Towards the transmitter first."""
    gender: Advice
    adapter: str
    tools: list[Advice]
    steps: list[WorkStep]
    torque: Torque
    sealing: Sealing
    bends: list[Bend]
    relief: list[Advice]
    galvanic: list[GalvanicCheck]
    inspection: InspectionPlan
    wear: ContactLife
    near_relatives: list[NearRelative]
    warnings: list[GateResult]
    """Gates that fail even with the sealing of this sheet."""
    label: JointLabel


class LineMeasurement(Struct, frozen=True):
    """What to measure first and keep, with a good load at the antenna end, and what to expect."""

    frequency_hz: float
    load_ohm: float
    expected_loss_db: float | None
    expected_return_loss_db: float | None
    least_return_loss_db: float | None
    """Every joint just within its standard, all in step: below it, and below what the load has, something is wrong."""
    shorted_return_loss_db: float | None
    advice: list[Advice]


class QuantityRow(Struct, frozen=True):
    """One thing to have ready."""

    what: str
    family: str
    cable: str
    detail: str
    quantity: float
    unit: Literal["pieces", "m"]


class FitoutResult(Struct, frozen=True):
    """The sheets of a line, what to buy, and what to measure."""

    station: str
    date: str
    column: Column
    power_w: float
    joints: list[JointSheet]
    measurement: LineMeasurement
    bonding: list[Advice]
    """Empty for a line that stays indoors."""
    marks: list[str]
    """Doubts about a cable."""
    quantities: list[QuantityRow]
    cautions: list[str]
