"""What would make a joint better: changes tried one by one, those that help in the order one would do them."""

import math
from collections import Counter
from collections.abc import Iterator
from typing import NamedTuple

import msgspec

from ..catalogue import catalogue
from ..catalogue.schema import Cable, Quantity
from ..numeric.units import safe_power
from ..physics.customary import customary_cable
from ..physics.gates import HOUSE, cable_fits
from ..physics.judgement import Judgement, judged
from ..physics.margin_words import margin_step
from .requests import QuestionRequest
from .results import Better, FieldValue
from .verdict import margin_words

__all__ = ["better"]

MOST = 5
LEAST_GAIN_DB = 0.5
"""Less is not worth the work."""

ENOUGH_DB = 3.0
"""The margin of what is proposed in place of a part."""

GOOD_VSWR = 1.5
STIFF = ("corrugated", "semi-rigid")
SAME_IMPEDANCE = 0.1
"""How far a part's impedance may be from the line's, as a share of it."""

POWER_DIGITS = 2
"""A power to turn down to is rounded down to so many figures."""


class _Change(NamedTuple):
    """A change of the request, before it is tried."""

    title: str
    changes: dict[str, FieldValue]


class _Tried(NamedTuple):
    change: _Change
    joint: Judgement


def better(request: QuestionRequest, joint: Judgement) -> list[Better]:
    """Changes that help, at most five; none where nothing is wanting."""
    if not (_wants_power(joint) or joint.refusing or _doubts(joint)):
        return []
    found = [tried for change in _plain_changes(request, joint) if _helps(tried := _try(request, joint, change), joint)]
    found += _connectors(request, joint)
    if joint.binding == "cable" and _wants_power(joint):
        found += _cables(request, joint)
    return [_told(tried, joint) for tried in found[:MOST]]


def _wants_power(joint: Judgement) -> bool:
    """Whether the power leaves too little margin."""
    low, _ = joint.margins_db
    return low is not None and margin_step(low) in ("over", "at", "tight")


def _doubts(joint: Judgement) -> set[str]:
    return {gate.id for gate in joint.gates if not gate.hard and not gate.passed}


def _plain_changes(request: QuestionRequest, joint: Judgement) -> Iterator[_Change]:
    """Changes that leave connector and cable as they are."""
    if catalogue().conditions[request.condition].added_resistance_ohm.value > 0:
        yield _Change("Clean the contacts, or fit a new connector", {"condition": "new"})
    if request.added_resistance_ohm > 0:
        yield _Change("Mend the bad contact", {"added_resistance_ohm": 0.0})
    if request.vswr > GOOD_VSWR:
        yield _Change(f"Bring the SWR down to {GOOD_VSWR:g}", {"vswr": GOOD_VSWR})
    if request.solar_irradiance_w_per_m2 > 0:
        yield _Change("Keep the sun off it", {"solar_irradiance_w_per_m2": 0.0})
    power_w = _less_power_w(joint)
    if power_w is not None:
        yield _Change(f"Turn the power down to {safe_power(power_w)}", {"power_w": power_w})
    if not request.added_sealing:
        yield _Change("Seal it with tape or a boot", {"added_sealing": True})
    if request.exposure == "immersed":
        yield _Change("Keep it out of the water, and seal it", {"exposure": "exposed", "added_sealing": True})


def _less_power_w(joint: Judgement) -> float | None:
    """The largest safe power; where that is hardly less than asked, what leaves enough margin."""
    largest_w = joint.largest_power_w
    is_house = joint.refusing is not None and joint.refusing.id == HOUSE
    if largest_w is None or not (_wants_power(joint) or is_house):
        return None
    low, _ = joint.margins_db
    if low is not None and low > -LEAST_GAIN_DB:
        largest_w *= 10 ** (-ENOUGH_DB / 10)
    scale = 10.0 ** (math.floor(math.log10(largest_w)) - POWER_DIGITS + 1)
    return float(f"{math.floor(largest_w / scale * (1 + 1e-9)) * scale:.12g}")


def _try(request: QuestionRequest, joint: Judgement, change: _Change) -> _Tried:
    changed = msgspec.structs.replace(request, **change.changes)
    family = changed.family or joint.interface.id
    return _Tried(change, judged(family, joint.column, changed.power_w, changed))


def _helps(tried: _Tried, before: Judgement) -> bool:
    """Whether it lifts a refusal or a doubt, or leaves noticeably more margin where that is wanting; no new doubt."""
    after = tried.joint
    if after.refusing is not None or not _doubts(after) <= _doubts(before) | _doubts_of_refused(before):
        return False
    if before.refusing is not None or _doubts(after) < _doubts(before):
        return True
    low, high = before.margins_db[0], after.margins_db[0]
    return _wants_power(before) and low is not None and high is not None and high - low >= LEAST_GAIN_DB


def _doubts_of_refused(joint: Judgement) -> set[str]:
    """What a change that lifts a refusal may leave in doubt: a joint in water is in doubt about the weather alone."""
    return {"match_doubt"} if joint.refusing is not None else set()


def _is_sound(joint: Judgement) -> bool:
    low, _ = joint.margins_db
    enough = joint.power_w == 0 or (low is not None and low >= ENOUGH_DB)
    return joint.refusing is None and not _doubts(joint) and enough


