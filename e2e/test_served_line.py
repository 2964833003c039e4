"""The line view: what the core says of a line, editing it, keeping several, and taking them along."""

import base64
import json
import re
from pathlib import Path
from typing import Any

import expected
import pytest
from playwright.sync_api import Locator, Page, expect
from reading import fragment, settled, share, sheet
from test_served_accessibility import violations, with_axe
from visits import PHONE, SIZES, Visit

from jointwise.assemble.version import VERSION

ELEMENTS = [
    {"kind": "joint", "family": "uhf"},
    {"kind": "cable", "cable": "rg_58", "length_m": 3},
    {"kind": "joint", "family": "uhf"},
    {
        "kind": "part",
        "what": "arrester",
        "loss_db": 0.1,
        "vswr": 1.1,
        "power_limit_w": 400,
        "voltage_limit_v": 600,
        "name": "Arrester",
    },
    {"kind": "joint", "family": "uhf", "adapter_to": "n"},
    {"kind": "cable", "cable": "rg_213", "length_m": 28},
    {"kind": "joint", "family": "n", "exposure": "exposed"},
]
EXAMPLE = {"elements": ELEMENTS, "load": {"kind": "vswr", "vswr": 1.5}, "power_w": 100, "mode": "ssb", "band": "20m"}
SHORT_RUN, LONG_RUN = 1, 5
ENOUGH_DRAWS = "10,000"

REFUSED = "status of 400"


def answer(**changes: Any) -> Any:
    """What the core says of the example, with changes."""
    return expected.asked("line", **(EXAMPLE | changes))


def with_element(at: int, **changes: Any) -> list[dict[str, Any]]:
    """The elements of the example, one of them changed."""
    return [one | changes if place == at else one for place, one in enumerate(ELEMENTS)]


def opened(visit: Visit, link: str = "#view=line", **options: Any) -> Page:
    """The line view, answered."""
    return settled(visit(link, **options))


def link_of(request: dict[str, Any]) -> str:
    """The fragment that holds a line."""
    text = json.dumps(request, separators=(",", ":")).encode()
    return f"#view=line&name=From+a+friend&line={base64.urlsafe_b64encode(text).decode().rstrip('=')}"


def cards(page: Page) -> Locator:
    """The elements in the list."""
    return page.locator("jw-line-card")


def names(page: Page) -> list[str]:
    """What the elements in the list are called."""
    return cards(page).locator(".name").all_text_contents()


def toggle(page: Page, at: int) -> Locator:
    """The button that unfolds an element."""
    return cards(page).nth(at).locator("#toggle")


def unfold(page: Page, at: int) -> Locator:
    """An element with its fields."""
    toggle(page, at).click()
    return cards(page).nth(at)


def type_length(page: Page, at: int, text: str) -> None:
    """Give a cable another length."""
    unfold(page, at).locator("[name='cable.length_m'] input").fill(text)
    page.keyboard.press("Tab")


def assert_shows(page: Page, result: Any) -> None:
    """The verdict and the margin of every element come to be those of the core."""
    expect(page.locator("#verdict")).to_have_text(result["verdict"])
    for at in {part["element"] for part in result["parts"] if part["kind"] != "load"}:
        margins = [part["margin_db"] for part in result["parts"] if part["element"] == at]
        known = [margin for margin in margins if margin is not None]
        expect(cards(page).nth(at).locator(".chip")).to_have_text(expected.decibels(min(known)) if known else "–")


def test_example_shows_the_cores_numbers(visit: Visit) -> None:
    """A first visit shows the example with the numbers the core gives for it, in the list and in the drawing."""
    page = opened(visit)

    result = answer()

    assert_shows(page, result)
    drawn = page.locator("jw-line-drawing .part .margin")
    expect(drawn).to_have_text([expected.decibels(part["margin_db"]) for part in result["parts"]])


def test_view_switch_leads_there_and_back(visit: Visit) -> None:
    """The switch in the masthead leads to the line, at the station's SWR, and back to the matrix as it was left."""
    page = settled(visit("#vswr=3"))

    page.get_by_role("button", name="Line", exact=True).click()
    assert_shows(page, answer(load={"kind": "vswr", "vswr": 3}))
    page.get_by_role("button", name="Matrix", exact=True).click()

    expect(page.locator("#vswr")).to_have_value("3")
    assert fragment(page) == "vswr=3"


