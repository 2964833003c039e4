"""Which exchange of one part would help most: every part, every candidate that passes the gates."""

from typing import Any, NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..catalogue.schema import Cable
from ..feedline.cable import CableModel, cable_marks, table_of_cable_ratings
from ..feedline.elements import CableRun, Joint
from ..feedline.feedline import Feedline, Link, joint_demands, touching
from ..feedline.joint import joint_model
from ..feedline.solve import Solution, margins, solve
from ..formulas.line import decibels
from ..numeric.json_numbers import fine
from ..physics.gates import cable_fits, gate_table
from ..physics.ratings import ENDS, table_ratings
from .results import Change

__all__ = ["changes"]

SAME_IMPEDANCE = 0.1
"""A cable is offered in another's place when their impedances differ by less than this share (common practice)."""


class _Exchange(NamedTuple):
    """One what-if: what stands in the place of which link, and how hot a joint's cables may get then [°C]."""

    at: int
    to: str
    name: str
    cable_temperature_c: dict[int, float]


def changes(request: Any, feedline: Feedline, now: tuple[Solution, Solution]) -> list[Change]:
    """Every exchange with what it brings at the frequency looked at, the most gained at the antenna first.

    `now` are the solutions at that one frequency, cautious and generous end.
    All exchanges are solved at once, one along axis 0.
    """
    exchanges = [exchange for at in range(len(feedline.links)) for exchange in _exchanges(request, feedline, at)]
    if not exchanges:
        return []
    frequency = np.array([feedline.frequency_hz])
    solved = tuple(
        solve(feedline, frequency, end, _models(request, feedline, exchanges, end)) for end in range(len(ENDS))
    )
    margin = _smallest(solved, request.power_w)[:, 0]
    smallest = _smallest(now, request.power_w)[0]
    loss = -decibels(_delivered(solved[1]))[:, 0]
    brought = zip(exchanges, -decibels(_delivered(now[1]))[0] - loss, margin - smallest, loss, margin, strict=True)
    found = [Change(one.at, one.to, one.name, *map(fine, brings)) for one, *brings in brought]
    found.sort(key=lambda change: (-(change.gained_db or 0), -(change.margin_gained_db or 0)))
    return found


def _models(request: Any, feedline: Feedline, exchanges: list[_Exchange], end: int) -> dict[int, Any]:
    """The models of the links that some exchange touches, all exchanges along axis 0."""
    models = {}
    for at, link in enumerate(feedline.links):
        replaced = [one.to if one.at == at else None for one in exchanges]
        temperatures = [one.cable_temperature_c.get(at) for one in exchanges]
        own = link.models[end]
        if link.kind == "cable" and any(replaced):
            table = table_of_cable_ratings([to or request.elements[link.element].cable for to in replaced], ENDS[end])
            models[at] = CableModel(table, own.length_m, own.station)
        elif link.kind == "joint" and (any(replaced) or any(temperatures)):
            ratings = table_ratings([to or link.family for to in replaced], ENDS[end])
            hottest = [own.station.cable_temperature_c if one is None else one for one in temperatures]
            station = own.station._replace(cable_temperature_c=np.array(hottest, dtype=np.float64)[:, None])
            models[at] = joint_model(ratings, station)
    return models


def _delivered(solution: Solution) -> np.ndarray:
    return solution.waves.at(-1).power_w


def _smallest(solutions: tuple[Solution, Solution], power_w: float) -> np.ndarray:
    by_link = [margins(allowed, power_w).min(axis=0) for solution in solutions for allowed in solution.allowed]
    return np.min(np.stack(np.broadcast_arrays(*by_link)), axis=0)


def _exchanges(request: Any, feedline: Feedline, at: int) -> list[_Exchange]:
    element = request.elements[feedline.links[at].element]
    if isinstance(element, CableRun):
        return _cables(request, feedline, at, element)
    return _families(request, feedline, at, element) if isinstance(element, Joint) else []


def _cables(request: Any, feedline: Feedline, at: int, element: CableRun) -> list[_Exchange]:
    """Cables of like impedance that the site and the joints at both ends allow."""
    own = catalogue().cables[element.cable].impedance_ohm.value
    beside = [
        near for near in (at - 1, at + 1) if 0 <= near < len(feedline.links) and feedline.links[near].kind == "joint"
    ]
    return [
        _Exchange(at, cable.id, cable.name, {near: _coolest(request, feedline, near, at, cable) for near in beside})
        for cable in catalogue().cables.values()
        if cable.id != element.cable
        and abs(cable.impedance_ohm.value / own - 1) < SAME_IMPEDANCE
        and cable.highest_temperature_c.value > request.ambient_temperature_c
        and not cable_marks(cable, feedline.frequency_hz, request.exposure)
        and all(_takes(feedline.links[near], cable) for near in beside)
    ]


def _takes(joint: Link, cable: Cable) -> bool:
    """Whether a cable fits a joint, and is left some room for heat there."""
    hottest = joint.models[0].station.ambient_temperature_c + joint.models[0].path.solar_rise_k
    fits = cable_fits(catalogue().interfaces[joint.family], cable.outer_diameter_m.value)
    return fits and bool(cable.highest_temperature_c.value > hottest)


def _coolest(request: Any, feedline: Feedline, near: int, at: int, cable: Cable) -> float:
    """What the cables in the joint `near` allow [°C] once `cable` stands in the place of link `at`."""
    joint = feedline.links[near].element
    before, after = touching(request.elements, joint)
    other = after if near > at else before
    # the far side of an adapter is another joint
    alone = other is None or request.elements[joint].adapter_to is not None
    return min(one.highest_temperature_c.value for one in ([cable] if alone else [cable, other]))


def _families(request: Any, feedline: Feedline, at: int, element: Joint) -> list[_Exchange]:
    """Families that pass every gate in the joint's place."""
    link = feedline.links[at]
    before, after = touching(request.elements, link.element)
    if element.adapter_to is not None:
        first = at == 0 or feedline.links[at - 1].element != link.element
        before, after = (before, None) if first else (None, after)
    cables = [cable for cable in (before, after) if cable]
    station = link.models[0].station
    asked = [family for family in catalogue().interfaces if family != link.family]
    demands = [joint_demands(request, element, family, cables) for family in asked]
    paths = joint_model(table_ratings(asked, "low"), station).path
    frequency, power = np.array([feedline.frequency_hz]), np.array([request.power_w])
    failed = gate_table(asked, demands, frequency, power, station, paths).any(axis=0)[:, 0, 0]
    return [
        _Exchange(at, family, catalogue().interfaces[family].name, {})
        for family, fails in zip(asked, failed, strict=True)
        if not fails
    ]
