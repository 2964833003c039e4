"""Searching for what explains a sweep: the line intact, with one fault at any place, and with two.

Fits begin in the lowest band and go on in wider ones. In each band the faults that look best on the fitted intact
line join those carried along; the best are kept. Where what they say is odd, faults are tried on other lines too: a
fit of the intact line hides a fault in parts that are off and in cables of wrong lengths.
"""

from collections.abc import Iterator
from typing import NamedTuple

import numpy as np

from .alignment import aligned_fits, lower_bands
from .arrays import ComplexArray, RealArray
from .dark_joints import dark_fits
from .faults import RARE
from .fit import Fit, Start, fitted
from .mistaken_joints import mistaken_fits
from .racing import raced
from .screening import judged_until_m, place_grid
from .settling import settled
from .starts import (
    bare,
    joints_beside,
    masked_starts,
    own_parameters,
    place_of,
    starts_at,
    stretch_starts,
    trial_starts,
    with_joint_at,
)
from .swept_line import SweptLine

__all__ = ["Hypotheses", "explained_to", "fit_hypotheses"]

KEPT = 4
OTHER_KINDS = 2
TRIALS = 4
LAST_TRIALS = 8
SHORT_ROUNDS, ROUNDS = 5, 10
LEAST_EVIDENCE, LEAST_GAIN = 10.0, 2.0
"""By which a fault must better what is simpler, and another look at it the one before, to be followed."""
HOPELESS = 60.0
"""Evidence by which a fault, fitted for a few rounds, may lag behind and still be fitted to the end."""
SECOND_TRIALS, JOINTS_AGAIN, STRETCHES_AGAIN = 4, 2, 2
"""Of a second fault; joints at which all kinds are tried again, and stretches of a cable at one place."""
NO_FIT, NO_FIT_SHARE, LEAST_NO_FIT = 0.15, 0.35, 0.04
"""What the best explanation leaves, rms of the reflection, above which the line must be another one; the same as a
share of what was measured; and what is never that much."""
GIVEN_UP = 0.5
"""Share of the measured reflection that one fault leaves, from which on two explain it no better."""
LOOKS, SETTLED = 3, 3
"""How often one fault is looked for again on the line that it found; places at which joints are moved first."""
ODD_MISFIT, ODD_LINE, ODD_LENGTH, ODD_END = 0.02, 0.45, 2.0, 0.5
"""Reflection, rms, that a fit leaves, mean of its squared deviations from what is usual, deviation of a cable's length,
and least reflection of an antenna, from which on it explains a sweep so badly, or by such odd parts, that more is
tried."""
OTHER_LENGTH = 0.5
"""Deviations of a cable's length by which lines are no longer the same."""


class Hypotheses(NamedTuple):
    """The fits to all of the sweep, the best first."""

    intact: Fit
    single: list[Fit]
    """With one fault."""
    double: list[Fit]
    """With the best single fault and another."""
    swapped: list[Fit]
    """With the best of those others alone; then with that and another, the best single fault or one elsewhere."""


def explained_to(measured: ComplexArray) -> float:
    """What an explanation of a measured reflection may leave, rms."""
    return max(min(NO_FIT, NO_FIT_SHARE * float(np.sqrt(np.mean(np.abs(measured) ** 2)))), LEAST_NO_FIT)


def fit_hypotheses(line: SweptLine, measured: ComplexArray, cell_m: float) -> Hypotheses:
    """Fit a line to a measured reflection; `cell_m` is the distance that the sweep resolves [m]."""
    whole, found = _searched(line, measured, cell_m)
    single = _kept(line, found, KEPT)
    if not _betters(single, whole):
        return Hypotheses(whole, single, [], [])
    whole, single = _one_fault(line, measured, cell_m, whole, single)
    given_up = GIVEN_UP * float(np.sqrt(np.mean(np.abs(measured) ** 2)))
    if not _betters(single, whole) or min(fit.misfit for fit in single) > given_up:
        return Hypotheses(whole, single, [], [])
    places = place_grid(line, cell_m / 2)
    second = _finished(line, measured, trial_starts(line, single[0], places, SECOND_TRIALS), 2, single[0].evidence)
    if not _betters(second, single[0]) or _explain_nothing(second, measured):
        return Hypotheses(whole, single, second, [])
    return _two_faults(line, measured, cell_m, Hypotheses(whole, single, second, []))


def _searched(line: SweptLine, measured: ComplexArray, cell_m: float) -> tuple[Fit, list[Fit]]:
    """The intact line, and one fault wherever one is seen or may be hidden."""
    aligned, pool = _in_rising_bands(line, measured, cell_m)
    intact = aligned[0]
    intact_at = [intact.x, *(fit.x[: line.parameter_count] for fit in pool[:2])]
    whole = max((fitted(line, measured, x, (), ROUNDS) for x in intact_at), key=lambda fit: fit.evidence)
    found = raced(line, measured, [(fit.faults, fit.x) for fit in pool], KEPT, ROUNDS)
    others = [fit.x for fit in aligned if _is_other_line(line, fit, whole)][:1]
    looks = _further_looks(line, measured, cell_m, whole, found, others)
    while _is_odd(line, max([whole, *found], key=lambda fit: fit.evidence)):
        more = next(looks, None)
        if more is None:
            break
        found = [*found, *more]
    return whole, found


