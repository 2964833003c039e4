"""What the trade would fit first: joints of amateur stations, and the connector an experienced operator takes.

Written down by hand without asking the core; each row is common practice, no source. `first` are the families that
would do in the first place, `later` those he would laugh at there: they may pass, but none before the first. Where the
margin decides, as with the legal limit, the row says so. All at VSWR 1.5, 40 °C, sea level, Region 1 and five matings
a year for ten years where nothing else is said.
"""

import json
from typing import NamedTuple

import pytest

from jointwise.calc.operations import call


class Joint(NamedTuple):
    """A joint, what comes first there, what must not, and why."""

    what: str
    request: dict
    first: str
    later: str
    why: str


HF = ["80m", "40m", "20m", "15m", "10m"]
JOINTS = [
    Joint(
        "100 W HF, SO-239 on the rig, RG-58",
        {"bands": HF, "port": "uhf", "cable": "rg_58"},
        "uhf",
        "sma mmcx 3_5mm bnc_75",
        "the plug that fits the rig",
    ),
    Joint(
        "100 W HF, SO-239 on the rig, RG-213",
        {"bands": HF, "port": "uhf", "cable": "rg_213"},
        "uhf",
        "7_16 tnc hn",
        "the plug that fits the rig",
    ),
    Joint(
        "100 W on 20 m, nothing else known",
        {},
        "uhf",
        "mmcx mcx smb sma 7_16 hn 2_92mm",
        "HF sets of a hundred watts have an SO-239",
    ),
    Joint(
        "50 W FM on 2 m outdoors, 10 mm foam",
        {"bands": ["2m"], "power_w": 50, "mode": "fm", "exposure": "exposed", "cable": "foam_10_mm"},
        "n",
        "uhf 7_16 hn n_75",
        "weatherproof as it is and made for the cable",
    ),
    Joint(
        "the same on a mast, taped: still no UHF",
        {"bands": ["2m"], "power_w": 50, "mode": "fm", "installation": "mast_taped", "cable": "foam_10_mm"},
        "n",
        "uhf c",
        "what needs no tape comes before what does",
    ),
    Joint(
        "10 W on 1296 MHz, 10 mm foam",
        {"bands": ["23cm"], "power_w": 10, "cable": "foam_10_mm"},
        "n",
        "uhf hn c 7_16",
        "N is customary on 23 cm, UHF is not used at all",
    ),
    Joint(
        "150 W on 1296 MHz on a mast, 15 mm foam",
        {"bands": ["23cm"], "power_w": 150, "installation": "mast", "cable": "foam_15_mm"},
        "n 7_16",
        "uhf hn",
        "what 15 mm foam cable is terminated in",
    ),
    Joint(
        "3 W on 10 GHz, semi-rigid",
        {"bands": ["3cm"], "power_w": 3, "cable": "rg_402"},
        "sma",
        "3_5mm 2_92mm n bnc uhf",
        "SMA on 3.6 mm semi-rigid; laboratory parts stay in the laboratory",
    ),
    Joint(
        "1.5 kW RTTY on 10 m outdoors, half-inch cable",
        {"bands": ["10m"], "power_w": 1500, "mode": "rtty", "exposure": "exposed", "cable": "corrugated_1_2"},
        "n 7_16 4_3_10",
        "uhf bnc tnc sma n_75",
        "continuous carrier at the legal limit: N or larger, by the margin",
    ),
    Joint(
        "legal limit SSB on HF, RG-213",
        {"bands": HF, "power_w": 1500, "cable": "rg_213"},
        "n",
        "uhf tnc bnc hn n_75 7_16",
        "N; the UHF parts fitted there everywhere are at their limit by voltage",
    ),
    Joint(
        "the same into the SO-239 of an amplifier",
        {"bands": HF, "power_w": 1500, "cable": "rg_213", "port": "uhf"},
        "uhf",
        "n 7_16 tnc",
        "the socket stays whatever hangs behind it",
    ),
    Joint(
        "5 W hand-held, thin cable",
        {"bands": ["2m", "70cm"], "power_w": 5, "mode": "fm", "installation": "handheld", "cable": "rg_174"},
        "sma bnc",
        "uhf n rp_sma mini_uhf",
        "what hand-helds come with",
    ),
    Joint(
        "5 W hand-held, aerial swapped every fortnight",
        {"bands": ["2m"], "power_w": 5, "mode": "fm", "installation": "handheld", "matings_per_year": 25},
        "bnc",
        "sma uhf",
        "SMA is worn out in four years of it, the bayonet is made for it",
    ),
    Joint(
        "1 W on 2.4 GHz, thin PTFE cable",
        {"bands": ["13cm"], "power_w": 1, "mode": "fm", "cable": "rg_316"},
        "sma",
        "rp_sma 3_5mm n uhf bnc_75",
        "SMA on RG-316; the reversed one is for wireless network gear",
    ),
    Joint(
        "20 W on 2.4 GHz on a mast, 10 mm foam",
        {"bands": ["13cm"], "power_w": 20, "mode": "fm", "installation": "mast", "cable": "foam_10_mm"},
        "n",
        "tnc hn 7_16",
        "weatherproof and made for the cable",
    ),
    Joint(
        "50 W FM in a car, SO-239 on the set",
        {"bands": ["2m"], "power_w": 50, "mode": "fm", "installation": "vehicle", "cable": "rg_58", "port": "uhf"},
        "uhf",
        "bnc sma 3_5mm",
        "the plug that fits the set",
    ),
    Joint(
        "25 W FM on 70 cm, SO-239 on the set",
        {"bands": ["70cm"], "power_w": 25, "mode": "fm", "cable": "rg_58", "port": "uhf"},
        "uhf",
        "bnc sma bnc_75",
        "past its custom, but an adapter leaves the same joint there",
    ),
    Joint(
        "20 W FM on 2 m and 70 cm in a car, no socket given",
        {"bands": ["2m", "70cm"], "power_w": 20, "mode": "fm", "installation": "vehicle", "cable": "rg_58"},
        "bnc n tnc",
        "3_5mm rp_sma bnc_75 c",
        "what sets for both bands and aerial feet come with, but UHF, which is not for 70 cm",
    ),
    Joint(
        "5 W Morse in a field, thin cable",
        {"bands": ["40m", "20m"], "power_w": 5, "mode": "cw", "installation": "portable", "cable": "rg_174"},
        "bnc",
        "sma 3_5mm mmcx n",
        "small sets have BNC",
    ),
    Joint(
        "750 W digital on 2 m through 7/8 inch",
        {"bands": ["2m"], "power_w": 750, "mode": "ft8", "installation": "mast", "cable": "corrugated_7_8"},
        "n 7_16",
        "uhf hn",
        "7/8 inch cable comes with 7/16 or N",
    ),
    Joint(
        "receive on 75 Ω television cable",
        {"use": "receive", "bands": ["2m", "70cm"], "cable": "rg_6", "system_impedance_ohm": 75},
        "f",
        "tnc 4_3_10 n",
        "F is made for it",
    ),
    Joint(
        "receive, BNC on the receiver",
        {"use": "receive", "bands": ["70cm"], "cable": "rg_58", "port": "bnc"},
        "bnc",
        "sma 3_5mm bnc_75",
        "the plug that fits the receiver",
    ),
    Joint(
        "preamplifier at the mast fed through the coax, 10 mm foam",
        {"use": "receive", "bands": ["2m"], "cable": "foam_10_mm", "installation": "mast", "dc_current_a": 0.5},
        "n",
        "uhf hn 7_16",
        "half an ampere is nothing to N",
    ),
]


@pytest.mark.parametrize("joint", JOINTS, ids=[joint.what for joint in JOINTS])
def test_what_the_trade_would_fit_comes_first(joint):
    """The first is one of those an operator takes, and none he would laugh at stands before the last of these."""
    passing = json.loads(call("choose", json.dumps(joint.request).encode()))["passing"]

    assert passing[0] in joint.first.split(), joint.why
    last = max(passing.index(family) for family in joint.first.split() if family in passing)
    assert not set(passing[:last]) & set(joint.later.split()), joint.why


def test_on_the_legal_limit_the_margin_asked_for_decides():
    """1.5 kW SSB on RG-213: UHF, at its limit by voltage, comes first only where no margin is asked for."""
    (joint,) = (joint for joint in JOINTS if joint.what.startswith("legal limit"))

    def first(asked_db):
        return json.loads(call("choose", json.dumps({**joint.request, "margin_asked_db": asked_db}).encode()))

    assert first(0)["passing"][0] == "uhf"
    assert first(3)["passing"][0] == "n"
    assert "UHF" not in first(3)["verdict"]
