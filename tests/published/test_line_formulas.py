"""Cable loss, what a loss hides and what mismatch adds, against printed examples and scikit-rf."""

from functools import reduce

import numpy as np
import pytest
from skrf import Frequency
from skrf.media import Coaxial, DefinedGammaZ0
from skrf.tlineFunctions import zl_2_total_loss

from jointwise.calc.formulas.line import (
    additional_loss,
    attenuation_constant,
    cable_attenuation,
    conductor_temperature_factor,
    decibels,
    hidden_reflection,
    impedance_reactance,
    impedance_resistance,
    likely_reflection,
    mismatch_lower,
    mismatch_upper,
    phase_constant,
    power_ratio,
    reflection_seen,
    surface_phase_constant,
    worst_reflection,
)
from jointwise.calc.formulas.match import (
    electrical_angle,
    electrical_length,
    reflection_of_vswr,
    return_loss,
    vswr_of_reflection,
)

HUNDRED_FEET = 30.48  # m
MEGAHERTZ = 1e6

TRAINING = "read training text for the advanced radio amateur examination"
SITE_NOTE = "maker's note on return loss of antenna sites, as quoted on a translation site"
LIST_1998_11 = "read amateur mailing list post of November 1998, restating a magazine's method"
LIST_1998_06 = "read amateur mailing list post of June 1998"
LIST_2022 = "handbook, as quoted in an amateur mailing list post of January 2022"
TELEVISION_PAGE = "read amateur television page, table of additional loss"
SENSOR_MANUAL = "read manual of a terminating power sensor"
FORUM = "read engineering forum on VSWR of connected devices"
CABLE_TV = "read cable television technical tip on attenuation against temperature"
CABLE_SHEET = "maker's sheet of the 6.1 mm foam cable, as quoted; makers' points, as quoted by a county radio service"

RETURN_LOSSES_BEHIND = [  # dB at the load, dB of matched loss, dB seen, source
    (3, 6, 15, TRAINING),
    (15, 5, 25, SITE_NOTE),
]

ADDITIONAL_LOSSES = [  # VSWR at the load, matched loss dB, printed additional loss dB
    (1.5, 2.0, 0.1),
    (1.5, 10, 0.2),
    (2.0, 0.4, 0.1),
    (2.0, 10, 0.5),
    (3.0, 0.2, 0.1),
    (3.0, 10, 1.2),
    (4.0, 0.2, 0.2),
    (4.0, 10, 2.0),
    (5.0, 0.2, 0.3),
    (5.0, 10, 2.5),
    (7.0, 0.2, 0.5),
    (10, 0.2, 0.8),
    (15, 0.2, 1.0),
    (20, 0.2, 1.5),
]
COARSE_LOSSES = [(7.0, 10, 4), (10, 10, 5), (15, 10, 6), (20, 10, 7)]  # the same table, whole decibels

GREATEST_LOSSES = [  # VSWR, greatest additional loss dB, source
    (1.5, 0.18, LIST_2022),
    (2.0, 0.51, LIST_1998_06),
    (3.0, 1.25, LIST_1998_06),
]

UNCERTAINTIES = [(1.50, 1.20, 3.67), (1.30, 1.20, 2.39), (1.50, 1.03, 0.59)]  # VSWR of source, of sensor, printed %

SIX_MM_FOAM = (0.242080, 0.000330)  # dB/100 ft per √MHz and per MHz
SIX_MM_POINTS = [  # MHz, printed dB/100 ft
    (10, 0.8),
    (30, 1.3),
    (50, 1.7),
    (150, 3.0),
    (220, 3.7),
    (450, 5.3),
]


def added(vswr, loss_db):
    """Additional loss in dB of a line of this matched loss with this VSWR at the load."""
    return additional_loss(power_ratio(loss_db), reflection_of_vswr(vswr))


@pytest.mark.parametrize(("load", "loss", "seen", "source"), RETURN_LOSSES_BEHIND)
def test_return_loss_grows_by_twice_the_loss(load, loss, seen, source):
    """Return loss through a line is that of the load and twice the line's loss, exactly."""
    reflection = 10 ** (-load / 20)

    assert return_loss(reflection_seen(reflection, power_ratio(loss))) == pytest.approx(seen, rel=1e-12), source


