"""The joint book: what was done to each joint, what is due, and the code on its label that opens it."""

import json
import re
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from playwright.sync_api import BrowserContext, Locator, Page, expect
from reading import fragment, settled
from test_saved_own import opened, own, saved
from test_served_fitout import READ_CODES, of_line, with_codes
from visits import Visit

LINK = "#view=fitout"
LONG_AGO = "2020-03-03"


def shown(page: Page) -> Locator:
    """The sheet on the screen."""
    return page.locator("jw-fitout-sheet[data-shown]")


def unfolded(page: Page) -> Locator:
    """The record of the joint on the screen."""
    record = shown(page).locator("#record")
    if record.get_attribute("open") is None:
        record.locator("> summary").click()
    return record


def enter(page: Page, label: str, text: str) -> None:
    """Fill in a field of the record on the screen."""
    field = unfolded(page).get_by_label(label)
    field.fill(text)
    field.blur()


def book(page: Page) -> Any:
    """What the browser keeps."""
    return json.loads(page.evaluate("() => localStorage.getItem('jointwise-joints')") or "null")


def at_joint(visit: Visit, number: int, **options: Any) -> Page:
    """The fit-out view at one of the example's joints."""
    return settled(visit(f"{LINK}&shown={number}", **options))


def rename_line(page: Page, name: str) -> None:
    """Give the line at hand another name in the Line view, and come back."""
    page.get_by_role("button", name="Line", exact=True).click()
    page.locator("#name").fill(name)
    page.locator("#name").blur()
    page.get_by_role("button", name="Fit-out", exact=True).click()


def test_entries_are_kept_with_what_was_said_before(visit: Visit) -> None:
    """What is entered stands there after a reload, and a field said anew keeps its first entry in the list."""
    page = at_joint(visit, 5)
    enter(page, "Fitted by", "Ann")
    enter(page, "Torque used", "2 N·m, wrench")
    unfolded(page).get_by_label("State").select_option(label="good")
    unfolded(page).get_by_label("State").select_option(label="to be watched")
    page.reload()
    settled(page)

    record = unfolded(page)

    expect(record.get_by_label("Fitted by")).to_have_value("Ann")
    expect(record.get_by_label("Torque used")).to_have_value("2 N·m, wrench")
    record.get_by_text("Every entry").click()
    expect(record.locator("#entries tbody tr")).to_have_count(4)
    expect(record.locator("#entries tbody")).to_contain_text("good")
    fields = [entry["field"] for joint in book(page)["joints"] for entry in joint["entries"]]
    assert fields == ["fitted_by", "torque", "state", "state"]


def test_what_is_overdue_is_said_at_the_top_and_leads_there(visit: Visit) -> None:
    """A joint fitted long ago is overdue by the core's own interval; inspected today, nothing is."""
    page = at_joint(visit, 5)
    enter(page, "Fitted on", LONG_AGO)
    page.locator(".joints button").first.click()
    sheet = of_line(date=LONG_AGO)["joints"][4]
    due = page.locator("jw-fitout-due #due")
    expect(due).to_contain_text(f"inspection overdue since {sheet['inspection']['due']}")

    due.get_by_role("link").click()

    expect(shown(page).locator("#heading")).to_have_text(sheet["heading"])
    unfolded(page).get_by_role("button", name="Inspected today").click()
    expect(due).to_have_count(0)
    expect(page.locator("jw-fitout-due")).to_contain_text("nothing is due; next is Field day, Joint 5")


def test_two_tabs_write_in_one_book(visit: Visit) -> None:
    """An entry of one tab comes into the other, and both are kept."""
    page = at_joint(visit, 1)
    other = page.context.new_page()
    other.goto(page.url)
    settled(other)

    enter(page, "Fitted by", "Ann")
    expect(unfolded(other).get_by_label("Fitted by")).to_have_value("Ann")
    enter(other, "Torque used", "hand")

    expect(unfolded(page).get_by_label("Torque used")).to_have_value("hand")
    assert len(book(page)["joints"][0]["entries"]) == 2


def test_a_code_opens_its_joint_also_of_another_line(visit: Visit, address: str) -> None:
    """Read from a label's picture, the code opens the joint with its record, whichever line is at hand."""
    page = at_joint(visit, 1, prepare=with_codes)
    texts = page.evaluate(READ_CODES)
    assert all(re.fullmatch(re.escape(address) + r"#view=fitout&joint=[0-9A-Z]{8}", text) for text in texts)
    page.get_by_role("button", name="Line", exact=True).click()
    page.get_by_role("button", name="Compare with a copy").click()
    page.get_by_role("button", name="Fit-out", exact=True).click()
    expect(page.locator("jw-fitout-form")).not_to_contain_text("Field day, 7 elements")

    page.goto(texts[3])

    expect(page.locator("jw-fitout-form")).to_contain_text("Field day, 7 elements")
    expect(shown(page).locator("#heading")).to_have_text(of_line()["joints"][3]["heading"])
    expect(shown(page).locator("#record")).to_have_attribute("open", "")
    assert "shown=4" in fragment(page)


