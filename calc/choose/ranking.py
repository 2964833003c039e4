"""The stated rule by which the families that meet every demand are ranked, and which of them none dominates."""

import numpy as np

__all__ = ["RULE", "ranks", "undominated"]

RULE = (
    "Families that meet every demand are ranked by their smallest cautious margin, to the tenth of a decibel that is"
    " shown, and in receive by their cautious return loss; equal tenths are ties."
)


def ranks(margins_db: list[float]) -> list[int]:
    """The rank of each margin or return loss [dB], 1 for the largest; equal tenths of a decibel are ties."""
    tenths = [round(margin, 1) for margin in margins_db]
    return [1 + sum(other > tenth for other in tenths) for tenth in tenths]


def undominated(merits: np.ndarray) -> list[bool]:
    """By row of merits (families, criteria): whether no other is as good in all and better in one (the Pareto set)."""
    better, worse = merits[:, None] > merits, merits[:, None] < merits
    dominates = better.max(axis=2) & ~worse.max(axis=2)
    return [not column.max() for column in dominates.T]
