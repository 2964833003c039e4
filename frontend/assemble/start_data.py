"""What the page holds before the core answers.

The fields of a request with their ranges, units and defaults, taken from the
request types themselves; the choices the form offers; how long each operation
may take; and the matrix a first visit shows. The bundle takes it in.
"""

import json
from typing import Any, cast, get_args

import msgspec
from msgspec import inspect

from jointwise.calc.catalogue import catalogue as tables
from jointwise.calc.catalogue.pack import MOST_BYTES, ranges
from jointwise.calc.catalogue.schema import HouseLimit, Interface, Kind, Source
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.choose.requests import ChooseRequest
from jointwise.calc.feedline import elements
from jointwise.calc.fitout.requests import FitoutRequest
from jointwise.calc.kit import requests as kit
from jointwise.calc.line import requests as line
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.numeric.rounding import rounded
from jointwise.calc.operations import OPERATIONS, call
from jointwise.calc.sweep.requests import SweepRequest

__all__ = ["FIRST_BANDS", "start_data"]

FIRST_BANDS = [
    *("160m", "80m", "40m", "30m", "20m", "17m", "15m", "12m", "10m"),
    *("6m", "2m", "70cm", "23cm", "13cm", "5cm", "3cm"),
]
"""The columns of a first visit: sixteen fit a tablet."""

SIGNIFICANT_DIGITS = 6
"""More than any cell prints, and the same on every machine."""

LINE_PARTS: dict[str, type[msgspec.Struct]] = {
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

KIT_PARTS: dict[str, type[msgspec.Struct]] = {"kit": kit.KitRequest, "port": kit.Port, "owned": kit.OwnedAdapter}
"""What a kit is made of, by the name its fields stand under in the page."""

NOT_OF_THE_STATION = {"elements", "load", "receiver", "explain"}


def described(field: inspect.Field) -> dict[str, Any]:
    """Range, unit, default and description of one field."""
    facts: dict[str, Any] = {"nullable": False}
    _collect(field.type, facts)
    if field.default is not msgspec.NODEFAULT:
        facts["default"] = field.default
    elif field.default_factory is not msgspec.NODEFAULT:
        facts["default"] = field.default_factory()
    else:
        facts["default"] = None
    return facts


def _declared(struct: type[msgspec.Struct]) -> tuple[inspect.Field, ...]:
    return cast(inspect.StructType, inspect.type_info(struct)).fields


def _collect(kind: inspect.Type, facts: dict[str, Any]) -> None:
    match kind:
        case inspect.Metadata(type=inner, extra_json_schema=words, extra=extra):
            facts.update({"description": words["description"]} if words and "description" in words else {})
            facts.update(extra or {})
            _collect(inner, facts)
        case inspect.UnionType(types=types):
            for inner in types:
                _collect(inner, facts)
        case inspect.NoneType():
            facts["nullable"] = True
        case inspect.IntType() | inspect.FloatType():
            facts.update(type="number", min=kind.ge, max=kind.le)
        case inspect.BoolType():
            facts["type"] = "boolean"
        case inspect.LiteralType(values=values):
            facts.update(type="choice", choices=list(values))
        case inspect.StrType(max_length=longest):
            facts.update(type="text", longest=longest)
        case inspect.ListType(item_type=item):
            items: dict[str, Any] = {}
            _collect(item, items)
            facts.update(type="list", items=items, least=kind.min_length or 0, most=kind.max_length)


def line_fields() -> dict[str, dict[str, Any]]:
    """The fields of every part of a line, and of its station."""
    station = [field for field in _declared(line.LineRequest) if field.name not in NOT_OF_THE_STATION]
    return {"station": {field.name: described(field) for field in station}} | {
        name: {field.name: described(field) for field in _declared(part)} for name, part in LINE_PARTS.items()
    }


def start_data() -> dict[str, Any]:
    """Everything the page starts from."""
    fields = {field.name: described(field) for request in (CellRequest, MatrixRequest) for field in _declared(request)}
    catalogue = json.loads(call("catalogue", b"{}"))
    request = {"bands": FIRST_BANDS}
    matrix = json.loads(call("matrix", json.dumps(request).encode()))
    return {
        "fields": fields,
        "scenario_fields": [field.name for field in _declared(MatrixRequest)],
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
        "choose": {field.name: described(field) for field in _declared(ChooseRequest)},
        "fitout": {
            field.name: described(field) for field in _declared(FitoutRequest) if field.name not in NOT_OF_THE_STATION
        },
        "sweep": {field.name: described(field) for field in _declared(SweepRequest) if field.name in SWEEP_SETTINGS},
        "kit": {name: {field.name: described(field) for field in _declared(part)} for name, part in KIT_PARTS.items()},
        "pack": {
            "values": {
                name: {"unit": unit, "min": least, "max": most}
                for name, (unit, least, most) in ranges(Interface).items()
            },
            "house_limit": {field.name: described(field) for field in _declared(HouseLimit)},
            "kinds": list(get_args(Kind)),
            "seen": list(get_args(Source.__annotations__["seen"])),
            "most_bytes": MOST_BYTES,
        },
        "longest_s": {name: operation.longest_s for name, operation in OPERATIONS.items()},
        "first_bands": FIRST_BANDS,
        "matrix": rounded(matrix, SIGNIFICANT_DIGITS),
    }
