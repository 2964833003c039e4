"""A cell opens its derivation, by every means of input, and the derivation says what the core says."""

import re
from collections import Counter
from contextlib import suppress

import expected
import pytest
from playwright.sync_api import Error, Locator, Page, Route, expect
from reading import cell, drawn, fragment, open_cell, settled, sheet, unfolded, with_charts
from visits import DESKTOP, PHONE, TABLET, Visit

FAMILY, BAND, POWER = "n", "2m", 400
LIMIT_AT = 0.75
"""Where the limit stands on a bar."""
LINK = f"#family={FAMILY}&band={BAND}&power_w={POWER}"


def core() -> dict:
    """What the core says of the cell that most tests here open."""
    return expected.asked("cell", family=FAMILY, band=BAND, power_w=POWER)


def opened(visit: Visit) -> Locator:
    """The derivation of that cell."""
    return drawn(visit(LINK))


def first_number(words: str) -> float:
    """The first number in a text, as a number."""
    return float(re.search(r"[−-]?\d+\.?\d*", words)[0].replace("−", "-"))


def focused_cell(page: Page) -> list[str]:
    """Family and band of the cell that has the focus."""
    return page.evaluate("() => [readers.focused().closest('td').dataset].flatMap(({family, band}) => [family, band])")


def test_click_opens_the_derivation(visit: Visit) -> None:
    """A click on a cell opens its derivation, headed by family and band."""
    page = settled(visit())

    open_cell(page, "tnc", "20m")

    expect(sheet(page).get_by_role("heading", name="TNC on 20 m")).to_be_visible()
    assert fragment(page) == "family=tnc&band=20m"


def test_tap_opens_the_derivation(visit: Visit) -> None:
    """A tap on a cell opens its derivation on a tablet."""
    page = settled(visit(**TABLET))

    cell(page, "tnc", "20m").tap()

    expect(sheet(page).get_by_role("heading", name="TNC on 20 m")).to_be_visible()
    drawn(page)


def test_grid_is_one_stop_of_the_tab_key(visit: Visit) -> None:
    """Exactly one place of the whole grid is reached by Tab."""
    page = settled(visit())

    expect(page.get_by_role("grid").locator("[tabindex='0']")).to_have_count(1)


def test_arrow_keys_walk_the_cells(visit: Visit) -> None:
    """Arrow keys move the focus one cell at a time, Home and End to the edges."""
    page = settled(visit())
    page.get_by_role("grid").locator("[tabindex='0']").focus()

    for key in ("ArrowRight", "ArrowRight", "ArrowDown"):
        page.keyboard.press(key)
    walked = focused_cell(page)
    page.keyboard.press("End")
    ended = focused_cell(page)
    page.keyboard.press("Control+End")

    assert walked == ["mini_uhf", "40m"]
    assert ended == ["mini_uhf", "3cm"]
    assert focused_cell(page) == ["2_92mm", "3cm"]


@pytest.mark.parametrize("size", [DESKTOP, TABLET], ids=["desktop", "tablet"])
def test_enter_opens_and_escape_gives_the_focus_back(visit: Visit, size: dict) -> None:
    """Enter opens the cell in focus, the heading takes the focus, Escape closes and gives it back."""
    page = settled(visit(**size))
    cell(page, "bnc", "6m").focus()

    page.keyboard.press("Enter")
    drawn(page)
    heading = page.evaluate("() => readers.focused().textContent")
    page.keyboard.press("Escape")

    assert heading == "BNC on 6 m"
    expect(sheet(page)).to_be_hidden()
    assert focused_cell(page) == ["bnc", "6m"]
    assert fragment(page) == ""


def test_focus_goes_back_to_the_cell_that_was_opened_last(visit: Visit) -> None:
    """Where one cell was opened after another, the focus returns to the last."""
    page = settled(visit())
    open_cell(page, "bnc", "40m")
    open_cell(page, "n", "20m")

    page.keyboard.press("Escape")

    expect(sheet(page)).to_be_hidden()
    assert focused_cell(page) == ["n", "20m"]


