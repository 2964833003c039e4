"""One set of requests through all three doors: this Python, the HTTP interface, and the Python in a browser."""

import json
from contextlib import closing
from http import HTTPStatus
from http.client import HTTPConnection
from pathlib import Path
from typing import Any, NamedTuple
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Browser
from visits import DESKTOP, ROOT, START_MS

from jointwise.calc.operations import OPERATIONS, InputError, call

SAVED = ROOT / "dist" / "jointwise.html"
CASES = json.loads((ROOT / "frontend/payload/cases.json").read_text())

TOLERANCE = 1e-12
"""Of the larger of two numbers: elementwise maths differs by 6e-16 between machines, and a margin is a sum of some."""
MARGIN_TOLERANCE_DB = 1e-13
"""A margin near 0 dB is the logarithm of a ratio near 1, whose last digits may differ."""
ENOUGH = 200


class Asked(NamedTuple):
    """A request as bytes, so that all doors get the same."""

    operation: str
    body: bytes


class Refused(NamedTuple):
    """Why there is no answer, as each door must say it."""

    detail: str
    field: str
    value: str
    allowed: str


Answer = bytes | Refused

FIELDS = {
    "vswr": [1.0, 1, 1.01, 20.0, 0.5, 21, "a", None],
    "altitude_m": [0.0, 11000.0, 20000.0, 30000.0, -1, 30001],
    "ambient_temperature_c": [-60.0, 80.0, 81, -61],
    "solar_irradiance_w_per_m2": [1400.0, 1401],
    "added_resistance_ohm": [5.0, 6],
    "system_impedance_ohm": [25.0, 75.0, 150.0, 151],
    "return_loss_asked_db": [6.0, 40.0, 41],
    "cable_diameter_m": [0.005, 0.1, 1],
    "transmit_share": [0.001, 1.0, 0],
    "on_time_s": [3.0],
    "region": [1, 2, 3, 4, 1.0, True],
    "exposure": ["sheltered", "exposed", "immersed", "wet"],
    "vibration": ["vehicle", "severe", "x"],
    "condition": ["worn", "corroded", "new_old"],
    "power_is": ["net", "gross"],
    "cable": ["rg_58", "foam_10_mm", "wood"],
    "powers_w": [[0.0], [0.001], [1e5], [], [-1], [1_000_000], [5e-324]],
    "frequencies_hz": [[1e5], [5e10], [1e4], [144e6, 432e6]],
    "added_sealing": [True, False, 1],
    "matings_per_year": [0.0, 10000.0, -1],
    "service_life_years": [0.1, 100.0, 0],
    "nonsense": [1, {"deep": [None, "\N{SNOWMAN}"]}],
}
"""Values of a matrix request, one at a time: edges of each range, and what lies beyond."""

BROKEN = [
    b"",
    b"\xff",
    b"\xef\xbb\xbf{}",
    '{"vswr":0}'.encode("utf-16-le"),
    '{"vswr":0}'.encode("utf-32-be"),
    b"null",
    b'{"vswr":Infinity}',
    b'{"vswr":1e400}',
    b'{"vswr":' + b"9" * 400 + b"}",
    b'{"vswr":1,"vswr":2}',
    b'{"vswr":0,"vswr":2}',
    b'{"mode":"\\ud800"}',
    b'{"\\u0000":1}',
    b"[" * 51,
    b'{"powers_w":' + b"[" * 100_000,
]
"""Bodies that no page would send."""


def asked() -> list[Asked]:
    """Every operation with its edges, refusals included."""
    catalogue = json.loads(call("catalogue", b"{}"))
    families = [family["id"] for family in catalogue["families"]]
    choices = {
        "mode": [*(mode["id"] for mode in catalogue["modes"]), "semaphore"],
        "families": [*([family] for family in families), ["nothing"], []],
        "bands": [*([band["id"]] for band in catalogue["bands"]), ["11m"], []],
    }
    places = [("20m", 100.0, "ssb"), ("2m", 1500.0, "ft8"), ("23cm", 5.0, "cw"), ("3cm", 0.0, "fm")]
    cells: list[dict[str, Any]] = [
        {"family": family, "band": band, "power_w": power, "mode": mode}
        for family in families
        for band, power, mode in places
    ]
    spots = [{"family": family, "frequency_hz": 1e5 * 7**n, "vswr": 20.0} for n, family in enumerate(families[:7])]
    senseless = [{}, {"family": "n"}, {"family": "x", "band": "2m"}, {"family": "n", "band": "2m", "power_w": -1}]
    matrices = [{name: value} for name, values in (FIELDS | choices).items() for value in values]
    return [
        *(
            Asked(case["operation"], case["body"].encode())
            for case in CASES
            if case["operation"] in OPERATIONS and "packs" not in case
        ),
        *(Asked("cell", json.dumps(one).encode()) for one in cells + spots + senseless),
        *(Asked("matrix", json.dumps(one).encode()) for one in matrices),
        *(Asked(operation, body) for operation in OPERATIONS for body in BROKEN),
    ]


