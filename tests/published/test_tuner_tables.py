"""A tuner's loss and voltages against printed tables and estimates, and the handbooks' L network."""

import numpy as np
import pytest

from jointwise.calc.formulas.line import decibels
from jointwise.calc.formulas.tuner import (
    capacitive_reactance,
    component_resistance,
    inductive_reactance,
    l_match_loss,
    l_match_quality,
    tee_capacitor_voltage,
    tee_loss,
)
from jointwise.calc.waves.tuner import Parts, branches, settled, tuner_two_port
from jointwise.calc.waves.two_port import drive, seen_through

# "Estimating T-network losses at 80 and 160 meters", an amateur radio experimenters' magazine, July 1997, read in a
# stored copy: 3.7 MHz, capacitors without loss of up to 250 pF, matched to 50 Ω
FREQUENCY, LARGEST, Z_0 = 3.7e6, 250e-12, 50.0
LOW_EDGE = 3.5e6
LOSSLESS = 1e9
QUALITIES = (50, 100, 200)
PRINTED = 0.0101  # dB; the table's coil loses in parallel, and its last digit is not always the nearest

TABLE_1 = [  # load Ω, loss dB with coils of Q 50, 100, 200
    (1, (7.47, 4.99, 3.08)),
    (2.5, (4.62, 2.79, 1.57)),
    (5, (3.00, 1.69, 0.91)),
    (10, (1.85, 1.00, 0.52)),
    (25, (0.95, 0.49, 0.25)),
    (50, (0.62, 0.31, 0.15)),
    (100, (0.53, 0.26, 0.13)),
    (250, (0.43, 0.21, 0.10)),
    (500, (0.37, 0.18, 0.08)),
    (1000, (0.39, 0.20, 0.10)),
    (2500, (0.61, 0.31, 0.15)),
]
TABLE_2 = [  # worst load of an SWR, Ω, and its loss dB with Q 100
    (26 - 7j, 2, 0.50),
    (10 - 8j, 5, 1.02),
    (5 - 8j, 10, 1.72),
    (2.5 - 8j, 20, 2.84),
    (1 - 8j, 50, 5.06),
]
WORST_LOSSES = [  # SWR, loss dB with coils of Q 50, 100, 200, from the same table
    (1, (0.62, 0.31, 0.15)),
    (2, (0.97, 0.50, 0.25)),
    (5, (1.89, 1.02, 0.53)),
    (10, (3.05, 1.72, 0.93)),
    (20, (4.69, 2.84, 1.60)),
    (50, (7.56, 5.06, 3.13)),
]
TABLE_3 = [  # SWR, estimate dB with Q 50, 100, 200
    (1, (0.61, 0.30, 0.15)),
    (2, (1.03, 0.52, 0.26)),
    (5, (2.19, 1.10, 0.55)),
    (10, (3.98, 1.99, 1.00)),
    (20, (7.41, 3.70, 1.85)),
    (50, (17.28, 8.64, 4.32)),
]


def by_quality(rows):
    """Rows of one loss each: what they hold for, quality of the coil, dB."""
    return [(key, quality, loss) for key, losses in rows for quality, loss in zip(QUALITIES, losses, strict=True)]


def reflection(impedance):
    """Of an impedance [Ω] at 50 Ω."""
    return (impedance - Z_0) / (impedance + Z_0)


def tuned(impedance, frequency=FREQUENCY, network="t", coil_q=100, capacitor_q=LOSSLESS, capacitor=LARGEST, coil=1e-3):
    """A tuner's parts, setting and waves for 1 W in, looking at load impedances [Ω]."""
    parts = Parts(network, coil_q, capacitor_q, capacitor, coil)
    load = reflection(np.asarray(impedance, dtype=complex))
    setting = settled(parts, frequency, load, Z_0)
    return parts, setting, drive([tuner_two_port(parts, setting, frequency)], load, Z_0, net=False)


def loss_db(impedance, **made):
    """Loss of a tuner that matches a load [Ω]."""
    _, setting, waves = tuned(impedance, **made)
    assert setting.reachable.all()
    return -decibels(waves.power_w[-1])


@pytest.mark.parametrize(("resistance", "quality", "printed"), by_quality(TABLE_1))
def test_loss_of_a_tee_is_the_printed_one(resistance, quality, printed):
    """A T network set for the least loss loses what table 1 prints."""
    assert loss_db(resistance, coil_q=quality) == pytest.approx(printed, abs=PRINTED)


@pytest.mark.parametrize(("impedance", "vswr", "printed"), TABLE_2)
def test_loss_at_the_printed_worst_load(impedance, vswr, printed):
    """At the loads that table 2 prints as the worst of their SWR the loss is the printed one."""
    size = abs(reflection(impedance))

    # the load is printed in whole ohms; near the worst the loss hardly moves along the SWR's circle
    exact = size and reflection(impedance) * (vswr - 1) / (vswr + 1) / size
    assert loss_db(Z_0 * (1 + exact) / (1 - exact)) == pytest.approx(printed, abs=PRINTED)


@pytest.mark.parametrize(("vswr", "quality", "printed"), by_quality(WORST_LOSSES))
def test_worst_loss_of_an_swr_is_the_printed_one(vswr, quality, printed):
    """Over all phases of an SWR a T network loses at most what table 2 prints."""
    circle = (vswr - 1) / (vswr + 1) * np.exp(2j * np.pi * np.arange(720) / 720)

    assert loss_db(Z_0 * (1 + circle) / (1 - circle), coil_q=quality).max() == pytest.approx(printed, abs=PRINTED)


