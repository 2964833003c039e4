"""Measured S-parameters from the text of a Touchstone file, one or two ports.

Standard: Touchstone File Format Specification of the IBIS Open Forum, versions 1.0 and 2.0 (2009) and
1.1 and 2.1 (2024). `read_touchstone` reads the text, `covered` and `at_frequencies` give it at other
frequencies, `is_passive` tells whether it could come from a part without a source of power.

What the standard leaves open is decided narrowly: the number of ports of a version 1 file comes from
its numbers, as the file's name isn't known here; a frequency starts on a line of its own, and only
whole pairs may be carried over to the next line.
"""

import re
from collections.abc import Iterator
from io import StringIO
from itertools import takewhile
from typing import NamedTuple

import numpy as np

from ..errors import InputError

__all__ = [
    "MOST_CHARACTERS",
    "MOST_FREQUENCIES",
    "Measured",
    "at_frequencies",
    "covered",
    "is_passive",
    "read_touchstone",
]

MOST_CHARACTERS = 3_000_000  # a request of this text alone is still one that the core reads
MOST_FREQUENCIES = 100_001

LARGEST_NUMBER = 1e12  # keeps products of matrix elements far from the end of the float64 range
LARGEST_DB = 240.0  # the same limit as a level: 20 log10(1e12)
SMALLEST_REFERENCE_OHM = 1e-3
LARGEST_REFERENCE_OHM = 1e6
SINGULAR = 1e-12  # below this share of its terms a determinant keeps fewer than four digits
PASSIVE = 1 + 1e-6  # largest singular value; the excess is the rounding of six printed digits
SPAN_SLACK = 1e-12  # a decimal number of GHz is rarely exact in Hz

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

MOST_NUMBERS = 9  # a frequency and four pairs
NOISE_NUMBERS = 5
ONE_PORT = (0,)
TWO_PORT = {"21_12": (0, 2, 1, 3), "12_21": (0, 1, 2, 3)}  # where 11, 12, 21 and 22 stand among the pairs
TWO_PORT_SYMMETRIC = (0, 1, 1, 2)  # Lower and Upper give the shared 21 = 12 once

KEYWORDS = {
    title.lower(): f"[{title}]"
    for title in (
        "Number of Ports",
        "Two-Port Data Order",
        "Number of Frequencies",
        "Number of Noise Frequencies",
        "Reference",
        "Matrix Format",
        "Begin Information",
        "Network Data",
    )
} | {"#": "the option line"}

COUNTS = "3 numbers for each frequency of a one-port, or 9 numbers for each frequency of a two-port"
NUMBER_WORDS = "numbers such as 14.2 or -3e-4"
OPTION_WORDS = (
    "options, each at most once: Hz, kHz, MHz or GHz; S, Y or Z; RI, MA or DB; R with the reference resistance"
)

_NUMERALS = re.compile(r"[0-9+\-.eE\s]+", re.ASCII)


class Measured(NamedTuple):
    """S-parameters of a file: `s` [1] of shape (frequencies, ports, ports), all ports at one reference."""

    frequencies_hz: np.ndarray
    s: np.ndarray
    reference_ohm: float
    notes: list[str]


class _Line(NamedTuple):
    number: int
    text: str


class _Row(NamedTuple):
    """The numbers of one frequency and the lines they start and end on."""

    start: _Line
    end: _Line
    numbers: list[float]


class _Options(NamedTuple):
    unit_hz: float
    parameter: str
    form: str
    references: list[str]


class _FaultError(Exception):
    """What should have stood on a line."""

    def __init__(self, line: _Line, allowed: str) -> None:
        super().__init__(allowed)
        self.line = line
        self.allowed = allowed


def read_touchstone(text: str, field: str) -> Measured:
    """The S-parameters [1] of a Touchstone text over frequency [Hz], at the file's reference resistance [Ω].

    Y- and Z-parameters are converted. Raises InputError for `field`, with the line and its number,
    for anything else than one strict one-port or two-port file. Source: see the module.
    """
    if len(text) > MOST_CHARACTERS:
        raise InputError(field, len(text), f"at most {MOST_CHARACTERS} characters of text")
    try:
        return _read(_Lines(text.removeprefix("\ufeff")))
    except _FaultError as fault:
        raise InputError(field, fault.line.text, f"on line {fault.line.number}, {fault.allowed}") from None


