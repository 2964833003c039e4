"""Runs of cables and two-wire lines against scikit-rf's lossy lines and the handbooks' loss of a mismatched line."""

import numpy as np
import pytest
import skrf
from skrf.media import DefinedGammaZ0, DistributedCircuit

from jointwise.calc.catalogue import catalogue
from jointwise.calc.feedline.cable import cable_model
from jointwise.calc.feedline.wires import WireModel
from jointwise.calc.formulas.line import additional_loss, power_ratio
from jointwise.calc.physics.cable_table import cable_ratings
from jointwise.calc.physics.scenario import Scenario
from jointwise.calc.physics.station import station_of
from jointwise.calc.physics.wire_ratings import wire_ratings
from jointwise.calc.waves.two_port import drive, scattering

WIRE_LINES = list(catalogue().wire_lines)
RUNS = [*catalogue().cables, *WIRE_LINES]
AGREE = 1e-9
SQUARES = 2.5
"""Of alpha over beta left out by the law of low loss, resistance and inner reactance together."""
HZ = np.array([1.9e6, 7.1e6, 28.5e6, 145e6, 433e6, 1.27e9, 5.7e9])
BAND = skrf.Frequency.from_f(HZ, unit="Hz")
LENGTH = 17.3  # m, no whole number of half waves at any of the frequencies
Z_0 = 50.0


def model(run, length=LENGTH):
    """The cautious model of a run of cable or two-wire line in an ordinary station."""
    station = station_of(Scenario())
    if run in WIRE_LINES:
        return WireModel(station, length, wire_ratings(run, "low"))
    return cable_model(cable_ratings(run, "low"), length, station)


def ours(run):
    """Scattering parameters of a run against 50 Ω, as scikit-rf keeps them."""
    return np.moveaxis(np.array(scattering(model(run).two_port(HZ), Z_0)), 0, -1).reshape(-1, 2, 2)


def distributed(run):
    """The line as resistance, inductance, conductance and capacitance of a metre, by the law of low loss.

    The conductors' inside adds as much reactance as resistance (skin effect).
    """
    conductor, dielectric, beta = model(run).constants(HZ)
    impedance, omega = float(model(run).ratings.impedance_ohm), 2 * np.pi * HZ
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


@pytest.mark.parametrize("run", RUNS)
def test_a_run_is_scikit_rfs_line_of_the_same_constants(run):
    """Every run scatters as scikit-rf's line of the same propagation constant and impedance."""
    conductor, dielectric, beta = constants = model(run).constants(HZ)
    impedance = model(run).impedance(*constants)
    medium = DefinedGammaZ0(BAND, gamma=conductor + dielectric + 1j * beta, z0=impedance, z0_port=Z_0)

    expected = medium.line(LENGTH, "m").s

    assert ours(run) == pytest.approx(expected, abs=AGREE)


@pytest.mark.parametrize("run", RUNS)
def test_a_run_is_scikit_rfs_distributed_circuit(run):
    """A run scatters as its own R, L, G and C per metre, solved without approximation, but for squares of the loss.

    What the law of low loss leaves out is (alpha/beta)² of the angle and of the impedance, and shows the more
    the further that lies from the 50 Ω it is seen from.
    """
    conductor, dielectric, beta = model(run).constants(HZ)
    impedance = float(model(run).nominal_ohm)
    left_out = SQUARES * ((conductor + dielectric) / beta) ** 2 * (1 + beta * LENGTH) * max(impedance / Z_0, 1)

    difference = np.abs(ours(run) - distributed(run).line(LENGTH, "m").s).max(axis=(1, 2))

    assert (difference <= left_out).all()


@pytest.mark.parametrize("run", RUNS)
def test_impedance_and_loss_are_those_of_the_distributed_circuit(run):
    """Impedance, loss and phase of a metre agree with the exact line within squares of alpha over beta."""
    conductor, dielectric, beta = constants = model(run).constants(HZ)
    circuit, left_out = distributed(run), SQUARES * ((conductor + dielectric) / beta) ** 2

    assert (np.abs(model(run).impedance(*constants) / circuit.z0_characteristic - 1) <= left_out).all()
    assert (np.abs((conductor + dielectric) / circuit.gamma.real - 1) <= left_out + AGREE).all()
    assert (np.abs(beta / circuit.gamma.imag - 1) <= left_out + AGREE).all()


def losses(run, length, magnitude):
    """Loss [dB] of a run at 14.2 MHz with loads of one reflection, against the line's own impedance, round the circle.

    Each step of the load's angle is what a longer or shorter run would do: the circle is half a wave of cable.
    """
    hertz = np.full(360, 14.2e6)
    model_of_run = model(run, length)
    own = model_of_run.impedance(*model_of_run.constants(hertz))
    seen = magnitude * np.exp(2j * np.pi * np.arange(360) / 360)
    load = own * (1 + seen) / (1 - seen)
    waves = drive([model_of_run.two_port(hertz)], (load - Z_0) / (load + Z_0), Z_0, net=True)
    return -10 * np.log10(waves.power_w[-1])


@pytest.mark.parametrize("magnitude", [0.1, 1 / 3, 0.6])
@pytest.mark.parametrize("length", [5.0, 30.0, 120.0])
@pytest.mark.parametrize("run", RUNS)
def test_the_handbooks_loss_is_the_mean_over_half_a_wave(run, length, magnitude):
    """Over half a wave the exact loss is, in the mean, matched loss and the handbooks' added loss together.

    The handbooks' formula takes the impedance as real. The reactance that the losses bring shifts single
    loads both ways, in the first order of alpha over beta, and the mean only in the second.
    """
    conductor, dielectric, beta = (one[0] for one in model(run, length).constants(np.array([14.2e6])))
    matched = 20 / np.log(10) * (conductor + dielectric) * length

    handbook = matched + additional_loss(power_ratio(matched), magnitude)

    exact = losses(run, length, magnitude)
    first_order = 20 * (conductor + dielectric) / beta
    assert exact.mean() == pytest.approx(handbook, abs=first_order**2)
    assert np.abs(exact - handbook).max() < first_order
