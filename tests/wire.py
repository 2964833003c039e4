"""A real server on a free loopback port, and a plain client for it."""

import json
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from email.message import Message
from http.client import HTTPConnection
from threading import Thread
from typing import Any, NamedTuple

import waitress
from flask import Flask
from waitress import wasyncore

__all__ = ["Answer", "Client", "serving"]


class Answer(NamedTuple):
    """What came back over the wire."""

    status: int
    headers: Message
    body: bytes

    def json(self) -> Any:
        """The body read as JSON."""
        return json.loads(self.body)


class Client(NamedTuple):
    """Sends requests to one server."""

    port: int

    def __call__(
        self, method: str, path: str, body: bytes | None = None, headers: dict[str, str] | None = None
    ) -> Answer:
        with closing(HTTPConnection("127.0.0.1", self.port)) as connection:
            connection.request(method, path, body, {"Connection": "close", **(headers or {})})
            response = connection.getresponse()
            return Answer(response.status, response.headers, response.read())

    def post(self, operation: str, request: Any) -> Answer:
        """Ask an operation in JSON."""
        body = json.dumps(request).encode()
        return self("POST", f"/api/v1/{operation}", body, {"Content-Type": "application/json"})

    def get(self, operation: str, query: str = "", **headers: str) -> Answer:
        """Ask an operation by query string."""
        named = {name.replace("_", "-"): value for name, value in headers.items()}
        return self("GET", f"/api/v1/{operation}{'?' if query else ''}{query}", headers=named)


@contextmanager
def serving(app: Flask) -> Iterator[Client]:
    """A client of the app, which waitress serves for as long as the block runs."""
    sockets: dict[int, Any] = {}
    served = waitress.create_server(app, host="127.0.0.1", port=0, map=sockets)
    thread = Thread(target=served.run)
    thread.start()
    try:
        yield Client(int(served.effective_port))
    finally:
        # the server's loop is not thread-safe: it must close its own sockets, and ends with the last;
        # awake already, it has done so before the trigger, one of them, is pulled
        with suppress(OSError):
            served.trigger.pull_trigger(lambda: wasyncore.close_all(sockets))
        thread.join()
        served.task_dispatcher.shutdown()