def _connectors(request: QuestionRequest, joint: Judgement) -> list[_Tried]:
    """What else fits the cable and passes, else on its own cable; where it leaves little margin, a stronger one too.

    What leaves nothing wanting comes first, then what is customary on the cable, then what is commoner.
    """
    families = _families(joint)
    on_cable = [_Change("", {"family": family, **_kept_cable(request, joint, family)}) for family in families]
    found = _passing(request, joint, on_cable) if _suits(joint.cable.impedance_ohm, joint) else []
    if not any(_is_sound(tried.joint) for tried in found):
        own = _passing(request, joint, [_Change("", {"family": family, "cable": None}) for family in families])
        found += [tried for tried in own if _is_handy(tried.joint.cable, joint.cable)]
    if not found:
        return []
    found.sort(key=lambda tried: (not _is_sound(tried.joint), not _is_customary(tried, joint)))
    first = found[0]
    doubled_db = _margin(first) + ENOUGH_DB
    stronger = [] if _is_sound(first.joint) else [tried for tried in found[1:] if _margin(tried) >= doubled_db]
    return [_named(first, joint), *(_named(tried, joint) for tried in stronger[:1])]


def _passing(request: QuestionRequest, joint: Judgement, changes: list[_Change]) -> list[_Tried]:
    """Of changes of connector or cable, those that pass, with more margin where that is wanting."""
    found = _fitting(request, joint, changes)
    before = joint.margins_db[0]
    least_db = before + LEAST_GAIN_DB if before is not None and _wants_power(joint) else 0.0
    return [tried for tried in found if _margin(tried) >= max(least_db, 0.0)]


def _is_customary(tried: _Tried, joint: Judgement) -> bool:
    """Whether the cable in use is what the connector is customarily fitted to."""
    return customary_cable(tried.joint.interface.id) == joint.cable.id


def _is_handy(cable: Cable, other: Cable) -> bool:
    """Whether one would change to a cable for the sake of power: it is no thinner, and bends as the other does."""
    return cable.outer_diameter_m.value >= other.outer_diameter_m.value and not _is_stiffer(cable, other)


def _is_stiffer(cable: Cable, other: Cable) -> bool:
    """Whether a cable does not bend by hand where the other does."""
    return cable.construction in STIFF and other.construction not in STIFF


def _families(joint: Judgement) -> list[str]:
    """The other families of the line's impedance, the commonest first: those the trade sells most adapters to."""
    tables = catalogue()
    joined = Counter(family for adapter in tables.adapters.values() for family in (adapter.id, *adapter.joins))
    suiting = [
        family.id
        for family in tables.interfaces.values()
        if family.id != joint.interface.id and _suits(family.nominal_impedance_ohm, joint)
    ]
    return sorted(suiting, key=lambda family: -joined[family])


def _suits(impedance_ohm: Quantity, joint: Judgement) -> bool:
    """Whether an impedance is about that of the line."""
    line_ohm = joint.station.impedance_ohm
    return abs(impedance_ohm.value - line_ohm) <= SAME_IMPEDANCE * line_ohm


def _kept_cable(request: QuestionRequest, joint: Judgement, family: str) -> dict[str, FieldValue]:
    """The cable in use, named where the family would bring another."""
    if request.cable is not None or customary_cable(family) == joint.cable.id:
        return {}
    return {"cable": joint.cable.id}


def _fitting(request: QuestionRequest, joint: Judgement, changes: list[_Change]) -> list[_Tried]:
    """Of changes of connector or cable, those that help and leave no gate failed, the cable's fit included."""
    found = []
    for change in changes:
        tried = _try(request, joint, change)
        diameter_m = request.cable_diameter_m or tried.joint.cable.outer_diameter_m.value
        if not _doubts(tried.joint) and _helps(tried, joint) and cable_fits(tried.joint.interface, diameter_m):
            found.append(tried)
    return found


def _named(tried: _Tried, joint: Judgement) -> _Tried:
    name, cable = tried.joint.interface.name, tried.joint.cable
    own = f" on {cable.spoken_name}" if cable.id != joint.cable.id else ""
    return tried._replace(change=tried.change._replace(title=f"Fit {name}{own} in its place"))


def _margin(tried: _Tried) -> float:
    low, _ = tried.joint.margins_db
    return math.inf if low is None else low


def _cables(request: QuestionRequest, joint: Judgement) -> list[_Tried]:
    """The cable nearest in size that the connector takes, no stiffer, and that leaves nothing wanting if any does."""
    size_m = joint.cable.outer_diameter_m.value
    fitting = [
        cable
        for cable in catalogue().cables.values()
        if cable.id != joint.cable.id
        and not _is_stiffer(cable, joint.cable)
        and _suits(cable.impedance_ohm, joint)
        and cable_fits(joint.interface, cable.outer_diameter_m.value)
    ]
    changes = [
        _Change(f"Use {cable.spoken_name}", {"cable": cable.id})
        for cable in sorted(fitting, key=lambda cable: abs(cable.outer_diameter_m.value - size_m))
    ]
    found = _passing(request, joint, changes)
    return sorted(found, key=lambda tried: not _is_sound(tried.joint))[:1]


def _told(tried: _Tried, before: Judgement) -> Better:
    change, joint = tried
    low, _ = joint.margins_db
    parts = [margin_words(low) if low is not None else "no power limit counts in receive"]
    if joint.largest_power_w is not None and "power_w" not in change.changes:
        parts.append(f"up to {safe_power(joint.largest_power_w)}")
    then = f"Then {', '.join(parts)}."
    if "weather" in _doubts(before) - _doubts(joint):
        then = (
            "Rain stays out; the margin stays as it is." if low == before.margins_db[0] else f"{then} Rain stays out."
        )
    return Better(
        title=change.title,
        sentence=then,
        changes=change.changes,
        margin_db=low,
        largest_power_w=joint.largest_power_w,
    )
