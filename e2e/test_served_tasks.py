"""What a new user comes for, each task walked from the first page by labels and roles alone, as one reads them.

Bounds on steps: that of a line stands here, those of the typed question and of its menus stand in
test_served_question, and that of a kit of one's own ports in test_served_kit. All kinds of a pack by form are in
test_served_packs.
"""

import re

import expected
import pytest
from playwright.sync_api import Locator, Page, expect
from reading import more, settled, share
from test_served_offline import AWAY, kept
from test_served_sweep import SWEEP, file
from test_served_theme import ground_of
from visits import Visit

CLIPBOARD = {"permissions": ["clipboard-read", "clipboard-write"]}
REFUSED = "status of 400"
ANSWERS = {
    "Matrix": "Yes, easily",
    "Choose": "Fit ",
    "Line": "The weakest part is",
    "Kit": "more adapters join",
    "Fit-out": "sheets.",
}
"""What stands in the answer of each view on a first visit; the sweep's takes long, and is walked to once."""
CONTROLS = ["textbox", "combobox", "spinbutton", "slider"]
MOST_ENTRIES = 12
"""Of a line of five elements."""
FURTHEST_TABS = 60
"""Presses of Tab after which a control counts as out of reach."""


def button(place: Page | Locator, name: str) -> Locator:
    """A button by all of its name."""
    return place.get_by_role("button", name=name, exact=True)


def turn_to(page: Page, view: str) -> None:
    """Turn to a view by the switch."""
    button(page.get_by_role("navigation", name="Views"), view).click()


def answer(page: Page, view: str) -> Locator:
    """The sentence that answers in a view."""
    return page.get_by_role("status").filter(has_text=ANSWERS[view])


def type_into(page: Page, label: str, text: str) -> Locator:
    """A field, filled and left."""
    field = page.get_by_label(label, exact=True)
    field.fill(text)
    page.keyboard.press("Tab")
    return field


def tab_to(page: Page, control: Locator) -> None:
    """Press Tab until the control has the focus."""
    for _ in range(FURTHEST_TABS):
        if control.evaluate("(one) => one.matches(':focus')"):
            break
        page.keyboard.press("Tab")
    expect(control).to_be_focused()


def saved(page: Page, name: str) -> str:
    """What the file that a button saves is called."""
    with page.expect_download() as saving:
        button(page, name).click()
    return saving.value.suggested_filename


def test_largest_safe_power_is_looked_up(visit: Visit) -> None:
    """Matrix: the largest safe power of N on 2 m takes one tap on its cell."""
    page = settled(visit())

    page.get_by_role("gridcell", name=re.compile("^N, 2 m, ")).click()
    sheet = page.get_by_role("dialog")
    expect(sheet.get_by_role("heading", name="N on 2 m")).to_be_visible()
    button(sheet, "Close").click()

    core = expected.asked("question", text="n 2m 100w")
    expect(page.get_by_role("definition").filter(has_text="2.66 kW").first).to_be_visible()
    assert round(core["largest_power_w"], -1) == 2660


def test_joint_on_a_mast_is_chosen(visit: Visit) -> None:
    """Choose: 50 W on 23 cm at the top of a mast, on a cable at hand; the first of the list is the core's."""
    page = settled(visit())

    turn_to(page, "Choose")
    bands = page.get_by_role("group", name="Bands it must carry")
    button(bands, "23 cm").click()
    button(bands, "20 m").click()
    type_into(page, "Power, peak envelope", "50 W")
    page.get_by_label("Where", exact=True).select_option(label="Mast or tower")
    page.get_by_label("Cable", exact=True).select_option(label="RG-213")

    core = expected.asked("choose", bands=["23cm"], power_w=50, installation="mast", cable="rg_213")
    expect(page.get_by_role("status").filter(has_text=core["verdict"])).to_be_visible()
    passing = page.get_by_role("table", name="Connectors that meet every demand")
    expect(passing.get_by_role("row").nth(1)).to_contain_text(core["choices"][0]["name"])


