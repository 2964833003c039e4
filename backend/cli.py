"""The command line: serve the page, print a matrix or a cell, or ask any operation in JSON."""

import logging
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Any, BinaryIO

import click
import msgspec
from msgspec import Struct

from jointwise.calc.catalogue import Edition
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import pack_schema
from jointwise.calc.fields import Field, Flag, List, Number, object_of
from jointwise.calc.numeric.measures import spoken_in
from jointwise.calc.operations import OPERATIONS, InputError, call

from . import tables
from .app import create_app
from .asking import Refused, called, result_of
from .local_server import LocalServer, NoTemporaryFolderError
from .packs import edition_of_files, from_files
from .settings import Settings, environment_name
from .station_file.commands import station
from .texts import plain, range_words, request_body, single, unit_of

__all__ = ["main"]

logger = logging.getLogger(__name__)


class Fault(click.ClickException):
    """A fault of ours: a sentence, and the exit code of an internal error."""

    exit_code = 70


class Commands(click.Group):
    """A group whose commands may let the core's refusals, and its faults, through."""

    def invoke(self, ctx: click.Context) -> Any:
        try:
            return super().invoke(ctx)
        except InputError as error:
            raise Refused(str(error)) from error
        except (ArithmeticError, LookupError, TypeError, ValueError) as error:
            if sys.flags.dev_mode:
                raise
            raise Fault("Jointwise failed on this request; `python -X dev` shows where.") from error


def _options(struct: type[Struct], from_environment: bool = False) -> list[click.Parameter]:
    """An option for every field; its text goes on as typed, so that one place judges it."""
    return [_option(field, from_environment) for field in object_of(struct).fields.values()]


def _option(field: Field, from_environment: bool) -> click.Option:
    name = field.name.replace("_", "-")
    has_default = field.default not in (None, "", [])
    parts = (
        field.description,
        f"{range_words(field)} {unit_of(field)}".strip(),
        f"default {plain(field.default)}" if has_default else "",
        f"or set {environment_name(field.name)}" if from_environment else "",
    )
    words = "; ".join(part for part in parts if part)
    shape = single(field).shape
    if isinstance(shape, Flag):
        return click.Option([f"--{name}/--no-{name}", field.name], default=None, help=words)
    metavar = ("WHOLE" if shape.whole else "NUMBER") if isinstance(shape, Number) else "TEXT"
    metavar = f"{metavar},..." if isinstance(field.shape, List) else metavar
    return click.Option([f"--{name}", field.name], metavar=metavar, help=words)


def _typed(options: Mapping[str, Any]) -> dict[str, str]:
    """The options that were typed, as the texts they were typed as."""
    return {name: plain(value) for name, value in options.items() if value is not None}


def _ask(name: str, options: Mapping[str, Any], edition: Edition | None) -> bytes:
    texts = {field: [text] for field, text in _typed(options).items()}
    return called(name, request_body(OPERATIONS[name].request, texts), edition)


_packs = click.option(
    "--pack",
    "packs",
    multiple=True,
    type=click.Path(path_type=Path),
    metavar="FILE",
    help="Lay a pack over the catalogue; may be given several times",
)


@click.group(cls=Commands)
@click.version_option(package_name="jointwise")
def main() -> None:
    """Power through coaxial joints: margins, losses and derivations."""


@main.command(params=_options(Settings, from_environment=True))
def serve(**options: Any) -> None:
    """Serve the page and the interface under /api/v1/."""
    logging.basicConfig(level=logging.INFO, format="%(asctime)s %(levelname)s %(message)s")
    app = create_app(_typed(options))
    chosen: Settings = app.config["JOINTWISE"]
    try:
        server = LocalServer(app, chosen)
    except NoTemporaryFolderError as error:
        raise click.ClickException(str(error)) from error
    except (OSError, ValueError) as error:
        raise click.ClickException(f"Can't listen on {chosen.host} port {chosen.port}: {error}.") from error
    logger.info("Jointwise answers at %s until you press Ctrl-C.", " and ".join(server.addresses))
    server.run()


