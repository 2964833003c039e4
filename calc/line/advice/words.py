"""A change in words: its title, its steps, and what it costs."""

from collections.abc import Iterable

from ...catalogue import catalogue
from ...catalogue.schema import Cable
from ...feedline.cable import CableLink
from ...feedline.feedline import Feedline
from ...feedline.joint import JointLink
from ...numeric.measures import length_words, size_words, weight_words
from ...physics.cable_weight import cable_weight_kg_per_m
from ...physics.gates import EXPOSURES, SEALED_TO
from ...physics.ratings import CAUTIOUS
from ...physics.scenario import Exposure
from ..requests import LineRequest
from ..results import ChangeStep
from .candidate import Candidate
from .edits import tuner_element

__all__ = ["costs_of", "steps_of", "title_of"]

LEAST_WEIGHT_KG = 0.5
"""A lighter difference is not worth a word (common practice)."""


def title_of(feedline: Feedline, candidate: Candidate) -> str:
    """What is done, in a few words."""
    links, replaced = feedline.links, candidate.replaced
    if candidate.tuner:
        moved = " instead of the one before the line" if candidate.dropped else ""
        return f"Tuner at the {'antenna' if candidate.about[0] else 'transmitter'}{moved}"
    without = ": no adapter" if candidate.dropped else ""
    if candidate.kind == "cable":
        (index,) = candidate.about
        families = {to for joint, to in replaced.items() if joint != index}
        ending = "".join(f", ending in {_family(family)}" for family in families)
        return f"{_cable(replaced[index]).name} instead of {_run(feedline, index)}{ending}{without}"
    family = _family(next(iter(replaced.values())))
    if candidate.kind == "everywhere":
        return f"{family} on every joint{without}"
    if candidate.kind == "adapter":
        (kept,) = replaced
        first, second = candidate.about
        cable = _beside(feedline, first - 1 if kept == second else second + 1)
        return f"{cable[0].upper()}{cable[1:]} ends in {family}{without}"
    old = _family(links[candidate.about[0]].family)
    if candidate.kind == "ends":
        return f"{family} instead of {old} on both ends of {_beside(feedline, candidate.about[0] + 1)}{without}"
    return f"{family} instead of {old} {_place(feedline, candidate.about[0])}"


def steps_of(request: LineRequest, feedline: Feedline, candidate: Candidate) -> list[ChangeStep]:
    """Each part it touches."""
    links = feedline.links
    if candidate.tuner:
        at = tuner_element(request, feedline, candidate)
        removed = [ChangeStep(one, links[one].element, None, links[one].name, "remove") for one in candidate.dropped]
        return [*removed, ChangeStep(candidate.about[0], at, None, "Tuner", "insert")]
    steps = [
        ChangeStep(index, links[index].element, to, _name(feedline, index, to), "exchange")
        for index, to in candidate.replaced.items()
        if to != (links[index].family or _id(links[index]))
    ]
    steps += [
        ChangeStep(index, links[index].element, None, _family(links[index].family), "remove")
        for index in candidate.dropped
    ]
    return sorted(steps, key=lambda step: step.part)


def costs_of(request: LineRequest, feedline: Feedline, candidate: Candidate) -> list[str]:
    """What it takes where that is known: connectors to fit, size and weight, matings and sealing."""
    links = feedline.links
    if candidate.tuner:
        return _of_tuner(request, candidate)
    costs = _fitting(feedline, candidate)
    new_families: dict[str, Exposure] = {}
    for index, to in candidate.replaced.items():
        link = links[index]
        if isinstance(link, CableLink) and to != link.cable:
            costs += _of_cable(_cable(link.cable), _cable(to), link.models[CAUTIOUS].length_m)
        elif isinstance(link, JointLink) and to != link.family:
            exposure = link.given.exposure or request.exposure
            new_families[to] = max(new_families.get(to, exposure), exposure, key=EXPOSURES.index)
    needed = request.matings_per_year * request.service_life_years
    for family, exposure in new_families.items():
        rated = catalogue().interfaces[family].durability_matings.low.value
        costs.append(f"{_family(family)} is made for {rated:g} matings; {needed:g} are needed")
        costs += _sealing(family, exposure)
    return costs


