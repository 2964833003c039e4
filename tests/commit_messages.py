"""Checks commit messages: a subject of at most 72 characters, and the reasons below an empty line.

As the hook `commit-msg` with the file of a message, else of all commits since the rule is kept: `make lint` asks so.
"""

import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[1]
LONGEST_SUBJECT = 72
KEPT_SINCE = "25d808578dc099cb8a0688c772c8407f80c34f2f"
"""The last commit before the rule."""


def wrong(message: str) -> Iterator[str]:
    """What is wrong with a message, a sentence each."""
    subject, *rest = message.splitlines() or [""]
    if not 0 < len(subject) <= LONGEST_SUBJECT:
        yield f"its subject has {len(subject)} characters; allowed: 1 to {LONGEST_SUBJECT}: {subject}"
    if rest and rest[0]:
        yield f"its second line is not empty: {rest[0]}"


def git(*words: str) -> str | None:
    """What git prints, or nothing where it fails: outside a clone, or for a commit that a shallow one lacks."""
    run = subprocess.run(["git", *words], cwd=ROOT, capture_output=True, text=True, check=False)
    return run.stdout if run.returncode == 0 else None


def since(commit: str) -> dict[str, str]:
    """The messages of the commits since one, by their short names; none where that one is not known."""
    told = git("log", "-z", "--format=%h%n%B", f"{commit}..HEAD") or ""
    return dict(one.split("\n", 1) for one in told.split("\0") if one)


def main() -> None:
    """Print what is wrong, and fail if anything is."""
    if sys.argv[1:]:
        lines = Path(sys.argv[1]).read_text("utf-8").splitlines()
        messages = {"the message": "\n".join(line for line in lines if not line.startswith("#")).strip()}
    else:
        messages = since(KEPT_SINCE)
    found = [f"{name}: {fault}" for name, message in messages.items() for fault in wrong(message)]
    sys.exit("\n".join(found) or None)


if __name__ == "__main__":
    main()
