"""The operation "span": the settings of an analyser for a line."""

import math
from typing import NamedTuple

import msgspec
import numpy as np

from ..errors import InputError
from ..feedline.cable import CableLink
from ..feedline.elements import KnownEnd
from ..feedline.feedline import feedline_at
from ..feedline.joint import JointLink
from ..feedline.link import Link
from ..formulas.formula import recording
from ..formulas.sweep import alias_free_distance, even_step, sweep_resolution, window_broadening
from ..numeric.rounding import significant
from ..numeric.units import engineering
from ..physics.cautions import CAUTIONS, SWEEP_CAUTIONS
from ..physics.columns import spot_column
from ..physics.ratings import GENEROUS, assumption
from ..waves.two_port import scattering
from .requests import SpanRequest
from .results import Closest, Limit, SpanResult
from .verdict import reasons

__all__ = ["span"]

REACH = 2.0
"""How many times its own length a sweep reaches: an echo that runs twice still has a place of its own."""

MOST_LOSS_DB = 20.0
"""There and back: beyond it the echo of the line's end is no larger than what an analyser leaves uncalibrated."""

USUAL_POINTS = [51, 101, 201, 401, 801, 1001, 1601]

CALM_POINTS = 201
"""No fewer where the analyser has them: the fewer points, the more of its noise stands in each echo."""

FROM_ZERO_STEPS, FROM_ZERO_SHARE = 2.5, 0.01
"""A sweep that begins within so many steps of zero, or so small a share of its top, is joined by its mirror image."""

LOOKED_AT = 400
"""Frequencies at which the loss is computed."""

SMALLEST_SPAN = 2.0  # the upper edge over the lower one


class _SweptLine(NamedTuple):
    """What of a line counts: its length [m] and velocity factor, and its joints by place [m]."""

    length_m: float
    velocity: float
    joints: list[tuple[float, str]]
    links: list[Link]

    def loss_db(self, frequency: np.ndarray) -> np.ndarray:
        """There and back at frequencies [Hz], between matched ends; nothing for what isn't known."""
        total = np.zeros_like(frequency)
        for link in self.links:
            model = link.models[GENEROUS]
            through = scattering(model.two_port(frequency), model.station.impedance_ohm)[2]
            total -= 2 * np.nan_to_num(20 * np.log10(np.abs(through)))
        return total


@np.errstate(divide="ignore", invalid="ignore", over="ignore", under="ignore")  # no number becomes null
def span(request: SpanRequest) -> SpanResult:
    """The span and the points that show most of a line on the analyser there is.

    As high as it can be, since higher shows finer: but not beyond the analyser, not so high that the line takes too
    much, and not higher than the points can follow without echoes folding back. Raises InputError for an analyser
    that ends below where it begins, and as `line` does for a line that can't be looked up.
    """
    highest_hz = request.highest_hz
    if highest_hz < SMALLEST_SPAN * request.lowest_hz:
        lowest = engineering(request.lowest_hz, "Hz")
        raise InputError("highest_hz", highest_hz, f"at least {SMALLEST_SPAN:g} times where its range begins, {lowest}")
    line = _swept_line(request, highest_hz)
    by_loss_hz = _top_by_loss(line, request.lowest_hz, highest_hz)
    shape = float(assumption("sweep_window_shape"))
    with recording() as steps:
        step_hz = float(even_step(line.velocity, REACH * line.length_m))
        by_points_hz = request.lowest_hz + (request.most_points - 1) * step_hz
        tops: dict[Limit, float] = {"analyser": highest_hz, "points": by_points_hz, "loss": by_loss_hz}
        limited_by = min(tops, key=tops.__getitem__)
        high_hz = _rounded_down(max(tops[limited_by], SMALLEST_SPAN * request.lowest_hz))
        low_hz = max(request.lowest_hz, min(_rounded_down(step_hz), high_hz / SMALLEST_SPAN))
        needed = max((high_hz - low_hz) / step_hz + 1, min(request.most_points, CALM_POINTS))
        points = _points(request.most_points, needed)
        step_hz = (high_hz - low_hz) / (points - 1)
        from_zero = low_hz <= max(FROM_ZERO_STEPS * step_hz, FROM_ZERO_SHARE * high_hz)
        range_m = float(alias_free_distance(line.velocity, step_hz))
        spectrum_hz = 2 * high_hz if from_zero else high_hz - low_hz
        resolution_m = float(sweep_resolution(line.velocity, window_broadening(shape), spectrum_hz))
    result = SpanResult(
        low_hz=low_hz,
        high_hz=high_hz,
        points=points,
        step_hz=step_hz,
        length_m=line.length_m,
        range_m=range_m,
        resolution_m=resolution_m,
        transform="low-pass" if from_zero else "band-pass",
        loss_db=round(float(line.loss_db(np.array([high_hz]))[0]), 3),
        limited_by=limited_by,
        closest=_closest(line, resolution_m),
        reasons=[],
        steps=steps,
        cautions=[*SWEEP_CAUTIONS, *CAUTIONS],
    )
    return msgspec.structs.replace(result, reasons=reasons(result))


def _swept_line(request: SpanRequest, highest_hz: float) -> _SweptLine:
    if not request.elements:
        return _SweptLine(request.length_m, request.velocity_factor, [], [])
    column = spot_column((request.lowest_hz + highest_hz) / 2)
    feedline = feedline_at(request, request.elements, KnownEnd(what="short"), column)
    cables = [link.models[GENEROUS] for link in feedline.links if isinstance(link, CableLink)]
    length_m = feedline.distance_m(len(feedline.links))
    delay_m = sum(cable.length_m / cable.ratings.velocity_factor for cable in cables)
    joints = [
        (feedline.distance_m(at), link.name) for at, link in enumerate(feedline.links) if isinstance(link, JointLink)
    ]
    if not length_m:
        return _SweptLine(request.length_m, request.velocity_factor, joints, feedline.links)
    return _SweptLine(length_m, float(length_m / delay_m) if delay_m else 1.0, joints, feedline.links)


def _top_by_loss(line: _SweptLine, lowest_hz: float, highest_hz: float) -> float:
    """Up to where the line takes no more there and back than is sensible [Hz]."""
    frequency = np.geomspace(lowest_hz, highest_hz, LOOKED_AT)
    too_much = line.loss_db(frequency) > MOST_LOSS_DB
    return float(frequency[max(int(np.argmax(too_much)) - 1, 0)]) if too_much.any() else math.inf


def _rounded_down(hertz: float) -> float:
    """Two digits, as one types them."""
    ten = 10.0 ** (math.floor(math.log10(hertz)) - 1)
    return significant(math.floor(hertz / ten + 1e-9) * ten, 2)


def _points(most: int, needed: float) -> int:
    """The fewest of the usual numbers of points that do, else all there are."""
    return min((points for points in USUAL_POINTS if needed <= points <= most), default=most)


def _closest(line: _SweptLine, resolution_m: float) -> Closest | None:
    pairs = [
        (after[0] - before[0], [before[1], after[1]])
        for before, after in zip(line.joints, line.joints[1:], strict=False)
        if after[0] > before[0]
    ]
    if not pairs:
        return None
    apart_m, names = min(pairs, key=lambda pair: pair[0])
    return Closest(names, apart_m, apart_m >= resolution_m)
