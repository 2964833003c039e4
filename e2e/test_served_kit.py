"""The kit view: the core's packing list and pairs, editing ports and pairs, links, paper and files."""

import base64
import csv
import io
import json
import re
from pathlib import Path
from typing import Any
from unicodedata import normalize

import expected
import pytest
from playwright.sync_api import Locator, Page, expect
from pypdf import PdfReader
from reading import fragment, settled, share
from test_served_accessibility import violations, with_axe
from visits import PHONE, SIZES, START_MS, TABLET, WIDE, Visit

MM_PER_POINT = 25.4 / 72
PAPER_MM = {"A4": (210, 297), "Letter": (215.9, 279.4)}
REFUSED = "status of 400"
FINGER_PX = 43.5


def port(name: str, family: str, gender: str, megahertz: float, power: float) -> dict[str, Any]:
    """A port as the core is told of it."""
    hertz = megahertz * 1e6
    return {"name": name, "family": family, "gender": gender, "highest_frequency_hz": hertz, "power_w": power}


def owned(*ends: str, count: int = 1) -> dict[str, Any]:
    """Adapters as the core is told of them."""
    return dict(zip(("one_family", "one_gender", "other_family", "other_gender"), ends, strict=True)) | {"count": count}


def link(kit: dict[str, Any]) -> str:
    """The address of a kit, its ports as rows, in base64 for addresses."""
    text = json.dumps(kit | {"ports": [list(one.values()) for one in kit["ports"]]})
    return f"#view=kit&kit={base64.urlsafe_b64encode(text.encode()).decode().rstrip('=')}"


PORTS = [
    port("Transceiver", "uhf", "jack", 54, 100),
    port("Tuner", "uhf", "jack", 54, 100),
    port("Dipole feed line", "uhf", "plug", 30, 100),
    port("Dummy load", "n", "jack", 450, 100),
    port("Analyser", "sma", "jack", 450, 0),
    port("Handheld", "sma", "plug", 450, 5),
    port("Vertical", "n", "jack", 450, 50),
    port("Link antenna", "rp_sma", "plug", 2450, 0),
    port("Patch lead", "bnc", "plug", 450, 50),
    port("Receive loop", "f", "plug", 30, 0),
]
PAIRS = [[0, 1], [0, 2], [0, 3], [1, 2], [2, 4], [3, 5], [3, 8], [4, 6], [4, 7], [4, 8], [4, 9], [5, 6], [5, 8]]
OWNED = [owned("uhf", "plug", "bnc", "jack"), owned("n", "plug", "bnc", "jack")]
EXAMPLE = {"ports": PORTS, "pairs": PAIRS, "owned": OWNED}
NEW_PORT = port("", "n", "jack", 54, 100)
HARD_ENDS = ["sma plug", "mcx jack", "mmcx plug", "3_5mm jack", "3_5mm jack", "c plug", "mcx plug"]
HARD_ENDS += ["7_16 jack", "mcx jack", "tnc plug", "mcx plug", "uhf plug", "sma jack", "uhf plug"]
HARD = {"ports": [port("", *end.split(), 30, 10) for end in HARD_ENDS], "most_in_series": 3, "most_loss_db": 20}
"""More than a quick search can prove."""
HARD_LINK = link(HARD)
DUMMY_LOAD, LINK_PAIR, LOOP_PAIR = 3, "4-7", "4-9"


def answer(**changes: Any) -> Any:
    """What the core says of the example, with changes."""
    return expected.asked("kit", **(EXAMPLE | changes))


def opened(visit: Visit, link: str = "#view=kit", **options: Any) -> Page:
    """The kit view, answered."""
    return settled(visit(link, **options))


def cards(page: Page) -> Locator:
    """The ports in the form."""
    return page.locator("jw-kit-port")


def unfold(page: Page, at: int) -> Locator:
    """A port with its fields."""
    cards(page).nth(at).locator("#toggle").click()
    return cards(page).nth(at)


def names(page: Page) -> list[str]:
    """What the ports in the form are called."""
    return cards(page).locator(".name").all_text_contents()


def pair(page: Page, ports: str) -> Locator:
    """One pair of the answer."""
    return page.locator(f"jw-kit-joins li[data-pair='{ports}']")


