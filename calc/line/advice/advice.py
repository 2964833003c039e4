"""What would help: every change that may be offered, what it brings, the best first."""

import math

import numpy as np

from ...catalogue import catalogue
from ...feedline.cable import CableLink
from ...feedline.feedline import Feedline
from ...numeric.json_numbers import fine
from ..requests import LineRequest
from ..results import Change
from .candidates import Candidate, candidates
from .draws import gains_db
from .edits import edits_of
from .promises import Promise, promises
from .ranking import Ranked, best_first, gain_of, helps_margin
from .words import costs_of, steps_of, title_of

__all__ = ["changes"]


def changes(request: LineRequest, feedline: Feedline) -> list[Change]:
    """The changes that make a difference at the frequency looked at, the best first, and then some that make none.

    What a change brings at the antenna is drawn with the line as it is and as changed alike.
    """
    offered = candidates(request, feedline)
    if not offered:
        return []
    gains = gain_of(gains_db(feedline, offered))
    frequency = np.array([feedline.frequency_hz])
    refused = frozenset(
        index for index, link in enumerate(feedline.links) if link.refused(frequency, request.power_w).any()
    )
    usable = [(one, gain) for one, gain in zip(offered, gains, strict=True) if not gain.costs_power]
    before, *after = promises(request, feedline, [one for one, _ in usable], refused)
    ranked = [
        Ranked(one, gain, promise, not gain.noticed and not helps_margin(before, promise))
        for (one, gain), promise in zip(usable, after, strict=True)
        if math.isfinite(gain.median_db)
    ]
    found = best_first(ranked, lambda one: _effort(feedline, one))
    return [_change(request, feedline, one, before) for one in found]


def _effort(feedline: Feedline, candidate: Candidate) -> tuple[float, ...]:
    """How hard a change is to handle: thickness of cable, then kinds of connector new to the line, then their size."""
    families = {link.family for link in feedline.links if link.family}
    cable_m, new, body_m = 0.0, set(), 0.0
    for index, to in candidate.replaced.items():
        if isinstance(feedline.links[index], CableLink):
            cable_m = max(cable_m, catalogue().cables[to].outer_diameter_m.value)
        else:
            new |= {to} - families
            body_m = max(body_m, catalogue().interfaces[to].body_diameter_m.value)
    return round(cable_m, 3), len(new), body_m


def _change(request: LineRequest, feedline: Feedline, one: Ranked, before: Promise) -> Change:
    return Change(
        steps=steps_of(feedline, one.candidate),
        title=title_of(feedline, one.candidate),
        gained_db=fine(one.gain.median_db),
        gained_low_db=fine(one.gain.low_db),
        gained_high_db=fine(one.gain.high_db),
        same=one.same,
        margin_gained_db=fine(one.promise.margin_db - before.margin_db),
        loss_db=fine(one.promise.loss_db),
        margin_db=fine(one.promise.margin_db),
        costs=costs_of(request, feedline, one.candidate),
        edits=edits_of(request, feedline, one.candidate),
    )
