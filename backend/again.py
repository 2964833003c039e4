"""Tells again, word for word, what an address was answered with before: most requests are such.

It stands before the app, so that an answer that is kept costs neither routing nor headers made anew.
"""

from collections.abc import Callable, Hashable, Iterable
from threading import Lock
from typing import Any, NamedTuple

from cachetools import LRUCache

from jointwise.backend.kept import Answers

__all__ = ["TOLD", "Again"]

TOLD = "jointwise.told"
"""Where the app leaves the key of the kept answer that it tells, so that it can be told again."""
DIFFER_BY = ("PATH_INFO", "QUERY_STRING", "HTTP_ACCEPT_ENCODING", "HTTP_ORIGIN", "HTTP_IF_NONE_MATCH")
"""All of a request that a kept answer differs by."""
REMEMBERED, LONGEST = 2000, 2000
"""How many requests are remembered, and up to how many characters of one."""
UNCHANGED = "304"

Headers = list[tuple[str, str]]
App = Callable[[dict[str, Any], Callable[..., Any]], Iterable[bytes]]


class Told(NamedTuple):
    """How a request was answered."""

    status: str
    headers: Headers
    key: Hashable


class Again:
    """A WSGI app that tells kept answers again and leaves the rest to another."""

    def __init__(self, app: App, answers: Answers) -> None:
        self._app = app
        self._answers = answers
        self._told: LRUCache[tuple[str, ...], Told] = LRUCache(REMEMBERED)
        self._lock = Lock()

    def __call__(self, environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
        if environ["REQUEST_METHOD"] != "GET":
            return self._app(environ, start_response)
        asked = tuple(environ.get(name, "") for name in DIFFER_BY)
        with self._lock:
            told = self._told.get(asked)
        answer = self._answers.kept(told.key) if told else None
        if told is None or answer is None:
            return self._ask(asked, environ, start_response)
        start_response(told.status, told.headers.copy())
        return [] if told.status.startswith(UNCHANGED) else [answer.body]

    def _ask(
        self, asked: tuple[str, ...], environ: dict[str, Any], start_response: Callable[..., Any]
    ) -> Iterable[bytes]:
        """The app's answer, remembered if it may be told again."""

        def begin(status: str, headers: Headers, *rest: Any) -> Any:
            if TOLD in environ and sum(map(len, asked)) <= LONGEST:
                with self._lock:
                    self._told[asked] = Told(status, headers.copy(), environ[TOLD])
            return start_response(status, headers, *rest)

        return self._app(environ, begin)
