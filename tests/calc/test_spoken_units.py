"""Sentences in US units: no metric one is left in them, and every number of the answer stays as it is."""

import json
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.numeric.measures import (
    INCH_POUND_NM,
    fahrenheit,
    length_words,
    prose,
    short_length_words,
    size_span_words,
    size_words,
    spoken_in,
    temperature_words,
    torque_words,
    weight_words,
)
from jointwise.calc.operations import OPERATIONS, InputError, call

CASES = json.loads((Path(__file__).parents[2] / "frontend/payload/cases.json").read_text())

LINE = [
    {"kind": "joint", "family": "uhf"},
    {"kind": "cable", "cable": "rg_58", "length_m": 40},
    {"kind": "joint", "family": "uhf"},
    {"kind": "cable", "cable": "foam_10_mm", "length_m": 17},
    {"kind": "joint", "family": "n"},
    {"kind": "wires", "line": "window_450_solid", "length_m": 12},
]
HOT = {"ambient_temperature_c": 80, "solar_irradiance_w_per_m2": 1400, "exposure": "exposed"}
COLD = {"ambient_temperature_c": -60, "exposure": "exposed"}
MORE = [
    ("line", {"elements": LINE, "load": {"kind": "vswr", "vswr": 3}, "band": "10m", "power_w": 1500, **HOT}),
    ("line", {"elements": LINE, "load": {"kind": "vswr", "vswr": 3}, "band": "70cm", "power_w": 400, **COLD}),
    ("choose", {"power_w": 1500, "largest_diameter_m": 0.012, "cable_diameter_m": 0.0103, **HOT}),
    ("fitout", {"elements": LINE, "band": "20m", "power_w": 400, **COLD}),
    ("cell", {"family": "sma", "band": "20m", "power_w": 100, **HOT}),
]
"""What brings sentences that no case of the page has: heat, cold, advice, a body too thick."""

METRIC = re.compile(r"\d (?:m|mm|cm|km|°C|kg)(?!\w)|N·m|dB/100 m\b")
NAMES = re.compile(
    "|".join(
        re.escape(name)
        for name in sorted(
            [band.name for band in catalogue().bands.values()]
            + [words for family in catalogue().interfaces.values() for words in (family.name, family.summary)],
            key=len,
            reverse=True,
        )
    )
)
"""Of bands and connectors: "2 m", "3.5 mm" and "7 mm interface" are what they are called, whatever is measured in."""

WORKING = {"steps", "derivations", "derivation", "formulas", "sources"}
"""A formula's working is in SI."""
QUOTED = {"note", "notes", "fit_note", "reference", "place", "values", "evidence"}
"""What a source says in its own units."""
AS_SENT = {"request", "url"}
DATA = {
    "families",
    "matings",
    "adapters",
    "bands",
    "materials",
    "unit",
    "entry",
    "cable",
    "construction",
    "also_called",
}
"""The catalogue's own entries, in the operation that gives them as they are."""


def _texts(value: Any, operation: str, path: tuple[str, ...] = ()) -> Iterator[tuple[tuple[str, ...], str]]:
    if isinstance(value, str):
        yield path, value
    elif isinstance(value, list):
        for item in value:
            yield from _texts(item, operation, path)
    elif isinstance(value, dict):
        for name, item in value.items():
            if name in WORKING | QUOTED | AS_SENT | {"unit"} or (operation == "catalogue" and name in DATA):
                continue
            yield from _texts(item, operation, (*path, name))


def _numbers(value: Any) -> Any:
    """The answer without its texts."""
    if isinstance(value, dict):
        return {name: _numbers(item) for name, item in value.items()}
    if isinstance(value, list):
        return [_numbers(item) for item in value]
    return None if isinstance(value, str) else value


def _asked(operation: str, body: dict[str, Any], units: str) -> dict[str, Any]:
    answer: dict[str, Any] = json.loads(call(operation, json.dumps({**body, "units": units}).encode()))
    return answer


def _answered() -> list[Any]:
    """The requests that are answered, those that take long marked so."""
    found = []
    for index, case in enumerate(CASES):
        operation = case["operation"]
        try:
            body = json.loads(case["body"])
        except ValueError:
            continue
        if operation in OPERATIONS and isinstance(body, dict):
            slow = [pytest.mark.slow] if operation in {"kit", "spread", "sweep"} else []
            found.append(pytest.param(operation, body, id=f"{operation}-{index}", marks=slow))
    return found + [pytest.param(operation, body, id=f"{operation}-more") for operation, body in MORE]


