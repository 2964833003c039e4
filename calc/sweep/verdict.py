"""What a sweep's answer says, in sentences."""

from itertools import pairwise

from ..feedline.elements import KnownEnd, Load
from ..numeric.measures import length_words, short_length_words
from ..numeric.rounding import significant
from ..numeric.units import engineering
from .results import AntennaEnd, Deviation, EchoCheck, FittedSize, LineCheck, NamedFault, PartCheck, SweptJoint

__all__ = [
    "NOTHING_TO_COMPARE",
    "assumed_sentences",
    "does_words",
    "echo_advice",
    "echo_verdict",
    "line_advice",
    "line_verdict",
    "part_verdict",
    "trend_sentence",
]

CERTAIN = 3.0  # standard deviations from which on a resistance counts
MOST_ASSUMED = 2  # in a verdict; the others stand beside it
UNUSUAL = 1.3  # usual deviations from which on a verdict says what it assumed
WORN = 3.0  # the same of a cable's loss from which on no verdict calls that cable good

NOTHING_TO_COMPARE = "The earlier sweep has no frequencies in common with this one."


def line_verdict(check: LineCheck) -> str:
    """The verdict of a one-port sweep, with what it had to assume."""
    return " ".join([_finding_words(check), *check.assumed[:MOST_ASSUMED]])


def line_advice(check: LineCheck, load: Load | KnownEnd) -> list[str]:
    """What to do next, the most useful first."""
    advice = []
    if check.finding == "no fit":
        advice.append("Compare each cable, its length and what the line ended in with what is described.")
    if check.faults:
        at = check.faults[0]
        place, low, high = (length_words(one, 3) for one in (at.distance_m, at.low_m, at.high_m))
        advice.append(
            f"Open, clean and remake the joint at {place}, then sweep again."
            if at.where == "joint"
            else f"Look at the cable from {low} to {high}, move it there while you sweep again."
        )
    if check.finding == "unclear":
        advice.append(_how_to_separate(check))
    if check.range_m < check.length_m:
        reach, length = length_words(check.range_m, 3), length_words(check.length_m, 3)
        advice.append(
            f"The sweep's steps reach {reach} and the line is {length} long: echoes fold back. Use more points."
        )
    hidden = [joint for joint in check.joints if joint.state == "hidden"]
    if check.end is not None:
        advice.append(
            "Put a load of 50 Ω in the antenna's place and sweep again: if nothing is found then, it is the antenna."
        )
    elif not isinstance(load, KnownEnd):
        advice.append(
            "An antenna hides the joints near it: put a short in its place and sweep again, or describe the antenna"
            " by its own measurement."
        )
    elif load.what == "open" and not check.faults and (blind := _blind(check)):
        advice.append(f"A bad contact would not show at {_names(blind)} with an open end: sweep again with a short.")
    elif load.what == "short" and not check.faults and (dry := _dry(check)):
        advice.append(f"Water would not show at {_names(dry)} with a short: sweep again with an open end.")
    elif hidden and check.finding != "no fit":
        end = "an open end" if load.what == "short" else "a short"
        advice.append(f"Can't be judged with this termination: {_names(hidden)}. Sweep again with {end}, or wider.")
    return advice


def echo_verdict(check: EchoCheck) -> str:
    """What echoes there are on a line of which nothing is described."""
    if not check.echoes:
        return "No echo stands out of the noise."
    strongest = max(check.echoes, key=lambda echo: echo.reflection)
    count = len(check.echoes)
    several = "one echo" if count == 1 else f"{count} echoes"
    place = length_words(strongest.distance_m, 3)
    return (
        f"There {'is' if count == 1 else 'are'} {several}; the strongest lies at {place} in cable"
        f" of velocity factor {check.velocity_factor:.2g}. {strongest.words}"
    )


def echo_advice(check: EchoCheck) -> list[str]:
    """What to do next with the echoes of a line."""
    advice = ["Describe the line with its cables and joints: then each echo is held against what should be there."]
    if check.echoes:
        advice.append(
            "Go to the place of an echo, wiggle or squeeze what is there and sweep again: what changes is it. Known"
            " lengths that come out wrong mean another velocity factor."
        )
    return advice


def part_verdict(check: PartCheck) -> str:
    """The verdict of a two-port sweep."""
    missed = []
    if not check.loss_passed:
        missed.append(_excess_words("loses", check.worst_loss_margin_db, check.worst_loss_at_hz))
    if not check.match_passed:
        missed.append(_excess_words("reflects", check.worst_match_margin_db, check.worst_match_at_hz))
    limits = f"It {' and '.join(missed)}." if missed else "It keeps within the limits of its parts."
    if check.finding == "cannot tell":
        limits = f"{limits[:-1]}, but that may be what the calibration left. Calibrate anew and sweep again."
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


