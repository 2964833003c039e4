"""What a change brings at the antenna, over the spread of what is not known of the line.

The same random draws are made of the line as it is and as changed: the electrical length of
each cable, grade and side of each joint, the angle of parts without one, and the way the load
can be. A change touches few links, so what stands before and behind them is worked out once.
"""

from dataclasses import replace
from itertools import groupby

import numpy as np

from ...catalogue import catalogue
from ...feedline.cable import CableLink, CableModel
from ...feedline.elements import Tuner
from ...feedline.feedline import Feedline, tuner_link
from ...feedline.joint import JointLink, joints_of_every_grade
from ...feedline.link import LinkModel
from ...feedline.part import PartLink
from ...feedline.run import RunLink
from ...formulas.line import decibels
from ...numeric.draws import Stream
from ...physics.cable_table import table_of_cable_ratings
from ...physics.family_ratings import table_ratings
from ...physics.ratings import CAUTIOUS, ENDS
from ...waves.two_port import TwoPort
from .candidate import Candidate

__all__ = ["DRAWS", "gains_db"]

DRAWS = 64
"""The 10th and the 90th percentile then have six draws beyond them."""

SEED = 1
LENGTH_TOLERANCE = 0.02
"""Of a cable's electrical length, as a share: velocity factor and cutting (common practice)."""


_NOT_SET = TwoPort(*np.eye(2).ravel())
"""In the place of a tuner, until it is known what it looks at."""


def gains_db(feedline: Feedline, candidates: list[Candidate]) -> np.ndarray:
    """More at the antenna with each change [dB]: candidates x draws."""
    return _Drawn(feedline, candidates).gains_db(candidates)


