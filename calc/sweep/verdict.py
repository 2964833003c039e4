"""What a sweep tells, in sentences."""

from itertools import pairwise

from ..feedline.elements import KnownEnd, Load
from ..numeric.units import engineering
from .part_check import ohms
from .results import Candidate, LineCheck, PartCheck, SweptJoint

__all__ = ["fault_words", "line_words", "part_words"]

CERTAIN = 3.0  # standard deviations from which on a resistance counts
WEAK_OHM = 2.0
"""A joint at which only more than this would show is one the sweep can hardly judge."""


def line_words(check: LineCheck, load: Load | KnownEnd) -> tuple[str, list[str]]:
    """The verdict of a one-port sweep, and what to do for a better one."""
    joints = {joint.element: joint for joint in check.joints}
    return _verdict(check, joints), _advice(check, joints, load)


def part_words(check: PartCheck) -> str:
    """The verdict of a two-port sweep."""
    failed = [
        words
        for passed, words in (
            (check.loss_passed, _over("loses", check.worst_loss_margin_db, check.worst_loss_at_hz)),
            (check.match_passed, _over("reflects", check.worst_match_margin_db, check.worst_match_at_hz)),
        )
        if not passed
    ]
    standing = f"It {' and '.join(failed)}." if failed else "It keeps within the limits of its parts."
    certain = check.resistance_ohm > CERTAIN * check.resistance_uncertainty_ohm
    off = ohms(check.resistance_uncertainty_ohm)
    resistance = (
        f" Its excess loss is that of {ohms(check.resistance_ohm)} ± {off} in series."
        if certain
        else f" No added resistance shows beyond {ohms(CERTAIN * check.resistance_uncertainty_ohm)}."
    )
    trend = f" {check.trend.sentence}" if check.trend else ""
    return standing + resistance + trend


def fault_words(candidate: Candidate) -> str:
    """A fault with its sizes."""
    sizes = [
        "{} {} ({} to {})".format(size.name, *(_sized(one, size.unit) for one in (size.value, size.low, size.high)))
        for size in candidate.sizes
    ]
    return f"{candidate.name}, {', '.join(sizes)}"


def _sized(value: float, unit: str) -> str:
    shown = float(f"{value:.3g}")
    return f"{shown:g}" if unit == "1" else engineering(shown, unit)


def _over(verb: str, margin_db: float | None, at_hz: float | None) -> str:
    return f"{verb} {-(margin_db or 0.0):.2g} dB more than its parts may at {engineering(at_hz or 0.0, 'Hz')}"


def _joint(joint: SweptJoint) -> str:
    return f"{joint.name} at {joint.distance_m:.3g} m (element {joint.element + 1})"


def _verdict(check: LineCheck, joints: dict[int, SweptJoint]) -> str:
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
        return f"The bad joint is {_joint(joints[best.element])}, {sure} sure: {fault_words(best)}."
    names = " or ".join(_joint(joints[element]) for element in check.apart)
    return f"A joint is worse than it should be, but this sweep can't tell which: {names}. {_needed(check, joints)}"


def _needed(check: LineCheck, joints: dict[int, SweptJoint]) -> str:
    if check.needed_top_hz is None:
        return "They lie in one place: open them one after the other."
    places = sorted(joints[element].distance_m for element in check.apart)
    gap = min(after - before for before, after in pairwise(places))
    if gap > check.resolution_m:
        return "They are far enough apart, but the fault shows too weakly: average more, or use another end."
    top = engineering(check.needed_top_hz, "Hz")
    return f"Joints closer than {check.resolution_m:.2g} m can't be separated: sweep wider, up to at least {top}."


def _advice(check: LineCheck, joints: dict[int, SweptJoint], load: Load | KnownEnd) -> list[str]:
    advice = []
    if check.range_m < check.length_m:
        advice.append(
            f"The sweep's steps reach {check.range_m:.3g} m and the line is {check.length_m:.3g} m long: echoes fold"
            " back. Use more points."
        )
    hidden = [joint for joint in joints.values() if (joint.least_resistance_ohm or 1e9) > WEAK_OHM]
    if hidden and check.finding != "no fit":
        names = ", ".join(_joint(joint) for joint in hidden)
        other = "with a short" if isinstance(load, KnownEnd) and load.what == "open" else "with some cable behind it"
        advice.append(f"Hardly to be judged with this end: {names}. Sweep again {other}.")
    if not isinstance(load, KnownEnd):
        advice.append(
            "An antenna hides the joints near it: a short, an open or a matched load in its place shows more."
        )
    return advice
