"""Skin depth and surface resistance against a textbook's printed figures and scikit-rf."""

import pytest
from skrf.tlineFunctions import skin_depth as reference_depth
from skrf.tlineFunctions import surface_resistivity as reference_resistance

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.skin import skin_depth, surface_resistance

TEXTBOOK = "microwave textbook p. 27, 10 GHz, as restated on a mailing list"
RESISTIVITY_TABLE = "resistivity table, stored copy"

DEPTHS = [  # conductivity S/m, printed depth m, one unit of the last printed digit (one entry is cut, not rounded)
    (5.813e7, 6.60e-7, 0.01e-7, TEXTBOOK),  # copper
    (3.816e7, 8.14e-7, 0.01e-7, TEXTBOOK),  # aluminium
    (6.173e7, 6.40e-7, 0.01e-7, TEXTBOOK),  # silver
]

REFERENCE_METALS = [  # conductivity S/m, depth at 10 GHz µm, resistance at 1 GHz mΩ: rounded scikit-rf 2.2.0
    (3.816e7, 0.815, 10.17),
    (5.813e7, 0.660, 8.24),
    (4.098e7, 0.786, 9.82),
    (6.173e7, 0.641, 8.00),
    (2.564e7, 0.994, 12.41),
    (1.449e7, 1.322, 16.51),
    (1.1e6, 4.80, 59.9),
]

PRINTED_RESISTIVITIES = [  # metal, resistivity Ω·m, relative tolerance: pure metal against plated practice
    ("copper", 1.72e-8, 0.005, RESISTIVITY_TABLE),  # annealed
    ("gold", 2.44e-8, 0.005, RESISTIVITY_TABLE),
    ("silver", 1.59e-8, 0.02, RESISTIVITY_TABLE),
    ("nickel", 6.99e-8, 0.02, RESISTIVITY_TABLE),
    ("stainless", 9.09e-7, 0.005, "scikit-rf 2.2.0 material table"),
]


@pytest.mark.parametrize(("conductivity", "printed", "tolerance", "source"), DEPTHS)
def test_depth_at_10_ghz_is_the_textbooks(conductivity, printed, tolerance, source):
    """Skin depth at 10 GHz is the figure that the textbook prints."""
    assert skin_depth(10e9, conductivity, 1.0) == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize(("conductivity", "depth_um", "resistance_mohm"), REFERENCE_METALS)
def test_metals_agree_with_scikit_rf(conductivity, depth_um, resistance_mohm):
    """Depth at 10 GHz and resistance at 1 GHz agree with scikit-rf and with its rounded figures."""
    depth, resistance = skin_depth(10e9, conductivity, 1.0), surface_resistance(1e9, conductivity, 1.0)

    assert depth == pytest.approx(reference_depth(10e9, 1 / conductivity, 1), rel=1e-9)
    assert resistance == pytest.approx(reference_resistance(1e9, 1 / conductivity, 1), rel=1e-9)
    assert depth * 1e6 == pytest.approx(depth_um, abs=0.006)
    assert resistance * 1e3 == pytest.approx(resistance_mohm, abs=0.06)


@pytest.mark.parametrize("permeability", [1, 10, 100])
def test_permeability_counts_as_in_scikit_rf(permeability):
    """A magnetic metal has the depth and resistance that scikit-rf gives it."""
    depth = skin_depth(30e6, 1.449e7, permeability)
    resistance = surface_resistance(30e6, 1.449e7, permeability)

    assert depth == pytest.approx(reference_depth(30e6, 1 / 1.449e7, permeability), rel=1e-9)
    assert resistance == pytest.approx(reference_resistance(30e6, 1 / 1.449e7, permeability), rel=1e-9)


@pytest.mark.parametrize(("metal", "resistivity", "tolerance", "source"), PRINTED_RESISTIVITIES)
def test_metals_of_the_catalogue_have_the_printed_resistivity(metal, resistivity, tolerance, source):
    """The catalogue's conductivity is the inverse of an independently printed resistivity."""
    conductivity = catalogue().materials[metal].conductivity_s_per_m.value

    assert 1 / conductivity == pytest.approx(resistivity, rel=tolerance), source
