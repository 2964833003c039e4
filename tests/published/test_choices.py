"""Twenty-five joints of different stations: which families the trade would fit, and why no others.

The sets are the trade's reasoning, written down by hand without asking the core: what is sold for the cable, what is
customary at the power and frequency, what keeps water out, what lasts. Where the core passes more, or less, the row
names each family with the reason. A row judges the families of `JUDGED`: those it passes over must fail. A family that
is not among them may do either. All at VSWR 1.5, 40 °C, sea level, Region 1 and five matings a year for ten years where
nothing else is said.
"""

import json
from typing import NamedTuple

import pytest

from jointwise.calc.operations import call

JUDGED = {
    *("uhf", "mini_uhf", "bnc", "bnc_75", "tnc", "n", "n_75", "c", "hn", "7_16", "4_3_10"),
    *("sma", "rp_sma", "smb", "mcx", "mmcx", "3_5mm", "2_92mm", "f"),
}
COMMON_PRACTICE = "common practice"
DURABILITY = "MIL-PRF-39012 slash sheets, 500 matings, from memory"
SEALING = "IEC 60529, meaning of the second numeral"

PRECISION = "in figures it carries this; a laboratory part nobody would buy for it"
REVERSED = "in figures the same as SMA; made so that it does not mate with what a station has"
OTHER_IMPEDANCE = "25 mm of 75 Ω matter little at this frequency; in practice it is left to 75 Ω lines"
SHORT_STEP = "a short section of 50 Ω matters little here; the trade keeps to parts of the line's impedance"
ON_THICK_CABLE = "clamped on RG-213 it carries what the cable does; the trade keeps it to thinner cables"
CABLE_DECIDES = "a clean contact gets little hotter than its cable; the trade would not put that power through it"
BNC_VOLTAGE = "500 V, even as peak, are enough at this SWR; the trade stops at a few hundred watts with BNC"


class Situation(NamedTuple):
    """A joint, the families the trade would fit with source and reason, and where the core says otherwise."""

    what: str
    request: dict
    expected: str
    source: str
    why: str
    differs: dict[str, str]


