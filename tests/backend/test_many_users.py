"""Workers behind a proxy, as README says: the same answers, also while a worker is killed."""

import json
import os
import signal
import socket
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from http.client import IncompleteRead
from pathlib import Path
from typing import NamedTuple

import pytest
from many_users import APP, Served, comes, gunicorn, nginx
from wire import Client

from jointwise.calc.operations import call

pytestmark = pytest.mark.slow

AT_ONCE = 8
WORKERS = 4
"""As in README."""
LINE = {"elements": [{"kind": "joint", "family": "n"}], "load": {"kind": "vswr", "vswr": 1.5}, "band": "2m"}


class Site(NamedTuple):
    """The proxy's client and the server behind."""

    client: Client
    server: Served


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Site]:
    """Gunicorn and nginx with the repository's own settings."""
    folder: Path = tmp_path_factory.mktemp("nginx")
    with gunicorn() as server, nginx(server.port, folder) as port:
        yield Site(Client(port), server)


def test_every_worker_gives_the_cores_bytes(site):
    """Whichever worker is asked, the answer is the core's, byte for byte, with one tag."""
    answers = [site.client.get("cell", "family=n&band=2m") for _ in range(20)]

    assert {answer.body for answer in answers} == {call("cell", b'{"family": "n", "band": "2m"}')}
    assert len({answer.headers["ETag"] for answer in answers}) == 1
    assert len(site.server.workers()) == WORKERS


def test_the_proxy_packs_answers_and_keeps_the_headers(site):
    """An answer is sent packed to those who can unpack it, with the policy of the server."""
    answer = site.client("GET", "/api/v1/catalogue", headers={"Accept-Encoding": "gzip"})

    assert answer.headers["Content-Encoding"] == "gzip"
    assert len(answer.body) < len(site.client.get("catalogue").body) / 2
    assert "'unsafe-inline'" not in answer.headers["Content-Security-Policy"].split("style-src")[0]


def test_a_killed_worker_costs_nobody_an_answer(site):
    """While requests come at once a worker is killed: every answer is right, and another worker takes its place.

    What a dying worker had begun to send breaks off, as the proxy can't ask that anew; the client does.
    """
    expected = json.loads(call("line", json.dumps(LINE).encode()))
    before = site.server.workers()

    def ask(turn: int) -> bool:
        if turn == AT_ONCE:
            os.kill(before[0], signal.SIGKILL)
        try:
            answer = site.client.post("line", LINE)
        except IncompleteRead:
            answer = site.client.post("line", LINE)
        return answer.status == 200 and answer.json() == expected

    with ThreadPoolExecutor(AT_ONCE) as threads:
        answered = list(threads.map(ask, range(AT_ONCE * 20)))

    assert all(answered)
    assert comes(lambda: len(site.server.workers()) == WORKERS and before[0] not in site.server.workers())
    assert set(before[1:]) <= set(site.server.workers())


def test_the_visitors_that_the_proxy_names_are_told_apart(tmp_path):
    """Each visitor has a limit of its own behind the proxy, and can't take another's by a header it sends."""
    limited = {"JOINTWISE_REQUESTS_PER_MINUTE": "1"}
    with gunicorn(APP, "--workers", "1", env=limited) as server:
        ask = Client(server.port)
        visitors = [{"X_Forwarded_For": f"192.0.2.{visitor}"} for visitor in (*range(1, 7), 1)]

        assert [ask.get("cell", "family=n&band=2m", **named).status for named in visitors] == [200] * 6 + [429]
        with nginx(server.port, tmp_path) as port:
            answers = [Client(port).get("cell", "family=n&band=2m", **named).status for named in visitors[:2]]
            assert answers == [200, 429]


BAD_CHUNKS = [
    b"zz\r\n{}\r\n0\r\n\r\n",
    b"2\r\n{}xx0\r\n\r\n",
    b"-2\r\n{}\r\n0\r\n\r\n",
    b"9\r\n{}",
    b"2\r\n{}\r\n0\r\n",
    b"",
]


@pytest.mark.parametrize("chunks", BAD_CHUNKS)
def test_a_bad_chunk_is_refused(site, chunks):
    """A worker without a proxy in front answers a body in bad chunks with 400, as the client's own mistake."""
    head = b"POST /api/v1/catalogue HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
    with socket.create_connection(("127.0.0.1", site.server.port)) as asking:
        asking.sendall(head + b"Transfer-Encoding: chunked\r\n\r\n" + chunks)
        asking.shutdown(socket.SHUT_WR)
        answer = asking.makefile("rb").read()

    assert answer.startswith(b"HTTP/1.1 400 ")
    assert b"application/problem+json" in answer
