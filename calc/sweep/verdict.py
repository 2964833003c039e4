"""What a sweep's answer says, in sentences."""

from itertools import pairwise

from ..feedline.elements import KnownEnd, Load
from ..numeric.rounding import significant
from ..numeric.units import engineering
from .results import Candidate, LineCheck, PartCheck, SweptJoint

__all__ = ["NOTHING_TO_COMPARE", "line_advice", "line_verdict", "part_verdict", "trend_sentence"]

CERTAIN = 3.0  # standard deviations from which on a resistance counts
WEAK_OHM = 2.0
"""A joint at which only more than this would show is one the sweep can hardly judge."""

NOTHING_TO_COMPARE = "The earlier sweep has no frequencies in common with this one."


def line_verdict(check: LineCheck) -> str:
    """The verdict of a one-port sweep."""
    joints = {joint.element: joint for joint in check.joints}
    if check.finding == "no fit":
        return (
            f"The sweep does not fit this line: {check.noise:.2g} of the reflection stays unexplained by any single"
            " fault. Check cables, lengths and what the line ended in, then look again."
        )
    if check.finding == "sound":
        return "No joint is worse than it should be, as far as this sweep can show."
    best = check.candidates[0]
    if check.finding == "suspect":
        sure = f"{check.probability:.0%}"
        return f"The bad joint is {_joint_words(joints[best.element])}, {sure} sure: {_fault_words(best)}."
    names = " or ".join(_joint_words(joints[element]) for element in check.apart)
    how = _how_to_separate(check, joints)
    return f"A joint is worse than it should be, but this sweep can't tell which: {names}. {how}"


def line_advice(check: LineCheck, load: Load | KnownEnd) -> list[str]:
    """What to do for a better one-port sweep."""
    advice = []
    if check.range_m < check.length_m:
        advice.append(
            f"The sweep's steps reach {check.range_m:.3g} m and the line is {check.length_m:.3g} m long: echoes fold"
            " back. Use more points."
        )
    hidden = [joint for joint in check.joints if (joint.least_resistance_ohm or 1e9) > WEAK_OHM]
    if hidden and check.finding != "no fit":
        names = ", ".join(_joint_words(joint) for joint in hidden)
        other = "with a short" if isinstance(load, KnownEnd) and load.what == "open" else "with some cable behind it"
        advice.append(f"Hardly to be judged with this end: {names}. Sweep again {other}.")
    if not isinstance(load, KnownEnd):
        advice.append(
            "An antenna hides the joints near it: a short, an open or a matched load in its place shows more."
        )
    return advice


def part_verdict(check: PartCheck) -> str:
    """The verdict of a two-port sweep."""
    failed = []
    if not check.loss_passed:
        failed.append(_excess_words("loses", check.worst_loss_margin_db, check.worst_loss_at_hz))
    if not check.match_passed:
        failed.append(_excess_words("reflects", check.worst_match_margin_db, check.worst_match_at_hz))
    limits = f"It {' and '.join(failed)}." if failed else "It keeps within the limits of its parts."
    uncertainty = check.resistance_uncertainty_ohm
    if check.resistance_ohm > CERTAIN * uncertainty:
        resistance = f"Its excess loss is that of {_ohms(check.resistance_ohm)} ± {_ohms(uncertainty)} in series."
    else:
        resistance = f"No added resistance shows beyond {_ohms(CERTAIN * uncertainty)}."
    return " ".join([limits, resistance, *([check.trend.sentence] if check.trend else [])])


def trend_sentence(change_ohm: float, uncertainty_ohm: float) -> str:
    """How the resistance in series has changed since an earlier sweep [Ω]."""
    if abs(change_ohm) > CERTAIN * uncertainty_ohm:
        direction = "risen" if change_ohm > 0 else "fallen"
        change = f"{_ohms(abs(change_ohm))} ± {_ohms(uncertainty_ohm)}"
        return f"Since the earlier sweep the resistance has {direction} by {change}."
    return f"No change of resistance since the earlier sweep beyond {_ohms(CERTAIN * uncertainty_ohm)}."


def _joint_words(joint: SweptJoint) -> str:
    return f"{joint.name} at {joint.distance_m:.3g} m (element {joint.element + 1})"


def _fault_words(candidate: Candidate) -> str:
    """A fault with its sizes."""
    sizes = []
    for size in candidate.sizes:
        value, low, high = (_in_unit(one, size.unit) for one in (size.value, size.low, size.high))
        sizes.append(f"{size.name} {value} ({low} to {high})")
    return f"{candidate.name}, {', '.join(sizes)}"


def _in_unit(value: float, unit: str) -> str:
    shown = significant(value, 3)
    return f"{shown:g}" if unit == "1" else engineering(shown, unit)


def _ohms(value: float) -> str:
    """A fitted resistance [Ω] with the two figures that are known of it."""
    return engineering(significant(value, 2), "Ω")


def _excess_words(verb: str, margin_db: float | None, at_hz: float | None) -> str:
    return f"{verb} {-(margin_db or 0.0):.2g} dB more than its parts may at {engineering(at_hz or 0.0, 'Hz')}"


def _how_to_separate(check: LineCheck, joints: dict[int, SweptJoint]) -> str:
    if check.needed_top_hz is None:
        return "They lie in one place: open them one after the other."
    distances = sorted(joints[element].distance_m for element in check.apart)
    gap = min(after - before for before, after in pairwise(distances))
    if gap > check.resolution_m:
        return "They are far enough apart, but the fault shows too weakly: average more, or use another end."
    top = engineering(check.needed_top_hz, "Hz")
    return f"Joints closer than {check.resolution_m:.2g} m can't be separated: sweep wider, up to at least {top}."
