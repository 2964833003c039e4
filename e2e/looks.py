"""What every view looks like: pictures at three widths, light, dark and as on paper, small enough to keep and compare.

`python e2e/looks.py` draws those in `pictures_reviewed/` anew, from the page as it stands in `dist/`.
"""

import io
import shutil
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import NamedTuple

from pictures import VIEWS as DRAWN
from PIL import Image, ImageFilter
from pixelmatch.contrib.PIL import pixelmatch
from playwright.sync_api import Browser, Page, sync_playwright
from reading import settled
from visits import FLAGS, WINDOWLESS, clean, served

FOLDER = Path(__file__).with_name("pictures_reviewed")

WIDTHS = {"phone": (390, 844), "tablet": (820, 1180), "desktop": (1280, 800)}
"""The window in pixels, by what it is like."""
PAPER = (1047, 718)
"""What lies between the margins of A4 on its side."""
TALLEST_PX = 2400
"""Of a page that goes on and on, the upper part tells enough."""
TODAY = datetime(2026, 11, 29, 12, tzinfo=UTC)

SHRINK = 4
"""For the eye, and for a folder that stays small."""
COLOURS = 32
CELL = 8
"""Pixels of the small picture whose mean is compared: a third of a line of text, however its letters are drawn."""
BLUR = 4.0
"""Radius in pixels of the small picture, so that a line a little lower is no other picture."""
THRESHOLD = 0.05
"""Of 1, between white and black: less between two cells is no difference that counts."""
LARGEST_SHARE = 0.038
"""Of the cells may differ; with serifs it was up to 0.02, with a chart that took its size for paper at another moment
0.032, with a panel aside or gone 0.04 to 0.28, but 0.007 with a row of buttons or one short section gone, which goes
unseen."""
LARGEST_GROWTH = 0.04
"""Of the height, by lines that break elsewhere."""
TRIES = 20


def _as_it_is(page: Page) -> None:
    """The view as it opens."""


def _station(page: Page) -> None:
    page.get_by_role("button", name="Station", exact=True).first.click()


class Look(NamedTuple):
    """A view: the fragment that opens it, what is there once it is drawn, and what is done before the picture."""

    fragment: str
    drawn: str
    do: Callable[[Page], None] = _as_it_is


LOOKS = {
    **{name: Look(*view) for name, view in DRAWN.items()},
    "packs": Look("#view=packs", "jw-packs-view h2"),
    "station": Look("", "jw-masthead #station", _station),
}
"""By name."""


def reduced(png: bytes) -> Image.Image:
    """A small picture of a large one, in few colours."""
    whole = Image.open(io.BytesIO(png)).convert("RGB")
    small = whole.crop((0, 0, whole.width, min(whole.height, TALLEST_PX))).reduce(SHRINK)
    return small.quantize(COLOURS, dither=Image.Dither.NONE)


def differing(reviewed: Image.Image, now: Image.Image) -> float:
    """The share of the cells that differ; all of them where the sizes are too unlike for a comparison."""
    tall = max(reviewed.height, now.height)
    if reviewed.width != now.width or abs(reviewed.height - now.height) > LARGEST_GROWTH * tall:
        return 1.0
    one, other = (_cells(picture, tall) for picture in (reviewed, now))
    return pixelmatch(one, other, threshold=THRESHOLD, includeAA=True) / (one.width * one.height)


def _cells(picture: Image.Image, height: int) -> Image.Image:
    """The means of the picture's cells, its last row drawn on where another is taller."""
    whole = picture.convert("RGB")
    ground = whole.crop((0, whole.height - 1, whole.width, whole.height)).resize((whole.width, height))
    ground.paste(whole, (0, 0))
    return ground.filter(ImageFilter.GaussianBlur(BLUR)).reduce(CELL)


def pictures(browser: Browser, address: str, name: str, width: str) -> Iterator[tuple[str, Image.Image]]:
    """Each picture of a view at a width, by its name: in both themes, and on paper where the window is wide."""
    look = LOOKS[name]
    size = dict(zip(("width", "height"), WIDTHS[width], strict=True))
    with clean(browser, address, None, viewport=size, color_scheme="light", reduced_motion="reduce") as context:
        page = context.new_page()
        page.clock.set_fixed_time(TODAY)
        page.goto(address + look.fragment)
        settled(page).locator(look.drawn).first.wait_for()
        look.do(page)
        yield f"{name}-{width}-light", _still(page)
        page.emulate_media(color_scheme="dark")
        yield f"{name}-{width}-dark", _still(page)
        if width == "desktop":
            page.set_viewport_size(dict(zip(("width", "height"), PAPER, strict=True)))
            page.emulate_media(media="print", color_scheme="light")
            page.evaluate("() => dispatchEvent(new Event('beforeprint'))")
            yield f"{name}-print", _still(page)


def _still(page: Page) -> Image.Image:
    """The page once nothing in it changes any more."""
    before = b""
    for _ in range(TRIES):
        now = page.screenshot(full_page=True, animations="disabled")
        if now == before:
            break
        before = now
        page.wait_for_timeout(150)
    return reduced(before)


def main() -> None:
    """Write one file for each picture, and leave no other in the folder."""
    shutil.rmtree(FOLDER, ignore_errors=True)
    FOLDER.mkdir()
    with served() as address, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=shutil.which(WINDOWLESS), args=FLAGS)
        for name in LOOKS:
            for width in WIDTHS:
                for label, picture in pictures(browser, address, name, width):
                    picture.save(FOLDER / f"{label}.png", optimize=True)
        browser.close()
    files = list(FOLDER.iterdir())
    print(f"{len(files)} pictures, {sum(file.stat().st_size for file in files) / 1000:.0f} kB")


if __name__ == "__main__":
    main()
