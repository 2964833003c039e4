"""The server of `jointwise serve`: waitress, with bounds on its connections, and a stop that loses no answer."""

import logging
import signal
import socket
import tempfile
import time
from collections.abc import Callable, Iterable
from typing import Any

from flask import Flask
from waitress import wasyncore
from waitress.adjustments import Adjustments
from waitress.channel import HTTPChannel
from waitress.server import TcpWSGIServer
from waitress.task import ThreadedTaskDispatcher

from .settings import Settings

__all__ = ["LocalServer", "NoTemporaryFolderError"]

MOST_CONNECTIONS = 1000
MOST_OF_AN_ADDRESS = 100
"""Browsers keep six to a host, so this is a household behind one address."""
IDLE_S, CHECKED_EVERY_S = 20, 5
"""How long a connection may be silent, and how often it is looked whether one was."""
WAKES_EVERY_S = 1.0
SAID_AGAIN_AFTER_S = 60
LOGGERS = ("waitress", "waitress.queue")


class NoTemporaryFolderError(Exception):
    """There is no folder for temporary files; `str()` is the sentence for the user."""


class _SaidLately(logging.Filter):
    """Keeps from the log what it has said lately: visitors at a bound would fill it, two lines for each."""

    def __init__(self) -> None:
        super().__init__()
        self._last: dict[str, float] = {}

    def filter(self, record: logging.LogRecord) -> bool:
        """Whether no record of the same kind was let through within the last while."""
        if record.created - self._last.get(record.msg, 0) < SAID_AGAIN_AFTER_S:
            return False
        self._last[record.msg] = record.created
        return True


class _Listener(TcpWSGIServer):
    """A listening socket that takes so many connections of an address at a time."""

    most_of_an_address: int | None = None
    channels: Callable[[], Iterable[HTTPChannel]]

    def accept(self) -> tuple[socket.socket, Any] | None:
        """The next connection; None where there is none, or its address has enough."""
        accepted = super().accept()
        if accepted is None or self.most_of_an_address is None:
            return accepted
        connection, (address, *_) = accepted
        if sum(channel.addr[0] == address for channel in self.channels()) < self.most_of_an_address:
            return accepted
        connection.close()
        return None


class LocalServer:
    """The app at the address of its settings, listening once it is made.

    Raises OSError or ValueError where it can't listen, NoTemporaryFolderError where long bodies have no place.
    """

    def __init__(self, app: Flask, chosen: Settings) -> None:
        _need_temporary_folder()
        self._sockets: dict[int, Any] = {}
        self._longest_stop_s = chosen.deadline_s
        self._stopped = False
        self._dispatcher = ThreadedTaskDispatcher()
        adjustments = Adjustments(
            host=chosen.host,
            port=chosen.port,
            threads=chosen.threads,
            max_request_body_size=chosen.max_unread_bytes,
            clear_untrusted_proxy_headers=False,  # the app itself reads them, if told to
            connection_limit=_most_connections(),
            channel_timeout=IDLE_S,
            cleanup_interval=CHECKED_EVERY_S,
        )
        places: list[Any] = adjustments.listen  # tuples, which its stub calls texts
        self._listeners = [
            _Listener(app, self._sockets, dispatcher=self._dispatcher, adj=adjustments, sockinfo=place)
            for place in places
        ]
        for listener in self._listeners:
            listener.channels = self._channels
            listener.most_of_an_address = None if chosen.proxies else MOST_OF_AN_ADDRESS
        self._dispatcher.set_thread_count(chosen.threads)

    @property
    def addresses(self) -> list[str]:
        """Where it listens."""
        places = (listener.getsockname() for listener in self._listeners)
        return [f"http://{f'[{host}]' if ':' in host else host}:{port}/" for host, port in places]

    def run(self) -> None:
        """Answer until a signal says stop; then answer what was asked before, in the time an answer may take."""
        for name in LOGGERS:
            logging.getLogger(name).addFilter(_SaidLately())
        for number in (signal.SIGINT, signal.SIGTERM):
            signal.signal(number, self._stop)
        while not self._stopped:
            self._turn()
        for listener in self._listeners:
            wasyncore.dispatcher.close(listener)  # its own close would also shut what wakes this loop
        end = time.monotonic() + self._longest_stop_s
        while self._busy() and time.monotonic() < end:
            self._turn()
        self._dispatcher.shutdown(timeout=0)

    def _turn(self) -> None:
        # poll has no bound on the number of a descriptor, as select has
        wasyncore.loop(timeout=WAKES_EVERY_S, use_poll=True, map=self._sockets, count=1)

    def _stop(self, *_: object) -> None:
        self._stopped = True
        for number in (signal.SIGINT, signal.SIGTERM):  # a second one does not wait
            signal.signal(number, signal.SIG_DFL)
        self._listeners[0].pull_trigger()

    def _busy(self) -> bool:
        """Whether an answer is under way; a connection without one is closed."""
        channels = self._channels()
        idle = [channel for channel in channels if not channel.requests and not channel.total_outbufs_len]
        for channel in idle:
            channel.handle_close()
        return len(channels) > len(idle)

    def _channels(self) -> list[HTTPChannel]:
        return [one for one in self._sockets.values() if isinstance(one, HTTPChannel)]


def _most_connections() -> int:
    """Half of the descriptors there may be at most, so that answers still find some for their files."""
    try:
        import resource
    except ModuleNotFoundError:  # Windows, which counts descriptors otherwise
        return MOST_CONNECTIONS
    soft, _ = resource.getrlimit(resource.RLIMIT_NOFILE)
    return MOST_CONNECTIONS if soft == resource.RLIM_INFINITY else min(MOST_CONNECTIONS, soft // 2)


def _need_temporary_folder() -> None:
    try:
        tempfile.gettempdir()
    except FileNotFoundError as error:
        raise NoTemporaryFolderError(
            "No temporary folder can be written, and long requests and answers need one; allowed: TMPDIR names one."
        ) from error
