"""Where joints and cables lie along a line, and what distance a sweep of it resolves."""

from typing import NamedTuple

import numpy as np

from ..formulas.sweep import separating_span, sweep_resolution, window_broadening
from .swept_line import CablePart, JointPart, SweptLine
from .transform import DistanceTransform

__all__ = [
    "CablePlace",
    "JointPlace",
    "cable_places",
    "joint_places",
    "mean_velocity",
    "nearest_velocity",
    "resolution_of",
    "separating_top_hz",
]


class JointPlace(NamedTuple):
    """Where a joint is: its first part of the line, its name and its distance from the analyser [m]."""

    part: int
    name: str
    distance_m: float


class CablePlace(NamedTuple):
    """Where a cable is: its part of the line, its name, where it begins and ends [m]."""

    part: int
    name: str
    from_m: float
    to_m: float


def joint_places(line: SweptLine) -> dict[int, JointPlace]:
    """The place of each joint, by its element."""
    places: dict[int, JointPlace] = {}
    distance = 0.0
    for at, part in enumerate(line.parts):
        if isinstance(part, CablePart):
            distance += part.length_m
        elif isinstance(part, JointPart):
            places.setdefault(part.link.element, JointPlace(at, part.link.name, distance))
    return places


def cable_places(line: SweptLine) -> dict[int, CablePlace]:
    """The place of each cable, by its element."""
    places: dict[int, CablePlace] = {}
    distance = 0.0
    for at, part in line.cables.items():
        places[part.link.element] = CablePlace(at, part.link.name, distance, distance + part.length_m)
        distance += part.length_m
    return places


def mean_velocity(line: SweptLine) -> float:
    """The velocity factor of the line: its length against its delay."""
    cables = line.cables.values()
    delay = sum(float(cable.length_m / cable.model.ratings.velocity_factor) for cable in cables)
    return line.length_m / delay if cables else 1.0


def nearest_velocity(line: SweptLine, part: int) -> float:
    """The velocity factor of the cable nearest to a part, the one before it first."""
    cables = sorted(line.cables, key=lambda cable: (abs(cable - part), cable))
    return float(line.cables[cables[0]].model.ratings.velocity_factor) if cables else 1.0


def resolution_of(transform: DistanceTransform, velocity: float) -> float:
    """Least distance between two echoes that show apart [m], in cable of a velocity factor."""
    return float(sweep_resolution(velocity, window_broadening(transform.shape), transform.span_hz))


def separating_top_hz(transform: DistanceTransform, line: SweptLine, distances_m: list[float]) -> float | None:
    """The upper edge of a sweep that separates joints at some distances [Hz]; null where they lie in one place."""
    gap = min(np.diff(sorted(distances_m)))
    if gap <= 0:
        return None
    span = float(separating_span(mean_velocity(line), window_broadening(transform.shape), gap))
    return span / 2 if transform.low_pass else float(line.frequency_hz[0]) + span
