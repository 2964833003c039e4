"""A margin with its verdict in words."""

from typing import Literal

__all__ = ["MarginStep", "margin_in_words", "margin_step"]

MarginStep = Literal["over", "at", "tight", "fine", "ample"]

LEAST_DB: tuple[tuple[float, MarginStep], ...] = ((10.0, "ample"), (3.0, "fine"), (1.0, "tight"), (0.0, "at"))
"""From which margin on each step holds [dB]; below the last it is over the limit."""

WORDS: dict[MarginStep, str] = {"over": "over the limit", "at": "at the limit"}
"""Of the steps that are not said as they are named."""


def margin_step(margin_db: float) -> MarginStep:
    """The step a margin [dB] is on."""
    return next((step for least, step in LEAST_DB if margin_db >= least), "over")


def margin_in_words(margin_db: float) -> str:
    """Such as "12.0 dB margin (ample)"; of a margin of 0 or more [dB]."""
    step = margin_step(margin_db)
    return f"{margin_db:.1f} dB margin ({WORDS.get(step, step)})"