def box(page: Page, ports: str) -> Locator:
    """The box that asks for a pair."""
    return page.locator(f"jw-kit-pairs input[data-pair='{ports}']")


def type_into(page: Page, field: Locator, text: str) -> None:
    """Give a field another text."""
    field.locator("input").fill(text)
    page.keyboard.press("Tab")


def assert_shows(page: Page, result: Any) -> None:
    """Verdict, added adapters, and the margin of every pair come to be those of the core."""
    expect(page.locator("#verdict")).to_have_text(result["verdict"])
    expect(page.locator("jw-kit-joins li .chip")).to_have_text([margin(one) for one in result["pairs"]])
    added = page.locator("jw-kit-packing tr[data-from=add]")
    expect(added.locator(".what")).to_have_text([one["name"] for one in result["adapters"]])
    expect(added.locator(".number")).to_have_text([str(one["count"]) for one in result["adapters"]])


def margin(one: Any) -> str:
    """A pair's margin as it is printed."""
    if not one["joined"]:
        return "no"
    margin = one["joined"]["margin_db"]
    return "receive" if margin is None else f"{expected.decibels(margin)} dB"


def test_example_shows_the_cores_answer(visit: Visit) -> None:
    """A first visit shows the example with the numbers the core gives for it."""
    page = opened(visit)

    assert_shows(page, answer())


def test_headline_names_what_can_not_be_joined(visit: Visit) -> None:
    """The first words are what can't be joined and why, by the names of the ports; then how many adapters to carry."""
    page = opened(visit)
    result = answer()

    expect(page.locator("#headline")).to_have_text(result["headline"])
    assert result["headline"].startswith("Analyser can't be joined with Receive loop: 50 Ω would meet 75 Ω.")


def test_goal_is_a_choice_with_its_price(visit: Visit) -> None:
    """Each goal stands with its number of adapters, the other with what it costs; a tap answers for the other."""
    page = opened(visit)
    fewest, best = answer(), answer(goal="best_joints")
    goals = page.locator("#goals label")
    expect(goals.nth(0)).to_have_text(f"Fewest adapters: {fewest['added']}")
    expect(goals.nth(1)).to_have_text(f"Best joints: {best['added']} {fewest['price']['sentence']}")

    page.get_by_role("radio", name="Best joints").check()

    assert_shows(page, best)
    expect(goals.nth(0)).to_have_text(f"Fewest adapters: {fewest['added']} {best['price']['sentence']}")
    expect(goals.nth(1)).to_have_text(f"Best joints: {best['added']}")
    page.get_by_role("button", name="Undo").click()
    assert_shows(page, fewest)
    expect(page.get_by_role("radio", name="Fewest adapters")).to_be_checked()


MOST_ENTRIES = 20
OWN_GEAR = [
    ("HF radio SO-239 54 100W", port("HF radio", "uhf", "jack", 54, 100)),
    ("Tuner SO-239", port("Tuner", "uhf", "jack", 54, 100)),
    ("Dipole lead PL-259 30", port("Dipole lead", "uhf", "plug", 30, 100)),
    ("UHF radio N jack 440 50W", port("UHF radio", "n", "jack", 440, 50)),
    ("Collinear N plug", port("Collinear", "n", "plug", 440, 50)),
    ("Handheld SMA plug 440 5W", port("Handheld", "sma", "plug", 440, 5)),
    ("Wattmeter BNC jack 440 5", port("Wattmeter", "bnc", "jack", 440, 5)),
    ("Analyser SMA jack 1.5 GHz rx", port("Analyser", "sma", "jack", 1500, 0)),
]


def test_own_gear_is_soon_entered(visit: Visit) -> None:
    """Eight ports of one's own, from an empty kit to the answer for every pair: each tap and each line is counted."""
    page = opened(visit)
    entries = 1
    page.get_by_role("button", name="Start empty").click()
    expect(cards(page)).to_have_count(0)
    expect(page.locator(".waiting")).to_contain_text("Type the ports of your gear")

    for typed, _ in OWN_GEAR:
        entries += 1
        page.get_by_label("Type a port").fill(typed)
        page.keyboard.press("Enter")
    entries += not page.locator("#every").is_checked()

    expect(cards(page)).to_have_count(len(OWN_GEAR))
    assert_shows(page, expected.asked("kit", ports=[one for _, one in OWN_GEAR]))
    assert entries <= MOST_ENTRIES