def test_close_button_closes(visit: Visit) -> None:
    """The sheet has a button that closes it."""
    page = visit(LINK)

    sheet(page).get_by_role("button", name="Close").click()

    expect(sheet(page)).to_be_hidden()


def test_other_cell_replaces_the_derivation(visit: Visit) -> None:
    """Beside the sheet the matrix stays in use: another cell takes the sheet over."""
    page = settled(visit())
    open_cell(page, "tnc", "20m")

    open_cell(page, "sma", "40m")

    wanted = expected.asked("cell", family="sma", band="40m", power_w=100)["verdict"]
    expect(sheet(page).get_by_role("heading", name="SMA on 40 m")).to_be_visible()
    expect(page.locator("#verdict")).to_have_text(wanted)


def test_last_opened_cell_wins(visit: Visit) -> None:
    """When the answer for one cell comes after another was opened, the other one stays."""
    page = settled(visit())
    late: list[Route] = []
    page.route("**/api/v1/cell", lambda route: late.append(route), times=1)

    cell(page, "tnc", "20m").click()
    open_cell(page, "sma", "40m")
    # the page has given the first request up; an answer to it can then only be thrown away
    with suppress(Error):
        late[0].continue_()

    wanted = expected.asked("cell", family="sma", band="40m", power_w=100)["verdict"]
    expect(page.locator("#verdict")).to_have_text(wanted)


def test_spot_frequency_opens_its_derivation(visit: Visit) -> None:
    """The column of a spot frequency opens derivations like a band, and a link holds them."""
    page = visit("#frequencies_hz=50313000&family=n&frequency_hz=50313000")

    drawn(page)

    wanted = expected.asked("cell", family="n", frequency_hz=50_313_000, power_w=100)["verdict"]
    expect(page.locator("#verdict")).to_have_text(wanted)


def test_control_recomputes_the_open_derivation(visit: Visit) -> None:
    """A control changed beside an open derivation changes the derivation too."""
    page = visit(LINK)
    drawn(page)

    page.locator("#mode").select_option("carrier")

    wanted = expected.asked("cell", family=FAMILY, band=BAND, power_w=POWER, mode="carrier")["verdict"]
    expect(page.locator("#verdict")).to_have_text(wanted)


def test_verdict_is_the_cores(visit: Visit) -> None:
    """The derivation opens with the core's verdict and margin, the margin that the cell prints."""
    page = visit(LINK)
    drawn(page)
    core_says = core()

    expect(page.locator("#verdict")).to_have_text(core_says["verdict"])
    printed = expected.decibels(core_says["margin_db"])
    expect(page.locator("jw-derivation .verdict")).to_contain_text(f"{printed} dB")
    expect(cell(page, FAMILY, BAND)).to_contain_text(printed)


def test_each_limit_has_a_bar(visit: Visit) -> None:
    """Heat of contact and cable and voltage each have a bar that says what it is at and what is allowed."""
    bars = opened(visit).locator("jw-bars [data-bar]")
    core_says = core()

    assert bars.evaluate_all("(all) => all.map((one) => one.dataset.bar)") == ["contact", "cable", "voltage"]
    limits = {limit["id"]: limit for limit in core_says["limits"]}
    for bar, name in zip(bars.all(), ("contact", "cable", "voltage"), strict=True):
        expect(bar).to_contain_text(f"{expected.decibels(limits[name]['margin_db'])} dB")
        filled, whole = bar.evaluate(
            "(one) => ['i', '.bar'].map((part) => one.querySelector(part).getBoundingClientRect().width)"
        )
        share = core_says["power_w"] / limits[name]["allowed_w"]
        assert filled / whole == pytest.approx(LIMIT_AT * share, abs=0.01)
    expect(bars.first).to_contain_text(f"of {core_says['allowed_temperature_c']:.0f} °C")
    expect(bars.locator("h3").last).to_contain_text("V of ")


