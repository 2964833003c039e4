"""Numbers as people type them in a sentence: a point or a comma for the decimals, thousands grouped or not.

A text that can be read in two ways gives both numbers: "1,500" is one and a
half or fifteen hundred, and which of them is meant is the reader's to say.
"""

import re

__all__ = ["ARTICLE", "NUMBER", "numbers_of"]

_COUNTED = (
    "one two three four five six seven eight nine ten twelve fifteen seventeen twenty thirty forty fifty sixty eighty"
)
_COUNTS = (1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 17, 20, 30, 40, 50, 60, 80)
WORDS = {**dict(zip(_COUNTED.split(), _COUNTS, strict=True)), "half": 0.5, "half a": 0.5}
"""Those that powers and bands are said in."""

MULTIPLIERS = {"": 1, "hundred": 100, "thousand": 1000}

_WORDS = "|".join(sorted(WORDS, key=len, reverse=True))
ARTICLE = r"an?(?![a-z])"
"""One of something, where a unit follows: "a kilowatt"."""

NUMBER = (
    r"(?:[+-]?(?:\d[\d.,']*\d|\d|[.,]\d+)"
    rf"|(?:(?:{_WORDS})[ -])?(?:hundred|thousand)(?![a-z])|(?:{_WORDS})(?![a-z]))"
)
"""A pattern of a number, in small letters."""

_GROUP = re.compile(r"^[1-9]\d{0,2}([.,'])")


def numbers_of(text: str, to_the_thousandth: bool = False) -> list[float]:
    """What a number typed may mean: none where it can't be read, two where it has to be asked which.

    Figures of a unit that goes to the thousandth, such as MHz, have no thousands behind a point.
    """
    if text in ("a", "an"):
        return [1.0]
    *counted, last = re.split(r"[ -](?=hundred|thousand)", text)
    if last in MULTIPLIERS or last in WORDS:
        words = [*counted, last] if last in MULTIPLIERS else [last, ""]
        first = WORDS.get(words[0], 1)
        return [float(first * MULTIPLIERS[words[-1]])]
    if to_the_thousandth and re.fullmatch(r"[+-]?\d+\.\d{3}", text):
        return [float(text)]
    readings = [_numeral(text, decimal, group) for decimal, group in (".,", ",.")]
    return list(dict.fromkeys(reading for reading in readings if reading is not None))


def _numeral(text: str, decimal: str, group: str) -> float | None:
    """The number with one mark before the decimals and another, or an apostrophe, between groups of three digits."""
    sign, digits = (-1, text[1:]) if text.startswith("-") else (1, text.removeprefix("+"))
    whole, _, decimals = digits.partition(decimal)
    found = _GROUP.match(whole)
    first, *others = whole.split(found[1]) if found else [whole]
    if found and not (found[1] in (group, "'") and all(re.fullmatch(r"\d{3}", one) for one in others)):
        return None
    plain = "".join([first, *others])
    if not re.fullmatch(r"\d*", plain) or not re.fullmatch(r"\d*", decimals) or not plain + decimals:
        return None
    return sign * float(f"{plain or 0}.{decimals or 0}")
