"""Fields of a question in words, and the whole question as one sentence."""

from collections.abc import Callable

from ..catalogue import catalogue
from ..numeric.measures import length_words, size_words, temperature_words
from ..numeric.units import engineering
from .requests import QuestionRequest
from .results import FieldValue

__all__ = ["FIELD_NAMES", "family_in_words", "mode_in_words", "power_in_words", "question_in_words", "value_in_words"]

FIELD_NAMES = {
    "family": "The connector",
    "band": "The band",
    "frequency_hz": "The frequency",
    "power_w": "The power",
    "mode": "The mode",
    "vswr": "The SWR",
    "exposure": "The place",
    "vibration": "The vibration",
    "added_sealing": "The sealing",
    "cable": "The cable",
    "cable_diameter_m": "The cable's diameter",
    "condition": "The state of the contacts",
    "ambient_temperature_c": "The air temperature",
    "solar_irradiance_w_per_m2": "The sun",
    "altitude_m": "The height above sea",
    "transmit_share": "The time on the air",
    "system_impedance_ohm": "The line's impedance",
    "power_is": "What the power is of",
}
"""The fields that can be typed."""

EXPOSURE_WORDS = {"indoor": "indoors", "sheltered": "sheltered", "exposed": "outdoors", "immersed": "under water"}
VIBRATION_WORDS = {"none": "no vibration", "vehicle": "shaken as in a vehicle", "severe": "shaken hard"}


def family_in_words(family: str) -> str:
    """A connector with its everyday names: "UHF (PL-259 / SO-239)"."""
    return catalogue().interfaces[family].spoken_name


def mode_in_words(mode: str) -> str:
    """A mode as one says it."""
    entry = catalogue().modes[mode]
    return entry.typed_as[0] if entry.typed_as else entry.name


def power_in_words(power_w: float) -> str:
    """A power, or that there is none."""
    return engineering(power_w, "W") if power_w else "receive only"


def _frequency(value: float) -> str:
    """As exactly as a dial shows it."""
    factor, unit = next(
        (factor, unit) for factor, unit in ((1e9, "GHz"), (1e6, "MHz"), (1e3, "kHz")) if value >= factor
    )
    return f"{value / factor:.7g} {unit}"


def _sealing(value: bool) -> str:
    return "sealed with tape or a boot" if value else "not sealed"


def _condition(value: str) -> str:
    return f"{catalogue().conditions[value].name.lower()} contacts"


WORDS: dict[str, Callable[..., str]] = {
    "family": family_in_words,
    "band": lambda value: catalogue().bands[value].name,
    "frequency_hz": _frequency,
    "power_w": power_in_words,
    "mode": mode_in_words,
    "vswr": lambda value: f"SWR {value:.3g}",
    "exposure": EXPOSURE_WORDS.__getitem__,
    "added_sealing": _sealing,
    "vibration": VIBRATION_WORDS.__getitem__,
    "cable": lambda value: f"on {catalogue().cables[value].spoken_name}",
    "cable_diameter_m": lambda value: f"on a cable of {size_words(value, 3)}",
    "condition": _condition,
    "ambient_temperature_c": lambda value: f"{temperature_words(value)} in the shade",
    "solar_irradiance_w_per_m2": lambda value: f"{value:.4g} W/m² of sun" if value else "in the shade",
    "altitude_m": lambda value: f"{length_words(value, 4)} above sea",
    "transmit_share": lambda value: f"{value * 100:.3g} % of the time on the air",
    "system_impedance_ohm": lambda value: f"{value:.3g} Ω line",
    "power_is": lambda value: f"power {'of the forward wave' if value == 'forward' else 'that the load accepts'}",
}

LEADING = ("family", "power_w", "mode", "band", "frequency_hz", "vswr", "exposure")
"""Said in every sentence; the others where they are not as usual."""


def value_in_words(field: str, value: FieldValue) -> str:
    """A value of a field as it reads in the question."""
    return WORDS[field](value)


def question_in_words(request: QuestionRequest) -> str:
    """The question as one sentence, such as "UHF (PL-259 / SO-239) with 1 kW FT8 on 10 m, SWR 3, indoors"."""
    family = family_in_words(request.family) if request.family else "Which connector,"
    column = _column(request)
    power = power_in_words(request.power_w)
    use = f"with {power} {mode_in_words(request.mode)}" if request.power_w else power
    parts = [f"{family} {use} on {column}", value_in_words("vswr", request.vswr)]
    parts.append(EXPOSURE_WORDS[request.exposure])
    usual = QuestionRequest()
    for field in WORDS:
        value = getattr(request, field)
        if field not in LEADING and value != getattr(usual, field):
            parts.append(value_in_words(field, value))
    return ", ".join(parts)


def _column(request: QuestionRequest) -> str:
    if request.band is not None:
        return value_in_words("band", request.band)
    return value_in_words("frequency_hz", request.frequency_hz) if request.frequency_hz else "which band"
