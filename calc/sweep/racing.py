"""Fits from many starts: those that lag behind the best are given up after a few steps.

What a fit comes to is told long before its end. Of 105 such races on simulated lines, each fit also gone to its end,
no winner was given up, and they took six tenths of the steps.
"""

from .arrays import ComplexArray
from .fit import Descent, Fit, Start
from .swept_line import SweptLine

__all__ = ["raced"]

LAGS = (600.0, 400.0, 200.0, 100.0)
"""Evidence by which a fit may lag behind the best before its first step, and after each of the first ones; two thirds
of it lost faults of training lines."""
CROWDED, OTHERS = 2, 6
"""Steps from which on there is place for those that are wanted and so many others."""


def raced(line: SweptLine, measured: ComplexArray, starts: list[Start], wanted: int, rounds: int) -> list[Fit]:
    """The fits that get to the end from some starts: about as many as wanted, each after at most so many steps."""
    running = [Descent(line, measured, x, faults) for faults, x in starts]
    for steps, lag in enumerate(LAGS):
        best = min((one.objective for one in running), default=0.0)
        running = sorted((one for one in running if one.objective <= best + 2 * lag), key=lambda one: one.objective)
        if steps >= CROWDED:
            running = running[: wanted + OTHERS]
        for one in running:
            one.go(1 if steps < len(LAGS) - 1 else rounds - steps)
    return [one.fit() for one in running]
