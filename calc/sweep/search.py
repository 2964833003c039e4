"""Searching for what explains a sweep: the line intact, with one fault at any place, and with two.

Fits begin in the lowest band and go on in wider ones. In each band the faults that look best on the fitted intact
line join those carried along; the best are kept.
"""

from typing import NamedTuple

import numpy as np

from .alignment import aligned_fits, lower_bands
from .arrays import ComplexArray, RealArray
from .faults import AT_A_JOINT, PlacedFault
from .fit import Fit, fitted
from .screening import Place, Trial, judged_until_m, place_grid, screened
from .settling import settled
from .swept_line import SweptLine

__all__ = ["Hypotheses", "fit_hypotheses", "own_parameters", "place_of"]

KEPT = 4
OTHER_KINDS = 2
TRIALS = 4
LAST_TRIALS = 8
SHORT_ROUNDS, ROUNDS = 5, 10
LEAST_SCORE = 1.0
LEAST_EVIDENCE = 10.0
HOPELESS = 60.0
"""Evidence by which a fault, fitted for a few rounds, may lag behind and still be fitted to the end."""
SECOND_TRIALS, JOINTS_AGAIN, JOINT_TRIALS = 4, 2, 3
"""Of a second fault; joints at which all kinds are tried again; kinds fitted there."""
FARTHEST_SHIFT = 2.5  # deviations of length by which a joint may be off to be where a fault is seen


MASKED = (("resistance", (0.0,)), ("inductance", (-0.5,)), ("capacitance", (0.7,)), ("series", (0.0, -0.5)))
AT_JOINT_BY_ID = {kind.id: kind for kind in AT_A_JOINT}


_Start = tuple[tuple[PlacedFault, ...], RealArray]
"""Faults, and the parameters of line and faults."""


class Hypotheses(NamedTuple):
    """The fits to all of the sweep, the best first."""

    intact: Fit
    single: list[Fit]
    """With one fault."""
    double: list[Fit]
    """With the best single fault and another."""
    swapped: list[Fit]
    """With the best of those others alone; then with that and another, the best single fault or one elsewhere."""


def place_of(line: SweptLine, fault: PlacedFault, own: RealArray) -> float:
    """Where the middle of a fault is along the cables as described [m]."""
    before = line.begin_m(fault.part)
    if fault.about_m is None:
        return before
    extent = fault.kind.stretch(own).length_m if fault.kind.is_stretch else 0.0
    return before + min(fault.place_m(own) + extent / 2, line.cable(fault.part).length_m)


def own_parameters(fit: Fit, number: int = -1) -> RealArray:
    """Those of one of a fit's faults, the last by default."""
    counts = [fault.parameter_count for fault in fit.faults]
    number %= len(counts)
    begin = fit.x.size - sum(counts[number:])
    return fit.x[begin : begin + counts[number]]


def fit_hypotheses(line: SweptLine, measured: ComplexArray, cell_m: float) -> Hypotheses:
    """Fit a line to a measured reflection; `cell_m` is the distance that the sweep resolves [m]."""
    intact, pool = _in_rising_bands(line, measured, cell_m)
    starts_intact = [intact.x, *(fit.x[: line.parameter_count] for fit in pool[:2])]
    whole = max((fitted(line, measured, x, (), ROUNDS) for x in starts_intact), key=lambda fit: fit.evidence)
    single = _kept(line, [fitted(line, measured, fit.x, fit.faults, ROUNDS) for fit in pool], KEPT)
    if not _betters(single, whole):
        return Hypotheses(whole, single, [], [])
    whole, single = _one_fault(line, measured, cell_m, whole, single)
    if not _betters(single, whole):
        return Hypotheses(whole, single, [], [])
    places = place_grid(line, cell_m / 2)
    second = _finished(line, measured, _starts(line, single[0], places, SECOND_TRIALS), 2, single[0].evidence)
    if not _betters(second, single[0]):
        return Hypotheses(whole, single, second, [])
    return _two_faults(line, measured, cell_m, Hypotheses(whole, single, second, []))


