"""A line as an analyser sees it, with all that is not known of its good parts and of the analyser.

Every parameter is counted in standard deviations of what is usual, so that its prior is the standard normal
distribution: 0 is the part as described and 1 a common deviation. In order:

- the analyser: directivity, source match and reflection tracking that its calibration left over, each a smooth
  complex curve over frequency, and how far its reference plane is off;
- a cable: its electrical length, the share of phase that its conductors' inside adds, its loss by conductors and
  by all else, its impedance, and how that wanders along it;
- a joint: its length, its impedance, a resistance in series;
- a part: both of these, as large as its own reflection;
- the load: its reflection, as a smooth complex curve over frequency.
"""

from itertools import accumulate
from typing import NamedTuple

import numpy as np

from ..feedline.cable import CableLink, CableModel
from ..feedline.feedline import Feedline
from ..feedline.joint import JointLink
from ..feedline.link import Link
from ..feedline.part import PartLink
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import TwoPort, joint_section, scattering
from .arrays import ComplexArray, IndexArray, RealArray
from .line_waves import Lumped, Scattering
from .prior import (
    ANTENNA_CELLS,
    LinePrior,
    SweepSettings,
    end_deviations,
    is_vague,
    known_reflection,
    line_prior,
    load_basis,
)

__all__ = [
    "CABLE_PARAMETERS",
    "CablePart",
    "EndPart",
    "FixedPart",
    "JointPart",
    "LumpedBasis",
    "SweptLine",
    "swept_line",
]

LEAST_PART_REFLECTION = 0.02  # a part between matched ends is never known better
MOST_WANDERS, FEW_WANDERS = 130, 3
"""Waves of impedance along the cables, each of half a period more along one of them: all that the sweep's wavelengths
meet in as many cables as there are waves for, the shortest first, and a few in the others."""
WANDER_RADIANS_PER_M = 2.5
"""Of a wave of impedance along a cable, from which on shorter ones are smaller; never the longest few. Chosen on
training lines: smaller finds more kinks, larger accuses fewer sound cables."""
CABLE_PARAMETERS = 5
MANY_PARTS = 13
"""Parts, the end among them, beyond which fewer points are fitted."""
INDEPENDENT, EXTRA_CELLS = 1.5, 10
"""Independent points for each cell of distance that a sweep resolves, and cells beside those within the cables."""


class LumpedBasis(NamedTuple):
    """The parameters of all that is lumped: where each is among all parameters, and the index of its part."""

    parameters: IndexArray
    parts: IndexArray
    deviations: RealArray
    """(3, parameters), as those of a part."""


class CablePart(NamedTuple):
    """A cable: attenuation and phase of each metre by frequency, and its characteristic impedance [Ω]."""

    link: Link
    model: CableModel
    conductor: RealArray
    dielectric: RealArray
    beta: RealArray
    impedance: ComplexArray
    other_loss: RealArray
    """Loss in proportion to frequency, as large as all of it at the upper edge [Np/m]."""
    wander: RealArray
    """Usual size of each of so many waves of its impedance, (waves,)."""

    @property
    def length_m(self) -> float:
        """As described."""
        return self.model.length_m

    @property
    def wanders(self) -> int:
        """How many waves of its impedance are followed."""
        return self.wander.size


class JointPart(NamedTuple):
    """A joint: half of its typical section, its delay [s], and by what it may be off: longer, of another impedance."""

    link: Link
    section: Scattering
    """Each half of it, before and behind what is lumped: contacts meet, and fail, in its middle."""
    delay_s: float
    deviations: RealArray
    """What one deviation of each parameter adds in series [H], across [F] and in series [Ω]: (3, parameters)."""


class EndPart(NamedTuple):
    """What is lumped at the load, as at a joint; its section is nothing."""

    section: Scattering
    deviations: RealArray


class FixedPart(NamedTuple):
    """A part as it is described, and what is lumped before it as at a joint: nothing where it was measured."""

    link: Link
    section: Scattering
    deviations: RealArray


