"""Every failure as problem details: one contract, checked over a table of bad requests."""

import logging
from http import HTTPStatus

import pytest

from jointwise.backend.app import create_app
from jointwise.backend.settings import Settings

JSON = {"Content-Type": "application/json"}
CELL = "/api/v1/cell"
DEEP = 100_000

IN_BODY = [
    (b'{"family": "n", "band": "2m", "power_w": -1}', "power_w", "-1", "0 to"),
    (b'{"family": "n", "band": "2m", "power_w": 1e9}', "power_w", "1000000000.0", "to 100000"),
    (b'{"family": "n", "band": "2m", "vswr": 0.9999999999999999}', "vswr", "0.9999999999999999", "1 to 20"),
    (b'{"family": "n", "band": "2m", "vswr": 20.000000000000004}', "vswr", "20.000000000000004", "1 to 20"),
    (b'{"family": "n", "frequency_hz": 0}', "frequency_hz", "0", "100000 to 5e+10"),
    (b'{"family": "n", "frequency_hz": 5.1e10}', "frequency_hz", "51000000000.0", "100000 to 5e+10"),
    (b'{"family": "nothing", "band": "2m"}', "family", '"nothing"', "one of"),
    (b'{"family": "n", "band": "nothing"}', "band", '"nothing"', "one of"),
    (b'{"family": "n", "band": "2m", "mode": "nothing"}', "mode", '"nothing"', "one of"),
    (b'{"family": "n", "band": "2m", "vswr": "high"}', "vswr", '"high"', "a number"),
    (b'{"family": "n", "band": "2m", "vswr": null}', "vswr", "null", "a number"),
    (b'{"family": "n", "band": "2m", "region": 1.5}', "region", "1.5", "whole number"),
    (b'{"family": "n", "band": "2m", "region": 1%s}' % (b"0" * 40), "region", "1", "whole number"),
    (b'{"family": "n", "band": "2m", "exposure": "wet"}', "exposure", '"wet"', "one of"),
    (b'{"family": "n", "band": "2m", "colour": "red"}', "colour", '"red"', "family"),
    (b'{"family": "n", "band": "2m", "power_w": 5, "power_w": 50}', "power_w", "5", "given once"),
    (b'{"family": "n", "band": "2m", "colour": 1%s}' % (b"0" * 40), "colour", "1", "family"),
    (b'{"band": "2m"}', "family", "null", "can't be left out"),
    (b'{"family": "n", "band": "2m", "vswr": NaN}', "vswr", "NaN", "1 to 20"),
    (b'{"family": "n", "band": "2m", "vswr": -Infinity}', "vswr", "-Infinity", "1 to 20"),
    (b'{"family": "n", "band": "2m", "vswr": 1e999}', "vswr", "Infinity", "1 to 20"),
    (b'{"colour": 1, "vswr": NaN}', None, "", ""),
    (b'{"colour": NaN}', "colour", "NaN", "family"),
    (b'{"family": "\\ud800", "band": "2m"}', None, "", ""),
    (b'{"\\ud800": 1}', None, "", ""),
    (b'{"family": NaN, "band": "2m"}', "family", "NaN", "name"),
    (b'{"family": "n", "band": "2m", "vswr": {"a": [NaN]}}', "vswr", '{"a"', "1 to 20"),
    (b'{"family": "n", "band": "2m", "vswr": 1%s}' % (b"0" * 5000), None, "", ""),
    (b'{"family": "n"', "request", '"{', "JSON"),
    (b"", "request", '""', "JSON"),
    (b"\xff\xfe", "request", '"', "JSON"),
    (b"null", "request", "null", "JSON object"),
    (b"[]", "request", "[]", "JSON object"),
    (b'"cell"', "request", '"cell"', "JSON object"),
    (b"[" * DEEP, None, "", ""),
    (b'{"family": %s' % (b"[" * DEEP), None, "", ""),
    (b'{"family": %s%s}' % (b"[" * DEEP, b"]" * DEEP), None, "", ""),
    (b'{"colour": %s%s}' % (b"[" * DEEP, b"]" * DEEP), None, "", ""),
    (b'{"colour": %s1%s}' % (b'{"a":' * (DEEP // 4), b"}" * (DEEP // 4)), None, "", ""),
]

IN_QUERY = [
    ("family=n&band=2m&power_w=-1", "power_w", "-1", "0 to"),
    ("family=n&band=2m&vswr=nan", "vswr", "NaN", "a number"),
    ("family=n&band=2m&vswr=Infinity", "vswr", "Infinity", "a number"),
    ("family=n&band=2m&vswr=1e999", "vswr", '"1e999"', "a number"),
    ("family=n&band=2m&vswr=", "vswr", '""', "a number"),
    ("family=n&band=2m&vswr=null", "vswr", '"null"', "a number"),
    ("family=n&band=2m&vswr=2&vswr=3", "vswr", '["2", "3"]', "a number"),
    ("family=n&band=2m&region=" + "9" * 40, "region", "9", "whole number"),
    ("family=n&band=2m&added_sealing=perhaps", "added_sealing", '"perhaps"', "true or false"),
    ("family=n&band=2m&colour=red", "colour", '"red"', "family"),
    ("family=n,sma&band=2m", "family", '"n,sma"', "name"),
    ("family=%FF&band=2m", "family", '"', "name"),
    ("", "family", "null", "can't be left out"),
]

BY_STATUS = [
    ("PUT", "/api/v1/matrix", b"{}", JSON, 405),
    ("DELETE", "/", b"", {}, 405),
    ("POST", "/api/v1/nothing", b"{}", JSON, 404),
    ("GET", "/api/v1/nothing", None, {}, 404),
    ("GET", "/api/v2/matrix", None, {}, 404),
    ("POST", "/api/v1/matrix", b"{}", {}, 415),
    ("POST", "/api/v1/matrix", b"{}", {"Content-Type": "text/plain"}, 415),
    ("POST", "/api/v1/matrix", b"a=1", {"Content-Type": "application/x-www-form-urlencoded"}, 415),
    ("POST", "/api/v1/matrix", b" " * (Settings().max_body_bytes + 1), JSON, 413),
]


def problem(answer, status):
    """The body of a failure, after what RFC 9457 and our own rules ask of every one."""
    body = answer.json()

    assert answer.status == body["status"] == status
    assert answer.headers["Content-Type"] == "application/problem+json"
    assert answer.headers["Cache-Control"] == "no-store"
    assert {"type", "title", "status", "detail"} <= body.keys()
    assert body["title"]
    assert body["detail"].endswith(".")
    assert "Traceback" not in body["detail"]
    return body


def refusal(answer, field, value, allowed):
    """A refused input: the sentence names the field, the value and what is allowed."""
    body = problem(answer, 400)

    assert field in (None, body["field"])
    assert body["value"].startswith(value)
    assert allowed in body["allowed"]
    assert all(body[name] in body["detail"] for name in ("field", "value", "allowed"))


@pytest.mark.parametrize(("body", "field", "value", "allowed"), IN_BODY)
def test_bad_body_is_refused_by_field(client, body, field, value, allowed):
    """A body that can't be taken is refused with its field, its value and what is allowed."""
    refusal(client("POST", CELL, body, JSON), field, value, allowed)


@pytest.mark.parametrize(("query", "field", "value", "allowed"), IN_QUERY)
def test_bad_query_is_refused_by_field(client, query, field, value, allowed):
    """A query that can't be taken is refused with its field, its value and what is allowed."""
    refusal(client.get("cell", query), field, value, allowed)


def test_thorough_search_is_not_for_a_server(client):
    """A server that many share searches for a kit quickly only."""
    ports = [{"family": "n", "gender": gender, "highest_frequency_hz": 1e8} for gender in ("plug", "jack")]

    refusal(client.post("kit", {"ports": ports, "search": "thorough"}), "search", '"thorough"', "quick")
    assert client.post("kit", {"ports": ports, "search": "quick"}).status == 200


@pytest.mark.parametrize("value", [0.5, float("nan"), float("inf"), -3.5])
def test_refusal_reads_the_same_by_query_and_by_body(client, value):
    """The same bad value is refused with the same words by either door."""
    by_query = client.get("cell", f"family=n&band=2m&vswr={value}")
    by_body = client.post("cell", {"family": "n", "band": "2m", "vswr": value})

    assert by_query.json() == by_body.json()


@pytest.mark.parametrize("edge", ["vswr=1", "vswr=20", "power_w=0", "power_w=100000"])
def test_the_limits_themselves_are_allowed(client, edge):
    """A value at the end of its range is answered."""
    assert client.get("cell", f"family=n&band=2m&{edge}").status == 200


@pytest.mark.parametrize(("method", "path", "body", "headers", "status"), BY_STATUS)
def test_failure_is_answered_with_its_status(client, method, path, body, headers, status):
    """A request that no operation can see is answered with the fitting status as a problem."""
    body = problem(client(method, path, body, headers), status)

    assert (body["type"], body["title"]) == ("about:blank", HTTPStatus(status).phrase)


def test_wrong_method_names_the_right_ones(client):
    """A wrong method is answered with the methods that the address has."""
    answer = client("PUT", "/api/v1/matrix", b"{}", JSON)

    assert {"GET", "POST"} <= set(answer.headers["Allow"].split(", "))


def test_longest_body_is_still_read(serve):
    """A body of exactly the allowed length is read; one byte more is not."""
    client = serve(create_app({"max_body_bytes": 1000}))

    assert client("POST", "/api/v1/catalogue", b"{}".ljust(1000), JSON).status == 200
    assert "1001" in problem(client("POST", "/api/v1/catalogue", b"{}".ljust(1001), JSON), 413)["detail"]


def test_unknown_operation_names_the_known_ones(client):
    """An unknown operation is answered with the list of those there are."""
    detail = problem(client.post("nothing", {}), 404)["detail"]

    assert all(word in detail for word in ("'nothing'", "matrix", "cell", "catalogue"))


def test_unforeseen_failure_is_logged_and_not_shown(serve, caplog):
    """A fault of the server is logged in full under the reference that the answer gives, and not told."""
    app = create_app()
    app.add_url_rule("/fails", view_func=lambda: {}["secret-word"])
    client = serve(app)

    with caplog.at_level(logging.ERROR):
        answer = client("GET", "/fails")

    body = problem(answer, 500)
    assert b"secret-word" not in answer.body
    assert f"Reference {body['reference']}" in caplog.text
    assert "KeyError: 'secret-word'" in caplog.text
