"""What the checkers are told to overlook in the sources stands here, and the list only ever gets shorter."""

import re
import tomllib
from pathlib import Path

ROOT = Path(__file__).parents[1]
FOLDERS = ("calc", "backend", "frontend/assemble", "frontend/src", "frontend/payload")
REMARK = re.compile(
    r"# type: ignore\S*|# mypy:.*|# pyright:.*|@ts-(?:ignore|expect-error|nocheck)|eslint-disable\S*|prettier-ignore"
)

ALLOWED: list[tuple[str, str]] = []
"""Each with its file: where the checker is wrong, and why it is."""


def test_no_line_is_overlooked_but_these():
    """Each remark that silences a checker is in the list, and the list has no other."""
    files = {path for folder in FOLDERS for path in (ROOT / folder).rglob("*")} | {*(ROOT / "frontend").glob("*.mjs")}
    found = [
        (path.relative_to(ROOT).as_posix(), remark)
        for path in sorted(files)
        if path.suffix in (".py", ".js", ".mjs")
        for remark in REMARK.findall(path.read_text("utf-8"))
    ]

    assert found == ALLOWED


def test_no_module_is_overlooked():
    """The type checker is as strict with one module as with another."""
    checker = tomllib.loads((ROOT / "pyproject.toml").read_text())["tool"]["mypy"]

    assert checker["strict"]
    assert not checker.keys() & {"overrides", "exclude", "ignore_errors", "disable_error_code"}
