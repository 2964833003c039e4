"""Packs in the page: taken, marked, kept, refused whole, made by the form; nothing in them ever runs."""

import base64
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import msgspec
import pytest
from engines import SAVED
from playwright.sync_api import Browser, Locator, Page, expect
from reading import cell, more, settled
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
    expect(in_force(page)).to_contain_text("Adds connector own_bnc; house limit low")
    expect(more(page).locator("#packs b")).to_have_text("1")

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
    more(page).locator("#packs").click()
    entry.locator(".remove").click()
    expect(page.locator("jw-packs-view li")).to_have_count(0)


def form_of(page: Page) -> Locator:
    """The form, unfolded."""
    form = page.locator("jw-pack-form")
    form.locator("summary").first.click()
    return form


def start(form: Locator, what: str, model: str = "", name: str = "") -> Locator:
    """An entry added to the pack: a copy of another, adapters with one end, or an empty one."""
    adding = form.get_by_role("group", name="Add to the pack")
    adding.get_by_label("What to add").select_option(label=what)
    if model:
        adding.get_by_label("One end" if what == "Adapters" else "A copy of").select_option(label=model)
    if name:
        adding.get_by_label("Its name").fill(name)
    before = form.locator(".entry").count()
    adding.get_by_role("button", name="Add", exact=True).click()
    expect(form.locator(".entry")).to_have_count(before + 1, timeout=START_MS)
    return form.get_by_role("group", name=f"{what} {name or model}".strip())


def fill(group: Locator, **values: str) -> None:
    """Fields filled by their labels, a blank for each underscore, and left."""
    for label, text in values.items():
        field = group.get_by_label(label.replace("_", " "), exact=True)
        field.fill(text)
        field.blur()


def chip(entry: Locator, label: str, name: str) -> None:
    """One more of a list, chosen from its menu."""
    chips = entry.get_by_role("group", name=label)
    chips.get_by_label(f"Another for {label}").select_option(label=name)
    chips.get_by_role("button", name=f"Add to {label}").click()


def unfold(entry: Locator, group: str) -> Locator:
    """One group of an entry's fields, opened."""
    entry.locator("summary").filter(has_text=group).click()
    return entry


def kept(page: Page) -> Any:
    """The reader's own pack as the browser keeps it."""
    return page.evaluate("() => JSON.parse(JSON.parse(localStorage['jointwise-packs']).own[0].text)")


def own_station(form: Locator) -> None:
    """A connector, a cable and an adapter, by labels alone."""
    form.get_by_label("Name of the pack").fill("My station")
    family = start(form, "Connector", "BNC", "Ham bayonet")
    family.get_by_label("Title of the source").fill("Measured on the bench")
    unfold(family, "Size and metal")
    fill(family, Body_diameter="0.59 in")
    unfold(family, "Electrical")
    family.get_by_label("Working voltage, rms, least").fill("400")
    unfold(family, "What it mates with")
    family.get_by_label("Customary cable").select_option(label="RG-58")

    cable = start(form, "Cable", "RG-58", "Ham cable")
    unfold(cable, "Electrical")
    fill(cable, Velocity_factor="0.7")
    cable.get_by_role("button", name="Remove all rows of Attenuation").click()
    for row, (megahertz, loss) in enumerate((("10", "4,2"), ("100", "14"), ("435", "31"), ("1296", "58")), 1):
        cable.get_by_role("button", name="Add a row to Attenuation").click()
        fill(cable.get_by_role("group", name=f"Attenuation {row}", exact=True), Frequency=megahertz, Loss=loss)
    unfold(cable, "Heat")
    cable.get_by_role("button", name="Remove all rows of Power rating").click()
    for row, (megahertz, watts) in enumerate((("30", "500"), ("435", "120")), 1):
        cable.get_by_role("button", name="Add a row to Power rating").click()
        power = cable.get_by_role("group", name=f"Power rating {row}", exact=True)
        fill(power, Frequency=megahertz, Power=watts)
        if row == 1:
            fill(power, Air_temperature="40", Hottest_conductor="80", Note="Sheet, p. 2")

    adapters = start(form, "Adapters", "Ham bayonet")
    chip(adapters, "At the other end", "N")
    adapters.get_by_role("button", name="Add a row to Figure of a data sheet").click()
    figures = adapters.get_by_role("group", name="Figure of a data sheet 1")
    figures.get_by_label("To", exact=True).select_option(label="N")
    fill(figures, Insertion_loss="0.15", Return_loss="26", Up_to="3 GHz")


