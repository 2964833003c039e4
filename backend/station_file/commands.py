"""`jointwise station FILE`: what is in a station file or a saved page, and what the core says of it."""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any, NamedTuple

import click
import msgspec

from jointwise.calc.catalogue import Edition
from jointwise.calc.errors import InputError

from .. import tables
from ..asking import Refused, called, result_of
from . import requests, words
from .documents import station_schema
from .reading import MOST_BYTES, StationFile, read

__all__ = ["station"]


class _Question(NamedTuple):
    """One that a file can be asked: whether words follow, the core's request, and its answer in words."""

    follows: str
    request: Callable[[StationFile, Edition | None, str, str], dict[str, Any]]
    in_words: Callable[[Any], str] | None


QUESTIONS = {
    "matrix": _Question("", lambda file, edition, *_: requests.matrix_request(file, edition), tables.matrix),
    "snapshot": _Question("", lambda file, edition, *_: requests.snapshot_request(file, edition), None),
    "question": _Question(
        "the question as typed",
        lambda file, edition, text, _: requests.question_request(file, text, edition),
        tables.question,
    ),
    "line": _Question("a line", lambda file, _, name, __: requests.line_request(file, file.line(name)), words.line),
    "fitout": _Question(
        "a line", lambda file, _, name, __: requests.fitout_request(file, file.line(name)), words.fitout
    ),
    "kit": _Question("", lambda file, *_: requests.kit_request(file), words.kit),
    "sweep": _Question(
        "a sweep", lambda file, _, name, end: requests.sweep_request(file, file.sweep(name), end), words.sweep
    ),
}


def _print_schema(context: click.Context, _: click.Parameter, is_wanted: bool) -> None:
    if is_wanted:
        click.echo(msgspec.json.format(msgspec.json.encode(station_schema())))
        context.exit()


@click.command()
@click.argument("file", type=click.Path(path_type=Path))
@click.argument("question", type=click.Choice(list(QUESTIONS)), required=False)
@click.argument("which", nargs=-1)
@click.option(
    "--end",
    type=click.Choice(["short", "open", "matched", "antenna"]),
    default="short",
    show_default=True,
    help="What the line ended in while it was swept",
)
@click.option("--json", "as_json", is_flag=True, help="Print the whole answer as JSON")
@click.option(
    "--schema",
    is_flag=True,
    is_eager=True,
    expose_value=False,
    callback=_print_schema,
    help="Print the JSON Schema of a station file",
)
def station(file: Path, question: str | None, which: tuple[str, ...], end: str, as_json: bool) -> None:
    """List what is in a station file or a saved page, or ask about it.

    \b
    matrix          margins of the connectors on the station's bands at its power
    question WORDS  a typed question about the station, such as: so239 10m
    line NAME       what reaches the antenna through a line
    fitout NAME     the fitting sheets of a line
    kit             which adapters to carry
    sweep NAME      a kept sweep, judged by the line it is of
    snapshot        the matrix with every derivation, for a website: redirect it into a file

    A line or a sweep is named by its name or by its number in the list. The packs of the file count.
    """
    content = read(_text(file))
    if question is None:
        listed = msgspec.json.encode(words.contents(content)) if as_json else words.visible(words.listing(content))
        click.echo(listed)
        return
    request, in_words, edition = _asked(content, question, which, end)
    answer = called(question, msgspec.json.encode(request), edition)
    if question == "snapshot":  # a website shows whose matrix it is
        whose = {"station": {"name": content.name, "date": content.date}}
        answer = msgspec.json.encode(whose)[:-1] + b"," + answer[1:]
    click.echo(answer if as_json or in_words is None else words.visible(in_words(result_of(question, answer))))


def _asked(
    file: StationFile, question: str, which: Sequence[str], end: str
) -> tuple[dict[str, Any], Callable[[Any], str] | None, Edition | None]:
    follows, request, in_words = QUESTIONS[question]
    if bool(which) != bool(follows):
        raise Refused(f"{question} is followed by {follows or 'nothing'}.")
    edition = file.edition()
    return request(file, edition, " ".join(which), end), in_words, edition


def _text(file: Path) -> str:
    try:
        if (size := file.stat().st_size) > MOST_BYTES:
            raise InputError("station file", size, f"a file of at most {MOST_BYTES} bytes")
        return file.read_bytes().decode("utf-8-sig")
    except OSError as error:
        raise InputError("station file", str(file), f"a file that can be read; {error.strerror}") from error
    except UnicodeDecodeError as error:
        raise InputError("station file", str(file), "a text in UTF-8") from error
