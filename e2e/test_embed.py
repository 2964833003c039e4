"""The matrix on websites of others: the element in a page that we did not write."""

import gzip
import json
import re
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import expected
import pytest
from hosts import STRICT, File, Website, website
from playwright.sync_api import Browser, BrowserContext, Locator, Page, expect
from reading import assert_numbers, until
from visits import AXE, PHONE, ROOT, SIZES, TABLET, clean

from jointwise.assemble.version import VERSION
from jointwise.calc.operations import call

SCRIPT = (ROOT / "dist/site/embed.js").read_bytes()
MOST_SCRIPT_BYTES = 60_000
"""Packed for the wire."""

SNAPSHOT = "club-matrix.json"
TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]

HOSTILE = """
* { all: unset !important; color: red !important; font: 40px/3 cursive !important; letter-spacing: 9px !important;
  text-transform: uppercase !important; visibility: visible !important; text-align: right !important; }
head, script, style, link, title { display: none !important; }
body, main, h1, p { display: block !important; }
button, table, td, select, section { display: none !important; }
:root { --card: red; --ink: red; --step-5: red; --columns: 3; }
"""
"""A style sheet that takes everything from everybody."""

SHEETS = {"plain": "body { margin: 8px; font-family: serif; }", "hostile": HOSTILE}

LISTEN = """
window.heard = [];
for (const kind of ['ready', 'cell', 'error']) {
  addEventListener(`jointwise-${kind}`, ({detail}) => heard.push([kind, JSON.parse(JSON.stringify(detail))]));
}
"""


def snapshot(**request: Any) -> bytes:
    """A snapshot of a first visit's bands, but for what is asked."""
    return call("snapshot", json.dumps({"bands": expected.FIRST_BANDS} | request).encode())


def page_with(*elements: str, sheet: str = "plain", html: str = 'lang="en"', policy: str = STRICT) -> File:
    """A club's page around elements of ours."""
    body = "".join(f"{element}<p>Something of our own.</p>" for element in elements)
    return File(
        f'<!doctype html><html {html}><head><meta charset="utf-8"><title>A club</title>'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f'<link rel="stylesheet" href="/{sheet}.css"></head>'
        f'<body><main><h1>A club</h1><script src="embed.js"></script>{body}</main></body></html>'.encode(),
        policy=policy,
    )


def element(**attributes: str) -> str:
    """The tag with attributes."""
    written = "".join(f' {name}="{value}"' for name, value in attributes.items())
    return f"<jointwise-matrix{written}></jointwise-matrix>"


PLAIN = element(src=SNAPSHOT, size="19x16")


@pytest.fixture
def club() -> Iterator[Website]:
    """A club's website with our script, a snapshot, and style sheets of its own."""
    files = {
        "/embed.js": File(SCRIPT, "text/javascript"),
        f"/{SNAPSHOT}": File(snapshot(), "application/json"),
        "/": page_with(PLAIN),
        "/favicon.ico": File(b"", "image/x-icon"),
        **{f"/{name}.css": File(text.encode(), "text/css") for name, text in SHEETS.items()},
    }
    with website(files) as site:
        yield site


@pytest.fixture
def visit(browser: Browser) -> Iterator[Callable[..., Page]]:
    """Opens pages of a website, and fails the test when one breaks its policy or leaves something in the console."""
    with ExitStack() as stack:

        def opened(
            site: Website | str,
            path: str = "",
            forgiven: str | None = None,
            prepare: Callable[[BrowserContext], Any] | None = None,
            **options: Any,
        ) -> Page:
            address = site if isinstance(site, str) else site.address
            context = stack.enter_context(clean(browser, address, forgiven, **options))
            context.add_init_script(LISTEN)
            if prepare:
                prepare(context)
            page = context.new_page()
            page.goto(address + path)
            return page

        yield opened


def cell(page: Page | Locator, family: str, band: str) -> Locator:
    """One cell."""
    return page.locator(f"jointwise-matrix td[data-family='{family}'][data-band='{band}']")


def heard(page: Page, kind: str) -> list[Any]:
    """What the page was told by events of a kind."""
    return [detail for one, detail in page.evaluate("() => window.heard") if one == kind]


def trouble(page: Page) -> Locator:
    """The sentence in place of a matrix."""
    return page.locator("jointwise-matrix").get_by_role("alert")