def test_empty_kit_and_example_can_be_undone(visit: Visit) -> None:
    """Starting empty loses nothing: undo brings the kit back, after the example too."""
    page = opened(visit)
    box(page, "0-1").uncheck()
    changed = answer(pairs=PAIRS[1:])
    assert_shows(page, changed)

    page.get_by_role("button", name="Start empty").click()
    expect(cards(page)).to_have_count(0)
    page.get_by_role("button", name="Undo").click()
    assert_shows(page, changed)
    page.get_by_role("button", name="Example").click()
    assert_shows(page, answer())
    page.get_by_role("button", name="Undo").click()
    assert_shows(page, changed)


def test_typed_port_is_read_back(visit: Visit) -> None:
    """While a port is typed the line under it says what is read; what can't be read is said, and nothing is added."""
    page = opened(visit)
    line = page.get_by_label("Type a port")

    line.fill("Filter SO-239 54 MHz 100 W")
    expect(page.locator("#read")).to_have_text("Filter: UHF jack (SO-239), up to 54 MHz, 100 W")
    line.fill("Filter N 54")
    page.keyboard.press("Enter")

    expect(page.locator("#read")).to_have_text("“N”: plug or jack?")
    expect(cards(page)).to_have_count(len(PORTS))


def packed(page: Page, what: str) -> Locator:
    """The box of one adapter of the packing list."""
    return page.get_by_role("checkbox", name=f"Packed: {what}", exact=True)


def test_ticks_go_with_the_kit(visit: Visit, address: str) -> None:
    """What is packed stays ticked through a change of the kit and a reload, can be undone, and is in no link."""
    page = opened(visit)
    first = answer()["adapters"][0]["name"]
    own = "N plug to BNC jack"
    link_before = fragment(page)

    packed(page, first).check()
    packed(page, own).check()
    assert fragment(page) == link_before
    box(page, "4-9").uncheck()
    assert_shows(page, answer(pairs=[pair for pair in PAIRS if pair != [4, 9]]))
    expect(packed(page, first)).to_be_checked()
    expect(packed(page, own)).to_be_checked()

    other = page.context.new_page()
    other.goto(f"{address}#view=kit")
    settled(other)
    expect(packed(other, first)).to_be_checked()
    page.get_by_role("button", name="Undo").click()
    page.get_by_role("button", name="Undo").click()
    expect(packed(page, own)).not_to_be_checked()
    expect(packed(page, first)).to_be_checked()
    page.get_by_role("button", name="Example").click()
    expect(packed(page, first)).not_to_be_checked()


def test_tick_asks_nothing(visit: Visit) -> None:
    """A box ticked while a kit that was searched for longer is shown leaves that kit as it is."""
    page = opened(visit, HARD_LINK)
    page.locator("#longer").click()
    expect(page.locator("#verdict")).to_contain_text("No smaller set does", timeout=START_MS)
    shown = page.locator("#verdict").text_content()

    page.locator("jw-kit-packing input").first.check()

    expect(page.locator("jw-kit-packing tr[data-packed]")).to_have_count(1)
    settled(page)
    expect(page.locator("#verdict")).to_have_text(shown)


@pytest.mark.parametrize("paper", PAPER_MM)
def test_one_sheet_has_the_boxes(visit: Visit, paper: str) -> None:
    """On paper the kit is one sheet, with a box for every adapter, ticked where it is packed."""
    page = opened(visit)
    packed(page, answer()["adapters"][1]["name"]).check()

    assert len(PdfReader(io.BytesIO(page.pdf(format=paper))).pages) == 1
    page.emulate_media(media="print")
    boxes = page.locator("jw-kit-packing input")
    marks = boxes.evaluate_all("(all) => all.map((one) => getComputedStyle(one, '::after').content)")
    assert marks == ['"✓"' if at == 1 else "none" for at in range(boxes.count())]
    assert all(boxes.nth(at).is_visible() for at in range(boxes.count()))


