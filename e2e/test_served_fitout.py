"""The fit-out view: a sheet for each joint, what to have ready, labels whose codes can be read, and paper."""

import csv
import io
import json
from pathlib import Path
from typing import Any
from unicodedata import normalize
from urllib.parse import quote

import expected
import pytest
from playwright.sync_api import BrowserContext, Locator, Page, expect
from pypdf import PdfReader
from reading import drawn, fragment, settled, share
from test_served_accessibility import violations, with_axe
from test_served_line import ELEMENTS, EXAMPLE, add
from visits import PHONE, ROOT, SIZES, WIDE, Visit

CODES = ROOT / "frontend/node_modules/jsqr/dist/jsQR.js"
DAY = "2026-11-25"
LINK = f"#view=fitout&station={quote('Hill hut')}&date={DAY}"
JOINT_LINK = f"#view=fitout&of=joint&date={DAY}"
JOINT = {
    "elements": [{"kind": "cable", "cable": "rg_213", "length_m": 10}, {"kind": "joint", "family": "n"}],
    "exposure": "exposed",
    "band": "20m",
    "date": DAY,
}
MM_PER_POINT = 25.4 / 72
PAPER_MM = {"A4": (210, 297), "Letter": (215.9, 279.4)}
REFUSED = "status of 400"
FINGER_PX = 43.5


def of_line(**changes: Any) -> Any:
    """What the core says of the example line."""
    line = {name: value for name, value in EXAMPLE.items() if name != "load"}
    return expected.asked("fitout", **(line | {"station": "Hill hut", "date": DAY} | changes))


def of_joint(**changes: Any) -> Any:
    """What the core says of the single joint of a first visit."""
    return expected.asked("fitout", **(JOINT | changes))


def opened(visit: Visit, link: str = LINK, **options: Any) -> Page:
    """The fit-out view, answered."""
    page = settled(visit(link, **options))
    expect(page.locator("jw-fitout-sheet .sources").first).not_to_contain_text("_")
    return page


def shown(page: Page) -> Locator:
    """The sheet on the screen."""
    return page.locator("jw-fitout-sheet[data-shown]")


def plain(text: str) -> str:
    """A text on one line without ligatures."""
    return " ".join(normalize("NFKC", text).split())


def said(sheet: Any) -> list[str]:
    """Every sentence of a sheet."""
    advice = [*sheet["tools"], *sheet["steps"], *sheet["relief"], *sheet["inspection"]["checks"]]
    advice += [*sheet["near_relatives"], *sheet["sealing"]["preparation"], *sheet["sealing"]["water"]]
    texts = [one["text"] for one in advice] + [one["sentence"] for one in sheet["galvanic"] + sheet["warnings"]]
    texts += [f"{layer['name']}" for layer in sheet["sealing"]["layers"]]
    return [
        sheet["heading"],
        sheet["torque"]["sentence"],
        sheet["sealing"]["sentence"],
        sheet["wear"]["sentence"],
        *texts,
    ]


def test_sheet_holds_every_sentence_of_the_core(visit: Visit) -> None:
    """The sheet of a joint in the weather holds all that the core says of it."""
    page = opened(visit, f"{LINK}&shown=5")

    text = plain(" ".join(shown(page).locator("article, jw-fitout-care section").all_inner_texts()))

    assert [one for one in said(of_line()["joints"][4]) if plain(one) not in text] == []


def test_each_joint_of_the_line_has_its_sheet(visit: Visit) -> None:
    """A button for each joint shows its sheet; the address keeps which."""
    page = opened(visit)
    joints = of_line()["joints"]
    expect(page.locator(".joints button")).to_have_count(len(joints))

    page.locator(".joints button").nth(3).click()

    expect(shown(page).locator("#heading")).to_have_text(joints[3]["heading"])
    assert "shown=4" in fragment(page)


def test_steps_and_layers_keep_the_cores_order(visit: Visit) -> None:
    """Steps are numbered in the core's order, and sealing goes from preparation through its layers to the water."""
    page = opened(visit, f"{LINK}&shown=5")
    sheet = of_line()["joints"][4]

    steps = shown(page).locator("#steps li").all_text_contents()

    assert [one["text"] in text for one, text in zip(sheet["steps"], steps, strict=True)] == [True] * len(steps)
    text = shown(page).locator("#sealing").inner_text()
    order = [text.index(sheet["sealing"][part][0]["text"]) for part in ("preparation", "layers", "water")]
    assert order == sorted(order)


