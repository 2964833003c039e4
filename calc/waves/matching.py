"""Matching a load to a resistance with three lossy reactances in a ladder, by closed form.

The ladder is a T: near and far arm in series, the inner arm across. Everything
is normalised to the wanted resistance. An arm is a real size >= 0 along a
direction in the complex plane which its kind and quality set: the near and far
arm in impedance, the inner one in admittance. A Pi is the same ladder of its
dual. Seen through two arms of given directions a load can be matched by at
most two pairs of sizes, the roots of a quadratic; with losses these stay exact.
So one arm is held where the least loss can lie, at one of its ends or where
the loss has its minimum in between, and the other two follow.
Sources: derived; the least loss with as much capacitance as there is, tee_network_losses_1997.
"""

from collections.abc import Iterator
from itertools import product
from typing import NamedTuple

import numpy as np

from ..formulas.formula import Broadcast

__all__ = ["MATCHED", "Arms", "Ladder", "Match", "Range", "matched", "nearest", "no_match", "seen", "through"]

MATCHED = 1e-6  # reflection; below it no bridge shows any


class Range(NamedTuple):
    """Least and most size of an arm."""

    least: Broadcast
    most: Broadcast


class Ladder(NamedTuple):
    """The directions of the arms and how large each can be made."""

    outer: complex
    """Of the near and the far arm."""
    inner: complex
    near_range: Range
    inner_range: Range
    far_range: Range


class Arms(NamedTuple):
    """Sizes of the arms, from the transmitter on."""

    near: np.ndarray
    inner: np.ndarray
    far: np.ndarray


class Match(NamedTuple):
    """A setting, and how it looks from the transmitter."""

    arms: Arms
    reflection: np.ndarray
    """Its size."""
    efficiency: np.ndarray
    """Power into the load over power in."""

    def or_where(self, better: np.ndarray, other: "Match") -> "Match":
        """This one, and where it is better the other."""
        arms = Arms(*(np.where(better, new, old) for new, old in zip(other.arms, self.arms, strict=True)))
        sizes = (np.where(better, new, old) for new, old in zip(other[1:], self[1:], strict=True))
        return Match(arms, *sizes)


def no_match(shape: tuple[int, ...]) -> Match:
    """What is worse than any setting."""
    unknown = np.full(shape, np.nan)
    return Match(Arms(unknown, unknown, unknown), np.full(shape, np.inf), np.full(shape, -np.inf))


