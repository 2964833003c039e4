"""The choose view: families that pass, why others do not, plans, relaxations, and ways to take along."""

import csv
import io
import re
from pathlib import Path
from typing import Any
from unicodedata import normalize

import expected
import pytest
from playwright.sync_api import Locator, Page, expect
from pypdf import PdfReader
from reading import drawn, fragment, settled, share
from test_served_accessibility import violations, with_axe
from visits import PHONE, SIZES, WIDE, Visit

HARD = {"power_w": 1500, "mode": "fm", "exposure": "exposed", "bands": ["20m", "2m"], "port": "n"}
HARD_LINK = "#view=choose&power_w=1500&mode=fm&exposure=exposed&bands=20m,2m&port=n"
REFUSED = "status of 400"
FINGER_PX = 43.5


def answer(**demands: Any) -> Any:
    """What the core says of a joint."""
    return expected.asked("choose", **demands)


def opened(visit: Visit, link: str = "#view=choose", **options: Any) -> Page:
    """The choose view, answered."""
    return settled(visit(link, **options))


def field(page: Page, name: str) -> Locator:
    """A field of the form."""
    return page.locator(f"jw-choose-form [name='choose.{name}']")


def row(page: Page, family: str) -> Locator:
    """The row of a family."""
    return page.locator(f"jw-choose-table tr[data-family='{family}']")


def assert_shows(page: Page, result: Any) -> None:
    """The verdict, the order of the families, and each margin come to be those of the core."""
    expect(page.locator("#verdict")).to_have_text(result["verdict"])
    for panel, passes in (("passing", True), ("missed", False)):
        wanted = [one for one in result["choices"] if one["passes"] == passes]
        rows = page.locator(f"#{panel} tbody tr")
        expect(rows.locator(".chip")).to_have_text([margin(one) for one in wanted])
        for at, one in enumerate(wanted):
            expect(rows.nth(at)).to_have_attribute("data-family", one["family"])


def margin(choice: Any) -> str:
    """A family's margin as it is printed, or the return loss in its place."""
    if choice["margin_db"] is not None:
        return f"{expected.decibels(choice['margin_db'])} dB"
    refusal = next((one["demand"] for one in choice["rejections"] if one["hard"]), "match")
    return expected.return_loss(choice["return_loss_db"]) if refusal == "match" else "refused"


def unfold(page: Page, group: str) -> None:
    """Open a group of the form where it is folded."""
    page.locator(f"details[data-group={group}]:not([open]) summary").click()


def test_first_visit_shows_the_cores_answer(visit: Visit) -> None:
    """A first visit shows the core's answer to its own defaults, its rule, and what is counted on."""
    page = opened(visit)

    result = answer()

    assert_shows(page, result)
    expect(page.locator("#passing .legend")).to_contain_text(result["rule"])
    expect(page.locator("jw-choose-verdict .place")).to_have_text(result["place"])


def test_row_tells_what_the_core_says(visit: Visit) -> None:
    """A family's row holds rank, reasons, binding limit, coupling and wear of the core."""
    page = opened(visit)
    best = answer()["choices"][0]

    shown = row(page, best["family"])

    expect(shown.locator(".rank")).to_contain_text(str(best["rank"]))
    expect(shown).to_contain_text(f"{best['binding']} on {best['binding_column']}")
    expect(shown).to_contain_text(f"up to {expected.decibels(best['margin_high_db'])} dB")
    expect(shown).to_contain_text(best["coupling"])
    expect(shown).to_contain_text(f"{best['wear']['needed']:g} matings of {best['wear']['good_for']:g}")
    expect(shown.locator(".why")).to_have_text(re.compile("; ".join(best["reasons"]), re.IGNORECASE))


def test_changed_demands_change_the_answer(visit: Visit) -> None:
    """A new power, another band and a mast are computed by the core."""
    page = opened(visit)

    field(page, "power_w").locator("input").fill("800")
    page.keyboard.press("Tab")
    field(page, "bands").get_by_role("button", name="2 m", exact=True).click()
    field(page, "installation").locator("select").select_option("mast")

    assert_shows(page, answer(power_w=800, bands=["20m", "2m"], installation="mast"))


ORDERS = [  # a column, what it orders by, and whether the largest come first at the first tap
    ("Margin", "margin_db", True),
    ("Loss", "loss_db", False),
    ("Size", "diameter_m", False),
]


