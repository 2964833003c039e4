"""The served page goes on without its server, and takes a newer build when its reader says so."""

import base64
import hashlib
import json
import shutil
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path
from urllib.parse import urljoin

import pytest
from expected import numbers
from playwright.sync_api import Browser, BrowserContext, Page, Route, expect
from reading import assert_numbers, open_cell, settled, share, with_charts
from test_served_trouble import LOST, free_port, type_vswr
from visits import FLAGS, ROOT, START_MS, Visit, clean, served

DIST = ROOT / "dist"

A_WHILE_MS = 60_000
"""Longer than a server that was away is left alone."""

AWAY = f"{LOST}|ERR_INTERNET_DISCONNECTED|ERR_FAILED"
NEWER = "A newer Jointwise is ready."


def kept(page: Page) -> Page:
    """The page, once the browser has all of it and its service worker is in charge."""
    page.set_default_timeout(START_MS)
    page.wait_for_function("() => navigator.serviceWorker.controller !== null")
    return settled(page)


def let_a_while_pass(page: Page) -> None:
    """Put the page's clock forward."""
    page.evaluate("(ms) => { const {now} = Date; Date.now = () => now() + ms; }", A_WHILE_MS)


def assert_server_answers(page: Page, vswr: float) -> None:
    """A change is answered by the server, with the core's numbers."""
    with page.expect_response("**/api/v1/matrix") as answer:
        type_vswr(page, str(vswr))
    assert answer.value.ok
    assert_numbers(page, numbers(vswr=vswr))


def assert_server_is_found_again(page: Page) -> None:
    """After a while the page looks for its server beside a request, and asks it the next one."""
    let_a_while_pass(page)
    with page.expect_response("**/api/v1/health"):
        type_vswr(page, "4")
    assert_numbers(page, numbers(vswr=4))
    assert_server_answers(page, 5)


def test_it_opens_and_computes_after_its_server_is_gone(visit: Visit) -> None:
    """After one visit the page opens without its server; changes and derivations come from the browser's own core."""
    with served() as site:
        page = kept(visit(site=site, service_workers="allow", forgiven=AWAY))
    page.reload()
    assert_numbers(page, numbers())

    type_vswr(page, "3")
    assert_numbers(page, numbers(vswr=3))

    derivation = open_cell(page, "n", "20m")
    derivation.locator("jw-match summary").first.click()
    expect(derivation.locator("math").first).to_be_visible()


def test_a_link_opens_without_a_network(visit: Visit, address: str) -> None:
    """With the network off a link opened in a new tab shows its station."""
    page = kept(visit(service_workers="allow", forgiven=AWAY))
    page.context.set_offline(True)

    other = page.context.new_page()
    other.set_default_timeout(START_MS)
    other.goto(f"{address}#vswr=2&mode=fm")

    assert_numbers(other, numbers(vswr=2, mode="fm"))


def test_a_server_that_is_back_is_asked_again(visit: Visit) -> None:
    """Once the server is back it answers again, and nobody has to reload the page."""
    port = free_port()
    with served(port) as site:
        page = kept(visit(site=site, service_workers="allow", forgiven=AWAY))
    type_vswr(page, "3")
    assert_numbers(page, numbers(vswr=3))

    with served(port):
        assert_server_is_found_again(page)


def broken_off(route: Route) -> None:
    route.abort()


def answered_by_a_gateway(route: Route) -> None:
    route.fulfill(status=502, content_type="text/html", body="<h1>Bad gateway</h1>")


@pytest.mark.parametrize("fault", [broken_off, answered_by_a_gateway])
def test_a_core_lost_in_mid_use_is_replaced(visit: Visit, fault: Callable[[Route], None]) -> None:
    """A page that is not kept computes by itself when the server's core is lost, and returns to it when it is well."""
    page = settled(visit(forgiven=f"{AWAY}|status of 502"))
    page.set_default_timeout(START_MS)
    page.route("**/api/**", fault)

    type_vswr(page, "3")
    assert_numbers(page, numbers(vswr=3))

    page.unroute("**/api/**")
    assert_server_is_found_again(page)


def test_a_core_that_runs_in_the_browser_needs_nothing_more(visit: Visit) -> None:
    """Once it has started, the core in the browser answers without any network, kept page or not."""
    page = settled(visit(forgiven=AWAY))
    page.set_default_timeout(START_MS)
    page.route("**/api/**", broken_off)
    type_vswr(page, "3")
    assert_numbers(page, numbers(vswr=3))

    page.context.set_offline(True)
    type_vswr(page, "2")

    assert_numbers(page, numbers(vswr=2))


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A copy of the page's files, which a test may change."""
    return shutil.copytree(DIST / "site", tmp_path / "site")


