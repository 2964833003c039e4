"""How often the judge of sweeps accuses a sound everyday line, and what it finds on faulty ones.

Run with `python tests/benchmarks/everyday.py [lines] [first seed] [processes]`: so many sound lines, as many with one
fault and half as many with two. The lines come from `tests/everyday`, which shares no physics with the core.
Constants of the judge are chosen on seeds from TRAINING on; what is reported are seeds from FRESH on.
"""

import json
import os
import statistics
import sys
import time
from concurrent.futures import ProcessPoolExecutor
from itertools import pairwise
from pathlib import Path

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # one process for each processor instead

sys.path.insert(0, str(Path(__file__).parents[1]))

from everyday.analyser import QUALITIES
from everyday.ends import ENDS
from everyday.faults import AT_JOINTS, IN_CABLES
from everyday.lines import FRESH, draw_case
from everyday.score import VISIBLE, outcome

from jointwise.calc.operations import call

LINES = 300
SURE_BINS = [0.0, 0.5, 0.7, 0.8, 0.9, 0.95, 1.0]
COLUMNS = ["right", "at an end", "wrong", "can't tell", "one of these", "missed", "not judged"]
"""Of right answers those that name the bad joint or the antenna at it; of those that can't tell, those that name the
bad place among others; of those that miss it, those that say that they can't judge that joint."""

SOUND_COLUMNS = ["sound", "accused", "can't tell"]


def answered(seed, faults):
    """Draw, ask and score one line."""
    drawn = draw_case(seed, faults)
    body = json.dumps(drawn.request).encode()
    start = time.process_time()
    answer = json.loads(call("sweep", body))
    return outcome(drawn, answer, time.process_time() - start)


def share(part, whole):
    """A share in per cent."""
    return f"{100 * len(part) / len(whole):.1f} %" if whole else "-"


def head(name, columns):
    """Print the names of a table's columns."""
    print(f"{name:28}{'lines':>6}" + "".join(f"{column:>14}" for column in columns))


def row(name, found, columns=COLUMNS):
    """Print how often some lines were judged in each manner."""
    chosen = {column: [one for one in found if one.verdict == column] for column in columns}
    if columns is COLUMNS:
        chosen["at an end"] = [one for one in chosen["right"] if one.as_end]
        chosen["one of these"] = [one for one in found if one.among]
        chosen["not judged"] = [one for one in chosen["missed"] if one.unjudged]
    print(f"{name:28}{len(found):6}" + "".join(f"{share(part, found):>14}" for part in chosen.values()))


def by_circumstance(found, columns):
    """Print a row for each end and each analyser."""
    for end in ENDS:
        row(f"end: {end}", [one for one in found if one.end == end], columns)
    for quality in QUALITIES:
        row(f"analyser: {quality}", [one for one in found if one.quality == quality], columns)


def sound_table(sound):
    """Print how sound lines were judged."""
    head("sound lines", SOUND_COLUMNS)
    row("all", sound, SOUND_COLUMNS)
    by_circumstance(sound, SOUND_COLUMNS)


def single_table(single):
    """Print how lines with one fault were judged, by what is wrong, end and analyser."""
    visible = [one for one in single if one.visible]
    print("\nright: nothing accused but the joint or the place itself, within c*v/(2*span)")
    print("at an end: the bad joint or the antenna at it is named, and not which of the two")
    head(f"one fault, over {VISIBLE} rms", COLUMNS)
    row("all", visible)
    for name, kinds in (("at joints", AT_JOINTS), ("in cables", IN_CABLES)):
        row(name, [one for one in visible if one.kinds[0] in kinds])
        for kind in kinds:
            row(f"  {kind}", [one for one in visible if one.kinds[0] == kind])
    row("at the joint before the end", [one for one in visible if one.at_end])
    row("everywhere else", [one for one in visible if not one.at_end])
    by_circumstance(visible, COLUMNS)
    row("weaker faults", [one for one in single if not one.visible])
    damaged = [one for one in visible if one.kinds[0] in IN_CABLES]
    for words, found in (
        ("damaged cables", damaged),
        ("of them farther from joints than the resolution", [one for one in damaged if one.apart]),
    ):
        as_such, blamed = ([one for one in found if getattr(one, what)] for what in ("as_cable", "far_joint"))
        print(f"{words}: {len(found)}, found as such {share(as_such, found)}, a joint blamed {share(blamed, found)}")


def calibration_table(found):
    """Print how sure the answers were against how often they were right, sound lines among them."""
    told = [one for each in found for one in each.told]
    print(f"\n{'said sure':>14}{'times':>8}{'said':>9}{'right':>9}")
    for low, high in pairwise(SURE_BINS):
        within = [(sure, hit) for sure, hit in told if low < sure <= high]
        if within:
            said, right = (100 * statistics.fmean(values) for values in zip(*within, strict=True))
            print(f"{low:6.2f} to {high:.2f}{len(within):8}{said:7.1f} %{right:7.1f} %")


def main():
    """Draw, judge and print."""
    lines = int(sys.argv[1]) if len(sys.argv) > 1 else LINES
    first = int(sys.argv[2]) if len(sys.argv) > 2 else FRESH
    processes = int(sys.argv[3]) if len(sys.argv) > 3 else None
    faults = [0] * lines + [1] * lines + [2] * (lines // 2)
    seeds = [first + at for count in (lines, lines, lines // 2) for at in range(count)]
    with ProcessPoolExecutor(processes) as pool:
        found = list(pool.map(answered, seeds, faults, chunksize=4))
    sound, single, double = (
        [one for one, count in zip(found, faults, strict=True) if count == wanted] for wanted in range(3)
    )
    print(f"{len(sound)} sound lines, {len(single)} with one fault, {len(double)} with two, from seed {first}\n")
    sound_table(sound)
    single_table(single)
    print("\nright: at least one of them found and no other place accused")
    head("two faults, one so visible", COLUMNS)
    row("all", [one for one in double if one.visible])
    calibration_table(found)
    print(f"\nprocessor time of one answer, median {statistics.median(one.seconds for one in found):.2f} s")


if __name__ == "__main__":
    main()