def covered(measured: Measured, frequencies_hz: np.ndarray) -> np.ndarray:
    """Which of the frequencies [Hz] lie in the file's own range; a bool array."""
    asked = np.asarray(frequencies_hz, dtype=np.float64)
    lowest, highest = measured.frequencies_hz[0], measured.frequencies_hz[-1]
    return (asked >= lowest * (1 - SPAN_SLACK)) & (asked <= highest * (1 + SPAN_SLACK))


def at_frequencies(measured: Measured, frequencies_hz: np.ndarray, field: str) -> np.ndarray:
    """S [1] at other frequencies [Hz], shape (frequencies, ports, ports).

    Real and imaginary part are interpolated linearly between the neighbours in the file. Raises
    InputError for `field` when a frequency lies outside the file's range.
    """
    asked = np.atleast_1d(np.asarray(frequencies_hz, dtype=np.float64))
    if not covered(measured, asked).all():
        raise InputError(
            field,
            f"asked for {_span(asked.min(), asked.max())}",
            f"frequencies in the file's own range, {_span(*measured.frequencies_hz[[0, -1]])}",
        )
    ports = measured.s.shape[-1]
    s = np.empty((asked.size, ports, ports), dtype=np.complex128)
    for place in np.ndindex(ports, ports):
        given = measured.s[:, *place]
        s.real[:, *place] = np.interp(asked, measured.frequencies_hz, given.real)
        s.imag[:, *place] = np.interp(asked, measured.frequencies_hz, given.imag)
    return s


def is_passive(s: np.ndarray) -> np.ndarray:
    """Whether one-port or two-port S [1] gives out no more power than it takes in; a bool array.

    That is so when the largest singular value is at most 1, but for the rounding of printed digits. The two
    of a two-port, a >= b, follow from a² + b² = sum of |S|² and a b = |det S|: (a ± b)² = sum of |S|² ± 2 |det S|.
    """
    squares = np.sum(s.real**2 + s.imag**2, axis=(-2, -1))
    if s.shape[-1] == 1:
        return np.sqrt(squares) <= PASSIVE
    determinant = np.abs(s[..., 0, 0] * s[..., 1, 1] - s[..., 0, 1] * s[..., 1, 0])
    total = np.sqrt(squares + 2 * determinant)
    difference = np.sqrt(np.maximum(squares - 2 * determinant, 0.0))
    return (total + difference) / 2 <= PASSIVE


class _Lines:
    """The lines that hold more than a comment, one after another; `line` is the last one read."""

    def __init__(self, text: str) -> None:
        self.line = _Line(1, "")
        # unlike str.splitlines this ends a line at CR, LF and CRLF only, as editors count them
        self._numbered = enumerate(StringIO(text, newline=None), 1)

    def __iter__(self) -> "_Lines":
        return self

    def __next__(self) -> _Line:
        for number, raw in self._numbered:
            text = raw.partition("!")[0].strip()
            if text:
                self.line = _Line(number, text)
                return self.line
        raise StopIteration


