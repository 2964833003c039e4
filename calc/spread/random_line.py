"""A line drawn at random many times over: what is not known of it is even within what is usual."""

from typing import NamedTuple

import numpy as np

from ..feedline.feedline import Feedline
from ..formulas.line import decibels
from ..formulas.match import vswr_of_reflection
from ..numeric.draws import Stream
from .random_links import Plane, random_link
from .requests import SpreadRequest

__all__ = ["Draws", "RandomLine"]

TOTAL = 1 - 1e-12
"""Of a reflection: a VSWR beyond a million millions is no number worth drawing."""


class Draws(NamedTuple):
    """Answers of one block, each draws x frequencies."""

    vswr: np.ndarray
    loss_db: np.ndarray
    margin_db: np.ndarray


class RandomLine:
    """The chain made ready for draws at frequencies [Hz]."""

    @np.errstate(divide="ignore")  # where nothing heats, heat limits nothing
    def __init__(self, request: SpreadRequest, feedline: Feedline, frequency: np.ndarray) -> None:
        self.feedline, self.frequency = feedline, frequency
        self.links = [random_link(link, frequency, request.length_tolerance) for link in feedline.links]
        self.refused = np.any([link.refused(frequency, request.power_w) for link in feedline.links], axis=0)
        self._power_w, self._z_0 = request.power_w, feedline.station.impedance_ohm

    @np.errstate(divide="ignore", invalid="ignore")  # what no draw lets through is infinite
    def block(self, random: Stream, draws: int) -> Draws:
        """Solve `draws` random lines at every frequency, from the load back to the transmitter."""
        known = self.feedline.load.known
        load = self.feedline.load.at(self.frequency, np.zeros(draws) if known else random.uniform(draws))
        after = Plane(1 + load, (1 - load) / self._z_0)
        delivered = after.power
        strain = np.zeros_like(delivered)
        for link in reversed(self.links):
            port = link.draw(random, draws, after)
            before = after.through(port)
            strain = np.maximum(strain * link.scale, link.strain(before, after))
            delivered = delivered * link.scale
            after = before
        forward, backward = after.travelling(self._z_0)
        source = after.power if self.feedline.net else np.abs(forward) ** 2 / self._z_0
        reflection = np.minimum(np.abs(backward / forward), TOTAL)
        sent = self.feedline.transmitter.share(reflection)
        margin = -decibels(strain / source * sent * self._power_w)
        return Draws(vswr_of_reflection(reflection), -decibels(delivered / source * sent), margin)
