"""The station file: its published schema, what is read of a file, and what the command line computes from it."""

import json
from pathlib import Path

import pytest
from click.testing import CliRunner
from jsonschema import Draft202012Validator

from jointwise.backend.cli import main
from jointwise.backend.station_file.documents import station_schema
from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import Document
from jointwise.calc.operations import call

COMMITTED = Path(__file__).parents[2] / "backend/station_file/station.schema.json"

PACK = json.dumps(
    {
        "id": "club",
        "name": "Invented club",
        "version": "1",
        "sources": [{"id": "sheet", "title": "Invented sheet", "seen": "read"}],
        "modes": [
            {
                "id": "club_mode",
                "name": "Club mode",
                "duty_factor": {"value": 0.3, "source": "sheet", "kind": "memory"},
                "on_time_s": {"value": 10, "source": "sheet", "kind": "memory"},
                "off_time_s": {"value": 20, "source": "sheet", "kind": "memory"},
            }
        ],
    }
)
ELEMENTS = [
    {"kind": "joint", "family": "uhf"},
    {"kind": "cable", "cable": "rg_213", "length_m": 28},
    {"kind": "joint", "family": "n", "name": "Feed \u202epoint"},
]
PORTS = [
    {"name": "Transceiver", "family": "uhf", "gender": "jack", "highest_frequency_hz": 54e6},
    {"name": "Dummy load", "family": "n", "gender": "jack", "highest_frequency_hz": 54e6},
]
SWEEP = "\n".join(["# MHz S RI R 50", *(f"{2 * at} 0.01 0.0{at % 9}" for at in range(1, 60))])
KEPT = {
    "station": {
        "version": 1,
        "name": "Hill hut",
        "units": "us",
        "settings": {"power_w": 100, "mode": "ft8", "bands": ["20m", "2m"], "vswr": 3, "transmit_share": None},
        "rigs": [{"name": "Old rig"}, {"name": "Rig", "power_w": 100, "behaviour": "valve_amplifier"}],
        "rig": 1,
        "antennas": [{"name": "Beam", "load": {"kind": "vswr", "vswr": 2}}],
        "antenna": 0,
        "gear": PORTS,
        "cables": ["rg_213"],
    },
    "lines": {
        "lines": [
            {"name": "Garden", "request": {"elements": ELEMENTS}},
            {
                "name": "Own <antenna>",
                "request": {"elements": ELEMENTS, "band": "2m", "load": {"kind": "dummy"}, "power_w": 5},
            },
        ],
        "current": 1,
    },
    "kit": {"ports": PORTS, "ticked": ["buy n jack / uhf plug"], "goal": "best_joints"},
    "packs": {"own": [{"id": "club", "name": "Invented club", "text": PACK, "on": False, "refused": ""}], "server": []},
    "sweeps": [
        {
            "date": "2026-11-20",
            "line": "Garden",
            "ports": 1,
            "name": "garden.s1p",
            "text": SWEEP,
            "verdict": "All sound.",
            "joints": [{"element": 0, "name": "UHF", "excess": None}],
            "resistance_ohm": None,
        }
    ],
}
KEPT |= {
    "joints": {
        "joints": [
            {
                "code": "0A1B2C3D",
                "line": "Garden",
                "name": "UHF",
                "joins": "RG-213",
                "months": 24,
                "entries": [{"at": "2026-11-20T12:00:00.000Z", "field": "state", "value": "good"}],
            }
        ]
    },
    "checklist": {"ticked": ["spare/N"]},
}
FILE = {"format": "jointwise station", "version": 1, "name": "Hut \u2066 & co", "date": "2026-11-29", "kept": KEPT}

BROKEN = {  # path in the file -> value that may not stand there, and words of the sentence
    "kept.station.rigs.1.power_w": (-1, "Station, transmitters, second entry, greatest power"),
    "kept.station.rig": (60, "Station, place of the transmitter in use: 60; allowed: whole, −1 to 59."),
    "kept.station.units": ("miles", '"miles"; allowed: one of metric, us'),
    "kept.station.antennas.0.load": ({"kind": "vswr", "vswr": 0.5}, "0.5; allowed: 1 to 100"),
    "kept.station.gear.0.gender": (
        "both",
        'Station, ports of the gear, first entry, plug or jack: "both"; allowed: one of jack, plug.',
    ),
    "kept.station.settings.vswr": ("high", '"high"; allowed: a number'),
    "kept.station.settings.colour": ("red", "only the fields"),
    "kept.lines.lines": ([], "Lines, lines: []; allowed: a list of 1 to 48"),
    "kept.lines.lines.0.name": ("x" * 61, "at most 60 characters"),
    "kept.lines.lines.0.request.elements.1.length_m": (0, "length of the run: 0 m; allowed: 0.01 to 10000 m"),
    "kept.lines.lines.0.request.elements.1.kind": ("rope", "one of cable, joint"),
    "kept.lines.lines.0.request.explain": (1, "only the fields"),
    "kept.kit.ports.0.highest_frequency_hz": (
        1,
        "Kit, the ports of your gear, first entry, highest frequency this gear is used at: 1 Hz; allowed: 100 kHz to",
    ),
    "kept.kit.pairs": ([[0, 60]], "allowed: whole, 0 to 59"),
    "kept.packs.own.0.text": (5, "Packs, own packs, first entry, text of the pack's file: 5; allowed: a text."),
    "kept.sweeps.0.date": ("yesterday", '"yesterday"; allowed: a day such as'),
    "kept.joints.joints.0.code": ("0a", 'Joint book, joints, first entry, code: "0a"; allowed: eight digits and'),
    "kept.joints.joints.0.entries.0.at": ("today", "allowed: a moment such as 2026-11-29T12:00:00.000Z"),
    "kept.joints.joints.0.entries.0.field": ("colour", "one of belongs_to, fitted_by"),
    "kept.checklist.ticked": ([1], "Checklist, ticks, first entry: 1; allowed: a text of at most 400 characters."),
    "kept.sweeps.0.ports": (3, "Sweeps, first entry, ports of the file: 3; allowed: whole, 1 to 2"),
}
REFUSED = {  # the same where nothing of the file is read
    "format": ("other", 'format is "other"; allowed: "jointwise station".'),
    "version": (2, "version is 2; allowed: 1; a newer file asks for a newer Jointwise."),
    "name": (None, "name is null; allowed: a text of at most 60 characters."),
    "date": ("29 November 2026", "date is"),
    "kept": ([], "kept is []; allowed: a JSON object."),
}


