"""A one-port sweep against its line: fitted, looked at over distance, and each joint judged."""

import math
from typing import NamedTuple

import numpy as np

from ..feedline.elements import ImpedanceTable, KnownEnd, Load, MeasuredLoad
from ..feedline.feedline import Feedline
from ..formulas import sweep as formulas
from ..formulas.formula import Step, recording
from ..formulas.match import return_loss
from ..numeric.json_numbers import number
from ..physics.limits import assumption
from ..physics.ratings import GENEROUS
from .fit import Fit
from .model import Line, Spreads, line_of
from .results import Candidate, Deviation, DistanceProfile, FittedSize, LineCheck, ReflectionCurves, SweptJoint
from .search import Fits, fit_all, fitted_reflection, least_resistances, scattered, spaced
from .transform import Transform, transform_of, way_of

__all__ = ["INDISTINCT", "Setting", "line_check", "swept_line"]

Number = np.ndarray
MOST_FITTED = 801
"""Points a fit looks at; more of them would sharpen it by their root only."""

MOST_DRAWN = 401
MOST_PLACES, PLACES_PER_M = 601, 1e4
"""So many, each a whole tenth of a millimetre, which every home prints alike."""

AT_ONCE = 65536
"""Frequencies times places in one array."""

BEYOND = 0.15  # of the line, shown behind its end
LEAST_SHOWN_M = 0.5
INDISTINCT = 6.0
"""Evidence within which two joints explain a sweep alike: odds of 20 to 1."""

NO_FIT = 0.1
"""What the best explanation may leave, rms of the reflection, before the line is taken for another one."""

MOST_CANDIDATES = 6
CERTAIN_SIZE = 1.5  # of the logarithm: a size less well known than that is none
SURE = 0.99
"""The highest probability that is told: the faults thought of are not all there are."""

END_TERMS = {"known": 0, "measured": 2, "told": 6}
"""Order of the smooth curve by which the reflection of the end may be off."""

DECIMALS, FIGURES = 6, 4


class Setting(NamedTuple):
    """What a sweep is judged with."""

    length_tolerance: float
    window_shape: float
    load: Load | KnownEnd


def line_check(
    feedline: Feedline, frequency: Number, measured: Number, earlier: tuple[Number, Number] | None, setting: Setting
) -> tuple[LineCheck, list[Step]]:
    """Judge a measured reflection; `earlier` is another sweep of it with frequencies of its own [Hz]."""
    few = scattered(frequency.size, MOST_FITTED)
    line = swept_line(feedline, frequency[few], setting)
    fits = fit_all(line, measured[few])
    best = min(fits.faulty, key=Fit.score)
    evidence = fits.sound.score() - best.score()
    found = evidence > float(assumption("sweep_evidence"))
    ruling = best if found else fits.sound
    noise = float(np.sqrt(ruling.squares / few.size))
    by_joint = _by_joint(fits)
    apart = [joint for joint, fit in by_joint.items() if fit.score() - best.score() < INDISTINCT]
    finding = _finding(noise, found, apart)
    whole = swept_line(feedline, frequency, setting)
    transform = transform_of(frequency, setting.window_shape, float(whole.load[0].real))
    expected = fitted_reflection(whole, ruling, sound=True)
    sight = _Sight(whole, transform, measured, expected, earlier, noise, ruling.values)
    chances = _chances(fits, by_joint) if found else {}
    joints = _joints(line, measured[few], ruling, sight, chances)
    with recording() as steps:
        velocity = _velocity(whole)
        check_range = formulas.alias_free_distance(velocity, transform.step_hz)
        lobes = formulas.window_side_lobe(setting.window_shape)
        broadening = formulas.window_broadening(setting.window_shape)
        resolution = formulas.sweep_resolution(velocity, broadening, transform.span_hz)
    check = LineCheck(
        finding=finding,
        suspect=best.fault.joint if finding == "suspect" else None,
        probability=chances.get(best.fault.joint) if finding == "suspect" else None,
        candidates=_candidates(line, fits, best, by_joint, few.size) if found else [],
        apart=apart if finding == "unclear" else [],
        joints=joints,
        transform="low-pass" if transform.low_pass else "band-pass",
        window_shape=setting.window_shape,
        side_lobe_db=float(lobes),
        resolution_m=float(resolution),
        range_m=float(check_range),
        length_m=sight.length_m,
        needed_top_hz=_needed(transform, whole, joints, apart) if finding == "unclear" else None,
        noise=_figures(noise),
        deviations=_deviations(line, ruling),
        profile=sight.profile(),
        curves=_curves(frequency, measured, expected, fitted_reflection(whole, ruling)),
    )
    return check, steps