def test_pair_tells_chain_loss_and_what_to_mind(visit: Visit) -> None:
    """A pair tells its chain, its loss, and the core's trap; one that can't be joined tells the core's reason."""
    page = opened(visit)
    found = {"-".join(map(str, one["ports"])): one for one in answer()["pairs"]}

    link = pair(page, LINK_PAIR)
    expect(link.locator(".chain")).to_have_text(
        "Analyser, SMA jack – SMA plug/RP-SMA jack adapter – RP-SMA plug, Link antenna"
    )
    expect(link).to_contain_text(found[LINK_PAIR]["trap"])
    expect(page.locator("#traps li")).to_contain_text(found[LINK_PAIR]["trap"])
    expect(pair(page, LOOP_PAIR).locator(".chain")).to_have_text(found[LOOP_PAIR]["sentence"])


def test_drawing_marks_every_pair_in_words(visit: Visit) -> None:
    """The drawing has a line for each pair with its number of adapters, or "no", and a name that sums it up."""
    page = opened(visit)
    result = answer()

    marks = page.locator("jw-kit-graph [data-line] .mark")

    wanted = [
        f"{len(one['joined']['adapters']) if one['joined'] else 'no'}{'!' if one['trap'] else ''}"
        for one in result["pairs"]
    ]
    expect(marks).to_have_text(wanted)
    expect(page.get_by_role("img", name=f"10 ports and {len(PAIRS)} pairs: {result['joined']} can be")).to_be_visible()


def test_added_port_changes_the_answer(visit: Visit) -> None:
    """A port that is added and joined with another is computed by the core."""
    page = opened(visit)

    page.get_by_role("button", name="Add a port by its fields").click()
    type_into(page, cards(page).nth(10).locator("[name='port.name']"), "Filter")
    box(page, "0-10").check()

    added = NEW_PORT | {"name": "Filter"}
    assert_shows(page, answer(ports=[*PORTS, added], pairs=sorted([*PAIRS, [0, 10]])))
    assert names(page)[-1] == "Filter"


def test_changed_port_changes_the_answer(visit: Visit) -> None:
    """Another family and a higher frequency at a port are computed by the core."""
    page = opened(visit)
    card = unfold(page, DUMMY_LOAD)

    card.locator("[name='port.family'] select").select_option("bnc")
    type_into(page, card.locator("[name='port.highest_frequency_hz']"), "1300")

    changed = PORTS[DUMMY_LOAD] | {"family": "bnc", "highest_frequency_hz": 1300e6}
    assert_shows(page, answer(ports=[*PORTS[:DUMMY_LOAD], changed, *PORTS[DUMMY_LOAD + 1 :]]))


def test_every_two_ports_can_be_asked(visit: Visit) -> None:
    """The box for every two ports asks for all of them, and unticking one keeps the rest."""
    page = opened(visit)

    page.locator("#every").check()
    assert_shows(page, expected.asked("kit", ports=PORTS, owned=OWNED))
    page.locator("#every").uncheck()
    box(page, "0-1").uncheck()

    every = [[one, other] for one in range(10) for other in range(one + 1, 10)]
    assert_shows(page, answer(pairs=every[1:]))


def test_owned_adapters_and_limits_count(visit: Visit) -> None:
    """An adapter that is owned, and a limit, are computed by the core."""
    page = opened(visit)

    page.get_by_role("button", name="Add an adapter you own").click()
    page.locator("[name='owned.other_gender'] select").last.select_option("plug")
    type_into(page, page.locator("jw-kit-form [name='kit.most_in_series']"), "1")

    assert_shows(page, answer(owned=[*OWNED, owned("n", "plug", "uhf", "plug")], most_in_series=1))
    expect(page.locator("jw-kit-packing tr[data-from=own]").first).to_contain_text("yours")