def test_line_is_bettered_by_an_exchange(visit: Visit) -> None:
    """Line: on 2 m the core offers another cable; compared and used, the answer is the one it promised."""
    page = settled(visit())

    turn_to(page, "Line")
    page.get_by_label("Band", exact=True).select_option(label="2 m")
    page.get_by_role("button", name="Compare: ").first.click()
    beside = page.get_by_role("group", name="Before and after")
    loss = beside.get_by_role("row", name="Loss of the line").get_by_role("cell").nth(1)
    promised = loss.inner_text().split(" dB")[0]
    button(beside, "Use this").click()

    likely = page.get_by_role("row", name=re.compile("^Loss of the line")).get_by_role("cell").first
    expect(likely).to_have_text(f"{promised} dB")


def test_line_of_five_elements_is_soon_entered(visit: Visit) -> None:
    """Line: from empty, an arrester between two runs of cable with their joints; each tap and each field is counted."""
    page = settled(visit("#view=line"))
    entries = 1
    button(page, "Start empty").click()

    for at, name in enumerate(["Joint", "Coaxial cable", "Arrester", "Coaxial cable", "Joint"], 1):
        entries += 2
        button(page, "Add…").click()
        page.get_by_role("button", name=re.compile(f"^{name}")).click()
        expect(page.get_by_role("article", name=f"Element {at}, ")).to_be_visible()
        if at == 2:
            entries += 1
            type_into(page, "Length", "25 m")

    elements = [
        {"kind": "joint", "family": "n"},
        {"kind": "cable", "cable": "rg_213", "length_m": 25},
        {"kind": "part", "what": "arrester", "loss_db": 0.1, "vswr": 1.1, "voltage_limit_v": 600},
        {"kind": "cable", "cable": "rg_213", "length_m": 10},
        {"kind": "joint", "family": "n"},
    ]
    load = {"kind": "vswr", "vswr": 1.5}
    core = expected.asked("line", elements=elements, load=load, power_w=100, mode="ssb", band="20m")
    expect(answer(page, "Line")).to_contain_text(core["verdict"])
    assert entries <= MOST_ENTRIES


def test_adapters_for_a_field_day_are_packed(visit: Visit) -> None:
    """Kit: three ports typed, the better joints chosen, and the adapter ticked off on the list."""
    page = settled(visit())

    turn_to(page, "Kit")
    button(page, "Start empty").click()
    for port in ["Transceiver SO-239 54 100W", "Dummy load N jack 450 100W", "Handheld SMA plug 450 5W"]:
        page.get_by_label("Type a port").fill(port)
        page.keyboard.press("Enter")
    page.get_by_role("radio", name="Best joints").check()
    packed = page.get_by_role("checkbox", name="Packed: ").first
    packed.check()

    expect(packed).to_be_checked()
    expect(page.get_by_role("status").filter(has_text="adapters join all 3 pairs.")).to_be_visible()


def test_sheet_for_one_joint_is_made(visit: Visit) -> None:
    """Fit-out: one N plug on RG-213 has its sheet, with the station's name and the day."""
    page = settled(visit())

    turn_to(page, "Fit-out")
    page.get_by_label("Sheets for").select_option(label="a single joint")
    page.get_by_label("Connector", exact=True).select_option(label="N")
    page.get_by_label("On this cable").select_option(label="RG-213")
    type_into(page, "Station", "Hill hut")
    button(page, "Today").click()

    sheet = page.get_by_role("article").filter(has=page.get_by_role("heading", name="Torque"))
    expect(sheet).to_have_count(1)
    expect(sheet).to_contain_text("Hill hut")
    expect(sheet.get_by_role("heading", name=re.compile("N.*RG-213"))).to_be_visible()
    expect(page.get_by_label("Day of fitting")).not_to_have_value("")


def test_sweeps_are_judged(visit: Visit) -> None:
    """Sweep: the example names its bad joint at once; a file of one's own is judged on one's own line."""
    page = settled(visit())

    turn_to(page, "Sweep")
    expect(page.get_by_role("status").filter(has_text="The bad joint is Mast foot")).to_be_visible()
    page.get_by_label("Line it was taken on").select_option(label="No line described: echoes by distance")
    page.get_by_label("Sweep from your analyser").set_input_files(file("mine.s1p", SWEEP))

    expect(page.get_by_text("mine.s1p; 200 points")).to_be_visible()
    expect(page.get_by_role("status").filter(has_text="Mast foot")).to_have_count(0)


