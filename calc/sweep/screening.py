"""Trying faults of every kind at every place of a fitted line, without fitting each.

Where the waves of a line are known, the reflection with anything inserted at any place follows exactly. Each trial
is scored by how much it lowers the residual once the line's own parameters may follow it, as far as they are linear.
"""

from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray, RealArray
from .faults import AT_A_JOINT, IN_A_CABLE, FaultKind, PlacedFault
from .fit import Fit
from .line_waves import line_scattering, lumped_scattering
from .prediction import Piece, inserted, lossier
from .swept_line import SweptLine

__all__ = ["FollowedScore", "Place", "Trial", "judged_until_m", "place_grid", "screened"]

MOST_PLACES = 160
"""In all cables together."""
REGULAR = 0.006
"""Reflection, rms, that parameters may leave unexplained while they follow a trial."""


class Place(NamedTuple):
    """A joint by its part; or a cable and the distance from its beginning [m], to within half of a step."""

    part: int
    at_m: float | None
    step_m: float = 0.0


class Trial(NamedTuple):
    """A fault, its sizes in deviations, and by how much it lowers the logarithm of the residual's squares."""

    fault: PlacedFault
    sizes: tuple[float, ...]
    score: float

    @property
    def parameters(self) -> RealArray:
        """A fit's start: the sizes and, inside a cable, the place."""
        return np.array([*self.sizes, *([] if self.fault.about_m is None else [0.0])])


class _At(NamedTuple):
    """Reflections of what lies ahead and back, and the forward wave, at places: (places, frequencies)."""

    ahead: ComplexArray
    back: ComplexArray
    forward: ComplexArray


def place_grid(line: SweptLine, step_m: float) -> list[Place]:
    """Every joint that can be judged, and every cable in steps of about so many metres."""
    step = max(step_m, line.length_m / MOST_PLACES)
    last_m = judged_until_m(line, 2 * step_m)
    places = [Place(at, None) for at in line.joints if line.begin_m(at) <= last_m]
    for at, cable in line.cables.items():
        count = max(round(cable.length_m / step), 1)
        own, begin = cable.length_m / count, line.begin_m(at)
        middles = [(number + 0.5) * own for number in range(count)]
        places += [Place(at, middle, own) for middle in middles if begin + middle <= last_m]
    return sorted(places, key=lambda place: (place.part, place.at_m or 0.0))


def judged_until_m(line: SweptLine, cell_m: float) -> float:
    """How far along the line a fault can be told from a load of which little is known [m]."""
    return line.length_m - cell_m if line.is_end_vague else np.inf


def screened(line: SweptLine, fit: Fit, places: list[Place]) -> list[Trial]:
    """Every kind with its best sizes at every place; the line is that of the fit."""
    score = FollowedScore(fit)
    waves = _WavesAlong(line, fit)
    omega, z_0 = 2 * np.pi * line.frequency_hz, line.impedance_ohm
    trials: list[Trial] = []
    for part in dict.fromkeys(place.part for place in places):
        own = [place for place in places if place.part == part]
        kinds = AT_A_JOINT if own[0].at_m is None else IN_A_CABLE
        distances = np.array([place.at_m or 0.0 for place in own])
        at = waves.at(part, distances)
        for kind in kinds:
            best: list[Trial | None] = [None] * len(own)
            for sizes in kind.tried:
                ahead = _ahead(line, waves, kind, np.array(sizes), part, distances, at, omega, z_0)
                moved = (
                    at.forward**2 * (ahead - at.ahead) * (1 - at.back * at.ahead) / (1 - at.back * ahead)
                ) * fit.prediction.by_reflection
                for number, value in enumerate(score.of(moved)):
                    before = best[number]
                    if before is None or value > before.score:
                        place = own[number]
                        fault = PlacedFault(kind, part, place.at_m, place.step_m / 2)
                        best[number] = Trial(fault, sizes, float(value))
            trials += [trial for trial in best if trial is not None]
    return sorted(trials, key=lambda trial: -trial.score)


