"""Valid requests with a few places spoilt: they reach deeper than what is bad from the start."""

import json
from copy import deepcopy
from pathlib import Path
from typing import Any

from hypothesis import strategies as st

from jointwise.calc.catalogue import catalogue
from jointwise.calc.operations import OPERATIONS

CASES = json.loads((Path(__file__).parents[2] / "frontend/payload/cases.json").read_text())

TABLES = [
    getattr(catalogue(), name) for name in ("interfaces", "cables", "bands", "modes", "conditions", "installations")
]
"""Tables of which one id may stand for another."""

HOSTILE = st.one_of(
    st.none(),
    st.booleans(),
    st.sampled_from([0, -1, 1, 1e-320, 5e-324, 1e308, -1e308, 2**31, 2**63, 2**64, 10**40, -0.0]),
    st.floats(),
    st.integers(),
    st.text(max_size=8),
    st.sampled_from(["", "n", "uhf", "2m", "\0", "\ud800", "`", "x` - at `$.vswr", "# Hz S RI R 50\n1 1 1", "é" * 61]),
    st.sampled_from([[], {}, [[]], [{}], {"": {}}, [None] * 1000, {"kind": "joint"}, {"kind": []}]),
)


def _whole(body: str) -> dict | None:
    try:
        read = json.loads(body)
    except ValueError:
        return None
    return read if isinstance(read, dict) else None


SEEDS = [
    (case["operation"], _whole(case["body"]))
    for case in CASES
    if case["operation"] in OPERATIONS and _whole(case["body"]) is not None
]


def places(value: Any, path: tuple = ()) -> list[tuple]:
    """Paths of everything inside a JSON value."""
    entries = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    inside = [place for name, one in entries for place in places(one, (*path, name))]
    return [path, *inside] if path else inside


def _nudged(draw: st.DrawFn, value: Any) -> Any:
    """A value of the same kind that may well be allowed."""
    if isinstance(value, bool):
        return not value
    if isinstance(value, int | float):
        return type(value)(value * draw(st.sampled_from([0, 1e-6, 0.01, 0.5, 0.999, 1, 1.001, 2, 3.7, 100, 1e6])))
    if isinstance(value, str):
        others = [one for table in TABLES if value in table for one in table]
        return draw(st.sampled_from(others or [value, value + value]))
    if isinstance(value, list):
        return value[::-1] if draw(st.booleans()) else value[: draw(st.integers(0, 3))]
    return value


def _spoil(draw: st.DrawFn, request: dict) -> None:
    found = places(request)
    kind = draw(st.sampled_from(["nudge", "nudge", "nudge", "nudge", "replace", "drop", "add", "repeat"]))
    if kind == "add" or not found:
        request[draw(st.text(max_size=6))] = deepcopy(draw(HOSTILE))
        return
    *way, last = draw(st.sampled_from(found))
    holder = request
    for step in way:
        holder = holder[step]
    if kind == "nudge":
        holder[last] = _nudged(draw, holder[last])
    elif kind == "replace":
        holder[last] = deepcopy(draw(HOSTILE))
    elif kind == "drop":
        del holder[last]
    elif isinstance(holder[last], list):
        holder[last] = holder[last] * draw(st.sampled_from([2, 61, 401]))
    else:
        holder[last] = [holder[last]]


@st.composite
def spoilt(draw: st.DrawFn, seeds: list[tuple[str, dict]] = SEEDS) -> tuple[str, bytes]:
    """An operation, or whatever a seed is named, and the body of a request with one to three places spoilt."""
    operation, request = draw(st.sampled_from(seeds))
    request = deepcopy(request)
    for _ in range(draw(st.integers(1, 3))):
        _spoil(draw, request)
    return operation, json.dumps(request).encode()
