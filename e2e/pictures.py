"""Draws a picture of each view of the saved page, at tablet size with its invented examples, for the READMEs."""

import base64
import shutil
from typing import NamedTuple

from engines import SAVED
from playwright.sync_api import Page, sync_playwright
from reading import settled
from visits import FLAGS, ROOT, TABLET, WINDOWLESS

FOLDER = ROOT / "frontend/screenshots"


class View(NamedTuple):
    """The fragment of the page's address that opens a view, and what is there once it is drawn."""

    fragment: str
    drawn: str


VIEWS = {
    "matrix": View("", "jw-matrix td[data-step]"),
    "cell": View("#family=n&band=2m&power_w=400", "jw-derivation [data-bar]"),
    "choose": View("#view=choose", "jw-choose-table tr[data-family]"),
    "line": View("#view=line", "jw-line-card"),
    "kit": View("#view=kit", "jw-kit-view #verdict"),
    "sweep": View("#view=sweep", "#distance .scatterlayer"),
    "fitout": View("#view=fitout", "jw-fitout-sheet[data-shown]"),
}
"""By the name of the picture."""
START_MS = 120_000
QUALITY = 60
"""Of 100; letters stay sharp and no picture has more than 120 kB."""


def webp(page: Page) -> bytes:
    """What the screen shows; the browser itself packs it, as the driver has PNG and JPEG alone."""
    session = page.context.new_cdp_session(page)
    return base64.b64decode(session.send("Page.captureScreenshot", {"format": "webp", "quality": QUALITY})["data"])


def main() -> None:
    """Write one file for each view."""
    FOLDER.mkdir(exist_ok=True)
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=shutil.which(WINDOWLESS), args=FLAGS)
        context = browser.new_context(**TABLET, offline=True, reduced_motion="reduce")
        context.set_default_timeout(START_MS)
        for name, view in VIEWS.items():
            page = context.new_page()
            page.goto(SAVED.as_uri() + view.fragment)
            settled(page).locator(view.drawn).first.wait_for()
            picture = webp(page)
            (FOLDER / f"{name}.webp").write_bytes(picture)
            print(f"{name}: {len(picture) / 1000:.0f} kB")
            page.close()
        browser.close()


if __name__ == "__main__":
    main()
