"""A question to the matrix: typed or filled in, answered in words, and its cell chosen in the matrix below."""

from collections.abc import Iterator
from contextlib import contextmanager

import expected
import pytest
from playwright.sync_api import Locator, Page, expect
from reading import drawn, fragment, settled, sheet
from visits import AXE, SIZES, Visit

TYPED = "so239 1kw ft8 10m swr 3"
MOST_CHOICES = 5
MOST_SHIFT = 0.02
PHONE_NARROW = {"viewport": {"width": 320, "height": 640}, "has_touch": True, "is_mobile": True}


def core(text: str = TYPED, **fields: object) -> dict:
    """The core's own answer."""
    return expected.asked("question", text=text, **fields)


def question(page: Page) -> Locator:
    """The question with its answer."""
    return page.locator("jw-question")


def headline(page: Page) -> Locator:
    """The verdict in words."""
    return question(page).locator("[data-verdict]")


def ask(page: Page, text: str) -> None:
    """Type a question and press Enter."""
    field = page.get_by_label("Or type the question")
    field.fill(text)
    field.press("Enter")


class Steps:
    """Counts what a person does."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.count = 0

    def choose(self, label: str, words: str) -> None:
        """One choice of a menu in the sentence."""
        question(self.page).get_by_label(label, exact=True).select_option(words)
        self.count += 1


@contextmanager
def shifts(page: Page) -> Iterator[list[float]]:
    """How far the layout jumps meanwhile, without what follows a tap or a key at once."""
    page.evaluate(
        """() => { window.shift = 0; new PerformanceObserver((list) => list.getEntries().forEach((one) => {
          if (!one.hadRecentInput) window.shift += one.value; })).observe({type: 'layout-shift'}); }"""
    )
    found: list[float] = []
    yield found
    found.append(page.evaluate("window.shift"))


def test_one_typed_line_is_answered(visit: Visit) -> None:
    """The SO-239 question takes one typed line: verdict, power, limit and advice are the core's."""
    page = settled(visit())
    wanted = core()

    ask(page, TYPED)

    expect(headline(page)).to_have_text(wanted["verdict"]["headline"])
    expect(question(page)).to_contain_text(wanted["verdict"]["sentence"])
    expect(question(page).locator("#limit")).to_have_text(wanted["limited_by"]["sentence"])
    expect(question(page).locator("#largest")).to_have_text("1 kW")
    titles = question(page).locator("li b")
    expect(titles).to_have_text([change["title"] for change in wanted["better"]])
    assert headline(page).get_attribute("data-verdict") == wanted["verdict"]["step"]


def test_a_whole_sentence_is_answered_alike(visit: Visit) -> None:
    """The same question as one would ask it at a club night."""
    page = settled(visit())

    ask(page, "Will the SO-239 on my tuner take 1 kW FT8 on 10 m at SWR 3?")

    expect(headline(page)).to_have_text(core()["verdict"]["headline"])
    expect(page.locator("#unread li")).to_have_count(0)


def test_five_choices_are_enough(visit: Visit) -> None:
    """The same question by menus takes at most five choices and ends in the same answer."""
    page = settled(visit())
    steps = Steps(page)

    steps.choose("Connector", "UHF (PL-259 / SO-239)")
    steps.choose("Power", "1 kW")
    steps.choose("Mode", "FT8")
    steps.choose("Band", "10 m")
    steps.choose("SWR", "3")

    expect(headline(page)).to_have_text(core()["verdict"]["headline"])
    assert steps.count <= MOST_CHOICES


@pytest.mark.parametrize("size", SIZES)
def test_the_question_is_in_the_first_screen(visit: Visit, size: str) -> None:
    """Sentence, field, verdict and largest safe power stand above the fold."""
    page = settled(visit(**SIZES[size]))
    expect(headline(page)).to_be_visible()

    for part in (question(page).get_by_role("group"), headline(page), question(page).locator("#largest")):
        box = part.bounding_box()
        assert box["y"] + box["height"] <= SIZES[size]["viewport"]["height"]