def test_changed_length_changes_the_numbers(visit: Visit) -> None:
    """A new length is computed by the core."""
    page = opened(visit)

    type_length(page, LONG_RUN, "60")

    assert_shows(page, answer(elements=with_element(LONG_RUN, length_m=60)))


def test_changed_station_changes_the_numbers(visit: Visit) -> None:
    """Another band is computed by the core."""
    page = opened(visit)

    page.locator("[name='station.band'] select").select_option("2m")

    assert_shows(page, answer(band="2m"))


def test_keys_move_an_element_and_keep_the_focus(visit: Visit) -> None:
    """Alt and an arrow key move an element; it keeps the focus."""
    page = opened(visit)
    toggle(page, SHORT_RUN).focus()

    page.keyboard.press("Alt+ArrowDown")
    page.keyboard.press("Alt+ArrowDown")

    expect(cards(page).nth(SHORT_RUN + 2).locator(".name")).to_have_text("3 m of RG-58")
    expect(toggle(page, SHORT_RUN + 2)).to_be_focused()
    moved = [*ELEMENTS[:1], *ELEMENTS[2:4], ELEMENTS[1], *ELEMENTS[4:]]
    assert_shows(page, answer(elements=moved))


def test_drag_moves_an_element(visit: Visit) -> None:
    """An element is dragged to another place by its handle."""
    page = opened(visit)
    before = names(page)
    cards(page).last.scroll_into_view_if_needed()
    handle, target = (cards(page).nth(at).locator("#handle").bounding_box() for at in (LONG_RUN, 0))

    page.mouse.move(handle["x"] + handle["width"] / 2, handle["y"] + handle["height"] / 2)
    page.mouse.down()
    page.mouse.move(handle["x"] + handle["width"] / 2, handle["y"] - 60, steps=3)
    page.mouse.move(target["x"] + target["width"] / 2, target["y"] + 2, steps=5)
    page.mouse.up()

    moved = [before[LONG_RUN], *before[:LONG_RUN], *before[LONG_RUN + 1 :]]
    expect(cards(page).locator(".name")).to_have_text(moved)


def test_undo_and_redo_by_keys(visit: Visit) -> None:
    """Every change can be taken back and made again from the keyboard."""
    page = opened(visit)
    type_length(page, LONG_RUN, "60")
    cards(page).nth(LONG_RUN).locator("#duplicate").click()
    expect(cards(page)).to_have_count(len(ELEMENTS) + 1)

    page.keyboard.press("Control+z")
    expect(cards(page)).to_have_count(len(ELEMENTS))
    page.keyboard.press("Control+z")
    assert_shows(page, answer())
    page.keyboard.press("Control+Shift+z")

    assert_shows(page, answer(elements=with_element(LONG_RUN, length_m=60)))


def add(page: Page, name: str) -> None:
    """Choose from the menu of all that a line may be made of."""
    page.get_by_role("button", name="Add…").click()
    page.locator("jw-line-add").get_by_role("button", name=name).click()


def test_element_is_added_and_removed(visit: Visit) -> None:
    """A joint added before the antenna counts; removed, it is gone."""
    page = opened(visit)

    add(page, "Joint plug in its jack")
    assert_shows(page, answer(elements=[*ELEMENTS, {"kind": "joint", "family": "n"}]))
    cards(page).last.get_by_role("button", name="Remove").click()

    assert_shows(page, answer())


def test_refusal_stands_at_its_field_and_the_rest_stays(visit: Visit) -> None:
    """A length the core refuses is named at its field; the other elements keep their numbers."""
    page = opened(visit, forgiven=REFUSED)

    type_length(page, LONG_RUN, "-3")

    said = "Element 6, Length: −3 m; allowed: 0.01 to 10000 m."
    field = cards(page).nth(LONG_RUN).locator("[name='cable.length_m']")
    expect(field.get_by_role("alert")).to_have_text(said.replace("-3 m", "−3 m"))
    expect(field.locator("input")).to_have_attribute("aria-invalid", "true")
    first = answer()["parts"][0]["margin_db"]
    expect(cards(page).first.locator(".chip")).to_have_text(expected.decibels(first))
    expect(page.locator("jw-line-verdict .outdated")).to_contain_text("Out of date")


