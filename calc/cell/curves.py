"""Each limit of one family against frequency and against power, and its match against frequency, for the charts."""

import numpy as np

from ..numeric.json_numbers import nested
from ..physics.limits import LimitId
from ..physics.margins import LIMITS, evaluate
from ..physics.station import Station
from .results import Curves

__all__ = ["curves"]

FREQUENCIES_HZ = np.geomspace(1e5, 30e9, 161)
POWERS_W = np.geomspace(0.1, 10_000, 51)


def curves(family: str, power_w: float, frequency_hz: float, station: Station) -> Curves:
    """Margins [dB] of every limit and return losses [dB] around one cell, gates not considered.

    None where there is no limit.
    """
    over_frequency = evaluate([family], FREQUENCIES_HZ, np.array([power_w]), station)
    by_frequency = over_frequency.by_limit_db[:, :, 0, :, 0]
    by_power = evaluate([family], np.array([frequency_hz]), POWERS_W, station).by_limit_db[:, :, 0, 0, :]
    return_loss, return_loss_high = nested(over_frequency.return_loss_db[:, 0])
    return Curves(
        frequency_hz=FREQUENCIES_HZ.tolist(),
        margin_by_frequency_db=_by_limit(by_frequency[0]),
        margin_high_by_frequency_db=_by_limit(by_frequency[1]),
        return_loss_by_frequency_db=return_loss,
        return_loss_high_by_frequency_db=return_loss_high,
        power_w=POWERS_W.tolist(),
        margin_by_power_db=_by_limit(by_power[0]),
        margin_high_by_power_db=_by_limit(by_power[1]),
    )


def _by_limit(values: np.ndarray) -> dict[LimitId, list[float | None]]:
    return dict(zip(LIMITS, nested(values), strict=True))
