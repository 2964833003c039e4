"""The sheets of a line: every joint fitted, sealed, measured and looked after."""

from collections.abc import Mapping
from datetime import date

import msgspec

from ..catalogue import catalogue
from ..catalogue.schema import Cable, Interface
from ..feedline.elements import GivenVswr, Joint
from ..feedline.feedline import Feedline, chosen_column, feedline_at
from ..feedline.surroundings import joint_scenario
from ..physics.cautions import CAUTIONS
from ..physics.gates import GateResult
from ..physics.scenario import Scenario
from .advice import advice
from .galvanic import galvanic_checks
from .label import LabelledJoint, label
from .measurement import first_measurement
from .pairs import Pair, attachment, pairs
from .quantities import adapter_name, quantities
from .requests import FitoutRequest
from .results import Advice, Bend, FitoutResult, Half, JointLabel, JointSheet, NearRelative, Step
from .sealing import sealing
from .torque import torque
from .upkeep import day, inspection, wear

__all__ = ["fitout"]

MATCHED = GivenVswr(vswr=1.0)
THINNER = 0.9
"""Of the thickest cable a family takes; below it some plugs need a reducer (common practice)."""


def fitout(request: FitoutRequest) -> FitoutResult:
    """A sheet for every joint of a line, what to buy for the whole, and what to measure first.

    Raises InputError naming the field for a date that is none, and as `line`
    does for a line that can't be solved.
    """
    fitted = day(request.date)
    feedline = _feedline(request)
    joints = pairs(request.elements, feedline)
    sheets = [_sheet(request, feedline, joints, number, fitted) for number in range(1, len(joints) + 1)]
    return FitoutResult(
        station=request.station,
        date=request.date,
        column=feedline.column,
        power_w=request.power_w,
        joints=sheets,
        measurement=first_measurement(feedline),
        bonding=_bonding(request),
        marks=list(dict.fromkeys(mark for link in feedline.links for mark in link.marks)),
        quantities=quantities(request.elements, joints, sheets),
        cautions=CAUTIONS,
    )


def _feedline(request: FitoutRequest) -> Feedline:
    """The line with a matched load; every joint counts as sealed, for the sheets seal it where it must be."""
    sealed = msgspec.structs.replace(request, added_sealing=True)
    column = chosen_column(request.band, request.frequency_hz, request.region)
    return feedline_at(sealed, request.elements, MATCHED, column)


def _sheet(
    request: FitoutRequest, feedline: Feedline, joints: list[Pair], number: int, fitted: date | None
) -> JointSheet:
    pair = joints[number - 1]
    interface = pair.interface
    exposure = pair.joint.exposure or request.exposure
    circumstances = {
        "family": interface.id,
        "coupling": interface.coupling.value,
        "exposure": exposure,
        "vibration": request.vibration,
        "gasket": "no" if interface.sealing_mated.value == "none" else "yes",
    }
    tightening = torque(interface)
    words = {"family": interface.name, "torque": tightening.sentence}
    sealed = sealing(interface, exposure, request.added_sealing, words)
    scenario = _scenario(request, pair, sealed=bool(sealed.layers))
    left, right = pair.sides
    return JointSheet(
        number=number,
        element=pair.element,
        end=pair.end,
        heading=f"{_name(pair, number)}: {interface.name} between {left.on} and {right.on}",
        family=interface.id,
        family_name=interface.name,
        pack=catalogue().pack_of("interfaces", interface.id),
        exposure=exposure,
        halves=_halves(pair),
        gender=Advice(interface.gender.value, interface.gender.source, interface.gender.kind),
        adapter=_adapter(joints, pair),
        tools=_tools(pair, circumstances, words),
        steps=_steps(pair, circumstances, words),
        torque=tightening,
        sealing=sealed,
        bends=[_bend(cable) for cable in _once(pair.cables)],
        relief=advice("relief", circumstances, words) if pair.cables else [],
        galvanic=galvanic_checks(interface, _once(pair.cables), exposure),
        inspection=inspection(circumstances, fitted),
        wear=wear(interface, request),
        near_relatives=_near_relatives(interface),
        warnings=_warnings(pair, feedline, request.power_w),
        label=_label(request, pair, number, scenario),
    )


def _name(pair: Pair, number: int) -> str:
    return pair.joint.name or f"Joint {number}"


def _once(cables: list[Cable]) -> list[Cable]:
    return list({cable.id: cable for cable in cables}.values())


