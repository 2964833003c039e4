"""Trying faults of every kind at every place of a fitted line, without fitting each.

Where the waves of a line are known, the reflection with anything inserted at any place follows exactly. Each trial
is scored by the evidence it would win once the line's own parameters follow it, as far as they are linear.
"""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray, RealArray
from .faults import AT_A_JOINT, CAPACITIVE, IN_A_CABLE, FaultKind, PlacedFault
from .fit import NOISE_FLOOR, Fit
from .line_waves import line_scattering, lumped_scattering
from .prediction import Piece, altered_wave, inserted
from .sampling import scattered
from .swept_line import SweptLine

__all__ = [
    "FollowedScore",
    "Place",
    "Trial",
    "judged_until_m",
    "place_grid",
    "screened",
    "screened_stretches",
    "thinned",
]

MOST_PLACES, MOST_LOOKED_AT = 40, 1200
"""In all cables together: those tried with every kind, and those looked at with one to find them."""
LOOKED_FOR, LOOKED_SIZE = CAPACITIVE, np.array([-1.0])
"""What sends an echo from one place, as the beginning of anything does, as large as fits best and either way."""
STRETCHES = tuple(kind for kind in IN_A_CABLE if kind.is_stretch)
LONGEST_DEVIATIONS, LONGEST_STRETCH_M, MOST_STRETCHES = 2.0, 2.5, 40
"""Of a kind's usual length; of any; and how many lengths."""
REGULAR = 0.006
"""Reflection, rms, that parameters may leave unexplained while they follow a trial."""


MOST_SCREENED = 120
"""Points of the sweep that trials are scored by."""


class Place(NamedTuple):
    """A joint by its part; or a cable and the distance from its beginning [m], to within half of a step."""

    part: int
    at_m: float | None
    step_m: float = 0.0


class Trial(NamedTuple):
    """A fault, its sizes in deviations, and about how much evidence it wins."""

    fault: PlacedFault
    sizes: tuple[float, ...]
    score: float
    shorter_m: float = 0.0
    """By so much its cable is shorter: the line was fitted with the delay of what is wet in its length."""

    def begun(self, line: SweptLine, x: RealArray) -> RealArray:
        """A fit's start: the parameters before, the sizes and, inside a cable, the place."""
        before = x.copy()
        if self.shorter_m:
            length = line.cable(self.fault.part).length_m * line.prior.length
            before[line.offsets[self.fault.part]] -= self.shorter_m / length
        return np.array([*before, *self.sizes, *([] if self.fault.about_m is None else [0.0])])


class _At(NamedTuple):
    """Reflections of what lies ahead and back, and the forward wave, at places: (places, frequencies)."""

    ahead: ComplexArray
    back: ComplexArray
    forward: ComplexArray


def thinned(line: SweptLine, fit: Fit) -> tuple[SweptLine, Fit]:
    """A line and its fit at few enough points to try much of it."""
    points = scattered(line.frequency_hz.size, MOST_SCREENED)
    return line.at(points), fit.at(points)


def place_grid(line: SweptLine, step_m: float) -> list[Place]:
    """Every joint that can be judged, and every cable in steps of about so many metres."""
    step = max(step_m, line.length_m / MOST_LOOKED_AT)
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
    """Every kind with its best sizes at every place, or at the most promising ones; the line is that of the fit."""
    screen = _Screen(line, fit)
    joints, inside = ([one for one in places if (one.at_m is None) == here] for here in (True, False))
    trials = screen.trials(joints, AT_A_JOINT) if joints else []
    if len(inside) > MOST_PLACES:
        scores = np.concatenate([screen.looked_at(own) for own in _by_part(inside)])
        inside = [inside[at] for at in np.argsort(-scores, kind="stable")[:MOST_PLACES]]
    for own in _by_part(inside):
        trials += screen.trials(own, IN_A_CABLE)
    return sorted(trials, key=lambda trial: -trial.score)


def _by_part(places: list[Place]) -> list[list[Place]]:
    return [[place for place in places if place.part == part] for part in dict.fromkeys(one.part for one in places)]


