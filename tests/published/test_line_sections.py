"""Transformers, sections and two-wire lines against scikit-rf, and against worked examples of the trade."""

import numpy as np
import pytest
import skrf
from skrf.media import DefinedGammaZ0

from jointwise.calc.catalogue import catalogue
from jointwise.calc.feedline.section import SectionModel
from jointwise.calc.feedline.transformer import TransformerModel
from jointwise.calc.feedline.wires import WireModel
from jointwise.calc.formulas.constants import C_0, ETA_0
from jointwise.calc.formulas.match import vswr_of_reflection
from jointwise.calc.formulas.skin import surface_resistance
from jointwise.calc.physics.scenario import Scenario
from jointwise.calc.physics.station import station_of
from jointwise.calc.physics.wire_ratings import wire_ratings
from jointwise.calc.waves.two_port import cascade, drive, scattering

AGREE = 1e-9
HZ = np.array([1.9e6, 7.1e6, 28.5e6, 145e6, 433e6])
BAND = skrf.Frequency.from_f(HZ, unit="Hz")
STATION = station_of(Scenario(ambient_temperature_c=20.0))
Z_0 = 50.0
HUNDRED_FEET = 30.48


def section(impedance, length, velocity=1.0, loss_db=0.0):
    """A transformer section."""
    return SectionModel(
        STATION, length, impedance_ohm=impedance, velocity_factor=velocity, loss_db=loss_db, voltage_limit_v=np.inf
    )


def transformer(ratio, loss_db=0.0):
    """A transformer without limits."""
    return TransformerModel(STATION, power_limit_w=np.inf, peak_v=np.inf, ratio=ratio, loss_db=loss_db)


def wires(line, length=1.0):
    """A run of two-wire line."""
    return WireModel(STATION, length, wire_ratings(line, "low"))


def scattered(*models):
    """Scattering parameters of a chain against 50 Ω, as scikit-rf keeps them."""
    s = scattering(cascade([model.two_port(HZ) for model in models]), Z_0)
    return np.stack([np.broadcast_to(one, HZ.shape) for one in s], axis=-1).reshape(-1, 2, 2)


def reference_section(impedance, length, velocity, loss_db):
    """A section by scikit-rf's line."""
    gamma = loss_db / length * np.log(10) / 20 + 2j * np.pi * HZ / (velocity * C_0)
    return DefinedGammaZ0(BAND, gamma=gamma, z0=impedance, z0_port=Z_0).line(length, "m")


def reference_transformer(ratio, loss_db):
    """A matched attenuator of scikit-rf's before an ideal transformer by its chain matrix."""
    turns = np.sqrt(ratio)
    ideal = np.tile(np.array([[1 / turns, 0], [0, turns]], dtype=complex), (HZ.size, 1, 1))
    attenuator = DefinedGammaZ0(BAND, gamma=1j * HZ, z0=Z_0).attenuator(-loss_db, db=True)
    return attenuator ** skrf.Network(frequency=BAND, s=skrf.network.a2s(ideal, Z_0), z0=Z_0)


def seen(models, load_ohm, hertz):
    """Impedance into a chain that ends in a resistance [Ω]."""
    waves = drive([model.two_port(hertz) for model in models], (load_ohm - Z_0) / (load_ohm + Z_0), Z_0, net=True)
    return waves.voltage[0] / waves.current[0]


def lost_db(model, load_ohm, hertz):
    """Loss of a run into a load [Ω], of the power that goes in [dB]."""
    at = np.array([hertz])
    waves = drive([model.two_port(at)], np.array([(load_ohm - Z_0) / (load_ohm + Z_0)]), Z_0, net=True)
    return float(-10 * np.log10(waves.power_w[-1, 0]))


@pytest.mark.parametrize("loss_db", [0.0, 0.2, 3.0])
@pytest.mark.parametrize("ratio", [0.25, 1.0, 4.0, 49.0])
def test_a_transformer_is_scikit_rfs(ratio, loss_db):
    """A transformer scatters as scikit-rf's attenuator and ideal transformer in a row."""
    assert scattered(transformer(ratio, loss_db)) == pytest.approx(reference_transformer(ratio, loss_db).s, abs=AGREE)


@pytest.mark.parametrize("loss_db", [0.0, 0.3, 5.0])
@pytest.mark.parametrize(
    ("impedance", "length", "velocity"), [(35.4, 0.34, 0.66), (75.0, 3.4, 0.82), (380.0, 9.0, 1.0)]
)
def test_a_section_is_scikit_rfs(impedance, length, velocity, loss_db):
    """A section scatters as scikit-rf's line of that impedance, length and loss."""
    ours = scattered(section(impedance, length, velocity, loss_db))

    assert ours == pytest.approx(reference_section(impedance, length, velocity, loss_db).s, abs=AGREE)


