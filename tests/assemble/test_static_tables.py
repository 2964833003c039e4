"""The tables that need no script."""

import re
from html.parser import HTMLParser

import pytest

from jointwise.assemble.static_tables import SITUATIONS, markup
from jointwise.calc.catalogue import catalogue

STEPS_DB = {
    "over": (float("-inf"), 0.0),
    "at": (0.0, 1.0),
    "tight": (1.0, 3.0),
    "fine": (3.0, 10.0),
    "ample": (10.0, float("inf")),
}
MOST_BYTES = 400_000


@pytest.fixture(scope="module")
def page():
    return markup()


class Cells(HTMLParser):
    """Collects the text of every cell with its colour step."""

    def __init__(self):
        super().__init__()
        self.cells = []

    def handle_starttag(self, tag, attributes):
        step = dict(attributes).get("data-step")
        if tag == "td" and step is not None:
            self.cells.append([step, ""])
        elif tag in ("th", "tr", "section"):
            self.cells.append([None, ""])

    def handle_data(self, text):
        if self.cells:
            self.cells[-1][1] += text


def test_it_is_lean(page):
    """The markup before any script stays under 400 kB."""
    assert len(page.encode()) < MOST_BYTES


@pytest.mark.parametrize("situation", SITUATIONS, ids=lambda situation: situation.heading)
def test_every_situation_has_its_table(page, situation):
    """Each common scenario is shown under its heading."""
    assert f"<h2>{situation.heading}</h2>" in page


def test_every_cell_s_colour_is_that_of_its_number(page):
    """The colour step of a printed margin is the one its value falls into."""
    reader = Cells()
    reader.feed(page)
    tables = [(step, text) for step, text in reader.cells if step in STEPS_DB and text[0] in "+−"]

    assert len(tables) > 1000
    for step, text in tables:
        margin = float(re.match(r"[+-][\d.]+", text.replace("−", "-"))[0])
        low, high = STEPS_DB[step]
        assert low - 0.05 <= margin <= high + 0.05


def test_the_key_names_the_steps_in_one_line(page):
    """The key stands before the first table and names each step with its edges."""
    key = page[page.index('class="plain key"') : page.index("<h2>100 W SSB</h2>")]

    assert re.findall(r"<td data-step=(\w+)>", key) == list(STEPS_DB)
    assert "<b>at the limit</b> 0 to 1" in key


def test_what_a_number_leaves_open_is_said_in_words(page):
    """Under a table the cells with a mark are listed by its words."""
    table = page[page.index("<h2>100 W SSB</h2>") : page.index("<h2>Receive only</h2>")]

    assert "above its usual frequency: " in table
    assert re.search(r"<li>uncertain: the sources disagree[^<]* on ", table)
    assert "<sup>" not in table


def test_receive_shows_no_power_limit(page):
    """In receive the cells print return loss."""
    table = page[page.index("<h2>Receive only</h2>") : page.index("<h2>5 W FM, portable</h2>")]

    assert "<td data-step=holds>RL " in table
    assert "rx only" not in table


def test_every_family_has_a_derivation_and_the_cautions_stand_below(page):
    """Every family opens to its steps; RF burns and lightning are named."""
    derivations = page[page.index("<h2>Derivations</h2>") :]
    assert derivations.count("<details>") == derivations.count("</details>") == len(catalogue().interfaces)
    assert "RF burns" in page
    assert "Lightning" in page


def test_a_derivation_tells_a_step_once(page):
    """Within a family no step stands twice, though contact and cable share many, and none is missing."""
    for sheet in page[page.index("<h2>Derivations</h2>") :].split("<details>")[1:]:
        lists = [re.findall(r"<li>([^<]*)", steps) for steps in re.findall("<ol>(.*?)</ol>", sheet)]
        told = [step for steps in lists for step in steps]

        assert sheet.count("<p><b>") == 4
        assert all(lists)
        assert len(told) == len(set(told))
        for formula in ("Rise of the inner conductor by 1 W", "Rise of the centre contact", "Return loss", "Margin"):
            assert any(step.startswith(f"{formula}:") for step in told), formula


def test_no_script_and_no_address(page):
    """The markup holds neither code nor anything to load."""
    assert "<script" not in page
    assert "http" not in page
