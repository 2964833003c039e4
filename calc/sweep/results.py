"""What the core answers about a sweep. Units are in the keys; null where there is no finite number.

Reflections are voltages against the forward wave's. `joints` follow the line from the analyser;
`element` is the index in the request.
"""

from typing import Literal

from msgspec import Struct

from ..formulas.formula import Step

__all__ = [
    "AntennaEnd",
    "Candidate",
    "Deviation",
    "DistanceProfile",
    "Echo",
    "EchoCheck",
    "Finding",
    "FittedSize",
    "LineCheck",
    "NamedFault",
    "PartCheck",
    "PartFinding",
    "ReflectionCurves",
    "Sign",
    "State",
    "SweepResult",
    "SweptCable",
    "SweptJoint",
    "Trend",
    "Where",
]

Numbers = list[float | None]
Finding = Literal["sound", "suspect", "damage", "unclear", "end", "cannot tell", "no fit"]
State = Literal["bad", "possible", "behind", "hidden", "sound"]
Where = Literal["joint", "cable"]
Sign = Literal["higher", "lower", "mixed"]
PartFinding = Literal["passed", "failed", "cannot tell"]


class FittedSize(Struct, frozen=True):
    """One size of a fault, with its bounds of one standard deviation."""

    name: str
    unit: str
    value: float
    low: float
    high: float


class Candidate(Struct, frozen=True):
    """One fault at one place that explains the sweep."""

    element: int
    where: Where
    joint: str
    """Name of the joint or cable."""
    distance_m: float
    kind: str
    name: str
    sizes: list[FittedSize]
    evidence: float
    """Natural logarithm of the odds against a sound line."""
    reflection: float
    """How much of the reflection it makes, rms."""
    misfit: float
    """What it leaves unexplained, rms of the reflection."""


class NamedFault(Struct, frozen=True):
    """A fault that the verdict names."""

    element: int
    part: str
    where: Where
    distance_m: float
    low_m: float
    high_m: float
    kind: str
    name: str
    """What it does, in words."""
    likely: str
    """What it may be, in words; empty where the sweep can't tell."""
    sizes: list[FittedSize]
    probability: float
    """Of being here or beside it."""
    beside: list[int]
    """Elements of joints and cables too near to be told from it."""
    reflection: float
    """How much of the reflection it makes, rms."""


class SweptJoint(Struct, frozen=True):
    """One joint on the distance axis."""

    element: int
    name: str
    distance_m: float
    measured: float | None
    expected: float | None
    excess: float | None
    threshold: float | None
    change: float | None
    """Against the earlier sweep; null without one."""
    shadowed: bool
    """Behind the suspect, whose fault changes every echo beyond it."""
    seen: bool
    """The excess is above the threshold, and the verdict lays it to this joint."""
    nearest_m: float | None
    """To the nearest other joint; null of a lone joint."""
    resolution_m: float
    separate: bool
    """Farther from every other joint than the resolution."""
    least_resistance_ohm: float | None
    """The smallest added resistance this sweep would show; null where it shows none."""
    least_capacitance_f: float | None
    """The same of a capacitance across the line, as water makes one."""
    probability: float
    """Of being bad; 0 where nothing is found."""
    state: State
    words: str
    """The state as a short phrase."""


class SweptCable(Struct, frozen=True):
    """One cable on the distance axis."""

    element: int
    name: str
    from_m: float
    to_m: float
    state: State
    words: str


class DistanceProfile(Struct, frozen=True):
    """Reflection against distance, cable loss and velocity taken out; `earlier` is empty without such a sweep."""

    distance_m: list[float]
    measured: Numbers
    expected: Numbers
    earlier: Numbers
    threshold: Numbers


class ReflectionCurves(Struct, frozen=True):
    """Reflection at the analyser against frequency: measured, of the line as it should be, and as fitted."""

    frequency_hz: list[float]
    measured_db: Numbers
    expected_db: Numbers
    fitted_db: Numbers
    measured_real: Numbers
    measured_imaginary: Numbers
    fitted_real: Numbers
    fitted_imaginary: Numbers


class Deviation(Struct, frozen=True):
    """How far the fit moved a good part from its description, as a share, and how well that is known."""

    element: int
    part: str
    what: str
    share: float
    uncertainty: float
    usual: float
    """The usual deviation, as a share."""


