"""The command line: what it prints, and how it refuses."""

import json
import re
import subprocess
import sys
from urllib.error import HTTPError
from urllib.request import Request, urlopen

import pytest
from click.testing import CliRunner

from jointwise.backend.cli import main
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.matrix.snapshot.requests import SnapshotRequest
from jointwise.calc.operations import call

REFUSED = [
    (["cell", "--family", "nothing", "--band", "2m"], 'Connector: "nothing"; allowed: one of uhf'),
    (["cell", "--family", "n", "--band", "2m", "--power-w", "-1"], "Peak envelope power: −1 W; allowed: 0 to 100 kW."),
    (
        ["cell", "--family", "n", "--band", "2m", "--vswr", "0.5"],
        "SWR on the line at the joint: 0.5; allowed: 1 to",
    ),
    (
        ["cell", "--family", "n", "--band", "2m", "--vswr", "nan"],
        "SWR on the line at the joint: NaN; allowed: 1 to",
    ),
    (
        ["cell", "--family", "n", "--frequency-hz", "0"],
        "Spot frequency: 0 Hz; allowed: 100 kHz to 50 GHz",
    ),
    (["cell", "--band", "2m"], "Connector: nothing; allowed: a value"),
    (["question", "n 2m", "--vswr", "0.5"], "SWR on the line at the joint: 0.5; allowed: 1 to"),
    (["question", "x" * 301], "The question as typed: "),
    (["snapshot", "--families", "n", "--power-w", "-1"], "Peak envelope power: −1 W"),
    (["serve", "--embed-origins", "club.example"], "embed_origins[0] is"),
    (["matrix", "--powers-w", "5,many"], 'Power levels, second entry: "many"; allowed: 0 to 100 kW.'),
    (["matrix", "--powers-w", "-5"], "Power levels, first entry: −5 W; allowed: 0 to 100 kW."),
    (["matrix", "--on-time-s", "3"], "Pause between two overs: nothing; allowed: a time in seconds"),
    (["matrix", "--region", "7"], "ITU Region whose band edges count: 7; allowed: whole, 1 to 3."),
    (["matrix", "--families", "n,nothing"], "Connectors, second entry: "),
    (["matrix", "--powers-w", "5,50", "--show-power", "75"], "show_power is"),
    (["serve", "--port", "65536"], "port is 65536"),
]


def run(*arguments):
    """The outcome of the command line with these arguments."""
    return CliRunner().invoke(main, arguments)


@pytest.mark.parametrize(
    ("command", "struct"), [("matrix", MatrixRequest), ("cell", CellRequest), ("snapshot", SnapshotRequest)]
)
def test_every_field_is_an_option(command, struct):
    """Each field of the request is an option of the same name, explained with range and unit."""
    help_ = " ".join(run(command, "--help").stdout.split())

    assert all(f"--{name.replace('_', '-')} " in help_ for name in struct.__struct_fields__)
    assert "--altitude-m NUMBER Height above sea level; from 0 to 30000 m; default 0" in help_


def test_a_file_is_asked_as_it_stands(tmp_path):
    """A line in a JSON file is answered with the core's own bytes, and a bad one refused in its words."""
    request = tmp_path / "line.json"
    request.write_text(
        '{"elements": [{"kind": "joint", "family": "n"}], "load": {"kind": "vswr", "vswr": 2}, "band": "2m"}'
    )

    assert run("ask", "line", str(request)).stdout.encode() == call("line", request.read_bytes()) + b"\n"
    request.write_text("{}")
    assert "elements is null" in run("ask", "line", str(request)).stderr


def test_matrix_prints_the_margins_of_the_core():
    """The table holds one row per family with the very margins that the core computes."""
    request = {"families": ["n", "sma"], "bands": ["20m", "2m"], "powers_w": [0, 100]}
    expected = json.loads(call("matrix", json.dumps(request).encode()))

    printed = run("matrix", "--families", "n,sma", "--bands", "20m,2m", "--powers-w", "0,100").stdout

    for family, row in zip(expected["families"], expected["margin_db"], strict=True):
        line = next(line for line in printed.splitlines() if line.startswith(f"{family['name']} "))
        assert all(f"{cell[1]:+.1f}" in line for cell in row)


def test_snapshot_prints_the_answer_of_the_core():
    """A snapshot is printed as the core makes it, ready for a file."""
    printed = run("snapshot", "--families", "n", "--bands", "2m", "--mode", "ft8").stdout

    assert printed.encode() == call("snapshot", b'{"families": ["n"], "bands": ["2m"], "mode": "ft8"}') + b"\n"


def test_refused_family_is_printed_with_its_reason():
    """Above the TE11 cutoff a cell is refused and the reason stands below."""
    printed = run("matrix", "--families", "n", "--bands", "", "--frequencies-hz", "4.9e10").stdout

    assert "TE11" in printed
    assert any(line.endswith(" --") for line in printed.splitlines())


def test_json_is_the_answer_of_the_core():
    """With --json the command prints what the core answers, and nothing else."""
    printed = run("cell", "--family", "n", "--band", "2m", "--added-sealing", "--json").stdout

    assert printed.encode().rstrip(b"\n") == call("cell", b'{"family": "n", "band": "2m", "added_sealing": true}')


def test_cell_prints_every_step_with_its_sources():
    """The text of a cell holds its verdict, and each step's result and each source that went into it."""
    expected = json.loads(call("cell", b'{"family": "n", "band": "2m"}'))

    printed = run("cell", "--family", "n", "--band", "2m").stdout

    assert expected["verdict"] in printed
    steps = [step for limit in expected["limits"] for step in limit["steps"]]
    assert steps
    for step in steps:
        result = step["result"]
        assert f"= {result['symbol']} = {result['value']:.6g}" in printed
        sourced = [value for value in step["inputs"] if value["source"]]
        assert all(f"{value['meaning']} [{value['source']}" in printed for value in sourced)