def through(ladder: Ladder, arms: Arms, load: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Voltage and current into the ladder with a current of 1 in the load."""
    behind = load + arms.far * ladder.outer
    current = 1 + arms.inner * ladder.inner * behind
    return arms.near * ladder.outer * current + behind, current


def seen(ladder: Ladder, arms: Arms, load: np.ndarray) -> Match:
    """How a setting looks from the transmitter."""
    voltage, current = through(ladder, arms, load)
    reflection = np.abs((voltage - current) / (voltage + current))
    return Match(arms, reflection, np.real(load) / np.real(voltage * np.conj(current)))


def matched(ladder: Ladder, load: np.ndarray) -> Match:
    """The setting of least loss that matches; where there is none its efficiency is -inf."""
    best = no_match(load.shape)
    for arms in _candidates(ladder, load):
        found = seen(ladder, arms, load)
        ranges = (ladder.near_range, ladder.inner_range, ladder.far_range)
        better = (found.reflection < MATCHED) & (found.efficiency > best.efficiency)
        for one, size in zip(ranges, arms, strict=True):
            better &= (one.least <= size) & (size <= one.most)
        best = best.or_where(better, found)
    return best


def _candidates(ladder: Ladder, load: np.ndarray) -> Iterator[Arms]:
    """Settings that match, wherever the least loss can lie; their sizes may be out of reach or not numbers."""
    outer, inner = ladder.outer, ladder.inner
    near_held, far_held = (np.all(one.least == one.most) for one in (ladder.near_range, ladder.far_range))
    if not near_held:
        for far in _ends(ladder.far_range):
            yield from _far_held(ladder, load, far)
    if not far_held:
        for near in _ends(ladder.near_range):
            for size, other in _pairs(load, outer, inner, 1 / (1 - near * outer)):
                yield Arms(near + 0 * size, other, size)
    if near_held or far_held:
        return
    for held in _ends(ladder.inner_range):
        if np.all(held == 0):  # a wire: nothing it could match
            continue
        across = held * inner
        for size, other in _pairs(load + 1 / across, outer, -(across**2) * outer, across - across**2):
            yield Arms(other, held + 0 * size, size)
    # without ends the loss is least where the reactance left of the load is the geometric mean of both resistances
    yield from _far_held(ladder, load, np.imag(load) - np.sqrt(np.real(load)))


def _far_held(ladder: Ladder, load: np.ndarray, far: Broadcast) -> Iterator[Arms]:
    for size, other in _pairs(1 / (load + far * ladder.outer), ladder.inner, ladder.outer, 1.0):
        yield Arms(other, size, far + 0 * size)


def _ends(size: Range) -> Iterator[Broadcast]:
    yield size.least
    if np.all(np.isfinite(size.most)) and not np.all(size.least == size.most):
        yield size.most


def _pairs(
    load: np.ndarray, first: Broadcast, second: Broadcast, target: Broadcast
) -> Iterator[tuple[np.ndarray, np.ndarray]]:
    """Both pairs of real s, t with (load + s first)(target - t second) = 1; not a number where there is none."""
    bend = np.imag(target * np.conj(second))
    square = bend * np.abs(first) ** 2
    linear = 2 * bend * np.real(load * np.conj(first)) + np.imag(first * second)
    constant = bend * np.abs(load) ** 2 + np.imag(load * second)
    middle = -(linear + np.copysign(np.sqrt(linear**2 - 4 * square * constant), linear)) / 2
    for size in (middle / square, constant / middle):
        rest = target - 1 / (load + size * first)
        yield size, np.real(rest * np.conj(second)) / np.abs(second) ** 2


def nearest(ladder: Ladder, load: np.ndarray) -> Match:
    """The setting with the smallest reflection that has all arms but one at an end, for loads that can't be matched.

    Along one arm the smallest is known by closed form. Two free arms gain no
    more than a percent of SWR: what is out of reach is so because arms end.
    """
    ranges = (ladder.near_range, ladder.inner_range, ladder.far_range)
    ends = [list(_ends(size)) for size in ranges]
    free = [arm for arm, size in enumerate(ranges) if not np.all(size.least == size.most)]
    best = no_match(load.shape)
    for arm in free:
        for corner in product(*ends[:arm], [0.0], *ends[arm + 1 :]):
            arms = Arms(*(np.broadcast_to(size, load.shape) for size in corner))
            found = _along(ladder, load, arms, arm)
            best = best.or_where(found.reflection < best.reflection, found)
    return seen(ladder, best.arms, load)


def _along(ladder: Ladder, load: np.ndarray, arms: Arms, free: int) -> Match:
    """The arms with one of them set to the smallest reflection; what reaches the load is left open.

    The reflection is a Möbius function of the arm's size, its square a quotient
    of two quadratics, which has one minimum.
    """
    size = (ladder.near_range, ladder.inner_range, ladder.far_range)[free]
    above, below = zip(*(_waves(ladder, load, arms, free, held) for held in (0.0, 1.0)), strict=True)
    (p_0, p_1, p_2), (q_0, q_1, q_2) = _square(*above), _square(*below)
    square, linear, constant = p_2 * q_1 - p_1 * q_2, 2 * (p_2 * q_0 - p_0 * q_2), p_1 * q_0 - p_0 * q_1
    root = np.sqrt(np.maximum(linear**2 - 4 * square * constant, 0))
    lowest = np.where(linear > 0, -2 * constant / (linear + root), (root - linear) / (2 * square))
    tried = np.array([np.broadcast_to(one, load.shape) for one in (np.clip(lowest, *size), *_ends(size))])
    squared = (p_0 + tried * (p_1 + tried * p_2)) / (q_0 + tried * (q_1 + tried * q_2))
    at = squared.argmin(axis=0)[None]
    best, least = (np.take_along_axis(one, at, axis=0)[0] for one in (tried, squared))
    return Match(_replaced(arms, free, best), np.sqrt(np.maximum(least, 0)), np.full(load.shape, np.nan))


def _waves(ladder: Ladder, load: np.ndarray, arms: Arms, free: int, held: float) -> tuple[np.ndarray, np.ndarray]:
    """Twice the backward and twice the forward wave with one arm held at a size."""
    voltage, current = through(ladder, _replaced(arms, free, np.broadcast_to(held, load.shape)), load)
    return voltage - current, voltage + current


def _square(start: np.ndarray, end: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Coefficients of the square of a wave that runs straight from `start` at 0 to `end` at 1."""
    step = end - start
    return np.abs(start) ** 2, 2 * np.real(start * np.conj(step)), np.abs(step) ** 2


def _replaced(arms: Arms, free: int, size: np.ndarray) -> Arms:
    return Arms(*(size if arm == free else held for arm, held in enumerate(arms)))