def test_the_script_is_small() -> None:
    """What a website takes in keeps within its bound on the wire."""
    assert len(gzip.compress(SCRIPT, 9)) <= MOST_SCRIPT_BYTES


def test_margins_are_shown_under_a_strict_policy(club: Website, visit: Callable[..., Page]) -> None:
    """A page whose policy allows next to nothing shows the core's margins, with two files fetched and no more."""
    page = visit(club)

    assert_numbers(page, expected.numbers())

    fetched = [path for path, _ in club.sent if path not in ("/", "/plain.css", "/favicon.ico")]
    assert sorted(fetched) == [f"/{SNAPSHOT}", "/embed.js"]
    assert sum(size for path, size in club.sent) < 700_000
    assert page.evaluate("() => performance.getEntriesByType('resource').length") == 3
    ready = heard(page, "ready")
    assert [one["from"] for one in ready] == ["network"]
    assert ready[0]["bands"] == expected.FIRST_BANDS


@pytest.mark.parametrize("size", SIZES)
def test_nothing_moves_when_the_numbers_come(club: Website, visit: Callable[..., Page], size: str) -> None:
    """While the snapshot is awaited the room is kept, so that what follows never moves."""
    waiting: list[Any] = []
    page = visit(
        club, prepare=lambda context: context.route(f"**/{SNAPSHOT}", lambda one: waiting.append(one)), **SIZES[size]
    )
    expect(page.locator("jointwise-matrix [aria-busy=true] table")).to_be_visible()
    before = page.locator("p").last.bounding_box()["y"]
    page.evaluate("() => new Promise((go) => requestAnimationFrame(() => requestAnimationFrame(go)))")

    waiting[0].continue_()

    assert_numbers(page, expected.numbers())
    assert page.locator("p").last.bounding_box()["y"] == before
    assert page.evaluate("() => readers.shift()") == 0
    assert page.evaluate("() => document.documentElement.scrollWidth - innerWidth") <= 0


@pytest.mark.parametrize("html", ['lang="en"', 'lang="ar" dir="rtl"'])
def test_a_hostile_style_sheet_changes_nothing(club: Website, visit: Callable[..., Page], html: str) -> None:
    """Under a style sheet that takes everything, and right to left, the element looks as on a plain page."""
    looks = []
    for sheet, direction in (("plain", 'lang="en"'), ("hostile", html)):
        club.files["/"] = page_with(PLAIN, sheet=sheet, html=direction)
        page = visit(club)
        assert_numbers(page, expected.numbers())
        looks.append(
            page.evaluate("""() => {
              const [button] = readers.everywhere('td[data-row]');
              const {width, height} = readers.everywhere('.scroll')[0].getBoundingClientRect();
              const [cell] = readers.cells();
              const {fontSize, letterSpacing, textTransform, direction} = getComputedStyle(button);
              const first = readers.everywhere('thead th')[0].getBoundingClientRect().left;
              const last = [...readers.everywhere('thead th')].at(-1).getBoundingClientRect().left;
              return {height, cell, fontSize, letterSpacing, textTransform, direction, leftToRight: first < last,
                      wide: Math.abs(width - document.documentElement.clientWidth) < 24,
                      row: button.getBoundingClientRect().height};
            }""")
        )

    assert looks[0] == looks[1]


COLOURED = """
body { background: #123020; color: #f0ffe0; }
body.light { background: #fffdf0; color: #201000; }
body.own { --jointwise-ink: #000080; --jointwise-ground: #ffffff; }
"""

SEEN = """() => {
  const [root, card] = ['.root', '.card'].map((one) => getComputedStyle(readers.everywhere(one)[0]));
  return [root.color, card.backgroundColor, root.colorScheme];
}"""


