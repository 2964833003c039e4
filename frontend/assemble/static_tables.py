"""What the tables that need no script are made of: the core's answers about some situations.

`frontend/src/saved/tables.js` makes the markup, for the build as for a page that saves itself.
"""

import json
import subprocess
from pathlib import Path
from typing import Any, NamedTuple

from jointwise.calc.operations import call

from .start_data import FIRST_BANDS
from .version import PROJECT

__all__ = ["SITUATIONS", "Situation", "markup"]

DERIVED = {"band": "20m", "power_w": 100.0}
DERIVED_WORDS = "Each connector on 20 m at 100 W SSB"
SCRIPT = Path("frontend") / "tables.mjs"


class Situation(NamedTuple):
    """One table: its heading, the station in words, and what is asked of the core."""

    heading: str
    words: str
    request: dict[str, Any]


SITUATIONS = [
    Situation("100 W SSB", "a station indoors, 40 °C, SWR 1.5", {"powers_w": [100.0]}),
    Situation("Receive only", "the match alone counts: return loss in dB", {"powers_w": [0.0]}),
    Situation(
        "5 W FM, portable",
        "outdoors, sheltered, 30 °C, swapped fifty times a year",
        {
            "powers_w": [5.0],
            "mode": "fm",
            "exposure": "sheltered",
            "ambient_temperature_c": 30.0,
            "matings_per_year": 50.0,
        },
    ),
    Situation("100 W FT8", "a station indoors, 40 °C, SWR 1.5", {"powers_w": [100.0], "mode": "ft8"}),
    Situation("1.5 kW SSB", "a station indoors, 40 °C, SWR 1.5", {"powers_w": [1500.0]}),
    Situation(
        "1.5 kW SSB on a mast",
        "in the weather and sealed with tape, full sun, air of 35 °C, severe vibration",
        {
            "powers_w": [1500.0],
            "exposure": "exposed",
            "added_sealing": True,
            "solar_irradiance_w_per_m2": 1000.0,
            "ambient_temperature_c": 35.0,
            "vibration": "severe",
        },
    ),
]
"""Invented situations; the first is what the live page shows first."""


def markup() -> str:
    """All tables, the legend, short derivations and cautions as HTML. Raises CalledProcessError when Node fails."""
    catalogue = _ask("catalogue", {})
    situations = [
        {"heading": one.heading, "words": one.words, "matrix": _ask("matrix", {"bands": FIRST_BANDS, **one.request})}
        for one in SITUATIONS
    ]
    cells = [_ask("cell", {"family": family["id"], **DERIVED}) for family in catalogue["families"]]
    answers = {"situations": situations, "derived": {"cells": cells, "words": DERIVED_WORDS}, "catalogue": catalogue}
    command = ["node", str(PROJECT / SCRIPT)]
    made = subprocess.run(command, check=True, cwd=PROJECT, capture_output=True, text=True, input=json.dumps(answers))  # noqa: S603  (the project's own script)
    return made.stdout


def _ask(operation: str, request: dict[str, Any]) -> dict[str, Any]:
    answer: dict[str, Any] = json.loads(call(operation, json.dumps(request).encode()))
    return answer
