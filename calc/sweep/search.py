"""Searching for what explains a sweep: the line intact, with one fault at any place, and with two.

Fits begin in the lowest band and go on in wider ones. In each band the faults that look best on the fitted intact
line join those carried along; the best are kept.
"""

from typing import NamedTuple

import numpy as np

from .alignment import aligned_fits, lower_bands
from .arrays import ComplexArray, IndexArray, RealArray
from .faults import AT_A_JOINT, PlacedFault
from .fit import Fit, fitted
from .screening import Place, Trial, judged_until_m, place_grid, screened
from .swept_line import SweptLine

__all__ = ["Hypotheses", "fit_hypotheses", "own_parameters", "place_of"]

KEPT = 4
OTHER_KINDS = 2
TRIALS = 4
LAST_TRIALS = 8
SHORT_ROUNDS, ROUNDS = 5, 10
LEAST_SCORE = 1.0
LEAST_EVIDENCE = 10.0
SECOND_TRIALS = 4
MOST_MOVES, MOVE_TRIALS, LEAST_MOVE = 2, 3, 2.0
"""Rounds of moving joints of the intact line, places tried in each, and the evidence that one must win."""
FARTHEST_SHIFT = 2.5  # deviations of length by which a joint may be off to be where a fault is seen


MASKED = (("resistance", (0.0,)), ("inductance", (-0.5,)), ("capacitance", (0.7,)), ("series", (0.0, -0.5)))
AT_JOINT_BY_ID = {kind.id: kind for kind in AT_A_JOINT}


_Start = tuple[tuple[PlacedFault, ...], RealArray]
"""Faults, and the parameters of line and faults."""


class Hypotheses(NamedTuple):
    """The fits to all of the sweep: the intact line, one fault each, two faults each; the best first."""

    intact: Fit
    single: list[Fit]
    double: list[Fit]


def place_of(line: SweptLine, fault: PlacedFault, own: RealArray) -> float:
    """Where the middle of a fault is along the cables as described [m]."""
    before = line.begin_m(fault.part)
    if fault.about_m is None:
        return before
    extent = fault.kind.stretch(own).length_m if fault.kind.is_stretch else 0.0
    return before + min(fault.place_m(own) + extent / 2, line.cables[fault.part].length_m)


def own_parameters(fit: Fit, number: int = -1) -> RealArray:
    """Those of one of a fit's faults, the last by default."""
    counts = [fault.parameter_count for fault in fit.faults]
    number %= len(counts)
    begin = fit.x.size - sum(counts[number:])
    return fit.x[begin : begin + counts[number]]


def fit_hypotheses(line: SweptLine, measured: ComplexArray, cell_m: float) -> Hypotheses:
    """Fit a line to a measured reflection; `cell_m` is the distance that the sweep resolves [m]."""
    bands = lower_bands(line)
    intact = max(aligned_fits(line, measured, bands), key=lambda fits: fits[-1].evidence)
    pool: list[Fit] = []
    for number, points in enumerate(bands):
        own, seen = line.at(points), measured[points]
        coarse = place_grid(line, cell_m / 2 * line.frequency_hz[-1] / own.frequency_hz[-1])
        starts: list[_Start] = [(fit.faults, fit.x) for fit in pool]
        starts += _starts(own, intact[number], coarse, LAST_TRIALS if number == len(bands) - 1 else TRIALS)
        if number == len(bands) - 1:
            starts += _masked_starts(own, intact[number], judged_until_m(line, cell_m))
        pool = _kept(line, [fitted(own, seen, x, faults, SHORT_ROUNDS) for faults, x in starts], KEPT)
    starts_intact = [intact[-1].x, *(fit.x[: line.parameter_count] for fit in pool[:2])]
    starts_intact.append(_joints_moved(line, measured, intact[-1], bands[-1], place_grid(line, cell_m / 2)))
    full_intact = max((fitted(line, measured, x, (), ROUNDS) for x in starts_intact), key=lambda fit: fit.evidence)
    single = _kept(line, [fitted(line, measured, fit.x, fit.faults, ROUNDS) for fit in pool], KEPT)
    double: list[Fit] = []
    if single and single[0].evidence - full_intact.evidence > LEAST_EVIDENCE:
        places = place_grid(line, cell_m / 2)
        starts = _starts(line, single[0], places, SECOND_TRIALS)
        double = _kept(line, [fitted(line, measured, x, faults, SHORT_ROUNDS) for faults, x in starts], 2)
        double = _kept(line, [fitted(line, measured, fit.x, fit.faults, ROUNDS) for fit in double], 2)
    return Hypotheses(full_intact, single, double)


def _starts(line: SweptLine, fit: Fit, places: list[Place], most: int) -> list[_Start]:
    """The trials that do best on a fitted line, each place and kind once, and joints moved to where they are."""
    chosen: list[Trial] = []
    starts: list[_Start] = []
    for trial in screened(line, fit, places):
        if trial.score < LEAST_SCORE or len(chosen) == most:
            break
        near = [other for other in chosen if _near(trial, other)]
        if len(near) > 1 or any(other.fault.kind is trial.fault.kind for other in near):
            continue
        chosen.append(trial)
        starts.append(((*fit.faults, trial.fault), np.concatenate([fit.x, trial.parameters])))
        if trial.fault.about_m is not None:
            starts += _moved_joints(line, fit, trial, {place.part for place in places})
    return starts


