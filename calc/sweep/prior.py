"""What is usual of good parts, of an analyser and of the load of a sweep: the prior of a fit."""

from typing import NamedTuple

import numpy as np

from ..feedline.elements import GivenImpedance, GivenVswr, ImpedanceTable, KnownEnd, Load, MeasuredLoad
from ..physics.ratings import assumption
from .arrays import ComplexArray, RealArray

__all__ = [
    "ANTENNA_CELLS",
    "LONGEST_ANALYSER_DELAY_S",
    "LinePrior",
    "SweepSettings",
    "delayed_waves",
    "end_deviations",
    "is_vague",
    "known_reflection",
    "line_prior",
    "load_basis",
]


class SweepSettings(NamedTuple):
    """What a sweep is judged with: greatest relative error of a length, shape of the Kaiser window, the load."""

    length_tolerance: float
    window_shape: float
    load: Load | KnownEnd


class LinePrior(NamedTuple):
    """Standard deviations of what is not known; as shares unless a unit stands in the name."""

    length: float
    skin_phase: float
    conductor_loss: float
    other_loss: float
    impedance: float
    wander: float
    """Of each wave of impedance along a cable of 1 m; a longer one has more and smaller waves."""
    joint_share: float
    """Of the logarithm of a joint's impedance over that its standard allows."""
    joint: float
    """Of its impedance, beside that."""
    joint_delay: float
    contact_ohm: float
    directivity: float
    match: float
    tracking: float
    plane_m: float

    def analyser_basis(self, frequency: RealArray) -> tuple[ComplexArray, ComplexArray, ComplexArray]:
        """What one deviation of each term adds: (terms, frequencies), of directivity, source match, tracking."""
        waves = delayed_waves(frequency, LONGEST_ANALYSER_DELAY_S)
        return waves * self.directivity, waves * self.match, waves * self.tracking


SKIN_PHASE, CONDUCTOR_LOSS, OTHER_LOSS, WANDER, CONTACT_OHM = 0.2, 0.2, 0.15, 0.013, 0.05
JOINT_DELAY = 0.4
STANDARD_SHARE = 0.6
"""Joints lie mostly within what their standard allows: nineteen of twenty within 1.2 times the step to it."""
LONGEST_ANALYSER_DELAY_S = 1.5e-9
"""There and back, of what calibration leaves: within the analyser, its cable and its standards."""
KNOWN_ORDER, KNOWN_FALL = 3, 0.5
MEASURED_ORDER, MEASURED_FALL = 6, 0.8
ANTENNA_FALL, ANTENNA_CELLS = 0.905, 30.0
"""By how much the echoes of an antenna fall within a cell of distance, or of delay, and how many cells behind the end
of the line they come from."""
DENSE_CELLS, DENSE_SPACING, ANTENNA_SPACING = 4.0, 0.5, 0.95
"""So far behind the end they stand closer: what comes back soon comes at any delay, and between echoes that are a cell
apart it would need some from before the end."""


def line_prior(settings: SweepSettings) -> LinePrior:
    """What is usual, with the cables' lengths as well known as was said."""

    return LinePrior(
        length=float(np.hypot(settings.length_tolerance / np.sqrt(3.0), _usual("velocity"))),
        skin_phase=SKIN_PHASE,
        conductor_loss=CONDUCTOR_LOSS,
        other_loss=OTHER_LOSS,
        impedance=_usual("cable_impedance"),
        wander=WANDER,
        joint_share=STANDARD_SHARE,
        joint=_usual("joint"),
        joint_delay=JOINT_DELAY,
        contact_ohm=CONTACT_OHM,
        directivity=_usual("directivity"),
        match=_usual("match"),
        tracking=_usual("tracking"),
        plane_m=_usual("plane"),
    )


def _usual(what: str) -> float:
    return float(assumption(f"sweep_{what}_spread"))


def smooth_curves(frequency: RealArray, order: int, fall: float) -> ComplexArray:
    """Chebyshev polynomials up to an order, each next one smaller by a factor, real and then imaginary."""
    position = 2 * (frequency - frequency[0]) / (frequency[-1] - frequency[0]) - 1
    polynomials = [np.ones_like(position), position]
    while len(polynomials) <= order:
        polynomials.append(2 * position * polynomials[-1] - polynomials[-2])
    scaled = np.array(polynomials[: order + 1]) * fall ** np.arange(order + 1)[:, None]
    return np.concatenate([scaled + 0j, 1j * scaled])


def delayed_waves(frequency: RealArray, longest_s: float) -> ComplexArray:
    """Waves of delays up to the longest [s], so many that all smooth curves of such delays are sums of them."""
    count = FEWEST_DELAYS + int(np.ceil(longest_s * (frequency[-1] - frequency[0])))
    delays = np.linspace(0, longest_s, count)
    waves = np.exp(-2j * np.pi * frequency * delays[:, None]) / np.sqrt(2 * count)
    return np.concatenate([waves, 1j * waves])


FEWEST_DELAYS = 3


def end_deviations(load: Load | KnownEnd) -> tuple[float, float, float]:
    """Usual deviations of an end: inductance in series [H], capacitance across [F], resistance in series [Ω]."""
    if not isinstance(load, KnownEnd):
        return 0.0, 0.0, 0.0
    return {"short": (3e-9, 0.0, 0.2), "open": (0.0, 3e-13, 0.0), "matched": (1e-9, 4e-13, 2.0)}[load.what]


def known_reflection(described: ComplexArray, load: Load | KnownEnd) -> ComplexArray:
    """What is known of the load's reflection: of an antenna given by one number, nothing at other frequencies."""
    known = 0.0 if is_vague(load) else 1.0
    return (described * known).astype(np.complex128)


def is_vague(load: Load | KnownEnd) -> bool:
    """Whether a load is known by one number only: an antenna is another one at every frequency."""
    return isinstance(load, (GivenVswr, GivenImpedance))


def load_basis(frequency: RealArray, load: Load | KnownEnd) -> ComplexArray:
    """By what the reflection of the load may be off: smooth curves; of an antenna little known, echoes after it."""
    if isinstance(load, KnownEnd):
        return smooth_curves(frequency, KNOWN_ORDER, KNOWN_FALL) * _usual("known_end")
    if isinstance(load, (MeasuredLoad, ImpedanceTable)):
        return smooth_curves(frequency, MEASURED_ORDER, MEASURED_FALL) * _usual("measured_end")
    soon, later = np.arange(0, DENSE_CELLS, DENSE_SPACING), np.arange(DENSE_CELLS, ANTENNA_CELLS, ANTENNA_SPACING)
    cells = np.concatenate([soon, later])[:, None]
    turns = cells / (frequency[-1] - frequency[0]) * frequency
    echoes: ComplexArray = np.exp(-2j * np.pi * turns) * _usual("antenna") * ANTENNA_FALL**cells
    return np.concatenate([echoes, 1j * echoes])
