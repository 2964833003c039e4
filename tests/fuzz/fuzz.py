"""The long fuzzing: `make fuzz`, a quarter of an hour on two idle processors; `make fuzz ONLY="line query"` for parts.

Each part prints what it did, which is kept in RESULTS.md by version. The whole ends with a failure if an answer was a
server's fault, an exception escaped, or one input took longer than its time.

- schemathesis asks the served description's operations, at least 20,000 requests, behind README's server command;
- hypothesis spoils valid requests and hands them to the core's door;
- atheris changes texts for each row of `parsers.py`, led by the lines they reach;
- `snapshots.mjs` spoils snapshots for the script on other people's pages.
"""

import argparse
import json
import os
import re
import subprocess
import sys
import tempfile
import time
from collections import Counter, defaultdict
from collections.abc import Callable, Iterable
from contextlib import ExitStack
from hashlib import sha256
from pathlib import Path
from typing import Any, NamedTuple
from urllib.request import urlopen

from described import narrowed
from hypothesis import HealthCheck, Phase, given, seed, settings
from many_users import gunicorn
from mutants import spoilt
from parsers import FOUND, PARSERS, reader
from patience import PATIENCE_S, within_patience
from results import machine, rewrite

from jointwise.calc.errors import InputError
from jointwise.calc.operations import OPERATIONS, call

HERE = Path(__file__).parent
RESULTS = HERE / "RESULTS.md"
EXAMPLES, REQUESTS, SPOILT, CHANGED, SNAPSHOTS = 1450, 20_000, 20_000, 500_000, 20_000
BATCH = 500
"""Requests that hypothesis spoils before the time is looked at."""
SERVER_S, SPOILING_S, CHANGING_S = 1200, 600, 90
"""After so long a part ends, with what it has done by then."""
HUNG_S = 60
"""How long atheris waits for one text on a machine with other work."""
SNAPSHOT = {"families": ["uhf", "n"], "bands": ["20m", "70cm"], "powers_w": [0, 100]}
CHECKS = "not_a_server_error,status_code_conformance,content_type_conformance,response_schema_conformance"
ASKERS = 4
"""Processes of schemathesis that share the operations."""


class Outcome(NamedTuple):
    """What a part did, line by line, and what it found wrong."""

    lines: list[str]
    wrong: list[str]


class Row:
    """What came of all inputs of one kind."""

    def __init__(self) -> None:
        self.ends: Counter[str] = Counter()
        self.slowest_s = 0.0

    def add(self, end: str, seconds: float) -> None:
        """Count one input."""
        self.ends[end] += 1
        self.slowest_s = max(self.slowest_s, seconds)


def table(rows: dict[str, Row], head: str) -> list[str]:
    """Rows, and their sum, with a column for each way to end."""
    ends = sorted({end for row in rows.values() for end in row.ends})
    whole = Row()
    for row in rows.values():
        whole.ends += row.ends
        whole.slowest_s = max(whole.slowest_s, row.slowest_s)
    lines = [f"{head:34}{'all':>9}{''.join(f'{end:>10}' for end in ends)}{'slowest s':>11}"]
    for name, row in [*sorted(rows.items()), ("all", whole)]:
        counts = "".join(f"{row.ends[end]:10}" for end in ends)
        lines.append(f"{name:34}{row.ends.total():9}{counts}{row.slowest_s:11.2f}")
    return lines


def ask_the_server(folder: Path) -> Outcome:
    """What schemathesis finds wrong, and what the server saw of it."""
    log = folder / "log"
    os.environ["FUZZ_LOG"] = str(log)
    with ExitStack() as stack:
        served = stack.enter_context(gunicorn("watched:app", cwd=HERE))
        address = f"http://127.0.0.1:{served.port}"
        with urlopen(f"{address}/api/v1/openapi.json") as answer:
            (folder / "openapi.json").write_text(json.dumps(narrowed(json.load(answer))))
        workers = served.workers()
        command = [str(Path(sys.executable).with_name("schemathesis")), "run", "openapi.json", "--url", address]
        command += ["-c", CHECKS, "-n", str(EXAMPLES), "--seed", "1", "--phases", "examples,fuzzing", "--no-color"]
        command += ["--continue-on-failure", "--generation-database", "none"]
        names = [*OPERATIONS, "health", r".*\.json"]
        shares = [f"/({'|'.join(names[at::ASKERS])})$" for at in range(ASKERS)]
        askers = [
            stack.enter_context(
                subprocess.Popen(
                    [*command, "--include-path-regex", share], cwd=folder, stdout=subprocess.PIPE, text=True
                )
            )
            for share in shares
        ]
        until = time.monotonic() + SERVER_S
        wrong = []
        for asker in askers:
            try:
                said = asker.communicate(timeout=max(0, until - time.monotonic()))[0]
                wrong += [said] if asker.returncode else []
            except subprocess.TimeoutExpired:
                asker.kill()
                wrong.append(f"not done after {SERVER_S} s")
        if not set(workers) <= set(served.workers()):
            wrong.append("a worker of the server is gone")
    rows: dict[str, Row] = defaultdict(Row)
    for line in map(json.loads, log.read_text().splitlines()):
        rows[line["what"]].add(str(line["status"]), line["seconds"])
        if line["status"] >= 500 or line["seconds"] > PATIENCE_S:
            wrong.append(json.dumps(line))
    asked = sum(row.ends.total() for row in rows.values())
    wrong += [] if asked >= REQUESTS else [f"only {asked} requests were sent, not {REQUESTS}"]
    return Outcome(table(rows, "requests by address and status"), wrong)