@pytest.fixture
def site(folder: Path) -> Iterator[str]:
    """The address of a server that serves the folder; asked for before `visit`, it outlives the pages."""
    with served(0, "--page-folder", str(folder)) as address:
        yield address


def change_title(folder: Path, title: str) -> None:
    """Change the page in the folder, and nothing that tells of it."""
    start = folder / "index.html"
    start.write_text(start.read_text("utf-8").replace("<title>Jointwise</title>", f"<title>{title}</title>"), "utf-8")


def build_anew(folder: Path, title: str, files: dict[str, str] | None = None) -> None:
    """Make the folder another build, which bears the title and has other files."""
    change_title(folder, title)
    worker = folder / "service-worker.js"
    head, code = worker.read_text("utf-8").split(";\n", 1)
    known = json.loads(head.removeprefix("const BUILD="))
    start = folder / "index.html"
    start.write_text(start.read_text("utf-8").replace(known["version"], title.replace(" ", "-")), "utf-8")
    known["version"] = title.replace(" ", "-")
    for name, text in (files or {}).items():
        (folder / name).write_text(text, "utf-8")
    for name, path in {"./": start, **{name: folder / name for name in files or {}}}.items():
        known["files"][name] = f"sha256-{base64.b64encode(hashlib.sha256(path.read_bytes()).digest()).decode()}"
    worker.write_text(f"const BUILD={json.dumps(known)};\n{code}", "utf-8")


def test_a_newer_build_waits_for_its_reader(folder: Path, site: str, visit: Visit) -> None:
    """A newer build is offered and never loads by itself; taking it keeps the station that was set."""
    page = kept(visit(site=site, service_workers="allow"))
    type_vswr(page, "3")
    build_anew(folder, "Second build")

    page.reload()
    expect(page.get_by_role("status").filter(has_text=NEWER)).to_be_visible(timeout=START_MS)
    expect(page).to_have_title("Jointwise")
    page.get_by_role("button", name="Load it").click()

    expect(page).to_have_title("Second build", timeout=START_MS)
    assert_numbers(page, numbers(vswr=3))
    expect(page.get_by_text(NEWER)).to_have_count(0)


def test_a_declined_build_stays_away_and_is_offered_again(folder: Path, site: str, visit: Visit) -> None:
    """A newer build that the reader closed the notice on is not loaded by the next visit, but offered again."""
    page = kept(visit(site=site, service_workers="allow"))
    build_anew(folder, "Second build")
    page.reload()
    page.locator("jw-notice").get_by_role("button", name="Close").click()

    page.reload()

    expect(page.get_by_role("button", name="Load it")).to_be_visible(timeout=START_MS)
    expect(page).to_have_title("Jointwise")


def test_a_newer_build_taken_in_one_tab_can_be_taken_in_another(folder: Path, site: str, visit: Visit) -> None:
    """A tab is not loaded anew because another took the newer build; its own button does it when pressed."""
    first = kept(visit(site=site, service_workers="allow", forgiven=AWAY))
    second = first.context.new_page()
    second.goto(site)
    kept(second)
    build_anew(folder, "Second build")
    first.reload()
    expect(second.get_by_role("button", name="Load it")).to_be_visible(timeout=START_MS)
    second.evaluate("() => navigator.serviceWorker.addEventListener('controllerchange', () => (window.led = true))")

    first.get_by_role("button", name="Load it").click()
    expect(first).to_have_title("Second build", timeout=START_MS)
    second.wait_for_function("() => window.led")
    expect(second).to_have_title("Jointwise")
    second.get_by_role("button", name="Load it").click()

    expect(second).to_have_title("Second build", timeout=START_MS)
    for page in (first, second):
        settled(page)


CACHES = "async () => (await caches.keys()).sort()"
CHARTS_OF = "() => window.chartsOf ?? 'first'"


def other_files(folder: Path) -> dict[str, str]:
    """Files of a build whose charts say that they are its own, and whose core can't be started."""
    charts = (folder / "charts.js").read_text("utf-8")
    return {"charts.js": f"{charts};\nwindow.chartsOf = 'second';", "payload/payload.json": '{"parts": []}'}


