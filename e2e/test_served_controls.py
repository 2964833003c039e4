"""A control recolours the matrix with the core's own numbers, and the address follows."""

from collections.abc import Callable
from typing import Any

import expected
import pytest
from playwright.sync_api import Page, Route, expect
from reading import assert_numbers, fragment, key_steps, more, seldom, settled
from visits import TABLET, Visit

FINGER_PX = 44


def type_into(name: str, text: str) -> Callable[[Page], None]:
    """Types into a field and leaves it."""

    def act(page: Page) -> None:
        page.locator(f"#{name}").fill(text)
        page.keyboard.press("Tab")

    return act


def choose(name: str, value: str) -> Callable[[Page], Any]:
    """Chooses from a list."""
    return lambda page: page.locator(f"#{name}").select_option(value)


def unfold(group: str, act: Callable[[Page], Any]) -> Callable[[Page], None]:
    """Acts on a control of a group, which has to be opened first."""

    def acted(page: Page) -> None:
        seldom(page, group)
        act(page)

    return acted


CHANGES = {
    "vswr": (type_into("vswr", "3"), {"vswr": 3}, "vswr=3"),
    "mode": (choose("mode", "fm"), {"mode": "fm"}, "mode=fm"),
    "air": (type_into("ambient_temperature_c", "60"), {"ambient_temperature_c": 60}, "ambient_temperature_c=60"),
    "exposure": (choose("exposure", "immersed"), {"exposure": "immersed"}, "exposure=immersed"),
    "condition": (choose("condition", "corroded"), {"condition": "corroded"}, "condition=corroded"),
    "altitude": (unfold("Site", type_into("altitude_m", "9000")), {"altitude_m": 9000}, "altitude_m=9000"),
    "region": (unfold("Bands and powers", choose("region", "2")), {"region": 2}, "region=2"),
    "share": (
        unfold("Keying", choose("keying", "share")),
        {"transmit_share": 0.5},
        "transmit_share=0.5",
    ),
    "cable": (unfold("Line and cable", choose("cable", "rg_58")), {"cable": "rg_58"}, "cable=rg_58"),
    "impedance": (
        unfold("Line and cable", type_into("system_impedance_ohm", "75")),
        {"system_impedance_ohm": 75},
        "system_impedance_ohm=75",
    ),
    "resistance": (
        unfold("Wear", type_into("added_resistance_ohm", "0.01")),
        {"added_resistance_ohm": 0.01},
        "added_resistance_ohm=0.01",
    ),
}


@pytest.mark.parametrize(("act", "scenario", "link"), CHANGES.values(), ids=CHANGES)
def test_change_shows_the_cores_numbers(
    visit: Visit, act: Callable[[Page], Any], scenario: dict[str, Any], link: str
) -> None:
    """A changed control brings the numbers that the core computes for it, and its field into the address."""
    page = settled(visit())

    act(page)

    assert_numbers(page, expected.numbers(**scenario))
    assert fragment(page) == link


@pytest.mark.parametrize("power", [0, 5, 1500])
def test_power_choice_shows_another_level(visit: Visit, power: int) -> None:
    """The chosen power level is the one whose margins the cells print."""
    page = settled(visit())

    page.get_by_role("group", name="Power shown").locator(f"label:has([value='{power}'])").click()

    assert_numbers(page, expected.numbers(power))
    assert fragment(page) == f"power_w={power}"


def test_added_band_gets_a_column(visit: Visit) -> None:
    """A band taken up stands in its place among the columns, with the core's numbers."""
    page = settled(visit())

    seldom(page, "Bands and powers")
    page.get_by_role("button", name="60 m", exact=True).click()

    bands = ["160m", "80m", "60m", *expected.FIRST_BANDS[2:]]
    assert_numbers(page, expected.numbers(bands=bands))
    assert fragment(page) == f"bands={','.join(bands)}"


def test_dropped_band_loses_its_column(visit: Visit) -> None:
    """A band put away leaves the other columns as they were."""
    page = settled(visit())

    seldom(page, "Bands and powers")
    page.get_by_role("button", name="3 cm", exact=True).click()

    assert_numbers(page, expected.numbers(bands=expected.FIRST_BANDS[:-1]))