def spoil_requests(_: Path) -> Outcome:
    """What escapes from the core's door, or takes too long."""
    rows: dict[str, Row] = defaultdict(Row)
    wrong: dict[str, str] = {}
    until = time.monotonic() + SPOILING_S

    def ask(asked: tuple[str, bytes]) -> None:
        operation, body = asked
        end, seconds, escaped = ending(reader(operation), body)
        rows[operation].add(end, seconds)
        if escaped and escaped not in wrong:
            wrong[escaped] = f"{escaped}\n{keep(operation, body)}"

    chosen = settings(
        max_examples=BATCH,
        deadline=None,
        database=None,
        suppress_health_check=list(HealthCheck),
        phases=[Phase.generate],
    )
    for batch in range(SPOILT // BATCH):
        if time.monotonic() < until:
            seed(batch)(chosen(given(asked=spoilt())(ask)))()
    done = sum(row.ends.total() for row in rows.values())
    few = [] if done >= SPOILT else [f"only {done} requests were spoilt in {SPOILING_S} s, not {SPOILT}"]
    return Outcome(table(rows, "spoilt requests by operation"), [*wrong.values(), *few])


def change_texts(name: str, folder: Path) -> Outcome:
    """What atheris finds in one parser."""
    corpus = folder / name
    corpus.mkdir()
    for number, text in enumerate(PARSERS[name].seeds):
        (corpus / f"seed-{number}").write_text(text)
    (FOUND / name).mkdir(exist_ok=True, parents=True)
    command = [sys.executable, str(HERE / "atheris_one.py"), name, str(corpus), "-seed=1", "-max_len=2000"]
    command += [f"-runs={CHANGED}", f"-max_total_time={CHANGING_S}", f"-timeout={HUNG_S}", "-rss_limit_mb=1024"]
    command += [f"-artifact_prefix={FOUND / name}/"]
    run = subprocess.run(command, capture_output=True, text=True, check=False)
    done = re.findall(r"^Done (\d+) runs in (\d+)", run.stderr, re.M)
    wrong = [] if run.returncode == 0 else [f"{name}: {run.stdout[-3000:]}{run.stderr[-3000:]}"]
    rows = {"texts kept as new ways": Row()}
    for file in sorted(corpus.iterdir()):
        end, seconds, escaped = ending(reader(name), file.read_bytes())
        rows["texts kept as new ways"].add(end, seconds)
        wrong += [f"{escaped}\n{keep(name, file.read_bytes())}"] if escaped else []
    told = f"{done[0][0]} changed texts in {done[0][1]} s" if done else "ended by a fault"
    return Outcome([told, *table(rows, "")[:2]], wrong)


def spoil_snapshots(_: Path) -> Outcome:
    """What escapes from the reader of snapshots on other people's pages."""
    whole = call("snapshot", json.dumps(SNAPSHOT).encode())
    command = ["node", str(HERE / "snapshots.mjs"), str(SNAPSHOTS)]
    run = subprocess.run(command, input=whole, capture_output=True, check=False)
    return Outcome(run.stdout.decode().splitlines(), [] if run.returncode == 0 else [run.stderr.decode()])


def ending(read: Callable[[bytes], Any], data: bytes) -> tuple[str, float, str]:
    """How an input ended, the processor's seconds it took, and what escaped if anything did."""
    begun, end, escaped = time.process_time(), "answered", ""
    try:
        with within_patience():
            read(data)
    except InputError as refused:
        end = "refused"
        str(refused).encode()
    except Exception as error:  # noqa: BLE001  what escapes is what is looked for
        end, escaped = "escaped", f"{type(error).__name__}: {error}"
    return end, time.process_time() - begun, escaped


def keep(name: str, data: bytes) -> Path:
    """The file an input is kept in, for `test_found.py` to read again."""
    file = FOUND / name / sha256(data).hexdigest()[:12]
    file.parent.mkdir(exist_ok=True, parents=True)
    file.write_bytes(data)
    return file


def run(parts: dict[str, Callable[[Path], Outcome]], chosen: Iterable[str]) -> list[str]:
    """Run the chosen parts one after another; what was found wrong."""
    wrong = []
    with tempfile.TemporaryDirectory() as folder:
        for name in chosen:
            begun, on = time.monotonic(), machine()
            outcome = parts[name](Path(folder))
            lines = [*outcome.lines, f"{time.monotonic() - begun:.0f} s, {len(outcome.wrong)} found wrong"]
            print("\n".join([f"== {name}", *lines, *outcome.wrong]), flush=True)
            rewrite(RESULTS, "What the fuzzing did", "make fuzz", list(parts), name, on, "\n".join(lines))
            wrong += outcome.wrong
    return wrong


def main() -> None:
    """Run every part, or those that are named."""
    parts: dict[str, Callable[[Path], Outcome]] = {"server": ask_the_server, "requests": spoil_requests}
    parts |= {name: lambda folder, name=name: change_texts(name, folder) for name in PARSERS}
    parts["snapshot"] = spoil_snapshots
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("parts", nargs="*", choices=[[], *parts], help="none means all")
    wrong = run(parts, parser.parse_args().parts or parts)
    sys.exit(f"{len(wrong)} found wrong" if wrong else 0)


if __name__ == "__main__":
    main()
