"""What transmitters do at a bad load, against what amateurs and makers report.

Sources: a measurement of a portable transceiver of 10 W that falls to about 1 W at a very high SWR (2024, an
amateur's page); a mailing list on an amplifier of 500 W that halves its power when 60 W come back (2015); an
amplifier's manual that assures a match up to SWR 3; a mailing list: most protections begin gradually at 2 (2005).
"""

import json

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.feedline.transmitter import TransmitterModel
from jointwise.calc.operations import call

JOINT = {"kind": "joint", "family": "n"}
BAND = "20m"


def held(behaviour):
    """The VSWR up to which a row of the catalogue holds its power."""
    return catalogue().transmitters[behaviour].holds_to_vswr.value


def state(ohm, **transmitter):
    """What the transmitter does behind a good joint."""
    load = {"kind": "impedance", "resistance_ohm": ohm}
    request = {"elements": [JOINT], "load": load, "band": BAND, "transmitter": transmitter}
    return json.loads(call("line", json.dumps(request).encode()))["transmitter"]


def test_ten_watts_fall_to_one_into_nothing():
    """By the measurement; the law leaves a ninth at total reflection of what holds to SWR 2."""
    share = TransmitterModel("", held("transceiver")).share(1.0)

    assert share == pytest.approx(0.1, abs=0.02)


def test_an_amplifier_halves_at_the_reflected_power_reported():
    """500 W forward with 60 W back is where it steps in: SWR 2.06."""
    reflected = (60 / 500) ** 0.5

    assert (1 + reflected) / (1 - reflected) == pytest.approx(held("solid_state_amplifier"), rel=0.05)


def test_a_tuned_output_holds_to_three():
    """By its manual."""
    assert held("valve_amplifier") == 3


def test_a_bad_load_is_said():
    """RG-58 into 2000 Ω was the case: who folds back says by how much, who does not says that few would."""
    folds, holds = state(2000.0), state(2000.0, behaviour="keeps_forward")

    assert folds["folded"]
    assert folds["forward_w"] < 15
    assert "folds back" in folds["sentence"]
    assert not holds["folded"]
    assert holds["forward_w"] == 100.0
    assert "few transmitters" in holds["sentence"]


def test_ones_own_figure_takes_the_place_of_the_rows():
    """A set that begins at 1.5 sends less at SWR 3 than one that begins at 2, and one that holds to 3 sends all."""
    sent = [state(150.0, holds_to_vswr=vswr)["forward_w"] for vswr in (1.5, 2.0, 3.05)]

    assert sent[0] < sent[1] < sent[2] == 100.0


def test_a_good_load_is_not_spoken_of():
    """Below the SWR it holds to all is sent, and nothing is said."""
    assert state(60.0) == {
        "name": "Transceiver, folds back",
        "holds_to_vswr": 2.0,
        "set_w": 100.0,
        "forward_w": 100.0,
        "forward_low_w": 100.0,
        "folded": False,
        "sentence": "",
    }
