"""VSWR, return loss, mismatch loss and the UHF section against printed tables and line theory."""

import json

import numpy as np
import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.heat import hot_spot_forward, hot_spot_net
from jointwise.calc.formulas.loss import mismatch_loss
from jointwise.calc.formulas.match import (
    electrical_angle,
    reflection_of_vswr,
    return_loss,
    section_reflection,
    vswr_of_reflection,
)
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.operations import call

INCH = 0.0254  # m
VSWR_TABLE = "read maker's VSWR table, version 2.00"

RETURN_LOSSES = [(1.10, 26.4), (2.00, 9.5), (3.00, 6.0)]  # VSWR, printed dB
MISMATCH_LOSSES = [(1.10, 0.010), (2.00, 0.512), (3.00, 1.249)]  # VSWR, printed dB
REFLECTED_SHARES = [(2.00, 0.111), (3.00, 0.25)]  # VSWR, printed share of the power
REFLECTIONS = [(2.00, 0.33), (3.00, 0.50)]  # VSWR, printed coefficient

UHF_SECTIONS = [  # Ω, electrical length in, MHz, return loss dB, VSWR: scikit-rf 2.2.0, lossless section
    (33.3, 1.93, 144, 24.2, 1.131),
    (33.3, 1.93, 432, 15.1, 1.428),
    (36.2, 1.49, 144, 28.5, 1.078),
    (36.2, 1.49, 432, 19.2, 1.247),
]

ANALYSER_1992 = "vector analyser series of two UHF adapters, rec.radio.amateur.misc, 18 September 1992"
TWO_UHF_PAIRS = [(150, 0.02), (200, 0.03), (450, 0.18), (600, 0.26), (2000, 0.02)]  # MHz, printed dB, both together


def allowed_by_voltage(vswr, power_is):
    """Power that N may carry by its voltage at this VSWR, in W."""
    request = MatrixRequest(families=["n"], bands=["20m"], powers_w=[100], vswr=vswr, power_is=power_is)
    return matrix(request).voltage_allowed_w[0][0][0]


def allowed_by_heat(vswr, power_is):
    """Power that N may carry by its heat at this VSWR, in W."""
    request = MatrixRequest(families=["n"], bands=["20m"], powers_w=[100], vswr=vswr, power_is=power_is)
    return matrix(request).contact_allowed_w[0][0][0]


@pytest.mark.parametrize(("vswr", "printed"), RETURN_LOSSES)
def test_return_loss_of_a_vswr_is_the_tables(vswr, printed):
    """Return loss of a VSWR is the table's to its printed tenth of a decibel."""
    assert return_loss(reflection_of_vswr(vswr)) == pytest.approx(printed, abs=0.05), VSWR_TABLE


@pytest.mark.parametrize(("vswr", "printed"), MISMATCH_LOSSES)
def test_mismatch_loss_of_a_vswr_is_the_tables(vswr, printed):
    """Mismatch loss of a VSWR is the table's to its printed thousandth of a decibel."""
    assert mismatch_loss(reflection_of_vswr(vswr)) == pytest.approx(printed, abs=0.0005), VSWR_TABLE


@pytest.mark.parametrize(("vswr", "printed"), REFLECTED_SHARES)
def test_reflected_power_of_a_vswr_is_the_tables(vswr, printed):
    """Reflected power of a VSWR is the table's 11.1 and 25 per cent."""
    assert reflection_of_vswr(vswr) ** 2 == pytest.approx(printed, abs=0.0005), VSWR_TABLE


@pytest.mark.parametrize(("vswr", "printed"), REFLECTIONS)
def test_reflection_of_a_vswr_is_the_tables(vswr, printed):
    """Reflection of a VSWR is the table's to its printed hundredth, and gives the VSWR back."""
    assert reflection_of_vswr(vswr) == pytest.approx(printed, abs=0.005), VSWR_TABLE
    assert vswr_of_reflection(reflection_of_vswr(vswr)) == pytest.approx(vswr, rel=1e-12)


@pytest.mark.parametrize(("impedance", "length", "megahertz", "printed", "vswr"), UHF_SECTIONS)
def test_uhf_section_reflects_as_computed_elsewhere(impedance, length, megahertz, printed, vswr):
    """A UHF section of the estimated impedance and length has the return loss and VSWR of scikit-rf."""
    angle = electrical_angle(megahertz * 1e6, length * INCH)

    reflection = section_reflection(impedance, 50.0, angle)

    assert return_loss(reflection) == pytest.approx(printed, abs=0.05)
    assert vswr_of_reflection(reflection) == pytest.approx(vswr, abs=0.001)  # printed from unrounded lengths


