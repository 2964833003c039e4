"""What a fit of a fault begins with: faults as they look on a fitted line, and joints moved to where one is seen."""

import numpy as np

from .arrays import ComplexArray, RealArray
from .faults import AT_A_JOINT, PlacedFault
from .fit import Fit, Start, fitted
from .screening import Place, Trial, screened, screened_stretches
from .swept_line import SweptLine

__all__ = [
    "AT_JOINT_BY_ID",
    "bare",
    "joints_beside",
    "masked_starts",
    "own_parameters",
    "place_of",
    "starts_at",
    "stretch_starts",
    "trial_starts",
    "with_joint_at",
]

LEAST_SCORE = 1.0
JOINT_TRIALS = 3
"""Kinds that are fitted at a joint at which all are tried again."""
FARTHEST_SHIFT = 2.5  # deviations of length by which a joint may be off to be where a fault is seen
MASKED = (("resistance", (0.0,)), ("inductance", (-0.5,)), ("capacitance", (0.7,)), ("series", (0.0, -0.5)))
AT_JOINT_BY_ID = {kind.id: kind for kind in AT_A_JOINT}


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


def trial_starts(line: SweptLine, fit: Fit, places: list[Place], most: int) -> list[Start]:
    """The trials that do best on a fitted line, each place and kind once, and joints moved to where they are."""
    chosen: list[Trial] = []
    starts: list[Start] = []
    for trial in screened(line, fit, places):
        if trial.score < LEAST_SCORE or len(chosen) == most:
            break
        near = [other for other in chosen if _near(trial, other)]
        if len(near) > 1 or any(other.fault.kind is trial.fault.kind for other in near):
            continue
        chosen.append(trial)
        starts.append(((*fit.faults, trial.fault), trial.begun(line, fit.x)))
        if trial.fault.about_m is not None:
            starts += _moved_joints(line, fit, trial, {place.part for place in places})
    return starts


def masked_starts(line: SweptLine, fit: Fit, until_m: float) -> list[Start]:
    """Faults at the first and the last joint with analyser or end as they should be.

    A fit of the intact line lays what is wrong there to them, and nothing is left to be seen.
    """
    joints = list(line.joints)
    if not joints:
        return []
    starts: list[Start] = []
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


def bare(line: SweptLine, fit: Fit) -> RealArray:
    """A fit's lengths of cables, and all else as usual: what is wrong is laid to nothing yet."""
    x = np.zeros(line.parameter_count)
    lengths = [line.offsets[at] for at in line.cables]
    x[lengths] = fit.x[lengths]
    return x


def starts_at(line: SweptLine, measured: ComplexArray, fit: Fit, x: RealArray, at: int) -> list[Start]:
    """The kinds that do best at a joint instead of a fit's last fault, with some parameters of the line."""
    others, fault = fit.faults[:-1], fit.faults[-1]
    x = np.concatenate([x, fit.x[line.parameter_count : fit.x.size - fault.parameter_count]])
    trials = screened(line, fitted(line, measured, x, others, 0), [Place(at, None)])[:JOINT_TRIALS]
    return [((*others, trial.fault), trial.begun(line, x)) for trial in trials]


def stretch_starts(line: SweptLine, measured: ComplexArray, fit: Fit, step_m: float, most: int) -> list[Start]:
    """Altered stretches that begin or end where a fit's last fault, in a cable, does."""
    others, fault, own = fit.faults[:-1], fit.faults[-1], own_parameters(fit)
    edges, x = [fault.place_m(own)], fit.x[: fit.x.size - fault.parameter_count]
    if fault.kind.is_stretch:
        edges.append(edges[0] + fault.kind.stretch(own).length_m)
    without = fitted(line, measured, x, others, 0)
    trials = [one for edge in edges for one in screened_stretches(line, without, fault.part, edge, step_m)]
    best = sorted(trials, key=lambda trial: -trial.score)[:most]
    return [((*others, trial.fault), trial.begun(line, x)) for trial in best]


def joints_beside(line: SweptLine, cable: int) -> list[int]:
    """The last joint before a cable and the first behind it."""
    return [*[at for at in line.joints if at < cable][-1:], *[at for at in line.joints if at > cable][:1]]


def with_joint_at(line: SweptLine, x: RealArray, at: int, place_m: float) -> RealArray | None:
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


def _moved_joints(line: SweptLine, fit: Fit, trial: Trial, judged: set[int]) -> list[Start]:
    """The same fault at the joints beside its cable, the cables before and behind longer and shorter to match."""
    place = place_of(line, trial.fault, np.array([*trial.sizes, 0.0]))
    kind = trial.fault.kind
    if kind.id not in AT_JOINT_BY_ID:
        return []
    moved = [
        (at, with_joint_at(line, fit.x, at, place)) for at in joints_beside(line, trial.fault.part) if at in judged
    ]
    return [
        ((*fit.faults, PlacedFault(AT_JOINT_BY_ID[kind.id], at)), np.concatenate([x, trial.sizes]))
        for at, x in moved
        if x is not None
    ]
