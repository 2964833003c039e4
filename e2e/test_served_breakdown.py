"""Whatever breaks in the page's own code is said in a sentence; nothing entered is lost, and a view can try again."""

import re

import pytest
from playwright.sync_api import Locator, Page, expect
from reading import settled
from visits import PHONE, Visit

BROKEN = "broken on purpose"
FORGIVEN = f"{BROKEN}|status of 400"

VIEWS = {
    "matrix": ("jw-matrix-view", "#vswr", "3"),
    "choose": ("jw-choose-view", "[id='choose.power_w']", "250"),
    "line": ("jw-line-view", "[id='station.power_w']", "37"),
    "kit": ("jw-kit-view", "[id='kit.most_loss_db']", "2"),
    "fitout": ("jw-fitout-view", "[id='fitout.station']", "Hut"),
    "sweep": ("jw-sweep-view", None, None),
    "packs": ("jw-packs-view", None, None),
}

BREAK = """([tag, method]) => {
  const {prototype} = customElements.get(tag);
  const own = Object.getOwnPropertyDescriptor(prototype, method);
  prototype[method] = () => { throw new TypeError('broken on purpose'); };
  window.mend = () => own ? Object.defineProperty(prototype, method, own) : delete prototype[method];
  readers.everywhere(tag).forEach((one) => one.requestUpdate());
}"""


def opened(visit: Visit, view: str, **options: str) -> Page:
    """A view that the core has answered."""
    page = visit(f"#view={view}" if view != "matrix" else "", forgiven=FORGIVEN, **options)
    return page if view in ("packs", "sweep") else settled(page)


def fault(page: Page) -> Locator:
    """What the page says when something broke."""
    return page.get_by_role("alertdialog")


OFTEN = {"matrix", "line"}
"""Looked at in every run; the others break alike, and are looked at by night."""
OPENED = [pytest.param(view, marks=[] if view in OFTEN else pytest.mark.nightly) for view in VIEWS if view != "packs"]


@pytest.mark.parametrize("method", ["render", pytest.param("updated", marks=pytest.mark.nightly)])
@pytest.mark.parametrize("view", VIEWS)
def test_a_broken_view_says_so_and_comes_back_with_what_was_typed(visit: Visit, view: str, method: str) -> None:
    """A view whose drawing breaks says so in a sentence without a traceback; trying again shows all that was set."""
    tag, box, value = VIEWS[view]
    page = opened(visit, view)
    if box:
        page.locator(box).first.fill(value)
        page.keyboard.press("Tab")

    page.evaluate(BREAK, [tag, method])
    expect(fault(page)).to_contain_text("Something went wrong in")
    assert not re.search(r"TypeError|purpose|\bat \w+|:\d+:\d+", fault(page).inner_text())
    page.evaluate("() => window.mend()")
    fault(page).get_by_role("button", name="Try again").click()

    expect(fault(page)).to_have_count(0)
    expect(page.locator(tag)).to_be_visible()
    if box:
        expect(page.locator(box).first).to_have_value(value)
        page.locator(box).first.fill(value)
        page.keyboard.press("Tab")
    expect(fault(page)).to_have_count(0)


@pytest.mark.parametrize("view", OPENED)
def test_a_view_that_breaks_as_it_opens_can_be_opened_again(visit: Visit, view: str) -> None:
    """A view whose beginning breaks says so, leaves the other views in use, and opens once it is mended."""
    tag, *_ = VIEWS[view]
    page = opened(visit, "kit" if view != "kit" else "choose")
    page.evaluate(BREAK, [tag, "_begin"])

    page.locator(f"jw-masthead [data-view={view}]").click()
    expect(fault(page)).to_be_visible()
    page.evaluate("() => window.mend()")
    fault(page).get_by_role("button", name="Try again").click()

    expect(fault(page)).to_have_count(0)
    expect(page.locator(f"{tag} main")).to_be_visible()
    page.locator("jw-masthead [data-view=kit]").click()
    expect(page.locator("jw-kit-form")).to_be_visible()


