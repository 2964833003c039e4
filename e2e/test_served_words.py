"""What every view says: nothing that only a program would say, numbers in one spelling, refusals by label."""

import re

import pytest
from playwright.sync_api import Page, expect
from reading import seldom, settled
from test_served_trouble import type_vswr
from visits import Visit

VIEWS = ["matrix", "choose", "line", "kit", "fitout", "sweep", "packs"]
PROGRAM_WORDS = re.compile(r"\b(null|undefined|NaN|Infinity|\[object \w+\])\b")
INNER_NAME = re.compile(r"\b[a-z]+_[a-z_]+\b|\[\d+\]")
EVERYTHING_OPEN = """() => {
  readers.everywhere('details').forEach((one) => (one.open = true));
  readers.everywhere('[aria-expanded=false]').forEach((one) => one.click());
}"""


def opened(visit: Visit, link: str, **options: str) -> Page:
    """A view with all that it can unfold."""
    page = visit(link, **options)
    if "packs" not in link:
        settled(page)
    page.evaluate(EVERYTHING_OPEN)
    page.evaluate("() => new Promise((done) => setTimeout(done, 300))")
    return page


@pytest.mark.parametrize("view", VIEWS)
def test_no_menu_and_no_line_holds_a_word_of_a_program(visit: Visit, view: str) -> None:
    """No entry of a menu and no text of a view is null, undefined or no number."""
    page = opened(visit, f"#view={view}")

    menus = page.evaluate("() => readers.everywhere('option').map((one) => `${one.value} ${one.textContent.trim()}`)")
    texts = page.evaluate(
        """() => readers.everywhere('*').filter((one) => !one.matches('script, style'))
          .flatMap((one) => [...one.childNodes].filter(({nodeType}) => nodeType === Node.TEXT_NODE))
          .map(({data}) => data.trim())"""
    )

    assert view in ("matrix", "packs", "sweep") or len(menus) > 0
    assert [text for text in [*menus, *texts] if PROGRAM_WORDS.search(text)] == []


def test_a_choice_left_out_stands_once_in_its_menu(visit: Visit) -> None:
    """A choice that none was made of shows the words for none, and offers them once."""
    page = settled(visit("#view=choose"))

    options = page.locator("[id='choose.plan'] option")

    expect(page.locator("[id='choose.plan']")).to_have_value("")
    expect(options.first).to_have_text("no plan yet")
    assert options.evaluate_all("(all) => all.filter(({value}) => ['', 'null'].includes(value)).length") == 1


def test_a_spot_frequency_stands_among_the_bands(visit: Visit) -> None:
    """Columns stand by frequency, a spot frequency between the bands around it."""
    page = settled(visit("#bands=20m,6m,2m&frequencies_hz=70200000"))

    heads = page.locator("jw-matrix thead button[aria-label$='all limits']")

    expect(heads).to_have_text([re.compile(words) for words in (r"20\s+m", r"6\s+m", r"70.2\s+MHz", r"2\s+m")])


def test_an_entry_of_a_list_is_refused_by_label_value_and_range(visit: Visit) -> None:
    """A negative power level is refused by the field's label, with its unit, and without a name of the program's."""
    page = settled(visit(forgiven="status of 400"))
    seldom(page, "Bands and powers")

    page.locator("#powers_w").fill("-5 100")
    page.keyboard.press("Tab")

    said = "Power levels, first entry: −5 W; allowed: 0 to 100 kW."
    expect(page.locator("jw-list-field[name=powers_w]").get_by_role("alert")).to_have_text(said)


REFUSED_LINKS = [
    "#bands=20m,19m",
    "#families=nosuch",
    "#region=7",
    "#mode=fax",
    "#altitude_m=90000",
    "#on_time_s=3",
    "#powers_w=-5",
    "#system_impedance_ohm=1000",
    "#bands=",
    "#view=choose&altitude_m=90000",
    "#view=choose&bands=19m",
    "#view=choose&largest_diameter_m=7",
    "#view=fitout&of=joint&date=soon",
    "#view=fitout&of=joint&length_m=-2",
    "#family=n&band=19m",
]


