"""Each joint of a swept line, as answered: its place, its echo against the threshold, and what could show there."""

import numpy as np

from ..physics.ratings import assumption
from .arrays import ComplexArray
from .digits import MILLIONTH_DECIMALS, four_figures, to_millionth
from .distance_chart import DistanceChart
from .linear_estimate import least_resistances
from .model import LineModel
from .places import joint_places, nearest_velocity, resolution_of
from .results import SweptJoint
from .selection import Selection

__all__ = ["swept_joints"]


def swept_joints(
    line: LineModel, measured: ComplexArray, selection: Selection, chart: DistanceChart
) -> list[SweptJoint]:
    """Every joint in order; `measured` is the reflection at the frequencies of `line`."""
    places, selected = joint_places(line), selection.selected
    positions = [place.position for place in places.values()]
    resistances = least_resistances(line, measured, selected, positions, float(assumption("sweep_evidence")))
    echoes = chart.at(np.array([place.distance_m for place in places.values()]))
    joints = []
    for row, (element, place) in enumerate(places.items()):
        others = [abs(place.distance_m - other.distance_m) for joint, other in places.items() if joint != element]
        nearest = min(others, default=None)
        resolution = resolution_of(chart.transform, nearest_velocity(line, place.position))
        echo, threshold = echoes.measured[row], echoes.threshold[row]
        excess = float(np.abs(echo - echoes.expected[row]))
        change = None if echoes.earlier is None else np.abs(echo - echoes.earlier[row])
        shadowed = selected.fault is not None and place.position > selected.fault.joint_position
        joints.append(
            SweptJoint(
                element=element,
                name=place.name,
                distance_m=round(place.distance_m, MILLIONTH_DECIMALS),
                measured=to_millionth(np.abs(echo)),
                expected=to_millionth(np.abs(echoes.expected[row])),
                excess=to_millionth(excess),
                threshold=to_millionth(threshold),
                change=None if change is None else to_millionth(change),
                shadowed=shadowed,
                seen=bool(excess > threshold) and not shadowed,
                nearest_m=None if nearest is None else round(nearest, MILLIONTH_DECIMALS),
                resolution_m=resolution,
                separate=nearest is None or nearest > resolution,
                least_resistance_ohm=four_figures(resistances[row]) if np.isfinite(resistances[row]) else None,
                probability=selection.probabilities.get(element, 0.0),
            )
        )
    return joints
