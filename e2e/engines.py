"""Three engines behind one interface, so that what the saved page must do is said once for all of them."""

import json
import os
import shutil
import subprocess
import threading
from abc import ABC, abstractmethod
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import ExitStack, contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from playwright.sync_api import BrowserContext, Page, Playwright, sync_playwright
from selenium.webdriver import Keys, Remote
from selenium.webdriver.remote.client_config import ClientConfig
from selenium.webdriver.remote.remote_connection import RemoteConnection
from selenium.webdriver.remote.webelement import WebElement
from selenium.webdriver.webkitgtk.options import Options
from selenium.webdriver.webkitgtk.service import Service
from visits import DESKTOP, FLAGS, READERS, ROOT

SAVED = ROOT / "dist" / "jointwise.html"
PATIENCE_S = 600
"""As `START_MS` of visits: only what hangs is ended."""

NEVER = 2
"""Chromium's number, in its settings, for what no page may do."""

OWN = ("file:", "blob:", "data:", "about:")
"""Addresses that lie on the disk or in the page."""

PRELUDE = f"""
window.wrong = [];
window.noteViolation = (what) => wrong.push(what);
addEventListener('error', (event) => wrong.push(event.message));
addEventListener('unhandledrejection', (event) => wrong.push(String(event.reason)));
{READERS.read_text("utf-8")}
"""

COMES = """async (holds, given, patience) => {
  const end = performance.now() + patience;
  while (!holds(...given)) {
    if (performance.now() > end) return false;
    await new Promise((go) => setTimeout(go, 50));
  }
  return true;
}"""

IS_READY = """() => document.querySelector('jw-app').stage === 'ready'
  && readers.everywhere('jw-progress')[0].getAttribute('status') === 'complete'"""


class View(ABC):
    """A page open in an engine that can reach no network."""

    @abstractmethod
    def go(self, address: str) -> None:
        """Load an address."""

    @abstractmethod
    def reload(self) -> None:
        """Load the page again."""

    @abstractmethod
    def run(self, function: str, *given: Any) -> Any:
        """What a JavaScript function answers in the page."""

    @abstractmethod
    def click(self, selector: str) -> None:
        """Click the first element that a selector matches, in whichever shadow root."""

    @abstractmethod
    def enter(self, selector: str, text: str) -> None:
        """Put a text into a field and leave it."""

    @abstractmethod
    def logged(self) -> list[str]:
        """Every address that was asked for, as seen from outside the page."""

    def open(self, fragment: str = "") -> None:
        """Load the saved page from disk."""
        self.go(SAVED.as_uri() + fragment)

    def comes(self, condition: str, *given: Any) -> bool:
        """Whether a JavaScript condition comes to hold."""
        return self.run(f"(...given) => ({COMES})({condition}, given, {PATIENCE_S * 1000})", *given)

    def ready(self) -> None:
        """Wait until the core in the page has answered."""
        if not self.comes(IS_READY):
            raise AssertionError(self.run("() => `stuck at '${document.querySelector('jw-app').stage}'`"))

    def asked(self) -> list[str]:
        """The addresses outside the file that were asked for, by the log and by the page's own record."""
        timed = self.run("() => performance.getEntriesByType('resource').map((entry) => entry.name)")
        return [address for address in self.logged() + timed if not address.startswith(OWN)]

    def wrong(self) -> list[str]:
        """What broke the page's policy, and errors that nothing in it caught."""
        return self.run("() => window.wrong ?? []")


Engine = Callable[..., Any]
"""Opens a view: `with engine() as view`; in one with `scripts=False` no script of the page runs, in one with
`storage=False` the browser is set to keep nothing for any page."""


class PlaywrightView(View):
    """A page that Playwright drives, in a context that is offline."""

    def __init__(self, do: Callable[..., Any], context: BrowserContext, scripts: bool):
        self._do = do
        self._scripts = scripts
        self._logged: list[str] = []
        self._page: Page = do(self._begin, context)

    def _begin(self, context: BrowserContext) -> Page:
        context.set_default_timeout(PATIENCE_S * 1000)
        context.add_init_script(PRELUDE)
        context.on("request", lambda request: self._logged.append(request.url))
        return context.new_page()

    def go(self, address: str) -> None:
        self._do(self._page.goto, address)

    def reload(self) -> None:
        self._do(self._page.reload)

    def run(self, function: str, *given: Any) -> Any:
        return self._do(self._page.evaluate, f"(given) => ({function})(...given)", list(given))

    def click(self, selector: str) -> None:
        # without scripts Firefox runs no timers either, by which Playwright sees an element come to rest
        self._do(lambda: self._page.locator(selector).first.click(force=not self._scripts))

    def enter(self, selector: str, text: str) -> None:
        # key by key: what is filled in at once Firefox takes for a script's doing, and tells of no change
        self._do(lambda: self._page.locator(selector).select_text())
        self._do(self._page.keyboard.type, text)
        self._do(self._page.keyboard.press, "Tab")

    def logged(self) -> list[str]:
        return list(self._logged)


