"""Packs behind the server and the command line: where they come from, what they change, how they are refused."""

import json
import os
import sys
from codecs import BOM_UTF8
from importlib.metadata import EntryPoint
from pathlib import Path

import jsonschema
import msgspec
import pytest
from click.testing import CliRunner

from jointwise.backend import packs
from jointwise.backend.app import create_app
from jointwise.backend.cli import main
from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import MOST_PACK_BYTES, TABLES, Document
from jointwise.calc.operations import InputError

PACK = {
    "id": "club",
    "name": "Invented club",
    "version": "1",
    "sources": [{"id": "rules", "title": "Invented rules", "seen": "read"}],
    "modes": [{"id": "own", "name": "Own", "duty_factor": {"value": 0.3, "source": "rules", "kind": "memory"}}],
    "house_limits": [
        {"id": "low", "power_w": 50, "reason": "Old panel.", "source": "rules", "kind": "memory", "interfaces": ["bnc"]}
    ],
}
CELL = {"family": "bnc", "band": "20m", "power_w": 100}
ASKED = ["cell", "--family", "bnc", "--band", "20m"]


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with one pack and a file that is none."""
    (tmp_path / "club.json").write_text(json.dumps(PACK))
    (tmp_path / "notes.txt").write_text("no pack")
    return tmp_path


def run(*arguments):
    """The outcome of the command line with these arguments."""
    return CliRunner().invoke(main, [str(one) for one in arguments])


def test_a_server_takes_the_packs_of_its_folder(serve, folder):
    """A server with a folder of packs answers with them, by POST and GET, and hands them to the page."""
    client = serve(create_app({"packs_folder": str(folder)}))

    assert client.post("cell", CELL).json()["refused_by"] == "house"
    assert client.get("cell", "family=bnc&band=20m&mode=own").json()["refused_by"] == "house"
    assert [json.loads(one["text"]) for one in client.get("packs.json").json()] == [PACK]


def test_a_server_without_packs_has_none(client):
    """A server with no folder and no package of packs hands out an empty list."""
    assert client.get("packs.json").json() == []


def test_an_answer_made_with_other_packs_is_sent_anew(serve, client, folder):
    """An ETag from before the packs is met with the new answer, and no answer with packs is reused unasked."""
    before = client.get("cell", "family=bnc&band=20m")
    after = serve(create_app({"packs_folder": str(folder)})).get(
        "cell", "family=bnc&band=20m", If_None_Match=before.headers["ETag"]
    )

    assert after.status == 200
    assert "max-age=0" in after.headers["Cache-Control"]


def test_the_schema_is_served(client):
    """The JSON Schema at its address takes the pack, and the command line prints the same."""
    schema = client.get("pack-schema.json").json()

    jsonschema.validate(PACK, schema)
    assert json.loads(run("pack", "schema").stdout) == schema


BEYOND = [
    {"extra": 1},
    {"name": ""},
    {"house_limits": [PACK["house_limits"][0] | {"power_w": -1}]},
    {"modes": [PACK["modes"][0] | {"duty_factor": {"value": 2, "source": "rules", "kind": "memory"}}]},
    {"modes": [PACK["modes"][0] | {"duty_factor": {"value": 0.5, "source": "", "kind": "memory"}}]},
]


def test_the_schema_is_valid_and_takes_a_whole_family(client):
    """The JSON Schema (draft 2020-12, checked by jsonschema) is valid and takes any built-in family and cable."""
    schema = client.get("pack-schema.json").json()
    tables = catalogue()
    whole = {name: msgspec.to_builtins(list(getattr(tables, name).values())) for name in TABLES}

    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.validate(PACK | whole, schema)


@pytest.mark.parametrize("fields", BEYOND)
def test_the_schema_refuses_what_the_core_refuses(client, fields):
    """The JSON Schema knows the fields, the ranges of values, and that a source is needed."""
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(PACK | fields, client.get("pack-schema.json").json())
    with pytest.raises(InputError):
        edition_of([Document("", json.dumps(PACK | fields).encode())])


def test_a_package_publishes_packs(monkeypatch, tmp_path):
    """A function that an installed package names as an entry point of the group brings its packs to the server."""
    (tmp_path / "club_packs.py").write_text(f"def packs():\n    return [{json.dumps(PACK).encode()!r}]\n")
    (tmp_path / "club_packs-1.dist-info").mkdir()
    (tmp_path / "club_packs-1.dist-info" / "METADATA").write_text("Name: club-packs\nVersion: 1\n")
    (tmp_path / "club_packs-1.dist-info" / "entry_points.txt").write_text(f"[{packs.GROUP}]\nclub = club_packs:packs\n")
    monkeypatch.syspath_prepend(tmp_path)

    assert [(one.label, json.loads(one.text)) for one in packs.documents("")] == [("entry point club", PACK)]
    sys.modules.pop("club_packs")


@pytest.mark.parametrize("point", ["json:nothing", "no_such_module:packs", "os:getcwd", "os:cpu_count"])
def test_a_package_that_fails_is_named(monkeypatch, point):
    """A package whose function is missing, fails, or returns no packs is refused by its entry point's name."""
    found = [EntryPoint("club", point, packs.GROUP)]
    monkeypatch.setattr(packs, "entry_points", lambda group: found)

    with pytest.raises(InputError, match=r"^entry point club is "):
        packs.documents("")


