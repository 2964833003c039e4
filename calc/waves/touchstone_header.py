"""The keywords before the data of a version 2 Touchstone file."""

import re

from .touchstone_lines import MOST_NUMBERS, FaultError, Line, Lines, keyword_of, second_option_note
from .touchstone_table import MOST_FREQUENCIES, ONE_PORT, TWO_PORT, TWO_PORT_SYMMETRIC

__all__ = ["Header"]

KEYWORDS = {
    title.lower(): f"[{title}]"
    for title in (
        "Number of Ports",
        "Two-Port Data Order",
        "Number of Frequencies",
        "Number of Noise Frequencies",
        "Reference",
        "Matrix Format",
        "Mixed-Mode Order",
        "Begin Information",
        "Network Data",
    )
} | {"#": "the option line"}


class Header:
    """The keywords up to [Network Data], each with its line and what follows it."""

    def __init__(self, lines: Lines) -> None:
        self._given: dict[str, tuple[Line, list[str]]] = {}
        name = "version"
        for line in lines:
            latest, (name, arguments) = name, keyword_of(line)
            if not name and latest == "reference" and len(self._given[latest][1]) < MOST_NUMBERS:
                name = latest
                self._given[name][1].extend(arguments)
                continue
            if name == "#" and name in self._given:
                lines.notes.append(second_option_note(line))
                continue
            if name not in KEYWORDS or name in self._given:
                raise FaultError(line, f"keywords before the data, each once: {', '.join(KEYWORDS.values())}")
            self._given[name] = line, arguments
            if name == "begin information" and all(keyword_of(inside)[0] != "end information" for inside in lines):
                raise FaultError(line, "[Begin Information] closed by [End Information]")
            if name == "network data":
                return
        raise FaultError(lines.line, "[Network Data] before the end of the file")

    @property
    def option_line(self) -> tuple[Line, list[str]]:
        """The option line and its options."""
        return self._needed("#")

    @property
    def ports(self) -> int:
        """Number of ports."""
        return int(self._choice("number of ports", ("1", "2")))

    def refuse_mixed_modes(self) -> None:
        """Raise for a file whose ports are not each one line against ground, in their order."""
        line, modes = self._given.get("mixed-mode order", (None, []))
        if line and [mode.upper() for mode in modes] != [f"S{port + 1}" for port in range(self.ports)]:
            raise FaultError(line, "a file of plain ports, as differential and common modes aren't read")

    @property
    def reference(self) -> tuple[Line, list[str]] | None:
        """The line of [Reference] and its numbers, if there is one."""
        return self._given.get("reference")

    @property
    def frequencies(self) -> int:
        """Number of frequencies."""
        line, arguments = self._needed("number of frequencies")
        digits = " ".join(arguments)
        # short enough for int() to be quick
        if not re.fullmatch(r"[0-9]{1,9}", digits) or not 1 <= int(digits) <= MOST_FREQUENCIES:
            raise FaultError(line, f"[Number of Frequencies] from 1 to {MOST_FREQUENCIES}")
        return int(digits)

    def columns(self, ports: int) -> tuple[int, ...]:
        """Where the elements of the matrix, row by row, are among the pairs of a frequency."""
        formats = ("full", "lower", "upper")
        full = "matrix format" not in self._given or self._choice("matrix format", formats) == "full"
        if ports == 1:
            return ONE_PORT
        order = self._choice("two-port data order", tuple(TWO_PORT))
        return TWO_PORT[order] if full else TWO_PORT_SYMMETRIC

    def _needed(self, name: str) -> tuple[Line, list[str]]:
        if name not in self._given:
            raise FaultError(self._given["network data"][0], f"{KEYWORDS[name]} before the data")
        return self._given[name]

    def _choice(self, name: str, choices: tuple[str, ...]) -> str:
        line, arguments = self._needed(name)
        word = " ".join(arguments).lower()
        if word not in choices:
            raise FaultError(line, f"{KEYWORDS[name]} followed by {' or '.join(choices)}")
        return word