def test_colours_are_those_of_the_page_around(club: Website, visit: Callable[..., Page]) -> None:
    """Letters and ground are the page's, dark or light, also after its own switch; a page may name others."""
    club.files["/coloured.css"] = File(COLOURED.encode(), "text/css")
    club.files["/"] = page_with(PLAIN, sheet="coloured")
    page = visit(club)
    assert_numbers(page, expected.numbers())
    turned = f"(wanted) => JSON.stringify(({SEEN})()) === JSON.stringify(wanted)"

    assert page.evaluate(SEEN) == ["rgb(240, 255, 224)", "rgb(18, 48, 32)", "dark"]
    page.evaluate("() => document.body.classList.add('light')")
    page.wait_for_function(turned, arg=["rgb(32, 16, 0)", "rgb(255, 253, 240)", "light"])
    page.evaluate("() => document.body.classList.add('own')")
    page.wait_for_function(turned, arg=["rgb(0, 0, 128)", "rgb(255, 255, 255)", "light"])


def test_it_says_whose_station_it_is(club: Website, visit: Callable[..., Page]) -> None:
    """Below the title stand the station and the day that a snapshot names; of none it is an example of this version."""
    named = json.loads(snapshot(families=["n"])) | {"station": {"name": "Hill club", "date": "2026-11-29"}}
    club.files["/named.json"] = File(json.dumps(named).encode(), "application/json")
    club.files["/"] = page_with(PLAIN, element(src="named.json", size="1x16"), element(src="named.json", lang="de"))

    page = visit(club)

    expect(page.locator("jointwise-matrix .station")).to_have_text(
        [
            f"Example station, Jointwise {VERSION}",
            "Station: Hill club, 29 November 2026",
            "Station: Hill club, 29. November 2026",
        ]
    )


def test_two_matrices_keep_apart(club: Website, visit: Callable[..., Page]) -> None:
    """Two elements, and the script taken in twice, show a matrix each; a cell opened in one leaves the other be."""
    club.files["/digital.json"] = File(snapshot(mode="ft8", families=["n", "uhf"]), "application/json")
    second = f'<script src="embed.js"></script>{element(src="digital.json", compact="", size="2x16")}'
    club.files["/"] = page_with(PLAIN, second)

    page = visit(club)

    assert_numbers(page, expected.numbers() + expected.numbers(mode="ft8", families=["n", "uhf"]))
    cell(page, "n", "20m").last.click()
    expect(page.locator("jointwise-matrix").last.locator("tr.open")).to_have_count(1)
    expect(page.locator("jointwise-matrix").first.locator("tr.open")).to_have_count(0)


def test_a_cell_opens_its_derivation(club: Website, visit: Callable[..., Page]) -> None:
    """A cell opens in place: limits and match as the core has them, steps, and the page is told."""
    page = visit(club)
    core = expected.asked("cell", family="uhf", band="2m", power_w=400)
    page.locator("jointwise-matrix select").select_option("400 W")

    cell(page, "uhf", "2m").click()

    shown = page.locator("jointwise-matrix .derivation")
    for limit in core["limits"]:
        detail = shown.locator(f"details[data-limit={limit['id']}]")
        expect(detail.locator("summary b")).to_have_text(f"{expected.decibels(limit['margin_db'])} dB")
    expect(shown.locator("details[data-match] summary b")).to_have_text(f"{core['match']['return_loss_db']:.1f} dB")
    binding = shown.locator("details[data-limit]").first
    assert binding.get_attribute("data-limit") == core["limits"][0]["id"]
    expect(binding.locator("summary .share i")).to_have_attribute("data-step", "fine")
    page.evaluate("() => readers.everywhere('.derivation details').forEach((one) => (one.open = true))")
    steps = [step for step in core["limits"][0]["steps"] if step["end"] == "low"]
    margin = next(at for at, step in enumerate(steps) if step["formula"] == "margin")
    expect(binding.locator("ol > li")).to_have_count(margin + 1)
    expect(binding.locator("math")).to_have_count(margin + 1)
    assert binding.locator(".result").last.text_content() == f"M = {core['margin_db']:.4g} dB".replace("-", "−")
    (told,) = heard(page, "cell")
    assert (told["family"], told["band"], told["power_w"], told["limit"]) == ("uhf", "2m", 400, core["limits"][0]["id"])
    assert told["margin_db"] == pytest.approx(core["margin_db"], abs=1e-4)


