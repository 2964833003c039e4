"""Lines ready to be fitted, of runs of one cable between joints."""

import numpy as np

from jointwise.calc.feedline.elements import CableRun, Joint, KnownEnd
from jointwise.calc.feedline.feedline import feedline_at
from jointwise.calc.physics.columns import spot_column
from jointwise.calc.sweep.prior import SweepSettings
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.sweep.swept_line import swept_line

FREQUENCY = np.linspace(1e6, 9e8, 240)
CELL_M = 0.11
MATCHED = KnownEnd(what="matched")


def line_of(lengths_m, end=MATCHED, frequency=FREQUENCY):
    """Runs of RG-213 between joints that are uneven by nature, swept with something at the end."""
    elements = [Joint(family="uhf")]
    for length_m in lengths_m:
        elements += [CableRun(cable="rg_213", length_m=length_m), Joint(family="uhf")]
    request = SweepRequest(elements=elements, load=end, touchstone="")
    return swept_line(feedline_at(request, elements, end, spot_column(1e8)), frequency, SweepSettings(0.05, 6, end))


def usual(line):
    """Every part as described."""
    return np.zeros(line.parameter_count)
