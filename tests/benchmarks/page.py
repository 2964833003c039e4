"""How fast the saved page is, in this machine's browsers, against a page that holds Python and numpy only.

Run with `make bench`. Prints what was measured beside what is aimed at; all
ratios are of times from the same run.
"""

import base64
import gzip
import hashlib
import io
import json
import re
import shutil
import statistics
import subprocess
import tempfile
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from engines import SAVED, View, webkit
from matrix import median_seconds
from playwright.sync_api import Browser, Page, sync_playwright
from visits import DESKTOP, FLAGS, ROOT

from jointwise.assemble.page import expanded, part_element, policy, script_text
from jointwise.calc.operations import call

PAYLOAD = ROOT / "dist/site/payload"
FRONTEND = ROOT / "frontend"
RUNTIME_PARTS = ("worker", "python", "stdlib", "packages")
"""What any page with Python and numpy has to hold."""

RUNS = 5
EVENTS = 90
QUESTIONS = 30
PATIENCE_MS = 120_000

AIMED_READY_RATIO = 1.2
AIMED_PAINT_S = 0.5
AIMED_DRAG_MS = 50
AIMED_REST_BYTES = 600_000

BARE_CORE = "import numpy\n\n\ndef answer(name, body, packs):\n    return b'0'\n"

BARE_PAGE = """
import {workerTransport} from './src/transport/worker.js';
import {embeddedPayload} from './src/worker/embedded.js';

const transport = workerTransport({payload: embeddedPayload(document), longestS: {anything: 60}});
transport.ask('anything', {}).then(() => (document.title = 'ready'));
"""

BARE_TEMPLATE = """<!doctype html>
<meta charset="utf-8">
{{policy}}
<title>starting</title>
<p>Python and numpy</p>
{{code}}
{{payload}}
"""

LISTEN = """
window.noted = [];
window.note = (kind, at) => noted.push({kind, at});

const dated = `{
  const post = self.postMessage.bind(self);
  self.postMessage = (message, ...rest) => post({...message, at: performance.timeOrigin + performance.now()}, ...rest);
}`;
window.Blob = class extends Blob {
  constructor(texts, options) {
    super(options?.type === 'text/javascript' ? [dated, ...texts] : texts, options);
  }
};
window.Worker = class extends Worker {
  constructor(...given) {
    super(...given);
    this.addEventListener('message', ({data}) => {
      note(`${data.kind} sent`, data.at - performance.timeOrigin);
      note(data.kind, performance.now());
    });
  }
  postMessage(message, ...rest) {
    note(message.kind, performance.now());
    super.postMessage(message, ...rest);
  }
};
"""
"""Goes before every page's own code; notes when each message is sent to the worker, by it, and heard from it."""

DRAG = """async ({events, waits}) => {
  const inside = (root, selector) => root.shadowRoot.querySelector(selector);
  const app = document.querySelector('jw-app');
  const slider = inside(inside(inside(app, 'jw-scenario'), 'jw-number-field[name=vswr]'), 'input[type=range]');
  const frame = () => new Promise(requestAnimationFrame);
  const afterPaint = async () => {
    await frame();
    const {port1, port2} = new MessageChannel();
    await new Promise((done) => { port1.onmessage = done; port2.postMessage(0); });
  };

  let changed;
  const watch = new MutationObserver(() => (changed = performance.now()));
  const everything = {subtree: true, childList: true, characterData: true, attributes: true};
  watch.observe(inside(app, 'jw-matrix').shadowRoot, everything);

  const all = [];
  let served = [];
  window.note = async (kind, at) => {
    // events that came while a request was under way share the next one
    if (kind === 'ask') served = all.filter((one) => one.ask === undefined);
    const mine = served;
    for (const one of mine) one[kind] = at;
    if (kind !== 'answer') return;
    await afterPaint();
    for (const one of mine) Object.assign(one, {changed, painted: performance.now()});
  };

  for (let n = 0; n < events; n++) {
    await frame();
    const one = {begun: performance.now()};
    all.push(one);
    slider.value = 50 + ((97 * n) % 900); // far enough from the one before to be another number
    slider.dispatchEvent(new Event('input'));
    while (waits && one.painted === undefined) await frame();
  }
  while (all.some((one) => one.painted === undefined)) await frame();
  watch.disconnect();
  return all;
}"""
"""Moves a slider, one event in a frame; `waits` lets each event be painted before the next."""

