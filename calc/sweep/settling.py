"""Moving the joints of a fitted line to where the sweep shows them.

A fit follows a joint's echo only from within about half a cell of distance, and cables are seldom so well known: from
farther it leaves the joint where it is and lays its echo to something else. So each joint is tried all along where it
may be, alone and with all that lies behind it, without a fit: with the waves known, the reflection follows exactly.
"""

from itertools import pairwise
from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray, RealArray
from .faults import PlacedFault
from .fit import Fit, fitted
from .line_waves import line_scattering, lumped_scattering
from .screening import FollowedScore
from .swept_line import CablePart, SweptLine

__all__ = ["settled"]

MOST_MOVES, MOST_TRIED, TRIED_FITS = 8, 400, 3
"""Moves one after another, and for each of them so many tried and so many fitted."""
TRIED_JOINTS = tuple(np.array([0.0, other, 0.0]) for other in (-1.5, 0.0, 1.5))
"""Parameters of a moved joint: where it was taken to be it was fitted to what is there."""
FURTHEST = 2.5  # deviations of length
ROUNDS = 5
LEAST_GAIN = 2.0
"""Evidence that a move must win."""


class _Move(NamedTuple):
    """A cable longer, and the next one as much shorter or, without one, all behind it moved."""

    cable: int
    next: int | None
    longer_m: float
    """As described; by as much delay the next one is shorter."""
    joints: RealArray | None
    """Parameters of the joints behind the cable; None for as they are fitted."""
    gain: float
    """Of evidence, about."""


def settled(line: SweptLine, measured: ComplexArray, fit: Fit, cell_m: float) -> Fit:
    """The fit after a few moves of its joints; the line is that of the fit, with cells of so many metres."""
    for _ in range(MOST_MOVES):
        moved = [_moved(line, fit, move) for move in _best_moves(line, fit, cell_m / 2)]
        fits = [fitted(line, measured, x, faults, ROUNDS) for faults, x in moved]
        best = max(fits, key=lambda one: one.evidence, default=fit)
        if best.evidence <= fit.evidence + LEAST_GAIN:
            break
        fit = best
    return fit