def test_the_cell_is_chosen_in_the_matrix(visit: Visit) -> None:
    """The matrix shows the power asked about, the cell is marked, no sheet covers it, and the link holds it."""
    page = settled(visit())

    ask(page, TYPED)

    chosen = page.locator("td[data-open]")
    expect(chosen).to_have_count(1)
    expect(chosen).to_have_attribute("data-band", "10m")
    expect(chosen).to_have_attribute("data-family", "uhf")
    expect(page.get_by_role("grid")).to_have_attribute("data-power", "1000")
    expect(page.get_by_role("radio", name="1 kW")).to_be_checked()
    expect(sheet(page)).to_have_count(0)
    for part in ("family=uhf", "band=10m", "power_w=1000", "mode=ft8", "vswr=3"):
        assert part in fragment(page)


def test_a_link_restores_the_question(visit: Visit) -> None:
    """In another browser the same question is answered, without a sheet over it."""
    page = settled(visit())
    ask(page, TYPED)
    expect(headline(page)).to_have_text(core()["verdict"]["headline"])
    link = fragment(page)

    other = settled(visit(f"#{link}"))

    expect(headline(other)).to_have_text(core()["verdict"]["headline"])
    expect(question(other).get_by_label("Mode", exact=True)).to_have_value("ft8")
    expect(sheet(other)).to_have_count(0)


def test_a_frequency_joins_the_matrix(visit: Visit) -> None:
    """A spot frequency typed becomes a column, and the menu says it."""
    page = settled(visit())

    ask(page, "bnc 28.2 MHz 50 w")

    expect(page.locator("td[data-open]")).to_have_attribute("data-family", "bnc")
    expect(question(page).get_by_label("Band", exact=True)).to_have_value("28200000 Hz")
    expect(headline(page)).to_have_text(core("bnc 28.2 MHz 50 w")["verdict"]["headline"])


def test_nonsense_is_named(visit: Visit) -> None:
    """What is not understood is said, the rest is answered."""
    page = settled(visit())

    ask(page, f"{TYPED} zorp")

    expect(page.locator("#unread")).to_contain_text("“zorp” is not understood.")
    expect(headline(page)).to_have_text(core()["verdict"]["headline"])


def test_what_can_be_read_in_two_ways_is_asked_back(visit: Visit) -> None:
    """A tap on one of the readings puts it where it was typed and is answered; until then nothing changes."""
    page = settled(visit())

    ask(page, "n 2m 1,500 W fm")
    expect(page.locator("#unread")).to_contain_text("“1,500 W”: is that 1500 W or 1.5 W?")
    assert fragment(page) == ""
    page.get_by_role("button", name="1500 W", exact=True).click()

    expect(headline(page)).to_have_text(core("n 2m 1500 W fm")["verdict"]["headline"])
    expect(page.get_by_label("Or type the question")).to_have_value("n 2m 1500 W fm")
    expect(page.locator("#unread li")).to_have_count(0)


def test_a_better_way_is_taken_by_a_tap(visit: Visit) -> None:
    """A proposal changes question, matrix and answer."""
    page = settled(visit())
    ask(page, TYPED)
    first = core()["better"][0]

    question(page).get_by_role("button", name=first["title"]).click()

    wanted = core(**first["changes"], text="so239 1kw ft8 10m")
    expect(headline(page)).to_have_text(wanted["verdict"]["headline"])
    expect(question(page).get_by_label("SWR", exact=True)).to_have_value(str(first["changes"]["vswr"]))
    expect(page.locator("td[data-open]")).to_contain_text(f"+{first['margin_db']:.1f}")


def test_why_opens_the_derivation(visit: Visit) -> None:
    """ "Why" opens the cell's derivation; closed, the cell stays chosen and the question stands."""
    page = settled(visit())
    ask(page, TYPED)
    expect(headline(page)).to_have_text(core()["verdict"]["headline"])

    question(page).get_by_role("button", name="Why").click()

    expect(sheet(page).get_by_role("heading", name="UHF on 10 m")).to_be_visible()
    drawn(page)
    page.keyboard.press("Escape")
    expect(sheet(page)).to_have_count(0)
    expect(page.locator("td[data-open]")).to_have_attribute("data-band", "10m")
    expect(headline(page)).to_have_text(core()["verdict"]["headline"])


