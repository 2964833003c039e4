"""The loss and the smallest margin of a line with a change made: all changes solved at once, one along axis 0."""

from typing import NamedTuple

import msgspec
import numpy as np

from ...feedline.cable import CableLink, CableModel, cable_model
from ...feedline.feedline import Feedline, feedline_of
from ...feedline.joint import JointLink, JointModel, joint_model
from ...feedline.link import LinkModel
from ...feedline.solve import largest_power_w, solve_every_way
from ...formulas.heat import margin
from ...formulas.line import decibels
from ...physics.cable_table import table_of_cable_ratings
from ...physics.family_ratings import table_ratings
from ...physics.ratings import CAUTIOUS, ENDS, GENEROUS
from ..requests import LineRequest
from .candidate import Candidate
from .edits import changed_elements

__all__ = ["FEW_WAYS", "LIKELY_WAYS", "Promise", "promises"]

AS_IT_IS = Candidate("joint", (), {})

FEW_WAYS, LIKELY_WAYS = 4, 12
"""Steps round the circle of an unknown phase: to look at all changes, and for those that are listed."""


class Promise(NamedTuple):
    """A line as it is, or with a change made."""

    loss_db: float
    margin_db: float
    """Infinite in receive; not a number where a part is still refused."""


def promises(
    request: LineRequest, feedline: Feedline, candidates: list[Candidate], refused: frozenset[int], ways: int
) -> list[Promise]:
    """The line as it is, and with each of the changes; `refused` are the links that a gate refuses in it.

    Of a load of unknown phase so many `ways` are looked at.
    """
    exchanges = [AS_IT_IS, *(one for one in candidates if not one.dropped and not one.tuner)]
    found = dict(zip(map(id, exchanges), _exchanged(request.power_w, feedline, exchanges, refused, ways), strict=True))
    return [
        found[id(one)] if id(one) in found else _rebuilt(request, feedline, one, ways)
        for one in [AS_IT_IS, *candidates]
    ]


def _rebuilt(request: LineRequest, feedline: Feedline, candidate: Candidate, ways: int) -> Promise:
    """By a line made anew, for a change that leaves it with other links."""
    elements = changed_elements(request, feedline, candidate)
    changed = feedline_of(msgspec.structs.replace(request, elements=elements))
    frequency, power_w = np.array([changed.frequency_hz]), request.power_w
    refused = frozenset(index for index, link in enumerate(changed.links) if link.refused(frequency, power_w).any())
    return _exchanged(power_w, changed, [AS_IT_IS], refused, ways)[0]


def _exchanged(
    power_w: float, feedline: Feedline, exchanges: list[Candidate], refused: frozenset[int], ways: int
) -> list[Promise]:
    frequency = np.array([feedline.frequency_hz])
    # the ways of the load stand along the axis of the one frequency
    load = feedline.load.at(frequency, feedline.load.choices(ways))[:, 0]
    cautious, generous = (
        solve_every_way(feedline, frequency, end, load, _models(feedline, exchanges, end))
        for end in (CAUTIOUS, GENEROUS)
    )
    shape = len(exchanges), load.size
    middle = load.size // 2
    allowed_w = np.full(len(exchanges), np.inf)
    for solution, way in ((cautious, 0), (generous, middle)):
        for allowed in solution.allowed:
            by_way = np.sort(np.broadcast_to(largest_power_w(allowed), shape), axis=-1)
            allowed_w = np.minimum(allowed_w, by_way[:, way])
    smallest = margin(allowed_w, power_w) if power_w > 0 else np.full(len(exchanges), np.inf)
    loss = np.sort(np.broadcast_to(-decibels(generous.waves.power_w[-1]), shape), axis=-1)[:, middle]
    still = np.array([bool(refused - one.replaced.keys()) for one in exchanges])
    return [Promise(*map(float, pair)) for pair in zip(loss, np.where(still, np.nan, smallest), strict=True)]


def _models(feedline: Feedline, exchanges: list[Candidate], end: int) -> dict[int, LinkModel]:
    """The models of the links that some exchange touches, all exchanges along axis 0."""
    models: dict[int, LinkModel] = {}
    for index, link in enumerate(feedline.links):
        if isinstance(link, CableLink):
            cables = [one.replaced.get(index, link.cable) for one in exchanges]
            if len(set(cables)) > 1:
                models[index] = _cable_table(link, cables, end)
        elif isinstance(link, JointLink):
            families = [one.replaced.get(index, link.family) for one in exchanges]
            sides = [_side(feedline, exchanges, index, near) for near in (index - 1, index + 1)]
            if any(len(set(ids)) > 1 for ids in (families, *(side for side in sides if side))):
                models[index] = _joint_table(link, families, sides, end)
    return models


def _cable_table(link: CableLink, cables: list[str], end: int) -> CableModel:
    model = link.models[end]
    return cable_model(table_of_cable_ratings(cables, ENDS[end]), model.length_m, model.station)


def _joint_table(link: JointLink, families: list[str], sides: list[list[str] | None], end: int) -> JointModel:
    near, far = (None if side is None else table_of_cable_ratings(side, ENDS[end]) for side in sides)
    return joint_model(table_ratings(families, ENDS[end]), (near, far), link.models[end].station)


def _side(feedline: Feedline, exchanges: list[Candidate], index: int, near: int) -> list[str] | None:
    """The ids of the cables on one side of a joint in every exchange; none where there is no cable."""
    link = feedline.links[near] if 0 <= near < len(feedline.links) else None
    if not isinstance(link, CableLink) or abs(link.element - feedline.links[index].element) != 1:
        return None
    return [one.replaced.get(near, link.cable) for one in exchanges]
