"""Everything that reads a text from outside: one row each, with whole texts to begin from."""

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple
from urllib.parse import parse_qs

import msgspec

from jointwise.backend.station_file.reading import read
from jointwise.backend.station_file.words import listing
from jointwise.backend.texts import request_body
from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import Document
from jointwise.calc.operations import OPERATIONS, call
from jointwise.calc.waves.touchstone import read_touchstone

FOUND = Path(__file__).with_name("found")
"""A folder for each parser and operation with the inputs that once broke it; `test_found.py` reads them all again."""

SEEDS = {
    "one-port": "! a load\n# MHz S RI R 50\n0.1 0.1 -0.2\n50000 0.11 -0.21\n",
    "two-port": "# GHz S DB R 75\n1e-4 -20 90 -0.1 0 -0.1 0 -20 90\n50 -21 90 -0.2 0\n-0.2 0 -21 90\n",
    "version 2": """[Version] 2.0
# Hz Z MA R 50
[Number of Ports] 2
[Two-Port Data Order] 21_12
[Number of Frequencies] 1
[Reference] 50 50
[Matrix Format] Upper
[Network Data]
1e6 10 0 5 0 10 0
[End]
""",
    "beside the standard": "# MHz S DB R50\n1 -inf 0\n! Port Impedance 50 0\n# GHz\n2 -20 9\n\x1a",
    "swept": "# MHz S RI R 50\n" + "".join(f"{at} 0.1 0\n" for at in range(5, 105, 5)),
}
"""Whole Touchstone texts."""


LONGEST_QUESTION = 300
"""Letters that a question may have."""


class Parser(NamedTuple):
    """How a text is read, and texts that can be read."""

    read: Callable[[bytes], Any]
    """Gives anything for what it can read, and raises InputError for the rest."""
    seeds: list[str]


def _asking(operation: str) -> Callable[[bytes], Any]:
    """Asks, and reads the answer as the description has it: no number may be missing."""
    return lambda data: msgspec.json.decode(call(operation, data), type=OPERATIONS[operation].result)


def _typed(data: bytes) -> bytes:
    text = data.decode("utf-8", "replace")[:LONGEST_QUESTION]
    return call("question", json.dumps({"text": text}).encode())


def _listed(data: bytes) -> str:
    return listing(read(data.decode("utf-8", "replace")))


def _by_query(data: bytes) -> bytes:
    texts = parse_qs(data.decode("utf-8", "replace"), keep_blank_values=True)
    return call("matrix", request_body(OPERATIONS["matrix"].request, texts))


RUN = [{"kind": "joint", "family": "n"}, {"kind": "cable", "cable": "rg_213", "length_m": 3}]
LINE = {
    "elements": [*RUN, {"kind": "measured", "touchstone": "# MHz S RI R 50\n1 0 0 1 0 1 0 0 0\n500 0 0 1 0 1 0 0 0"}],
    "load": {"kind": "vswr", "vswr": 2},
    "band": "2m",
}
SWEEP = {"elements": RUN, "load": {"kind": "end", "what": "short"}, "touchstone": SEEDS["swept"]}
PACK = (
    '{"id":"invented","name":"Invented club","version":"1","sources":[{"id":"a","title":"Invented","seen":"read"}],'
    '"overrides":{"modes":["cw"]},"default_powers_w":[10,50],'
    '"modes":[{"id":"cw","name":"CW","duty_factor":{"value":0.5,"source":"a","kind":"memory"}}],'
    '"house_limits":[{"id":"low","power_w":50,"interfaces":["bnc"],"reason":"Old.","source":"a","kind":"memory"}]}'
)


STATION = {
    "format": "jointwise station",
    "version": 1,
    "name": "Hut",
    "date": "2026-11-29",
    "kept": {
        "station": {"settings": {"vswr": 2}, "antennas": [{"load": {"kind": "vswr", "vswr": 2}}], "antenna": 0},
        "lines": {"lines": [{"name": "Garden", "request": {"elements": RUN}}], "current": 0},
        "kit": {"ports": [{"family": "n", "gender": "jack", "highest_frequency_hz": 1e8}]},
        "packs": {"own": [{"text": PACK, "on": True}], "server": []},
    },
}


def _earlier_pack() -> str:
    """A pack as an earlier version had it: both ends of a family's power, a field that is no longer used."""
    family = msgspec.to_builtins(catalogue().interfaces["bnc"]) | {"id": "own", "name": "Own", "customary_cable": None}
    rating = {"power_w": 100, "frequency_hz": 1e9, "ambient_temperature_c": 40, "contact_temperature_c": 85}
    end = rating | {"altitude_m": 0, "source": "memory", "kind": "memory"}
    family["average_power"] = {"low": end, "high": end | {"power_w": 300}}
    family["altitude_voltage_rms_v"] = {"value": 375, "source": "memory", "kind": "memory"}
    return json.dumps({"id": "old", "name": "Old club", "version": "1", "sources": [], "interfaces": [family]})


PARSERS = {
    "touchstone": Parser(lambda data: read_touchstone(data.decode("utf-8", "replace"), "file"), list(SEEDS.values())),
    "matrix": Parser(_asking("matrix"), ['{"families":["n"],"bands":["2m"],"powers_w":[1,100],"vswr":2}']),
    "line": Parser(_asking("line"), [json.dumps(LINE)]),
    "sweep": Parser(_asking("sweep"), [json.dumps(SWEEP)]),
    "pack": Parser(lambda data: edition_of([Document("pack.json", data)]), [PACK, _earlier_pack()]),
    "station file": Parser(_listed, [json.dumps(STATION)]),
    "question": Parser(
        _typed, ["Will the SO-239 take 1 kW FT8 on 10 m at SWR 3?", "n 28074 kHz 1,5kW 5000 ft 95 F mast"]
    ),
    "query": Parser(
        _by_query, ["families=n,sma&powers_w=0,100&vswr=3&on_time_s=null", "bands=&frequencies_hz=1e9&region=2"]
    ),
}
"""One row for each parser."""


def reader(name: str) -> Callable[[bytes], Any]:
    """How an input is read that stands in a folder of this name: by a parser, or by the operation."""
    return PARSERS[name].read if name in PARSERS else _asking(name)