def test_line_of_the_line_view_is_fitted(visit: Visit) -> None:
    """A line changed in the Line view is the one whose sheets are shown."""
    page = settled(visit("#view=line"))
    add(page, "Joint plug in its jack")
    expect(page.locator("jw-line-card")).to_have_count(len(ELEMENTS) + 1)

    page.get_by_role("button", name="Fit-out", exact=True).click()

    elements = [*ELEMENTS, {"kind": "joint", "family": "n"}]
    expect(page.locator(".joints button")).to_have_count(len(of_line(elements=elements)["joints"]))


def test_single_joint_is_fitted(visit: Visit) -> None:
    """A single joint of another family on another cable has the core's sheet."""
    page = opened(visit, JOINT_LINK)
    expect(shown(page).locator("#heading")).to_have_text(of_joint()["joints"][0]["heading"])

    page.locator("[name='fitout.family'] select").select_option("uhf")
    page.locator("[name='fitout.cable'] select").select_option("rg_58")

    elements = [{"kind": "cable", "cable": "rg_58", "length_m": 10}, {"kind": "joint", "family": "uhf"}]
    sheet = of_joint(elements=elements)["joints"][0]
    expect(shown(page).locator("#heading")).to_have_text(sheet["heading"])
    expect(shown(page).locator("#torque .figure")).to_have_text(sheet["torque"]["sentence"])


def test_works_by_keyboard_alone(visit: Visit) -> None:
    """Another joint is turned to, the day put and a single joint asked for without a pointer."""
    page = opened(visit)
    joints = of_line()["joints"]
    page.locator(".joints button").first.focus()

    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(shown(page).locator("#heading")).to_have_text(joints[1]["heading"])
    page.get_by_role("button", name="Today").focus()
    page.keyboard.press("Space")
    expect(page.get_by_label("Day of fitting")).not_to_have_value("")
    page.get_by_label("Sheets for").focus()
    page.keyboard.press("End")

    expect(page.locator("[name='fitout.family'] select")).to_be_visible()
    expect(shown(page).locator("#heading")).to_have_text(of_joint()["joints"][0]["heading"])


def test_refusal_stands_at_its_field(visit: Visit) -> None:
    """A length the core refuses is named at its field, and the sheets are marked as out of date."""
    page = opened(visit, JOINT_LINK, forgiven=REFUSED)

    page.locator("[name='fitout.length_m'] input").fill("-3")
    page.keyboard.press("Tab")

    field = page.locator("[name='fitout.length_m']")
    expect(field.locator("input")).to_have_attribute("aria-invalid", "true")
    expect(field.get_by_role("alert")).to_contain_text("allowed: 0.01 to 10000 m.")
    expect(page.locator(".trouble")).to_contain_text("Out of date")


def test_refused_day_stands_at_its_field(visit: Visit) -> None:
    """A link with a day that is none is refused at the day."""
    page = visit("#view=fitout&date=soon", forgiven=REFUSED)

    expect(page.locator("[name='fitout.date']").get_by_role("alert")).to_contain_text("Day of fitting:")


def test_quantities_are_rounded_up_and_saved(visit: Visit) -> None:
    """The list and its file hold the core's rows, pieces whole and metres to a tenth, never less than needed."""
    page = opened(visit)
    rows = of_line()["quantities"]
    with page.expect_download() as download:
        page.get_by_role("button", name="List as CSV").click()

    lines = list(csv.DictReader(io.StringIO(Path(download.value.path()).read_bytes().decode())))

    assert [(line["what"], line["detail"], line["unit"]) for line in lines] == [
        (row["what"], row["detail"], row["unit"]) for row in rows
    ]
    for line, row in zip(lines, rows, strict=True):
        assert 0 <= float(line["quantity"]) - row["quantity"] + 1e-6 < 0.1 + 2e-6
    cells = page.locator("#quantities tbody td.number").all_text_contents()
    assert [cell.removesuffix(" m") for cell in cells] == [line["quantity"] for line in lines]


def test_first_measurement_is_the_cores(visit: Visit) -> None:
    """Loss and return loss to expect are those of the core."""
    page = opened(visit)
    measurement = of_line()["measurement"]

    wanted = {
        "expected_loss_db": f"{measurement['expected_loss_db']:.2f} dB",
        "least_return_loss_db": f"{measurement['least_return_loss_db']:.1f} dB",
    }

    for name, text in wanted.items():
        expect(page.locator(f"#measurement tr[data-field={name}] td")).to_have_text(text)
    expect(page.locator("#bonding li")).to_have_count(len(of_line()["bonding"]))


