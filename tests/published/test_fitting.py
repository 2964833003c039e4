"""Torques, IP codes, galvanic limits and mating lives against what is published."""

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.fitout.galvanic import metal_of
from jointwise.calc.fitout.sealing import ip_meaning
from jointwise.calc.fitout.torque import torque
from jointwise.calc.physics.gates import cable_fits

IEEE_287 = "IEEE 287-2007 table of coupling torques, restated on an engineering reference page"
BULLETIN = "cable maker's field bulletin 7634613 rev A"
ARTICLE = "encyclopedia article on SMA"

TORQUES = [  # family, lowest and highest printed N·m, source
    ("n", 1.5 - 0.2, 2.8, f"{IEEE_287}; {BULLETIN}"),
    ("2_92mm", 0.8 - 0.2, 0.8 + 0.2, IEEE_287),
    ("7_16", 25, 30, BULLETIN),
    ("sma", 0.3, 0.6, f"{ARTICLE}, brass"),
    ("rp_sma", 0.3, 0.6, f"{ARTICLE}, brass"),
]
INCH_POUNDS = [  # printed in-lb, printed N·m, tolerance of the rounder figure, source
    ("n", 25, 2.8, 0.3, BULLETIN),
    ("7_16", 22 * 12, 30, 3.0, f"{BULLETIN}: 22 lb-ft"),
    ("sma", 5, 0.6, 0.4, f"{ARTICLE}, brass: 5 in-lb"),
]
GALVANIC_TABLE = "published galvanic table, index against gold"
INDEXES = [
    ("gold", 0.00),
    ("silver", 0.15),
    ("nickel", 0.30),
    ("copper", 0.35),
    ("brass", 0.40),
    ("stainless", 0.50),
    ("tin", 0.60),
    ("aluminium", 0.90),
    ("zinc", 1.20),
]
SEA_WATER = "US Naval Research Laboratory, SeawaterPotentialData.xml, volts against a saturated calomel electrode"
GOLD_IN_SEA_WATER_V = 0.14
POTENTIALS = [("aluminium", -0.79), ("aluminium", -0.76), ("zinc", -1.03)]  # 3003-H, 6061-T
ONE_GROUP_V = 0.05  # MIL-DTL-14072F, 3.13: metals within it share an index
LIMITS = [("indoor", 0.50), ("sheltered", 0.25), ("exposed", 0.15), ("immersed", 0.15)]
SHEET = [  # code, words of the meaning: connector maker's note on IP ratings; EN 60529 restated
    ("IP54", ["dust-protected", "splashes from every side"]),
    ("IP65", ["dust-tight", "jets"]),
    ("IP67", ["dust-tight", "1 m deep for 30 minutes"]),
    ("IP68", ["dust-tight", "agreed with the maker"]),
]
PRINTED_DIGIT = 0.005


@pytest.mark.parametrize(("family", "low", "high", "source"), TORQUES)
def test_a_torque_spans_what_is_published(family, low, high, source):
    """The range of a coupling torque runs from the lowest to the highest figure printed."""
    answer = torque(catalogue().interfaces[family])

    assert answer.low_nm == pytest.approx(low, abs=PRINTED_DIGIT), source
    assert answer.high_nm == pytest.approx(high, abs=PRINTED_DIGIT), source


def test_a_brass_sma_is_not_told_the_torque_of_stainless_steel():
    """The sheet tells the two metals apart, and what can't be told counts as brass."""
    brass, stainless = torque(catalogue().interfaces["sma"]).figures.split(", ")

    assert brass == "0.3 to 0.6 N·m (2.7 to 5.3 in-lb) for brass and where the metal is not known", ARTICLE
    assert stainless == "0.8 to 1.1 N·m (7.1 to 9.7 in-lb) for stainless steel", ARTICLE


@pytest.mark.parametrize(("family", "inch_pounds", "newton_metres", "tolerance", "source"), INCH_POUNDS)
def test_inch_pounds_are_those_printed_beside(family, inch_pounds, newton_metres, tolerance, source):
    """The highest torque in in-lb agrees with the figure that the source prints beside its N·m."""
    answer = torque(catalogue().interfaces[family])

    assert answer.high_nm == newton_metres
    assert answer.high_in_lb == pytest.approx(inch_pounds, abs=tolerance), source


@pytest.mark.parametrize(("metal", "volts"), INDEXES)
def test_an_anodic_index_is_the_published_one(metal, volts):
    """A metal's index is that of the table."""
    assert metal_of(metal).anodic_index_v.value == volts, GALVANIC_TABLE


@pytest.mark.parametrize(("metal", "potential"), POTENTIALS)
def test_an_anodic_index_is_the_distance_from_gold_in_sea_water(metal, potential):
    """The indexes of the base metals, of which only a restatement was seen, agree with measured potentials."""
    distance = GOLD_IN_SEA_WATER_V - potential

    assert metal_of(metal).anodic_index_v.value == pytest.approx(distance, abs=ONE_GROUP_V), SEA_WATER


@pytest.mark.parametrize(("exposure", "volts"), LIMITS)
def test_a_galvanic_limit_is_the_published_one(exposure, volts):
    """Controlled, normal and harsh surroundings allow 0.50, 0.25 and 0.15 V, as three pages print."""
    assert catalogue().galvanic_limits[exposure].largest_difference_v.value == volts, GALVANIC_TABLE


@pytest.mark.parametrize(("code", "words"), SHEET)
def test_an_ip_code_means_what_iec_60529_says(code, words):
    """The two numerals of a code are told apart: solids first, water second."""
    meaning = [advice.text for advice in ip_meaning(code)]

    assert len(meaning) == 2
    assert all(word in text for word, text in zip(words, meaning, strict=True))


@pytest.mark.parametrize("family", catalogue().interfaces)
def test_every_ip_code_of_the_catalogue_is_one(family):
    """A family's sealing is "none" or a code whose numerals IEC 60529 has."""
    code = catalogue().interfaces[family].sealing_mated.value

    assert code == "none" or len(ip_meaning(code)) == 2


@pytest.mark.parametrize(
    ("family", "cable"),
    [("n", "corrugated_7_8"), ("7_16", "corrugated_7_8"), ("bnc", "foam_6_mm"), ("sma", "foam_6_mm")],
)
def test_a_plug_on_sale_fits_its_cable(family, cable):
    """A connector maker lists plugs for these cables; of SMA those for 5 and 7.6 mm foam, beside the 6.1 mm here."""
    tables = catalogue()

    assert cable_fits(tables.interfaces[family], tables.cables[cable].outer_diameter_m.value)


@pytest.mark.parametrize(
    ("family", "matings"),
    [("sma", 100), ("4_3_10", 100), ("bnc", 500), ("smb", 500)],  # brass SMA catalogue 2006; articles; maker's page
)
def test_a_mating_life_is_the_published_one(family, matings):
    """The cautious end of a durability is the figure printed."""
    assert catalogue().interfaces[family].durability_matings.low.value == matings
