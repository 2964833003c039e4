"""The look of every view, counted: sizes of type, kinds of button, what stands above the fold, what a finger hits."""

from typing import Any

import pytest
from playwright.sync_api import Page, expect
from reading import drawn, more, settled, share
from test_served_accessibility import violations, with_axe
from visits import DESKTOP, PHONE, Visit

VIEWS = {
    "matrix": "",
    "choose": "#view=choose",
    "line": "#view=line",
    "kit": "#view=kit",
    "fitout": "#view=fitout",
    "sweep": "#view=sweep",
    "packs": "#view=packs",
}
"""By name, the fragment that opens it."""
FOLDS = {"desktop": {"viewport": {"width": 1280, "height": 800}}, "phone": PHONE}
MOST_SIZES = 5
MOST_KINDS = 3
MOST_BUTTONS = 10
FINGER_PX = 44
MASTHEAD = {"include": [{"fromShadowDom": ["jw-app", "jw-masthead"]}]}
NARROW = {"viewport": {"width": 320, "height": 640}, "has_touch": True, "is_mobile": True}
TWICE = {"viewport": {"width": 640, "height": 400}, "device_scale_factor": 2}
"""A screen of 1280 by 800 at a zoom of 200 %."""

SIZES_OF_TYPE = """() => {
  const isText = (one) => [...one.childNodes].some(({nodeType, data}) => nodeType === 3 && data.trim() !== '');
  const typed = 'input:not([type=checkbox], [type=radio], [type=range], [type=file]), select, textarea';
  const all = readers.everywhere('*').filter((one) => isText(one) || one.matches(typed))
    .filter((one) => !one.closest('math, .unseen, script, style, option') && one.checkVisibility());
  const found = {};
  for (const one of all) (found[getComputedStyle(one).fontSize] ??= []).push(one.textContent.trim().slice(0, 30));
  return found;
}"""
"""What is written in each size; formulas have their own."""

BUTTONS = """
  const isPart = (one) => one.closest('nav, [role=grid], .choice, .head') !== null;
  const buttons = readers.everywhere('button, .button, .pick').filter((one) => one.checkVisibility() && !isPart(one));
"""
"""The buttons that are seen, without the views' switch, cells, choices of a field and heads of rows."""

LOOKS = f"""() => {{{BUTTONS}
  const names = ['backgroundColor', 'borderTopColor', 'borderTopStyle', 'color', 'fontSize', 'fontWeight',
    'borderTopLeftRadius'];
  const isPlain = (one) => !one.matches(':disabled, [aria-pressed=true], [aria-expanded=true], [aria-current]');
  const found = {{}};
  for (const one of buttons.filter(isPlain)) {{
    const style = getComputedStyle(one);
    (found[names.map((name) => style[name]).join(' ')] ??= []).push(one.textContent.trim());
  }}
  return found;
}}"""

ABOVE_THE_FOLD = f"""() => {{{BUTTONS}
  const foot = parseFloat(getComputedStyle(document.documentElement).getPropertyValue('--foot'));
  return buttons.filter((one) => {{
    const {{top, bottom, width}} = one.getBoundingClientRect();
    return width > 0 && bottom > 0 && top < innerHeight - foot;
  }}).map((one) => one.textContent.trim());
}}"""

TOO_SMALL = """(least) => readers
  .everywhere('button, select, summary, .button, .pick, input:not([type=checkbox], [type=radio]), '
    + 'label:has(> :is([type=checkbox], [type=radio]))')
  .filter((one) => one.checkVisibility() && !one.matches('label > [type=file]'))
  .map((one) => [one, one.getBoundingClientRect()])
  .filter(([, {width, height}]) => width > 0 && (width < least || height < least))
  .map(([one, {width, height}]) => `${one.outerHTML.slice(0, 70)}: ${width} x ${height}`)"""


def opened(visit: Visit, view: str, **options: Any) -> Page:
    """A view, once it is answered."""
    return settled(visit(VIEWS[view], **options))


@pytest.mark.parametrize("size", FOLDS)
@pytest.mark.parametrize("view", VIEWS)
def test_few_sizes_and_kinds_and_buttons(visit: Visit, view: str, size: str) -> None:
    """A view has at most five sizes of type, three kinds of button, and ten buttons above the fold."""
    page = opened(visit, view, **FOLDS[size])

    sizes = page.evaluate(SIZES_OF_TYPE)
    kinds = page.evaluate(LOOKS)
    above = page.evaluate(ABOVE_THE_FOLD)

    assert len(sizes) <= MOST_SIZES, {one: texts[:3] for one, texts in sizes.items()}
    assert len(kinds) <= MOST_KINDS, {one: texts[:3] for one, texts in kinds.items()}
    assert len(above) <= MOST_BUTTONS, above