class _Table:
    """Rows of numbers, one for each frequency, with the line each starts on."""

    def __init__(self, unit_hz: float, columns: tuple[int, ...]) -> None:
        self.unit_hz = unit_hz
        self.columns = columns
        self.ports = 1 if columns == ONE_PORT else 2
        self.numbers = _numbers_of(columns)
        self.lines: list[_Line] = []
        self.frequencies_hz: list[float] = []
        self.pairs: list[list[float]] = []

    def rises_to(self, frequency: float) -> bool:
        """Whether a frequency, in the file's unit, lies above the last one."""
        return not self.frequencies_hz or frequency * self.unit_hz > self.frequencies_hz[-1]

    def ends_at(self, row: _Row) -> bool:
        """Whether a version 1 two-port goes on with noise data, which start again at a lower frequency."""
        return self.ports == 2 and len(row.numbers) == NOISE_NUMBERS and not self.rises_to(row.numbers[0])

    def add(self, row: _Row) -> None:
        """Take the numbers of one more frequency."""
        frequency, *pairs = row.numbers
        if len(row.numbers) != self.numbers:
            kind = "one-port" if self.ports == 1 else "two-port"
            raise _FaultError(row.end, f"{self.numbers} numbers for each frequency of a {kind}")
        if frequency < 0:
            raise _FaultError(row.start, "a frequency of 0 or more")
        if not self.rises_to(frequency):
            raise _FaultError(row.start, "a frequency above the one before")
        if len(self.lines) == MOST_FREQUENCIES:
            raise _FaultError(row.start, f"the end of the data, as at most {MOST_FREQUENCIES} frequencies are read")
        self.lines.append(row.start)
        self.frequencies_hz.append(frequency * self.unit_hz)
        self.pairs.append(pairs)

    def refuse(self, bad: np.ndarray, allowed: str) -> None:
        """Raise for the first frequency that is marked."""
        if bad.any():
            raise _FaultError(self.lines[int(np.argmax(bad))], allowed)

    def matrices(self, form: str) -> np.ndarray:
        """The complex matrices, shape (frequencies, ports, ports)."""
        pairs = np.array(self.pairs, dtype=np.float64).reshape(len(self.pairs), -1, 2)
        first, second = pairs[..., 0], pairs[..., 1]
        if form == "DB":
            self.refuse((first > LARGEST_DB).any(axis=1), f"levels of at most {LARGEST_DB:g} dB")
            first = 10.0 ** (first / 20)
        values = np.empty(first.shape, dtype=np.complex128)
        if form == "RI":
            values.real, values.imag = first, second
        else:
            angle_rad = np.deg2rad(second)
            values.real, values.imag = first * np.cos(angle_rad), first * np.sin(angle_rad)
        return values[:, self.columns].reshape(-1, self.ports, self.ports)


def _read(lines: _Lines) -> Measured:
    first = next(lines, lines.line)
    name, arguments = _keyword(first)
    if name == "#":
        return _read_version_1(_options(first, arguments), lines)
    if name == "version":
        if arguments not in (["2.0"], ["2.1"]):
            raise _FaultError(first, "[Version] 2.0 or [Version] 2.1")
        return _read_version_2(lines)
    raise _FaultError(first, "an option line such as # MHz S RI R 50, or [Version] 2.0, before all but comments")


def _read_version_1(options: _Options, lines: _Lines) -> Measured:
    option_line = lines.line
    table: _Table | None = None
    notes = []
    rows = _rows(lines)
    for row in rows:
        table = table or _Table(options.unit_hz, _counted_columns(row))
        if table.ends_at(row):
            notes.append(_noise_note(row.start))
            break
        table.add(row)
    if table is None:
        raise _FaultError(option_line, "data after the option line")
    for row in rows:
        if len(row.numbers) != NOISE_NUMBERS:
            raise _FaultError(row.end, f"{NOISE_NUMBERS} numbers for each frequency of the noise data")
    reference_ohm = _reference(option_line, options.references, (1, table.ports))
    return _measured(table, options, reference_ohm, 1.0, notes)


def _read_version_2(lines: _Lines) -> Measured:
    given = _header(lines)
    option_line, arguments = _given(given, "#")
    options = _options(option_line, arguments)
    ports = int(_choice(given, "number of ports", ("1", "2")))
    reference_ohm = _reference(option_line, options.references, (1, ports))
    if "reference" in given:
        reference_ohm = _reference(*given["reference"], (ports,))
    table = _Table(options.unit_hz, _columns(given, ports))
    stated = _stated_frequencies(given)
    for row in _rows(takewhile(_is_data, lines)):
        table.add(row)
    notes = []
    if _keyword(lines.line)[0] == "noise data":
        notes.append(_noise_note(lines.line))
        next((line for line in lines if not _is_data(line)), None)
    if _keyword(lines.line)[0] != "end":
        raise _FaultError(lines.line, "data closed by [End]")
    if len(table.lines) != stated:
        raise _FaultError(lines.line, f"[End] after {stated} frequencies, the number stated, not {len(table.lines)}")
    after = next(lines, None)
    if after:
        raise _FaultError(after, "nothing but comments after [End]")
    return _measured(table, options, reference_ohm, reference_ohm, notes)


