"""Each joint and cable of a swept line, as answered: its place, its echo against the threshold, what could show."""

import numpy as np

from .digits import MILLIONTH_DECIMALS, four_figures, to_millionth
from .distance_chart import DistanceChart
from .places import cable_places, joint_places, nearest_velocity, resolution_of
from .results import State, SweptCable, SweptJoint
from .selection import Selection, floor, least_odds
from .swept_line import SweptLine
from .visibility import visibilities

__all__ = ["swept_cables", "swept_joints"]

WORDS: dict[State, str] = {
    "bad": "bad",
    "possible": "may be the bad one",
    "behind": "behind the fault: mend that first",
    "hidden": "this sweep can't judge it",
    "sound": "no sign of a fault",
}


def swept_joints(line: SweptLine, selection: Selection, chart: DistanceChart) -> list[SweptJoint]:
    """Every joint in order; the line is the one that was fitted."""
    places, selected = joint_places(line), selection.selected
    parts = [place.part for place in places.values()]
    visible = visibilities(line, selected, parts, least_odds(), floor())
    echoes = chart.at(np.array([place.distance_m for place in places.values()]))
    probabilities = _probabilities(selection)
    joints = []
    for row, (element, place) in enumerate(places.items()):
        others = [abs(place.distance_m - other.distance_m) for joint, other in places.items() if joint != element]
        nearest = min(others, default=None)
        resolution = resolution_of(chart.transform, nearest_velocity(line, place.part))
        echo, threshold = echoes.measured[row], echoes.threshold[row]
        excess = float(np.abs(echo - echoes.expected[row]))
        change = None if echoes.earlier is None else np.abs(echo - echoes.earlier[row])
        # what is bad there is another antenna to the analyser
        at_antenna = line.is_end_vague and element == line.end_element
        state = _state(selection, element, place.distance_m, judged=visible[row].judged and not at_antenna)
        ohm, farad = visible[row].least_ohm, visible[row].least_farad
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
                shadowed=state == "behind",
                seen=bool(excess > threshold) and state in ("bad", "possible"),
                nearest_m=None if nearest is None else round(nearest, MILLIONTH_DECIMALS),
                resolution_m=resolution,
                separate=nearest is None or nearest > resolution,
                least_resistance_ohm=four_figures(ohm) if np.isfinite(ohm) else None,
                least_capacitance_f=four_figures(farad) if np.isfinite(farad) else None,
                probability=probabilities.get(element, 0.0),
                state=state,
                words=WORDS[state],
            )
        )
    return joints


def swept_cables(line: SweptLine, selection: Selection) -> list[SweptCable]:
    """Every cable in order."""
    found = []
    for element, place in cable_places(line).items():
        state = _state(selection, element, place.from_m, judged=True)
        found.append(
            SweptCable(
                element=element,
                name=place.name,
                from_m=round(place.from_m, MILLIONTH_DECIMALS),
                to_m=round(place.to_m, MILLIONTH_DECIMALS),
                state=state,
                words=WORDS[state],
            )
        )
    return found


def _state(selection: Selection, element: int, distance_m: float, *, judged: bool) -> State:
    """Of a joint, or of a cable from its beginning on."""
    if any(one.suspicion.element == element for one in selection.named):
        return "bad"
    if element in selection.apart_elements:
        return "possible"
    if selection.finding in ("no fit", "cannot tell"):
        return "hidden"
    if selection.named and distance_m > min(one.suspicion.distance_m for one in selection.named):
        return "behind"
    return "sound" if judged else "hidden"


def _probabilities(selection: Selection) -> dict[int, float]:
    """How sure it is of each element named or not told apart."""
    if selection.named:
        return {one.suspicion.element: round(one.probability, 3) for one in selection.named}
    found: dict[int, float] = {}
    for one in selection.apart:
        found[one.element] = round(found.get(one.element, 0.0) + one.probability, 3)
    return found
