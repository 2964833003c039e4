"""Faults as answered: those that explain the sweep, and those the verdict names."""

import numpy as np

from .arrays import RealArray
from .digits import MILLIONTH_DECIMALS, four_figures
from .fit import Fit
from .results import Candidate, FittedSize, NamedFault
from .selection import Named, Selection, made_by, place_deviation_m
from .starts import own_parameters, place_of
from .swept_line import SweptLine
from .verdict import does_words

__all__ = ["candidates_of", "named_faults"]

MOST_CANDIDATES = 6
CERTAIN_SIZE = 1.5  # of the logarithm: a size less well known than that is none
DISTINCT = 5.0
"""Evidence by which a kind of fault must do better than the next to be told from it."""


def candidates_of(line: SweptLine, selection: Selection) -> list[Candidate]:
    """The best fault of every place that might be it, and other kinds at the best place; the best first."""
    if not selection.named and not selection.apart:
        return []
    found = [fit for one in selection.suspicions[:1] for fit in one.fits]
    found += [one.best for one in selection.suspicions[1:] if one.odds > 0]
    intact = selection.intact.evidence
    return [
        Candidate(
            element=line.link(fit.faults[-1].part).element,
            where="joint" if fit.faults[-1].about_m is None else "cable",
            joint=line.link(fit.faults[-1].part).name,
            distance_m=_distance(line, fit),
            kind=fit.faults[-1].kind.id,
            name=does_words(fit.faults[-1].kind.does, _fitted_sizes(fit)),
            sizes=_fitted_sizes(fit),
            evidence=round(float(fit.evidence - intact), 1),
            reflection=four_figures(made_by(line, fit)),
            misfit=four_figures(fit.misfit),
        )
        for fit in sorted(found[:MOST_CANDIDATES], key=lambda fit: -fit.evidence)
    ]


def named_faults(line: SweptLine, selection: Selection, cell_m: float) -> list[NamedFault]:
    """What the verdict names."""
    found = []
    for one in selection.named:
        fit = one.suspicion.best
        fault = fit.faults[-1]
        link = line.link(fault.part)
        distance = _distance(line, fit)
        joint = fault.about_m is None
        around = 0.0 if joint else max(cell_m / 2, place_deviation_m(fit)) + _extent(fit) / 2
        found.append(
            NamedFault(
                element=link.element,
                part=link.name,
                where="joint" if joint else "cable",
                distance_m=distance,
                low_m=round(max(distance - around, 0.0), MILLIONTH_DECIMALS),
                high_m=round(distance + around, MILLIONTH_DECIMALS),
                kind=fault.kind.id,
                name=does_words(fault.kind.does, _fitted_sizes(fit)),
                likely=fault.kind.likely if _distinct(one) else "",
                sizes=_fitted_sizes(fit),
                probability=round(one.probability, 3),
                beside=list(dict.fromkeys(other.element for other in one.beside if other.element != link.element)),
                reflection=four_figures(one.reflection),
            )
        )
    return found


def _distinct(named: Named) -> bool:
    """Whether its kind explains the sweep better than any other at its place."""
    fits = named.suspicion.fits
    others = [fit for fit in fits if fit.faults[-1].kind.likely != fits[0].faults[-1].kind.likely]
    return all(fits[0].evidence - fit.evidence > DISTINCT for fit in others)


def _extent(fit: Fit) -> float:
    kind = fit.faults[-1].kind
    return kind.stretch(own_parameters(fit)).length_m if kind.is_stretch else 0.0


def _distance(line: SweptLine, fit: Fit) -> float:
    return round(float(place_of(line, fit.faults[-1], own_parameters(fit))), MILLIONTH_DECIMALS)


def _fitted_sizes(fit: Fit) -> list[FittedSize]:
    begin = fit.x.size - fit.faults[-1].parameter_count
    sizes = fit.faults[-1].kind.sizes
    variances: RealArray = np.diag(np.linalg.inv(fit.curvature))[begin : begin + len(sizes)]
    found = []
    for size, own, variance in zip(sizes, fit.x[begin:], variances, strict=False):
        deviation = min(float(np.sqrt(max(variance, 0.0))) * size.spread, CERTAIN_SIZE)
        value = size.of(own)
        found.append(
            FittedSize(
                name=size.name,
                unit=size.unit,
                value=four_figures(value),
                low=four_figures(value * np.exp(-deviation)),
                high=four_figures(value * np.exp(deviation)),
            )
        )
    return found
