"""The sentences of a choice: what is answered, why a family is rejected, and what would let one pass."""

import math

from ..catalogue import catalogue
from ..numeric.measures import size_words, temperature_words
from ..numeric.units import engineering
from ..physics.direct_current import drop_v_per_m
from ..physics.gates import CABLE_TE11, MATCH, MATCH_DOUBT, WEATHER_WORDS
from ..physics.limits import LIMIT_NAMES, LimitId
from .evaluation import Evaluation
from .ranking import Contender
from .reasons import Reasons
from .requests import ChooseRequest
from .results import Choice

__all__ = [
    "concession",
    "current_notes",
    "current_sentence",
    "gate_request",
    "limit_sentence",
    "place_sentence",
    "port_sentence",
    "room_sentence",
    "verdict",
]

CONCESSIONS = {
    "use": "For receive only",
    "air temperature": "In cooler air or in the shade",
    "vibration": "With less vibration",
    "weather": "Sheltered from the weather",
    "cable": "With another cable",
    "cold": "Where it gets less cold",
    "house limit": "Within the house limit",
    "port": "With another port on the equipment",
}
"""Of the demands that give way by kind, not by a figure."""


SHAKING = {"none": "not shaken", "vehicle": "shaken as in a vehicle", "severe": "shaken hard"}
CURRENT_NOTES = [
    "The direct current a contact can carry is computed from its resistance and cooling; a maker's rating comes first.",
    "Arresters, tuners, filters and baluns may block direct current or short it to ground: check each one in the line.",
]


def verdict(request: ChooseRequest, ranked: list[Contender], words: Reasons) -> str:
    """The answer in one sentence: what to fit, and why before the next."""
    level = "for receive" if request.use == "receive" else f"at {engineering(request.power_w, 'W')} PEP"
    if not ranked:
        return f"No connector meets every demand {level}."
    first, *others = ranked
    ties = [one.interface.spoken_name for one in ranked if one.rank == 1]
    short = words.shortfall(first)
    fit = f"Fit {' or '.join(ties)}{f', though it {short}' if short else ''}"
    if len(ties) > 1:
        return f"{fit}: nothing here tells them apart."
    if not others:
        return f"{fit}: nothing else meets every demand {level}."
    return f"{fit}: {words.over(first, others[0])}."


def place_sentence(evaluation: Evaluation) -> str:
    """What weather, shaking and sealing are counted on, by the place or by their own fields."""
    scenario = evaluation.scenario
    taped = "sealed with tape or a boot" if scenario.added_sealing else "not sealed"
    return f"The joint sits {WEATHER_WORDS[scenario.exposure]}, {SHAKING[scenario.vibration]}, {taped}."


def current_sentence(asked_a: float, allowed_a: float) -> str:
    """A direct current [A] that is more than heat allows."""
    return f"Asked: {asked_a:g} A of direct current; heat of contact and cable allows {allowed_a:.1f} A."


def current_notes(request: ChooseRequest) -> list[str]:
    """What is to be known of the direct current asked for; nothing without one."""
    if request.dc_current_a == 0:
        return []
    if request.cable is None:
        return CURRENT_NOTES
    drop_v = drop_v_per_m(request.cable, request.dc_current_a)
    name = catalogue().cables[request.cable].name
    lost = f"{name} drops {drop_v:.2g} V a metre at {request.dc_current_a:g} A, there and back."
    return [lost, *CURRENT_NOTES]


def gate_request(evaluation: Evaluation, row: int) -> dict[str, str]:
    """What the request asks of the family of a row, by gate, where the gate's own sentence names the limit alone."""
    reach = f" Asked: up to {engineering(evaluation.highest_hz, 'Hz')}."
    heated_c = evaluation.scenario.ambient_temperature_c + evaluation.solar_rise_k[row]
    allowed_c = evaluation.allowed_temperature_c[row]
    heated, allowed = (temperature_words(one, whole=True) for one in (heated_c, allowed_c))
    return {
        **dict.fromkeys(("te11", CABLE_TE11, "no_figures", "customary_frequency"), reach),
        "receive_only": f" Asked: to transmit {engineering(evaluation.power_w, 'W')}.",
        "no_heat_room": f" Asked: {heated} with the sun; allowed: {allowed}.",
        "immersion": f" Asked: {WEATHER_WORDS[evaluation.scenario.exposure]}.",
        **dict.fromkeys((MATCH, MATCH_DOUBT), _match_request(evaluation, row)),
    }


def _match_request(evaluation: Evaluation, row: int) -> str:
    low, high = evaluation.return_loss_db[:, row]
    return f" It has {low:.1f} to {high:.1f} dB; asked: {evaluation.scenario.return_loss_asked_db:g} dB."


def limit_sentence(limit: LimitId, column: str, margin_db: float, power_w: float) -> str:
    """By how much a limit is exceeded in a column, against the power [W] asked for."""
    named = LIMIT_NAMES[limit]
    if not math.isfinite(margin_db):
        return f"On {column}: the {named} allows no power."
    asked, allowed = engineering(power_w, "W"), engineering(power_w * 10 ** (margin_db / 10), "W")
    return f"On {column}: asked {asked}, allowed {allowed} by the {named}, {-margin_db:.1f} dB over."


def port_sentence(port: str, refused_by: list[str], margin_db: float) -> str:
    """Why nothing passes behind a port: the hard gates that refuse it, else its margin below 0 dB."""
    if refused_by:
        return f"The port's own {port} joint in front of it is refused: {', '.join(refused_by)}."
    state = f"is {-margin_db:.1f} dB over its limit" if math.isfinite(margin_db) else "allows no power"
    return f"The port's own {port} joint in front of it {state}."


def room_sentence(body_m: float, free_m: float) -> str:
    """A mated body of one diameter [m] in the room for another."""
    return f"Its mated body is {size_words(body_m, 3)} across; there is room for {size_words(free_m, 3)}."


def concession(demand: str, figure: float, choice: Choice, request: ChooseRequest) -> str:
    """The demand as it reads once it gives way to a figure, in its own unit, for the sake of a choice."""
    match demand:
        case "power":
            return f"With {engineering(figure, 'W')} instead of {engineering(request.power_w, 'W')}"
        case "frequency":
            return f"With no frequency above {engineering(figure, 'Hz')}"
        case "match":
            return f"With a return loss of {figure:.3g} dB instead of {request.return_loss_asked_db:g} dB"
        case "wear":
            return f"With {figure:g} matings over the service life instead of {choice.wear.needed:g}"
        case "direct current":
            return f"With {figure:.3g} A of direct current instead of {request.dc_current_a:g} A"
        case "room":
            return f"With room for {size_words(-figure, 3)}"
    return CONCESSIONS[demand]