ASK = """async (questions) => {
  const {transport} = document.querySelector('jw-app');
  const all = [];
  for (let n = 0; n < questions; n++) {
    const one = {begun: performance.now()};
    window.note = (kind, at) => (one[kind] = at);
    await transport.ask('matrix', {});
    all.push({...one, ended: performance.now()});
  }
  return all;
}"""


def bare_page(folder: Path) -> Path:
    """A page from the payload's own parts whose core does no more than import numpy."""
    parts = {name: gzip.decompress((PAYLOAD / f"{name}.part").read_bytes()) for name in RUNTIME_PARTS}
    with zipfile.ZipFile(io.BytesIO(parts["packages"])) as packages:
        numpy = {name: packages.read(name) for name in packages.namelist() if name.startswith("numpy")}
    contents = parts | {"packages": archive(numpy), "core": archive({"jointwise/worker.py": BARE_CORE.encode()})}
    packed = {name: gzip.compress(data, mtime=0) for name, data in contents.items()}
    hashes = [{"name": name, "sha256": hashlib.sha256(data).hexdigest()} for name, data in packed.items()]
    code = script_text(bundled(BARE_PAGE))
    page = expanded(
        BARE_TEMPLATE,
        {
            "policy": f'<meta http-equiv="Content-Security-Policy" content="{policy([code])}">',
            "code": f'<script type="module">{code}</script>',
            "payload": "\n".join(
                [
                    f'<script type="application/json" id="payload">{json.dumps({"parts": hashes})}</script>',
                    *(part_element(name, base64.b64encode(data).decode()) for name, data in packed.items()),
                ]
            ),
        },
    )
    file = folder / "bare.html"
    file.write_text(page, "utf-8")
    return file


def archive(files: dict[str, bytes]) -> bytes:
    """A zip that is stored, not packed, as those of the payload."""
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w") as opened:
        for name, data in files.items():
            opened.writestr(name, data)
    return target.getvalue()


def bundled(code: str) -> str:
    """A module with all it imports, as one script."""
    command = [FRONTEND / "node_modules/.bin/esbuild", "--bundle", "--format=iife", "--minify"]
    return subprocess.run(command, input=code, cwd=FRONTEND, check=True, capture_output=True, text=True).stdout


@contextmanager
def opened(browser: Browser, file: Path) -> Iterator[Page]:
    """A page in a context of its own, once its core has answered."""
    context = browser.new_context(**DESKTOP, offline=True)
    page = context.new_page()
    page.add_init_script(LISTEN)
    page.goto(file.as_uri())
    page.wait_for_function("() => noted.some(({kind}) => kind === 'answer')", timeout=PATIENCE_MS)
    yield page
    context.close()


def start(browser: Browser, file: Path) -> dict[str, float]:
    """Milliseconds from navigation to each stage of a start."""
    with opened(browser, file) as page:
        page.wait_for_function("() => performance.getEntriesByName('first-contentful-paint').length")
        return page.evaluate(
            """() => ({
              paint: performance.getEntriesByName('first-contentful-paint')[0].startTime,
              parsed: performance.getEntriesByType('navigation')[0].domInteractive,
              start: noted.find(({kind}) => kind === 'start').at,
              ask: noted.find(({kind}) => kind === 'ask').at,
              answer: noted.find(({kind}) => kind === 'answer').at,
            })"""
        )


def starts(browser: Browser, bare: Path) -> None:
    """Print when the page is ready against the bare one, run by turns."""
    pairs = [(start(browser, SAVED), start(browser, bare)) for _ in range(RUNS)]
    ours, theirs = (
        {name: median([run[name] for run in runs]) for name in runs[0]} for runs in zip(*pairs, strict=True)
    )
    print(f"Start in Chromium, ms from navigation, median of {RUNS} by turns{'page':>15}{'bare':>10}{'ratio':>8}")
    words = {
        "parsed": "document parsed",
        "start": "worker started",
        "ask": "Python ready",
        "answer": f"first answer (aim {AIMED_READY_RATIO})",
    }
    for name, word in words.items():
        row(word, ours[name], theirs[name], ours[name] / theirs[name])
    row(f"first contentful paint (aim {AIMED_PAINT_S * 1000:.0f})", ours["paint"], theirs["paint"])


