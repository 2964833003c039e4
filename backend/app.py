"""The Flask app: the page's files and one thin route per kind of request to the core."""

import os
import re
import time
from collections.abc import Callable, Iterable, Mapping
from contextlib import suppress
from contextvars import copy_context
from functools import partial
from importlib.metadata import version
from importlib.resources import files
from pathlib import Path
from typing import Any

import msgspec
from flask import Flask, Response, abort, request, send_from_directory
from flask_cors import CORS
from flask_limiter import Limiter, RequestLimit
from flask_limiter.util import get_remote_address
from werkzeug.exceptions import BadRequest, HTTPException, MethodNotAllowed, TooManyRequests
from werkzeug.http import quote_etag
from werkzeug.middleware.proxy_fix import ProxyFix

from jointwise.calc.catalogue import Edition
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import pack_schema
from jointwise.calc.errors import InputError
from jointwise.calc.operations import OPERATIONS, Operation, call

from . import settings
from .answer_cache import Answer, AnswerCache
from .deadline import limited_to
from .hosts import is_answered, names_answered
from .openapi import document
from .packs import documents
from .problem import problem_response
from .repeated import ANSWER_KEY, RepeatedRequests, WsgiApp
from .settings import Settings, environment_name
from .station_file.documents import station_schema
from .texts import request_body

__all__ = ["create_app"]

JSON = "application/json"
START = "index.html"
FRAME = "embed.html"
"""The page that other websites may show in a frame."""
OPEN_TO_OTHERS = re.compile(r"(/api/v1/(?!packs\.json$).*|/embed\.js)$")
"""What a page of another website may read, by GET and without credentials; a club's own packs are not for others."""
MOST_SHOWN = 100
"""How many characters of a name that is refused are repeated."""

BUILT_PAGE = Path(str(files("jointwise.dist") / "site"))

Route = Callable[..., Response]

CONTENT_POLICY = {
    "default-src": "'self'",
    "script-src": "'self' 'wasm-unsafe-eval'",  # Python in the browser, when the server is away
    "worker-src": "'self' blob:",
    "style-src": "'self' 'unsafe-inline'",  # Plotly writes its styles into the page
    "img-src": "'self' data: blob:",
    "connect-src": "'self'",
    "base-uri": "'none'",
    "form-action": "'none'",
}


def content_policy(frame_ancestors: str) -> str:
    """The policy of a page that these ancestors may frame."""
    return "; ".join(
        f"{name} {value}" for name, value in {**CONTENT_POLICY, "frame-ancestors": frame_ancestors}.items()
    )


HEADERS = {
    "Content-Security-Policy": content_policy("'none'"),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
    "Cross-Origin-Opener-Policy": "same-origin",
}


