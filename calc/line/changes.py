"""Which exchange of one part would help most: every part, every candidate that passes the gates."""

from collections.abc import Iterable
from typing import NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..catalogue.schema import Cable
from ..feedline.cable import CableLink, CableModel, cable_marks, cable_model
from ..feedline.feedline import Feedline
from ..feedline.joint import JointLink, JointModel, joint_model
from ..feedline.link import LinkModel
from ..feedline.solve import Solution, Solutions, margins, solve_every_way
from ..feedline.surroundings import joint_demands, touching
from ..formulas.line import decibels
from ..numeric.json_numbers import fine
from ..physics.cable_table import table_of_cable_ratings
from ..physics.family_ratings import table_ratings
from ..physics.gates import cable_fits, cable_te11, gate_table
from ..physics.ratings import CAUTIOUS, ENDS, GENEROUS
from .requests import LineRequest
from .results import Change

__all__ = ["changes"]

ENDS_OF_IT = (CAUTIOUS, GENEROUS)

SAME_IMPEDANCE = 0.1
"""A cable is offered in another's place when their impedances differ by less than this share (common practice)."""


class _Exchange(NamedTuple):
    """One what-if: what replaces which link."""

    link: int
    to: str
    name: str


def changes(request: LineRequest, feedline: Feedline) -> list[Change]:
    """Every exchange with what it brings at the frequency looked at, the most gained at the antenna first.

    All exchanges are solved at once, one along axis 0.
    """
    exchanges = [exchange for index in range(len(feedline.links)) for exchange in _exchanges(request, feedline, index)]
    if not exchanges:
        return []
    load = feedline.load.likely(np.array([feedline.frequency_hz]))[:, 0]
    # the ways of the load stand along the axis of the frequency, which is one
    frequency = np.full(load.size, feedline.frequency_hz)
    changed = Solutions(
        *(solve_every_way(feedline, frequency, end, load, _models(feedline, exchanges, end)) for end in ENDS_OF_IT)
    )
    as_it_is = Solutions(*(solve_every_way(feedline, frequency, end, load) for end in ENDS_OF_IT))
    margin = _smallest(changed, request.power_w).min(axis=-1)
    margin_gained = margin - _smallest(as_it_is, request.power_w).min(axis=-1)
    loss = np.median(_loss_db(changed.generous), axis=-1)
    gained = np.median(_loss_db(as_it_is.generous), axis=-1) - loss
    found = [
        Change(exchange.link, exchange.to, exchange.name, *map(fine, numbers))
        for exchange, *numbers in zip(exchanges, gained, margin_gained, loss, margin, strict=True)
    ]
    found.sort(key=lambda change: (-(change.gained_db or 0), -(change.margin_gained_db or 0)))
    return found


def _loss_db(solution: Solution) -> np.ndarray:
    return -decibels(solution.waves.at(-1).power_w)


def _smallest(solutions: Iterable[Solution], power_w: float) -> np.ndarray:
    by_link = [margins(allowed, power_w).min(axis=0) for solution in solutions for allowed in solution.allowed]
    return np.min(np.stack(np.broadcast_arrays(*by_link)), axis=0)


def _models(feedline: Feedline, exchanges: list[_Exchange], end: int) -> dict[int, LinkModel]:
    """The models of the links that some exchange touches, all exchanges along axis 0."""
    models: dict[int, LinkModel] = {}
    for index, link in enumerate(feedline.links):
        replaced = [exchange.to if exchange.link == index else None for exchange in exchanges]
        if isinstance(link, CableLink) and any(replaced):
            models[index] = _cable_table(link, replaced, end)
        elif isinstance(link, JointLink):
            sides = _sides(feedline, exchanges, index)
            if any(replaced) or any(len(set(side)) > 1 for side in sides if side is not None):
                models[index] = _joint_table(link, replaced, sides, end)
    return models