def test_keys_go_through_the_cells(club: Website, visit: Callable[..., Page]) -> None:
    """The Tab key reaches one cell, arrows move on, Enter opens with the focus at the heading, Escape comes back."""
    page = visit(club)
    assert_numbers(page, expected.numbers())
    page.locator("jointwise-matrix select").focus()
    where = "() => {const {row, column} = readers.focused().dataset; return [row, column];}"

    page.keyboard.press("Tab")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("ArrowRight")
    assert page.evaluate(where) == ["1", "1"]
    page.keyboard.press("Enter")

    assert page.evaluate("() => readers.focused().id") == "heading"
    page.keyboard.press("Escape")
    assert page.evaluate(where) == ["1", "1"]
    expect(page.locator("jointwise-matrix tr.open")).to_have_count(0)


def test_a_server_answers_a_link(club: Website, visit: Callable[..., Page], address: str, browser: Browser) -> None:
    """A link copied from the page brings that scenario from its server, and leads back to it with the open cell."""
    link = f"{address}#vswr=3&amp;mode=fm&amp;families=n,uhf&amp;shows=largest&amp;cable_dielectric=ptfe"
    policy = STRICT.replace("connect-src 'self'", f"connect-src {address}")
    club.files["/"] = page_with(element(link=link), policy=policy)

    page = visit(club, forgiven=f"request to {address}")

    assert_numbers(page, expected.numbers(vswr=3, mode="fm", families=["n", "uhf"]))
    cell(page, "uhf", "2m").click()
    leads = page.locator("jointwise-matrix .derivation a").get_attribute("href")
    with clean(browser, address, None) as context:
        full = context.new_page()
        full.goto(leads)
        assert_numbers(full, expected.numbers(vswr=3, mode="fm", families=["n", "uhf"]))
        expect(full.locator("jw-derivation #verdict")).to_contain_text("UHF (PL-259 / SO-239) on 2 m at 100 W PEP")


def test_a_page_from_a_file(visit: Callable[..., Page], address: str, tmp_path: Path) -> None:
    """A page opened from a folder shows a snapshot that stands in it, and one that a server answers."""
    block = snapshot(mode="cw").decode().replace("<", "\\u003c")
    (tmp_path / "embed.js").write_bytes(SCRIPT)
    page_ = page_with(
        f'<script type="application/json" id="club">{block}</script>{element(src="#club")}',
        element(link=f"{address}#vswr=4"),
        policy="",
    )
    (tmp_path / "page.html").write_bytes(page_.body.replace(b'href="/plain.css"', b'href="data:text/css,"'))

    page = visit(f"{tmp_path.as_uri()}/", "page.html", forgiven=f"request to {address}")

    assert_numbers(page, expected.numbers(mode="cw") + expected.numbers(vswr=4))


BAD = {
    "theme": ({"theme": "blue"}, 'theme is "blue"; allowed: auto, light or dark.'),
    "power": ({"power": "much"}, 'power is "much"; allowed: a number from 0 to 100000, in W.'),
    "size": ({"size": "0x9"}, 'size is "0x9"; allowed: rows x columns, such as 19x16.'),
    "src": (
        {"src": "javascript:alert(1)"},
        'src is "javascript:alert(1)"; allowed: an http, https or relative address.',
    ),
    "block": ({"src": "#nowhere"}, 'src is "#nowhere"; allowed: the id of a data block in this page.'),
    "link": ({"link": "data:,x"}, 'link is "data:,x"; allowed: a link copied from the Jointwise page.'),
    "view": ({"link": "x.html#view=line"}, "allowed: a link to a matrix, copied from the Jointwise page."),
    "none": ({"src": None}, "src is missing; allowed: the address of a snapshot"),
}


@pytest.mark.parametrize("case", BAD)
def test_a_bad_attribute_is_told(club: Website, visit: Callable[..., Page], case: str) -> None:
    """An attribute that can't be taken is told in the element by name, value and range, and to the page."""
    changes, sentence = BAD[case]
    attributes = {"src": SNAPSHOT, "size": "19x16"} | changes
    club.files["/"] = page_with(element(**{name: value for name, value in attributes.items() if value is not None}))

    page = visit(club)

    expect(trouble(page)).to_contain_text(sentence)
    assert [one["message"] for one in heard(page, "error")] == [trouble(page).locator("p").text_content()]