def _halves(pair: Pair) -> list[Half]:
    return [
        Half(
            half=side.half,
            on=side.on,
            cable=side.cable.id if side.cable else None,
            cable_diameter_m=side.cable.outer_diameter_m.value if side.cable else None,
            attachment=attachment(pair.interface, side.cable).name if side.cable else "",
        )
        for side in pair.sides
    ]


def _adapter(joints: list[Pair], pair: Pair) -> str:
    ends = [one for one in joints if one.element == pair.element]
    return adapter_name(*ends) if len(ends) > 1 else ""


def _of_cable(pair: Pair, cable: Cable, circumstances: Mapping[str, str]) -> dict[str, str]:
    """The circumstances of the half on a cable."""
    screen = next((one.id for one in catalogue().screens.values() if cable.id in one.cables), "")
    thin = cable.outer_diameter_m.value < THINNER * pair.interface.cable_diameter_m.high.value
    return {
        **circumstances,
        "cable": "yes",
        "attachment": attachment(pair.interface, cable).id,
        "screen": screen,
        "dielectric": cable.dielectric,
        "centre": cable.centre_conductor.value,
        "thin": "yes" if thin else "no",
    }


def _words(cable: Cable, words: Mapping[str, str]) -> dict[str, str]:
    return {**words, "cable": cable.name, "diameter": f"{cable.outer_diameter_m.value * 1e3:g} mm"}


def _tools(pair: Pair, circumstances: Mapping[str, str], words: Mapping[str, str]) -> list[Advice]:
    """Those of the cables first, then those of the pair; none twice."""
    found = []
    for cable in _once(pair.cables):
        found += advice("tools", _of_cable(pair, cable, circumstances), _words(cable, words))
    found += advice("tools", circumstances, words)
    return list({one.text: one for one in found}.values())


def _steps(pair: Pair, circumstances: Mapping[str, str], words: Mapping[str, str]) -> list[Step]:
    steps = []
    for cable in _once(pair.cables):
        said = advice("cable", _of_cable(pair, cable, circumstances), _words(cable, words))
        steps += [Step(cable.name, one.text, one.source, one.kind) for one in said]
    mating = advice("mate", circumstances, words)
    return steps + [Step("", one.text, one.source, one.kind) for one in mating]


def _bend(cable: Cable) -> Bend:
    fixed, repeated = cable.fixed_bend_radius_m, cable.repeated_bend_radius_m
    return Bend(
        cable=cable.id,
        name=cable.name,
        fixed_radius_m=fixed.value,
        fixed_source=fixed.source,
        fixed_kind=fixed.kind,
        repeated_radius_m=repeated.value if repeated else None,
        repeated_source=repeated.source if repeated else "",
        repeated_kind=repeated.kind if repeated else "",
    )


def _near_relatives(interface: Interface) -> list[NearRelative]:
    """The families that meet this one badly, whichever has the plug."""
    found = []
    for mating in catalogue().matings.values():
        if interface.id in (mating.plug, mating.jack) and mating.verdict != "mates":
            other = mating.jack if mating.plug == interface.id else mating.plug
            name = catalogue().interfaces[other].name
            found.append(NearRelative(other, name, mating.verdict, mating.text, mating.source, mating.kind))
    return found


def _warnings(pair: Pair, feedline: Feedline, power_w: float) -> list[GateResult]:
    return [gate for gate in pair.link.gates(feedline.column.high_hz, power_w) if not gate.passed]


def _scenario(request: FitoutRequest, pair: Pair, sealed: bool) -> Scenario:
    """The joint's own station: of its cables the one that stands the least heat."""
    coolest = min(pair.cables, key=lambda cable: cable.highest_temperature_c.value, default=None)
    return msgspec.structs.replace(joint_scenario(request, pair.joint, coolest), added_sealing=sealed)


def _label(request: FitoutRequest, pair: Pair, number: int, scenario: Scenario) -> JointLabel:
    joint = LabelledJoint(pair.interface.id, request.band, request.frequency_hz, request.power_w, scenario)
    return label(_name(pair, number), request.date, joint)


def _bonding(request: FitoutRequest) -> list[Advice]:
    """For a line any part of which stands outdoors; by its most exposed joint."""
    places = {request.exposure}
    places |= {joint.exposure for joint in request.elements if isinstance(joint, Joint) and joint.exposure}
    if places == {"indoor"}:
        return []
    return advice("bonding", {"exposure": "exposed" if "exposed" in places else "sheltered"}, {})
