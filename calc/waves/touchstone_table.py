"""The data of a Touchstone file, row by row, and the matrices they make."""

import numpy as np

from .touchstone_lines import COUNTS, NUMBER_WORDS, FaultError, Line, Row

__all__ = [
    "MOST_FREQUENCIES",
    "NOISE_NUMBERS",
    "ONE_PORT",
    "TWO_PORT",
    "TWO_PORT_SYMMETRIC",
    "Table",
    "counted_columns",
]

MOST_FREQUENCIES = 100_001

LARGEST_DB = 240.0  # the level of the largest number: 20 log10(1e12)
SINGULAR = 1e-12  # below this share of its terms a determinant keeps fewer than four digits

NO_SCATTERING = "parameters that have an S-matrix, as this one would need a division by zero"

NOISE_NUMBERS = 5
ONE_PORT = (0,)
TWO_PORT = {"21_12": (0, 2, 1, 3), "12_21": (0, 1, 2, 3)}  # where 11, 12, 21 and 22 are among the pairs
TWO_PORT_SYMMETRIC = (0, 1, 1, 2)  # Lower and Upper give the shared 21 = 12 once


class Table:
    """Rows of numbers, one for each frequency, with the line each starts on."""

    def __init__(self, unit_hz: float, columns: tuple[int, ...]) -> None:
        self.unit_hz = unit_hz
        self.columns = columns
        self.ports = 1 if columns == ONE_PORT else 2
        self.numbers = _count_of_numbers(columns)
        self.lines: list[Line] = []
        self.frequencies_hz: list[float] = []
        self.pairs: list[list[float]] = []

    def rises_to(self, frequency: float) -> bool:
        """Whether a frequency, in the file's unit, lies above the last one."""
        return not self.frequencies_hz or frequency * self.unit_hz > self.frequencies_hz[-1]

    def ends_at(self, row: Row) -> bool:
        """Whether a version 1 two-port goes on with noise data, which start again at a lower frequency."""
        return self.ports == 2 and len(row.numbers) == NOISE_NUMBERS and not self.rises_to(row.numbers[0])

    def add(self, row: Row) -> None:
        """Take the numbers of one more frequency."""
        frequency, *pairs = row.numbers
        if len(row.numbers) != self.numbers:
            kind = "one-port" if self.ports == 1 else "two-port"
            raise FaultError(row.end, f"{self.numbers} numbers for each frequency of a {kind}")
        if frequency < 0:
            raise FaultError(row.start, "a frequency of 0 or more")
        if not self.rises_to(frequency):
            raise FaultError(row.start, "a frequency above the one before")
        if len(self.lines) == MOST_FREQUENCIES:
            raise FaultError(row.start, f"the end of the data, as at most {MOST_FREQUENCIES} frequencies are read")
        self.lines.append(row.start)
        self.frequencies_hz.append(frequency * self.unit_hz)
        self.pairs.append(pairs)

    @property
    def silent(self) -> int:
        """How many frequencies have a level of nothing at all."""
        return sum(any(level == -np.inf for level in pairs[::2]) for pairs in self.pairs)

    def refuse(self, bad: np.ndarray, allowed: str) -> None:
        """Raise for the first frequency that is marked."""
        if bad.any():
            raise FaultError(self.lines[int(np.argmax(bad))], allowed)

    def matrices(self, form: str) -> np.ndarray:
        """The complex matrices, shape (frequencies, ports, ports)."""
        pairs = np.array(self.pairs, dtype=np.float64).reshape(len(self.pairs), -1, 2)
        first, second = pairs[..., 0], pairs[..., 1]
        self.refuse(np.any(np.isinf(second), axis=1), NUMBER_WORDS)
        if form != "DB":
            self.refuse(np.any(np.isinf(first), axis=1), NUMBER_WORDS)
        else:
            self.refuse(np.any(first > LARGEST_DB, axis=1), f"levels of at most {LARGEST_DB:g} dB")
            first = 10.0 ** (first / 20)
        values = np.empty(first.shape, dtype=np.complex128)
        if form == "RI":
            values.real, values.imag = first, second
        else:
            angle_rad = np.deg2rad(second)
            values.real, values.imag = first * np.cos(angle_rad), first * np.sin(angle_rad)
        return values[:, self.columns].reshape(-1, self.ports, self.ports)

    def scattering(self, z: np.ndarray) -> np.ndarray:
        """(z - 1)(z + 1)⁻¹ for matrices z relative to the reference; relative y gives its negative."""
        if self.ports == 1:
            z11 = z[:, 0, 0]
            self.refuse(np.abs(z11 + 1) <= SINGULAR * (np.abs(z11) + 1), NO_SCATTERING)
            return (z - 1) / (z + 1)
        z11, z12, z21, z22 = z[:, 0, 0], z[:, 0, 1], z[:, 1, 0], z[:, 1, 1]
        direct, crossed = (z11 + 1) * (z22 + 1), z12 * z21
        determinant = direct - crossed
        terms = (np.abs(z11) + 1) * (np.abs(z22) + 1) + np.abs(crossed)
        self.refuse(np.abs(determinant) <= SINGULAR * terms, NO_SCATTERING)
        s = np.empty_like(z)
        s[:, 0, 0] = ((z11 - 1) * (z22 + 1) - crossed) / determinant
        s[:, 0, 1] = 2 * z12 / determinant
        s[:, 1, 0] = 2 * z21 / determinant
        s[:, 1, 1] = ((z11 + 1) * (z22 - 1) - crossed) / determinant
        return s

    def at_one_reference(self, s: np.ndarray, references_ohm: list[float]) -> np.ndarray:
        """S [1] with port 2 at the reference resistance [Ω] of port 1.

        With a and b the waves of port 2 at its own resistance z, those at r are a' = p a + q b and b' = q a + p b with
        p, q = (z ± r) / (2 √(r z)), so that p² - q² = 1. Source: the definition of power waves.
        """
        r, z = references_ohm
        p, q = (z + r) / (2 * np.sqrt(r * z)), (z - r) / (2 * np.sqrt(r * z))
        divisor = p + q * s[:, 1, 1]
        self.refuse(np.abs(divisor) <= SINGULAR * (p + np.abs(q * s[:, 1, 1])), NO_SCATTERING)
        moved = np.empty_like(s)
        moved[:, 0, 0] = s[:, 0, 0] - s[:, 0, 1] * s[:, 1, 0] * q / divisor
        moved[:, 0, 1], moved[:, 1, 0] = s[:, 0, 1] / divisor, s[:, 1, 0] / divisor
        moved[:, 1, 1] = (q + p * s[:, 1, 1]) / divisor
        return moved


def counted_columns(row: Row) -> tuple[int, ...]:
    """The order of the elements in a version 1 file, which its first frequency gives away."""
    for columns in (ONE_PORT, TWO_PORT["21_12"]):
        if len(row.numbers) == _count_of_numbers(columns):
            return columns
    raise FaultError(row.end, COUNTS)


def _count_of_numbers(columns: tuple[int, ...]) -> int:
    """How many numbers a frequency has: itself and its pairs."""
    return 1 + 2 * (max(columns) + 1)