@pytest.mark.parametrize(("head", "field_name", "most_first"), ORDERS, ids=[head for head, _, _ in ORDERS])
def test_tap_on_a_column_orders_by_it(visit: Visit, head: str, field_name: str, most_first: bool) -> None:
    """The first tap brings the best in a column to the top, the next the worst, and Rank goes back; ranks stay."""
    page = opened(visit, "#view=choose&bands=2m&cable=rg_58")
    choices = [one for one in answer(bands=["2m"], cable="rg_58")["choices"] if one["passes"]]
    rows = page.locator("#passing tbody tr")
    column = page.locator("#passing thead th").filter(has_text=head)

    def assert_ordered(largest_first: bool) -> None:
        wanted = sorted(choices, key=lambda one: one[field_name], reverse=largest_first)
        expect(column).to_have_attribute("aria-sort", "descending" if largest_first else "ascending")
        edge = [one["family"] for one in wanted if one[field_name] == wanted[0][field_name]]
        assert rows.first.get_attribute("data-family") in edge
        shown = [row.get_attribute("data-family") for row in rows.all()]
        by_family = {one["family"]: one[field_name] for one in choices}
        assert [by_family[family] for family in shown] == [one[field_name] for one in wanted]

    column.get_by_role("button").click()
    assert_ordered(most_first)
    column.get_by_role("button").click()
    assert_ordered(not most_first)
    page.locator("#passing thead").get_by_role("button", name="Rank").click()
    expect(column).to_have_attribute("aria-sort", "none")
    assert_shows(page, answer(bands=["2m"], cable="rg_58"))


def test_column_is_tapped_on_a_phone(visit: Visit) -> None:
    """Where each family is a card, the columns stand above them as buttons."""
    page = opened(visit, "#view=choose&bands=2m&cable=rg_58", **PHONE)

    page.locator("#passing thead").get_by_role("button", name="Size").click()

    choices = [one for one in answer(bands=["2m"], cable="rg_58")["choices"] if one["passes"]]
    smallest = min(one["diameter_m"] for one in choices)
    first = page.locator("#passing tbody tr").first.get_attribute("data-family")
    assert next(one["diameter_m"] for one in choices if one["family"] == first) == smallest


def test_last_band_can_be_exchanged(visit: Visit) -> None:
    """With the last band put away a band is asked for, in plain words and with nothing refused; another is answered."""
    page = opened(visit)
    bands = field(page, "bands")

    bands.get_by_role("button", name="20 m", exact=True).click()

    expect(bands.get_by_role("alert")).to_have_text("Pick a band, or type a spot frequency.")
    expect(page.locator("jw-choose-verdict .outdated")).to_contain_text("Pick a band")
    bands.get_by_role("button", name="2 m", exact=True).click()
    assert_shows(page, answer(bands=["2m"]))
    expect(page.locator("jw-choose-verdict .outdated")).to_have_count(0)


def test_place_sets_weather_shaking_and_sealing(visit: Visit) -> None:
    """One choice sets the three fields, which show it; each is changed after it, and a link keeps both."""
    page = opened(visit, "#view=choose&bands=2m&cable=rg_213")

    field(page, "installation").locator("select").select_option("mast_taped")

    expect(field(page, "exposure").locator("select")).to_have_value("exposed")
    expect(field(page, "vibration").locator("select")).to_have_value("vehicle")
    asked = {"bands": ["2m"], "cable": "rg_213"}
    result = answer(**asked, installation="mast_taped")
    assert_shows(page, result)
    expect(page.locator("jw-choose-verdict .place")).to_have_text(result["place"])

    field(page, "vibration").locator("select").select_option("none")
    changed = answer(**asked, exposure="exposed", added_sealing=True)
    assert_shows(page, changed)
    again = opened(visit, f"#{fragment(page)}")
    assert_shows(again, changed)
    expect(again.locator("jw-choose-verdict .place")).to_have_text(changed["place"])


def test_direct_current_is_a_demand(visit: Visit) -> None:
    """A current brings its notes; too much of it is named, and one tap takes what the core offers."""
    page = opened(visit, "#view=choose&use=receive&bands=2m&cable=rg_174")
    asked = {"use": "receive", "bands": ["2m"], "cable": "rg_174"}

    field(page, "dc_current_a").locator("input").fill("10")
    page.keyboard.press("Tab")

    result = answer(**asked, dc_current_a=10)
    assert_shows(page, result)
    expect(page.locator("jw-choose-verdict .note")).to_have_text(result["notes"])
    page.locator("li[data-demand='direct current']").get_by_role("button").click()
    expect(page.locator("#passing tbody tr").first).to_be_visible()


def test_every_missed_demand_is_said(visit: Visit) -> None:
    """Each rejected family lists the core's sentence of each demand it misses."""
    page = opened(visit, HARD_LINK)

    for choice in answer(**HARD)["choices"]:
        said = row(page, choice["family"]).locator("li")
        expect(said).to_have_text([f"{one['name']}. {one['sentence']}" for one in choice["rejections"]])


