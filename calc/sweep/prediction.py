"""What an analyser shows of a line with some parameters and faults, and how that moves with each of them.

The chain of two-ports is solved once. What a change anywhere does to the input reflection follows of the waves there:
an impedance in series by the square of the current, an admittance across by the square of the voltage, and of a cable
the integral of both along it. Source: microwave_textbook, perturbation of a reciprocal network.
"""

from collections.abc import Sequence
from functools import lru_cache
from typing import NamedTuple

import numpy as np

from ..formulas.constants import C_0
from .arrays import ComplexArray, IndexArray, NumberArray, RealArray
from .faults import PlacedFault, Stretch
from .line_waves import LineWaves, Lumped, Scattering, line_scattering, lumped_scattering
from .swept_line import CablePart, EndPart, FixedPart, SweptLine

__all__ = ["Piece", "Prediction", "altered_wave", "inserted", "predicted", "shown_with"]

STEP = 1e-5  # of a fault's size, for its difference quotient


class Piece(NamedTuple):
    """A two-port of the chain: which part it belongs to, and of a cable from where to where [m]."""

    scattering: Scattering
    part: int
    begin_m: float = 0.0
    end_m: float = 0.0
    fault: int | None = None
    """It is this fault."""
    before: int | None = None
    """It ends where this fault begins."""
    behind: int | None = None
    """It begins where this fault ends."""
    is_lumped: bool = False
    """It is what is lumped at a joint or part."""


class Prediction(NamedTuple):
    """What the analyser shows, (frequencies,), its derivatives, (parameters, frequencies), and the waves behind."""

    shown: ComplexArray
    slopes: ComplexArray
    waves: LineWaves
    pieces: list[Piece]
    by_reflection: ComplexArray
    """Derivative of what is shown by the line's own reflection."""

    def at(self, points: IndexArray) -> "Prediction":
        """The same at some of the frequencies."""
        pieces = [piece._replace(scattering=piece.scattering.at(points)) for piece in self.pieces]
        shown, by_reflection = self.shown[points], self.by_reflection[points]
        slopes, ahead = (np.take(rows, points, axis=1) for rows in (self.slopes, self.waves.ahead))
        waves = LineWaves([piece.scattering for piece in pieces], ahead)
        return Prediction(shown, slopes, waves, pieces, by_reflection)

    def back(self) -> list[ComplexArray]:
        """At every plane, the reflection of what lies back towards a matched analyser."""
        found = [np.zeros_like(self.shown)]
        for piece in self.pieces:
            found.append(piece.scattering.back(found[-1]))
        return found


def predicted(line: SweptLine, x: RealArray, faults: Sequence[PlacedFault] = ()) -> Prediction:
    """What is shown with some parameters, (parameters,): the line's own, then those of each fault."""
    return _Chain(line, x, faults).prediction()


def shown_with(line: SweptLine, x: RealArray, faults: Sequence[PlacedFault] = ()) -> ComplexArray:
    """What `predicted` shows, without its derivatives."""
    return _Chain(line, x, faults).shown()


def inserted(line: SweptLine, stretch: Stretch) -> Scattering:
    """A section of another impedance put in at a joint, of an electrical length."""
    angle = 2j * np.pi * line.frequency_hz * stretch.length_m / C_0
    return line_scattering(line.impedance_ohm * stretch.ratio + 0 * angle, angle, line.impedance_ohm)


def altered_wave(gamma: NumberArray, stretch: Stretch) -> ComplexArray:
    """The propagation constant within an altered stretch of cable: water slows the wave as it lowers the impedance."""
    if not stretch.tangent:
        return gamma.astype(np.complex128)
    slowed = gamma.astype(np.complex128) / stretch.ratio
    return slowed + slowed.imag * stretch.tangent / 2


@lru_cache
def _waves_at_ends(count: int, length_m: float, begin_m: float, end_m: float) -> tuple[RealArray, RealArray]:
    """Of waves of impedance along a cable, how fast each turns [rad/m], (count, 1), and what it is at a piece's ends.

    A wave is half the one turning forward and half the one turning back: of the integral of each along the piece this
    is the sum, by what stands at the piece's ends, (count, 4).
    """
    turn = np.pi * np.arange(1, count + 1, dtype=np.float64)[:, None] / length_m
    cosines, sines = (np.hstack([of(turn * begin_m), of(turn * end_m)]) for of in (np.cos, np.sin))
    return turn, np.hstack([cosines, np.hstack([-turn, turn]) * sines])


class _Seen(NamedTuple):
    """What the analyser makes of a reflection, before its directivity and with it, and the derivative by it."""

    reflected: ComplexArray
    shown: ComplexArray
    by_reflection: ComplexArray


