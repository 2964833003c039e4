"""What can be wrong at a place of a line: kinds of fault by what each does to the waves, and its sizes.

A size is counted in deviations of its logarithm from a middling one: 0 is middling, and the prior is the standard
normal distribution.
"""

from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from .arrays import NumberArray, RealArray
from .line_waves import Lumped

__all__ = ["AT_A_JOINT", "CAPACITIVE", "IN_A_CABLE", "RARE", "FaultKind", "FaultSize", "PlacedFault", "Stretch"]


class FaultSize(NamedTuple):
    """One size of a fault: what it is, its unit, a middling one, and the deviation of its natural logarithm."""

    name: str
    unit: str
    middling: float
    spread: float

    def of(self, own: float) -> float:
        """The size in its unit, by deviations."""
        return float(self.middling * np.exp(self.spread * own))


class Stretch(NamedTuple):
    """A stretch of line: its length [m], its impedance over that of the line around, and a loss tangent more.

    What loses more is wet: its permittivity lowers the impedance, and slows the wave as much.
    """

    length_m: float
    ratio: float
    tangent: float = 0.0

    @property
    def delay_m(self) -> float:
        """The length of cable as it was made that would delay as much more [m]."""
        return self.length_m * (1 / self.ratio - 1) if self.tangent else 0.0


Elements = Callable[..., NumberArray]
"""An impedance [Ω] or admittance [S] by angular frequency [rad/s] and the sizes."""


class FaultKind(NamedTuple):
    """A kind of fault: something in series, across or both; without either a stretch of line of its sizes."""

    id: str
    does: str
    """What it does, in words, with places for its sizes."""
    likely: str
    """What often does that: "as ... does"."""
    sizes: tuple[FaultSize, ...]
    tried: tuple[tuple[float, ...], ...]
    """Sizes that a search begins with, in deviations."""
    series: Elements | None = None
    shunt: Elements | None = None
    weight: float = 1.0
    """How often it is met, against others at such a place."""

    @property
    def is_stretch(self) -> bool:
        """Whether it has a length."""
        return self.series is None and self.shunt is None

    @property
    def slows(self) -> bool:
        """Whether it delays what lies behind it more than the cable did."""
        return self.is_stretch and self.stretch(np.zeros(len(self.sizes))).delay_m > 0

    def values(self, own: RealArray) -> list[float]:
        """Its sizes in their units, by deviations."""
        return [size.of(value) for size, value in zip(self.sizes, own, strict=False)]

    def lumped(self, own: RealArray, omega: RealArray) -> Lumped:
        """What it puts in series and across, at angular frequencies [rad/s]."""
        values, zero = self.values(own), np.zeros_like(omega) + 0j
        series, shunt = (zero if part is None else zero + part(omega, *values) for part in (self.series, self.shunt))
        return Lumped(series, shunt)

    def stretch(self, own: RealArray) -> Stretch:
        """The stretch of line that it is."""
        return Stretch(*self.values(own))


class PlacedFault(NamedTuple):
    """A fault of some kind at a part of the line; inside a cable about some distance from its beginning [m]."""

    kind: FaultKind
    part: int
    about_m: float | None = None
    place_deviation_m: float = 0.0

    @property
    def size_count(self) -> int:
        """How many sizes it has."""
        return len(self.kind.sizes)

    @property
    def parameter_count(self) -> int:
        """Its sizes and, inside a cable, its place."""
        return self.size_count + (self.about_m is not None)

    def place_m(self, own: RealArray) -> float:
        """Where it is, by its own parameters."""
        return 0.0 if self.about_m is None else self.about_m + float(own[self.size_count]) * self.place_deviation_m


RESISTANCE = FaultSize("added resistance", "Ω", 8.0, 1.5)
INDUCTANCE = FaultSize("added series inductance", "H", 3e-8, 1.3)
GAP = FaultSize("series capacitance of the gap", "F", 5e-12, 1.5)
FILM = FaultSize("resistance past the gap", "Ω", 5e3, 1.5)
CAPACITANCE = FaultSize("added capacitance", "F", 2e-12, 1.2)
SHORT = FaultSize("resistance across", "Ω", 0.5, 1.3)
LEAD = FaultSize("inductance of the short", "H", 1.5e-9, 0.8)
LEAKAGE = FaultSize("leakage resistance", "Ω", 100.0, 1.5)
STEP_LENGTH = FaultSize("electrical length", "m", 0.06, 0.5)
HIGHER = FaultSize("impedance over the line's", "1", 1.4, 0.25)
LOWER = FaultSize("impedance over the line's", "1", 0.75, 0.25)
CRUSHED_LENGTH = FaultSize("length", "m", 0.06, 0.9)
STRETCH_LENGTH = FaultSize("length", "m", 0.6, 0.8)
TANGENT = FaultSize("loss tangent", "1", 0.02, 0.9)


