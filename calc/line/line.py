"""The line as an answer: losses, stresses and margins of every part, over all bands, in receive, and what helps."""

import numpy as np

from ..errors import InputError
from ..feedline.elements import DummyLoad
from ..feedline.feedline import feedline_of
from ..feedline.load import load_notes
from ..feedline.part import part_notes
from ..feedline.solve import Solutions, solve_every_way, summed_up
from ..numeric.json_numbers import number
from ..numeric.units import engineering
from ..physics.cautions import CAUTIONS
from ..physics.columns import columns
from ..physics.ratings import CAUTIOUS, GENEROUS
from .advice.advice import changes
from .bands import line_bands, line_sweep, solve_bands
from .parts import line_parts, weakest_of
from .quantities import loss_db, terminal
from .reception import reception
from .requests import LineRequest
from .results import LineResult
from .standing_wave import standing_wave
from .steps import element_steps
from .transmission import transmitter_state
from .verdict import verdict

__all__ = ["PHASES", "line"]

END_NAMES: dict[type, str] = {DummyLoad: "dummy load"}
"""What a line ends in that is no antenna."""

PHASES = 91
"""Even steps round the circle of an unknown phase at the frequency looked at: each errs by half a step, 2°."""


@np.errstate(divide="ignore", invalid="ignore", over="ignore")  # no number becomes null
def line(request: LineRequest) -> LineResult:
    """Solve a line. Raises InputError, one sentence naming the element, for one that can't be solved."""
    feedline, power_w = feedline_of(request), request.power_w
    if request.explain is not None and request.explain >= len(request.elements):
        raise InputError("explain", request.explain, f"0 to {len(request.elements) - 1}, the elements of the line")
    frequency, z_0, load = np.array([feedline.frequency_hz]), feedline.station.impedance_ohm, feedline.load
    reflected = load.at(frequency, load.choices(PHASES))
    every_way = [solve_every_way(feedline, frequency, end, reflected) for end in (CAUTIOUS, GENEROUS)]
    solutions = Solutions(*map(summed_up, every_way, (CAUTIOUS, GENEROUS)))
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
    # a lossier line reflects less, and a transmitter that folds back then sends more
    least = min(expected, cautious)
    return LineResult(
        column=feedline.column,
        frequency_hz=feedline.frequency_hz,
        power_w=power_w,
        delivered_w=number(expected * power_w),
        delivered_low_w=number(least * power_w),
        loss_db=loss_db(expected),
        loss_high_db=loss_db(least),
        mismatch_db=loss_db(waves.power_w[0, 0]),
        transmitter=transmitter_state(feedline, solutions, power_w),
        phase_known=load.known,
        input=terminal(solutions.generous.reflection[0], z_0, load.known),
        input_cautious=terminal(solutions.cautious.reflection[0], z_0, load.known),
        antenna=terminal(load.likely(frequency)[0, 0], z_0, load.known),
        margin_db=weakest.margin_db,
        margin_high_db=weakest.margin_high_db,
        undecided=weakest.undecided,
        weakest=weakest.part,
        largest_power_w=None if set_by is None else largest[set_by],
        largest_power_set_by=set_by,
        verdict=verdict(
            feedline.column.name,
            power_w,
            (least, expected),
            END_NAMES.get(type(request.load), "antenna"),
            parts,
            weakest,
        ),
        notes=[*part_notes(feedline.links), *load_notes(request.load)],
        parts=parts,
        standing_wave=standing_wave(feedline, every_way[CAUTIOUS].waves, power_w),
        sweep=line_sweep(over_bands),
        bands=line_bands(feedline, over_bands),
        reception=reception(feedline, request.receiver, bands),
        changes=changes(request, feedline, parts),
        steps=[] if request.explain is None else element_steps(feedline, solutions, request.explain, power_w),
        cautions=CAUTIONS,
    )
