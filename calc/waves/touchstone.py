"""Measured S-parameters from the text of a Touchstone file, one or two ports.

Standard: Touchstone File Format Specification of the IBIS Open Forum, versions 1.0 and 2.0 (2009) and
1.1 and 2.1 (2024).

What the standard leaves open is decided narrowly: the number of ports of a version 1 file comes from
its numbers, as the file's name isn't known here; a frequency starts on a line of its own, and only
whole pairs may be carried over to the next line.
"""

from itertools import takewhile

import numpy as np

from ..errors import InputError
from .measured import Measured
from .touchstone_header import Header
from .touchstone_lines import FaultError, Line, Lines, is_data, keyword_of, rows_of
from .touchstone_options import Options, options_of, reference_of
from .touchstone_table import NOISE_NUMBERS, Table, counted_columns

__all__ = ["MOST_CHARACTERS", "read_touchstone"]

MOST_CHARACTERS = 3_000_000  # a request of this text alone is still one that the core reads


def read_touchstone(text: str, field: str) -> Measured:
    """The S-parameters [1] of a Touchstone text over frequency [Hz], at the file's reference resistance [Ω].

    Y- and Z-parameters are converted. Raises InputError for `field`, with the line and its number,
    for anything else than one strict one-port or two-port file. Source: see the module.
    """
    if len(text) > MOST_CHARACTERS:
        raise InputError(field, len(text), f"at most {MOST_CHARACTERS} characters of text")
    try:
        return _read(Lines(text.removeprefix("\ufeff")))
    except FaultError as fault:
        raise InputError(field, fault.line.text, f"on line {fault.line.number}, {fault.allowed}") from None


def _read(lines: Lines) -> Measured:
    first = next(lines, lines.line)
    name, arguments = keyword_of(first)
    if name == "#":
        return _read_version_1(options_of(first, arguments), lines)
    if name == "version":
        if arguments not in (["2.0"], ["2.1"]):
            raise FaultError(first, "[Version] 2.0 or [Version] 2.1")
        return _read_version_2(lines)
    raise FaultError(first, "an option line such as # MHz S RI R 50, or [Version] 2.0, before all but comments")


def _read_version_1(options: Options, lines: Lines) -> Measured:
    option_line = lines.line
    table: Table | None = None
    notes: list[str] = []
    rows = rows_of(lines)
    for row in rows:
        table = table or Table(options.unit_hz, counted_columns(row))
        if table.ends_at(row):
            notes.append(_noise_note(row.start))
            break
        table.add(row)
    if table is None:
        raise FaultError(option_line, "data after the option line")
    for row in rows:
        if len(row.numbers) != NOISE_NUMBERS:
            raise FaultError(row.end, f"{NOISE_NUMBERS} numbers for each frequency of the noise data")
    reference_ohm = reference_of(option_line, options.references, (1, table.ports))
    return _measured(table, options, reference_ohm, 1.0, notes)


def _read_version_2(lines: Lines) -> Measured:
    header = Header(lines)
    option_line, arguments = header.option_line
    options = options_of(option_line, arguments)
    ports = header.ports
    reference_ohm = reference_of(option_line, options.references, (1, ports))
    if header.reference:
        reference_ohm = reference_of(*header.reference, (ports,))
    table = Table(options.unit_hz, header.columns(ports))
    stated = header.frequencies
    for row in rows_of(takewhile(is_data, lines)):
        table.add(row)
    notes: list[str] = []
    if keyword_of(lines.line)[0] == "noise data":
        notes.append(_noise_note(lines.line))
        next((line for line in lines if not is_data(line)), None)
    if keyword_of(lines.line)[0] != "end":
        raise FaultError(lines.line, "data closed by [End]")
    if len(table.lines) != stated:
        raise FaultError(lines.line, f"[End] after {stated} frequencies, the number stated, not {len(table.lines)}")
    after = next(lines, None)
    if after:
        raise FaultError(after, "nothing but comments after [End]")
    return _measured(table, options, reference_ohm, reference_ohm, notes)


def _measured(
    table: Table, options: Options, reference_ohm: float, immittance_ohm: float, notes: list[str]
) -> Measured:
    """The table as S; its Y or Z, if any, are relative to `immittance_ohm` once divided by it."""
    s = table.matrices(options.form)
    if options.parameter == "Z":
        s = table.scattering(s / immittance_ohm)
    elif options.parameter == "Y":
        s = -table.scattering(s * immittance_ohm)
    return Measured(np.array(table.frequencies_hz, dtype=np.float64), s, reference_ohm, notes)


def _noise_note(line: Line) -> str:
    return f"The noise data from line {line.number} on are not used."