def test_an_open_line_shows_its_loss_as_a_vswr():
    """A line open at its end that shows VSWR 8 has 1.09 dB of loss, as printed to a hundredth."""
    loss = power_ratio(1.09)

    assert vswr_of_reflection(reflection_seen(1.0, loss)) == pytest.approx(8, abs=0.04), LIST_1998_11
    assert decibels(1 / reflection_of_vswr(8)) == pytest.approx(1.09, abs=0.005), LIST_1998_11


def test_what_a_loss_hides_is_found_again():
    """The reflection seen through a loss gives the load's own reflection back."""
    reflections, losses = np.meshgrid([0.01, 0.2, 0.5, 0.9], power_ratio(np.array([0.1, 1.0, 3.0, 10.0])))

    found = hidden_reflection(reflection_seen(reflections, losses), losses)

    assert found == pytest.approx(reflections, rel=1e-12)


@pytest.mark.parametrize(("vswr", "loss", "printed"), ADDITIONAL_LOSSES)
def test_additional_loss_is_the_tables(vswr, loss, printed):
    """Loss added by a standing wave is the printed table's to a tenth of a decibel, as a curve can be read."""
    assert added(vswr, loss) == pytest.approx(printed, abs=0.1), TELEVISION_PAGE


@pytest.mark.parametrize(("vswr", "loss", "printed"), COARSE_LOSSES)
def test_large_additional_loss_is_the_tables(vswr, loss, printed):
    """Large added losses are the printed table's to half of its whole decibels."""
    assert added(vswr, loss) == pytest.approx(printed, abs=0.5), TELEVISION_PAGE


@pytest.mark.parametrize(("vswr", "printed", "source"), GREATEST_LOSSES)
def test_additional_loss_ends_at_the_mismatch_loss(vswr, printed, source):
    """However long the line, the standing wave adds no more than the printed mismatch loss of its VSWR."""
    assert added(vswr, 60.0) == pytest.approx(printed, abs=0.005), source
    assert added(vswr, 1.0) < added(vswr, 10.0) < added(vswr, 60.0)


@pytest.mark.parametrize("load", [25, 75, 100, 150, 50 + 100j, 20 - 30j])
@pytest.mark.parametrize("length", [0.1, 0.37, 2.0])  # wavelengths
def test_total_loss_on_a_line_of_real_impedance_is_exact(load, length):
    """Matched and added loss are the line equation's loss by scikit-rf at any length and load, to 1e-9 dB."""
    matched = 1.0
    angle = np.log(10) / 20 * matched + 2j * np.pi * length
    reflection = abs((load - 50) / (load + 50))

    total = matched + additional_loss(power_ratio(matched), reflection)

    assert total == pytest.approx(10 * np.log10(abs(zl_2_total_loss(50, load, angle))), abs=1e-9)


def test_the_handbooks_form_is_the_same_law():
    """Matched loss and added loss make the handbooks' 10 log [(a² - ρ²)/(a (1 - ρ²))] (from memory)."""
    a, rho = np.meshgrid(power_ratio(np.array([0.1, 0.5, 1.0, 3.0, 10.0])), [0.05, 0.2, 1 / 3, 0.5, 0.9])

    handbook = 10 * np.log10((a**2 - rho**2) / (a * (1 - rho**2)))

    assert decibels(a) + additional_loss(a, rho) == pytest.approx(handbook, abs=1e-12)


def test_a_real_cable_can_lose_less_than_its_matched_loss():
    """On a short cable with conductor loss a standing wave can lessen the loss: the added loss is no bound there.

    The line equation (scikit-rf) with the cable's own reactive impedance, 0.02 wavelengths behind a high
    resistance, against the same line thought real.
    """
    surface, alpha_c = surface_phase_constant(1.8e6, 0.66), attenuation_constant(0.02)
    beta = phase_constant(surface, alpha_c)
    impedance = impedance_resistance(50.0, alpha_c, surface) + 1j * impedance_reactance(50.0, 0.0, alpha_c, surface)
    length = 0.02 * 2 * np.pi / beta

    exact = 10 * np.log10(abs(zl_2_total_loss(impedance, 500, (alpha_c + 1j * beta) * length)))

    matched = 0.02 * length
    assert exact < matched
    assert additional_loss(power_ratio(matched), 450 / 550) > 0


