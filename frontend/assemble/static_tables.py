"""The page that needs no script: matrices as plain coloured tables with short derivations.

Built by the core itself, inside the live page's element: a reader whose device
runs no scripts has the tables, and everybody else sees the live page instead.
"""

import json
from html import escape
from itertools import pairwise
from typing import Any, NamedTuple

from jointwise.calc.operations import call

from .start_data import FIRST_BANDS

__all__ = ["SITUATIONS", "Situation", "markup"]

DERIVED_BAND = "20m"
DERIVED_POWER_W = 100.0
MATCH = "match"
"""The gate whose cells print their return loss."""
REFUSED = {
    "te11": "TE11",
    "cable_te11": "TE11",
    "no_figures": "freq",
    "receive_only": "rx only",
    "no_heat_room": "hot",
    "immersion": "wet",
    "house": "house",
}
MARKS = {
    "customary_frequency": "f",
    "weather": "w",
    "vibration": "v",
    "wear": "s",
    "cable_fit": "c",
    "cold": "t",
    "match_doubt": "m",
}
LOWER_FROM_MEMORY = "↓"
LIMITS = {"contact": "con", "cable": "cab", "voltage": "vol"}


INTRODUCTION = (
    "<h1>Jointwise</h1>"
    "<p>How much power a coaxial joint stands: margins in decibels of power, family by family and band by band."
    " These are built-in tables; with scripts on, the live page stands here.</p>"
    "<p><b>On a tablet that shows a saved file without scripts:</b> open the served page once in the browser"
    " and add it to the home screen; it then works with no network.</p>"
)


class Situation(NamedTuple):
    """One table: its heading, the station in words, and what is asked of the core."""

    heading: str
    words: str
    request: dict[str, Any]


