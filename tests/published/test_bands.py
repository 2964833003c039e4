"""Amateur band edges against the regulations and band plans that print them."""

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.physics.columns import band_column

CFR_301 = "47 CFR 97.301, 2021 text"
CFR_301_2009 = "47 CFR 97.301, 2009 text"
CFR_305 = "47 CFR 97.305(c), text through 2024"
CFR_303 = "47 CFR 97.303(h)(3), from 2026-02-13, as quoted"
PART_97_1990S = "47 CFR Part 97, text of the 1990s"
REGION_1_PLAN = "IARU Region 1 HF plan, 2020-10-16"
REGION_1_6M = "IARU Region 1 6 m plan of 2011, as quoted"
REGION_2_PLAN = "IARU Region 2 plan, January 2008"

EDGES = [  # band, Region, lower edge MHz, upper edge MHz
    ("2200m", 1, 0.1357, 0.1378, REGION_1_PLAN),
    ("2200m", 2, 0.1357, 0.1378, CFR_301),
    ("630m", 1, 0.472, 0.479, REGION_1_PLAN),
    ("160m", 1, 1.810, 2.000, REGION_1_PLAN),
    ("160m", 2, 1.800, 2.000, REGION_2_PLAN),
    ("160m", 3, 1.800, 2.000, PART_97_1990S),
    ("80m", 1, 3.5, 3.8, REGION_1_PLAN),
    ("80m", 2, 3.5, 4.0, REGION_2_PLAN),
    ("80m", 3, 3.5, 3.9, PART_97_1990S),
    ("60m", 1, 5.3515, 5.3665, REGION_1_PLAN),
    ("60m", 2, 5.3515, 5.3665, CFR_303),
    ("40m", 2, 7.0, 7.3, CFR_305),
    ("30m", 1, 10.10, 10.15, PART_97_1990S),
    ("30m", 2, 10.10, 10.15, PART_97_1990S),
    ("20m", 1, 14.00, 14.35, PART_97_1990S),
    ("20m", 2, 14.00, 14.35, CFR_305),
    ("17m", 2, 18.068, 18.168, CFR_305),
    ("15m", 2, 21.0, 21.45, CFR_305),
    ("12m", 2, 24.89, 24.99, CFR_305),
    ("6m", 1, 50, 52, REGION_1_6M),
    ("6m", 2, 50, 54, CFR_301),
    ("6m", 3, 50, 54, CFR_301),
    ("2m", 1, 144, 146, CFR_301),
    ("2m", 2, 144, 148, CFR_301),
    ("2m", 3, 144, 148, CFR_301),
    ("1_25m", 2, 222, 225, CFR_301),
    ("70cm", 1, 430, 440, CFR_301),
    ("70cm", 2, 420, 450, CFR_301),
    ("70cm", 3, 430, 440, CFR_301),
    ("33cm", 2, 902, 928, CFR_301),
    ("23cm", 1, 1240, 1300, CFR_301),
    ("23cm", 2, 1240, 1300, CFR_301),
    ("23cm", 3, 1240, 1300, CFR_301),
    ("13cm", 1, 2300, 2450, CFR_301),
    ("13cm", 2, 2300, 2450, CFR_301),
    ("9cm", 1, 3400, 3475, CFR_301_2009),
    ("9cm", 2, 3300, 3500, CFR_301_2009),
    ("5cm", 1, 5650, 5850, CFR_301),
    ("5cm", 2, 5650, 5925, CFR_301),
    ("5cm", 3, 5650, 5850, CFR_301),
    ("3cm", 1, 10_000, 10_500, CFR_301),
    ("3cm", 2, 10_000, 10_500, CFR_301),
    ("3cm", 3, 10_000, 10_500, CFR_301),
    ("1_2cm", 1, 24_000, 24_250, CFR_301),
    ("1_2cm", 2, 24_000, 24_250, CFR_301),
    ("1_2cm", 3, 24_000, 24_250, CFR_301),
    ("6mm", 1, 47_000, 47_200, CFR_301),
    ("6mm", 2, 47_000, 47_200, CFR_301),
    ("6mm", 3, 47_000, 47_200, CFR_301),
]

ABSENT = [("1_25m", 1), ("1_25m", 3), ("33cm", 1), ("33cm", 3)]  # no entry in 47 CFR 97.301, 2021


@pytest.mark.parametrize(("band", "region", "low", "high", "source"), EDGES)
def test_band_edges_are_the_printed_ones(band, region, low, high, source):
    """A band's edges in a Region are those that the regulation or plan prints, exactly."""
    column = band_column(band, region)

    assert (column.low_hz, column.high_hz) == (pytest.approx(low * 1e6), pytest.approx(high * 1e6)), source


@pytest.mark.parametrize(("band", "region"), ABSENT)
def test_a_band_without_allocation_is_absent(band, region):
    """A band without an entry for a Region in the 2021 text is not offered there."""
    assert str(region) not in catalogue().bands[band].regions, CFR_301


def test_forty_metres_in_region_3_ends_at_7200_khz():
    """7.2 to 7.3 MHz is not allocated to amateurs in Region 3 (IARU document R3-004, 2019)."""
    assert band_column("40m", 3).high_hz == 7.2e6