class WebKitView(View):
    """A page that WebKit's own driver drives; all its HTTP is sent to `ear`."""

    def __init__(self, driver: Remote, ear: list[str]):
        self._driver = driver
        self._ear = ear

    def go(self, address: str) -> None:
        self._driver.get(address)
        self._driver.execute_script(PRELUDE)

    def reload(self) -> None:
        self._driver.refresh()
        self._driver.execute_script(PRELUDE)

    def run(self, function: str, *given: Any) -> Any:
        return self._driver.execute_script(f"return ({function})(...arguments)", *given)

    def _first(self, selector: str) -> WebElement:
        return self.run("(selector) => readers.everywhere(selector)[0]", selector)

    def click(self, selector: str) -> None:
        self._first(selector).click()

    def enter(self, selector: str, text: str) -> None:
        field = self._first(selector)
        # cleared by the driver it would count as given empty
        field.send_keys(Keys.CONTROL + "a")
        field.send_keys(text, Keys.TAB)

    def logged(self) -> list[str]:
        return list(self._ear)


@contextmanager
def played(launch: Callable[[Playwright], BrowserContext], scripts: bool) -> Iterator[View]:
    """A view in a browser that Playwright launches.

    It has a thread of its own: Playwright allows one start in a thread, and fixture `browser` has that of the tests.
    """
    with ThreadPoolExecutor(max_workers=1) as thread, ExitStack() as ends:

        def do(work: Callable[..., Any], *given: Any) -> Any:
            return thread.submit(work, *given).result()

        playwright = do(sync_playwright().start)
        ends.callback(do, playwright.stop)
        context = do(launch, playwright)
        ends.callback(do, lambda: context.browser.close() if context.browser else context.close())
        yield PlaywrightView(do, context, scripts)


@contextmanager
def chromium(scripts: bool = True, storage: bool = True) -> Iterator[View]:
    """A view in the Chromium on PATH."""
    begin: dict[str, Any] = {"executable_path": shutil.which("chromium"), "args": FLAGS}
    given: dict[str, Any] = {**DESKTOP, "offline": True, "java_script_enabled": scripts}
    with TemporaryDirectory() as profile:

        def launch(playwright: Playwright) -> BrowserContext:
            if storage:
                return playwright.chromium.launch(**begin).new_context(**given)
            chosen = Path(profile) / "Default" / "Preferences"
            chosen.parent.mkdir()
            chosen.write_text(json.dumps({"profile": {"default_content_setting_values": {"cookies": NEVER}}}))
            return playwright.chromium.launch_persistent_context(profile, **begin, **given)

        with played(launch, scripts) as view:
            yield view


@contextmanager
def firefox(scripts: bool = True, storage: bool = True) -> Iterator[View]:
    """A view in the Firefox ESR on PATH."""
    preferences = {
        "security.fileuri.strict_origin_policy": True,  # as users have it; automation relaxes it
        "javascript.enabled": scripts,  # Playwright's own switch does nothing over this protocol
        "dom.storage.enabled": storage,
    }

    def launch(playwright: Playwright) -> BrowserContext:
        browser = playwright.firefox.launch(
            channel="moz-firefox", executable_path=shutil.which("firefox-esr"), firefox_user_prefs=preferences
        )
        return browser.new_context(**DESKTOP, offline=True, java_script_enabled=scripts)

    with played(launch, scripts) as view:
        yield view


@contextmanager
def webkit(scripts: bool = True, storage: bool = True) -> Iterator[View]:
    """A view in Debian's WebKitGTK.

    It has no switch for the network and no log of requests; a proxy that answers nothing stands for both.
    """
    options = Options()
    options.binary_location = str(next(Path("/usr/lib").glob("*/webkit2gtk-4.1/MiniBrowser")))
    options.add_argument("--automation")
    options.add_argument(f"--enable-javascript={str(scripts).lower()}")
    options.add_argument(f"--enable-html5-local-storage={str(storage).lower()}")
    with screen() as display, listening() as (address, heard):
        options.set_capability("proxy", {"proxyType": "manual", "httpProxy": address, "sslProxy": address})
        with driven(options, display) as driver:
            yield WebKitView(driver, heard)


@contextmanager
def driven(options: Options, display: str) -> Iterator[Remote]:
    """A session of the WebKitWebDriver on PATH."""
    service = Service(shutil.which("WebKitWebDriver"), env={**os.environ, "DISPLAY": display})
    service.start()
    try:
        # Selenium's own class for this engine warns of a deprecated argument that it gives itself
        connection = RemoteConnection(client_config=ClientConfig(remote_server_addr=service.service_url))
        with Remote(connection, options=options) as driver:
            driver.set_window_size(**DESKTOP["viewport"])
            driver.set_script_timeout(PATIENCE_S * 2)
            yield driver
    finally:
        service.stop()


@contextmanager
def screen() -> Iterator[str]:
    """The name of an X display that nobody sees."""
    command = ["Xvfb", "-displayfd", "1", "-nolisten", "tcp"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True) as server:
        try:
            yield f":{server.stdout.readline().strip()}"
        finally:
            server.terminate()


@contextmanager
def listening() -> Iterator[tuple[str, list[str]]]:
    """The address of a proxy on this machine, and what it was asked for."""
    heard: list[str] = []

    class Ear(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            heard.append(self.path)
            self.send_error(404)

        do_CONNECT = do_GET

        def log_message(self, *_: object) -> None:
            return

    with ThreadingHTTPServer(("127.0.0.1", 0), Ear) as server:
        threading.Thread(target=server.serve_forever).start()
        try:
            yield f"127.0.0.1:{server.server_port}", heard
        finally:
            server.shutdown()


ENGINES: dict[str, Engine] = {"chromium": chromium, "firefox": firefox, "webkit": webkit}