def test_a_tab_goes_on_with_the_files_of_its_own_build(visit: Visit, folder: Path) -> None:
    """After another tab took a newer build, a tab of the older one finds its own charts and core, without a network."""
    port = free_port()
    with served(port, "--page-folder", str(folder)) as site:
        older = kept(visit(site=site, service_workers="allow", forgiven=AWAY))
        newer = older.context.new_page()
        newer.goto(site)
        kept(newer)
        build_anew(folder, "Second build", other_files(folder))
        newer.reload()
        newer.get_by_role("button", name="Load it").click(timeout=START_MS)
        expect(newer).to_have_title("Second build", timeout=START_MS)
        settled(newer)
        open_cell(newer, "n", "20m")
        with_charts(newer)
        expect(older.get_by_role("button", name="Load it")).to_be_visible()
        older.get_by_role("button", name="Close", exact=True).first.click()
    older.context.set_offline(True)

    type_vswr(older, "3")
    assert_numbers(older, numbers(vswr=3))
    open_cell(older, "n", "20m")
    with_charts(older)

    expect(older).to_have_title("Jointwise")
    assert [older.evaluate(CHARTS_OF), newer.evaluate(CHARTS_OF)] == ["first", "second"]


def test_a_build_that_no_tab_uses_is_forgotten(folder: Path, site: str, visit: Visit) -> None:
    """The files of a build stay as long as a tab runs it, and go when the last one is closed or loaded anew."""
    older = kept(visit(site=site, service_workers="allow", forgiven=AWAY))
    newer = older.context.new_page()
    newer.goto(site)
    kept(newer)
    [first] = older.evaluate(CACHES)
    build_anew(folder, "Second build")
    newer.reload()
    newer.get_by_role("button", name="Load it").click(timeout=START_MS)
    expect(newer).to_have_title("Second build", timeout=START_MS)
    newer.reload()
    settled(newer)
    newer.wait_for_timeout(500)
    assert sorted([first, "jointwise-Second-build"]) == newer.evaluate(CACHES)

    older.close()
    newer.reload()

    newer.wait_for_function("async () => (await caches.keys()).join() === 'jointwise-Second-build'")


def test_half_a_build_is_not_taken(folder: Path, site: str, visit: Visit) -> None:
    """A build with a file that is not its own is neither offered nor kept; the one before goes on."""
    page = kept(visit(site=site, service_workers="allow", forgiven="integrity|Failed to (load|fetch)"))
    build_anew(folder, "Second build")
    (folder / "app.css").write_text("body { display: none; }", "utf-8")

    refused = page.evaluate(
        """async () => {
          const registration = await navigator.serviceWorker.ready;
          const {installing, waiting} = await registration.update();
          if (!installing) return waiting === null;
          return new Promise((tell) => {
            installing.addEventListener('statechange', () => tell(installing.state === 'redundant'));
          });
        }"""
    )
    page.reload()

    assert refused
    assert_numbers(settled(page), numbers())
    expect(page).to_have_title("Jointwise")
    expect(page.get_by_text(NEWER)).to_have_count(0)


@pytest.fixture
def windowed(browser: Browser, address: str) -> Iterator[BrowserContext]:
    """A Chromium with a window: only there a page can be installed."""
    with (
        closing(browser.browser_type.launch(executable_path=shutil.which("chromium"), args=FLAGS)) as one,
        clean(one, address, None, service_workers="allow") as context,
    ):
        yield context


def test_it_can_be_installed(windowed: BrowserContext, address: str) -> None:
    """The browser finds no fault with the manifest; each icon has the size it states, and the start address opens."""
    page = windowed.new_page()
    page.goto(address)
    kept(page)
    devtools = page.context.new_cdp_session(page)

    found = devtools.send("Page.getAppManifest")
    faults = devtools.send("Page.getInstallabilityErrors")["installabilityErrors"]
    manifest = json.loads(found["data"])

    assert found["errors"] == []
    assert [fault["errorId"] for fault in faults] == ["in-incognito"]
    assert manifest["name"] == "Jointwise"
    for icon in manifest["icons"]:
        width, height = page.evaluate(
            """async (address) => {
              const picture = new Image();
              picture.src = address;
              await picture.decode();
              return [picture.naturalWidth, picture.naturalHeight];
            }""",
            urljoin(found["url"], icon["src"]),
        )
        assert icon["sizes"] in ("any", f"{width}x{height}")
    page.goto(urljoin(found["url"], manifest["start_url"]))
    assert_numbers(settled(page), numbers())


def test_the_one_file_is_saved_whole(visit: Visit) -> None:
    """The button of the served page saves the one-file page, byte for byte."""
    page = kept(visit(service_workers="allow"))

    with page.expect_download() as waiting:
        share(page).get_by_role("link", name="Save for offline use").click()

    assert waiting.value.suggested_filename == "jointwise.html"
    assert Path(waiting.value.path()).read_bytes() == (DIST / "jointwise.html").read_bytes()
