"""How far an answer spreads when electrical lengths, phases and the tolerance of joints are not known.

Draws run in blocks of fixed size, and of each block only counts are kept, so
that memory does not grow with the draws. Each block has a stream of random
numbers of its own, made from the seed and its number.
"""

import numpy as np

from ..errors import InputError
from ..feedline.feedline import feedline_of
from ..feedline.reflection import bounds
from ..formulas.match import vswr_of_reflection
from ..numeric.draws import Stream
from ..numeric.json_numbers import number, numbers
from ..physics.columns import columns
from .random_line import RandomLine
from .requests import MOST_DRAWN, SpreadRequest
from .results import SpreadBand, SpreadResult
from .tally import PERCENTILES, Tally

__all__ = ["BLOCK", "spread"]

BLOCK = 500
"""Draws at a time: a block of all bands stays within the processor's cache."""


@np.errstate(divide="ignore", invalid="ignore", over="ignore")  # no number becomes null
def spread(request: SpreadRequest) -> SpreadResult:
    """Draw lines at random and say how VSWR, loss and the smallest margin spread in each band.

    Each cable's electrical length is off by up to `length_tolerance` either
    way, each joint is anywhere between a typical part and the worst its
    standard allows, each part and an antenna known by its VSWR alone reflect
    at any angle; the transmitter folds back as it does. Raises InputError as `line` does.
    """
    most = MOST_DRAWN // len(request.elements)
    if request.draws > most:
        words = f"at most {most} for {len(request.elements)} elements, as draws times elements stay within {MOST_DRAWN}"
        raise InputError("draws", request.draws, words)
    feedline = feedline_of(request)
    bands = [feedline.column, *(band for band in columns(request.region, None, []) if band.id != feedline.column.id)]
    frequency = np.array([(band.low_hz + band.high_hz) / 2 for band in bands], dtype=np.float64)
    random_line = RandomLine(request, feedline, frequency)
    blocks = (
        random_line.block(Stream(request.seed, block_number), min(BLOCK, request.draws - first))
        for block_number, first in enumerate(range(0, request.draws, BLOCK))
    )
    tally = Tally(next(blocks))
    for block in blocks:
        tally.add(block)
    worst, likely = bounds(feedline, frequency)
    vswr, loss, margin = tally.percentiles()
    answers = [
        SpreadBand(
            column=band,
            vswr=numbers(np.maximum(vswr[row], 1)),  # a wide bin's middle may lie below
            loss_db=numbers(loss[row]),
            margin_db=[None] * len(PERCENTILES) if random_line.refused[row] else numbers(margin[row]),
            worst_vswr=number(vswr_of_reflection(worst[row])) if worst[row] < 1 else None,
            likely_vswr=number(vswr_of_reflection(likely[row])) if likely[row] < 1 else None,
        )
        for row, band in enumerate(bands)
    ]
    return SpreadResult(draws=request.draws, seed=request.seed, percentiles=PERCENTILES, bands=answers)