def test_plan_comes_first(visit: Visit) -> None:
    """A plan is told about before everything else, leads its table, and is marked there."""
    page = opened(visit)

    field(page, "plan").locator("select").select_option("bnc")

    result = answer(plan="bnc")
    assert_shows(page, result)
    rank = result["choices"][0]["rank"]
    expect(page.locator("#plan")).to_contain_text(f"Your plan, BNC, meets every demand: rank {rank}")
    expect(page.locator("#passing tbody tr").first).to_contain_text("your plan")


def test_failing_plan_says_what_it_misses(visit: Visit) -> None:
    """Of a plan that fails, every missed demand stands under the verdict."""
    page = opened(visit, f"{HARD_LINK}&plan=uhf")

    misses = answer(**HARD, plan="uhf")["choices"][0]["rejections"]

    expect(page.locator("#plan")).to_have_text(f"Your plan, UHF, misses {len(misses)} demands.")
    said = page.locator(".misses li")
    expect(said).to_have_text([f"{one['name']}: {one['sentence']}" for one in misses])


EASED = [  # demands that nothing meets, and the demand whose button is taken
    (HARD, "power"),
    (HARD, "port"),
    ({"largest_diameter_m": 0.001}, "room"),
    ({"matings_per_year": 5000, "service_life_years": 1}, "wear"),
    ({"return_loss_asked_db": 40, "bands": ["3cm"], "use": "receive"}, "match"),
    ({"largest_diameter_m": 0.012, "exposure": "exposed"}, "weather"),
    ({"bands": ["20m", "3cm"], "cable": "corrugated_7_8", "power_w": 200}, "frequency"),
    ({"cable": "corrugated_7_8", "largest_diameter_m": 0.012}, "cable"),
]


@pytest.mark.parametrize(("demands", "named"), EASED, ids=[named for _, named in EASED])
def test_a_tap_on_a_relaxation_makes_a_family_pass(visit: Visit, demands: dict[str, Any], named: str) -> None:
    """Where nothing passes, one tap puts the core's own value into the form, and the answer is the core's with it."""
    values = {name: ",".join(value) if isinstance(value, list) else value for name, value in demands.items()}
    page = opened(visit, "#view=choose&" + "&".join(f"{name}={value}" for name, value in values.items()))
    relaxation = next(one for one in answer(**demands)["relaxations"] if one["demand"] == named)
    offer = page.locator(f"li[data-demand='{named}']")
    expect(offer).to_contain_text(relaxation["sentence"])

    offer.get_by_role("button").click()

    expect(page.locator("#passing tbody tr").first).to_be_visible()
    assert_shows(page, answer(**(demands | {relaxation["field"]: relaxation["value"]})))


def test_relaxation_that_no_field_makes_has_no_button(visit: Visit) -> None:
    """A relaxation that no single field can bring about is said and not offered as a button."""
    page = opened(visit, "#view=choose&bands=3cm&cable=corrugated_7_8&power_w=200")

    expect(page.locator("li[data-demand=frequency]")).to_contain_text("With no frequency above 5.46 GHz")
    expect(page.locator("li[data-demand=frequency] button")).to_have_count(0)


def test_refusal_stands_at_its_field(visit: Visit) -> None:
    """A power the core refuses is named at its field; the last answer stays and is marked as out of date."""
    page = opened(visit, forgiven=REFUSED)

    field(page, "power_w").locator("input").fill("-5")
    page.keyboard.press("Tab")

    said = "Power, peak envelope: −5 W; allowed: 0 to 100 kW."
    expect(field(page, "power_w").get_by_role("alert")).to_have_text(said)
    expect(page.locator("jw-choose-verdict .outdated")).to_contain_text("Out of date")
    expect(page.locator("#verdict")).to_have_text(answer()["verdict"])


def test_refused_field_is_unfolded(visit: Visit) -> None:
    """A link with a bad altitude opens the group its field is in."""
    page = visit("#view=choose&altitude_m=90000", forgiven=REFUSED, **PHONE)

    expect(field(page, "altitude_m").get_by_role("alert")).to_be_visible()


def test_link_restores_the_demands(visit: Visit) -> None:
    """The address of changed demands brings the same answer elsewhere, and back undoes a change."""
    page = opened(visit)
    field(page, "plan").locator("select").select_option("hn")
    field(page, "vswr").locator("input[type=text]").fill("3")
    page.keyboard.press("Tab")
    assert_shows(page, answer(plan="hn", vswr=3))

    assert_shows(opened(visit, f"#{fragment(page)}"), answer(plan="hn", vswr=3))
    page.go_back()
    assert_shows(page, answer(plan="hn"))


def test_unknown_part_of_a_link_is_named(visit: Visit) -> None:
    """What the view does not know in a link is named; the rest is restored."""
    page = opened(visit, "#view=choose&colour=blue&power_w=400")

    expect(page.get_by_role("status").filter(has_text="colour=blue")).to_be_visible()
    assert_shows(page, answer(power_w=400))