def test_a_cell_of_the_matrix_becomes_the_question(visit: Visit) -> None:
    """Who taps a cell below sees it asked above, and its answer."""
    page = settled(visit())

    page.locator("td[data-family='tnc'][data-band='20m']").click()

    expect(question(page).get_by_label("Connector", exact=True)).to_have_value("tnc")
    expect(headline(page)).to_have_text(core("tnc 20m 100 w")["verdict"]["headline"])


def test_words_are_completed(visit: Visit) -> None:
    """The field offers names that the last word begins."""
    page = settled(visit())

    page.get_by_label("Or type the question").type("1kw ft")

    offers = page.locator("#offers option").evaluate_all("(all) => all.map((one) => one.value)")
    assert "1kw FT8" in offers


def test_keys_alone_do(visit: Visit) -> None:
    """By Tab and arrow keys a menu changes, the typed line is answered, and "Why" opens and closes."""
    page = settled(visit())
    question(page).get_by_label("Mode", exact=True).focus()
    page.keyboard.type("FT8")
    expect(question(page).get_by_label("Mode", exact=True)).to_have_value("ft8")
    for _ in range(4):
        page.keyboard.press("Tab")
    page.keyboard.type("n 2m 100w")
    page.keyboard.press("Enter")
    expect(question(page).get_by_label("Connector", exact=True)).to_have_value("n")
    expect(headline(page)).to_have_text(core("n 2m 100w ft8")["verdict"]["headline"])

    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")

    expect(sheet(page).get_by_role("heading", name="N on 2 m")).to_be_visible()
    page.keyboard.press("Escape")
    expect(sheet(page)).to_have_count(0)


OFTEN = [("phone", "light"), ("desktop", "dark"), ("narrow", "light")]
LOOKS = [
    pytest.param(size, scheme, marks=[] if (size, scheme) in OFTEN else pytest.mark.nightly)
    for size in (*SIZES, "narrow")
    for scheme in ("light", "dark")
]


@pytest.mark.parametrize(("size", "scheme"), LOOKS)
def test_the_question_is_accessible(visit: Visit, size: str, scheme: str) -> None:
    """No automatic check finds a barrier, with an answer, proposals and something not understood on the screen."""
    options = PHONE_NARROW if size == "narrow" else SIZES[size]
    page = settled(visit(prepare=lambda context: context.add_init_script(path=AXE), color_scheme=scheme, **options))
    ask(page, f"{TYPED} outdoors zorp")
    expect(headline(page)).to_have_text(core()["verdict"]["headline"])

    found = page.evaluate(
        "(part) => axe.run(part).then(({violations}) => violations.map(({id}) => id))",
        {"include": [{"fromShadowDom": ["jw-app", "jw-question"]}]},
    )

    assert found == []
    boxes = (
        question(page)
        .locator("select, input, button")
        .evaluate_all("(all) => all.map((one) => one.getBoundingClientRect()).map(({left, right}) => [left, right])")
    )
    assert all(left >= 0 and right <= options["viewport"]["width"] for left, right in boxes)


@pytest.mark.parametrize("size", SIZES)
def test_nothing_jumps_when_the_answer_comes(visit: Visit, size: str) -> None:
    """The room of the first answer is kept for it."""
    page = visit(**SIZES[size])
    with shifts(page) as found:
        settled(page)
        expect(headline(page)).to_be_visible()

    assert found[0] <= MOST_SHIFT


def test_paper_has_the_question_and_its_answer(visit: Visit) -> None:
    """What was asked is printed with its verdict in one paragraph; a matrix that was not asked anything prints none."""
    page = settled(visit())
    on_paper = question(page).locator(".onpaper")
    page.emulate_media(media="print")
    expect(question(page)).to_be_hidden()
    page.emulate_media(media="screen")
    wanted = core()

    ask(page, TYPED)
    expect(headline(page)).to_have_text(wanted["verdict"]["headline"])
    page.emulate_media(media="print")

    expect(on_paper).to_be_visible()
    expect(on_paper).to_contain_text(f"{wanted['sentence']}: {wanted['verdict']['headline']}.")
