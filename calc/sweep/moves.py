"""Moves of a fitted line's joints, tried without a fit: with the waves known, the reflection follows exactly."""

from itertools import pairwise
from typing import NamedTuple

import numpy as np

from .arrays import ComplexArray, RealArray
from .faults import PlacedFault
from .fit import Fit
from .line_waves import Scattering, line_scattering, lumped_scattering
from .swept_line import CablePart, SweptLine

__all__ = ["AS_USUAL", "Move", "changes_of", "lengths_of", "moved", "moved_cables", "prior_gain", "ratio", "shown_by"]

FURTHEST = 3.0  # deviations of length
AS_USUAL = np.zeros(3)
"""Parameters of a joint as described."""


class Move(NamedTuple):
    """A cable longer, and another one behind it as much shorter or, without one, all behind it moved."""

    cable: int
    next: int | None
    longer_m: float
    """As described; by as much delay the other one is shorter."""
    joints: RealArray | None
    """Parameters of the joints behind the cable; None for as they are fitted."""


def changes_of(line: SweptLine) -> list[tuple[int, int | None]]:
    """Which cable becomes longer, and which next one as much shorter or none."""
    cables = list(line.cables)
    return [*((at, None) for at in cables), *pairwise(cables)]


def ratio(line: SweptLine, cable: int, other: int) -> float:
    """Metres of another cable that delay as much as one of a cable."""
    return float(line.cable(cable).beta[-1] / line.cable(other).beta[-1])


def prior_gain(line: SweptLine, fit: Fit, cable: int, behind: int | None, longer_m: RealArray) -> RealArray:
    """What a move by some lengths [m] wins in evidence by lengths nearer to the described ones, or loses."""
    gain = _own_gain(line, fit, cable, longer_m)
    if behind is not None:
        gain = gain + _own_gain(line, fit, behind, -longer_m * ratio(line, cable, behind))
    return gain


def _own_gain(line: SweptLine, fit: Fit, at: int, longer_m: RealArray) -> RealArray:
    own = fit.x[line.offsets[at]]
    moved = own + longer_m / line.cable(at).length_m / line.prior.length
    gain: RealArray = (own**2 - moved**2) / 2
    return gain


def lengths_of(line: SweptLine, fit: Fit, cable: int, behind: int | None, step_m: float, most: int) -> RealArray:
    """By what a cable may become longer [m], the nearest so many steps."""
    low, high = -np.inf, np.inf
    scales = {cable: 1.0} | ({} if behind is None else {behind: -1 / ratio(line, cable, behind)})
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


class MovedCables(NamedTuple):
    """The planes from which to which a move reaches, and the cables there as it makes them: (lengths, frequencies)."""

    first: int
    last: int
    ports: dict[int, Scattering]


def moved_cables(line: SweptLine, fit: Fit, cable: int, behind: int | None, longer_m: RealArray) -> MovedCables:
    """A cable longer by each of some lengths [m], and one behind it as much shorter."""
    pieces = fit.prediction.pieces
    planes = {at: [plane for plane, piece in enumerate(pieces) if piece.part == at] for at in (cable, behind)}
    first = max(planes[cable])
    moved_joints = _joints_behind(line, cable)
    if behind is None:
        last = max([first, *(plane for plane, piece in enumerate(pieces) if piece.part in moved_joints)])
    else:
        last = min(planes[behind])
    ports = {}
    for plane in {first, last}:
        piece = pieces[plane]
        if isinstance(line.parts[piece.part], CablePart):
            longer = longer_m if plane == first else -longer_m * ratio(line, cable, piece.part)
            angle = line.propagation(fit.x, piece.part) * (piece.end_m - piece.begin_m)
            angle = angle + 1j * line.cable(piece.part).beta * longer[:, None]
            ports[plane] = line_scattering(line.cable_impedance(fit.x, piece.part), angle, line.impedance_ohm)
    return MovedCables(first, last, ports)


def shown_by(line: SweptLine, fit: Fit, back: list[ComplexArray], move: Move, cables: MovedCables) -> ComplexArray:
    """How a move by each of some lengths changes what is shown, (lengths, frequencies)."""
    pieces, waves, first = fit.prediction.pieces, fit.prediction.waves, cables.first
    moved_joints = _joints_behind(line, move.cable)
    ports = lumped_scattering(line.lumped(_with_joints(line, fit, move)), line.impedance_ohm)
    ahead = waves.ahead[cables.last + 1]
    for plane in range(cables.last, first - 1, -1):
        piece = pieces[plane]
        if plane in cables.ports:
            ahead = cables.ports[plane].ahead(ahead)
        elif piece.is_lumped and piece.part in moved_joints and move.joints is not None:
            ahead = ports.row(piece.part).ahead(ahead)
        else:
            ahead = piece.scattering.ahead(ahead)
    before, source = waves.ahead[first], back[first]
    moved = waves.forward[first] ** 2 * (ahead - before) * (1 - source * before) / (1 - source * ahead)
    return moved * fit.prediction.by_reflection


def _joints_behind(line: SweptLine, cable: int) -> list[int]:
    """The joints behind a cable, up to the next one."""
    beyond = min((at for at in line.cables if at > cable), default=len(line.parts))
    return [at for at in line.joints if cable < at < beyond]


def _with_joints(line: SweptLine, fit: Fit, move: Move) -> RealArray:
    """A fit's parameters, those of the joints behind a move's cable as it has them."""
    x = fit.x.copy()
    if move.joints is not None:
        for at in _joints_behind(line, move.cable):
            x[line.offsets[at] : line.offsets[at + 1]] = move.joints
    return x


def moved(line: SweptLine, fit: Fit, move: Move) -> tuple[tuple[PlacedFault, ...], RealArray]:
    """Faults and parameters to begin a fit with: faults in the cables stay where they are."""
    x, faults = _with_joints(line, fit, move), list(fit.faults)
    longer = {move.cable: move.longer_m}
    if move.next is not None:
        longer[move.next] = -move.longer_m * ratio(line, move.cable, move.next)
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