def _betters(fits: list[Fit], simpler: Fit) -> bool:
    """Whether the best of some fits says so much more than a simpler one that it is worth to go on."""
    return bool(fits) and fits[0].evidence - simpler.evidence > LEAST_EVIDENCE


def _in_rising_bands(line: SweptLine, measured: ComplexArray, cell_m: float) -> tuple[Fit, list[Fit]]:
    """The intact line, and the faults that were carried from the lowest band to all of the sweep."""
    bands = lower_bands(line)
    intact = max(aligned_fits(line, measured, bands), key=lambda fits: fits[-1].evidence)
    intact[-1] = settled(line.at(bands[-1]), measured[bands[-1]], intact[-1], cell_m)
    pool: list[Fit] = []
    for number, points in enumerate(bands):
        own, seen = line.at(points), measured[points]
        coarse = place_grid(line, cell_m / 2 * line.frequency_hz[-1] / own.frequency_hz[-1])
        starts: list[_Start] = [(fit.faults, fit.x) for fit in pool]
        starts += _starts(own, intact[number], coarse, LAST_TRIALS if number == len(bands) - 1 else TRIALS)
        if number == len(bands) - 1:
            starts += _masked_starts(own, intact[number], judged_until_m(line, cell_m))
        pool = _kept(line, [fitted(own, seen, x, faults, SHORT_ROUNDS) for faults, x in starts], KEPT)
    return intact[-1], pool


def _one_fault(
    line: SweptLine, measured: ComplexArray, cell_m: float, whole: Fit, single: list[Fit]
) -> tuple[Fit, list[Fit]]:
    """The intact line and one fault, each fitted again with what the best fault found of the line."""
    best = _best_place(line, measured, single[0], cell_m)
    again = fitted(line, measured, best.x[: line.parameter_count], (), ROUNDS)
    starts = [(fit.faults, np.concatenate([best.x[: line.parameter_count], own_parameters(fit)])) for fit in single[1:]]
    starts += _starts(line, again, place_grid(line, cell_m / 2), TRIALS)
    for fit in [fit for fit in single if fit.faults[-1].about_m is None][:JOINTS_AGAIN]:
        starts += _starts_at(line, measured, fit, fit.x[: line.parameter_count], fit.faults[-1].part)
    found = _kept(line, [best, *single, *_finished(line, measured, starts, KEPT, best.evidence)], KEPT)
    return max(whole, again, key=lambda fit: fit.evidence), found


def _two_faults(line: SweptLine, measured: ComplexArray, cell_m: float, found: Hypotheses) -> Hypotheses:
    """What was found, each fault's place judged beside the other, and the first one alone on the line of both."""
    both, count = _best_place(line, measured, found.double[0], cell_m), line.parameter_count
    alone = fitted(line, measured, both.x[: count + both.faults[0].parameter_count], both.faults[:1], ROUNDS)
    single = _kept(line, [settled(line, measured, alone, cell_m), *found.single], KEPT)
    other = fitted(line, measured, np.concatenate([both.x[:count], own_parameters(both)]), both.faults[1:], ROUNDS)
    turned = np.concatenate([both.x[:count], own_parameters(both), own_parameters(both, 0)])
    places = place_grid(line, cell_m / 2)
    starts = [(both.faults[::-1], turned), *_starts(line, other, places, SECOND_TRIALS)]
    swapped = [other, *_finished(line, measured, starts, 2, both.evidence)]
    return Hypotheses(found.intact, single, [both, *found.double[1:]], swapped)


def _best_place(line: SweptLine, measured: ComplexArray, fit: Fit, cell_m: float) -> Fit:
    """The fit with its joints moved, or its last fault at one of the joints beside it."""
    moved = settled(line, measured, fit, cell_m)
    at_joint = _at_joints_instead(line, measured, moved, judged_until_m(line, cell_m))
    return max([moved, *(settled(line, measured, one, cell_m) for one in at_joint)], key=lambda one: one.evidence)