@pytest.fixture(scope="module")
def core() -> dict[Asked, Answer]:
    """What the core on this machine says to each request."""
    return {one: native(one) for one in asked()}


def native(one: Asked) -> Answer:
    """The answer of the core in this process."""
    try:
        return call(one.operation, one.body)
    except InputError as error:
        return Refused(str(error), error.field, error.value, error.allowed)


def served(connection: HTTPConnection, one: Asked) -> Answer:
    """The answer over HTTP."""
    connection.request("POST", f"/api/v1/{one.operation}", one.body, {"Content-Type": "application/json"})
    response = connection.getresponse()
    body = response.read()
    if response.status == HTTPStatus.OK:
        return body
    assert (response.status, response.headers["Content-Type"]) == (HTTPStatus.BAD_REQUEST, "application/problem+json")
    problem = json.loads(body)
    return Refused(*(problem[name] for name in Refused._fields))


ASK_WORKER = """async (all) => {
  // from here on the page's own transport hears nothing
  const [worker] = workers;
  const answers = [];
  for (const [operation, bytes] of all) {
    const reply = new Promise((resolve) => {
      worker.onmessage = ({data}) => data.kind !== 'taken' && resolve(data);
    });
    worker.postMessage({kind: 'ask', number: 0, operation, body: Uint8Array.from(bytes)});
    const {body, refusal} = await reply;
    answers.push(refusal ?? new TextDecoder().decode(body));
  }
  return answers;
}"""


def in_browser(browser: Browser, file: Path, requests: list[Asked]) -> list[Answer]:
    """What the worker of the saved page says to each request."""
    context = browser.new_context(**DESKTOP, offline=True)
    page = context.new_page()
    page.add_init_script(
        "window.workers = [];"
        "window.Worker = class extends Worker { constructor(...given) { super(...given); workers.push(this); } };"
    )
    page.goto(file.as_uri())
    page.locator("jw-progress[status=complete]").wait_for(state="attached", timeout=START_MS)
    found = page.evaluate(ASK_WORKER, [[one.operation, list(one.body)] for one in requests])
    context.close()
    return [one.encode() if isinstance(one, str) else Refused(*map(one.get, Refused._fields)) for one in found]


def difference(one: Any, other: Any, path: str = "") -> str:
    """The first place where two results differ in structure, text, or in a number by more than the tolerance."""
    if isinstance(one, dict) and isinstance(other, dict) and list(one) == list(other):
        return next((found for key in one if (found := difference(one[key], other[key], f"{path}.{key}"))), "")
    if isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        pairs = enumerate(zip(one, other, strict=True))
        return next((found for i, (a, b) in pairs if (found := difference(a, b, f"{path}[{i}]"))), "")
    if (
        isinstance(one, float)
        and isinstance(other, float)
        and abs(one - other) <= max(TOLERANCE * max(abs(one), abs(other)), MARGIN_TOLERANCE_DB * ("margin" in path))
    ):
        return ""
    return "" if (type(one), one) == (type(other), other) else f"{path}: {one!r} and {other!r}"


def disagreement(one: Answer, other: Answer) -> str:
    """What two answers say differently; refusals agree word for word."""
    if isinstance(one, Refused) or isinstance(other, Refused):
        return "" if one == other else f"{one!r:.400} and {other!r:.400}"
    return difference(json.loads(one), json.loads(other))


def test_there_are_requests_enough(core: dict[Asked, Answer]) -> None:
    """The set has at least two hundred different requests, answers and refusals of every operation among them."""
    kinds = {(one.operation, isinstance(answer, Refused)) for one, answer in core.items()}

    assert len(core) >= ENOUGH
    assert kinds == {(operation, refused) for operation in OPERATIONS for refused in (True, False)}


def test_http_gives_the_cores_very_bytes(core: dict[Asked, Answer], address: str) -> None:
    """The server's answers are the core's byte for byte, and its problem details the core's refusals."""
    with closing(HTTPConnection(urlsplit(address).netloc)) as connection:
        assert [one for one, answer in core.items() if served(connection, one) != answer] == []


def test_the_browser_gives_the_same_answers(core: dict[Asked, Answer], browser: Browser) -> None:
    """The saved page's core gives the same structure, text and refusals, and the same numbers to 1e-12."""
    found = in_browser(browser, SAVED, list(core))

    differing = {
        one: wrong for one, other in zip(core, found, strict=True) if (wrong := disagreement(core[one], other))
    }
    assert differing == {}
