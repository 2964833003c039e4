"""Five hundred visitors through nginx and the workers of README for five minutes, a worker killed every ten seconds.

Run with `make bench ONLY="visitors"`. Each visitor asks now this, now that, with pauses as people make them, and holds
every answer against the core's own bytes. An answer that breaks off with its worker is asked for once more, as the page
does; what is wrong, refused or missing after that is counted as lost.
"""

import json
import os
import random
import signal
import sys
import tempfile
import time
from collections import Counter
from http.client import HTTPException
from pathlib import Path
from threading import Event, Lock, Thread
from typing import NamedTuple
from urllib.parse import urlencode

from many_users import Served, comes, gunicorn, nginx
from wire import Client

from jointwise.calc.operations import call

WORKERS = 4
"""As in README."""
VISITORS = 500
SECONDS = 300
KILLED_EVERY_S = 10
PAUSE_S = 12.0
"""Of a visitor on average between two questions."""
SEED = 1
POWERS = [10, 100, 400, 1500]
BANDS = ["80m", "20m", "2m", "70cm", "23cm"]
FAMILIES = ["uhf", "n", "bnc", "sma", "7_16"]
BAD = "family=n&band=2m&colour=red"


class Question(NamedTuple):
    """What a visitor asks, and what must come."""

    method: str
    path: str
    body: bytes | None
    status: int
    expected: bytes | None
    """None where the status says all."""


def questions() -> list[Question]:
    """Cells, matrices, lines and kits, refusals and the page itself."""
    asked = [Question("GET", "/", None, 200, None), Question("GET", f"/api/v1/cell?{BAD}", None, 400, None)]
    for family in FAMILIES:
        for band in BANDS:
            for power in POWERS:
                request = {"family": family, "band": band, "power_w": power}
                path = f"/api/v1/cell?{urlencode(request)}"
                asked.append(Question("GET", path, None, 200, call("cell", json.dumps(request).encode())))
    posted = [("matrix", {"bands": BANDS, "powers_w": [power]}) for power in POWERS]
    for length in (3, 10, 30, 100):
        elements = [{"kind": "joint", "family": "n"}, {"kind": "cable", "cable": "rg_213", "length_m": length}]
        posted.append(("line", {"elements": elements, "load": {"kind": "vswr", "vswr": 2}, "band": "2m"}))
        posted.append(("fitout", {"elements": elements, "band": "2m"}))
    ports = [
        {"family": family, "gender": gender, "highest_frequency_hz": 5e7}
        for family, gender in (("uhf", "jack"), ("n", "plug"), ("bnc", "jack"))
    ]
    posted.append(("kit", {"ports": ports}))
    for operation, request in posted:
        body = json.dumps(request).encode()
        asked.append(Question("POST", f"/api/v1/{operation}", body, 200, call(operation, body)))
    return asked


class Counted:
    """What all visitors saw."""

    def __init__(self) -> None:
        self.lock = Lock()
        self.seen: Counter[str] = Counter()
        self.waits_s: list[float] = []

    def add(self, what: str, seconds: float | None = None) -> None:
        """Count one answer."""
        with self.lock:
            self.seen[what] += 1
            if seconds is not None:
                self.waits_s.append(seconds)


def visit(client: Client, asked: list[Question], counted: Counted, over: Event, seed: int) -> None:
    """One visitor's five minutes."""
    roll = random.Random(seed)
    while not over.wait(roll.expovariate(1 / PAUSE_S)):
        question = roll.choice(asked)
        begun = time.monotonic()
        for attempt in ("answered", "answered when asked again"):
            try:
                headers = {"Content-Type": "application/json"} if question.body else None
                answer = client(question.method, question.path, question.body, headers)
            except (HTTPException, OSError):
                continue
            right = answer.status == question.status and question.expected in (None, answer.body)
            counted.add(attempt if right else f"wrong: {answer.status}", time.monotonic() - begun)
            break
        else:
            counted.add("lost")


def kill(server: Served, over: Event, roll: random.Random) -> int:
    """Kill a worker every so often until it is over; how many."""
    killed = 0
    while not over.wait(KILLED_EVERY_S):
        if workers := server.workers():
            os.kill(roll.choice(workers), signal.SIGKILL)
            killed += 1
    return killed


def main() -> None:
    """Let them all visit and print what they saw."""
    asked = questions()
    counted, over = Counted(), Event()
    with tempfile.TemporaryDirectory() as folder, gunicorn() as server, nginx(server.port, Path(folder)) as port:
        if not comes(lambda: len(server.workers()) == WORKERS):
            sys.exit("the workers did not begin")
        visitors = [Thread(target=visit, args=(Client(port), asked, counted, over, seed)) for seed in range(VISITORS)]
        for visitor in visitors:
            visitor.start()
        ending = Thread(target=lambda: (time.sleep(SECONDS), over.set()))
        ending.start()
        killed = kill(server, over, random.Random(SEED))
        for visitor in (*visitors, ending):
            visitor.join()
        back = comes(lambda: len(server.workers()) == WORKERS)
    waits = sorted(counted.waits_s)
    print(f"{VISITORS} visitors, {SECONDS} s, {killed} workers killed, {'all' if back else 'not all'} back at the end")
    for what, count in sorted(counted.seen.items()):
        print(f"{what:32}{count:8}")
    for share in (0.5, 0.99, 1.0):
        print(f"waited at most, {share:.0%} of answers{waits[min(int(share * len(waits)), len(waits) - 1)]:9.2f} s")
    bad = sum(count for what, count in counted.seen.items() if not what.startswith("answered"))
    print(f"wrong or lost: {bad}")
    sys.exit(bool(bad))


if __name__ == "__main__":
    main()
