"""A repeated answer is the one sent before: status, headers and body, for whoever asks in the same words."""

import pytest

from jointwise.backend.app import create_app

CELL = "/api/v1/cell?family=n&band=2m"
HEADERS = [
    {},
    {"Accept-Encoding": "gzip"},
    {"Origin": "https://club.example"},
    {"Origin": "https://other.example"},
    {"If-None-Match": "W/*"},
]


def received(client, headers, path=CELL):
    """Everything of an answer but its date."""
    answer = client("GET", path, headers=headers)
    return answer.status, sorted((name, value) for name, value in answer.headers.items() if name != "Date"), answer.body


@pytest.fixture
def watched(serve):
    """Clients of apps that note every request which reaches them."""

    def watch(**config):
        app, reached = create_app({"embed_origins": "https://club.example", **config}), []
        app.before_request(lambda: reached.append(1))
        return serve(app), reached

    return watch


def test_repeated_without_the_app(watched):
    """Asked in the same words, the app is asked once, and all of the answer is the same."""
    client, reached = watched()

    for headers in HEADERS:
        assert received(client, headers) == received(client, headers)

    assert len(reached) == len(HEADERS)


def test_an_unchanged_answer_is_repeated_as_unchanged(watched):
    """A tag that matches is met with 304 both times, and one that does not with the answer."""
    client, _ = watched()
    tag = client("GET", CELL).headers["ETag"]

    assert [received(client, {"If-None-Match": tag})[::2] for _ in range(2)] == [(304, b"")] * 2
    assert received(client, {"If-None-Match": '"other"'})[0] == 200


@pytest.mark.parametrize("path", ["/api/v1/cell?family=n", "/api/v1/health", "/", "/api/v1/openapi.json"])
def test_only_cached_answers_are_repeated(watched, path):
    """A refusal, a file or a description reaches the app each time."""
    client, reached = watched()

    assert received(client, {}, path) == received(client, {}, path)

    assert len(reached) == 2


def test_what_is_cached_no_more_is_made_anew(watched):
    """With no room to keep answers each request is computed, and the same."""
    client, reached = watched(kept_bytes=0)

    assert received(client, {}) == received(client, {})

    assert len(reached) == 2


def test_counted_answers_all_reach_the_app(watched):
    """Where addresses have a limit, a repeated answer counts too."""
    client, _ = watched(requests_per_minute=2)

    assert [received(client, {})[0] for _ in range(3)] == [200, 200, 429]


def test_a_post_is_no_get(watched):
    """Other methods of the same address are the app's own."""
    client, _ = watched()
    client("GET", "/api/v1/matrix")

    head = client("HEAD", "/api/v1/matrix")

    assert (head.status, head.body) == (200, b"")
    assert client("PUT", "/api/v1/matrix").status == 405
