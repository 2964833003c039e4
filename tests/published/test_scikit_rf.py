"""scikit-rf as an independent reference for the section's reflection and the coaxial geometry."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.constants import speed_of_light
from skrf import Frequency
from skrf.media import Coaxial, DefinedGammaZ0

from jointwise.calc.formulas.coax import characteristic_impedance
from jointwise.calc.formulas.match import electrical_angle, electrical_length, section_reflection
from jointwise.calc.formulas.skin import conductor_resistance, skin_depth, surface_resistance

MANY = settings(deadline=None, derandomize=True, max_examples=150)
SKIN_EFFECT_AGREEMENT = 0.00065  # stated as 0.06 % for 50 Ω air lines of 7 mm and more from 100 MHz up


def band(*frequencies_hz):
    """A scikit-rf frequency object."""
    return Frequency.from_f(np.array(frequencies_hz, dtype=float), unit="Hz")


def reference_reflection(impedance, line_ohm, electrical_m, frequency_hz):
    """Reflection of a lossless section between matched lines, by scikit-rf."""
    spot = band(frequency_hz)
    medium = DefinedGammaZ0(spot, gamma=2j * np.pi * spot.f / speed_of_light, z0=impedance, z0_port=line_ohm)
    return abs(medium.line(electrical_m, "m").s[0, 0, 0])


def coaxial_line(bore_m, centre_m, permittivity, conductivity, frequencies_hz):
    """A coaxial line of one metal by scikit-rf's full conductor model."""
    return Coaxial(band(*frequencies_hz), Dint=centre_m, Dout=bore_m, epsilon_r=permittivity, sigma=conductivity)


@MANY
@given(
    impedance=st.floats(10, 300),
    line_ohm=st.floats(25, 150),
    electrical_m=st.floats(1e-3, 0.1),
    degrees=st.floats(0.1, 179.9),
)
def test_section_reflects_as_in_scikit_rf(impedance, line_ohm, electrical_m, degrees):
    """Any section up to a half wave reflects what scikit-rf computes, to 1e-9 of a full reflection."""
    frequency = degrees / 360 * speed_of_light / electrical_m

    computed = section_reflection(impedance, line_ohm, electrical_angle(frequency, electrical_m))

    assert computed == pytest.approx(reference_reflection(impedance, line_ohm, electrical_m, frequency), abs=1e-9)


@MANY
@given(
    length=st.floats(5e-3, 0.05),
    permittivity=st.floats(1, 4),
    frequency=st.floats(1e6, 1e9),
)
def test_filled_section_reflects_as_in_scikit_rf(length, permittivity, frequency):
    """A filled section given by length and permittivity reflects what scikit-rf computes for its geometry."""
    electrical = electrical_length(length, permittivity)

    computed = section_reflection(35.0, 50.0, electrical_angle(frequency, electrical))

    expected = reference_reflection(35.0, 50.0, length * np.sqrt(permittivity), frequency)
    assert computed == pytest.approx(expected, abs=1e-9)


@MANY
@given(bore=st.floats(2e-3, 20e-3), ratio=st.floats(1.3, 8), permittivity=st.floats(1, 4))
def test_impedance_is_the_one_of_scikit_rf(bore, ratio, permittivity):
    """Impedance from geometry is the high-frequency limit of scikit-rf's coaxial line."""
    line = coaxial_line(bore, bore / ratio, permittivity, 1e15, [10e9])

    computed = characteristic_impedance(bore, bore / ratio, permittivity)

    assert computed == pytest.approx(line.z0.real[0], rel=1e-5)


def loss_by_surface_resistance(bore_m, centre_m, conductivity, frequency_hz):
    """Conductor loss of an air line by the core: R/2Z, in nepers per metre."""
    surface = surface_resistance(frequency_hz, conductivity, 1.0)
    resistance = conductor_resistance(surface, surface, centre_m, bore_m)
    return resistance / (2 * characteristic_impedance(bore_m, centre_m, 1.0))


@pytest.mark.parametrize("frequency", [100e6, 1e9, 10e9])
@pytest.mark.parametrize(("bore", "centre"), [(7e-3, 3.04e-3), (16e-3, 7e-3)])
def test_conductor_loss_is_the_one_of_scikit_rf(bore, centre, frequency):
    """Conductor loss per metre of a 50 Ω line agrees with the full model within the stated 0.06 %."""
    full = coaxial_line(bore, centre, 1.0, 5.8e7, [frequency]).gamma.real[0]

    assert loss_by_surface_resistance(bore, centre, 5.8e7, frequency) == pytest.approx(full, rel=SKIN_EFFECT_AGREEMENT)


@MANY
@given(bore=st.floats(1.5e-3, 20e-3), ratio=st.floats(1.5, 7), frequency=st.floats(1e8, 3e10))
def test_conductor_loss_differs_only_by_curvature(bore, ratio, frequency):
    """On any line the loss differs from the full model by less than skin depth over the finest dimension."""
    centre = bore / ratio
    finest = min(centre, (bore - centre) / 2)
    full = coaxial_line(bore, centre, 1.0, 5.8e7, [frequency]).gamma.real[0]

    computed = loss_by_surface_resistance(bore, centre, 5.8e7, frequency)

    assert computed == pytest.approx(full, rel=skin_depth(frequency, 5.8e7, 1.0) / finest)


@pytest.mark.parametrize(("gigahertz", "printed"), [(0.1, 0.03400), (1.0, 0.10758), (10.0, 0.34024)])
def test_loss_of_a_copper_air_line_is_the_recorded_one(gigahertz, printed):
    """A 7 mm copper air line loses what scikit-rf 2.2.0 gave, in dB per metre, to its digits and 0.06 %."""
    nepers = loss_by_surface_resistance(7e-3, 3.04e-3, 5.8e7, gigahertz * 1e9)

    tolerance = 0.000005 + SKIN_EFFECT_AGREEMENT * printed
    assert nepers * 20 / np.log(10) == pytest.approx(printed, abs=tolerance)