def _measured(
    table: _Table, options: _Options, reference_ohm: float, immittance_ohm: float, notes: list[str]
) -> Measured:
    """The table as S; its Y or Z, if any, are relative to `immittance_ohm` once divided by it."""
    s = table.matrices(options.form)
    if options.parameter == "Z":
        s = _scattering(s / immittance_ohm, table)
    elif options.parameter == "Y":
        s = -_scattering(s * immittance_ohm, table)
    return Measured(np.array(table.frequencies_hz, dtype=np.float64), s, reference_ohm, notes)


def _scattering(z: np.ndarray, table: _Table) -> np.ndarray:
    """(z - 1)(z + 1)⁻¹ for matrices z relative to the reference; relative y gives its negative."""
    words = "parameters that have an S-matrix, as this one would need a division by zero"
    if table.ports == 1:
        table.refuse((np.abs(z + 1) <= SINGULAR * (np.abs(z) + 1)).any(axis=(1, 2)), words)
        return (z - 1) / (z + 1)
    z11, z12, z21, z22 = z[:, 0, 0], z[:, 0, 1], z[:, 1, 0], z[:, 1, 1]
    own, crossed = (z11 + 1) * (z22 + 1), z12 * z21
    determinant = own - crossed
    terms = (np.abs(z11) + 1) * (np.abs(z22) + 1) + np.abs(crossed)
    table.refuse(np.abs(determinant) <= SINGULAR * terms, words)
    s = np.empty_like(z)
    s[:, 0, 0] = ((z11 - 1) * (z22 + 1) - crossed) / determinant
    s[:, 0, 1] = 2 * z12 / determinant
    s[:, 1, 0] = 2 * z21 / determinant
    s[:, 1, 1] = ((z11 + 1) * (z22 - 1) - crossed) / determinant
    return s


def _keyword(line: _Line) -> tuple[str, list[str]]:
    """The keyword of a line in small letters, "#" for an option line, "" for none, and what follows it."""
    if line.text.startswith("#"):
        return "#", line.text[1:].split(None, MOST_NUMBERS)
    if not line.text.startswith("["):
        return "", line.text.split(None, MOST_NUMBERS)
    name, closing, rest = line.text[1:].partition("]")
    if not closing:
        raise _FaultError(line, "a keyword between [ and ]")
    return " ".join(name.lower().split()), rest.split(None, MOST_NUMBERS)


def _is_data(line: _Line) -> bool:
    return not line.text.startswith("[")


def _header(lines: _Lines) -> dict[str, tuple[_Line, list[str]]]:
    """The keywords up to [Network Data], each with its line and what follows it."""
    given: dict[str, tuple[_Line, list[str]]] = {}
    name = "version"
    for line in lines:
        latest, (name, arguments) = name, _keyword(line)
        if not name and latest == "reference" and len(given[latest][1]) < MOST_NUMBERS:
            name = latest
            given[name][1].extend(arguments)
            continue
        if name not in KEYWORDS or name in given:
            raise _FaultError(line, f"keywords before the data, each once: {', '.join(KEYWORDS.values())}")
        given[name] = line, arguments
        if name == "begin information" and all(_keyword(inside)[0] != "end information" for inside in lines):
            raise _FaultError(line, "[Begin Information] closed by [End Information]")
        if name == "network data":
            return given
    raise _FaultError(lines.line, "[Network Data] before the end of the file")


def _given(given: dict[str, tuple[_Line, list[str]]], name: str) -> tuple[_Line, list[str]]:
    if name not in given:
        raise _FaultError(given["network data"][0], f"{KEYWORDS[name]} before the data")
    return given[name]


def _choice(given: dict[str, tuple[_Line, list[str]]], name: str, choices: tuple[str, ...]) -> str:
    line, arguments = _given(given, name)
    word = " ".join(arguments).lower()
    if word not in choices:
        raise _FaultError(line, f"{KEYWORDS[name]} followed by {' or '.join(choices)}")
    return word


