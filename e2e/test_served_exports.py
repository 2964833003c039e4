"""What can be taken along: files that hold the numbers shown, and a sheet of paper."""

import csv
import io
import json
import re
from collections import Counter
from pathlib import Path
from unicodedata import normalize

import expected
import pytest
from playwright.sync_api import Browser, Page, expect
from pypdf import PdfReader
from reading import assert_numbers, drawn, settled, share, sheet, unfolded
from visits import SIZES, TABLET, Visit, clean

from jointwise.assemble.version import VERSION

MM_PER_POINT = 25.4 / 72
PAPER_MM = {"A4": (297, 210), "Letter": (279.4, 215.9)}


def downloaded(page: Page, button: str) -> str:
    """The text of the file that a button saves."""
    with page.expect_download() as waiting:
        share(page).get_by_role("button", name=f"Save as {button}", exact=True).click()
    return Path(waiting.value.path()).read_bytes().decode()


def test_csv_holds_the_margins_shown(visit: Visit) -> None:
    """The CSV file has a line for each cell and power level, whose margins are those that the cells print."""
    page = visit("#vswr=3")
    assert_numbers(page, expected.numbers(vswr=3))
    matrix = expected.matrix_of(vswr=3)

    lines = list(csv.DictReader(io.StringIO(downloaded(page, "CSV"))))

    assert len(lines) == len(expected.margins(matrix)) * len(matrix["powers_w"])
    at_power = [line["margin_db"] for line in lines if float(line["power_w"]) == expected.FIRST_POWER]
    assert [float(text) if text else None for text in at_power] == expected.margins(matrix)


def test_csv_names_what_refuses(visit: Visit) -> None:
    """In the CSV file a cell on the air without a margin names the check that refuses it, and no other cell does."""
    page = settled(visit())

    lines = list(csv.DictReader(io.StringIO(downloaded(page, "CSV"))))

    assert any(line["refused_by"] for line in lines)
    on_the_air = [line for line in lines if float(line["power_w"]) > 0]
    assert all((line["margin_db"] == "") == (line["refused_by"] != "") for line in on_the_air)
    assert all(line["margin_db"] == "" for line in lines if line not in on_the_air)


def test_json_holds_request_and_answer(visit: Visit) -> None:
    """The JSON file holds a request, the answer that the core gives to that very request, and the version."""
    page = visit("#vswr=3&mode=fm")
    assert_numbers(page, expected.numbers(vswr=3, mode="fm"))

    saved = json.loads(downloaded(page, "JSON"))

    assert saved["request"].items() >= {"vswr": 3, "mode": "fm"}.items()
    assert saved["result"] == expected.asked("matrix", **saved["request"])
    assert saved["made_by"] == f"Jointwise {VERSION}"


def test_print_button_prints(visit: Visit) -> None:
    """The print button hands the page to the browser's own printing."""
    page = settled(visit())
    page.evaluate("() => addEventListener('beforeprint', () => (window.printed = true))")

    share(page).get_by_role("button", name="Print").click()

    page.wait_for_function("() => window.printed")


@pytest.fixture(params=PAPER_MM, scope="module")
def paper(request: pytest.FixtureRequest, browser: Browser, address: str) -> PdfReader:
    """The page on paper, of a station with a VSWR of 3."""
    with clean(browser, address, None) as context:
        page = context.new_page()
        page.goto(f"{address}#vswr=3&exposure=exposed")
        assert_numbers(page, expected.numbers(vswr=3, exposure="exposed"))
        return PdfReader(io.BytesIO(page.pdf(format=request.param, landscape=True)))


def test_paper_lies_on_its_side(paper: PdfReader, request: pytest.FixtureRequest) -> None:
    """Every sheet has the size of the paper asked for, the long side across."""
    wanted = [side / MM_PER_POINT for side in PAPER_MM[request.node.callspec.params["paper"]]]

    for one in paper.pages:
        assert [float(one.mediabox.width), float(one.mediabox.height)] == pytest.approx(wanted, abs=1)


def words(paper: PdfReader) -> str:
    """All text of the paper, on one line and without ligatures."""
    return plain(" ".join(page.extract_text() for page in paper.pages))


def plain(text: str) -> str:
    """A text without line breaks and ligatures."""
    return re.sub(r"\s+", " ", normalize("NFKC", text))


