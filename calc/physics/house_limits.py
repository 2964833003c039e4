"""Limits of power that a station sets itself, from the packs in force.

They are rules, not physics: a rule is kept or broken, so one that is broken is
a hard gate beside the computed limits, and the largest power stops at it.
"""

import numpy as np

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import HouseLimit
from ..numeric.units import engineering

__all__ = ["house_limit", "house_power", "house_sentence"]


def house_power(families: list[str], highest_hz: np.ndarray) -> np.ndarray:
    """Most power the station allows itself [W], family x frequency [Hz]; infinite where it has no rule."""
    allowed = np.full((len(families), highest_hz.size), np.inf)
    if catalogue().house_limits:
        for row, family in enumerate(families):
            for limit in _limits_of(family):
                allowed[row] = np.where(
                    _reaches(limit, highest_hz), np.minimum(allowed[row], limit.power_w), allowed[row]
                )
    return allowed


def house_limit(family: str, highest_hz: float) -> HouseLimit | None:
    """The rule that allows a family the least power at a frequency [Hz], if there is one."""
    reaching = [limit for limit in _limits_of(family) if _reaches(limit, np.array([highest_hz]))[0]]
    return min(reaching, key=lambda limit: limit.power_w, default=None)


@per_edition(maxsize=256)
def house_sentence(family: str) -> str:
    """Every rule for a family in words."""
    limits = _limits_of(family)
    if not limits:
        return "The station has set itself no limit here."
    return " ".join(_words(limit) for limit in limits)


@per_edition(maxsize=256)
def _limits_of(family: str) -> tuple[HouseLimit, ...]:
    limits = catalogue().house_limits.values()
    return tuple(limit for limit in limits if not limit.interfaces or family in limit.interfaces)


def _reaches(limit: HouseLimit, frequency_hz: np.ndarray) -> np.ndarray:
    """Whether frequencies lie in the limit's bands, whatever the Region."""
    if not limit.bands:
        return np.ones(frequency_hz.shape, dtype=bool)
    bands = [edges for band in limit.bands for edges in catalogue().bands[band].regions.values()]
    return np.any([(edges.low_hz <= frequency_hz) & (frequency_hz <= edges.high_hz) for edges in bands], axis=0)


def _words(limit: HouseLimit) -> str:
    bands = [catalogue().bands[band].name for band in limit.bands]
    where = f" on {', '.join(bands)}" if bands else ""
    pack = catalogue().pack_of("house_limits", limit.id)
    reason = limit.reason if limit.reason.endswith((".", "!", "?")) else f"{limit.reason}."
    return f"House limit of {pack}{where}: at most {engineering(limit.power_w, 'W')} PEP. {reason}"