def test_refused_antenna_stands_at_its_field(visit: Visit) -> None:
    """An SWR of the antenna below one is refused at its field, and a good one clears the mark."""
    page = opened(visit, forgiven=REFUSED)
    field = page.locator("jw-line-load [name='load_vswr.vswr']")

    field.locator("input").fill("0.5")
    page.keyboard.press("Tab")
    expect(field.get_by_role("alert")).to_contain_text("SWR of the antenna: 0.5; allowed: 1 to 100.")
    field.locator("input").fill("3")
    page.keyboard.press("Tab")

    assert_shows(page, answer(load={"kind": "vswr", "vswr": 3}))
    expect(field.get_by_role("alert")).to_have_count(0)


def test_pasted_table_becomes_the_antenna(visit: Visit) -> None:
    """Rows of frequency, resistance and reactance are the antenna; a row that cannot be read is named."""
    page = opened(visit)
    page.locator("jw-line-load #way").select_option("table")
    rows = page.locator("jw-line-load #rows")

    rows.fill("14 lots 0")
    page.keyboard.press("Tab")
    expect(page.locator("jw-line-load").get_by_role("alert")).to_contain_text("Row 1 is “14 lots 0”")
    rows.fill("14.0 40 -5\n14.35 60 10")
    page.keyboard.press("Tab")

    points = [(14.0e6, 40, -5), (14.35e6, 60, 10)]
    keys = ("frequency_hz", "resistance_ohm", "reactance_ohm")
    assert_shows(page, answer(load={"kind": "table", "points": [dict(zip(keys, one, strict=True)) for one in points]}))


def test_kept_lines_stand_side_by_side(visit: Visit) -> None:
    """A copy with another cable stands beside the line it was copied from, each with its own numbers."""
    page = opened(visit)
    page.get_by_role("button", name="Compare with a copy").click()

    type_length(page, LONG_RUN, "100")

    table = page.locator("jw-line-compare tbody tr")
    expect(table).to_have_count(2)
    for row, result in ((0, answer()), (1, answer(elements=with_element(LONG_RUN, length_m=100)))):
        expect(table.nth(row).locator(".chip")).to_have_text(f"{expected.decibels(result['margin_db'])} dB")
        expect(table.nth(row)).to_contain_text(f"{result['loss_db']:.2f} dB")
        expect(table.nth(row)).to_contain_text(f"at worst {result['loss_high_db']:.2f} dB")
    page.get_by_role("button", name="Show Field day", exact=True).click()
    assert_shows(page, answer())


def test_lines_are_kept_by_the_browser(visit: Visit) -> None:
    """After a reload without a link, the lines are as they were left."""
    page = opened(visit)
    type_length(page, LONG_RUN, "42")
    assert_shows(page, answer(elements=with_element(LONG_RUN, length_m=42)))

    page.evaluate("() => history.replaceState(null, '', '#view=line')")
    page.reload()

    assert_shows(settled(page), answer(elements=with_element(LONG_RUN, length_m=42)))


def test_spoilt_lines_are_set_aside(visit: Visit) -> None:
    """Lines that cannot be read are set aside and offered, and the page starts with the example."""
    spoil = "if (location.origin !== 'null') localStorage.setItem('jointwise-lines', '{\"lines\": 7}')"
    page = opened(visit, prepare=lambda context: context.add_init_script(spoil))

    assert_shows(page, answer())
    expect(page.get_by_role("status").filter(has_text="set aside")).to_be_visible()
    with page.expect_download() as download:
        page.get_by_role("button", name="Save them").click()
    assert Path(download.value.path()).read_text() == '{"lines": 7}'


def test_blocked_storage_is_said_and_all_works(visit: Visit) -> None:
    """Where the browser keeps nothing, the view says so and works."""
    block = "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError'); }})"
    page = opened(visit, prepare=lambda context: context.add_init_script(block))

    expect(page.get_by_role("status").filter(has_text="keeps nothing")).to_be_visible()
    type_length(page, LONG_RUN, "60")
    assert_shows(page, answer(elements=with_element(LONG_RUN, length_m=60)))