READ_CODES = """async () => {
  const read = async (svg) => {
    const image = new Image();
    image.src = `data:image/svg+xml;base64,${btoa(new XMLSerializer().serializeToString(svg))}`;
    await image.decode();
    const canvas = Object.assign(document.createElement('canvas'), {width: 400, height: 400});
    const pen = canvas.getContext('2d');
    pen.drawImage(image, 0, 0, 400, 400);
    return jsQR(pen.getImageData(0, 0, 400, 400).data, 400, 400)?.data;
  };
  return Promise.all(readers.everywhere('.label svg').map(read));
}"""


def with_codes(context: BrowserContext) -> None:
    """Put a reader of codes into every page of the context."""
    context.add_init_script(path=CODES)


def test_code_opens_the_derivation_of_a_single_joint(visit: Visit, address: str) -> None:
    """The code on each label, read from its picture, is the page's address with the derivation of a single joint."""
    page = opened(visit, JOINT_LINK, prepare=with_codes)

    texts = page.evaluate(READ_CODES)

    assert texts == [f"{address}#{joint['label']['fragment']}" for joint in of_joint()["joints"]]


def test_read_code_leads_to_the_derivation(visit: Visit, address: str) -> None:
    """What a code says opens the derivation of its joint, at a power that is no level of a first visit."""
    page = opened(visit, f"{JOINT_LINK}&power_w=250", prepare=with_codes)
    [text] = page.evaluate(READ_CODES)

    derivation = drawn(visit(text.removeprefix(address)))

    cell = expected.asked("cell", family="n", band="20m", power_w=250, exposure="exposed", added_sealing=True)
    expect(derivation.locator("#verdict")).to_contain_text(cell["verdict"])


def test_typed_address_is_in_the_codes_and_kept(visit: Visit) -> None:
    """An address typed by the reader is in the codes, also after a reload; one that is none is refused."""
    page = opened(visit, JOINT_LINK, prepare=with_codes)
    typed = page.get_by_label("Address of the page in the codes")

    typed.fill("hut")
    page.keyboard.press("Tab")
    expect(page.locator("jw-fitout-labels").get_by_role("alert")).to_contain_text(
        "Address of the page is “hut”; allowed"
    )
    typed.fill("https://club.example/jointwise/")
    page.keyboard.press("Tab")
    expect(typed).to_have_attribute("aria-invalid", "false")
    page.reload()

    opened_again = settled(page)
    expect(opened_again.locator("jw-fitout-labels .label")).to_have_count(1)
    fragment_of_joint = of_joint()["joints"][0]["label"]["fragment"]
    assert page.evaluate(READ_CODES) == [f"https://club.example/jointwise/#{fragment_of_joint}"]


def test_label_holds_what_the_core_expects(visit: Visit) -> None:
    """A label tells name, family, station, day, and the return loss to expect."""
    page = opened(visit)
    label = of_line()["joints"][4]["label"]

    text = page.locator(".label").nth(4).inner_text()

    for wanted in (label["name"], f"{label['family']}, Hill hut", f"Fitted {DAY}"):
        assert wanted in text
    assert f"return loss {label['expected_return_loss_db']:.0f} dB" in text


def test_link_brings_the_line_along(visit: Visit) -> None:
    """A copied link shows the sheets of its line in a browser that does not keep it; one's own can be had back."""
    page = settled(visit("#view=line", permissions=["clipboard-read", "clipboard-write"]))
    add(page, "Joint plug in its jack")
    expect(page.locator("jw-line-card")).to_have_count(len(ELEMENTS) + 1)
    page.get_by_role("button", name="Fit-out", exact=True).click()
    more = len(of_line()["joints"]) + 1
    expect(page.locator(".joints button")).to_have_count(more)
    share(page).get_by_role("button", name="Copy link").click()
    expect(page.get_by_text("Link copied.")).to_be_visible()
    link = page.evaluate("() => navigator.clipboard.readText()")

    elsewhere = opened(visit, f"#{link.split('#')[1]}")

    expect(elsewhere.locator(".joints button")).to_have_count(more)
    elsewhere.get_by_role("button", name="Use my own line").click()
    expect(elsewhere.locator(".joints button")).to_have_count(more - 1)