@pytest.fixture
def station(tmp_path):
    """Runs `jointwise station` with a file of some content and further arguments."""

    def run(*arguments, content=FILE):
        file = tmp_path / "hut.json"
        text = content if isinstance(content, str) else json.dumps(content)
        file.write_text(text, "utf-8")
        return CliRunner().invoke(main, ["station", str(file), *arguments])

    return run


def changed(path, value, content=FILE):
    """The file with another value at a path."""
    copy = json.loads(json.dumps(content))
    *way, last = [int(part) if part.isdecimal() else part for part in path.split(".")]
    place = copy
    for part in way:
        place = place[part]
    place[last] = value
    return copy


def is_valid(content):
    """Whether a file is as the schema says."""
    return Draft202012Validator(station_schema()).is_valid(content)


def asked(operation, edition=None, **request):
    """The core's answer as the command line prints it."""
    return call(operation, json.dumps(request).encode(), edition).decode() + "\n"


def test_the_schema_is_published(client):
    """It is a schema of draft 2020-12: printed, served and committed alike."""
    schema = station_schema()

    Draft202012Validator.check_schema(schema)
    assert json.loads(CliRunner().invoke(main, ["station", "--schema"]).stdout) == schema
    assert client.get("station-schema.json").json() == schema
    assert json.loads(COMMITTED.read_text()) == schema


def test_what_a_later_version_keeps_beside_is_valid():
    """A file with the matrix for a website, and with a document not known yet, is as the schema says."""
    assert is_valid(FILE)
    assert is_valid(FILE | {"snapshot": {"format": "jointwise snapshot 2"}})
    assert is_valid(FILE | {"kept": KEPT | {"book": [1]}})
    assert is_valid(FILE | {"kept": {}})


@pytest.mark.parametrize("path", BROKEN)
def test_a_document_that_is_broken_is_left_out_with_its_reason(station, path):
    """The schema has it fail too; one sentence says what is wrong by label, value and range, and the rest is listed."""
    value, words = BROKEN[path]
    content = changed(path, value)
    broken = path.split(".")[1]

    listed = station(content=content)

    assert not is_valid(content)
    assert listed.exit_code == 0
    read = json.loads(station("--json", content=content).stdout)
    assert len(read["unread"]) == 1
    assert words in read["unread"][0]
    assert read["unread"][0] in listed.stdout
    whole = json.loads(station("--json").stdout)
    shown = {"checklist": "ticked"}
    assert [key for key in KEPT if read[shown.get(key, key)] != whole[shown.get(key, key)]] == [broken]


@pytest.mark.parametrize("path", REFUSED)
def test_what_is_no_such_file_is_refused(station, path):
    """A file of another kind, of a newer version or without a part it must have is refused in a sentence."""
    value, words = REFUSED[path]
    content = changed(path, value)

    refused = station(content=content)

    assert not is_valid(content)
    assert refused.exit_code == 2
    assert words in refused.stderr


@pytest.mark.parametrize(
    "text",
    ["nonsense", "[" * 100_000, "<p>a page</p>", "[]", '<script type="application/json" id="carried">null</script>'],
)
def test_any_other_text_is_refused(station, text):
    """What holds no station is refused in a sentence."""
    refused = station(content=text)

    assert refused.exit_code == 2
    assert refused.stderr.startswith("Error: ")
    assert refused.stderr.count("\n") == 1


def test_a_saved_page_is_read_like_a_file(station):
    """The content of a saved page is what a station file holds, whatever markup is in its names."""
    inert = json.dumps(changed("name", "</script><!-- & co")).replace("<", "\\u003c")
    page = f'<!doctype html>\n<p>…<script type="application/json" id="carried">{inert}</script><script>1</script>'

    assert json.loads(station("--json", content=page).stdout)["name"] == "</script><!-- & co"


