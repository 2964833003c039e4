"""What the page holds before the core answers.

The fields of every operation's request, and of the parts it is made of, with
ranges, units and defaults, taken from the request types themselves; the choices
the form offers; how long each operation may take; and the matrix a first visit
shows. The bundle takes it in.
"""

import json
from typing import Any, get_args

from msgspec import Struct, to_builtins

from jointwise.calc.catalogue import catalogue as tables
from jointwise.calc.catalogue.pack import MOST_PACK_BYTES
from jointwise.calc.catalogue.schema import GROUPS, Kind
from jointwise.calc.fields import Declared, Field, Flag, List, Number, OneOf, Text, object_of, objects_in
from jointwise.calc.numeric.rounding import rounded
from jointwise.calc.operations import OPERATIONS, call
from jointwise.calc.question.phrases import spoken_names
from jointwise.calc.question.wording import family_in_words, mode_in_words

from .pack_data import pack_shapes
from .version import VERSION

__all__ = ["FIRST_BANDS", "start_data"]

FIRST_BANDS = [
    *("160m", "80m", "40m", "30m", "20m", "17m", "15m", "12m", "10m"),
    *("6m", "2m", "70cm", "23cm", "13cm", "5cm", "3cm"),
]
"""The columns of a first visit: sixteen fit a tablet."""

SIGNIFICANT_DIGITS = 6
"""More than any cell prints, and the same on every machine."""


def described(field: Field) -> dict[str, Any]:
    """Range, unit and default of one field."""
    return {"nullable": field.nullable, **_facts(field), "default": to_builtins(field.default)}


def _facts(declared: Declared) -> dict[str, Any]:
    facts: dict[str, Any] = {"unit": declared.unit} if declared.unit else {}
    match declared.shape:
        case Number(least=least, most=most):
            facts |= {"type": "number", "min": least, "max": most}
        case Flag():
            facts |= {"type": "boolean"}
        case OneOf(words=words):
            facts |= {"type": "choice", "choices": list(words)}
        case Text(longest=longest):
            facts |= {"type": "text", "longest": longest}
        case List(entry=entry, shortest=shortest, longest=longest):
            facts |= {"type": "list", "items": _facts(entry), "least": shortest, "most": longest}
    return facts


def fields_of(struct: type[Struct]) -> dict[str, dict[str, Any]]:
    """The fields of a request, or of a part of one, by name."""
    return {name: described(field) for name, field in object_of(struct).fields.items()}


def _fields_of_forms(struct: type[Struct]) -> dict[str, dict[str, Any]]:
    """Of a request without `units`, which are those of the whole page and no form's."""
    return {name: field for name, field in fields_of(struct).items() if name != "units"}


def fields_of_parts() -> dict[str, dict[str, dict[str, Any]]]:
    """The fields of all that requests are made of, by the name of its Struct."""
    requests = [object_of(operation.request) for operation in OPERATIONS.values()]
    parts = {
        part.struct for request in requests for field in request.fields.values() for part in objects_in(field.shape)
    }
    return {struct.__name__: fields_of(struct) for struct in sorted(parts, key=lambda struct: struct.__name__)}


def _of_question() -> dict[str, Any]:
    """How a question speaks of connectors and modes, and the names that what is typed may be completed to."""
    families = {family: family_in_words(family) for family in tables().interfaces}
    modes = {mode: mode_in_words(mode) for mode in tables().modes}
    return {"families": families, "modes": modes, "names": spoken_names()}


def start_data() -> dict[str, Any]:
    """Everything the page starts from."""
    catalogue = json.loads(call("catalogue", b"{}"))
    request = {"bands": FIRST_BANDS}
    matrix = json.loads(call("matrix", json.dumps(request).encode()))
    return {
        "version": VERSION,
        "requests": {name: _fields_of_forms(operation.request) for name, operation in OPERATIONS.items()},
        "parts": fields_of_parts(),
        "bands": [
            {"id": band["id"], "name": band["name"], "regions": sorted(band["regions"])} for band in catalogue["bands"]
        ],
        "families": [
            {"id": family.id, "name": family.name, "also_called": family.also_called}
            for family in tables().interfaces.values()
        ],
        "modes": catalogue["modes"],
        "conditions": catalogue["conditions"],
        "cautions": catalogue["cautions"],
        "cables": [{"id": cable.id, "name": cable.name} for cable in tables().cables.values()],
        "wire_lines": [{"id": line.id, "name": line.name} for line in tables().wire_lines.values()],
        "installations": [
            {
                "id": entry.id,
                "name": entry.name,
                "exposure": entry.least_exposure.value,
                "vibration": entry.least_vibration.value,
                "added_sealing": entry.taped,
            }
            for entry in tables().installations.values()
        ],
        "noise_environments": [{"id": entry.id, "name": entry.name} for entry in tables().noise_environments.values()],
        "transmitters": [
            {
                "id": entry.id,
                "name": entry.name,
                "holds_to_vswr": entry.holds_to_vswr.value if entry.holds_to_vswr else None,
            }
            for entry in tables().transmitters.values()
        ],
        "antenna_views": [{"id": entry.id, "name": entry.name} for entry in tables().antenna_views.values()],
        "pack": {
            "shapes": pack_shapes(),
            "groups": list(GROUPS),
            "kinds": list(get_args(Kind)),
            "most_bytes": MOST_PACK_BYTES,
        },
        "question": _of_question(),
        "longest_s": {name: operation.longest_s for name, operation in OPERATIONS.items()},
        "first_bands": FIRST_BANDS,
        "matrix": rounded(matrix, SIGNIFICANT_DIGITS),
    }