@pytest.mark.parametrize(("megahertz", "printed"), TWO_UHF_PAIRS)
def test_two_uhf_pairs_lose_by_reflection_what_an_analyser_showed(megahertz, printed):
    """Two sections of 36.2 Ω that touch, estimates from dimensions, give the measured loss without any heat."""
    section = catalogue().interfaces["uhf"].section
    angle = electrical_angle(megahertz * 1e6, 2 * section.electrical_length_m.high.value)
    reflection = section_reflection(section.impedance_ohm.high.value, 50.0, angle)

    assert mismatch_loss(reflection) == pytest.approx(printed, abs=0.04), ANALYSER_1992  # dB; read to about 0.01


@pytest.mark.parametrize(("frequency_hz", "printed"), [(144e6, 24.2), (432e6, 15.1)])
def test_uhf_return_loss_in_the_matrix_is_the_sections(frequency_hz, printed):
    """The matrix gives UHF the section's return loss."""
    request = MatrixRequest(families=["uhf"], bands=[], frequencies_hz=[frequency_hz], powers_w=[1])

    conservative, _ = matrix(request).return_loss_db[0][0]

    assert conservative == pytest.approx(printed, abs=0.06)


def test_a_chain_of_adapters_lies_between_expected_and_cautious():
    """Six adapters at 28 MHz, N to BNC to four UHF pairs and back: measured in January 2012, posted on a mailing list.

    Load alone 49.916 - j0.28 Ω; through all of them 49.394 - j3.808 Ω, VSWR 1.081.
    """
    elements = [{"kind": "joint", "family": family} for family in ("n", "bnc", "uhf", "uhf", "uhf", "uhf", "n")]
    load = {"kind": "impedance", "resistance_ohm": 49.916, "reactance_ohm": -0.28}

    answer = json.loads(call("line", json.dumps({"elements": elements, "load": load, "frequency_hz": 28e6}).encode()))

    expected, cautious = answer["input"], answer["input_cautious"]
    assert expected["vswr"] < 1.081 < cautious["vswr"]
    assert expected["reactance_ohm"] > -3.808 > cautious["reactance_ohm"]
    assert expected["resistance_ohm"] > 49.394 - 0.1
    assert cautious["resistance_ohm"] < 49.394


def test_fourteen_decibels_asked_is_a_vswr_of_one_and_a_half():
    """The default of 14 dB return loss is VSWR 1.5 (2.5/0.5: reflection 0.2, 13.98 dB)."""
    assert return_loss(reflection_of_vswr(1.5)) == pytest.approx(MatrixRequest().return_loss_asked_db, abs=0.05)


@pytest.mark.parametrize("vswr", [1.1, 1.5, 2.0, 3.0, 10.0])
@pytest.mark.parametrize("allowed", [allowed_by_voltage, allowed_by_heat])
def test_net_power_derates_by_the_inverse_of_vswr(allowed, vswr):
    """At fixed net power V²max = P Z S (line theory), so power falls by 1/S and never by 1/S²."""
    derating = allowed(vswr, "net") / allowed(1.0, "net")

    assert derating == pytest.approx(1 / vswr, rel=1e-12)
    assert derating > 1 / vswr**2


@pytest.mark.parametrize("vswr", [1.1, 1.5, 2.0, 3.0, 10.0])
@pytest.mark.parametrize("allowed", [allowed_by_voltage, allowed_by_heat])
def test_forward_power_derates_by_the_square_of_one_plus_reflection(allowed, vswr):
    """At fixed forward power Vmax = V(1 + Γ) (line theory), so power falls by ((S+1)/2S)², never 1/S²."""
    derating = allowed(vswr, "forward") / allowed(1.0, "forward")

    assert derating == pytest.approx(((vswr + 1) / (2 * vswr)) ** 2, rel=1e-12)
    assert derating > 1 / vswr**2


@pytest.mark.parametrize(("vswr", "net", "forward"), [(2.0, 0.500, 0.5625), (3.0, 0.333, 0.444)])
def test_derating_at_two_and_three_to_one(vswr, net, forward):
    """The factors at 2:1 and 3:1 are those of line theory, and lie under the bound of spread heat."""
    spread = 2 * vswr / (vswr**2 + 1)  # heat evened out over a half wave: 0.800 and 0.600

    assert 1 / hot_spot_net(vswr) == pytest.approx(net, abs=0.0005)
    assert 1 / hot_spot_forward(reflection_of_vswr(vswr)) == pytest.approx(forward, abs=0.0005)
    assert net < spread


def test_an_open_line_quadruples_the_power_at_a_point():
    """A line in open or short circuit sees four times the power at a point (maker's guide, read)."""
    assert hot_spot_forward(1.0) == 4
    assert hot_spot_forward(reflection_of_vswr(1e9)) == pytest.approx(4, rel=1e-6)


def test_voltage_on_the_line_is_worst_at_the_factor():
    """The standing wave summed along a half wave peaks at the factor that derates it."""
    reflection = reflection_of_vswr(3.0)
    along = np.linspace(0, np.pi, 10_001)

    power = np.abs(1 + reflection * np.exp(-2j * along)) ** 2

    assert power.max() == pytest.approx(hot_spot_forward(reflection), rel=1e-12)