def _masked_starts(line: SweptLine, fit: Fit, until_m: float) -> list[_Start]:
    """Faults at the first and the last joint with analyser or end as they should be.

    A fit of the intact line lays what is wrong there to them, and nothing is left to be seen.
    """
    joints = list(line.joints)
    if not joints:
        return []
    starts: list[_Start] = []
    ends = {joints[0]: (0, line.offsets[0]), joints[-1]: (line.offsets[-2], line.parameter_count)}
    for at, (low, high) in ends.items():
        if line.begin_m(at) > until_m:
            continue
        x = fit.x.copy()
        x[low:high] = 0.0
        x[line.offsets[at] : line.offsets[at + 1]] = 0.0
        for kind, sizes in MASKED:
            starts.append(((PlacedFault(AT_JOINT_BY_ID[kind], at),), np.concatenate([x, sizes])))
    return starts


def _joints_moved(
    line: SweptLine, measured: ComplexArray, fit: Fit, points: IndexArray, places: list[Place]
) -> RealArray:
    """The parameters of an intact line with joints moved, one after the other, to where something is seen.

    A fit does not find by itself that a joint is beyond the resolution from where it is taken to be.
    """
    own, seen = line.at(points), measured[points]
    for _ in range(MOST_MOVES):
        moved = [_shifted(own, fit, trial) for trial in screened(own, fit, places)[:MOVE_TRIALS]]
        starts = [x for each in moved for x in each]
        fits = [fitted(own, seen, x, (), SHORT_ROUNDS) for x in starts]
        best = max(fits, key=lambda one: one.evidence, default=fit)
        if best.evidence <= fit.evidence + LEAST_MOVE:
            break
        fit = best
    return fit.x


def _shifted(line: SweptLine, fit: Fit, trial: Trial) -> list[RealArray]:
    """Parameters with the joints beside a trial's cable moved to its place, all others staying where they are."""
    found: list[RealArray] = []
    if trial.fault.about_m is None:
        return found
    place, cables = line.begin_m(trial.fault.part) + trial.fault.about_m, list(line.cables)
    at = cables.index(trial.fault.part)
    for before, behind in ((at - 1, at), (at, at + 1)):
        if before < 0 or behind >= len(cables):
            continue
        x, shift = fit.x.copy(), place - line.begin_m(cables[behind])
        for cable, own_shift in ((cables[before], shift), (cables[behind], -shift)):
            x[line.offsets[cable]] += own_shift / line.cables[cable].length_m / line.prior.length
        if np.abs(x[[line.offsets[cables[before]], line.offsets[cables[behind]]]]).max() < FARTHEST_SHIFT:
            found.append(x)
    return found


def _near(one: Trial, other: Trial) -> bool:
    if one.fault.part != other.fault.part:
        return False
    if one.fault.about_m is None or other.fault.about_m is None:
        return True
    return abs(one.fault.about_m - other.fault.about_m) < 4 * one.fault.place_deviation_m


def _moved_joints(line: SweptLine, fit: Fit, trial: Trial, judged: set[int]) -> list[_Start]:
    """The same fault at the joints beside its cable, the cables before and behind longer and shorter to match."""
    found: list[_Start] = []
    place = place_of(line, trial.fault, np.array([*trial.sizes, 0.0]))
    before = [at for at in line.joints if at < trial.fault.part][-1:]
    behind = [at for at in line.joints if at > trial.fault.part][:1]
    kind = trial.fault.kind
    if kind.id not in AT_JOINT_BY_ID:
        return []
    for at in before + behind:
        here = line.begin_m(at)
        beyond = line.length_m - here
        shift = place - here
        if at not in judged or not here or abs(shift) > FARTHEST_SHIFT * line.prior.length * here:
            continue
        x = fit.x.copy()
        for cable in line.cables:
            own = line.offsets[cable]
            share = shift / here if cable < at else -shift / beyond
            x[own] += share / line.prior.length
        found.append(((*fit.faults, PlacedFault(AT_JOINT_BY_ID[kind.id], at)), np.concatenate([x, trial.sizes])))
    return found


def _kept(line: SweptLine, fits: list[Fit], most: int) -> list[Fit]:
    """The best fits: of each place once, and a few other kinds at the best place."""
    kept: list[Fit] = []
    others = 0
    for fit in sorted(fits, key=lambda fit: -fit.evidence):
        fault = fit.faults[-1]
        same = [other for other in kept if _same_place(line, fit, other)]
        if same:
            if others == OTHER_KINDS or kept[0] not in same or any(fault.kind is o.faults[-1].kind for o in same):
                continue
            others += 1
        if len(kept) - others < most or same:
            kept.append(fit)
    return kept


def _same_place(line: SweptLine, one: Fit, other: Fit) -> bool:
    fault, second = one.faults[-1], other.faults[-1]
    if fault.part != second.part:
        return False
    places = [place_of(line, fit.faults[-1], own_parameters(fit)) for fit in (one, other)]
    return fault.about_m is None or abs(places[0] - places[1]) <= 2 * fault.place_deviation_m
