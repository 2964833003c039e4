"""Whether the verdicts on two-ports hold: drawn jumpers and adapters, measured by imperfect analysers.

Run with `python tests/benchmarks/everyday_parts.py [parts] [first seed]`: so many sound parts and as many faulty ones.
What a part really is stands against the limits that the answer itself draws.
"""

import json
import os
import sys
from pathlib import Path

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

sys.path.insert(0, str(Path(__file__).parents[1]))

import numpy as np
from everyday.analyser import QUALITIES
from everyday.lines import FRESH
from everyday.parts import WRONG, draw_part_case
from everyday.score import read_part

from jointwise.calc.operations import call

PARTS = 300
CLEAR_DB = 0.05
"""By so much a part must break a limit of loss for its breaking to count as plain."""
CERTAIN = 3.0  # the deviations that an answer itself asks for


class Judged:
    """A part, its answer, and what it should have been."""

    def __init__(self, seed, faulty):
        """Draw, ask and compare."""
        self.drawn = draw_part_case(seed, faulty)
        self.reading = read_part(json.loads(call("sweep", json.dumps(self.drawn.request).encode())))
        self.kept = self.reading.is_within(self.drawn.real)
        self.plainly = self.reading.loss_over_db(self.drawn.real) > CLEAR_DB
        self.error_ohm = self.reading.resistance_ohm - self.drawn.added_ohm


def share(part, whole):
    """A share in per cent."""
    return f"{100 * len(part) / len(whole):.1f} %" if whole else "-"


def row(name, found):
    """Print the verdicts on some parts."""
    kept = [one for one in found if one.kept]
    plain = [one for one in found if one.plainly]
    compared = [one for one in found if one.drawn.change_ohm is not None]
    cells = [
        f"{len(kept)}",
        share([one for one in kept if one.reading.failed], kept),
        f"{len(plain)}",
        share([one for one in plain if one.reading.passed], plain),
        share([one for one in found if abs(one.error_ohm) <= CERTAIN * one.reading.uncertainty_ohm], found),
        f"{np.median([abs(one.error_ohm) for one in found]):.2f}" if found else "-",
        share([one for one in compared if one.reading.change_holds(one.drawn.change_ohm, CERTAIN)], compared),
    ]
    print(f"{name:22}{len(found):6}" + "".join(f"{cell:>14}" for cell in cells))


def main():
    """Draw, judge and print."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else PARTS
    first = int(sys.argv[2]) if len(sys.argv) > 2 else FRESH
    sound, faulty = ([Judged(seed, wrong) for seed in range(first, first + count)] for wrong in (False, True))
    print(f"{count} sound parts and {count} with something wrong, from seed {first}; Ω added in series")
    print(f"plain: loses more than {CLEAR_DB} dB over its limit; held: within {CERTAIN:g} of the deviations stated\n")
    columns = ["in limits", "failed", "plainly out", "passed", "Ω held", "Ω off, median", "change held"]
    print(f"{'':22}{'parts':>6}" + "".join(f"{column:>14}" for column in columns))
    row("sound", sound)
    for wrong in WRONG:
        row(wrong, [one for one in faulty if one.drawn.wrong == wrong])
    for quality in QUALITIES:
        row(f"analyser: {quality}", [one for one in [*sound, *faulty] if one.drawn.quality == quality])


if __name__ == "__main__":
    main()
