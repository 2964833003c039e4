"""What the reader's own machine can do to the page: a full disk, a tab put to sleep, a window that forgets."""

import expected
from playwright.sync_api import Page, expect
from reading import assert_numbers, settled
from test_served_line import LONG_RUN, answer, assert_shows, opened, type_length, with_element
from test_served_offline import broken_off
from test_served_trouble import type_vswr
from visits import START_MS, Visit

FILL = """() => {
  for (let size = 2 ** 22; size >= 1; size /= 2) {
    for (let at = 0; ; at++) {
      try {
        localStorage.setItem(`filler-${size}-${at}`, 'x'.repeat(size));
      } catch {
        break;
      }
    }
  }
}"""
"""Leaves not a byte of what the browser keeps for the address."""

CLEAR = """() => Object.keys(localStorage).filter((key) => key.startsWith('filler'))
  .forEach((key) => localStorage.removeItem(key))"""


def type_again(page: Page, text: str) -> None:
    """Give the cable whose fields are open another length."""
    page.locator("jw-line-card").nth(LONG_RUN).locator("[name='cable.length_m'] input").fill(text)
    page.keyboard.press("Tab")


def reopened(page: Page) -> Page:
    """The page after a reload without a link."""
    page.evaluate("() => history.replaceState(null, '', '#view=line')")
    page.reload()
    return settled(page)


def test_a_full_disk_is_said_and_loses_only_what_came_after(visit: Visit) -> None:
    """With no room left the line view says so and works; what was kept before stays, and new room is used."""
    page = opened(visit)
    type_length(page, LONG_RUN, "42")
    assert_shows(page, answer(elements=with_element(LONG_RUN, length_m=42)))
    page.evaluate(FILL)

    page.locator("jw-line-bar #name").fill("a longer name than the one before, so that room is needed")
    type_again(page, "123.456789")
    expect(page.get_by_role("status").filter(has_text="no room")).to_be_visible()
    assert_shows(page, answer(elements=with_element(LONG_RUN, length_m=123.456789)))
    page.evaluate(CLEAR)
    type_again(page, "77")

    assert_shows(reopened(page), answer(elements=with_element(LONG_RUN, length_m=77)))


def put_to_sleep_and_woken(page: Page) -> None:
    """Freeze the tab as a browser that saves power does, and let it go on."""
    devtools = page.context.new_cdp_session(page)
    for state in ("frozen", "active"):
        devtools.send("Page.setWebLifecycleState", {"state": state})


def test_a_tab_put_to_sleep_answers_when_it_wakes(visit: Visit) -> None:
    """A request made just before the tab is frozen is answered when it wakes, by the server's core and by its own."""
    page = settled(visit(forgiven="ERR_FAILED"))
    type_vswr(page, "3")
    put_to_sleep_and_woken(page)
    assert_numbers(page, expected.numbers(vswr=3))

    page.route("**/api/**", broken_off)
    page.set_default_timeout(START_MS)
    type_vswr(page, "2")
    put_to_sleep_and_woken(page)

    assert_numbers(page, expected.numbers(vswr=2))


def test_a_private_window_works_and_leaves_nothing(visit: Visit) -> None:
    """A context that forgets, as a private window is, keeps the lines while it is open and gives none to the next."""
    page = opened(visit)
    type_length(page, LONG_RUN, "42")
    assert_shows(page, answer(elements=with_element(LONG_RUN, length_m=42)))
    assert_shows(reopened(page), answer(elements=with_element(LONG_RUN, length_m=42)))
    page.context.close()

    assert_shows(opened(visit), answer())