SITUATIONS = [
    Situation("100 W SSB", "a station indoors, 40 °C, VSWR 1.5", {"powers_w": [100.0]}),
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
    Situation("100 W FT8", "a station indoors, 40 °C, VSWR 1.5", {"powers_w": [100.0], "mode": "ft8"}),
    Situation("1.5 kW SSB", "a station indoors, 40 °C, VSWR 1.5", {"powers_w": [1500.0]}),
    Situation(
        "1.5 kW SSB on a mast",
        "exposed and sealed with tape, full sun, 35 °C in the shade, severe vibration",
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


def markup(step_edges_db: list[float]) -> str:
    """All tables, the legend, short derivations and cautions as HTML.

    `step_edges_db` are the lower edges of the colour steps above the first [dB].
    """
    catalogue = _ask("catalogue", {})
    parts = [
        INTRODUCTION,
        _legend(step_edges_db),
        *(_table(situation, step_edges_db) for situation in SITUATIONS),
        _derivations(catalogue),
        _cautions(catalogue["cautions"]),
    ]
    return "".join(parts)


def _ask(operation: str, request: dict[str, Any]) -> dict[str, Any]:
    answer: dict[str, Any] = json.loads(call(operation, json.dumps(request).encode()))
    return answer


def _decibels(value: float) -> str:
    return f"{'−' if value < 0 else '+'}{abs(value):.1f}"


def _step(margin: float, edges: list[float]) -> int:
    return sum(margin >= edge for edge in edges)


def _legend(edges: list[float]) -> str:
    ranges = [
        f"below {_signed(edges[0])}",
        *(f"{_signed(low)} to {_signed(high)} dB" for low, high in pairwise(edges)),
        f"{_signed(edges[-1])} and above",
    ]
    steps = "".join(f"<td data-step={index}>{words}</td>" for index, words in enumerate(ranges))
    return (
        "<section><h2>Reading the tables</h2>"
        "<p>0 dB is at the limit, more is room left. After the number, what limits it: con, heat of the contact;"
        " cab, heat of the cable; vol, voltage; ? where sources differ on which side of the limit it lies. Raised"
        " signs: f above the customary frequency, w weather, v vibration, s more swaps than it is good for, c cable,"
        " t cold, m match in doubt, ↓ a power figure from memory is lower. RL 26: in receive, return loss 26 dB,"
        " enough. A refused cell says why: RL 8, return loss 8 dB, less than asked for; freq, no published figure so"
        " high; TE11, above the cutoff; rx only; hot; wet.</p>"
        f"<table class=plain><tr>{steps}</tr></table></section>"
    )


def _signed(edge: float) -> str:
    return "0" if edge == 0 else f"{edge:+g}".replace("-", "−")


def _table(situation: Situation, edges: list[float]) -> str:
    matrix = _ask("matrix", {"bands": FIRST_BANDS, **situation.request})
    heads = "".join(f"<th scope=col>{escape(column['name'])}" for column in matrix["columns"])
    rows = "".join(
        f"<tr><th scope=row>{escape(family['name'])}{_cells(matrix, row, edges)}"
        for row, family in enumerate(matrix["families"])
    )
    return (
        f"<section><h2>{escape(situation.heading)}</h2><p>{escape(situation.words)}</p>"
        f"<div class=scroll><table class=plain><caption>Margin in dB, {escape(situation.heading)}</caption>"
        f"<thead><tr><th scope=col>Family{heads}<tbody>{rows}</table></div></section>"
    )


def _cells(matrix: dict[str, Any], row: int, edges: list[float]) -> str:
    return "".join(_cell(matrix, row, column, edges) for column in range(len(matrix["columns"])))


def _cell(matrix: dict[str, Any], row: int, column: int, edges: list[float]) -> str:
    gates = [gate["id"] for gate in matrix["gates"]]
    refused = matrix["refused_by"][row][column][0]
    return_loss = matrix["return_loss_db"][row][column][0]
    if refused >= 0:
        why = f"RL {return_loss:.0f}" if gates[refused] == MATCH else REFUSED[gates[refused]]
        return f"<td data-step=refused>{why}"
    margin = matrix["margin_db"][row][column][0]
    failed = matrix["marks"][row][column][0]
    marks = "".join(MARKS[gate] for index, gate in enumerate(gates) if failed >> index & 1)
    if margin is None:
        return f"<td data-step=holds>RL {return_loss:.0f}{_raised(marks)}"
    limit = LIMITS[matrix["limits"][matrix["binding"][row][column][0]]]
    doubt = "?" if matrix["undecided"][row][column][0] else ""
    raised = _raised(marks + (LOWER_FROM_MEMORY if matrix["rating_below"][row] else ""))
    return f"<td data-step={_step(margin, edges)}>{_decibels(margin)}<small>{limit}{doubt}</small>{raised}"


def _raised(marks: str) -> str:
    return f"<sup>{marks}</sup>" if marks else ""


def _derivations(catalogue: dict[str, Any]) -> str:
    formulas = {formula["id"]: formula for formula in catalogue["formulas"]}
    sheets = "".join(_derivation(family, formulas) for family in catalogue["families"])
    return (
        f"<section><h2>Derivations</h2><p>Each family on 20 m at {DERIVED_POWER_W:g} W SSB, the cautious end of"
        f" its ratings. A step that several limits share is told once.</p>{sheets}</section>"
    )


def _derivation(family: dict[str, Any], formulas: dict[str, Any]) -> str:
    cell = _ask("cell", {"family": family["id"], "band": DERIVED_BAND, "power_w": DERIVED_POWER_W})
    told: set[str] = set()
    limits = "".join(_derived(limit["name"], limit, formulas, told) for limit in cell["limits"])
    match = _derived("Return loss", cell["match"], formulas, told)
    gates = "".join(f"<li>{escape(gate['name'])}: {escape(gate['sentence'])}" for gate in cell["gates"])
    return (
        f"<details><summary>{escape(family['name'])}</summary><p>{escape(cell['verdict'])}</p>{limits}{match}"
        f"<p>Gates</p><ul>{gates}</ul></details>"
    )


def _derived(name: str, derived: dict[str, Any], formulas: dict[str, Any], told: set[str]) -> str:
    """A limit or the match: its sentence and the steps of its cautious end but for those told, which it adds to.

    The heat of a contact begins with that of its cable: told twice they would be a quarter of the page.
    """
    cautious = (step for step in derived["steps"] if step["end"] == "low")
    steps = [f"<li>{escape(formulas[step['formula']]['title'])}: {escape(_evaluated(step))}" for step in cautious]
    own = [step for step in dict.fromkeys(steps) if step not in told]
    told.update(own)
    listed = f"<ol>{''.join(own)}</ol>" if own else ""
    return f"<p><b>{escape(name)}.</b> {escape(derived['sentence'])}</p>{listed}"


def _evaluated(step: dict[str, Any]) -> str:
    """A formula's result and the numbers it came from."""
    numbers = ", ".join(f"{symbol['symbol']} {symbol['value']:.4g}" for symbol in step["inputs"])
    result = step["result"]
    return f"{result['symbol']} = {result['value']:.4g} {result['unit'].replace('1', '', 1)} from {numbers}"


def _cautions(cautions: list[str]) -> str:
    items = "".join(f"<li>{escape(caution)}" for caution in cautions)
    return f"<section><h2>Before you work on it</h2><ul>{items}</ul></section>"
