"""One version: what pyproject.toml declares is what is installed, told and described."""

import json
import re
from importlib.metadata import version
from pathlib import Path

from jointwise.assemble.start_data import start_data
from jointwise.assemble.version import VERSION

ROOT = Path(__file__).parents[1]


def test_the_interface_tells_the_version(client):
    """Health and description tell the declared version, as the package installed here does."""
    assert version("jointwise") == VERSION, "the environment is older than pyproject.toml: any make target renews it"
    assert json.loads(client("GET", "/api/v1/health").body)["version"] == VERSION
    assert json.loads(client("GET", "/api/v1/openapi.json").body)["info"]["version"] == VERSION


def test_the_page_starts_with_the_version():
    """What the page says of itself is the declared version."""
    assert start_data()["version"] == VERSION


def test_the_changes_of_the_version_are_told():
    """The newest section of the change log is that of the declared version."""
    assert re.findall(r"^## (.*)$", (ROOT / "CHANGELOG.md").read_text(), re.M)[0] == VERSION