@pytest.mark.parametrize(("source_vswr", "load_vswr", "printed"), UNCERTAINTIES)
def test_mismatch_uncertainty_is_the_manuals(source_vswr, load_vswr, printed):
    """The upper mismatch limit is the manual's percentage to its hundredth."""
    limit = mismatch_upper(reflection_of_vswr(source_vswr), reflection_of_vswr(load_vswr))

    # the manual rounds both reflections to a thousandth on the way
    assert (power_ratio(limit) - 1) * 100 == pytest.approx(printed, abs=0.01), SENSOR_MANUAL


def test_mismatch_limits_hold_at_every_phase():
    """Power between two reflections at every phase lies within the limits, and reaches both."""
    one, other = 0.3, 0.2
    phase = np.linspace(0, 2 * np.pi, 10_001)

    error = -20 * np.log10(abs(1 - one * other * np.exp(1j * phase)))

    assert error.max() == pytest.approx(-mismatch_lower(one, other), rel=1e-12)
    assert error.min() == pytest.approx(-mismatch_upper(one, other), rel=1e-12)


def test_the_worst_of_two_vswrs_is_their_product():
    """Devices of VSWR 2.0 and 1.5 make at worst VSWR 3.0."""
    worst = worst_reflection(reflection_of_vswr(2.0), reflection_of_vswr(1.5))

    assert vswr_of_reflection(worst) == pytest.approx(3.0, rel=1e-12), FORUM


def test_no_phase_is_worse_than_the_worst():
    """Two mismatches on a lossless line of any length (scikit-rf) reach the worst reflection and never pass it."""
    line = DefinedGammaZ0(gamma=2j * np.pi, z0=50)
    part = line.shunt_capacitor(1e-12)
    one = abs(part.s[0, 0, 0])
    other = 0.25

    seen = [abs((part ** line.line(length, "m") ** line.load(other)).s[0, 0, 0]) for length in np.linspace(0, 0.5, 401)]

    assert max(seen) == pytest.approx(worst_reflection(one, other), rel=1e-4)
    assert max(seen) <= worst_reflection(one, other) * (1 + 1e-12)


def test_worst_and_likely_of_many_do_not_depend_on_the_order():
    """Parts taken one by one give the same worst and likely reflection in either order."""
    parts = [0.01, 0.05, 0.02, 0.1]

    for both in (worst_reflection, likely_reflection):
        assert reduce(both, parts) == pytest.approx(reduce(both, parts[::-1]), rel=1e-12)
    assert reduce(likely_reflection, parts) == pytest.approx(np.sqrt(np.sum(np.square(parts))), rel=1e-12)


def test_likely_is_the_mean_square_over_all_phases():
    """Two small reflections summed over evenly spread phases have the likely reflection as their rms."""
    phase = np.linspace(0, 2 * np.pi, 1000, endpoint=False)

    rms = np.sqrt(np.mean(abs(0.03 + 0.05 * np.exp(1j * phase)) ** 2))

    assert likely_reflection(0.03, 0.05) == pytest.approx(rms, rel=1e-12)


@pytest.mark.parametrize(("megahertz", "printed"), SIX_MM_POINTS)
def test_attenuation_of_a_foam_cable_is_the_makers(megahertz, printed):
    """The maker's two coefficients give the makers' printed attenuation to its tenth of a decibel."""
    root, linear = SIX_MM_FOAM
    k_1 = root / HUNDRED_FEET / np.sqrt(MEGAHERTZ)
    k_2 = linear / HUNDRED_FEET / MEGAHERTZ

    per_metre = cable_attenuation(k_1, 1.0, megahertz * MEGAHERTZ, k_2)

    assert per_metre * HUNDRED_FEET == pytest.approx(printed, abs=0.05), CABLE_SHEET


