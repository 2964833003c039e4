"""The option line of a Touchstone file: unit, parameter, form of the pairs, reference resistance."""

from typing import NamedTuple

from .touchstone_lines import FaultError, Line, numbers_of

__all__ = ["Options", "options_of", "reference_of"]

SMALLEST_REFERENCE_OHM = 1e-3
LARGEST_REFERENCE_OHM = 1e6

UNITS_HZ = {"HZ": 1.0, "KHZ": 1e3, "MHZ": 1e6, "GHZ": 1e9}
OPTIONS = {
    "unit": tuple(UNITS_HZ),
    "parameter": ("S", "Y", "Z", "G", "H"),
    "form": ("RI", "MA", "DB"),
    "reference": ("R",),
}
OPTION_OF = {word: option for option, words in OPTIONS.items() for word in words}
DEFAULTS = {"unit": "GHZ", "parameter": "S", "form": "MA"}
DEFAULT_REFERENCES = ["50"]

OPTION_WORDS = (
    "options, each at most once: Hz, kHz, MHz or GHz; S, Y or Z; RI, MA or DB; R with the reference resistance"
)


class Options(NamedTuple):
    """What the option line says: unit of frequency [Hz], S, Y or Z, RI, MA or DB, reference resistances as words."""

    unit_hz: float
    parameter: str
    form: str
    references: list[str]


def options_of(line: Line, tokens: list[str]) -> Options:
    """The option line; what it doesn't state has the default of the standard."""
    chosen: dict[str, str] = {}
    references: list[str] = []
    latest = ""
    for token in tokens:
        word = token.upper()
        if word in OPTION_OF and OPTION_OF[word] not in chosen:
            latest = OPTION_OF[word]
            chosen[latest] = word
        elif word not in OPTION_OF and latest == "reference":
            references.append(token)
        else:
            raise FaultError(line, OPTION_WORDS)
    if "reference" in chosen and not references:
        raise FaultError(line, OPTION_WORDS)
    chosen = DEFAULTS | chosen
    if chosen["parameter"] in {"G", "H"}:
        raise FaultError(line, "S-, Y- or Z-parameters, as G and H aren't read")
    return Options(UNITS_HZ[chosen["unit"]], chosen["parameter"], chosen["form"], references or DEFAULT_REFERENCES)


def reference_of(line: Line, tokens: list[str], counts: tuple[int, ...]) -> float:
    """The one reference resistance [Ω] of all ports."""
    values = numbers_of(line, tokens)
    if len(values) not in counts:
        raise FaultError(line, f"{max(counts)} reference resistances, one for each port")
    if not SMALLEST_REFERENCE_OHM <= min(values) <= max(values) <= LARGEST_REFERENCE_OHM:
        raise FaultError(
            line, f"a reference resistance from {SMALLEST_REFERENCE_OHM:g} to {LARGEST_REFERENCE_OHM:g} ohm"
        )
    if min(values) != max(values):
        raise FaultError(line, "the same reference resistance for all ports")
    return values[0]
