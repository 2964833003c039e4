"""Numbers as people type them: read in the unit typed, asked back where they could be two, refused in one sentence."""

import expected
from playwright.sync_api import Locator, Page, expect
from reading import assert_numbers, fragment, seldom, settled
from visits import Visit

LOWER, HIGHER = "2.5", "2500"


def field(page: Page, name: str) -> Locator:
    """A field with what stands under it."""
    return page.locator(f"[name='{name}']")


def type_into(page: Page, name: str, text: str) -> Locator:
    """Types into a field and leaves it."""
    field(page, name).locator("input[type=text]").fill(text)
    page.keyboard.press("Tab")
    return field(page, name)


def test_decimal_comma_is_a_decimal_point(visit: Visit) -> None:
    """A comma stands before the decimals, and the field shows what was read."""
    page = settled(visit())

    vswr = type_into(page, "vswr", "2,5")

    assert_numbers(page, expected.numbers(vswr=2.5))
    expect(vswr.locator("#vswr")).to_have_value("2.5")
    assert fragment(page) == "vswr=2.5"


def test_number_that_could_be_two_is_asked_back(visit: Visit) -> None:
    """Nothing is computed until one of the two readings is tapped."""
    page = settled(visit())

    vswr = type_into(page, "vswr", "2,500")
    expect(vswr.get_by_role("alert")).to_have_text(f"SWR on the line is “2,500”: is that {HIGHER} or {LOWER}?")
    expect(vswr.locator("#vswr")).to_have_attribute("aria-invalid", "true")
    assert_numbers(page, expected.numbers())
    vswr.get_by_role("button", name=LOWER, exact=True).click()

    assert_numbers(page, expected.numbers(vswr=2.5))
    expect(vswr.locator("#vswr")).to_have_value(LOWER)
    expect(vswr.get_by_role("button")).to_have_count(0)


def test_readings_are_chosen_by_keys(visit: Visit) -> None:
    """Enter asks, Tab goes to the readings, and the choice leads back into the field."""
    page = settled(visit())
    vswr = field(page, "vswr")
    vswr.locator("#vswr").fill("2.500")

    page.keyboard.press("Enter")
    expect(vswr.get_by_role("button")).to_have_text([LOWER, HIGHER])
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")

    assert_numbers(page, expected.numbers(vswr=2.5))
    expect(vswr.locator("#vswr")).to_be_focused()


def test_unit_typed_is_converted_and_said(visit: Visit) -> None:
    """Degrees Fahrenheit become the field's Celsius, and the field tells so until another value comes."""
    page = settled(visit())

    air = type_into(page, "ambient_temperature_c", "104 F")

    assert_numbers(page, expected.numbers(ambient_temperature_c=40))
    expect(air.locator("#ambient_temperature_c")).to_have_value("40")
    expect(air.locator("#under")).to_have_text("104 °F is 40 °C.")
    type_into(page, "ambient_temperature_c", "20")
    expect(air.locator("#under")).to_have_text("−60 to 80 °C")


def test_unit_of_another_kind_is_refused(visit: Visit) -> None:
    """The sentence names the label, what was typed and what is allowed; the numbers stay."""
    page = settled(visit())

    air = type_into(page, "ambient_temperature_c", "20 ft")

    said = "Air temperature is “20 ft”; allowed: −60 to 80 °C, also in K, °F."
    expect(air.get_by_role("alert")).to_have_text(said)
    expect(air.locator("#ambient_temperature_c")).to_have_accessible_description(said)
    assert_numbers(page, expected.numbers())


def test_emptied_field_says_so_until_it_is_filled(visit: Visit) -> None:
    """An emptied field complains of that, and no longer once it has a number."""
    page = settled(visit())

    vswr = type_into(page, "vswr", "")
    expect(vswr.get_by_role("alert")).to_have_text("SWR on the line is empty; allowed: 1 to 20, without a unit.")
    type_into(page, "vswr", "3")

    assert_numbers(page, expected.numbers(vswr=3))
    expect(vswr.get_by_role("alert")).to_have_count(0)


def test_arrow_keys_step_within_the_range(visit: Visit) -> None:
    """Up and down change the number by a step, to the end of its range; its value is there for a screen reader."""
    page = settled(visit())
    vswr = page.get_by_role("spinbutton", name="SWR on the line")
    vswr.fill("1,1")

    page.keyboard.press("ArrowUp")
    expect(vswr).to_have_value("1.2")
    expect(vswr).to_have_attribute("aria-valuenow", "1.2")
    for _ in range(3):
        page.keyboard.press("ArrowDown")

    expect(vswr).to_have_value("1")
    assert_numbers(page, expected.numbers(vswr=1))


def test_list_takes_units_and_asks_what_a_comma_is(visit: Visit) -> None:
    """Power levels can be in kilowatts; a comma between two numbers could be before decimals."""
    page = settled(visit())
    seldom(page, "Bands and powers")

    powers = type_into(page, "powers_w", "receive 5 W 1,5kW")
    expect(powers.get_by_role("button")).to_have_count(2)
    powers.get_by_role("button", name="0 W and 5 W and 1.5 kW", exact=True).click()

    expect(powers.locator("#powers_w")).to_have_value("receive  5  1500")
    expect(powers.locator("#under")).to_have_text("1.5 kW is 1500 W.")


def test_pasted_rows_are_asked_back(visit: Visit) -> None:
    """Rows that could be in MHz with decimals or with thousands are taken after one tap."""
    page = visit("#view=line")
    page.locator("jw-line-load #way").select_option("table")
    load = page.locator("jw-line-load")

    load.locator("#rows").fill("14.175 40 -5\n14.225 60 10")
    page.keyboard.press("Tab")
    expect(load.get_by_role("alert")).to_contain_text("14.175  40  -5 or 14175  40  -5")
    load.get_by_role("button", name="14.175 40 -5").click()

    expect(load.locator("#rows")).to_have_value("14.1750  40  -5\n14.2250  60  10")
    expect(load.get_by_role("alert")).to_have_count(0)


def test_pack_is_not_made_of_an_open_question(visit: Visit) -> None:
    """The form of a pack asks back too, and can't be sent before."""
    page = visit("#view=packs")
    form = page.locator("jw-pack-form")
    form.locator("summary").first.click()
    form.get_by_label("What to add").select_option("House limit")
    form.get_by_role("button", name="Add", exact=True).click()
    limit = form.locator("[data-entry^='house_limits/']")
    power = limit.get_by_label("At most, in PEP")
    asked_back = "is that 1.5 W or 1500 W?"

    power.fill("1.500")
    page.keyboard.press("Tab")
    expect(limit.get_by_role("alert").first).to_contain_text(asked_back)
    form.get_by_role("button", name="Use this pack").click()
    expect(form.locator(".faults")).to_contain_text(asked_back)
    limit.get_by_role("button", name="1500 W").click()

    expect(power).to_have_value("1500")
    form.get_by_role("button", name="Use this pack").click()
    expect(form.locator(".faults")).not_to_contain_text(asked_back)
    power.fill("0,1 kW")
    page.keyboard.press("Tab")
    expect(power).to_have_value("100")
    expect(limit).to_contain_text("0.1 kW is 100 W.")
