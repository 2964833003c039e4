"""The Flask app: the page's files and one thin route per kind of request to the core."""

import os
from collections.abc import Mapping
from functools import lru_cache
from importlib.metadata import version
from pathlib import Path
from typing import Any

import msgspec
from flask import Flask, Response, abort, request, send_from_directory
from werkzeug.exceptions import MethodNotAllowed
from werkzeug.http import quote_etag

import jointwise.dist
from jointwise.backend import settings
from jointwise.backend.fields import request_body
from jointwise.backend.kept import Answer, Answers, Key, key
from jointwise.backend.openapi import document
from jointwise.backend.problem import answer
from jointwise.calc.operations import OPERATIONS, Operation, call

__all__ = ["create_app"]

JSON = "application/json"
START = "index.html"
KNOWN_QUERIES, LONGEST_KNOWN = 2000, 2000
"""How many links' meaning is remembered, and up to how many bytes of query."""

# `importlib.resources` can't open a package without a module when it is installed for editing
BUILT_PAGE = Path(jointwise.dist.__path__[0]) / "site"

CONTENT_POLICY = {
    "default-src": "'self'",
    "script-src": "'self' 'wasm-unsafe-eval'",  # Python in the browser, when the server is away
    "worker-src": "'self' blob:",
    "style-src": "'self' 'unsafe-inline'",  # Plotly writes its styles into the page
    "img-src": "'self' data: blob:",
    "connect-src": "'self'",
    "base-uri": "'none'",
    "form-action": "'none'",
    "frame-ancestors": "'none'",
}

HEADERS = {
    "Content-Security-Policy": "; ".join(f"{name} {value}" for name, value in CONTENT_POLICY.items()),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
    "Cross-Origin-Opener-Policy": "same-origin",
}


def create_app(config: Mapping[str, Any] | None = None) -> Flask:
    """The app, with settings from `config` (names of `settings.Settings`) before the environment's.

    Raises InputError when a setting is out of range.
    """
    app = Flask(__name__, static_folder=None)
    chosen = settings.read(os.environ, config or {})
    app.config["JOINTWISE"] = chosen
    app.config["MAX_CONTENT_LENGTH"] = chosen.max_body_bytes
    app.register_error_handler(Exception, answer)
    page = Path(chosen.page_folder).absolute() if chosen.page_folder else BUILT_PAGE
    answers = Answers(chosen.kept_bytes)
    described = answers.get("openapi", lambda: msgspec.json.encode(document()))
    health = msgspec.json.encode({"status": "ok", "version": version("jointwise")})

    @app.after_request
    def secure(response: Response) -> Response:
        response.headers.update(HEADERS)
        response.headers.setdefault("Cache-Control", "no-store")
        return response

    @app.get("/")
    def start() -> Response:
        if not (page / START).is_file():
            abort(503, "The page has not been built yet; the interface under /api/v1/ works without it.")
        return page_file(START)

    @app.get("/jointwise.html")
    def one_file() -> Response:
        return send_from_directory(page.parent, "jointwise.html", as_attachment=True)

    @app.get("/<path:name>")
    def page_file(name: str) -> Response:
        return send_from_directory(page, name)

    @app.post("/api/v1/<name>")
    def post(name: str) -> Response:
        operation = _operation(name)
        if request.mimetype != JSON:
            abort(415, f"The body is {request.mimetype or 'of no stated type'}; allowed: {JSON}.")
        body = request.get_data()
        answer = answers.of(key(operation, body)).body if operation.cacheable else call(operation.name, body)
        return Response(answer, mimetype=JSON)

    @app.get("/api/v1/<name>")
    def get(name: str) -> Response:
        operation = _operation(name)
        if not operation.cacheable:
            raise MethodNotAllowed(["POST"])
        packed = request.accept_encodings.quality("gzip") > 0
        read = _key if len(request.query_string) <= LONGEST_KNOWN else _key.__wrapped__
        return _cached(answers.of(read(name, request.query_string), packed), chosen.cache_seconds, packed)

    @app.get("/api/v1/openapi.json")
    def describe() -> Response:
        return _cached(described, chosen.cache_seconds)

    @app.get("/api/v1/health")
    def report_health() -> Response:
        return Response(health, mimetype=JSON)

    return app


@lru_cache(maxsize=KNOWN_QUERIES)
def _key(name: str, query: bytes) -> Key:
    """The key of the request at hand, which has this query: the same words again are not read again."""
    operation = OPERATIONS[name]
    return key(operation, request_body(operation.request, request.args.to_dict(flat=False)))


def _cached(answer: Answer, seconds: int, packed: bool = False) -> Response:
    """An answer that may be kept for so long."""
    headers = {
        "Cache-Control": f"public, max-age={seconds}",
        "ETag": quote_etag(answer.etag),
        "Vary": "Accept-Encoding",
    }
    if request.if_none_match.contains_weak(answer.etag):
        return Response(status=304, headers=headers)
    if packed:
        headers["Content-Encoding"] = "gzip"
    return Response(answer.body, headers=headers, mimetype=JSON)


def _operation(name: str) -> Operation:
    try:
        return OPERATIONS[name]
    except KeyError:
        abort(404, f"There is no operation {name!r}; allowed: {', '.join(OPERATIONS)}.")
