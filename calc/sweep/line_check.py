"""A one-port sweep against its line: fitted, transformed to distance, and each place judged."""

import numpy as np

from ..feedline.feedline import Feedline
from ..formulas.constants import C_0
from ..formulas.formula import Step, recording
from ..formulas.match import return_loss
from ..formulas.sweep import alias_free_distance, sweep_resolution, window_broadening, window_side_lobe
from .antenna_end import antenna_end
from .arrays import ComplexArray, RealArray
from .candidates import candidates_of, named_faults
from .digits import MILLIONTH_DECIMALS, four_figures, to_millionths
from .distance_chart import DistanceChart
from .fit import Fit
from .joints import swept_cables, swept_joints
from .places import mean_velocity, separating_top_hz
from .prediction import shown_with
from .prior import SweepSettings
from .results import Deviation, LineCheck, ReflectionCurves
from .sampling import evenly_spaced, scattered
from .search import fit_hypotheses
from .selection import UNEXPLAINED_LEAVES, Selection, floor, selection_of
from .swept_line import SweptLine, swept_line
from .transform import DistanceTransform, distance_transform
from .verdict import assumed_sentences

__all__ = ["check_line"]

MOST_FITTED = 240
"""Points that are fitted: neighbours say the same of a line, and more of them would only sharpen its noise."""

MOST_CURVE_POINTS = 401
END_CELLS = 2.0
"""Cells of distance before an antenna that is matched nowhere, within which a fault in a cable is laid to its joint."""


def check_line(
    feedline: Feedline,
    frequency: RealArray,
    measured: ComplexArray,
    earlier: tuple[RealArray, ComplexArray] | None,
    settings: SweepSettings,
) -> tuple[LineCheck, list[Step]]:
    """Judge a measured reflection at frequencies [Hz], both (frequencies,), and say by which formulas.

    `earlier` is another sweep of the line with frequencies of its own [Hz].
    """
    line = swept_line(feedline, frequency, settings)
    fitted_points = scattered(frequency.size, line.points_of(MOST_FITTED))
    fitted_line = line.at(fitted_points)
    described = feedline.load.likely(frequency[fitted_points])[0]
    velocity, span = mean_velocity(fitted_line), float(frequency[-1] - frequency[0])
    cell_m = C_0 * velocity / (2 * span)
    hypotheses = fit_hypotheses(fitted_line, measured[fitted_points], cell_m)
    selection = selection_of(fitted_line, hypotheses, cell_m)
    transform = distance_transform(frequency, settings.window_shape, float(line.load[0].real))
    parameters = selection.selected.x[: line.parameter_count]
    expected = shown_with(line, parameters)
    fitted = shown_with(line, selection.selected.x, selection.selected.faults)
    compared = [] if earlier is None else [_resampled_reflection(frequency, *earlier)]
    reflections = np.array([measured, expected, *compared])
    end = antenna_end(fitted_line, selection.intact, settings.load, described)
    if end is not None and (selection.finding == "sound" or _is_beside_end(fitted_line, selection, cell_m)):
        intact = selection.intact
        selection = selection._replace(finding="end", end=end, selected=intact, named=[], apart=[])
    chart = DistanceChart(line, transform, reflections, selection.selected.misfit, parameters)
    joints = swept_joints(fitted_line, selection, chart)
    deviations = _cable_deviations(fitted_line, selection.selected)
    faults = named_faults(fitted_line, selection, cell_m)
    with recording() as steps:
        velocity = mean_velocity(line)
        alias_free_m = alias_free_distance(velocity, transform.step_hz)
        side_lobe_db = window_side_lobe(settings.window_shape)
        resolution_m = sweep_resolution(velocity, window_broadening(settings.window_shape), transform.span_hz)
    hidden = bool(joints) and all(joint.state == "hidden" for joint in joints)
    finding = "cannot tell" if selection.finding == "sound" and hidden else selection.finding
    check = LineCheck(
        finding=finding,
        suspect=faults[0].element if faults else None,
        probability=faults[0].probability if faults else None,
        faults=faults,
        assumed=assumed_sentences(deviations, settings.length_tolerance),
        floor=floor(),
        candidates=candidates_of(fitted_line, selection),
        apart=selection.apart_elements,
        end=selection.end,
        joints=joints,
        cables=swept_cables(fitted_line, selection),
        transform="low-pass" if transform.low_pass else "band-pass",
        window_shape=settings.window_shape,
        side_lobe_db=float(side_lobe_db),
        resolution_m=float(resolution_m),
        range_m=float(alias_free_m),
        length_m=line.length_m,
        needed_top_hz=_needed_top_hz(line, transform, selection),
        noise=four_figures(selection.selected.misfit),
        deviations=deviations,
        profile=chart.profile(),
        curves=_reflection_curves(frequency, measured, expected, fitted),
    )
    return check, steps


