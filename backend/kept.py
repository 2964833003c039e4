"""The latest answers of this process, so that what many ask is computed once."""

import gzip
from collections.abc import Callable, Hashable
from contextlib import suppress
from threading import Lock
from typing import NamedTuple

from cachetools import LRUCache
from werkzeug.http import generate_etag

from jointwise.calc.operations import Operation, call, canonical

__all__ = ["Answer", "Answers", "Key", "key"]


class Answer(NamedTuple):
    """An answer as it is sent, and the tag that tells it from others."""

    body: bytes
    etag: str


class Answers:
    """Answers by key, together no longer than `most_bytes`; the one unused for longest goes first."""

    def __init__(self, most_bytes: int) -> None:
        self._kept: LRUCache[Hashable, Answer] = LRUCache(most_bytes, getsizeof=lambda answer: len(answer.body))
        self._lock = Lock()

    def of(self, key: "Key", packed: bool = False) -> Answer:
        """The answer to a request, on demand as gzip."""

        def make() -> bytes:
            answer = call(key.operation, key.request)
            return gzip.compress(answer, mtime=0) if packed else answer

        return self.get((key, packed), make)

    def get(self, key: Hashable, make: Callable[[], bytes]) -> Answer:
        """The answer kept under the key, or the one now made."""
        with self._lock:
            found = self._kept.get(key)
        if found is None:
            body = make()
            found = Answer(body, generate_etag(body))
            with self._lock, suppress(ValueError):  # one that is too long to keep
                self._kept[key] = found
        return found


class Key(NamedTuple):
    """All that an answer depends on: the operation, the request with every field, the catalogue in force.

    The catalogue is the one that came along for as long as the process runs, and so has no part here; where
    requests may bring another, its digest belongs here.
    """

    operation: str
    request: bytes


def key(operation: Operation, body: bytes) -> Key:
    """The key of a request, however it was written. Raises InputError as `call` does."""
    return Key(operation.name, canonical(operation.name, body))
