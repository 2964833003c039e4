"""The page's invented measurements are what their script makes, and show what they are meant to show."""

import json

import numpy as np
import pytest

from jointwise.assemble.example_sweeps import DECIMALS, EXAMPLES, MODULE, measured_jumper, measured_line
from jointwise.calc.operations import call
from jointwise.calc.waves.touchstone import read_touchstone

MADE = {"line": measured_line, "jumper": measured_jumper}
COMMITTED = json.loads(MODULE.read_text("utf-8").partition(" = ")[2].rstrip().removesuffix(";"))


@pytest.mark.parametrize("example", EXAMPLES)
def test_the_page_holds_what_the_script_makes(example):
    """The committed text is the script's, to the last digit printed."""
    committed, made = (
        read_touchstone(text, "touchstone").s for text in (COMMITTED[example]["file"]["text"], MADE[example]())
    )

    assert np.abs(committed - made).max() <= 2 * 10**-DECIMALS
    assert {name: COMMITTED[example][name] for name in EXAMPLES[example]} == EXAMPLES[example]
    assert COMMITTED[example]["file"]["text"].startswith("! Invented")


def test_the_example_line_has_its_third_joint_named():
    """The joint that was given 1.2 Ω is named, with a size near that."""
    line = COMMITTED["line"]
    body = json.dumps({**{name: line[name] for name in ("elements", "load")}, "touchstone": line["file"]["text"]})

    check = json.loads(call("sweep", body.encode()))["line"]

    assert check["suspect"] == 4
    assert check["candidates"][0]["sizes"][0]["value"] == pytest.approx(1.2, rel=0.1)
