"""Figures with their units, as a sentence holds them: power, frequency, band, SWR, temperature, height and more."""

import math
import re
from collections.abc import Callable, Iterator
from typing import NamedTuple

from ..catalogue import catalogue
from ..fields import Number, object_of
from ..numeric.measures import FOOT_M, INCH_M, celsius, length_words, size_words, temperature_words
from .numerals import ARTICLE, NUMBER, numbers_of
from .phrases import Meaning, suggested
from .requests import QuestionRequest

__all__ = ["Complaint", "Figure", "figures_at"]

DIGITS = r"[+-]?(?:\d[\d.,']*\d|\d|[.,]\d+)"
END = r"(?!\w)"
GAP = r"[ -]?"
LENGTH_UNITS = {"m": 1.0, "metre": 1.0, "meter": 1.0, "mtr": 1.0, "cm": 1e-2, "centimetre": 1e-2, "centimeter": 1e-2}
LENGTH_UNITS |= {"mm": 1e-3, "millimetre": 1e-3, "millimeter": 1e-3, "km": 1e3, "ft": FOOT_M, "feet": FOOT_M}
LENGTH_UNITS |= {"foot": FOOT_M, "'": FOOT_M, "in": INCH_M, "inch": INCH_M, "inche": INCH_M, '"': INCH_M}
POWER_UNITS = {"w": 1.0, "watt": 1.0, "kw": 1e3, "kilowatt": 1e3, "mw": 1e-3, "milliwatt": 1e-3}
FREQUENCY_UNITS = {"hz": 1.0, "khz": 1e3, "kilohertz": 1e3, "kc": 1e3, "mhz": 1e6, "megahertz": 1e6, "meg": 1e6}
FREQUENCY_UNITS |= {"mc": 1e6, "ghz": 1e9, "gigahertz": 1e9, "gig": 1e9}

WATT_NAMES = {1e-3: "mW", 1.0: "W", 1e3: "kW", 1e6: "MW"}
HERTZ_NAMES = {1.0: "Hz", 1e3: "kHz", 1e6: "MHz", 1e9: "GHz"}

LOW_METRES, HIGH_FEET = 100.0, 500.0
"""Where heights above sea begin to count; fewer feet may be those of a cable."""

HELD_DIGITS = 12
"""More would show the noise of a factor."""


class Complaint(NamedTuple):
    """Why something typed is not taken, what could be typed in its place, and the field it was likely meant for."""

    words: str
    near: list[str]
    field: str | None = None


class Figure(NamedTuple):
    """Where a figure ends in the text, and what it means, or why it is not taken; with neither it says nothing."""

    end: int
    meaning: Meaning | None
    complaint: Complaint | None = None


def figures_at(text: str, small: str, start: int, region: int) -> Iterator[Figure]:
    """Every figure that begins at a place; `small` is the text in small letters, of the same length."""
    if start > 0 and small[start] in "+-" and small[start - 1].isalnum():
        return
    for pattern, reader in READERS:
        if found := pattern.match(small, start):
            figure = reader(found, text, region)
            if figure is not None:
                yield figure


Found = re.Match[str]
Reader = Callable[[Found, str, int], Figure | None]


def _pattern(text: str) -> re.Pattern[str]:
    return re.compile(text)


def _alternatives(units: dict[str, float]) -> str:
    names = "|".join(re.escape(name) for name in sorted(units, key=len, reverse=True))
    return rf"(?P<unit>{names})(?P<plural>s?)"


def _taken(found: Found, text: str, field: str, values: list[float], words: Callable[[float], str]) -> Figure:
    """The one value of a field, or why there is none; `words` say a value as it is typed."""
    values = [float(f"{value:.{HELD_DIGITS}g}") for value in values]
    number = _range_of(field)
    typed = text[found.start() : found.end()].strip()
    if not values:
        return Figure(found.end(), None, Complaint(f"“{typed}” can't be read as a number.", [], field))
    fitting = [value for value in values if number.takes(value)]
    if len(values) > 1:
        readings = " or ".join(words(value) for value in values)
        near = [words(value) for value in fitting]
        return Figure(found.end(), None, Complaint(f"“{typed}”: is that {readings}?", near, field))
    if not fitting:
        least, most = (words(bound) for bound in (number.least or 0.0, number.most or math.inf))
        words_of_range = f"“{typed}” is beyond what is computed: {least} to {most}."
        return Figure(found.end(), None, Complaint(words_of_range, [], field))
    return Figure(found.end(), Meaning(field, values[0]))


