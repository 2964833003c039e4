"""Chains of two-ports against scikit-rf, which works in waves and connects networks port by port."""

from functools import reduce

import numpy as np
import pytest
import skrf
from hypothesis import given
from hypothesis import strategies as st
from lines import SEEDS, passive
from scenarios import examples
from skrf.media import DefinedGammaZ0

from jointwise.calc.waves.two_port import (
    TwoPort,
    cascade,
    drive,
    from_scattering,
    joint_section,
    line_section,
    reverse,
    scattering,
)

AGREE = 1e-9
Z_0 = 50.0
FREQUENCIES = np.geomspace(1e3, 20e9, 9)
BAND = skrf.Frequency.from_f(FREQUENCIES, unit="Hz")
LINE_OF_Z_0 = DefinedGammaZ0(BAND, gamma=2j * np.pi * FREQUENCIES / 3e8, z0=Z_0)
MOST = 25


def gamma(decibels, velocity):
    """Propagation constant [1/m] of a cable by its loss at 1 GHz [dB/m] and its velocity factor."""
    attenuation = decibels * np.sqrt(FREQUENCIES / 1e9) * np.log(10) / 20
    return attenuation + 2j * np.pi * FREQUENCIES / (velocity * 299792458.0)


def embedded(constant, impedance, length):
    """A line of scikit-rf between steps to and from its impedance.

    Its own change of reference goes through an impedance matrix, which is almost singular for a short line.
    """
    line = LINE_OF_Z_0.match(nports=2)
    line.s[:, [0, 1], [1, 0]] = DefinedGammaZ0(BAND, gamma=constant).line(length, "m").s[:, [0, 1], [1, 0]]
    into, out = (
        LINE_OF_Z_0.impedance_mismatch(*step, s_def="traveling") for step in ((Z_0, impedance), (impedance, Z_0))
    )
    return into**line**out


def line_pair(resistance, conductors, decibels, velocity, length):
    """A line section of the core and the same of scikit-rf.

    `conductors`, -1 to 1, is how far its loss is that of conductors rather than of the dielectric: a line
    without sources of power has a reactance of that share of alpha over beta, and no larger one.
    """
    constant = gamma(decibels, velocity)
    impedance = resistance * (1 - 1j * conductors * constant.real / constant.imag)
    return line_section(impedance, constant * length), embedded(constant, impedance, length)


def joint_pair(resistance, decibels, velocity, length, contact):
    """A joint of the core, and half a line, a resistor and half a line of scikit-rf."""
    constant = gamma(decibels, velocity)
    half = embedded(constant, resistance, length / 2)
    return (
        joint_section(np.full(FREQUENCIES.size, resistance), constant * length, contact),
        half ** LINE_OF_Z_0.resistor(contact) ** half,
    )


def series_pair(inductance):
    """A series inductor [H], by its impedance and by scikit-rf."""
    one = np.ones(FREQUENCIES.size)
    return TwoPort(one, 2j * np.pi * FREQUENCIES * inductance, 0 * one, one), LINE_OF_Z_0.inductor(inductance)


def attenuator_pair(decibels):
    """A matched attenuator, by its scattering parameters and by scikit-rf."""
    through = np.full(FREQUENCIES.size, 10 ** (-decibels / 20), dtype=complex)
    return from_scattering(0 * through, through, through, 0 * through, Z_0), LINE_OF_Z_0.attenuator(-decibels)


def measured_pair(seed, reference):
    """A random passive two-port, not reciprocal, of another reference."""
    s = passive(seed, 2, FREQUENCIES.size)
    network = skrf.Network(frequency=BAND, s=s, z0=reference)
    network.renormalize(Z_0)
    return from_scattering(s[:, 0, 0], s[:, 0, 1], s[:, 1, 0], s[:, 1, 1], reference), network


LINES_OF_LENGTH = st.builds(
    line_pair,
    st.floats(10, 300),
    st.floats(-1, 1),
    st.floats(0, 2),
    st.floats(0.6, 1),
    st.one_of(st.floats(0.001, 1), st.floats(0.001, 30)),
)
CONTACTS = st.floats(1e-3, 5)
JOINTS = st.builds(joint_pair, st.floats(20, 120), st.floats(0, 2), st.floats(0.6, 1), st.floats(1e-3, 0.05), CONTACTS)
RECIPROCAL = st.one_of(
    LINES_OF_LENGTH,
    JOINTS,
    st.builds(series_pair, st.floats(1e-12, 1e-6)),
    st.builds(attenuator_pair, st.floats(0, 30)),
)
MEASURED = st.builds(measured_pair, SEEDS, st.floats(20, 100))
CHAINS = st.lists(st.one_of(RECIPROCAL, MEASURED), min_size=1, max_size=MOST)
LOADS = st.builds(lambda seed: passive(seed, 1, FREQUENCIES.size)[:, 0, 0], SEEDS)


def ports_and_reference(chain):
    """The core's two-ports of drawn pairs, and scikit-rf's networks."""
    return [port for port, _ in chain], [network for _, network in chain]


def stacked(port):
    """The scattering parameters of a two-port as scikit-rf keeps them."""
    return np.moveaxis(np.broadcast_arrays(*scattering(port, Z_0)), 0, -1).reshape(-1, 2, 2)


def one_port(reflection):
    """A load of scikit-rf."""
    return skrf.Network(frequency=BAND, s=reflection[:, None, None], z0=Z_0)