def test_a_part_of_a_view_that_breaks_is_drawn_again(visit: Visit) -> None:
    """What breaks in a part of a view is caught as well, and the part is back after another try."""
    page = opened(visit, "choose")

    page.evaluate(BREAK, ["jw-choose-verdict", "render"])
    expect(fault(page)).to_be_visible()
    page.evaluate("() => window.mend()")
    fault(page).get_by_role("button", name="Try again").click()

    expect(page.locator("jw-choose-verdict #verdict")).to_be_visible()


def test_the_shell_itself_may_break(visit: Visit) -> None:
    """The sentence does not depend on the shell of the page, and the shell comes back."""
    page = opened(visit, "matrix")

    page.evaluate(BREAK, ["jw-app", "render"])
    expect(fault(page)).to_be_visible()
    page.evaluate("() => window.mend()")
    fault(page).get_by_role("button", name="Try again").click()

    expect(fault(page)).to_have_count(0)
    page.locator("jw-masthead [data-view=choose]").click()
    expect(page.locator("jw-choose-form")).to_be_visible()


@pytest.mark.parametrize("how", ["throw fault", "Promise.reject(fault)"])
def test_what_breaks_outside_of_drawing_is_said_once(visit: Visit, how: str) -> None:
    """A handler that throws and a promise that nobody handles are said; the same fault is not said over and over."""
    page = opened(visit, "matrix")
    provoke = f"() => {{ setTimeout(() => {{ const fault = new Error('{BROKEN}'); {how}; }}); }}"

    page.evaluate(provoke)
    expect(fault(page)).to_contain_text("Something went wrong in Matrix")
    fault(page).get_by_role("button", name="Close").click()
    page.evaluate(provoke)
    page.evaluate("() => new Promise((done) => setTimeout(done, 200))")

    expect(fault(page)).to_have_count(0)


def test_the_report_can_be_copied(visit: Visit) -> None:
    """The report has version, view, message and calls, and nothing of the address or of what was set."""
    page = opened(visit, "fitout", permissions=["clipboard-read", "clipboard-write"])
    page.locator("[id='fitout.station']").fill("Hut of Jo")
    page.keyboard.press("Tab")
    page.evaluate(BREAK, ["jw-fitout-view", "render"])

    fault(page).get_by_role("button", name="Copy a report").click()
    expect(fault(page).get_by_role("status")).to_contain_text("Copied")
    report = page.evaluate("() => navigator.clipboard.readText()")

    assert re.match(r"Jointwise \d+\.\d+\.\d+\S*\nView: Fit-out\nMessage: TypeError: broken on purpose\n", report)
    assert not re.search(r"127\.0\.0\.1|localhost|Hut|station", report)


def test_the_report_can_be_copied_by_hand(visit: Visit) -> None:
    """Where the browser gives no clipboard, the report stands there to copy."""
    page = opened(visit, "matrix")
    page.evaluate("() => Object.defineProperty(navigator, 'clipboard', {value: undefined})")
    page.evaluate(BREAK, ["jw-matrix", "render"])

    fault(page).get_by_role("button", name="Copy a report").click()

    expect(fault(page).get_by_label("Report to copy by hand")).to_have_value(
        re.compile("^Jointwise .*\nView: Matrix\n")
    )


def test_it_can_be_reached_over_a_sheet(visit: Visit) -> None:
    """On a phone, where a sheet covers the page, the sentence and its buttons lie over the sheet."""
    page = settled(visit("#family=n", forgiven=FORGIVEN, **PHONE))
    expect(page.locator("jw-data-sheet")).to_be_visible()

    page.evaluate(BREAK, ["jw-data-sheet", "render"])
    page.evaluate("() => window.mend()")
    fault(page).get_by_role("button", name="Try again").click()

    expect(fault(page)).to_have_count(0)
    expect(page.locator("jw-data-sheet")).to_be_visible()
