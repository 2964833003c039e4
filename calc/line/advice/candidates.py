"""Which changes of a line are offered at all: those whose every part passes the gates of the site."""

from collections.abc import Iterator
from itertools import pairwise
from typing import NamedTuple

import numpy as np

from ...catalogue import catalogue, per_edition
from ...catalogue.schema import Cable, Interface
from ...feedline.cable import CableLink, cable_marks
from ...feedline.elements import DummyLoad, Joint, Tuner
from ...feedline.feedline import Feedline
from ...feedline.joint import JointLink, joint_model
from ...feedline.surroundings import cables_of, joint_demands
from ...formulas.line import cable_attenuation
from ...physics.cable_table import table_of_cable_ratings
from ...physics.family_ratings import table_ratings
from ...physics.gates import EXPOSURES, SEALED_TO, cable_fits, cable_te11, gate_table
from ...physics.ratings import CAUTIOUS, ENDS
from ...physics.scenario import Exposure
from ..requests import LineRequest
from .candidate import Candidate
from .effort import EVERYDAY, unlike

__all__ = ["candidates"]

SAME_IMPEDANCE = 0.1
"""Cables and connectors are offered whose impedance is within this share of the line's (common practice)."""

SHORTEST_CORRUGATED_M = 5.0
"""A shorter run of corrugated cable is too stiff to be a jumper (common practice)."""

LONGEST_SEMI_RIGID_M = 2.0
"""It is sold and bent in short lengths (common practice)."""


NOT_ADVISED = frozenset({"rp_sma", "3_5mm", "2_92mm", "c", "mini_uhf"})
"""Families of wireless networks, of instruments, of car radios, or no longer in trade, which no one fits anew in a
station (common practice)."""


HIGHEST_TUNED_HZ = 54e6
"""Up to which frequency tuners of coil and capacitors are used (common practice)."""

TUNER_AT_TRANSMITTER = Tuner(network="t")
TUNER_AT_ANTENNA = Tuner(network="l", largest_capacitor_f=3e-9)
"""What is usual in each place: a T by hand, an automatic L with banks of capacitors (common practice)."""


class _Ends(NamedTuple):
    """Joints in another family, and those that go with an adapter."""

    replaced: dict[int, str]
    dropped: frozenset[int]


def candidates(request: LineRequest, feedline: Feedline) -> list[Candidate]:
    """Every change that may be offered, in the order of the line."""
    return list(_Offer(request, feedline).all())