@pytest.mark.parametrize("link", REFUSED_LINKS)
def test_no_refusal_has_a_name_of_the_programs(visit: Visit, link: str) -> None:
    """Whatever a link gets wrong, what the reader is told holds labels, not names of fields."""
    page = visit(link, forgiven="status of 400")

    said = page.locator("[role=alert]:visible, jw-detail [role=status]:visible").filter(has_text="allowed:")
    expect(said).not_to_have_count(0)

    for words in said.all_inner_texts():
        label, _, allowed = words.partition("; allowed: ")
        assert not INNER_NAME.search(label), words
        assert not INNER_NAME.search(allowed.replace("19m", "")), words


def test_an_emptied_field_does_not_complain_of_what_stood_there(visit: Visit) -> None:
    """Once a refused number is cleared away, its field says so no more, whether or not the core has answered."""
    page = settled(visit(forgiven="status of 400"))
    seldom(page, "Line and cable")
    field = page.locator("jw-number-field[name=cable_diameter_m]")
    box = page.locator("#cable_diameter_m")
    box.fill("500")
    page.keyboard.press("Tab")
    expect(field.get_by_role("alert")).to_contain_text("500 mm; allowed: 0.5 to 100 mm")
    # the core is silent from here on
    page.route("**/api/v1/matrix", lambda route: None)

    box.fill("")
    page.keyboard.press("Tab")

    expect(field.get_by_role("alert")).to_have_count(0)
    expect(box).to_have_attribute("aria-invalid", "false")


@pytest.mark.parametrize(
    ("link", "words"),
    [
        ("#family=nosuch", "There is no connector “nosuch” here"),
        ("#band=nosuch", "There is no band “nosuch” here"),
        ("#band=60m", "60 m is not among the columns of this matrix"),
        ("#frequency_hz=7100000", "7.1 MHz is not among the columns of this matrix"),
    ],
)
def test_a_link_to_what_is_not_there_says_what_is_missing(visit: Visit, link: str, words: str) -> None:
    """A link that names a connector, band or frequency the matrix does not have says which."""
    page = settled(visit(link))

    expect(page.locator("jw-detail").get_by_role("status")).to_contain_text(words)


def test_a_link_with_a_family_alone_opens_its_sheet(visit: Visit) -> None:
    """A link that names a connector and no band opens the connector's sheet."""
    page = settled(visit("#family=n"))

    expect(page.get_by_role("dialog").get_by_role("heading", name="N", exact=True)).to_be_visible()
    expect(page.locator("jw-data-sheet")).to_be_visible()


def test_a_power_is_spelled_in_one_way(visit: Visit) -> None:
    """A kilowatt is 1 kW wherever the matrix writes it."""
    page = settled(visit("#powers_w=400,1000,1500&power_w=1000"))
    labels = page.locator("jw-power-choice fieldset#power_w label")

    expect(labels).to_have_text(["400 W", "1 kW", "1.5 kW"])
    page.locator("td[data-family=n][data-band='20m']").click()
    expect(page.locator("#verdict")).to_contain_text("1 kW")
    everything = page.evaluate(
        "() => readers.everywhere('jw-detail, jw-matrix').map((one) => one.shadowRoot.textContent)"
    )

    assert not [text for text in everything if re.search(r"\b1[,.]?0+0? W\b|1\.0 kW|1000 W", text)]


def test_a_refused_vswr_is_spoken_of_by_its_label(visit: Visit) -> None:
    """A refusal begins with the words over the field."""
    page = settled(visit(forgiven="status of 400"))

    type_vswr(page, "0.5")

    label = page.locator("jw-number-field[name=vswr] label").inner_text()
    expect(page.locator("jw-number-field[name=vswr]").get_by_role("alert")).to_have_text(
        f"{label}: 0.5; allowed: 1 to 20."
    )