def _cable_table(link: CableLink, replaced: list[str | None], end: int) -> CableModel:
    model = link.models[end]
    ratings = table_of_cable_ratings([to or link.cable for to in replaced], ENDS[end])
    return cable_model(ratings, model.length_m, model.station)


def _joint_table(link: JointLink, replaced: list[str | None], sides: list[list[str] | None], end: int) -> JointModel:
    ratings = table_ratings([to or link.family for to in replaced], ENDS[end])
    near, far = (None if side is None else table_of_cable_ratings(side, ENDS[end]) for side in sides)
    return joint_model(ratings, (near, far), link.models[end].station)


def _sides(feedline: Feedline, exchanges: list[_Exchange], index: int) -> list[list[str] | None]:
    """The ids of the cables on both sides of a joint in every exchange; none where there is no cable."""
    joint = feedline.links[index]
    found: list[list[str] | None] = []
    for near in (index - 1, index + 1):
        link = feedline.links[near] if 0 <= near < len(feedline.links) else None
        touches = isinstance(link, CableLink) and abs(link.element - joint.element) == 1
        if not isinstance(link, CableLink) or not touches:
            found.append(None)
            continue
        found.append([exchange.to if exchange.link == near else link.cable for exchange in exchanges])
    return found


def _exchanges(request: LineRequest, feedline: Feedline, index: int) -> list[_Exchange]:
    link = feedline.links[index]
    if isinstance(link, CableLink):
        return _cables(request, feedline, index, link)
    return _families(request, feedline, index, link) if isinstance(link, JointLink) else []


def _cables(request: LineRequest, feedline: Feedline, index: int, link: CableLink) -> list[_Exchange]:
    """Cables of like impedance that the site and the joints at both ends allow."""
    impedance = catalogue().cables[link.cable].impedance_ohm.value
    joints = [
        joint
        for near in (index - 1, index + 1)
        if 0 <= near < len(feedline.links) and isinstance(joint := feedline.links[near], JointLink)
    ]
    return [
        _Exchange(index, cable.id, cable.name)
        for cable in catalogue().cables.values()
        if cable.id != link.cable
        and abs(cable.impedance_ohm.value / impedance - 1) < SAME_IMPEDANCE
        and cable.highest_temperature_c.value > request.ambient_temperature_c
        and not cable_marks(cable, feedline.frequency_hz, request)
        and cable_te11(cable, feedline.frequency_hz).passed
        and all(_takes(joint, cable) for joint in joints)
    ]


def _takes(joint: JointLink, cable: Cable) -> bool:
    """Whether a cable fits a joint, and is left some room for heat there."""
    model = joint.models[CAUTIOUS]
    hottest = model.station.ambient_temperature_c + model.path.solar_rise_k
    fits = cable_fits(catalogue().interfaces[joint.family], cable.outer_diameter_m.value)
    return fits and bool(cable.highest_temperature_c.value > hottest)


def _families(request: LineRequest, feedline: Feedline, index: int, link: JointLink) -> list[_Exchange]:
    """Families that pass every gate in the joint's place."""
    before, after = touching(request.elements, link.element)
    if link.given.adapter_to is not None:
        first = index == 0 or feedline.links[index - 1].element != link.element
        before, after = (before, None) if first else (None, after)
    cables = [cable for cable in (before, after) if cable]
    asked = [family for family in catalogue().interfaces if family != link.family]
    demands = [joint_demands(request, link.given, family, cables) for family in asked]
    model = link.models[CAUTIOUS]
    no_room = joint_model(table_ratings(asked, ENDS[CAUTIOUS]), model.cables, model.station).has_no_room()
    frequency, power = np.array([feedline.frequency_hz]), np.array([request.power_w])
    no_room = np.broadcast_to(no_room, (len(asked), 1))
    failed = np.any(gate_table(asked, demands, frequency, power, no_room, None, None), axis=0)[:, 0, 0]
    return [
        _Exchange(index, family, catalogue().interfaces[family].name)
        for family, fails in zip(asked, failed, strict=True)
        if not fails
    ]
