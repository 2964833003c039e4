"""How often the bad joint of a drawn line is found, where, and how often a sound line is accused.

Run with `python tests/benchmarks/sweep.py [lines] [first seed] [noise...]`. The constants of the search were tuned on
other seeds; what is reported are lines it was not tuned on, with seeds from FIRST_TEST_SEED on. Baselines, of the same
run: the joint whose echo exceeds its threshold most, and the bound of observer.py.
"""

import os
import statistics
import sys
import time
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from typing import NamedTuple

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # one process for each processor instead

import numpy as np
from observer import DETECTABLE, ERRORS, separations

sys.path.insert(0, str(Path(__file__).parents[1] / "calc"))

from sweeps import KINDS, draw

from jointwise.calc.sweep.sweep import judge_sweep

LINES, FIRST_TEST_SEED = 200, 100_000
NOISES = [0.001, 0.01, 0.03]
HEAD = f"{'':12}{'lines':>6}{'found':>9}{'right joint, of found':>23}{'right or undecided':>20}{'right, of all':>15}"
HEAD += f"{'off, m':>8}{'largest echo right':>20}"


class Run(NamedTuple):
    """One sweep of one line."""

    kind: str | None
    noise: float
    true: int
    finding: str
    named: list[int]
    place_error_m: float
    largest_echo: int
    fair: bool
    """Detectable, and farther from every other joint than the resolution."""
    probability: float | None
    seconds: float


def runs_of(seed, kind, noises):
    """Draw a line, and measure and judge it at each level of noise."""
    found = []
    apart = separations(draw(seed, kind), noises) if kind else [0.0] * len(noises)
    for noise, deviations in zip(noises, apart, strict=True):
        drawn = draw(seed, kind)
        start = time.process_time()
        check = judge_sweep(drawn.request(drawn.noisy(noise))).line
        seconds = time.process_time() - start
        joints = {joint.element: joint for joint in check.joints}
        named = _joints_named(drawn, check, joints)
        largest_echo = max(joints.values(), key=lambda joint: joint.excess / joint.threshold).element
        error = abs(joints[named[0]].distance_m - joints[drawn.joint].distance_m) if named else np.nan
        fair = deviations >= DETECTABLE and joints[drawn.joint].separate
        found.append(
            Run(kind, noise, drawn.joint, check.finding, named, error, largest_echo, fair, check.probability, seconds)
        )
    return found


def _joints_named(drawn, check, joints):
    """The joints that an answer names; a wet cable beside the joint that its water came in by names that joint."""
    if check.finding == "damage" and drawn.kind == "water" and abs(check.suspect - drawn.joint) == 1:
        return [drawn.joint]
    if check.finding in ("suspect", "damage"):
        place = check.faults[0].distance_m
        near = min(joints.values(), key=lambda joint: abs(joint.distance_m - place)).element
        return [check.suspect if check.finding == "suspect" else near]
    return [element for element in check.apart if element in joints]


def share(part, whole):
    """A share in per cent."""
    return f"{100 * len(part) / len(whole):.1f} %" if whole else "-"


def row(name, runs):
    """Print the rates of some faulty lines."""
    found = [one for one in runs if one.named]
    right = [one for one in found if one.named == [one.true]]
    among = [one for one in found if one.true in one.named]
    echo = [one for one in runs if one.largest_echo == one.true]
    off = statistics.fmean(one.place_error_m for one in found) if found else 0.0
    print(
        f"{name:12}{len(runs):6}{share(found, runs):>9}{share(right, found):>23}{share(among, found):>20}"
        f"{share(right, runs):>15}{off:8.2f}{share(echo, runs):>20}"
    )


def table(runs):
    """Print the rates of one noise level."""
    sound = [one for one in runs if one.kind is None]
    for words, chosen in (
        ("all lines with a fault", [one for one in runs if one.kind]),
        ("of them detectable and apart", [one for one in runs if one.kind and one.fair]),
    ):
        print(f"{words}\n{HEAD}")
        for kind in KINDS:
            row(kind, [one for one in chosen if one.kind == kind])
        row("together", chosen)
    accused = [one for one in sound if one.finding in ("suspect", "damage", "unclear")]
    odd = [one for one in runs if one.finding == "no fit"]
    print(f"sound lines accused {share(accused, sound)} ({len(accused)}/{len(sound)}); no fit {len(odd)}")
    named = [one for one in runs if one.kind and one.finding in ("suspect", "damage")]
    for low, high in ((0.0, 0.9), (0.9, 0.99), (0.99, 1.0)):
        within = [one for one in named if low < one.probability <= high]
        right = [one for one in within if one.named == [one.true]]
        print(f"named with a probability of {low:.2f} to {high:.2f}: {len(within)}, right {share(right, within)}")
    print(f"processor time of one answer, median {statistics.median(one.seconds for one in runs):.2f} s\n")


def main():
    """Print the rates at every noise level."""
    lines = int(sys.argv[1]) if len(sys.argv) > 1 else LINES
    first = int(sys.argv[2]) if len(sys.argv) > 2 else FIRST_TEST_SEED
    noises = [float(one) for one in sys.argv[3:]] or NOISES
    kinds = [kind for kind in (*KINDS, None) for _ in range(lines // (len(KINDS) if kind else 1))]
    with ProcessPoolExecutor() as pool:
        seeds = range(first, first + len(kinds))
        found = list(pool.map(runs_of, seeds, kinds, [noises] * len(kinds), chunksize=4))
    print(f"{lines} lines with a fault and {lines} without, from seed {first}; noise against a full reflection, rms")
    print(
        f"detectable: an observer who knows the line, the fault, its size and the noise, but of the good parts only\n"
        f"what is usual, would miss it in at most {ERRORS:.0%} of sweeps at {ERRORS:.0%} of false alarms;"
        " apart: farther from every other\njoint than the resolution\n"
    )
    for level, noise in enumerate(noises):
        print(f"noise {noise:.1%}")
        table([runs[level] for runs in found])


if __name__ == "__main__":
    main()
