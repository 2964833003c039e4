"""Where joints lie along a line, and what distance a sweep of it resolves."""

from typing import NamedTuple

import numpy as np

from ..formulas.sweep import separating_span, sweep_resolution, window_broadening
from .model import LineModel
from .transform import DistanceTransform

__all__ = [
    "JointPlace",
    "cable_length",
    "joint_places",
    "mean_velocity",
    "nearest_velocity",
    "resolution_of",
    "separating_top_hz",
]


class JointPlace(NamedTuple):
    """Where a joint is: its first position among the two-ports, its name and its distance from the analyser [m]."""

    position: int
    name: str
    distance_m: float


def joint_places(line: LineModel) -> dict[int, JointPlace]:
    """The place of each joint, by its element."""
    places: dict[int, JointPlace] = {}
    distance, cables, joints = 0.0, line.cable_positions, line.joint_positions
    for position, two_port in enumerate(line.two_ports):
        if position in cables:
            distance += line.cable(position).length_m
        elif position in joints:
            places.setdefault(two_port.link.element, JointPlace(position, two_port.link.name, distance))
    return places


def cable_length(line: LineModel) -> float:
    """All the cables together [m]."""
    return float(sum(line.cable(position).length_m for position in line.cable_positions))


def mean_velocity(line: LineModel) -> float:
    """The velocity factor of the line: its length against its delay."""
    cables = [line.cable(position) for position in line.cable_positions]
    delay = sum(float(cable.length_m / cable.ratings.velocity_factor) for cable in cables)
    return cable_length(line) / delay if cables else 1.0


def nearest_velocity(line: LineModel, position: int) -> float:
    """The velocity factor of the cable nearest to a position, the one before it first."""
    cables = sorted(line.cable_positions, key=lambda cable: (abs(cable - position), cable))
    return float(line.cable(cables[0]).ratings.velocity_factor) if cables else 1.0


def resolution_of(transform: DistanceTransform, velocity: float) -> float:
    """Least distance between two echoes that show apart [m], in cable of a velocity factor."""
    return float(sweep_resolution(velocity, window_broadening(transform.shape), transform.span_hz))


def separating_top_hz(transform: DistanceTransform, line: LineModel, distances_m: list[float]) -> float | None:
    """The upper edge of a sweep that separates joints at some distances [Hz]; null where they lie in one place."""
    gap = min(np.diff(sorted(distances_m)))
    if gap <= 0:
        return None
    span = float(separating_span(mean_velocity(line), window_broadening(transform.shape), gap))
    return span / 2 if transform.low_pass else float(line.frequency_hz[0]) + span