def test_exported_lines_come_back(visit: Visit) -> None:
    """An exported file brings the lines back in another browser."""
    page = opened(visit)
    type_length(page, LONG_RUN, "77")
    with page.expect_download() as download:
        share(page).get_by_role("button", name="Save all lines").click()

    file = download.value.path()
    assert json.loads(file.read_text())["made_by"] == f"Jointwise {VERSION}"
    elsewhere = opened(visit)
    share(elsewhere).locator("#import").set_input_files(file)

    assert_shows(elsewhere, answer(elements=with_element(LONG_RUN, length_m=77)))
    expect(elsewhere.locator("jw-line-compare tbody tr")).to_have_count(2)


def test_bad_file_is_refused_whole(visit: Visit, tmp_path: Path) -> None:
    """A file with one wrong field is refused with that field, and nothing changes."""
    request = EXAMPLE | {"elements": with_element(LONG_RUN, length_m="long")}
    file = tmp_path / "bad.json"
    lines = [{"name": "x", "request": request}]
    file.write_text(json.dumps({"format": "jointwise lines", "version": 1, "lines": lines}))
    page = opened(visit)

    share(page).locator("#import").set_input_files(file)

    refusal = 'elements[5].length_m is "long"; allowed: a number from 0.01 to 10000.'
    expect(page.get_by_role("status").filter(has_text=refusal)).to_be_visible()
    expect(page.locator("jw-line-compare")).to_have_count(0)


def test_link_restores_a_line(visit: Visit) -> None:
    """A link brings its line, beside those that are there."""
    request = EXAMPLE | {"power_w": 400, "elements": ELEMENTS[:3]}

    page = opened(visit, link_of(request))

    assert_shows(page, expected.asked("line", **request))
    expect(page.locator("jw-line-bar #name")).to_have_value("From a friend")


def test_address_holds_the_line(visit: Visit) -> None:
    """The address of a changed line opens the same line elsewhere."""
    page = opened(visit)
    type_length(page, LONG_RUN, "33")
    changed = answer(elements=with_element(LONG_RUN, length_m=33))
    assert_shows(page, changed)

    assert_shows(opened(visit, f"#{fragment(page)}"), changed)


@pytest.mark.parametrize("text", ["%25%25", "e30", "eyJlbGVtZW50cyI6"])
def test_broken_link_is_named(visit: Visit, text: str) -> None:
    """A link that cannot be read is named in words, and the page starts with the example."""
    page = opened(visit, f"#view=line&line={text}")

    expect(page.get_by_role("status").filter(has_text="The line in this link can’t be used")).to_be_visible()
    assert_shows(page, answer())


def test_hostile_names_are_never_markup(visit: Visit) -> None:
    """Markup in a name is shown as text and makes no element."""
    markup = "<img src=x onerror=alert(1)>"

    page = opened(visit, link_of(EXAMPLE | {"elements": with_element(3, name=markup)}))

    expect(cards(page).nth(3).locator(".name")).to_have_text(markup)
    assert page.evaluate("() => readers.everywhere('img').length") == 0


def test_part_opens_its_derivation(visit: Visit) -> None:
    """A tap on a part of the drawing opens its derivation with every step the core took; Escape closes it."""
    page = opened(visit)
    steps = answer(explain=LONG_RUN)["steps"]

    page.locator("jw-line-drawing .part").nth(6).click()

    expect(sheet(page).get_by_role("heading", name="Element 6: 28 m of RG-213")).to_be_focused()
    shown = [step for step in steps if step["end"] != "high"]
    rows = page.locator("jw-line-derivation jw-steps li")
    expect(rows).to_have_count(len(steps))
    assert rows.evaluate_all("(all) => all.map((one) => one.dataset.formula)")[: len(shown)] == [
        step["formula"] for step in shown
    ]
    page.keyboard.press("Escape")
    expect(sheet(page)).to_be_hidden()


def test_back_closes_a_derivation(visit: Visit) -> None:
    """Opening a derivation is a step of the history."""
    page = opened(visit)
    page.locator("jw-line-drawing .part").first.press("Enter")
    expect(sheet(page)).to_be_visible()

    page.go_back()

    expect(sheet(page)).to_be_hidden()
    assert_shows(page, answer())


