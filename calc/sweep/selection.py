"""Choosing between the hypotheses: the line intact, one fault somewhere, or two."""

import math
from typing import NamedTuple

import numpy as np

from ..physics.ratings import assumption
from .faults import RARE
from .fit import Fit
from .prediction import shown_with
from .results import AntennaEnd, Finding, Where
from .search import Hypotheses, explained_to
from .starts import own_parameters, place_of
from .swept_line import SweptLine

__all__ = [
    "UNEXPLAINED_LEAVES",
    "Named",
    "Selection",
    "Suspicion",
    "floor",
    "least_odds",
    "made_by",
    "place_deviation_m",
    "selection_of",
]

CABLE_ODDS = 2.0
"""Logarithm of the odds more that are asked of a fault in a cable: good ones look like it by being uneven."""
VAGUE_ODDS = 3.0
"""The same before an end of which little is known: it is taken for whatever explains more."""
APART_ODDS = 50.0
"""Logarithm of the odds that are asked where the places of a fault are not told apart: of five training lines with less
four were sound. What looks like a fault anywhere is seldom one."""
SECOND_ODDS, VAGUE_SECOND_ODDS = 8.0, 18.0
"""Logarithm of the odds that are asked of each of two faults, which must explain most of what one leaves: before a
known end, and before one of which little is known."""
UNEXPLAINED_LEAVES, UNEXPLAINED_SHARE, MOST_LEAVES = 0.95, 2.0, 1.2
"""Share of what the intact line leaves from which on so much more reflection is asked: the fault explains no more of
the sweep, only by parts nearer to the usual, and what is usual of a real line may be something else. Beyond the last
share it explains less."""
WEAK_ODDS, WEAK_LEAVES = 32.0, 0.85
"""Odds below which that much is asked from a lower share on."""
STRONG_ODDS, STRONG_LEAVES, FEW_LEAVES, STRONG_SHARE = 60.0, 0.75, 0.6, 0.7
"""Odds beyond which, and share of what the intact line leaves below which, such a share of the reflection is enough;
and the lower share of what it leaves below which it is by any odds."""
EARNED_ODDS, EARNED = (18.0, 60.0, 200.0), (0.8, 0.95, 0.985)
"""Odds, and the share of the faults named with them that were right among training lines, sound ones among them: 34 of
45 with odds to 40, 136 of 140 with odds to 200, 679 of 684 beyond."""
JOINT_SHARE = 0.75
"""How many faults are at joints; the others lie anywhere in the cables."""
CLEAR = 0.8
"""Probability from which on one place is named alone."""
LEADING = 0.55
"""The same of the best of several places that are too near to be told apart."""
LIKELY, ALIKE = 0.2, 0.9
"""Probability from which on a joint is named before a cable that is not told from it; and share of its odds that is
enough for what is seldom met in a cable."""
POSSIBLE = 0.04
"""Probability from which on a place is one of those not told apart."""
PLACE_SPREAD = 3.0
"""By how much evidence between places counts for less: models of joints and cables are only alike."""
NEAR_CELLS, BESIDE_CELLS, SEPARATE_CELLS = 1.0, 1.5, 3.0
"""Cells of distance within which two places are one, within which they are not told apart, and beyond which a second
fault is not the first one's own."""
SECOND_LEAVES, SECOND_MISFIT = 0.6, 0.05
"""The most that a second fault may leave: as a share of what the first one leaves, and of the reflection, rms."""
SECOND_SHARE, SMALL_SECOND_LEAVES = 0.2, 0.2
"""Share of the first one's reflection below which it must leave less: the kinds fit no real fault better than so."""
LEAST_SECOND_SHARE = 0.05
"""The same below which it is taken for what the first one's kind fits badly."""


def floor() -> float:
    """Reflection, rms, that a fault must make to be named."""
    return float(assumption("sweep_floor"))


def least_odds() -> float:
    """Natural logarithm of the odds against the intact line from which on a fault counts as found."""
    return float(assumption("sweep_evidence"))


class Suspicion(NamedTuple):
    """All faults at one place: the best fit first, where it is, and how probable it is to be there."""

    fits: list[Fit]
    element: int
    where: Where
    distance_m: float
    odds: float
    """Natural logarithm of the odds against the intact line."""
    probability: float

    @property
    def best(self) -> Fit:
        """Of the kinds of fault there."""
        return self.fits[0]


class Named(NamedTuple):
    """A fault named: where, as the last one of its best fit, how sure, how much reflection it makes, rms."""

    suspicion: Suspicion
    probability: float
    """Of being here or beside it."""
    reflection: float
    beside: list[Suspicion]
    """Places too near to be told from it."""


class Selection(NamedTuple):
    """What the fits say."""

    finding: Finding
    intact: Fit
    selected: Fit
    """The fit that explains the sweep."""
    suspicions: list[Suspicion]
    """Places of single faults, the most probable first."""
    named: list[Named]
    apart: list[Suspicion]
    """Places that are not told apart."""
    end: AntennaEnd | None = None
    """Where nothing else is found, and its antenna is matched nowhere."""

    @property
    def apart_elements(self) -> list[int]:
        """Joints and cables of which one may be bad, each once."""
        if self.end is not None:
            return [] if self.end.element is None else [self.end.element]
        return list(dict.fromkeys(one.element for one in self.apart))


