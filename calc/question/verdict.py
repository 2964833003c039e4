"""The sentences of an answer: the verdict, what limits, and what speaks against the joint beside its margin."""

from ..numeric.measures import temperature_words
from ..numeric.units import safe_power
from ..physics.gates import HOUSE, MATCH, MATCH_DOUBT, GateResult
from ..physics.judgement import Judgement
from ..physics.limits import LIMIT_NAMES
from ..physics.margin_words import margin_step
from .results import Doubt, LimitedBy, Verdict, VerdictStep
from .wording import mode_in_words, power_in_words

__all__ = ["doubts", "limited_by", "margin_words", "verdict"]

HEADLINES: dict[VerdictStep, str] = {
    "over": "Over the limit",
    "at": "At the limit",
    "tight": "Tight",
    "fine": "Fine",
    "ample": "Ample",
    "uncertain": "Uncertain",
    "refused": "Not for this",
    "receive": "Receive only",
}

SMALLEST_SHOWN_DB = 0.05


def margin_words(margin_db: float) -> str:
    """A margin [dB] as a part of a sentence."""
    if margin_db < 0:
        return f"{-margin_db:.1f} dB over the limit" if margin_db < -SMALLEST_SHOWN_DB else "just over the limit"
    step = margin_step(margin_db)
    return f"{margin_db:.1f} dB margin ({HEADLINES[step].lower()})"


def verdict(joint: Judgement, mode: str) -> Verdict:
    """The answer by its step."""
    step = _step(joint)
    low, _ = joint.margins_db
    headline = HEADLINES[step]
    if low is not None and step != "uncertain":
        headline = f"{headline}: {_headline_margin(low)}"
    return Verdict(step, headline, _sentence(joint, step, mode))


def _headline_margin(margin_db: float) -> str:
    if margin_db >= 0:
        return f"{margin_db:.1f} dB margin"
    return f"{-margin_db:.1f} dB too much" if margin_db < -SMALLEST_SHOWN_DB else "by a hair"


def _step(joint: Judgement) -> VerdictStep:
    low, _ = joint.margins_db
    if joint.refusing is not None:
        return "refused"
    if low is None:
        return "receive"
    return "uncertain" if joint.uncertain else margin_step(low)


def _sentence(joint: Judgement, step: VerdictStep, mode: str) -> str:
    asked = f"{power_in_words(joint.power_w)} {mode_in_words(mode)}"
    largest_w, name = joint.largest_power_w or 0.0, joint.interface.name
    most = f"{safe_power(largest_w)} is the most by the cautious figures"
    if joint.refusing is not None:
        return _refusal(joint, joint.refusing)
    match step:
        case "receive":
            return f"No power limit counts in receive; {_match(joint)}."
        case "uncertain":
            high_w = joint.power_w * 10 ** ((joint.margins_db[1] or 0.0) / 10)
            return (
                f"It depends on how good the parts are: poor ones stand {safe_power(largest_w)}, "
                f"good ones {safe_power(high_w)}; you ask for {asked}."
            )
        case "over":
            weak = joint.cable.spoken_name if joint.binding == "cable" else name
            return f"No: {weak} does not stand {asked} here; {most}."
        case "at":
            return f"Only just: {most}, so nothing is left over{_by_good_parts(joint)}."
        case "tight":
            return f"Yes, but it is tight: {most}{_by_good_parts(joint)}."
        case "fine":
            return f"Yes, with room to spare: {most}."
    return f"Yes, easily: {most}."


def _by_good_parts(joint: Judgement) -> str:
    """What the generous figures say, where that is another step."""
    low, high = joint.margins_db
    if low is None or high is None or margin_step(high) == margin_step(low):
        return ""
    return f"; good parts leave {high:.1f} dB"


def _match(joint: Judgement) -> str:
    low, high = joint.return_loss_db
    return f"the joint alone has {low:.0f} to {high:.0f} dB of return loss"


def _refusal(joint: Judgement, gate: GateResult) -> str:
    name, column = joint.interface.name, joint.column.name
    if gate.id == MATCH:
        return (
            f"No: on {column} {name} itself upsets the match; {_match(joint)}, and"
            f" {joint.station.return_loss_asked_db:g} dB is asked for. Power is not what stops it."
        )
    if gate.id == "receive_only":
        return f"No: {name} is for receive only. {gate.sentence}"
    if gate.id == HOUSE:
        return f"No: your own rule forbids it. {gate.sentence}"
    return f"No: {name} is not for this. {gate.sentence}"


def limited_by(joint: Judgement, vswr: float) -> LimitedBy | None:
    """What decides, in a sentence; none in receive."""
    if joint.refusing is not None:
        return LimitedBy(joint.refusing.id, joint.refusing.name, joint.refusing.sentence)
    if joint.binding is None:
        return None
    place = f", where an SWR of {vswr:.3g} is at its worst" if vswr > 1 else ""
    power = f"at {safe_power(joint.low.allowed_w(joint.binding))}{place}"
    match joint.binding:
        case "voltage":
            volts = joint.low.voltage.allowed_peak_v
            sentence = f"Voltage: {power}, the peaks reach {volts:.0f} V, the most it is rated for."
        case "cable":
            hottest_c = joint.low.cable.allowed_temperature_c
            sentence = (
                f"Heat of the cable: {power}, the inner conductor of {joint.cable.spoken_name} reaches"
                f" {temperature_words(hottest_c, whole=True)},"
                " the most it may have; the connector itself would stand more."
            )
        case _:
            hottest_c = joint.low.contact.allowed_temperature_c
            reached = temperature_words(hottest_c, whole=True)
            sentence = f"Heat: {power}, the centre pin reaches {reached}, the most it may have."
    return LimitedBy(joint.binding, LIMIT_NAMES[joint.binding].capitalize(), sentence)


def doubts(joint: Judgement) -> list[Doubt]:
    """The soft gates that fail, where none refuses."""
    if joint.refusing is not None:
        return []
    return [_doubt(joint, gate) for gate in joint.gates if not gate.hard and not gate.passed]


def _doubt(joint: Judgement, gate: GateResult) -> Doubt:
    name = joint.interface.name
    sentences = {
        "weather": f"{name} lets water in: there it needs tape or a boot.",
        "customary_frequency": f"{joint.column.name} is above the usual range of {name}. {gate.sentence}",
        MATCH_DOUBT: f"Only good parts keep the match asked for on {joint.column.name}: {_match(joint)}.",
    }
    return Doubt(gate.id, gate.name, sentences.get(gate.id, gate.sentence))
