"""Why two ports can't be joined, in one sentence: what stands in the way."""

from typing import NamedTuple

from ..catalogue import catalogue
from ..formulas.match import return_loss
from .chains import AdapterChain, Stock, chains, loss_steps
from .needs import Need
from .requests import KitRequest
from .stand import Standing

__all__ = ["Obstacle", "impedances_differ", "obstacle"]

LONGEST = 4  # adapters in series, the most a request may allow
NO_LIMIT_DB = float("inf")


class Obstacle(NamedTuple):
    """A short word for the reason and the sentence."""

    reason: str
    sentence: str


def impedances_differ(request: KitRequest, need: Need) -> bool:
    """Whether the ports' impedances forbid a joint."""
    low, high = need.duty.impedances_ohm
    return low != high and not request.impedance_steps


def obstacle(request: KitRequest, need: Need, standing: Standing, available: Stock) -> Obstacle:
    """What keeps two ports apart that no chain within the limits joins."""
    if impedances_differ(request, need):
        low, high = need.duty.impedances_ohm
        loss = return_loss((high - low) / (high + low))
        return Obstacle(
            "impedance",
            f"{low:g} Ω would meet {high:g} Ω, a return loss of {loss:.1f} dB before any joint;"
            " refused unless impedance steps are allowed.",
        )
    for end in (need.first, need.second):
        if not standing.stands(end.family):
            return Obstacle("port", f"The port itself: {standing.refusal[end.family]}")
    found = _first(need, standing, available, request.most_in_series, NO_LIMIT_DB)
    if found:
        return Obstacle("loss", f"The least loss is {found.loss_db:.2f} dB; {request.most_loss_db:g} dB are allowed.")
    found = _first(need, standing, available, LONGEST, request.most_loss_db)
    if found:
        needed = len(found.adapters)
        return Obstacle("series", f"It takes {needed} adapters in series; {request.most_in_series} are allowed.")
    willing = standing._replace(refusal=dict.fromkeys(standing.refusal, ""))
    found = _first(need, willing, available, LONGEST, NO_LIMIT_DB)
    if found:
        between = [end.family for adapter in found.adapters for end in adapter]
        refused = next((standing.refusal[family] for family in between if standing.refusal[family]), "")
        if refused:
            return Obstacle("stand", f"What could join them does not stand it: {refused}")
    names = " and ".join(catalogue().interfaces[end.family].name for end in (need.first, need.second))
    return Obstacle("trade", f"The trade sells no adapters that join {names} within these limits.")


def _first(need: Need, standing: Standing, available: Stock, longest: int, most_loss_db: float) -> AdapterChain | None:
    """The chain with the fewest adapters, of these the one with the least loss; None when there is none."""
    for length in range(longest + 1):
        found = chains(need.first, need.second, standing, available, length, most_loss_db)
        best = min(found, key=lambda chain: (loss_steps(chain), chain.adapters), default=None)
        if best:
            return best
    return None