def test_paper_tells_the_station(paper: PdfReader) -> None:
    """A printed matrix says under which conditions it holds."""
    text = words(paper)

    assert "SWR on the line: 3" in text
    assert "Exposure: outdoors, exposed" in text
    assert "Mode: SSB, conversation" in text


def test_paper_has_key_and_cautions(paper: PdfReader) -> None:
    """A printed matrix carries the key to its colours and every caution of the core."""
    text = words(paper)

    for step in ("over the limit", "at the limit", "tight", "fine", "ample"):
        assert step in text
    assert all(plain(caution) in text for caution in expected.asked("catalogue")["cautions"])


@pytest.mark.parametrize("size", SIZES)
def test_paper_holds_the_open_derivation(visit: Visit, size: str) -> None:
    """A derivation that is open is printed after the matrix, in the colours of paper, and no caution twice."""
    page = visit("#family=n&band=2m&power_w=400", color_scheme="dark", **SIZES[size])
    derivation = unfolded(drawn(page), "Checks")
    core = expected.asked("cell", family="n", band="2m", power_w=400)

    sheets = [plain(one.extract_text()) for one in PdfReader(io.BytesIO(page.pdf(landscape=True))).pages]
    first = next(index for index, text in enumerate(sheets) if plain(core["verdict"]) in text)
    text = " ".join(sheets[first:])

    assert first > 0
    assert "N on 2 m" in sheets[first]
    assert all(plain(limit["sentence"]) in text for limit in core["limits"])
    assert all(plain(gate["sentence"]) in text for gate in core["gates"])
    assert " ".join(sheets).count(plain(core["cautions"][-1])) == 1
    expect(derivation).to_be_visible()


def test_printing_leaves_the_sheet_as_it_was(visit: Visit) -> None:
    """After printing, a derivation opened on a tablet still covers the page, and Escape closes it."""
    page = visit("#family=n&band=2m", **TABLET)
    drawn(page)

    page.pdf(landscape=True)

    assert page.evaluate("() => readers.everywhere('dialog')[0].matches(':modal')")
    page.keyboard.press("Escape")
    expect(sheet(page)).to_be_hidden()


def test_no_file_before_there_are_numbers(visit: Visit) -> None:
    """Asked for a file while the first numbers are awaited, the page says so and saves nothing."""
    page = visit("#vswr=3", prepare=lambda context: context.route("**/api/v1/matrix", lambda _: None))

    share(page).get_by_role("button", name="CSV").click()

    expect(page.get_by_role("status").filter(has_text="not there yet")).to_be_visible()


def test_paper_never_names_conditions_that_were_refused(visit: Visit) -> None:
    """While a field is refused, paper names the conditions of the margins it shows, not the refused ones."""
    page = settled(visit(forgiven="status of 400"))
    page.locator("#vswr").fill("0.5")
    page.keyboard.press("Tab")
    expect(page.locator("#vswr")).to_have_attribute("aria-invalid", "true")

    text = words(PdfReader(io.BytesIO(page.pdf(landscape=True))))

    assert "SWR on the line: 1.5" in text


def test_paper_is_one_sheet_with_every_margin(paper: PdfReader) -> None:
    """The matrix with its key, its station and the cautions is one sheet, with every margin at the power shown."""
    wanted = Counter(margin for margin in expected.numbers(vswr=3, exposure="exposed") if margin and margin[0] in "+−")

    assert len(paper.pages) == 1
    assert wanted <= printed_numbers(words(paper))


def test_paper_with_marks_prints_every_power(visit: Visit) -> None:
    """Where marks are asked for the power levels unfold on paper: every margin at every level is printed."""
    page = visit("#vswr=3&exposure=exposed")
    assert_numbers(page, expected.numbers(vswr=3, exposure="exposed"))
    page.get_by_role("button", name="Show marks").click()
    matrix = expected.matrix_of(vswr=3, exposure="exposed")
    found = [margin for row in matrix["margin_db"] for levels in row for margin in levels]

    text = words(PdfReader(io.BytesIO(page.pdf(landscape=True))))

    assert Counter(expected.decibels(one) for one in found if one is not None) <= printed_numbers(text)


def printed_numbers(text: str) -> Counter[str]:
    """The margins in a text, and how often each stands there."""
    return Counter(re.findall(r"[+−]\d+(?:\.\d)?", text))
