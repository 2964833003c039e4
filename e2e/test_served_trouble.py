"""Bad input, a lost server and hostile links leave the page whole, with a plain sentence."""

import re
import socket
from urllib.parse import quote

import expected
import pytest
from playwright.sync_api import Page, expect
from reading import assert_numbers, seldom, settled, sheet
from visits import Visit, served

MARKUP = "<img src=x onerror=alert(1)><script>alert(2)</script>"
SHORT_MARKUP = "<img src=x onerror=alert(1)>"
"""As long as a name may be that the page takes from a link."""

LOST = "ERR_CONNECTION_REFUSED|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE"


def type_vswr(page: Page, text: str) -> None:
    """Type a VSWR and leave the field."""
    page.locator("#vswr").fill(text)
    page.keyboard.press("Tab")


def test_refused_number_marks_its_field(visit: Visit) -> None:
    """A VSWR below one marks the field with the core's own sentence."""
    page = settled(visit(forgiven="status of 400"))

    type_vswr(page, "0.5")

    field = page.locator("jw-number-field[name=vswr]")
    expect(field.get_by_role("alert")).to_have_text("SWR on the line: 0.5; allowed: 1 to 20.")
    expect(field.locator("#vswr")).to_have_attribute("aria-invalid", "true")
    expect(field.locator("#vswr")).to_have_accessible_description("SWR on the line: 0.5; allowed: 1 to 20.")


def test_refused_number_keeps_the_last_matrix(visit: Visit) -> None:
    """While a field is refused, the last good matrix stays."""
    page = settled(visit(forgiven="status of 400"))
    type_vswr(page, "3")
    assert_numbers(page, expected.numbers(vswr=3))

    type_vswr(page, "0.5")
    expect(page.get_by_role("alert")).to_contain_text("SWR on the line: 0.5")

    assert_numbers(page, expected.numbers(vswr=3))


def test_refused_number_marks_the_matrix(visit: Visit) -> None:
    """While a field is refused, the matrix says that it is out of date and turns grey, until a good value comes."""
    page = settled(visit(forgiven="status of 400"))
    shade = "() => getComputedStyle(readers.everywhere('td[data-family]')[0]).filter"
    type_vswr(page, "3")
    assert_numbers(page, expected.numbers(vswr=3))
    before = page.evaluate(shade)

    type_vswr(page, "0.5")
    expect(page.get_by_role("grid")).to_have_accessible_description(re.compile("^Out of date:"))
    expect(page.locator("jw-matrix").get_by_role("status")).to_be_visible()
    greyed = page.evaluate(shade)
    type_vswr(page, "2")
    expect(page.get_by_role("grid")).to_have_accessible_description("")

    assert (before, greyed, page.evaluate(shade)) == ("none", "grayscale(1)", "none")


def test_refused_link_shows_the_built_in_matrix(visit: Visit) -> None:
    """A link that the core refuses shows the numbers of a first visit, and says so and where it is wrong."""
    page = visit("#region=7&vswr=3", forgiven="status of 400")

    expect(page.locator("jw-choice-field[name=region]").get_by_role("alert")).to_contain_text("ITU Region: 7")
    expect(page.locator("jw-matrix").get_by_role("status")).to_contain_text("built-in numbers of a first visit")
    assert_numbers(page, expected.numbers())


def test_refused_choice_can_be_put_right(visit: Visit) -> None:
    """A list that a link gave an impossible value does not pretend another, so each of its entries can be chosen."""
    page = visit("#region=7", forgiven="status of 400")
    expect(page.locator("#region")).to_have_value("7")

    page.locator("#region").select_option("1")

    assert_numbers(page, expected.numbers())
    expect(page.locator("jw-matrix").get_by_role("status")).to_be_hidden()


def test_corrected_number_clears_the_mark(visit: Visit) -> None:
    """A good value after a refused one takes the mark away and brings its numbers."""
    page = settled(visit(forgiven="status of 400"))
    type_vswr(page, "0.5")
    expect(page.locator("#vswr")).to_have_attribute("aria-invalid", "true")

    type_vswr(page, "2")

    assert_numbers(page, expected.numbers(vswr=2))
    expect(page.locator("#vswr")).to_have_attribute("aria-invalid", "false")


def test_refused_field_of_a_closed_group_is_seen(visit: Visit) -> None:
    """A link with a refused field opens the group it stands in and marks it there."""
    page = visit("#altitude_m=90000", forgiven="status of 400")

    expect(page.locator("#altitude_m")).to_have_attribute("aria-invalid", "true")
    expect(page.locator("jw-number-field[name=altitude_m]").get_by_role("alert")).to_contain_text(
        "Altitude: 90000 m; allowed: 0 to 30000 m."
    )