class _Offer:
    def __init__(self, request: LineRequest, feedline: Feedline) -> None:
        self._request, self._links, self._frequency_hz = request, feedline.links, feedline.frequency_hz
        self._impedance, self._net = feedline.station.impedance_ohm, feedline.net
        self._cables = [cable for cable in catalogue().cables.values() if self._stands_the_site(cable)]
        self._loss_db_per_m = _losses_db_per_m(self._frequency_hz)
        self._joints = {index: link for index, link in enumerate(self._links) if isinstance(link, JointLink)}
        self._in_line = {link.family for link in self._joints.values()}
        self._families = [
            one.id
            for one in catalogue().interfaces.values()
            if self._suits(one.nominal_impedance_ohm.value) and (one.id in self._in_line or one.id not in NOT_ADVISED)
        ]
        self._passed: dict[tuple[Exposure, str | None, str | None], list[str]] = {}

    def all(self) -> Iterator[Candidate]:
        for index, link in enumerate(self._links):
            if isinstance(link, CableLink):
                yield from self._other_cables(index, link)
                yield from self._both_ends(index)
            elif isinstance(link, JointLink):
                yield from self._other_families(index, link)
        yield from self._everywhere()
        yield from self._tuners()
        for first, second in pairwise(self._joints):
            if self._is_adapter(first, second):
                yield from self._without_adapter(first, second)

    def _other_families(self, index: int, link: JointLink) -> Iterator[Candidate]:
        if self._partner(index) is None:  # another adapter in the place of one is no help
            for family in self._passing(index):
                if family != link.family:
                    yield Candidate("joint", (index,), {index: family})

    def _other_cables(self, index: int, link: CableLink) -> Iterator[Candidate]:
        length_m = link.models[CAUTIOUS].length_m
        for cable in self._cables:
            # a lossier one would only hide the antenna's SWR from the transmitter
            more_loss = self._loss_db_per_m[cable.id] > self._loss_db_per_m[link.cable]
            if cable.id == link.cable or more_loss or not _comes_in(cable, length_m):
                continue
            joints = self._joints_beside(index)
            misfit = [joint for joint in joints if not _made_for(self._joints[joint].family, cable)]
            family = self._family_for(cable, misfit) if misfit else None
            if (family or not misfit) and all(self._has_room(joint, cable) for joint in joints):
                ends = _Ends({}, frozenset()) if family is None else self._ending_in(family, misfit)
                yield Candidate("cable", (index,), {index: cable.id} | ends.replaced, ends.dropped)

    def _both_ends(self, index: int) -> Iterator[Candidate]:
        joints = self._joints_beside(index)
        old = {self._joints[joint].family for joint in joints}
        if len(joints) == 2 and len(old) == 1:
            for family in self._common(joints):
                if family not in old:
                    yield Candidate("ends", tuple(joints), *self._ending_in(family, joints))

    def _everywhere(self) -> Iterator[Candidate]:
        joints = list(self._joints)
        runs = [self._joints_beside(index) for index, link in enumerate(self._links) if isinstance(link, CableLink)]
        if len(joints) < 2 or joints in runs:
            return
        for family in self._common(joints):
            replaced, dropped = self._ending_in(family, joints)
            changed = [index for index, to in replaced.items() if self._joints[index].family != to]
            if len(changed) + len(dropped) > 1:
                yield Candidate("everywhere", tuple(joints), replaced, dropped)

    def _tuners(self) -> Iterator[Candidate]:
        """One beside the transmitter or at the antenna; the one that there is, at the antenna."""
        if self._net or self._frequency_hz > HIGHEST_TUNED_HZ or isinstance(self._request.load, DummyLoad):
            return
        tuners = frozenset(index for index, link in enumerate(self._links) if link.kind == "tuner")
        last = len(self._links)
        if not tuners:
            yield Candidate("tuner", (0,), {}, tuner=TUNER_AT_TRANSMITTER)
        if len(tuners) < 2 and last - 1 not in tuners:
            yield Candidate("tuner", (last,), {}, tuners, TUNER_AT_ANTENNA)

    def _ending_in(self, family: str, joints: list[int]) -> _Ends:
        """The joints in another family; an adapter that leads to it is left out."""
        replaced, dropped = {}, set()
        for joint in joints:
            partner = self._partner(joint)
            if partner is None:
                replaced[joint] = family
            elif joint not in replaced:
                # the joint that has the family already is the one that stays
                stays = joint if self._joints[joint].family == family else partner
                replaced[stays] = family
                dropped.add(joint + partner - stays)
        return _Ends(replaced, frozenset(dropped))

    def _without_adapter(self, first: int, second: int) -> Iterator[Candidate]:
        """The cable on one side of the adapter ends in the family of the other."""
        near, far = self._joints[first], self._joints[second]
        cables = self._cable(first - 1), self._cable(second + 1)
        passing = self._passing_between(near.given, *cables)
        if cables[0] and far.family in passing:
            yield Candidate("adapter", (first, second), {second: far.family}, frozenset({first}))
        if cables[1] and near.family in passing:
            yield Candidate("adapter", (first, second), {first: near.family}, frozenset({second}))

    def _stands_the_site(self, cable: Cable) -> bool:
        return (
            self._suits(cable.impedance_ohm.value)
            and cable.highest_temperature_c.value > self._request.ambient_temperature_c
            and not cable_marks(cable, self._frequency_hz, self._request)
            and cable_te11(cable, self._frequency_hz).passed
        )

    def _suits(self, impedance_ohm: float) -> bool:
        return abs(impedance_ohm / self._impedance - 1) < SAME_IMPEDANCE

    def _joints_beside(self, index: int) -> list[int]:
        return [near for near in (index - 1, index + 1) if near in self._joints]

    def _cable(self, index: int) -> str | None:
        link = self._links[index] if 0 <= index < len(self._links) else None
        return link.cable if isinstance(link, CableLink) else None

    def _is_adapter(self, first: int, second: int) -> bool:
        return self._links[first].element == self._links[second].element

    def _partner(self, index: int) -> int | None:
        """The other joint of an adapter."""
        return next((near for near in self._joints_beside(index) if self._is_adapter(index, near)), None)

    def _has_room(self, joint: int, cable: Cable) -> bool:
        """Whether a cable is left some room for heat at a joint."""
        model = self._joints[joint].models[CAUTIOUS]
        hottest = model.station.ambient_temperature_c + model.path.solar_rise_k
        return bool(cable.highest_temperature_c.value > hottest)

    def _family_for(self, cable: Cable, joints: list[int]) -> str | None:
        """The family to end a cable in where the joints' own are not made for it: one of the line's, or a usual one."""
        takes = [family for family in self._common(joints) if _made_for(family, cable)]
        order = [(one not in self._in_line, one not in EVERYDAY, unlike(one, cable), one) for one in takes]
        return min(order)[-1] if order else None

    def _common(self, joints: list[int]) -> list[str]:
        """Families that pass at every one of the joints; of an adapter's, those that it leads to."""
        passing = []
        for joint in joints:
            partner = self._partner(joint)
            families = set(self._passing(joint))
            passing.append(
                families if partner is None or partner in joints else families & {self._joints[partner].family}
            )
        return [family for family in self._families if all(family in one for one in passing)]

    def _passing(self, index: int) -> list[str]:
        """Families that pass every gate in the place of a joint, its own too."""
        return self._passing_between(self._joints[index].given, self._cable(index - 1), self._cable(index + 1))

    def _passing_between(self, given: Joint, near: str | None, far: str | None) -> list[str]:
        exposure = given.exposure or self._request.exposure
        key = exposure, near, far
        if key not in self._passed:
            asked = [family for family in self._families if _weatherproof(family, exposure)]
            self._passed[key] = self._gated(given, asked, near, far) if asked else []
        return self._passed[key]

    def _gated(self, given: Joint, asked: list[str], near: str | None, far: str | None) -> list[str]:
        sides = tuple(None if one is None else catalogue().cables[one] for one in (near, far))
        demands = [joint_demands(self._request, given, family, [one for one in sides if one]) for family in asked]
        station = next(iter(self._joints.values())).models[CAUTIOUS].station
        ends = cables_of((sides[0], sides[1]), ENDS[CAUTIOUS])
        no_room = joint_model(table_ratings(asked, ENDS[CAUTIOUS]), ends, station).has_no_room()
        failed = gate_table(
            asked,
            demands,
            np.array([self._frequency_hz]),
            np.array([self._request.power_w]),
            np.broadcast_to(no_room, (len(asked), 1)),
            None,
            None,
        )
        return [family for family, fails in zip(asked, np.any(failed, axis=0)[:, 0, 0], strict=True) if not fails]


