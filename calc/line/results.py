"""What the core answers about a line. Units are in the keys; null stands where there is no finite number.

`parts` follow the chain from the transmitter: one for each element, and two
for an adapter, one at either end; `element` is the index in the request.
Margins, voltages, currents and temperatures are those of the cautious ratings,
losses and impedances those expected of good parts.
"""

from typing import Literal

from msgspec import Struct

from ..feedline.elements import Element
from ..feedline.link import LinkKind
from ..feedline.tuner_state import TunerState
from ..formulas.formula import Step
from ..numeric.json_numbers import Numbers
from ..physics.columns import Column
from ..physics.limits import LimitId

__all__ = [
    "BandLine",
    "Change",
    "ChangeStep",
    "Edit",
    "LinePart",
    "LineResult",
    "LineSweep",
    "Reception",
    "ReceptionCost",
    "StandingWave",
    "Terminal",
    "TransmitterState",
]


class Terminal(Struct, frozen=True):
    """What is seen into one end of the line or the antenna; no impedance where the phase is not known."""

    vswr: float | None
    return_loss_db: float | None
    resistance_ohm: float | None
    reactance_ohm: float | None


class TransmitterState(Struct, frozen=True):
    """What the transmitter sends at the load it looks at."""

    name: str
    holds_to_vswr: float | None
    """It folds back beyond; null where it holds at any."""
    set_w: float
    forward_w: float
    """As expected of good parts,"""
    forward_low_w: float
    """and by the cautious figures, whatever the load's phase."""
    folded: bool
    sentence: str
    """Empty where it sends what is set and would be expected to."""


class LinePart(Struct, frozen=True):
    """One part of the chain under the line's power at the frequency looked at."""

    element: int
    kind: LinkKind
    name: str
    family: str | None
    pack: str
    """Name of the pack its family or cable comes from; empty for a built-in one."""
    distance_m: float
    """Of its transmitter end from the transmitter, along cables and other runs of line."""
    loss_db: float | None
    """Power in over power out, as the waves stand; all parts and the mismatch add up to the line's loss."""
    matched_loss_db: float | None
    """The same between ends that match the part."""
    lost_w: float | None
    forward_w: float | None
    reflected_w: float | None
    vswr: float | None
    peak_voltage_v: float | None
    allowed_voltage_v: float | None
    peak_current_a: float | None
    temperature_c: float | None
    allowed_temperature_c: float | None
    margin_db: float | None
    margin_high_db: float | None
    undecided: bool
    binding: LimitId | None
    margin_by_limit_db: dict[LimitId, float | None]
    """Of the limits it has: its heat, by what heats (contact, cable, rating), and voltage."""
    return_loss_db: float | None
    """Of the part alone, by the cautious figures; null for what is meant to be of an impedance of its own."""
    largest_power_w: float | None
    reads_vswr: list[float | None] | None
    """Least and most that a meter of known directivity shows for what lies behind it; null for every other part, and in
    it where the reading has no end."""
    tuner: TunerState | None
    """How a tuner is set, by what is expected; null for every other part."""
    refused_by: str | None
    refusal: str
    marks: list[str]
    """A sentence for each soft gate that fails, and each other doubt."""


class StandingWave(Struct, frozen=True):
    """Peak voltage and current along cables and other runs of line, from the transmitter."""

    distance_m: list[float]
    voltage_v: Numbers
    current_a: Numbers
    half_waves: float
    """How many the cables hold in all."""
    voltage_low_v: Numbers | None
    """Of a line of many half waves, and of one whose load has an unknown phase, the least that the wave comes to
    around a place, or at it; `voltage_v` is then the most."""
    current_low_a: Numbers | None


class LineSweep(Struct, frozen=True):
    """The line over all bands of the Region: points within each band, in order."""

    band: list[str]
    frequency_hz: list[float]
    loss_db: Numbers
    vswr: Numbers
    margin_db: Numbers
    loss_high_db: Numbers
    """By the cautious figures, as `vswr_high`."""
    vswr_high: Numbers