def test_spread_comes_and_can_be_stopped(visit: Visit) -> None:
    """The spread is drawn by itself; stopped, it rests until it is asked for."""
    page = opened(visit)
    charts = page.locator("jw-line-charts .spread")
    expect(charts).to_contain_text(f"nine of ten of {ENOUGH_DRAWS} lines")

    page.route("**/api/v1/spread", lambda route: None)
    type_length(page, LONG_RUN, "60")
    charts.get_by_role("button", name="Stop").click()

    expect(charts.get_by_role("button", name="Draw the spread")).to_be_visible()
    expect(charts).to_contain_text("No spread is drawn")
    page.unroute("**/api/v1/spread")
    charts.get_by_role("button", name="Draw the spread").click()
    expect(charts).to_contain_text(f"nine of ten of {ENOUGH_DRAWS} lines")


THIN_RUN = EXAMPLE | {"elements": with_element(LONG_RUN, cable="rg_58")}
"""Where a better cable helps for certain."""


def changed(change: dict[str, Any]) -> list[dict[str, Any]]:
    """The elements of the thin run with a change, whose places are those of the line as it stands."""
    elements = [*THIN_RUN["elements"]]
    for edit in sorted(change["edits"], key=lambda edit: edit["at"], reverse=True):
        at, element = edit["at"], edit["element"]
        elements[at : at + (not edit["insert"])] = [] if element is None else [element]
    return elements


def test_proposed_change_is_laid_beside_the_line_used_and_undone(visit: Visit) -> None:
    """What would help is compared with one tap, left again, used, and taken back by undo."""
    result = expected.asked("line", **THIN_RUN)
    change = result["changes"][0]
    after = answer(elements=changed(change))
    page = opened(visit, link_of(THIN_RUN))
    first = page.locator("jw-line-changes li").first
    expect(first).to_contain_text(change["title"])

    first.get_by_role("button", name="Compare").click()
    beside = first.get_by_role("group", name="Before and after")
    for name in ("As it stands", "With the change"):
        expect(beside.get_by_role("columnheader", name=name)).to_be_visible()
    losses = beside.get_by_role("row", name="Loss of the line").get_by_role("cell")
    expect(losses.nth(0)).to_contain_text(f"{result['loss_db']:.2f} dB")
    expect(losses.nth(1)).to_contain_text(f"{after['loss_db']:.2f} dB")
    beside.get_by_role("button", name="Leave it").click()
    expect(beside).to_have_count(0)

    first.get_by_role("button", name="Compare").click()
    beside.get_by_role("button", name="Use this").click()
    assert_shows(page, after)
    page.get_by_role("button", name="Undo").click()
    assert_shows(page, result)


def test_what_makes_no_difference_is_folded(visit: Visit) -> None:
    """Changes whose gain is within what is not known lie folded under one line, and lead nowhere."""
    changes = answer()["changes"]
    same = [change["title"] for change in changes if change["same"]]
    page = opened(visit)

    folded = page.locator("jw-line-changes details").filter(has_text="no difference")
    expect(folded.locator("li").first).to_be_hidden()
    folded.locator("summary").click()

    assert folded.locator("li").evaluate_all("(all) => all.map((one) => one.dataset.change)") == same
    expect(folded.locator("li").first).to_contain_text("no difference")


def test_transmitter_that_folds_back_says_so(visit: Visit) -> None:
    """At a bad load the page says what the transmitter does, and another kind of transmitter does otherwise."""
    load = {"kind": "vswr", "vswr": 11}
    page = opened(visit, link_of(EXAMPLE | {"load": load}))
    result = answer(load=load)
    assert result["transmitter"]["folded"]
    expect(page.locator("jw-line-verdict #transmitter")).to_have_text(result["transmitter"]["sentence"])

    page.get_by_label("At a bad SWR").select_option("keeps_forward")

    assert_shows(page, answer(load=load, transmitter={"behaviour": "keeps_forward"}))
    page.get_by_label("At a bad SWR").select_option("transceiver")
    page.get_by_label("Full power up to SWR").fill("3")
    page.keyboard.press("Tab")
    assert_shows(page, answer(load=load, transmitter={"behaviour": "transceiver", "holds_to_vswr": 3}))


