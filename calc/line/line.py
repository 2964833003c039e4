"""The line as an answer: losses, stresses and margins of every part, over all bands, in receive, and what helps."""

import numpy as np

from ..errors import InputError
from ..feedline.feedline import feedline_of
from ..feedline.load import load_notes
from ..feedline.part import part_notes
from ..feedline.solve import solve_both_ends
from ..numeric.json_numbers import number
from ..numeric.units import engineering
from ..physics.cautions import CAUTIONS
from ..physics.columns import columns
from .bands import line_bands, line_sweep, solve_bands
from .changes import changes
from .parts import line_parts, weakest_of
from .quantities import loss_db, terminal
from .reception import reception
from .requests import LineRequest
from .results import LineResult
from .standing_wave import standing_wave
from .steps import element_steps
from .verdict import verdict

__all__ = ["line"]


@np.errstate(divide="ignore", invalid="ignore", over="ignore")  # no number becomes null
def line(request: LineRequest) -> LineResult:
    """Solve a line. Raises InputError, one sentence naming the element, for one that can't be solved."""
    feedline, power_w = feedline_of(request), request.power_w
    if request.explain is not None and request.explain >= len(request.elements):
        raise InputError("explain", request.explain, f"0 to {len(request.elements) - 1}, the elements of the line")
    frequency, z_0 = np.array([feedline.frequency_hz]), feedline.station.impedance_ohm
    solutions = solve_both_ends(feedline, frequency)
    if not all(np.isfinite(solution.waves.power_w).all() for solution in solutions):
        found = f"no power passed at {engineering(feedline.frequency_hz, 'Hz')}"
        raise InputError("elements", found, "parts that let some of the power through")
    parts = line_parts(feedline, solutions, power_w)
    bands = columns(request.region, None, [])
    over_bands = solve_bands(feedline, bands, power_w)
    weakest = weakest_of(parts)
    # a refused part has no largest power, and so the line has none
    passed = all(part.refused_by is None for part in parts)
    largest = {index: part.largest_power_w for index, part in enumerate(parts) if part.largest_power_w is not None}
    set_by = min(largest, key=largest.__getitem__) if largest and passed else None
    waves = solutions.generous.waves
    expected, cautious = float(waves.power_w[-1, 0]), float(solutions.cautious.waves.power_w[-1, 0])
    return LineResult(
        column=feedline.column,
        frequency_hz=feedline.frequency_hz,
        power_w=power_w,
        delivered_w=number(expected * power_w),
        delivered_low_w=number(cautious * power_w),
        loss_db=loss_db(expected),
        loss_high_db=loss_db(cautious),
        mismatch_db=loss_db(waves.power_w[0, 0]),
        input=terminal(waves.reflection(z_0)[0, 0], z_0),
        input_cautious=terminal(solutions.cautious.waves.reflection(z_0)[0, 0], z_0),
        antenna=terminal(feedline.load(frequency)[0], z_0),
        margin_db=weakest.margin_db,
        margin_high_db=weakest.margin_high_db,
        undecided=weakest.undecided,
        weakest=weakest.part,
        largest_power_w=None if set_by is None else largest[set_by],
        largest_power_set_by=set_by,
        verdict=verdict(feedline.column.name, power_w, expected, parts, weakest),
        notes=[*part_notes(feedline.links), *load_notes(request.load)],
        parts=parts,
        standing_wave=standing_wave(feedline, solutions.cautious, power_w),
        sweep=line_sweep(feedline, over_bands),
        bands=line_bands(feedline, over_bands),
        reception=reception(feedline, request.receiver, bands),
        changes=changes(request, feedline, solutions),
        steps=[] if request.explain is None else element_steps(feedline, solutions, request.explain, power_w),
        cautions=CAUTIONS,
    )
