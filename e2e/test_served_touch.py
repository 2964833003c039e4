"""The choose, kit and fit-out views by finger on a phone: taps do what clicks do, and nothing slides sideways."""

from typing import Any

import expected
import pytest
from playwright.sync_api import Page, expect
from reading import settled
from visits import PHONE, Visit

VIEWS = ["choose", "kit", "fitout"]
NOTHING_PASSES = {"power_w": 1500, "mode": "fm", "exposure": "exposed", "bands": ["20m", "2m"], "port": "n"}


def opened(visit: Visit, link: str, **options: Any) -> Page:
    """A view on a phone, answered."""
    return settled(visit(link, **PHONE, **options))


def swiped(page: Page, across_px: int) -> list[float]:
    """How far page and panels have slid after a finger was drawn to the left all over the screen."""
    session = page.context.new_cdp_session(page)
    for down in range(150, 800, 160):
        session.send(
            "Input.synthesizeScrollGesture",
            {"x": 300, "y": down, "xDistance": -across_px, "yDistance": 0, "gestureSourceType": "touch"},
        )
    return page.evaluate(
        """() => [scrollX, visualViewport.offsetLeft,
          ...readers.everywhere('*').map((one) => one.scrollLeft).filter(Boolean)]"""
    )


@pytest.mark.parametrize("view", VIEWS)
def test_a_swipe_does_not_slide_the_view(visit: Visit, view: str) -> None:
    """A finger drawn sideways over a view moves nothing: no part of it lies beyond the edge."""
    page = opened(visit, f"#view={view}")

    assert set(swiped(page, 200)) == {0}


def test_taps_choose_a_family(visit: Visit) -> None:
    """A tap adds a band, unfolds a group, takes a relaxation and opens a family."""
    page = opened(visit, "#view=choose&power_w=1500&mode=fm&exposure=exposed&bands=20m&port=n")
    page.locator("details[data-group=carries] summary").tap()
    page.locator("[name='choose.bands']").get_by_role("button", name="2 m", exact=True).tap()
    page.locator("details[data-group=used] summary").tap()
    expect(page.locator("[name='choose.matings_per_year'] input").first).to_be_visible()
    eased = next(one for one in expected.asked("choose", **NOTHING_PASSES)["relaxations"] if one["field"])

    page.locator(f"li[data-demand='{eased['demand']}'] button").tap()

    first = page.locator("#passing tbody tr").first
    expect(first).to_be_visible()
    first.get_by_role("link").tap()
    expect(page.locator("jw-derivation #verdict")).to_be_visible()


def test_taps_change_a_kit(visit: Visit) -> None:
    """A tap opens a port, unticks and ticks pairs, adds a port and brings the example back."""
    page = opened(visit, "#view=kit")
    verdict = page.locator("#verdict")
    before = verdict.inner_text()

    page.get_by_role("button", name="Untick all").tap()
    expect(verdict).not_to_have_text(before)
    page.get_by_role("checkbox", name="Transceiver – Dipole feed line").tap()
    page.get_by_role("button", name="Add a port by its fields").tap()
    expect(page.locator("jw-kit-pairs")).to_contain_text("port 11 (N jack)")
    page.get_by_role("button", name="Example").tap()

    expect(verdict).to_have_text(before)


def test_taps_fit_a_joint_out(visit: Visit) -> None:
    """A tap turns to another joint's sheet and puts today's date."""
    page = opened(visit, "#view=fitout")

    page.get_by_role("button", name="Joint 4, N").tap()
    expect(page.get_by_role("heading", name="Joint 4: N between")).to_be_visible()
    page.get_by_role("button", name="Today").tap()

    expect(page.get_by_label("Day of fitting")).not_to_have_value("")