class BandLine(Struct, frozen=True):
    """The worst of one band."""

    column: Column
    loss_db: float | None
    vswr: float | None
    loss_high_db: float | None
    vswr_high: float | None
    margin_db: float | None
    margin_high_db: float | None
    weakest: int | None
    """Index into `parts`."""
    binding: LimitId | None
    largest_power_w: float | None
    refused: list[int]
    """Indexes into `parts` of joints a hard gate refuses here."""


class ReceptionCost(Struct, frozen=True):
    """Signal-to-noise ratio one part gives away [dB]; `part` is null for the mismatch at the antenna."""

    part: int | None
    name: str
    cost_db: float | None


class Reception(Struct, frozen=True):
    """The line in receive, at the frequency looked at and over the bands."""

    environment: str
    heard: str
    """What the noise that comes in is taken from, in words."""
    external_noise_db: float | None
    system_noise_db: float | None
    antenna_temperature_k: float | None
    """The external noise as a temperature."""
    system_temperature_k: float | None
    """Of antenna, line and receiver together, referred to the antenna."""
    costs: list[ReceptionCost]
    whole_cost_db: float | None
    """Of the whole line, against a receiver at the antenna; below 0 where the preamplifier wins more."""
    bands: list[str]
    half_decibel_cost_by_band_db: Numbers
    """What half a decibel more of loss at the antenna would cost: next to nothing on short wave, much above."""
    whole_cost_by_band_db: Numbers
    costs_by_band_db: list[Numbers]
    """[cost][band], in the order of `costs`."""


class ChangeStep(Struct, frozen=True):
    """One part of the line, and what is done with it."""

    part: int
    """Index into `parts`; of what is inserted, of the part it stands in front of."""
    element: int
    to: str | None
    """Id of the family or cable that it becomes; null where it is left out, or is neither."""
    name: str
    action: Literal["exchange", "remove", "insert"]


class Edit(Struct, frozen=True):
    """One edit of the request's elements; `at` counts them as they were, so edits are made from the last to the first.

    The element takes the place of the one there, or with `insert` stands before it; null removes it.
    """

    at: int
    element: Element | None
    insert: bool = False


class Change(Struct, frozen=True):
    """One change whose every part passes the gates, and what that brings over the spread of what is not known."""

    steps: list[ChangeStep]
    title: str
    gained_db: float | None
    """More at the antenna: the median,"""
    gained_low_db: float | None
    """the 10th"""
    gained_high_db: float | None
    """and the 90th percentile."""
    same: bool
    """No difference: what it brings lies within the spread, or nobody would notice it."""
    margin_gained_db: float | None
    """More on the smallest margin of the whole line; null where the line is refused as it is or is so then."""
    loss_db: float | None
    """Of the whole line, and its smallest margin, with the change made."""
    margin_db: float | None
    costs: list[str]
    """What it takes, in words."""
    edits: list[Edit]
    """What turns the request's elements into those of the changed line."""


class LineResult(Struct, frozen=True):
    """A line solved at one frequency, over the bands, and in receive."""

    column: Column
    frequency_hz: float
    power_w: float
    delivered_w: float | None
    delivered_low_w: float | None
    loss_db: float | None
    loss_high_db: float | None
    mismatch_db: float | None
    """What the transmitter's power set loses at the line's input, by reflection and where it folds back; 0 when net
    power is given."""
    transmitter: TransmitterState
    phase_known: bool
    """Whether the load can be but one way; else the cautious figures are of its worst and the others of the middle."""
    input: Terminal
    """As expected of good parts,"""
    input_cautious: Terminal
    """and by the cautious figures of every part."""
    antenna: Terminal
    margin_db: float | None
    margin_high_db: float | None
    undecided: bool
    weakest: int | None
    largest_power_w: float | None
    largest_power_set_by: int | None
    verdict: str
    notes: list[str]
    """A sentence on whatever of a measurement had to be mended."""
    parts: list[LinePart]
    standing_wave: StandingWave
    sweep: LineSweep
    bands: list[BandLine]
    reception: Reception
    changes: list[Change]
    steps: list[Step]
    cautions: list[str]
