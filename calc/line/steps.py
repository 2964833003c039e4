"""The calls of formulas behind the margins of one element."""

import numpy as np

from ..feedline.feedline import Feedline
from ..feedline.link import LinkModel
from ..feedline.solve import Solutions
from ..feedline.stress import Stress
from ..formulas import heat
from ..formulas.formula import Step, recording
from ..physics.heat_limit import Wave
from ..physics.ratings import ENDS

__all__ = ["element_steps"]


def element_steps(feedline: Feedline, solutions: Solutions, element: int, power_w: float) -> list[Step]:
    """Those of every link of an element, both ends of the ratings, the cautious first."""
    steps = []
    for end, (name, solution) in enumerate(zip(ENDS, solutions, strict=True)):
        with recording(name) as recorded:
            for link, stress in zip(feedline.links, solution.stresses, strict=True):
                if link.element == element:
                    _derive(link.models[end], feedline.frequency_hz, stress, power_w)
        steps += recorded
    return steps


def _derive(model: LinkModel, frequency_hz: float, stress: Stress, power_w: float) -> None:
    hottest = Wave(*(float(value[0]) for value in stress.hottest))
    at_frequency = Stress(
        heat_share=float(stress.heat_share[0]),
        voltage_factor=float(stress.voltage_factor[0]),
        current_factor=float(stress.current_factor[0]),
        forward_factor=float(stress.forward_factor[0]),
        hottest=hottest,
    )
    allowed = model.derived(frequency_hz, at_frequency)
    for limit_w in (allowed.heat_w, allowed.voltage_w):
        if power_w > 0 and np.isfinite(limit_w) and limit_w > 0:
            heat.margin(float(limit_w), power_w)
