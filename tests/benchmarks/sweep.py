"""How often the bad joint of a drawn line is found, where, and how often a sound line is accused.

Run with `python tests/benchmarks/sweep.py [lines] [first seed] [noise...]`. The numbers the search goes by were
tuned on the seeds from 0 on; what is reported are lines it has never seen, with seeds from HELD_OUT on. Baseline:
the joint whose echo exceeds its threshold most, of the same run.
"""

import statistics
import sys
import time
from pathlib import Path
from typing import NamedTuple

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "calc"))

from sweeps import KINDS, draw

from jointwise.calc.sweep.sweep import sweep

LINES, HELD_OUT = 200, 100_000
NOISES = [0.001, 0.01, 0.03]


class Run(NamedTuple):
    """One sweep of one line."""

    kind: str | None
    noise: float
    true: int
    finding: str
    named: list[int]
    place_error_m: float
    bump: int
    hidden: bool
    """The joint stands at an open end, where no current flows through it."""
    seconds: float


def run(seed, kind, noise):
    """Draw, measure and judge one line."""
    drawn = draw(seed, kind)
    start = time.process_time()
    check = sweep(drawn.request(drawn.noisy(noise))).line
    taken = time.process_time() - start
    joints = {joint.element: joint for joint in check.joints}
    named = [check.suspect] if check.finding == "suspect" else check.apart
    bump = max(joints.values(), key=lambda joint: joint.excess / joint.threshold).element
    error = abs(joints[named[0]].distance_m - joints[drawn.joint].distance_m) if named else np.nan
    hidden = drawn.load.what == "open" and drawn.joint == len(drawn.elements) - 1
    return Run(kind, noise, drawn.joint, check.finding, named, error, bump, hidden, taken)


def share(part, whole):
    """A share as a percentage with its counts."""
    return f"{100 * part / whole:5.1f} % ({part}/{whole})" if whole else "-"


def table(runs):
    """Print the rates of one noise level."""
    for kind in [*KINDS, "all"]:
        faulty = [one for one in runs if one.kind and kind in (one.kind, "all")]
        showing = [one for one in faulty if not one.hidden]
        found = [one for one in faulty if one.named]
        right = [one for one in found if one.named[0] == one.true and one.finding == "suspect"]
        among = [one for one in found if one.true in one.named]
        bump = [one for one in faulty if one.bump == one.true]
        off = statistics.fmean(one.place_error_m for one in found) if found else 0.0
        shares = {
            "found": share(len(found), len(faulty)),
            "not at an open end": share(sum(not one.hidden for one in found), len(showing)),
            "right joint, of found": share(len(right), len(found)),
            "right or among those not told apart": share(len(among), len(found)),
            "largest echo": share(len(bump), len(faulty)),
        }
        print(f"  {kind:11}" + ", ".join(f"{name} {words}" for name, words in shares.items()) + f", off {off:.2f} m")
    sound = [one for one in runs if one.kind is None]
    accused = [one for one in sound if one.finding in ("suspect", "unclear")]
    odd = [one for one in runs if one.finding == "no fit"]
    print(f"  sound lines accused {share(len(accused), len(sound))}; no fit {share(len(odd), len(runs))}")
    print(f"  processor time of one answer, median {statistics.median(one.seconds for one in runs):.2f} s")


def main():
    """Print the rates at every noise level."""
    lines = int(sys.argv[1]) if len(sys.argv) > 1 else LINES
    first = int(sys.argv[2]) if len(sys.argv) > 2 else HELD_OUT
    for noise in [float(one) for one in sys.argv[3:]] or NOISES:
        kinds = [kind for kind in (*KINDS, None) for _ in range(lines // (len(KINDS) if kind else 1))]
        runs = [run(first + at, kind, noise) for at, kind in enumerate(kinds)]
        print(
            f"noise {noise:.1%} of a full reflection, {lines} lines with a fault and {lines} without, from seed {first}"
        )
        table(runs)
        sys.stdout.flush()


if __name__ == "__main__":
    main()