def test_refusal_stands_at_its_field(visit: Visit) -> None:
    """An impedance the core refuses is named at its port; the last answer stays and is marked as out of date."""
    page = opened(visit, forgiven=REFUSED)

    type_into(page, unfold(page, DUMMY_LOAD).locator("[name='port.impedance_ohm']"), "75")

    alert = cards(page).nth(DUMMY_LOAD).get_by_role("alert")
    expect(alert).to_contain_text("Dummy load, Impedance, UHF types only: 75 Ω")
    expect(page.locator("jw-kit-verdict .outdated")).to_contain_text("Out of date")
    expect(page.locator("#verdict")).to_have_text(answer()["verdict"])


def test_link_restores_the_kit(visit: Visit) -> None:
    """The address of a changed kit brings it back elsewhere, and undo there brings back the one before."""
    page = opened(visit)
    box(page, "0-1").uncheck()
    changed = answer(pairs=PAIRS[1:])
    assert_shows(page, changed)

    other = opened(visit, f"#{fragment(page)}")

    assert_shows(other, changed)
    other.get_by_role("button", name="Undo").click()
    assert_shows(other, answer())


def test_browser_keeps_the_kit(visit: Visit, address: str) -> None:
    """Without a link, the kit is the one that was left in this browser."""
    page = opened(visit)
    box(page, "0-1").uncheck()
    assert_shows(page, answer(pairs=PAIRS[1:]))

    other = page.context.new_page()
    other.goto(f"{address}#view=kit")

    assert_shows(settled(other), answer(pairs=PAIRS[1:]))


def test_search_for_longer_proves_the_kit(visit: Visit) -> None:
    """What a quick search leaves open, a longer one proves, and is kept until a change, which is answered quickly."""
    page = opened(visit, HARD_LINK)
    quick, proven = (expected.asked("kit", **HARD, search=search) for search in ("quick", "thorough"))
    assert_shows(page, quick)
    expect(page.locator("#verdict")).to_contain_text(f"At least {quick['lower_bound']} are needed.")
    assert not quick["optimal"]
    assert proven["optimal"]

    page.get_by_role("button", name="Search for longer").press("Enter")
    expect(page.locator("#longer")).to_be_disabled()

    expect(page.locator("#verdict")).to_contain_text("No smaller set does", timeout=START_MS)
    assert_shows(page, proven)
    expect(page.locator("#longer")).to_have_count(0)
    page.get_by_role("button", name="Matrix", exact=True).click()
    page.get_by_role("button", name="Kit", exact=True).click()
    assert_shows(settled(page), proven)
    type_into(page, page.locator("jw-kit-form [name='kit.most_loss_db']"), "19")
    assert_shows(page, expected.asked("kit", **HARD | {"most_loss_db": 19}))
    assert fragment(page).startswith("view=kit")


def test_change_gives_a_search_for_longer_up(visit: Visit) -> None:
    """A change made meanwhile is answered quickly, and a longer search can be begun again."""
    page = opened(visit, HARD_LINK)
    longer = page.locator("#longer")
    longer.click()
    expect(longer).to_be_disabled()

    type_into(page, page.locator("jw-kit-form [name='kit.most_loss_db']"), "19")

    assert_shows(page, expected.asked("kit", **HARD | {"most_loss_db": 19}))
    expect(longer).to_be_enabled()
    longer.click()
    expect(page.locator("#verdict")).to_contain_text("No smaller set does", timeout=START_MS)


def test_undo_takes_a_refusal_back(visit: Visit) -> None:
    """After a change that is refused, undo shows the answer from before it and no complaint."""
    page = opened(visit, forgiven=REFUSED)
    type_into(page, unfold(page, DUMMY_LOAD).locator("[name='port.impedance_ohm']"), "75")
    expect(page.locator("jw-kit-verdict .outdated")).to_be_visible()

    page.get_by_role("button", name="Undo").click()

    assert_shows(page, answer())
    expect(page.locator(".outdated")).to_have_count(0)


def test_spoilt_link_is_told(visit: Visit) -> None:
    """A link that is cut short says so, and the kit at hand is shown."""
    page = opened(visit, "#view=kit&kit=eyJw")

    expect(page.get_by_role("status").filter(has_text="cut short or altered")).to_be_visible()
    assert_shows(page, answer())


