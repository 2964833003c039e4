"""What an analyser shows of a line with some parameters and faults, and how that moves with each of them.

The chain of two-ports is solved once. What a change anywhere does to the input reflection follows of the waves there:
an impedance in series by the square of the current, an admittance across by the square of the voltage, and of a cable
the integral of both along it. Source: microwave_textbook, perturbation of a reciprocal network.
"""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from ..formulas.constants import C_0
from .arrays import ComplexArray, RealArray
from .faults import PlacedFault, Stretch
from .line_waves import LineWaves, Lumped, Scattering, line_scattering, lumped_scattering
from .swept_line import CABLE_PARAMETERS, CablePart, EndPart, FixedPart, LumpedPart, SweptLine

__all__ = ["Piece", "Prediction", "inserted", "lossier", "predicted"]

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

    def back(self) -> list[ComplexArray]:
        """At every plane, the reflection of what lies back towards a matched analyser."""
        found = [np.zeros_like(self.shown)]
        for piece in self.pieces:
            found.append(piece.scattering.back(found[-1]))
        return found


def predicted(line: SweptLine, x: RealArray, faults: Sequence[PlacedFault] = ()) -> Prediction:
    """What is shown with some parameters, (parameters,): the line's own, then those of each fault."""
    return _Chain(line, x, faults).prediction()


def inserted(line: SweptLine, stretch: Stretch) -> Scattering:
    """A section of another impedance put in at a joint, of an electrical length."""
    angle = 2j * np.pi * line.frequency_hz * stretch.length_m / C_0
    return line_scattering(line.impedance_ohm * stretch.ratio + 0 * angle, angle, line.impedance_ohm)


def lossier(gamma: ComplexArray, stretch: Stretch) -> ComplexArray:
    """The propagation constant within an altered stretch of cable."""
    return gamma + gamma.imag * stretch.tangent / 2