def selection_of(line: SweptLine, hypotheses: Hypotheses, cell_m: float) -> Selection:
    """Compare the fits; `cell_m` is the distance that the sweep resolves [m]."""
    intact = hypotheses.intact
    suspicions = _suspicions(line, hypotheses.single, intact.evidence, cell_m)
    if not suspicions or not _is_found(line, suspicions[0], intact):
        return _nothing_found(intact, suspicions)
    first = suspicions[0]
    pair = _pair(line, hypotheses, cell_m)
    selected = pair[0].suspicion.best if pair else first.best
    nearest = min([first.best, *hypotheses.double, *hypotheses.swapped[1:]], key=lambda fit: fit.misfit)
    if _misses(nearest):
        return Selection("no fit", intact, selected, suspicions, [], [])
    if pair:
        return Selection(_finding_of(pair[0].suspicion), intact, selected, suspicions, pair, [])
    if not _is_clear(first, _beside(line, first, suspicions, cell_m)):
        if first.odds < APART_ODDS:
            return _nothing_found(intact, suspicions)
        apart = [one for one in suspicions if one.probability > POSSIBLE]
        return Selection("unclear", intact, first.best, suspicions, [], apart)
    named = _named(line, suspicions, cell_m)
    return Selection(_finding_of(named.suspicion), intact, first.best, suspicions, [named], [])


def _nothing_found(intact: Fit, suspicions: list[Suspicion]) -> Selection:
    return Selection("no fit" if _misses(intact) else "sound", intact, intact, suspicions, [], [])


def _is_clear(first: Suspicion, beside: list[Suspicion]) -> bool:
    """Whether a fault is at one place or at those too near to be told from it, and that place the best of them."""
    probability = first.probability + sum(one.probability for one in beside)
    return probability > CLEAR and first.probability > LEADING


def _named(line: SweptLine, suspicions: list[Suspicion], cell_m: float) -> Named:
    """The fault at the most probable place, or at a joint near it."""
    first = suspicions[0]
    beside = _beside(line, first, suspicions, cell_m)
    probability = first.probability + sum(one.probability for one in beside)
    sure = probability * earned(first.odds) * _within_cell(first.best, cell_m)
    joint = _joint_instead(line, first, suspicions, cell_m)
    if joint is not None:
        first, beside = joint, [first, *(one for one in beside if one is not joint)]
    return Named(first, sure, made_by(line, first.best), beside)


def _joint_instead(line: SweptLine, first: Suspicion, suspicions: list[Suspicion], cell_m: float) -> Suspicion | None:
    """The joint to be named instead of a cable near it: a joint is opened before a cable is cut."""
    if first.where == "joint":
        return None
    lumped, reach_m = _is_seldom_in_cables(first), BESIDE_CELLS * cell_m
    # what is seldom met in a cable is at a joint that cables of usual lengths bring to its place
    usual_m = max(reach_m, line.prior.length * first.distance_m)
    for one in suspicions:
        away_m = abs(one.distance_m - first.distance_m)
        if one.where != "joint" or away_m > (usual_m if lumped else reach_m):
            continue
        if (one.probability > LIKELY and away_m <= reach_m) or (lumped and one.odds > ALIKE * first.odds):
            return one
    return None


def _finding_of(suspicion: Suspicion) -> Finding:
    return "suspect" if suspicion.where == "joint" else "damage"


def earned(odds: float) -> float:
    """How often a fault named with some odds was one, in training lines."""
    return float(np.interp(odds, EARNED_ODDS, EARNED))


def place_deviation_m(fit: Fit) -> float:
    """Standard deviation of the place of a fit's last fault [m]: lengths of cables are known no better than usual."""
    fault = fit.faults[-1]
    if fault.about_m is None:
        return 0.0
    free = fit.curvature.copy()
    # where it was looked for says nothing of where it is
    free[-1, -1] -= 1.0
    return float(np.sqrt(max(np.linalg.inv(free)[-1, -1], 0.0))) * fault.place_deviation_m


def _within_cell(fit: Fit, cell_m: float) -> float:
    """The probability that the place of a fit's last fault is right within the distance that the sweep resolves."""
    deviation = place_deviation_m(fit)
    return math.erf(cell_m / (deviation * math.sqrt(2))) if deviation > 0 else 1.0


def _is_found(line: SweptLine, first: Suspicion, intact: Fit) -> bool:
    """Whether the best fault is plain: by its odds and by the reflection it makes."""
    left, share = first.best.misfit / intact.misfit, 1.0
    asked = least_odds() + (CABLE_ODDS if first.where == "cable" else 0.0) + VAGUE_ODDS * line.is_end_vague
    if first.odds > STRONG_ODDS:
        share = STRONG_SHARE if left < STRONG_LEAVES else 1.0
    elif left > MOST_LEAVES:
        return False
    elif left > (WEAK_LEAVES if first.odds < WEAK_ODDS else UNEXPLAINED_LEAVES):
        share = UNEXPLAINED_SHARE
    elif left < FEW_LEAVES:
        share = STRONG_SHARE
    return first.odds > asked and made_by(line, first.best) >= share * floor()


