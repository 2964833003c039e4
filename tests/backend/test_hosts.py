"""Which names the server answers to, so that no other website's page is taken for its own."""

import json

import pytest

from jointwise.backend.app import create_app
from jointwise.backend.hosts import is_answered, names_answered
from jointwise.backend.settings import Settings, read
from jointwise.calc.errors import InputError

QUERY = "family=n&band=2m"
REBOUND = "evil.example"
PATHS = [("GET", "/"), ("GET", f"/api/v1/cell?{QUERY}"), ("GET", "/api/v1/packs.json"), ("POST", "/api/v1/cell")]


@pytest.mark.parametrize(("method", "path"), PATHS)
def test_a_foreign_name_is_refused(client, method, path):
    """A request under another website's name is refused with the name and those allowed, whatever it asks for."""
    answer = client(method, path, headers={"Host": f"{REBOUND}:{client.port}"})

    assert answer.status == 400
    assert answer.headers["Content-Type"] == "application/problem+json"
    assert all(word in answer.json()["detail"] for word in (REBOUND, "localhost", "JOINTWISE_HOSTS"))


def test_an_answer_in_the_cache_is_not_given_to_a_foreign_name(client):
    """What was answered before under the server's own name stays refused under another."""
    assert client.get("cell", QUERY).status == client.get("cell", QUERY).status == 200

    assert client.get("cell", QUERY, Host=REBOUND).status == 400


@pytest.mark.parametrize("host", ["localhost", "LOCALHOST:8073", "127.0.0.1", "[::1]:8073"])
def test_the_names_of_this_computer_are_answered(client, host):
    """At first the server answers to every name of this computer, at any port."""
    assert client.get("health", Host=host).status == 200


def test_listed_names_are_answered_alone(serve):
    """With names listed these are answered, and this computer's are not."""
    client = serve(create_app({"hosts": ["club.example"]}))

    assert client.get("health", Host="club.example:8080").status == 200
    assert client.get("health").status == client.get("health", Host="x.club.example").status == 400


@pytest.mark.parametrize(
    "settings", [{"hosts": ["*"]}, {"host": "0.0.0.0"}, {"host": "192.0.2.1"}, {"proxies": 1}, {"host": "club.example"}]
)
def test_any_name_is_answered_where_others_come_anyway(settings):
    """A server that is open to others, or behind a proxy, answers to any name."""
    assert names_answered(read({}, settings)) is None
    assert is_answered(REBOUND, names_answered(read({}, settings)))


@pytest.mark.parametrize("host", ["localhost", "127.0.0.2", "::1"])
def test_every_loopback_address_is_this_computer(host):
    """Whichever loopback address it listens on, the server answers to that and to the usual names."""
    names = names_answered(Settings(host=host))

    assert {host, "localhost", "127.0.0.1", "::1"} == names
    assert not is_answered(REBOUND, names)


@pytest.mark.parametrize("host", ["", "[", "localhost.evil.example", "evil.example#localhost", "x" * 10_000])
def test_what_is_no_name_is_refused_in_a_short_sentence(client, host):
    """A Host header that is none of the names, or no name at all, is refused without repeating all of it."""
    answer = client.get("health", Host=host)

    assert answer.status == 400
    assert len(answer.body) < 500


@pytest.mark.parametrize("name", ["https://club.example", "club.example:80", "a b", "", "::1"])
def test_a_setting_that_is_no_name_is_refused(name):
    """What names no host is refused by its place in the list."""
    with pytest.raises(InputError, match=r"^hosts\[1\] is .*allowed: a name such as club.example"):
        read({}, {"hosts": ["club.example", name]})


def test_packs_are_for_the_own_page(serve, tmp_path):
    """A page of another website may not read the packs, whichever websites may show the matrix."""
    (tmp_path / "club.json").write_text(
        json.dumps({"id": "club", "name": "Invented club", "version": "1", "sources": []})
    )
    client = serve(create_app({"packs_folder": str(tmp_path), "embed_origins": ["*"]}))

    packs = client.get("packs.json", Origin="https://other.example")

    assert packs.json()
    assert packs.headers["Access-Control-Allow-Origin"] is None
    assert packs.headers["Cross-Origin-Resource-Policy"] == "same-origin"
    assert client.get("health", Origin="https://other.example").headers["Access-Control-Allow-Origin"] == "*"
