"""The lists of pinned packages hold what pyproject.toml asks for."""

import re
import tomllib
from pathlib import Path

import pytest
from audit import pins
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[1]
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
LISTS = {
    "backend/requirements.txt": ["many", "build"],
    "tests/requirements.txt": ["many", "test"],
    "tests/fuzz/requirements.txt": ["many", "test", "fuzz"],
}


@pytest.mark.parametrize("file", LISTS)
def test_every_dependency_is_pinned_with_hashes(file):
    """Each dependency has a pinned version that satisfies it, and every pinned one has hashes: else run `make lock`."""
    pinned: dict[str, list[str]] = {}
    for name, version, hashes in pins((ROOT / file).read_text()):
        assert hashes, name
        pinned.setdefault(canonicalize_name(name), []).append(version)
    extras = [one for extra in LISTS[file] for one in PROJECT["optional-dependencies"][extra]]

    for asked in map(Requirement, PROJECT["dependencies"] + extras):
        versions = pinned.get(canonicalize_name(asked.name), [])
        assert versions, asked
        assert all(asked.specifier.contains(version) for version in versions), asked


def test_installs_take_pinned_packages_only():
    """The set-up of every environment asks for hashes, but for the tool that makes the lists."""
    installs = re.findall(r"pip (?:install|download) (.*)", (ROOT / "Makefile").read_text())

    loose = [one for one in installs if "--require-hashes" not in one and "--no-deps" not in one]
    assert loose == ["-q uv"]