def _ahead(
    line: SweptLine,
    waves: "_WavesAlong",
    kind: FaultKind,
    sizes: RealArray,
    part: int,
    distances: RealArray,
    at: _At,
    omega: RealArray,
    z_0: float,
) -> ComplexArray:
    """Reflection ahead of the places with a fault there."""
    if not kind.is_stretch:
        return lumped_scattering(kind.lumped(sizes, omega), z_0).ahead(at.ahead)
    stretch = kind.stretch(sizes)
    if part not in line.cables:
        return inserted(line, stretch).ahead(at.ahead)
    end = np.minimum(distances + stretch.length_m, line.cable(part).length_m)
    angle = lossier(waves.gamma(part), stretch) * (end - distances)[:, None]
    return line_scattering(waves.impedance(part) * stretch.ratio, angle, z_0).ahead(waves.at(part, end).ahead)


class FollowedScore:
    """How much lower the residual's squares are, in logarithm, once the line's parameters have followed."""

    def __init__(self, fit: Fit) -> None:
        rows = fit.prediction.slopes.view(np.float64)
        normal = rows @ rows.T
        normal[np.diag_indices_from(normal)] += REGULAR**2
        # the residual less what it has already by the prior's pull
        root = np.linalg.cholesky(normal)
        self._rows = np.linalg.solve(root, rows)
        self._residual = fit.residual.view(np.float64)
        self._floor = self._residual.size * REGULAR**2 / 4
        self._numbers = self._residual.size
        self._before = self._squares(self._residual[None])[0]

    def _squares(self, values: RealArray) -> RealArray:
        shared = values @ self._rows.T
        return np.einsum("ij,ij->i", values, values) - np.einsum("ij,ij->i", shared, shared) + self._floor

    def of(self, moved: ComplexArray) -> RealArray:
        left = self._residual - np.ascontiguousarray(moved).view(np.float64)
        return self._numbers / 2 * np.log(self._before / self._squares(left))


class _WavesAlong:
    """The waves of a fitted line at any place."""

    def __init__(self, line: SweptLine, fit: Fit) -> None:
        self._line, self._x, self._waves = line, fit.x, fit.prediction.waves
        self._pieces = fit.prediction.pieces
        self._back = fit.prediction.back()

    def gamma(self, part: int) -> ComplexArray:
        """The propagation constant of a cable."""
        return self._line.propagation(self._x, part)

    def impedance(self, part: int) -> ComplexArray:
        """The characteristic impedance of a cable [Ω]."""
        return self._line.cable_impedance(self._x, part)

    def at(self, part: int, distances: RealArray) -> _At:
        """Within a joint; or at distances from a cable's beginning [m]."""
        own = [(plane, piece) for plane, piece in enumerate(self._pieces) if piece.part == part]
        if part not in self._line.cables:
            middle, waves = own[-1][0], self._waves
            return _At(waves.ahead[middle][None], self._back[middle][None], waves.forward[middle][None])
        ends = np.array([piece.end_m for _, piece in own])
        which = np.minimum(np.searchsorted(ends, distances), len(own) - 1)
        found = np.empty((3, distances.size, self._back[0].size), dtype=np.complex128)
        for number, (plane, piece) in enumerate(own):
            inside = which == number
            if inside.any():
                found[:, inside] = self._within(part, plane, piece, distances[inside] - piece.begin_m)
        return _At(found[0], found[1], found[2])

    def _within(self, part: int, plane: int, piece: Piece, beyond_m: RealArray) -> _At:
        waves, z_0 = self._waves, self._line.impedance_ohm
        gamma, impedance = self.gamma(part), self.impedance(part)
        length, beyond = piece.end_m - piece.begin_m, beyond_m[:, None]
        onward = (waves.voltage(plane) + waves.current(plane) * impedance / z_0) / 2
        returning = (waves.voltage(plane + 1) - waves.current(plane + 1) * impedance / z_0) / 2
        forth, back = onward * np.exp(-gamma * beyond), returning * np.exp(-gamma * (length - beyond))
        v, i = forth + back, (forth - back) * z_0 / impedance
        step = (impedance - z_0) / (impedance + z_0)
        begun = (self._back[plane] - step) / (1 - step * self._back[plane]) * np.exp(-2 * gamma * beyond)
        return _At((v - i) / (v + i), (begun + step) / (1 + step * begun), (v + i) / 2)
