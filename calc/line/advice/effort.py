"""What a change takes: what it must bring to be worth the work, and which of two is easier to handle.

All of it is common practice, no source.
"""

import math

import numpy as np

from ...catalogue import catalogue, per_edition
from ...catalogue.defaults import customary_cable_of
from ...catalogue.schema import Cable
from ...feedline.cable import CableLink
from ...feedline.feedline import Feedline
from ...feedline.joint import JointLink
from ...physics.ratings import CAUTIOUS
from .candidate import Candidate

__all__ = ["EVERYDAY", "handling", "toll_db", "unlike"]

NOTICED_DB = 0.1
"""Smallest gain at the antenna that anyone would notice on transmit; what joints must bring."""

JOINT_DB = 0.05
"""What each joint must bring where many are exchanged."""

LONGEST_JUMPER_M = 3.0
JUMPER_DB = 0.3
"""What a new jumper must bring,"""

RUNS_DB = ((13e-3, 1.0), (20e-3, 2.0), (np.inf, 3.0))
"""a new run of a cable up to a thickness [m]: the thicker want bends, clamps and connectors of their own."""

TUNER_DB = 0.5
"""What a tuner beside the transmitter must bring,"""

FAR_TUNER_DB = 1.0
"""and one at the antenna, which stands outdoors and is set from afar."""

EVERYDAY = ("uhf", "bnc", "tnc", "n", "sma", "7_16")
"""Families that a radio amateur has at hand or finds at any dealer."""


def toll_db(feedline: Feedline, candidate: Candidate) -> float:
    """What a change must bring to be worth the work [dB]."""
    links, joints, toll = feedline.links, 0, 0.0
    if candidate.tuner:
        return FAR_TUNER_DB if candidate.about[0] else TUNER_DB
    for index, to in candidate.replaced.items():
        link = links[index]
        if isinstance(link, CableLink):
            toll += _cable_db(catalogue().cables[to], link.models[CAUTIOUS].length_m)
        else:
            joints += to != link.family
    return toll + max(JOINT_DB * joints, 0.0 if toll else NOTICED_DB)


def handling(feedline: Feedline, candidate: Candidate) -> tuple[float, ...]:
    """The easier first: thinner cable, fewer kinds of connector new to the line, everyday ones that suit the cable."""
    families = {link.family for link in feedline.links if link.family}
    cable_m, new, unusual, misfit = 0.0, set(), 0, 0.0
    for index, to in candidate.replaced.items():
        if isinstance(feedline.links[index], CableLink):
            cable_m = catalogue().cables[to].outer_diameter_m.value
            continue
        new |= {to} - families
        unusual += to not in EVERYDAY
        misfit += max((unlike(to, cable) for cable in _cables_beside(feedline, candidate, index)), default=0.0)
    return round(cable_m, 3), len(new), unusual, misfit


def unlike(family: str, cable: Cable) -> float:
    """How far a cable's diameter is from that of a family's customary one, as the logarithm of their ratio."""
    return abs(math.log(_customary_m(family) / cable.outer_diameter_m.value))


@per_edition(maxsize=256)
def _customary_m(family: str) -> float:
    """Diameter of a family's customary cable [m]."""
    customary = catalogue().cables[customary_cable_of(catalogue().interfaces[family], catalogue())]
    return customary.outer_diameter_m.value


def _cable_db(cable: Cable, length_m: float) -> float:
    if length_m <= LONGEST_JUMPER_M:
        return JUMPER_DB
    return next(toll for thickest_m, toll in RUNS_DB if cable.outer_diameter_m.value < thickest_m)


def _cables_beside(feedline: Feedline, candidate: Candidate, index: int) -> list[Cable]:
    """The cables that end in a joint; where none does, the customary one of its family."""
    links = feedline.links
    beside = [(near, links[near]) for near in (index - 1, index + 1) if 0 <= near < len(links)]
    found = [candidate.replaced.get(near, link.cable) for near, link in beside if isinstance(link, CableLink)]
    joint = links[index]
    if not found and isinstance(joint, JointLink):
        found = [customary_cable_of(catalogue().interfaces[joint.family], catalogue())]
    return [catalogue().cables[cable] for cable in found]