def _range_of(field: str) -> Number:
    """The declared range of a field."""
    shape = object_of(QuestionRequest).fields[field].shape
    if not isinstance(shape, Number):
        raise TypeError(f"{field} is no number")
    return shape


def _in(names: dict[float, str], factor: float) -> Callable[[float], str]:
    """How a value reads in the unit of a factor."""
    return lambda value: f"{value / factor:.{HELD_DIGITS}g} {names[factor]}"


def _swr_words(value: float) -> str:
    return f"SWR {value:g}"


def _power(found: Found, text: str, region: int) -> Figure:
    factor = POWER_UNITS[found["unit"]]
    if text[found.start("unit")] == "M":  # in a symbol the first M tells mega from milli
        factor = 1e6
    values = [one * factor for one in numbers_of(found["number"])]
    return _taken(found, text, "power_w", values, _in(WATT_NAMES, factor))


def _power_dbm(found: Found, text: str, region: int) -> Figure:
    values = [10 ** (one / 10) / 1e3 for one in numbers_of(found["number"]) if abs(one) < 100]
    return _taken(found, text, "power_w", values, _in(WATT_NAMES, 1.0))


def _frequency(found: Found, text: str, region: int) -> Figure:
    factor = FREQUENCY_UNITS[found["unit"]]
    values = [one * factor for one in numbers_of(found["number"], to_the_thousandth=factor >= 1e6)]
    return _taken(found, text, "frequency_hz", values, _in(HERTZ_NAMES, factor))


def _lone_k(found: Found, text: str, region: int) -> Figure:
    """Kilowatts, or kilohertz where no station has so much power."""
    values = [one * 1e3 for one in numbers_of(found["number"])]
    power = _taken(found, text, "power_w", values, _in(WATT_NAMES, 1e3))
    frequency = _taken(found, text, "frequency_hz", values, _in(HERTZ_NAMES, 1e3))
    return frequency if power.meaning is None and frequency.meaning is not None else power


def _spaced(found: Found, text: str, region: int) -> Figure:
    """Digits in groups of three: one number, or two that stand side by side."""
    groups = found["number"].split(" ")
    is_power = found["unit"] in POWER_UNITS
    field, units, names = (
        ("power_w", POWER_UNITS, WATT_NAMES) if is_power else ("frequency_hz", FREQUENCY_UNITS, HERTZ_NAMES)
    )
    factor = units[found["unit"]]
    values = [float("".join(groups)) * factor]
    if not groups[-1].startswith("0"):
        values.append(float(groups[-1]) * factor)
    return _taken(found, text, field, values, _in(names, factor))


def _swr(found: Found, text: str, region: int) -> Figure:
    return _taken(found, text, "vswr", numbers_of(found["number"]), _swr_words)


def _ratio(found: Found, text: str, region: int) -> Figure | None:
    first, second = numbers_of(found["number"]), numbers_of(found["other"])
    if 1.0 not in (*first, *second):
        return None
    return _taken(found, text, "vswr", first if second == [1.0] else second, _swr_words)


def _swr_alone(found: Found, text: str, region: int) -> Figure:
    return Figure(found.end(), None, Complaint("An SWR of how much?", ["SWR 1.5", "SWR 2", "SWR 3"], "vswr"))


def _nothing(found: Found, text: str, region: int) -> Figure:
    return Figure(found.end(), None)


def _temperature(found: Found, text: str, region: int) -> Figure:
    numbers = numbers_of(found["number"])
    if found["unit"].startswith("f"):
        numbers = [celsius(one) for one in numbers]
    return _taken(found, text, "ambient_temperature_c", numbers, temperature_words)


def _degrees(found: Found, text: str, region: int) -> Figure:
    number = found["number"]
    complaint = Complaint(f"Degrees of what: {number} °C or {number} °F?", [f"{number} °C", f"{number} °F"])
    return Figure(found.end(), None, complaint)


