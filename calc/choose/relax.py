"""Where nothing passes: the single demand that, relaxed alone, lets a family pass, and the least it must give way."""

import math
from collections.abc import Callable, Iterator

import msgspec

from ..catalogue import catalogue
from ..errors import InputError
from ..numeric.units import engineering
from ..physics.gates import EXPOSURES, VIBRATIONS
from ..physics.margins import Margins
from .requests import ChooseRequest
from .results import Choice, Relaxation, Value

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


COOLER_STEP_C = 10
"""Air temperatures are tried in steps of so much."""

Offer = tuple[str, Value]
Passing = Callable[[ChooseRequest], list[str]]


def relaxations(
    request: ChooseRequest, choices: list[Choice], margins: Margins, highest_hz: dict[str, float], passing: Passing
) -> list[Relaxation]:
    """Each demand that is the only one some family misses, with the families that then pass.

    `highest_hz` is each band's upper edge, `passing` the families that pass a request.
    """
    rows = {family: row for row, family in enumerate(catalogue().interfaces)}
    missing_one: dict[str, list[Choice]] = {}
    for choice in choices:
        demands = {rejection.demand for rejection in choice.rejections}
        if len(demands) == 1:
            missing_one.setdefault(demands.pop(), []).append(choice)
    found = []
    for demand, candidates in missing_one.items():
        stands = {
            choice.family: _stands(demand, choice, rows[choice.family], request, margins) for choice in candidates
        }
        least = _rounded_down(max(stands.values()))
        helped = [choice for choice in candidates if demand in IN_WORDS or stands[choice.family] >= least]
        words = IN_WORDS.get(demand) or _with(demand, least, helped[0], request)
        offers = _offers(demand, least, helped, request, highest_hz)
        field, value = next((offer for offer in offers if _holds(offer, request, helped, passing)), (None, None))
        names = ", ".join(choice.name for choice in helped)
        families = [choice.family for choice in helped]
        found.append(Relaxation(demand, f"{words}: {names}.", families, field, value))
    return found


def _holds(offer: Offer, request: ChooseRequest, helped: list[Choice], passing: Passing) -> bool:
    """Whether the field may have the value, and a family passes once it has."""
    field, value = offer
    try:
        eased = msgspec.convert(msgspec.to_builtins(request) | {field: value}, ChooseRequest)
        return not {choice.family for choice in helped}.isdisjoint(passing(eased))
    except (msgspec.ValidationError, InputError):
        return False


def _offers(
    demand: str, least: float, helped: list[Choice], request: ChooseRequest, highest_hz: dict[str, float]
) -> Iterator[Offer]:
    """What the demand's field could be set to, the smallest concession first."""
    interfaces = [catalogue().interfaces[choice.family] for choice in helped]
    installations = [("installation", one) for one in catalogue().installations if one != request.installation]
    match demand:
        case "power":
            yield "power_w", least
        case "match":
            yield "return_loss_asked_db", least
        case "wear":
            yield "matings_per_year", _rounded_down(least / request.service_life_years)
        case "room":
            yield "largest_diameter_m", -least
        case "frequency":
            yield "bands", [band for band in request.bands if highest_hz[band] <= least]
            yield "frequencies_hz", [spot for spot in request.frequencies_hz if spot <= least]
        case "use":
            yield "use", "receive"
        case "vibration":
            yield from [("vibration", one) for one in reversed(VIBRATIONS) if one != request.vibration]
            yield from installations
        case "weather":
            yield "added_sealing", True
            yield from [("exposure", one) for one in reversed(EXPOSURES) if one != request.exposure]
            yield from installations
        case "cable":
            yield from [("cable", cable.id) for cable in _nearest_cables(request) if cable.id != request.cable]
        case "port":
            yield from [("port", choice.family) for choice in helped]
        case "cold":
            yield "ambient_temperature_c", min(one.lowest_temperature_c.value for one in interfaces)
        case "air temperature":
            yield "solar_irradiance_w_per_m2", 0.0
            air = request.ambient_temperature_c
            yield from [("ambient_temperature_c", air - step) for step in range(COOLER_STEP_C, 140, COOLER_STEP_C)]


def _nearest_cables(request: ChooseRequest) -> list:
    """The catalogue's cables, those nearest in diameter to the one in use first."""
    cables = catalogue().cables
    own = cables[request.cable].outer_diameter_m.value if request.cable else request.cable_diameter_m
    return sorted(cables.values(), key=lambda cable: abs(cable.outer_diameter_m.value - (own or 0.0)))


def _stands(demand: str, choice: Choice, row: int, request: ChooseRequest, margins: Margins) -> float:
    """How much of the demand a family stands in its own unit, 1 where that is no figure; room counts as negative."""
    match demand:
        case "power":
            return float(margins.allowed_w[0][:, row].min())
        case "frequency":
            return catalogue().interfaces[choice.family].rated_frequency_hz.low.value
        case "match":
            return float(margins.match_db[0][row].min()) + request.return_loss_asked_db
        case "wear":
            return choice.wear.good_for
        case "room":
            return -choice.diameter_m
    return 1.0


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
    return float(f"{math.floor(value / step + 1e-9) * step:.3g}")
