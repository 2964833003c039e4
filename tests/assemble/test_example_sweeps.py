"""The page's invented measurements are what their script makes, and show what they are meant to show."""

import json

import numpy as np
import pytest

from jointwise.assemble.example_sweeps import DECIMALS, EXAMPLES, MODULE, measured_jumper, measured_line
from jointwise.calc.operations import call
from jointwise.calc.waves.touchstone import read_touchstone

MADE = {
    ("line", "file"): measured_line,
    ("line", "after"): lambda: measured_line(0.0, 13),
    ("jumper", "file"): measured_jumper,
}
COMMITTED = json.loads(MODULE.read_text("utf-8").partition(" = ")[2].rstrip().removesuffix(";"))


@pytest.mark.parametrize(("example", "which"), MADE)
def test_the_page_holds_what_the_script_makes(example, which):
    """The committed text is the script's, to the last digit printed."""
    text = COMMITTED[example][which]["text"]
    committed, made = (read_touchstone(one, "touchstone").s for one in (text, MADE[example, which]()))

    assert np.abs(committed - made).max() <= 2 * 10**-DECIMALS
    assert {name: COMMITTED[example][name] for name in EXAMPLES[example]} == EXAMPLES[example]
    assert text.startswith("! Example")


def judged(which):
    """What the core says of a file of the example line."""
    line = COMMITTED["line"]
    body = json.dumps({**{name: line[name] for name in ("elements", "load")}, "touchstone": line[which]["text"]})
    return json.loads(call("sweep", body.encode()))["line"]


def test_the_mended_line_is_sound():
    """Of the sweep after the repair no joint is named."""
    assert judged("after")["finding"] == "sound"


def test_the_example_line_has_its_third_joint_named():
    """The joint that was given 4 Ω is named, with a size near that."""
    check = judged("file")

    assert check["suspect"] == 4
    assert check["candidates"][0]["sizes"][0]["value"] == pytest.approx(4.0, rel=0.1)
