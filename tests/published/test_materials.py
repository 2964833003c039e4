"""Constants of metals and dielectrics in the catalogue against the printed tables they come from."""

import pytest

from jointwise.calc.catalogue import catalogue

TEXTBOOK_METALS = "textbook table of conductivities, as quoted"
TEXTBOOK_DIELECTRICS = "textbook table of dielectrics, as quoted"
DESIGN_DATA = "read engineering design data on coaxial connectors"
SCIKIT_RF = "scikit-rf 2.2.0 material table"

CONDUCTIVITIES = [  # metal, S/m, half a unit of the last printed digit
    ("silver", 6.173e7, 0.0005e7, TEXTBOOK_METALS),
    ("copper", 5.813e7, 0.0005e7, TEXTBOOK_METALS),
    ("gold", 4.098e7, 0.0005e7, TEXTBOOK_METALS),
    ("brass", 2.564e7, 0.0005e7, TEXTBOOK_METALS),
    ("nickel", 1.449e7, 0.0005e7, TEXTBOOK_METALS),
    ("stainless", 1.1e6, 0.05e6, TEXTBOOK_METALS),
]

PERMITTIVITIES = [  # dielectric, relative permittivity, tolerance from the printed digits
    ("pe", 2.25, 0.005, TEXTBOOK_DIELECTRICS),
    ("ptfe", 2.08, 0.005, TEXTBOOK_DIELECTRICS),
    ("polystyrene", 2.54, 0.005, TEXTBOOK_DIELECTRICS),
    ("pe", 2.3, 0.05, DESIGN_DATA),
    ("ptfe", 2.05, 0.05, DESIGN_DATA),  # 1.5 % apart: fluoropolymer grades differ
    ("polystyrene", 2.55, 0.05, DESIGN_DATA),
    ("ptfe", 2.1, 0.05, SCIKIT_RF),
]

LOSS_TANGENTS = [
    ("pe", 0.0004, 0.00005, TEXTBOOK_DIELECTRICS),
    ("ptfe", 0.0004, 0.00005, TEXTBOOK_DIELECTRICS),
    ("polystyrene", 0.00033, 0.000005, TEXTBOOK_DIELECTRICS),
]


@pytest.mark.parametrize(("metal", "printed", "tolerance", "source"), CONDUCTIVITIES)
def test_conductivity_is_the_printed_one(metal, printed, tolerance, source):
    """A metal's conductivity is the one in the printed table."""
    conductivity = catalogue().materials[metal].conductivity_s_per_m

    assert conductivity.value == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize(("dielectric", "printed", "tolerance", "source"), PERMITTIVITIES)
def test_permittivity_is_the_printed_one(dielectric, printed, tolerance, source):
    """A dielectric's permittivity is the printed one within its digits."""
    permittivity = catalogue().materials[dielectric].relative_permittivity

    assert permittivity.value == pytest.approx(printed, abs=tolerance), source


@pytest.mark.parametrize(("dielectric", "printed", "tolerance", "source"), LOSS_TANGENTS)
def test_loss_tangent_is_the_printed_one(dielectric, printed, tolerance, source):
    """A dielectric's loss tangent is the printed one within its digits."""
    loss_tangent = catalogue().materials[dielectric].loss_tangent

    assert loss_tangent.value == pytest.approx(printed, abs=tolerance), source