def _is_beside_end(line: SweptLine, selection: Selection, cell_m: float) -> bool:
    """Whether all that is named lies in the last cable, near to its end or explaining no more than another end does."""
    named, near_m = [one.suspicion for one in selection.named], line.length_m - END_CELLS * cell_m
    if not named or any(one.where == "joint" or one.distance_m < line.begin_m(max(line.cables)) for one in named):
        return False
    no_more = selection.selected.misfit > UNEXPLAINED_LEAVES * selection.intact.misfit
    return no_more or all(one.distance_m > near_m for one in named)


def _needed_top_hz(line: SweptLine, transform: DistanceTransform, selection: Selection) -> float | None:
    places = sorted({one.distance_m for one in selection.apart})
    return separating_top_hz(transform, line, places) if len(places) > 1 else None


def _resampled_reflection(frequency: RealArray, own_hz: RealArray, reflection: ComplexArray) -> ComplexArray:
    """Another sweep's reflection at these frequencies; nothing beyond its ends."""
    real, imaginary = (np.interp(frequency, own_hz, part, 0, 0) for part in (reflection.real, reflection.imag))
    return real + 1j * imaginary


def _cable_deviations(line: SweptLine, fit: Fit) -> list[Deviation]:
    """What the fit found of the cables' length, impedance and loss."""
    found = []
    covariance = np.linalg.inv(fit.curvature)
    for at, cable in line.cables.items():
        first, link, prior = line.offsets[at], cable.link, line.prior
        # loss by conductors and by all else, as shares of both together at the upper edge
        total = cable.conductor[-1] + cable.dielectric[-1]
        loss = np.array([cable.conductor[-1] * prior.conductor_loss, cable.other_loss[-1] * prior.other_loss]) / total
        rows = (
            ("electrical length", [first], np.array([prior.length])),
            ("impedance", [first + 4], np.array([prior.impedance])),
            ("loss", [first + 2, first + 3], loss),
        )
        for what, own, usual in rows:
            share, variance = float(fit.x[own] @ usual), float(usual @ covariance[np.ix_(own, own)] @ usual)
            found.append(
                Deviation(
                    element=link.element,
                    part=link.name,
                    what=what,
                    share=round(share, MILLIONTH_DECIMALS),
                    uncertainty=round(float(np.sqrt(max(variance, 0.0))), MILLIONTH_DECIMALS),
                    usual=round(float(np.sqrt(usual @ usual)), MILLIONTH_DECIMALS),
                )
            )
    return found


def _reflection_curves(
    frequency: RealArray, measured: ComplexArray, expected: ComplexArray, fitted: ComplexArray
) -> ReflectionCurves:
    drawn = evenly_spaced(frequency.size, MOST_CURVE_POINTS)

    def level_db(reflection: ComplexArray) -> list[float | None]:
        return to_millionths(-return_loss(np.minimum(np.abs(reflection[drawn]), 1.0)))

    return ReflectionCurves(
        frequency_hz=frequency[drawn].tolist(),
        measured_db=level_db(measured),
        expected_db=level_db(expected),
        fitted_db=level_db(fitted),
        measured_real=to_millionths(measured[drawn].real),
        measured_imaginary=to_millionths(measured[drawn].imag),
        fitted_real=to_millionths(fitted[drawn].real),
        fitted_imaginary=to_millionths(fitted[drawn].imag),
    )