SINGLE = ((-1.5,), (-0.5,), (0.5,), (1.5,), (2.7,))
RESISTIVE = FaultKind(
    "resistance",
    "adds about {0} in series",
    "a bad contact",
    (RESISTANCE,),
    SINGLE,
    series=lambda omega, ohm: ohm + 0 * omega,
)
INDUCTIVE = FaultKind(
    "inductance",
    "adds about {0} in series",
    "a loose or missing shield",
    (INDUCTANCE,),
    SINGLE,
    series=lambda omega, henry: 1j * omega * henry,
)
SHIELD = FaultKind(
    "series",
    "adds about {0} and {1} in series",
    "a shield that is connected only in places",
    (RESISTANCE, INDUCTANCE),
    ((-0.5, -0.5), (0.5, 0.5), (1.5, 0.5), (1.0, 1.5)),
    series=lambda omega, ohm, henry: ohm + 1j * omega * henry,
)
OPEN_CONTACT = FaultKind(
    "gap",
    "lets the current through only about {0}",
    "an open contact",
    (GAP, FILM),
    ((-2.0, 0.0), (-1.0, 0.0), (0.0, 0.0), (1.0, 0.0), (2.0, 0.0)),
    series=lambda omega, farad, ohm: 1 / (1 / ohm + 1j * omega * farad),
)
CAPACITIVE = FaultKind(
    "capacitance",
    "adds about {0} across the line",
    "water or something squeezed",
    (CAPACITANCE,),
    SINGLE,
    shunt=lambda omega, farad: 1j * omega * farad,
)
LEAKING = FaultKind(
    "leak",
    "puts about {0} across the line",
    "water or a whisker of braid",
    (LEAKAGE,),
    ((-1.5,), (-0.5,), (0.5,), (1.5,), (2.2,)),
    shunt=lambda omega, ohm: 1 / ohm + 0 * omega,
)
SHORTED = FaultKind(
    "short",
    "almost shorts the line, with about {0} across it",
    "a whisker of braid",
    (SHORT, LEAD),
    ((0.0, 0.0), (0.0, 1.0)),
    shunt=lambda omega, ohm, henry: 1 / (ohm + 1j * omega * henry),
)
WET = FaultKind(
    "shunt",
    "adds about {0} and a leak of about {1} across the line",
    "water",
    (CAPACITANCE, LEAKAGE),
    ((0.0, 0.5), (0.5, 2.0), (1.0, -0.5), (1.5, -1.5)),
    shunt=lambda omega, farad, ohm: 1j * omega * farad + 1 / ohm,
)
HIGH_SECTION = FaultKind(
    "section",
    "is like {0} of line of {1} times the impedance",
    "a part of another impedance",
    (STEP_LENGTH, HIGHER),
    ((0.0, 0.0), (1.0, 0.5), (0.0, 1.5)),
)
LOW_SECTION = FaultKind(
    "section",
    "is like {0} of line of {1} times the impedance",
    "a part of another impedance",
    (STEP_LENGTH, LOWER),
    ((0.0, 0.0), (1.0, -0.5)),
)
CRUSHED = FaultKind(
    "stretch",
    "is like {0} of cable of {1} times its impedance",
    "a crushed or kinked cable",
    (CRUSHED_LENGTH, LOWER),
    ((0.7, 0.5), (1.2, -0.5), (-0.5, -0.5)),
)
SOAKED = FaultKind(
    "soaked",
    "is like {0} of cable of {1} times its impedance and more loss",
    "a wet cable",
    (STRETCH_LENGTH, LOWER, TANGENT),
    ((-0.8, 0.7, 0.0), (0.2, 0.7, 0.0), (1.0, 0.0, 0.0)),
)
HIGH_STRETCH = FaultKind(
    "stretch",
    "is like {0} of cable of {1} times its impedance",
    "a damaged shield",
    (CRUSHED_LENGTH, HIGHER),
    ((0.7, 0.0),),
)

AT_A_JOINT = (
    RESISTIVE,
    INDUCTIVE,
    SHIELD,
    OPEN_CONTACT,
    CAPACITIVE,
    LEAKING,
    SHORTED,
    WET,
    HIGH_SECTION,
    LOW_SECTION,
)
RARE = 0.02
"""What happens at joints and is seldom met within a cable."""

IN_A_CABLE = (
    *(kind._replace(weight=RARE) for kind in (RESISTIVE, SHIELD, OPEN_CONTACT, LEAKING, SHORTED)),
    CAPACITIVE,
    CRUSHED,
    SOAKED,
    HIGH_STRETCH._replace(weight=0.2),
)
