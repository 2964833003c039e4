"""The sheet of one mated pair: fitted, sealed, looked after, and warned of."""

from datetime import date

import msgspec

from ..catalogue import catalogue
from ..catalogue.schema import Cable, Interface
from ..feedline.surroundings import joint_scenario
from ..physics.columns import Column
from ..physics.gates import GateResult
from ..physics.scenario import Scenario
from .advice import advice
from .circumstances import at_joint
from .galvanic import galvanic_checks
from .label import LabelledJoint, label
from .pairs import Pair, halves
from .requests import FitoutRequest
from .results import Advice, Bend, JointLabel, JointSheet, NearRelative
from .sealing import sealing
from .torque import torque
from .upkeep import contact_life, inspection
from .work import steps, tools

__all__ = ["joint_sheet"]


def joint_sheet(
    request: FitoutRequest, column: Column, pair: Pair, number: int, adapter: str, fitted: date | None
) -> JointSheet:
    """The sheet of a pair, the `number`-th of its line, fitted on a day and used in a column.

    `adapter` names the adapter it is an end of; empty where it is none.
    """
    interface = pair.interface
    exposure = pair.joint.exposure or request.exposure
    tightening = torque(interface)
    circumstances, words = at_joint(interface, exposure, request, tightening)
    sealed = sealing(interface, exposure, request.added_sealing, words)
    scenario = _scenario(request, pair, sealed=bool(sealed.layers))
    name = pair.joint.name or f"Joint {number}"
    left, right = pair.sides
    return JointSheet(
        number=number,
        element=pair.element,
        end=pair.end,
        heading=f"{name}: {interface.spoken_name} between {left.on.name} and {right.on.name}",
        family=interface.id,
        family_name=interface.name,
        pack=catalogue().pack_of("interfaces", interface.id),
        exposure=exposure,
        halves=halves(pair),
        gender=Advice(interface.gender.value, interface.gender.source, interface.gender.kind),
        adapter=adapter,
        tools=tools(pair, circumstances, words),
        steps=steps(pair, circumstances, words),
        torque=tightening,
        sealing=sealed,
        bends=[_bend(cable) for cable in pair.cables],
        relief=advice("relief", circumstances, words) if pair.cables else [],
        galvanic=galvanic_checks(interface, pair.cables, exposure),
        inspection=inspection(circumstances, fitted),
        wear=contact_life(interface, request),
        near_relatives=_near_relatives(interface),
        warnings=_warnings(pair, column, request.power_w),
        label=_label(request, pair, name, scenario),
    )


def _bend(cable: Cable) -> Bend:
    fixed, repeated = cable.fixed_bend_radius_m, cable.repeated_bend_radius_m
    return Bend(
        cable=cable.id,
        name=cable.spoken_name,
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
            relative = mating.jack if mating.plug == interface.id else mating.plug
            name = catalogue().interfaces[relative].name
            found.append(NearRelative(relative, name, mating.verdict, mating.text, mating.source, mating.kind))
    return found


def _warnings(pair: Pair, column: Column, power_w: float) -> list[GateResult]:
    return [gate for gate in pair.link.gates(column.high_hz, power_w) if not gate.passed]


def _scenario(request: FitoutRequest, pair: Pair, sealed: bool) -> Scenario:
    """The joint's own scenario: of its cables the one that may get least hot."""
    coolest = min(pair.cables, key=lambda cable: cable.highest_temperature_c.value, default=None)
    return msgspec.structs.replace(joint_scenario(request, pair.joint, coolest), added_sealing=sealed)


def _label(request: FitoutRequest, pair: Pair, name: str, scenario: Scenario) -> JointLabel:
    joint = LabelledJoint(pair.interface.id, request.band, request.frequency_hz, request.power_w, scenario)
    return label(name, request.date, joint)