def _metres(found: Found, text: str, field: str) -> Figure:
    factor = LENGTH_UNITS[found["unit"]]
    return _taken(found, text, field, [one * factor for one in numbers_of(found["number"])], _length)


def _length(value: float) -> str:
    return length_words(value, 4) if value >= 1 else size_words(value, 4)


def _height(found: Found, text: str, region: int) -> Figure:
    return _metres(found, text, "altitude_m")


def _feet(found: Found, text: str, region: int) -> Figure:
    if any(one >= HIGH_FEET for one in numbers_of(found["number"])):
        return _metres(found, text, "altitude_m")
    return Figure(found.end(), None, Complaint(_LENGTH, [f"{found['number']} ft up"]))


_LENGTH = "The length of a cable doesn't count at one joint; a height above sea is said as “up”."


def _cable_length(found: Found, text: str, region: int) -> Figure:
    return Figure(found.end(), None, Complaint(_LENGTH, []))


def _diameter(found: Found, text: str, region: int) -> Figure:
    return _metres(found, text, "cable_diameter_m")


def _share(found: Found, text: str, region: int) -> Figure:
    shares = [one / 100 for one in numbers_of(found["number"])]
    return _taken(found, text, "transmit_share", shares, lambda value: f"{value * 100:g} %")


def _impedance(found: Found, text: str, region: int) -> Figure:
    numbers = numbers_of(found["number"])
    return _taken(found, text, "system_impedance_ohm", numbers, lambda value: f"{value:g} Ω")


def _band(found: Found, text: str, region: int) -> Figure:
    """The band of a wavelength; a length that is no band's may be anything."""
    typed = text[found.start() : found.end()]
    bands = _bands(region)
    lengths_m = [one * LENGTH_UNITS[found["unit"]] for one in numbers_of(found["number"])]
    for length_m in lengths_m:
        for wavelength_m, band in bands:
            if math.isclose(length_m, wavelength_m):
                return Figure(found.end(), Meaning("band", band))
    wanted_m = lengths_m[0] if lengths_m and lengths_m[0] > 0 else None
    near = sorted(bands, key=lambda band: abs(math.log(band[0] / wanted_m)))[:2] if wanted_m else []
    names = [suggested("band", band) for _, band in near]
    if LENGTH_UNITS[found["unit"]] == 1 and wanted_m and wanted_m >= LOW_METRES:
        names.append(f"{found['number']} m up")
    return Figure(found.end(), None, Complaint(f"“{typed}” is no amateur band in Region {region}.", names))


def _bands(region: int) -> list[tuple[float, str]]:
    """Wavelength [m] by which a band is named, and its id, of the Region."""
    found = []
    for band in catalogue().bands.values():
        named = re.fullmatch(r"([\d.]+) ?(m|cm|mm)", band.name)
        if named and str(region) in band.regions:
            found.append((float(named[1]) * LENGTH_UNITS[named[2]], band.id))
    return found


def _bare(found: Found, text: str, region: int) -> Figure:
    """A number without a unit is asked back."""
    typed = found["number"]
    values = numbers_of(typed)
    near = [suggested("band", band) for length_m, band in _bands(region) if length_m in values]
    for field, factor, words in (("power_w", 1.0, f"{typed} W"), ("frequency_hz", 1e6, f"{typed} MHz")):
        if len(values) == 1 and _range_of(field).takes(values[0] * factor):
            near.append(words)
    if len(values) == 1 and 1 < values[0] <= 10:
        near.append(f"SWR {typed}")
    asked = f": is that {' or '.join(near)}?" if near else " has no unit."
    return Figure(found.end(), None, Complaint(f"“{typed}”{asked}", near, "power_w"))


_AFTER_SWR = r"[ =:~≈<≤-]*(?:(?:of|is|at|about|around|up to|to|under|below|less than|max|maximum)[ =:]+)*"
_BARE = r"(?! ?(?:%|°|k?w|watts?|kilowatts?|[kmg]?hz|megs?|[cm]?m|met(?:re|er)s?|ohms?|ω|ft|feet|k)(?!\w))"
"""Not before a unit: such a number is no SWR."""