@pytest.mark.parametrize("size", [DESKTOP, TABLET], ids=["desktop", "tablet"])
def test_the_sheet_moves_nothing(visit: Visit, size: dict) -> None:
    """What stands under the sheet stays where it was."""
    page = settled(visit(**size))
    where = """() => readers.everywhere('jw-matrix, jw-question').map((one) => one.getBoundingClientRect())
      .map(({x, y, width}) => [x, y, width])"""
    before = page.evaluate(where)

    page.evaluate("() => (location.hash = 'family=uhf&band=20m')")
    drawn(page)

    assert page.evaluate(where) == before


def test_working_begins_with_the_binding_limit(visit: Visit) -> None:
    """All limits stand with their margins and sentences; the binding one is first and says so."""
    limits = opened(visit).locator("jw-limit")
    core_says = core()["limits"]

    expect(limits).to_have_count(len(core_says))
    expect(limits.first.locator(".binds")).to_have_text("limits")
    for shown, limit in zip(limits.all(), core_says, strict=True):
        expect(shown).to_contain_text(f"{expected.decibels(limit['margin_db'])} dB")
        expect(shown).to_contain_text(limit["sentence"])


def working(visit: Visit) -> Locator:
    """The binding limit with all its steps unfolded."""
    limit = opened(visit).locator("jw-limit").first
    limit.locator("summary").first.click()
    groups = limit.locator(".group > summary")
    expect(groups.first).to_be_visible()
    for group in groups.all():
        group.click()
    expect(limit.locator("math").first).to_be_visible()
    return limit


def test_steps_show_formulas_as_mathematics(visit: Visit) -> None:
    """Every step of the cautious way to the binding limit shows its formula in MathML that takes up room."""
    steps = [step for step in core()["limits"][0]["steps"] if step["end"] != "high"]

    boxes = working(visit).locator("jw-steps > ol > li, jw-steps > div > ol > li, ol:not(details ol) > li")
    sizes = boxes.evaluate_all(
        "(all) => all.map((one) => [one.dataset.formula, one.querySelector('math').getBoundingClientRect().height])"
    )

    assert sorted(formula for formula, _ in sizes if _) == sorted(step["formula"] for step in steps)


def test_steps_are_folded_by_purpose(visit: Visit) -> None:
    """The working of a limit has a fold for each thing that steps are for, with their number."""
    limit = opened(visit).locator("jw-limit").first
    limit.locator("summary").first.click()
    steps = [step for step in core()["limits"][0]["steps"] if step["end"] != "high"]
    purposes = Counter(step["purpose"] for step in steps)

    groups = limit.locator(".group > summary")

    expect(groups).to_have_count(len(purposes))
    for purpose, count in purposes.items():
        words = purpose or "what it allows, and the margin"
        expect(groups.filter(has_text=re.compile(f"^{words}", re.I))).to_contain_text(f"{count} step")
    expect(limit.locator("math")).to_have_count(0)


def test_steps_name_sources_and_kinds(visit: Visit) -> None:
    """Every catalogue value put into a formula has its kind beside it, and the title of its text if it has one."""
    titles = {source["id"]: source["title"] for source in expected.asked("catalogue")["sources"]}
    step = next(step for step in core()["limits"][0]["steps"] if any(put_in["source"] for put_in in step["inputs"]))

    shown = working(visit).locator(f"li[data-formula='{step['formula']}']").first

    for put_in in (put_in for put_in in step["inputs"] if put_in["source"]):
        row = shown.get_by_role("row").filter(has_text=put_in["meaning"])
        expect(row).to_contain_text(put_in["kind"])
        if put_in["source"] not in ("common_practice", "memory"):
            expect(row).to_contain_text(titles[put_in["source"]])


