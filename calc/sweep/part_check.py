"""A two-port sweep of a jumper, adapter or part against what its parts should be, their limits and its own past."""

from typing import NamedTuple

import numpy as np

from ..feedline.feedline import Feedline, Link
from ..feedline.reflection import bounds
from ..formulas.formula import Step, recording
from ..formulas.line import decibels
from ..formulas.loss import guaranteed_loss
from ..formulas.match import return_loss
from ..formulas.sweep import added_resistance
from ..numeric.json_numbers import fine, number
from ..numeric.units import engineering
from ..physics.limits import assumption
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import cascade, scattering
from .results import PartCheck, Trend

__all__ = ["Scattered", "ohms", "part_check"]

Number = np.ndarray
COMMON_DEVIATIONS = 2.0  # standard deviations of cable loss that its limit leaves
CERTAIN = 3.0  # standard deviations from which on a change counts


class Scattered(NamedTuple):
    """A measured two-port against the line's impedance, over frequency."""

    s11: Number
    s21: Number
    s22: Number


class _Resistance(NamedTuple):
    ohm: float
    uncertainty_ohm: float
    skin_db: float


def part_check(
    feedline: Feedline, frequency: Number, measured: Scattered, earlier: tuple[Number, Scattered] | None
) -> tuple[PartCheck, list[Step]]:
    """Judge a measured two-port; `earlier` is another sweep of it with frequencies of its own [Hz]."""
    z_0 = feedline.station.impedance_ohm
    expected = scattering(cascade([link.models[GENEROUS].two_port(frequency) for link in feedline.links]), z_0)
    loss, expected_loss = _loss(measured.s21), _loss(expected[2]) + 0 * frequency
    limit_loss = sum((_limit_db(link, frequency, z_0) for link in feedline.links), np.zeros_like(frequency))
    worst, _ = bounds(feedline._replace(load=np.zeros_like), frequency)
    seen = np.maximum(np.abs(measured.s11), np.abs(measured.s22))
    limit_return, seen_return = return_loss(np.minimum(worst, 1.0)), return_loss(np.minimum(seen, 1.0))
    loss_margin, match_margin = limit_loss - loss, seen_return - limit_return
    with recording() as steps:
        fitted = _resistance(frequency, loss - expected_loss, z_0)
    lossiest, worst_match = int(np.argmin(loss_margin)), int(np.argmin(match_margin))
    loss_passed, match_passed = bool(loss_margin[lossiest] >= 0), bool(match_margin[worst_match] >= 0)
    check = PartCheck(
        passed=loss_passed and match_passed,
        loss_passed=loss_passed,
        match_passed=match_passed,
        worst_loss_margin_db=fine(loss_margin[lossiest]),
        worst_loss_at_hz=number(frequency[lossiest]),
        worst_match_margin_db=fine(match_margin[worst_match]),
        worst_match_at_hz=number(frequency[worst_match]),
        resistance_ohm=_rounded(fitted.ohm),
        resistance_uncertainty_ohm=_rounded(fitted.uncertainty_ohm),
        skin_excess_db_at_top=_rounded(fitted.skin_db),
        trend=None if earlier is None else _trend(frequency, loss, *earlier, z_0),
        frequency_hz=frequency.tolist(),
        loss_db=_all(loss),
        expected_loss_db=_all(expected_loss),
        limit_loss_db=_all(limit_loss),
        excess_loss_db=_all(loss - expected_loss),
        return_loss_db=_all(return_loss(np.minimum(np.abs(measured.s11), 1.0))),
        expected_return_loss_db=_all(return_loss(np.minimum(np.abs(expected[0]) + 0 * frequency, 1.0))),
        limit_return_loss_db=_all(limit_return),
        other_return_loss_db=_all(return_loss(np.minimum(np.abs(measured.s22), 1.0))),
        earlier_loss_db=[] if earlier is None else _all(_between(frequency, earlier[0], _loss(earlier[1].s21))),
        measured_real=_all(measured.s11.real),
        measured_imaginary=_all(measured.s11.imag),
    )
    return check, steps[:1]


def _loss(s21: Number) -> Number:
    return -decibels(np.maximum(np.abs(s21) ** 2, np.finfo(np.float64).tiny))


def _limit_db(link: Link, frequency: Number, z_0: float) -> Number:
    """The most a link may lose: its standard's limit, or of a cable what is usual at the most [dB]."""
    if link.kind == "joint":
        ratings = link.models[CAUTIOUS].ratings
        return guaranteed_loss(ratings.guaranteed_loss_db, frequency, ratings.guaranteed_loss_at_hz)
    matched = _loss(scattering(link.models[GENEROUS].two_port(frequency), z_0)[2]) + 0 * frequency
    if link.kind == "cable":
        return matched * (1 + COMMON_DEVIATIONS * float(assumption("sweep_cable_loss_spread")))
    return matched


def _resistance(frequency: Number, excess_db: Number, z_0: float) -> _Resistance:
    """A steady excess, as of a resistance in series, and one that grows with the root of frequency: least squares."""
    root = np.sqrt(frequency / frequency[-1])
    count, total, squares = frequency.size, float(root.sum()), float((root**2).sum())
    determinant = count * squares - total**2
    steady = (squares * float(excess_db.sum()) - total * float((root * excess_db).sum())) / determinant
    growing = (count * float((root * excess_db).sum()) - total * float(excess_db.sum())) / determinant
    left = float(((excess_db - steady - growing * root) ** 2).sum()) / (count - 2)
    off = np.sqrt(left * squares / determinant)
    ohm = float(added_resistance(z_0, steady))
    return _Resistance(ohm, float(added_resistance(z_0, steady + off)) - ohm, growing)


def _trend(frequency: Number, loss: Number, then_hz: Number, then: Scattered, z_0: float) -> Trend:
    change = loss - _between(frequency, then_hz, _loss(then.s21))
    both = np.isfinite(change)
    if both.sum() < 3:
        return Trend(
            0.0, 0.0, 0.0, float(frequency[0]), "The earlier sweep has no frequencies in common with this one."
        )
    change, shared = change[both], frequency[both]
    fitted, at = _resistance(shared, change, z_0), int(np.argmax(np.abs(change)))
    moved = abs(fitted.ohm) > CERTAIN * fitted.uncertainty_ohm
    way = "risen" if fitted.ohm > 0 else "fallen"
    off = ohms(fitted.uncertainty_ohm)
    sentence = f"Since the earlier sweep the resistance has {way} by {ohms(abs(fitted.ohm))} ± {off}."
    if not moved:
        least = ohms(CERTAIN * fitted.uncertainty_ohm)
        sentence = f"No change of resistance since the earlier sweep beyond {least}."
    return Trend(
        _rounded(fitted.ohm), _rounded(fitted.uncertainty_ohm), _rounded(float(change[at])), float(shared[at]), sentence
    )


def ohms(value: float) -> str:
    """A fitted resistance [Ω] with the two figures that are known of it."""
    return engineering(float(f"{value:.2g}"), "Ω")


def _between(frequency: Number, own_hz: Number, values: Number) -> Number:
    """Values of another sweep at these frequencies, not a number beyond its ends."""
    return np.interp(frequency, own_hz, values, left=np.nan, right=np.nan)


def _rounded(value: float) -> float:
    return round(value, 6)


def _all(values: Number) -> list[float | None]:
    return [fine(value) for value in values]
