"""What the end-to-end tests share: the served page's address, one browser, and visits that must stay clean."""

import re
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect, sync_playwright

pytest.register_assert_rewrite("reading")

ROOT = Path(__file__).parents[1]
READERS = Path(__file__).with_name("readers.js")
AXE = ROOT / "frontend/node_modules/axe-core/axe.min.js"
PATIENCE_MS = 120_000
"""Nothing is timed here: a limit only ends a test that hangs, on a machine however busy."""
START_MS = 600_000
"""For what waits until Python has started in a browser."""
expect.set_options(timeout=PATIENCE_MS)

WINDOWLESS = "chromium-headless-shell"
"""The Chromium without a window: one with a window, which `engines.py` starts, takes twice as long."""

FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]

DESKTOP = {"viewport": {"width": 1440, "height": 900}}
TABLET = {"viewport": {"width": 820, "height": 1180}, "device_scale_factor": 2, "has_touch": True, "is_mobile": True}
PHONE = {"viewport": {"width": 390, "height": 844}, "device_scale_factor": 3, "has_touch": True, "is_mobile": True}
WIDE = {"viewport": {"width": 1600, "height": 1000}}
SIZES = {"phone": PHONE, "tablet": TABLET, "desktop": DESKTOP}

BLOCKED = "Service Worker registration blocked"
"""What the driver itself writes: a page kept by a worker would answer for a server that is meant to be gone."""

Visit = Callable[..., Page]


@contextmanager
def served(port: int = 0, *options: str) -> Iterator[str]:
    """The address of `jointwise serve`, which runs for as long as the block does."""
    command = [sys.executable, "-m", "jointwise.backend.cli", "serve", "--port", str(port), *options]
    with subprocess.Popen(command, stderr=subprocess.PIPE, text=True) as server:
        try:
            yield re.search(r"http://[\d.:]+/", server.stderr.readline())[0]
        finally:
            server.terminate()


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """The address of a server that every test may use."""
    with served() as address:
        yield address


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """The Chromium on PATH that has no window."""
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=shutil.which(WINDOWLESS), args=FLAGS)
        yield browser
        browser.close()


@pytest.fixture
def elsewhere(browser: Browser) -> Iterator[BrowserContext]:
    """Another browser without a network, in which pages are opened from disk."""
    context = browser.new_context(**DESKTOP, offline=True, accept_downloads=True)
    context.add_init_script(path=READERS)
    yield context
    context.close()


@pytest.fixture
def visit(browser: Browser, address: str) -> Iterator[Visit]:
    """Opens pages, each in a context of its own, and fails the test if one of them was not clean.

    `forgiven` is a pattern of what the test provokes by intent; `prepare` is given the context before the page loads.
    """
    with ExitStack() as stack:

        def opened(
            fragment: str = "",
            site: str = address,
            forgiven: str | None = None,
            prepare: Callable[[BrowserContext], Any] | None = None,
            **options: Any,
        ) -> Page:
            context = stack.enter_context(clean(browser, site, forgiven, **options))
            if prepare:
                prepare(context)
            page = context.new_page()
            page.goto(site + fragment)
            return page

        yield opened


@contextmanager
def clean(browser: Browser, site: str, forgiven: str | None, **options: Any) -> Iterator[BrowserContext]:
    """A context whose pages ask nobody but the site, keep to its policy and leave nothing in the console."""
    wrong: list[str] = []

    def note(what: str) -> None:
        if BLOCKED not in what and not (forgiven and re.search(forgiven, what)):
            wrong.append(what)

    context = browser.new_context(**(DESKTOP | {"service_workers": "block"} | options))
    context.set_default_timeout(PATIENCE_MS)
    context.add_init_script(path=READERS)
    context.expose_function("noteViolation", lambda what: note(f"policy: {what}"))
    context.on("request", lambda request: is_own(request.url, site) or note(f"request to {request.url}"))
    context.on("console", lambda message: message.type in ("error", "warning") and note(f"console: {message.text}"))
    context.on("weberror", lambda error: note(f"page error: {error.error}"))
    context.on("dialog", lambda dialog: (note(f"dialog: {dialog.message}"), dialog.dismiss()))
    yield context
    context.close()

    assert wrong == [], wrong


def is_own(url: str, site: str) -> bool:
    """Whether a request stays with the site or inside the page."""
    return url.startswith((site, "data:", "blob:"))
