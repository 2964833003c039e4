"""Lengths, temperatures, torques and weights in the units a request asks to be spoken to in.

The units hold inside one call, so that no function has to pass them on. Only
sentences and names follow them: a result's numbers and a formula's working
stay in SI. Nothing that is remembered longer than a call may hold such words.

Factors: NIST Special Publication 811 (2008), appendix B.8, the exact ones from
memory: inch 0.0254 m, foot 0.3048 m, pound 0.45359237 kg, pound-force
4.4482216152605 N, and t/°F = 1.8 t/°C + 32.
"""

import re
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from typing import Literal

from .rounding import significant
from .units import engineering

__all__ = [
    "FOOT_M",
    "INCH_M",
    "INCH_POUND_NM",
    "Units",
    "celsius",
    "fahrenheit",
    "length_words",
    "prose",
    "short_length_words",
    "size_span_words",
    "size_words",
    "spoken_in",
    "temperature_words",
    "torque_words",
    "units_spoken",
    "weight_words",
]

Units = Literal["metric", "us"]

INCH_M = 0.0254
FOOT_M = 12 * INCH_M
POUND_KG = 0.45359237
INCH_POUND_NM = 4.4482216152605 * INCH_M

FIGURES = 3
"""Of a converted length: a foot in three hundred, the tenth of a millimetre in a cable's diameter."""
WHOLE = 100
"""From here on a converted figure is told to the whole unit, however many figures that is."""
TYPED_DECIMALS = {"ft": 2, "in": 4, "°F": 1}
"""A figure with no more than these was given in that unit, and is told as it was given."""
NOISE = 1e-9
"""Of a figure that went to SI and back."""
PROSE_FIGURES = 2
"""A text's "51 mm" is known to the millimetre at best: 2 in."""

_units: ContextVar[Units] = ContextVar("units", default="metric")


@contextmanager
def spoken_in(units: Units) -> Iterator[None]:
    """Let sentences made inside the block speak in these units."""
    token = _units.set(units)
    try:
        yield
    finally:
        _units.reset(token)


def units_spoken() -> Units:
    """Those of the call at hand."""
    return _units.get()


def fahrenheit(celsius: float) -> float:
    """A temperature [°C] in °F."""
    return 1.8 * celsius + 32


def celsius(fahrenheit: float) -> float:
    """A temperature [°F] in °C."""
    return (fahrenheit - 32) / 1.8


def length_words(metres: float, figures: int | None = None) -> str:
    """A length [m] in metres or feet: "17 m", "55.8 ft"; in metres with so many figures, or as it was given."""
    if _metric():
        return f"{_figures(metres, figures)} m"
    return f"{_converted(metres / FOOT_M, 'ft', figures)} ft"


def short_length_words(metres: float, figures: int) -> str:
    """A length [m] that may be less than a metre or a foot: "60 mm", "1.2 m", "2.4 in", "3.9 ft"."""
    if _metric():
        return engineering(significant(metres, figures), "m")
    return length_words(metres, figures) if metres >= FOOT_M else size_words(metres, figures)


def size_words(metres: float, figures: int | None = None) -> str:
    """A diameter or another small length [m] in millimetres or inches: "10.3 mm", "0.406 in"."""
    return f"{_size(metres, figures)} {_size_unit()}"


def size_span_words(low_m: float, high_m: float, figures: int | None = None) -> str:
    """A range of sizes [m]: "5 to 11 mm", "0.197 to 0.433 in"."""
    return f"{_size(low_m, figures)} to {_size(high_m, figures)} {_size_unit()}"


def temperature_words(celsius: float, *, whole: bool = False) -> str:
    """A temperature [°C] in °C, whole or as it was given, or in °F: "40 °C", "104 °F"."""
    if _metric():
        return f"{celsius:.0f} °C" if whole else f"{celsius:g} °C"
    value = fahrenheit(celsius)
    return f"{value:.0f} °F" if whole or not _is_typed(value, "°F") else f"{value:.6g} °F"


def torque_words(low_nm: float, high_nm: float) -> str:
    """A range of torque [N·m] as a wrench shows it: "0.8 to 1.1 N·m (7.1 to 9.7 in-lb)", "7.1 to 9.7 in-lb"."""
    ends = [low_nm, high_nm]
    inch_pounds = f"{_span([end / INCH_POUND_NM for end in ends])} in-lb"
    return f"{_span(ends)} N·m ({inch_pounds})" if _metric() else inch_pounds


def weight_words(kilograms: float) -> str:
    """A weight [kg] in kilograms or pounds: "1.5 kg", "3.3 lb"."""
    return f"{kilograms:.1f} kg" if _metric() else f"{kilograms / POUND_KG:.1f} lb"


_NUMBER = r"-?\d+(?:\.\d+)?"
_IN_PROSE = re.compile(
    rf"(?<![\w.])(?P<low>{_NUMBER})(?: to (?P<high>{_NUMBER}))? (?P<unit>mm|cm|m|°C|N·m)(?!\w)"
    r"(?: \([^()]*in-lb\))?"
)
_TO_US = {
    "mm": (1e-3 / INCH_M, "in"),
    "cm": (1e-2 / INCH_M, "in"),
    "m": (1 / FOOT_M, "ft"),
    "N·m": (1 / INCH_POUND_NM, "in-lb"),
}


def prose(text: str) -> str:
    """A text of the catalogue with the sizes in it as they are spoken: of US units with as many figures, at least two.

    For names and advice; a band's name is no length and a source's words are quoted, so neither may come here.
    """
    return text if _metric() else _IN_PROSE.sub(_replaced, text)


def _replaced(found: re.Match[str]) -> str:
    ends = [end for end in (found["low"], found["high"]) if end]
    if found["unit"] == "°C":
        return " to ".join(f"{fahrenheit(float(end)):.0f}" for end in ends) + " °F"
    factor, unit = _TO_US[found["unit"]]
    figures = max(PROSE_FIGURES, *(len(end.replace(".", "").strip("-0")) for end in ends))
    return " to ".join(f"{_round(float(end) * factor, figures):g}" for end in ends) + f" {unit}"


def _metric() -> bool:
    return _units.get() == "metric"


def _figures(value: float, figures: int | None) -> str:
    return f"{value:g}" if figures is None else f"{value:.{figures}g}"


def _converted(value: float, unit: str, figures: int | None) -> str:
    """A US figure as it was given, where it was given so, else rounded."""
    if figures is None and _is_typed(value, unit):
        return f"{value:.6g}"
    return f"{_round(value, figures or FIGURES):g}"


def _is_typed(value: float, unit: str) -> bool:
    return abs(value - round(value, TYPED_DECIMALS[unit])) <= NOISE * max(abs(value), 1.0)


def _round(value: float, figures: int) -> float:
    return float(round(value)) if abs(value) >= WHOLE else significant(value, figures)


def _size(metres: float, figures: int | None) -> str:
    return _figures(metres * 1e3, figures) if _metric() else _converted(metres / INCH_M, "in", figures)


def _size_unit() -> str:
    return "mm" if _metric() else "in"


def _span(ends: list[float]) -> str:
    low, high = (f"{end:.2g}" if end < WHOLE else f"{end:.0f}" for end in ends)
    return low if low == high else f"{low} to {high}"
