"""Runs the benchmarks and writes what they print, with the machine they ran on, to RESULTS.md under the
project's version. Run with `make bench`.

Every ratio is of times from one run; the times themselves say as much about the machine and its other work.
"""

import os
import subprocess
import sys
from pathlib import Path

from results import machine, rewrite

HERE = Path(__file__).parent
RESULTS = HERE / "RESULTS.md"
NAMES = [
    "matrix",
    "line",
    "kit",
    "sweep",
    "everyday",
    "everyday_parts",
    "measured",
    "limits",
    "load",
    "soak",
    "visitors",
    "hunted",
    "saving",
    "page",
]
"""Modules beside this one; `soak` is the load for five minutes."""


def printed(name: str) -> str:
    """What a benchmark prints, shown while it runs."""
    module, *options = ["load", "--soak"] if name == "soak" else [name]
    search = os.pathsep.join(str(HERE.parents[1] / folder) for folder in ("tests", "e2e"))
    command = [sys.executable, str(HERE / f"{module}.py"), *options]
    lines = []
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=os.environ | {"PYTHONPATH": search}) as run:
        for line in run.stdout:
            print(line, end="", flush=True)
            lines.append(line)
    if run.returncode:
        lines.append(f"ended with {run.returncode}\n")
    return "".join(lines).rstrip()


def main() -> None:
    """Run those named, or all; what was not run stays in the file as it is."""
    for name in sys.argv[1:] or NAMES:
        on = machine()
        rewrite(RESULTS, "What was measured", "make bench", NAMES, name, on, printed(name))


if __name__ == "__main__":
    main()