@examples(60)
@given(chain=CHAINS)
def test_a_chain_scatters_as_in_scikit_rf(chain):
    """All four scattering parameters of any chain are scikit-rf's."""
    ports, networks = ports_and_reference(chain)

    expected = reduce(lambda one, other: one**other, networks)

    assert stacked(cascade(ports)) == pytest.approx(expected.s, abs=AGREE)


@examples(40)
@given(chain=CHAINS)
def test_a_reversed_chain_is_the_flipped_one_of_scikit_rf(chain):
    """A chain seen from its other end is scikit-rf's with its ports exchanged, and twice reversed the same."""
    ports, networks = ports_and_reference(chain)
    whole = cascade(ports)

    expected = reduce(lambda one, other: one**other, networks).flipped()

    assert stacked(reverse(whole)) == pytest.approx(expected.s, abs=AGREE)
    assert stacked(reverse(reverse(whole))) == pytest.approx(stacked(whole), abs=AGREE)


@examples(40)
@given(chain=CHAINS, load=LOADS)
def test_every_plane_reflects_as_in_scikit_rf(chain, load):
    """Looking from any plane towards the load one sees scikit-rf's remaining chain with the load behind it."""
    ports, networks = ports_and_reference(chain)
    waves = drive(ports, load, Z_0, net=False)
    seen = [one_port(load)]
    for network in reversed(networks):
        seen.insert(0, network ** seen[0])

    expected = np.array([one.s[:, 0, 0] for one in seen])

    assert waves.reflection(Z_0) == pytest.approx(expected, abs=AGREE)


@examples(40)
@given(chain=CHAINS, load=LOADS)
def test_what_reaches_the_load_is_the_transducer_gain(chain, load):
    """The power in the load, for 1 W of forward wave, is the transducer gain by scikit-rf's parameters."""
    ports, networks = ports_and_reference(chain)
    s = reduce(lambda one, other: one**other, networks).s

    gain = np.abs(s[:, 1, 0]) ** 2 * (1 - np.abs(load) ** 2) / np.abs(1 - s[:, 1, 1] * load) ** 2

    assert drive(ports, load, Z_0, net=False).power_w[-1] == pytest.approx(gain, rel=AGREE, abs=0)


@pytest.mark.parametrize("net", [False, True])
@examples(40)
@given(chain=CHAINS, load=LOADS)
def test_power_lost_between_planes_is_what_the_parts_turn_into_heat(net, chain, load):
    """The power that goes missing in each two-port is what its waves and scikit-rf's parameters say it burns."""
    ports, networks = ports_and_reference(chain)
    waves = drive(ports, load, Z_0, net=net)
    incident = np.stack([waves.forward(Z_0)[:-1], waves.backward(Z_0)[1:]], axis=-1)
    leaving = np.stack([(network.s @ one[..., None])[..., 0] for network, one in zip(networks, incident, strict=True)])

    burnt = np.sum(np.abs(incident) ** 2 - np.abs(leaving) ** 2, axis=-1)

    scale = np.maximum(np.abs(waves.forward(Z_0)[:-1]) ** 2, 1e-3)
    assert (-np.diff(waves.power_w, axis=0) / scale) == pytest.approx(burnt / scale, abs=AGREE)


@examples(40)
@given(chain=CHAINS, load=LOADS)
def test_the_powers_add_up(chain, load):
    """Reflected, burnt and delivered power are the power sent, and of net power nothing is reflected."""
    ports, _ = ports_and_reference(chain)
    forward, net = (drive(ports, load, Z_0, net=net) for net in (False, True))

    reflected = np.abs(forward.backward(Z_0)[0]) ** 2

    assert reflected - np.diff(forward.power_w, axis=0).sum(axis=0) + forward.power_w[-1] == pytest.approx(1, abs=AGREE)
    assert net.power_w[0] == pytest.approx(1, abs=AGREE)


def test_a_long_lossy_chain_stays_finite():
    """Of a chain of 25 runs of 90 dB each the waves are finite, and every run takes its 90 dB."""
    nepers = 90 * np.log(10) / 20
    ports = [line_section(np.full(3, Z_0), np.array([1, 3, 100]) * 1j + nepers)] * MOST
    waves = drive(ports, np.full(3, 0.3 + 0.4j), Z_0, net=False)

    lost = -10 * np.diff(np.log10(waves.power_w), axis=0)

    assert lost[:-1] == pytest.approx(90, rel=AGREE)


def test_a_run_beyond_all_measure_stays_finite():
    """A run of 100,000 dB has finite waves and hides its load entirely."""
    endless = line_section(np.array([Z_0]), np.array([11512.9 + 7j]))

    waves = drive([endless], np.array([-1 + 0j]), Z_0, net=False)

    assert np.isfinite(waves.power_w).all()
    assert waves.reflection(Z_0)[0] == pytest.approx(0, abs=AGREE)


def test_a_lossless_half_wave_repeats_its_load():
    """Behind half a wave of lossless line of any impedance the load is seen as it is."""
    load = np.array([0.5 * np.exp(0.7j), -0.9, 0.1j])

    waves = drive([line_section(np.array([93.0]), np.array([1j * np.pi]))], load, Z_0, net=False)

    assert waves.reflection(Z_0)[0] == pytest.approx(load, abs=AGREE)
