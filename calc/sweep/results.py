"""What the core answers about a sweep. Units are in the keys; null where there is no finite number.

Reflections are voltages against the forward wave's. `joints` follow the line from the analyser;
`element` is the index in the request.
"""

from typing import Literal

from msgspec import Struct

from ..formulas.formula import Step

__all__ = [
    "Candidate",
    "Deviation",
    "DistanceProfile",
    "Finding",
    "FittedSize",
    "LineCheck",
    "PartCheck",
    "ReflectionCurves",
    "SweepResult",
    "SweptJoint",
    "Trend",
]

Numbers = list[float | None]
Finding = Literal["sound", "suspect", "unclear", "no fit"]


class FittedSize(Struct, frozen=True):
    """One size of a fault, with its bounds of one standard deviation."""

    name: str
    unit: str
    value: float
    low: float
    high: float


class Candidate(Struct, frozen=True):
    """One fault at one joint that explains the sweep."""

    element: int
    joint: str
    kind: str
    name: str
    sizes: list[FittedSize]
    evidence: float
    """Fall of the Bayesian information criterion against a sound line."""
    misfit: float
    """What it leaves unexplained, rms of the reflection."""


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
    """The excess is above the threshold and not the suspect's shadow."""
    nearest_m: float | None
    """To the nearest other joint; null of a lone joint."""
    resolution_m: float
    separate: bool
    """Farther from every other joint than the resolution."""
    least_resistance_ohm: float | None
    """The smallest added resistance this sweep would show; null where it shows none."""
    probability: float
    """Of being the one that is bad, if one is; 0 where nothing is found."""


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


class LineCheck(Struct, frozen=True):
    """A one-port sweep against its line."""

    finding: Finding
    suspect: int | None
    """Element of the joint named."""
    probability: float | None
    candidates: list[Candidate]
    """Best first; those the sweep can't tell from the best, and the best of other joints."""
    apart: list[int]
    """Elements of the joints that the sweep does not distinguish."""
    joints: list[SweptJoint]
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

    passed: bool
    loss_passed: bool
    match_passed: bool
    worst_loss_margin_db: float | None
    """Limit less measured loss, where it is smallest."""
    worst_loss_at_hz: float | None
    worst_match_margin_db: float | None
    worst_match_at_hz: float | None
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


class SweepResult(Struct, frozen=True):
    """What a sweep tells; one of `line` and `part` is given."""

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
    steps: list[Step]
    cautions: list[str]
