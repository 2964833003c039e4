"""Digits of a sweep's answer: a fit knows no more, and the last ones are rounding."""

from collections.abc import Iterable

from ..numeric.json_numbers import number
from ..numeric.rounding import significant

__all__ = ["MILLIONTH_DECIMALS", "four_figures", "to_millionth", "to_millionths"]

MILLIONTH_DECIMALS, FIGURES = 6, 4


def to_millionth(value: float) -> float | None:
    """A value to a millionth of its unit; null where it is not finite."""
    return None if number(value) is None else round(float(value), MILLIONTH_DECIMALS)


def to_millionths(values: Iterable[float]) -> list[float | None]:
    """Each value to a millionth of its unit; null where one is not finite."""
    return [to_millionth(value) for value in values]


def four_figures(value: float) -> float:
    """A fitted value to four significant figures."""
    return significant(value, FIGURES)
