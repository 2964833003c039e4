"""Duty factors of modes against the exposure bulletin, and what they do to the heat limit."""

import numpy as np
import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.heat import average_power, cycle_share
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest

BULLETIN = "OET Bulletin 65 Supplement B (97-01), Table 2, as quoted"

DUTY_FACTORS = [  # mode, printed per cent
    ("ssb", 20, BULLETIN),
    ("ssb_processed", 50, BULLETIN),
    ("fm", 100, BULLETIN),
    ("rtty", 100, BULLETIN),
    ("cw", 40, BULLETIN),
    ("carrier", 100, BULLETIN),
]

FULL_DUTY = ["ft8", "wspr", "rtty", "sstv", "fm"]


def heat_allowed(mode):
    """Power allowed by heat, family x band x end, in W; NaN where refused."""
    return np.array(matrix(MatrixRequest(mode=mode)).heat_allowed_w, dtype=float)


@pytest.mark.parametrize(("mode", "percent", "source"), DUTY_FACTORS)
def test_duty_factor_is_the_bulletins(mode, percent, source):
    """A mode's duty factor is the one that the bulletin prints."""
    assert catalogue().modes[mode].duty_factor.value == pytest.approx(percent / 100, abs=0.0005), source


def test_average_power_of_the_bulletins_example():
    """500 W of conversational CW, sending an eighth of the time, averages 25 W (bulletin's example)."""
    assert average_power(500, 0.4, 0.125) == pytest.approx(25, abs=1e-9)


def test_the_bulletins_example_through_the_matrix():
    """CW a tenth of the time allows ten times the power of CW all the time: PEP x duty x share."""
    always, tenth = (
        matrix(MatrixRequest(families=["n"], bands=["20m"], mode="cw", transmit_share=share)).heat_allowed_w
        for share in (1.0, 0.1)
    )

    assert np.array(tenth) / np.array(always) == pytest.approx(10, rel=1e-12)


@pytest.mark.parametrize(("mode", "percent", "source"), DUTY_FACTORS)
def test_heat_limit_goes_with_the_inverse_of_the_duty_factor(mode, percent, source):
    """The power allowed by heat is a carrier's over the mode's duty factor, at every band and family."""
    ratio = heat_allowed(mode) / heat_allowed("carrier")

    assert ratio[np.isfinite(ratio)] == pytest.approx(100 / percent, rel=1e-12), source


@pytest.mark.parametrize("mode", FULL_DUTY)
def test_full_duty_modes_need_derating_against_ssb(mode):
    """Digital modes and FM stand less power by heat than SSB everywhere (common practice, no source)."""
    ratio = heat_allowed(mode) / heat_allowed("ssb")

    assert (ratio[np.isfinite(ratio)] < 1).all()


def test_the_hottest_moment_of_ft8_lies_between_its_mean_and_a_carrier():
    """FT8's heating share lies above its mean of 42 % on air (12.64 s of 30 s) and below a carrier's 1."""
    shares = cycle_share(12.64, 17.36, np.array([5.0, 20.0, 60.0, 300.0, 1e5]))

    assert ((shares > 12.64 / 30) & (shares < 1)).all()
    assert shares[-1] == pytest.approx(12.64 / 30, abs=0.0005)
    assert (np.diff(shares) < 0).all()


def test_heating_share_agrees_with_a_simulated_contact():
    """The closed form is the peak of a first-order contact stepped through many overs."""
    rise = 0.0
    for _ in range(40):
        rise = 1 - (1 - rise) * np.exp(-12.64 / 20.0)
        peak = rise
        rise *= np.exp(-17.36 / 20.0)

    assert cycle_share(12.64, 17.36, 20.0) == pytest.approx(peak, rel=1e-12)
