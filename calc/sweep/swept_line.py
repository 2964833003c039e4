"""A line as an analyser sees it, with all that is not known of its good parts and of the analyser.

Every parameter is counted in standard deviations of what is usual, so that its prior is the standard normal
distribution: 0 is the part as described and 1 a common deviation. In order:

- the analyser: directivity, source match and reflection tracking that its calibration left over, each a smooth
  complex curve over frequency, and how far its reference plane is off;
- a cable: its electrical length, the share of phase that its conductors' inside adds, its loss by conductors and
  by all else, its impedance, and how that wanders along it;
- a joint: a small inductance in series, a small capacitance across, a resistance in series;
- a part: both of these, as large as its own reflection;
- the load: its reflection, as a smooth complex curve over frequency.
"""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from ..feedline.cable import CableLink, CableModel
from ..feedline.feedline import Feedline
from ..feedline.joint import JointLink
from ..feedline.link import Link
from ..feedline.part import PartLink
from ..formulas.constants import C_0
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import joint_section, scattering
from .arrays import ComplexArray, IndexArray, RealArray
from .faults import PlacedFault, Stretch
from .line_waves import LineWaves, Scattering, line_scattering, lumped_scattering
from .prior import LinePrior, SweepSettings, end_deviations, known_reflection, line_prior, load_basis

__all__ = ["CablePart", "JointPart", "Piece", "Prediction", "SweptLine", "swept_line"]

LEAST_PART_REFLECTION = 0.02  # a part between matched ends is never known better
MOST_WANDERS, FEW_WANDERS = 12, 3
"""Waves of impedance along a cable, of half a period more each: all that the sweep's wavelengths meet, or a few."""
CABLE_PARAMETERS = 5
JOINT_PARAMETERS = 3
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
    wanders: int
    wander: float
    """Usual size of each of so many waves of its impedance."""

    @property
    def length_m(self) -> float:
        """As described."""
        return self.model.length_m


class JointPart(NamedTuple):
    """A joint: its typical section, and the usual deviations of its inductance [H], capacitance [F], resistance [Ω]."""

    link: Link
    section: Scattering
    delay_s: float
    deviations: tuple[float, float, float]


class EndPart(NamedTuple):
    """What is lumped at the load: usual deviations as a joint's; its section is nothing."""

    section: Scattering
    deviations: tuple[float, float, float]


class FixedPart(NamedTuple):
    """A part as it is described; the parameters are impedances at the upper edge as shares of the line's."""

    link: Link
    section: Scattering
    deviation: float
    """0 for one that was measured."""


Part = CablePart | JointPart | EndPart | FixedPart
LUMPED = (JointPart, EndPart)


class Prediction(NamedTuple):
    """What the analyser shows, (frequencies,), its derivatives, (parameters, frequencies), and the waves behind."""

    shown: ComplexArray
    slopes: ComplexArray
    waves: LineWaves
    pieces: list["Piece"]
    by_reflection: ComplexArray
    """Derivative of what is shown by the line's own reflection."""

    def back(self) -> list[ComplexArray]:
        """At every plane, the reflection of what lies back towards a matched analyser."""
        found = [np.zeros_like(self.shown)]
        for piece in self.pieces:
            found.append(piece.scattering.back(found[-1]))
        return found


class Piece(NamedTuple):
    """A two-port of the chain: which part it belongs to, and of a cable from where to where [m]."""

    scattering: Scattering
    part: int
    begin_m: float
    end_m: float
    fault: int | None = None
    """It is this fault."""
    before: int | None = None
    """It ends where this fault begins."""
    behind: int | None = None
    """It begins where this fault ends."""
    lumped: bool = False
    """What is lumped at a joint or part."""


