"""The option line of a Touchstone file: unit, parameter, form of the pairs, reference resistance."""

import re
from typing import NamedTuple

from .touchstone_lines import FaultError, Line

__all__ = ["Options", "options_of"]

UNITS_HZ = {"HZ": 1.0, "KHZ": 1e3, "MHZ": 1e6, "GHZ": 1e9}
OPTIONS = {
    "unit": tuple(UNITS_HZ),
    "parameter": ("S", "Y", "Z", "G", "H"),
    "form": ("RI", "MA", "DB"),
    "reference": ("R",),
}
OPTION_OF = {word: option for option, words in OPTIONS.items() for word in words}
DEFAULTS = {"unit": "GHZ", "parameter": "S", "form": "MA"}
JOINED_REFERENCE = re.compile(r"R[0-9.][^ ]*", re.ASCII)

OPTION_WORDS = (
    "options, each at most once: Hz, kHz, MHz or GHz; S, Y or Z; RI, MA or DB; R with the reference resistance"
)


class Options(NamedTuple):
    """What the option line says: unit of frequency [Hz], S, Y or Z, RI, MA or DB, reference resistances as words.

    There are no references where it names none.
    """

    unit_hz: float
    parameter: str
    form: str
    references: list[str]


def options_of(line: Line, tokens: list[str], notes: list[str]) -> Options:
    """The option line; what it doesn't state but the reference has the default of the standard."""
    chosen: dict[str, str] = {}
    references: list[str] = []
    latest = ""
    for token in tokens:
        word = token.upper()
        if word in OPTION_OF and OPTION_OF[word] not in chosen:
            latest = OPTION_OF[word]
            chosen[latest] = word
        elif JOINED_REFERENCE.fullmatch(word) and "reference" not in chosen:
            latest = OPTION_OF["R"]
            chosen[latest] = "R"
            references.append(token[1:])
            notes.append(f"{token} on line {line.number} is read as R {token[1:]}.")
        elif word not in OPTION_OF and latest == "reference":
            references.append(token)
        else:
            raise FaultError(line, OPTION_WORDS)
    if "reference" in chosen and not references:
        raise FaultError(line, OPTION_WORDS)
    chosen = DEFAULTS | chosen
    if chosen["parameter"] in {"G", "H"}:
        raise FaultError(line, "S-, Y- or Z-parameters, as G and H aren't read")
    return Options(UNITS_HZ[chosen["unit"]], chosen["parameter"], chosen["form"], references)