def test_net_power_asks_nothing_of_the_transmitter(visit: Visit) -> None:
    """Where net power is given, what the transmitter does at a bad SWR is not asked for."""
    page = opened(visit)
    expect(page.get_by_label("At a bad SWR")).to_be_visible()

    page.locator("[name='station.power_is'] select").select_option("net")

    assert_shows(page, answer(power_is="net"))
    expect(page.get_by_label("At a bad SWR")).to_have_count(0)


def test_tuner_is_put_beside_the_transmitter(visit: Visit) -> None:
    """One tap puts a tuner first in the line; it says what it found, and is offered only while there is none."""
    load = {"kind": "vswr", "vswr": 11}
    page = opened(visit, link_of(EXAMPLE | {"load": load}))
    tune = page.get_by_role("button", name="Put a tuner beside it")

    tune.click()

    result = answer(load=load, elements=[{"kind": "tuner", "network": "t"}, *ELEMENTS])
    assert_shows(page, result)
    said = page.locator("jw-line-verdict [data-said=tuner]")
    expect(said).to_contain_text(result["parts"][0]["tuner"]["sentence"].removeprefix("It"))
    expect(said).to_contain_text("Set to")
    expect(tune).to_have_count(0)
    page.get_by_role("button", name="Undo").click()
    expect(tune).to_be_visible()


def test_setting_of_a_tuner_is_in_its_derivation(visit: Visit) -> None:
    """The derivation of a tuner lists its coil and capacitors with value, voltage, current and heat."""
    elements = [{"kind": "tuner", "network": "l"}, *ELEMENTS]
    page = opened(visit, f"{link_of(EXAMPLE | {'elements': elements})}&open=0")

    parts = answer(elements=elements)["parts"][0]["tuner"]["parts"]

    rows = page.locator("jw-line-derivation table").filter(has_text="Set to").locator("tbody tr")
    expect(rows).to_have_count(len(parts))
    for at, part in enumerate(parts):
        expect(rows.nth(at)).to_contain_text(f"{part['what']}, {part['place']}")
        expect(rows.nth(at)).to_contain_text(re.compile("[pnµ]H" if part["what"] == "coil" else "[pn]F"))


ADDED = {
    "Coaxial cable": "cable",
    "Open-wire line": "wires",
    "Transformer section": "section",
    "Tuner": "tuner",
    "Balun, 4:1": "transformer",
    "Unun, 9:1": "transformer",
    "Choke, 1:1": "transformer",
    "Arrester": "part",
    "Switch": "part",
    "SWR meter": "part",
    "Attenuator": "part",
    "Filter": "part",
    "Power divider": "part",
    "Another part": "part",
}


@pytest.mark.parametrize("name", ADDED)
def test_all_that_is_offered_is_answered(visit: Visit, name: str) -> None:
    """What the menu adds starts with values the core takes, opens with its fields, and comes back from the address."""
    page = opened(visit)

    add(page, name)

    expect(cards(page)).to_have_count(len(ELEMENTS) + 1)
    added = cards(page).last
    expect(added.locator(".chip")).not_to_have_text("…")
    expect(added.get_by_role("button", name="Remove")).to_be_visible()
    expect(page.locator("jw-line-verdict .outdated")).to_have_count(0)
    kept = page.evaluate("() => JSON.parse(localStorage.getItem('jointwise-lines'))")
    elements = kept["lines"][0]["request"]["elements"]
    assert elements[-1]["kind"] == ADDED[name]
    assert_shows(opened(visit, f"#{fragment(page)}"), answer(elements=elements))


def test_menu_is_used_by_keys(visit: Visit) -> None:
    """The menu opens at its first entry, arrow keys walk it, Escape puts it away and gives the focus back."""
    page = opened(visit)
    button = page.get_by_role("button", name="Add…")

    button.press("Enter")
    expect(page.locator("[data-add=cable]")).to_be_focused()
    page.keyboard.press("ArrowDown")
    expect(page.locator("[data-add=wires]")).to_be_focused()
    page.keyboard.press("Escape")
    expect(button).to_be_focused()
    expect(page.locator("jw-line-add #menu")).to_have_count(0)

    button.press("Enter")
    page.keyboard.press("ArrowUp")
    expect(page.locator("jw-line-add #measured")).to_be_focused()


