"""What the costliest request of each kind takes, and how time and memory grow with the size of a request.

Run with `python tests/benchmarks/limits.py`. Each request runs in a process of its own: seconds of the processor, and
how much more memory the process had at its peak than after it answered a small request. Beside the seconds stands
their ratio to the default matrix in the same process, which the load of the machine touches less.
"""

import json
import resource
import subprocess
import sys
import time
from collections.abc import Callable, Iterable
from typing import Any

import numpy as np
from msgspec import convert

from jointwise.calc.catalogue import catalogue
from jointwise.calc.errors import InputError
from jointwise.calc.feedline.feedline import feedline_at
from jointwise.calc.kit.requests import MOST_PAIRS, MOST_PORTS
from jointwise.calc.operations import OPERATIONS, call
from jointwise.calc.physics.columns import spot_column
from jointwise.calc.refusal import MOST_REQUEST_BYTES
from jointwise.calc.spread.requests import MOST_DRAWN
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.waves.touchstone_table import MOST_FREQUENCIES
from jointwise.calc.waves.two_port import TwoPort, drive

MOST_S, MOST_MB = 2.0, 256.0
BROWSER = (2, 3)
"""How many times longer Python takes in the browser, about; `make bench` measures it for the matrix in page.py."""
BASELINE_RUNS = 15

LINE = {"load": {"kind": "end", "what": "short"}, "touchstone": ""}
LOAD = {"kind": "vswr", "vswr": 2}
SPOT = {"load": LOAD, "frequency_hz": 1.23e8, "region": 2}
JOINT = {"kind": "joint", "family": "n"}
ADAPTER = JOINT | {"adapter_to": "uhf"}
CABLE = {"kind": "cable", "cable": "rg_213", "length_m": 100}
PART = {"kind": "part", "loss_db": 0.1, "vswr": 1.2}
BAD_OHM = 10.0
FAMILIES = list(catalogue().interfaces)
SPOTS = [1e6 + at for at in range(200)]


def two_port(points: int) -> str:
    """A measured two-port with so many frequencies, in as few characters as may be."""
    return "# Hz S RI R 50\n" + "\n".join(f"{100_000 + at} 0 0 1 0 1 0 0 0" for at in range(points))


def ports(count: int, families: Iterable[str]) -> list[dict[str, Any]]:
    """Ports of the families in turn, no two alike."""
    turn = list(families)
    return [
        {
            "family": turn[at % len(turn)],
            "gender": ("plug", "jack")[at * 7 % 3 % 2],
            "highest_frequency_hz": 3e7 * (1 + at / 100),
            "power_w": 1 + at,
        }
        for at in range(count)
    ]


