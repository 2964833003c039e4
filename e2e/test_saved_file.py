"""The saved page: one file, opened from disk, with no network and no server."""

import json
import threading
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest
from expected import numbers
from playwright.sync_api import Browser, Page, expect
from reading import assert_numbers
from visits import DESKTOP, READERS, ROOT, TABLET

from jointwise.calc.operations import InputError, call

SAVED = ROOT / "dist" / "jointwise.html"
START_MS = 120_000
"""A busy machine takes long to start Python; nothing is timed here."""


class Saved:
    """One saved page with everything it asked for."""

    def __init__(self, page: Page):
        self.page = page
        self.asked: list[str] = []
        page.set_default_timeout(START_MS)
        page.add_init_script(path=READERS)
        page.on("request", lambda request: self.asked.append(request.url))

    def open(self, file: Path = SAVED, fragment: str = "") -> Page:
        """Open the file and wait until the core in it answers."""
        self.page.goto(file.as_uri() + fragment)
        return self.page

    def ready(self) -> Page:
        """The page once its own core has answered."""
        self.page.wait_for_function("() => document.querySelector('jw-app').stage === 'ready'", timeout=START_MS)
        expect(self.page.locator("jw-progress")).to_have_attribute("status", "complete", timeout=START_MS)
        return self.page


@pytest.fixture
def saved(browser: Browser) -> Iterator[Saved]:
    """A saved page in a context without a network."""
    context = browser.new_context(**DESKTOP, offline=True)
    yield Saved(context.new_page())
    context.close()