@pytest.mark.parametrize(("vswr", "quality", "printed"), by_quality(TABLE_3))
def test_estimate_is_the_printed_one(vswr, quality, printed):
    """The estimate of a T network's loss is that of table 3."""
    assert tee_loss(vswr, LARGEST, FREQUENCY, quality) == pytest.approx(printed, abs=0.0101)


@pytest.mark.parametrize("quality", QUALITIES)
@pytest.mark.parametrize("vswr", [1.5, 2, 3, 5])
def test_estimate_of_a_tee_holds_below_a_decibel(vswr, quality):
    """Below 1 dB the estimate is that of the exact network within 15 %."""
    exact = loss_db(Z_0 / vswr, coil_q=quality)
    if exact < 1:
        assert tee_loss(vswr, LARGEST, FREQUENCY, quality) == pytest.approx(exact, rel=0.15)


@pytest.mark.parametrize("vswr", [1.5, 3, 5, 10])
def test_estimate_of_an_l_network_holds(vswr):
    """Equation 14: an L network loses 4.343 sqrt(s - 1)/Q dB, at SWR 5 and Q 100 0.087 dB."""
    exact = loss_db(Z_0 / vswr, network="l", capacitor=5e-9)

    assert l_match_loss(vswr, 100.0) == pytest.approx(exact, rel=0.03)
    assert l_match_loss(5.0, 100.0) == pytest.approx(0.087, abs=5e-4)


def test_voltage_on_a_tees_capacitor_is_the_estimated_one():
    """Equation 16: 1500 W into an SWR of 5 of low resistance put 2980 V on the capacitor at the load."""
    parts, setting, waves = tuned(10.0, coil_q=LOSSLESS)

    inside = branches(parts, setting, FREQUENCY, waves.at(0), waves.at(1))

    estimate = tee_capacitor_voltage(1500.0, 5.0, FREQUENCY, LARGEST)
    assert estimate == pytest.approx(2980, abs=1)
    assert np.sqrt(2 * 1500) * abs(inside.voltage[2]) == pytest.approx(estimate, rel=1e-6)


@pytest.mark.parametrize(("resistance", "inside_ohm"), [(10, 4000), (100, 1000)])
def test_resistance_inside_a_tee_is_the_printed_one(resistance, inside_ohm):
    """The text: with the usual 200 to 300 pF a T on 80 m turns 10 Ω into about 4000 Ω, 100 Ω into about 1000 Ω."""

    def inside(capacitor):
        _, setting, _ = tuned(resistance, frequency=LOW_EDGE, capacitor=capacitor)
        return 1 / np.real(1 / (resistance - 1j * capacitive_reactance(LOW_EDGE, setting.far_f)))

    assert inside(300e-12) < inside_ohm < inside(200e-12)


def test_a_coil_loses_a_tenth_of_the_power():
    """The text: at these loads the coil, 10 or 20 kΩ across, takes of the order of 10 %, 150 W of 1500 W."""
    parts, setting, waves = tuned(np.array([10.0, 100.0]))

    across = inductive_reactance(FREQUENCY, setting.coil_h) * parts.coil_q
    lost = 1500 * branches(parts, setting, FREQUENCY, waves.at(0), waves.at(1)).lost_w[1]

    assert ((across > 10_000) & (across < 40_000)).all()
    assert ((lost > 75) & (lost < 315)).all()


@pytest.mark.parametrize(("higher", "lower"), [(200.0, 50.0), (50.0, 12.5), (450.0, 50.0), (50.0, 5.0)])
def test_an_l_network_is_that_of_the_handbooks(higher, lower):
    """An L network has Q = sqrt(R/r - 1), its coil Q r in series and its capacitor R/Q across the higher resistance."""
    load = lower if higher == Z_0 else higher
    _, setting, _ = tuned(load, network="l", coil_q=LOSSLESS, capacitor=1e-7)

    quality = l_match_quality(higher, lower)
    across, away = (setting.near_f, setting.far_f) if load == lower else (setting.far_f, setting.near_f)
    assert inductive_reactance(FREQUENCY, setting.coil_h) == pytest.approx(quality * lower, rel=1e-6)
    assert capacitive_reactance(FREQUENCY, across) == pytest.approx(higher / quality, rel=1e-6)
    assert away == 0
    if higher == 4 * lower:  # 200 Ω to 50 Ω: 86.6 Ω in series, 115.5 Ω across
        assert quality == pytest.approx(np.sqrt(3))


def test_a_coil_of_quality_100_has_a_hundredth_of_its_reactance():
    """The definition of Q."""
    assert component_resistance(250.0, 100.0) == pytest.approx(2.5)


def test_a_tuner_at_the_transmitter_leaves_the_swr_on_the_line():
    """Question of a licence examination: with the tuner set to 1:1 an SWR of 5 on the line stays 5."""
    parts, setting, waves = tuned(10.0)

    seen = seen_through(tuner_two_port(parts, setting, FREQUENCY), reflection(10.0), Z_0)
    assert abs(seen) < 1e-6
    on_line = abs(waves.reflection(Z_0)[1])
    assert (1 + on_line) / (1 - on_line) == pytest.approx(5)