class SweptLine(NamedTuple):
    """A line's parts from the analyser on, and the load, over frequencies [Hz]."""

    frequency_hz: RealArray
    impedance_ohm: float
    parts: "list[Part]"
    load: ComplexArray
    load_basis: ComplexArray
    """(terms, frequencies): what one deviation of each of the load's parameters adds to its reflection."""
    analyser_basis: tuple[ComplexArray, ComplexArray, ComplexArray]
    """The same of directivity, source match and tracking."""
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

    def at(self, points: IndexArray) -> "SweptLine":
        """The same line at some of the frequencies."""

        def some(part: Part) -> Part:
            if isinstance(part, CablePart):
                return part._replace(
                    conductor=part.conductor[points],
                    dielectric=part.dielectric[points],
                    beta=part.beta[points],
                    impedance=part.impedance[points],
                    other_loss=part.other_loss[points],
                )
            return part._replace(section=Scattering(*(own[points] for own in part.section)))

        return self._replace(
            frequency_hz=self.frequency_hz[points],
            parts=[some(part) for part in self.parts],
            load=self.load[points],
            load_basis=self.load_basis[:, points],
            analyser_basis=tuple(basis[:, points] for basis in self.analyser_basis),
        )

    def propagation(self, x: RealArray, at: int) -> ComplexArray:
        """The propagation constant of a cable with some parameters, by metre of its described length."""
        cable, own, prior = self.parts[at], x[self.offsets[at] :], self.prior
        loss = cable.conductor * (1 + own[2] * prior.conductor_loss) + cable.dielectric
        loss = np.maximum(loss + cable.other_loss * own[3] * prior.other_loss, 0.0)
        phase = cable.beta * (1 + own[0] * prior.length) + cable.conductor * own[1] * prior.skin_phase
        return loss + 1j * phase

    def cable_impedance(self, x: RealArray, at: int) -> ComplexArray:
        """The characteristic impedance of a cable with some parameters [Ω]."""
        return self.parts[at].impedance * (1 + x[self.offsets[at] + 4] * self.prior.impedance)

    def predicted(self, x: RealArray, faults: Sequence[PlacedFault] = ()) -> Prediction:
        """What is shown with some parameters, (parameters,), those of the faults behind the line's own."""
        fault_offsets = self._fault_offsets(faults)
        pieces = self._pieces(x, faults, fault_offsets)
        waves = LineWaves.of([piece.scattering for piece in pieces], self._load_reflection(x))
        slopes = np.zeros((x.size, self.frequency_hz.size), dtype=np.complex128)
        own, wander = waves.ahead[0], np.zeros_like(self.load)
        for plane, piece in enumerate(pieces):
            part = self.parts[piece.part]
            if isinstance(part, CablePart):
                wander = wander + self._cable_slopes(slopes, x, waves, plane, piece, faults, fault_offsets)
            elif isinstance(part, LUMPED) and piece.lumped:
                self._joint_slopes(slopes, x, waves, plane, piece.part, faults, fault_offsets)
            elif isinstance(part, FixedPart) and piece.lumped:
                self._part_slopes(slopes, waves, plane, piece.part)
        own = own + wander
        load_slopes = waves.forward[-1] ** 2
        slopes[self.offsets[-1] : self.parameter_count] = load_slopes * self.load_basis
        shown, by_reflection = self._seen(x, own, slopes)
        return Prediction(shown, slopes, waves, pieces, by_reflection)

    def _fault_offsets(self, faults: Sequence[PlacedFault]) -> list[int]:
        offsets = [self.parameter_count]
        for fault in faults:
            offsets.append(offsets[-1] + fault.parameter_count)
        return offsets

    def _load_reflection(self, x: RealArray) -> ComplexArray:
        return self.load + x[self.offsets[-1] : self.parameter_count] @ self.load_basis

    def _pieces(self, x: RealArray, faults: Sequence[PlacedFault], offsets: list[int]) -> list[Piece]:
        """The chain: each joint its section and what is lumped, each cable cut where a fault is."""
        z_0, pieces = self.impedance_ohm, []
        for at, part in enumerate(self.parts):
            if isinstance(part, CablePart):
                pieces += self._cable_pieces(x, at, faults, offsets)
                continue
            series, shunt = self._lumped(x, at, faults, offsets)
            lumped = Piece(lumped_scattering(series, shunt, z_0), at, 0.0, 0.0, lumped=True)
            section = Piece(part.section, at, 0.0, 0.0)
            pieces += [section, lumped] if isinstance(part, LUMPED) else [lumped, section]
            for number, fault in enumerate(faults):
                if fault.part == at and fault.kind.stretch is not None:
                    stretch = fault.kind.stretch(x[offsets[number] :])
                    pieces.append(Piece(self._inserted(stretch), at, 0.0, 0.0))
        return pieces

    def _inserted(self, stretch: Stretch) -> Scattering:
        """A section of another impedance put in at a joint, of an electrical length."""
        angle = 2j * np.pi * self.frequency_hz * stretch.length_m / C_0
        return line_scattering(self.impedance_ohm * stretch.ratio + 0 * angle, angle, self.impedance_ohm)

    def _lumped(
        self, x: RealArray, at: int, faults: Sequence[PlacedFault], offsets: list[int]
    ) -> tuple[ComplexArray, ComplexArray]:
        """Impedance in series and admittance across at a joint or part, its deviations and its faults together."""
        part, own, omega = self.parts[at], x[self.offsets[at] :], 2 * np.pi * self.frequency_hz
        if isinstance(part, LUMPED):
            henry, farad, ohm = part.deviations
            series = own[2] * ohm + 1j * omega * own[0] * henry
            shunt = 1j * omega * own[1] * farad
        elif part.deviation:
            share = part.deviation * self.frequency_hz / self.frequency_hz[-1]
            series, shunt = 1j * own[0] * share * self.impedance_ohm, 1j * own[1] * share / self.impedance_ohm
        else:
            series = shunt = np.zeros_like(omega) + 0j
        for number, fault in enumerate(faults):
            if fault.part == at and fault.kind.lumped is not None:
                more = fault.kind.lumped(x[offsets[number] :], omega)
                series, shunt = series + more.series, shunt + more.shunt
        return series, shunt

    def _cable_pieces(self, x: RealArray, at: int, faults: Sequence[PlacedFault], offsets: list[int]) -> list[Piece]:
        cable = self.parts[at]
        gamma, impedance = self.propagation(x, at), self.cable_impedance(x, at)
        z_0, omega = self.impedance_ohm, 2 * np.pi * self.frequency_hz
        begin, pieces, behind = 0.0, [], None

        def run(until: float, before: int | None) -> Piece:
            through = line_scattering(impedance, gamma * (until - begin), z_0)
            return Piece(through, at, begin, until, before=before, behind=behind)

        placed = sorted((fault.place_m(x[offsets[n] :]), n) for n, fault in enumerate(faults) if fault.part == at)
        for place, number in placed:
            kind, own = faults[number].kind, x[offsets[number] :]
            place = min(max(place, begin), cable.length_m)
            pieces.append(run(place, number))
            begin, behind = place, number
            if kind.lumped is not None:
                more = kind.lumped(own, omega)
                altered = lumped_scattering(more.series, more.shunt, z_0)
            else:
                stretch = kind.stretch(own)
                begin = min(place + stretch.length_m, cable.length_m)
                altered = line_scattering(
                    impedance * stretch.ratio, lossier(gamma, stretch) * (begin - place), z_0
                )
            pieces.append(Piece(altered, at, place, begin, fault=number))
        pieces.append(run(cable.length_m, None))
        return pieces

    def _cable_slopes(
        self,
        slopes: ComplexArray,
        x: RealArray,
        waves: LineWaves,
        plane: int,
        piece: Piece,
        faults: Sequence[PlacedFault],
        fault_offsets: list[int],
    ) -> ComplexArray:
        """Add a piece's share to the derivatives by its cable's parameters; what its wander adds is returned."""
        at, first, prior = piece.part, self.offsets[piece.part], self.prior
        cable, z_0 = self.parts[at], self.impedance_ohm
        if piece.fault is not None:
            self._fault_slopes(slopes, x, waves, plane, piece, faults, fault_offsets)
            if faults[piece.fault].kind.lumped is not None:
                return np.zeros_like(self.load)
        gamma, impedance = self.propagation(x, at), self.cable_impedance(x, at)
        if piece.fault is not None:
            stretch = faults[piece.fault].kind.stretch(x[fault_offsets[piece.fault] :])
            gamma, impedance = lossier(gamma, stretch), impedance * stretch.ratio
        length = piece.end_m - piece.begin_m
        v, i = waves.voltage(plane), waves.current(plane) * impedance / z_0
        onward, returning = (v + i) / 2, (v - i) / 2
        v, i = waves.voltage(plane + 1), waves.current(plane + 1) * impedance / z_0
        onward_end, returning_end = (v + i) / 2, (v - i) / 2
        scale = z_0 / impedance
        by_angle = -2 * onward * returning * scale * length
        slopes[first] += by_angle * 1j * cable.beta * prior.length
        slopes[first + 1] += by_angle * 1j * cable.conductor * prior.skin_phase
        slopes[first + 2] += by_angle * cable.conductor * prior.conductor_loss
        slopes[first + 3] += by_angle * cable.other_loss * prior.other_loss
        change = (onward**2 - onward_end**2) + (returning_end**2 - returning**2)
        slopes[first + 4] += scale / 2 * change * prior.impedance / (1 + x[first + 4] * prior.impedance)
        added = np.zeros_like(self.load)
        twice, onward_squared, returning_squared = np.exp(-2 * gamma * length), onward**2, returning_end**2
        for wave in range(cable.wanders):
            turn = np.pi * (wave + 1) / cable.length_m
            along = 0
            for k in (1j * turn, -1j * turn):
                turned = np.exp(k * length)
                along = along + (np.exp(k * piece.begin_m) / 2) * onward_squared * (1 - twice * turned) / (2 * gamma - k)
                along = along + (np.exp(k * piece.end_m) / 2) * returning_squared * (1 - twice / turned) / (2 * gamma + k)
            row = scale * gamma * along * cable.wander
            slopes[first + 5 + wave] += row
            added = added + x[first + 5 + wave] * row
        # a fault's place moves the ends of the pieces beside it
        for number, sign in ((piece.before, 1), (piece.behind, -1)):
            if number is not None:
                row = fault_offsets[number] + faults[number].size_count
                slopes[row] += -2 * sign * onward * returning * scale * gamma * faults[number].place_deviation_m
        return added

    def _fault_slopes(
        self,
        slopes: ComplexArray,
        x: RealArray,
        waves: LineWaves,
        plane: int,
        piece: Piece,
        faults: Sequence[PlacedFault],
        fault_offsets: list[int],
    ) -> None:
        """Derivatives by the sizes of a fault inside a cable."""
        fault, first = faults[piece.fault], fault_offsets[piece.fault]
        own, step = x[first:], 1e-5
        for size in range(fault.size_count):
            moved = own.copy()
            moved[size] += step
            if fault.kind.lumped is not None:
                more = fault.kind.lumped(moved, 2 * np.pi * self.frequency_hz)
                ahead = lumped_scattering(more.series, more.shunt, self.impedance_ohm).ahead(waves.ahead[plane + 1])
            else:
                stretch = fault.kind.stretch(moved)
                gamma, impedance = self.propagation(x, piece.part), self.cable_impedance(x, piece.part)
                length = stretch.length_m
                # what the stretch gains in length the cable behind it loses
                grown = length - (piece.end_m - piece.begin_m)
                behind = line_scattering(impedance, -gamma * grown, self.impedance_ohm).ahead(waves.ahead[plane + 1])
                ahead = line_scattering(
                    impedance * stretch.ratio, lossier(gamma, stretch) * length, self.impedance_ohm
                ).ahead(behind)
            slopes[first + size] += waves.forward[plane] ** 2 * (ahead - waves.ahead[plane]) / step

    def _joint_slopes(
        self,
        slopes: ComplexArray,
        x: RealArray,
        waves: LineWaves,
        plane: int,
        at: int,
        faults: Sequence[PlacedFault],
        fault_offsets: list[int],
    ) -> None:
        omega, z_0, first = 2 * np.pi * self.frequency_hz, self.impedance_ohm, self.offsets[at]
        henry, farad, ohm = self.parts[at].deviations
        by_series = waves.current(plane) ** 2 / (2 * z_0)
        by_shunt = -(waves.voltage(plane + 1) ** 2) * z_0 / 2
        slopes[first] += by_series * 1j * omega * henry
        slopes[first + 1] += by_shunt * 1j * omega * farad
        slopes[first + 2] += by_series * ohm
        step = 1e-5
        for number, fault in enumerate(faults):
            if fault.part != at:
                continue
            start = fault_offsets[number]
            own = x[start:]
            for size in range(fault.size_count):
                moved = own.copy()
                moved[size] += step
                if fault.kind.lumped is not None:
                    more, less = (fault.kind.lumped(one, omega) for one in (moved, own))
                    change = by_series * (more.series - less.series) + by_shunt * (more.shunt - less.shunt)
                    slopes[start + size] += change / step
                else:
                    ahead = self._inserted(fault.kind.stretch(moved)).ahead(waves.ahead[plane + 2])
                    slopes[start + size] += waves.forward[plane + 1] ** 2 * (ahead - waves.ahead[plane + 1]) / step

    def _part_slopes(self, slopes: ComplexArray, waves: LineWaves, plane: int, at: int) -> None:
        part, first = self.parts[at], self.offsets[at]
        if part.deviation:
            share = 1j * part.deviation * self.frequency_hz / self.frequency_hz[-1]
            slopes[first] += waves.current(plane) ** 2 / 2 * share
            slopes[first + 1] += -(waves.voltage(plane + 1) ** 2) / 2 * share

    def _seen(self, x: RealArray, own: ComplexArray, slopes: ComplexArray) -> tuple[ComplexArray, ComplexArray]:
        """What the analyser makes of a reflection; derivatives by the line's parameters become those of that."""
        directivity, match, tracking = self.analyser_basis
        ends = np.cumsum([0, len(directivity), len(match), len(tracking)])
        d, s, t = (x[low:high] @ basis for low, high, basis in zip(ends, ends[1:], self.analyser_basis, strict=False))
        plane = int(ends[3])
        turn = 2j * np.pi * self.frequency_hz * 2 * self.prior.plane_m / C_0
        once = (1 + t) * np.exp(-turn * x[plane])
        below = 1 - s * own
        reflected = once * own / below
        by_reflection = once / below**2
        slopes[plane + 1 :] *= by_reflection
        slopes[: ends[1]] = directivity
        slopes[ends[1] : ends[2]] = match * (reflected * own / below)
        slopes[ends[2] : ends[3]] = tracking * (reflected / (1 + t))
        slopes[plane] = -turn * reflected
        return d + reflected, by_reflection


