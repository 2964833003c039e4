"""Searching for what explains a sweep: the line intact, with one fault at any place, and with two.

Fits begin in the lowest band and go on in wider ones. In each band the faults that look best on the fitted intact
line join those carried along; the best are kept. At last all cables may wander in impedance as much as cables do.
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
LAST_TRIALS = 6
FIRST_ROUNDS, SHORT_ROUNDS, ROUNDS = 2, 5, 10
LEAST_SCORE = 1.0
LEAST_EVIDENCE = 10.0
HOPELESS = 60.0
"""Evidence by which a fault, fitted for a few rounds, may lag behind and still be fitted to the end."""
SECOND_TRIALS = 4
MOST_MOVES, MOVE_TRIALS, LEAST_MOVE = 2, 3, 2.0
"""Rounds of moving joints, places tried in each, and the evidence that one must win."""
RELAID_CELLS = (-2, -1, 1, 2)
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
    """Fit a line to a measured reflection; `cell_m` is the distance that the sweep resolves [m].

    Joints and faults are first placed on evened cables: waves of impedance would stand for what is in a wrong place.
    """
    even, bands, places = line.evened(), lower_bands(line), place_grid(line, cell_m / 2)
    rising, pool = _rising(even, measured, bands, cell_m)
    starts_intact = [rising.x, *(fit.x[: even.parameter_count] for fit in pool[:2])]
    starts_intact.append(_joints_moved(even, measured, rising, bands[-1], places))
    fits = [fitted(line, measured, line.of_evened(even, x), (), ROUNDS) for x in starts_intact]
    intact = max(fits, key=lambda fit: fit.evidence)
    hopeful = [fit for fit in pool if fit.evidence > rising.evidence - HOPELESS]
    starts = [(fit.faults, line.of_evened(even, fit.x)) for fit in hopeful]
    starts += _starts(line, intact, places, LAST_TRIALS)
    single = _finished(line, measured, starts, intact.evidence, KEPT)
    if not single or single[0].evidence - intact.evidence <= LEAST_EVIDENCE:
        return Hypotheses(intact, single, [])
    moved = _joints_moved(line, measured, single[0], bands[-1], places)
    # before anything is accused the intact line is tried again, harder
    again = fitted(line, measured, moved[: line.parameter_count], (), ROUNDS)
    relaid = line.of_evened(even, _relaid(even, measured, rising, bands[-1], cell_m))
    harder = [relaid, *_instead(line, single[0])]
    intact = max(intact, again, *(fitted(line, measured, x, (), ROUNDS) for x in harder), key=lambda fit: fit.evidence)
    # what the best fault found of the line serves the others too
    starts = [(fit.faults, np.concatenate([again.x, fit.x[again.x.size :]])) for fit in single[1:]]
    starts += [(single[0].faults, moved), *_masked_starts(line, again, judged_until_m(line, cell_m))]
    single = _kept(line, [*single, *_finished(line, measured, starts, intact.evidence, KEPT)], KEPT)
    starts = _starts(line, single[0], places, SECOND_TRIALS)
    return Hypotheses(intact, single, _finished(line, measured, starts, single[0].evidence, 2))


def _rising(line: SweptLine, measured: ComplexArray, bands: list[IndexArray], cell_m: float) -> tuple[Fit, list[Fit]]:
    """The intact line and the best single faults, as fitted in the last of rising bands."""
    intact = max(aligned_fits(line, measured, bands), key=lambda fits: fits[-1].evidence)
    pool: list[Fit] = []
    for number, points in enumerate(bands):
        own, seen = line.at(points), measured[points]
        coarse = place_grid(line, cell_m / 2 * line.frequency_hz[-1] / own.frequency_hz[-1])
        starts = [(fit.faults, fit.x) for fit in pool] + _starts(own, intact[number], coarse, TRIALS)
        if number == len(bands) - 1:
            starts += _masked_starts(own, intact[number], judged_until_m(line, cell_m))
        pool = _kept(line, [fitted(own, seen, x, faults, SHORT_ROUNDS) for faults, x in starts], KEPT)
    return intact[-1], pool


def _finished(line: SweptLine, measured: ComplexArray, starts: list[_Start], evidence: float, most: int) -> list[Fit]:
    """The best of some faults, fitted to the end unless hopeless beside the evidence without them."""
    fits = _kept(line, [fitted(line, measured, x, faults, SHORT_ROUNDS) for faults, x in starts], most)
    least = max([evidence, *(fit.evidence for fit in fits)]) - HOPELESS
    hopeful = [fitted(line, measured, fit.x, fit.faults, ROUNDS) for fit in fits if fit.evidence > least]
    return _kept(line, hopeful, most)


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
    """Faults at the first and the last joint that can be judged, with analyser or end as they should be.

    A fit of the intact line lays what is wrong there to them, and nothing is left to be seen.
    """
    joints = [at for at in line.joints if line.begin_m(at) <= until_m]
    if not joints:
        return []
    starts: list[_Start] = []
    analyser, end = slice(line.offsets[0]), slice(line.offsets[joints[-1]], line.parameter_count)
    for at, span in ((joints[0], analyser), (joints[-1], end)):
        x = fit.x.copy()
        x[span] = 0.0
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
    fit = fitted(own, seen, fit.x, fit.faults, SHORT_ROUNDS)
    for _ in range(MOST_MOVES):
        moved = [_shifted(own, fit, trial) for trial in screened(own, fit, places)[:MOVE_TRIALS]]
        starts = [x for each in moved for x in each]
        fits = [fitted(own, seen, x, fit.faults, SHORT_ROUNDS) for x in starts]
        best = max(fits, key=lambda one: one.evidence, default=fit)
        if best.evidence <= fit.evidence + LEAST_MOVE:
            break
        fit = best
    return fit.x


def _instead(line: SweptLine, fit: Fit) -> list[RealArray]:
    """Parameters of the intact line with a joint where a fit has a fault in a cable."""
    fault, own = fit.faults[-1], own_parameters(fit)
    if fault.about_m is None:
        return []
    place_m = place_of(line, fault, own) - line.begin_m(fault.part)
    count = line.parameter_count
    return [x[:count] for x in _shifted(line, fit, Trial(fault._replace(about_m=place_m), (), 0.0))]


def _relaid(line: SweptLine, measured: ComplexArray, fit: Fit, points: IndexArray, cell_m: float) -> RealArray:
    """The parameters of an intact line with cables longer or shorter by a few cells of distance.

    Either all behind a cable moves with its end, or the next one is as much shorter.
    """
    own, seen, cables = line.at(points), measured[points], list(line.cables)
    for _ in range(MOST_MOVES):
        starts = []
        for at, behind in zip(cables, [*cables[1:], None], strict=True):
            for cells in RELAID_CELLS:
                moved = [(at, cells), *([] if behind is None else [(behind, -cells)])]
                for changes in (moved[:1], moved)[: len(moved)]:
                    x = fit.x.copy()
                    for cable, more in changes:
                        x[line.offsets[cable]] += more * cell_m / line.cables[cable].length_m / line.prior.length
                    starts.append(x)
        fits = [fitted(own, seen, x, (), FIRST_ROUNDS) for x in starts]
        best = sorted(fits, key=lambda one: -one.evidence)[:MOVE_TRIALS]
        found = max((fitted(own, seen, one.x, (), SHORT_ROUNDS) for one in best), key=lambda one: one.evidence)
        if found.evidence <= fit.evidence + LEAST_MOVE:
            break
        fit = found
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
