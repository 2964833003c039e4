"""What the other goal would cost or bring: its kit beside the kit answered, and the pair that it changes most."""

from typing import NamedTuple

from ..catalogue import catalogue
from .chain_quality import MEASURES, ChainQuality, chain_quality, margin_or_none
from .chains import AdapterChain
from .joint_figures import Duty, JointFigures
from .requests import Goal
from .required_pairs import RequiredPair
from .results import GoalPrice, PairQuality
from .smallest_kits import SmallestKit
from .verdict import PriceWords, price_sentence

__all__ = ["goal_price"]

OTHER_GOAL: dict[Goal, Goal] = {"fewest": "best_joints", "best_joints": "fewest"}


class _Change(NamedTuple):
    """A pair that the kit of the fewest joins worse than the other."""

    numbers: list[int]
    pair: RequiredPair
    avoided: list[str]
    """Families, by name, that only the fewest put between the two ports."""
    fewest: ChainQuality
    best: ChainQuality

    @property
    def steps(self) -> float:
        """What the best joints gain, all measures together, in steps of each."""
        return sum((worth(self.best) - worth(self.fewest)) / step_db for worth, step_db in MEASURES)


def goal_price(
    goal: Goal,
    fewest: SmallestKit,
    best: SmallestKit,
    asked: list[tuple[list[int], RequiredPair]],
    figures: dict[Duty, JointFigures],
    names: list[str],
) -> GoalPrice:
    """The kit of the goal that was not asked for.

    `asked` are the pairs by the numbers of their ports, `names` what the ports are called.
    """
    other = fewest if goal == "best_joints" else best
    changes = [change for numbers, pair in asked if (change := _change(numbers, pair, fewest, best, figures))]
    greatest = max(changes, key=lambda change: change.steps, default=None)
    words = greatest and PriceWords(
        best.size - fewest.size,
        [names[at] for at in greatest.numbers],
        greatest.pair.duty.frequency_hz,
        greatest.avoided,
        greatest.fewest,
        greatest.best,
        len(changes) - 1,
    )
    return GoalPrice(
        goal=OTHER_GOAL[goal],
        added=other.size,
        optimal=other.is_smallest,
        pairs_changed=len(changes),
        fewest=_pair_quality(greatest.numbers, greatest.fewest) if greatest else None,
        best_joints=_pair_quality(greatest.numbers, greatest.best) if greatest else None,
        sentence=price_sentence(goal, other.size, words),
    )


def _change(
    numbers: list[int],
    pair: RequiredPair,
    fewest: SmallestKit,
    best: SmallestKit,
    figures: dict[Duty, JointFigures],
) -> _Change | None:
    """The change of a pair whose chain in the kit of the fewest is not among those as good as the best."""
    few, good = fewest.chain(pair), best.chain(pair)
    if not few or not good or few in best.permitted.chains(pair):
        return None
    qualities = [chain_quality(pair, chain, figures[pair.duty]) for chain in (few, good)]
    only_few = _between(few) - _between(good) - {pair.first.family, pair.second.family}
    avoided = [interface.name for family, interface in catalogue().interfaces.items() if family in only_few]
    return _Change(numbers, pair, avoided, *qualities)


def _between(chain: AdapterChain) -> set[str]:
    return {end.family for adapter in chain.adapters for end in adapter}


def _pair_quality(numbers: list[int], quality: ChainQuality) -> PairQuality:
    return PairQuality(numbers, margin_or_none(quality.margin_db), quality.return_loss_db, quality.loss_db)
