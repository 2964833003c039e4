"""The saved page in every engine: it computes from disk, asks nobody, keeps its policy, and reads without scripts."""

import json
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

import pytest
from engines import ENGINES, SAVED, Engine, View
from expected import Numbers, asked, numbers
from playwright.sync_api import Error
from selenium.common import WebDriverException

ELSEWHERE = "http://elsewhere.invalid/"
UNFOLD = "() => readers.everywhere('details').forEach((one) => (one.open = true))"
"""What is folded comes with what is unfolded around it: the formulas after the second time."""
CHARTS_OWN = {"ResizeObserver loop completed with undelivered notifications.", "Script error."}
"""The charts' loop of sizes, and the same where a file may not tell more of it."""
STATION = {"vswr": 2, "mode": "fm"}
PICTURE = """async () => {
  const sheet = document.createElement('jw-codes');
  sheet.texts = [`JW1:1:3:00000000:${'A0'.repeat(400)}`, 'JW1:3:3:00000000:A0'];
  document.body.append(sheet);
  await sheet.updateComplete;
  const canvas = Object.assign(document.createElement('canvas'), {width: 1400, height: 700});
  const pen = canvas.getContext('2d');
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, 1400, 700);
  pen.fillStyle = '#000';
  pen.rotate(0.1);
  [...sheet.shadowRoot.querySelectorAll('svg')].forEach((code, at) => {
    const side = 500 / code.viewBox.baseVal.width;
    pen.save();
    pen.translate(120 + at * 600, 30);
    pen.scale(side, side);
    pen.fill(new Path2D(code.querySelector('path').getAttribute('d')));
    pen.restore();
  });
  sheet.remove();
  const blob = await new Promise((done) => canvas.toBlob(done, 'image/png'));
  const files = new DataTransfer();
  files.items.add(new File([blob], 'sheet.png', {type: 'image/png'}));
  const [field] = readers.everywhere('#open-pictures');
  field.files = files.files;
  field.dispatchEvent(new Event('change'));
}"""
"""Hands the page a picture of two codes of three, slightly turned."""
LINK = "#vswr=2&mode=fm&family=n&band=2m"


@pytest.fixture(params=ENGINES)
def engine(request: pytest.FixtureRequest) -> Engine:
    """One engine after the other."""
    return ENGINES[request.param]


@pytest.fixture
def view(engine: Engine) -> Iterator[View]:
    """A view that must have asked nobody and broken no rule when the test ends."""
    with engine() as view:
        yield view
        assert view.asked() == []
        assert view.wrong() == []


def assert_numbers(view: View, wanted: Numbers) -> None:
    """The cells come to print these numbers."""
    view.comes("(wanted) => JSON.stringify(readers.numbers()) === JSON.stringify(wanted)", wanted)

    assert view.run("() => readers.numbers()") == wanted


def assert_verdict(view: View, wanted: str) -> None:
    """A derivation comes to open with this verdict."""
    view.comes("(wanted) => readers.everywhere('#verdict')[0]?.textContent === wanted", wanted)

    assert view.run("() => readers.everywhere('#verdict').map((one) => one.textContent)") == [wanted]


def test_a_changed_control_brings_the_cores_numbers(view: View) -> None:
    """From disk the core goes live, and a control that is changed brings its numbers."""
    view.open()
    view.ready()

    view.enter("#vswr", "3")

    assert_numbers(view, numbers(vswr=3))


def test_a_cell_opens_its_derivation(view: View) -> None:
    """A click on a cell opens the core's verdict, with the formulas written out and all three charts drawn."""
    view.open()
    view.ready()

    view.click("td[data-family=uhf][data-band='70cm']")

    assert_verdict(view, asked("cell", family="uhf", band="70cm", power_w=100)["verdict"])
    view.run(UNFOLD)
    assert view.comes("() => readers.everywhere('.scatterlayer path.point').length === 3")
    view.run(UNFOLD)
    assert view.comes("() => readers.everywhere('math')[0]?.getBoundingClientRect().height > 0")


