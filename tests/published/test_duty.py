"""Duty factors of modes against the exposure bulletin, and what they do to the heat limit."""

import numpy as np
import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.heat import cycle_share, heat_allowed_power
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest

BULLETIN = "OET Bulletin 65 Supplement B (97-01), Table 2, as quoted"
AM = "article on AM and PEP, 4 July 2002: 375 W of carrier, 562.5 W mean, 1500 W PEP at full modulation by a sine"
COMPARISON = "national league's journal, comparison of modes, text as corrected on 11 August 2014, p. 1"
DMR = "ETSI TS 102 361-1, two slots of 30 ms, as quoted"
GUIDE = "user guide of the suite of weak-signal modes, chapter Protocols, Table 7; sequences: chapter Modes"
SYMBOLS = "the same guide, chapter Protocols: 79 symbols at 6.25 baud; sequences: chapter Modes"
FAST = "the same guide, chapters Protocols and VHF features: without gaps, 15 s or 30 s by local custom"
EME = "national league's handbook, 1988, EME operating techniques, as quoted: twelve periods to the half hour"

DUTY_FACTORS = [  # mode, printed per cent
    ("ssb", 20, BULLETIN),
    ("ssb_processed", 50, BULLETIN),
    ("fm", 100, BULLETIN),
    ("rtty", 100, BULLETIN),
    ("cw", 40, BULLETIN),
    ("carrier", 100, BULLETIN),
    ("am", 100 * 562.5 / 1500, AM),
    ("psk31", 75, COMPARISON),
    ("dmr", 50, DMR),
    ("sstv", 100, "book on slow-scan television, 2012, chapter 4: one tone at a time"),
]

TIMED = [  # mode, published time on air in s, published sequence in s
    ("ft8", 79 / 6.25, 15, SYMBOLS),
    ("ft4", 5.04, 7.5, GUIDE),
    ("jt65", 46.8, 60, GUIDE),
    ("q65_60", 51.0, 60, GUIDE),
    ("q65_300", 293.8, 300, GUIDE),
    ("wspr", 110.6, 120, GUIDE),
    ("msk144", 30, 30, FAST),
    ("cw_eme", 1800 / 12, 1800 / 12, EME),
]

CONSTANT_ENVELOPE = [mode for mode, *_ in TIMED if mode != "cw_eme"]
FULL_DUTY = [*CONSTANT_ENVELOPE, "rtty", "sstv", "fm"]


def heat_allowed(mode):
    """Power allowed by heat of contact and of cable, limit x family x band x end, in W; NaN where refused."""
    result = matrix(MatrixRequest(mode=mode))
    return np.array([result.contact_allowed_w, result.cable_allowed_w], dtype=float)


@pytest.mark.parametrize(("mode", "percent", "source"), DUTY_FACTORS)
def test_duty_factor_is_the_published_one(mode, percent, source):
    """A mode's duty factor is the one that its source prints."""
    assert catalogue().modes[mode].duty_factor.value == pytest.approx(percent / 100, abs=0.0005), source


@pytest.mark.parametrize("mode", CONSTANT_ENVELOPE)
def test_weak_signal_modes_have_a_constant_envelope(mode):
    """The guide: "continuous phase and constant envelope" for all of its modes (chapter Protocols, overview)."""
    assert catalogue().modes[mode].duty_factor.value == 1


@pytest.mark.parametrize(("mode", "on_s", "sequence_s", "source"), TIMED)
def test_timed_modes_send_in_every_other_sequence(mode, on_s, sequence_s, source):
    """One transmission as published, then silence to the end of the other station's sequence."""
    entry = catalogue().modes[mode]

    assert entry.on_time_s.value == pytest.approx(on_s, abs=1e-9), source
    assert entry.on_time_s.value + entry.off_time_s.value == pytest.approx(2 * sequence_s, abs=1e-9), source


def test_am_is_the_mean_of_a_full_envelope_over_its_peak():
    """A carrier modulated fully by a sine: the mean of ((1 + cos p)/2)² over a cycle is 3/8."""
    envelope = (1 + np.cos(np.linspace(0, 2 * np.pi, 1000, endpoint=False))) / 2

    assert catalogue().modes["am"].duty_factor.value == pytest.approx(np.mean(envelope**2), abs=1e-12)


def test_psk31_is_the_mean_of_its_ones_and_zeros():
    """A one leaves the envelope at its peak, a zero turns the phase through a half cosine: 1 and 1/2, as often."""
    turning = np.cos(np.linspace(0, np.pi, 1000, endpoint=False))

    assert catalogue().modes["psk31"].duty_factor.value == pytest.approx((1 + np.mean(turning**2)) / 2, abs=1e-12)


def test_cw_by_eme_is_the_word_paris_over_and_over():
    """The comparison prints 0.44 for PARIS: dots of key down in its 50, with the gaps after letters and word."""
    letters = [".--.", ".-", ".-.", "..", "..."]
    down = sum({".": 1, "-": 3}[sign] for letter in letters for sign in letter)
    gaps = sum(len(letter) - 1 for letter in letters) + 3 * (len(letters) - 1) + 7

    assert down + gaps == 50
    assert catalogue().modes["cw_eme"].duty_factor.value == pytest.approx(down / 50, abs=1e-12), COMPARISON


def test_average_power_of_the_bulletins_example():
    """500 W of conversational CW, sending an eighth of the time, averages 25 W (bulletin's example)."""
    rise_by_a_watt = 40.0 / 25  # what reaches its limit, 40 K above the air, at 25 W on average

    assert heat_allowed_power(80.0, 40.0, 0.0, rise_by_a_watt * 0.125, 0.4) == pytest.approx(500, rel=1e-12)


def test_the_bulletins_example_through_the_matrix():
    """CW a tenth of the time allows ten times the power of CW all the time: PEP x duty x share."""
    always, tenth = (
        matrix(MatrixRequest(families=["n"], bands=["20m"], mode="cw", transmit_share=share)).contact_allowed_w
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