def test_an_open_sheet_is_of_the_same_sizes(visit: Visit) -> None:
    """The derivation of a cell adds no size of type."""
    page = visit("#family=n&band=2m&power_w=400", **DESKTOP)
    drawn(page)

    sizes = page.evaluate(SIZES_OF_TYPE)

    assert len(sizes) <= MOST_SIZES, {one: texts[:3] for one, texts in sizes.items()}


@pytest.mark.parametrize("screen", [NARROW, TWICE], ids=["320 px", "200 %"])
@pytest.mark.parametrize("view", VIEWS)
def test_nothing_lies_beyond_a_narrow_screen(visit: Visit, view: str, screen: dict) -> None:
    """At 320 px of width, and at twice the size, the page does not scroll sideways."""
    page = opened(visit, view, **screen)

    assert page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth") <= 0


@pytest.mark.parametrize("view", VIEWS)
def test_a_finger_hits_everything(visit: Visit, view: str) -> None:
    """On a phone all that can be pressed is at least 44 px wide and high, in the view and in the menus."""
    page = opened(visit, view, **PHONE)

    assert page.evaluate(TOO_SMALL, FINGER_PX) == []
    for menu in (share, more):
        menu(page)
        assert page.evaluate(TOO_SMALL, FINGER_PX) == []


def test_the_views_are_in_the_thumbs_reach(visit: Visit) -> None:
    """On a phone the switch of the views stays at the bottom edge of the screen, with all six of them on it."""
    page = opened(visit, "kit", **PHONE)
    height, width = PHONE["viewport"]["height"], PHONE["viewport"]["width"]

    page.mouse.wheel(0, 1500)
    boxes = [one.bounding_box() for one in page.get_by_role("navigation", name="Views").get_by_role("button").all()]

    assert len(boxes) == 6
    assert all(box["y"] + box["height"] == pytest.approx(height, abs=2) for box in boxes)
    assert all(box["x"] >= 0 and box["x"] + box["width"] <= width for box in boxes)


@pytest.mark.parametrize("view", VIEWS)
def test_the_keyboard_skips_to_the_answer(visit: Visit, view: str) -> None:
    """The first stop of the keyboard leads past the switches of the page."""
    page = opened(visit, view)

    page.keyboard.press("Tab")
    skip = page.get_by_role("button", name="Skip to the answer")
    expect(skip).to_be_focused()
    expect(skip).to_be_in_viewport()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")

    assert page.evaluate("() => readers.everywhere('main')[0].matches(':focus-within')")


def test_a_menu_closes_as_one_expects(visit: Visit) -> None:
    """A menu closes with Escape, which gives the focus back, by a press elsewhere, and once something was done."""
    page = opened(visit, "choose")
    button = page.locator("jw-masthead #share #button")

    share(page)
    page.keyboard.press("Escape")
    expect(button).to_have_attribute("aria-expanded", "false")
    expect(button).to_be_focused()
    share(page)
    page.locator("jw-masthead .about p").click()
    expect(button).to_have_attribute("aria-expanded", "false")
    share(page).get_by_role("button", name="Save or open my page").click()
    expect(button).to_have_attribute("aria-expanded", "false")

    expect(page.get_by_role("dialog", name="Save or open my page")).to_be_visible()


def test_what_is_selected_shows_where_colours_are_forced(visit: Visit) -> None:
    """With the system's own colours the view that is shown still differs from the others."""
    page = opened(visit, "line", forced_colors="active")

    grounds = [
        one.evaluate("(one) => getComputedStyle(one).backgroundColor")
        for one in page.get_by_role("navigation", name="Views").get_by_role("button").all()
    ]

    assert len(set(grounds)) == 2
    assert grounds.count(grounds[2]) == 1


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("view", [view for view in VIEWS if view != "matrix"])
def test_rules_find_nothing_in_a_view(visit: Visit, view: str, theme: str) -> None:
    """No rule of accessibility is broken by a view on a phone."""
    page = opened(visit, view, prepare=with_axe, color_scheme=theme, reduced_motion="reduce", **PHONE)

    assert violations(page) == []


def test_rules_find_nothing_in_the_menus(visit: Visit) -> None:
    """No rule of accessibility is broken by an open menu."""
    page = opened(visit, "line", prepare=with_axe)

    for menu in (share, more):
        menu(page)
        assert violations(page, MASTHEAD) == []
