"""Asks the registries about every pinned package: same hashes, not withdrawn, no known fault. Run with `make audit`.

The Python registry's own index tells hashes and withdrawn ("yanked") files, as PEP 691 and PEP 592 say. Known faults
come from its JSON interface and from `npm audit`; a registry that does not tell them is said, and is no failure.
"""

import json
import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from urllib.error import HTTPError
from urllib.request import Request, urlopen

ROOT = Path(__file__).parents[1]
PINNED = ROOT / "tests/fuzz/requirements.txt"
"""The longest list: it holds all others."""
NODE_FOLDERS = ("frontend", "frontend/runtime")
INDEX = os.environ.get("PIP_INDEX_URL", "https://pypi.org/simple").rstrip("/")
INDEX_JSON = "application/vnd.pypi.simple.v1+json"
PATIENCE_S = 30


def pins(text: str) -> Iterator[tuple[str, str, set[str]]]:
    """Name, version and hashes of every pinned package."""
    for block in re.split(r"\n(?=\S)", text):
        name, version = re.match(r"([\w.-]+)==([^\s;]+)", block).groups()
        yield name, version, set(re.findall(r"--hash=sha256:([0-9a-f]{64})", block))


def told(address: str, accept: str = "application/json") -> dict:
    """What a registry answers, as JSON."""
    if not address.startswith("https://"):
        raise ValueError(address)
    with urlopen(Request(address, headers={"Accept": accept}), timeout=PATIENCE_S) as answer:
        return json.load(answer)


def withdrawn_or_other(name: str, pinned: set[str]) -> Iterator[str]:
    """What is wrong with the files of a release."""
    files = {one["hashes"]["sha256"]: one for one in told(f"{INDEX}/{name}/", INDEX_JSON)["files"]}
    for digest in pinned:
        if digest not in files:
            yield f"{name}: the registry has no file of hash {digest}"
        elif files[digest]["yanked"]:
            yield f"{files[digest]['filename']} was withdrawn: {files[digest]['yanked']}"


def known_faults(name: str, version: str) -> Iterator[str]:
    """The faults that the registry knows of a release."""
    answer = told(f"{INDEX.removesuffix('/simple')}/pypi/{name}/{version}/json")
    for fault in answer["vulnerabilities"]:
        yield f"{name} {version}: {fault['id']}, {fault.get('summary') or fault.get('details', '')}"


def of_python(wrong: list[str]) -> None:
    """Ask about every Python package."""
    tells_faults, packages = True, list(pins(PINNED.read_text()))
    for name, version, hashes in packages:
        wrong += withdrawn_or_other(name, hashes)
        if tells_faults:
            try:
                wrong += known_faults(name, version)
            except HTTPError:
                tells_faults = False
    print(f"{len(packages)} Python packages: hashes compared with the registry's, withdrawn files looked for")
    print(f"known faults of Python packages: {'asked' if tells_faults else 'this registry does not tell them'}")


def of_node(folder: str, wrong: list[str]) -> None:
    """Ask about the packages of one package-lock.json, whose hashes `npm ci` has compared already."""
    command = ["npm", "audit", "--json", "--prefix", folder]
    answer = json.loads(subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False).stdout or "{}")
    if "vulnerabilities" not in answer:
        print(f"known faults of {folder}'s packages: this registry does not tell them")
        return
    print(f"known faults of {folder}'s packages: asked")
    wrong += [f"{folder}: {name}, {fault['severity']}" for name, fault in answer["vulnerabilities"].items()]


def main() -> None:
    """Print what was asked and what is wrong; fail when something is."""
    wrong: list[str] = []
    of_python(wrong)
    for folder in NODE_FOLDERS:
        of_node(folder, wrong)
    if wrong:
        sys.exit("\n".join(wrong))


if __name__ == "__main__":
    main()