_UNITS_OF_LENGTH = "(?:" + "|".join(map(re.escape, sorted(LENGTH_UNITS, key=len, reverse=True))) + ")"
_NEXT = rf"(?! {NUMBER}{GAP}{_UNITS_OF_LENGTH}{END})"
"""Not before a height: it is that one's."""

_UP = rf"(?:up|high|asl|amsl|(?:of )?(?:altitude|elevation){_NEXT}|above sea level|above sea)"
_HEIGHT = r"(?:altitude|elevation|height|alt)(?: of| is| at)?[ :=]*"
_ON_AIR = r"(?:duty(?: cycle| factor)?|of the time|on the air|transmit(?:ting)?|tx)"
_ROUND = r"(?![ -]?(?:type|connector|plug|socket|jack))"

READERS: list[tuple[re.Pattern[str], Reader]] = [
    (_pattern(text), reader)
    for text, reader in (
        (rf"(?P<number>{NUMBER}|{ARTICLE}){GAP}{_alternatives(POWER_UNITS)}{END}", _power),
        (rf"(?P<number>{DIGITS}){GAP}dbm{END}", _power_dbm),
        (rf"(?P<number>{NUMBER}){GAP}{_alternatives(FREQUENCY_UNITS)}{END}", _frequency),
        (rf"(?P<number>{DIGITS}) ?k{END}", _lone_k),
        (rf"(?P<number>\d{{1,3}}(?: \d{{3}})+){GAP}{_alternatives(POWER_UNITS | FREQUENCY_UNITS)}{END}", _spaced),
        (rf"(?:v?swr|s\.w\.r\.?){_AFTER_SWR}(?P<number>{NUMBER}){END}{_BARE}(?: ?(?::|to|/) ?(?:1|one){END})?", _swr),
        (rf"(?P<number>{NUMBER})(?: ?(?::|to) ?(?:1|one))? ?v?swr{END}(?!{_AFTER_SWR}{DIGITS}{END}{_BARE})", _swr),
        (rf"(?P<number>{NUMBER}) ?(?::|to) ?(?P<other>{NUMBER}){END}", _ratio),
        (rf"{DIGITS} ?: ?{DIGITS}{GAP}(?:current |voltage )?(?:balun|unun|transformer){END}", _nothing),
        (rf"(?:v?swr|s\.w\.r\.?){END}", _swr_alone),
        (
            rf"(?P<number>{NUMBER}){GAP}(?:°|deg(?:ree)?s?)? ?(?P<unit>c|f|celsius|centigrade|fahrenheit){END}{_ROUND}",
            _temperature,
        ),
        (rf"(?P<number>{DIGITS}){GAP}(?:°|deg(?:ree)?s?{END})", _degrees),
        (rf"{_HEIGHT}(?P<number>{NUMBER}){GAP}{_alternatives(LENGTH_UNITS)}{END}", _height),
        (
            rf"(?P<number>{NUMBER}){GAP}{_alternatives(LENGTH_UNITS)}{GAP}{_UP}{END}",
            _height,
        ),
        (rf"(?P<number>{NUMBER}){GAP}(?P<unit>ft|feet|foot){END}", _feet),
        (rf"(?P<number>{NUMBER}){GAP}{_alternatives(LENGTH_UNITS)} (?:of|long){END}", _cable_length),
        (
            rf"(?P<number>{NUMBER}){GAP}{_alternatives(LENGTH_UNITS)}{GAP}(?:cable|coax|od|diameter|dia|thick){END}",
            _diameter,
        ),
        (rf"(?P<number>{NUMBER}) ?(?:%|percent{END}|per cent{END})(?:{GAP}{_ON_AIR}{END})?", _share),
        (rf"(?P<number>{DIGITS}){GAP}(?:ohms?|ω){END}", _impedance),
        (
            rf"(?P<number>{NUMBER}){GAP}(?P<unit>m|metre|meter|mtr|cm|centimetre|centimeter|mm|millimetre|millimeter)s?{END}",
            _band,
        ),
        (rf"(?P<number>{DIGITS}){END}", _bare),
    )
]
