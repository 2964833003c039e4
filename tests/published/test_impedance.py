"""Characteristic impedance from geometry against measured sections and the classic optima of a coaxial line."""

import numpy as np
import pytest
from scipy.optimize import minimize_scalar

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.coax import characteristic_impedance
from jointwise.calc.formulas.match import electrical_length
from jointwise.calc.formulas.skin import conductor_resistance
from jointwise.calc.physics.family_ratings import family_ratings

INCH = 0.0254  # m
ESTIMATE = "amateur page of 2013, impedance of the UHF type estimated from parts cut in half"
LINE_TABLES = "microwave transmission design data of 1948, as quoted"

MEASURED_SECTIONS = [  # bore in, centre in, permittivity, printed Ω, tolerance from the printed digits
    (0.48, 0.170, 3.5, 33.3, 0.05, ESTIMATE),
    (0.48, 0.200, 2.1, 36.2, 0.05, ESTIMATE),
]

ELECTRICAL_LENGTHS = [  # length in, permittivity, printed electrical length in, tolerance
    (1.03, 3.5, 1.93, 0.005, ESTIMATE),
    (1.03, 2.1, 1.49, 0.005, ESTIMATE),
]

CONSTANT_IMPEDANCE = [name for name, family in catalogue().interfaces.items() if family.constant_impedance]


def air_impedance(ratio):
    """Impedance of an air line with this diameter ratio."""
    return characteristic_impedance(ratio, 1.0, 1.0)


@pytest.mark.parametrize(("bore", "centre", "permittivity", "printed", "tolerance", "source"), MEASURED_SECTIONS)
def test_section_impedance_is_the_measured_one(bore, centre, permittivity, printed, tolerance, source):
    """Impedance from the measured diameters is the one that the measurement prints."""
    computed = characteristic_impedance(bore * INCH, centre * INCH, permittivity)

    assert computed == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize(("length", "permittivity", "printed", "tolerance", "source"), ELECTRICAL_LENGTHS)
def test_electrical_length_is_the_measured_one(length, permittivity, printed, tolerance, source):
    """Electrical length from the measured length is the one that the measurement prints."""
    assert electrical_length(length, permittivity) == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize("family", CONSTANT_IMPEDANCE)
def test_mating_plane_has_the_nominal_impedance(family):
    """Geometry and dielectric of a constant-impedance family give its nominal impedance within 2.5 %.

    The worst is SMA: 4.13 mm and 1.27 mm in PTFE of 2.08 make 49.0 Ω; makers use 1.28 mm or a lighter PTFE.
    """
    ratings = family_ratings(family, "low")
    nominal = catalogue().interfaces[family].nominal_impedance_ohm.value

    computed = characteristic_impedance(ratings.outer_diameter_m, ratings.inner_diameter_m, ratings.permittivity)

    assert computed == pytest.approx(nominal, rel=0.025)


def test_least_loss_is_at_77_ohm():
    """Conductor loss of an air line with a fixed bore is least at 77 Ω (design data of 1948, as quoted)."""
    best = minimize_scalar(
        lambda ratio: conductor_resistance(1.0, 1.0, 1 / ratio, 1.0) / air_impedance(ratio),
        bounds=(1.5, 8),
        method="bounded",
    )

    assert air_impedance(best.x) == pytest.approx(77, abs=0.5), LINE_TABLES


def test_greatest_voltage_is_at_60_ohm():
    """Voltage at a given field on the centre conductor is greatest at 60 Ω (as quoted)."""
    best = minimize_scalar(lambda ratio: -np.log(ratio) / ratio, bounds=(1.2, 8), method="bounded")

    assert air_impedance(best.x) == pytest.approx(60, abs=0.5), LINE_TABLES


def test_greatest_power_is_at_30_ohm():
    """Power V²/2Z at a given field on the centre conductor is greatest at 30 Ω (as quoted)."""
    best = minimize_scalar(
        lambda ratio: -((np.log(ratio) / ratio) ** 2) / air_impedance(ratio),
        bounds=(1.2, 8),
        method="bounded",
    )

    assert air_impedance(best.x) == pytest.approx(30, abs=0.5), LINE_TABLES
