"""Why two ports can't be joined, in one sentence: what stands in the way."""

from typing import NamedTuple

from ..catalogue import catalogue
from ..formulas.match import return_loss
from .adapters import Stock
from .chains import AdapterChain, chains, loss_in_steps
from .joint_figures import JointFigures
from .requests import MOST_IN_SERIES, KitRequest
from .required_pairs import RequiredPair, impedances_differ
from .results import Reason

__all__ = ["Obstacle", "obstacle"]

NO_LIMIT_DB = float("inf")


class Obstacle(NamedTuple):
    """A short word for the reason, the cause in a clause, and the sentence."""

    reason: Reason
    cause: str
    sentence: str


def obstacle(request: KitRequest, pair: RequiredPair, figures: JointFigures, stock: Stock) -> Obstacle:
    """What keeps two ports apart that no chain within the limits joins."""
    if impedances_differ(request, pair):
        low, high = pair.duty.impedances_ohm
        loss = return_loss((high - low) / (high + low))
        cause = f"{low:g} Ω would meet {high:g} Ω"
        after = f", a return loss of {loss:.1f} dB before any joint; refused unless impedance steps are allowed."
        return Obstacle("impedance", cause, cause + after)
    for end in (pair.first, pair.second):
        if not figures.allows(end.family):
            refusal = figures.refusal[end.family]
            return Obstacle("port", refusal.rstrip("."), f"The port itself: {refusal}")
    chain = _shortest_chain(pair, figures, stock, request.most_in_series, NO_LIMIT_DB)
    if chain:
        return _said("loss", f"the least loss is {chain.loss_db:.2f} dB; {request.most_loss_db:g} dB are allowed")
    chain = _shortest_chain(pair, figures, stock, MOST_IN_SERIES, request.most_loss_db)
    if chain:
        needed, most = len(chain.adapters), request.most_in_series
        return _said("series", f"it takes {needed} adapters in series; {most} {'is' if most == 1 else 'are'} allowed")
    nothing_refused = figures._replace(refusal=dict.fromkeys(figures.refusal, ""))
    chain = _shortest_chain(pair, nothing_refused, stock, MOST_IN_SERIES, NO_LIMIT_DB)
    if chain:
        between = [end.family for adapter in chain.adapters for end in adapter]
        refusal = next((figures.refusal[family] for family in between if figures.refusal[family]), "")
        if refusal:
            return _said("stand", f"what could join them would not take it: {refusal.rstrip('.')}")
    names = " and ".join(catalogue().interfaces[end.family].name for end in (pair.first, pair.second))
    return _said("trade", f"no adapters are sold that join {names} within these limits")


def _said(reason: Reason, cause: str) -> Obstacle:
    """The sentence is the cause with a capital."""
    return Obstacle(reason, cause, f"{cause[0].upper()}{cause[1:]}.")


def _shortest_chain(
    pair: RequiredPair, figures: JointFigures, stock: Stock, most_in_series: int, most_loss_db: float
) -> AdapterChain | None:
    """The chain with the fewest adapters, of these the one with the least loss; None when there is none."""
    for length in range(most_in_series + 1):
        found = chains(pair.first, pair.second, figures, stock, length, most_loss_db)
        best = min(found, key=lambda chain: (loss_in_steps(chain), chain.adapters), default=None)
        if best:
            return best
    return None