class AntennaEnd(Struct, frozen=True):
    """The end of a line where far less power goes out in this sweep than the antenna is described to take."""

    element: int | None
    """Of the joint at the antenna, which may be what is bad; null where there is none."""
    lowest_vswr: float
    """Of the end, at its best in this sweep."""
    described_vswr: float
    at_hz: float


class LineCheck(Struct, frozen=True):
    """A one-port sweep against its line."""

    finding: Finding
    suspect: int | None
    """Element of the joint or cable named first."""
    probability: float | None
    """How sure it is of that."""
    faults: list[NamedFault]
    """The surest first; none unless one is named."""
    assumed: list[str]
    """What the verdict had to assume of the good parts, in sentences."""
    floor: float
    """Reflection, rms, that everyday lines leave unexplained: a smaller fault is not named."""
    candidates: list[Candidate]
    """Best first; those the sweep can't tell from the best, and the best of other joints."""
    apart: list[int]
    """Elements of the joints and cables that the sweep does not distinguish; at the end also not from the antenna."""
    end: AntennaEnd | None
    """Null unless the finding is that."""
    joints: list[SweptJoint]
    cables: list[SweptCable]
    transform: Literal["low-pass", "band-pass"]
    window_shape: float
    side_lobe_db: float
    resolution_m: float
    range_m: float
    length_m: float
    needed_top_hz: float | None
    """Upper edge of a sweep that separates the joints of `apart`; null where there are none, or all in one place."""
    noise: float
    """What the best explanation leaves, rms of the reflection."""
    deviations: list[Deviation]
    profile: DistanceProfile
    curves: ReflectionCurves


class Trend(Struct, frozen=True):
    """A two-port against an earlier sweep of it."""

    resistance_change_ohm: float
    uncertainty_ohm: float
    largest_loss_change_db: float
    at_hz: float
    sentence: str


class PartCheck(Struct, frozen=True):
    """A two-port sweep against what its parts should be."""

    finding: PartFinding
    """It can't tell where a limit is missed by less than a usual calibration leaves."""
    passed: bool
    loss_passed: bool
    match_passed: bool
    worst_loss_margin_db: float | None
    """Limit less measured loss, where it is smallest."""
    worst_loss_at_hz: float | None
    worst_match_margin_db: float | None
    worst_match_at_hz: float | None
    loss_uncertainty_db: float
    """What a usual calibration leaves of the loss, with that of the noise."""
    match_uncertainty: float
    """The same of the reflection."""
    resistance_ohm: float
    """One resistance in series that would explain the steady part of the excess loss."""
    resistance_uncertainty_ohm: float
    skin_excess_db_at_top: float
    """The part of the excess that grows with the root of frequency, at the upper edge."""
    trend: Trend | None
    frequency_hz: list[float]
    loss_db: Numbers
    expected_loss_db: Numbers
    limit_loss_db: Numbers
    excess_loss_db: Numbers
    return_loss_db: Numbers
    expected_return_loss_db: Numbers
    limit_return_loss_db: Numbers
    other_return_loss_db: Numbers
    """At port 2."""
    earlier_loss_db: Numbers
    measured_real: Numbers
    measured_imaginary: Numbers


class Echo(Struct, frozen=True):
    """One echo of a line of which nothing is described."""

    distance_m: float
    low_m: float
    high_m: float
    reflection: float
    """As a share of the wave sent; the cable's loss is in it."""
    sign: Sign
    """Of the impedance there against that before."""
    words: str
    """What it could be."""


class EchoCheck(Struct, frozen=True):
    """The echoes of a line of which only the velocity factor is given."""

    velocity_factor: float
    resolution_m: float
    range_m: float
    transform: Literal["low-pass", "band-pass"]
    echoes: list[Echo]
    """The nearest first."""
    profile: DistanceProfile


class SweepResult(Struct, frozen=True):
    """What a sweep tells; one of `line`, `part` and `echoes` is given."""

    ports: int
    points: int
    low_hz: float
    high_hz: float
    reference_ohm: float
    notes: list[str]
    verdict: str
    advice: list[str]
    line: LineCheck | None
    part: PartCheck | None
    echoes: EchoCheck | None
    steps: list[Step]
    cautions: list[str]
