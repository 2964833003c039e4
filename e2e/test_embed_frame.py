"""The matrix in a frame: for websites that allow no script."""

from collections.abc import Iterator

import expected
import pytest
from hosts import File, Website, website
from playwright.sync_api import Browser, Page, expect
from reading import until
from visits import AXE, Visit, clean, served

ADDRESS = "embed.html?theme=dark&amp;lang=de#vswr=3&amp;families=n,uhf"
FAMILIES = ["n", "uhf"]
"""As the address asks, in its order."""

FIT = (
    '<script>addEventListener("message",e=>{for(const f of document.querySelectorAll("iframe"))'
    'if(f.contentWindow===e.source&&e.data&&e.data.type==="jointwise-height")f.height=e.data.height})</script>'
)


def framed(address: str, query: str = ADDRESS, script: str = "") -> bytes:
    """A club's page around a frame."""
    frame = f'<iframe src="{address}{query}" title="Margins" width="100%" height="400"></iframe>'
    return f'<!doctype html><html lang="en"><title>A club</title><h1>A club</h1>{frame}{script}</html>'.encode()


@pytest.fixture
def club() -> Iterator[Website]:
    """A club's website on a port of its own."""
    with website({"/favicon.ico": File(b"", "image/x-icon")}) as site:
        yield site


def numbers_in(page: Page) -> list[str]:
    """What the cells of the frame print, words for refusals left out."""
    found = page.frame_locator("iframe").locator("jointwise-matrix td[data-row]")
    found.first.wait_for()
    return [text for text in found.all_text_contents() if text[0] in "+−R"]


def test_a_frame_shows_the_scenario(club: Website, browser: Browser, address: str) -> None:
    """A site that allows no script at all shows the margins that the frame's address asks for, in its language."""
    policy = f"default-src 'none'; frame-src {address}; style-src 'self'"
    club.files["/"] = File(framed(address), policy=policy)

    with clean(browser, club.address, f"request to {address}") as context:
        page = context.new_page()
        page.goto(club.address)

        wanted = [text.replace(".", ",") for text in expected.numbers(vswr=3, families=FAMILIES) if text]
        assert numbers_in(page) == wanted
        assert page.locator("iframe").bounding_box()["height"] >= 400
        matrix = page.frame_locator("iframe").locator("jointwise-matrix")
        assert matrix.locator(".root").evaluate("(root) => getComputedStyle(root).colorScheme") == "dark"


def test_a_frame_takes_the_height_of_its_matrix(club: Website, browser: Browser, address: str) -> None:
    """With the lines of script the frame has just the height of the matrix, also when a cell opens."""
    club.files["/"] = File(framed(address, script=FIT))

    with clean(browser, club.address, f"request to {address}") as context:
        page = context.new_page()
        page.goto(club.address)
        numbers_in(page)
        fits = """() => {
          const frame = document.querySelector('iframe');
          return Number(frame.height) > 0 && Number(frame.height) !== 400 ? Number(frame.height) : 0;
        }"""
        until(page, fits)
        matrix = page.frame_locator("iframe").locator("jointwise-matrix")
        closed = page.evaluate(fits)
        assert abs(matrix.bounding_box()["height"] - closed) <= 1

        page.frame_locator("iframe").locator("td[data-family='n'][data-band='2m']").click()

        page.wait_for_function("(least) => Number(document.querySelector('iframe').height) > least", arg=closed)
        expect(matrix.locator(".derivation")).to_be_visible()


def test_a_website_not_named_gets_no_frame(club: Website, browser: Browser) -> None:
    """A server told which websites may show it is not framed by another."""
    with served(0, "--embed-origins", "https://club.example") as address:
        club.files["/"] = File(framed(address))
        with clean(browser, club.address, f"request to {address}|frame-ancestors|ERR_BLOCKED|console") as context:
            page = context.new_page()
            page.goto(club.address)
            page.wait_for_load_state("networkidle")

            assert page.frame_locator("iframe").locator("jointwise-matrix").count() == 0


def test_a_frame_shows_no_foreign_snapshot(club: Website, browser: Browser, address: str) -> None:
    """A frame's address can't make the server's page show numbers from elsewhere."""
    club.files["/false.json"] = File(b"{}", "application/json")
    club.files["/"] = File(framed(address, f"embed.html?src={club.address}false.json"))

    with clean(browser, club.address, f"request to {address}|Refused to connect|violates|policy") as context:
        page = context.new_page()
        page.goto(club.address)

        expect(page.frame_locator("iframe").locator("jointwise-matrix [role=alert]")).to_be_visible()
        assert "/false.json" not in [path for path, _ in club.sent]


def test_rules_find_nothing_in_the_frame_s_page(browser: Browser, address: str) -> None:
    """No accessibility rule is broken by the page that stands in the frame."""
    with clean(browser, address, None) as context:
        context.add_init_script(path=AXE)
        page = context.new_page()
        page.goto(f"{address}embed.html#families=n,uhf")
        page.locator("jointwise-matrix td[data-row]").first.wait_for()

        found = page.evaluate(
            "() => axe.run({resultTypes: ['violations'], runOnly: {type: 'tag', values: ['wcag2a', 'wcag2aa']}})"
            ".then(({violations}) => violations.map(({help}) => help))"
        )

        assert found == []


def test_an_address_of_a_vast_matrix_makes_no_vast_table(visit: Visit) -> None:
    """While the answer is awaited the table has no more cells than the largest matrix there is."""
    names = "&".join([f"families={'n,' * 400}", f"bands={'2m,' * 400}"])

    page = visit(f"embed.html#{names}", prepare=lambda context: context.route("**/api/v1/snapshot**", lambda _: None))

    cells = page.locator("jointwise-matrix td .empty")
    cells.first.wait_for(state="attached")
    assert cells.count() == 100 * 300