def _fitting(feedline: Feedline, candidate: Candidate) -> list[str]:
    """How many connectors must be fitted, and the sockets of other things that must be changed with them."""
    links = feedline.links
    ends: set[tuple[int, int]] = set()
    sockets: list[str] = []
    for index, to in candidate.replaced.items():
        if isinstance(links[index], CableLink):
            beside = (near for near in (index - 1, index + 1) if 0 <= near < len(links))
            ends |= {(index, near) for near in beside if isinstance(links[near], JointLink)}
            continue
        for step in (-1, 1):
            near = index + step
            if near in candidate.dropped:
                near += step
            elif to == links[index].family:
                continue
            if not 0 <= near < len(links):
                sockets.append("the transmitter" if near < 0 else "the antenna")
            elif isinstance(links[near], CableLink):
                ends.add((near, near - step))
            else:
                sockets.append(links[near].name)
    costs = [f"{len(ends)} connector{'s' if len(ends) > 1 else ''} to fit"] if ends else []
    if sockets:
        costs.append(f"{_listed(dict.fromkeys(sockets))} must take it too")
    return costs


def _of_cable(old: Cable, new: Cable, length_m: float) -> list[str]:
    """Its size and bend, and its weight where that differs."""
    sizes = [
        f"{size_words(cable.outer_diameter_m.value, 3)} thick, bent to {size_words(cable.fixed_bend_radius_m.value, 3)}"
        for cable in (new, old)
    ]
    costs = [f"{sizes[0]} (now {sizes[1]})"]
    weights = [cable_weight_kg_per_m(cable.id) * length_m for cable in (new, old)]
    if abs(weights[0] - weights[1]) >= LEAST_WEIGHT_KG:
        costs.append(f"weighs {weight_words(weights[0])} (now {weight_words(weights[1])})")
    return costs


def _of_tuner(request: LineRequest, candidate: Candidate) -> list[str]:
    if candidate.about[0] == 0:
        return ["the line keeps its SWR, and what it loses by it"]
    outdoors = [] if request.exposure == "indoor" else ["a box that keeps water out"]
    return ["a supply and control from the station", *outdoors]


def _sealing(family: str, exposure: Exposure) -> list[str]:
    if exposure == "indoor":
        return []
    name, stands = _family(family), catalogue().interfaces[family].exposure_mated
    if EXPOSURES.index(stands) >= SEALED_TO:
        return [f"{name} is sealed when mated"]
    return [f"{name} needs tape or a boot"]


def _place(feedline: Feedline, index: int) -> str:
    """Where a joint is."""
    links = feedline.links
    before, after = (links[near] if 0 <= near < len(links) else None for near in (index - 1, index + 1))
    if before and before.element == links[index].element:
        return f"on the adapter, towards {_beside(feedline, index + 1)}"
    if after and after.element == links[index].element:
        return f"on the adapter, towards {_beside(feedline, index - 1)}"
    if before is None:
        return "at the transmitter"
    if after is None:
        return "at the antenna"
    if isinstance(before, CableLink) and isinstance(after, CableLink) and before.cable == after.cable:
        return f"between {before.name} and {after.name}"
    return f"between {_beside(feedline, index - 1)} and {_beside(feedline, index + 1)}"


def _beside(feedline: Feedline, index: int) -> str:
    """What stands at a place of the line, in a word or two."""
    links = feedline.links
    if not 0 <= index < len(links):
        return "the transmitter" if index < 0 else "the antenna"
    link = links[index]
    return f"the {_cable(link.cable).spoken_name}" if isinstance(link, CableLink) else link.name


def _run(feedline: Feedline, index: int) -> str:
    link = feedline.links[index]
    name = _cable(link.cable).spoken_name if isinstance(link, CableLink) else link.name
    return f"{length_words(link.models[CAUTIOUS].length_m)} of {name}"


def _name(feedline: Feedline, index: int, to: str) -> str:
    return _cable(to).spoken_name if isinstance(feedline.links[index], CableLink) else _family(to)


def _id(link: object) -> str:
    return link.cable if isinstance(link, CableLink) else ""


def _cable(cable: str) -> Cable:
    return catalogue().cables[cable]


def _family(family: str) -> str:
    return catalogue().interfaces[family].name


def _listed(names: Iterable[str]) -> str:
    *most, last = names
    return f"{', '.join(most)} and {last}" if most else last