def test_the_listing_names_what_is_in_the_file(station):
    """Name, date, lines, kit, packs and sweeps, with nothing that would steer a terminal."""
    printed = station().stdout

    for words in (
        "Hut \\u2066 & co, 2026-11-29",
        "Station: Hill hut",
        "  1 Garden, parts: 3",
        "  2 Own <antenna>, parts: 3",
        "Kit: ports 2, adapters owned 0",
        "  1 Invented club, turned off",
        "  1 2026-11-20 Garden, garden.s1p: All sound.",
        "  1 0A1B2C3D Garden, UHF, entries: 1",
        "Checklist: ticked 1",
    ):
        assert f"{words}\n" in printed


SITE = {"power_w": 100, "mode": "ft8", "units": "us"}
LINE = SITE | {
    "elements": ELEMENTS,
    "load": {"kind": "vswr", "vswr": 3},
    "transmitter": {"behaviour": "valve_amplifier"},
    "band": "20m",
}
ANSWERS = {  # the question -> operation, and the request it must be
    ("matrix",): ("matrix", {"mode": "ft8", "vswr": 3, "units": "us", "bands": ["20m", "2m"], "powers_w": [100]}),
    ("question", "so239", "10m"): ("question", SITE | {"vswr": 3, "text": "so239 10m"}),
    ("line", "Garden"): ("line", LINE),
    ("line", "1"): ("line", LINE),
    ("line", "Own <antenna>"): ("line", LINE | {"band": "2m", "load": {"kind": "dummy"}, "power_w": 5}),
    ("fitout", "Garden"): (
        "fitout",
        {name: value for name, value in LINE.items() if name not in ("load", "transmitter")} | {"station": "Hill hut"},
    ),
    ("kit",): ("kit", {"mode": "ft8", "vswr": 3, "units": "us", "ports": PORTS, "goal": "best_joints"}),
    ("sweep", "garden.s1p"): (
        "sweep",
        {
            "mode": "ft8",
            "units": "us",
            "elements": ELEMENTS,
            "load": {"kind": "end", "what": "short"},
            "touchstone": SWEEP,
        },
    ),
    ("sweep", "1", "--end", "antenna"): (
        "sweep",
        {"mode": "ft8", "units": "us", "elements": ELEMENTS, "load": LINE["load"], "touchstone": SWEEP},
    ),
    ("snapshot",): (
        "snapshot",
        {
            "mode": "ft8",
            "vswr": 3,
            "units": "us",
            "bands": ["20m", "2m"],
            "powers_w": list(catalogue().default_powers_w),
            "power_w": 100,
        },
    ),
}


@pytest.mark.parametrize("question", ANSWERS, ids=" ".join)
def test_a_stored_question_is_answered_by_the_core(station, question):
    """With --json it is the core's own answer to the station's request; in words it holds that answer's sentence."""
    operation, request = ANSWERS[question]

    answer = asked(operation, **request)
    if operation == "snapshot":
        named = {"station": {"name": FILE["name"], "date": FILE["date"]}}
        whose = json.dumps(named, ensure_ascii=False, separators=(",", ":"))
        answer = f"{whose[:-1]},{answer[1:]}"
    assert station(*question, "--json").stdout == answer
    words = station(*question).stdout
    verdict = json.loads(answer).get("verdict")
    if isinstance(verdict, str):
        assert verdict in words.replace("\\u202e", "\u202e")
    assert "\u202e" not in words or question == ("snapshot",)


def test_the_packs_of_the_file_count(station):
    """A mode of a pack is known while the pack is on, and refused by its label when it is off."""
    of_pack = changed("kept.station.settings.mode", "club_mode")
    on = changed("kept.packs.own.0.on", True, of_pack)
    edition = edition_of([Document("Invented club", PACK.encode())])
    request = {"mode": "club_mode", "vswr": 3, "units": "us", "bands": ["20m", "2m"], "powers_w": [100]}

    assert station("matrix", "--json", content=on).stdout == asked("matrix", edition, **request)
    refused = station("matrix", content=of_pack)
    assert refused.exit_code == 2
    assert 'Emission mode: "club_mode"; allowed: one of' in refused.stderr


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["line", "Nowhere"], 'Line is "Nowhere"; allowed: one of 1 "Garden", 2 "Own <antenna>".'),
        (["sweep", "9"], 'Sweep is "9"; allowed: one of 1 "garden.s1p".'),
        (["line"], "line is followed by a line"),
        (["kit", "9"], "kit is followed by nothing"),
    ],
)
def test_what_the_file_has_not_is_refused(station, arguments, words):
    """A name that is not in the file is refused with those that are."""
    refused = station(*arguments)

    assert refused.exit_code == 2
    assert words in refused.stderr


def test_a_number_out_of_range_is_refused_by_its_label(station):
    """A setting may be out of range as in a form; the core's refusal names label, value and range."""
    refused = station("matrix", content=changed("kept.station.settings.vswr", 0.5))

    assert refused.exit_code == 2
    assert "SWR on the line at the joint: 0.5; allowed: 1 to 20." in refused.stderr
