"""A station as QR codes on a sheet of paper, read back from pictures of it."""

import base64
import hashlib
import io
import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, expect
from pypdf import PdfReader
from reading import settled
from test_saved_own import opened, own, saved
from test_served_accessibility import violations, with_axe
from test_served_joints import at_joint, enter
from visits import PHONE, Visit

A4 = {"width": 794, "height": 1123}
"""In pixels of CSS."""

TURNED = """async ([address, degrees, scale, blur, shade]) => {
  const image = new Image();
  image.src = address;
  await image.decode();
  const side = Math.ceil(Math.hypot(image.width, image.height) * scale) + 40;
  const canvas = Object.assign(document.createElement('canvas'), {width: side, height: side});
  const pen = canvas.getContext('2d');
  pen.fillStyle = '#5b4a3a';
  pen.fillRect(0, 0, side, side);
  pen.translate(side / 2, side / 2);
  pen.rotate(degrees * Math.PI / 180);
  pen.scale(scale, scale);
  pen.filter = `blur(${blur}px)`;
  pen.drawImage(image, -image.width / 2, -image.height / 2);
  pen.filter = 'none';
  pen.setTransform(1, 0, 0, 1, 0, 0);
  const light = pen.createLinearGradient(0, 0, side, side);
  light.addColorStop(0, `rgb(0 0 0 / ${shade})`);
  light.addColorStop(1, 'transparent');
  pen.fillStyle = light;
  pen.fillRect(0, 0, side, side);
  return canvas.toDataURL('image/jpeg', 0.8);
}"""
"""A picture of the sheet on a table: turned, nearer or farther, not quite sharp, with the light from one side."""


def with_lines(page: Page, name: str, elements: int = 50) -> Page:
    """The page with a line of many elements, each with a name of its own that packs badly."""
    joint = {"kind": "joint", "family": "n"}
    cable = {"kind": "cable", "cable": "rg_213", "length_m": 3}
    parts = [
        {**(joint if at % 2 else cable), "name": hashlib.sha256(bytes([at])).hexdigest()[:50]} for at in range(elements)
    ]
    lines = {"lines": [{"name": name, "request": {"elements": parts}}], "current": 0}
    page.evaluate("(text) => localStorage.setItem('jointwise-lines', text)", json.dumps(lines))
    page.reload()
    return settled(page)


def sheet_of(page: Page) -> Page:
    """The page with the sheet of its codes before it."""
    own(page)
    page.get_by_role("button", name="Station as codes").click()
    expect(page.get_by_role("heading", name="Station as codes")).to_be_visible()
    return page


def photographed(page: Page) -> bytes:
    """The printed sheet as a scanner with 200 dots an inch sees it."""
    page.emulate_media(media="print")
    page.set_viewport_size(A4)
    page.evaluate("() => dispatchEvent(new Event('beforeprint'))")
    picture = page.screenshot(full_page=True)
    page.evaluate("() => dispatchEvent(new Event('afterprint'))")
    page.emulate_media(media="screen")
    return picture


def turned(page: Page, picture: bytes, *how: float) -> bytes:
    """Another picture of the sheet."""
    address = f"data:image/png;base64,{base64.b64encode(picture).decode()}"
    return base64.b64decode(page.evaluate(TURNED, [address, *how]).split(",")[1])


def file(name: str, content: bytes) -> Any:
    """A picture as the reader picks it."""
    return {"name": name, "mimeType": "image/jpeg", "buffer": content}


def given(page: Page, *pictures: bytes) -> None:
    """Hand pictures to the page."""
    page.locator("#open-pictures").set_input_files([file(f"{at}.jpg", one) for at, one in enumerate(pictures)])


def lines_of(page: Page) -> list[str]:
    """The names of the lines that the browser keeps."""
    return page.evaluate(
        "() => (JSON.parse(localStorage.getItem('jointwise-lines'))?.lines ?? []).map(({name}) => name)"
    )


HOWS = {
    "as it is": (0, 1, 0, 0),
    "a little turned, blurred": (7, 1.2, 0.7, 0.3),
    "on its side, smaller": (90, 0.8, 0, 0.2),
    "upside down": (178, 1, 0.5, 0.4),
    "slanting": (33, 1.4, 0.5, 0.3),
}


OFTEN = ("a little turned, blurred", "upside down")


@pytest.mark.parametrize("how", [how if how in OFTEN else pytest.param(how, marks=pytest.mark.nightly) for how in HOWS])
def test_a_picture_of_the_sheet_brings_the_station(visit: Visit, how: str) -> None:
    """All codes of one picture are read, however it is held, and the line is there."""
    page = sheet_of(with_lines(settled(visit("#view=line", device_scale_factor=2)), "Hut"))
    assert page.locator("jw-codes figure").count() > 1
    picture = turned(page, photographed(page), *HOWS[how])

    other = settled(visit("#view=line"))
    own(other)
    given(other, picture)

    expect(other.locator("jw-saving")).to_have_count(0)
    assert "Hut" in lines_of(other)


