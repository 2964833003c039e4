"""What is usual of good parts and of the load of a sweep: the prior of a fit."""

from typing import NamedTuple

import numpy as np

from ..feedline.elements import ImpedanceTable, KnownEnd, Load, MeasuredLoad
from ..feedline.feedline import Feedline
from ..physics.ratings import assumption
from .arrays import ComplexArray, RealArray
from .model import CablePrior, LineModel, line_model

__all__ = ["SweepSettings", "line_with_prior"]


class SweepSettings(NamedTuple):
    """What a sweep is judged with: greatest relative error of a length, shape of the Kaiser window, the load."""

    length_tolerance: float
    window_shape: float
    load: Load | KnownEnd


class _LoadPrior(NamedTuple):
    """The assumption that holds the standard deviation of a load's reflection, and the order of its curve."""

    assumption: str
    order: int


KNOWN_END = _LoadPrior("sweep_known_end_spread", 0)
MEASURED_LOAD = _LoadPrior("sweep_measured_end_spread", 2)
ANTENNA = _LoadPrior("sweep_antenna_spread", 6)


def line_with_prior(feedline: Feedline, frequency: RealArray, settings: SweepSettings) -> LineModel:
    """A feedline with all that is not known of its good parts, at frequencies [Hz]."""
    return line_model(feedline, frequency, _cable_prior(settings), _load_basis(frequency, settings.load))


def _cable_prior(settings: SweepSettings) -> CablePrior:
    """An error anywhere within a tolerance has a root of three less as its standard deviation."""
    impedance, loss = (float(assumption(f"sweep_cable_{what}_spread")) for what in ("impedance", "loss"))
    return CablePrior(settings.length_tolerance / np.sqrt(3.0), impedance, loss)


def _load_basis(frequency: RealArray, load: Load | KnownEnd) -> ComplexArray:
    """By what the reflection of the load may be off: Chebyshev polynomials, real and imaginary."""
    prior = ANTENNA
    if isinstance(load, KnownEnd):
        prior = KNOWN_END
    elif isinstance(load, (MeasuredLoad, ImpedanceTable)):
        prior = MEASURED_LOAD
    position = 2 * (frequency - frequency[0]) / (frequency[-1] - frequency[0]) - 1
    polynomials = [np.ones_like(position), position]
    while len(polynomials) <= prior.order:
        polynomials.append(2 * position * polynomials[-1] - polynomials[-2])
    scaled = np.array(polynomials[: prior.order + 1]) * float(assumption(prior.assumption))
    return np.concatenate([scaled + 0j, 1j * scaled])