@pytest.mark.parametrize(("operation", "body"), _answered())
def test_us_units(operation: str, body: dict[str, Any]) -> None:
    try:
        metric = _asked(operation, body, "metric")
    except InputError as refused:
        with pytest.raises(InputError, match=re.escape(str(refused)[:40])):
            _asked(operation, body, "us")
        return
    us = _asked(operation, body, "us")
    assert _numbers(us) == _numbers(metric)
    left = [(path, text) for path, text in _texts(us, operation) if METRIC.search(NAMES.sub("", text))]
    assert left == []
    # what an answer in one system leaves behind must not reach the next
    assert _asked(operation, body, "metric") == metric


@pytest.mark.parametrize(("operation", "body"), [one for one in MORE if one[0] != "cell"])
def test_sentences_differ(operation: str, body: dict[str, Any]) -> None:
    metric, us = ([text for _, text in _texts(_asked(operation, body, units), operation)] for units in ("metric", "us"))
    told = [after for before, after in zip(metric, us, strict=True) if before != after]
    assert len([text for text in told if re.search(r"\d (ft|in|in-lb|lb|°F)(?!\w)", text)]) >= 3


def test_units_asked_for() -> None:
    with pytest.raises(InputError, match='units is "imperial"; allowed: one of metric, us'):
        _asked("cell", {"family": "n", "band": "20m"}, "imperial")


def test_factors() -> None:
    """NIST Special Publication 811 (2008), appendix B.8 and B.9, from memory, to the digits printed there."""
    with spoken_in("us"):
        assert length_words(0.3048) == "1 ft"
        assert size_words(0.0254) == "1 in"
        assert weight_words(0.45359237) == "1.0 lb"
    # "pound-force inch (lbf·in) to newton meter: 1.129 848 E-01"
    assert pytest.approx(1.129848e-1, abs=5e-8) == INCH_POUND_NM
    # the freezing and the boiling point of water, and the point where both scales agree
    assert [fahrenheit(celsius) for celsius in (0, 100, -40)] == [32, 212, -40]


WORDS: list[tuple[Callable[[], str], str, str]] = [
    (lambda: length_words(17), "17 m", "55.8 ft"),
    (lambda: length_words(30.48), "30.48 m", "100 ft"),
    (lambda: length_words(17.0688), "17.0688 m", "56 ft"),
    (lambda: length_words(3.81), "3.81 m", "12.5 ft"),
    (lambda: length_words(0.25), "0.25 m", "0.82 ft"),
    (lambda: length_words(52.123, 3), "52.1 m", "171 ft"),
    (lambda: length_words(999), "999 m", "3278 ft"),
    (lambda: short_length_words(0.06, 2), "60 mm", "2.4 in"),
    (lambda: short_length_words(1.2, 2), "1.2 m", "3.9 ft"),
    (lambda: size_words(0.0103), "10.3 mm", "0.406 in"),
    (lambda: size_words(0.0127), "12.7 mm", "0.5 in"),
    (lambda: size_words(0.1016, 3), "102 mm", "4 in"),
    (lambda: size_span_words(0.005, 0.011, 3), "5 to 11 mm", "0.197 to 0.433 in"),
    (lambda: temperature_words(40), "40 °C", "104 °F"),
    (lambda: temperature_words(-55), "-55 °C", "-67 °F"),
    (lambda: temperature_words(25.5), "25.5 °C", "77.9 °F"),
    (lambda: temperature_words(84.6, whole=True), "85 °C", "184 °F"),
    (lambda: torque_words(0.8, 1.1), "0.8 to 1.1 N·m (7.1 to 9.7 in-lb)", "7.1 to 9.7 in-lb"),
    (lambda: torque_words(25, 25), "25 N·m (221 in-lb)", "221 in-lb"),
    (lambda: weight_words(1.5), "1.5 kg", "3.3 lb"),
    (lambda: prose("Foam 10.3 mm, 400 size"), "Foam 10.3 mm, 400 size", "Foam 0.406 in, 400 size"),
    (lambda: prose("vinyl tape, 51 mm, 1 m deep"), "vinyl tape, 51 mm, 1 m deep", "vinyl tape, 2 in, 3.3 ft deep"),
    (
        lambda: prose("Tape above 0 °C, not at -40 °C"),
        "Tape above 0 °C, not at -40 °C",
        "Tape above 32 °F, not at -40 °F",
    ),
    (lambda: prose("to 2.8 to 3.4 N·m (25 to 30 in-lb)."), "to 2.8 to 3.4 N·m (25 to 30 in-lb).", "to 25 to 30 in-lb."),
    (lambda: prose("RG-213, 50 Ω, 7/16, 30 MHz"), "RG-213, 50 Ω, 7/16, 30 MHz", "RG-213, 50 Ω, 7/16, 30 MHz"),
]


@pytest.mark.parametrize(("words", "metric", "us"), WORDS)
def test_words(words: Callable[[], str], metric: str, us: str) -> None:
    assert words() == metric
    with spoken_in("us"):
        assert words() == us
    assert words() == metric