def _best_moves(line: SweptLine, fit: Fit, step_m: float) -> list[_Move]:
    """The moves in steps of so many metres that promise most."""
    cables = list(line.cables)
    changes = [*((at, None) for at in cables), *pairwise(cables)]
    score, back, found = FollowedScore(line, fit), fit.prediction.back(), []
    for cable, behind in changes:
        longer = _lengths(line, fit, cable, behind, step_m, MOST_TRIED // len(changes))
        if not longer.size:
            continue
        prior = _prior_gain(line, fit, cable, longer)
        if behind is not None:
            prior = prior + _prior_gain(line, fit, behind, -longer * _ratio(line, cable, behind))
        for joints in (None, *TRIED_JOINTS):
            changed = _changed(line, fit, back, _Move(cable, behind, 0.0, joints, 0.0), longer)
            gains = prior + score.of(changed)
            peak = int(np.argmax(gains))
            found.append(_Move(cable, behind, float(longer[peak]), joints, float(gains[peak])))
    promising = [move for move in found if move.gain > 0]
    return sorted(promising, key=lambda move: -move.gain)[:TRIED_FITS]


def _ratio(line: SweptLine, cable: int, other: int) -> float:
    """Metres of another cable that delay as much as one of a cable."""
    return float(line.cable(cable).beta[-1] / line.cable(other).beta[-1])


def _prior_gain(line: SweptLine, fit: Fit, at: int, longer_m: RealArray) -> RealArray:
    own = fit.x[line.offsets[at]]
    moved = own + longer_m / line.cable(at).length_m / line.prior.length
    gain: RealArray = (own**2 - moved**2) / 2
    return gain


def _lengths(line: SweptLine, fit: Fit, cable: int, behind: int | None, step_m: float, most: int) -> RealArray:
    """By what a cable may become longer [m], the nearest so many steps."""
    low, high = -np.inf, np.inf
    scales = {cable: 1.0} | ({} if behind is None else {behind: -1 / _ratio(line, cable, behind)})
    for at, scale in scales.items():
        runs = [piece for piece in fit.prediction.pieces if piece.part == at]
        run = runs[-1] if at == cable else runs[0]
        usual = line.prior.length * line.cable(at).length_m
        now = fit.x[line.offsets[at]] * usual
        # what lies within a cable stays where it is
        own = scale * np.array([max(-FURTHEST * usual - now, run.begin_m - run.end_m), FURTHEST * usual - now])
        low, high = max(low, own.min()), min(high, own.max())
    steps = np.arange(np.ceil(low / step_m), np.floor(high / step_m) + 1)
    steps = steps[np.argsort(np.abs(steps), kind="stable")][: most + 1]
    return steps[steps != 0] * step_m


def _changed(line: SweptLine, fit: Fit, back: list[ComplexArray], move: _Move, longer_m: RealArray) -> ComplexArray:
    """How a move by each of some lengths changes what is shown, (lengths, frequencies)."""
    pieces, waves, z_0 = fit.prediction.pieces, fit.prediction.waves, line.impedance_ohm
    x, moved_joints = _with_joints(line, fit, move), _joints_behind(line, move.cable)
    first = max(plane for plane, piece in enumerate(pieces) if piece.part == move.cable)
    if move.next is None:
        last = max([first, *(plane for plane, piece in enumerate(pieces) if piece.part in moved_joints)])
    else:
        last = min(plane for plane, piece in enumerate(pieces) if piece.part == move.next)
    ahead = waves.ahead[last + 1]
    for plane in range(last, first - 1, -1):
        piece = pieces[plane]
        if isinstance(line.parts[piece.part], CablePart):
            longer = longer_m if plane == first else -longer_m * _ratio(line, move.cable, piece.part)
            angle = line.propagation(fit.x, piece.part) * (piece.end_m - piece.begin_m)
            angle = angle + 1j * line.cable(piece.part).beta * longer[:, None]
            ahead = line_scattering(line.cable_impedance(fit.x, piece.part), angle, z_0).ahead(ahead)
        elif piece.is_lumped and piece.part in moved_joints and move.joints is not None:
            ahead = lumped_scattering(line.lumped(x, piece.part), z_0).ahead(ahead)
        else:
            ahead = piece.scattering.ahead(ahead)
    before, source = waves.ahead[first], back[first]
    moved = waves.forward[first] ** 2 * (ahead - before) * (1 - source * before) / (1 - source * ahead)
    return moved * fit.prediction.by_reflection


def _joints_behind(line: SweptLine, cable: int) -> list[int]:
    """The joints behind a cable, up to the next one."""
    beyond = min((at for at in line.cables if at > cable), default=len(line.parts))
    return [at for at in line.joints if cable < at < beyond]


def _with_joints(line: SweptLine, fit: Fit, move: _Move) -> RealArray:
    """A fit's parameters, those of the joints behind a move's cable as it has them."""
    x = fit.x.copy()
    if move.joints is not None:
        for at in _joints_behind(line, move.cable):
            x[line.offsets[at] : line.offsets[at + 1]] = move.joints
    return x


def _moved(line: SweptLine, fit: Fit, move: _Move) -> tuple[tuple[PlacedFault, ...], RealArray]:
    """Faults and parameters to begin a fit with: faults in the cables stay where they are."""
    x, faults = _with_joints(line, fit, move), list(fit.faults)
    longer = {move.cable: move.longer_m}
    if move.next is not None:
        longer[move.next] = -move.longer_m * _ratio(line, move.cable, move.next)
    for at, metres in longer.items():
        x[line.offsets[at]] += metres / line.cable(at).length_m / line.prior.length
    begin = line.parameter_count
    for number, fault in enumerate(faults):
        if fault.about_m is not None and fault.part in longer:
            before = 1 + float(fit.x[line.offsets[fault.part]]) * line.prior.length
            behind = before + longer[fault.part] / line.cable(fault.part).length_m
            shift = longer[fault.part] if fault.part == move.next else 0.0
            place = (fault.place_m(fit.x[begin:]) * before + shift) / behind
            faults[number] = fault._replace(about_m=place)
            x[begin + fault.size_count] = 0.0
        begin += fault.parameter_count
    return tuple(faults), x