def swept_line(feedline: Feedline, frequency: Number, setting: Setting) -> Line:
    """The line with all that is not known of its good parts, at frequencies [Hz]."""
    return line_of(feedline, frequency, _spreads(setting), _end_terms(frequency, setting.load))


def _spreads(setting: Setting) -> Spreads:
    """An error anywhere within a tolerance has a root of three less as its standard deviation."""
    impedance, loss = (float(assumption(f"sweep_cable_{what}_spread")) for what in ("impedance", "loss"))
    return Spreads(setting.length_tolerance / np.sqrt(3.0), impedance, loss)


def _end_terms(frequency: Number, load: Load | KnownEnd) -> Number:
    """The curves by which the reflection of the end may be off: Chebyshev polynomials, real and imaginary."""
    kind = "known" if isinstance(load, KnownEnd) else "told"
    kind = "measured" if isinstance(load, (MeasuredLoad, ImpedanceTable)) else kind
    names = {"known": "sweep_known_end_spread", "measured": "sweep_measured_end_spread", "told": "sweep_antenna_spread"}
    place = 2 * (frequency - frequency[0]) / (frequency[-1] - frequency[0]) - 1
    terms = [np.ones_like(place), place]
    while len(terms) <= END_TERMS[kind]:
        terms.append(2 * place * terms[-1] - terms[-2])
    used = np.array(terms[: END_TERMS[kind] + 1]) * float(assumption(names[kind]))
    return np.concatenate([used + 0j, 1j * used])


def _finding(noise: float, found: bool, apart: list[int]) -> str:
    if noise > NO_FIT:
        return "no fit"
    if not found:
        return "sound"
    return "unclear" if len(apart) > 1 else "suspect"


def _by_joint(fits: Fits) -> dict[int, Fit]:
    """The best fit of each joint, best joint first."""
    ordered = sorted(fits.faulty, key=Fit.score)
    return {
        joint: next(fit for fit in ordered if fit.fault.joint == joint)
        for joint in dict.fromkeys(fit.fault.joint for fit in ordered)
    }


def _chances(fits: Fits, by_joint: dict[int, Fit]) -> dict[int, float]:
    """Of each joint the probability that it is the bad one, if one is."""
    best = min(map(Fit.score, by_joint.values()))
    odds = {joint: float(np.exp(-(fit.score() - best) / 2)) for joint, fit in by_joint.items()}
    whole = sum(odds.values())
    return {joint: round(min(one / whole, SURE), 3) for joint, one in odds.items()}


class _Echoes(NamedTuple):
    """At some places: what was measured, what a sound line would show, an earlier sweep, and the threshold."""

    measured: Number
    expected: Number
    earlier: Number | None
    threshold: Number