def _pair(line: SweptLine, hypotheses: Hypotheses, cell_m: float) -> list[Named]:
    """Two faults, if each is plain beside the other and both explain most of what one leaves; the larger first."""
    if not hypotheses.swapped:
        return []
    alone = hypotheses.single[0], hypotheses.swapped[0]
    asked = VAGUE_SECOND_ODDS if line.is_end_vague else SECOND_ODDS
    named, misfits = [], []
    for fits, without in ((hypotheses.swapped[1:], alone[1]), (hypotheses.double, alone[0])):
        suspicions = _suspicions(line, fits, without.evidence, cell_m)
        plain = bool(suspicions) and suspicions[0].odds > asked
        if not plain or not _is_clear(suspicions[0], _beside(line, suspicions[0], suspicions, cell_m)):
            return []
        named.append(_named(line, suspicions, cell_m))
        misfits.append(suspicions[0].best.misfit)
    one, other = (each.suspicion for each in named)
    elsewhere = one.element != other.element and abs(one.distance_m - other.distance_m) > SEPARATE_CELLS * cell_m
    made = [each.reflection for each in named]
    leaves = SECOND_LEAVES if min(made) > SECOND_SHARE * max(made) else SMALL_SECOND_LEAVES
    explains = min(misfits) < min(leaves * alone[0].misfit, SECOND_MISFIT)
    least = LEAST_SECOND_SHARE * max(made)
    large = all(each.reflection > max(floor(), least) for each in named)
    return sorted(named, key=lambda each: -each.reflection) if elsewhere and explains and large else []


def _beside(line: SweptLine, first: Suspicion, suspicions: list[Suspicion], cell_m: float) -> list[Suspicion]:
    """Places too near to the first to be told from it; of what is seldom met in a cable also the joint near it."""
    reach_m = BESIDE_CELLS * cell_m
    usual_m = max(reach_m, line.prior.length * first.distance_m)
    found = []
    for one in suspicions:
        in_cable = [each for each in (first, one) if each.where == "cable"]
        lumped = len(in_cable) == 1 and _is_seldom_in_cables(in_cable[0])
        near = abs(one.distance_m - first.distance_m) <= (usual_m if lumped else reach_m)
        if one is not first and one.probability > POSSIBLE and near:
            found.append(one)
    return found


def _is_seldom_in_cables(suspicion: Suspicion) -> bool:
    return suspicion.best.faults[-1].kind.weight <= RARE


def made_by(line: SweptLine, fit: Fit) -> float:
    """How much of the reflection a fit's last fault makes, rms."""
    before = fit.faults[:-1]
    own = [own_parameters(fit, at) for at in range(len(before))]
    without = shown_with(line, np.concatenate([fit.x[: line.parameter_count], *own]), before)
    return float(np.sqrt(np.mean(np.abs(fit.prediction.shown - without) ** 2)))


def _misses(fit: Fit) -> bool:
    return fit.misfit > explained_to(fit.residual + fit.prediction.shown)


def _suspicions(line: SweptLine, fits: list[Fit], intact: float, cell_m: float) -> list[Suspicion]:
    """The last faults of some fits by place, the most probable first."""
    scored = sorted(((fit.evidence - intact + _log_prior(line, fit), fit) for fit in fits), key=lambda one: -one[0])
    groups: list[tuple[int, Where, float, list[tuple[float, Fit]]]] = []
    for odds, fit in scored:
        fault = fit.faults[-1]
        element, place = line.link(fault.part).element, place_of(line, fault, own_parameters(fit))
        where: Where = "joint" if fault.about_m is None else "cable"
        for group in groups:
            near = abs(group[2] - place) <= NEAR_CELLS * cell_m
            if group[0] == element if (group[1], where) == ("joint", "joint") else near:
                group[3].append((odds, fit))
                break
        else:
            groups.append((element, where, place, [(odds, fit)]))
    if not groups:
        return []
    totals = np.array([_log_sum(np.array([odds for odds, _ in group[3]])) for group in groups])
    probabilities = np.exp((totals - totals.max()) / PLACE_SPREAD)
    probabilities /= probabilities.sum()
    found = [
        Suspicion([fit for _, fit in group[3]], group[0], group[1], float(group[2]), float(total), float(probability))
        for group, total, probability in zip(groups, totals, probabilities, strict=True)
    ]
    return sorted(found, key=lambda one: -one.odds)


def _log_prior(line: SweptLine, fit: Fit) -> float:
    """Logarithm of how often a fault is of such a kind at such a place."""
    fault = fit.faults[-1]
    if fault.about_m is None:
        return float(np.log(JOINT_SHARE / max(len(line.joints), 1) * fault.kind.weight))
    return float(np.log((1 - JOINT_SHARE) * 2 * fault.place_deviation_m / line.length_m * fault.kind.weight))


def _log_sum(values: np.ndarray) -> float:
    return float(values.max() + np.log(np.sum(np.exp(values - values.max()))))
