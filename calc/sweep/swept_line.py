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

from typing import NamedTuple

import numpy as np

from ..feedline.cable import CableLink, CableModel
from ..feedline.feedline import Feedline
from ..feedline.joint import JointLink
from ..feedline.link import Link
from ..feedline.part import PartLink
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import TwoPort, scattering
from .arrays import ComplexArray, IndexArray, RealArray
from .line_waves import Lumped, Scattering
from .prior import (
    ANTENNA_SPACING,
    ANTENNA_TAPS,
    LinePrior,
    SweepSettings,
    end_deviations,
    is_vague,
    known_reflection,
    line_prior,
    load_basis,
)

__all__ = ["CABLE_PARAMETERS", "CablePart", "EndPart", "FixedPart", "JointPart", "SweptLine", "swept_line"]

LEAST_PART_REFLECTION = 0.02  # a part between matched ends is never known better
MOST_WANDERS, MOST_IN_ALL = 48, 200
"""Waves of impedance along one cable, of half a period more each, and along all of them."""
WANDER_M = 1.0
"""Distance over which a cable's impedance keeps its value: shorter waves of it are smaller."""
FEW_WANDERS, MOST_FEW = 3, 12
"""Waves of an evened line, and of how many at the most it keeps all."""
CABLE_PARAMETERS = 5
INDEPENDENT, EXTRA_CELLS = 1.5, 10
"""Independent points for each cell of distance that a sweep resolves, and cells beside those within the cables."""
LUMPED_PARAMETERS = 3
PART_PARAMETERS = 2


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
    wanders: RealArray
    """Usual size of each wave of its impedance along it, of half a period more each."""

    @property
    def length_m(self) -> float:
        """As described."""
        return self.model.length_m


class JointPart(NamedTuple):
    """A joint: a typical lossy section, with its contacts behind it, and by what it may be off."""

    link: Link
    impedance: ComplexArray
    angle: ComplexArray
    contact_ohm: RealArray
    delay_s: float
    longer: float
    """One deviation of the logarithm of its length."""
    other: float
    """The same of its impedance."""
    ohm: float
    """One deviation of its contacts [Ω]."""


class EndPart(NamedTuple):
    """What is lumped at the load: one deviation in series [H], across [F] and in series [Ω]."""

    henry: float
    farad: float
    ohm: float


class FixedPart(NamedTuple):
    """A part as it is described; the parameters are impedances at the upper edge as shares of the line's."""

    link: Link
    section: Scattering
    deviation: float
    """0 for one that was measured."""


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

    @property
    def parameter_count(self) -> int:
        """How many parameters there are without a fault's."""
        return self.offsets[-1] + len(self.load_basis)

    @property
    def cables(self) -> dict[int, CablePart]:
        """The cables by their index among the parts."""
        return {at: part for at, part in enumerate(self.parts) if isinstance(part, CablePart)}

    @property
    def joints(self) -> dict[int, JointPart]:
        """The joints by their index among the parts."""
        return {at: part for at, part in enumerate(self.parts) if isinstance(part, JointPart)}

    @property
    def length_m(self) -> float:
        """All cables together, as described [m]."""
        return self.begin_m(len(self.parts))

    @property
    def numbers(self) -> float:
        """How many independent real numbers the sweep holds.

        Neighbouring frequencies say the same of a line that is short, however many there are.
        """
        frequency = self.frequency_hz
        turns = sum(float(cable.beta[-1] * cable.length_m) for cable in self.cables.values()) / np.pi
        cells = turns * (1 - frequency[0] / frequency[-1]) + (
            ANTENNA_TAPS * ANTENNA_SPACING if self.is_end_vague else 0
        )
        return 2 * min(float(frequency.size), INDEPENDENT * (cells + EXTRA_CELLS))

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

    def evened(self) -> "SweptLine":
        """The same line whose cables wander by a few long waves of impedance only; it has fewer parameters."""
        parts = [_evened(part) if isinstance(part, CablePart) else part for part in self.parts]
        return self._replace(parts=parts, offsets=_offsets(self.offsets[0], parts))

    def of_evened(self, even: "SweptLine", x: RealArray) -> RealArray:
        """Parameters of the evened line, and of faults behind them, as those of this one."""
        kept = [np.arange(self.offsets[0])]
        for own, begin, end in zip(self.offsets, even.offsets, even.offsets[1:], strict=False):
            kept.append(np.arange(own, own + end - begin))
        kept.append(np.arange(self.offsets[-1], self.offsets[-1] + x.size - even.offsets[-1]))
        found = np.zeros(x.size + self.offsets[-1] - even.offsets[-1])
        found[np.concatenate(kept)] = x
        return found

    def propagation(self, x: RealArray, at: int) -> ComplexArray:
        """The propagation constant of a cable with some parameters, by metre of its described length."""
        cable, own, prior = self.cables[at], x[self.offsets[at] :], self.prior
        loss = cable.conductor * (1 + own[2] * prior.conductor_loss) + cable.dielectric
        loss = np.maximum(loss + cable.other_loss * own[3] * prior.other_loss, 0.0)
        phase = cable.beta * (1 + own[0] * prior.length) + cable.conductor * own[1] * prior.skin_phase
        return loss + 1j * phase

    def cable_impedance(self, x: RealArray, at: int) -> ComplexArray:
        """The characteristic impedance of a cable with some parameters [Ω]."""
        return self.cables[at].impedance * (1 + x[self.offsets[at] + 4] * self.prior.impedance)

    def load_reflection(self, x: RealArray) -> ComplexArray:
        """The reflection of the load with some parameters."""
        return self.load + x[self.offsets[-1] : self.parameter_count] @ self.load_basis

    def joint_section(self, x: RealArray, at: int) -> tuple[ComplexArray, ComplexArray]:
        """Impedance [Ω] and complex angle of a joint's section with some parameters."""
        joint, own = self.joints[at], x[self.offsets[at] :]
        return joint.impedance * np.exp(own[1] * joint.other), joint.angle * np.exp(own[0] * joint.longer)

    def lumped(self, x: RealArray, at: int) -> Lumped:
        """What the parameters of a joint, a part or the end put in series and across."""
        part, own, omega = self.parts[at], x[self.offsets[at] :], 2 * np.pi * self.frequency_hz
        zero = np.zeros_like(omega) + 0j
        if isinstance(part, JointPart):
            return Lumped(part.contact_ohm + own[2] * part.ohm, zero)
        if isinstance(part, EndPart):
            return Lumped(own[2] * part.ohm + 1j * omega * own[0] * part.henry, 1j * omega * own[1] * part.farad)
        if isinstance(part, FixedPart) and part.deviation:
            share = 1j * part.deviation * self.frequency_hz / self.frequency_hz[-1]
            return Lumped(own[0] * share * self.impedance_ohm, own[1] * share / self.impedance_ohm)
        return Lumped(zero, zero)


