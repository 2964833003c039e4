"""What the transmitter of a line does at the load it looks at."""

import numpy as np

from ..feedline.feedline import Feedline
from ..feedline.solve import Solutions
from ..feedline.tuner import TunerLink
from ..numeric.json_numbers import number
from ..numeric.units import engineering
from .quantities import vswr
from .results import TransmitterState

__all__ = ["FEW_HOLD_BEYOND", "transmitter_state"]

FEW_HOLD_BEYOND = 2.0
"""VSWR from which on few transmitters keep their power (common practice: they fold back from 1.5 to 3 on)."""

FOLDED_BELOW = 0.99
"""Share of its power below which a transmitter is said to fold back."""


WORTH_DIGITS = 2
"""Of a power that hangs on how steeply a protection acts."""


def transmitter_state(feedline: Feedline, solutions: Solutions, power_w: float) -> TransmitterState:
    """Its forward power as expected and at the worst, and a sentence where it is not the power set."""
    transmitter = feedline.transmitter
    cautious, expected = (float(np.abs(solution.reflection[0])) for solution in solutions)
    worst = max(cautious, expected)
    low_w, expected_w = (float(transmitter.share(np.array(one))) * power_w for one in (worst, expected))
    holds_to = transmitter.holds_to_vswr
    folded = power_w > 0 and low_w < FOLDED_BELOW * power_w
    return TransmitterState(
        name=transmitter.name,
        holds_to_vswr=number(holds_to),
        set_w=power_w,
        forward_w=expected_w,
        forward_low_w=low_w,
        folded=folded,
        sentence=_sentence(feedline, worst, expected_w, low_w, power_w) if power_w > 0 else "",
    )


def _sentence(feedline: Feedline, worst: float, expected_w: float, low_w: float, power_w: float) -> str:
    seen, set_to = vswr(worst), engineering(power_w, "W")
    looks_at = "a load that takes no power" if seen is None else f"SWR {seen:.1f}"
    if feedline.net:
        return ""
    if low_w < FOLDED_BELOW * power_w:
        least, most = (engineering(float(f"{one:.{WORTH_DIGITS}g}"), "W") for one in (low_w, expected_w))
        to = f"to {least}" if least == most else f"to between {least} and {most}"
        tuned = any(isinstance(link, TunerLink) for link in feedline.links)
        help_is = "the tuner can't match it" if tuned else "an antenna tuner beside it would let it send all"
        return f"At {looks_at} the transmitter folds back {to} of {set_to}; {help_is}."
    if seen is None or seen > FEW_HOLD_BEYOND:
        return f"At {looks_at} few transmitters still send {set_to}; this one is said to."
    return ""