SITUATIONS = [
    Situation(
        "100 W voice on 20 m, shack",
        {"bands": ["20m"], "power_w": 100, "cable": "rg_58"},
        "uhf bnc tnc n c mini_uhf sma",
        COMMON_PRACTICE,
        "sold to crimp on RG-58 and good for 100 W at HF; the big and the snap-on families are not, F only receives",
        {"bnc_75": OTHER_IMPEDANCE, "3_5mm": PRECISION, "rp_sma": REVERSED},
    ),
    Situation(
        "legal-limit voice on HF, shack",
        {"bands": ["160m", "80m", "40m", "20m", "15m", "10m"], "power_w": 1500, "cable": "rg_213"},
        "uhf n hn c 7_16 4_3_10",
        COMMON_PRACTICE,
        "UHF and N are the common choice, the larger ones do too; BNC, TNC and smaller are not used here",
        {"n_75": OTHER_IMPEDANCE, "tnc": ON_THICK_CABLE},
    ),
    Situation(
        "400 W digital on 80 m, thin cable",
        {"bands": ["80m"], "power_w": 400, "mode": "ft8", "cable": "rg_58"},
        "uhf n c tnc bnc",
        COMMON_PRACTICE,
        "RG-58 parts of bayonet size and up; fifteen-second carriers are too much for mini-UHF and SMA",
        {
            "bnc_75": OTHER_IMPEDANCE,
            "3_5mm": PRECISION,
            "rp_sma": REVERSED,
            **dict.fromkeys(("sma", "mini_uhf"), CABLE_DECIDES),
        },
    ),
    Situation(
        "5 W Morse in a field, swapped every week",
        {
            "bands": ["40m", "20m"],
            "power_w": 5,
            "mode": "cw",
            "installation": "portable",
            "cable": "rg_174",
            "matings_per_year": 50,
        },
        "bnc tnc n",
        DURABILITY,
        "five hundred matings in ten years are the life of N, TNC and BNC; brass SMA is good for a fifth of it",
        {"bnc_75": OTHER_IMPEDANCE},
    ),
    Situation(
        "50 W FM on 2 m and 70 cm in a car",
        {"bands": ["2m", "70cm"], "power_w": 50, "mode": "fm", "installation": "vehicle", "cable": "rg_58"},
        "uhf mini_uhf bnc tnc n",
        COMMON_PRACTICE,
        "what mobile radios and aerial feet come with",
        {
            "uhf": "the core keeps UHF to its customary 300 MHz; cars everywhere have it on 70 cm",
            "3_5mm": PRECISION,
            "rp_sma": REVERSED,
            "bnc_75": OTHER_IMPEDANCE,
            **dict.fromkeys(("c", "sma"), "carries what RG-58 does, but is rarely seen in a car"),
        },
    ),
    Situation(
        "50 W FM on 2 m and 70 cm on a mast",
        {"bands": ["2m", "70cm"], "power_w": 50, "mode": "fm", "installation": "mast", "cable": "foam_10_mm"},
        "n tnc hn 7_16 4_3_10",
        COMMON_PRACTICE,
        "the gasketed threaded families made for 10 mm cable; UHF is no weatherproof joint and past its frequency",
        {},
    ),
    Situation(
        "the same, taped",
        {
            "bands": ["2m", "70cm"],
            "power_w": 50,
            "mode": "fm",
            "installation": "mast",
            "cable": "foam_10_mm",
            "added_sealing": True,
        },
        "n tnc hn 7_16 4_3_10 c",
        COMMON_PRACTICE,
        "tape makes an unsealed joint fit for weather, which adds C; it does not make UHF fit for 70 cm",
        {},
    ),
    Situation(
        "10 W on 23 cm on a mast",
        {"bands": ["23cm"], "power_w": 10, "installation": "mast", "cable": "foam_10_mm"},
        "n 7_16 4_3_10 tnc",
        COMMON_PRACTICE,
        "N is the customary one; UHF is not used at all on 23 cm, BNC is not sealed",
        {"hn": "HN is made up to 4 GHz and does, though nobody would buy it for 23 cm"},
    ),
    Situation(
        "150 W on 23 cm on a mast, thick cable",
        {"bands": ["23cm"], "power_w": 150, "installation": "mast", "cable": "foam_15_mm"},
        "n 7_16 4_3_10",
        COMMON_PRACTICE,
        "what 15 mm foam cable is terminated in",
        {},
    ),
    Situation(
        "750 W digital on 2 m through 7/8 inch",
        {"bands": ["2m"], "power_w": 750, "mode": "ft8", "installation": "mast", "cable": "corrugated_7_8"},
        "7_16 n",
        COMMON_PRACTICE,
        "7/8 inch cable comes with 7/16 or N",
        {},
    ),
    Situation(
        "hand-held aerial swapped daily",
        {
            "bands": ["2m", "70cm"],
            "power_w": 5,
            "mode": "fm",
            "installation": "portable",
            "cable": "rg_316",
            "matings_per_year": 200,
        },
        "",
        DURABILITY,
        "two thousand matings: no family is specified for more than five hundred",
        {},
    ),
    Situation(
        "1 W on 13 cm, patch lead",
        {"bands": ["13cm"], "power_w": 1, "mode": "fm", "cable": "rg_316"},
        "sma mcx mmcx smb bnc tnc n",
        COMMON_PRACTICE,
        "all of them are sold to crimp on RG-316 and used to 2.4 GHz and beyond",
        {"3_5mm": PRECISION, "2_92mm": PRECISION, "rp_sma": REVERSED},
    ),
    Situation(
        "3 W on 3 cm, indoors",
        {"bands": ["3cm"], "power_w": 3, "cable": "rg_402"},
        "sma n tnc 3_5mm 2_92mm",
        COMMON_PRACTICE,
        "SMA on 3.6 mm semi-rigid is customary; N and TNC end at 11 GHz, BNC at 4 GHz",
        {},
    ),
    Situation(
        "3 W on 3 cm on a mast",
        {"bands": ["3cm"], "power_w": 3, "installation": "mast", "cable": "rg_402"},
        "n tnc",
        COMMON_PRACTICE,
        "the two that are gasketed; SMA goes inside a box",
        {},
    ),
    Situation(
        "receive-only down-lead, 75 Ω",
        {"use": "receive", "bands": ["2m", "70cm"], "cable": "rg_6", "system_impedance_ohm": 75},
        "f bnc_75 n_75",
        COMMON_PRACTICE,
        "the 75 Ω families; F is made for it",
        {"tnc": SHORT_STEP, "4_3_10": SHORT_STEP},
    ),
    Situation(
        "100 W on 20 m through 75 Ω cable",
        {"bands": ["20m"], "power_w": 100, "cable": "rg_6", "system_impedance_ohm": 75},
        "uhf bnc_75 n_75",
        COMMON_PRACTICE,
        "UHF has no impedance of its own at HF, the others are made for 75 Ω; F is not for transmitting",
        {"n": SHORT_STEP, "c": SHORT_STEP, "tnc": SHORT_STEP, "4_3_10": SHORT_STEP},
    ),
    Situation(
        "a joint under water",
        {"bands": ["20m"], "power_w": 100, "exposure": "immersed"},
        "",
        SEALING,
        "IP67 is one metre for half an hour; none is sold for a life under water",
        {},
    ),
    Situation(
        "field day, VSWR 3",
        {"bands": ["20m"], "power_w": 100, "vswr": 3, "installation": "portable", "cable": "rg_58"},
        "uhf bnc tnc n c mini_uhf sma",
        COMMON_PRACTICE,
        "a VSWR of 3 doubles the heat at the worst place and 100 W at HF leave room for it",
        {"bnc_75": OTHER_IMPEDANCE, "rp_sma": REVERSED},
    ),
    Situation(
        "25 W FM on 70 cm behind a UHF socket",
        {"bands": ["70cm"], "power_w": 25, "mode": "fm", "port": "uhf", "cable": "rg_58"},
        "uhf bnc n tnc",
        COMMON_PRACTICE,
        "the plug that fits, or an adapter to what RG-58 is usually given",
        {
            "c": "would do behind the adapter",
            "bnc_75": OTHER_IMPEDANCE,
            "sma": "would do behind the adapter",
            "rp_sma": REVERSED,
            "3_5mm": PRECISION,
            "mini_uhf": "would do behind the adapter",
        },
    ),
    Situation(
        "club jumper joined every day for ten years",
        {
            "bands": ["2m"],
            "power_w": 50,
            "mode": "fm",
            "installation": "portable",
            "cable": "rg_58",
            "matings_per_year": 365,
        },
        "",
        DURABILITY,
        "3650 matings: five hundred is the most any family here is good for",
        {},
    ),
    Situation(
        "400 W digital on 6 m at 3000 m",
        {"bands": ["6m"], "power_w": 400, "mode": "ft8", "cable": "rg_213", "altitude_m": 3000},
        "uhf n c hn 7_16 4_3_10",
        COMMON_PRACTICE,
        "thin air takes a third of the voltage; the families for RG-213 have it to spare, the bayonet ones do not",
        {"n_75": OTHER_IMPEDANCE, "tnc": ON_THICK_CABLE},
    ),
    Situation(
        "100 W on 20 m in a narrow box",
        {"bands": ["20m"], "power_w": 100, "largest_diameter_m": 0.012, "cable": "rg_58"},
        "sma rp_sma mini_uhf",
        COMMON_PRACTICE,
        "12 mm are less than a BNC, about 14 mm, takes",
        {"3_5mm": PRECISION},
    ),
    Situation(
        "1 kW voice on 2 m, PTFE cable",
        {"bands": ["2m"], "power_w": 1000, "cable": "rg_142"},
        "n tnc c uhf",
        COMMON_PRACTICE,
        "PTFE cable stands the heat; BNC lacks the voltage, and the big families are not made for 5 mm cable",
        {"bnc_75": OTHER_IMPEDANCE, "rp_sma": REVERSED, "sma": CABLE_DECIDES, "bnc": BNC_VOLTAGE},
    ),
    Situation(
        "20 W on 9 cm and 5 cm, semi-rigid",
        {"bands": ["9cm", "5cm"], "power_w": 20, "mode": "fm", "cable": "rg_402"},
        "n tnc sma rp_sma 3_5mm 2_92mm",
        COMMON_PRACTICE,
        "what 3.6 mm semi-rigid is given; BNC ends at 4 GHz",
        {},
    ),
    Situation(
        "100 W on 20 m, strong shaking",
        {"bands": ["20m"], "power_w": 100, "vibration": "severe", "cable": "rg_400"},
        "n tnc sma",
        COMMON_PRACTICE,
        "threaded and torqued: a bayonet chatters, a UHF ring works loose",
        {},
    ),
]


