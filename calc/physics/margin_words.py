"""A margin with its verdict in words."""

__all__ = ["margin_in_words"]

LEAST_DB = ((10.0, "ample"), (3.0, "fine"), (1.0, "tight"), (0.0, "at the limit"))
"""From which margin on each word holds [dB]; below the last it is over the limit."""


def margin_in_words(margin_db: float) -> str:
    """Such as "12.0 dB margin (ample)"; of a margin of 0 or more [dB]."""
    word = next((word for least, word in LEAST_DB if margin_db >= least), "over the limit")
    return f"{margin_db:.1f} dB margin ({word})"
