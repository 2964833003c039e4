"""The station: described once, known to every view, in every link, kept by the browser, and undone in every view."""

import json
from pathlib import Path
from typing import Any

import pytest
from engines import SAVED
from expected import asked, numbers
from playwright.sync_api import Browser, Locator, Page, expect
from reading import assert_numbers, fragment, more, settled, share
from test_served_accessibility import violations, with_axe
from visits import PHONE, READERS, SIZES, START_MS, Visit

LINK = "#mode=fm&vswr=3&power_w=400"
CLIPBOARD = {"permissions": ["clipboard-read", "clipboard-write"]}
VIEWS = ["Matrix", "Choose", "Line", "Kit", "Fit-out", "Sweep"]


def go_to(page: Page, view: str) -> None:
    """Turn to another view by the switch."""
    page.get_by_role("button", name=view, exact=True).click()


def panel(page: Page) -> Locator:
    """The station, open."""
    page.get_by_role("button", name="Station", exact=True).click()
    expect(page.get_by_role("dialog", name="Station")).to_be_visible()
    return page.locator("jw-sheet.own")


def field(page: Page, group: str, name: str) -> Locator:
    """A control of a form."""
    return page.locator(f"[id='{group}.{name}']")


def type_into(control: Locator, text: str) -> None:
    """Fill a field and settle it."""
    control.fill(text)
    control.press("Enter")


def set_three(page: Page) -> None:
    """Mode, SWR and power, as the matrix has them."""
    page.locator("#mode").select_option("fm")
    type_into(page.locator("input#vswr"), "3")
    page.locator("jw-power-choice").get_by_text("400 W", exact=True).click()


def assert_three(page: Page) -> None:
    """Every view shows mode, SWR and power, and the core is asked for them."""
    go_to(page, "Matrix")
    assert_numbers(page, numbers(400, mode="fm", vswr=3))
    go_to(page, "Choose")
    expect(field(page, "choose", "mode")).to_have_value("fm")
    expect(field(page, "choose", "vswr")).to_have_value("3")
    expect(field(page, "choose", "power_w")).to_have_value("400")
    verdict = asked("choose", bands=["20m"], mode="fm", vswr=3, power_w=400)["verdict"]
    expect(page.locator("jw-choose-verdict")).to_contain_text(verdict)
    go_to(page, "Line")
    expect(field(page, "station", "mode")).to_have_value("fm")
    expect(field(page, "station", "power_w")).to_have_value("400")
    expect(field(page, "load_vswr", "vswr")).to_have_value("3")
    expect(page.locator("jw-line-answer")).to_be_visible()
    go_to(page, "Kit")
    expect(field(page, "kit", "mode")).to_have_value("fm")
    expect(field(page, "kit", "vswr")).to_have_value("3")


def request_of(page: Page, operation: str, change: Any) -> dict[str, Any]:
    """What the core is asked when something is done."""
    with page.expect_request(f"**/api/v1/{operation}") as asking:
        change()
    return json.loads(asking.value.post_data)


def test_what_is_set_in_the_matrix_is_there_in_every_view(visit: Visit) -> None:
    """Mode, SWR and power of the matrix are those of Choose, Line and Kit, and what the core is asked."""
    page = settled(visit())

    set_three(page)

    assert_three(page)
    fitted = request_of(page, "fitout", lambda: go_to(page, "Fit-out"))
    assert (fitted["mode"], fitted["power_w"]) == ("fm", 400)


def test_what_is_set_in_any_view_is_there_in_the_others(visit: Visit) -> None:
    """A change in Line, Choose or Kit is one of the station."""
    page = settled(visit("#view=line"))
    field(page, "station", "mode").select_option("cw")
    type_into(field(page, "load_vswr", "vswr"), "2.5")

    go_to(page, "Choose")
    expect(field(page, "choose", "vswr")).to_have_value("2.5")
    type_into(field(page, "choose", "power_w"), "60")
    go_to(page, "Kit")
    field(page, "kit", "mode").select_option("am")
    go_to(page, "Matrix")

    expect(page.get_by_role("radio", name="60 W")).to_be_checked()
    assert_numbers(page, numbers(60, mode="am", vswr=2.5, powers_w=[0, 5, 50, 60, 100, 400, 1500]))


