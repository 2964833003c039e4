"""Ends work that takes too long, or whose client has gone.

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

__all__ = ["limited_to"]

CHECK_EVERY_S = 0.25
"""How often it is checked whether the work shall go on."""
CLIENT = "gunicorn.socket"


@contextmanager
def limited_to(seconds: float, environ: dict[str, Any]) -> Iterator[None]:
    """Let the block take so many seconds, and no more once the client has hung up.

    Raises ServiceUnavailable or ClientDisconnected inside the block.
    """
    if current_thread() is not main_thread() or not hasattr(signal, "setitimer"):
        yield
        return
    end = time.monotonic() + seconds
    client = environ.get(CLIENT)

    def check(*_: Any) -> None:
        if client is not None and _has_hung_up(client):
            raise ClientDisconnected
        if time.monotonic() >= end:
            raise ServiceUnavailable(
                f"The answer takes more than the {seconds:g} s that a request may take here. "
                "Ask for less, or let the page or the command line compute it."
            )

    before = signal.signal(signal.SIGALRM, check)
    every = min(CHECK_EVERY_S, seconds)
    signal.setitimer(signal.ITIMER_REAL, every, every)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_REAL, 0)
        signal.signal(signal.SIGALRM, before)


def _has_hung_up(client: socket.socket) -> bool:
    try:
        return client.recv(1, socket.MSG_PEEK | socket.MSG_DONTWAIT) == b""
    except BlockingIOError:
        return False
    except OSError:
        return True