def test_picked_families_are_the_rows(visit: Visit) -> None:
    """Families picked one after the other are the only rows, in the catalogue's order, and the address holds them."""
    page = settled(visit())

    seldom(page, "Connectors")
    for name in ("N", "BNC"):
        page.get_by_role("group", name="Connectors").get_by_role("button", name=name, exact=True).click()

    assert_numbers(page, expected.numbers(families=["bnc", "n"]))
    assert fragment(page) == "families=bnc,n"


def test_link_shows_its_families_pressed(visit: Visit) -> None:
    """A link that picks families shows them as buttons that are down, and puts away works by keyboard."""
    page = visit("#families=bnc,n")
    seldom(page, "Connectors")
    group = page.get_by_role("group", name="Connectors")
    expect(group.get_by_role("button", pressed=True)).to_have_text(["BNC", "N"])

    group.get_by_role("button", name="BNC", exact=True).press("Space")

    assert_numbers(page, expected.numbers(families=["n"]))


def test_no_family_is_every_family(visit: Visit) -> None:
    """Putting the last picked family away brings all of them back."""
    page = visit("#families=n")
    seldom(page, "Connectors")
    group = page.get_by_role("group", name="Connectors")

    group.get_by_role("button", name="N", exact=True).click()

    assert_numbers(page, expected.numbers())
    expect(group.get_by_role("button", name="all")).to_have_attribute("aria-pressed", "true")
    assert fragment(page) == ""


def test_finger_hits_every_family_and_band(visit: Visit) -> None:
    """The buttons that pick bands and families are at least 44 px wide and high on a tablet."""
    page = settled(visit(**TABLET))

    page.get_by_role("button", name="More settings").tap()
    for name in ("Bands and powers", "Connectors"):
        page.get_by_role("button", name=name).tap()
        boxes = [one.bounding_box() for one in page.locator("jw-toggles-field button").all()]
        assert len(boxes) > 10
        assert min(min(box["width"], box["height"]) for box in boxes) >= FINGER_PX


def test_bands_of_another_region_stay_chosen(visit: Visit) -> None:
    """A band that only another Region has stays chosen while this one's bands change."""
    page = settled(visit("#bands=4m,2m&region=2"))

    seldom(page, "Bands and powers")
    page.get_by_role("button", name="6 m", exact=True).click()
    page.locator("#region").select_option("1")

    assert_numbers(page, expected.numbers(bands=["6m", "4m", "2m"]))


def test_spot_frequency_gets_a_column(visit: Visit) -> None:
    """A spot frequency typed in megahertz is a column after the bands; its point parts no thousands."""
    page = settled(visit())

    unfold("Bands and powers", type_into("frequencies_hz", "50.313"))(page)

    assert_numbers(page, expected.numbers(frequencies_hz=[50.313e6]))


def test_power_levels_are_the_users(visit: Visit) -> None:
    """Power levels typed in any order are those that can be shown, lowest first."""
    page = settled(visit())

    unfold("Bands and powers", type_into("powers_w", "1000 10 100"))(page)

    assert_numbers(page, expected.numbers(powers_w=[10, 100, 1000]))
    choices = page.get_by_role("group", name="Power shown").locator("label")
    expect(choices).to_have_text(["10 W", "100 W", "1 kW"])


def test_changed_cells_change_colour(visit: Visit) -> None:
    """A cell whose margin falls below the limit takes the colour of that step of the key."""
    page = settled(visit())
    steps = key_steps(page)
    before, after = (expected.margins(expected.matrix_of(vswr=vswr)) for vswr in (1.5, 20))
    place = next(i for i, (old, new) in enumerate(zip(before, after, strict=True)) if old and new and old > 0 > new)

    type_into("vswr", "20")(page)
    assert_numbers(page, expected.numbers(vswr=20))

    step = next(step for step in steps if step.low <= after[place] < step.high)
    assert page.evaluate("(place) => readers.cells()[place].ground", place) == step.ground