class FrontedFlask(Flask):
    """A Flask app that another WSGI app may stand in front of."""

    front: WsgiApp | None = None

    def wsgi_app(self, environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
        """Answer by what stands in front, which may pass a request on."""
        return (self.front or super().wsgi_app)(environ, start_response)


def create_app(config: Mapping[str, Any] | None = None) -> Flask:
    """The app, with settings from `config` (names of `settings.Settings`) before the environment's.

    Raises InputError when a setting is out of range or a pack can't be taken.
    """
    app = FrontedFlask(__name__, static_folder=None)
    chosen = settings.read(os.environ, config or {})
    app.config["JOINTWISE"] = chosen
    app.config["MAX_CONTENT_LENGTH"] = chosen.max_body_bytes
    app.register_error_handler(Exception, problem_response)
    CORS(app, resources=[OPEN_TO_OTHERS], origins=chosen.embed_origins, methods=["GET", "HEAD"], send_wildcard=True)

    headers = HEADERS | {"Cache-Control": "no-store"}

    names = names_answered(chosen)

    @app.before_request
    def check_host() -> None:
        host = request.environ.get("HTTP_HOST", "")
        if names is not None and not is_answered(host, names):
            known = ", ".join(sorted(names))
            variable = environment_name("hosts")
            abort(400, f"This server is not {host[:MOST_SHOWN]!r}; allowed: {known}, or what {variable} lists instead.")

    @app.after_request
    def secure(response: Response) -> Response:
        if OPEN_TO_OTHERS.match(request.path):
            response.vary.add("Origin")
        else:  # not even as a script or a picture
            response.headers["Cross-Origin-Resource-Policy"] = "same-origin"
        for name, value in headers.items():
            response.headers.setdefault(name, value)
        return response

    _serve_page(app, chosen)
    _serve_interface(app, chosen)
    if chosen.proxies:  # here and not in a server, so that it holds whichever server the app runs in
        app.front = ProxyFix(app.front or partial(Flask.wsgi_app, app), x_for=chosen.proxies, x_proto=0)
    return app


def _serve_page(app: Flask, chosen: Settings) -> None:
    """The files of the page; one of them other websites may frame."""
    page = Path(chosen.page_folder).absolute() if chosen.page_folder else BUILT_PAGE

    @app.get("/")
    def start() -> Response:
        if not (page / START).is_file():
            abort(503, "The page has not been built yet; the interface under /api/v1/ works without it.")
        return page_file(START)

    @app.get("/jointwise.html")
    def one_file() -> Response:
        return send_from_directory(page.parent, "jointwise.html", as_attachment=True)

    @app.get(f"/{FRAME}")
    def frame() -> Response:
        response = page_file(FRAME)
        response.headers["Content-Security-Policy"] = content_policy(" ".join(["'self'", *chosen.embed_origins]))
        return response

    @app.get("/<path:name>")
    def page_file(name: str) -> Response:
        return send_from_directory(page, name)


def _serve_interface(app: FrontedFlask, chosen: Settings) -> None:
    """The operations, what describes them, and the server's health."""
    limited = _limited(app, chosen.requests_per_minute)
    packs = documents(chosen.packs_folder)

    def compute(name: str, body: bytes, edition: Edition | None) -> bytes:
        with limited_to(chosen.deadline_s, request.environ):
            # in a context of its own, which is gone with work that is ended in the middle
            return copy_context().run(call, name, body, edition)

    answers = AnswerCache(chosen.kept_bytes, edition_of(packs) if packs else None, compute)
    if chosen.requests_per_minute == 0:  # else each request has to be counted
        app.front = RepeatedRequests(partial(Flask.wsgi_app, app), answers)
    # another start may have other packs: then a browser asks whether an answer is unchanged
    seconds = 0 if packs else chosen.cache_seconds
    published = {
        "openapi": document(),
        "pack-schema": pack_schema(),
        "station-schema": station_schema(),
        "packs": [{"label": pack.label, "text": pack.text.decode()} for pack in packs],
    }
    health = msgspec.json.encode({"status": "ok", "version": version("jointwise")})

    @app.post("/api/v1/<name>")
    @limited
    def post(name: str) -> Response:
        operation = _operation(name)
        if request.mimetype != JSON:
            abort(415, f"The body is {request.mimetype or 'of no stated type'}; allowed: {JSON}.")
        body = _body()
        _refuse_long(body)
        if operation.cacheable:
            return Response(answers.of(answers.key(operation, body)).body, mimetype=JSON)
        return Response(answers.uncached(name, body), mimetype=JSON)

    @app.get("/api/v1/<name>")
    @limited
    def get(name: str) -> Response:
        operation = _operation(name)
        if not operation.cacheable:
            raise MethodNotAllowed(["POST"])
        packed = request.accept_encodings.quality("gzip") > 0
        asked = request_body(operation.request, request.args.to_dict(flat=False))
        key = answers.key(operation, asked, packed)
        answer = answers.of(key)
        request.environ[ANSWER_KEY] = key
        return _cached(answer, seconds, packed)

    @app.get("/api/v1/health")
    def report_health() -> Response:
        return Response(health, mimetype=JSON)

    for name, content in published.items():
        answered = Answer.tagged(msgspec.json.encode(content))
        app.add_url_rule(f"/api/v1/{name}.json", name, partial(_cached, answered, seconds))


def _body() -> bytes:
    try:
        return request.get_data()
    except HTTPException:
        raise
    except Exception as error:  # every server has its own for a body that breaks off or is in bad chunks
        raise BadRequest("The body can't be read; allowed: one that is whole, in chunks as HTTP has them.") from error


class _Search(msgspec.Struct):
    """What a request says of how long it may take."""

    search: str = "quick"


def _refuse_long(body: bytes) -> None:
    with suppress(msgspec.DecodeError, UnicodeDecodeError, RecursionError):  # which the core puts into words
        search = msgspec.json.decode(body, type=_Search).search
        if search == "thorough":
            allowed = "quick of a server, which many share; the page's own core and the command line search for longer"
            raise InputError("search", search, allowed)


def _limited(app: Flask, per_minute: int) -> Callable[[Route], Route]:
    """Marks a route whose answers are counted for each address; 0 counts nothing."""
    if per_minute == 0:
        return lambda route: route

    def refuse(used: RequestLimit) -> None:
        seconds = max(1, int(used.reset_at - time.time()))
        sentence = f"This address has used up its answers; allowed: {per_minute} a minute. Ask again in {seconds} s."
        raise TooManyRequests(sentence, retry_after=seconds)

    limiter = Limiter(get_remote_address, app=app, storage_uri="memory://", on_breach=refuse)
    return limiter.shared_limit(f"{per_minute} per minute", scope="answers")


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