def _betters(fits: list[Fit], simpler: Fit) -> bool:
    """Whether the best of some fits says so much more than a simpler one that it is worth to go on."""
    return bool(fits) and fits[0].evidence - simpler.evidence > LEAST_EVIDENCE


def _explain_nothing(fits: list[Fit], measured: ComplexArray) -> bool:
    """Whether none of some fits explains what was measured."""
    return all(fit.misfit > explained_to(measured) for fit in fits)


def _in_rising_bands(line: SweptLine, measured: ComplexArray, cell_m: float) -> tuple[list[Fit], list[Fit]]:
    """The intact line as aligned, the best first, and the faults carried from the lowest band to all of the sweep."""
    bands = lower_bands(line)
    aligned = sorted(aligned_fits(line, measured, bands), key=lambda fits: -fits[-1].evidence)
    intact = aligned[0]
    intact[-1] = settled(line.at(bands[-1]), measured[bands[-1]], intact[-1], cell_m)
    pool: list[Fit] = []
    for number, points in enumerate(bands):
        own, seen = line.at(points), measured[points]
        coarse = place_grid(line, cell_m / 2 * line.frequency_hz[-1] / own.frequency_hz[-1])
        starts: list[Start] = [(fit.faults, fit.x) for fit in pool]
        starts += trial_starts(own, intact[number], coarse, LAST_TRIALS if number == len(bands) - 1 else TRIALS)
        if number == len(bands) - 1:
            starts += masked_starts(own, intact[number], judged_until_m(line, cell_m))
        pool = _kept(line, raced(own, seen, starts, KEPT, SHORT_ROUNDS), KEPT)
    return [fits[-1] for fits in aligned], pool


def _one_fault(
    line: SweptLine, measured: ComplexArray, cell_m: float, whole: Fit, single: list[Fit]
) -> tuple[Fit, list[Fit]]:
    """The intact line and one fault, each fitted again with what the best fault found of the line."""
    places, count = place_grid(line, cell_m / 2), line.parameter_count
    at_rest: list[Fit] = []
    for _ in range(LOOKS):
        near = [fit for fit in single[:SETTLED] if fit.evidence > single[0].evidence - HOPELESS]
        moved = [fit if any(fit is one for one in at_rest) else settled(line, measured, fit, cell_m) for fit in near]
        single = _kept(line, [*moved, *single], KEPT)
        best = _best_place(line, measured, single[0], cell_m)
        at_rest += [*moved, best]
        own = best.x[:count]
        again = fitted(line, measured, own, (), ROUNDS)
        whole = max(whole, again, key=lambda fit: fit.evidence)
        starts = [(fit.faults, np.concatenate([own, own_parameters(fit)])) for fit in single[1:]]
        starts += trial_starts(line, again, places, TRIALS)
        # and elsewhere on the very line that it found, which a fit without it has left
        starts += trial_starts(line, fitted(line, measured, own, (), 0), places, TRIALS)
        for fit in [fit for fit in single if fit.faults[-1].about_m is None][:JOINTS_AGAIN]:
            starts += starts_at(line, measured, fit, fit.x[:count], fit.faults[-1].part)
        edges = [fit for fit in single[:SETTLED] if _may_be_edge(fit, odd=_is_odd(line, best))]
        more = [*_as_stretches(line, measured, cell_m, edges), *_finished(line, measured, starts, KEPT, best.evidence)]
        single = _kept(line, [best, *single, *more], KEPT)
        if single[0].evidence < best.evidence + LEAST_GAIN or _explain_nothing(single, measured):
            break
    return whole, single


def _two_faults(line: SweptLine, measured: ComplexArray, cell_m: float, found: Hypotheses) -> Hypotheses:
    """What was found, each fault's place judged beside the other, and the first one alone on the line of both."""
    both = _best_place(line, measured, settled(line, measured, found.double[0], cell_m), cell_m)
    count = line.parameter_count
    alone = fitted(line, measured, both.x[: count + both.faults[0].parameter_count], both.faults[:1], ROUNDS)
    single = _kept(line, [settled(line, measured, alone, cell_m), *found.single], KEPT)
    other = fitted(line, measured, np.concatenate([both.x[:count], own_parameters(both)]), both.faults[1:], ROUNDS)
    turned = np.concatenate([both.x[:count], own_parameters(both), own_parameters(both, 0)])
    places = place_grid(line, cell_m / 2)
    starts = [(both.faults[::-1], turned), *trial_starts(line, other, places, SECOND_TRIALS)]
    swapped = [other, *_finished(line, measured, starts, 2, both.evidence)]
    return Hypotheses(found.intact, single, [both, *found.double[1:]], swapped)


