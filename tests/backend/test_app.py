"""The routes: answers, caching, the page's files and the headers of every response."""

import gzip
import json
from pathlib import Path

import msgspec
import pytest
from examples import EXAMPLES

from jointwise.backend.app import HEADERS, create_app
from jointwise.backend.settings import Settings
from jointwise.calc.operations import OPERATIONS

CELL = {"family": "n", "band": "2m", "power_w": 100}
LINE = {"elements": [{"kind": "joint", "family": "n"}], "load": {"kind": "vswr", "vswr": 1.5}, "band": "2m"}

SAME = [
    ("catalogue", "", {}),
    ("cell", "family=n&band=2m&power_w=100", CELL),
    ("cell", "family=n&frequency_hz=1.44e8&band=null", {"family": "n", "frequency_hz": 1.44e8}),
    ("cell", "family=n&band=2m&added_sealing=true", {"family": "n", "band": "2m", "added_sealing": True}),
    ("matrix", "", {}),
    ("snapshot", "families=n&bands=2m&power_w=5", {"families": ["n"], "bands": ["2m"], "power_w": 5}),
    ("matrix", "families=n,sma&powers_w=0,100", {"families": ["n", "sma"], "powers_w": [0, 100]}),
    ("matrix", "families=n&families=sma&vswr=3", {"families": ["n", "sma"], "vswr": 3}),
    ("matrix", "bands=&frequencies_hz=1e9&region=2", {"bands": [], "frequencies_hz": [1e9], "region": 2}),
]

EVERY_KIND = [
    ("GET", "/", 200),
    ("GET", "/missing.js", 404),
    ("GET", "/api/v1/catalogue", 200),
    ("HEAD", "/api/v1/catalogue", 200),
    ("OPTIONS", "/api/v1/catalogue", 200),
    ("GET", "/api/v1/cell", 400),
    ("GET", "/api/v1/nothing", 404),
    ("PUT", "/api/v1/matrix", 405),
    ("POST", "/api/v1/matrix", 415),
    ("GET", "/api/v1/openapi.json", 200),
    ("GET", "/api/v1/health", 200),
    ("GET", "/fails", 500),
]


@pytest.fixture
def page(tmp_path: Path) -> Path:
    """A folder with a page of two files, and a file beside it that is none of the page's."""
    folder = tmp_path / "site"
    folder.mkdir()
    (folder / "index.html").write_text("<!doctype html><title>page</title>")
    (folder / "page.js").write_text("export {};")
    (tmp_path / "private.txt").write_text("private")
    return folder


@pytest.mark.parametrize("operation", OPERATIONS)
def test_operation_answers_with_its_result(client, operation):
    """Every operation answers a POST with JSON that reads as its declared result."""
    answer = client.post(operation, EXAMPLES[operation])

    assert (answer.status, answer.headers["Content-Type"]) == (200, "application/json")
    msgspec.json.decode(answer.body, type=OPERATIONS[operation].result)


@pytest.mark.parametrize(("operation", "query", "request_"), SAME)
def test_query_and_body_give_the_same_bytes(client, operation, query, request_):
    """A request by query string is answered with the very bytes of the same request as JSON."""
    by_query, by_body = client.get(operation, query), client.post(operation, request_)

    assert by_query.status == by_body.status == 200
    assert by_query.body == by_body.body


def test_unchanged_answer_is_not_sent_again(client):
    """An answer's ETag in If-None-Match is met with 304, the same ETag and no body."""
    first = client.get("cell", "family=n&band=2m")

    again = client.get("cell", "family=n&band=2m", If_None_Match=first.headers["ETag"])

    assert (again.status, again.body) == (304, b"")
    assert again.headers["ETag"] == first.headers["ETag"]
    assert not first.headers["ETag"].startswith("W/")


@pytest.mark.parametrize(("accepts", "packed"), [("gzip, br", True), ("identity", False), ("gzip;q=0", False)])
def test_an_answer_is_packed_for_those_who_can_unpack_it(client, accepts, packed):
    """An answer by query is gzip where that is accepted, with a tag of its own, and holds the same bytes."""
    plain = client.get("cell", "family=n&band=2m")

    answer = client.get("cell", "family=n&band=2m", Accept_Encoding=accepts)

    assert answer.headers["Vary"] == "Accept-Encoding, Origin"
    assert (answer.headers["Content-Encoding"] == "gzip") is packed
    assert (gzip.decompress(answer.body) if packed else answer.body) == plain.body
    assert (answer.headers["ETag"] != plain.headers["ETag"]) is packed


def test_changed_answer_is_sent(client):
    """The ETag of one answer does not stand for another."""
    first = client.get("cell", "family=n&band=2m")

    other = client.get("cell", "family=n&band=2m&vswr=2", If_None_Match=first.headers["ETag"])

    assert other.status == 200
    assert other.headers["ETag"] != first.headers["ETag"]


def test_answers_to_get_may_be_kept(client):
    """A GET answer may be reused for the time that the settings name; a POST answer may not."""
    by_query, by_body = client.get("catalogue"), client.post("catalogue", {})

    assert by_query.headers["Cache-Control"] == f"public, max-age={Settings().cache_seconds}"
    assert by_body.headers["Cache-Control"] == "no-store"


def test_health_names_the_version(client):
    """The health address answers with the status and a version."""
    answer = client.get("health")

    assert answer.json()["status"] == "ok"
    assert answer.json()["version"][0].isdigit()


def test_page_is_served_from_its_folder(serve, page):
    """The start page and the files beside it are served with their media types."""
    client = serve(create_app({"page_folder": str(page)}))

    start, script = client("GET", "/"), client("GET", "/page.js")

    assert start.body == (page / "index.html").read_bytes()
    assert start.headers["Content-Type"].startswith("text/html")
    assert script.headers["Content-Type"].startswith("text/javascript")


@pytest.mark.parametrize("path", ["/../private.txt", "/%2e%2e/private.txt", "/..%2fprivate.txt"])
def test_nothing_outside_the_page_is_served(serve, page, path):
    """A path that climbs out of the page's folder finds nothing."""
    client = serve(create_app({"page_folder": str(page)}))

    assert client("GET", path).status == 404


def test_missing_page_is_said(serve, tmp_path):
    """Without a built page the start address says so, and the operations still answer."""
    client = serve(create_app({"page_folder": str(tmp_path)}))

    answer = client("GET", "/")

    assert answer.status == 503
    assert "not been built" in answer.json()["detail"]
    assert client.get("catalogue").status == 200


def test_every_response_carries_the_security_headers(serve, page):
    """Answers and failures of every kind carry the same security headers."""
    app = create_app({"page_folder": str(page)})
    app.add_url_rule("/fails", view_func=lambda: {}["absent"])
    client = serve(app)

    for method, path, status in EVERY_KIND:
        answer = client(method, path)
        assert answer.status == status, path
        assert {name: answer.headers[name] for name in HEADERS} == HEADERS, path
        assert answer.headers["Cache-Control"], path


def test_content_policy_allows_no_foreign_origin():
    """The content policy names no origin but the server's own, and no inline or evaluated script."""
    policy = dict(part.split(" ", 1) for part in HEADERS["Content-Security-Policy"].split("; "))

    assert policy["default-src"] == policy["connect-src"] == "'self'"
    assert policy["script-src"] == "'self' 'wasm-unsafe-eval'"
    assert policy["worker-src"] == "'self' blob:"
    assert policy["frame-ancestors"] == policy["base-uri"] == policy["form-action"] == "'none'"
    assert "http" not in json.dumps(policy)
