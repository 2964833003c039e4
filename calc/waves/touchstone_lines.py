"""The lines of a Touchstone file, their keywords and their numbers, one frequency's after another."""

import math
import re
from collections.abc import Iterator
from io import StringIO
from typing import NamedTuple

__all__ = [
    "COUNTS",
    "MOST_NUMBERS",
    "NUMBER_WORDS",
    "FaultError",
    "Line",
    "Lines",
    "Row",
    "is_data",
    "keyword_of",
    "numbers_of",
    "rows_of",
    "second_option_note",
]

LARGEST_NUMBER = 1e12  # keeps products of matrix elements far from the end of the float64 range

MOST_NUMBERS = 9  # a frequency and four pairs

COUNTS = "3 numbers for each frequency of a one-port, or 9 numbers for each frequency of a two-port"
NUMBER_WORDS = "numbers such as 14.2 or -3e-4"

NOTHING = frozenset({"-inf", "-infinity", "-1.#inf", "-1.#inf00"})
"""How programs print the level of nothing at all, the logarithm of zero."""

_NUMERALS = re.compile(r"[0-9+\-.eE\s]+", re.ASCII)
_PORT_IMPEDANCE = re.compile(r"\s*port\s+impedance[\s:=]*([0-9+\-.eE][0-9+\-.eE\s]*)", re.ASCII | re.IGNORECASE)


class Line(NamedTuple):
    """A line without its comment, and its number in the file."""

    number: int
    text: str


class Row(NamedTuple):
    """The numbers of one frequency and the lines they start and end on."""

    start: Line
    end: Line
    numbers: list[float]


class FaultError(Exception):
    """A line that is not what it must be, and what is allowed there."""

    def __init__(self, line: Line, allowed: str) -> None:
        super().__init__(allowed)
        self.line = line
        self.allowed = allowed


class Lines:
    """The lines that hold more than a comment, one after another; `line` is the last one read.

    `notes` gathers what a reader decided that the text leaves open, `port_impedances` what comments say of it, each
    with the first line that says so, and `whole` is whether the last line of all was brought to its end.
    """

    def __init__(self, text: str) -> None:
        self.line = Line(1, "")
        self.notes: list[str] = []
        self.port_impedances: dict[str, Line] = {}
        self.whole = text.endswith(("\r", "\n"))
        # unlike str.splitlines this ends a line at CR, LF and CRLF only, as editors count them
        self._numbered = enumerate(StringIO(text, newline=None), 1)

    def __iter__(self) -> "Lines":
        return self

    def __next__(self) -> Line:
        for number, raw in self._numbered:
            text, comment, words = raw.partition("!")
            text = text.strip()
            if comment and (found := _PORT_IMPEDANCE.fullmatch(words)):
                self.port_impedances.setdefault(found[1].strip(), Line(number, raw.strip()))
            if text:
                self.line = Line(number, text)
                return self.line
        raise StopIteration


def keyword_of(line: Line) -> tuple[str, list[str]]:
    """The keyword of a line in small letters, "#" for an option line, "" for none, and what follows it."""
    if line.text.startswith("#"):
        return "#", line.text[1:].split(None, MOST_NUMBERS)
    if not line.text.startswith("["):
        return "", line.text.split(None, MOST_NUMBERS)
    name, closing, arguments = line.text[1:].partition("]")
    if not closing:
        raise FaultError(line, "a keyword between [ and ]")
    return " ".join(name.lower().split()), arguments.split(None, MOST_NUMBERS)


def is_data(line: Line) -> bool:
    """Whether a line holds no keyword."""
    return not line.text.startswith("[")


def rows_of(lines: Iterator[Line], notes: list[str]) -> Iterator[Row]:
    """The numbers of each frequency; what else stands among them and is passed over goes into `notes`.

    A frequency and its pairs are an odd count of numbers, pairs carried over to the next line an even one.
    """
    row: Row | None = None
    for line in lines:
        if line.text.startswith("#"):
            notes.append(second_option_note(line))
            continue
        numbers = numbers_of(line, line.text.split(None, MOST_NUMBERS))
        if len(numbers) % 2:
            if row:
                yield row
            row = Row(line, line, numbers)
        elif row:
            row = Row(row.start, line, row.numbers + numbers)
        else:
            raise FaultError(line, "a frequency followed by pairs of numbers")
        if len(row.numbers) > MOST_NUMBERS:
            raise FaultError(line, COUNTS)
    if row:
        yield row


def second_option_note(line: Line) -> str:
    """What is said of an option line after the first, which the standard has readers leave aside."""
    return f"The option line on line {line.number} is not used, as the first one counts."


def numbers_of(line: Line, tokens: list[str]) -> list[float]:
    """The numbers of a line's words, -inf for the level of nothing. Raises FaultError for anything else."""
    # float() alone would also take 1_000, nan and the digits of other scripts
    if not _NUMERALS.fullmatch(" ".join(tokens)):
        tokens = ["-inf" if word.lower() in NOTHING else word for word in tokens]
        if not all(word == "-inf" or _NUMERALS.fullmatch(word) for word in tokens):
            raise FaultError(line, NUMBER_WORDS)
    if len(tokens) > MOST_NUMBERS:
        raise FaultError(line, COUNTS)
    try:
        values = [float(token) for token in tokens]
    except ValueError:
        raise FaultError(line, NUMBER_WORDS) from None
    if any(abs(value) > LARGEST_NUMBER and value != -math.inf for value in values):
        raise FaultError(line, f"numbers of at most {LARGEST_NUMBER:g} in size")
    return values