def test_no_number_is_said_at_the_field(visit: Visit) -> None:
    """A word among the power levels is named at the field, and nothing changes."""
    page = settled(visit())
    seldom(page, "Bands and powers")

    page.locator("#powers_w").fill("5 lots 100")
    page.keyboard.press("Tab")

    expect(page.locator("jw-list-field[name=powers_w]").get_by_role("alert")).to_contain_text("lots")
    assert_numbers(page, expected.numbers())


def free_port() -> int:
    """A port nobody listens on."""
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        return taken.getsockname()[1]


def test_lost_server_is_said_in_words(visit: Visit) -> None:
    """When the server goes away, the page says so and keeps the last good matrix."""
    with served() as site:
        page = settled(visit(site=site, forgiven=LOST))
    type_vswr(page, "3")

    expect(page.get_by_role("alert").filter(has_text="The server cannot be reached")).to_be_visible()
    assert_numbers(page, expected.numbers())


def test_lost_server_is_said_where_a_cell_opens(visit: Visit) -> None:
    """A cell opened without a server says what is missing in place of its derivation."""
    with served() as site:
        page = settled(visit(site=site, forgiven=LOST))
    page.locator("td[data-family=n][data-band='20m']").click()

    expect(page.locator("jw-detail").get_by_role("status")).to_contain_text("The server cannot be reached")


def test_page_recovers_with_its_server(visit: Visit) -> None:
    """Once the server is back, trying again brings the numbers that were asked for meanwhile."""
    port = free_port()
    with served(port) as site:
        page = settled(visit(site=site, forgiven=LOST))
    type_vswr(page, "3")
    expect(page.get_by_role("button", name="Try again")).to_be_visible()

    with served(port):
        page.get_by_role("button", name="Try again").click()

        assert_numbers(page, expected.numbers(vswr=3))
        expect(page.get_by_role("alert").filter(has_text="cannot be reached")).to_have_count(0)


@pytest.mark.parametrize("field", ["unheard_of", "vswr", "mode", "bands", "exposure", "families"])
def test_hostile_text_is_never_markup(visit: Visit, field: str) -> None:
    """Markup in a field of a link is at most shown as text: it makes no element and runs nothing."""
    page = visit(f"#{field}={quote(MARKUP)}", forgiven="status of 400")

    expect(page.get_by_text("onerror=alert(1)").filter(visible=True).first).to_be_visible()
    assert page.evaluate("() => readers.everywhere('img, script:not([src])').length") == 0


def test_hostile_family_of_a_cell_is_never_markup(visit: Visit) -> None:
    """Markup in place of a family's name heads the sheet as text, with the core's refusal under it."""
    page = visit(f"#family={quote(SHORT_MARKUP)}&band=20m", forgiven="status of 400")

    expect(page.locator("jw-detail").get_by_role("status")).to_contain_text("allowed: a name of small letters")
    expect(sheet(page).get_by_role("heading").first).to_contain_text(SHORT_MARKUP)
    assert page.evaluate("() => readers.everywhere('img, script:not([src])').length") == 0


@pytest.mark.parametrize(
    ("link", "words"),
    [
        ("#powers_w=", "powers_w"),
        ("#vswr=1e999", "vswr"),
        ("#bands=", "Bands: none"),
        ("#on_time_s=3", "Pause after it: not given"),
    ],
)
def test_senseless_value_in_a_link_is_said(visit: Visit, link: str, words: str) -> None:
    """A link with a value that no form could send says which field is at fault, and the page stands."""
    page = visit(link, forgiven="status of 400")

    said = page.locator("[role=alert], [role=status]").filter(has_text=words, visible=True)
    expect(said).not_to_have_count(0)
    expect(page.get_by_role("grid")).to_be_visible()


@pytest.mark.parametrize("link", ["#family=nosuch", "#band=nosuch", "#band=60m"])
def test_sheet_without_contents_says_so(visit: Visit, link: str) -> None:
    """A link that opens a family or a band the matrix does not have does not keep its reader waiting."""
    page = visit(link)

    with page.expect_response("**/api/v1/catalogue"):
        page.reload()
    settled(page)

    expect(page.get_by_text("Calculating")).to_be_hidden()


def test_policy_refuses_foreign_script_and_image(visit: Visit) -> None:
    """The policy in force stops a script written into the page and an image from elsewhere."""
    page = settled(visit(forgiven="^policy: (script|img)-src|Content Security Policy|outside.invalid"))

    page.evaluate(
        """() => {
          window.stopped = [];
          addEventListener('securitypolicyviolation', (event) => window.stopped.push(event.effectiveDirective));
          const script = document.createElement('script');
          script.textContent = 'window.ran = true';
          const image = document.createElement('img');
          image.src = 'https://outside.invalid/x.png';
          document.body.append(script, image);
        }"""
    )
    page.wait_for_function("() => window.stopped.length === 2")

    assert sorted(page.evaluate("() => window.stopped")) == ["img-src", "script-src-elem"]
    assert page.evaluate("() => window.ran") is None