class _Chain:
    """A line with some parameters and faults, cut into pieces and solved."""

    def __init__(self, line: SweptLine, x: RealArray, faults: Sequence[PlacedFault]) -> None:
        self._line, self._x, self._faults = line, x, faults
        self._omega, self._z_0 = 2 * np.pi * line.frequency_hz, line.impedance_ohm
        self._offsets = [line.parameter_count]
        for fault in faults:
            self._offsets.append(self._offsets[-1] + fault.parameter_count)
        self._cables = {at: (line.propagation(x, at), line.cable_impedance(x, at)) for at in line.cables}
        self._lumped = line.lumped(x)
        self._lumped_ports = lumped_scattering(self._lumped, self._z_0)
        self._pieces = [piece for at in range(len(line.parts)) for piece in self._pieces_of(at)]
        self._waves = LineWaves.of([piece.scattering for piece in self._pieces], line.load_reflection(x))

    def shown(self) -> ComplexArray:
        """What is shown."""
        own = self._waves.ahead[0]
        for plane, piece in enumerate(self._pieces):
            wanders = self._x[self._wanders(piece.part)]
            if wanders.any() and self._is_cable(piece):
                impedance = self._inside(piece)[1]
                (onward, _), (_, returning) = (self._travelling(end, impedance) for end in (plane, plane + 1))
                own = own + wanders @ self._wander_slopes(piece, onward**2, returning**2)
        return self._seen(own).shown

    def prediction(self) -> Prediction:
        """What is shown, and all that follows."""
        line, own = self._line, self._waves.ahead[0]
        self._slopes = np.zeros((self._x.size, line.frequency_hz.size), dtype=np.complex128)
        for plane, piece in enumerate(self._pieces):
            if isinstance(line.parts[piece.part], CablePart):
                own = own + self._cable_slopes(plane, piece)
        self._lumped_slopes()
        self._slopes[line.offsets[-1] : line.parameter_count] = self._waves.forward[-1] ** 2 * line.load_basis
        seen = self._seen(own)
        self._analyser_slopes(own, seen)
        return Prediction(seen.shown, self._slopes, self._waves, self._pieces, seen.by_reflection)

    def _own(self, number: int) -> RealArray:
        """The parameters of a fault."""
        return self._x[self._offsets[number] : self._offsets[number + 1]]

    def _at(self, part: int) -> list[tuple[int, PlacedFault]]:
        return [(number, fault) for number, fault in enumerate(self._faults) if fault.part == part]

    def _pieces_of(self, at: int) -> list[Piece]:
        """A cable cut where a fault is; of a joint its halves and what is lumped between them, faults among it."""
        part = self._line.parts[at]
        if isinstance(part, CablePart):
            return self._cable_pieces(at, part.length_m)
        port, sections = self._lumped_ports.row(at), []
        series, shunt = self._lumped.series[at], self._lumped.shunt[at]
        for number, fault in self._at(at):
            if fault.kind.is_stretch:
                sections.append(Piece(inserted(self._line, fault.kind.stretch(self._own(number))), at))
            else:
                more = fault.kind.lumped(self._own(number), self._omega)
                series, shunt = series + more.series, shunt + more.shunt
                port = lumped_scattering(Lumped(series, shunt), self._z_0)
        lumped, section = Piece(port, at, is_lumped=True), Piece(part.section, at)
        before = [] if isinstance(part, FixedPart) else [section]
        behind = [] if isinstance(part, EndPart) else [section]
        return [*before, lumped, *sections, *behind]

    def _cable_pieces(self, at: int, length_m: float) -> list[Piece]:
        gamma, impedance = self._cables[at]
        pieces: list[Piece] = []
        begin, behind = 0.0, None
        placed = sorted((fault.place_m(self._own(number)), number) for number, fault in self._at(at))
        for place, number in placed:
            kind, own = self._faults[number].kind, self._own(number)
            place = min(max(place, begin), length_m)
            run = line_scattering(impedance, gamma * (place - begin), self._z_0)
            pieces.append(Piece(run, at, begin, place, before=number, behind=behind))
            begin, behind = place, number
            if kind.is_stretch:
                stretch = kind.stretch(own)
                begin = min(place + stretch.length_m, length_m)
                angle = altered_wave(gamma, stretch) * (begin - place)
                altered = line_scattering(impedance * stretch.ratio, angle, self._z_0)
            else:
                altered = lumped_scattering(kind.lumped(own, self._omega), self._z_0)
            pieces.append(Piece(altered, at, place, begin, fault=number))
        run = line_scattering(impedance, gamma * (length_m - begin), self._z_0)
        return [*pieces, Piece(run, at, begin, length_m, behind=behind)]

    def _is_cable(self, piece: Piece) -> bool:
        """Whether it is a run of cable, altered or not."""
        if not isinstance(self._line.parts[piece.part], CablePart):
            return False
        return piece.fault is None or self._faults[piece.fault].kind.is_stretch

    def _wanders(self, part: int) -> slice:
        """Where the waves of a cable's impedance are among the parameters; of anything else nothing."""
        return self._line.waves_met(part) if isinstance(self._line.parts[part], CablePart) else slice(0)

    def _inside(self, piece: Piece) -> tuple[ComplexArray, ComplexArray, Stretch | None]:
        """Propagation constant and impedance of a run of cable, and the stretch that it is."""
        gamma, impedance = self._cables[piece.part]
        if piece.fault is None:
            return gamma, impedance, None
        stretch = self._faults[piece.fault].kind.stretch(self._own(piece.fault))
        return altered_wave(gamma, stretch), impedance * stretch.ratio, stretch

    def _cable_slopes(self, plane: int, piece: Piece) -> ComplexArray:
        """Add a piece's share to the derivatives by its cable's parameters; what its wander adds is returned."""
        line, slopes, first = self._line, self._slopes, self._line.offsets[piece.part]
        cable, prior = line.cable(piece.part), line.prior
        if piece.fault is not None:
            self._placed_slopes(plane, piece, piece.fault)
        if not self._is_cable(piece):
            return np.zeros_like(slopes[0])
        gamma, impedance, stretch = self._inside(piece)
        onward, returning = self._travelling(plane, impedance)
        onward_end, returning_end = self._travelling(plane + 1, impedance)
        scale = self._z_0 / impedance
        by_angle = -2 * onward * returning * scale
        by_length = by_angle * (piece.end_m - piece.begin_m)
        by_gamma: list[NumberArray] = [
            1j * cable.beta * prior.length,
            1j * cable.conductor * prior.skin_phase,
            cable.conductor * prior.conductor_loss,
            cable.other_loss * prior.other_loss,
        ]
        for own, change in enumerate(by_gamma):
            slopes[first + own] += by_length * (change if stretch is None else altered_wave(change, stretch))
        forth, back = onward**2, returning_end**2
        stepped = (forth - onward_end**2) + (back - returning**2)
        slopes[first + 4] += scale / 2 * stepped * prior.impedance / (1 + self._x[first + 4] * prior.impedance)
        # a fault's place moves the ends of the pieces beside it; a stretch up to the cable's end becomes shorter itself
        ended = piece.fault if piece.end_m == cable.length_m else None
        shortened = piece.behind if piece.begin_m < piece.end_m else None
        for number, sign in ((piece.before, 1), (ended, -1), (shortened, -1)):
            if number is not None:
                fault = self._faults[number]
                slopes[self._offsets[number] + fault.size_count] += by_angle * gamma * sign * fault.place_deviation_m
        rows, wanders = self._wander_slopes(piece, forth, back), self._wanders(piece.part)
        slopes[wanders] += rows
        added: ComplexArray = self._x[wanders] @ rows
        return added

    def _wander_slopes(self, piece: Piece, forth: ComplexArray, back: ComplexArray) -> ComplexArray:
        """A piece's share of the derivatives by the waves of its cable's impedance.

        By the squares of the forward wave at its beginning and of the backward wave at its end.
        """
        gamma, impedance, _ = self._inside(piece)
        cable = self._line.cable(piece.part)
        returned = np.exp(-2 * gamma * (piece.end_m - piece.begin_m))
        turn, ends = _waves_at_ends(cable.wanders, cable.length_m, piece.begin_m, piece.end_m)
        own = np.array([forth - returned * back, back - returned * forth]) * 2 * gamma
        other = np.array([forth + returned * back, back + returned * forth])
        within = np.concatenate([own, other]) * (self._z_0 / impedance * gamma)
        rows: ComplexArray = ends * cable.wander[:, None] @ within
        rows /= 4 * gamma**2 + turn**2
        return rows

    def _travelling(self, plane: int, impedance: ComplexArray) -> tuple[ComplexArray, ComplexArray]:
        """Forward and backward wave in a cable at a plane [V]."""
        v, i = self._waves.voltage[plane], self._waves.current[plane] * (impedance / self._z_0)
        return (v + i) / 2, (v - i) / 2

    def _placed_slopes(self, plane: int, piece: Piece, number: int) -> None:
        """Derivatives by the sizes of a fault inside a cable."""
        kind, own, beyond = self._faults[number].kind, self._own(number), self._waves.ahead[plane + 1]
        gamma, impedance = self._cables[piece.part]
        for size in range(len(kind.sizes)):
            moved = own.copy()
            moved[size] += STEP
            if kind.is_stretch:
                stretch = kind.stretch(moved)
                length_m = min(stretch.length_m, self._line.cable(piece.part).length_m - piece.begin_m)
                # what the stretch gains in length the cable behind it loses
                grown = length_m - (piece.end_m - piece.begin_m)
                shorter = line_scattering(impedance, -gamma * grown, self._z_0).ahead(beyond)
                angle = altered_wave(gamma, stretch) * length_m
                ahead = line_scattering(impedance * stretch.ratio, angle, self._z_0).ahead(shorter)
            else:
                ahead = lumped_scattering(kind.lumped(moved, self._omega), self._z_0).ahead(beyond)
            change = (ahead - self._waves.ahead[plane]) / STEP
            self._slopes[self._offsets[number] + size] += self._waves.forward[plane] ** 2 * change

    def _lumped_slopes(self) -> None:
        """Derivatives by what is lumped at joints, parts and the end, and by the sizes of the faults there."""
        planes = {piece.part: plane for plane, piece in enumerate(self._pieces) if piece.is_lumped}
        basis, omega = self._line.lumped_basis, 1j * self._omega
        at = np.array([planes[part] for part in basis.parts], dtype=np.int64)
        henry, farad, ohm = basis.deviations[:, :, None]
        self._slopes[basis.parameters] = self._by_series(at) * (omega * henry + ohm)
        self._slopes[basis.parameters] += self._by_shunt(at + 1) * (omega * farad)
        for part in {fault.part for fault in self._faults if fault.about_m is None}:
            self._joint_slopes(planes[part], part)

    def _joint_slopes(self, plane: int, at: int) -> None:
        """Derivatives by the sizes of the faults at a joint."""
        by_series, by_shunt, section = self._by_series(plane), self._by_shunt(plane + 1), plane + 1
        for number, fault in self._at(at):
            kind, sizes = fault.kind, self._own(number)
            for size in range(len(kind.sizes)):
                moved = sizes.copy()
                moved[size] += STEP
                if kind.is_stretch:
                    ahead = inserted(self._line, kind.stretch(moved)).ahead(self._waves.ahead[section + 1])
                    change = self._waves.forward[section] ** 2 * (ahead - self._waves.ahead[section])
                else:
                    more, less = (kind.lumped(one, self._omega) for one in (moved, sizes))
                    change = by_series * (more.series - less.series) + by_shunt * (more.shunt - less.shunt)
                self._slopes[self._offsets[number] + size] += change / STEP
            section += kind.is_stretch

    def _by_series(self, plane: IndexArray | int) -> ComplexArray:
        """Derivative of the input reflection by an impedance in series at a plane, or at each of some [1/Ω]."""
        by: ComplexArray = self._waves.current[plane] ** 2 / (2 * self._z_0)
        return by

    def _by_shunt(self, plane: IndexArray | int) -> ComplexArray:
        """The same by an admittance across [1/S]."""
        by: ComplexArray = self._waves.voltage[plane] ** 2 * (-self._z_0 / 2)
        return by

    def _analyser(self) -> tuple[ComplexArray, ComplexArray, ComplexArray, float]:
        """Directivity, source match and tracking that are left over, and how far the reference plane is off."""
        directivity, match, tracking = self._line.analyser_basis
        first, second = len(directivity), len(directivity) + len(match)
        plane, x = second + len(tracking), self._x
        return x[:first] @ directivity, x[first:second] @ match, x[second:plane] @ tracking, float(x[plane])

    def _seen(self, own: ComplexArray) -> _Seen:
        """What the analyser makes of a reflection."""
        d, s, t, plane = self._analyser()
        once, below = (1 + t) * np.exp(-self._turn() * plane), 1 - s * own
        reflected = once * own / below
        return _Seen(reflected, d + reflected, once / below**2)

    def _turn(self) -> ComplexArray:
        """By how much the usual deviation of the reference plane turns a reflection [j rad]."""
        return (2j * self._omega * self._line.prior.plane_m / C_0).astype(np.complex128)

    def _analyser_slopes(self, own: ComplexArray, seen: _Seen) -> None:
        """Derivatives by the line's parameters become those of what is shown; those by the analyser's."""
        slopes, (_, s, t, _) = self._slopes, self._analyser()
        directivity, match, tracking = self._line.analyser_basis
        first, second = len(directivity), len(directivity) + len(match)
        plane = second + len(tracking)
        slopes[plane + 1 :] *= seen.by_reflection
        slopes[:first] = directivity
        slopes[first:second] = match * (seen.reflected * own / (1 - s * own))
        slopes[second:plane] = tracking * (seen.reflected / (1 + t))
        slopes[plane] = -self._turn() * seen.reflected
