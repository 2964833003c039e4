"""Every failure as RFC 9457 problem details, made by one function.

A refused input is answered with 400, not 422: it may be broken JSON as well as
a field out of range, and it may come by the query string of a GET, which has
no content for 422 ("unprocessable content", RFC 9110 section 15.5.21) to mean.
"""

import json
from secrets import token_hex

import msgspec
from flask import Response, current_app, request
from msgspec import Struct
from werkzeug.exceptions import HTTPException, InternalServerError, RequestEntityTooLarge
from werkzeug.http import HTTP_STATUS_CODES

from jointwise.calc.operations import InputError

__all__ = ["InputProblem", "InternalProblem", "Problem", "problem_response"]

MEDIA_TYPE = "application/problem+json"
SCHEMAS = "/api/v1/openapi.json#/components/schemas/"
REFERENCE_BYTES = 6


class Problem(Struct, kw_only=True):
    """What went wrong, in the members of RFC 9457."""

    type: str = "about:blank"
    title: str
    status: int
    detail: str


class InputProblem(Problem, kw_only=True):
    """A field that can't be taken: its path, what was received as short JSON text, what is allowed."""

    type: str = SCHEMAS + "InputProblem"
    field: str
    value: str
    allowed: str


class InternalProblem(Problem, kw_only=True):
    """A fault of ours; the reference finds it in the server's log."""

    type: str = SCHEMAS + "InternalProblem"
    reference: str


def problem_response(error: Exception) -> Response:
    """The response to an exception of any kind; what is unforeseen is logged in full and not shown."""
    if isinstance(error, InputError):
        return _response(_input_problem(error))
    if isinstance(error, HTTPException) and error.code is not None and not isinstance(error, InternalServerError):
        response = _response(Problem(title=error.name, status=error.code, detail=_detail(error)))
        response.headers.extend(item for item in error.get_headers() if item[0] != "Content-Type")
        return response
    reference = token_hex(REFERENCE_BYTES)
    current_app.logger.error("Reference %s: %s %s", reference, request.method, request.full_path, exc_info=error)
    return _response(_internal_problem(reference))


def _input_problem(error: InputError) -> InputProblem:
    return InputProblem(
        title="Input refused",
        status=400,
        detail=str(error),
        field=error.field,
        value=error.value,
        allowed=error.allowed,
    )


def _internal_problem(reference: str) -> InternalProblem:
    return InternalProblem(
        title=HTTP_STATUS_CODES[500],
        status=500,
        detail=f"The server failed on this request; its log says why under {reference}.",
        reference=reference,
    )


def _detail(error: HTTPException) -> str:
    if isinstance(error, RequestEntityTooLarge):
        return f"The body has {request.content_length} bytes; allowed: up to {request.max_content_length}."
    return error.description or error.name


def _response(body: Problem) -> Response:
    # unlike msgspec's, this encoder takes the half characters that a refused body may hold
    return Response(json.dumps(msgspec.to_builtins(body)), body.status, mimetype=MEDIA_TYPE)
