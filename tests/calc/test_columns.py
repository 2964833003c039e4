"""Columns stand by frequency, and numbers beside them are written in one way."""

import pytest

from jointwise.calc.numeric.units import engineering
from jointwise.calc.physics.columns import columns


def test_columns_stand_by_frequency():
    """Bands and spot frequencies are sorted together, in whatever order they were asked for."""
    found = columns(1, ["2m", "20m", "6m"], [70.2e6, 7.1e6])

    assert [column.name for column in found] == ["7.1 MHz", "20 m", "6 m", "70.2 MHz", "2 m"]


@pytest.mark.parametrize(
    ("watts", "words"),
    [
        (400.0, "400 W"),
        (999.94, "999.9 W"),
        (999.96, "1 kW"),
        (1000.0, "1 kW"),
        (1500.0, "1.5 kW"),
        (100_000.0, "100 kW"),
        (0.2, "200 mW"),
        (0.0, "0 W"),
    ],
)
def test_a_power_has_one_spelling(watts, words):
    """A power is written with the prefix of the number that is printed."""
    assert engineering(watts, "W") == words