def test_the_form_makes_a_connector_a_cable_and_an_adapter(packs: Page) -> None:
    """Made by labels alone they stand in the pack as typed, with the reader's source, and in matrix, Line and Kit."""
    page = packs
    form = form_of(page)
    own_station(form)
    form.get_by_role("button", name="Use this pack").click()
    told = in_force(page, "my_station")
    expect(told).to_contain_text("Adds connector ham_bayonet; cable ham_cable; adapter ham_bayonet")

    tables = edition_of([Document("", json.dumps(kept(page)).encode())]).tables
    family, cable = tables.interfaces["ham_bayonet"], tables.cables["ham_cable"]
    voltage = family.working_voltage_rms_v
    assert (voltage.low.value, voltage.low.source) == (400, "my_station.own_interfaces_ham_bayonet")
    assert tables.sources[voltage.low.source].title == "Measured on the bench"
    assert (family.body_diameter_m.value, voltage.high.value) == (pytest.approx(0.014986), 500)
    assert [(one.frequency_hz, one.db_per_m) for one in cable.attenuation] == [
        *((10e6, 0.042), (100e6, 0.14), (435e6, 0.31), (1296e6, 0.58))
    ]
    assert [
        (one.frequency_hz, one.power_w, one.ambient_temperature_c, one.conductor_temperature_c) for one in cable.power
    ] == [(30e6, 500, 40, 80), (435e6, 120, 40, 80)]
    assert [one.note for one in cable.power] == ["Sheet, p. 2", ""]
    (sold,) = tables.adapters["ham_bayonet"].figures
    assert (sold.to, sold.loss_db, sold.return_loss_db, sold.up_to_frequency_hz) == ("n", 0.15, 26, 3e9)

    turn_to(page, "matrix")
    expect(page.locator("th[data-family=ham_bayonet]")).to_contain_text("Ham bayonet")
    line = {
        "elements": [
            {"kind": "cable", "cable": "ham_cable", "length_m": 5},
            {"kind": "joint", "family": "ham_bayonet", "adapter_to": "n"},
        ],
        "load": {"kind": "vswr", "vswr": 1.5},
        "band": "2m",
    }
    text = base64.urlsafe_b64encode(json.dumps(line).encode()).decode().rstrip("=")
    site = page.url.split("#")[0]
    page.goto(f"{site}#view=line&line={text}")
    expect(page.locator("jw-line-card").first).to_contain_text("Ham cable", timeout=START_MS)
    expect(page.locator("jw-line-card").nth(1)).to_contain_text("Ham bayonet", timeout=START_MS)
    settled(page)
    ports = [["", "ham_bayonet", "jack", 1e9, 10], ["", "n", "jack", 1e9, 10]]
    text = base64.urlsafe_b64encode(json.dumps({"ports": ports}).encode()).decode().rstrip("=")
    page.goto(f"{site}#view=kit&kit={text}")
    row = page.locator("jw-kit-packing tbody tr")
    expect(row).to_contain_text("Ham bayonet plug to N plug", timeout=START_MS)
    expect(row).to_contain_text("Stated: 0.15 dB loss and 26 dB return loss to 3 GHz.")


def test_what_is_wrong_is_said_by_its_label(packs: Page) -> None:
    """A gap, a number out of range and one that contradicts another are told by label, value and range, and led to."""
    page = packs
    form = form_of(page)
    alert = form.locator("div[role=alert]")
    family = start(form, "Connector", "BNC", "Ham bayonet")
    unfold(family, "Size and metal")
    fill(family, Body_length="2 m", Outer_diameter="2.04")
    unfold(family, "Heat")
    family.get_by_role("button", name="Add a row to Power rating").click()
    form.get_by_role("button", name="Use this pack").click()
    expect(alert).to_contain_text("Name of the pack is empty; allowed: a text.")
    expect(alert).to_contain_text("Connector Ham bayonet, Body length is 2000 mm; allowed: 1 to 1000 mm.")
    expect(alert).to_contain_text(
        "Connector Ham bayonet, Power rating 3, Frequency is empty; allowed: 0.01 to 200000 MHz"
    )

    form.get_by_label("Name of the pack").fill("My station")
    fill(family, Body_length="40")
    family.get_by_role("button", name="Remove Power rating 3").click()
    form.get_by_role("button", name="Use this pack").click()
    expect(alert).to_have_text(
        "Connector Ham bayonet, Outer diameter is 2.04 mm; allowed: 1.05 to 12 times Inner diameter, 1.95 mm.",
        timeout=START_MS,
        use_inner_text=True,
    )
    family.locator("summary").first.click()
    alert.get_by_role("button").click()
    expect(family.get_by_label("Outer diameter", exact=True)).to_be_focused()
    expect(page.locator("jw-packs-view li[data-pack]")).to_have_count(0)