Part = CablePart | JointPart | EndPart | FixedPart


class SweptLine(NamedTuple):
    """A line's parts from the analyser on, and the load, over frequencies [Hz]."""

    frequency_hz: RealArray
    impedance_ohm: float
    parts: list[Part]
    load: ComplexArray
    load_basis: ComplexArray
    """(terms, frequencies): what one deviation of each of the load's parameters adds to its reflection."""
    analyser_basis: tuple[ComplexArray, ComplexArray, ComplexArray]
    """The same of directivity, source match and tracking."""
    is_end_vague: bool
    """Nothing is known of the load but that its reflection is smooth: a fault beside it is told from it by nothing."""
    prior: LinePrior
    offsets: list[int]
    """Where each part's parameters start among all of them, and where the load's do."""
    lumped_basis: LumpedBasis

    @property
    def parameter_count(self) -> int:
        """How many parameters there are without a fault's."""
        return self.offsets[-1] + len(self.load_basis)

    @property
    def cables(self) -> dict[int, CablePart]:
        """The cables by their index among the parts."""
        return {at: part for at, part in enumerate(self.parts) if isinstance(part, CablePart)}

    def cable(self, at: int) -> CablePart:
        """The cable of that index among the parts."""
        part = self.parts[at]
        if not isinstance(part, CablePart):
            raise TypeError(f"part {at} of a line is no cable")
        return part

    def waves(self, at: int) -> slice:
        """Where the waves of impedance along a cable are among the parameters."""
        return slice(self.offsets[at] + CABLE_PARAMETERS, self.offsets[at + 1])

    def waves_met(self, at: int) -> slice:
        """Where those of them are that the wavelengths of these frequencies meet."""
        first = self.waves(at).start
        return slice(first, first + self.cable(at).wanders)

    def free(self, count: int) -> IndexArray:
        """Those of so many parameters, those of faults among them, that change something at these frequencies."""
        free = np.ones(count, dtype=bool)
        for at in self.cables:
            free[self.waves_met(at).stop : self.waves(at).stop] = False
        return np.flatnonzero(free)

    @property
    def joints(self) -> dict[int, JointPart]:
        """The joints by their index among the parts."""
        return {at: part for at, part in enumerate(self.parts) if isinstance(part, JointPart)}

    @property
    def end_element(self) -> int | None:
        """The element of the joint at the end; None where something else is there."""
        last = self.parts[-2]  # the end is a part of its own
        return last.link.element if isinstance(last, JointPart) else None

    @property
    def length_m(self) -> float:
        """All cables together, as described [m]."""
        return self.begin_m(len(self.parts))

    @property
    def numbers(self) -> float:
        """How many independent real numbers the sweep holds.

        Neighbouring frequencies say the same of a line that is short, however many there are. What an antenna stores
        comes back later than any echo of the line, and counts with the parameters that stand for it.
        """
        frequency = self.frequency_hz
        turns = sum(float(cable.beta[-1] * cable.length_m) for cable in self.cables.values()) / np.pi
        cells = turns * (1 - frequency[0] / frequency[-1]) + (ANTENNA_CELLS if self.is_end_vague else 0.0)
        return 2 * min(float(frequency.size), INDEPENDENT * (cells + EXTRA_CELLS))

    def points_of(self, most: int) -> int:
        """How many points are fitted where it is so many for a line of few parts: of many, each point takes longer."""
        return most * MANY_PARTS // max(len(self.parts), MANY_PARTS)

    def begin_m(self, at: int) -> float:
        """Where a part begins along the cables as described [m]."""
        return float(sum(part.length_m for part in self.parts[:at] if isinstance(part, CablePart)))

    def link(self, at: int) -> Link:
        """The link that a part was made of."""
        part = self.parts[at]
        if isinstance(part, EndPart):
            raise ValueError("the end of a line is none of its links")
        return part.link

    def at(self, points: IndexArray) -> "SweptLine":
        """The same line at some of the frequencies."""
        directivity, match, tracking = (basis[:, points] for basis in self.analyser_basis)
        return self._replace(
            frequency_hz=self.frequency_hz[points],
            parts=[_at_points(part, points) for part in self.parts],
            load=self.load[points],
            load_basis=self.load_basis[:, points],
            analyser_basis=(directivity, match, tracking),
        )

    def propagation(self, x: RealArray, at: int) -> ComplexArray:
        """The propagation constant of a cable with some parameters, by metre of its described length."""
        cable, own, prior = self.cable(at), x[self.offsets[at] :], self.prior
        loss = cable.conductor * (1 + own[2] * prior.conductor_loss) + cable.dielectric
        loss = np.maximum(loss + cable.other_loss * own[3] * prior.other_loss, 0.0)
        phase = cable.beta * (1 + own[0] * prior.length) + cable.conductor * own[1] * prior.skin_phase
        return loss + 1j * phase

    def cable_impedance(self, x: RealArray, at: int) -> ComplexArray:
        """The characteristic impedance of a cable with some parameters [Ω]."""
        return self.cable(at).impedance * (1 + x[self.offsets[at] + 4] * self.prior.impedance)

    def load_reflection(self, x: RealArray) -> ComplexArray:
        """The reflection of the load with some parameters."""
        return self.load + x[self.offsets[-1] : self.parameter_count] @ self.load_basis

    def lumped(self, x: RealArray) -> Lumped:
        """What the parameters of each part put in series and across, (parts, frequencies); nothing at a cable."""
        at, omega = self.lumped_basis, 2j * np.pi * self.frequency_hz
        henry, farad, ohm = (
            np.bincount(at.parts, own, len(self.parts))[:, None] for own in at.deviations * x[at.parameters]
        )
        return Lumped(ohm + omega * henry, omega * farad)


