"""The server of the command line: who may hold its connections, how it stops, and what it needs."""

import json
import logging
import re
import resource
import signal
import socket
import subprocess
import sys
from collections.abc import Iterator
from contextlib import ExitStack, closing, contextmanager
from http.client import HTTPConnection
from pathlib import Path
from typing import NamedTuple

import pytest
from wire import Client

from jointwise.backend import local_server

COMMAND = [sys.executable, "-m", "jointwise.backend.cli", "serve", "--port", "0"]
LONG = json.dumps(
    {
        "elements": [{"kind": "joint", "family": "n"}, {"kind": "cable", "cable": "rg_213", "length_m": 20}] * 10,
        "load": {"kind": "vswr", "vswr": 2},
        "band": "2m",
        "draws": 4000,
    }
).encode()
"""A request that takes long enough to be under way when the server is told to stop."""


class Served(NamedTuple):
    """A server on a port of its own, and the file its log goes to."""

    client: Client
    process: subprocess.Popen
    log: Path


@contextmanager
def served(folder: Path, *options: str, limits: str = "") -> Iterator[Served]:
    """The command, started by a shell that has set the limits before."""
    log = folder / "log"
    words = ["bash", "-c", f'{limits}\nexec "$@"', "bash", *COMMAND, *options]
    with log.open("wb") as written, subprocess.Popen(words, stderr=written) as process:
        try:
            while not (found := re.search(r"http://[\d.]+:(\d+)/", log.read_text())):
                assert process.poll() is None, log.read_text()
            yield Served(Client(int(found[1])), process, log)
        finally:
            process.terminate()


@contextmanager
def silent(port: int, count: int, address: str = "127.0.0.1") -> Iterator[list[socket.socket]]:
    """Connections from an address that say nothing."""
    with ExitStack() as stack:
        yield [
            stack.enter_context(socket.create_connection(("127.0.0.1", port), source_address=(address, 0)))
            for _ in range(count)
        ]


def is_open(connection: socket.socket) -> bool:
    """Whether the server has left a connection open."""
    connection.setblocking(False)
    try:
        return connection.recv(1) != b""
    except BlockingIOError:
        return True
    except ConnectionResetError:
        return False


def test_silent_connections_leave_room_for_others(tmp_path):
    """However many connections an address holds, it keeps no more than its share, and others are answered."""
    with served(tmp_path) as server, silent(server.client.port, 400, "127.0.0.2") as held:
        assert server.client.get("health").status == 200
        assert sum(map(is_open, held)) <= local_server.MOST_OF_AN_ADDRESS


def test_behind_a_proxy_all_come_from_one_address(tmp_path):
    """Behind a proxy, whose address all share, connections are bounded together alone."""
    count = local_server.MOST_OF_AN_ADDRESS + 10
    with served(tmp_path, "--proxies", "1") as server, silent(server.client.port, count) as held:
        assert server.client.get("health").status == 200
        assert sum(map(is_open, held)) == count


@pytest.mark.slow
def test_a_silent_connection_is_closed_in_the_end(tmp_path):
    """A connection that stays silent is closed by the server itself."""
    with served(tmp_path) as server, silent(server.client.port, 1) as (connection,):
        assert connection.recv(1) == b""


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGINT])
def test_a_stop_finishes_the_answer_under_way(tmp_path, number):
    """Told to stop, the server sends the answer it works on, lets nobody else in, and ends well."""
    with (
        served(tmp_path, "--deadline-s", "3600") as server,
        silent(server.client.port, 2),
        closing(HTTPConnection("127.0.0.1", server.client.port)) as asking,
    ):
        asking.request("POST", "/api/v1/spread", LONG, {"Content-Type": "application/json"})
        assert server.client.get("health").status == 200  # what came before is under way

        server.process.send_signal(number)

        answer = asking.getresponse()
        assert answer.status == 200
        assert json.loads(answer.read())
        assert server.process.wait() == 0
        with pytest.raises(ConnectionRefusedError):
            server.client.get("health")


def test_too_few_descriptors_cost_neither_answers_nor_a_long_log(tmp_path):
    """With descriptors scarce and many silent connections the server keeps answering, and its log stays short."""
    most = 64
    with served(tmp_path, limits=f"ulimit -n {most}") as server:
        with silent(server.client.port, 4 * most):
            pass
        with silent(server.client.port, most // 2 - 10):
            assert server.client("GET", "/").status == server.client("GET", "/jointwise.html").status == 200
    assert server.log.stat().st_size < 4000


def test_no_temporary_folder_is_said_at_the_start():
    """Where no file can be written the command says what it needs, and does not start."""
    words = ["bash", "-c", 'ulimit -f 0; exec "$@"', "bash", *COMMAND]
    outcome = subprocess.run(words, capture_output=True, text=True, check=False, stdin=subprocess.DEVNULL)

    assert outcome.returncode == 1
    assert outcome.stderr.startswith("Error: No temporary folder can be written")
    assert outcome.stderr.count("\n") == 1


def test_half_of_the_descriptors_are_for_connections(monkeypatch):
    """The bound of connections leaves as many descriptors for files, and stays within its own."""
    for soft, most in ((64, 32), (10**6, local_server.MOST_CONNECTIONS), (resource.RLIM_INFINITY, 1000)):
        monkeypatch.setattr(resource, "getrlimit", lambda _, soft=soft: (soft, soft))
        assert local_server._most_connections() == most


def test_what_was_said_lately_is_not_logged_again():
    """Of records of one kind one a minute is logged, whatever figures they have; those of another kind are."""
    lately = local_server._SaidLately()
    kinds = [("depth is %d", 0), ("depth is %d", 59), ("closed", 59.5), ("depth is %d", 61), ("depth is %d", 62)]
    records = [logging.makeLogRecord({"msg": kind, "args": (at,), "created": 1e9 + at}) for kind, at in kinds]

    assert [lately.filter(record) for record in records] == [True, False, True, True, False]