@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_as_many_codes_as_are_allowed_are_on_one_sheet(visit: Visit, paper: str) -> None:
    """Twelve codes are printed on one page, upright."""
    page = sheet_of(settled(visit("#view=line")))
    page.evaluate(
        """() => {
          const sheet = document.querySelector('jw-codes');
          sheet.texts = Array.from({length: 12}, (_, at) => `JW1:${at + 1}:12:00000000:${'0Z'.repeat(473)}`);
        }"""
    )
    expect(page.locator("jw-codes svg")).to_have_count(12)

    [sheet] = PdfReader(io.BytesIO(page.pdf(format=paper, prefer_css_page_size=False))).pages

    assert "12 of 12" in sheet.extract_text()
    assert sheet.mediabox.height > sheet.mediabox.width


def test_several_pictures_in_any_order_and_missing_ones_named(visit: Visit) -> None:
    """Codes come one after the other; what is missing is named until the last one is there."""
    page = sheet_of(with_lines(settled(visit("#view=line", device_scale_factor=2)), "Hut", 60))
    codes = page.locator("jw-codes svg")
    count = codes.count()
    assert count > 2
    pictures = [codes.nth(at).screenshot() for at in range(count)]
    other = settled(visit("#view=line"))
    own(other)

    given(other, pictures[-1])
    missing = ", ".join(str(number) for number in range(1, count))
    expect(other.locator("#read")).to_contain_text(f"1 of {count} codes were read; missing: {missing}.")
    given(other, *reversed(pictures[1:]))
    expect(other.locator("#read")).to_contain_text("missing: 1. Add a picture of it.")
    assert "Hut" not in lines_of(other)
    given(other, pictures[0])

    expect(other.locator("jw-saving")).to_have_count(0)
    assert "Hut" in lines_of(other)


def test_what_is_no_sheet_of_codes_is_said(visit: Visit) -> None:
    """A file that is no picture is named, and a picture without codes changes nothing."""
    page = settled(visit("#view=line"))
    blank = page.screenshot(clip={"x": 0, "y": 0, "width": 40, "height": 40})
    own(page)

    page.locator("#open-pictures").set_input_files([file("notes.txt", b"words"), file("blank.png", blank)])

    expect(page.locator("#read")).to_contain_text("No picture: notes.txt.")
    expect(page.locator("#read")).to_contain_text("No code of a station was found.")


def test_a_station_too_big_is_refused_with_its_sizes(visit: Visit) -> None:
    """More than a sheet holds is refused, and the reader is told how much it is and of what."""
    page = settled(visit("#view=line"))
    page.evaluate(
        """() => {
          const name = () => crypto.randomUUID().slice(0, 30);
          const element = () => ({kind: 'joint', family: 'n', name: name()});
          const line = () => ({name: name(), request: {elements: Array.from({length: 60}, element)}});
          const lines = {lines: Array.from({length: 12}, line), current: 0};
          localStorage.setItem('jointwise-lines', JSON.stringify(lines));
        }"""
    )
    own(page)

    page.get_by_role("button", name="Station as codes").click()

    expect(page.get_by_text("This station is too big for a sheet of codes: packed it takes")).to_be_visible()


def test_a_saved_page_writes_and_reads_codes(visit: Visit, elsewhere: BrowserContext, tmp_path: Path) -> None:
    """From disk, without a network: its sheet brings the joint book into another browser."""
    page = at_joint(visit, 1)
    enter(page, "Fitted by", "Ann")
    kept = saved(page, tmp_path / "own.html")
    there = sheet_of(opened(elsewhere, kept, "#view=line"))
    picture = turned(there, photographed(there), 3, 1.6, 0.3, 0.2)
    there.close()

    fresh = elsewhere.new_page()
    fresh.goto((Path(__file__).parents[1] / "dist/jointwise.html").as_uri() + "#view=line")
    own(settled(fresh))
    given(fresh, picture)

    expect(fresh.locator("jw-saving")).to_have_count(0)
    fresh.wait_for_function("() => localStorage.getItem('jointwise-joints')?.includes('Ann')")


def test_rules_find_nothing_on_a_phone(visit: Visit) -> None:
    """No accessibility rule is broken by the sheet, and it is not wider than the screen."""
    page = sheet_of(settled(visit("#view=line", prepare=with_axe, reduced_motion="reduce", **PHONE)))

    assert violations(page) == []
    assert page.evaluate("() => readers.everywhere('jw-paper, dialog').every((one) => one.scrollWidth <= innerWidth)")