def swept_line(feedline: Feedline, frequency: RealArray, settings: SweepSettings) -> SweptLine:
    """A feedline with free parameters at the frequencies of a sweep [Hz]."""
    z_0, prior = feedline.station.impedance_ohm, line_prior(settings)
    cables = sum(isinstance(link, CableLink) for link in feedline.links)
    most_wanders = min(MOST_WANDERS, MOST_IN_ALL // max(cables, 1))
    parts: list[Part] = [_part(link, frequency, z_0, prior, most_wanders) for link in feedline.links]
    parts.append(EndPart(*end_deviations(settings.load)))
    analyser = prior.analyser_basis(frequency)
    offsets = _offsets(sum(map(len, analyser)) + 1, parts)
    load = known_reflection(feedline.load.likely(frequency)[0], settings.load)
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
    )


def _at_points(part: Part, points: IndexArray) -> Part:
    if isinstance(part, CablePart):
        return part._replace(
            conductor=part.conductor[points],
            dielectric=part.dielectric[points],
            beta=part.beta[points],
            impedance=part.impedance[points],
            other_loss=part.other_loss[points],
        )
    if isinstance(part, JointPart):
        impedance, angle, ohm = part.impedance[points], part.angle[points], part.contact_ohm[points]
        return part._replace(impedance=impedance, angle=angle, contact_ohm=ohm)
    return part._replace(section=part.section.at(points)) if isinstance(part, FixedPart) else part


def _parameters_of(part: Part) -> int:
    if isinstance(part, CablePart):
        return CABLE_PARAMETERS + part.wanders.size
    if isinstance(part, (JointPart, EndPart)):
        return LUMPED_PARAMETERS
    return PART_PARAMETERS if part.deviation else 0


def _part(link: Link, frequency: RealArray, z_0: float, prior: LinePrior, most_wanders: int) -> Part:
    if isinstance(link, CableLink):
        model = link.models[GENEROUS]
        conductor, dielectric, beta = model.constants(frequency)
        other = (conductor[-1] + dielectric[-1]) * frequency / frequency[-1]
        impedance = model.impedance(conductor, dielectric, beta) + 0j * frequency
        wanders = _wanders(model.length_m, float(beta[-1]), prior, most_wanders)
        return CablePart(link, model, conductor, dielectric, beta, impedance, other, wanders)
    if isinstance(link, JointLink):
        typical, worst = (link.models[end].section(frequency) for end in (GENEROUS, CAUTIOUS))
        seconds = float(np.mean(typical.angle.imag / (2 * np.pi * frequency)))
        spread = float(np.mean(np.abs(np.log(np.abs(worst.impedance / typical.impedance)))))
        one = np.ones(frequency.size)
        return JointPart(
            link,
            (typical.impedance * one).astype(np.complex128),
            (typical.angle * one).astype(np.complex128),
            typical.contact_ohm * one,
            seconds,
            prior.joint_delay,
            float(np.hypot(prior.joint, prior.joint_share * spread)),
            prior.contact_ohm,
        )
    reflection = 0.0
    if isinstance(link, PartLink):
        reflection = max(abs(link.models[GENEROUS].reflection), LEAST_PART_REFLECTION)
    return FixedPart(link, _scattering(link.models[GENEROUS].two_port(frequency), z_0, frequency), 2 * reflection)


def _evened(cable: CablePart) -> CablePart:
    return cable if cable.wanders.size <= MOST_FEW else cable._replace(wanders=cable.wanders[:FEW_WANDERS])


def _offsets(first: int, parts: list[Part]) -> list[int]:
    return [first, *(first + int(count) for count in np.cumsum([_parameters_of(part) for part in parts]))]


def _wanders(length_m: float, beta: float, prior: LinePrior, most: int) -> RealArray:
    """Sizes of the waves of impedance along a cable that a sweep up to some phase [rad/m] meets, at most so many."""
    met = int(np.ceil(2 * beta * length_m / np.pi)) + 1
    turns = np.pi * np.arange(1, min(met, most) + 1) / length_m
    sizes: RealArray = prior.wander / np.sqrt(max(length_m, 1.0) * (1 + (turns * WANDER_M) ** 2))
    return sizes


def _scattering(matrix: TwoPort, z_0: float, frequency: RealArray) -> Scattering:
    s11, _, s21, s22 = scattering(matrix, z_0)
    near, through, far = (np.asarray(one + 0j * frequency, dtype=np.complex128) for one in (s11, s21, s22))
    return Scattering(near, through, far)
