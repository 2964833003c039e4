"""The trade's rules of thumb: common practice, no source. The core should not contradict them."""

import numpy as np
import pytest

from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.physics.gates import GATES

CUSTOMARY = [("uhf", 300e6), ("bnc", 4e9), ("n", 11e9), ("sma", 18e9), ("mcx", 6e9)]
SMALL = ["sma", "rp_sma", "smb", "mcx", "mmcx"]
LARGE = ["n", "7_16", "c", "hn"]
CUSTOMARY_BIT = 1 << [gate.id for gate in GATES].index("customary_frequency")


def customary_marks(family, frequencies_hz):
    """Whether the customary-frequency mark stands, by frequency."""
    request = MatrixRequest(families=[family], bands=[], frequencies_hz=frequencies_hz, powers_w=[1.0])
    return [bool(column[0] & CUSTOMARY_BIT) for column in matrix(request).marks[0]]


def largest(mode="ssb", cable=None):
    """Largest power by family, NaN where a band is refused: family name to an array over the bands."""
    result = matrix(MatrixRequest(mode=mode, cable=cable))
    rows = np.array(result.largest_power_w, dtype=float)
    return {family.id: row for family, row in zip(result.families, rows, strict=True)}


@pytest.mark.parametrize(("family", "highest_hz"), CUSTOMARY)
def test_customary_frequency_is_the_trades(family, highest_hz):
    """A family is marked just above the frequency that the trade uses it to, and not at it."""
    assert customary_marks(family, [highest_hz, highest_hz * 1.001]) == [False, True]


@pytest.mark.parametrize("small", SMALL)
@pytest.mark.parametrize("large", LARGE)
def test_subminiature_families_are_for_small_powers(small, large):
    """SMA and smaller stand less than N and larger at every band where both have a figure."""
    powers = largest()
    both = np.isfinite(powers[small]) & np.isfinite(powers[large])

    assert both.any()
    assert (powers[small][both] < powers[large][both]).all()


@pytest.mark.parametrize(
    ("smaller", "larger", "cable"),
    [("mmcx", "mcx", "rg_316"), ("mcx", "smb", "rg_316"), ("smb", "sma", "rg_316"), ("bnc", "n", "rg_58")],
)
def test_on_one_cable_a_smaller_family_stands_no_more(smaller, larger, cable):
    """On one cable a smaller interface stands no more power than the next larger one at every band."""
    powers = largest(cable=cable)
    both = np.isfinite(powers[smaller]) & np.isfinite(powers[larger])

    assert both.any()
    assert (powers[smaller][both] <= powers[larger][both]).all()


@pytest.mark.parametrize(("smaller", "larger"), [("mmcx", "mcx"), ("smb", "sma"), ("bnc", "n")])
def test_a_smaller_family_on_its_own_cable_stands_less(smaller, larger):
    """Each on its customary cable, a smaller interface stands no more power at any band, and less at some."""
    powers = largest()
    both = np.isfinite(powers[smaller]) & np.isfinite(powers[larger])

    assert (powers[smaller][both] <= powers[larger][both]).all()
    assert powers[smaller][both].sum() < powers[larger][both].sum()


def test_bnc_stands_less_than_n_at_every_band():
    """BNC on RG-58 stands less power than N on RG-213."""
    powers = largest()
    both = np.isfinite(powers["bnc"]) & np.isfinite(powers["n"])

    assert both.any()
    assert (powers["bnc"][both] < powers["n"][both]).all()


def test_nobody_rates_bnc_above_uhf_on_short_wave():
    """Each on its customary cable, BNC stands no more power than the UHF type on any band below 30 MHz."""
    result = matrix(MatrixRequest(families=["bnc", "uhf"]))
    short_wave = [column.high_hz < 30e6 for column in result.columns]
    bnc, uhf = np.array(result.largest_power_w, dtype=float)[:, short_wave]

    assert bnc.size > 5
    assert (bnc <= uhf).all()


def test_mcx_and_smb_are_level_on_the_cable_of_both():
    """The trade calls MCX the smaller one; the core lets both carry what RG-316 and the same working voltage do."""
    powers = largest()
    both = np.isfinite(powers["mcx"]) & np.isfinite(powers["smb"])

    assert powers["mcx"][both] == pytest.approx(powers["smb"][both], rel=1e-6)


@pytest.mark.parametrize("mode", ["ft8", "ft4", "jt65", "q65_300", "msk144", "rtty", "fm", "sstv", "wspr"])
def test_full_duty_modes_never_stand_more_than_ssb(mode):
    """The largest power of a full-duty mode is at most that of SSB at every band and family."""
    full, speech = largest(mode), largest("ssb")

    for family in speech:
        both = np.isfinite(full[family]) & np.isfinite(speech[family])
        assert (full[family][both] <= speech[family][both]).all(), family


def test_f_is_for_receiving():
    """F, a 75 Ω receive part, is refused at any transmit power and computed in receive."""
    request = MatrixRequest(families=["f"], bands=["2m"], powers_w=[0.0, 0.1, 100.0])

    names = [GATES[index].id if index >= 0 else None for index in matrix(request).refused_by[0][0]]

    assert names == [None, "receive_only", "receive_only"]


def test_uhf_is_poor_at_uhf():
    """The UHF type reflects far more than N at 70 cm and next to nothing at HF."""
    result = matrix(MatrixRequest(families=["uhf", "n"], bands=["40m", "70cm"], powers_w=[1.0]))
    (uhf_40m, uhf_70cm), (_, n_70cm) = ([band[0] for band in row] for row in result.return_loss_db)

    assert uhf_70cm < 17 < n_70cm
    assert uhf_40m > 34
