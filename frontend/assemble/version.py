"""The version of the project, read where it is declared: an installed package may be older than the sources."""

import tomllib
from pathlib import Path

__all__ = ["PROJECT", "VERSION"]

PROJECT = Path(__file__).resolve().parents[2]
VERSION: str = tomllib.loads((PROJECT / "pyproject.toml").read_text("utf-8"))["project"]["version"]