def test_a_code_is_typed_or_not_known(visit: Visit) -> None:
    """A code typed in small letters opens its joint; one of no kept line, and one that is none, are named."""
    page = at_joint(visit, 1)
    code = shown(page).locator("#record > summary").inner_text().split(",")[1].split()[0]
    page.locator(".joints button").nth(2).click()
    typed = page.get_by_label("Code", exact=True)
    page.get_by_text("Open a joint by the code on its label").click()

    typed.fill("12")
    typed.blur()
    expect(page.locator("jw-fitout-due #refused")).to_have_text(
        "Code is “12”; allowed: eight digits and letters, as K7Q4-2MXA."
    )
    typed.fill("0000-0000")
    typed.blur()
    expect(page.get_by_text("No line kept in this browser has a joint 0000-0000.")).to_be_visible()
    typed.fill(code.lower())
    typed.blur()

    expect(shown(page).locator("#heading")).to_have_text(of_line()["joints"][0]["heading"])


def test_a_link_with_what_is_no_code_is_said(visit: Visit) -> None:
    """A link whose joint is no code says so in a short sentence, and the line at hand is shown."""
    page = settled(visit(f"{LINK}&joint={'x' * 500}"))

    expect(page.get_by_text("The joint in this link is not a code; allowed: eight digits and letters.")).to_be_visible()
    expect(shown(page).locator("#heading")).to_have_text(of_line()["joints"][0]["heading"])


def test_a_record_follows_its_line_to_a_new_name_when_told(visit: Visit) -> None:
    """A renamed line's records are named, and said to be of its joints they are there with all entries."""
    page = at_joint(visit, 5)
    enter(page, "Fitted by", "Ann")
    rename_line(page, "Hut")
    expect(unfolded(page).get_by_label("Fitted by")).to_have_value("")
    strays = page.locator("jw-fitout-due #strays")
    strays.locator("summary").click()
    expect(strays).to_contain_text("Field day, Joint 5: N between RG-213 and the antenna")

    strays.get_by_role("combobox").select_option(index=5)

    expect(strays).to_have_count(0)
    expect(unfolded(page).get_by_label("Fitted by")).to_have_value("Ann")


def test_a_label_tells_what_the_book_says(visit: Visit) -> None:
    """What it joins, fitted when and by whom, the torque that was used, and the next inspection."""
    page = at_joint(visit, 5)
    label = page.locator(".label").nth(4)
    expect(label.locator(".joins")).to_have_text("RG-213 to the antenna")
    expect(label.locator(".torque")).to_have_text(f"Torque {of_line()['joints'][4]['torque']['figures']}")
    expect(label.locator(".next")).to_have_text(re.compile(r"^Next inspection …+$"))

    enter(page, "Fitted on", LONG_AGO)
    enter(page, "Fitted by", "Ann")
    enter(page, "Torque used", "2 N·m")

    expect(label).to_contain_text(f"Fitted {LONG_AGO} by Ann")
    expect(label.locator(".torque")).to_have_text("Torque used 2 N·m")
    expect(label.locator(".next")).to_have_text(
        f"Next inspection {of_line(date=LONG_AGO)['joints'][4]['inspection']['due']}"
    )


def test_a_saved_page_carries_the_book(visit: Visit, elsewhere: BrowserContext, tmp_path: Path) -> None:
    """Opened from disk it has the entries, is saved the same and takes more; its labels hold the plain code."""
    page = at_joint(visit, 5)
    enter(page, "Note", "</script><b>dry</b>")
    code = shown(page).locator("#record > summary").inner_text().split(",")[1].split()[0]
    file = saved(page, tmp_path / "own.html")

    with_codes(elsewhere)
    there = opened(elsewhere, file, "#view=fitout&shown=5")
    assert saved(there, tmp_path / "again.html").read_bytes() == file.read_bytes()

    expect(unfolded(there).get_by_label("Note")).to_have_value("</script><b>dry</b>")
    assert there.evaluate(READ_CODES)[4] == f"Joint {code}"
    expect(there.locator("jw-fitout-labels #about")).to_contain_text("plain text")
    unfolded(there).get_by_role("button", name="Inspected today").click()
    expect(shown(there).locator("#record > summary")).to_contain_text(f"inspected {datetime.now(UTC):%Y-}")


def test_a_station_file_adds_its_entries(visit: Visit, tmp_path: Path) -> None:
    """Entries of a station file come in beside one's own of the same joint."""
    page = at_joint(visit, 1)
    enter(page, "Fitted by", "Ann")
    own(page)
    with page.expect_download() as saving:
        page.locator("#save-station").click()
    file = tmp_path / "station.json"
    saving.value.save_as(file)

    other = at_joint(visit, 1)
    enter(other, "Torque used", "hand")
    own(other)
    other.locator("#open-station").set_input_files(file)
    other.wait_for_function("() => JSON.parse(localStorage.getItem('jointwise-joints')).joints[0].entries.length === 2")
