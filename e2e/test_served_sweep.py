"""The sweep view: the example answered at once, files dropped and refused, what is kept, sizes, keyboard, rules."""

import json
from pathlib import Path
from typing import Any

import expected
import pytest
from playwright.sync_api import Page, expect
from reading import fragment, settled
from test_served_accessibility import violations, with_axe
from visits import SIZES, Visit

from jointwise.assemble.example_sweeps import EXAMPLES, MODULE

LINK = "#view=sweep"
HELD = json.loads(MODULE.read_text("utf-8").partition(" = ")[2].rstrip().removesuffix(";"))
REFUSED = "status of 400"
FINGER_PX = 43.5
DRAWN = {"#distance": "scatterlayer", "#returned": "scatterlayer", "#smith": "smithlayer"}
SWEEP = HELD["line"]["file"]["text"].encode()


def core(example: str = "line", **changes: Any) -> Any:
    """What the core says of an example."""
    given = {name: EXAMPLES[example][name] for name in ("elements", "load")}
    request = given | {"touchstone": HELD[example]["file"]["text"], "length_tolerance": 0.02} | changes
    return expected.asked("sweep", **request)


def opened(visit: Visit, link: str = LINK, **options: Any) -> Page:
    """The sweep view, answered."""
    page = settled(visit(link, **options))
    expect(page.locator("#verdict")).to_be_visible()
    return page


def file(name: str, content: bytes) -> dict[str, Any]:
    """A file as a device hands it over."""
    return {"name": name, "mimeType": "text/plain", "buffer": content}


def test_example_is_answered_at_once(visit: Visit) -> None:
    """A first visit shows the core's verdict on the invented line, its joints and every chart."""
    page = opened(visit)
    result = core()

    expect(page.locator("#verdict")).to_have_text(result["verdict"])
    expect(page.locator("jw-sweep-verdict")).to_contain_text("invented")
    rows = page.locator("#joints tbody tr")
    assert [int(row.get_attribute("data-element")) for row in rows.all()] == [
        joint["element"] for joint in result["line"]["joints"]
    ]
    expect(page.locator("#joints tr[data-accused] th")).to_have_text("5 · Mast foot")
    for place, layer in DRAWN.items():
        expect(page.locator(f"{place} jw-chart .{layer}").first).to_be_attached()


def test_method_is_shown(visit: Visit) -> None:
    """Range, resolution and window are derived with their formulas."""
    page = opened(visit)

    page.locator("#how summary").click()

    steps = page.locator("#how jw-steps li")
    assert [step.get_attribute("data-formula") for step in steps.all()] == [one["formula"] for one in core()["steps"]]
    expect(steps.first.locator("math")).to_be_visible()


def test_jumper_is_judged(visit: Visit) -> None:
    """The two-port example shows the core's verdict and its panel."""
    page = opened(visit)

    page.locator("#of").select_option("jumper")

    expect(page.locator("#verdict")).to_have_text(core("jumper")["verdict"])
    expect(page.locator("#part tr").first).to_contain_text("over the limit")
    assert "of=jumper" in fragment(page)


def test_dropped_file_is_judged_on_ones_own_line(visit: Visit) -> None:
    """A file dropped beside an example is taken for one's own line, with the end that is chosen."""
    page = opened(visit)
    transfer = page.evaluate_handle(
        "(text) => { const all = new DataTransfer(); all.items.add(new File([text], 'mine.s1p')); return all; }",
        SWEEP.decode(),
    )

    page.locator("jw-sweep-file input").first.evaluate(
        "(input, all) => { input.files = all.files; input.dispatchEvent(new Event('change')); }", transfer
    )

    expect(page.locator("jw-sweep-verdict")).to_contain_text("Field day, mine.s1p")
    expect(page.locator("#of")).to_have_value("own-0")
    expect(page.locator("#joints tbody tr")).to_have_count(4)


def test_bad_file_names_its_line(visit: Visit) -> None:
    """A broken file is refused at its field with the line, and no verdict on another file is left beside its name."""
    page = opened(visit, forgiven=REFUSED)

    page.locator("jw-sweep-file input").first.set_input_files(file("bad.s1p", b"# MHz S RI R 50\n1 0 0\n2 zero 0\n"))

    expect(page.locator("jw-sweep-file[name=touchstone] [role=alert]")).to_contain_text("bad.s1p can’t be read: line 3")
    expect(page.locator("#refused")).to_contain_text("No verdict on bad.s1p")
    expect(page.locator("#verdict")).to_have_count(0)
    expect(page.locator("#keep")).to_be_disabled()


