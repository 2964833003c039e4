"""Ends work that takes too long, or whose asker has gone.

It works where an app answers in the main thread of its process, as the workers of README's server command do: only
there, and not on Windows, can Python interrupt itself. Elsewhere work goes on until it is done, and the bounds of a
request alone limit it.
"""

import signal
import socket
import time
from collections.abc import Iterator
from contextlib import contextmanager
from threading import current_thread, main_thread
from typing import Any

from werkzeug.exceptions import ClientDisconnected, ServiceUnavailable

__all__ = ["wanted_within"]

LOOK_EVERY_S = 0.25
"""So often it is looked whether the work shall go on."""
ASKER = "gunicorn.socket"


@contextmanager
def wanted_within(seconds: float, environ: dict[str, Any]) -> Iterator[None]:
    """Let the block take so many seconds, and no more once the asker of the request has hung up.

    Raises ServiceUnavailable or ClientDisconnected inside the block.
    """
    if current_thread() is not main_thread() or not hasattr(signal, "setitimer"):
        yield
        return
    end = time.monotonic() + seconds
    asker = environ.get(ASKER)

    def look(*_: Any) -> None:
        if asker is not None and _has_hung_up(asker):
            raise ClientDisconnected
        if time.monotonic() >= end:
            raise ServiceUnavailable(
                f"The answer takes more than the {seconds:g} s that a request may take here. "
                "Ask for less, or let the page or the command line compute it."
            )

    before = signal.signal(signal.SIGALRM, look)
    every = min(LOOK_EVERY_S, seconds)
    signal.setitimer(signal.ITIMER_REAL, every, every)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_REAL, 0)
        signal.signal(signal.SIGALRM, before)


def _has_hung_up(asker: socket.socket) -> bool:
    try:
        return asker.recv(1, socket.MSG_PEEK | socket.MSG_DONTWAIT) == b""
    except BlockingIOError:
        return False
    except OSError:
        return True
