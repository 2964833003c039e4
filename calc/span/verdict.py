"""Why a span is what it is, in sentences."""

from ..numeric.measures import length_words
from ..numeric.rounding import significant
from ..numeric.units import engineering
from .results import Closest, SpanResult

__all__ = ["reasons"]


def reasons(result: SpanResult) -> list[str]:
    """One sentence for each setting, and one for what the sweep will not show."""
    return [
        _of_the_points(result),
        _of_the_top(result),
        *([_of_the_closest(result.closest, result.resolution_m)] if result.closest else []),
        *([_of_the_bottom(result)] if result.transform == "band-pass" else []),
    ]


def _of_the_points(result: SpanResult) -> str:
    reach, length = length_words(result.range_m, 3), length_words(result.length_m, 3)
    return (
        f"{result.points} points make steps of {engineering(significant(result.step_hz, 3), 'Hz')}: echoes are seen in"
        f" their place up to {reach}, and the line is {length} long."
    )


def _of_the_top(result: SpanResult) -> str:
    """Higher shows finer: what the span gives, and what it is limited by."""
    top = engineering(result.high_hz, "Hz")
    why = {
        "analyser": "your analyser ends there",
        "points": "with more span so few points would let echoes from beyond the line fold back",
        "loss": f"there the line takes {result.loss_db:.2g} dB there and back, and what returns is too weak above",
    }[result.limited_by]
    return f"Up to {top} the sweep tells apart what is {length_words(result.resolution_m, 2)} from each other; {why}."


def _of_the_closest(closest: Closest, resolution_m: float) -> str:
    one, other = closest.names
    pair = f"{one} and {other}, {length_words(closest.apart_m, 3)} apart,"
    if closest.told_apart:
        return f"So {pair} show as two."
    return f"{pair} show as one: a fault there is found, but which of the two is not told."


def _of_the_bottom(result: SpanResult) -> str:
    return (
        f"Your analyser begins at {engineering(result.low_hz, 'Hz')}, too high to tell whether the impedance rises or"
        " falls at an echo."
    )
