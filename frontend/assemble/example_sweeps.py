"""The invented measurements that the sweep view starts with; run it to write them anew.

    python frontend/assemble/example_sweeps.py

A line of our own with 4 Ω too much in its third joint, the same after that was mended, and a jumper with 6 Ω too
much, with noise from a seed.
"""

import json
from pathlib import Path
from typing import Any

import msgspec
import numpy as np

from jointwise.calc.feedline.elements import KnownEnd
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
        "name": "Hill hut",
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
        "name": "Jumper",
        "elements": [
            {"kind": "joint", "family": "n"},
            {"kind": "cable", "cable": "rg_223", "length_m": 1.5},
            {"kind": "joint", "family": "n"},
        ],
        "load": {"kind": "end", "what": "matched"},
    },
}


def _ports(example: str, frequency: np.ndarray, faulty: int, ohm: float) -> tuple[list[TwoPort], np.ndarray]:
    """Two-ports of an example with a resistance behind its faulty element, its cables 1 % longer; and its load."""
    elements = [
        {**element, "length_m": element["length_m"] * 1.01} if element["kind"] == "cable" else element
        for element in EXAMPLES[example]["elements"]
    ]
    body = json.dumps({"elements": elements, "load": EXAMPLES[example]["load"], "touchstone": ""})
    request = msgspec.json.decode(body, type=SweepRequest)
    feedline = feedline_at(request, request.elements, request.load or KnownEnd(what="matched"), spot_column(1e8))
    resistor = TwoPort(*np.array([1, ohm, 0, 1], dtype=np.complex128))
    ports = []
    for link in feedline.links:
        ports.append(link.models[GENEROUS].two_port(frequency))
        if link.element == faulty:
            ports.append(resistor)
    return ports, feedline.load.likely(frequency)[0]


def _noisy(random: np.random.Generator, values: np.ndarray) -> np.ndarray:
    real, imaginary = random.normal(size=(2, values.size)) * NOISE / np.sqrt(2)
    return values + real + 1j * imaginary


def measured_line(ohm: float = 4.0, seed: int = 11) -> str:
    """The one-port sweep of the line with so much [Ω] too much in its third joint."""
    frequency = np.arange(1, 201) * 2.5e6
    ports, load = _ports("line", frequency, 4, ohm)
    s11 = drive(ports, load, 50.0, net=False).reflection(50.0)[0]
    return _text("a line with its far end shorted", frequency, [_noisy(np.random.default_rng(seed), s11)])


def measured_jumper() -> str:
    """The two-port sweep of the jumper."""
    frequency, random = np.arange(1, 51) * 20e6, np.random.default_rng(12)
    ports, _ = _ports("jumper", frequency, 2, 6.0)
    s11, s12, s21, s22 = scattering(cascade(ports), 50.0)
    return _text("a jumper", frequency, [_noisy(random, s + 0 * frequency) for s in (s11, s21, s12, s22)])


def _text(of: str, frequency: np.ndarray, columns: list[np.ndarray]) -> str:
    rows = [f"! Example: {of}, made by a script", "# MHz S RI R 50"]
    for hertz, *row in zip(frequency, *columns, strict=True):
        pairs = " ".join(f"{value.real:.{DECIMALS}f} {value.imag:.{DECIMALS}f}" for value in row)
        rows.append(f"{hertz / 1e6:g} {pairs}")
    return "\n".join(rows) + "\n"


def main() -> None:
    """Write the module of the page."""
    line, jumper = EXAMPLES["line"], EXAMPLES["jumper"]
    examples = {
        "line": {
            **line,
            "file": {"name": "hill-hut.s1p", "text": measured_line()},
            "after": {"name": "hill-hut-mended.s1p", "text": measured_line(0.0, 13)},
        },
        "jumper": {**jumper, "file": {"name": "jumper.s2p", "text": measured_jumper()}},
    }
    head = "/** Example measurements to start from; written by frontend/assemble/example_sweeps.py. */\n"
    MODULE.parent.mkdir(exist_ok=True)
    MODULE.write_text(f"{head}export const EXAMPLES = {json.dumps(examples, indent=1)};\n", "utf-8")


if __name__ == "__main__":
    main()