def assumed_sentences(deviations: list[Deviation], length_tolerance: float) -> list[str]:
    """What a verdict had to assume of the cables, the most unusual first."""
    found = []
    for one in deviations:
        usual = max(length_tolerance, one.usual) if one.what == "electrical length" else UNUSUAL * one.usual
        if abs(one.share) <= usual or abs(one.share) < CERTAIN * one.uncertainty:
            continue
        much = f"{significant(abs(one.share) * 100, 2):g} %"
        if one.what == "electrical length":
            words = f"as {much} {'longer' if one.share > 0 else 'shorter'} than said"
        else:
            words = f"with {much} {'more' if one.share > 0 else 'less'} {one.what} than its sheet says"
        found.append((abs(one.share) / usual, f"{one.part} (element {one.element + 1}) counts {words}."))
    return [words for _, words in sorted(found, reverse=True)]


def does_words(does: str, sizes: list[FittedSize]) -> str:
    """What a fault does, with its sizes to two figures."""
    return does.format(*(_in_unit(size.value, size.unit) for size in sizes))


def _finding_words(check: LineCheck) -> str:
    if check.finding == "no fit":
        return (
            f"The sweep does not fit this line: {check.noise:.2g} of the reflection stays unexplained by any single"
            " fault, so no joint is judged."
        )
    if check.finding == "cannot tell":
        return "This sweep shows too little of the line to judge any joint."
    if check.end is not None:
        return f"{_end_words(check.end, check)} Nothing else is found."
    if check.finding == "sound":
        hidden = [joint for joint in check.joints if joint.state == "hidden"]
        but = f", except for what it can't judge: {_names(hidden)}" if hidden else ""
        worn = any(one.what == "loss" and one.share > WORN * one.usual for one in check.deviations)
        what = "No joint" if worn else "No joint or cable"
        return f"{what} is worse than it should be, as far as this sweep can show{but}."
    if check.finding == "unclear":
        names = _element_names(check)
        several = " or ".join(names[element] for element in check.apart)
        return f"Something is worse than it should be, but this sweep can't tell where: {several}."
    if len(check.faults) > 1:
        return "Two places are bad. " + " ".join(f"{_place_words(one, check)}: {_does(one)}." for one in check.faults)
    one = check.faults[0]
    what = "The bad joint is" if one.where == "joint" else "The cable is damaged:"
    return f"{what} {_place_words(one, check)}: {_does(one)}."


def _end_words(end: AntennaEnd, check: LineCheck) -> str:
    beside = "how it is connected" if end.element is None else _element_names(check)[end.element]
    return (
        f"The antenna or {beside} is bad, or it is an antenna for other frequencies: the VSWR at the end of the line"
        f" is {significant(end.lowest_vswr, 2):g} at its best, at {engineering(end.at_hz, 'Hz')}, and should be"
        f" {significant(end.described_vswr, 2):g}."
    )


def _element_names(check: LineCheck) -> dict[int, str]:
    names = {joint.element: _joint_words(joint) for joint in check.joints}
    return names | {cable.element: f"{cable.name} (element {cable.element + 1})" for cable in check.cables}


def _place_words(fault: NamedFault, check: LineCheck) -> str:
    sure = f"{fault.probability:.0%} sure".replace("%", " %")
    names = _element_names(check)
    beside = [names[element] for element in fault.beside if element != fault.element]
    near = f" (or {' or '.join(beside)}: too near to be told apart)" if beside else ""
    return f"{fault.part} at {length_words(fault.distance_m, 3)} (element {fault.element + 1}){near}, {sure}"


def _does(fault: NamedFault) -> str:
    return f"it {fault.name}, as {fault.likely} does" if fault.likely else f"it {fault.name}"


def _joint_words(joint: SweptJoint) -> str:
    return f"{joint.name} at {length_words(joint.distance_m, 3)} (element {joint.element + 1})"


def _blind(check: LineCheck) -> list[SweptJoint]:
    """Joints at which no resistance in series would show."""
    return [joint for joint in check.joints if joint.least_resistance_ohm is None]


def _dry(check: LineCheck) -> list[SweptJoint]:
    """Joints at which no capacitance across would show."""
    return [joint for joint in check.joints if joint.least_capacitance_f is None]


def _names(joints: list[SweptJoint]) -> str:
    return ", ".join(_joint_words(joint) for joint in joints)


def _in_unit(value: float, unit: str) -> str:
    shown = significant(value, 2)
    if unit == "m":
        return short_length_words(shown, 2)
    return f"{shown:g}" if unit == "1" else engineering(shown, unit)


def _ohms(value: float) -> str:
    """A fitted resistance [Ω] with the two figures that are known of it."""
    return engineering(significant(value, 2), "Ω")


def _excess_words(verb: str, margin_db: float | None, at_hz: float | None) -> str:
    return f"{verb} {-(margin_db or 0.0):.2g} dB more than its parts may at {engineering(at_hz or 0.0, 'Hz')}"


def _how_to_separate(check: LineCheck) -> str:
    if check.needed_top_hz is None:
        return "They lie in one place: open them one after the other."
    joints = sorted(joint.distance_m for joint in check.joints if joint.element in check.apart)
    gaps = [after - before for before, after in pairwise(joints)]
    if gaps and min(gaps) > check.resolution_m:
        return "They are far enough apart, but the fault shows too weakly: use another end, a short or an open one."
    top = engineering(check.needed_top_hz, "Hz")
    near = length_words(check.resolution_m, 2)
    return f"Places closer than {near} can't be separated: sweep wider, up to at least {top}."