def test_an_attribute_put_right_is_taken(club: Website, visit: Callable[..., Page]) -> None:
    """Once a bad attribute is put right the matrix comes, and a change of looks fetches nothing."""
    club.files["/"] = page_with(element(src=SNAPSHOT, theme="blue"))
    page = visit(club)
    expect(trouble(page)).to_be_visible()

    page.locator("jointwise-matrix").evaluate("(one) => one.setAttribute('theme', 'dark')")
    assert_numbers(page, expected.numbers())
    page.locator("jointwise-matrix").evaluate("(one) => { one.lang = 'de'; one.setAttribute('power', '1500'); }")

    assert_numbers_de = [text and text.replace(".", ",") for text in expected.numbers(1500)]
    assert_numbers(page, assert_numbers_de)
    expect(page.locator("jointwise-matrix h2")).to_have_text("Leistungsreserve von HF-Steckern")
    assert [path for path, _ in club.sent].count(f"/{SNAPSHOT}") == 1


def test_a_server_s_refusal_is_told(club: Website, visit: Callable[..., Page], address: str) -> None:
    """What a server refuses is told in its own words."""
    club.files["/"] = page_with(element(link=f"{address}#vswr=99"), policy="")

    page = visit(club, forgiven=f"request to {address}|status of 400")

    expect(trouble(page)).to_contain_text("vswr is 99.0; allowed: a number from 1 to 20.")


KEPT_AWAY = "status of 404|ERR_FAILED"


@pytest.mark.parametrize("spoilt", [None, b"<!doctype html>", b'{"format": "jointwise snapshot 1"}'])
def test_the_last_good_copy_is_kept(club: Website, visit: Callable[..., Page], spoilt: bytes | None) -> None:
    """When the snapshot is gone or spoilt at a later visit, the copy of the last one is shown."""
    page = visit(club, forgiven=KEPT_AWAY)
    assert_numbers(page, expected.numbers())

    if spoilt is None:
        del club.files[f"/{SNAPSHOT}"]
    else:
        club.files[f"/{SNAPSHOT}"] = File(spoilt, "application/json")
    page.reload()

    assert_numbers(page, expected.numbers())
    until(page, "() => window.heard.length === 2")
    assert [kind for kind, _ in page.evaluate("() => window.heard")] == ["ready", "error"]
    assert heard(page, "ready")[0]["from"] == "kept"
    if spoilt is None:
        expect(page.locator("jointwise-matrix .status")).to_have_text(re.compile("The copy kept on .+; a newer one"))


def test_a_newer_snapshot_takes_the_place_of_the_copy(club: Website, visit: Callable[..., Page]) -> None:
    """A kept copy makes way for what the network brings, without a move of the page."""
    page = visit(club)
    assert_numbers(page, expected.numbers())

    club.files[f"/{SNAPSHOT}"] = File(snapshot(vswr=5), "application/json")
    page.reload()

    assert_numbers(page, expected.numbers(vswr=5))
    assert page.evaluate("() => readers.shift()") == 0


def test_the_copies_are_few(club: Website, visit: Callable[..., Page]) -> None:
    """However many matrices a website has shown, no more than three copies stay in its store."""
    small = snapshot(families=["n"], bands=["2m"])
    names = [f"club-{n}.json" for n in range(5)]
    club.files.update({f"/{name}": File(small, "application/json") for name in names})
    club.files["/"] = page_with(*(element(src=name, size="1x1") for name in names))

    page = visit(club)

    until(page, "() => window.heard.length === 5")
    assert page.evaluate("() => Object.keys(localStorage).filter((key) => key.startsWith('jointwise')).length") == 3


def test_a_blocked_store_costs_nothing_but_the_copy(club: Website, visit: Callable[..., Page]) -> None:
    """Where the browser keeps nothing for a page, the matrix comes from the network all the same."""
    block = "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError'); }});"

    page = visit(club, prepare=lambda context: context.add_init_script(block))

    assert_numbers(page, expected.numbers())


def test_an_absent_network_is_told_and_tried_again(club: Website, visit: Callable[..., Page]) -> None:
    """Without network and copy the element says so; tried again once there is one, it shows the matrix."""
    page = visit(
        club, prepare=lambda context: context.route(f"**/{SNAPSHOT}", lambda one: one.abort()), forgiven="ERR_FAILED"
    )
    expect(trouble(page)).to_contain_text("could not be fetched; check the network, then try again.")

    page.context.unroute(f"**/{SNAPSHOT}")
    page.get_by_role("button", name="Try again").click()

    assert_numbers(page, expected.numbers())


