"""Runs of the catalogue's cables against scikit-rf's lossy lines and the handbooks' loss of a mismatched line."""

import numpy as np
import pytest
import skrf
from skrf.media import DefinedGammaZ0, DistributedCircuit

from jointwise.calc.catalogue import catalogue
from jointwise.calc.feedline.cable import cable_model
from jointwise.calc.formulas.line import additional_loss, power_ratio
from jointwise.calc.physics.cable_table import cable_ratings
from jointwise.calc.physics.scenario import Scenario
from jointwise.calc.physics.station import station_of
from jointwise.calc.waves.two_port import drive, scattering

CABLES = list(catalogue().cables)
AGREE = 1e-9
SQUARES = 2.5
"""Of alpha over beta left out by the law of low loss, resistance and inner reactance together."""
HZ = np.array([1.9e6, 7.1e6, 28.5e6, 145e6, 433e6, 1.27e9, 5.7e9])
BAND = skrf.Frequency.from_f(HZ, unit="Hz")
LENGTH = 17.3  # m, no whole number of half waves at any of the frequencies
Z_0 = 50.0


def model(cable, length=LENGTH):
    """The cautious model of a cable in an ordinary station."""
    return cable_model(cable_ratings(cable, "low"), length, station_of(Scenario()))


def ours(cable):
    """Scattering parameters of a run against 50 Ω, as scikit-rf keeps them."""
    return np.moveaxis(np.array(scattering(model(cable).two_port(HZ), Z_0)), 0, -1).reshape(-1, 2, 2)


def distributed(cable):
    """The cable as resistance, inductance, conductance and capacitance of a metre, by the law of low loss.

    The conductors' inside adds as much reactance as resistance (skin effect).
    """
    conductor, dielectric, beta = model(cable).constants(HZ)
    impedance, omega = float(model(cable).ratings.impedance_ohm), 2 * np.pi * HZ
    surface = beta - conductor
    raised = impedance * (1 + conductor / surface)
    resistance = 2 * conductor * raised
    return DistributedCircuit(
        BAND,
        R=resistance,
        L=(surface * impedance + resistance) / omega,
        G=2 * dielectric / raised,
        C=surface / (omega * impedance),
        z0_port=Z_0,
    )


@pytest.mark.parametrize("cable", CABLES)
def test_a_run_is_scikit_rfs_line_of_the_same_constants(cable):
    """A run of every cable scatters as scikit-rf's line of the same propagation constant and impedance."""
    conductor, dielectric, beta = constants = model(cable).constants(HZ)
    impedance = model(cable).impedance(*constants)
    medium = DefinedGammaZ0(BAND, gamma=conductor + dielectric + 1j * beta, z0=impedance, z0_port=Z_0)

    expected = medium.line(LENGTH, "m").s

    assert ours(cable) == pytest.approx(expected, abs=AGREE)


@pytest.mark.parametrize("cable", CABLES)
def test_a_run_is_scikit_rfs_distributed_circuit(cable):
    """A run scatters as its own R, L, G and C per metre, solved without approximation, but for squares of the loss.

    What the law of low loss leaves out is (alpha/beta)² of the angle and of the impedance.
    """
    conductor, dielectric, beta = model(cable).constants(HZ)
    left_out = SQUARES * ((conductor + dielectric) / beta) ** 2 * (1 + beta * LENGTH)

    difference = np.abs(ours(cable) - distributed(cable).line(LENGTH, "m").s).max(axis=(1, 2))

    assert (difference <= left_out).all()


@pytest.mark.parametrize("cable", CABLES)
def test_impedance_and_loss_are_those_of_the_distributed_circuit(cable):
    """Impedance, loss and phase of a metre agree with the exact line within squares of alpha over beta."""
    conductor, dielectric, beta = constants = model(cable).constants(HZ)
    circuit, left_out = distributed(cable), SQUARES * ((conductor + dielectric) / beta) ** 2

    assert (np.abs(model(cable).impedance(*constants) / circuit.z0_characteristic - 1) <= left_out).all()
    assert (np.abs((conductor + dielectric) / circuit.gamma.real - 1) <= left_out + AGREE).all()
    assert (np.abs(beta / circuit.gamma.imag - 1) <= left_out + AGREE).all()


def losses(cable, length, magnitude):
    """Loss [dB] of a run at 14.2 MHz with loads of one reflection, against the cable's own impedance, round the circle.

    Each step of the load's angle is what a longer or shorter run would do: the circle is half a wave of cable.
    """
    hertz = np.full(360, 14.2e6)
    run = model(cable, length)
    own = run.impedance(*run.constants(hertz))
    seen = magnitude * np.exp(2j * np.pi * np.arange(360) / 360)
    load = own * (1 + seen) / (1 - seen)
    waves = drive([run.two_port(hertz)], (load - Z_0) / (load + Z_0), Z_0, net=True)
    return -10 * np.log10(waves.power_w[-1])


@pytest.mark.parametrize("magnitude", [0.1, 1 / 3, 0.6])
@pytest.mark.parametrize("length", [5.0, 30.0, 120.0])
@pytest.mark.parametrize("cable", CABLES)
def test_the_handbooks_loss_is_the_mean_over_half_a_wave(cable, length, magnitude):
    """Over half a wave the exact loss is, in the mean, matched loss and the handbooks' added loss together.

    The handbooks' formula takes the impedance as real. The reactance that the losses bring shifts single
    loads both ways, in the first order of alpha over beta, and the mean only in the second.
    """
    run = model(cable, length)
    conductor, dielectric, beta = (one[0] for one in run.constants(np.array([14.2e6])))
    matched = 20 / np.log(10) * (conductor + dielectric) * length

    handbook = matched + additional_loss(power_ratio(matched), magnitude)

    exact = losses(cable, length, magnitude)
    first_order = 20 * (conductor + dielectric) / beta
    assert exact.mean() == pytest.approx(handbook, abs=first_order**2)
    assert np.abs(exact - handbook).max() < first_order
