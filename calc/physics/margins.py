"""Every limit of many families at many columns and powers, in one vectorised pass.

Array axes, in this order: family, column, power. A column is computed at
its upper frequency: every limit falls with frequency, so that one decides.
"""

from typing import NamedTuple

import numpy as np

from ..formulas.heat import margin
from .cable_heat import cable_limit
from .cable_ratings import cable_cutoff
from .cable_table import table_of_cable_ratings
from .customary import customary_cable
from .family_ratings import table_ratings
from .heat_limit import HeatLimit
from .limits import LimitId, cable_heat, contact_heat, match_of, voltage_limit
from .ratings import ENDS
from .station import Station

__all__ = ["LIMITS", "Margins", "evaluate"]

LIMITS: list[LimitId] = ["cable", "contact", "voltage"]
"""Of a joint. A contact counts as at least as hot as its cable: where they tie, it is the cable that decides."""


class Margins(NamedTuple):
    """What one pass over the table computes, refused cells included."""

    allowed_w: np.ndarray
    """Ends x limits x family x column [W]."""
    return_loss_db: np.ndarray
    """Ends x family x column [dB], of the joint alone."""
    by_limit_db: np.ndarray
    """Ends x limits x family x column x power [dB]; infinite in receive."""
    no_heat_room: np.ndarray
    """By family, one column: whether air and sun alone are too hot, by the cautious ratings."""
    contact: HeatLimit
    """Of the cautious ratings."""
    cable_cutoff_hz: np.ndarray
    """Of the cable at each family's joint, by family, one column."""


def evaluate(families: list[str], frequency_hz: np.ndarray, powers_w: np.ndarray, station: Station) -> Margins:
    """Every limit of every cell at both ends of the ratings, the more cautious first.

    `frequency_hz` [Hz] and `powers_w` [W] are one-dimensional.
    """
    shape = (len(families), frequency_hz.size)
    cable_ids = [station.cable or customary_cable(family) for family in families]
    allowed_w, return_loss_db = np.empty((len(ENDS), len(LIMITS), *shape)), np.empty((len(ENDS), *shape))
    heats = []
    for at, end in enumerate(ENDS):
        ratings, cables = table_ratings(families, end), table_of_cable_ratings(cable_ids, end)
        beside = cable_heat(cables, frequency_hz, station)
        cable = cable_limit(cables, beside.path, beside.rises, station)
        contact = contact_heat(ratings, cables, beside, frequency_hz, station)
        by_limit_w = cable.allowed_w, contact.allowed_w, voltage_limit(ratings, station).allowed_w
        for row, limit_w in zip(allowed_w[at], by_limit_w, strict=True):
            row[:] = limit_w
        return_loss_db[at] = match_of(ratings, frequency_hz, station).return_loss_db
        heats.append((cable, contact))
    # which end is the more cautious can change with frequency and line impedance
    allowed_w, return_loss_db = _lower_first(*allowed_w), _lower_first(*return_loss_db)
    with np.errstate(divide="ignore", invalid="ignore"):  # no room at all is refused by its gate
        by_limit = np.where(powers_w > 0, margin(allowed_w[..., None], powers_w), np.inf)
    cautious = heats[0]
    no_room = np.any([np.broadcast_to(one.has_no_room(station), shape)[:, :1] for one in cautious], axis=0)
    return Margins(allowed_w, return_loss_db, by_limit, no_room, cautious[1], cable_cutoff(cables))


def _lower_first(first: np.ndarray, second: np.ndarray) -> np.ndarray:
    return np.array([np.minimum(first, second), np.maximum(first, second)])
