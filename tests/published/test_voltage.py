"""Voltage ratings against altitude, and the two laws of breakdown in air."""

import pytest

from jointwise.calc.formulas.air import air_density_ratio, geopotential_altitude, pressure_ratio
from jointwise.calc.formulas.voltage import (
    allowed_peak_voltage,
    peak_voltage,
    peek_onset_voltage,
    uniform_breakdown_voltage,
    voltage_allowed_power,
)

HIGH_ALTITUDE_M = 70_000 * 0.3048
HIGH_ALTITUDE_C = -55.24  # 217.91 K: 1 K per geopotential km above 20 km
SEVEN_MM = (3.04e-3, 7.0e-3)  # centre and bore, m

PEEK = "law of corona between concentric cylinders, 31 kV/cm and 0.308 cm^0.5, evaluated by hand"
THIN_WIRE = "public code of the same law with a worked example: radius 25 µm, 480 radii, surface factor 0.8"
TEXT_UNIFORM = "read text on breakdown of uniform fields, 2007"

PEEK_ROWS = [  # relative density, onset V, half a unit of the last printed digit
    (1.0, 7035, 5, PEEK),
    (0.0586, 982, 0.5, PEEK),
]


def density_at_70000_ft():
    """Relative density at 70,000 ft and the standard temperature there."""
    return air_density_ratio(pressure_ratio(geopotential_altitude(HIGH_ALTITUDE_M)), HIGH_ALTITUDE_C)


@pytest.mark.parametrize(("density", "printed", "tolerance", "source"), PEEK_ROWS)
def test_onset_of_a_seven_millimetre_line(density, printed, tolerance, source):
    """Corona begins on a 7 mm line at the voltage that Peek's law gives by hand."""
    assert peek_onset_voltage(density, *SEVEN_MM) == pytest.approx(printed, abs=tolerance), source


def test_onset_of_a_thin_wire_is_the_printed_one():
    """0.8 of the polished wire's onset is the 2741 V printed for a rough one."""
    polished_v = peek_onset_voltage(1.0, 50e-6, 480 * 50e-6)

    assert 0.8 * polished_v == pytest.approx(2741, abs=0.5), THIN_WIRE


def test_onset_falls_more_slowly_than_density():
    """Peek's onset at 70,000 ft is 0.140 of that at sea level, more than the density of 0.0586."""
    ratio = peek_onset_voltage(0.0586, *SEVEN_MM) / peek_onset_voltage(1.0, *SEVEN_MM)

    assert ratio == pytest.approx(0.1396, abs=0.0002)  # 982 V over 7035 V


def test_onset_is_above_a_flat_thirty_kilovolts_per_centimetre():
    """A flat 30 kV/cm on the pin gives 3.80 kV; Peek's curvature term raises it."""
    flat = 3e6 * 1.52e-3 * 0.8341  # E r ln(R/r)

    assert flat == pytest.approx(3800, abs=5)
    assert peek_onset_voltage(1.0, *SEVEN_MM) > flat


def test_a_centimetre_of_air_breaks_down_at_thirty_kilovolts():
    """The Paschen fit gives 30 kV peak for 1 cm at sea level (read text; its two digits); valid 0.1 mm to 20 cm."""
    assert uniform_breakdown_voltage(1.0, 0.01) == pytest.approx(30e3, abs=500), TEXT_UNIFORM


def test_breakdown_field_falls_with_the_gap():
    """Mean breakdown field falls as the gap widens, towards the text's 6 kV/cm of metres, within the fit's range."""
    fields = [uniform_breakdown_voltage(1.0, gap) / gap for gap in (1e-4, 1e-3, 1e-2, 0.1, 0.2)]

    assert fields == sorted(fields, reverse=True)
    assert fields[-1] > 6e5


def test_the_fit_stays_above_paschens_minimum():
    """At the short end of its range the fit lies above the least breakdown voltage of air, 327 V (read)."""
    assert uniform_breakdown_voltage(1.0, 1e-4) > 327


def test_density_at_70000_ft_is_the_independent_figure():
    """Density at 70,000 ft is 0.0586 of the standard 15 °C sea level, 0.0607 of the 25 °C it is reckoned by."""
    assert density_at_70000_ft() / air_density_ratio(1.0, 15.0) == pytest.approx(0.0586, abs=0.00005)
    assert density_at_70000_ft() == pytest.approx(0.0586 * 298.15 / 288.15, abs=0.0001)


def test_dense_air_never_raises_a_rating():
    """Cold air at sea level is denser, and the allowed voltage stays at the rating."""
    assert allowed_peak_voltage(1000.0, 1.2) == pytest.approx(1000 * 2**0.5, rel=1e-12)


def test_a_kilovolt_stands_twenty_kilowatts():
    """1000 V rms on a matched 50 Ω line is 20 kW (encyclopedia article on N, as quoted)."""
    peak = allowed_peak_voltage(1000.0, 1.0)

    assert voltage_allowed_power(peak, 50.0, 1.0) == pytest.approx(20e3, rel=1e-12)
    assert peak_voltage(20e3, 50.0, 1.0) == pytest.approx(peak, rel=1e-12)
