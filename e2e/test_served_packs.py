"""Packs in the page: taken, marked, kept, refused whole, made by the form; nothing in them ever runs."""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import msgspec
import pytest
from engines import SAVED
from playwright.sync_api import Browser, Locator, Page, expect
from reading import cell, settled
from test_served_accessibility import violations, with_axe
from visits import DESKTOP, READERS, SIZES, START_MS, Visit, served

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import Document
from jointwise.calc.operations import call

SCRIPT = "<img src=x onerror='window.ran=1'><script>window.ran=2</script>"
"""Text that would run if it were ever taken for markup."""


def family(**changed: Any) -> dict[str, Any]:
    """A pack's own family, BNC under another name."""
    usual = {"id": "own_bnc", "name": "Own bayonet", "order": 4}
    return msgspec.to_builtins(catalogue().interfaces["bnc"]) | usual | changed


PACK = {
    "id": "club",
    "name": "Hill club",
    "version": "1",
    "note": "Invented.",
    "sources": [{"id": "rules", "title": "Invented rules", "seen": "read"}],
    "interfaces": [family()],
    "overrides": {"modes": ["cw"]},
    "modes": [{"id": "cw", "name": "CW, contest", "duty_factor": {"value": 0.5, "source": "rules", "kind": "memory"}}],
    "default_powers_w": [10, 100],
    "house_limits": [
        {"id": "low", "power_w": 50, "reason": "Old panel.", "source": "rules", "kind": "memory", "interfaces": ["bnc"]}
    ],
}
REFUSED = {"id": "bad", "name": "Bad", "version": "1", "sources": [], "bands": [{"id": "20m"}]}


@pytest.fixture
def packs(visit: Visit) -> Page:
    """The packs view."""
    page = visit("#view=packs")
    page.set_default_timeout(START_MS)
    return page


def take(page: Page, pack: Any, name: str = "club.json") -> None:
    """Give the page a file, as picked."""
    text = pack if isinstance(pack, bytes) else json.dumps(pack).encode()
    page.locator("#file").set_input_files({"name": name, "mimeType": "application/json", "buffer": text})


def in_force(page: Page, pack: str = "club") -> Locator:
    """The pack on the shelf, once the core has told what it does."""
    entry = page.locator(f"jw-packs-view [data-pack={pack}]")
    expect(entry.locator("p").first).to_be_visible(timeout=START_MS)
    return entry


def turn_to(page: Page, view: str) -> Page:
    """Another view, answered."""
    page.locator(f"jw-masthead [data-view={view}]").click()
    return settled(page)


def drop(page: Page, pack: Any, name: str = "club.json") -> None:
    """Drop a file on the panel."""
    files = page.evaluate_handle(
        """([text, name]) => {
          const data = new DataTransfer();
          data.items.add(new File([text], name, {type: 'application/json'}));
          return data;
        }""",
        [json.dumps(pack), name],
    )
    page.locator("jw-packs-view .drop").dispatch_event("drop", {"dataTransfer": files})


def core(operation: str, **request: Any) -> Any:
    """The answer of the core in this process with the pack."""
    edition = edition_of([Document("", json.dumps(PACK).encode())])
    return json.loads(call(operation, json.dumps(request).encode(), edition))


def test_a_dropped_pack_counts_and_is_marked_in_every_view(packs: Page) -> None:
    """A dropped pack's family, mode, powers and limit are in every view, marked, and still there after a reload."""
    page = packs
    drop(page, PACK)
    expect(in_force(page)).to_contain_text("Adds interface own_bnc; house limit low")
    expect(page.locator("#packs b")).to_have_text("1")

    turn_to(page, "matrix")
    expect(page.locator("th[data-family=own_bnc] button")).to_have_accessible_name(
        "Own bayonet, data sheet, from pack Hill club"
    )
    expect(page.locator("jw-power-choice")).to_contain_text("10 W")
    expect(cell(page, "bnc", "20m")).to_contain_text("house")
    page.reload()
    expect(cell(page, "bnc", "20m")).to_contain_text("house", timeout=START_MS)
    page.goto(page.url.split("#")[0] + "#family=own_bnc&band=20m&mode=cw")
    derivation = page.locator("jw-derivation")
    expect(derivation.locator("#verdict .pack")).to_have_text("from pack Hill club")
    expect(derivation.locator("jw-steps .pack").first).to_have_text("from pack Hill club")
    wanted = core("cell", family="own_bnc", band="20m", mode="cw")
    expect(derivation.locator("#verdict")).to_contain_text(wanted["verdict"])

    turn_to(page, "choose")
    expect(page.locator("jw-choose-table [data-family=own_bnc] .pack")).to_have_text("from pack Hill club")