def test_a_warm_cable_loses_what_the_cable_trade_prints():
    """5.5 dB/100 ft at 68 °F is 5.69 dB at 100 °F by the printed 0.11 % per °F, and 11.4 dB over 200 ft."""
    factor = conductor_temperature_factor((100 - 32) / 1.8)

    assert factor == pytest.approx(1.0352, abs=0.001), CABLE_TV
    assert 0.055 * factor == pytest.approx(0.057, abs=0.0005), CABLE_TV
    assert 200 * 0.055 * factor == pytest.approx(11.4, abs=0.05), CABLE_TV


def test_temperature_touches_only_the_conductors():
    """Heat raises the conductors' part of the attenuation and leaves the dielectric's alone; 20 °C changes nothing."""
    hot = conductor_temperature_factor(80.0)

    assert conductor_temperature_factor(20.0) == 1
    assert cable_attenuation(1e-5, hot, 1e8, 0.0) == pytest.approx(hot * 0.1, rel=1e-12)
    assert cable_attenuation(0.0, hot, 1e8, 1e-10) == pytest.approx(0.01, rel=1e-12)


def test_attenuation_constant_is_the_trades_factor():
    """A neper is 8.686 dB."""
    assert attenuation_constant(8.686) == pytest.approx(1, abs=6e-5)


def test_phase_constant_is_the_electrical_angle_per_metre():
    """Without the conductors' inside a metre of cable turns the wave as a section of permittivity 1/v² does."""
    velocity = 0.66

    angle = electrical_angle(145e6, electrical_length(1.0, velocity**-2))

    assert surface_phase_constant(145e6, velocity) == pytest.approx(angle, rel=1e-12)


def coaxial(frequency_hz, tan_delta):
    """Propagation constant and impedance of a thin solid-polyethylene cable by scikit-rf, skin effect solved."""
    frequency = Frequency.from_f([frequency_hz], unit="hz")
    cable = Coaxial(frequency, Dint=0.9e-3, Dout=3.0e-3, epsilon_r=2.25, tan_delta=tan_delta, sigma=58e6)
    return cable.gamma[0], cable.z0[0]


@pytest.mark.parametrize("frequency_hz", [1e6, 1e7, 1e8])
def test_reactive_part_of_the_impedance_is_that_of_a_coaxial_line(frequency_hz):
    """With loss in the conductors alone scikit-rf's coaxial line, skin effect solved, has our phase and impedance.

    Its loss is what ours start from, as a published figure would be; the rest agrees within squares of the loss.
    """
    gamma, impedance = coaxial(frequency_hz, 0.0)
    surface = surface_phase_constant(frequency_hz, 2.25**-0.5)
    bare = 59.9585 / 2.25**0.5 * np.log(3.0 / 0.9)
    squares = 3 * (gamma.real / surface) ** 2

    assert phase_constant(surface, gamma.real) == pytest.approx(gamma.imag, rel=squares + 1e-6)
    assert impedance_resistance(bare, gamma.real, surface) == pytest.approx(impedance.real, rel=squares + 1e-5)
    assert impedance_reactance(bare, 0.0, gamma.real, surface) == pytest.approx(
        impedance.imag, rel=3 * gamma.real / surface
    )


@pytest.mark.parametrize("frequency_hz", [1e7, 1e8, 1e9])
def test_a_lossy_dielectric_takes_the_reactance_back(frequency_hz):
    """With loss in the dielectric too the reactance is scikit-rf's to 0.01 %, and smaller."""
    conductors, bare = coaxial(frequency_hz, 0.0)
    gamma, impedance = coaxial(frequency_hz, 0.0004)

    surface = gamma.imag - conductors.real
    reactance = impedance_reactance(impedance.real, gamma.real - conductors.real, conductors.real, surface)

    assert reactance == pytest.approx(impedance.imag, rel=3 * gamma.real / surface)
    assert abs(reactance) < abs(bare.imag)
