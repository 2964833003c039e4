"""The long fuzzing: `make fuzz`, some twenty minutes. Every part ends with what it did, and the whole with a failure
if an answer was a server's fault, an exception escaped, or one input took longer than its time.

- schemathesis asks the served description's operations, at least 20,000 requests, by two workers as README says;
- hypothesis spoils valid requests and hands them to the core's door;
- atheris changes texts for each row of `parsers.py`, led by the lines they reach.
"""

import argparse
import json
import re
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import Any
from urllib.request import urlopen

from hypothesis import HealthCheck, given, seed, settings
from many_users import gunicorn
from mutants import spoilt
from parsers import FOUND, PARSERS

from jointwise.calc.catalogue import catalogue
from jointwise.calc.errors import InputError
from jointwise.calc.operations import OPERATIONS, call

HERE = Path(__file__).parent
PATIENCE_S = 2.0
"""How long one input may take, in seconds of the processor."""
WAIT_S = 10
"""How long an answer may take on a machine with other work."""

EXAMPLES, REQUESTS, SPOILT, CHANGED = 2000, 20_000, 20_000, 500_000
CHECKS = "not_a_server_error,status_code_conformance,content_type_conformance,response_schema_conformance"

NAMES = {
    "families": "interfaces",
    "family": "interfaces",
    "adapter_to": "interfaces",
    "one_family": "interfaces",
    "other_family": "interfaces",
    "port": "interfaces",
    "plan": "interfaces",
    "bands": "bands",
    "band": "bands",
    "mode": "modes",
    "condition": "conditions",
    "cable": "cables",
    "cable_dielectric": "cable_dielectrics",
    "environment": "noise_environments",
    "installation": "installations",
}
"""Fields that hold an id, and the catalogue's table it is looked up in."""


def with_names(schema: Any, table: str = "") -> Any:
    """The description with the ids that there are and one that is none, so that requests get past the first look-up."""
    if isinstance(schema, list):
        return [with_names(one, table) for one in schema]
    if not isinstance(schema, dict):
        return schema
    if schema.get("type") == "object" and schema.get("additionalProperties") is not False:
        return schema  # a result: only requests take no unknown field
    if table and schema.get("type") == "string":
        return {"type": "string", "enum": [*getattr(catalogue(), table), "unheard_of"]}
    told = {key: with_names(value, table) for key, value in schema.items() if key != "properties"}
    if "touchstone" in schema.get("properties", {}):
        texts = {"type": "string", "enum": ["", *PARSERS["touchstone"].seeds]}
        told["properties"] = {name: with_names(one) for name, one in schema["properties"].items()} | {
            "touchstone": texts
        }
    elif "properties" in schema:
        told["properties"] = {name: with_names(one, NAMES.get(name, "")) for name, one in schema["properties"].items()}
    if "in" in schema and "schema" in schema:
        told["schema"] = with_names(schema["schema"], NAMES.get(schema["name"], ""))
    return told


def ask_the_server(folder: Path) -> list[str]:
    """What schemathesis finds wrong."""
    with gunicorn() as served, urlopen(f"http://127.0.0.1:{served.port}/api/v1/openapi.json") as answer:
        description = folder / "openapi.json"
        description.write_text(json.dumps(with_names(json.load(answer))))
        command = [str(Path(sys.executable).with_name("schemathesis")), "run", str(description)]
        command += ["--url", f"http://127.0.0.1:{served.port}", "-c", CHECKS, "-n", str(EXAMPLES), "--seed", "1"]
        command += ["--phases", "examples,fuzzing,stateful", "--max-response-time", str(WAIT_S), "--no-color"]
        command += ["--continue-on-failure", "--generation-database", "none", "--workers", "2"]
        run = subprocess.run(command, cwd=folder, capture_output=True, text=True, check=False)
        workers = served.workers()
    summary = run.stdout[run.stdout.find("= SUMMARY =") :]
    print(summary, flush=True)
    asked = int((re.search(r"(\d+) generated", summary) or ["", "0"])[1])
    wrong = [] if run.returncode == 0 else [run.stdout]
    wrong += [] if asked >= REQUESTS else [f"only {asked} requests were sent, not {REQUESTS}"]
    return wrong + ([] if len(workers) == 2 else ["a worker of the server is gone"])


def spoil_requests() -> list[str]:
    """What escapes from the core's door, or takes too long."""
    wrong, slowest, count = [], (0.0, b""), 0

    @seed(1)
    @settings(max_examples=SPOILT, deadline=None, database=None, suppress_health_check=list(HealthCheck))
    @given(asked=spoilt())
    def ask(asked: tuple[str, bytes]) -> None:
        nonlocal slowest, count
        count += 1
        begun = time.process_time()
        try:
            call(*asked)
        except InputError as refused:
            str(refused).encode()
        slowest = max(slowest, (time.process_time() - begun, asked[1]))

    try:
        ask()
    except Exception as escaped:  # noqa: BLE001  what escapes is what is looked for
        wrong.append(f"{type(escaped).__name__}: {escaped} {getattr(escaped, '__notes__', '')}")
    if slowest[0] > PATIENCE_S:
        wrong.append(f"{slowest[0]:.1f} s for {slowest[1][:2000]}")
    print(f"{count} spoilt requests of {len(OPERATIONS)} operations, the slowest {slowest[0]:.2f} s")
    return wrong


def change_texts(name: str, folder: Path) -> list[str]:
    """What atheris finds in one parser."""
    corpus = folder / name
    corpus.mkdir()
    for number, text in enumerate(PARSERS[name].seeds):
        (corpus / f"seed-{number}").write_text(text)
    (FOUND / name).mkdir(exist_ok=True)
    command = [sys.executable, str(HERE / "atheris_one.py"), name, str(corpus), f"-runs={CHANGED}", "-seed=1"]
    command += [f"-timeout={PATIENCE_S:.0f}", "-rss_limit_mb=512", f"-artifact_prefix={FOUND / name}/", "-max_len=2000"]
    run = subprocess.run(command, capture_output=True, text=True, check=False)
    done = re.findall(r"^Done (\d+) runs in (\d+)", run.stderr, re.M)
    print(f"{name}: {done[0][0] if done else 'ended before its'} texts, {len(list(corpus.iterdir()))} kept as new ways")
    return [] if run.returncode == 0 else [f"{name}: {run.stdout[-3000:]}{run.stderr[-3000:]}"]


def main() -> None:
    """Run every part, or those that are named."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("parts", nargs="*", help=f"server, requests, {', '.join(PARSERS)}; none means all")
    chosen = parser.parse_args().parts
    wrong: list[str] = []
    with tempfile.TemporaryDirectory() as folder:
        parts = {"server": lambda: ask_the_server(Path(folder)), "requests": spoil_requests}
        parts |= {name: lambda name=name: change_texts(name, Path(folder)) for name in PARSERS}
        for name, part in parts.items():
            if not chosen or name in chosen:
                wrong += part()
    sys.exit("\n\n".join(wrong))


if __name__ == "__main__":
    main()
