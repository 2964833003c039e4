"""Every view looks as in its reviewed pictures; and the comparison sees a broken layout, not another font."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from looks import FOLDER, LARGEST_SHARE, LOOKS, WIDTHS, differing, pictures, reduced
from PIL import Image
from playwright.sync_api import Browser, Page

RESULTS = Path(__file__).parents[1] / "test-results/pictures"
"""Where the picture as it is now is left, to be looked at beside the reviewed one."""

PANELS = """
<style>
  body { margin: 0; font: 16px/1.5 sans-serif; background: #eee }
  section { margin: 16px; padding: 12px; background: #fff; border: 1px solid #888; border-radius: 8px }
  button { padding: 10px 16px }
  @media (min-width: 700px) { main { display: grid; grid-template-columns: 300px 1fr } }
</style>
<main><section id="form"><h2>Conditions</h2><p>Mode, power and weather of the station.</p><button>Calculate</button>
</section><section id="answer"><h2>Fine: 8.2 dB margin</h2><p>N on 2 m at 400 W: limited by the heat of the cable, which
reaches 85 °C at 2.7 kW by the cautious figures and at 3.2 kW by the generous ones.</p></section></main>
"""
FIT = {"width": 900, "height": 400}


@pytest.mark.skipif(not FOLDER.exists(), reason="no pictures are kept yet")
@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("name", LOOKS)
def test_view_looks_as_reviewed(browser: Browser, address: str, name: str, width: str) -> None:
    """No picture of the view differs from the reviewed one by more than another font would: else look at both."""
    shares = {}
    for label, now in pictures(browser, address, name, width):
        with Image.open(FOLDER / f"{label}.png") as reviewed:
            shares[label] = differing(reviewed, now)
        if shares[label] > LARGEST_SHARE:
            RESULTS.mkdir(parents=True, exist_ok=True)
            now.save(RESULTS / f"{label}.png")

    assert {label: share for label, share in shares.items() if share > LARGEST_SHARE} == {}


@pytest.fixture
def panels(browser: Browser) -> Iterator[Page]:
    """A small page with two panels."""
    page = browser.new_page(viewport=FIT)
    page.set_content(PANELS)
    yield page
    page.close()


def changed(page: Page, style: str) -> float:
    """By how much the page differs once it has one more rule of style."""
    before = reduced(page.screenshot())
    page.add_style_tag(content=style)
    return differing(before, reduced(page.screenshot()))


@pytest.mark.parametrize(
    "style",
    [
        "section * { position: relative; left: 1px; top: 1px }",
        "body { font-family: serif }",
        "body { letter-spacing: 0.1px; -webkit-font-smoothing: none }",
        "p { color: #222 }",
    ],
    ids=["letters a pixel aside", "another font", "wider letters", "another grey"],
)
def test_other_letters_are_no_difference(panels: Page, style: str) -> None:
    """Letters that stand a pixel aside, or come from another font, pass."""
    assert changed(panels, style) <= LARGEST_SHARE


@pytest.mark.parametrize(
    "style",
    [
        "#answer { order: -1 }",
        "#answer { visibility: hidden }",
        "#form { margin-left: 120px }",
        "main { display: block }",
        "#answer { margin-left: -200px }",
        "section { background: #fdd }",
    ],
    ids=["moved", "missing", "aside", "stacked", "overlapping", "another ground"],
)
def test_a_broken_layout_is_a_difference(panels: Page, style: str) -> None:
    """A panel that is moved, missing, too narrow, over another or in a wrong colour fails."""
    assert changed(panels, style) > LARGEST_SHARE


def test_another_width_is_a_difference() -> None:
    """Pictures of other sizes are not compared: they differ."""
    assert differing(Image.new("P", (90, 40)), Image.new("P", (91, 40))) == 1
    assert differing(Image.new("P", (90, 40)), Image.new("P", (90, 60))) == 1
