"""Whether the antenna at the end of a line takes power anywhere in a sweep, as it is described to do."""

import numpy as np

from ..feedline.elements import ImpedanceTable, KnownEnd, Load, MeasuredLoad
from ..formulas.match import vswr_of_reflection
from .arrays import ComplexArray
from .digits import four_figures
from .fit import Fit
from .results import AntennaEnd
from .swept_line import SweptLine

__all__ = ["antenna_end"]

OFF, LEAST_VSWR = 1.6, 2.5
"""How many times what is described, and how much at least, the lowest VSWR must be: an antenna that has moved a little
or weathered still takes power somewhere. Of 84 sound training lines one is at 1.53 times, VSWR 2.0, the others below
1.13 times."""
NEARLY_ALL = 0.999
"""Reflection beyond which a VSWR says no more."""


def antenna_end(line: SweptLine, fit: Fit, load: Load | KnownEnd, described: ComplexArray) -> AntennaEnd | None:
    """The end of a fitted line that takes far less power than is described, (frequencies,) as reflection.

    None for an end that does, and for one that is known: a short, an open end, a dummy load, a measurement. What is
    bad at the last joint looks like another antenna; that it reflects nearly all everywhere does not.
    """
    if isinstance(load, (KnownEnd, MeasuredLoad, ImpedanceTable)):
        return None
    found, should_be = (np.minimum(np.abs(one), NEARLY_ALL) for one in (line.load_reflection(fit.x), described))
    lowest, told = (float(vswr_of_reflection(np.min(one))) for one in (found, should_be))
    if lowest < max(OFF * told, LEAST_VSWR):
        return None
    return AntennaEnd(
        element=line.end_element,
        lowest_vswr=four_figures(lowest),
        described_vswr=four_figures(told),
        at_hz=float(line.frequency_hz[np.argmin(found)]),
    )