def pairs(count: int) -> list[list[int]]:
    """As many pairs as may be, spread over the ports."""
    every = [[one, other] for one in range(count) for other in range(one)]
    return every[:: -(-len(every) // MOST_PAIRS)][:MOST_PAIRS]


def kit(count: int, in_series: int) -> dict[str, Any]:
    """A kit for so many ports with no limit but the adapters in series."""
    free = {"most_loss_db": 20, "most_in_series": in_series, "impedance_steps": True}
    return {"ports": ports(count, FAMILIES), "pairs": pairs(count)} | free


def line(elements: list[dict[str, Any]], **fields: Any) -> dict[str, Any]:
    """A line of these elements."""
    return SPOT | {"elements": elements} | fields


def swept(joints: int, cables: int, points: int) -> dict[str, Any]:
    """A sweep of a line with a bad contact at its middle joint, its cables 1 % longer than told, 1 % of noise."""
    each = [joints // (cables + 1) + (at < joints % (cables + 1)) for at in range(cables + 1)]
    elements = [part for at, count in enumerate(each) for part in [CABLE | {"length_m": 5 + 2 * at}, *[JOINT] * count]][
        1:
    ]
    frequency = np.linspace(1e6, 1e9, points)
    request = convert(LINE | {"elements": elements}, SweepRequest)
    built = feedline_at(request, request.elements, request.load, spot_column(5e8))
    chain = [link.models[1].two_port(frequency * (1.01 if link.kind == "cable" else 1.0)) for link in built.links]
    chain.insert(len(chain) // 2, TwoPort(*(one + 0 * frequency + 0j for one in (1.0, BAD_OHM, 0.0, 1.0))))
    noise = 0.01 * np.random.default_rng(0).normal(size=(2, points)) / np.sqrt(2)
    seen = drive(chain, -1.0 + 0j * frequency, 50.0, net=False).reflection(50.0)[0] + noise[0] + 1j * noise[1]
    rows = (f"{hz:.0f} {one.real:.5f} {one.imag:.5f}" for hz, one in zip(frequency, seen, strict=True))
    return LINE | {"elements": elements, "touchstone": "# Hz S RI R 50\n" + "\n".join(rows)}


def adapted(request: dict[str, Any]) -> dict[str, Any]:
    """The same with an adapter, which is two joints, at each joint."""
    return request | {"elements": [ADAPTER if part == JOINT else part for part in request["elements"]]}


def near(text: str) -> dict[str, Any]:
    """A line with as many measured parts of this text as a request may hold."""
    count = min(60, MOST_REQUEST_BYTES // (len(json.dumps(text)) + 100))
    return line([{"kind": "measured", "touchstone": text}] * count, frequency_hz=1.005e5)


def filled(start: bytes, unit: bytes, end: bytes) -> bytes:
    """The longest body made of one unit again and again."""
    return start + unit * ((MOST_REQUEST_BYTES - len(start) - len(end)) // len(unit)) + end


WORST: dict[str, tuple[str, Callable[[], dict[str, Any] | bytes]]] = {
    "matrix, 100 families x 300 columns x 3": (
        "matrix",
        lambda: {
            "families": (FAMILIES * 10)[:100],
            "bands": ["20m"] * 100,
            "frequencies_hz": SPOTS,
            "powers_w": [1.1, 2.2, 3.3],
        },
    ),
    "matrix, 20 families x 200 x 24": (
        "matrix",
        lambda: {
            "families": ["n"] * 20,
            "bands": [],
            "frequencies_hz": SPOTS,
            "powers_w": [1.1 * at for at in range(24)],
        },
    ),
    "cell": ("cell", lambda: {"family": "uhf", "band": "70cm"}),
    "choose, 100 bands, 200 frequencies": ("choose", lambda: {"bands": ["20m"] * 100, "frequencies_hz": SPOTS}),
    "line, 60 cables": ("line", lambda: line([CABLE] * 60, explain=0)),
    "line, 60 adapters": ("line", lambda: line([ADAPTER] * 60, explain=0)),
    f"line, two-port of {MOST_FREQUENCIES} points": ("line", lambda: near(two_port(MOST_FREQUENCIES))),
    "line, 60 two-ports of 4 MB together": ("line", lambda: near(two_port(2500))),
    f"spread, {MOST_DRAWN // 60} draws x 60 cables": (
        "spread",
        lambda: line([CABLE] * 60, draws=MOST_DRAWN // 60),
    ),
    "spread, 100000 draws x 3 adapters, 3 cables": (
        "spread",
        lambda: line([ADAPTER, CABLE] * 3, draws=100_000),
    ),
    "sweep, 12 joints, 4 cables, 10001 points": ("sweep", lambda: swept(12, 4, 10_001)),
    "sweep, 8 joints, 8 cables, 10001 points": ("sweep", lambda: swept(8, 8, 10_001)),
    "sweep, 6 adapters, 4 cables, 10001 points": ("sweep", lambda: adapted(swept(6, 4, 10_001))),
    "fit-out, 60 adapters": ("fitout", lambda: SPOT | {"elements": [ADAPTER] * 60} | {"load": None}),
    f"kit, {MOST_PORTS} ports, {MOST_PAIRS} pairs, 2 in series": ("kit", lambda: kit(MOST_PORTS, 2)),
    f"kit, {MOST_PORTS} ports, {MOST_PAIRS} pairs, 4 in series": ("kit", lambda: kit(MOST_PORTS, 4)),
    "kit, 28 ports, every pair, 3 in series": ("kit", lambda: kit(28, 3)),
    "catalogue": ("catalogue", dict),
    "refused: 4 MB of [": ("matrix", lambda: filled(b"", b"[", b"")),
    "refused: 4 MB of []": ("matrix", lambda: filled(b"[", b"[],", b"1]")),
    "refused: 4 MB of objects": ("matrix", lambda: filled(b"[", b'{"a":1},', b"1]")),
    "refused: 4 MB of numbers": ("matrix", lambda: filled(b'{"powers_w":[', b"1,", b"1]}")),
    "refused: a field's name of 4 MB": ("matrix", lambda: filled(b'{"', b"k", b'":1}')),
}

GROWTH: dict[str, tuple[str, Callable[[int], dict[str, Any]], list[int]]] = {
    "matrix, cells": (
        "matrix",
        lambda count: {
            "families": ["n"] * 20,
            "bands": [],
            "powers_w": [1.1] * 24,
            "frequencies_hz": SPOTS[: count // 480],
        },
        [12_000, 24_000, 48_000, 96_000],
    ),
    "line, elements (joint and cable in turn)": (
        "line",
        lambda count: line([JOINT, CABLE] * (count // 2)),
        [8, 15, 30, 60],
    ),
    "spread, draws": ("spread", lambda count: line([JOINT, CABLE] * 3, draws=count), [12_500, 25_000, 50_000, 100_000]),
    "sweep, joints (a cable after each)": ("sweep", lambda count: swept(count, count, 801), [2, 4, 8]),
    "sweep, points": ("sweep", lambda count: swept(4, 3, count), [1250, 2500, 5000, 10_000]),
    "line, points of a measured part": (
        "line",
        lambda count: near_one(two_port(count)),
        [12_500, 25_000, 50_000, 100_000],
    ),
}


def near_one(text: str) -> dict[str, Any]:
    """A line of one measured part."""
    return line([{"kind": "measured", "touchstone": text}], frequency_hz=1.005e5)


def body(request: dict[str, Any] | bytes) -> bytes:
    """A request as it is sent; a field of None is left out."""
    if isinstance(request, bytes):
        return request
    return json.dumps({name: value for name, value in request.items() if value is not None}).encode()


def measure(operation: str, sent: bytes) -> dict[str, float]:
    """Processor seconds [s], more memory at the peak [MB] and ratio to the default matrix, in this process."""
    runs = []
    for _ in range(BASELINE_RUNS):
        begun = time.process_time()
        call("matrix", b"{}")
        runs.append(time.process_time() - begun)
    OPERATIONS[operation].task  # noqa: B018  (its code is imported once, by whoever asks first)
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    begun = time.process_time()
    try:
        answer = call(operation, sent)
    except InputError as refused:
        answer = str(refused).encode()
    seconds = time.process_time() - begun
    more = (resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before) / 1e3
    return {"seconds": seconds, "mb": more, "ratio": seconds / sorted(runs)[len(runs) // 2], "bytes": len(answer)}


def apart(table: str, name: str, count: int = 0) -> dict[str, float]:
    """The same in a process of its own."""
    command = [sys.executable, __file__, table, name, str(count)]
    return json.loads(subprocess.run(command, check=True, capture_output=True, text=True).stdout)


def slope(sizes: list[int], values: list[float]) -> float:
    """Slope of the straight line through the logarithms."""
    return float(np.polyfit(np.log(sizes), np.log(np.maximum(values, 1e-6)), 1)[0])


def main() -> None:
    """Print both tables."""
    print(f"the costliest requests; aim: {MOST_S:g} s, {MOST_MB:g} MB")
    print(f"{'':46}{'s':>8}{'browser, about':>16}{'/ matrix':>10}{'more MB':>9}{'answer kB':>11}")
    for name in WORST:
        found = apart("worst", name)
        browser = "{:.1f} to {:.1f}".format(*(found["seconds"] * times for times in BROWSER))
        over = " over" if found["seconds"] > MOST_S or found["mb"] > MOST_MB else ""
        numbers = f"{found['ratio']:10.0f}{found['mb']:9.1f}{found['bytes'] / 1e3:11.1f}"
        print(f"{name:46}{found['seconds']:8.2f}{browser:>16}{numbers}{over}", flush=True)
    print("\ngrowth: slope of logarithm over logarithm, 1 is in proportion")
    print(f"{'':46}{'from':>8}{'to':>10}{'s at most':>11}{'slope':>7}{'MB at most':>12}{'slope':>7}")
    for name, (_, _, sizes) in GROWTH.items():
        found = [apart("growth", name, size) for size in sizes]
        seconds, memory = [one["seconds"] for one in found], [one["mb"] for one in found]
        numbers = f"{seconds[-1]:11.2f}{slope(sizes, seconds):7.2f}{memory[-1]:12.1f}{slope(sizes, memory):7.2f}"
        print(f"{name:46}{sizes[0]:8}{sizes[-1]:10}{numbers}", flush=True)


if __name__ == "__main__":
    if sys.argv[1:]:
        table, name, count = sys.argv[1:]
        operation, make, *_ = WORST[name] if table == "worst" else GROWTH[name]
        print(json.dumps(measure(operation, body(make() if table == "worst" else make(int(count))))))
    else:
        main()
