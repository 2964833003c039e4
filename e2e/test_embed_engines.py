"""The matrix on a page of others in the other engines, from a folder and with no network."""

import json
from pathlib import Path

import expected
import pytest
from engines import Engine, firefox, webkit
from visits import ROOT

from jointwise.calc.operations import call

ENGINES = {"firefox": firefox, "webkit": webkit}


@pytest.mark.parametrize("engine", ENGINES.values(), ids=ENGINES)
def test_a_page_from_a_folder_shows_its_snapshot(engine: Engine, tmp_path: Path) -> None:
    """A snapshot that stands in the page is shown, and a cell opens with its limits, in the room of the card."""
    snapshot = call("snapshot", json.dumps({"bands": expected.FIRST_BANDS, "mode": "cw"}).encode()).decode()
    block = snapshot.replace("<", "\\u003c")
    (tmp_path / "embed.js").write_bytes((ROOT / "dist/site/embed.js").read_bytes())
    (tmp_path / "page.html").write_text(
        '<!doctype html><html lang="en"><meta charset="utf-8"><title>A club</title>'
        f'<script type="application/json" id="club">{block}</script>'
        '<script src="embed.js"></script><jointwise-matrix src="#club" link="jointwise.html"></jointwise-matrix>',
        "utf-8",
    )

    with engine() as view:
        view.go((tmp_path / "page.html").as_uri())
        assert view.comes("() => window.readers && readers.cells().length > 0")
        assert view.run("() => readers.numbers()") == expected.numbers(mode="cw")
        view.click("td[data-family='n'][data-band='2m']")
        assert view.comes("() => readers.everywhere('.derivation details[data-limit]').length === 3")
        assert view.run("() => readers.everywhere('.derivation math').length > 5")
        fits = """() => {
          const box = (selector) => readers.everywhere(selector)[0].getBoundingClientRect();
          const [card, shown, most] = [box('.card'), box('.derivation'), document.documentElement.clientWidth];
          return shown.left >= card.left && shown.right <= card.right && card.right <= most;
        }"""
        assert view.run(fits)
        assert view.asked() == []
        assert view.wrong() == []