def test_measured_file_joins_the_line(visit: Visit, tmp_path: Path) -> None:
    """A Touchstone file is picked from the menu and named after its file."""
    file = tmp_path / "old filter.s2p"
    file.write_text("# MHz S RI R 50\n1 0 0 0.9 0 0.9 0 0 0\n100 0 0 0.9 0 0.9 0 0 0\n")
    page = opened(visit)

    page.get_by_role("button", name="Add…").click()
    page.locator("jw-line-add #measured").set_input_files(file)

    expect(cards(page).last.locator(".name")).to_have_text("old filter")
    assert_shows(
        page,
        answer(elements=[*ELEMENTS, {"kind": "measured", "touchstone": file.read_text(), "name": "old filter"}]),
    )


def test_angle_left_empty_is_unknown(visit: Visit) -> None:
    """An SWR alone covers every phase; a phase given is one of them."""
    page = opened(visit)
    angle = page.get_by_label("Angle of its reflection")
    expect(angle).to_have_value("")
    result = answer()
    assert not result["phase_known"]
    expect(page.locator("jw-line-verdict .facts")).to_contain_text("phase unknown")
    expect(page.locator("jw-line-verdict .quiet")).to_contain_text("the middle of all phases")
    row = page.locator("jw-line-verdict tr[data-side=delivered] td")
    expect(row.nth(0)).to_have_text(f"{result['delivered_w']:.3g} W")
    expect(row.nth(1)).to_have_text(f"{result['delivered_low_w']:.3g} W")

    angle.fill("0")
    page.keyboard.press("Tab")

    known = answer(load={"kind": "vswr", "vswr": 1.5, "angle_deg": 0})
    assert_shows(page, known)
    expect(page.locator("jw-line-verdict .quiet")).to_contain_text("the figures of good parts")
    expect(page.locator("jw-line-verdict tr[data-side=impedance]")).to_be_visible()
    expect(angle).to_have_value("0")


def test_resonant_antenna_starts_where_the_line_is_looked_at(visit: Visit) -> None:
    """An antenna known by its resonance starts in the middle of the band, with a usual bandwidth."""
    page = opened(visit)

    page.locator("jw-line-load #way").select_option("resonant")

    expect(page.get_by_label("Resonance", exact=True)).to_have_value("14.175")
    load = {"kind": "resonant", "resonance_hz": 14.175e6, "vswr": 1.2, "bandwidth_hz": 425000}
    assert_shows(page, answer(load=load))


def test_dummy_load_ends_the_line(visit: Visit) -> None:
    """A dummy load stands at the end of the line drawn, with the margin of what it stands."""
    page = opened(visit)

    page.locator("jw-line-load #way").select_option("dummy")

    part = answer(load={"kind": "dummy", "vswr": 1.1, "power_limit_w": 300})["parts"][-1]
    assert part["kind"] == "load"
    drawn = page.locator(f"jw-line-drawing g[data-part='{len(ELEMENTS) + 1}']")
    expect(drawn).to_contain_text(expected.decibels(part["margin_db"]))
    expect(page.locator("jw-line-drawing")).not_to_contain_text("Antenna")
    expect(page.locator("jw-line-numbers tbody tr").last).to_contain_text("Dummy load")


def test_meter_says_what_it_reads(visit: Visit) -> None:
    """A meter with a directivity shows a range, in the list and in the answer."""
    meter = {"kind": "part", "what": "meter", "loss_db": 0.1, "vswr": 1.05, "directivity_db": 20}
    low, high = answer(elements=[meter, *ELEMENTS])["parts"][0]["reads_vswr"]

    page = opened(visit, link_of(EXAMPLE | {"elements": [meter, *ELEMENTS]}))

    expect(cards(page).first.locator(".sub")).to_contain_text(f"reads SWR {low:.3g} to {high:.3g}")
    expect(page.locator("jw-line-verdict [data-said=part]")).to_contain_text(f"SWR {low:.3g} to {high:.3g}")