def test_a_refused_pack_changes_nothing(packs: Page, tmp_path: Path) -> None:
    """A bad, deep, broken, or far too long file is refused with path and reason; the pack before it stays in force."""
    page = packs
    take(page, PACK)
    in_force(page)
    before = page.evaluate("() => localStorage['jointwise-packs']")
    long = tmp_path / "long.json"
    with long.open("wb") as file:
        file.truncate(50_000_000)

    for pack, name, reason in (
        (REFUSED, "bad.json", "bad.json: bands[0].name is null"),
        (REFUSED | {"bands": [], "__proto__": {"polluted": 1}}, "proto.json", "proto.json: __proto__ is"),
        (b"[" * 5000, "deep.json", "brackets nested up to 50 deep"),
        (b'{"id": ', "cut.json", "cut.json: pack is"),
        (PACK | {"id": "second"}, "second.json", 'second.json: interfaces[0].id is "own_bnc"'),
    ):
        take(page, pack, name)
        expect(page.locator("#refused")).to_contain_text(reason)
    page.locator("#file").set_input_files(long)
    expect(page.locator("#refused")).to_contain_text("long.json is 50000000 bytes long")

    assert page.evaluate("() => localStorage['jointwise-packs']") == before
    assert page.evaluate("() => ({}).polluted") is None
    expect(page.locator("jw-packs-view li")).to_have_count(1)


def test_text_of_a_pack_never_runs(packs: Page) -> None:
    """Markup and script in every text of a pack stand on the page as letters, in each place that shows them."""
    page = packs
    named = PACK | {
        "name": f"A {SCRIPT}"[:80],
        "note": SCRIPT,
        "sources": [{"id": "rules", "title": SCRIPT, "seen": "read"}],
        "interfaces": [family(name=f"B {SCRIPT}"[:80], summary=SCRIPT, also_called=[SCRIPT[:60]])],
        "house_limits": [PACK["house_limits"][0] | {"reason": SCRIPT}],
    }
    take(page, named)
    expect(in_force(page)).to_contain_text("<script>window.ran=2</script>")
    turn_to(page, "matrix")
    expect(page.locator("th[data-family=own_bnc]")).to_contain_text("<img src=x")
    for fragment in ("family=own_bnc", "family=own_bnc&band=20m&mode=cw", "family=bnc&band=20m"):
        page.goto(page.url.split("#")[0] + f"#{fragment}")
        expect(page.locator("jw-detail")).to_contain_text("<img src=x")
    turn_to(page, "choose")

    assert page.evaluate("() => [window.ran, readers.everywhere('img, script[src=x]').length]") == [None, 0]


def test_a_pack_is_turned_off_saved_and_removed(packs: Page) -> None:
    """A pack that is off counts no more, its file is the one that was taken, and once removed it is gone."""
    page = packs
    take(page, PACK)
    entry = in_force(page)
    with page.expect_download() as saving:
        entry.locator(".save").click()
    assert json.loads(saving.value.path().read_text()) == PACK

    entry.locator(".turn").click()
    expect(entry.locator(".turn")).to_have_attribute("aria-pressed", "false")
    turn_to(page, "matrix")
    expect(page.locator("th[data-family=own_bnc]")).to_have_count(0)
    page.locator("#packs").click()
    entry.locator(".remove").click()
    expect(page.locator("jw-packs-view li")).to_have_count(0)


