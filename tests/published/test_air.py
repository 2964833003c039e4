"""Pressure and density of the air against printed tables of the standard atmosphere and an independent model."""

import numpy as np
import pytest

from jointwise.calc.formulas.air import air_density_ratio, geopotential_altitude, pressure_ratio

FOOT = 0.3048  # m
SEA_LEVEL_PA = 101_325.0
STANDARD_C = 15.0

LAYER_TABLE = "read page on the standard atmosphere, layer table"
GEOPOTENTIAL_TABLE = "read table of the international standard atmosphere, Table 3.5"

LAYER_BASES = [  # geopotential m, printed pressure Pa, half a unit of ICAO's six-digit constants
    (11_000, 22_632.1, 0.1, LAYER_TABLE),
    (20_000, 5_474.89, 0.02, LAYER_TABLE),
    (32_000, 868.019, 0.01, LAYER_TABLE),
]

PRESSURE_TABLE = [  # geopotential ft, pressure ratio; the table's own last digit is rough by one unit
    (1_000, 0.9644, 0.0001, GEOPOTENTIAL_TABLE),
    (2_500, 0.9129, 0.0001, GEOPOTENTIAL_TABLE),
    (5_000, 0.8320, 0.0001, GEOPOTENTIAL_TABLE),
    (7_500, 0.7571, 0.0001, GEOPOTENTIAL_TABLE),
]

DENSITY_TABLE = [  # geopotential ft, air °C (15 less 1.9812 °C per 1000 ft), density ratio
    (1_000, 13.019, 0.9711, 0.0001, GEOPOTENTIAL_TABLE),
    (5_000, 5.094, 0.8617, 0.0001, GEOPOTENTIAL_TABLE),
    (7_500, 0.141, 0.7983, 0.0001, GEOPOTENTIAL_TABLE),
    (10_000, -4.812, 0.7385, 0.0001, GEOPOTENTIAL_TABLE),
]

GEOMETRIC = [5_000, 10_000, 20_000, 36_000, 70_000, 98_000]  # ft


@pytest.mark.parametrize(("altitude", "printed", "tolerance", "source"), LAYER_BASES)
def test_pressure_at_the_layer_bases_is_the_printed_one(altitude, printed, tolerance, source):
    """Pressure where the layers of the standard atmosphere meet is the printed one."""
    assert pressure_ratio(altitude) * SEA_LEVEL_PA == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize(("feet", "printed", "tolerance", "source"), PRESSURE_TABLE)
def test_pressure_ratio_is_the_printed_one(feet, printed, tolerance, source):
    """Pressure ratio at a geopotential altitude is the printed one."""
    assert pressure_ratio(feet * FOOT) == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize(("feet", "celsius", "printed", "tolerance", "source"), DENSITY_TABLE)
def test_density_ratio_is_the_printed_one(feet, celsius, printed, tolerance, source):
    """Density at the standard temperature, over that at 15 °C and sea level, is the printed ratio."""
    sea_level = air_density_ratio(1.0, STANDARD_C)

    ratio = air_density_ratio(pressure_ratio(feet * FOOT), celsius) / sea_level

    assert ratio == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize("feet", GEOMETRIC)
def test_pressure_and_density_agree_with_an_independent_model(feet):
    """Pressure and density ratio at a geometric altitude agree with the package ambiance to 1e-5."""
    ambiance = pytest.importorskip("ambiance")
    model, sea_level = ambiance.Atmosphere(feet * FOOT), ambiance.Atmosphere(0.0)
    pressure = pressure_ratio(geopotential_altitude(feet * FOOT))

    density = air_density_ratio(pressure, model.temperature_in_celsius[0]) / air_density_ratio(1.0, STANDARD_C)

    assert pressure == pytest.approx((model.pressure / sea_level.pressure)[0], rel=1e-5)
    assert density == pytest.approx((model.density / sea_level.density)[0], rel=1e-5)


@pytest.mark.parametrize(
    ("feet", "density", "pressure"),
    [(5_000, 0.8617, 0.8321), (10_000, 0.7386, 0.6878), (20_000, 0.5332, 0.4599), (70_000, 0.0586, 0.0443)],
)
def test_density_and_pressure_are_different_numbers_at_altitude(feet, density, pressure):
    """Density ratio is the pressure ratio over the temperature ratio: four-digit figures of the ICAO model."""
    height = geopotential_altitude(feet * FOOT)
    kelvin = 288.15 - 0.0065 * min(height, 11_000) + 0.001 * max(height - 20_000, 0)

    assert pressure_ratio(height) == pytest.approx(pressure, abs=0.00006)
    assert pressure_ratio(height) * 288.15 / kelvin == pytest.approx(density, abs=0.00006)


def test_density_is_reckoned_against_25_degrees():
    """Density is 1 at 25 °C and sea level, and falls to Peek's 3.92·76/(273 + t) when it is hotter."""
    assert air_density_ratio(1.0, 25.0) == 1
    assert air_density_ratio(1.0, 40.0) == pytest.approx(3.92 * 76 / (273 + 40), rel=0.001)  # three digits


@pytest.mark.parametrize("altitude", [11_000.0, 20_000.0])
def test_pressure_is_continuous_where_layers_meet(altitude):
    """Pressure steps by no more than ICAO's six printed digits where two layers meet."""
    assert pressure_ratio(np.nextafter(altitude, np.inf)) == pytest.approx(pressure_ratio(altitude), rel=3e-6)