def test_family_opens_its_binding_cell(visit: Visit) -> None:
    """A tap on a family opens the matrix's derivation of the cell that binds, with the same margin."""
    page = opened(visit, "#view=choose&power_w=250&installation=mast&bands=20m,2m&cable=rg_213")
    family = next(
        one for one in answer(power_w=250, installation="mast", bands=["20m", "2m"], cable="rg_213")["choices"]
    )

    row(page, family["family"]).get_by_role("link").click()

    derivation = drawn(page)
    expect(
        page.get_by_role("heading", name=f"{family['name']} on {family['binding_column']}", exact=True)
    ).to_be_visible()
    expect(derivation.locator("#verdict")).to_contain_text(f"{family['margin_db']:.1f}")
    page.go_back()
    expect(page.locator("#verdict")).to_contain_text("Fit ")


def test_switch_brings_the_demands_back(visit: Visit) -> None:
    """After a derivation was opened from a family, the view's switch brings the same demands back."""
    page = opened(visit, "#view=choose&power_w=250")
    row(page, "n").get_by_role("link").click()
    drawn(page)
    page.keyboard.press("Escape")

    page.get_by_role("button", name="Choose", exact=True).click()

    assert_shows(page, answer(power_w=250))


def test_csv_holds_every_family(visit: Visit) -> None:
    """The CSV file has a line for each family with the core's numbers."""
    page = opened(visit, HARD_LINK)
    with page.expect_download() as download:
        share(page).get_by_role("button", name="CSV").click()

    lines = list(csv.DictReader(io.StringIO(Path(download.value.path()).read_bytes().decode())))

    choices = answer(**HARD)["choices"]
    assert [line["family"] for line in lines] == [one["name"] for one in choices]
    margins = [float(line["margin_db"]) if line["margin_db"] else None for line in lines]
    assert margins == [one["margin_db"] for one in choices]
    assert [line["missed"] for line in lines] == [" ".join(r["sentence"] for r in one["rejections"]) for one in choices]


def test_paper_holds_verdict_demands_and_families(visit: Visit) -> None:
    """Printed, the view tells the demands, the verdict, every family and the cautions."""
    page = opened(visit, HARD_LINK)
    result = answer(**HARD)

    sheets = PdfReader(io.BytesIO(page.pdf(format="A4", landscape=True))).pages
    text = " ".join(normalize("NFKC", " ".join(one.extract_text() for one in sheets)).split())

    assert result["verdict"] in text
    assert "Power, peak envelope: 1.5 kW" in text
    assert "Bands it must carry: 20 m, 2 m" in text
    assert all(normalize("NFKC", one["name"]) in text for one in result["choices"])
    assert " ".join(result["cautions"][-1].split()) in text


def test_works_by_keyboard_alone(visit: Visit) -> None:
    """The plan is chosen, a band added and a family opened without a pointer."""
    page = opened(visit)
    field(page, "plan").locator("select").focus()

    page.keyboard.type("BNC")
    page.keyboard.press("Tab")
    expect(page.locator("#plan")).to_contain_text("Your plan, BNC")
    field(page, "bands").get_by_role("button", name="2 m", exact=True).focus()
    page.keyboard.press("Enter")
    assert_shows(page, answer(plan="bnc", bands=["20m", "2m"]))
    row(page, "n").get_by_role("link").focus()
    page.keyboard.press("Enter")

    drawn(page)


@pytest.mark.parametrize("size", [*SIZES, "wide"])
def test_nothing_scrolls_sideways(visit: Visit, size: str) -> None:
    """The view fits its screen, where nothing passes as well."""
    page = opened(visit, HARD_LINK, **SIZES.get(size, WIDE))

    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")


def test_every_control_can_be_touched(visit: Visit) -> None:
    """On a phone every button, field and family is at least 44 pixels high, and every button as wide."""
    page = opened(visit, HARD_LINK, **PHONE)
    for group in ("sits", "used", "meets"):
        unfold(page, group)

    small = page.evaluate(
        """(least) => readers.everywhere('button, select, summary, input[type=number], tbody a')
          .filter((one) => one.checkVisibility())
          .filter((one) => Math.min(one.getBoundingClientRect().height, one.getBoundingClientRect().width) < least)
          .map((one) => one.id || one.textContent)""",
        FINGER_PX,
    )
    assert small == []


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("link", ["#view=choose&plan=n", HARD_LINK], ids=["passing", "nothing passes"])
def test_rules_find_nothing(visit: Visit, link: str, size: str, theme: str) -> None:
    """No accessibility rule is broken, whether families pass or none does."""
    page = opened(visit, link, prepare=with_axe, color_scheme=theme, reduced_motion="reduce", **SIZES[size])

    assert violations(page) == []