def test_the_form_makes_a_pack(packs: Page) -> None:
    """The form asks for a source, and makes a pack that the core takes: a limit, powers, a family with a new value."""
    page = packs
    form = page.locator("jw-pack-form")
    form.locator("summary").click()
    form.get_by_label("Name of the pack").fill("My station")
    form.get_by_label("Power levels in W").fill("5, 25")
    form.locator("#add-limit").click()
    form.get_by_label("At most, in W PEP").fill("20")
    form.get_by_label("Because").fill("Thin cable.")
    form.get_by_label("Through").select_option(["bnc"])
    form.get_by_label("Made from").select_option("sma")
    form.locator("#working_voltage_rms_v-low").fill("123")
    form.locator("#working_voltage_rms_v-low").blur()
    form.locator("#take").click()
    assert form.evaluate("(form) => form.shadowRoot.querySelector('form').checkValidity()") is False
    form.get_by_label("What it says, and where").fill("Bench notes")
    form.locator("#take").click()

    entry = in_force(page, "my_station")
    expect(entry).to_contain_text("Adds interface sma_own; house limit my_station_1")
    text = page.evaluate("() => JSON.parse(localStorage['jointwise-packs']).own[0].text")
    tables = edition_of([Document("", text.encode())]).tables
    low = tables.interfaces["sma_own"].working_voltage_rms_v.low
    assert (low.value, low.source, tables.default_powers_w) == (123, "my_station.own", (5, 25))
    assert tables.house_limits["my_station_1"].interfaces == ["bnc"]


def test_spoilt_packs_are_set_aside(visit: Visit) -> None:
    """Kept packs that can't be read are set aside with a notice, and the page works without them."""
    spoil = "if (location.host) localStorage['jointwise-packs'] ??= '{\"own\": [5]}'"
    page = visit("", prepare=lambda context: context.add_init_script(spoil))

    expect(page.get_by_text("The packs kept in this browser could not be read and were set aside")).to_be_visible()
    expect(cell(settled(page), "bnc", "20m")).not_to_contain_text("house")
    assert page.evaluate("() => localStorage['jointwise-packs-set-aside']") == '{"own": [5]}'


def test_the_server_s_packs_count_and_are_listed(visit: Visit, tmp_path: Path) -> None:
    """A server's packs are in the matrix that it answers, marked, and listed as the server's."""
    (tmp_path / "club.json").write_text(json.dumps(PACK))
    with served(0, "--packs-folder", str(tmp_path)) as site:
        page = visit(site=site)
        expect(page.locator("th[data-family=own_bnc] .pack")).to_contain_text("from pack Hill club")
        expect(cell(settled(page), "bnc", "20m")).to_contain_text("house")
        page.locator("#packs").click()
        expect(in_force(page)).to_contain_text("of the server")


@pytest.fixture
def saved(browser: Browser) -> Iterator[Page]:
    """The saved page in a context without a network."""
    context = browser.new_context(**DESKTOP, offline=True)
    context.add_init_script(path=READERS)
    page = context.new_page()
    page.set_default_timeout(START_MS)
    yield page
    context.close()


def test_the_saved_file_takes_packs(saved: Page) -> None:
    """The page from disk, without a network, takes a pack, marks it and computes with it as the core does here."""
    saved.goto(f"{SAVED.as_uri()}#view=packs")
    take(saved, PACK)
    in_force(saved)
    turn_to(saved, "matrix")

    expect(saved.locator("th[data-family=own_bnc] .pack")).to_contain_text("from pack Hill club")
    wanted = core("matrix", bands=["20m"], families=["own_bnc"])["margin_db"][0][0][1]
    expect(cell(saved, "own_bnc", "20m")).to_contain_text(f"+{wanted:.1f}")


@pytest.mark.parametrize("size", SIZES)
def test_the_packs_view_is_accessible_and_fits(visit: Visit, size: str) -> None:
    """The view with its form open has no fault that axe finds, and does not scroll sideways."""
    page = visit("#view=packs", prepare=with_axe, **SIZES[size])
    page.locator("jw-pack-form summary").click()
    page.locator("#add-limit").click()

    assert violations(page) == []
    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
