"""Which catalogue counts in a call: the built-in one, or an edition with packs laid over it.

An edition is a value that a caller makes once and hands to every call. Inside
the call it is in force, so that no function has to pass it on, and what is
worked out of it is remembered in it and goes with it.
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import lru_cache, wraps
from typing import Any, ParamSpec, TypeVar

from .tables import Catalogue, built_in_tables

__all__ = ["Edition", "catalogue", "in_force", "per_edition"]

Arguments = ParamSpec("Arguments")
Answer = TypeVar("Answer")


class Edition:
    """One state of the catalogue, with answers worked out of it."""

    def __init__(self, tables: Catalogue) -> None:
        self.tables = tables
        self.remembered: dict[Callable[..., Any], Callable[..., Any]] = {}
        """Each decorated function with the one that remembers its answers."""


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


def per_edition(
    maxsize: int,
) -> Callable[[Callable[Arguments, Answer]], Callable[Arguments, Answer]]:
    """Remember up to `maxsize` answers of the decorated function, in each edition its own."""

    def decorate(function: Callable[Arguments, Answer]) -> Callable[Arguments, Answer]:
        @wraps(function)
        def answer(*args: Arguments.args, **kwargs: Arguments.kwargs) -> Answer:
            remembered = (_in_force.get() or _built_in()).remembered
            if function not in remembered:
                remembered[function] = lru_cache(maxsize)(function)
            remembering: Callable[Arguments, Answer] = remembered[function]
            return remembering(*args, **kwargs)

        return answer

    return decorate
