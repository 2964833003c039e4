"""What the READMEs show works: their links, their pictures, and their examples in a shell and over HTTP."""

import json
import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from wire import Client

from jointwise.assemble.example_sweeps import MODULE

ROOT = Path(__file__).parents[1]
GUIDES = sorted(ROOT.glob("*.md"))
READMES = [
    ROOT / "README.md",
    *sorted(path for room in ("calc", "backend", "frontend/src") for path in (ROOT / room).rglob("README.md")),
]
PICTURES = ROOT / "frontend/screenshots"
MOST_PICTURE_BYTES = 150_000

LINK = re.compile(r"\]\((?!https?:)([^)#]*)#?([^)]*)\)")
PICTURE = re.compile(r'<img src="([^"]+)"')
SHELL = re.compile(r"^```sh\n(.*?)^```", re.M | re.S)
FILE = re.compile(r"This is `([\w-]+\.json)`[^\n]*:\n\n```json\n(.*?)^```", re.M | re.S)
RUN_ELSEWHERE = ("make ", "export JOINTWISE_")
"""The commands that build, test and serve; the last is run by many_users.py."""

SERVER = "127.0.0.1:8073"
CURL = 'silent\nwrite-out = "%{stderr}%{http_code}\\n"\n'
STATUS = re.compile(r"^curl .*?(?:# (\d{3}))?$", re.M)


def name(path: Path) -> str:
    """A file's path inside the repository."""
    return path.relative_to(ROOT).as_posix()


def anchors(text: str) -> set[str]:
    """What a link may name of a text: its headings in small letters, hyphens for spaces, other signs left out."""
    headings = re.findall(r"^#+ (.*)$", re.sub(r"^```.*?^```", "", text, flags=re.M | re.S), re.M)
    return {re.sub(r"[^\w -]", "", heading.lower()).replace(" ", "-") for heading in headings}


def shell_examples() -> Iterator[object]:
    """Each block of commands, with the README it stands in."""
    for path in READMES:
        for at, block in enumerate(SHELL.findall(path.read_text("utf-8")), 1):
            if not block.startswith(RUN_ELSEWHERE):
                yield pytest.param(path, block, id=f"{name(path)} {at}")


@pytest.mark.parametrize("path", [*GUIDES, *READMES[1:]], ids=name)
def test_links_lead_somewhere(path: Path) -> None:
    """Each link to a file finds it, and each to a heading finds that too."""
    for file, heading in LINK.findall(path.read_text("utf-8")):
        target = path.parent / file if file else path
        assert target.exists(), file
        assert not heading or heading in anchors(target.read_text("utf-8")), f"{file}#{heading}"


def test_every_picture_is_small_and_shown() -> None:
    """The READMEs show the pictures there are and no other, and none takes long to load."""
    shown = {
        name((path.parent / file).resolve()) for path in READMES for file in PICTURE.findall(path.read_text("utf-8"))
    }
    pictures = list(PICTURES.iterdir())

    assert shown == {name(picture) for picture in pictures}
    assert all(picture.stat().st_size < MOST_PICTURE_BYTES for picture in pictures)


@pytest.mark.parametrize(("path", "commands"), list(shell_examples()))
def test_the_shell_examples_run(path: Path, commands: str, client: Client, tmp_path: Path) -> None:
    """Each command ends well beside the files that its README shows, and the server answers with the status stated."""
    for file, content in FILE.findall(path.read_text("utf-8")):
        (tmp_path / file).write_text(content)
    sweep = json.loads(MODULE.read_text("utf-8").partition(" = ")[2].rstrip().removesuffix(";"))["line"]["file"]["text"]
    (tmp_path / "hill-hut.s1p").write_text(sweep)
    (tmp_path / ".curlrc").write_text(CURL)
    script = commands.replace(".venv/bin/", "").replace(SERVER, f"127.0.0.1:{client.port}")
    environment = os.environ | {"HOME": str(tmp_path), "PATH": f"{Path(sys.executable).parent}:{os.environ['PATH']}"}

    outcome = subprocess.run(
        ["bash", "-e", "-o", "pipefail", "-c", script],
        cwd=tmp_path,
        env=environment,
        capture_output=True,
        text=True,
        check=False,
    )

    assert outcome.returncode == 0, outcome.stderr
    assert outcome.stderr.split() == [status or "200" for status in STATUS.findall(commands)]


@pytest.mark.parametrize("path", READMES, ids=name)
def test_every_json_example_has_its_file(path: Path) -> None:
    """Each example in JSON is named as a file, so that the commands beside it can be run."""
    text = path.read_text("utf-8")

    assert len(FILE.findall(text)) == text.count("```json\n")
