"""Light and dark, little motion, and colours that can be read."""

import re

import pytest
from playwright.sync_api import Page, expect
from reading import key_steps, more, settled
from visits import Visit

LEAST_CONTRAST = 4.5
"""WCAG 2.2, success criterion 1.4.3."""

STEPS = 5
OVER = 1
"""Steps below the limit."""


def luminance(colour: str) -> float:
    """Relative luminance of an opaque colour, as WCAG 2.2 defines it."""
    parts = [float(part) for part in re.findall(r"[\d.]+", colour)]
    assert colour.startswith("rgb(")
    shares = [part / 255 for part in parts]
    red, green, blue = (one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4 for one in shares)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(ink: str, ground: str) -> float:
    """Contrast ratio of two colours, 1 to 21."""
    darker, lighter = sorted((luminance(ink), luminance(ground)))
    return (lighter + 0.05) / (darker + 0.05)


def ground_of(page: Page) -> float:
    """Luminance of the page's own ground."""
    return luminance(page.evaluate("() => getComputedStyle(document.body).backgroundColor"))


@pytest.mark.parametrize(("scheme", "dark"), [("light", False), ("dark", True)])
def test_page_follows_the_system(visit: Visit, scheme: str, dark: bool) -> None:
    """The page is dark where the system asks for dark, and light otherwise."""
    page = settled(visit(color_scheme=scheme))

    assert (ground_of(page) < 0.2) is dark
    expect(more(page).get_by_role("button", name="Dark")).to_have_attribute("aria-pressed", str(dark).lower())


@pytest.mark.parametrize(("scheme", "dark"), [("light", True), ("dark", False)])
def test_switch_turns_the_theme(visit: Visit, scheme: str, dark: bool) -> None:
    """The switch turns the whole page to the other theme, whatever the system asks for."""
    page = settled(visit(color_scheme=scheme))

    more(page).get_by_role("button", name="Dark").click()

    expect(more(page).get_by_role("button", name="Dark")).to_have_attribute("aria-pressed", str(dark).lower())
    assert (ground_of(page) < 0.2) is dark


def test_theme_is_kept_for_the_next_visit(visit: Visit) -> None:
    """The theme chosen by the switch is still chosen when the page is loaded again."""
    page = settled(visit(color_scheme="light"))
    more(page).get_by_role("button", name="Dark").click()

    settled(page.reload() and page)

    assert ground_of(page) < 0.2


@pytest.mark.parametrize("medium", ["screen", "print"])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_every_colour_step_can_be_read(visit: Visit, scheme: str, medium: str) -> None:
    """The text on every step of the colour scale has a contrast of at least 4.5 to 1."""
    page = settled(visit(color_scheme=scheme))
    page.emulate_media(media=medium, color_scheme=scheme)

    steps = key_steps(page)

    assert len(steps) == STEPS
    assert min(contrast(step.ink, step.ground) for step in steps) >= LEAST_CONTRAST


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_lightness_falls_to_both_sides_of_the_limit(visit: Visit, scheme: str) -> None:
    """Steps are the darker the further they are from 0 dB, so the scale reads without hues."""
    page = settled(visit(color_scheme=scheme))

    levels = [luminance(step.ground) for step in key_steps(page)]

    below, above = levels[:OVER], levels[OVER:]
    assert max(below) < above[0]
    assert above == sorted(above, reverse=True)


def test_paper_is_light_in_dark_mode(visit: Visit) -> None:
    """A page in dark mode prints on white."""
    page = settled(visit(color_scheme="dark"))

    page.emulate_media(media="print", color_scheme="dark")

    assert ground_of(page) == pytest.approx(1)


@pytest.mark.parametrize(("motion", "moving"), [("no-preference", True), ("reduce", False)])
def test_motion_is_only_for_those_who_want_it(visit: Visit, motion: str, moving: bool) -> None:
    """While the core is at work a line moves, but not where the system asks for little motion."""
    page = visit(reduced_motion=motion, prepare=lambda context: context.route("**/api/v1/matrix", lambda _: None))

    page.locator("jw-progress[status=pending]").wait_for(state="attached")

    running = page.evaluate("() => readers.everywhere('*').flatMap((one) => one.getAnimations()).length > 0")
    assert running is moving
