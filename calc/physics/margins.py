"""Every limit of many families at many columns and powers, in one vectorised pass.

Array axes, in this order: family, column, power. A column is computed at
its upper frequency: every limit falls with frequency, so that one decides.
"""

from typing import NamedTuple

import numpy as np

from ..formulas.formula import Broadcast, Number
from ..formulas.heat import margin
from .limits import HeatPath, LimitId, first_principles_power, heat_limit, match_limit, voltage_limit
from .ratings import ENDS, table_ratings
from .station import Station

__all__ = ["LIMITS", "Margins", "agreement_ratio", "evaluate"]

LIMITS: list[LimitId] = ["heat", "voltage", "match"]


class Margins(NamedTuple):
    """What one pass over the table computes, refused cells included."""

    allowed_w: np.ndarray
    """Ends x (heat, voltage) x family x column [W]."""
    match_db: np.ndarray
    """Ends x family x column [dB]."""
    by_limit_db: np.ndarray
    """Ends x limits x family x column x power [dB]; infinite for heat and voltage in receive."""
    agreement: np.ndarray
    """First principles over the rating, family x column [1]."""
    heat: HeatPath
    """Of the cautious ratings, for the gates."""


def evaluate(families: list[str], frequency_hz: np.ndarray, powers_w: np.ndarray, station: Station) -> Margins:
    """Every limit of every cell at both ends of the ratings, the more cautious first.

    `frequency_hz` [Hz] and `powers_w` [W] are one-dimensional.
    """
    ratings_by_end = [table_ratings(families, end) for end in ENDS]
    heats = [heat_limit(ratings, frequency_hz, station) for ratings in ratings_by_end]
    voltages = [voltage_limit(ratings, station).allowed_w for ratings in ratings_by_end]
    matches = [match_limit(ratings, frequency_hz, station).margin_db for ratings in ratings_by_end]
    allowed = [
        (heat.allowed_w, np.broadcast_to(voltage_w, heat.allowed_w.shape))
        for heat, voltage_w in zip(heats, voltages, strict=True)
    ]
    # which end is the more cautious can change with frequency and line impedance
    allowed_w, match_db = np.sort(np.array(allowed), axis=0), np.sort(np.array(matches), axis=0)
    estimate_w = first_principles_power(ratings_by_end[0], heats[0], station)
    with np.errstate(divide="ignore", invalid="ignore"):  # no room at all is refused by its gate
        powered = np.where(powers_w > 0, margin(allowed_w[..., None], powers_w), np.inf)
        agreement = agreement_ratio(estimate_w, allowed_w[0, 0], allowed_w[1, 0])
    matched = np.broadcast_to(match_db[:, None, ..., None], (len(ENDS), 1, *powered.shape[2:]))
    by_limit = np.concatenate([powered, matched], axis=1)
    return Margins(allowed_w, match_db, by_limit, agreement, heats[0].path)


def agreement_ratio(estimate_w: Number, rating_low_w: Number, rating_high_w: Number) -> Broadcast:
    """First principles over the nearer end of the rating, 1 inside its range [1]. Broadcasts."""
    return estimate_w / np.clip(estimate_w, rating_low_w, rating_high_w)