class _Chain:
    """A line with some parameters and faults, cut into pieces and solved."""

    def __init__(self, line: SweptLine, x: RealArray, faults: Sequence[PlacedFault]) -> None:
        self._line, self._x, self._faults = line, x, faults
        self._omega, self._z_0 = 2 * np.pi * line.frequency_hz, line.impedance_ohm
        self._offsets = [line.parameter_count]
        for fault in faults:
            self._offsets.append(self._offsets[-1] + fault.parameter_count)
        self._cables = {at: (line.propagation(x, at), line.cable_impedance(x, at)) for at in line.cables}
        self._pieces = [piece for at in range(len(line.parts)) for piece in self._pieces_of(at)]
        self._waves = LineWaves.of([piece.scattering for piece in self._pieces], line.load_reflection(x))
        self._slopes = np.zeros((x.size, line.frequency_hz.size), dtype=np.complex128)

    def prediction(self) -> Prediction:
        """What is shown, and all that follows."""
        line, own = self._line, self._waves.ahead[0]
        for plane, piece in enumerate(self._pieces):
            if isinstance(line.parts[piece.part], CablePart):
                own = own + self._cable_slopes(plane, piece)
            elif piece.is_lumped:
                self._lumped_slopes(plane, piece.part)
        self._slopes[line.offsets[-1] : line.parameter_count] = self._waves.forward[-1] ** 2 * line.load_basis
        shown, by_reflection = self._seen(own)
        return Prediction(shown, self._slopes, self._waves, self._pieces, by_reflection)

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
        series, shunt = self._line.lumped(self._x, at)
        sections = []
        for number, fault in self._at(at):
            if fault.kind.is_stretch:
                sections.append(Piece(inserted(self._line, fault.kind.stretch(self._own(number))), at))
            else:
                more = fault.kind.lumped(self._own(number), self._omega)
                series, shunt = series + more.series, shunt + more.shunt
        lumped = Piece(lumped_scattering(Lumped(series, shunt), self._z_0), at, is_lumped=True)
        section = Piece(part.section, at)
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
                angle = lossier(gamma, stretch) * (begin - place)
                altered = line_scattering(impedance * stretch.ratio, angle, self._z_0)
            else:
                altered = lumped_scattering(kind.lumped(own, self._omega), self._z_0)
            pieces.append(Piece(altered, at, place, begin, fault=number))
        run = line_scattering(impedance, gamma * (length_m - begin), self._z_0)
        return [*pieces, Piece(run, at, begin, length_m, behind=behind)]

    def _cable_slopes(self, plane: int, piece: Piece) -> ComplexArray:
        """Add a piece's share to the derivatives by its cable's parameters; what its wander adds is returned."""
        line, slopes, first = self._line, self._slopes, self._line.offsets[piece.part]
        cable, prior = line.cable(piece.part), line.prior
        gamma, impedance = self._cables[piece.part]
        if piece.fault is not None:
            self._placed_slopes(plane, piece, piece.fault)
            kind = self._faults[piece.fault].kind
            if not kind.is_stretch:
                return np.zeros_like(gamma)
            stretch = kind.stretch(self._own(piece.fault))
            gamma, impedance = lossier(gamma, stretch), impedance * stretch.ratio
        length = piece.end_m - piece.begin_m
        onward, returning = self._travelling(plane, impedance)
        onward_end, returning_end = self._travelling(plane + 1, impedance)
        scale = self._z_0 / impedance
        by_angle = -2 * onward * returning * scale
        slopes[first] += by_angle * length * 1j * cable.beta * prior.length
        slopes[first + 1] += by_angle * length * 1j * cable.conductor * prior.skin_phase
        slopes[first + 2] += by_angle * length * cable.conductor * prior.conductor_loss
        slopes[first + 3] += by_angle * length * cable.other_loss * prior.other_loss
        change = (onward**2 - onward_end**2) + (returning_end**2 - returning**2)
        slopes[first + 4] += scale / 2 * change * prior.impedance / (1 + self._x[first + 4] * prior.impedance)
        # a fault's place moves the ends of the pieces beside it
        for number, sign in ((piece.before, 1), (piece.behind, -1)):
            if number is not None:
                fault = self._faults[number]
                slopes[self._offsets[number] + fault.size_count] += by_angle * gamma * sign * fault.place_deviation_m
        rows = self._wander_slopes(plane, piece, gamma, impedance)
        wanders = slice(first + CABLE_PARAMETERS, first + CABLE_PARAMETERS + cable.wanders)
        slopes[wanders] += rows
        added: ComplexArray = self._x[wanders] @ rows
        return added

    def _wander_slopes(self, plane: int, piece: Piece, gamma: ComplexArray, impedance: ComplexArray) -> ComplexArray:
        """A piece's share of the derivatives by the waves of its cable's impedance."""
        cable, length = self._line.cable(piece.part), piece.end_m - piece.begin_m
        (onward, _), (_, returning) = (self._travelling(end, impedance) for end in (plane, plane + 1))
        returned, forth, back = np.exp(-2 * gamma * length), onward**2, returning**2
        turn = 1j * np.pi * np.arange(1, cable.wanders + 1)[:, None] / cable.length_m
        turned, begun, ended = (np.exp(turn * at_m) for at_m in (length, piece.begin_m, piece.end_m))
        # a wave of impedance is half the one turning forward and half the one turning back
        along = (1 - returned * turned) * (begun * forth + ended.conj() * back) / (2 * gamma - turn)
        along += (1 - returned * turned.conj()) * (begun.conj() * forth + ended * back) / (2 * gamma + turn)
        rows: ComplexArray = along * (self._z_0 / impedance * gamma / 2 * cable.wander)
        return rows

    def _travelling(self, plane: int, impedance: ComplexArray) -> tuple[ComplexArray, ComplexArray]:
        """Forward and backward wave in a cable at a plane [V]."""
        v, i = self._waves.voltage(plane), self._waves.current(plane) * impedance / self._z_0
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
                # what the stretch gains in length the cable behind it loses
                grown = stretch.length_m - (piece.end_m - piece.begin_m)
                shorter = line_scattering(impedance, -gamma * grown, self._z_0).ahead(beyond)
                angle = lossier(gamma, stretch) * stretch.length_m
                ahead = line_scattering(impedance * stretch.ratio, angle, self._z_0).ahead(shorter)
            else:
                ahead = lumped_scattering(kind.lumped(moved, self._omega), self._z_0).ahead(beyond)
            change = (ahead - self._waves.ahead[plane]) / STEP
            self._slopes[self._offsets[number] + size] += self._waves.forward[plane] ** 2 * change

    def _lumped_slopes(self, plane: int, at: int) -> None:
        """Derivatives by what is lumped at a joint, a part or the end, and by the sizes of the faults there."""
        part, slopes, first, omega = self._line.parts[at], self._slopes, self._line.offsets[at], self._omega
        by_series = self._waves.current(plane) ** 2 / (2 * self._z_0)
        by_shunt = -(self._waves.voltage(plane + 1) ** 2) * self._z_0 / 2
        if isinstance(part, LumpedPart):
            for own, (henry, farad) in enumerate(zip(part.deviations.henry, part.deviations.farad, strict=True)):
                slopes[first + own] += 1j * omega * (by_series * henry + by_shunt * farad)
            slopes[first + 2] += by_series * part.deviations.ohm
        elif isinstance(part, FixedPart) and part.deviation:
            share = 1j * part.deviation * omega / omega[-1]
            slopes[first] += by_series * share * self._z_0
            slopes[first + 1] += by_shunt * share / self._z_0
        section = plane + 1
        for number, fault in self._at(at):
            kind, sizes = fault.kind, self._own(number)
            for size in range(len(kind.sizes)):
                moved = sizes.copy()
                moved[size] += STEP
                if kind.is_stretch:
                    ahead = inserted(self._line, kind.stretch(moved)).ahead(self._waves.ahead[section + 1])
                    change = self._waves.forward[section] ** 2 * (ahead - self._waves.ahead[section])
                else:
                    more, less = (kind.lumped(one, omega) for one in (moved, sizes))
                    change = by_series * (more.series - less.series) + by_shunt * (more.shunt - less.shunt)
                slopes[self._offsets[number] + size] += change / STEP
            section += kind.is_stretch

    def _seen(self, own: ComplexArray) -> tuple[ComplexArray, ComplexArray]:
        """What the analyser makes of a reflection; derivatives by the line's parameters become those of that."""
        line, x, slopes = self._line, self._x, self._slopes
        directivity, match, tracking = line.analyser_basis
        first, second = len(directivity), len(directivity) + len(match)
        plane = second + len(tracking)
        d, s, t = x[:first] @ directivity, x[first:second] @ match, x[second:plane] @ tracking
        turn = 2j * self._omega * line.prior.plane_m / C_0
        once, below = (1 + t) * np.exp(-turn * x[plane]), 1 - s * own
        reflected = once * own / below
        by_reflection = once / below**2
        slopes[plane + 1 :] *= by_reflection
        slopes[:first] = directivity
        slopes[first:second] = match * (reflected * own / below)
        slopes[second:plane] = tracking * (reflected / (1 + t))
        slopes[plane] = -turn * reflected
        return d + reflected, by_reflection
