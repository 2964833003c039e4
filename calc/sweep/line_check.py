"""A one-port sweep against its line: fitted, transformed to distance, and each joint judged."""

import numpy as np

from ..feedline.feedline import Feedline
from ..formulas.formula import Step, recording
from ..formulas.match import return_loss
from ..formulas.sweep import alias_free_distance, sweep_resolution, window_broadening, window_side_lobe
from .arrays import ComplexArray, RealArray
from .candidates import candidates_of
from .digits import MILLIONTH_DECIMALS, four_figures, to_millionths
from .distance_chart import DistanceChart
from .fit import Fit, fitted_reflection
from .joints import swept_joints
from .model import LineModel
from .places import cable_length, joint_places, mean_velocity, separating_top_hz
from .prior import SweepSettings, line_with_prior
from .results import Deviation, LineCheck, ReflectionCurves
from .sampling import evenly_spaced, scattered
from .search import fit_hypotheses
from .selection import selection_of
from .transform import distance_transform

__all__ = ["check_line"]

MOST_FITTED = 801
"""Points that are fitted; more of them would sharpen a fit by their root only."""

MOST_CURVE_POINTS = 401


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
    fitted_points = scattered(frequency.size, MOST_FITTED)
    fitted_line = line_with_prior(feedline, frequency[fitted_points], settings)
    selection = selection_of(fit_hypotheses(fitted_line, measured[fitted_points]))
    selected, suspect = selection.selected, selection.best.hypothesis.element
    line = line_with_prior(feedline, frequency, settings)
    transform = distance_transform(frequency, settings.window_shape, float(line.load[0].real))
    expected = fitted_reflection(line, selected, intact=True)
    compared = [] if earlier is None else [_resampled_reflection(frequency, *earlier)]
    reflections = np.array([measured, expected, *compared])
    chart = DistanceChart(line, transform, reflections, selected.residual, selected.parameters)
    joints = swept_joints(fitted_line, measured[fitted_points], selection, chart)
    named, unclear = selection.finding == "suspect", selection.finding == "unclear"
    distances_m = [joint.distance_m for joint in joints if joint.element in selection.indistinct]
    with recording() as steps:
        velocity = mean_velocity(line)
        alias_free_m = alias_free_distance(velocity, transform.step_hz)
        side_lobe_db = window_side_lobe(settings.window_shape)
        resolution_m = sweep_resolution(velocity, window_broadening(settings.window_shape), transform.span_hz)
    check = LineCheck(
        finding=selection.finding,
        suspect=suspect if named else None,
        probability=selection.probabilities.get(suspect) if named else None,
        candidates=candidates_of(selection, joint_places(line)) if selection.found else [],
        apart=selection.indistinct if unclear else [],
        joints=joints,
        transform="low-pass" if transform.low_pass else "band-pass",
        window_shape=settings.window_shape,
        side_lobe_db=float(side_lobe_db),
        resolution_m=float(resolution_m),
        range_m=float(alias_free_m),
        length_m=cable_length(line),
        needed_top_hz=separating_top_hz(transform, line, distances_m) if unclear else None,
        noise=four_figures(selected.residual),
        deviations=_cable_deviations(fitted_line, selected),
        profile=chart.profile(),
        curves=_reflection_curves(frequency, measured, expected, fitted_reflection(line, selected)),
    )
    return check, steps


def _resampled_reflection(frequency: RealArray, own_hz: RealArray, reflection: ComplexArray) -> ComplexArray:
    """Another sweep's reflection at these frequencies; nothing beyond its ends."""
    real, imaginary = (np.interp(frequency, own_hz, part, 0, 0) for part in (reflection.real, reflection.imag))
    return real + 1j * imaginary


def _cable_deviations(line: LineModel, fit: Fit) -> list[Deviation]:
    """What the fit found of the cables' length, impedance and loss."""
    found = []
    deviations = np.sqrt(np.maximum(np.diag(fit.covariance), 0.0))
    for cable in line.cable_positions:
        link = line.two_ports[cable].link
        quantities = zip(("electrical length", "impedance", "loss"), line.prior, strict=True)
        for at, (what, usual) in enumerate(quantities, start=line.offsets[cable]):
            share = round(float(fit.parameters[at] * usual), MILLIONTH_DECIMALS)
            uncertainty = round(float(deviations[at] * usual), MILLIONTH_DECIMALS)
            found.append(Deviation(link.element, link.name, what, share, uncertainty))
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
