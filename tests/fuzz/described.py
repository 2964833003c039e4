"""The served description, narrowed to requests that get past the first look: else nearly all would be refused.

What is left out of it (a band and a frequency at once, files that do not reach the band) the spoilt requests have.
"""

from typing import Any

from parsers import SEEDS

from jointwise.calc.catalogue import catalogue

TABLES = {
    "families": "interfaces",
    "family": "interfaces",
    "adapter_to": "interfaces",
    "one_family": "interfaces",
    "other_family": "interfaces",
    "port": "interfaces",
    "plan": "interfaces",
    "bands": "bands",
    "band": "bands",
    "mode": "modes",
    "condition": "conditions",
    "cable": "cables",
    "line": "wire_lines",
    "environment": "noise_environments",
    "antenna_view": "antenna_views",
    "installation": "installations",
}
"""Fields that hold an id, and the catalogue's table it is looked up in."""

REQUEST = "Request"
NOTHING = {"type": "null"}
WHOLE_TABLE = [{"frequency_hz": 1e5, "resistance_ohm": 10}, {"frequency_hz": 5e10, "resistance_ohm": 0}]
SETTLED: dict[str, dict[str, dict[str, Any]]] = {
    "MeasuredPart": {"touchstone": {"enum": [SEEDS["two-port"]]}},
    "MeasuredLoad": {"touchstone": {"enum": [SEEDS["one-port"]]}},
    "SweepRequest": {"touchstone": {"enum": [SEEDS["swept"]]}, "earlier": {"enum": [None, SEEDS["swept"]]}},
    # to check whole snapshots takes longer than to make them
    "SnapshotRequest": {
        "families": {"type": "array", "items": {"enum": list(catalogue().interfaces)}, "minItems": 1, "maxItems": 2},
        "frequencies_hz": {"type": "array", "items": {"enum": [1e5, 1.5e8, 5e10]}, "minItems": 1, "maxItems": 2},
        "bands": {"enum": [[], ["20m"], ["2m", "70cm"]]},
    },
    "ImpedanceTable": {"points": {"enum": [WHOLE_TABLE]}},
    "Preamplifier": {"before_element": {"enum": [0, 1]}},
    "LineRequest": {"explain": {"enum": [0, 1, None]}},
    "FitoutRequest": {"date": {"enum": ["", "2026-02-28"]}},
}
"""Fields of requests whose values have more rules than a schema can state, or whose answers are long: always sent."""


def narrowed(description: dict[str, Any]) -> dict[str, Any]:
    """The description with the ids that there are and one that is none, and what is asked with the settled fields."""
    told = _with_ids(description)
    schemas = told["components"]["schemas"]
    for name, fields in SETTLED.items():
        if not name.endswith(REQUEST):
            schemas[name]["properties"] |= fields
    for path in told["paths"].values():
        if "post" in path:
            body = path["post"]["requestBody"]["content"]["application/json"]
            name = body["schema"]["$ref"].rsplit("/", 1)[1]
            # an answer may hold the request, so that only what is sent is narrowed
            body["schema"] = _settled(schemas[name], SETTLED.get(name, {}))
    for parameter in told["paths"]["/api/v1/snapshot"]["get"]["parameters"]:
        if parameter["name"] in SETTLED["SnapshotRequest"]:
            parameter |= {"schema": SETTLED["SnapshotRequest"][parameter["name"]], "required": True}
    return told


def _settled(schema: dict[str, Any], fields: dict[str, Any]) -> dict[str, Any]:
    properties, required = schema["properties"] | fields, sorted({*schema.get("required", []), *fields})
    if {"on_time_s", "off_time_s"} <= properties.keys():
        properties |= {"on_time_s": NOTHING, "off_time_s": NOTHING}
    if not {"band", "frequency_hz"} <= properties.keys():
        return schema | {"properties": properties, "required": required}
    properties |= {"frequency_hz": NOTHING, "band": {"enum": list(catalogue().bands)}}
    return schema | {"properties": properties, "required": [*required, "band"]}


def _with_ids(schema: Any, table: str = "") -> Any:
    if isinstance(schema, list):
        return [_with_ids(one, table) for one in schema]
    if not isinstance(schema, dict):
        return schema
    if schema.get("type") == "object" and schema.get("additionalProperties") is not False:
        return schema  # a result: only requests take no unknown field
    if table and schema.get("type") == "string":
        return {"type": "string", "enum": [*getattr(catalogue(), table), "unheard_of"]}
    told = {key: _with_ids(value, table) for key, value in schema.items() if key != "properties"}
    if "properties" in schema:
        told["properties"] = {name: _with_ids(one, TABLES.get(name, "")) for name, one in schema["properties"].items()}
    if "in" in schema and "schema" in schema:
        told["schema"] = _with_ids(schema["schema"], TABLES.get(schema["name"], ""))
    return told