def lossier(gamma: ComplexArray, stretch: Stretch) -> ComplexArray:
    """The propagation constant within an altered stretch."""
    return gamma + gamma.imag * stretch.tangent / 2


def swept_line(feedline: Feedline, frequency: RealArray, settings: SweepSettings) -> SweptLine:
    """A feedline with free parameters at the frequencies of a sweep [Hz]."""
    z_0, prior, zero = feedline.station.impedance_ohm, line_prior(settings), np.zeros_like(frequency) + 0j
    parts = [_part(link, frequency, z_0, prior) for link in feedline.links]
    parts.append(EndPart(Scattering(zero, zero + 1, zero), end_deviations(settings.load)))
    analyser = prior.analyser_basis(frequency)
    offsets = [sum(map(len, analyser)) + 1]
    for part in parts:
        offsets.append(offsets[-1] + _parameters_of(part))
    load = known_reflection(feedline.load(frequency), settings.load)
    return SweptLine(
        frequency, z_0, parts, load, load_basis(frequency, settings.load), analyser, prior, offsets
    )


def _parameters_of(part: Part) -> int:
    if isinstance(part, CablePart):
        return CABLE_PARAMETERS + part.wanders
    if isinstance(part, LUMPED):
        return JOINT_PARAMETERS
    return PART_PARAMETERS if part.deviation else 0


