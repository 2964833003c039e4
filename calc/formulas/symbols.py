"""The symbols that several subjects share: meaning, unit, and the least and most they may be.

A range is where the formulas are tested; a formula that asks more of a symbol says so in its own condition.
"""

__all__ = [
    "BORE",
    "CENTRE_DIAMETER",
    "FREQUENCY",
    "LINE_IMPEDANCE",
    "PEAK_POWER",
    "PERMITTIVITY",
    "SECTION_LENGTH",
    "SMALL",
    "STANDING_WAVE_FACTOR",
    "VELOCITY_FACTOR",
    "bore_clears",
]

BORE = ("bore of the outer conductor", "m", 2e-4, 0.2)
CENTRE_DIAMETER = ("diameter of the centre conductor", "m", 1e-4, 0.05)
FREQUENCY = ("frequency", "Hz", 1e5, 5e10)
LINE_IMPEDANCE = ("impedance of the line", "Ω", 25, 150)
PEAK_POWER = ("peak envelope power", "W", 0, 1e5)
PERMITTIVITY = ("relative permittivity", "1", 1, 10)
SECTION_LENGTH = ("length of the section", "m", 1e-4, 0.1)
STANDING_WAVE_FACTOR = ("standing-wave factor of power", "1", 1, 20)
VELOCITY_FACTOR = ("velocity factor of the cable", "1", 0.5, 1)

SMALL = 0.3
"""Where a validity says << 1: the share above which the formula is no longer used."""


def bore_clears(D: float, d: float) -> bool:
    """Whether the bore leaves a gap around the centre conductor; near none the equation loses its digits."""
    return 1.05 * d <= D