def test_a_line_asks_the_core_with_the_stations_rig_and_antenna(visit: Visit) -> None:
    """The line of a first visit takes over nothing of its own: power, behaviour and antenna are the station's."""
    page = settled(visit())
    station = panel(page)
    station.get_by_role("button", name="Club station HF").click()
    station.get_by_role("button", name="Close").click()

    request = request_of(page, "line", lambda: go_to(page, "Line"))

    assert request["power_w"] == 1000
    assert request["mode"] == "rtty"
    assert request["transmitter"] == {"behaviour": "valve_amplifier"}
    assert request["load"] == {"kind": "vswr", "vswr": 2}


@pytest.mark.parametrize("view", VIEWS)
def test_a_link_of_any_view_restores_the_station_in_another_browser(visit: Visit, view: str) -> None:
    """A copied link brings all of the station along, whichever view it was made in."""
    page = settled(visit(LINK, **CLIPBOARD))
    station = panel(page)
    type_into(station.get_by_label("Name of the station"), "Hill hut")
    station.get_by_role("button", name="Add a transmitter").click()
    type_into(field(page, "rig", "power_w"), "400")
    station.get_by_role("button", name="Close").click()
    go_to(page, view)

    if view == "Sweep":
        link = page.url
    else:
        share(page).get_by_role("button", name="Copy link").click()
        expect(page.get_by_text("Link copied.")).to_be_visible()
        link = page.evaluate("() => navigator.clipboard.readText()")
    other = visit(link.removeprefix(page.url.split("#")[0]))

    assert_three(other)
    station = panel(other)
    expect(station.get_by_label("Name of the station")).to_have_value("Hill hut")
    expect(station.locator("jw-station-list[list=rigs]")).to_contain_text("in use, 400 W")


def test_a_link_of_an_untouched_station_says_so_to_one_that_is_not(visit: Visit) -> None:
    """Who has a station of his own sees the link's numbers, is told, and gets his own back."""
    page = settled(visit(**CLIPBOARD))
    share(page).get_by_role("button", name="Copy link").click()
    expect(page.get_by_text("Link copied.")).to_be_visible()
    link = page.evaluate("() => navigator.clipboard.readText()")
    other = settled(visit(LINK))
    go_to(other, "Choose")

    other.goto(link)

    expect(other.get_by_role("status").filter(has_text="The station of this link is shown")).to_be_visible()
    assert_numbers(other, numbers())
    other.get_by_role("button", name="Undo", exact=True).click()
    assert_numbers(other, numbers(400, mode="fm", vswr=3))


def test_the_browser_keeps_the_station(visit: Visit) -> None:
    """A reload keeps it, and so does a visit without a link."""
    page = settled(visit())
    set_three(page)
    page.reload()
    assert_numbers(page, numbers(400, mode="fm", vswr=3))

    other = page.context.new_page()
    other.goto(page.url.split("#")[0])

    assert_three(other)


def test_the_way_back_from_another_view_keeps_what_was_set_there(visit: Visit) -> None:
    """The browser's back button turns to the view before, and takes nothing of the station away."""
    page = settled(visit())
    go_to(page, "Choose")
    go_to(page, "Line")
    type_into(field(page, "load_vswr", "vswr"), "3")

    page.go_back()
    expect(field(page, "choose", "vswr")).to_have_value("3")
    page.go_back()

    assert_numbers(page, numbers(vswr=3))
    assert fragment(page) == "vswr=3"