def swept_line(feedline: Feedline, frequency: RealArray, settings: SweepSettings) -> SweptLine:
    """A feedline with free parameters at the frequencies of a sweep [Hz]."""
    z_0, prior = feedline.station.impedance_ohm, line_prior(settings)
    zero = np.zeros(frequency.size, dtype=np.complex128)
    parts = [_part(link, frequency, z_0, prior) for link in feedline.links]
    parts.append(EndPart(Scattering(zero, np.ones_like(zero), zero), np.diag(end_deviations(settings.load))))
    parts = _followed(parts)
    analyser = prior.analyser_basis(frequency)
    load = known_reflection(feedline.load.likely(frequency)[0], settings.load)
    offsets = _offsets(sum(map(len, analyser)) + 1, parts)
    return SweptLine(
        frequency_hz=frequency,
        impedance_ohm=z_0,
        parts=parts,
        load=load,
        load_basis=load_basis(frequency, settings.load),
        analyser_basis=analyser,
        is_end_vague=is_vague(settings.load),
        prior=prior,
        offsets=offsets,
        lumped_basis=_lumped_basis(parts, offsets),
    )


def _followed(parts: list[Part]) -> list[Part]:
    """The parts with no more waves of impedance along the cables than are followed, the shortest cables first."""
    cables = {at: part for at, part in enumerate(parts) if isinstance(part, CablePart)}
    followed, left = list(parts), MOST_WANDERS
    for at, cable in sorted(cables.items(), key=lambda one: (one[1].wanders, one[0])):
        wanders = cable.wanders if cable.wanders <= left else min(cable.wanders, FEW_WANDERS)
        followed[at], left = cable._replace(wander=cable.wander[:wanders]), left - wanders
    return followed


def _offsets(first: int, parts: list[Part]) -> list[int]:
    """Where each part's parameters start behind so many of the analyser, and where the load's do."""
    return list(accumulate(map(_parameters_of, parts), initial=first))


