"""What can be wrong at a place of a line: kinds of fault by what each does to the waves, and its sizes.

A size is counted in deviations of its logarithm from a middling one: 0 is middling, and the prior is the standard
normal distribution.
"""

from collections.abc import Callable, Sequence
from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray, RealArray

__all__ = ["AT_A_JOINT", "IN_A_CABLE", "FaultKind", "FaultSize", "Lumped", "PlacedFault", "Stretch"]


class FaultSize(NamedTuple):
    """One size of a fault: what it is, its unit, a middling one, and the deviation of its natural logarithm."""

    name: str
    unit: str
    middling: float
    spread: float

    def of(self, own: float) -> float:
        """The size in its unit, by deviations."""
        return float(self.middling * np.exp(self.spread * own))


class Lumped(NamedTuple):
    """An impedance in series [Ω] and an admittance across the line [S], over frequency."""

    series: ComplexArray
    shunt: ComplexArray


class Stretch(NamedTuple):
    """A stretch of line: its length [m], its impedance over that of the line around, and a loss tangent more."""

    length_m: float
    ratio: float
    tangent: float = 0.0


class FaultKind(NamedTuple):
    """A kind of fault; one of `lumped` and `stretch` makes it of its sizes."""

    id: str
    does: str
    """What it does, in words, with places for its sizes."""
    likely: str
    """What often does that, in words."""
    sizes: tuple[FaultSize, ...]
    lumped: Callable[[RealArray, RealArray], Lumped] | None = None
    stretch: Callable[[RealArray], Stretch] | None = None
    tried: tuple[tuple[float, ...], ...] = ()
    """Sizes that a search begins with, in deviations."""
    weight: float = 1.0
    """How often it is met, against others at such a place."""


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

    def place_m(self, own: Sequence[float]) -> float:
        """Where it is, by its own parameters."""
        return 0.0 if self.about_m is None else self.about_m + own[self.size_count] * self.place_deviation_m

    def sizes(self, own: Sequence[float]) -> list[float]:
        """Its sizes in their units."""
        return [size.of(value) for size, value in zip(self.kind.sizes, own, strict=False)]


RESISTANCE = FaultSize("added resistance", "Ω", 8.0, 1.5)
INDUCTANCE = FaultSize("added series inductance", "H", 3e-8, 1.3)
GAP = FaultSize("series capacitance of the gap", "F", 5e-12, 1.5)
CAPACITANCE = FaultSize("added capacitance", "F", 2e-12, 1.2)
SHORT = FaultSize("resistance across", "Ω", 0.5, 1.3)
LEAD = FaultSize("inductance of the short", "H", 1.5e-9, 0.8)
LEAKAGE = FaultSize("leakage resistance", "Ω", 100.0, 1.5)
STEP_LENGTH = FaultSize("electrical length", "m", 0.08, 0.7)
HIGHER = FaultSize("impedance over the line's", "1", 1.4, 0.25)
LOWER = FaultSize("impedance over the line's", "1", 0.75, 0.25)
CRUSHED_LENGTH = FaultSize("length", "m", 0.06, 0.9)
STRETCH_LENGTH = FaultSize("length", "m", 0.6, 0.8)
TANGENT = FaultSize("loss tangent", "1", 0.02, 0.9)


def _lumped(
    series: Callable[..., ComplexArray] | None, shunt: Callable[..., ComplexArray] | None, sizes: tuple[FaultSize, ...]
) -> Callable[[RealArray, RealArray], Lumped]:
    def lumped(own: RealArray, omega: RealArray) -> Lumped:
        values = [size.of(value) for size, value in zip(sizes, own, strict=False)]
        zero = np.zeros_like(omega) + 0j
        return Lumped(
            zero if series is None else zero + series(omega, *values),
            zero if shunt is None else zero + shunt(omega, *values),
        )

    return lumped


def _series(
    kind: str, does: str, likely: str, sizes: tuple[FaultSize, ...], of: Callable[..., ComplexArray], tried: tuple
) -> FaultKind:
    return FaultKind(kind, does, likely, sizes, lumped=_lumped(of, None, sizes), tried=tried)


def _shunt(
    kind: str, does: str, likely: str, sizes: tuple[FaultSize, ...], of: Callable[..., ComplexArray], tried: tuple
) -> FaultKind:
    return FaultKind(kind, does, likely, sizes, lumped=_lumped(None, of, sizes), tried=tried)


