"""Reading the page as a user does: what the cells print, what has the focus, which step a colour is."""

import re
from contextlib import suppress
from math import inf
from typing import Any, NamedTuple

from expected import Numbers
from playwright.sync_api import Error, Locator, Page, expect


def until(page: Page, condition: str, wanted: Any = None) -> None:
    """Wait for a condition on what is wanted; what follows it says what is wrong if it never comes."""
    with suppress(Error):
        page.wait_for_function(condition, arg=wanted)


def assert_numbers(page: Page, wanted: Numbers) -> None:
    """The cells come to print these numbers."""
    until(page, "(wanted) => JSON.stringify(readers.numbers()) === JSON.stringify(wanted)", wanted)

    assert page.evaluate("() => readers.numbers()") == wanted


def settled(page: Page) -> Page:
    """The page, once the core has answered all that it was asked."""
    page.locator("jw-progress[status=complete]").wait_for(state="attached")
    return page


def fragment(page: Page) -> str:
    """The fragment of the page's address."""
    return page.evaluate("() => location.hash.slice(1)")


def cell(page: Page, family: str, band: str) -> Locator:
    """One cell."""
    return page.locator(f"td[data-family='{family}'][data-band='{band}']")


def seldom(page: Page, group: str) -> None:
    """Unfold a group of the matrix's settings."""
    page.get_by_role("button", name="More settings").click()
    # a dot behind the name says that something in the group was changed
    page.get_by_role("button", name=re.compile(f"^{group}")).click()


def sheet(page: Page) -> Locator:
    """The sheet that is open."""
    return page.get_by_role("dialog")


def share(page: Page) -> Locator:
    """The menu of what can be taken along and saved, opened."""
    return menu(page, "#share")


def more(page: Page) -> Locator:
    """The menu of what is seldom wanted, opened."""
    return menu(page, "#more")


def menu(page: Page, which: str) -> Locator:
    """A menu of the masthead, opened; it is left open where it is."""
    masthead = page.locator(f"jw-masthead {which}")
    button = masthead.locator("#button")
    if button.get_attribute("aria-expanded") == "false":
        button.click()
    return masthead.locator("#panel")


def open_cell(page: Page, family: str, band: str) -> Locator:
    """Open a cell; its derivation, drawn to the end."""
    cell(page, family, band).click()
    return drawn(page)


def drawn(page: Page) -> Locator:
    """The derivation, once its bars are there."""
    derivation = page.locator("jw-derivation")
    expect(derivation.locator("[data-bar]")).to_have_count(3)
    return derivation


def unfolded(derivation: Locator, heading: str) -> Locator:
    """A part of the derivation, unfolded and drawn: a browser tells the page only after the click that it is open."""
    part = derivation.locator("details").filter(has=derivation.page.locator("summary", has_text=heading))
    part.locator("> summary").click()
    expect(part.locator("> summary + *")).to_be_visible()
    return derivation


def with_charts(page: Page) -> Locator:
    """The derivation, once all its charts are drawn."""
    derivation = unfolded(drawn(page), "Charts")
    expect(derivation.locator("jw-chart .main-svg .scatterlayer")).to_have_count(3)
    return derivation


class Step(NamedTuple):
    """One step of the colour scale as the key shows it."""

    low: float
    high: float
    ink: str
    ground: str


def key_steps(page: Page) -> list[Step]:
    """The colour scale, from over the limit to ample."""
    entries = page.locator("jw-key [data-step]:not([data-step=refused])").evaluate_all(
        "(all) => all.map((one) => ({words: one.textContent, ...readers.colours(one)}))"
    )
    return [Step(*covered(entry["words"]), entry["ink"], entry["ground"]) for entry in entries]


def covered(words: str) -> tuple[float, float]:
    """The margins that a step of the key covers, in dB."""
    edges = [float(edge.replace("−", "-")) for edge in re.findall(r"[+−]?\d+", words)]
    if "below" in words:
        return -inf, edges[0]
    if "above" in words:
        return edges[0], inf
    return edges[0], edges[1]