def _finished(line: SweptLine, measured: ComplexArray, starts: list[_Start], most: int, beside: float) -> list[Fit]:
    """The best of some starts, fitted to the end unless they are hopeless beside some evidence."""
    fits = _kept(line, [fitted(line, measured, x, faults, SHORT_ROUNDS) for faults, x in starts], most)
    hopeful = [fit for fit in fits if fit.evidence > beside - HOPELESS]
    return _kept(line, [fitted(line, measured, fit.x, fit.faults, ROUNDS) for fit in hopeful], most)


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


def _at_joints_instead(line: SweptLine, measured: ComplexArray, fit: Fit, until_m: float) -> list[Fit]:
    """The best fit with a fit's last fault not in a cable but at a joint beside it, which is moved to that place."""
    fault = fit.faults[-1]
    if fault.about_m is None:
        return []
    place, count = place_of(line, fault, own_parameters(fit)), line.parameter_count
    before = [at for at in line.joints if at < fault.part][-1:]
    behind = [at for at in line.joints if at > fault.part][:1]
    starts: list[_Start] = []
    for at in before + behind:
        moved = _with_joint_at(line, fit.x[:count], at, place)
        if moved is None or line.begin_m(at) > until_m:
            continue
        starts += _starts_at(line, measured, fit, moved, at)
    return _kept(line, [fitted(line, measured, x, faults, ROUNDS) for faults, x in starts], 1)


def _starts_at(line: SweptLine, measured: ComplexArray, fit: Fit, x: RealArray, at: int) -> list[_Start]:
    """The kinds that do best at a joint instead of a fit's last fault, with some parameters of the line."""
    others, fault = fit.faults[:-1], fit.faults[-1]
    x = np.concatenate([x, fit.x[line.parameter_count : fit.x.size - fault.parameter_count]])
    trials = screened(line, fitted(line, measured, x, others, 0), [Place(at, None)])[:JOINT_TRIALS]
    return [((*others, trial.fault), np.concatenate([x, trial.parameters])) for trial in trials]


def _with_joint_at(line: SweptLine, x: RealArray, at: int, place_m: float) -> RealArray | None:
    """Parameters with the cables before a joint and behind it longer and shorter, so that it lies elsewhere [m].

    None where it can't be.
    """
    here = line.begin_m(at)
    beyond, shift = line.length_m - here, place_m - here
    if not here or abs(shift) > FARTHEST_SHIFT * line.prior.length * here:
        return None
    moved = x.copy()
    for cable in line.cables:
        share = shift / here if cable < at else -shift / beyond
        moved[line.offsets[cable]] += share / line.prior.length
    return moved


def _near(one: Trial, other: Trial) -> bool:
    if one.fault.part != other.fault.part:
        return False
    if one.fault.about_m is None or other.fault.about_m is None:
        return True
    return abs(one.fault.about_m - other.fault.about_m) < 4 * one.fault.place_deviation_m


def _moved_joints(line: SweptLine, fit: Fit, trial: Trial, judged: set[int]) -> list[_Start]:
    """The same fault at the joints beside its cable, the cables before and behind longer and shorter to match."""
    place = place_of(line, trial.fault, np.array([*trial.sizes, 0.0]))
    before = [at for at in line.joints if at < trial.fault.part][-1:]
    behind = [at for at in line.joints if at > trial.fault.part][:1]
    kind = trial.fault.kind
    if kind.id not in AT_JOINT_BY_ID:
        return []
    moved = [(at, _with_joint_at(line, fit.x, at, place)) for at in before + behind if at in judged]
    return [
        ((*fit.faults, PlacedFault(AT_JOINT_BY_ID[kind.id], at)), np.concatenate([x, trial.sizes]))
        for at, x in moved
        if x is not None
    ]


def _kept(line: SweptLine, fits: list[Fit], most: int) -> list[Fit]:
    """The best fits: of each place once, and a few other kinds at the best place."""
    kept: list[Fit] = []
    others = 0
    for fit in sorted(fits, key=lambda fit: -fit.evidence):
        fault = fit.faults[-1]
        same = [other for other in kept if _same_place(line, fit, other)]
        if same:
            best = any(other is kept[0] for other in same)
            if others == OTHER_KINDS or not best or any(fault.kind is o.faults[-1].kind for o in same):
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
