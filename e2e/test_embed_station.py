"""A club's website whose matrix comes from a station file: the page is changed by replacing that one file."""

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import expected
import pytest
from hosts import File, Website
from playwright.sync_api import Page, expect
from reading import assert_numbers, settled
from test_embed import club, element, heard, page_with, trouble
from test_embed import visit as visit_club
from test_saved_own import own as open_own
from visits import Visit

from jointwise.calc.operations import call

__all__ = ["club", "visit_club"]

STATION = "/station.json"


def station_file(page: Page, target: Path, name: str) -> Path:
    """What the page's own button saves."""
    open_own(page)
    page.locator("#save-name").fill(name)
    with page.expect_download() as saving:
        page.locator("#save-station").click()
    saving.value.save_as(target)
    return target


@pytest.fixture
def own(club: Website) -> Website:
    """The club's website, which names its station file."""
    club.files["/"] = page_with(element(src="station.json"))
    return club


def with_station(site: Website, content: bytes) -> None:
    """Put a station file in the place of the one there."""
    site.files[STATION] = File(content, "application/json")


def test_a_club_changes_its_page_by_replacing_one_file(
    visit: Visit, own: Website, visit_club: Callable[..., Page], tmp_path: Path
) -> None:
    """The file as the page saves it is shown with the core's margins; another in its place is shown at the next visit,
    and the last one is kept for when the network is away."""
    for name, link, station in (
        ("Hill club", "#vswr=2&mode=fm&power_w=400", {"vswr": 2, "mode": "fm"}),
        ("Valley club", "#vswr=3&mode=ft8&power_w=400", {"vswr": 3, "mode": "ft8"}),
    ):
        page = settled(visit(link))
        file = station_file(page, tmp_path / "station.json", name)
        content = json.loads(file.read_text("utf-8"))
        assert (content["name"], content["snapshot"]["request"]["mode"]) == (name, station["mode"])
        with_station(own, file.read_bytes())

        shown = visit_club(own)

        assert_numbers(shown, expected.numbers(power=400, **station))
        assert [one["from"] for one in heard(shown, "ready")] == ["network"]
        shown.reload()
        assert_numbers(shown, expected.numbers(power=400, **station))
        assert [one["from"] for one in heard(shown, "ready")] == ["kept"]
        kept = shown.evaluate("() => Object.values(localStorage).map((one) => JSON.parse(JSON.parse(one).text))")
        assert [(one["station"]["name"], "kept" in one) for one in kept] == [(name, False)]


def snapshot(**request: Any) -> Any:
    """A snapshot as plain data."""
    return json.loads(call("snapshot", json.dumps({"bands": ["2m"], "families": ["n"]} | request).encode()))


FILE = {"format": "jointwise station", "version": 1, "name": "Hut", "date": "2026-11-29", "kept": {}}


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (FILE, "it is a station file without a matrix; save it anew"),
        (FILE | {"snapshot": {"format": "jointwise snapshot 9"}}, 'format must be "jointwise snapshot 2"'),
        ("<!doctype html><p>A saved page</p>", "it is a page; save a station file, which is small, and name that"),
    ],
)
def test_what_has_no_matrix_is_refused(own: Website, visit_club: Callable[..., Page], content: Any, words: str) -> None:
    """In place of a matrix stands a sentence that says what is missing."""
    with_station(own, (content if isinstance(content, str) else json.dumps(content)).encode())

    expect(trouble(visit_club(own))).to_contain_text(words)


def test_names_stay_text(own: Website, visit_club: Callable[..., Page]) -> None:
    """A name with markup in it breaks no policy, and the matrix is shown."""
    name = "</script><img src=x onerror=alert(1)>\u202e"
    with_station(own, json.dumps(FILE | {"name": name, "snapshot": snapshot()}).encode())

    shown = visit_club(own)

    assert_numbers(shown, expected.numbers(bands=["2m"], families=["n"]))