def test_a_saved_file_keeps_the_station_and_tells_where_its_links_work(browser: Browser) -> None:
    """Opened from the disk without a network the page keeps the station; its links lead to a set address, or say so."""
    context = browser.new_context(offline=True, **CLIPBOARD)
    context.add_init_script(path=READERS)
    page = context.new_page()
    page.set_default_timeout(START_MS)
    page.goto(SAVED.as_uri() + LINK)
    assert_numbers(page, numbers(400, mode="fm", vswr=3))
    page.goto(SAVED.as_uri())
    page.reload()
    expect(page.locator("#mode")).to_have_value("fm")

    share(page).get_by_role("button", name="Copy link").click()
    expect(page.get_by_text("works on this device only")).to_be_visible()
    page.get_by_role("button", name="Copy as text").click()
    expect(page.get_by_text("put it behind the address of another copy")).to_be_visible()
    assert page.evaluate("() => navigator.clipboard.readText()") == LINK

    station = panel(page)
    address = station.get_by_label("Address of the page on the web")
    type_into(address, "club.example")
    expect(station.get_by_text("allowed: a web address")).to_be_visible()
    type_into(address, "https://club.example/jointwise/")
    station.get_by_role("button", name="Close").click()
    share(page).get_by_role("button", name="Copy link").click()
    expect(page.get_by_text("Link copied. It holds everything you set.", exact=True)).to_be_visible()
    assert page.evaluate("() => navigator.clipboard.readText()") == f"https://club.example/jointwise/{LINK}"
    context.close()


def undo(page: Page) -> None:
    """Take the last step back by the button."""
    page.get_by_role("button", name="Undo", exact=True).click()


def test_reset_of_the_matrix_is_undone(visit: Visit) -> None:
    """Reset goes back to a first visit, Undo brings all of it back, Redo resets again."""
    page = settled(visit(f"{LINK}&families=n,bnc&shows=largest"))
    before = fragment(page)

    more(page).get_by_role("button", name="Reset").click()
    expect(page.locator("#mode")).to_have_value("ssb")
    assert fragment(page) == ""
    undo(page)
    expect(page.locator("#mode")).to_have_value("fm")
    assert fragment(page) == before
    page.keyboard.press("Control+Shift+Z")
    expect(page.locator("#mode")).to_have_value("ssb")


def test_reset_of_choose_is_undone_by_the_keyboard(visit: Visit) -> None:
    """Reset of the demands and of the station is one step."""
    page = settled(visit("#view=choose&port=n&use=receive&mode=fm"))

    more(page).get_by_role("button", name="Reset").click()
    expect(field(page, "choose", "mode")).to_have_value("ssb")
    page.keyboard.press("Control+z")

    expect(field(page, "choose", "mode")).to_have_value("fm")
    expect(field(page, "choose", "use")).to_have_value("receive")


def test_reset_of_the_fit_out_is_undone(visit: Visit) -> None:
    """The single joint and what stands on its label come back."""
    page = settled(visit("#view=fitout&of=joint&family=bnc&name=Top&exposure=exposed"))

    more(page).get_by_role("button", name="Reset").click()
    expect(field(page, "fitout", "of")).to_have_value("line")
    undo(page)

    expect(field(page, "fitout", "family")).to_have_value("bnc")
    expect(field(page, "fitout", "name")).to_have_value("Top")
    expect(field(page, "fitout", "exposure")).to_have_value("exposed")


def test_reset_of_the_sweeps_settings_is_undone(visit: Visit) -> None:
    """Line, end and tolerance come back."""
    page = visit("#view=sweep&of=own-0&end=open&length_tolerance=0.1")
    expect(page.locator("#of")).to_have_value("own-0")

    more(page).get_by_role("button", name="Reset").click()
    expect(page.locator("#of")).to_have_value("line")
    undo(page)

    expect(page.locator("#of")).to_have_value("own-0")
    expect(field(page, "sweep", "end")).to_have_value("open")
    expect(field(page, "sweep", "length_tolerance")).to_have_value("10")


def test_a_pack_that_was_removed_comes_back(visit: Visit) -> None:
    """Removing a pack is undone, and done again."""
    page = visit("#view=packs")
    page.set_default_timeout(START_MS)
    pack = {"id": "club", "name": "Club", "version": "1", "sources": [], "default_powers_w": [10, 100]}
    file = {"name": "club.json", "mimeType": "application/json", "buffer": json.dumps(pack).encode()}
    page.locator("#file").set_input_files(file)
    packs = page.locator("jw-packs-view li")
    expect(packs).to_have_count(1, timeout=START_MS)

    page.get_by_role("button", name="Remove Club").click()
    expect(packs).to_have_count(0)
    page.keyboard.press("Control+z")
    expect(packs).to_have_count(1)
    page.get_by_role("button", name="Redo", exact=True).click()

    expect(packs).to_have_count(0)


