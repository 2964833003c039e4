"""Metric and US units: one switch for every view, kept by the browser and named in a link."""

import re

import pytest
from playwright.sync_api import Locator, Page, expect
from reading import fragment, more, open_cell, settled, share
from visits import START_MS, Visit

from jointwise.assemble.start_data import start_data

START = start_data()
NAMES = re.compile(
    "|".join(
        re.escape(one["name"])
        for one in sorted([*START["bands"], *START["families"]], key=lambda one: len(one["name"]), reverse=True)
    )
)
"""Of bands and connectors: "2 m" and "3.5 mm" are names in any units."""
METRIC = re.compile(r"\d (?:m|mm|cm|km|°C|kg)(?!\w)|°C|N·m|dB/100 m\b")

TOLD = """(element) => {
  const texts = [];
  const read = (node) => {
    for (const one of node.childNodes) {
      if (one.nodeType === Node.TEXT_NODE) texts.push(one.textContent);
      else if (one.nodeType === Node.ELEMENT_NODE && !['STYLE', 'SCRIPT', 'JW-STEPS', 'OPTION'].includes(one.tagName))
        read(one.shadowRoot ?? one);
    }
  };
  read(element.shadowRoot ?? element);
  return texts.join(' ');
}"""
"""The text of an element and all in it, but for the working, which is in SI, and what a menu offers."""

ANSWERS = {
    "choose": ("jw-choose-view", ".answer"),
    "line": ("jw-line-view", "jw-line-results"),
    "kit": ("jw-kit-view", ".answer"),
    "fitout": ("jw-fitout-view", ".answer"),
    "sweep": ("jw-sweep-view", ".answer"),
}
"""Each view's element, and its answer in it."""
SAID = {
    "choose": r"\d in\b",
    "line": r"\d ft\b.*\d °F",
    "kit": "",
    "fitout": r"in-lb.*\d ft\b",
    "sweep": r"\d ft\b",
}
"""What an answer says in US units."""


def switch(page: Page, name: str) -> Locator:
    """A button of the switch."""
    return more(page).get_by_role("group", name="Units").get_by_role("button", name=name, exact=True)


def metric_in(text: str) -> list[str]:
    """Metric figures in a text, with what stands around them."""
    plain = NAMES.sub("", " ".join(text.split()))
    return [plain[max(found.start() - 30, 0) : found.end() + 10] for found in METRIC.finditer(plain)]


@pytest.mark.parametrize("view", ANSWERS)
def test_answer_of_every_view_follows(visit: Visit, view: str) -> None:
    """After the switch no metric figure is left in a view's answer; after a reload none comes back."""
    page = visit(f"#view={view}")
    element, answer = ANSWERS[view]
    told = page.locator(f"{element} {answer}").first
    told.wait_for(timeout=START_MS)

    switch(page, "US").click()

    for _ in range(2):
        expect(switch(page, "US")).to_have_attribute("aria-pressed", "true")
        told.wait_for(timeout=START_MS)
        expect(page.locator("jw-progress[status=pending]")).to_have_count(0, timeout=START_MS)
        text = told.evaluate(TOLD)
        assert metric_in(text) == []
        assert re.search(SAID[view], " ".join(text.split()))
        page.reload()

    switch(page, "Metric").click()
    told.wait_for(timeout=START_MS)
    expect(page.locator("jw-progress[status=pending]")).to_have_count(0, timeout=START_MS)
    assert not re.search(r"\d (ft|°F)(?!\w)", told.evaluate(TOLD))


def test_matrix_and_its_derivation_follow(visit: Visit) -> None:
    """Fields, facts and sentences of a cell are in US units, and the working says that it is in SI."""
    page = settled(visit())
    switch(page, "US").click()
    derivation = open_cell(page, "n", "2m")

    expect(page.locator("#ambient_temperature_c")).to_have_value("104")
    derivation.locator("jw-match summary").first.click()
    expect(derivation.get_by_text("The working is in SI units.").locator("visible=true").first).to_be_visible()
    facts = page.locator("jw-derivation")
    expect(facts.get_by_text(re.compile(r"^[\d.]+ °F of \d+ °F$")).first).to_be_visible()
    for part in (".facts", "#verdict", ".gate td:last-child"):
        for one in facts.locator(part).all():
            assert metric_in(one.evaluate(TOLD)) == []


def test_field_takes_the_unit_it_shows(visit: Visit) -> None:
    """A number without a unit is in the unit shown, one with a unit in its own, and both are sent in SI."""
    page = settled(visit(forgiven="400"))  # an air temperature that is refused
    switch(page, "US").click()
    air = page.locator("[name='ambient_temperature_c']")
    typed = air.locator("input[type=text]")

    typed.fill("68")
    typed.press("Enter")
    assert fragment(page) == "ambient_temperature_c=20&units=us"
    typed.fill("25 °C")
    typed.press("Enter")
    expect(typed).to_have_value("77")
    assert fragment(page) == "ambient_temperature_c=25&units=us"
    typed.press("ArrowUp")
    expect(typed).to_have_value("78")
    typed.fill("200")
    typed.press("Enter")
    expect(air.get_by_role("alert")).to_have_text("Air temperature: 200 °F; allowed: −76 to 176 °F.")


def test_link_brings_the_units_along(visit: Visit) -> None:
    """A link copied in US units opens in US units elsewhere, also in a view of its own."""
    page = settled(visit("#vswr=3&units=us"))
    expect(switch(page, "US")).to_have_attribute("aria-pressed", "true")
    expect(page.locator("#ambient_temperature_c")).to_have_value("104")
    expect(page.locator("#vswr")).to_have_value("3")
    expect(page.locator("jw-notice")).not_to_contain_text("does not know")

    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    share(page).get_by_role("button", name="Copy link").click()
    copied = page.evaluate("() => navigator.clipboard.readText()")
    assert copied.endswith("#vswr=3&units=us")

    switch(page, "Metric").click()
    assert fragment(page) == "vswr=3"
    page.reload()
    expect(switch(page, "Metric")).to_have_attribute("aria-pressed", "true")


def test_units_are_chosen_in_the_station_on_a_phone(visit: Visit) -> None:
    """The units are among the station's own fields too."""
    page = settled(visit(viewport={"width": 390, "height": 844}))

    page.get_by_role("button", name="Station").click()
    page.get_by_role("combobox", name="Units").select_option("us")

    expect(page.locator("#ambient_temperature_c")).to_have_value("104")