def _columns(given: dict[str, tuple[_Line, list[str]]], ports: int) -> tuple[int, ...]:
    """Where the elements of the matrix, row by row, stand among the pairs of a frequency."""
    full = "matrix format" not in given or _choice(given, "matrix format", ("full", "lower", "upper")) == "full"
    if ports == 1:
        return ONE_PORT
    order = _choice(given, "two-port data order", tuple(TWO_PORT))
    return TWO_PORT[order] if full else TWO_PORT_SYMMETRIC


def _stated_frequencies(given: dict[str, tuple[_Line, list[str]]]) -> int:
    line, arguments = _given(given, "number of frequencies")
    digits = " ".join(arguments)
    # short enough for int() to be quick
    if not re.fullmatch(r"[0-9]{1,9}", digits) or not 1 <= int(digits) <= MOST_FREQUENCIES:
        raise _FaultError(line, f"[Number of Frequencies] from 1 to {MOST_FREQUENCIES}")
    return int(digits)


def _options(line: _Line, tokens: list[str]) -> _Options:
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
            raise _FaultError(line, OPTION_WORDS)
    if "reference" in chosen and not references:
        raise _FaultError(line, OPTION_WORDS)
    chosen = DEFAULTS | chosen
    if chosen["parameter"] in {"G", "H"}:
        raise _FaultError(line, "S-, Y- or Z-parameters, as G and H aren't read")
    return _Options(UNITS_HZ[chosen["unit"]], chosen["parameter"], chosen["form"], references or DEFAULT_REFERENCES)


def _reference(line: _Line, tokens: list[str], counts: tuple[int, ...]) -> float:
    """The one reference resistance [Ω] of all ports."""
    values = _numbers(line, tokens)
    if len(values) not in counts:
        raise _FaultError(line, f"{max(counts)} reference resistances, one for each port")
    if not SMALLEST_REFERENCE_OHM <= min(values) <= max(values) <= LARGEST_REFERENCE_OHM:
        raise _FaultError(
            line, f"a reference resistance from {SMALLEST_REFERENCE_OHM:g} to {LARGEST_REFERENCE_OHM:g} ohm"
        )
    if min(values) != max(values):
        raise _FaultError(line, "the same reference resistance for all ports")
    return values[0]


def _rows(lines: Iterator[_Line]) -> Iterator[_Row]:
    """The numbers of each frequency.

    A frequency and its pairs are an odd count of numbers, pairs carried over to the next line an even one.
    """
    row: _Row | None = None
    for line in lines:
        numbers = _numbers(line, line.text.split(None, MOST_NUMBERS))
        if len(numbers) % 2:
            if row:
                yield row
            row = _Row(line, line, numbers)
        elif row:
            row = _Row(row.start, line, row.numbers + numbers)
        else:
            raise _FaultError(line, "a frequency followed by pairs of numbers")
        if len(row.numbers) > MOST_NUMBERS:
            raise _FaultError(line, COUNTS)
    if row:
        yield row


def _counted_columns(row: _Row) -> tuple[int, ...]:
    """The order of the elements in a version 1 file, which its first frequency gives away."""
    for columns in (ONE_PORT, TWO_PORT["21_12"]):
        if len(row.numbers) == _numbers_of(columns):
            return columns
    raise _FaultError(row.end, COUNTS)


def _numbers_of(columns: tuple[int, ...]) -> int:
    """How many numbers a frequency has: itself and its pairs."""
    return 1 + 2 * (max(columns) + 1)


def _numbers(line: _Line, tokens: list[str]) -> list[float]:
    # float() alone would also take 1_000, nan and the digits of other scripts
    if not _NUMERALS.fullmatch(" ".join(tokens)):
        raise _FaultError(line, NUMBER_WORDS)
    if len(tokens) > MOST_NUMBERS:
        raise _FaultError(line, COUNTS)
    try:
        values = [float(token) for token in tokens]
    except ValueError:
        raise _FaultError(line, NUMBER_WORDS) from None
    if max(map(abs, values)) > LARGEST_NUMBER:
        raise _FaultError(line, f"numbers of at most {LARGEST_NUMBER:g} in size")
    return values


def _noise_note(line: _Line) -> str:
    return f"The noise data from line {line.number} on are not used."


def _span(lowest_hz: float, highest_hz: float) -> str:
    return f"{lowest_hz / 1e6:.12g} MHz to {highest_hz / 1e6:.12g} MHz"
