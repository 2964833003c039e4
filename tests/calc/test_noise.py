"""What the table of noise environments holds, and how noise and cost behave."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scenarios import examples

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.line import decibels, power_ratio
from jointwise.calc.formulas.noise import cascade_noise_factor, lossy_noise_factor, snr_cost, system_noise_factor

ENVIRONMENTS = catalogue().noise_environments
REFERENCE_C = 16.85  # 290 K

EXTERNAL = st.floats(0, 80)  # dB
LOSS = st.floats(0, 40)  # dB
RECEIVER = st.floats(0.1, 30)  # dB
TEMPERATURE = st.floats(-60, 80)  # °C


def system(external, loss, receiver, temperature):
    """System noise factor of a lossless antenna, one line and a receiver; figures in dB, temperature in °C."""
    factor = power_ratio(loss)
    line = lossy_noise_factor(factor, temperature)
    return system_noise_factor(power_ratio(external), 1.0, 1.0, line, factor, power_ratio(receiver))


def test_places_stand_from_loud_to_quiet():
    """The table lists man-made noise from the loudest place to the quietest, then the sky."""
    assert list(ENVIRONMENTS) == ["city", "residential", "rural", "quiet_rural", "galactic"]


@pytest.mark.parametrize("place", ENVIRONMENTS)
def test_an_environment_has_a_range_and_a_spread(place):
    """Each environment holds over a frequency range and spreads to both sides of its median."""
    entry = ENVIRONMENTS[place]

    assert 0 < entry.frequency_hz.low.value < entry.frequency_hz.high.value
    assert entry.upper_decile_db.value >= entry.lower_decile_db.value > 0
    assert entry.fall_per_decade_db.value > 0


def test_views_share_out_the_pattern():
    """The horizon sees most of the earth and all that man makes, the skies little of both."""
    views = catalogue().antenna_views
    horizon, sky, cold = views.values()

    assert list(views) == ["horizon", "sky", "cold_sky"]
    assert 1 > horizon.earth_share.value > 0.5 > sky.earth_share.value == cold.earth_share.value > 0
    assert horizon.man_made_share.value == 1 > sky.man_made_share.value == cold.man_made_share.value > 0
    assert (horizon.elevation_deg.value, sky.elevation_deg, cold.elevation_deg) == (0, None, None)


def test_the_air_is_listed_by_frequency():
    """The loss of the air stands in rising frequency, from 30 MHz to the highest that a line is asked for."""
    points = catalogue().atmospheres["standard_air"].zenith_attenuation
    frequencies = [point.frequency_hz for point in points]

    assert frequencies == sorted(set(frequencies))
    assert (frequencies[0], frequencies[-1]) == (30e6, 50e9)
    assert all(point.db > 0 for point in points)


@examples(100)
@given(external=EXTERNAL, loss=LOSS, more=st.floats(0.01, 10), receiver=RECEIVER, temperature=TEMPERATURE)
def test_more_loss_is_more_noise(external, loss, more, receiver, temperature):
    """A longer line never lowers the system noise factor."""
    longer = system(external, loss + more, receiver, temperature)

    assert longer >= system(external, loss, receiver, temperature)


@examples(100)
@given(external=EXTERNAL, loss=LOSS, receiver=RECEIVER)
def test_a_line_costs_no_more_than_its_loss(external, loss, receiver):
    """At 290 K, with external noise above it, a line costs between nothing and its loss."""
    cost = snr_cost(system(external, loss, receiver, REFERENCE_C), system(external, 0.0, receiver, REFERENCE_C))

    assert -1e-9 <= cost <= loss + 1e-9


@examples(100)
@given(loss=LOSS, receiver=RECEIVER)
def test_under_thermal_noise_alone_a_line_costs_its_whole_loss(loss, receiver):
    """Where the antenna hears just 290 K, a line at 290 K costs its whole loss."""
    cost = snr_cost(system(0.0, loss, receiver, REFERENCE_C), system(0.0, 0.0, receiver, REFERENCE_C))

    assert cost == pytest.approx(loss, abs=1e-9)


def test_loud_noise_forgives_a_line():
    """Under 40 dB of external noise 3 dB of line costs a receiver of 10 dB noise figure under 0.01 dB."""
    assert 0 < snr_cost(system(40, 3, 10, 20.0), system(40, 0, 10, 20.0)) < 0.01


@examples(100)
@given(figure=RECEIVER, gain=st.floats(-30, 40), behind=RECEIVER)
def test_a_chain_is_never_quieter_than_its_front(figure, gain, behind):
    """What follows the first part never lowers the noise figure of the chain."""
    total = cascade_noise_factor(power_ratio(figure), power_ratio(behind), power_ratio(gain))

    assert decibels(total) >= figure - 1e-9