def _stretch(kind: str, does: str, likely: str, sizes: tuple[FaultSize, ...], tried: tuple) -> FaultKind:
    def stretch(own: RealArray) -> Stretch:
        return Stretch(*(size.of(value) for size, value in zip(sizes, own, strict=False)))

    return FaultKind(kind, does, likely, sizes, stretch=stretch, tried=tried)


SINGLE = ((-1.5,), (-0.5,), (0.5,), (1.5,), (2.7,))
RESISTIVE = _series(
    "resistance", "adds about {0} in series", "a bad contact", (RESISTANCE,), lambda omega, ohm: ohm + 0 * omega, SINGLE
)
INDUCTIVE = _series(
    "inductance",
    "adds about {0} in series",
    "a detour of the current, as at a loose or missing shield",
    (INDUCTANCE,),
    lambda omega, henry: 1j * omega * henry,
    SINGLE,
)
SHIELD = _series(
    "series",
    "adds about {0} and {1} in series",
    "a shield that is connected only in places",
    (RESISTANCE, INDUCTANCE),
    lambda omega, ohm, henry: ohm + 1j * omega * henry,
    ((-0.5, -0.5), (0.5, 0.5), (1.5, 0.5), (1.0, 1.5)),
)
OPEN_CONTACT = _series(
    "gap",
    "lets the current through only about {0}",
    "a contact that is open, or almost",
    (GAP,),
    lambda omega, farad: 1 / (1j * omega * farad),
    ((-2.0,), (-1.0,), (0.0,), (1.0,), (2.0,)),
)
CAPACITIVE = _shunt(
    "capacitance",
    "adds about {0} across the line",
    "something squeezed, wet or of too low an impedance",
    (CAPACITANCE,),
    lambda omega, farad: 1j * omega * farad,
    SINGLE,
)
SHORTED = _shunt(
    "short",
    "almost shorts the line, with about {0} across it",
    "a whisker of braid or metal between the conductors",
    (SHORT, LEAD),
    lambda omega, ohm, henry: 1 / (ohm + 1j * omega * henry),
    ((0.0, 0.0), (0.0, 1.0)),
)
LEAKING = _shunt(
    "leak",
    "puts about {0} across the line",
    "water or a whisker of braid between the conductors",
    (LEAKAGE,),
    lambda omega, ohm: 1 / ohm + 0 * omega,
    ((-1.5,), (-0.5,), (0.5,), (1.5,)),
)
WET = _shunt(
    "shunt",
    "adds about {0} and a leak of about {1} across the line",
    "water",
    (CAPACITANCE, LEAKAGE),
    lambda omega, farad, ohm: 1j * omega * farad + 1 / ohm,
    ((0.0, 0.5), (1.0, -0.5), (1.5, -1.5)),
)
HIGH_SECTION = _stretch(
    "section",
    "is like {0} of line of {1} times the impedance",
    "a part of another impedance, or a shield pulled away",
    (STEP_LENGTH, HIGHER),
    ((0.0, 0.0), (1.0, 0.5), (0.0, 1.5)),
)
LOW_SECTION = _stretch(
    "section",
    "is like {0} of line of {1} times the impedance",
    "a part of another impedance, or something squeezed",
    (STEP_LENGTH, LOWER),
    ((0.0, 0.0), (1.0, -0.5)),
)
CRUSHED = _stretch(
    "stretch",
    "is like {0} of cable of {1} times its impedance",
    "a cable that is crushed or kinked",
    (CRUSHED_LENGTH, LOWER),
    ((0.7, 0.5), (1.2, -0.5), (-0.5, -0.5)),
)
SOAKED = _stretch(
    "soaked",
    "is like {0} of cable of {1} times its impedance and more loss",
    "a cable that is wet",
    (STRETCH_LENGTH, LOWER, TANGENT),
    ((-0.8, 0.7, 0.0), (0.2, 0.7, 0.0), (1.0, 0.7, 0.0), (0.2, 0.0, 0.0), (1.0, 0.0, 0.0), (1.5, 0.0, 0.0)),
)
HIGH_STRETCH = _stretch(
    "stretch",
    "is like {0} of cable of {1} times its impedance",
    "a cable whose shield is damaged or pulled away",
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
