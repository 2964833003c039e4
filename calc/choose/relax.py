"""Where nothing passes: the single demand that, relaxed alone, lets a family pass, and the least it must give way."""

import math

from jointwise.calc.catalogue import catalogue
from jointwise.calc.choose.requests import ChooseRequest
from jointwise.calc.choose.results import Choice, Relaxation
from jointwise.calc.matrix import Margins
from jointwise.calc.units import engineering

__all__ = ["relaxations"]

IN_WORDS = {
    "use": "For receive only",
    "air temperature": "In cooler air or in shade",
    "vibration": "With less vibration",
    "weather": "Kept from the weather",
    "cable": "On another cable",
    "cold": "Where it gets less cold",
    "house limit": "Within the house limit",
    "port": "With another port on the equipment",
}
"""Demands that give way by kind, not by a figure."""


def relaxations(request: ChooseRequest, choices: list[Choice], margins: Margins) -> list[Relaxation]:
    """Each demand that is the only one some family misses, with the families that then pass."""
    rows = {family: row for row, family in enumerate(catalogue().interfaces)}
    missing_one: dict[str, list[Choice]] = {}
    for choice in choices:
        demands = {rejection.demand for rejection in choice.rejections}
        if len(demands) == 1:
            missing_one.setdefault(demands.pop(), []).append(choice)
    return [_relaxation(demand, candidates, rows, request, margins) for demand, candidates in missing_one.items()]


def _relaxation(
    demand: str, candidates: list[Choice], rows: dict[str, int], request: ChooseRequest, margins: Margins
) -> Relaxation:
    if demand in IN_WORDS:
        words, helped = IN_WORDS[demand], candidates
    else:
        stands = {
            choice.family: _stands(demand, choice, rows[choice.family], request, margins) for choice in candidates
        }
        least = _rounded_down(max(stands.values()))
        helped = [choice for choice in candidates if stands[choice.family] >= least]
        words = _with(demand, least, candidates[0], request)
    names = ", ".join(choice.name for choice in helped)
    return Relaxation(demand, f"{words}: {names}.", [choice.family for choice in helped])


def _stands(demand: str, choice: Choice, row: int, request: ChooseRequest, margins: Margins) -> float:
    """How much of the demand a family stands, in its own unit; room, which should be small, is negative."""
    match demand:
        case "power":
            return float(margins.allowed_w[0][:, row].min())
        case "frequency":
            return catalogue().interfaces[choice.family].rated_frequency_hz.low.value
        case "match":
            return float(margins.match_db[0][row].min()) + request.return_loss_asked_db
        case "wear":
            return choice.wear.good_for
    return -choice.diameter_m


def _with(demand: str, least: float, missed: Choice, request: ChooseRequest) -> str:
    match demand:
        case "power":
            return f"With {engineering(least, 'W')} instead of {engineering(request.power_w, 'W')}"
        case "frequency":
            return f"With no frequency above {engineering(least, 'Hz')}"
        case "match":
            return f"With a return loss of {least:.3g} dB instead of {request.return_loss_asked_db:g} dB"
        case "wear":
            return f"With {least:g} matings over the service life instead of {missed.wear.needed:g}"
    return f"With room for {-least * 1e3:.3g} mm"


def _rounded_down(value: float) -> float:
    """To three figures, never up: what is offered must still pass."""
    step = 10.0 ** (math.floor(math.log10(abs(value))) - 2)
    return math.floor(value / step + 1e-9) * step