def screened_stretches(line: SweptLine, fit: Fit, part: int, edge_m: float, step_m: float) -> list[Trial]:
    """Altered stretches of a cable that begin or end at one place [m], of every length in steps of so many metres."""
    screen, length = _Screen(line, fit), line.cable(part).length_m
    step = max(step_m, LONGEST_STRETCH_M / MOST_STRETCHES)
    trials: list[Trial] = []
    for kind in STRETCHES:
        longest = min(kind.sizes[0].of(LONGEST_DEVIATIONS), LONGEST_STRETCH_M, length)
        for metres in np.arange(step, longest, step):
            own = float(np.log(metres / kind.sizes[0].middling) / kind.sizes[0].spread)
            so_long = kind._replace(tried=tuple((own, *rest) for rest in dict.fromkeys(one[1:] for one in kind.tried)))
            places = [Place(part, at, 2 * step) for at in (edge_m, edge_m - metres) if 0 <= at <= length - metres]
            found = screen.trials(places, (so_long,)) if places else []
            trials += [trial._replace(fault=trial.fault._replace(kind=kind)) for trial in found]
    return sorted(trials, key=lambda trial: -trial.score)


class _Screen:
    """A fitted line, its waves, and what its parameters follow."""

    def __init__(self, line: SweptLine, fit: Fit) -> None:
        line, fit = thinned(line, fit)
        self._line, self._seen = line, fit.prediction.by_reflection
        self._score, self._waves = FollowedScore(fit), _WavesAlong(line, fit)
        self._omega = 2 * np.pi * line.frequency_hz

    def trials(self, places: list[Place], kinds: Sequence[FaultKind]) -> list[Trial]:
        """Each of some kinds with its best sizes, at joints or at places in one cable."""
        at, found = self._waves.at(places), []
        for kind, kept in [*((kind, False) for kind in kinds), *((kind, True) for kind in kinds if kind.slows)]:
            ahead = np.array([self._ahead(kind, np.array(sizes), places, at, kept=kept) for sizes in kind.tried])
            moved = self._moved(at, ahead)
            scores = self._score.of(moved.reshape(-1, self._omega.size)).reshape(len(kind.tried), -1)
            scores -= np.sum(np.square(kind.tried), axis=1)[:, None] / 2
            for number, best in enumerate(np.argmax(scores, axis=0)):
                place = places[number]
                fault = PlacedFault(kind, place.part, place.at_m, place.step_m / 2)
                shorter = kind.stretch(np.array(kind.tried[best])).delay_m if kept else 0.0
                found.append(Trial(fault, kind.tried[best], float(scores[best, number]), shorter))
        return found

    def looked_at(self, places: list[Place]) -> RealArray:
        """What an echo from each of some places in one cable wins, of whatever size."""
        at = self._waves.at(places)
        return self._score.of_any_size(self._moved(at, self._ahead(LOOKED_FOR, LOOKED_SIZE, places, at, kept=False)))

    def _moved(self, at: _At, ahead: ComplexArray) -> ComplexArray:
        """How other reflections ahead of places change what is shown."""
        seen = at.forward**2 * (1 - at.back * at.ahead) * self._seen
        moved: ComplexArray = seen * (ahead - at.ahead) / (1 - at.back * ahead)
        return moved

    def _ahead(self, kind: FaultKind, sizes: RealArray, places: list[Place], at: _At, *, kept: bool) -> ComplexArray:
        """Reflection ahead of the places with a fault there, what lies behind it kept where it is or delayed."""
        if not kind.is_stretch:
            return lumped_scattering(kind.lumped(sizes, self._omega), self._line.impedance_ohm).ahead(at.ahead)
        stretch, part = kind.stretch(sizes), places[0].part
        if places[0].at_m is None:
            return inserted(self._line, stretch).ahead(at.ahead)
        length = self._line.cable(part).length_m
        taken = stretch.length_m + (stretch.delay_m if kept else 0.0)
        begins = np.array([place.at_m or 0.0 for place in places])
        longer = np.minimum(stretch.length_m, length - begins)
        ends = [Place(part, min(float(begin) + taken, length)) for begin in begins]
        angle = altered_wave(self._waves.gamma(part), stretch) * longer[:, None]
        altered = line_scattering(self._waves.impedance(part) * stretch.ratio, angle, self._line.impedance_ohm)
        return altered.ahead(self._waves.at(ends).ahead)


class _Followed(NamedTuple):
    """How the parameters follow: weight of each real number, and the covariance that they have by it."""

    weight: float
    inverse: RealArray


