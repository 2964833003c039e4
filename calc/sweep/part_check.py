"""A two-port sweep of a jumper, adapter or part against what its parts should be, their limits and its own past."""

from typing import NamedTuple

import numpy as np

from ..feedline.cable import CableLink
from ..feedline.feedline import Feedline
from ..feedline.joint import JointLink
from ..feedline.link import Link
from ..feedline.load import MATCHED
from ..feedline.reflection import bounds
from ..formulas.formula import Step, recording
from ..formulas.line import decibels
from ..formulas.match import return_loss
from ..formulas.sweep import added_resistance, dissipated_loss
from ..numeric.json_numbers import fine, number
from ..physics.ratings import CAUTIOUS, GENEROUS, assumption
from ..waves.two_port import cascade, scattering
from .arrays import ComplexArray, RealArray
from .digits import MILLIONTH_DECIMALS
from .prior import LONGEST_ANALYSER_DELAY_S, delayed_waves
from .results import PartCheck, PartFinding, Trend
from .verdict import NOTHING_TO_COMPARE, trend_sentence

__all__ = ["SweptPart", "check_part"]

LIMIT_DEVIATIONS = 2.0  # standard deviations of cable loss that its limit leaves
PASSED_DEVIATIONS, FAILED_DEVIATIONS = 1.5, 2.5
"""By how much of what a calibration leaves a limit may be missed: up to the first as if kept, beyond the second not."""
LEAST_THROUGH, LARGEST_REFLECTION = 1e-4, 0.999
LEAST_NOISE_DB = 1e-3
FREE_DB = 30.0
"""Deviation of what nothing is known of beforehand."""
INDEPENDENT_POINTS = 10
MEDIAN_SQUARE = 0.455  # of a normal number
FEWEST_SHARED = 8  # points of two sweeps that can be compared


class SweptPart(NamedTuple):
    """Scattering parameters of a measured two-port against the line's impedance, each (frequencies,)."""

    s11: ComplexArray
    s21: ComplexArray
    s22: ComplexArray


class _Leftover(NamedTuple):
    """Standard deviations of loss [dB] and reflection [1] that a calibration leaves, over frequency."""

    loss_db: RealArray
    reflection: RealArray


class _SeriesResistance(NamedTuple):
    """What explains an excess of loss: a resistance in series, and a part that grows with the root of frequency."""

    ohm: float
    uncertainty_ohm: float
    skin_db: float


def check_part(
    feedline: Feedline, frequency: RealArray, measured: SweptPart, earlier: tuple[RealArray, SweptPart] | None
) -> tuple[PartCheck, list[Step]]:
    """Judge a measured two-port at frequencies [Hz], and say by which formulas.

    `earlier` is another sweep of it with frequencies of its own [Hz].
    """
    z_0 = feedline.station.impedance_ohm
    expected = scattering(cascade([link.models[GENEROUS].two_port(frequency) for link in feedline.links]), z_0)
    loss, expected_loss = _insertion_loss(measured.s21), _insertion_loss(expected[2]) + 0 * frequency
    limit_loss = sum((_loss_limit(link, frequency, z_0) for link in feedline.links), np.zeros_like(frequency))
    worst, _ = bounds(feedline._replace(load=MATCHED), frequency)
    larger = np.maximum(np.abs(measured.s11), np.abs(measured.s22))
    limit_return_loss, least_return_loss = _return_loss(worst), _return_loss(larger)
    loss_margin, match_margin = limit_loss - loss, least_return_loss - limit_return_loss
    leftover = _leftover(measured)
    excess = _heat(measured.s11, measured.s21) - _heat(expected[0] + 0 * frequency, expected[2] + 0 * frequency)
    with recording() as steps:
        resistance = _series_resistance(frequency, excess, z_0, calibrations=1)
    worst_loss, worst_match = int(np.argmin(loss_margin)), int(np.argmin(match_margin))
    loss_finding = _finding(loss_margin, leftover.loss_db)
    match_finding = _finding(10 ** (-limit_return_loss / 20) - larger, leftover.reflection)
    loss_passed, match_passed = loss_finding == "passed", match_finding == "passed"
    findings = (loss_finding, match_finding)
    finding: PartFinding = next((one for one in ("failed", "cannot tell") if one in findings), "passed")
    check = PartCheck(
        finding=finding,
        loss_uncertainty_db=_rounded(float(leftover.loss_db[worst_loss])),
        match_uncertainty=_rounded(float(leftover.reflection[worst_match])),
        passed=finding == "passed",
        loss_passed=loss_passed,
        match_passed=match_passed,
        worst_loss_margin_db=fine(loss_margin[worst_loss]),
        worst_loss_at_hz=number(frequency[worst_loss]),
        worst_match_margin_db=fine(match_margin[worst_match]),
        worst_match_at_hz=number(frequency[worst_match]),
        resistance_ohm=_rounded(resistance.ohm),
        resistance_uncertainty_ohm=_rounded(resistance.uncertainty_ohm),
        skin_excess_db_at_top=_rounded(resistance.skin_db),
        trend=None if earlier is None else _trend(frequency, measured, *earlier, z_0),
        frequency_hz=frequency.tolist(),
        loss_db=_fine_numbers(loss),
        expected_loss_db=_fine_numbers(expected_loss),
        limit_loss_db=_fine_numbers(limit_loss),
        excess_loss_db=_fine_numbers(loss - expected_loss),
        return_loss_db=_fine_numbers(_return_loss(np.abs(measured.s11))),
        expected_return_loss_db=_fine_numbers(_return_loss(np.abs(expected[0]) + 0 * frequency)),
        limit_return_loss_db=_fine_numbers(limit_return_loss),
        other_return_loss_db=_fine_numbers(_return_loss(np.abs(measured.s22))),
        earlier_loss_db=[]
        if earlier is None
        else _fine_numbers(_resampled(frequency, earlier[0], _insertion_loss(earlier[1].s21))),
        measured_real=_fine_numbers(measured.s11.real),
        measured_imaginary=_fine_numbers(measured.s11.imag),
    )
    return check, steps[:1]