class _Sight:
    """Reflection against distance: what was measured and what a sound line would show."""

    def __init__(
        self,
        line: Line,
        transform: Transform,
        measured: Number,
        expected: Number,
        earlier: tuple[Number, Number] | None,
        noise: float,
        values: Number,
    ) -> None:
        self.line, self.transform, self._noise = line, transform, noise
        self._way = way_of(line, values)
        then = [] if earlier is None else [_between(line.frequency_hz, *earlier)]
        self._reflections = np.array([measured, expected, *then])
        self.length_m = _length(line)
        begin, end = -BEYOND * self.length_m / 4, self.length_m * (1 + BEYOND) + LEAST_SHOWN_M
        step = math.ceil((end - begin) * PLACES_PER_M / (MOST_PLACES - 1))
        steps = math.floor(begin * PLACES_PER_M) + step * np.arange(MOST_PLACES, dtype=np.int64)
        self._places = steps / PLACES_PER_M
        self._along, self._raised = self._seen(self._places)

    def profile(self) -> DistanceProfile:
        """All along the line."""
        shown = np.real if self.transform.low_pass else np.abs
        echoes = self._echoes(self._along, self._raised)
        return DistanceProfile(
            distance_m=[round(float(one), DECIMALS) for one in self._places],
            measured=_all(shown(echoes.measured)),
            expected=_all(shown(echoes.expected)),
            earlier=[] if echoes.earlier is None else _all(shown(echoes.earlier)),
            threshold=_all(echoes.threshold),
        )

    def at(self, places: Number) -> _Echoes:
        """At some places [m]."""
        return self._echoes(*self._seen(places))

    def _seen(self, places: Number) -> tuple[Number, Number]:
        """The echoes of each reflection, and what noise shows, a few places at a time."""
        few = max(AT_ONCE // self.line.frequency_hz.size, 1)
        echoes, raised = [], []
        for start in range(0, places.size, few):
            kernel = self.transform.kernel(self._way.path(places[start : start + few]))
            echoes.append(self.transform.seen(self._reflections, kernel))
            raised.append(self.transform.noise(self._noise, kernel))
        return np.concatenate(echoes, axis=1), np.concatenate(raised)

    def _echoes(self, seen: Number, raised: Number) -> _Echoes:
        """An echo must exceed the noise there, and the side lobes of the strongest echo."""
        lobes = float(np.abs(self._along[0]).max()) * 10 ** (-formulas.window_side_lobe(self.transform.shape) / 20)
        threshold = float(assumption("sweep_detection_factor")) * raised + lobes
        return _Echoes(seen[0], seen[1], seen[2] if len(seen) > 2 else None, threshold)


def _between(frequency: Number, own_hz: Number, values: Number) -> Number:
    """Another sweep at these frequencies; nothing beyond its ends."""
    return np.interp(frequency, own_hz, values.real, 0, 0) + 1j * np.interp(frequency, own_hz, values.imag, 0, 0)


def _length(line: Line) -> float:
    return float(sum(piece.link.models[GENEROUS].length_m for piece in line.pieces if piece.link.kind == "cable"))


def _velocity(line: Line) -> float:
    """The velocity factor of the whole line: its length against its delay."""
    cables = [piece.link.models[GENEROUS] for piece in line.pieces if piece.link.kind == "cable"]
    delay = sum(float(cable.length_m / cable.ratings.velocity_factor) for cable in cables)
    return _length(line) / delay if cables else 1.0


def _resolution(transform: Transform, velocity: float) -> float:
    return float(formulas.sweep_resolution(velocity, formulas.window_broadening(transform.shape), transform.span_hz))


def _places(line: Line) -> dict[int, tuple[int, str, float]]:
    """Of each joint, by its element: its first piece, its name and its distance [m]."""
    places: dict[int, tuple[int, str, float]] = {}
    start = 0.0
    for at, piece in enumerate(line.pieces):
        if piece.link.kind == "cable":
            start += piece.link.models[GENEROUS].length_m
        elif piece.link.kind == "joint":
            places.setdefault(piece.link.element, (at, piece.link.name, start))
    return places


def _joints(line: Line, measured: Number, ruling: Fit, sight: _Sight, chances: dict[int, float]) -> list[SweptJoint]:
    places, evidence = _places(line), float(assumption("sweep_evidence"))
    at_joints = [at for at, _, _ in places.values()]
    least_resistance = least_resistances(line, measured, ruling, at_joints, evidence)
    echoes = sight.at(np.array([place for _, _, place in places.values()]))
    joints = []
    for one, (element, (at, name, place)) in enumerate(places.items()):
        others = [abs(place - other) for joint, (_, _, other) in places.items() if joint != element]
        nearest = min(others, default=None)
        resolution = _resolution(sight.transform, _near_velocity(line, at))
        measured_there, least = echoes.measured[one], least_resistance[one]
        excess = float(np.abs(measured_there - echoes.expected[one]))
        change = None if echoes.earlier is None else np.abs(measured_there - echoes.earlier[one])
        shadowed = ruling.fault is not None and at > ruling.fault.place
        joints.append(
            SweptJoint(
                element=element,
                name=name,
                distance_m=round(place, DECIMALS),
                measured=_fine(np.abs(measured_there)),
                expected=_fine(np.abs(echoes.expected[one])),
                excess=_fine(excess),
                threshold=_fine(echoes.threshold[one]),
                change=None if change is None else _fine(change),
                shadowed=shadowed,
                seen=bool(excess > echoes.threshold[one]) and not shadowed,
                nearest_m=None if nearest is None else round(nearest, DECIMALS),
                resolution_m=resolution,
                separate=nearest is None or nearest > resolution,
                least_resistance_ohm=_figures(least) if np.isfinite(least) else None,
                probability=chances.get(element, 0.0),
            )
        )
    return joints


def _near_velocity(line: Line, at: int) -> float:
    """The velocity factor of the cable nearest to a joint, the one before it first."""
    cables = sorted(
        (place for place, piece in enumerate(line.pieces) if piece.link.kind == "cable"),
        key=lambda place: (abs(place - at), place),
    )
    return float(line.pieces[cables[0]].link.models[GENEROUS].ratings.velocity_factor) if cables else 1.0


def _needed(transform: Transform, line: Line, joints: list[SweptJoint], apart: list[int]) -> float | None:
    """The upper edge of a sweep that tells the joints apart; null where they lie in one place."""
    places = sorted(joint.distance_m for joint in joints if joint.element in apart)
    gap = min(np.diff(places))
    if gap <= 0:
        return None
    broadening = formulas.window_broadening(transform.shape)
    span = float(formulas.separating_span(_velocity(line), broadening, gap))
    return span / 2 if transform.low_pass else float(line.frequency_hz[0]) + span


def _candidates(line: Line, fits: Fits, best: Fit, by_joint: dict[int, Fit], points: int) -> list[Candidate]:
    """The best of every joint, and other faults of the best joint that explain the sweep nearly as well."""
    sound, least = fits.sound.score(), best.score()
    own = [fit for fit in fits.faulty if fit.fault.joint == best.fault.joint and fit.score() - least < INDISTINCT]
    others = [fit for joint, fit in by_joint.items() if joint != best.fault.joint and fit.score() < sound]
    chosen = sorted({id(fit): fit for fit in [best, *own, *others]}.values(), key=Fit.score)
    names = _places(line)
    shown = [fit for fit in chosen if fit is best or _certain(fit)]
    return [
        Candidate(
            element=fit.fault.joint,
            joint=names[fit.fault.joint][1],
            kind=fit.fault.kind.id,
            name=fit.fault.kind.name,
            sizes=_sizes(fit),
            evidence=round(sound - fit.score(), 1),
            misfit=_figures(float(np.sqrt(fit.squares / points))),
        )
        for fit in shown[:MOST_CANDIDATES]
    ]


def _deviation_of_logs(fit: Fit) -> Number:
    return np.sqrt(np.maximum(np.diag(fit.covariance)[fit.values.size :], 0.0))


def _certain(fit: Fit) -> bool:
    return bool((_deviation_of_logs(fit) < CERTAIN_SIZE).all())


def _sizes(fit: Fit) -> list[FittedSize]:
    off = np.minimum(_deviation_of_logs(fit), CERTAIN_SIZE)
    return [
        FittedSize(size.name, size.unit, _figures(value), _figures(value * np.exp(-one)), _figures(value * np.exp(one)))
        for size, value, one in zip(fit.fault.kind.sizes, fit.sizes, off, strict=True)
    ]


def _deviations(line: Line, fit: Fit) -> list[Deviation]:
    """What the fit found of the cables' length, impedance and loss."""
    found = []
    spread = np.sqrt(np.maximum(np.diag(fit.covariance), 0.0))
    for at, piece in enumerate(line.pieces):
        if piece.link.kind != "cable":
            continue
        for one, (what, by) in enumerate(zip(("electrical length", "impedance", "loss"), line.spreads, strict=True)):
            place = line.starts[at] + one
            found.append(
                Deviation(
                    piece.link.element,
                    piece.link.name,
                    what,
                    round(float(fit.values[place] * by), DECIMALS),
                    round(float(spread[place] * by), DECIMALS),
                )
            )
    return found


def _curves(frequency: Number, measured: Number, expected: Number, fitted: Number) -> ReflectionCurves:
    few = spaced(frequency.size, MOST_DRAWN)
    levels = [_all(-return_loss(np.minimum(np.abs(one[few]), 1.0))) for one in (measured, expected, fitted)]
    return ReflectionCurves(
        frequency[few].tolist(),
        *levels,
        _all(measured[few].real),
        _all(measured[few].imag),
        _all(fitted[few].real),
        _all(fitted[few].imag),
    )


def _all(values: Number) -> list[float | None]:
    return [_fine(value) for value in values]


def _fine(value: float) -> float | None:
    """To a millionth: the last digits of a fit are rounding."""
    return None if number(value) is None else round(float(value), DECIMALS)


def _figures(value: float) -> float:
    """To four figures, as a fit knows no more."""
    return float(f"{value:.{FIGURES}g}")