class FollowedScore:
    """What changes of a fitted line's reflection win in evidence once its parameters have followed, as far as linear.

    They win by what they leave less of the sweep, and by bringing the parameters nearer to what is usual.
    """

    def __init__(self, fit: Fit) -> None:
        self._x, self._residual, self._numbers = fit.x, fit.residual.view(np.float64), fit.numbers
        self._pull = fit.pull
        self._rows = fit.prediction.slopes.view(np.float64)
        self._normal = self._rows @ self._rows.T
        # as exactly as the fit has it, and as loosely as a trial may begin
        exact = fit.numbers / self._residual.size / fit.noise_variance
        weights = {exact, min(exact, 1 / REGULAR**2)}
        self._follow = [_Followed(weight, self._inverse(weight)) for weight in weights]
        # at some of the points, or not fitted to the end, they win something as it is
        as_it_is = (self._residual[None] @ self._rows.T, self._residual[None] @ self._residual)
        self._before = [self._after(*as_it_is, followed) for followed in self._follow]

    def _inverse(self, weight: float) -> RealArray:
        inverse: RealArray = np.linalg.inv(self._normal * weight + np.diag(self._pull)).astype(np.float64)
        return inverse

    def of(self, moved: ComplexArray) -> RealArray:
        """By changes of what is shown, (changes, frequencies)."""
        left = self._residual - np.ascontiguousarray(moved).view(np.float64)
        shared, squares = left @ self._rows.T, np.einsum("ij,ij->i", left, left)
        return self._won([(shared, squares)] * len(self._follow))

    def of_any_size(self, moved: ComplexArray) -> RealArray:
        """By changes of what is shown, each as many times as large as fits best."""
        rows = np.ascontiguousarray(moved).view(np.float64)
        own, along, squares = rows @ self._rows.T, rows @ self._residual, np.einsum("ij,ij->i", rows, rows)
        shared, left = self._rows @ self._residual, []
        for weight, inverse in self._follow:
            followed = own @ inverse * weight
            wanted = along - followed @ (shared - self._pull * self._x / weight)
            times = wanted / (squares - np.einsum("ij,ij->i", followed, own))
            own_squares = self._residual @ self._residual - 2 * times * along + times**2 * squares
            left.append((shared - times[:, None] * own, own_squares))
        return self._won(left)

    def _won(self, left: list[tuple[RealArray, RealArray]]) -> RealArray:
        """By what each change leaves for each way to follow: its products with what parameters do, and its squares."""
        ways = zip(left, self._follow, self._before, strict=True)
        wins: RealArray = np.max([before - self._after(*own, follow) for own, follow, before in ways], axis=0) / 2
        return wins

    def _after(self, shared: RealArray, squares: RealArray, follow: _Followed) -> RealArray:
        """The objective once the parameters have followed."""
        step = (shared * follow.weight - self._pull * self._x) @ follow.inverse
        x = self._x + step
        # for the step that wins most, twice the products less what the step itself makes of them
        after = squares - np.einsum("ij,ij->i", step, shared + self._pull * x / follow.weight)
        own = x**2 @ self._pull
        objective: RealArray = self._numbers * np.log(after / self._residual.size + NOISE_FLOOR**2) + own
        return objective


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

    def at(self, places: list[Place]) -> _At:
        """Within joints; or at places in one cable."""
        if places[0].at_m is None:
            middles = [max(self._planes(place.part)) for place in places]
            waves = (self._waves.ahead, self._back, self._waves.forward)
            return _At(*(np.array([one[middle] for middle in middles]) for one in waves))
        part, distances = places[0].part, np.array([place.at_m for place in places], dtype=float)
        own = [(plane, self._pieces[plane]) for plane in self._planes(part)]
        ends = np.array([piece.end_m for _, piece in own])
        which = np.minimum(np.searchsorted(ends, distances), len(own) - 1)
        found = np.empty((3, distances.size, self._back[0].size), dtype=np.complex128)
        for number, (plane, piece) in enumerate(own):
            inside = which == number
            if inside.any():
                found[:, inside] = self._within(part, plane, piece, distances[inside] - piece.begin_m)
        return _At(found[0], found[1], found[2])

    def _planes(self, part: int) -> list[int]:
        return [plane for plane, piece in enumerate(self._pieces) if piece.part == part]

    def _within(self, part: int, plane: int, piece: Piece, beyond_m: RealArray) -> _At:
        waves, z_0 = self._waves, self._line.impedance_ohm
        gamma, impedance = self.gamma(part), self.impedance(part)
        length, beyond = piece.end_m - piece.begin_m, beyond_m[:, None]
        onward = (waves.voltage[plane] + waves.current[plane] * impedance / z_0) / 2
        returning = (waves.voltage[plane + 1] - waves.current[plane + 1] * impedance / z_0) / 2
        forth, back = onward * np.exp(-gamma * beyond), returning * np.exp(-gamma * (length - beyond))
        v, i = forth + back, (forth - back) * z_0 / impedance
        step = (impedance - z_0) / (impedance + z_0)
        begun = (self._back[plane] - step) / (1 - step * self._back[plane]) * np.exp(-2 * gamma * beyond)
        return _At((v - i) / (v + i), (begun + step) / (1 + step * begun), (v + i) / 2)
