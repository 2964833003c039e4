"""Which demands a family misses at the joint."""

from ..catalogue import catalogue
from ..physics.gates import GATES, HOUSE, family_reasons
from ..physics.margins import LIMITS
from .evaluation import Evaluation
from .requests import ChooseRequest
from .results import Rejection
from .verdict import LIMIT_NAMES, gate_request, limit_sentence, port_sentence, room_sentence

__all__ = ["port_doubts", "rejections"]

DEMAND_OF_GATE = {
    "te11": "frequency",
    "no_figures": "frequency",
    "customary_frequency": "frequency",
    "receive_only": "use",
    "no_heat_room": "air temperature",
    "immersion": "weather",
    "weather": "weather",
    "vibration": "vibration",
    "wear": "wear",
    "cable_fit": "cable",
    "cold": "cold",
    HOUSE: "house limit",
}
DEMAND_OF_LIMIT = {"heat": "power", "voltage": "power", "match": "match"}
HEAT_GATE = [gate.id for gate in GATES].index("no_heat_room")


def rejections(request: ChooseRequest, evaluation: Evaluation, row: int) -> list[Rejection]:
    """The demands missed by the family of a row: its gates, its limits, the room there is, and the port."""
    family = evaluation.families[row]
    found = _by_gates(evaluation, row) + _by_limits(request, evaluation, row) + _by_room(request, family)
    return found if family == request.port else found + _by_port(request, evaluation)


def port_doubts(request: ChooseRequest, evaluation: Evaluation) -> list[str]:
    """What speaks against the port that can't be changed, a sentence for each of its gates that fails."""
    if request.port is None:
        return []
    return [found.sentence for found in _by_gates(evaluation, evaluation.families.index(request.port))]


def _by_gates(evaluation: Evaluation, row: int) -> list[Rejection]:
    reasons = family_reasons(evaluation.families[row], evaluation.demands[row])
    requested = gate_request(evaluation, row)
    return [
        Rejection(DEMAND_OF_GATE[gate.id], gate.name, gate.hard, reasons[gate.id] + requested.get(gate.id, ""))
        for gate, fails in zip(GATES, evaluation.failed[:, row], strict=True)
        if fails
    ]


def _by_limits(request: ChooseRequest, evaluation: Evaluation, row: int) -> list[Rejection]:
    """The limits exceeded; not heat where a gate already says that the air leaves no room for it at all."""
    found = []
    for index, limit in enumerate(LIMITS):
        margin = float(evaluation.by_limit_db[index, row])
        if margin >= 0 or (limit == "heat" and evaluation.failed[HEAT_GATE, row]):
            continue
        column = evaluation.columns[evaluation.tightest_column[index, row]]
        sentence = limit_sentence(limit, column.name, margin, evaluation.power_w, request.return_loss_asked_db)
        found.append(Rejection(DEMAND_OF_LIMIT[limit], LIMIT_NAMES[limit], False, sentence))
    return found


def _by_room(request: ChooseRequest, family: str) -> list[Rejection]:
    body_m = catalogue().interfaces[family].body_diameter_m.value
    if request.largest_diameter_m is None or body_m <= request.largest_diameter_m:
        return []
    return [Rejection("room", "Room", False, room_sentence(body_m, request.largest_diameter_m))]


def _by_port(request: ChooseRequest, evaluation: Evaluation) -> list[Rejection]:
    """What every other family is refused for when the port's own joint in front of it can't carry the power."""
    if request.port is None:
        return []
    row = evaluation.families.index(request.port)
    refused_by = [
        gate.name for gate, fails in zip(GATES, evaluation.failed[:, row], strict=True) if fails and gate.hard
    ]
    margin = float(evaluation.low_db[row])
    if not refused_by and margin >= 0:
        return []
    name = catalogue().interfaces[request.port].name
    return [Rejection("port", "Port", bool(refused_by), port_sentence(name, refused_by, margin))]
