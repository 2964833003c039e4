"""How long it takes to save a page with a station in it, how large it is, and how fast it opens beside one without.

Run with `make bench ONLY="saving"`. The station is a large one of those the tests draw. Pages with and without it are
opened by turns, and the fastest openings compared.
"""

import shutil
import statistics
import tempfile
import time
from pathlib import Path

from engines import SAVED
from playwright.sync_api import Browser, BrowserContext, sync_playwright
from stations import stations
from test_saved_own import own
from test_station_page import page_with
from visits import DESKTOP, FLAGS, READERS, START_MS

LARGE = 24
"""The one with twelve lines at the most."""
SAVES = 5
OPENINGS = 12
AIMED_SAVE_S = 2.0
AIMED_OPENING = 1.05

READY = "() => document.querySelector('jw-app').stage === 'ready'"
PAINTED = """() => new Promise((go) => new PerformanceObserver((list) => go(list.getEntries()[0].startTime))
  .observe({type: 'paint', buffered: true}))"""


def opened(context: BrowserContext, file: Path) -> tuple[float, float]:
    """Milliseconds to the first paint and to the core's first answer."""
    page = context.new_page()
    page.set_default_timeout(START_MS)
    page.goto(file.as_uri())
    page.wait_for_function(READY)
    times = page.evaluate(PAINTED), page.evaluate("() => performance.now()")
    page.close()
    return times


def saved(context: BrowserContext, file: Path, target: Path) -> list[float]:
    """Seconds from the press of the button to the file, some times over."""
    page = context.new_page()
    page.set_default_timeout(START_MS)
    page.goto(file.as_uri())
    page.wait_for_function(READY)
    own(page)
    times = []
    for _ in range(SAVES):
        start = time.perf_counter()
        with page.expect_download() as saving:
            page.locator("#save-page").click()
        times.append(time.perf_counter() - start)
        saving.value.save_as(target)
    page.close()
    return times


def report(browser: Browser, folder: Path) -> None:
    """Print what was measured beside what is aimed at."""
    content = stations(LARGE + 1)[LARGE]
    context = browser.new_context(**DESKTOP, offline=True, accept_downloads=True)
    context.add_init_script(path=READERS)
    mine = folder / "mine.html"
    times = saved(context, page_with(content, folder / "with.html"), mine)
    lines, tables = len(content["kept"]["lines"]["lines"]), mine.read_text("utf-8").partition("<jw-app>")[2]
    inside = len(tables.partition("</jw-app>")[0].encode())
    built = SAVED.read_text("utf-8").partition("<jw-app>")[2].partition("</jw-app>")[0]
    carried = len(mine.read_text("utf-8").partition('id="carried">')[2].partition("</script>")[0].encode())
    rest = mine.stat().st_size - SAVED.stat().st_size - carried - (inside - len(built.encode()))
    print(f"A station with {lines} lines:")
    print(f"page without it {SAVED.stat().st_size / 1e6:.3f} MB, with it {mine.stat().st_size / 1e6:.3f} MB")
    print(f"  of that its content {carried / 1e3:.1f} kB, its tables {inside / 1e3:.0f} kB in place of")
    print(f"  {len(built.encode()) / 1e3:.0f} kB, and {rest} bytes of title")
    print(f"saving: fastest {min(times):.2f} s, median {statistics.median(times):.2f} s; aim below {AIMED_SAVE_S:g} s")
    openings: dict[Path, list[tuple[float, float]]] = {SAVED: [], mine: []}
    for at in range(OPENINGS):
        for file in (SAVED, mine) if at % 2 else (mine, SAVED):
            openings[file].append(opened(context, file))
    for at, what in enumerate(("first paint", "first answer")):
        # the fastest of each: what else the machine does only adds
        without, with_it = (min(one[at] for one in openings[file]) for file in (SAVED, mine))
        ratio = with_it / without
        print(f"{what}: {without:.0f} ms without, {with_it:.0f} ms with it; ratio {ratio:.3f}, aim {AIMED_OPENING:g}")
    context.close()


def main() -> None:
    """Measure in the Chromium on PATH."""
    with sync_playwright() as playwright, tempfile.TemporaryDirectory() as folder:
        browser = playwright.chromium.launch(executable_path=shutil.which("chromium"), args=FLAGS)
        report(browser, Path(folder))
        browser.close()


if __name__ == "__main__":
    main()
