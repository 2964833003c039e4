"""Repeats, word for word, what an address was answered with before: most requests are such.

It stands before the app, so that an answer from the cache costs neither routing nor headers made anew.
"""

from collections.abc import Callable, Iterable
from threading import Lock
from typing import Any, NamedTuple

from cachetools import LRUCache

from .answer_cache import AnswerCache, Key

__all__ = ["ANSWER_KEY", "RepeatedRequests", "WsgiApp"]

ANSWER_KEY = "jointwise.answer_key"
"""Where in the environment of a request the app leaves the key of the cached answer it sends."""
DIFFER_BY = ("HTTP_HOST", "PATH_INFO", "QUERY_STRING", "HTTP_ACCEPT_ENCODING", "HTTP_ORIGIN", "HTTP_IF_NONE_MATCH")
"""All of a request that a cached answer differs by."""
MOST_REQUESTS, MOST_CHARACTERS = 2000, 2000
"""How many requests are remembered, and up to how many characters of one."""
UNCHANGED = "304"

Headers = list[tuple[str, str]]
WsgiApp = Callable[[dict[str, Any], Callable[..., Any]], Iterable[bytes]]


class Sent(NamedTuple):
    """How a request was answered, and the key of the answer's body."""

    status: str
    headers: Headers
    key: Key


class RepeatedRequests:
    """A WSGI app that answers a request it has seen from the cache and passes any other on."""

    def __init__(self, app: WsgiApp, answers: AnswerCache) -> None:
        self._app = app
        self._answers = answers
        self._sent: LRUCache[tuple[str, ...], Sent] = LRUCache(MOST_REQUESTS)
        self._lock = Lock()

    def __call__(self, environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
        if environ["REQUEST_METHOD"] != "GET":
            return self._app(environ, start_response)
        asked = tuple(environ.get(name, "") for name in DIFFER_BY)
        with self._lock:
            sent = self._sent.get(asked)
        answer = None if sent is None else self._answers.cached(sent.key)
        if sent is None or answer is None:
            return self._pass_on(asked, environ, start_response)
        start_response(sent.status, sent.headers.copy())
        return [] if sent.status.startswith(UNCHANGED) else [answer.body]

    def _pass_on(
        self, asked: tuple[str, ...], environ: dict[str, Any], start_response: Callable[..., Any]
    ) -> Iterable[bytes]:
        """The app's answer, remembered if it may be repeated."""

        def begin(status: str, headers: Headers, *error: Any) -> Any:
            if ANSWER_KEY in environ and sum(map(len, asked)) <= MOST_CHARACTERS:
                with self._lock:
                    self._sent[asked] = Sent(status, headers.copy(), environ[ANSWER_KEY])
            return start_response(status, headers, *error)

        return self._app(environ, begin)
