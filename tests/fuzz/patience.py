"""How long one input may take, in seconds of the processor: other work on the machine does not count."""

import signal
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

PATIENCE_S = 2.0


class TooLongError(Exception):
    """Something took longer than it may."""


def _end(*_: Any) -> None:
    raise TooLongError(f"more than {PATIENCE_S:g} s")


@contextmanager
def within_patience() -> Iterator[None]:
    """Raises TooLongError inside the block once it has used up its time."""
    signal.signal(signal.SIGPROF, _end)
    signal.setitimer(signal.ITIMER_PROF, PATIENCE_S)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
