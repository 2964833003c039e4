"""Joints that a fit of the intact line took for where a fault is.

A fault that sends more of an echo than the joint near it is fitted as that joint, and the joint's own echo is laid to
something else. So each joint is tried all along where it may be, with a fault where it was taken to be.
"""

from itertools import combinations
from typing import NamedTuple

import numpy as np

from .alignment import followed_up, lower_bands
from .arrays import ComplexArray
from .faults import IN_A_CABLE, FaultKind, PlacedFault
from .fit import Fit, Start
from .line_waves import lumped_scattering
from .moves import AS_USUAL, Move, lengths_of, moved, moved_cables, prior_gain, ratio, shown_by
from .screening import FollowedScore, judged_until_m
from .swept_line import SweptLine

__all__ = ["mistaken_fits"]

KIND_BY_ID = {kind.id: kind for kind in IN_A_CABLE}
TRIED = tuple((KIND_BY_ID[kind], (size,)) for kind in ("capacitance", "leak") for size in (-0.5, 0.5, 1.5))
"""What the beginning of most faults is like, where its echo is taken for a joint's."""
MOST_TRIED, OF_EACH, MOST_STARTS, BANDS = 400, 2, 6, 2
"""Lengths that are tried in all cables together, starts of one move, and of all; lower bands in which they are fitted
first."""


class _Mistaken(NamedTuple):
    """A move of a joint with usual parameters, and a fault of some size where the joint was."""

    move: Move
    kind: FaultKind
    size: tuple[float, ...]
    gain: float
    """Of evidence, about."""


def mistaken_fits(line: SweptLine, measured: ComplexArray, cell_m: float, intact: Fit) -> list[Fit]:
    """Fits to all of the sweep, of the line intact as it was fitted; `cell_m` is the distance that it resolves [m]."""
    bands = [*lower_bands(line)[-BANDS:], np.arange(line.frequency_hz.size)]
    # at its upper edge a joint that is off by a part of a cell is seen turned
    return [fits[-1] for fits in followed_up(line, measured, bands, _starts(line, intact, cell_m))]


def _starts(line: SweptLine, fit: Fit, cell_m: float) -> list[Start]:
    changes = [*((at, None) for at in line.cables), *combinations(line.cables, 2)]
    found = [one for cable, behind in changes for one in _mistaken(line, fit, cable, behind, cell_m / 4)]
    until_m = judged_until_m(line, cell_m)
    starts: list[Start] = []
    for one in sorted(found, key=lambda one: -one.gain):
        _, x = moved(line, fit, one.move)
        place = _place(line, fit, one.move)
        if len(starts) == MOST_STARTS or one.gain <= 0 or place is None:
            continue
        fault = PlacedFault(one.kind, *place, cell_m / 4)
        if line.begin_m(fault.part) + place[1] <= until_m:
            starts.append(((fault,), np.concatenate([x, one.size, [0.0]])))
    return starts


def _mistaken(line: SweptLine, fit: Fit, cable: int, behind: int | None, step_m: float) -> list[_Mistaken]:
    """The best length of one move with each fault."""
    longer = lengths_of(line, fit, cable, behind, step_m, MOST_TRIED // len(line.cables))
    longer = longer[[_place(line, fit, Move(cable, behind, float(one), None)) is not None for one in longer]]
    if not longer.size:
        return []
    score, back = FollowedScore(fit), fit.prediction.back()
    prior = prior_gain(line, fit, cable, behind, longer)
    elsewhere = shown_by(
        line, fit, back, Move(cable, behind, 0.0, AS_USUAL), moved_cables(line, fit, cable, behind, longer)
    )
    plane = 1 + max(plane for plane, piece in enumerate(fit.prediction.pieces) if piece.part == cable)
    ahead, source = fit.prediction.waves.ahead[plane], back[plane]
    seen = fit.prediction.waves.forward[plane] ** 2 * (1 - source * ahead) * fit.prediction.by_reflection
    found = []
    for kind, size in TRIED:
        lumped = kind.lumped(np.array(size), 2 * np.pi * line.frequency_hz)
        other = lumped_scattering(lumped, line.impedance_ohm).ahead(ahead)
        gains = prior + score.of(elsewhere + seen * (other - ahead) / (1 - source * other)) - size[0] ** 2 / 2
        peak = int(np.argmax(gains))
        found.append(_Mistaken(Move(cable, behind, float(longer[peak]), AS_USUAL), kind, size, float(gains[peak])))
    return sorted(found, key=lambda one: -one.gain)[:OF_EACH]


def _place(line: SweptLine, fit: Fit, move: Move) -> tuple[int, float] | None:
    """The cable, and where in it [m], in which the joint behind a moved cable was; None if behind all of them."""
    if move.longer_m > 0:
        before = _length(line, fit, move.cable)
        part, new, old = move.cable, before + move.longer_m, before
    else:
        cables = [at for at in line.cables if at > move.cable]
        if not cables:
            return None
        old = -move.longer_m * ratio(line, move.cable, cables[0])
        part, new = cables[0], _length(line, fit, cables[0]) + (0.0 if move.next is None else old)
    share = old / new
    return (part, share * line.cable(part).length_m) if 0 < share < 1 else None


def _length(line: SweptLine, fit: Fit, cable: int) -> float:
    """Of a cable as fitted, in metres as described."""
    return float(line.cable(cable).length_m * (1 + fit.x[line.offsets[cable]] * line.prior.length))