def test_broken_line_in_a_link_is_named(visit: Visit) -> None:
    """A link whose line is cut short says so and shows the line at hand."""
    page = opened(visit, f"{LINK}&line=eyJlbGVtZW50cyI6")

    expect(page.get_by_role("status").filter(has_text="The line in this link can’t be used")).to_be_visible()
    expect(page.locator(".joints button")).to_have_count(len(of_line()["joints"]))


def pages_of(page: Page, paper: str) -> list[Any]:
    """The sheets of paper."""
    return PdfReader(io.BytesIO(page.pdf(format=paper))).pages


@pytest.mark.parametrize("paper", PAPER_MM)
def test_paper_stands_upright_with_a_joint_to_a_page(visit: Visit, paper: str) -> None:
    """Every page is upright; each joint begins a page of its own and holds all its sentences; then list and labels."""
    page = opened(visit, f"{LINK}&shown=5")
    joints = of_line()["joints"]

    pages = pages_of(page, paper)
    texts = [plain(one.extract_text()) for one in pages]

    wanted = [side / MM_PER_POINT for side in PAPER_MM[paper]]
    assert all([float(one.mediabox.width), float(one.mediabox.height)] == pytest.approx(wanted, abs=1) for one in pages)
    firsts = [next(at for at, text in enumerate(texts) if plain(joint["heading"]) in text) for joint in joints]
    assert len(set(firsts)) == len(joints)
    everything = " ".join(texts)
    assert [one for one in said(joints[4]) if plain(one) not in everything] == []
    assert any("What to get" in text for text in texts)
    assert "Labels" in texts[-1]


def test_reader_chooses_what_goes_to_paper(visit: Visit) -> None:
    """Labels alone fill one page, and several joints can share a page."""
    page = opened(visit)
    whole = len(pages_of(page, "A4"))

    page.get_by_text("More settings").click()
    page.locator("#paper").select_option("labels")
    labels = [plain(one.extract_text()) for one in pages_of(page, "A4")]
    page.locator("#paper").select_option("all")
    page.get_by_role("checkbox", name="Several joints a page").click()

    assert len(labels) == 1
    assert "Labels" in labels[0]
    assert len(pages_of(page, "A4")) < whole


@pytest.mark.parametrize("size", [*SIZES, "wide"])
def test_nothing_scrolls_sideways(visit: Visit, size: str) -> None:
    """The view fits its screen."""
    page = opened(visit, f"{LINK}&shown=5", **SIZES.get(size, WIDE))

    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")


def test_every_control_can_be_touched(visit: Visit) -> None:
    """On a phone every button and field is at least 44 pixels in both directions."""
    page = opened(visit, JOINT_LINK, **PHONE)

    small = page.evaluate(
        """(least) => readers.everywhere('button, select, summary, input:not([type=checkbox]):not([type=range])')
          .filter((one) => one.checkVisibility())
          .filter((one) => Math.min(one.getBoundingClientRect().height, one.getBoundingClientRect().width) < least)
          .map((one) => one.id || one.textContent)""",
        FINGER_PX,
    )
    assert small == []


def test_hostile_station_is_never_markup(visit: Visit) -> None:
    """Markup in a station's name is shown as text and makes no element."""
    markup = "<img src=x onerror=alert(1)>"

    page = opened(visit, f"#view=fitout&station={quote(markup)}")

    expect(page.locator(".label").first).to_contain_text(markup)
    assert page.evaluate("() => readers.everywhere('img').length") == 0


def test_spoilt_lines_are_said(visit: Visit) -> None:
    """Where the kept lines cannot be read, the view says so and offers what is left of them."""
    spoil = f"try {{ localStorage.setItem('jointwise-lines', {json.dumps('nonsense')}); }} catch {{ /* no origin */ }}"
    page = opened(visit, prepare=lambda context: context.add_init_script(spoil))

    expect(page.get_by_role("status").filter(has_text="set aside")).to_be_visible()
    expect(page.get_by_role("button", name="Save them")).to_be_visible()


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("link", [f"{LINK}&shown=5", JOINT_LINK], ids=["line", "joint"])
def test_rules_find_nothing(visit: Visit, link: str, size: str, theme: str) -> None:
    """No accessibility rule is broken by the sheets of a line or of a single joint."""
    page = opened(visit, link, prepare=with_axe, color_scheme=theme, reduced_motion="reduce", **SIZES[size])

    assert violations(page) == []
