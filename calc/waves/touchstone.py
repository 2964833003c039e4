"""Measured S-parameters from the text of a Touchstone file, one or two ports.

Standard: Touchstone File Format Specification of the IBIS Open Forum, versions 1.0 and 2.0 (2009) and
1.1 and 2.1 (2024).

What the standard leaves open is decided narrowly: the number of ports of a version 1 file comes from
its numbers, as the file's name isn't known here; a frequency starts on a line of its own, and only
whole pairs may be carried over to the next line. What programs write beside the standard is read where
it can mean one thing only, and `notes` say so.
"""

from itertools import takewhile

import numpy as np

from ..errors import InputError
from .measured import Measured
from .touchstone_header import Header
from .touchstone_lines import FaultError, Line, Lines, is_data, keyword_of, rows_of
from .touchstone_options import Options, options_of
from .touchstone_reference import commented_references, references_of
from .touchstone_table import NOISE_NUMBERS, Table, counted_columns

__all__ = ["MOST_CHARACTERS", "read_touchstone"]

MOST_CHARACTERS = 3_000_000  # a request of this text alone is still one that the core reads

END_MARK = "\x1a"  # how DOS programs end a text
AT_THE_END = ("", "#", "noise data")  # of the keywords, on the last line of a text without [End]
USUAL_OHM = 50.0  # what the standard has for a file that names no reference


def read_touchstone(text: str, field: str) -> Measured:
    """The S-parameters [1] of a Touchstone text over frequency [Hz], at the file's reference resistance [Ω].

    Y- and Z-parameters are converted, and ports of unlike references brought to that of port 1. `notes` of the
    answer say what of the text is not used or had to be decided. Raises InputError for `field`, with the line
    and its number, for anything that can't be read as a one-port or two-port file. Source: see the module.
    """
    if len(text) > MOST_CHARACTERS:
        raise InputError(field, len(text), f"at most {MOST_CHARACTERS} characters of text")
    before, mark, after = text.removeprefix("\ufeff").partition(END_MARK)
    lines = Lines(before + "\n" if mark else before)
    if after.strip(f"{END_MARK}\0 \r\n"):
        lines.notes.append("What follows the file's end mark is not read.")
    try:
        return _read(lines)
    except FaultError as fault:
        raise InputError(field, fault.line.text, f"on line {fault.line.number}, {fault.allowed}") from None


def _read(lines: Lines) -> Measured:
    first = next(lines, lines.line)
    name, arguments = keyword_of(first)
    if name == "#":
        return _read_version_1(options_of(first, arguments, lines.notes), lines)
    if name == "version":
        if arguments not in (["2.0"], ["2.1"]):
            raise FaultError(first, "[Version] 2.0 or [Version] 2.1")
        return _read_version_2(lines)
    raise FaultError(first, "an option line such as # MHz S RI R 50, or [Version] 2.0, before all but comments")


def _read_version_1(options: Options, lines: Lines) -> Measured:
    option_line = lines.line
    table: Table | None = None
    rows = rows_of(lines, lines.notes)
    for row in rows:
        table = table or Table(options.unit_hz, counted_columns(row))
        if table.ends_at(row):
            lines.notes.append(_noise_note(row.start))
            break
        table.add(row)
    if table is None:
        raise FaultError(option_line, "data after the option line")
    for row in rows:
        if len(row.numbers) != NOISE_NUMBERS:
            raise FaultError(row.end, f"{NOISE_NUMBERS} numbers for each frequency of the noise data")
    ports, stated = table.ports, None
    if options.references:
        stated = references_of(option_line, options.references, (1, ports), ports)
    commented = commented_references(lines.port_impedances, stated, ports)
    if commented and not stated:
        lines.notes.append(f"The comments' port impedance, {commented[0]:g} ohm, is taken for the reference.")
    references_ohm = stated or commented or [USUAL_OHM] * ports
    return _measured(table, options, references_ohm, np.ones((ports, ports)), lines.notes)


def _read_version_2(lines: Lines) -> Measured:
    header = Header(lines)
    option_line, arguments = header.option_line
    options = options_of(option_line, arguments, lines.notes)
    ports = header.ports
    header.refuse_mixed_modes()
    references_ohm = references_of(option_line, options.references or [f"{USUAL_OHM:g}"], (1, ports), ports)
    if header.reference:
        references_ohm = references_of(*header.reference, (ports,), ports)
    table = Table(options.unit_hz, header.columns(ports))
    for row in rows_of(takewhile(is_data, lines), lines.notes):
        table.add(row)
    _close(lines, table, header.frequencies)
    immittance_ohm = np.sqrt(np.outer(references_ohm, references_ohm))
    return _measured(table, options, references_ohm, immittance_ohm, lines.notes)


def _close(lines: Lines, table: Table, stated: int) -> None:
    """What follows the data of a version 2 file. Raises FaultError for a file that may have been cut off."""
    last = lines.line
    name = keyword_of(last)[0]
    if name == "noise data":
        lines.notes.append(_noise_note(last))
        next((line for line in lines if not is_data(line)), None)
        name = keyword_of(lines.line)[0]
    closed, cut = name == "end", is_data(last) and not lines.whole
    if not closed and (cut or name not in AT_THE_END):
        raise FaultError(lines.line, "data closed by [End]")
    if len(table.lines) != stated:
        found = len(table.lines)
        raise FaultError(lines.line, f"as many frequencies before [End] as stated, {stated}, not {found}")
    if not closed:
        lines.notes.append("The file has no [End], but every frequency it states.")
    elif after := next(lines, None):
        raise FaultError(after, "nothing but comments after [End]")


def _measured(
    table: Table, options: Options, references_ohm: list[float], immittance_ohm: np.ndarray, notes: list[str]
) -> Measured:
    """The table as S; its Y or Z, if any, are relative to `immittance_ohm` once divided by it."""
    s = table.matrices(options.form)
    if options.parameter == "Z":
        s = table.scattering(s / immittance_ohm)
    elif options.parameter == "Y":
        s = -table.scattering(s * immittance_ohm)
    if min(references_ohm) != max(references_ohm):
        s = table.at_one_reference(s, references_ohm)
        one, other = references_ohm
        notes.append(f"Port 2, measured against {other:g} ohm, is converted to the {one:g} ohm of port 1.")
    if table.silent:
        notes.append(f"Levels of -inf dB, at {table.silent} frequencies, are read as nothing at all.")
    return Measured(np.array(table.frequencies_hz, dtype=np.float64), s, references_ohm[0], notes)


def _noise_note(line: Line) -> str:
    return f"The noise data from line {line.number} on are not used."
