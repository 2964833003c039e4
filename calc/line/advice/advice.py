"""What would help: every change that may be offered, what it brings, the best first."""

import math
from functools import partial

from ...feedline.feedline import Feedline
from ...numeric.json_numbers import fine
from ..requests import LineRequest
from ..results import Change, LinePart
from .candidates import candidates
from .draws import gains_db
from .edits import edits_of
from .effort import handling, toll_db
from .promises import FEW_WAYS, LIKELY_WAYS, Promise, promises
from .ranking import Ranked, best_first, gains_of, ranked, stands
from .words import costs_of, steps_of, title_of

__all__ = ["changes"]


def changes(request: LineRequest, feedline: Feedline, parts: list[LinePart]) -> list[Change]:
    """The changes that make a difference at the frequency looked at, the best first, and then some that make none.

    What a change brings at the antenna is drawn with the line as it is and as changed alike. Only
    of a line that is refused, over its limit or tight all margins are looked at before the list is cut.
    `parts` are those of the line as it is.
    """
    offered = candidates(request, feedline)
    if not offered:
        return []
    refused = frozenset(index for index, part in enumerate(parts) if part.refused_by)
    margins = [part.margin_db for part in parts if part.margin_db is not None]
    margin = math.nan if refused else min(margins, default=math.inf)
    rank = partial(ranked, handling=partial(handling, feedline))
    made = [
        (one, gain, toll_db(feedline, one))
        for one, gain in zip(offered, gains_of(gains_db(feedline, offered)), strict=True)
    ]
    after = [margin] * len(made)
    if not stands(margin):
        before, *looked = promises(request, feedline, offered, refused, FEW_WAYS)
        margin, after = before.margin_db, [one.margin_db for one in looked]
    found = [rank(*one, (margin, then)) for one, then in zip(made, after, strict=True)]
    short = best_first([one for one in found if one])
    before, *exact = promises(request, feedline, [one.candidate for one in short], refused, LIKELY_WAYS)
    promised = {}
    again = []
    for one, promise in zip(short, exact, strict=True):
        kept = rank(one.candidate, one.gain, one.gain.median_db - one.worth_db, (before.margin_db, promise.margin_db))
        if kept:
            again.append(kept)
            promised[id(kept)] = promise
    return [_change(request, feedline, one, before, promised[id(one)]) for one in best_first(again)]


def _change(request: LineRequest, feedline: Feedline, one: Ranked, before: Promise, after: Promise) -> Change:
    return Change(
        steps=steps_of(request, feedline, one.candidate),
        title=title_of(feedline, one.candidate),
        gained_db=fine(one.gain.median_db),
        gained_low_db=fine(one.gain.low_db),
        gained_high_db=fine(one.gain.high_db),
        same=one.same,
        margin_gained_db=fine(after.margin_db - before.margin_db),
        loss_db=fine(after.loss_db),
        margin_db=fine(after.margin_db),
        costs=costs_of(request, feedline, one.candidate),
        edits=edits_of(request, feedline, one.candidate),
    )
