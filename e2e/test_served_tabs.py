"""Two tabs of one browser: what one keeps does not vanish through the other."""

import json
import random

import pytest
from playwright.sync_api import Page, expect
from reading import settled
from visits import START_MS, Visit

OFTEN, INTERLEAVINGS = 6, 20
STEPS = 3
MOST_LINES = 12


def two_tabs(visit: Visit, link: str) -> list[Page]:
    """Two tabs with the same view, answered."""
    page = settled(visit(link))
    other = page.context.new_page()
    other.goto(page.url)
    return [page, settled(other)]


def line_names(page: Page) -> list[str]:
    """The lines that a tab shows."""
    return page.evaluate("() => readers.everywhere('#lines option').map(({textContent}) => textContent.trim())")


@pytest.mark.slow
@pytest.mark.parametrize("count", [OFTEN, pytest.param(INTERLEAVINGS, marks=pytest.mark.nightly)])
def test_lines_of_two_tabs_stay(visit: Visit, count: int) -> None:
    """Random interleavings of lines that come and go: each tab has all that nobody took away."""
    tabs = two_tabs(visit, "#view=line")
    expected = {"Field day"}
    for seed in range(count):
        roll = random.Random(seed)
        for step in range(STEPS):
            tab = roll.choice(tabs)
            if len(expected) < MOST_LINES and (len(expected) < 2 or roll.random() < 0.6):
                name = f"Line {seed}.{step}"
                tab.locator("#keep").click()
                tab.locator("#name").fill(name)
                tab.locator("#name").blur()
                expected.add(name)
            else:
                gone = roll.choice(sorted(expected))
                tab.get_by_role("button", name=f"Drop {gone}", exact=True).click()
                expected.discard(gone)
    for tab in tabs:
        tab.wait_for_function("count => readers.everywhere('#lines option').length === count", arg=len(expected))
        assert set(line_names(tab)) == expected


def test_what_came_in_is_told_and_undo_is_ones_own(visit: Visit) -> None:
    """A line kept in another tab comes in with a sentence; undo takes back the change made here, not that line."""
    one, other = two_tabs(visit, "#view=line")
    one.locator("#name").fill("Mine")
    one.locator("#name").blur()
    expect(other.locator("#name")).to_have_value("Mine")
    other.locator("#keep").click()
    expect(one.get_by_text("Your lines were changed in another tab; they are shown here now.")).to_be_visible()

    one.locator("#undo").click()

    expect(one.locator("#name")).to_have_value("Field day")
    assert "Mine 2" in line_names(one)


def test_packs_of_two_tabs_stay(visit: Visit) -> None:
    """A pack taken in each of two tabs is in force in both."""
    tabs = two_tabs(visit, "#view=packs")
    limit = {"id": "low", "power_w": 50, "reason": "Old panel.", "source": "common_practice", "kind": "memory"}
    contents = {"one": {"default_powers_w": [10, 100]}, "other": {"house_limits": [limit]}}
    for count, (tab, (name, content)) in enumerate(zip(tabs, contents.items(), strict=True), 1):
        tab.set_default_timeout(START_MS)
        pack = {"id": name, "name": f"Pack {name}", "version": "1", "sources": [], **content}
        file = {"name": f"{name}.json", "mimeType": "application/json", "buffer": json.dumps(pack).encode()}
        tab.locator("#file").set_input_files(file)
        for either in tabs:
            expect(either.locator("jw-packs-view li")).to_have_count(count)