def _lumped_basis(parts: list[Part], offsets: list[int]) -> LumpedBasis:
    lumped = {at: part.deviations for at, part in enumerate(parts) if not isinstance(part, CablePart)}
    counts = {at: own.shape[1] for at, own in lumped.items()}
    return LumpedBasis(
        np.concatenate([offsets[at] + np.arange(count) for at, count in counts.items()]),
        np.repeat(list(counts), list(counts.values())),
        np.hstack(list(lumped.values())),
    )


def _at_points(part: Part, points: IndexArray) -> Part:
    if isinstance(part, CablePart):
        return part._replace(
            conductor=part.conductor[points],
            dielectric=part.dielectric[points],
            beta=part.beta[points],
            impedance=part.impedance[points],
            other_loss=part.other_loss[points],
            wander=part.wander[: _waves_met(part.model, part.beta[points])],
        )
    return part._replace(section=part.section.at(points))


def _parameters_of(part: Part) -> int:
    if isinstance(part, CablePart):
        return CABLE_PARAMETERS + part.wanders
    return part.deviations.shape[1]


def _part(link: Link, frequency: RealArray, z_0: float, prior: LinePrior) -> Part:
    if isinstance(link, CableLink):
        model = link.models[GENEROUS]
        conductor, dielectric, beta = model.constants(frequency)
        other = (conductor[-1] + dielectric[-1]) * frequency / frequency[-1]
        impedance = model.impedance(conductor, dielectric, beta) + 0j * frequency
        return CablePart(link, model, conductor, dielectric, beta, impedance, other, _wander(model, beta, prior))
    if isinstance(link, JointLink):
        typical, worst = (link.models[end].section(frequency) for end in (GENEROUS, CAUTIOUS))
        seconds = float(np.mean(typical.angle.imag / (2 * np.pi * frequency)))
        spread = float(np.mean(np.abs(np.log(np.abs(worst.impedance / typical.impedance)))))
        longer, other = prior.joint_delay * seconds, np.hypot(prior.joint, prior.joint_share * spread) * seconds
        return JointPart(
            link,
            _scattering(joint_section(typical.impedance, typical.angle / 2, typical.contact_ohm / 2), z_0, frequency),
            seconds,
            np.array(
                [[longer * z_0, other * z_0, 0.0], [longer / z_0, -other / z_0, 0.0], [0.0, 0.0, prior.contact_ohm]]
            ),
        )
    section = _scattering(link.models[GENEROUS].two_port(frequency), z_0, frequency)
    if not isinstance(link, PartLink):
        return FixedPart(link, section, np.zeros((3, 0)))
    reflection = 2 * max(abs(link.models[GENEROUS].reflection), LEAST_PART_REFLECTION)
    # reactances as large as the part's own reflection at the upper edge
    seconds = reflection / (2 * np.pi * frequency[-1])
    return FixedPart(link, section, np.array([[seconds * z_0, 0.0], [0.0, seconds / z_0], [0.0, 0.0]]))


def _wander(model: CableModel, beta: RealArray, prior: LinePrior) -> RealArray:
    """Usual size of each wave of impedance along a cable that a sweep meets, (waves,): shorter ones are smaller."""
    number = np.arange(1, _waves_met(model, beta) + 1)
    many = max(WANDER_RADIANS_PER_M * model.length_m / np.pi, FEW_WANDERS)
    sizes: RealArray = prior.wander / np.sqrt(max(model.length_m, 1.0)) / (1 + number / many)
    return sizes


def _waves_met(model: CableModel, beta: RealArray) -> int:
    """How many waves along a cable are as long as half of the shortest wavelength, or longer."""
    return int(np.ceil(2 * beta[-1] * model.length_m / np.pi)) + 1


def _scattering(matrix: TwoPort, z_0: float, frequency: RealArray) -> Scattering:
    s11, _, s21, s22 = scattering(matrix, z_0)
    near, through, far = (np.asarray(one + 0j * frequency, dtype=np.complex128) for one in (s11, s21, s22))
    return Scattering(near, through, far)