def test_a_drag_of_a_slider_and_a_typed_field_are_one_step_each(visit: Visit) -> None:
    """While a field is typed in, Ctrl+Z is the field's own; after that it is the page's."""
    page = settled(visit())
    number = page.locator("input#vswr")
    type_into(number, "3")
    page.get_by_label("SWR on the line, slider").fill("600")
    expect(number).not_to_have_value("3")

    number.press_sequentially("7")
    page.keyboard.press("Control+z")
    assert "vswr" in fragment(page)
    number.blur()
    undo(page)
    expect(number).to_have_value("3")
    undo(page)
    expect(number).to_have_value("1.5")


def test_start_empty_and_examples_of_the_station_are_undone(visit: Visit) -> None:
    """An example takes the place of the station, nothing takes the place of the example, and both come back."""
    page = settled(visit(LINK))
    station = panel(page)
    station.get_by_role("button", name="23 cm / 3 cm portable bench").click()
    expect(station.get_by_label("Name of the station")).to_have_value("23 cm / 3 cm portable bench")
    station.get_by_role("button", name="Start empty").click()
    expect(station.get_by_label("Name of the station")).to_have_value("")
    assert fragment(page) == ""

    page.keyboard.press("Control+z")
    expect(station.locator("jw-station-list[list=rigs]")).to_contain_text("Transverter")
    page.keyboard.press("Control+z")

    expect(station.locator("jw-station-list[list=rigs]")).not_to_contain_text("Transverter")
    assert f"#{fragment(page)}" == LINK


def test_the_station_is_described_from_nothing(visit: Visit, tmp_path: Path) -> None:
    """Rig, antenna and gear are entered in the panel, saved as a file, and opened in another browser."""
    page = settled(visit(**PHONE))
    station = panel(page)
    type_into(station.get_by_label("Name of the station"), "Hill hut")
    station.get_by_role("button", name="Add a transmitter").click()
    type_into(field(page, "rig", "name"), "Transceiver")
    type_into(field(page, "rig", "power_w"), "200000")
    expect(station.get_by_text("Greatest power, peak envelope is 200 kW; allowed: 0 to 100 kW.")).to_be_visible()
    type_into(field(page, "rig", "power_w"), "50")
    station.get_by_role("button", name="Add an antenna").click()
    type_into(field(page, "load_vswr", "vswr"), "2")
    for name in ["Tuner", "Dummy load"]:
        station.get_by_role("button", name="Add a port").click()
        type_into(field(page, "port", "name"), name)
    station.get_by_role("button", name="Close").click()
    share(page).get_by_role("button", name="Save or open my page").click()
    with page.expect_download() as saved:
        page.get_by_role("button", name="Save as a station file").click()
    file = tmp_path / "station.json"
    saved.value.save_as(file)

    other = settled(visit())
    share(other).get_by_role("button", name="Save or open my page").click()
    other.get_by_label("Saved page or station file").set_input_files(file)
    expect(other.locator("jw-station-panel")).to_have_count(0)
    station = panel(settled(other))

    expect(station.get_by_label("Name of the station")).to_have_value("Hill hut")
    expect(station.locator("jw-station-list[list=rigs]")).to_contain_text("in use, 50 W")
    assert_numbers(other, numbers(50, vswr=2))
    go_to(other, "Kit")
    expect(other.locator("jw-kit-port")).to_have_count(2)


def station_file(kept: dict[str, Any]) -> dict[str, Any]:
    """What a station file holds."""
    return {"format": "jointwise station", "version": 1, "name": "", "date": "2026-11-29", "kept": kept}


@pytest.mark.parametrize("size", SIZES)
def test_the_panel_is_accessible(visit: Visit, size: str) -> None:
    """axe finds nothing in it, with a transmitter unfolded."""
    page = settled(visit(prepare=with_axe, **SIZES[size]))
    station = panel(page)
    station.get_by_role("button", name="Club station HF").click()
    station.locator("jw-station-list[list=rigs] .toggle").last.click()

    assert violations(page) == []


