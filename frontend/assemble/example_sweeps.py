"""The invented measurements that the sweep view starts with; run it to write them anew.

    python frontend/assemble/example_sweeps.py

A line of our own with 1.2 Ω too much in its third joint, and a jumper with 0.6 Ω too much, with noise from a seed.
"""

import json
from pathlib import Path
from typing import Any

import msgspec
import numpy as np

from jointwise.calc.feedline.feedline import feedline_at
from jointwise.calc.physics.columns import spot_column
from jointwise.calc.physics.ratings import GENEROUS
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.waves.two_port import TwoPort, cascade, drive, scattering

__all__ = ["EXAMPLES", "MODULE", "measured_jumper", "measured_line"]

MODULE = Path(__file__).resolve().parents[1] / "src/sweep/example-sweeps.js"
NOISE = 0.004
DECIMALS = 4

EXAMPLES: dict[str, dict[str, Any]] = {
    "line": {
        "name": "Hill hut, invented",
        "elements": [
            {"kind": "joint", "family": "n", "name": "Shack panel"},
            {"kind": "cable", "cable": "rg_223", "length_m": 3.0},
            {"kind": "joint", "family": "n", "name": "Wall"},
            {"kind": "cable", "cable": "rg_213", "length_m": 17.0},
            {"kind": "joint", "family": "n", "name": "Mast foot"},
            {"kind": "cable", "cable": "rg_213", "length_m": 9.0},
            {"kind": "joint", "family": "n", "name": "Mast top"},
        ],
        "load": {"kind": "end", "what": "short"},
    },
    "jumper": {
        "name": "Jumper, invented",
        "elements": [
            {"kind": "joint", "family": "n"},
            {"kind": "cable", "cable": "rg_223", "length_m": 1.5},
            {"kind": "joint", "family": "n"},
        ],
        "load": {"kind": "end", "what": "matched"},
    },
}


def _ports(example: str, frequency: np.ndarray, bad: int, ohm: float) -> tuple[list[TwoPort], np.ndarray]:
    """Chain matrices of an example with a resistance behind one element, its cables 1 % longer; and its end."""
    given = {name: EXAMPLES[example][name] for name in ("elements", "load")}
    longer = [
        {**element, "length_m": element["length_m"] * 1.01} if element["kind"] == "cable" else element
        for element in given["elements"]
    ]
    body = json.dumps({**given, "elements": longer, "touchstone": ""})
    request = msgspec.json.decode(body, type=SweepRequest)
    built = feedline_at(request, request.elements, request.load, spot_column(1e8))
    ports = []
    for link in built.links:
        ports.append(link.models[GENEROUS].two_port(frequency))
        if link.element == bad:
            ports.append(TwoPort(*(np.array(one, complex) for one in (1, ohm, 0, 1))))
    return ports, built.load(frequency)


def _noisy(random: np.random.Generator, values: np.ndarray) -> np.ndarray:
    pair = random.normal(size=(2, values.size)) * NOISE / np.sqrt(2)
    return values + pair[0] + 1j * pair[1]


def measured_line() -> str:
    """The one-port sweep of the line."""
    frequency = np.arange(1, 201) * 2.5e6
    ports, end = _ports("line", frequency, 4, 1.2)
    seen = _noisy(np.random.default_rng(11), drive(ports, end, 50.0, net=False).reflection(50.0)[0])
    return _text("a line with its far end shorted", frequency, [seen])


def measured_jumper() -> str:
    """The two-port sweep of the jumper."""
    frequency, random = np.arange(1, 51) * 20e6, np.random.default_rng(12)
    s11, s12, s21, s22 = scattering(cascade(_ports("jumper", frequency, 2, 0.6)[0]), 50.0)
    return _text("a jumper", frequency, [_noisy(random, one + 0 * frequency) for one in (s11, s21, s12, s22)])


def _text(of: str, frequency: np.ndarray, columns: list[np.ndarray]) -> str:
    rows = [f"! Invented: {of}, made by a script", "# MHz S RI R 50"]
    for at, hertz in enumerate(frequency):
        pairs = " ".join(f"{column[at].real:.{DECIMALS}f} {column[at].imag:.{DECIMALS}f}" for column in columns)
        rows.append(f"{hertz / 1e6:g} {pairs}")
    return "\n".join(rows) + "\n"


def main() -> None:
    """Write the module of the page."""
    files = {"line": ("hill-hut.s1p", measured_line()), "jumper": ("jumper.s2p", measured_jumper())}
    whole = {one: {**EXAMPLES[one], "file": {"name": name, "text": text}} for one, (name, text) in files.items()}
    head = "/** Invented measurements to start from; written by frontend/assemble/example_sweeps.py. */\n"
    MODULE.parent.mkdir(exist_ok=True)
    MODULE.write_text(f"{head}export const EXAMPLES = {json.dumps(whole, indent=1)};\n", "utf-8")


if __name__ == "__main__":
    main()