def test_long_line_is_drawn_as_its_envelope(visit: Visit) -> None:
    """A line of many half waves is drawn between the largest and the least of each, and says why."""
    page = opened(visit)
    why = page.locator("jw-line-charts section").filter(has_text="Wave along the line").locator("p")
    expect(why).not_to_contain_text("half waves")

    page.locator("[name='station.band'] select").select_option("70cm")

    half_waves = round(answer(band="70cm")["standing_wave"]["half_waves"])
    expect(why).to_contain_text(f"The line is {half_waves} half waves long")
    expect(why).to_contain_text("Smith chart")


def test_receive_costs_are_the_cores(visit: Visit) -> None:
    """A preamplifier at the antenna wins what the core says, band by band."""
    page = opened(visit)
    receive = page.locator("jw-line-receive")

    receive.locator("#preamplifier").select_option("6")

    receiver = {"preamplifier": {"before_element": 6, "gain_db": 15, "noise_figure_db": 1}}
    reception = answer(receiver=receiver)["reception"]
    for name, cost in zip(reception["bands"], reception["whole_cost_by_band_db"], strict=True):
        expect(receive.locator(f"tr[data-id='{name}'] td").first).to_have_text(f"{cost:.2f} dB".replace("-", "−"))


def test_what_the_antenna_looks_at_is_asked_and_told(visit: Visit) -> None:
    """A view asks for what it needs, a temperature takes its place, and bands from 30 MHz up follow the core."""
    page = opened(visit)
    receive = page.locator("jw-line-receive")

    receive.locator("#antenna-view").select_option("cold_sky")

    expect(receive.get_by_label("Elevation of its beam")).to_have_value("30")
    reception = answer(receiver={"antenna_view": "cold_sky"})["reception"]
    for name, cost in zip(reception["bands"], reception["whole_cost_by_band_db"], strict=True):
        expect(receive.locator(f"tr[data-id='{name}'] td").first).to_have_text(f"{cost:.2f} dB".replace("-", "−"))

    receive.locator("#antenna-view").select_option("given")

    receive.get_by_label("Noise temperature of the antenna").fill("64")
    receive.get_by_label("Noise temperature of the antenna").press("Tab")
    expect(receive.locator(".quiet").first).to_contain_text("Noise at the antenna 64 K")
    expect(receive.get_by_label("Elevation of its beam")).to_have_count(0)


@pytest.mark.parametrize("size", [*SIZES, "wide"])
def test_nothing_scrolls_sideways(visit: Visit, size: str) -> None:
    """The view fits its screen, with an element unfolded as well."""
    options = SIZES.get(size, {"viewport": {"width": 1600, "height": 1000}})
    page = opened(visit, **options)
    unfold(page, LONG_RUN)

    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")


def test_every_control_can_be_touched(visit: Visit) -> None:
    """On a phone every button and every part of the drawing is at least 44 pixels in both directions."""
    page = opened(visit, **PHONE)
    unfold(page, LONG_RUN)

    small = page.evaluate(
        """() => readers.everywhere('button, select, label.pick, jw-line-drawing .hit')
          .filter((one) => one.checkVisibility())
          .map((one) => ({what: one.id || one.textContent, box: one.getBoundingClientRect()}))
          .filter(({box}) => box.width > 0 && (box.width < 43.5 || box.height < 43.5)).map(({what}) => what)"""
    )
    assert small == []


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("size", SIZES)
def test_rules_find_nothing(visit: Visit, size: str, theme: str) -> None:
    """No accessibility rule is broken by the view with an element unfolded and two lines kept."""
    page = opened(visit, prepare=with_axe, color_scheme=theme, reduced_motion="reduce", **SIZES[size])
    page.get_by_role("button", name="Compare with a copy").click()
    unfold(page, LONG_RUN)
    expect(page.locator("jw-line-charts .spread")).to_contain_text(ENOUGH_DRAWS)
    expect(page.locator("jw-line-compare .chip")).to_have_count(2)

    assert violations(page) == []


def test_rules_find_nothing_in_a_derivation(visit: Visit) -> None:
    """No accessibility rule is broken by an open derivation."""
    page = opened(visit, "#view=line&open=4", prepare=with_axe)
    expect(page.locator("jw-line-derivation math").first).to_be_visible()

    part = {"include": [{"fromShadowDom": ["jw-app", "jw-line-view", "jw-sheet"]}]}
    found = page.evaluate("(part) => axe.run(part).then(({violations}) => violations)", part)
    assert [one["id"] for one in found] == []
