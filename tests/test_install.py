"""What a user installs: the packages hold the page, and the command works where no source tree is."""

import json
import os
import re
import shutil
import subprocess
import sys
import venv
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple
from urllib.request import urlopen
from zipfile import ZipFile

import pytest

from jointwise.assemble.version import VERSION

ROOT = Path(__file__).parents[1]
SOURCES = ["pyproject.toml", "MANIFEST.in", "LICENSE", "README.md", ".package", "calc", "backend", "dist"]
"""What the packages are made of; a copy, so that nothing is left in the tree and nothing left there gets in."""
CLEAN = {name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "JOINTWISE"))}
"""An environment in which nothing of the tree is on Python's path."""
ADDRESSES = {"": "site/index.html", "jointwise.html": "jointwise.html", "embed.js": "site/embed.js"}


class Made(NamedTuple):
    """The packages: a wheel from the tree, and a source package with a wheel from it."""

    of_tree: Path
    source: Path
    of_source: Path


@pytest.fixture(scope="module")
def made(tmp_path_factory) -> Made:
    """Both packages, made by the pinned tools."""
    folder = tmp_path_factory.mktemp("made")
    tree = folder / "tree"
    for name in SOURCES:
        if (ROOT / name).is_dir():
            skipped = shutil.ignore_patterns("__pycache__", "*.egg-info")
            shutil.copytree(ROOT / name, tree / name, symlinks=True, ignore=skipped)
        else:
            tree.mkdir(exist_ok=True)
            shutil.copy(ROOT / name, tree)
    build = [sys.executable, "-m", "build", "--no-isolation", str(tree), "--outdir"]
    subprocess.run([*build, folder / "tree-wheel", "--wheel"], check=True, capture_output=True)
    subprocess.run([*build, folder / "both"], check=True, capture_output=True)
    wheel = f"jointwise-{VERSION}-py3-none-any.whl"
    return Made(folder / "tree-wheel" / wheel, folder / f"both/jointwise-{VERSION}.tar.gz", folder / "both" / wheel)


@pytest.fixture(scope="module")
def commands(made, tmp_path_factory) -> Path:
    """The commands of a fresh environment with the wheel and the pinned packages it needs."""
    fresh = tmp_path_factory.mktemp("fresh")
    venv.create(fresh)
    bin_ = fresh / "bin"
    install = [sys.executable, "-m", "pip", "--python", str(bin_ / "python"), "install", "-q"]
    pinned = ["--require-hashes", "-r", str(ROOT / "backend/requirements.txt")]
    for what in (pinned, ["--no-deps", str(made.of_source)]):
        subprocess.run([*install, *what], check=True, capture_output=True, env=CLEAN)
    return bin_


@pytest.fixture
def elsewhere(tmp_path) -> dict:
    """Where and how a user runs a command: in a folder of their own."""
    return {"cwd": tmp_path, "env": CLEAN, "text": True}


@pytest.fixture
def address(commands, elsewhere) -> Iterator[str]:
    """Where the installed command serves."""
    with subprocess.Popen(
        [commands / "jointwise", "serve", "--port", "0"], stderr=subprocess.PIPE, **elsewhere
    ) as server:
        yield re.search(r"http://[\d.:]+/", server.stderr.readline())[0]
        server.terminate()


def contents(wheel: Path) -> dict[str, bytes]:
    """The files of a wheel."""
    with ZipFile(wheel) as opened:
        return {name: opened.read(name) for name in opened.namelist()}


def test_the_source_package_makes_the_same_wheel(made):
    """What the links of the tree point to is in the source package, byte for byte."""
    assert contents(made.of_source) == contents(made.of_tree)


def test_the_wheel_holds_the_whole_page(made):
    """Every file of dist is there as it is, and nothing that belongs to the tree only."""
    held = contents(made.of_tree)
    files = [path for path in (ROOT / "dist").rglob("*") if path.is_file()]
    page = {path.relative_to(ROOT).as_posix(): path.read_bytes() for path in files}

    assert page
    assert {name: held.get(f"jointwise/{name}") for name in page} == page
    assert {name.split("/")[0] for name in held} == {"jointwise", f"jointwise-{VERSION}.dist-info"}
    assert {name.split("/")[1] for name in held if name.startswith("jointwise/")} == {"backend", "calc", "dist"}


def test_the_installed_command_tells_the_version(commands, elsewhere):
    """It is the one that pyproject.toml declares."""
    told = subprocess.run([commands / "jointwise", "--version"], check=True, capture_output=True, **elsewhere).stdout

    assert told == f"jointwise, version {VERSION}\n"


def test_the_installed_command_serves_page_and_interface(address):
    """From any folder come the very files of dist, and answers."""
    for name, file in ADDRESSES.items():
        with urlopen(address + name) as answer:
            assert answer.read() == (ROOT / "dist" / file).read_bytes(), name
    with urlopen(f"{address}api/v1/matrix") as answer:
        assert json.load(answer)["margin_db"]
    with urlopen(f"{address}api/v1/health") as answer:
        assert json.load(answer)["version"] == VERSION


def test_the_installed_command_builds_no_page(commands, elsewhere):
    """Without sources there is nothing to build from, which is said in one sentence."""
    run = subprocess.run([commands / "jointwise", "build"], check=False, capture_output=True, **elsewhere)

    assert (run.returncode, run.stdout) == (2, "")
    assert run.stderr.startswith("Error: There is nothing to build from here")
    assert run.stderr.count("\n") == 1