def test_keys_move_a_port_with_its_pairs(visit: Visit) -> None:
    """Alt and an arrow key move a port; it keeps the focus and its pairs."""
    page = opened(visit)
    cards(page).nth(0).locator("#toggle").focus()

    page.keyboard.press("Alt+ArrowDown")

    expect(cards(page).nth(1).locator(".name")).to_have_text("Transceiver")
    expect(cards(page).nth(1).locator("#toggle")).to_be_focused()
    expect(page.locator("#verdict")).to_have_text(answer()["verdict"])
    expect(pair(page, "0-1").locator("h3")).to_have_text("Tuner – Transceiver")


def test_works_by_keyboard_alone(visit: Visit) -> None:
    """A port is copied and removed, and a pair ticked off, without a pointer."""
    page = opened(visit)
    cards(page).nth(0).locator("#toggle").focus()

    page.keyboard.press("Enter")
    cards(page).nth(0).locator("#duplicate").focus()
    page.keyboard.press("Enter")
    expect(cards(page)).to_have_count(11)
    expect(cards(page).nth(1).locator("#duplicate")).to_be_focused()
    cards(page).nth(1).locator("#remove").focus()
    page.keyboard.press("Enter")
    expect(cards(page)).to_have_count(10)
    box(page, "0-1").focus()
    page.keyboard.press("Space")

    assert_shows(page, answer(pairs=PAIRS[1:]))


def test_csv_is_the_packing_list(visit: Visit) -> None:
    """The CSV file has the added adapters of the core, then the owned ones that are used."""
    page = opened(visit)
    with page.expect_download() as download:
        share(page).get_by_role("button", name="CSV").click()

    lines = list(csv.DictReader(io.StringIO(Path(download.value.path()).read_bytes().decode())))

    added = [(one["name"], str(one["count"]), one["kind"]) for one in answer()["adapters"]]
    assert [(line["adapter"], line["count"], line["known_from"]) for line in lines if line["from"] == "add"] == added
    used = [line["adapter"] for line in lines if line["from"] == "own"]
    assert used == ["UHF plug (PL-259) to BNC jack", "N plug to BNC jack"]


@pytest.mark.parametrize("paper", PAPER_MM)
def test_paper_holds_packing_list_and_pairs(visit: Visit, paper: str) -> None:
    """Printed upright, the view tells the packing list, every pair and the cautions, and nothing of the form."""
    page = opened(visit)
    result = answer()

    sheets = PdfReader(io.BytesIO(page.pdf(format=paper))).pages

    size = [float(side) * MM_PER_POINT for side in (sheets[0].mediabox.width, sheets[0].mediabox.height)]
    assert size == pytest.approx(PAPER_MM[paper], abs=1)
    text = normalize("NFKC", re.sub(r"\s+", " ", " ".join(sheet.extract_text() for sheet in sheets)))
    assert all(normalize("NFKC", one["name"]) in text for one in result["adapters"])
    assert "Adapters to carry" in text
    assert "Dipole feed line – Analyser" in text
    assert result["cautions"][-1] in text
    assert "Add a port" not in text


@pytest.mark.parametrize("size", [*SIZES, "wide"])
def test_nothing_scrolls_sideways(visit: Visit, size: str) -> None:
    """The view fits its screen, with a port unfolded."""
    page = opened(visit, **SIZES.get(size, WIDE))
    unfold(page, DUMMY_LOAD)

    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")


@pytest.mark.parametrize("options", [PHONE, TABLET], ids=["phone", "tablet"])
def test_every_control_can_be_touched(visit: Visit, options: dict[str, Any]) -> None:
    """Every button and field, and the label of every box, is at least 44 pixels high."""
    page = opened(visit, **options)
    unfold(page, DUMMY_LOAD)

    small = page.evaluate(
        """(least) => readers.everywhere(`button, select, summary, input[type=number],
            label:has([type=checkbox], [type=radio])`)
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < least)
          .map((one) => one.id || one.textContent)""",
        FINGER_PX,
    )
    assert small == []


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("size", SIZES)
def test_rules_find_nothing(visit: Visit, size: str, theme: str) -> None:
    """No accessibility rule is broken, with a port unfolded."""
    page = opened(visit, prepare=with_axe, color_scheme=theme, reduced_motion="reduce", **SIZES[size])
    unfold(page, DUMMY_LOAD)

    assert violations(page) == []