def test_a_pack_is_opened_changed_and_changed_back(packs: Page) -> None:
    """A pack is opened with all it holds; a change is undone, an entry removed and had back; nothing is lost."""
    page = packs
    take(page, PACK)
    in_force(page).get_by_role("button", name="Change Hill club in the form").click()
    form = page.locator("jw-pack-form")
    expect(form.locator(".entry")).to_have_count(3)
    mode = form.get_by_role("group", name="Mode CW, contest")
    expect(mode.get_by_label("Duty factor")).to_have_value("0.5")
    fill(mode, Duty_factor="0.6")
    limit = form.get_by_role("group", name="House limit 50 W")
    chip(limit, "Through", "SMA")
    limit.get_by_role("group", name="Through").get_by_role("button", name="BNC", exact=True).click()
    limit.get_by_role("button", name="from the pack").click()
    expect(form.locator(".entry")).to_have_count(2)
    undo = form.get_by_role("button", name="Undo")
    undo.click()
    expect(form.locator(".entry")).to_have_count(3)
    form.get_by_role("button", name="Use this pack").click()
    expect(page.locator("#said")).to_have_text("Hill club is in use.", timeout=START_MS)
    changed = kept(page)
    assert (changed["modes"][0]["duty_factor"]["value"], changed["house_limits"][0]["interfaces"]) == (0.6, ["sma"])

    for _ in range(3):
        undo.click()
    form.get_by_role("button", name="Use this pack").click()
    expect(mode.get_by_label("Duty factor")).to_have_value("0.5")
    page.wait_for_function("() => JSON.parse(localStorage['jointwise-packs']).own[0].text.includes('\"value\": 0.5')")
    assert kept(page) == PACK


def test_a_pack_of_an_earlier_version_is_opened_as_it_is_read(packs: Page) -> None:
    """Both ends of the power of an earlier version are rows of the form."""
    page = packs
    rating = family()["average_power"][0]
    take(page, PACK | {"interfaces": [family(average_power={"low": rating, "high": rating | {"power_w": 777}})]})
    in_force(page).get_by_role("button", name="Change Hill club in the form").click()
    connector = page.locator("jw-pack-form").get_by_role("group", name="Connector Own bayonet")
    unfold(connector, "Heat")
    second = connector.get_by_role("group", name="Power rating 2", exact=True)
    expect(second.get_by_label("Power", exact=True)).to_have_value("777")


def test_the_form_goes_by_keys(packs: Page) -> None:
    """An entry is added, its group unfolded, a chip added and taken away, and a row added, with keys alone."""
    page = packs
    summary = page.locator("jw-pack-form summary").first
    summary.focus()
    page.keyboard.press("Enter")
    form = page.locator("jw-pack-form")
    form.get_by_label("What to add").focus()
    page.keyboard.type("House")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    limit = form.get_by_role("group", name="House limit new")
    expect(limit.get_by_label("At most, in PEP")).to_be_focused()
    page.keyboard.type("50")
    page.keyboard.press("Tab")
    menu = form.get_by_label("Another for Through")
    menu.focus()
    page.keyboard.type("BNC")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(menu).to_be_focused()
    chips = form.get_by_role("group", name="Through").locator(".choice")
    expect(chips).to_have_count(1)
    page.keyboard.press("Shift+Tab")
    expect(chips).to_be_focused()
    page.keyboard.press("Space")
    expect(chips).to_have_count(0)
    expect(menu).to_be_focused()


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
        more(page).locator("#packs").click()
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
    """The view with a connector of its own, unfolded, has no fault that axe finds, and does not scroll sideways."""
    page = visit("#view=packs", prepare=with_axe, **SIZES[size])
    page.set_default_timeout(START_MS)
    form = form_of(page)
    for what in ("House limit", "Meeting of two connectors"):
        start(form, what)
    family = start(form, "Connector", "SMA", "Own thread")
    for group in family.locator("details.group > summary").all():
        group.click()
    form.get_by_role("button", name="Use this pack").click()

    assert violations(page) == []
    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
