"""What other websites may do with the server: read its answers, frame one page, and how often."""

import gzip
import json

import pytest

from jointwise.backend.app import create_app
from jointwise.backend.settings import Settings, read
from jointwise.calc.operations import InputError, call

CLUB = "https://club.example"
OTHER = "https://other.example"
QUERY = "families=n&bands=2m"


def allowed(answer):
    """The origin that a browser would let read the answer."""
    return answer.headers["Access-Control-Allow-Origin"]


def test_any_website_may_read_at_first(client):
    """With the default settings every origin, a page from a file too, may read answers and refusals."""
    for origin in (CLUB, "null"):
        assert allowed(client.get("snapshot", QUERY, Origin=origin)) == "*"
    assert allowed(client.get("snapshot", "vswr=0", Origin=CLUB)) == "*"


def test_named_websites_alone_may_read(serve):
    """With origins set, these alone may read, and caches are told that the answer depends on it."""
    client = serve(create_app({"embed_origins": [CLUB]}))

    club, other = (client.get("snapshot", QUERY, Origin=origin) for origin in (CLUB, OTHER))

    assert (allowed(club), allowed(other)) == (CLUB, None)
    assert "Origin" in ", ".join(club.headers.get_all("Vary"))
    assert "Access-Control-Allow-Credentials" not in club.headers


@pytest.mark.parametrize("origins", [[CLUB], [CLUB, OTHER], ["*"], []])
@pytest.mark.parametrize("path", ["/api/v1/cell?family=n&band=2m", "/api/v1/cell", "/api/v1/health", "/embed.js"])
def test_what_depends_on_the_origin_says_so(serve, origins, path):
    """Answers, refusals and the script for others are marked for caches, also where no origin was named."""
    client = serve(create_app({"embed_origins": origins}))

    for named in ({}, {"Origin": CLUB}, {"Origin": OTHER}):
        assert "Origin" in ", ".join(client("GET", path, headers=named).headers.get_all("Vary") or ())


def test_no_website_may_read_when_none_is_named(serve):
    """With an empty setting the answers stay with the server's own page."""
    client = serve(create_app({"embed_origins": []}))

    assert allowed(client.get("matrix", QUERY, Origin=CLUB)) is None


def test_another_website_may_not_post(client):
    """A browser that asks beforehand is told that other websites may only read."""
    asked = {"Origin": CLUB, "Access-Control-Request-Method": "POST", "Access-Control-Request-Headers": "content-type"}

    answer = client("OPTIONS", "/api/v1/matrix", headers=asked)

    assert "POST" not in (answer.headers["Access-Control-Allow-Methods"] or "")


def framing(answer):
    """Who may frame a page."""
    rules = dict(part.split(" ", 1) for part in answer.headers["Content-Security-Policy"].split("; "))
    return rules["frame-ancestors"]


@pytest.mark.parametrize(
    ("origins", "ancestors"), [(["*"], "'self' *"), ([CLUB, OTHER], f"'self' {CLUB} {OTHER}"), ([], "'self'")]
)
def test_one_page_may_be_framed(serve, tmp_path, origins, ancestors):
    """The frame's page may be framed by the websites named; the full page by nobody."""
    for name in ("index.html", "embed.html"):
        (tmp_path / name).write_text("<!doctype html>")
    client = serve(create_app({"embed_origins": origins, "page_folder": str(tmp_path)}))

    assert framing(client("GET", "/embed.html")) == ancestors
    assert framing(client("GET", "/")) == "'none'"


def test_answers_go_out_packed_to_who_unpacks(client):
    """With gzip accepted the same answer goes out packed, under a tag of its own and marked for caches."""
    plain, packed = client.get("snapshot", QUERY), client.get("snapshot", QUERY, Accept_Encoding="gzip")

    assert packed.headers["Content-Encoding"] == "gzip"
    assert gzip.decompress(packed.body) == plain.body
    assert len(packed.body) < len(plain.body) / 2
    assert packed.headers["ETag"] != plain.headers["ETag"]
    assert "Accept-Encoding" in packed.headers["Vary"]
    assert "Content-Encoding" not in plain.headers


def test_snapshot_may_be_kept(client):
    """A snapshot by query is the core's own, and may be reused like any other answer to GET."""
    answer = client.get("snapshot", QUERY)

    assert answer.body == call("snapshot", json.dumps({"families": ["n"], "bands": ["2m"]}).encode())
    assert answer.headers["Cache-Control"] == f"public, max-age={Settings().cache_seconds}"
    assert client.get("snapshot", QUERY, If_None_Match=answer.headers["ETag"]).status == 304


def test_too_many_questions_are_refused(serve):
    """Beyond the rate an address is refused in the usual form, told when to ask again, and the page still comes."""
    client = serve(create_app({"requests_per_minute": 2}))

    answers = [
        client.get("cell", "family=n&band=2m"),
        client.post("cell", {"family": "n", "band": "2m"}),
        client.get("matrix", QUERY, Origin=CLUB),
    ]

    assert [answer.status for answer in answers] == [200, 200, 429]
    refused = answers[-1]
    assert refused.headers["Content-Type"] == "application/problem+json"
    assert 1 <= int(refused.headers["Retry-After"]) <= 60
    assert refused.json()["detail"].startswith("This address has used up its answers; allowed: 2 a minute.")
    assert allowed(refused) == "*"
    assert client("GET", "/").status == 200
    assert client.get("health").status == 200


def test_no_rate_at_first(client):
    """With the default settings nothing is counted."""
    assert Settings().requests_per_minute == 0
    assert {client.get("cell", "family=n&band=2m").status for _ in range(20)} == {200}


@pytest.mark.parametrize(
    "origin", ["club.example", "https://club.example/page", "https://a.example; script-src *", "file:"]
)
def test_what_is_no_origin_is_refused(origin):
    """A setting that names no origin is refused by its place, and never reaches a header."""
    with pytest.raises(
        InputError, match=r"^embed_origins\[1\] is .*allowed: an origin such as https://club.example, or \*"
    ):
        read({}, {"embed_origins": [CLUB, origin]})


def test_origins_come_from_the_environment():
    """A list stands in the environment with commas; empty means nobody."""
    assert read({"JOINTWISE_EMBED_ORIGINS": f"{CLUB},{OTHER}"}, {}).embed_origins == [CLUB, OTHER]
    assert read({"JOINTWISE_EMBED_ORIGINS": ""}, {}).embed_origins == []