def test_matrix_is_put_on_a_clubs_page(visit: Visit) -> None:
    """Put on a website: a language chosen, the line at hand, both files saved."""
    page = settled(visit())

    button(share(page), "Put on a website").click()
    page.get_by_label("Language").select_option(label="Deutsch")

    expect(page.get_by_label("The line to paste")).to_have_value(re.compile("<jointwise-matrix .* lang=.de"))
    assert saved(page, "Save embed.js") == "embed.js"
    assert saved(page, "Save club-matrix.json") == "club-matrix.json"


def test_pack_is_made_by_form(visit: Visit) -> None:
    """Packs: a copy of BNC with a name of its own is in force, and stands in the matrix."""
    page = settled(visit())

    button(more(page), "Packs").click()
    page.get_by_text("Make a pack").click()
    page.get_by_label("Name of the pack").fill("My station")
    adding = page.get_by_role("group", name="Add to the pack")
    adding.get_by_label("What to add").select_option(label="Connector")
    adding.get_by_label("A copy of").select_option(label="BNC")
    adding.get_by_label("Its name").fill("Ham bayonet")
    button(adding, "Add").click()
    page.get_by_role("group", name="Connector Ham bayonet").get_by_label("Title of the source").fill("My bench")
    button(page, "Use this pack").click()
    turn_to(page, "Matrix")

    expect(page.get_by_role("rowheader", name="Ham bayonet, data sheet, from pack My station")).to_be_visible()


def test_keys_alone_ask_and_open_why(visit: Visit) -> None:
    """From the top of the page by Tab: the question typed, answered, its why opened, closed, and the focus back."""
    page = settled(visit())
    why = button(page, "Why")

    tab_to(page, page.get_by_label("Or type the question"))
    page.keyboard.type("so239 1kw ft8 10m swr 3")
    page.keyboard.press("Enter")
    headline = expected.asked("question", text="so239 1kw ft8 10m swr 3")["verdict"]["headline"]
    expect(page.get_by_role("status").filter(has_text=headline)).to_be_visible()
    tab_to(page, why)
    page.keyboard.press("Enter")
    expect(page.get_by_role("dialog").get_by_role("heading", name="UHF on 10 m")).to_be_visible()
    page.keyboard.press("Escape")

    expect(page.get_by_role("dialog")).to_have_count(0)
    expect(why).to_be_focused()


def test_paper_has_the_answer_and_no_controls(visit: Visit) -> None:
    """Print: each view's answer is on paper, and nothing to type in, to choose from, or to reset with."""
    page = settled(visit())

    for view in ANSWERS:
        turn_to(page, view)
        expect(answer(page, view)).to_be_visible()
        page.emulate_media(media="print")
        expect(page.get_by_role("grid").first if view == "Matrix" else answer(page, view)).to_be_visible()
        for role in CONTROLS:
            expect(page.get_by_role(role), f"{role} of {view}").to_have_count(0)
        for name in ("Share and save", "More", "Start empty", "Undo", "Station", view):
            expect(button(page, name), f"{name} of {view}").to_have_count(0)
        page.emulate_media(media="screen")


def test_dark_is_chosen_once(visit: Visit) -> None:
    """Dark: one switch turns every view, and a reload keeps it."""
    page = settled(visit(color_scheme="light"))
    assert ground_of(page) > 0.5

    button(more(page), "Dark").click()
    for view in ANSWERS:
        turn_to(page, view)
        expect(answer(page, view)).to_be_visible()
        assert ground_of(page) < 0.2
    page.reload()

    expect(button(more(page), "Dark")).to_have_attribute("aria-pressed", "true")
    assert ground_of(page) < 0.2


