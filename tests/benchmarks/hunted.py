"""The costliest sweeps and kits that a search finds: it changes what was costly before and keeps what is costlier.

Run with `make bench ONLY="hunted"` for an hour of the processor, or `python tests/benchmarks/hunted.py SECONDS`. Each
request runs in a process of its own, beside the default matrix; seconds are of the processor.
"""

import json
import random
import subprocess
import sys
from collections.abc import Callable
from typing import Any

import numpy as np
from limits import ADAPTER, CABLE, FAMILIES, JOINT, LINE, body, kit, measure, pairs, ports, swept

from jointwise.calc.kit.requests import MOST_IN_SERIES, MOST_PORTS
from jointwise.calc.waves.touchstone_table import MOST_FREQUENCIES

SECONDS = 3600.0
KEPT = 6
"""The costliest of each kind, which are changed on."""
SEED = 1
MOST_ELEMENTS = 16
CABLES = ["rg_58", "rg_213", "rg_174", "rg_223"]
MOST_POINTS = 10_001

Request = dict[str, Any]


def elements(roll: random.Random) -> list[Request]:
    """A line as long as may be, of whatever."""
    made = []
    for _ in range(roll.randint(2, MOST_ELEMENTS)):
        if roll.random() < 0.45:
            made.append(CABLE | {"cable": roll.choice(CABLES), "length_m": round(10 ** roll.uniform(-1, 2.5), 3)})
        else:
            made.append(roll.choice([JOINT, ADAPTER]) | {"family": roll.choice(["n", "uhf", "bnc", "sma"])})
    return [one if one["kind"] != "joint" or "adapter_to" not in one else ADAPTER for one in made]


def file(roll: random.Random, count: int) -> str:
    """A sweep of noise, echoes, or nonsense."""
    noise = np.random.default_rng(roll.randrange(2**32))
    low, span = 10 ** roll.uniform(5, 8), 10 ** roll.uniform(6, 9.5)
    frequency = low + np.linspace(0, span, count)
    echoes = sum(
        noise.uniform(0, 0.6) * np.exp(-2j * np.pi * frequency * noise.uniform(0, 5e-7))
        for _ in range(roll.randint(0, 9))
    )
    seen = echoes + noise.normal(size=(2, count)).T @ np.array([1, 1j]) * 10 ** roll.uniform(-4, 0)
    seen = seen / max(1.0, float(np.abs(seen).max()))
    rows = (f"{hz:.0f} {one.real:.5f} {one.imag:.5f}" for hz, one in zip(frequency, seen, strict=True))
    return "# Hz S RI R 50\n" + "\n".join(rows)


def sweep(roll: random.Random) -> Request:
    """A sweep somewhere in what may be asked."""
    if roll.random() < 0.4:
        return swept(roll.randint(1, 12), roll.randint(1, 4), roll.choice([201, 1601, MOST_POINTS]))
    load = roll.choice([LINE["load"], {"kind": "end", "what": "open"}, {"kind": "vswr", "vswr": roll.uniform(1, 20)}])
    tolerance = round(10 ** roll.uniform(-3, -1), 4)
    count = roll.choice([16, 201, 1601, MOST_POINTS, min(MOST_FREQUENCIES, 40_000)])
    return {"elements": elements(roll), "load": load, "touchstone": file(roll, count), "length_tolerance": tolerance}


def changed_sweep(request: Request, roll: random.Random) -> Request:
    """The same with something else in it."""
    other = sweep(roll)
    name = roll.choice(["elements", "load", "touchstone", "length_tolerance"])
    return request | {name: other.get(name, 0.02)}


def any_kit(roll: random.Random) -> Request:
    """A kit somewhere in what may be asked."""
    count = roll.randint(8, MOST_PORTS)
    request = kit(count, roll.randint(1, MOST_IN_SERIES))
    mixed = ports(count, roll.sample(FAMILIES, roll.randint(3, len(FAMILIES))))
    return request | {"ports": mixed, "pairs": pairs(count), "goal": roll.choice(["fewest", "best_joints"])}


def changed_kit(request: Request, roll: random.Random) -> Request:
    """The same with something else in it."""
    other = any_kit(roll)
    what = roll.choice(["goal", "most_in_series", "most_loss_db", "ports", "pairs"])
    if what == "ports":
        return request | {"ports": [port | {"family": roll.choice(FAMILIES)} for port in request["ports"]]}
    if what == "pairs":
        kept = [pair for pair in request["pairs"] if roll.random() < 0.9]
        return request | {"pairs": kept or request["pairs"]}
    if what == "most_loss_db":
        return request | {what: round(roll.uniform(0.1, 20), 2)}
    return request | {what: other[what]}


KINDS: dict[str, tuple[Callable[[random.Random], Request], Callable[[Request, random.Random], Request]]] = {
    "sweep": (sweep, changed_sweep),
    "kit": (any_kit, changed_kit),
}


def apart_of(operation: str, request: Request) -> dict[str, float]:
    """What a request costs in a process of its own."""
    command = [sys.executable, __file__, "one", operation]
    sent = json.dumps(request)
    return json.loads(subprocess.run(command, check=True, capture_output=True, text=True, input=sent).stdout)


def hunt(operation: str, budget_s: float) -> None:
    """Search for so long, and print the costliest by time and by memory."""
    make, change = KINDS[operation]
    roll = random.Random(SEED)
    spent, tried = 0.0, 0
    best: dict[str, list[tuple[float, Request]]] = {"seconds": [], "mb": []}
    while spent < budget_s:
        measured = roll.choice(list(best))
        known = best[measured]
        request = change(roll.choice(known)[1], roll) if known and roll.random() < 0.7 else make(roll)
        found = apart_of(operation, request)
        spent, tried = spent + found["seconds"], tried + 1
        for name, kept in best.items():
            kept.append((found[name], request))
            kept.sort(key=lambda one: -one[0])
            del kept[KEPT:]
    for name, unit in (("seconds", "s"), ("mb", "MB more")):
        worst, request = best[name][0]
        print(f"{operation:8}{tried:6} requests in {spent:6.0f} s, the costliest{worst:9.2f} {unit}: {told(request)}")


def told(request: Request) -> str:
    """A request in a few words."""
    if "touchstone" in request:
        joints = sum(one["kind"] == "joint" for one in request["elements"])
        points = request["touchstone"].count("\n")
        return f"{joints} joints, {len(request['elements']) - joints} cables, {points} points"
    series, goal = request["most_in_series"], request.get("goal", "fewest")
    return f"{len(request['ports'])} ports, {len(request['pairs'])} pairs, {series} in series, {goal}"


def main() -> None:
    """Search among sweeps and kits for half the time each."""
    if sys.argv[1:2] == ["one"]:
        request = json.loads(sys.stdin.read())
        print(json.dumps(measure(sys.argv[2], body(request))))
        return
    seconds = float(sys.argv[1]) if len(sys.argv) > 1 else SECONDS
    for operation in KINDS:
        hunt(operation, seconds / len(KINDS))


if __name__ == "__main__":
    main()
