"""The Flask app: the page's files and one thin route per kind of request to the core."""

import os
from collections.abc import Mapping
from functools import partial
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
from jointwise.backend.kept import Answer, Answers
from jointwise.backend.openapi import document
from jointwise.backend.packs import documents
from jointwise.backend.problem import answer
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import pack_schema
from jointwise.calc.operations import OPERATIONS, Operation

__all__ = ["create_app"]

JSON = "application/json"
START = "index.html"

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

    Raises InputError when a setting is out of range or a pack can't be taken.
    """
    app = Flask(__name__, static_folder=None)
    chosen = settings.read(os.environ, config or {})
    app.config["JOINTWISE"] = chosen
    app.config["MAX_CONTENT_LENGTH"] = chosen.max_body_bytes
    app.register_error_handler(Exception, answer)
    page = Path(chosen.page_folder).absolute() if chosen.page_folder else BUILT_PAGE
    packs = documents(chosen.packs_folder)
    answers = Answers(chosen.kept_bytes, edition_of(packs) if packs else None)
    # another start may have other packs: then a browser asks whether an answer is unchanged
    seconds = 0 if packs else chosen.cache_seconds
    published = {
        "openapi": document(),
        "pack-schema": pack_schema(),
        "packs": [{"label": pack.label, "text": pack.text.decode()} for pack in packs],
    }
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
        return Response(answers.of(operation, request.get_data()).body, mimetype=JSON)

    @app.get("/api/v1/<name>")
    def get(name: str) -> Response:
        operation = _operation(name)
        if not operation.cacheable:
            raise MethodNotAllowed(["POST"])
        body = request_body(operation.request, request.args.to_dict(flat=False))
        packed = request.accept_encodings.quality("gzip") > 0
        return _cached(answers.of(operation, body, packed), seconds, packed)

    @app.get("/api/v1/health")
    def report_health() -> Response:
        return Response(health, mimetype=JSON)

    for name, content in published.items():
        answered = Answer.tagged(msgspec.json.encode(content))
        app.add_url_rule(f"/api/v1/{name}.json", name, partial(_cached, answered, seconds))
    return app


def _cached(answer: Answer, seconds: int, packed: bool = False) -> Response:
    """An answer that may be kept for so long."""
    headers = {"Cache-Control": f"public, max-age={seconds}", "ETag": quote_etag(answer.etag)}
    if packed:
        headers["Content-Encoding"] = "gzip"
    response = Response(answer.body, headers=headers, mimetype=JSON)
    response.vary.add("Accept-Encoding")
    # without a tag to compare there is nothing to decide, only time to lose
    return response.make_conditional(request) if request.if_none_match else response


def _operation(name: str) -> Operation:
    try:
        return OPERATIONS[name]
    except KeyError:
        abort(404, f"There is no operation {name!r}; allowed: {', '.join(OPERATIONS)}.")
