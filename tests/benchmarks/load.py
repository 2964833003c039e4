"""Requests a second and their times under the server command of README, against a bare Flask route of as many bytes.

Run with `make bench ONLY="load soak"`; the soak is five minutes of everything at once. Needs wrk and nginx. Ours and
the bare route are loaded by turns, each turn the other way round, so that whatever else the machine does falls on both;
the share is the median over the turns.
"""

import argparse
import json
import os
import statistics
import subprocess
import sys
import tempfile
import time
from contextlib import ExitStack, suppress
from pathlib import Path
from typing import NamedTuple
from urllib.error import HTTPError
from urllib.request import Request, urlopen

from many_users import Served, gunicorn, nginx

HERE = Path(__file__).parent
SCRIPT = HERE / "wrk.lua"
CONNECTIONS = (1, 8, 64)
TURNS = 7
TURN_S = 1
PATIENCE = "20s"
"""How long a request may wait before it counts as an error."""
SOAK_S = 300
SOAK_LOOK_S = 20
SETTLED = 0.6
"""Share of the soak after which every process holds as many answers as it may."""
AIMED_SHARE = 0.7
IDLE = "/0"
"""An address that costs next to nothing: the bare route has it, ours has none and says so."""

POWERS = ",".join(str(power) for power in range(24))
ELEMENTS = [
    {"kind": "joint", "family": "n"},
    {"kind": "cable", "cable": "rg_213", "length_m": 20},
    {"kind": "joint", "family": "uhf"},
    {"kind": "part", "loss_db": 0.2, "vswr": 1.2},
    {"kind": "joint", "family": "bnc"},
]
LINE = json.dumps({"elements": ELEMENTS, "load": {"kind": "vswr", "vswr": 2}, "band": "2m"})


class Row(NamedTuple):
    """One kind of request."""

    name: str
    path: str
    body: str | None = None
    tagged: bool = False
    """Asked with the tag of the answer one has."""
    refused: bool = False
    """Whether any other answer than a refusal is an error."""
    vary: str = ""
    """What goes before a random number at the end of the path, so that no request is like another."""


ROWS = [
    Row("matrix, default", "/api/v1/matrix"),
    Row("matrix, 24 powers", f"/api/v1/matrix?powers_w={POWERS}"),
    Row("cell", "/api/v1/cell?family=n&band=2m"),
    Row("cell, unchanged (304)", "/api/v1/cell?family=n&band=2m", tagged=True),
    Row("line, 5 elements (POST)", "/api/v1/line", LINE),
]


SOAKED = [
    *ROWS,
    Row("cell, ever another", "/api/v1/cell?family=n&band=2m", vary="&vswr=1"),
    Row("refused", "/api/v1/cell?family=n&band=2m&colour=red", refused=True),
    Row("page", "/"),
]
"""Half a million of different cells would not fit into what a process keeps."""


class Measured(NamedTuple):
    """What wrk saw."""

    per_second: float
    p50_ms: float
    p99_ms: float
    errors: int


def asked(port: int, row: Row) -> tuple[int, str]:
    """Length and tag of an answer."""
    request = Request(f"http://127.0.0.1:{port}{row.path}", row.body and row.body.encode())
    request.add_header("Content-Type", "application/json")
    with urlopen(request) as answer:
        return len(answer.read()), answer.headers["ETag"] or ""


def wrk(port: int, path: str, connections: int, seconds: int, **environment: str) -> Measured:
    """Load one address with so many connections, once what the load before left behind has been answered."""
    with suppress(HTTPError):
        urlopen(f"http://127.0.0.1:{port}{IDLE}").close()
    command = [
        "wrk",
        "-t1",
        f"-c{connections}",
        f"-d{seconds}s",
        "--timeout",
        PATIENCE,
        "-s",
        str(SCRIPT),
        f"http://127.0.0.1:{port}{path}",
    ]
    printed = subprocess.run(command, check=True, capture_output=True, text=True, env=os.environ | environment).stdout
    told = json.loads(printed.splitlines()[-1])
    return Measured(told["requests"] / told["seconds"], told["p50_ms"], told["p99_ms"], told["errors"])


