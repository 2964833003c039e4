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
            distance_m=_distance(line, fit, -1),
            kind=fit.faults[-1].kind.id,
            name=does_words(fit.faults[-1].kind.does, _fitted_sizes(fit, -1)),
            sizes=_fitted_sizes(fit, -1),
            evidence=round(float(fit.evidence - intact), 1),
            reflection=four_figures(made_by(line, fit, len(fit.faults) - 1)),
            misfit=four_figures(fit.misfit),
        )
        for fit in sorted(found[:MOST_CANDIDATES], key=lambda fit: -fit.evidence)
    ]


def named_faults(line: SweptLine, selection: Selection, cell_m: float) -> list[NamedFault]:
    """What the verdict names."""
    found = []
    for one in selection.named:
        fault = one.fit.faults[one.number]
        link = line.link(fault.part)
        distance = _distance(line, one.fit, one.number)
        joint = fault.about_m is None
        around = 0.0 if joint else max(cell_m / 2, place_deviation_m(one.suspicion.best)) + _extent(one) / 2
        found.append(
            NamedFault(
                element=link.element,
                part=link.name,
                where="joint" if joint else "cable",
                distance_m=distance,
                low_m=round(max(distance - around, 0.0), MILLIONTH_DECIMALS),
                high_m=round(distance + around, MILLIONTH_DECIMALS),
                kind=fault.kind.id,
                name=does_words(fault.kind.does, _fitted_sizes(one.fit, one.number)),
                likely=fault.kind.likely if _distinct(one) else "",
                sizes=_fitted_sizes(one.fit, one.number),
                probability=round(one.probability, 3),
                beside=[other.element for other in one.beside],
                reflection=four_figures(one.reflection),
            )
        )
    return found


def _distinct(named: Named) -> bool:
    """Whether its kind explains the sweep better than any other at its place."""
    fits = named.suspicion.fits
    others = [fit for fit in fits if fit.faults[-1].kind.likely != fits[0].faults[-1].kind.likely]
    return all(fits[0].evidence - fit.evidence > DISTINCT for fit in others)


def _extent(named: Named) -> float:
    fault = named.fit.faults[named.number]
    return fault.kind.stretch(own_parameters(named.fit, named.number)).length_m if fault.kind.is_stretch else 0.0


def _distance(line: SweptLine, fit: Fit, number: int) -> float:
    return round(float(place_of(line, fit.faults[number], own_parameters(fit, number))), MILLIONTH_DECIMALS)


def _fitted_sizes(fit: Fit, number: int) -> list[FittedSize]:
    number %= len(fit.faults)
    begin = fit.x.size - sum(fault.parameter_count for fault in fit.faults[number:])
    sizes = fit.faults[number].kind.sizes
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
