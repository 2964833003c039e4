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
MOUSE_PX = 37.5
HUNT = LINK + "&way=hunt"
DRAWN = {"#distance": "scatterlayer", "#returned": "scatterlayer", "#smith": "smithlayer"}
SWEEP = HELD["line"]["file"]["text"].encode()


AFTER = HELD["line"]["after"]["text"]


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


def hunting(visit: Visit, link: str = HUNT, **options: Any) -> Page:
    """The steps of the hunt, the first one open."""
    page = visit(link, **options)
    expect(page.locator("#step-line")).to_be_visible()
    return page


def walk(page: Page, *steps: str) -> None:
    """Press what each of these steps has to be done, by keyboard; the next one is reached by it."""
    for step in steps:
        page.locator(f"#body-{step} .next").focus()
        page.keyboard.press("Enter")
        expect(page.locator(f"#step-{step}")).to_have_attribute("aria-expanded", "false")


TO_THE_SWEEP = ["line", "safe", "span", "calibrate", "end"]


def file(name: str, content: bytes) -> dict[str, Any]:
    """A file as a device hands it over."""
    return {"name": name, "mimeType": "text/plain", "buffer": content}


def test_example_is_answered_at_once(visit: Visit) -> None:
    """A first visit shows the core's verdict on the invented line, its joints and every chart."""
    page = opened(visit)
    result = core()

    expect(page.locator("#verdict")).to_have_text(result["verdict"])
    expect(page.locator("jw-sweep-form")).to_contain_text("An invented line and measurement")
    rows = page.locator("#joints tbody tr")
    assert [int(row.get_attribute("data-element")) for row in rows.all()] == [
        joint["element"] for joint in result["line"]["joints"]
    ]
    expect(page.locator("#parts li[data-accused]")).to_contain_text("5 · Mast foot")
    expect(page.locator("#parts li")).to_have_count(len(EXAMPLES["line"]["elements"]))
    page.locator("#frequency summary").click()
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


@pytest.mark.parametrize("way", ["judge", "hunt"])
@pytest.mark.parametrize("size", SIZES)
def test_rules_sizes_and_fingers(visit: Visit, size: str, way: str) -> None:
    """No accessibility rule is broken, nothing runs out of the screen, and every control is large enough to touch."""
    given = {"prepare": with_axe, "reduced_motion": "reduce", **SIZES[size]}
    if way == "judge":
        page = opened(visit, **given)
        page.locator("#frequency summary").click()
        expect(page.locator("#smith jw-chart .smithlayer").first).to_be_attached()
    else:
        page = hunting(visit, **given)
        walk(page, *TO_THE_SWEEP, "sweep")

    assert violations(page) == []
    assert page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth")
    small = page.evaluate(
        """(least) => readers.everywhere('button, select, .drop, summary')
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < least)
          .map((one) => one.outerHTML)""",
        FINGER_PX if SIZES[size].get("has_touch") else MOUSE_PX,
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
    """The printed page has the verdict and the line part by part, and no form."""
    page = opened(visit)
    page.emulate_media(media="print")

    expect(page.locator("#verdict")).to_be_visible()
    expect(page.locator("#parts")).to_be_visible()
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


def test_hunt_leads_from_the_line_to_what_changed(visit: Visit) -> None:
    """By keyboard alone: every step in turn, the place by the verdict, the sweep after it laid over the one before."""
    page = hunting(visit)
    result = core()

    walk(page, *TO_THE_SWEEP)
    expect(page.locator("#body-sweep")).to_contain_text(result["verdict"])
    walk(page, "sweep")
    expect(page.locator("#body-place .places")).to_contain_text("Mast foot")
    expect(page.locator("#body-place .hands")).to_contain_text("locked out")
    walk(page, "place")
    page.get_by_role("button", name="Use the example sweep").focus()
    page.keyboard.press("Enter")

    expect(page.locator("#step-compare")).to_be_focused()
    expect(page.locator("#verdict")).to_have_text(core(touchstone=AFTER)["verdict"])
    expect(page.locator("#change li").first).to_contain_text("Mast foot no longer stands out")
    expect(page.locator("#change jw-chart .scatterlayer .js-line")).to_have_count(2)
    page.get_by_role("button", name="Go on from this sweep").click()
    expect(page.locator("#change")).to_have_count(0)
    expect(page.locator("#step-place")).to_have_attribute("aria-expanded", "true")


def test_hunt_goes_on_where_it_was(visit: Visit) -> None:
    """Loaded anew on the way to the joint, the page is at the same step with the same sweep."""
    page = hunting(visit, HUNT + "&of=own-0")
    walk(page, *TO_THE_SWEEP)
    page.locator("jw-sweep-file input").set_input_files(file("mine.s1p", SWEEP))
    expect(page.locator("#verdict")).to_be_visible()
    walk(page, "sweep")
    page.reload()

    expect(page.locator("#step-place")).to_have_attribute("aria-expanded", "true")
    expect(page.locator("jw-sweep-verdict")).to_contain_text("Field day, mine.s1p")


def test_hunt_sets_the_analyser_for_the_line(visit: Visit) -> None:
    """Start, stop and points are the core's for this line and analyser, with its reasons; a bad range is told."""
    page = hunting(visit, forgiven=REFUSED)
    elements = EXAMPLES["line"]["elements"]

    walk(page, "line", "safe")

    span = expected.asked("span", elements=elements)
    expect(page.locator("#body-span li")).to_have_text(span["reasons"])
    expect(page.locator("#span dd").last).to_have_text(str(span["points"]))
    page.locator("[name='sweep.highest_hz'] input").fill("55")
    page.keyboard.press("Tab")
    expect(page.locator("#body-span li")).to_have_text(
        expected.asked("span", elements=elements, highest_hz=5.5e7)["reasons"]
    )
    page.locator("[name='sweep.highest_hz'] input").fill("1")
    page.keyboard.press("Tab")
    expect(page.locator("#body-span > [role=alert]")).to_contain_text("must end at twice its beginning")


def test_without_a_line_a_distance_can_be_asked_about(visit: Visit) -> None:
    """Of a line that is not described the echoes are told, and what is at 12 m."""
    page = settled(visit(LINK))
    page.locator("#of").select_option("none")
    page.locator("jw-sweep-file input").first.set_input_files(file("mine.s1p", SWEEP))
    asked = expected.asked("sweep", elements=[], touchstone=SWEEP.decode())

    expect(page.locator("#verdict")).to_have_text(asked["verdict"])
    expect(page.locator("#echoes li")).to_have_count(len(asked["echoes"]["echoes"]))
    page.locator("#at").fill("12")

    expect(page.locator("jw-sweep-place [role=status]")).to_contain_text("of the wave comes back from there")