@pytest.mark.parametrize("row", SITUATIONS, ids=[row.what for row in SITUATIONS])
def test_the_families_the_trade_would_fit_pass(row):
    """In each situation the trade's families pass and no other one judged, but for those the row tells of."""
    passing = json.loads(call("choose", json.dumps(row.request).encode()))["passing"]

    assert set(passing) & JUDGED == set(row.expected.split()) ^ set(row.differs), f"{row.why} ({row.source})"


def test_what_the_trade_fits_in_a_car_passes_in_overs():
    """50 W FM on 70 cm through RG-58: with half the time on the air all pass but UHF, too high for its custom."""
    (row,) = (row for row in SITUATIONS if row.what == "50 W FM on 2 m and 70 cm in a car")

    passing = json.loads(call("choose", json.dumps({**row.request, "transmit_share": 0.5}).encode()))["passing"]

    assert set(row.expected.split()) - set(passing) == {"uhf"}


def test_there_are_twenty_five_different_situations():
    """Twenty-five rows, no two alike, each with its source and reason."""
    assert len(SITUATIONS) == len({row.what for row in SITUATIONS}) == 25
    assert all(row.source and row.why and all(row.differs.values()) for row in SITUATIONS)
    assert set().union(*(row.expected.split() for row in SITUATIONS), *(row.differs for row in SITUATIONS)) <= JUDGED
