"""The OpenAPI 3.1 description, made from the same Structs that the core reads and writes."""

from importlib.metadata import version
from typing import Any

import msgspec

from jointwise.calc.fields import object_of
from jointwise.calc.operations import OPERATIONS, Operation
from jointwise.calc.refusal import MOST_REQUEST_BYTES

from .problem import MEDIA_TYPE, InputProblem, InternalProblem, Problem
from .texts import unit_of

__all__ = ["document"]

COMPONENTS = "#/components/"
PROBLEMS: dict[int, tuple[type[Problem], str]] = {
    400: (InputProblem, "The request can't be taken; the problem names the field"),
    404: (Problem, "There is nothing at this address"),
    405: (Problem, "The address does not answer to this method"),
    413: (Problem, "The body is too long"),
    415: (Problem, "The body is not application/json"),
    429: (Problem, "The address has asked for too many answers; Retry-After says how many seconds to wait"),
    503: (Problem, "The answer takes longer than a request may on this server"),
    500: (InternalProblem, "A fault of the server, with the reference under which it is logged"),
}


def document() -> dict[str, Any]:
    """The whole description as plain data, ready for JSON."""
    schemas = _schemas()
    paths: dict[str, Any] = {
        f"/api/v1/{operation.name}": _path(operation, schemas) for operation in OPERATIONS.values()
    }
    paths["/api/v1/openapi.json"] = {"get": _plain("openapi", "This description.")}
    paths["/api/v1/pack-schema.json"] = {"get": _plain("pack_schema", "The JSON Schema of a pack.")}
    paths["/api/v1/station-schema.json"] = {"get": _plain("station_schema", "The JSON Schema of a station file.")}
    paths["/api/v1/packs.json"] = {"get": _plain("packs", "The packs in use on this server.", "array")}
    paths["/api/v1/health"] = {"get": _plain("health", "Whether the server answers, and its version.")}
    return {
        "openapi": "3.1.0",
        "info": {
            "title": "Jointwise",
            "version": version("jointwise"),
            "description": "Power through coaxial joints: margins, losses and derivations.",
        },
        "paths": paths,
        "components": {
            "schemas": schemas,
            "responses": {str(status): _problem(*words) for status, words in PROBLEMS.items()},
        },
    }


def _schemas() -> dict[str, Any]:
    requests = [operation.request for operation in OPERATIONS.values()]
    results = [operation.result for operation in OPERATIONS.values()]
    problems = [Problem, InputProblem, InternalProblem]
    _, schemas = msgspec.json.schema_components(
        [*requests, *results, *problems], ref_template=COMPONENTS + "schemas/{name}"
    )
    for request in requests:
        for name, field in object_of(request).fields.items():
            if unit := unit_of(field):
                schemas[request.__name__]["properties"][name]["x-unit"] = unit
    return schemas


def _path(operation: Operation, schemas: dict[str, Any]) -> dict[str, Any]:
    request, result = operation.request.__name__, operation.result.__name__
    answers = {"200": {"description": operation.summary, "content": _json(result)}, **_refused()}
    post = {
        "operationId": operation.name,
        "summary": operation.summary,
        "requestBody": {
            "required": True,
            "description": f"At most {MOST_REQUEST_BYTES} bytes",
            "content": _json(request),
        },
        "responses": answers,
    }
    if not operation.cacheable:
        return {"post": post}
    get = {
        "operationId": f"{operation.name}_by_query",
        "summary": f"{operation.summary} The same request as a query, for caches and links.",
        "parameters": _parameters(schemas[request]),
        "responses": {
            **answers,
            "304": {"description": "Unchanged since the answer with the ETag given in If-None-Match"},
            "414": {"description": "The query is longer than the server in front takes: ask by POST"},
        },
    }
    return {"post": post, "get": get}


def _parameters(schema: dict[str, Any]) -> list[dict[str, Any]]:
    return [
        {
            "name": name,
            "in": "query",
            "required": name in schema.get("required", ()),
            "description": described.get("description", ""),
            "schema": described,
            "style": "form",
            "explode": False,
        }
        for name, described in schema["properties"].items()
    ]


def _plain(name: str, summary: str, kind: str = "object") -> dict[str, Any]:
    content = {"application/json": {"schema": {"type": kind}}}
    return {
        "operationId": name,
        "summary": summary,
        "responses": {"200": {"description": summary, "content": content}},
    }


def _refused() -> dict[str, Any]:
    return {str(status): {"$ref": f"{COMPONENTS}responses/{status}"} for status in PROBLEMS}


def _problem(body: type[Problem], description: str) -> dict[str, Any]:
    return {"description": description, "content": _json(body.__name__, MEDIA_TYPE)}


def _json(schema: str, media_type: str = "application/json") -> dict[str, Any]:
    return {media_type: {"schema": {"$ref": f"{COMPONENTS}schemas/{schema}"}}}