def test_a_file_that_is_no_station_changes_nothing(visit: Visit, tmp_path: Path) -> None:
    """It is refused in one sentence."""
    file = tmp_path / "station.json"
    file.write_text(json.dumps(station_file({"station": {"rigs": [{"power_w": -5}]}})))
    page = settled(visit(LINK))

    share(page).get_by_role("button", name="Save or open my page").click()
    page.get_by_label("Saved page or station file").set_input_files(file)

    expect(page.get_by_text("rigs[0].power_w is -5; allowed: a number from 0 to 100000.")).to_be_visible()
    assert f"#{fragment(page)}" == LINK


def test_a_line_of_an_older_link_has_its_own_until_the_stations_is_wanted(visit: Visit) -> None:
    """The form says what the line has of its own, and one button leaves it to the station."""
    text = (
        "eyJlbGVtZW50cyI6W3sia2luZCI6ImpvaW50IiwiZmFtaWx5IjoibiJ9XSwibG9hZCI6eyJraW5kIjoidnN3ciIsInZzd3IiOjV9LCJtb2RlIjoi"
        "Y3ciLCJiYW5kIjoiMm0ifQ"
    )
    page = settled(visit(f"#view=line&name=Old&line={text}&{LINK[1:]}"))
    expect(field(page, "station", "mode")).to_have_value("cw")
    expect(field(page, "station", "power_w")).to_have_value("400")
    note = page.get_by_role("note").filter(has_text="This line has its own: Mode, Band.")

    note.get_by_role("button", name="Use the station’s").click()
    expect(field(page, "station", "mode")).to_have_value("fm")
    expect(field(page, "station", "band")).to_have_value("20m")
    expect(field(page, "load_vswr", "vswr")).to_have_value("5")
    page.get_by_role("button", name="Make it the station’s").click()

    expect(page.get_by_role("note").filter(has_text="has its own")).to_have_count(0)
    go_to(page, "Matrix")
    expect(page.locator("input#vswr")).to_have_value("5")


def test_a_line_starts_empty(visit: Visit) -> None:
    """From nothing but rig and antenna, element by element, and back."""
    page = settled(visit("#view=line"))

    page.get_by_role("button", name="Start empty").click()
    expect(page.get_by_text("add the first element of the line")).to_be_visible()
    expect(page.locator("jw-line-card")).to_have_count(0)
    page.locator("jw-line-add").get_by_role("button").first.click()
    page.get_by_role("button", name="Coaxial cable").click()
    expect(page.locator("jw-line-answer")).to_be_visible()
    undo(page)
    undo(page)

    expect(page.locator("jw-line-card")).to_have_count(7)


def test_a_kit_starts_empty_or_from_the_gear(visit: Visit) -> None:
    """One button takes all ports away, another brings those of the station; both are undone."""
    page = settled(visit("#view=kit"))
    station = panel(page)
    station.get_by_role("button", name="Club station HF").click()
    station.get_by_role("button", name="Close").click()

    page.get_by_role("button", name="Start empty").click()
    expect(page.locator("jw-kit-port")).to_have_count(0)
    page.get_by_role("button", name="From the station’s gear").click()
    expect(page.locator("jw-kit-port")).to_have_count(4)
    expect(page.locator("jw-kit-verdict #verdict")).to_be_visible()
    undo(page)
    expect(page.locator("jw-kit-port")).to_have_count(0)
    undo(page)

    expect(page.locator("jw-kit-port")).to_have_count(10)


def test_the_sheets_print_the_stations_name(visit: Visit) -> None:
    """The name of the panel stands on the sheets, and one typed there is the station's."""
    page = settled(visit("#view=fitout&station=Old%20name"))
    expect(page.locator("jw-fitout-sheet[data-shown]")).to_contain_text("Old name")

    type_into(field(page, "fitout", "station"), "Hill hut")
    expect(page.locator("jw-fitout-sheet[data-shown]")).to_contain_text("Hill hut")

    expect(panel(page).get_by_label("Name of the station")).to_have_value("Hill hut")
