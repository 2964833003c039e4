"""What git runs before a commit: checks of our own, and the rule for messages."""

import subprocess
import sys
from pathlib import Path

import pytest
import yaml
from commit_messages import git, since, wrong
from pre_commit.clientlib import load_config

ROOT = Path(__file__).parents[1]
CONFIG = ROOT / ".pre-commit-config.yaml"
REPOSITORIES = yaml.safe_load(CONFIG.read_text())["repos"]
GOOD = [
    "x" * 72,
    "Say which room holds what\n\nA reader looks for it there.\nAnd there.",
    "Merge branch 'a' into b\n",
]
BAD = [
    ("x" * 73, "its subject has 73 characters"),
    ("", "its subject has 0 characters"),
    ("Say which room\nholds what", "its second line is not empty"),
]


def test_hooks_fetch_nothing():
    """The file is a valid one, and every hook a command of the tree, in the pinned environment."""
    load_config(CONFIG)

    assert [repository["repo"] for repository in REPOSITORIES] == ["local"]
    assert {hook["language"] for hook in REPOSITORIES[0]["hooks"]} == {"system"}


def test_hooks_are_the_checks_of_the_makefile():
    """Before a commit runs what anybody can run by hand, so that the two can't differ."""
    hooks = REPOSITORIES[0]["hooks"]
    targets = [hook["entry"].removeprefix("make ") for hook in hooks if "pre-commit" in hook["stages"]]

    assert targets == ["lint", "lint-page"]
    dry = subprocess.run(["make", "-n", *targets], cwd=ROOT, capture_output=True, text=True, check=False)
    assert dry.returncode == 0, dry.stderr


@pytest.mark.parametrize("message", GOOD)
def test_a_good_message_is_taken(message):
    """Short subjects, with or without a body."""
    assert list(wrong(message)) == []


@pytest.mark.parametrize(("message", "sentence"), BAD)
def test_a_bad_message_is_refused(message, sentence, tmp_path):
    """The hook's command fails with a sentence; git's own remarks are no part of the message."""
    file = tmp_path / "message"
    file.write_text(f"{message}\n# Please enter the commit message\n")
    command = [sys.executable, str(ROOT / "tests/commit_messages.py"), str(file)]
    run = subprocess.run(command, capture_output=True, text=True, check=False)

    assert run.returncode == 1
    assert run.stderr.startswith(f"the message: {sentence}")


def test_commits_are_found_where_they_are_known():
    """An unknown commit gives none to check, and a known one those since."""
    assert since("0" * 40) == {}
    if git("rev-parse", "HEAD~1"):
        assert since("HEAD~1")
