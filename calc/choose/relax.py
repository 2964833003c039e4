"""Where nothing passes: the single demand that, relaxed alone, lets a family pass, and the least it must give way."""

import math
from collections.abc import Callable, Iterator

import msgspec

from ..catalogue import catalogue
from ..catalogue.schema import Cable
from ..errors import InputError
from ..physics.gates import EXPOSURES, VIBRATIONS
from .evaluation import Evaluation
from .requests import ChooseRequest
from .results import Choice, FieldValue, Relaxation
from .verdict import concession

__all__ = ["relaxations"]

COOLER_STEP_C, MOST_COOLER_C = 10, 140
"""Air temperatures are tried in steps of so much, over the whole range of the field."""

OWN_FIELD = {"power": "power_w", "match": "return_loss_asked_db", "direct current": "dc_current_a"}
"""Of the demands that are a figure of the request as it stands."""

Offer = tuple[str, FieldValue]
"""A field of the request, and what it could be set to."""
PassingFamilies = Callable[[ChooseRequest], list[str]]


def relaxations(
    request: ChooseRequest, choices: list[Choice], evaluation: Evaluation, passing_families: PassingFamilies
) -> list[Relaxation]:
    """Each demand that is the only one some family misses, with the families that then pass.

    `passing_families` gives those that pass a request.
    """
    missing_one: dict[str, list[Choice]] = {}
    for choice in choices:
        demands = {rejection.demand for rejection in choice.rejections}
        if len(demands) == 1:
            missing_one.setdefault(demands.pop(), []).append(choice)
    found = []
    for demand, candidates in missing_one.items():
        figures = {choice.family: _figure(demand, choice, request, evaluation) for choice in candidates}
        figure = _rounded_down(max(figures.values()))
        helped = [choice for choice in candidates if figures[choice.family] >= figure]
        families = [choice.family for choice in helped]
        offers = _offers(demand, figure, families, request, evaluation)
        field, value = next(
            (offer for offer in offers if _lets_pass(offer, request, families, passing_families)), (None, None)
        )
        names = ", ".join(choice.name for choice in helped)
        sentence = f"{concession(demand, figure, helped[0], request)}: {names}."
        found.append(Relaxation(demand, sentence, families, field, value))
    return found


def _lets_pass(offer: Offer, request: ChooseRequest, families: list[str], passing_families: PassingFamilies) -> bool:
    """Whether the field may have the value, and one of the families passes once it has."""
    field, value = offer
    try:
        eased = msgspec.convert(msgspec.to_builtins(request) | {field: value}, ChooseRequest)
        return not set(families).isdisjoint(passing_families(eased))
    except (msgspec.ValidationError, InputError):
        return False


def _offers(
    demand: str, figure: float, families: list[str], request: ChooseRequest, evaluation: Evaluation
) -> Iterator[Offer]:
    """What the demand's field could be set to, the smallest concession first."""
    installations = [("installation", name) for name in catalogue().installations if name != request.installation]
    match demand:
        case "power" | "match" | "direct current":
            yield OWN_FIELD[demand], figure
        case "wear":
            yield "matings_per_year", _rounded_down(figure / request.service_life_years)
        case "room":
            yield "largest_diameter_m", -figure
        case "frequency":
            highest_hz = {column.id: column.high_hz for column in evaluation.columns}
            yield "bands", [band for band in request.bands if highest_hz[band] <= figure]
            yield "frequencies_hz", [frequency for frequency in request.frequencies_hz if frequency <= figure]
        case "use":
            yield "use", "receive"
        case "vibration":
            yield from [("vibration", name) for name in reversed(VIBRATIONS) if name != request.vibration]
            yield from installations
        case "weather":
            yield "added_sealing", True
            yield from [("exposure", name) for name in reversed(EXPOSURES) if name != request.exposure]
            yield from installations
        case "cable":
            yield from [("cable", cable.id) for cable in _nearest_cables(request) if cable.id != request.cable]
        case "port":
            yield from [("port", family) for family in families]
        case "cold":
            interfaces = [catalogue().interfaces[family] for family in families]
            yield "ambient_temperature_c", min(interface.lowest_temperature_c.value for interface in interfaces)
        case "air temperature":
            yield "solar_irradiance_w_per_m2", 0.0
            air_c = request.ambient_temperature_c
            steps = range(COOLER_STEP_C, MOST_COOLER_C, COOLER_STEP_C)
            yield from [("ambient_temperature_c", air_c - step) for step in steps]


def _nearest_cables(request: ChooseRequest) -> list[Cable]:
    """The catalogue's cables, those nearest in diameter to the one in use first."""
    cables = catalogue().cables
    own = cables[request.cable].outer_diameter_m.value if request.cable else request.cable_diameter_m
    return sorted(cables.values(), key=lambda cable: abs(cable.outer_diameter_m.value - (own or 0.0)))


def _figure(demand: str, choice: Choice, request: ChooseRequest, evaluation: Evaluation) -> float:
    """How much of the demand a family meets, in its own unit, more being better: a diameter counts as negative.

    1 for a demand that is no figure.
    """
    row = evaluation.families.index(choice.family)
    match demand:
        case "power":
            return float(evaluation.margins.allowed_w[0][:, row].min())
        case "frequency":
            cutoff_hz = float(evaluation.margins.cable_cutoff_hz[row, 0])
            return min(catalogue().interfaces[choice.family].rated_frequency_hz.low.value, cutoff_hz)
        case "match":
            return float(evaluation.return_loss_db[0, row])
        case "wear":
            return choice.wear.good_for
        case "room":
            return -choice.diameter_m
        case "direct current":
            return float(evaluation.direct_current_a[row])
    return 1.0


def _rounded_down(value: float) -> float:
    """To three figures, never up: what is offered must still pass."""
    step = 10.0 ** (math.floor(math.log10(abs(value))) - 2)
    return float(f"{math.floor(value / step + 1e-9) * step:.3g}")
