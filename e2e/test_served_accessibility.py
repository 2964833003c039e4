"""Automatic accessibility rules find nothing, on every size of screen, in light and dark."""

from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, expect
from reading import drawn, settled
from visits import AXE, SIZES, Visit

RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
SHEET = {"include": [{"fromShadowDom": ["jw-app", "jw-sheet"]}]}
"""Where the first view has passed, an open sheet is all that is new."""


def with_axe(context: BrowserContext) -> None:
    """Put the rules into every page of the context; a script of the page's own would be refused."""
    context.add_init_script(path=AXE)


def violations(page: Page, part: dict | None = None) -> list[str]:
    """What the rules find, each with its places: in a part, in the sheet if one is open, else in the page."""
    found = page.evaluate(
        """([given, sheet, tags]) => {
          const part = given ?? (readers.everywhere('dialog[open]').length > 0 ? sheet : document);
          const options = {resultTypes: ['violations'], runOnly: {type: 'tag', values: tags}};
          return axe.run(part, options).then(({violations}) => violations);
        }""",
        [part, SHEET, RULES],
    )
    return [f"{one['id']}: {one['help']}: {[node['target'] for node in one['nodes'][:5]]}" for one in found]


def wait_for_data_sheet(page: Page) -> None:
    """The data sheet is there."""
    expect(page.locator("jw-data-sheet tr[data-field]").first).to_be_visible()


def wait_for_method(page: Page) -> None:
    """The method view is there."""
    expect(page.locator("jw-methods math").first).to_be_visible()


VIEWS = {
    "first": ("", settled),
    "derivation": ("#family=n&band=2m&power_w=400", drawn),
    "data_sheet": ("#family=n", wait_for_data_sheet),
}


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("view", VIEWS)
def test_rules_find_nothing(visit: Visit, view: str, size: str, theme: str) -> None:
    """No rule is broken by a first view, an open derivation or an open data sheet."""
    link, ready = VIEWS[view]
    page = visit(link, prepare=with_axe, color_scheme=theme, reduced_motion="reduce", **SIZES[size])

    ready(page)

    assert violations(page) == []


@pytest.mark.parametrize(
    ("link", "ready"),
    [
        ("#view=methods", wait_for_method),
        ("#band=2m", lambda page: expect(page.locator("jw-band-limits tr[data-family]").first).to_be_visible()),
        ("#altitude_m=90000", lambda page: expect(page.get_by_role("alert").first).to_be_visible()),
        ("#colour=blue", lambda page: expect(page.get_by_role("status").filter(has_text="colour")).to_be_visible()),
    ],
    ids=["method", "band", "refusal", "notice"],
)
def test_rules_find_nothing_elsewhere(visit: Visit, link: str, ready: Callable[[Page], Any]) -> None:
    """No rule is broken by the method view, a band's limits, a refused field or a notice."""
    page = settled_or_refused(visit(link, prepare=with_axe, forgiven="status of 400"))

    ready(page)

    assert violations(page) == []


def settled_or_refused(page: Page) -> Page:
    """The page, once the core has answered or refused."""
    page.locator("jw-progress:is([status=complete], [status=error])").wait_for(state="attached")
    return page


def test_rules_find_nothing_in_unfolded_steps(visit: Visit) -> None:
    """No rule is broken by a derivation with every step of it unfolded."""
    page = visit("#family=n&band=2m&power_w=400", prepare=with_axe)
    drawn(page)
    unfold = "() => readers.everywhere('details').forEach((one) => (one.open = true))"
    for part in ("jw-limit .group", "jw-limit .group jw-steps", "jw-chart .main-svg"):
        page.evaluate(unfold)
        expect(page.locator(f"jw-derivation {part}").first).to_be_visible()
    page.evaluate(unfold)

    expect(page.locator("jw-derivation details:not([open])")).to_have_count(0)
    assert violations(page) == []