class _Drawn:
    def __init__(self, feedline: Feedline, candidates: list[Candidate]) -> None:
        self._feedline, self._links = feedline, feedline.links
        self._frequency, self._z_0 = np.array([feedline.frequency_hz]), feedline.station.impedance_ohm
        self._graded: dict[float, tuple[TwoPort, dict[str, int]]] = {}
        offered: list[dict[str, int]] = [{self._own(index): 0} for index in range(len(self._links))]
        for candidate in candidates:
            for index, to in candidate.replaced.items():
                offered[index].setdefault(to, len(offered[index]))
        self._rows = offered
        self._tuned = [index for index, link in enumerate(self._links) if link.models[CAUTIOUS].tuned]
        self._ports = [self._drawn(index, list(ids)) for index, ids in enumerate(offered)]
        self._walk()

    def gains_db(self, candidates: list[Candidate]) -> np.ndarray:
        gains = np.empty((len(candidates), DRAWS))
        touched = [(tuple(sorted(one.replaced)), tuple(sorted(one.dropped))) for one in candidates]
        for index, one in enumerate(candidates):
            if one.tuner:
                gains[index] = self._gained_by_tuner(one.about[0], one.tuner, tuple(one.dropped))
        others = (index for index, one in enumerate(candidates) if not one.tuner)
        order = sorted(others, key=touched.__getitem__)
        for (links, dropped), group in groupby(order, key=touched.__getitem__):
            members = list(group)
            rows = {link: [self._rows[link][candidates[one].replaced[link]] for one in members] for link in links}
            gains[members] = self._gained(rows, dropped)
        return gains

    def _own(self, index: int) -> str:
        link = self._links[index]
        return link.cable if isinstance(link, CableLink) else link.family

    def _drawn(self, index: int, ids: list[str]) -> TwoPort:
        """Two-ports of a link and of what is offered in its place: ids x draws, its own first."""
        link, random = self._links[index], Stream(SEED, index + 1)
        if isinstance(link, JointLink):
            grades, families = self._every_grade(link)
            rows = np.array([families[family] for family in ids])[:, None]
            chosen = random.integers(len(grades.a), DRAWS)
            return TwoPort(*(one[chosen, rows] for one in grades[:4]))
        if isinstance(link, RunLink):
            model = link.models[CAUTIOUS]
            if isinstance(model, CableModel):
                model = replace(model, ratings=table_of_cable_ratings(ids, ENDS[CAUTIOUS]))
            return model.two_port(self._frequency, LENGTH_TOLERANCE * (2 * random.uniform(DRAWS) - 1))
        if isinstance(link, RunLink):
            return link.models[CAUTIOUS].two_port(self._frequency, LENGTH_TOLERANCE * (2 * random.uniform(DRAWS) - 1))
        if index in self._tuned:
            return _NOT_SET
        if isinstance(link, PartLink):
            return link.models[CAUTIOUS].turned(self._frequency, np.exp(2j * np.pi * random.uniform(DRAWS))[None])
        return link.models[CAUTIOUS].two_port(self._frequency)

    def _every_grade(self, link: JointLink) -> tuple[TwoPort, dict[str, int]]:
        """Of every family with the added resistance of a joint: grades x families, and the column of each family."""
        added = link.models[CAUTIOUS].station.added_resistance_ohm
        if added not in self._graded:
            families = list(catalogue().interfaces)
            cautious, generous = (
                replace(model, ratings=table_ratings(families, end))
                for model, end in zip(link.models, ENDS, strict=True)
            )
            port = joints_of_every_grade(cautious, generous, self._frequency)
            columns = {family: column for column, family in enumerate(families)}
            self._graded[added] = TwoPort(*(one[..., 0] for one in port[:4])), columns
        return self._graded[added]

    def _walk(self) -> None:
        """The waves at every plane of the line as it is, and what a wave at a plane is at the transmitter."""
        load, z_0 = self._load(), self._z_0
        count = len(self._links)
        self._after = [(1 + load, (1 - load) / z_0, np.zeros(DRAWS))] * (count + 1)
        for index in reversed(range(count)):
            v, i, level = self._after[index + 1]
            if index in self._tuned:
                self._ports[index] = self._set(self._links[index].models[CAUTIOUS], v, i)
            self._after[index] = _levelled(*_through(_row(self._ports[index], 0), v, i), level, z_0)
        one = np.ones(DRAWS, dtype=np.complex128)
        self._before = [((one / 2, one * z_0 / 2), (one / 2, -one * z_0 / 2), np.zeros(DRAWS))]
        for port in self._ports:
            forward, backward, level = self._before[-1]
            self._before.append(_carried(_row(port, 0), forward, backward, level, z_0))
        v, i, level = self._after[0]
        self._as_it_is = self._sent_db(0, v, i, level)

    def _load(self) -> np.ndarray:
        return self._feedline.load.at(self._frequency, Stream(SEED, 0).uniform(DRAWS))[:, 0]

    def _gained(self, rows: dict[int, list[int]], dropped: tuple[int, ...]) -> np.ndarray:
        plane = max([*rows, *dropped]) + 1
        v, i, level = self._after[plane]
        return self._as_it_is - self._sent_through_db(plane, v, i, level, rows, dropped)

    def _gained_by_tuner(self, plane: int, tuner: Tuner, dropped: tuple[int, ...]) -> np.ndarray:
        model = tuner_link(plane, tuner, self._feedline.station).models[CAUTIOUS]
        v, i, level = self._after[plane]
        v, i = _through(self._set(model, v, i), v, i)
        return self._as_it_is - self._sent_through_db(plane, v, i, level, {}, dropped)

    def _sent_through_db(
        self,
        plane: int,
        v: np.ndarray,
        i: np.ndarray,
        level: np.ndarray,
        rows: dict[int, list[int]],
        dropped: tuple[int, ...],
    ) -> np.ndarray:
        """What must be set at the transmitter, by the waves behind everything that is changed [dB]."""
        # a tuner between that and the transmitter finds another setting
        stops = [plane, *rows, *dropped, *self._tuned]
        for index in range(plane - 1, min(stops) - 1, -1):
            if index not in dropped:
                tuned = index in self._tuned
                port = self._set(self._links[index].models[CAUTIOUS], v, i) if tuned else self._ports[index]
                v, i = _through(_row(port, rows.get(index, 0)), v, i)
        return self._sent_db(min(stops), v, i, level)

    def _set(self, tuner: LinkModel, v: np.ndarray, i: np.ndarray) -> TwoPort:
        """A tuner's two-port as it is set by the waves behind it."""
        beyond = (v - self._z_0 * i) / (v + self._z_0 * i)
        return tuner.settled(self._frequency, beyond).two_port(self._frequency)

    def _sent_db(self, plane: int, v: np.ndarray, i: np.ndarray, level: np.ndarray) -> np.ndarray:
        """What must be set at the transmitter for the same at the antenna, by the waves at a plane [dB]."""
        forward_of, backward_of, before = self._before[plane]
        forward = forward_of[0] * v + forward_of[1] * i
        backward = backward_of[0] * v + backward_of[1] * i
        power = np.abs(forward) ** 2
        if self._feedline.net:
            power = power - np.abs(backward) ** 2
        else:
            power = power / self._feedline.transmitter.share(np.abs(backward / forward))
        return decibels(power) + 20 * (level + before) / np.log(10)


def _row(port: TwoPort, row: int | list[int]) -> TwoPort:
    return TwoPort(*(one[row] if np.ndim(one) == 2 else one for one in port[:4]))


def _through(port: TwoPort, v: np.ndarray, i: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    return port.a * v + port.b * i, port.c * v + port.d * i


Pair = tuple[np.ndarray, np.ndarray]


def _levelled(v: np.ndarray, i: np.ndarray, level: np.ndarray, z_0: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The waves kept near 1 and their growth aside [Np], or a long lossy chain overflows."""
    growth = np.abs(v) + z_0 * np.abs(i)
    return v / growth, i / growth, level + np.log(growth)


def _carried(
    port: TwoPort, forward: Pair, backward: Pair, level: np.ndarray, z_0: float
) -> tuple[Pair, Pair, np.ndarray]:
    """What voltage and current behind a two-port are worth at the transmitter, by what they are in front of it."""
    (p, q), (r, s) = (
        (one[0] * port.a + one[1] * port.c, one[0] * port.b + one[1] * port.d) for one in (forward, backward)
    )
    growth = np.abs(p) + np.abs(q) / z_0
    return (p / growth, q / growth), (r / growth, s / growth), level + np.log(growth)