@main.command(params=_options(OPERATIONS["matrix"].request))
@click.option("--show-power", type=float, metavar="NUMBER", help="Which of the powers the table shows; W")
@click.option("--json", "as_json", is_flag=True, help="Print the whole answer as JSON")
@_packs
def matrix(show_power: float | None, as_json: bool, packs: tuple[Path, ...], **options: Any) -> None:
    """Print the margins of the connectors on the bands, in dB."""
    answer = _ask("matrix", options, edition_of_files(packs))
    click.echo(answer if as_json else tables.matrix(result_of("matrix", answer), show_power))


@main.command(params=_options(OPERATIONS["cell"].request))
@click.option("--json", "as_json", is_flag=True, help="Print the whole answer as JSON")
@_packs
def cell(as_json: bool, packs: tuple[Path, ...], **options: Any) -> None:
    """Print one cell with everything it was computed from."""
    edition = edition_of_files(packs)
    answer = _ask("cell", options, edition)
    if as_json:
        click.echo(answer)
        return
    catalogue = result_of("catalogue", call("catalogue", b"{}", edition))
    with spoken_in(options["units"] or "metric"):
        click.echo(tables.cell(result_of("cell", answer), catalogue))


def _fields_of_question() -> list[click.Parameter]:
    """The options of a question; its text is an argument."""
    return [option for option in _options(OPERATIONS["question"].request) if option.name != "text"]


@main.command(params=_fields_of_question())
@click.argument("text", nargs=-1)
@click.option("--json", "as_json", is_flag=True, help="Print the whole answer as JSON")
@_packs
def question(text: tuple[str, ...], as_json: bool, packs: tuple[Path, ...], **options: Any) -> None:
    """Answer a question as it is typed, such as: so239 1kw ft8 10m swr 3."""
    answer = _ask("question", options | {"text": " ".join(text)}, edition_of_files(packs))
    click.echo(answer if as_json else tables.question(result_of("question", answer)))


@main.command(params=_options(OPERATIONS["snapshot"].request))
@_packs
def snapshot(packs: tuple[Path, ...], **options: Any) -> None:
    """Print the JSON of a matrix with every derivation, for a website: redirect it into a file."""
    click.echo(_ask("snapshot", options, edition_of_files(packs)))


@main.command()
@click.argument("operation", type=click.Choice(list(OPERATIONS)))
@click.argument("request", type=click.File("rb"), default="-")
@_packs
def ask(operation: str, request: BinaryIO, packs: tuple[Path, ...]) -> None:
    """Print the answer to a JSON request, read from a file or standard input."""
    click.echo(call(operation, request.read(), edition_of_files(packs)))


@main.group()
def pack() -> None:
    """Check packs, or print the JSON Schema they follow."""


@pack.command()
@click.argument("files", nargs=-1, required=True, type=click.Path(path_type=Path), metavar="FILE...")
def check(files: tuple[Path, ...]) -> None:
    """Check packs together, as they would be laid over the catalogue."""
    for one in edition_of(from_files(files)).tables.packs:
        click.echo(f"{one.name}, version {one.version}")
        for verb, entries in (("adds", one.added), ("changes", one.changed)):
            for entry in entries:
                click.echo(f"  {verb} {entry}")
        for sentence in one.taken:
            click.echo(f"  {sentence}")


@pack.command()
def schema() -> None:
    """Print the JSON Schema of a pack."""
    click.echo(msgspec.json.format(msgspec.json.encode(pack_schema())))


main.add_command(station)


@main.command()
def build() -> None:
    """Build dist/ from the sources of a clone; needs Node and npm for the bundles."""
    try:
        from jointwise.assemble.build import build as build_pages
    except ModuleNotFoundError as error:  # an installed package has no sources of the page
        raise Refused("There is nothing to build from here; allowed: in a clone of the project.") from error

    build_pages()


if __name__ == "__main__":
    main()