@pytest.mark.parametrize("size", [DESKTOP, PHONE], ids=["desktop", "phone"])
def test_no_formula_is_cut_off(visit: Visit, size: dict) -> None:
    """A formula wider than the sheet scrolls in itself; nothing else of the working is wider than the sheet."""
    page = visit(LINK, **size)
    limit = drawn(page).locator("jw-limit").first
    limit.locator("summary").first.click()
    groups = limit.locator(".group > summary")
    expect(groups.first).to_be_visible()
    for group in groups.all():
        group.click()
    expect(limit.locator("math").first).to_be_visible()

    wide = page.evaluate(
        """() => {
          const scrolls = (one) => one.scrollWidth > one.clientWidth + 1;
          const body = readers.everywhere('jw-sheet').map((one) => one.shadowRoot.querySelector('.body'));
          return [body.filter(scrolls).length, readers.everywhere('.formula').filter((one) =>
            scrolls(one) && getComputedStyle(one).overflowX !== 'auto').length];
        }"""
    )

    assert wide == [0, 0]


def test_every_check_is_listed(visit: Visit) -> None:
    """Each gate stands with its sentence and whether it passed."""
    rows = unfolded(opened(visit), "Checks").locator("tr[data-gate]")
    expect(rows).to_have_count(len(core()["gates"]))

    for row, gate in zip(rows.all(), core()["gates"], strict=True):
        expect(row).to_contain_text(gate["sentence"])
        expect(row).to_contain_text("passed" if gate["passed"] else "marked")


def test_refused_cell_names_the_gate(visit: Visit) -> None:
    """The derivation of a refused cell says so, and marks the check that refuses."""
    page = visit("#family=uhf&band=3cm")
    core_says = expected.asked("cell", family="uhf", band="3cm", power_w=100)

    drawn(page)

    expect(page.locator("jw-derivation .verdict")).to_contain_text("refused")
    unfolded(page.locator("jw-derivation"), "Checks")
    expect(page.locator(f"tr[data-gate={core_says['refused_by']}]")).to_contain_text("refuses")


def test_a_missed_match_refuses(visit: Visit) -> None:
    """Where the return loss asked for is missed, the verdict shows the one there is, and the match opens its steps."""
    asked = {"family": "uhf", "band": "70cm", "power_w": 100, "return_loss_asked_db": 40}
    core_says = expected.asked("cell", **asked)
    assert core_says["refused_by"] == "match"
    page = visit("#family=uhf&band=70cm&return_loss_asked_db=40")

    derivation = drawn(page)

    loss = expected.return_loss(core_says["match"]["return_loss_db"])
    expect(derivation.locator(".verdict b")).to_contain_text(f"{loss} dB")
    expect(cell(page, "uhf", "70cm")).to_contain_text(loss)
    expect(derivation.locator("jw-match")).to_contain_text("less than asked for")
    expect(derivation.locator("jw-match math").first).to_be_visible()


def test_the_match_stands_apart_from_the_limits(visit: Visit) -> None:
    """The return loss has a section of its own with the core's sentence; its steps are a tap away."""
    match = opened(visit).locator("jw-match")

    expect(match).to_contain_text(core()["match"]["sentence"])
    match.locator("summary").first.click()

    expect(match.locator("math").first).to_be_visible()


@pytest.mark.parametrize(("more", "words"), [("", "usual one"), ("&cable=rg_58", "as given")])
def test_the_cable_counted_is_named(visit: Visit, more: str, words: str) -> None:
    """The derivation names the cable it counts and whether it was asked for."""
    asked = {"cable": "rg_58"} if more else {}
    name = expected.asked("cell", family=FAMILY, band=BAND, power_w=POWER, **asked)["cable_name"]

    facts = drawn(visit(LINK + more)).locator(".facts")

    expect(facts).to_contain_text(name)
    expect(facts).to_contain_text(words)


def test_both_losses_stand_apart(visit: Visit) -> None:
    """The computed loss, with its four causes, and the published one stand apart with the core's numbers."""
    shown = unfolded(opened(visit), "Loss of the mated pair").locator("jw-losses")
    losses = core()["losses"]

    expected_words = shown.locator("section").filter(has=shown.page.get_by_role("heading", name="Expected"))
    for words, key in (
        (expected_words.locator(".total"), "expected_db"),
        (shown.locator(".published"), "published_db"),
    ):
        assert first_number(words.inner_text()) == pytest.approx(losses[key], rel=5e-3)
    expect(shown.get_by_role("row")).to_have_count(4)