def _part(link: Link, frequency: RealArray, z_0: float, prior: LinePrior) -> Part:
    if isinstance(link, CableLink):
        model = link.models[GENEROUS]
        conductor, dielectric, beta = model.constants(frequency)
        other = (conductor[-1] + dielectric[-1]) * frequency / frequency[-1]
        impedance = model.impedance(conductor, dielectric, beta) + 0j * frequency
        met = int(np.ceil(2 * beta[-1] * model.length_m / np.pi)) + 1
        wanders = met if met <= MOST_WANDERS else FEW_WANDERS
        wander = prior.wander / np.sqrt(max(model.length_m, 1.0))
        return CablePart(link, model, conductor, dielectric, beta, impedance, other, wanders, wander)
    if isinstance(link, JointLink):
        typical, worst = (link.models[end].section(frequency) for end in (GENEROUS, CAUTIOUS))
        seconds = float(np.mean(typical.angle.imag / (2 * np.pi * frequency)))
        spread = float(np.mean(np.abs(np.log(np.abs(worst.impedance / typical.impedance)))))
        share = np.hypot(prior.joint_least, prior.joint_share * spread)
        return JointPart(
            link,
            _scattering(joint_section(*typical), z_0),
            seconds,
            (share * seconds * z_0, share * seconds / z_0, prior.contact_ohm),
        )
    model = link.models[GENEROUS]
    matrix = model.two_port(frequency)
    reflection = max(abs(model.reflection), LEAST_PART_REFLECTION) if isinstance(link, PartLink) else 0.0
    return FixedPart(link, _scattering(matrix, z_0, frequency.shape), 2 * reflection)


def _scattering(matrix: "object", z_0: float, shape: tuple[int, ...] | None = None) -> Scattering:
    s11, _, s21, s22 = scattering(matrix, z_0)
    if shape is not None:
        s11, s21, s22 = (np.broadcast_to(one, shape) for one in (s11, s21, s22))
    return Scattering(s11, s21, s22)