@pytest.fixture
def ear() -> Iterator[list[str]]:
    """What a plain HTTP server on this machine is asked while the test runs."""
    heard: list[str] = []

    class Ear(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            heard.append(self.path)
            self.send_error(404)

        def log_message(self, *_: object) -> None:
            return

    server = ThreadingHTTPServer(("127.0.0.1", 0), Ear)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    yield heard
    server.shutdown()
    server.server_close()


def test_it_computes_from_disk_and_asks_nobody(saved: Saved, ear: list[str]) -> None:
    """A changed control brings the core's own numbers; the only address loaded is the file and its worker."""
    saved.open()
    page = saved.ready()

    page.locator("#vswr").fill("3")
    page.keyboard.press("Tab")

    assert_numbers(page, numbers(vswr=3))
    assert [url for url in saved.asked if not url.startswith(("file:", "blob:"))] == []
    assert ear == []


def test_a_cell_opens_with_its_charts(saved: Saved) -> None:
    """The derivation and the charts come out of the file too."""
    saved.open()
    page = saved.ready()

    page.locator("td[data-family=uhf][data-band='70cm'] button").click()

    expect(page.locator("jw-derivation math").first).to_be_visible()
    expect(page.locator("jw-chart .scatterlayer").first).to_be_attached(timeout=START_MS)


def test_a_link_and_a_reload_restore_the_view(saved: Saved) -> None:
    """A fragment sets the station, and it is there again after a reload."""
    saved.open(fragment="#vswr=2&mode=fm")
    page = saved.ready()
    assert_numbers(page, numbers(vswr=2, mode="fm"))

    page.reload()
    saved.ready()

    assert_numbers(page, numbers(vswr=2, mode="fm"))


def test_controls_touched_while_python_starts_are_applied(browser: Browser) -> None:
    """Taps on a tablet before the core is ready count as soon as it is."""
    context = browser.new_context(**TABLET, offline=True)
    saved = Saved(context.new_page())
    page = saved.open()

    page.get_by_role("button", name="2 m / 70 cm").tap()
    assert page.evaluate("() => document.querySelector('jw-app').stage") != "ready"
    saved.ready()

    assert "mode=fm" in page.url
    expect(page.locator("jw-matrix thead th[data-band]")).to_have_count(4)
    expect(page.locator("jw-matrix td").first).to_have_attribute("data-band", "6m")
    context.close()


def test_without_scripts_the_tables_can_be_read(browser: Browser) -> None:
    """With scripts off the matrix, its legend, the derivations and the cautions stand in the file itself."""
    context = browser.new_context(**TABLET, java_script_enabled=False)
    page = context.new_page()
    page.goto(SAVED.as_uri())

    expect(page.get_by_role("heading", name="100 W SSB")).to_be_visible()
    expect(page.locator("table.plain").nth(1).locator("tbody tr")).to_have_count(19)
    expect(page.get_by_text("RF burns").first).to_be_visible()
    page.locator("summary", has_text="BNC").first.click()
    expect(page.locator("details[open]").get_by_text("The centre contact reaches")).to_be_visible()
    context.close()


@pytest.mark.parametrize("part", ["python", "packages", "core"])
def test_an_altered_file_says_so_and_keeps_its_tables(saved: Saved, tmp_path: Path, part: str) -> None:
    """A payload that is not the one the page was built with is refused in words; the built-in matrix stays."""
    lines = SAVED.read_text("utf-8").split("\n")
    at = next(index for index, line in enumerate(lines) if f'id="part-{part}"' in line) + 1
    middle = len(lines[at]) // 2
    lines[at] = lines[at][:middle] + ("A" if lines[at][middle] != "A" else "B") + lines[at][middle + 1 :]
    altered = tmp_path / "altered.html"
    altered.write_text("\n".join(lines), "utf-8")

    page = saved.open(altered)

    expect(page.get_by_role("alert")).to_contain_text("only the built-in tables can be shown", timeout=START_MS)
    assert_numbers(page, numbers())


def test_a_truncated_file_says_so(saved: Saved, tmp_path: Path) -> None:
    """A download that broke off still shows the built-in matrix, and says what does not work."""
    cut = tmp_path / "cut.html"
    whole = SAVED.read_bytes()
    cut.write_bytes(whole[: len(whole) // 2])

    page = saved.open(cut)

    expect(page.get_by_role("alert")).to_contain_text("only the built-in tables can be shown", timeout=START_MS)
    assert_numbers(page, numbers())


def test_a_killed_worker_is_replaced(saved: Saved) -> None:
    """When the worker is ended from outside the page answers the next request all the same."""
    page = saved.page
    page.add_init_script(
        "const Real = Worker; window.workers = [];"
        "window.Worker = class extends Real { constructor(...a) { super(...a); window.workers.push(this); } };"
    )
    saved.open()
    saved.ready()

    page.evaluate("() => window.workers[0].dispatchEvent(new ErrorEvent('error', {message: 'killed'}))")
    page.locator("#vswr").fill("2")
    page.keyboard.press("Tab")

    assert_numbers(page, numbers(vswr=2))
    assert page.evaluate("() => window.workers.length") == 2


def requests() -> list[tuple[str, dict]]:
    """At least two hundred requests: every operation, edges and errors included."""
    catalogue = json.loads(call("catalogue", b"{}"))
    families = [family["id"] for family in catalogue["families"]]
    cells = [
        {"family": family, "band": band, "power_w": power, "mode": mode}
        for family in families
        for band, power, mode in (("20m", 100.0, "ssb"), ("2m", 1500.0, "ft8"), ("23cm", 5.0, "cw"), ("3cm", 0.0, "fm"))
    ]
    spots = [
        {"family": family, "frequency_hz": 1e5 * 7**step, "vswr": 20.0} for step, family in enumerate(families[:7])
    ]
    fields = [
        ("vswr", [1.0, 1.01, 20.0, 0.5, 21, "a", None]),
        ("altitude_m", [0.0, 11000.0, 20000.0, 30000.0, -1, 30001]),
        ("ambient_temperature_c", [-60.0, 80.0, 81, -61]),
        ("solar_irradiance_w_per_m2", [1400.0, 1401]),
        ("added_resistance_ohm", [5.0, 6]),
        ("system_impedance_ohm", [25.0, 75.0, 150.0, 151]),
        ("return_loss_asked_db", [6.0, 40.0, 41]),
        ("cable_diameter_m", [0.005, 0.1, 1]),
        ("transmit_share", [0.001, 1.0, 0]),
        ("on_time_s", [3.0]),
        ("region", [1, 2, 3, 4]),
        ("exposure", ["sheltered", "exposed", "immersed", "wet"]),
        ("vibration", ["vehicle", "severe", "x"]),
        ("condition", ["worn", "corroded", "new_old"]),
        ("power_is", ["net", "gross"]),
        ("cable_dielectric", ["ptfe", "foam_pe", "wood"]),
        ("mode", [mode["id"] for mode in catalogue["modes"]] + ["semaphore"]),
        ("families", [[family] for family in families] + [["nothing"], []]),
        ("bands", [[band["id"]] for band in catalogue["bands"] if "1" in band["regions"]] + [["11m"], []]),
        ("powers_w", [[0.0], [0.001], [1e5], [], [-1], [1_000_000], [5e-324]]),
        ("frequencies_hz", [[1e5], [5e10], [1e4], [144e6, 432e6]]),
        ("added_sealing", [True, False, 1]),
        ("matings_per_year", [0.0, 10000.0, -1]),
        ("service_life_years", [0.1, 100.0, 0]),
        ("nonsense", [1]),
    ]
    matrices = [{name: value} for name, values in fields for value in values]
    return [
        ("catalogue", {}),
        *(("cell", one) for one in cells + spots + [{}, {"family": "n"}, {"family": "x", "band": "2m"}]),
        *(("matrix", one) for one in matrices),
    ]


def as_typed(value: object) -> object:
    """The value as a page writes it: whole numbers without a decimal point."""
    if isinstance(value, dict):
        return {key: as_typed(one) for key, one in value.items()}
    if isinstance(value, list):
        return [as_typed(one) for one in value]
    return int(value) if isinstance(value, float) and value.is_integer() else value


def answer(operation: str, request: dict) -> object:
    """What the core on this machine says, in the form the page's core gives."""
    try:
        return json.loads(call(operation, json.dumps(request).encode()))
    except InputError as error:
        return {"refused": str(error), "field": error.field}


def difference(one: object, other: object, path: str = "") -> str:
    """Where two answers differ in structure, text, or in a number by more than 1e-12."""
    if isinstance(one, bool) or isinstance(other, bool) or not isinstance(one, (int, float)):
        if isinstance(one, dict) and isinstance(other, dict) and list(one) == list(other):
            return next((found for key in one if (found := difference(one[key], other[key], f"{path}.{key}"))), "")
        if isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
            pairs = enumerate(zip(one, other, strict=True))
            return next((found for i, (a, b) in pairs if (found := difference(a, b, f"{path}[{i}]"))), "")
        return "" if one == other else f"{path}: {one!r} and {other!r}"
    close = isinstance(other, (int, float)) and abs(one - other) <= 1e-12 * max(abs(one), abs(other), 1)
    return "" if close else f"{path}: {one!r} and {other!r}"


def test_both_homes_give_the_same_answers(saved: Saved) -> None:
    """Two hundred requests and more get the same answers from the saved page's core as on this machine."""
    asked = [(operation, as_typed(request)) for operation, request in requests()]
    saved.open()
    page = saved.ready()
    found = page.evaluate(
        """async (asked) => {
          const {transport} = document.querySelector('jw-app');
          const answers = [];
          for (const [operation, request] of asked) {
            try { answers.push(await transport.ask(operation, request)); }
            catch (error) { answers.push({refused: error.message, field: error.field}); }
          }
          return answers;
        }""",
        asked,
    )

    assert len(asked) >= 200
    for (operation, request), other in zip(asked, found, strict=True):
        assert difference(answer(operation, request), other) == "", (operation, request)


def test_storage_that_is_blocked_is_no_obstacle(browser: Browser) -> None:
    """A page that may keep nothing works all the same."""
    context = browser.new_context(**DESKTOP, offline=True)
    saved = Saved(context.new_page())
    saved.page.add_init_script(
        "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError'); }});"
    )
    saved.open()
    page = saved.ready()

    page.get_by_role("button", name="Dark").click()

    expect(page.locator("html")).to_have_attribute("data-theme", "dark")
    assert_numbers(page, numbers())
    context.close()