@pytest.mark.parametrize("family", ["uhf", "n", "sma", "bnc"])
def test_only_a_standard_guarantees(visit: Visit, family: str) -> None:
    """Where no standard promises a loss none is called guaranteed, and the published one has its kind beside it."""
    losses = expected.asked("cell", family=family, band=BAND, power_w=POWER)["losses"]
    assert losses["guaranteed_db"] is None

    derivation = drawn(visit(f"#family={family}&band={BAND}&power_w={POWER}"))
    shown = unfolded(derivation, "Loss of the mated pair").locator("jw-losses")

    expect(shown.locator(".kind")).to_have_text(losses["published_kind"])
    expect(shown).to_contain_text(re.compile("no standard promises it|nothing promises it"))
    guaranteed = shown.locator("section").filter(has=shown.page.get_by_role("heading", name="Guaranteed"))
    expect(guaranteed.locator(".total")).to_have_text("none stated")


def test_ratings_stand_as_evidence(visit: Visit) -> None:
    """Every rating stands with its power, its cable, the kind of its source and what it does."""
    rows = unfolded(opened(visit), "Published power ratings").locator("jw-ratings tr[data-role]")
    ratings = core()["ratings"]
    expect(rows).to_have_count(len(ratings))

    assert len(ratings) > 0
    for row, rating in zip(rows.all(), ratings, strict=True):
        expect(row).to_have_attribute("data-role", rating["role"])
        expect(row.locator(".kind")).to_have_text(rating["kind"])
        for words in (rating["cable"], rating["sentence"]):
            expect(row).to_contain_text(words)


def test_charts_draw_the_curves(visit: Visit) -> None:
    """All charts draw lines and mark the cell, and say in words what they show."""
    charts = with_charts(visit(LINK)).locator("jw-chart")

    for chart, along in zip(charts.all(), ("frequency", "power", "frequency"), strict=True):
        lines = chart.locator(".scatterlayer path.js-line")
        expect(lines).to_have_count(2)  # both ends of the ratings
        # against power, on a logarithmic axis, a limit is a straight line
        points = 10 if along == "frequency" else 2
        assert all(len(line.get_attribute("d").split("L")) >= points for line in lines.all())
        expect(chart.locator(".scatterlayer .point")).to_have_count(1)
        expect(chart.get_by_role("img", name=f"against {along}")).to_be_visible()


LEFT = """async (chart) => {
  const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
  const {figure, parentNode: place} = chart;
  for (const ms of [0, 1, 5, 20, 60]) {
    chart.figure = (colours) => figure(colours);
    await chart.updateComplete;
    if (ms) await wait(ms);
    chart.remove();
    await wait(200);
    place.append(chart);
    await wait(200);
  }
}"""
"""Has a chart drawn anew, takes it away so much later, and puts it back."""


def test_a_chart_left_while_it_is_drawn_leaves_no_error(visit: Visit) -> None:
    """A chart that goes away in the middle of being drawn throws nothing, and is drawn again once it is back."""
    chart = with_charts(visit(LINK)).locator("jw-chart").first
    expect(chart.locator(".scatterlayer .point")).to_have_count(1)

    chart.evaluate(LEFT)

    expect(chart.locator(".scatterlayer .point")).to_have_count(1)


def test_charts_show_another_limit(visit: Visit) -> None:
    """The charts of a limit that does not bind are a tap away."""
    derivation = with_charts(visit(LINK))

    derivation.get_by_role("group", name="Limit in the charts").get_by_role("button", name="Voltage").click()

    expect(derivation.get_by_role("img", name="Voltage: margin")).to_have_count(2)
    expect(derivation.locator("jw-chart .ytitle").first).to_contain_text("voltage: margin, dB")
    expect(derivation.get_by_role("img", name="Return loss")).to_have_count(1)


def test_cautions_close_the_derivation(visit: Visit) -> None:
    """The cautions of the cell stand in its derivation."""
    expect(opened(visit).locator("jw-cautions li")).to_have_text(core()["cautions"])