def test_dragging_recolours_before_the_hand_lets_go(visit: Visit) -> None:
    """While the slider is still held, the cells show the numbers of where it stands."""
    page = settled(visit())
    slider = page.get_by_role("slider", name="SWR on the line, slider")

    hold(page, slider.bounding_box(), 0.2, 0.5)
    vswr = float(slider.get_attribute("aria-valuetext"))

    assert vswr > 2
    assert_numbers(page, expected.numbers(vswr=vswr))
    assert fragment(page) == ""
    page.mouse.up()


def test_letting_go_of_the_slider_settles_the_address(visit: Visit) -> None:
    """The address takes the value on which the slider is let go, as one step of the history."""
    page = settled(visit())
    length = page.evaluate("() => history.length")
    slider = page.get_by_role("slider", name="SWR on the line, slider")

    hold(page, slider.bounding_box(), 0.2, 0.6)
    page.mouse.up()

    assert fragment(page) == f"vswr={slider.get_attribute('aria-valuetext')}"
    assert page.evaluate("() => history.length") == length + 1


def test_last_answer_wins(visit: Visit) -> None:
    """When the answer to an early position of the slider is late, the last position still has the last word."""
    page = settled(visit())
    late: list[Route] = []
    page.route("**/api/v1/matrix", lambda route: late.append(route), times=1)
    slider = page.get_by_role("slider", name="SWR on the line, slider")

    hold(page, slider.bounding_box(), 0.2, 0.9)
    page.mouse.up()
    late[0].continue_()

    vswr = float(slider.get_attribute("aria-valuetext"))
    assert vswr > 10
    assert_numbers(page, expected.numbers(vswr=vswr))


def test_arrow_key_moves_the_slider(visit: Visit) -> None:
    """The slider works by keyboard, and each step of it is another margin."""
    page = settled(visit())
    slider = page.get_by_role("slider", name="Air temperature, slider")

    slider.focus()
    for _ in range(30):
        page.keyboard.press("ArrowRight")

    degrees = float(slider.get_attribute("aria-valuetext"))
    assert degrees > 40
    assert_numbers(page, expected.numbers(ambient_temperature_c=degrees))


def test_largest_power_shows_what_still_holds(visit: Visit) -> None:
    """On request the cells print the largest power that holds, never more than the core allows."""
    page = settled(visit())
    allowed = [watts for row in expected.matrix_of()["largest_power_w"] for watts in row]

    page.get_by_text("largest power", exact=True).click()
    shown = page.evaluate("() => readers.cells().map(({text}) => text)")

    for text, watts in zip(shown, allowed, strict=True):
        if watts is not None and text[0].isdigit():
            printed = float(text.removesuffix("k")) * (1000 if text.endswith("k") else 1)
            assert 0.9 * watts <= printed <= watts


def test_an_example_is_a_whole_station(visit: Visit) -> None:
    """An invented station sets all its conditions with one tap, and the core's numbers follow."""
    page = settled(visit())

    page.get_by_role("button", name="Station", exact=True).click()
    page.get_by_role("button", name="2 m / 70 cm").click()
    expect(page.locator("#mode")).to_have_value("fm")

    scenario = {"mode": "fm", "vibration": "vehicle", "exposure": "sheltered", "ambient_temperature_c": 50}
    bands = ["6m", "2m", "70cm", "23cm"]
    assert_numbers(page, expected.numbers(50, bands=bands, matings_per_year=50, **scenario))


def test_reset_goes_back_to_the_first_visit(visit: Visit) -> None:
    """Reset undoes every condition and empties the address."""
    page = settled(visit("#mode=fm&vswr=7&exposure=exposed"))

    more(page).get_by_role("button", name="Reset").click()

    assert_numbers(page, expected.numbers())
    assert fragment(page) == ""


def hold(page: Page, box: dict[str, float], start: float, end: float) -> None:
    """Press on a slider at one share of its length and move in steps to another, without letting go."""
    across = box["y"] + box["height"] / 2
    page.mouse.move(box["x"] + start * box["width"], across)
    page.mouse.down()
    page.mouse.move(box["x"] + end * box["width"], across, steps=12)