def drag(page: Page) -> None:
    """Print how long a slider's events take to be seen in the matrix."""
    stages = {
        "waiting, form and request": ("begun", "ask"),
        "until the worker has it": ("ask", "taken sent"),
        "core in the worker": ("taken sent", "answer sent"),
        "until the page has it": ("answer sent", "answer"),
        "reading and rendering": ("answer", "changed"),
        "layout, paint, frame": ("changed", "painted"),
        f"event to painted matrix (aim p95 {AIMED_DRAG_MS})": ("begun", "painted"),
    }
    for waits, words in ((True, "each painted before the next"), (False, "one in every frame")):
        events = page.evaluate(DRAG, {"events": EVENTS, "waits": waits})
        print(f"\nVSWR slider, {EVENTS} events, {words}, ms{'p50':>{77 - 36 - len(words)}}{'p95':>10}")
        for word, (begin, end) in stages.items():
            taken = [one[end] - one[begin] for one in events]
            row(word, median(taken), statistics.quantiles(taken, n=20)[-1])


def full_matrix(page: Page) -> None:
    """Print the time of the full matrix in the browser against this Python."""
    asked = page.evaluate(ASK, QUESTIONS)
    native = median_seconds(lambda: call("matrix", b"{}"), QUESTIONS) * 1000
    print(f"\nFull matrix, ms, median of {QUESTIONS}{'':33}{'ratio':>18}")
    row("this Python, JSON to JSON", native, 1)
    for word, begin, end in (
        ("inside the worker", "taken sent", "answer sent"),
        ("asked by the page, JSON read", "begun", "ended"),
    ):
        taken = median([one[end] - one[begin] for one in asked])
        row(word, taken, taken / native)


def sizes() -> None:
    """Print the bytes of the one-file page by part."""
    page = SAVED.read_text("utf-8")
    parts = {name: len(text) for name, text in re.findall(r'<data id="part-(\w+)" hidden value="(.*?)">', page, re.S)}
    whole = len(page.encode())
    parts["markup, tables, style"] = whole - sum(parts.values())
    print(f"\n{'Bytes of ' + SAVED.name:55}{'bytes':>12}")
    for name, count in sorted(parts.items(), key=lambda item: -item[1]):
        print(f"{name:55}{count:12,}")
    runtime = sum(parts[name] for name in RUNTIME_PARTS)
    print(f"{'all':55}{whole:12,}")
    print(f"{f'beside the runtime (aim {AIMED_REST_BYTES:,})':55}{whole - runtime:12,}")


def webkit_ready(view: View, file: Path, condition: str) -> float:
    """Milliseconds from navigation until a condition holds in WebKit, to its next look 50 ms later."""
    view.go(file.as_uri())
    assert view.comes(condition)
    return view.run("() => performance.now()")


def in_webkit(bare: Path) -> None:
    """Print when the page is ready in WebKitGTK, against the bare one."""
    pairs = []
    with webkit() as view:
        for _ in range(RUNS):
            ours = webkit_ready(view, SAVED, "() => document.querySelector('jw-app').stage === 'ready'")
            theirs = webkit_ready(view, bare, "() => document.title === 'ready'")
            pairs.append((ours, theirs))
    ours, theirs = (median(runs) for runs in zip(*pairs, strict=True))
    print(f"\nStart in WebKitGTK, ms, median of {RUNS} by turns{'page':>30}{'bare':>10}{'ratio':>8}")
    row("core ready", ours, theirs, ours / theirs)


def median(numbers: Any) -> float:
    """The median."""
    return statistics.median(numbers)


def row(words: str, *numbers: float) -> None:
    """Print one line of a table; the third number is a ratio."""
    widths = ("10.1f", "10.1f", "8.2f")
    print(f"{words:57}" + "".join(f"{number:{width}}" for number, width in zip(numbers, widths, strict=False)))


def main() -> None:
    """Measure everything, Chromium first."""
    with tempfile.TemporaryDirectory() as folder:
        bare = bare_page(Path(folder))
        with sync_playwright() as playwright:
            browser = playwright.chromium.launch(executable_path=shutil.which("chromium"), args=FLAGS)
            starts(browser, bare)
            with opened(browser, SAVED) as page:
                drag(page)
                full_matrix(page)
            browser.close()
        sizes()
        in_webkit(bare)


if __name__ == "__main__":
    main()