def test_link_is_shared(visit: Visit) -> None:
    """Share: a link made in Choose restores that view, the station in all views, and the units, elsewhere."""
    page = settled(visit(**CLIPBOARD))
    button(more(page), "US").click()
    turn_to(page, "Choose")
    type_into(page, "Power, peak envelope", "1.2 kW")
    page.get_by_label("Mode", exact=True).select_option(label="FT8")
    page.get_by_label("What it plugs into").select_option(label="N")
    button(share(page), "Copy link").click()
    expect(page.get_by_text("Link copied.")).to_be_visible()
    link = page.evaluate("() => navigator.clipboard.readText()")

    other = settled(visit(link.removeprefix(page.url.split("#")[0])))

    expect(other.get_by_label("What it plugs into")).to_have_value("n")
    expect(other.get_by_label("Power, peak envelope")).to_have_value("1200")
    expect(button(more(other), "US")).to_have_attribute("aria-pressed", "true")
    turn_to(other, "Line")
    expect(other.get_by_label("Transmitter power")).to_have_value("1200")
    expect(other.get_by_label("Mode", exact=True)).to_have_value("ft8")


CHANGES = {
    "Matrix": ("SWR on the line", "2.2", "Reset"),
    "Choose": ("Margin asked for", "6", "Reset"),
    "Line": ("SWR of the antenna", "4", "Start empty"),
    "Kit": ("Most loss of a pair", "1", "Start empty"),
    "Fit-out": ("Day of fitting", "2026-10-01", "Reset"),
    "Sweep": ("Lengths are right within", "7", "Reset"),
}
"""Of each view a field, a value for it, and the button that takes all away."""


def test_reset_is_taken_back_in_each_view(visit: Visit) -> None:
    """Undo: what Reset or Start empty took away is there again."""
    page = settled(visit())

    for view, (label, text, resets) in CHANGES.items():
        turn_to(page, view)
        field = type_into(page, label, text)
        before = page.url
        button(more(page) if resets == "Reset" else page, resets).click()
        expect(page).not_to_have_url(before)
        button(page, "Undo").click()
        expect(field, label).to_have_value(text)
        expect(page).to_have_url(before)


FOLDED = {"Matrix": ["More settings", "Keying", "Line and cable", "Site", "Wear"], "Choose": [], "Line": [], "Kit": []}
"""Of each view the groups of numbers to unfold, besides those that stand open."""


@pytest.mark.parametrize("view", FOLDED)
def test_nonsense_is_named_at_each_field(visit: Visit, view: str) -> None:
    """Nonsense: every field for a number says what it was given and what it takes; retyped, all is as before."""
    page = settled(visit(forgiven=REFUSED))
    turn_to(page, view)
    told = answer(page, view).text_content()

    tried = set()
    for group in ["", *FOLDED[view]]:
        if group:
            button(page, group).click()
        for field in page.get_by_role("main").get_by_role("spinbutton").all():
            [label] = re.findall(r'^- spinbutton "(.*?)"', field.aria_snapshot())
            if label not in tried:
                try_nonsense(page, field, label)
            tried.add(label)
    assert len(tried) > len(FOLDED[view]) + 1
    expect(answer(page, view)).to_have_text(told)


def try_nonsense(page: Page, field: Locator, label: str) -> None:
    """Give a field a word, then a number that it can't take, then what it had."""
    good = field.input_value()
    for nonsense, value in (("banana", "“banana”"), ("-5000", "−5")):
        field.fill(nonsense)
        page.keyboard.press("Tab")
        said = re.compile(rf"{re.escape(label)}( is|:) {value}.*; allowed: −?[\d.]+ to \d.*\.")
        expect(page.get_by_role("alert").filter(has_text=said).first).to_be_visible()
    field.fill(good)
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_have_count(0)


def test_units_and_station_outlast_reload_and_network(visit: Visit) -> None:
    """What is set once is there after a reload, and after one without a network."""
    page = kept(visit(service_workers="allow", forgiven=AWAY))
    button(more(page), "US").click()
    type_into(page, "SWR on the line", "2.2")

    for offline in (False, True):
        page.context.set_offline(offline)
        page.goto(page.url.split("#")[0])
        settled(page)
        expect(button(more(page), "US")).to_have_attribute("aria-pressed", "true")
        expect(page.get_by_label("SWR on the line", exact=True)).to_have_value("2.2")