def test_cell_speaks_in_us_units_and_says_that_its_working_is_in_si():
    """With --units us what is said is in °F and inches, and one line says that the steps are not."""
    printed = run("cell", "--family", "uhf", "--band", "20m", "--units", "us").output
    answer, working = printed.split("The working that follows is in SI units.")

    assert re.search(r"centre contact at 1\d\d °F, allowed \d+ °F", answer)
    assert "Made for cables of 0.195 to 0.406 in" in answer
    assert "°C" in working
    assert "SI units" not in run("cell", "--family", "uhf", "--band", "20m").output


def test_a_question_is_answered_in_plain_lines():
    """Sentence, verdict, largest safe power, what limits, what would be better, and what was not understood."""
    expected = json.loads(call("question", b'{"text": "so239 1kw ft8 10m swr 3 zorp"}'))

    printed = run("question", "so239 1kw ft8 10m", "swr", "3", "zorp").stdout.splitlines()

    assert printed[:3] == [expected["sentence"], expected["verdict"]["headline"], expected["verdict"]["sentence"]]
    assert printed[3] == "Largest safe power: 1 kW"
    assert f"  {expected['limited_by']['sentence']}" in printed
    for change in expected["better"]:
        assert f"  {change['title']}. {change['sentence']}" in printed
    assert "  “zorp” is not understood." in printed


def test_what_a_question_lacks_is_printed():
    """What can be read in two ways is asked back with both, and nothing is answered."""
    printed = run("question", "n 2m 1,500 W").stdout

    assert "“1,500 W”: is that 1500 W or 1.5 W?" in printed
    assert "Say the power with its unit" in printed
    assert "Largest safe power" not in printed


def test_a_question_takes_fields_and_gives_json():
    """Options fill in what the text leaves out; with --json the answer is the core's."""
    printed = run("question", "n 2m", "--mode", "fm", "--power-w", "50", "--json").stdout

    assert printed.encode().rstrip(b"\n") == call("question", b'{"text": "n 2m", "mode": "fm", "power_w": 50}')


@pytest.mark.parametrize(("arguments", "sentence"), REFUSED)
def test_bad_input_gets_one_sentence(arguments, sentence):
    """Bad input prints one sentence to the error stream, nothing else, and exits with 2."""
    outcome = run(*arguments)

    assert (outcome.exit_code, outcome.stdout) == (2, "")
    assert outcome.stderr.startswith(f"Error: {sentence}")
    assert outcome.stderr.count("\n") == 1


def test_undecodable_argument_is_refused_without_a_traceback():
    """Bytes that are no text on the command line are refused like any other bad value."""
    command = [sys.executable, "-m", "jointwise.backend.cli", "cell", "--family", b"\xff", "--band", "2m"]
    outcome = subprocess.run(command, capture_output=True, text=True, check=False)

    assert outcome.returncode == 2
    assert outcome.stderr.startswith("Error: Connector: ")


def test_serve_prints_its_address_and_answers_there():
    """The serve command prints the address it listens on, and answers there."""
    command = [sys.executable, "-m", "jointwise.backend.cli", "serve", "--port", "0"]
    with subprocess.Popen(command, stderr=subprocess.PIPE, text=True) as server:
        address = next(word for word in server.stderr.readline().split() if word.startswith("http"))
        with urlopen(f"{address}api/v1/health") as answer:
            status = json.load(answer)["status"]
        server.terminate()

    assert status == "ok"


def status(address, visitor):
    """The status of an answer to a request that a proxy sends on for a visitor."""
    try:
        with urlopen(Request(address, headers={"X-Forwarded-For": visitor})) as answer:
            return answer.status
    except HTTPError as error:
        with error:
            return error.code


@pytest.mark.parametrize(("proxies", "second"), [("1", 200), ("0", 429)])
def test_visitors_behind_a_proxy_are_told_apart(proxies, second):
    """The rate counts the visitor that a trusted proxy names; without one the header of a visitor changes nothing."""
    command = [sys.executable, "-m", "jointwise.backend.cli", "serve", "--port", "0"]
    with subprocess.Popen(
        [*command, "--requests-per-minute", "1", "--proxies", proxies], stderr=subprocess.PIPE, text=True
    ) as server:
        address = re.search(r"http://[\d.:]+/", server.stderr.readline())[0]
        found = [status(f"{address}api/v1/cell?family=n&band=2m", f"192.0.2.{visitor}") for visitor in (1, 2, 1)]
        server.terminate()

    assert found == [200, second, 429]


def test_taken_port_is_said(client):
    """A port that another server holds is named in one sentence."""
    command = [sys.executable, "-m", "jointwise.backend.cli", "serve", "--port", str(client.port)]
    outcome = subprocess.run(command, capture_output=True, text=True, check=False)

    assert outcome.returncode == 1
    assert outcome.stderr.startswith(f"Error: Can't listen on 127.0.0.1 port {client.port}: ")


def test_a_fault_of_ours_is_one_sentence(monkeypatch):
    """A command that fails inside prints a sentence and exit code 70, never a traceback."""
    monkeypatch.setattr("jointwise.backend.asking.call", lambda name, body, edition: 1 / 0)

    result = CliRunner().invoke(main, ["matrix"])

    assert result.exit_code == 70
    assert result.stderr.startswith("Error: Jointwise failed")
    assert "Traceback" not in result.output
