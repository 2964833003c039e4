"""Runs the benchmarks and writes what they print, with the machine they ran on, to RESULTS.md. Run with `make bench`.

Every ratio is of times from one run; the times themselves say as much about the machine and its other work.
"""

import datetime as dt
import os
import platform
import re
import shutil
import subprocess
import sys
from importlib.metadata import version
from pathlib import Path

HERE = Path(__file__).parent
RESULTS = HERE / "RESULTS.md"
NAMES = ["matrix", "line", "kit", "sweep", "limits", "load", "soak", "page"]
"""Modules beside this one; `soak` is the load for five minutes."""
PACKAGES = ["numpy", "msgspec", "flask", "werkzeug", "gunicorn", "waitress"]
TOOLS = {"nginx": "-v", "wrk": "-v", "node": "--version", "chromium": "--version"}


def machine() -> list[str]:
    """What it ran on, a line each."""
    processors = Path("/proc/cpuinfo").read_text()
    model = re.search(r"model name\s*: (.*)", processors)
    memory = re.search(r"MemTotal:\s*(\d+) kB", Path("/proc/meminfo").read_text())
    lines = [
        f"{dt.datetime.now(dt.UTC):%Y-%m-%d %H:%M} UTC, load at the start {os.getloadavg()[0]:.1f}",
        f"{os.cpu_count()} processors, {model[1] if model else platform.machine()}, {int(memory[1]) / 1e6:.0f} GB",
        f"{platform.system()} {platform.release()}, Python {platform.python_version()}",
        ", ".join(f"{name} {version(name)}" for name in PACKAGES),
    ]
    return lines + [told for tool, option in TOOLS.items() if (told := _told(tool, option))]


def _told(tool: str, option: str) -> str:
    path = shutil.which(tool, path=f"{os.environ['PATH']}:/usr/sbin")
    if path is None:
        return ""
    run = subprocess.run([path, option], capture_output=True, text=True, check=False)
    return (run.stdout + run.stderr).splitlines()[0]


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
    """Run those named, or all; a section of the file that was not run stays as it is."""
    kept = RESULTS.read_text() if RESULTS.exists() else ""
    sections = dict(re.findall(r"^## (\w+)\n\n(.*?)(?=^## |\Z)", kept, re.M | re.S))
    for name in sys.argv[1:] or NAMES:
        on = "\n".join(f"- {line}" for line in machine())
        sections[name] = f"{on}\n\n```\n{printed(name)}\n```\n\n"
        ordered = [f"## {one}\n\n{sections[one]}" for one in NAMES if one in sections]
        RESULTS.write_text("# What was measured\n\nWritten by `make bench`.\n\n" + "".join(ordered).rstrip() + "\n")


if __name__ == "__main__":
    main()
