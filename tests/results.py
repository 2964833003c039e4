"""Keeps what was measured in a file of sections by version, each with the machine it ran on."""

import datetime as dt
import os
import platform
import re
import shutil
import subprocess
from importlib.metadata import version
from pathlib import Path

from jointwise.assemble.version import VERSION

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


def rewrite(results: Path, title: str, command: str, names: list[str], name: str, on: list[str], told: str) -> None:
    """Put what one of the names told on a machine into a file, under the project's version.

    Its other sections stay as they are, and so does what was told of other versions; the newest stands first.
    """
    kept = results.read_text() if results.exists() else ""
    versions = {VERSION: ""} | dict(re.findall(r"^## (\d\S*)\n\n(.*?)(?=^## \d|\Z)", kept, re.M | re.S))
    sections = dict(re.findall(r"^### (\w+)\n\n(.*?)(?=^### |\Z)", versions[VERSION], re.M | re.S))
    sections[name] = "\n".join(f"- {line}" for line in on) + f"\n\n```\n{told}\n```"
    versions[VERSION] = "".join(f"### {one}\n\n{sections[one].rstrip()}\n\n" for one in names if one in sections)
    written = "".join(f"## {one}\n\n{text.rstrip()}\n\n" for one, text in versions.items())
    results.write_text(
        f"# {title}\n\nWritten by `{command}`, under the version it was run for.\n\n{written.rstrip()}\n"
    )