@pytest.mark.parametrize("line", catalogue().wire_lines)
def test_a_chain_is_scikit_rfs(line):
    """Transformer, two-wire line and section in a row are what scikit-rf makes of them."""
    run = wires(line, 21.7)
    conductor, dielectric, beta = constants = run.constants(HZ)
    gamma, impedance = conductor + dielectric + 1j * beta, run.impedance(*constants)
    middle = DefinedGammaZ0(BAND, gamma=gamma, z0=impedance, z0_port=Z_0).line(21.7, "m")

    expected = reference_transformer(4.0, 0.2) ** middle ** reference_section(75.0, 1.2, 0.8, 0.1)

    assert scattered(transformer(4.0, 0.2), run, section(75.0, 1.2, 0.8, 0.1)) == pytest.approx(expected.s, abs=AGREE)


@pytest.mark.parametrize(("turns", "load"), [(3.0, 450.0), (7.0, 2450.0)])
def test_turns_of_the_examination_match(turns, load):
    """50 Ω to 450 Ω takes turns of 3:1, to 2.5 kΩ of 1:7 (licence examination, AC305 and AC306)."""
    assert seen([transformer(turns**2)], load, HZ) == pytest.approx(np.full(HZ.size, Z_0))


def test_a_quarter_wave_of_380_ohm_matches_240_to_600():
    """A quarter-wave section between 240 Ω and 600 Ω is of 380 Ω (licence examination, AG418)."""
    quarter = section(380.0, C_0 / 14.2e6 / 4)

    assert seen([quarter], 600.0, np.array([14.2e6]))[0] == pytest.approx(240.0, rel=0.005)


def test_window_line_at_a_high_swr_loses_as_printed():
    """100 ft of window line, matched 0.027 dB, loses 0.41 dB at SWR 32 and shows 29.1 (mailing list, 2009)."""
    run = section(450.0, HUNDRED_FEET, 0.95, 0.027)
    hertz = np.array([3.9e6])
    own = np.array([(32 - 1) / (32 + 1)])

    waves = drive([run.two_port(hertz)], own, 450.0, net=True)

    assert -10 * np.log10(waves.power_w[-1, 0]) == pytest.approx(0.41, abs=0.005)
    assert vswr_of_reflection(np.abs(waves.reflection(450.0)[0, 0])) == pytest.approx(29.1, abs=0.05)


@pytest.mark.parametrize(("hertz", "printed"), [(30e6, 0.328), (10e6, 0.18)])
def test_window_line_loses_what_its_wires_resist(hertz, printed):
    """The solid 450-class line lies within its sources' spread of the loss in dB/100 ft by the wires' resistance."""
    lost = wires("window_450_solid", HUNDRED_FEET).matched_loss_db(np.array([hertz]))[0]

    assert lost == pytest.approx(printed, rel=0.15)


def test_a_measured_run_of_window_line():
    """60 ft of window line into 50 Ω at 29.5 MHz was measured to lose 0.71 dB (amateur mailing list, 2013)."""
    assert lost_db(wires("window_450_solid", 60 * 0.3048), 50.0, 29.5e6) == pytest.approx(0.71, rel=0.15)


@pytest.mark.parametrize(("line", "printed"), [("window_450_stranded", 4.1), ("open_wire_600", 0.63)])
def test_window_line_against_open_wire_on_80_m(line, printed):
    """91.44 m into 7670 - j760 Ω at 3.6 MHz: 4.1 dB on stranded window line, 0.63 dB on 600 Ω (a page of 2015)."""
    assert lost_db(wires(line, 91.44), 7670 - 760j, 3.6e6) == pytest.approx(printed, rel=0.1)


@pytest.mark.parametrize("line", catalogue().wire_lines)
def test_the_law_meets_the_published_losses(line):
    """The law goes through the low figures of clad wire and lies within the spread of sources of all others."""
    spread = 0.15 if catalogue().wire_lines[line].fit_note.startswith("The measured loss") else 0.08
    for point in catalogue().wire_lines[line].attenuation:
        law = wires(line).matched_loss_db(np.array([point.frequency_hz]))[0]
        assert law == pytest.approx(point.db_per_m, rel=1e-9 if point.through else spread)


@pytest.mark.parametrize("line", ["window_450_heavy", "open_wire_600"])
def test_computed_losses_are_those_of_the_skin_effect(line):
    """What is computed of a line's loss is the surface resistance of copper over both wires' circumference."""
    entry = catalogue().wire_lines[line]
    for point in entry.attenuation:
        resistance = surface_resistance(point.frequency_hz, 5.8e7, 1.0) / (np.pi * entry.wire_diameter_m.value)
        expected = 20 / np.log(10) * resistance / entry.impedance_ohm.value
        assert point.db_per_m == pytest.approx(expected, rel=1e-3)


def test_open_wire_has_the_impedance_of_its_size():
    """Two wires of 2 mm, 150 mm apart in air, are of the impedance of free space over pi, times acosh(s/d)."""
    entry = catalogue().wire_lines["open_wire_600"]
    ratio = entry.spacing_m.value / entry.wire_diameter_m.value

    assert entry.impedance_ohm.value == pytest.approx(ETA_0 / np.pi * np.arccosh(ratio), rel=2e-3)