def _heat(s11: ComplexArray, s21: ComplexArray) -> RealArray:
    """Loss by heat [dB]: what a bad match sends back is not laid to a resistance."""
    reflected = np.minimum(np.abs(s11), LARGEST_REFLECTION)
    return dissipated_loss(reflected, np.maximum(np.abs(s21), LEAST_THROUGH))


def _insertion_loss(s21: ComplexArray) -> RealArray:
    """Loss between matched ends [dB]."""
    return -decibels(np.maximum(np.abs(s21) ** 2, np.finfo(np.float64).tiny))


def _return_loss(reflection: RealArray) -> RealArray:
    """Of the magnitude of a reflection, which noise may lift above 1 [dB]."""
    return return_loss(np.minimum(reflection, 1.0))


def _loss_limit(link: Link, frequency: RealArray, z_0: float) -> RealArray:
    """The most a link may lose, of a cable what is usual at the most [dB].

    A joint may lose its published figure, drawn on as heat goes, by the root of
    frequency; or, as reflection grows faster, what it loses at its cautious end.
    """

    def matched(end: int) -> RealArray:
        return _insertion_loss(scattering(link.models[end].two_port(frequency), z_0)[2]) + 0 * frequency

    if isinstance(link, JointLink):
        ratings = link.models[CAUTIOUS].ratings
        published = ratings.published_loss_db * np.sqrt(frequency / ratings.published_loss_at_hz)
        return np.maximum(matched(CAUTIOUS), published)
    if isinstance(link, CableLink):
        return matched(GENEROUS) * (1 + LIMIT_DEVIATIONS * float(assumption("sweep_cable_loss_spread")))
    return matched(GENEROUS)


def _leftover(measured: SweptPart) -> _Leftover:
    """What a usual calibration leaves of loss and reflection, with the noise: one standard deviation."""
    through, near, far = np.abs(measured.s21), np.abs(measured.s11), np.abs(measured.s22)
    directivity, match, tracking = (
        float(assumption(f"sweep_{what}_spread")) for what in ("directivity", "match", "tracking")
    )
    seen = tracking**2 / 2 + match**2 * (near**2 + far**2)
    noise = _noise(through)
    loss = decibels_of_share(np.sqrt(seen + noise**2 / np.maximum(through, LEAST_THROUGH) ** 2))
    larger = np.maximum(near, far)
    reflection = np.sqrt(directivity**2 + (match * through**2) ** 2 + (tracking * larger) ** 2 + noise**2)
    return _Leftover(loss, reflection)