def by_turns(ours: int, bare: int, row: Row, connections: int) -> tuple[Measured, Measured, float]:
    """Ours and the bare route under the same load, and our share of its rate: medians over the turns, errors added."""
    length, tag = asked(ours, row)
    sent = {"WRK_METHOD": "POST", "WRK_BODY": row.body} if row.body else {}
    runs: tuple[list[Measured], list[Measured]] = [], []
    roads = [
        (ours, row.path, sent | ({"WRK_TAG": tag} if row.tagged else {})),
        (bare, f"/{0 if row.tagged else length}", sent),
    ]
    for turn in range(TURNS):
        for which in (0, 1) if turn % 2 else (1, 0):
            port, path, told = roads[which]
            runs[which].append(wrk(port, path, connections, TURN_S, **told))
    share = statistics.median(one.per_second / other.per_second for one, other in zip(*runs, strict=True))
    return _middle(runs[0]), _middle(runs[1]), share


def _middle(runs: list[Measured]) -> Measured:
    rates, halves, tails, errors = zip(*runs, strict=True)
    return Measured(*map(statistics.median, (rates, halves, tails)), sum(errors))


def loads(ours: int, bare: int) -> None:
    """Print the table."""
    head = f"{'':26}{'conn.':>6}{'req/s':>9}{'p50 ms':>9}{'p99 ms':>9}{'bare r/s':>10}{'p50':>8}{'p99':>9}"
    print(f"{head}{'share':>7}{'errors':>8}")
    for row in ROWS:
        for connections in CONNECTIONS:
            one, other, share = by_turns(ours, bare, row, connections)
            numbers = f"{one.per_second:9.0f}{one.p50_ms:9.2f}{one.p99_ms:9.2f}"
            numbers += f"{other.per_second:10.0f}{other.p50_ms:8.2f}{other.p99_ms:9.2f}"
            print(f"{row.name:26}{connections:6}{numbers}{share:7.2f}{one.errors:8}", flush=True)
    print(f"aim for what is kept in memory: a share of {AIMED_SHARE} at least")


def resident_mb(server: Served) -> float:
    """Memory of master and workers [MB]."""
    pages = sum(int(Path(f"/proc/{one}/statm").read_text().split()[1]) for one in (server.master, *server.workers()))
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6


def soak(server: Served, port: int, seconds: int) -> None:
    """Load everything at once for so long, and print memory and errors on the way."""
    command = ["wrk", "-t1", "-c8", f"-d{seconds}s", "--timeout", PATIENCE, "-s", str(SCRIPT)]
    with ExitStack() as stack:
        running = []
        for row in SOAKED:
            sent = {"WRK_METHOD": "POST", "WRK_BODY": row.body} if row.body else {}
            sent |= {"WRK_VARY": row.vary} if row.vary else {}
            sent |= {"WRK_REFUSED": "1"} if row.refused else {}
            words = [*command, f"http://127.0.0.1:{port}{row.path}"]
            running.append(
                stack.enter_context(subprocess.Popen(words, stdout=subprocess.PIPE, text=True, env=os.environ | sent))
            )
        begun, looks = time.monotonic(), []
        while any(one.poll() is None for one in running):
            time.sleep(SOAK_LOOK_S)
            looks.append((time.monotonic() - begun, resident_mb(server)))
            print(f"  after {looks[-1][0]:4.0f} s{looks[-1][1]:9.1f} MB", flush=True)
        told = [json.loads(one.stdout.read().splitlines()[-1]) for one in running]
    at, settled = zip(*(look for look in looks if look[0] > seconds * SETTLED), strict=True)
    requests, errors = (sum(one[name] for one in told) for name in ("requests", "errors"))
    print(f"{requests} requests in {seconds} s, {errors} errors; master and workers after {SETTLED:.0%} of it")
    print(f"{settled[0]:.1f} MB, at the end {settled[-1]:.1f} MB, {settled[-1] - settled[0]:+.1f} MB")
    slope = statistics.linear_regression(at, settled).slope * seconds / requests * 1000
    print(f"slope from there on {slope:+.4f} MB for 1000 requests")


def main() -> None:
    """Measure the load, or soak."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--soak", action="store_true", help="five minutes of everything at once")
    chosen = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder, gunicorn() as ours:
        if chosen.soak:
            soak(ours, ours.port, SOAK_S)
            return
        with gunicorn("bare:app", cwd=HERE) as bare:
            print("gunicorn as in README, asked directly")
            loads(ours.port, bare.port)
        with nginx(ours.port, Path(folder)) as port:
            print("\nthe same through nginx as in backend/nginx.conf, 64 connections")
            for row in ROWS:
                sent = {"WRK_METHOD": "POST", "WRK_BODY": row.body} if row.body else {}
                one = wrk(port, row.path, CONNECTIONS[-1], TURN_S, **sent)
                print(f"{row.name:26}{one.per_second:15.0f}{one.p50_ms:9.2f}{one.p99_ms:9.2f}{one.errors:8}")


if __name__ == "__main__":
    sys.exit(main())
