"""How good the joints of a chain are for what a pair carries, and the chains that are as good as the best."""

from collections.abc import Callable
from math import isfinite, prod
from typing import NamedTuple

from ..formulas.match import reflection_of_vswr, return_loss
from .alternatives import Alternative
from .chains import AdapterChain, joints_of
from .joint_figures import JointFigures
from .required_pairs import RequiredPair

__all__ = [
    "ENOUGH_MARGIN_DB",
    "MEASURES",
    "ChainQuality",
    "chain_quality",
    "margin_or_none",
    "return_loss_of",
    "with_best_joints",
]

ENOUGH_MARGIN_DB = 10.0
"""An ample margin: more of it changes nothing."""
ENOUGH_RETURN_LOSS_DB = 20.0
"""Of a joint. SWR 1.2, a hundredth of the power sent back: better is not noticed."""
ENOUGH_CHAIN_RETURN_LOSS_DB = 14.0
"""Of a chain at worst. SWR 1.5: a transmitter takes that for a match."""
STEP_DB = 1.0
"""Of margin and return loss: the figures of a family are not known more closely."""
LOSS_STEP_DB = 0.05
"""A hundredth of the power."""
ROUNDING_DB = 1e-6
"""Figures this near count as equal, so that rounding never chooses an adapter."""


class ChainQuality(NamedTuple):
    """What the joints of a chain are worth under the duty of its pair [dB]."""

    margin_db: float
    """The smallest of its joints; infinite in receive."""
    worst_return_loss_db: float
    """The smallest of its joints."""
    return_loss_db: float
    """Of the whole chain at worst: the VSWRs of its joints, and of the ports' step of impedance, multiplied."""
    loss_db: float


class Measure(NamedTuple):
    """One thing a chain is judged by."""

    worth: Callable[[ChainQuality], float]
    """The more the better [dB]; above a certain value no more counts."""
    step_db: float
    """Worth less than this behind the best is as good."""


MEASURES = [
    Measure(lambda quality: min(quality.margin_db, ENOUGH_MARGIN_DB), STEP_DB),
    Measure(lambda quality: min(quality.worst_return_loss_db, ENOUGH_RETURN_LOSS_DB), STEP_DB),
    Measure(lambda quality: min(quality.return_loss_db, ENOUGH_CHAIN_RETURN_LOSS_DB), STEP_DB),
    Measure(lambda quality: -quality.loss_db, LOSS_STEP_DB),
]
"""In the order in which they decide."""


def chain_quality(pair: RequiredPair, chain: AdapterChain, figures: JointFigures) -> ChainQuality:
    """Of a chain between the pair's ports; of two families that mate the worse counts."""
    joints = [{end.family for end in joint} for joint in joints_of(pair.first, pair.second, chain)]
    vswrs = [max(figures.vswr[family] for family in joint) for joint in joints]
    low, high = pair.duty.impedances_ohm
    return ChainQuality(
        min(figures.margin_db[family] for joint in joints for family in joint),
        return_loss_of(max(vswrs)),
        return_loss_of(prod(vswrs) * high / low),
        chain.loss_db,
    )


def return_loss_of(vswr: float) -> float:
    """Return loss [dB] of a VSWR."""
    return float(return_loss(reflection_of_vswr(vswr)))


def margin_or_none(margin_db: float) -> float | None:
    """A margin [dB] as an answer holds it: none in receive, where nothing limits."""
    return margin_db if isfinite(margin_db) else None


def with_best_joints(pair: RequiredPair, options: list[Alternative], figures: JointFigures) -> list[Alternative]:
    """Those alternatives of a pair that none beats by a step: in margin first, in return loss next, then in loss."""
    judged = [(chain_quality(pair, option.chain, figures), option) for option in options]
    for worth, step_db in MEASURES:
        best = max((worth(quality) for quality, _ in judged), default=0.0)
        judged = [one for one in judged if worth(one[0]) >= best - step_db - ROUNDING_DB]
    return [option for _, option in judged]
