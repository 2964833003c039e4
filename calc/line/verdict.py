"""The sentence about a line: what reaches the antenna, and the part that decides."""

from ..numeric.rounding import significant
from ..numeric.units import engineering
from ..physics.margin_words import margin_in_words
from .parts import Weakest
from .quantities import loss_db
from .results import LinePart

__all__ = ["verdict"]

DELIVERED_DIGITS = 3
WORTH_SAYING = 0.97
"""The worst is said where it is less than this share of what is expected: an eighth of a decibel."""


def verdict(
    column: str, power_w: float, delivered: tuple[float, float], into: str, parts: list[LinePart], weakest: Weakest
) -> str:
    """The sentence, by the name of the column and the shares of the power that reach what the line ends in at the worst
    and as expected [1]."""
    worst, expected = delivered
    if power_w == 0:
        start = f"On {column} the line loses {loss_db(expected) or 0:.2f} dB."
    else:
        reached, least = (engineering(significant(part * power_w, DELIVERED_DIGITS), "W") for part in (expected, worst))
        share = f"{reached} of {engineering(power_w, 'W')}"
        start = f"On {column} {share} reach the {into}{_at_worst(worst, expected, least)}."
    if weakest.part is None:
        return start
    part, margin, margin_high = parts[weakest.part], weakest.margin_db, weakest.margin_high_db
    if margin is None:
        return f"{start} {part.name} is refused. {part.refusal}"
    if margin >= 0:
        return f"{start} The weakest part is {part.name} with {margin_in_words(margin)}."
    if margin_high is not None and margin_high >= 0:
        return (
            f"{start} Uncertain: the cautious sources put {part.name} {-margin:.1f} dB over its limit,"
            f" the generous ones leave {margin_high:.1f} dB margin."
        )
    return f"{start} {part.name} is {-margin:.1f} dB over its limit."


def _at_worst(worst: float, expected: float, least: str) -> str:
    return f", {least} at the worst" if worst < WORTH_SAYING * expected else ""
