"""Which demands a family misses at the joint."""

from collections.abc import Sequence

from ..catalogue import catalogue
from ..physics.gates import CABLE_TE11, GATES, HOUSE, MATCH, MATCH_DOUBT, family_reasons
from ..physics.limits import LIMIT_NAMES
from ..physics.margins import LIMITS
from .evaluation import Evaluation
from .requests import ChooseRequest
from .results import Rejection
from .verdict import current_sentence, gate_request, limit_sentence, port_sentence, room_sentence

__all__ = ["port_doubts", "rejections"]

DEMAND_OF_GATE = {
    "te11": "frequency",
    CABLE_TE11: "frequency",
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
    MATCH: "match",
    MATCH_DOUBT: "match",
    HOUSE: "house limit",
}
HEAT_GATE = [gate.id for gate in GATES].index("no_heat_room")
NO_BETTER_BEHIND = ("customary_frequency", MATCH_DOUBT)
"""What a port can't be blamed for against the others: behind an adapter its own joint stands there all the same."""
NO_DRIER_BEHIND = ("weather", "vibration", "cold")
"""What the port's own joint must stand, whatever is fitted behind it."""


def rejections(request: ChooseRequest, evaluation: Evaluation, row: int) -> list[Rejection]:
    """The demands missed by the family of a row: its gates, its limits, current, the room there is, and the port."""
    family = evaluation.families[row]
    is_port = family == request.port
    found = _by_gates(evaluation, row, NO_BETTER_BEHIND if is_port else ())
    found += _by_limits(evaluation, row) + _by_current(request, evaluation, row) + _by_room(request, family)
    return found if is_port else found + _by_port(request, evaluation)


def port_doubts(request: ChooseRequest, evaluation: Evaluation) -> list[str]:
    """What speaks against the port that can't be changed, a sentence for each of its gates that fails."""
    if request.port is None:
        return []
    return [found.sentence for found in _by_gates(evaluation, evaluation.families.index(request.port))]


def _by_gates(evaluation: Evaluation, row: int, but: Sequence[str] = ()) -> list[Rejection]:
    reasons = family_reasons(evaluation.families[row], evaluation.demands[row])
    requested = gate_request(evaluation, row)
    return [
        Rejection(DEMAND_OF_GATE[gate.id], gate.name, gate.hard, reasons[gate.id] + requested.get(gate.id, ""))
        for gate, fails in zip(GATES, evaluation.failed[:, row], strict=True)
        if fails and gate.id not in but
    ]


def _by_limits(evaluation: Evaluation, row: int) -> list[Rejection]:
    """The limits exceeded; a contact only where it gets hotter than its cable, no heat where there is no room at all.

    A gate may leave none, or the direct current.
    """
    found = []
    no_room = evaluation.failed[HEAT_GATE, row] or evaluation.too_much_current[row]
    for index, limit in enumerate(LIMITS):
        margin = float(evaluation.by_limit_db[index, row])
        if margin >= 0 or (limit != "voltage" and no_room):
            continue
        if limit == "contact" and margin >= evaluation.by_limit_db[LIMITS.index("cable"), row]:
            continue
        column = evaluation.columns[evaluation.tightest_column[index, row]]
        sentence = limit_sentence(limit, column.name, margin, evaluation.power_w)
        found.append(Rejection("power", LIMIT_NAMES[limit].capitalize(), False, sentence))
    return found


def _by_current(request: ChooseRequest, evaluation: Evaluation, row: int) -> list[Rejection]:
    if evaluation.failed[HEAT_GATE, row] or not evaluation.too_much_current[row]:
        return []
    sentence = current_sentence(request.dc_current_a, float(evaluation.direct_current_a[row]))
    return [Rejection("direct current", "Direct current", True, sentence)]


def _by_room(request: ChooseRequest, family: str) -> list[Rejection]:
    body_m = catalogue().interfaces[family].body_diameter_m.value
    if request.largest_diameter_m is None or body_m <= request.largest_diameter_m:
        return []
    return [Rejection("room", "Room", False, room_sentence(body_m, request.largest_diameter_m))]


def _by_port(request: ChooseRequest, evaluation: Evaluation) -> list[Rejection]:
    """What every other family is refused for when the port's own joint in front of it can't do it."""
    if request.port is None:
        return []
    row = evaluation.families.index(request.port)
    refused_by = [
        gate.name
        for gate, fails in zip(GATES, evaluation.failed[:, row], strict=True)
        if fails and (gate.hard or gate.id in NO_DRIER_BEHIND)
    ]
    margin = float(evaluation.low_db[row])
    if not refused_by and margin >= 0:
        return []
    name = catalogue().interfaces[request.port].name
    return [Rejection("port", "Port", bool(refused_by), port_sentence(name, refused_by, margin))]
