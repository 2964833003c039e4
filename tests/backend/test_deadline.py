"""No request holds a worker for long: what takes too long, what nobody waits for, and what is stuck."""

import socket
from pathlib import Path

import pytest
from many_users import comes, gunicorn, nginx
from wire import Client

pytestmark = pytest.mark.slow

HERE = Path(__file__).parent
JOINT = {"kind": "joint", "family": "n", "adapter_to": "uhf"}
LONG = {"elements": [JOINT] * 6, "load": {"kind": "vswr", "vswr": 1.5}, "band": "2m", "draws": 100_000}
"""Some seconds of work."""


def test_what_takes_too_long_is_ended_and_said(tmp_path, monkeypatch):
    """A request that takes longer than the deadline is answered with a problem, and its worker lives on."""
    monkeypatch.setenv("JOINTWISE_DEADLINE_S", "0.1")
    with gunicorn() as server, nginx(server.port, tmp_path) as port:
        client = Client(port)
        assert client.get("health").status == 200
        before = server.workers()

        late, short = client.post("spread", LONG), client.get("health")

        assert set(before) <= set(server.workers())
    assert (late.status, late.headers["Content-Type"]) == (503, "application/problem+json")
    assert "more than the 0.1 s" in late.json()["detail"]
    assert short.status == 200


def test_work_ends_when_nobody_waits_for_it(tmp_path):
    """The only worker is free again once the one who asked for work without end hangs up, on server or proxy."""
    options = ("--workers", "1")
    with gunicorn("endless:app", *options, cwd=HERE) as server, nginx(server.port, tmp_path) as proxy:
        assert Client(server.port)("GET", "/").body == b"ready"
        worker = server.workers()

        for port in (server.port, proxy):
            begun = tmp_path / f"begun-{port}"
            with socket.create_connection(("127.0.0.1", port)) as asker:
                asker.sendall(f"GET /wanted?begun={begun} HTTP/1.1\r\nHost: here\r\n\r\n".encode())
                assert comes(begun.exists)

            assert Client(port)("GET", "/").body == b"ready"
        assert server.workers() == worker


def test_a_stuck_worker_is_replaced_and_the_visitor_told(tmp_path):
    """The proxy says in a problem that nobody answered, and another worker takes the stuck one's place."""
    options = ("--workers", "1", "--timeout", "1")
    with gunicorn("endless:app", *options, cwd=HERE) as server, nginx(server.port, tmp_path) as port:
        client = Client(port)
        assert client("GET", "/").body == b"ready"
        worker = server.workers()

        told = client("GET", "/stuck")

        assert comes(lambda: server.workers() and server.workers() != worker)
        assert client("GET", "/").body == b"ready"
    assert (told.status, told.headers["Content-Type"]) == (504, "application/problem+json")
    assert told.json()["status"] == 504


def test_a_long_body_is_refused_by_the_proxy_as_by_the_server(tmp_path):
    """A body over the bound is refused with the same status and words by the proxy and by the server behind it."""
    announced = {"Content-Type": "application/json", "Content-Length": "4000001"}
    with gunicorn() as server, nginx(server.port, tmp_path) as port:
        refused = [Client(at)("POST", "/api/v1/matrix", headers=announced) for at in (port, server.port)]

    assert [one.status for one in refused] == [413, 413]
    assert refused[0].json() == refused[1].json()