def _best_place(line: SweptLine, measured: ComplexArray, fit: Fit, cell_m: float) -> Fit:
    """The fit, its joints settled, or one with its last fault at one of the joints beside it."""
    at_joint = _at_joints_instead(line, measured, fit, judged_until_m(line, cell_m))
    return max([fit, *(settled(line, measured, one, cell_m) for one in at_joint)], key=lambda one: one.evidence)


def _finished(line: SweptLine, measured: ComplexArray, starts: list[Start], most: int, beside: float) -> list[Fit]:
    """The best of some starts, fitted to the end unless they are hopeless beside some evidence."""
    fits = _kept(line, raced(line, measured, starts, most, SHORT_ROUNDS), most)
    hopeful = [fit for fit in fits if fit.evidence > beside - HOPELESS]
    return _kept(line, [fitted(line, measured, fit.x, fit.faults, ROUNDS) for fit in hopeful], most)


def _is_odd(line: SweptLine, fit: Fit) -> bool:
    """Whether a fit explains the sweep badly, or by analyser, cables and joints as they seldom are."""
    lengths = fit.x[[line.offsets[at] for at in line.cables]]
    # of the waves along cables there are many, and each says little
    few = np.ones(line.offsets[-1], dtype=bool)
    for at in line.cables:
        few[line.waves(at)] = False
    own = fit.x[: line.offsets[-1]][few]
    far = bool(np.any(np.abs(lengths) > ODD_LENGTH))
    far |= line.is_end_vague and bool(np.min(np.abs(line.load_reflection(fit.x))) > ODD_END)
    return far or fit.misfit > ODD_MISFIT or float(np.mean(own**2)) > ODD_LINE


def _is_other_line(line: SweptLine, one: Fit, other: Fit) -> bool:
    """Whether two fits have a cable of lengths so different that neither comes to the other's."""
    lengths = [line.offsets[at] for at in line.cables]
    return bool(np.any(np.abs(one.x[lengths] - other.x[lengths]) > OTHER_LENGTH))


def _may_be_edge(fit: Fit, *, odd: bool) -> bool:
    """Whether a fit's last fault may be one edge of a stretch: in a cable, and it or all of the fit is odd."""
    fault = fit.faults[-1]
    return fault.about_m is not None and (odd or fault.kind.weight <= RARE)


def _further_looks(
    line: SweptLine, measured: ComplexArray, cell_m: float, whole: Fit, found: list[Fit], others: list[RealArray]
) -> Iterator[list[Fit]]:
    """Fits of faults that a fit of the intact line hides, those soonest made first; other alignments of the line.

    Where nothing is explained, only a joint that lets nothing through is hidden so well.
    """
    at_first = _explain_nothing([whole, *found], measured)
    if at_first:
        dark = dark_fits(line, measured, cell_m, whole.evidence - HOPELESS)
        yield dark
        if _explain_nothing(dark, measured):
            return
    yield _as_stretches(
        line, measured, cell_m, [fit for fit in _kept(line, found, KEPT) if _may_be_edge(fit, odd=True)]
    )
    yield mistaken_fits(line, measured, cell_m, whole)
    lines = [whole.x, bare(line, whole), np.zeros(line.parameter_count), *others]
    yield _from_elsewhere(line, measured, cell_m, lines, whole.evidence)
    if not at_first:
        yield dark_fits(line, measured, cell_m, whole.evidence - HOPELESS)


def _from_elsewhere(
    line: SweptLine, measured: ComplexArray, cell_m: float, lines: list[RealArray], beside: float
) -> list[Fit]:
    """The faults that do best on lines with some parameters, fitted to the end where near to some evidence."""
    places, starts = place_grid(line, cell_m / 2), []
    for x in lines:
        starts += trial_starts(line, fitted(line, measured, x, (), 0), places, TRIALS)
    return _finished(line, measured, starts, KEPT, beside)


def _as_stretches(line: SweptLine, measured: ComplexArray, cell_m: float, fits: list[Fit]) -> list[Fit]:
    """Altered stretches that begin or end where some fits have a fault in a cable, fitted to the end."""
    starts = [start for fit in fits for start in stretch_starts(line, measured, fit, cell_m / 4, STRETCHES_AGAIN)]
    return raced(line, measured, starts, STRETCHES_AGAIN, ROUNDS)


def _at_joints_instead(line: SweptLine, measured: ComplexArray, fit: Fit, until_m: float) -> list[Fit]:
    """The best fit with a fit's last fault not in a cable but at a joint beside it, which is moved to that place."""
    fault = fit.faults[-1]
    if fault.about_m is None:
        return []
    place, count = place_of(line, fault, own_parameters(fit)), line.parameter_count
    starts: list[Start] = []
    for at in joints_beside(line, fault.part):
        moved = with_joint_at(line, fit.x[:count], at, place)
        if moved is None or line.begin_m(at) > until_m:
            continue
        starts += starts_at(line, measured, fit, moved, at)
    return _kept(line, [fitted(line, measured, x, faults, ROUNDS) for faults, x in starts], 1)


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
