"""Which catalogue counts in a call: the built-in one, or an edition with packs laid over it.

An edition is a value that a caller makes once and hands to every call. Inside
the call it is in force, so that no function has to pass it on, and what is
worked out of it is remembered in it and goes with it.
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import lru_cache, wraps
from typing import Any, TypeVar

from .tables import Catalogue, built_in_tables

__all__ = ["Edition", "catalogue", "in_force", "per_edition"]

Answer = TypeVar("Answer")


class Edition:
    """One state of the catalogue, with what was worked out of it."""

    def __init__(self, tables: Catalogue) -> None:
        self.tables = tables
        self.worked_out: dict[Callable[..., Any], Callable[..., Any]] = {}


@lru_cache(maxsize=1)
def _built_in() -> Edition:
    return Edition(built_in_tables())


_in_force: ContextVar[Edition | None] = ContextVar("edition", default=None)


@contextmanager
def in_force(edition: Edition | None) -> Iterator[None]:
    """Let an edition count inside the block; None stands for the built-in one."""
    token = _in_force.set(edition)
    try:
        yield
    finally:
        _in_force.reset(token)


def catalogue() -> Catalogue:
    """The tables in force."""
    return (_in_force.get() or _built_in()).tables


def per_edition(maxsize: int) -> Callable[[Callable[..., Answer]], Callable[..., Answer]]:
    """Remember up to `maxsize` answers of the decorated function, in each edition its own."""

    def decorate(function: Callable[..., Answer]) -> Callable[..., Answer]:
        @wraps(function)
        def remembered(*asked: Any) -> Answer:
            worked_out = (_in_force.get() or _built_in()).worked_out
            if function not in worked_out:
                worked_out[function] = lru_cache(maxsize)(function)
            return worked_out[function](*asked)

        return remembered

    return decorate