def test_a_link_and_a_reload_restore_the_view(view: View) -> None:
    """A fragment sets the station and opens a cell, and both are there again after a reload."""
    verdict = asked("cell", family="n", band="2m", power_w=100, **STATION)["verdict"]
    view.open(LINK)
    view.ready()
    assert_numbers(view, numbers(**STATION))
    assert_verdict(view, verdict)

    view.reload()
    view.ready()

    assert_numbers(view, numbers(**STATION))
    assert_verdict(view, verdict)


def test_the_policy_refuses_page_and_worker(engine: Engine) -> None:
    """The page can ask nobody, nor begin a worker that could, and an attempt is noted."""
    with engine() as view:
        view.open()

        answer = view.run(
            """async (elsewhere) => {
              new Image().src = `${elsewhere}image`;
              const script = `fetch('${elsewhere}worker').then(() => postMessage('came'), () => postMessage('no'))`;
              try {
                const worker = new Worker(URL.createObjectURL(new Blob([script])));
                return new Promise((resolve) => { worker.onmessage = ({data}) => resolve(data); });
              } catch {
                return 'no';
              }
            }""",
            ELSEWHERE,
        )

        assert answer == "no"
        assert f"{ELSEWHERE}worker" not in view.asked()
        image = f"img-src {ELSEWHERE}image"
        assert view.comes("(image) => wrong.includes(image)", image)
        assert all(one == image or one.startswith("require-trusted-types-for") for one in view.wrong())


def test_a_request_would_be_noted(engine: Engine) -> None:
    """An address outside the file that is asked for is in the log, so that an empty log means something."""
    with engine() as view:
        with suppress(Error, WebDriverException):
            view.go(ELSEWHERE)

        assert ELSEWHERE in view.logged()


def test_what_a_page_carries_is_there_in_every_engine(engine: Engine, tmp_path: Path) -> None:
    """A file with a line of the reader's in it shows that line, under the policy of the file."""
    name = "Hut </script><script>window.ran=1</script>"
    line = {
        "name": name,
        "request": {"elements": [{"kind": "joint", "family": "n"}], "load": {"kind": "vswr", "vswr": 2}},
    }
    kept = {"lines": {"lines": [line], "current": 0}}
    carried = {"format": "jointwise station", "version": 1, "name": "Hut", "date": "2026-11-29", "kept": kept}
    text = json.dumps(carried).replace("<", "\\u003c")
    file = tmp_path / "own.html"
    file.write_text(SAVED.read_text("utf-8").replace('id="carried">null<', f'id="carried">{text}<'), "utf-8")
    with engine() as view:
        view.go(f"{file.as_uri()}#view=line")
        view.ready()
        assert view.comes("(name) => readers.everywhere('#name')[0]?.value === name", name)
        assert view.run("() => window.ran ?? null") is None
        assert set(view.wrong()) <= CHARTS_OWN


def test_codes_are_read_from_a_picture_in_every_engine(view: View) -> None:
    """From disk the part that reads codes is unpacked under the file's policy, and names the code that is missing."""
    view.open()
    view.ready()
    view.run("() => readers.everywhere('#share')[0].shadowRoot.querySelector('#button').click()")
    view.click("#saving")
    assert view.comes("() => readers.everywhere('#open-pictures').length === 1")

    view.run(PICTURE)

    assert view.comes("() => readers.everywhere('#read')[0].textContent.includes('of 3 codes were read; missing: 2.')")


def test_without_scripts_the_tables_can_be_read(engine: Engine) -> None:
    """With scripts off the matrix, its legend, the cautions and the derivations stand in the file itself."""
    verdict = asked("cell", family="uhf", band="20m", power_w=100)["verdict"]
    with engine(scripts=False) as view:
        view.open()

        assert view.run("() => document.querySelector('jw-app').shadowRoot") is None
        text = view.run("() => document.body.innerText")
        assert [caution for caution in asked("catalogue")["cautions"] if caution not in text] == []
        assert all(step in text for step in ("over the limit below 0", "ample above 10"))
        assert verdict not in text
        view.click("jw-app h2 + p + details > summary")  # the first derivation
        assert verdict in view.run("() => document.body.innerText")
        printed = view.run(
            """() => [...document.querySelectorAll('table.plain')[1].querySelectorAll('td')]
              .map((cell) => (/^([+−]|RL )\\d/.test(cell.innerText) ? cell.firstChild.data : null))"""
        )
        assert printed == numbers()
        assert view.asked() == []