BAD = [
    ("{", "broken"),
    (json.dumps(PACK | {"extra": 1}), "only the fields"),
    (" " * (MOST_PACK_BYTES + 1), f"up to {MOST_PACK_BYTES} bytes"),
]


@pytest.mark.parametrize(("text", "reason"), BAD)
def test_a_server_does_not_start_with_a_bad_pack(folder, text, reason):
    """A bad pack in the folder keeps the server from starting, its file named with the reason."""
    (folder / "worse.json").write_text(text)

    outcome = run("serve", "--packs-folder", folder)

    assert (outcome.exit_code, outcome.stderr.count("\n")) == (2, 1)
    assert outcome.stderr.startswith("Error: worse.json: ")
    assert reason in outcome.stderr


def test_what_else_lies_in_the_folder_is_left_out_and_named(serve, folder, caplog):
    """Hidden files, folders, broken links and pipes neither stop the server nor hold it up; the log names them.

    A mark of byte order, which some editors write first, belongs to the file and not to the pack.
    """
    (folder / ".club.json").write_text("{")
    (folder / "older.json").mkdir()
    (folder / "gone.json").symlink_to(folder / "nowhere")
    os.mkfifo(folder / "pipe.json")
    (folder / "club.json").write_bytes(BOM_UTF8 + json.dumps(PACK).encode())

    client = serve(create_app({"packs_folder": str(folder)}))

    assert [json.loads(one["text"]) for one in client.get("packs.json").json()] == [PACK]
    (logged,) = [record.getMessage() for record in caplog.records if record.name == packs.__name__]
    strays = ("'.club.json'", "'older.json'", "'gone.json'", "'pipe.json'", "'notes.txt'")
    assert all(name in logged for name in strays)
    assert "'club.json'" not in logged


def test_a_link_to_a_pack_is_a_pack(serve, folder, tmp_path_factory):
    """A link in the folder that leads to a file counts as that file."""
    elsewhere = tmp_path_factory.mktemp("elsewhere") / "club.json"
    (folder / "club.json").rename(elsewhere)
    (folder / "linked.json").symlink_to(elsewhere)

    assert len(serve(create_app({"packs_folder": str(folder)})).get("packs.json").json()) == 1


def test_a_missing_folder_is_refused(tmp_path):
    """A packs folder that is not there is refused by the setting's name."""
    with pytest.raises(InputError, match=r"^packs_folder is "):
        create_app({"packs_folder": str(tmp_path / "nowhere")})


def test_a_command_takes_packs(folder):
    """Each command that asks the core counts the packs it is given, and marks what comes from them."""
    pack = folder / "club.json"
    (folder / "cell.json").write_text(json.dumps(CELL))

    assert "Old panel." in run("matrix", "--families", "bnc", "--pack", pack).stdout
    assert "Old panel." in run(*ASKED, "--pack", pack).stdout
    assert "club.rules: Invented rules (from pack Invented club)" in run(*ASKED, "--mode", "own", "--pack", pack).stdout
    assert '"refused_by":"house"' in run("ask", "cell", folder / "cell.json", "--pack", pack).stdout


def test_what_stands_for_what_a_pack_leaves_out_is_told(folder):
    """Checking a pack of an earlier version tells what is no longer used of it, and what is taken instead."""
    bnc = msgspec.to_builtins(catalogue().interfaces["bnc"])
    retired = {"altitude_voltage_rms_v": {"value": 375, "source": "rules", "kind": "memory"}}
    family = {name: one for name, one in bnc.items() if name != "customary_cable"}
    own = family | retired | {"id": "own", "name": "Own"}
    pack = folder / "earlier.json"
    pack.write_text(json.dumps(PACK | {"modes": [], "house_limits": [], "interfaces": [own]}))

    assert run("pack", "check", pack).stdout.splitlines() == [
        "Invented club, version 1",
        "  adds interfaces/own",
        "  Own: altitude_voltage_rms_v is no longer used.",
        f"  Own: no customary cable is named; {catalogue().cables['rg_8x'].name} is taken.",
    ]


def test_a_pack_is_checked(folder):
    """Checking a pack tells what it adds; a bad one, or one given twice, is refused in one sentence."""
    pack = folder / "club.json"

    assert run("pack", "check", pack).stdout == "Invented club, version 1\n  adds modes/own\n  adds house_limits/low\n"
    for arguments, sentence in (
        ((pack, pack), 'Error: club.json: id is "club"; allowed: an id that no other pack has'),
        ((folder / "notes.txt",), "Error: notes.txt: pack is "),
        ((folder / "nothing",), "Error: pack is "),
    ):
        outcome = run("pack", "check", *arguments)
        assert (outcome.exit_code, outcome.stdout, outcome.stderr.count("\n")) == (2, "", 1)
        assert outcome.stderr.startswith(sentence)
