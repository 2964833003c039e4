"""What the page holds before the core answers.

The fields of a request with their ranges, units and defaults, taken from the
request types themselves; the choices the form offers; how long each operation
may take; and the matrix a first visit shows. The bundle takes it in.
"""

import json
from typing import Any, get_args

from msgspec import Struct

from jointwise.calc.catalogue import catalogue as tables
from jointwise.calc.catalogue.pack import MOST_PACK_BYTES
from jointwise.calc.catalogue.schema import HouseLimit, Interface, Kind, Source
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.choose.requests import ChooseRequest
from jointwise.calc.feedline import elements
from jointwise.calc.fields import Declared, Field, Flag, List, Number, OneOf, Text, object_of
from jointwise.calc.fitout.requests import FitoutRequest
from jointwise.calc.kit import requests as kit
from jointwise.calc.line import requests as line
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.numeric.rounding import rounded
from jointwise.calc.operations import OPERATIONS, call
from jointwise.calc.sweep.requests import SweepRequest

from .version import VERSION

__all__ = ["FIRST_BANDS", "start_data"]

FIRST_BANDS = [
    *("160m", "80m", "40m", "30m", "20m", "17m", "15m", "12m", "10m"),
    *("6m", "2m", "70cm", "23cm", "13cm", "5cm", "3cm"),
]
"""The columns of a first visit: sixteen fit a tablet."""

SIGNIFICANT_DIGITS = 6
"""More than any cell prints, and the same on every machine."""

LINE_PARTS: dict[str, type[Struct]] = {
    "cable": elements.CableRun,
    "joint": elements.Joint,
    "part": elements.Part,
    "measured": elements.MeasuredPart,
    "load_vswr": elements.GivenVswr,
    "load_impedance": elements.GivenImpedance,
    "load_table": elements.ImpedanceTable,
    "load_measured": elements.MeasuredLoad,
    "point": elements.ImpedancePoint,
    "receiver": line.Receiver,
    "preamplifier": line.Preamplifier,
}
"""What a line is made of, by the name its fields stand under in the page."""

SWEEP_SETTINGS = ("length_tolerance", "window_shape")
"""What the sweep view lets its reader set, beside the files."""

KIT_PARTS: dict[str, type[Struct]] = {"kit": kit.KitRequest, "port": kit.Port, "owned": kit.OwnedAdapter}
"""What a kit is made of, by the name its fields stand under in the page."""

NOT_OF_THE_STATION = {"elements", "load", "receiver", "explain"}


def described(field: Field) -> dict[str, Any]:
    """Range, unit, default and description of one field."""
    return {"nullable": field.nullable, **_facts(field), "default": field.default}


def _facts(declared: Declared) -> dict[str, Any]:
    facts: dict[str, Any] = {"description": declared.description} if declared.description else {}
    facts |= {"unit": declared.unit} if declared.unit else {}
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


def line_fields() -> dict[str, dict[str, Any]]:
    """The fields of every part of a line, and of its station."""
    return {"station": _of_the_station(line.LineRequest)} | {name: fields_of(part) for name, part in LINE_PARTS.items()}


def _of_the_station(request: type[Struct]) -> dict[str, dict[str, Any]]:
    return {name: facts for name, facts in fields_of(request).items() if name not in NOT_OF_THE_STATION}


def start_data() -> dict[str, Any]:
    """Everything the page starts from."""
    catalogue = json.loads(call("catalogue", b"{}"))
    request = {"bands": FIRST_BANDS}
    matrix = json.loads(call("matrix", json.dumps(request).encode()))
    return {
        "version": VERSION,
        "fields": fields_of(CellRequest) | fields_of(MatrixRequest),
        "scenario_fields": list(MatrixRequest.__struct_fields__),
        "bands": [
            {"id": band["id"], "name": band["name"], "regions": sorted(band["regions"])} for band in catalogue["bands"]
        ],
        "families": [{"id": family["id"], "name": family["name"]} for family in catalogue["families"]],
        "modes": catalogue["modes"],
        "cable_dielectrics": catalogue["cable_dielectrics"],
        "conditions": catalogue["conditions"],
        "cautions": catalogue["cautions"],
        "cables": [
            {
                "id": cable.id,
                "name": cable.name,
                "dielectric": cable.dielectric,
                "diameter_m": cable.outer_diameter_m.value,
            }
            for cable in tables().cables.values()
        ],
        "installations": [
            {"id": entry.id, "name": entry.name, "least_vibration": entry.least_vibration.value}
            for entry in tables().installations.values()
        ],
        "noise_environments": [{"id": entry.id, "name": entry.name} for entry in tables().noise_environments.values()],
        "line": line_fields(),
        "choose": fields_of(ChooseRequest),
        "fitout": _of_the_station(FitoutRequest),
        "sweep": {name: facts for name, facts in fields_of(SweepRequest).items() if name in SWEEP_SETTINGS},
        "kit": {name: fields_of(part) for name, part in KIT_PARTS.items()},
        "pack": {
            "values": {
                name: {"unit": field.unit, "min": field.range.least, "max": field.range.most}
                for name, field in object_of(Interface).fields.items()
                if field.range is not None
            },
            "house_limit": fields_of(HouseLimit),
            "kinds": list(get_args(Kind)),
            "seen": list(get_args(Source.__annotations__["seen"])),
            "most_bytes": MOST_PACK_BYTES,
        },
        "longest_s": {name: operation.longest_s for name, operation in OPERATIONS.items()},
        "first_bands": FIRST_BANDS,
        "matrix": rounded(matrix, SIGNIFICANT_DIGITS),
    }