def _comes_in(cable: Cable, length_m: float) -> bool:
    """Whether a cable is used in runs of a length."""
    if cable.construction == "corrugated":
        return length_m >= SHORTEST_CORRUGATED_M
    return cable.construction != "semi-rigid" or length_m <= LONGEST_SEMI_RIGID_M


@per_edition(maxsize=64)
def _losses_db_per_m(frequency_hz: float) -> dict[str, float]:
    """What a metre of every cable loses between matched ends, by its id."""
    cables = list(catalogue().cables)
    ratings, frequency = table_of_cable_ratings(cables, ENDS[CAUTIOUS]), np.array([frequency_hz])
    losses = cable_attenuation(ratings.conductor_coefficient(frequency), 1.0, frequency, ratings.k_2)
    return dict(zip(cables, losses[:, 0].tolist(), strict=True))


def _interface(family: str) -> Interface:
    return catalogue().interfaces[family]


def _made_for(family: str, cable: Cable) -> bool:
    return cable_fits(_interface(family), cable.outer_diameter_m.value)


def _weatherproof(family: str, exposure: Exposure) -> bool:
    """Whether a family stands the weather mated as it is, without tape."""
    asked = min(EXPOSURES.index(exposure), SEALED_TO)
    return EXPOSURES.index(_interface(family).exposure_mated) >= asked