def _noise(through: RealArray) -> float:
    """Rms of the noise of a complex measurement, by the size of what passes, which runs smoothly over frequency.

    By what each point differs from the middle of its neighbours; a phase may turn far from one to the next.
    """
    bends = through[1:-1] - (through[:-2] + through[2:]) / 2
    return float(np.sqrt(2 * np.median(bends**2) / (1.5 * MEDIAN_SQUARE)))


def _finding(margin: RealArray, leftover: RealArray) -> PartFinding:
    """Of a margin over frequency and what a calibration leaves of it: one standard deviation."""
    worst = float(np.min(margin / leftover))
    return "passed" if worst >= -PASSED_DEVIATIONS else "failed" if worst < -FAILED_DEVIATIONS else "cannot tell"


def decibels_of_share(share: RealArray) -> RealArray:
    """A small share of a voltage in dB."""
    return share * 20 / np.log(10)


def _series_resistance(
    frequency: RealArray, excess_db: RealArray, z_0: float, *, calibrations: int
) -> _SeriesResistance:
    """A steady excess, as of a resistance in series, one that grows with frequency, and what calibrations left.

    Least squares in which the smooth leftovers of so many calibrations have their usual size: each port bears half.
    """
    share = frequency / frequency[-1]
    waves = delayed_waves(frequency, LONGEST_ANALYSER_DELAY_S).real * np.sqrt(calibrations / 2)
    waves = waves * float(decibels_of_share(np.array(float(assumption("sweep_tracking_spread")))))
    rows = np.concatenate([[np.ones_like(share), np.sqrt(share), share], waves])
    bends = excess_db[1:-1] - (excess_db[:-2] + excess_db[2:]) / 2
    variance = max(float(np.median(bends**2)) / (1.5 * MEDIAN_SQUARE), LEAST_NOISE_DB**2)
    prior = np.concatenate([np.full(3, 1 / FREE_DB**2), np.ones(len(waves))])
    terms = np.linalg.solve(rows @ rows.T / variance + np.diag(prior), rows @ excess_db / variance)
    # what no term explains is smooth too: it says as much as a few independent points
    left = float(np.mean((excess_db - terms @ rows) ** 2)) * frequency.size / INDEPENDENT_POINTS
    covariance = np.linalg.inv(rows @ rows.T / max(variance, left) + np.diag(prior))
    steady, growing, linear = terms[:3]
    deviation = float(np.sqrt(covariance[0, 0]))
    ohm = float(added_resistance(z_0, steady))
    return _SeriesResistance(ohm, float(added_resistance(z_0, steady + deviation)) - ohm, float(growing + linear))


def _trend(frequency: RealArray, measured: SweptPart, earlier_hz: RealArray, earlier: SweptPart, z_0: float) -> Trend:
    change = _insertion_loss(measured.s21) - _resampled(frequency, earlier_hz, _insertion_loss(earlier.s21))
    heat = _heat(measured.s11, measured.s21) - _resampled(frequency, earlier_hz, _heat(earlier.s11, earlier.s21))
    shared = np.isfinite(change)
    if shared.sum() < FEWEST_SHARED:
        return Trend(0.0, 0.0, 0.0, float(frequency[0]), NOTHING_TO_COMPARE)
    change, shared_hz = change[shared], frequency[shared]
    resistance = _series_resistance(shared_hz, heat[shared], z_0, calibrations=2)
    largest = int(np.argmax(np.abs(change)))
    return Trend(
        resistance_change_ohm=_rounded(resistance.ohm),
        uncertainty_ohm=_rounded(resistance.uncertainty_ohm),
        largest_loss_change_db=_rounded(float(change[largest])),
        at_hz=float(shared_hz[largest]),
        sentence=trend_sentence(resistance.ohm, resistance.uncertainty_ohm),
    )


def _resampled(frequency: RealArray, own_hz: RealArray, values: RealArray) -> RealArray:
    """Another sweep's values at these frequencies, not a number beyond its ends."""
    return np.interp(frequency, own_hz, values, left=np.nan, right=np.nan)


def _rounded(value: float) -> float:
    return round(value, MILLIONTH_DECIMALS)


def _fine_numbers(values: RealArray) -> list[float | None]:
    return [fine(value) for value in values]