def test_few_points_are_refused_in_plain_words(visit: Visit) -> None:
    """A sweep of three points is told how many it has and how many it takes."""
    page = opened(visit, forgiven=REFUSED)
    rows = b"# MHz S RI R 50\n" + b"".join(b"%d 0.1 0\n" % megahertz for megahertz in (1, 2, 3))

    page.locator("jw-sweep-file input").first.set_input_files(file("few.s1p", rows))

    expect(page.locator("#refused")).to_contain_text("found 3 points, needed a sweep of at least 16 points")


def test_ones_own_line_without_a_file_has_no_verdict(visit: Visit) -> None:
    """One's own line, chosen before a file is given, asks for the file and shows nothing of the example."""
    page = opened(visit)

    page.locator("#of").select_option("own-0")

    expect(page.locator(".prompt")).to_contain_text("Give the sweep of Field day")
    expect(page.locator("#verdict")).to_have_count(0)
    expect(page.locator("#keep")).to_be_disabled()
    page.locator("jw-sweep-file input").first.set_input_files(file("mine.s1p", SWEEP))
    expect(page.locator("jw-sweep-verdict")).to_contain_text("Field day, mine.s1p")


def test_huge_file_is_not_read(visit: Visit, tmp_path: Path) -> None:
    """A file of 100 MB is refused by its size."""
    huge = tmp_path / "huge.s1p"
    with huge.open("wb") as sparse:
        sparse.truncate(100_000_000)
    page = opened(visit)

    page.locator("jw-sweep-file input").first.set_input_files(huge)

    expect(page.locator("jw-sweep-file[name=touchstone] [role=alert]")).to_contain_text("has 100 MB; allowed")
    expect(page.locator("#verdict")).to_have_text(core()["verdict"])


def test_kept_sweeps_stay_and_travel(visit: Visit) -> None:
    """A kept sweep is there after a reload, can be compared with, exported, removed and brought back."""
    page = opened(visit)
    page.locator("#day").fill("2026-10-01")
    page.locator("#keep").click()
    page.locator("#day").fill("2026-11-02")
    page.locator("#keep").click()
    page.reload()
    settled(page)

    rows = page.locator("#kept tbody tr")
    expect(rows).to_have_count(2)
    expect(page.locator("#history .main-svg").first).to_be_attached()
    with page.expect_download() as download:
        page.locator("#export").click()
    rows.first.get_by_role("button", name="Remove").click()
    expect(rows).to_have_count(1)
    page.locator("#import").set_input_files(download.value.path())
    expect(rows).to_have_count(2)
    rows.last.get_by_role("button", name="Compare").click()
    expect(page.locator("#joints thead")).to_contain_text("Change")


@pytest.mark.parametrize("size", SIZES)
def test_rules_sizes_and_fingers(visit: Visit, size: str) -> None:
    """No accessibility rule is broken, nothing runs out of the screen, and every control is large enough to touch."""
    page = opened(visit, prepare=with_axe, reduced_motion="reduce", **SIZES[size])
    expect(page.locator("#smith jw-chart .smithlayer").first).to_be_attached()

    assert violations(page) == []
    assert page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth")
    small = page.evaluate(
        """(least) => readers.everywhere('button, select, .drop, summary')
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < least)
          .map((one) => one.outerHTML)""",
        FINGER_PX,
    )
    assert small == []


def test_keyboard_alone_changes_the_end(visit: Visit) -> None:
    """The end of the line is reached by Tab and changed by a key; the address keeps it."""
    page = opened(visit)
    page.locator("#of").focus()

    page.keyboard.press("Tab")
    page.keyboard.press("n")

    expect(page.locator("[name='sweep.end'] select")).to_have_value("open")
    assert "end=open" in fragment(page)


def test_paper_holds_verdict_and_joints(visit: Visit) -> None:
    """The printed page has the verdict and the table of joints, and no form."""
    page = opened(visit)
    page.emulate_media(media="print")

    expect(page.locator("#verdict")).to_be_visible()
    expect(page.locator("#joints")).to_be_visible()
    expect(page.locator("jw-sweep-form")).to_be_hidden()


def test_charts_are_no_wider_than_the_sheet(visit: Visit) -> None:
    """On paper the chart along the line is as wide as an upright sheet, and on the screen again as its panel."""
    page = opened(visit)
    drawn = page.locator("jw-sweep-line jw-chart .main-svg").first
    wide = drawn.bounding_box()["width"]

    page.evaluate("() => window.dispatchEvent(new Event('beforeprint'))")
    expect(drawn).to_have_attribute("width", "660")
    page.evaluate("() => window.dispatchEvent(new Event('afterprint'))")

    expect(drawn).to_have_attribute("width", f"{wide:g}")
