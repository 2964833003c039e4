"""The latest answers of this process, so that what many ask is computed once."""

import gzip
from collections.abc import Callable, Hashable
from contextlib import suppress
from threading import Lock
from typing import NamedTuple

from cachetools import LRUCache
from werkzeug.http import generate_etag

from jointwise.calc.catalogue import Edition
from jointwise.calc.operations import Operation, call, canonical

__all__ = ["Answer", "AnswerCache", "Key"]


class Answer(NamedTuple):
    """An answer as it is sent, and the tag that tells it from others."""

    body: bytes
    etag: str

    @classmethod
    def tagged(cls, body: bytes) -> "Answer":
        """The body with the tag that belongs to it."""
        return cls(body, generate_etag(body))


class Key(NamedTuple):
    """All that an answer depends on beside the edition: the operation, the request with every field, gzip or not."""

    operation: str
    request: bytes
    packed: bool


Compute = Callable[[str, bytes, Edition | None], bytes]


class AnswerCache:
    """Answers with an edition of the catalogue in force, together no longer than `most_bytes`.

    The one unused for longest goes first. Asking raises as `call` does.
    """

    def __init__(self, most_bytes: int, edition: Edition | None = None, compute: Compute = call) -> None:
        self._edition = edition
        self._compute = compute
        self._cached: LRUCache[Hashable, Answer] = LRUCache(most_bytes, getsizeof=lambda answer: len(answer.body))
        self._lock = Lock()

    def key(self, operation: Operation, body: bytes, packed: bool = False) -> Key:
        """The key of a request, however it was written."""
        return Key(operation.name, canonical(operation.name, body, self._edition), packed)

    def of(self, key: Key) -> Answer:
        """The answer to a request."""

        def make() -> bytes:
            answer = self.uncached(key.operation, key.request)
            return gzip.compress(answer, mtime=0) if key.packed else answer

        return self.get(key, make)

    def uncached(self, operation: str, body: bytes) -> bytes:
        """The answer to a request that hardly anybody will ask again."""
        return self._compute(operation, body, self._edition)

    def cached(self, key: Hashable) -> Answer | None:
        """The answer in the cache under a key, if there is one."""
        with self._lock:
            return self._cached.get(key)

    def get(self, key: Hashable, make: Callable[[], bytes]) -> Answer:
        """The answer in the cache under a key, or the one now made."""
        found = self.cached(key)
        if found is None:
            found = Answer.tagged(make())
            with self._lock, suppress(ValueError):  # one that is too long to keep
                self._cached[key] = found
        return found