EVIL = "<img src=x onerror=hacked=1><script>hacked=1</script><svg onload=hacked=1>"


def spiked(value: Any) -> Any:
    """The same data with every free text spiked with markup."""
    if isinstance(value, dict):
        return {key: item if key in ("format", "id", "limits") else spiked(item) for key, item in value.items()}
    if isinstance(value, list):
        return [spiked(item) for item in value]
    return value[:60] + EVIL if isinstance(value, str) else value


def test_markup_in_a_snapshot_stays_text(club: Website, visit: Callable[..., Page]) -> None:
    """On a page without any policy, markup and script in every text of a snapshot are shown as text and never run."""
    evil = spiked(json.loads(snapshot()))
    club.files[f"/{SNAPSHOT}"] = File(json.dumps(evil).encode(), "application/json")
    club.files["/"] = page_with(PLAIN, policy="")

    page = visit(club)

    assert_numbers(page, expected.numbers())
    cell(page, "uhf", "70cm").click()
    page.evaluate("() => readers.everywhere('details').forEach((one) => (one.open = true))")
    expect(page.locator("jointwise-matrix .derivation h3")).to_contain_text(EVIL)
    expect(page.locator("jointwise-matrix .derivation ol > li").first).to_be_visible()
    inside = "() => readers.everywhere('img, script, svg').filter((one) => one.getRootNode() !== document).length"
    assert page.evaluate(inside) == 0
    assert page.evaluate("() => [window.hacked, {}.polluted]") == [None, None]


@pytest.mark.parametrize(
    "body",
    [
        b"[" * 900_000,
        b'{"a":' * 150_000,
        b'{"format":"jointwise snapshot 1","request":{"__proto__":{"polluted":1}}}',
        b"x" * 1_000_001,
    ],
    ids=["brackets", "objects", "prototype", "long"],
)
def test_a_spoilt_snapshot_is_told(club: Website, visit: Callable[..., Page], body: bytes) -> None:
    """Nesting without end, names that reach for a prototype and endless text end in one sentence."""
    club.files[f"/{SNAPSHOT}"] = File(body, "application/json")

    page = visit(club)

    expect(trouble(page)).to_contain_text(f"{SNAPSHOT} holds no snapshot that can be shown:")
    assert page.evaluate("() => ({}).polluted") is None


@pytest.mark.parametrize(("size", "theme"), [("phone", "dark"), ("desktop", "light")])
def test_rules_find_nothing(club: Website, visit: Callable[..., Page], size: str, theme: str) -> None:
    """No accessibility rule is broken by the matrix, compact or whole, an open derivation, or a trouble."""
    compact = element(src=SNAPSHOT, size="19x16", compact="", theme=theme, lang="de")
    club.files["/"] = page_with(
        element(src=SNAPSHOT, size="19x16", theme=theme), compact, element(theme=theme), policy=""
    )
    page = visit(club, prepare=lambda context: context.add_init_script(path=AXE), color_scheme=theme, **SIZES[size])
    expect(cell(page, "uhf", "2m")).to_have_count(2)
    cell(page, "uhf", "2m").first.click()
    page.evaluate("() => readers.everywhere('.foot details').forEach((one) => (one.open = true))")

    found = page.evaluate(
        "(tags) => axe.run('jointwise-matrix', {resultTypes: ['violations'], runOnly: {type: 'tag', values: tags}})"
        ".then(({violations}) => violations.map((one) => [one.help, one.nodes.slice(0, 3).map(({html}) => html)]))",
        TAGS,
    )

    assert found == []


def test_targets_are_large_enough(club: Website, visit: Callable[..., Page]) -> None:
    """On a phone and a tablet every cell, switch and fold of the whole form takes a finger of 44 px."""
    for size in (PHONE, TABLET):
        page = visit(club, **size)
        assert_numbers(page, expected.numbers())

        small = page.evaluate("""() => readers.everywhere('td[data-row], select, summary, .ends a')
          .map((one) => [one.textContent.slice(0, 20), one.getBoundingClientRect()])
          .map(([words, {width, height}]) => [words, width, height])
          .filter(([, width, height]) => width < 43.5 || height < 44)""")

        assert small == []
