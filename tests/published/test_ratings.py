"""The heat limit against published average powers and a published calorimetry of the UHF type."""

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.matrix.matrix import matrix
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.physics.limits import dissipation
from jointwise.calc.physics.ratings import family_ratings

N_ARTICLE = "encyclopedia article on N, typical makers' curves, as quoted"
SMA_NOTE = "antenna maker's note, November 2024"
SMA_ARTICLE = "machine-written article quoting makers (weak)"
DIN_TALK = "maker's figures quoted in a broadcast engineer's article, October 2024"

CALORIMETRY = [  # MHz, heat W at 1000 W: published student measurement notes of 1977
    (1, 1.2),
    (10, 1.3),
    (20, 1.5),
    (30, 1.8),
    (50, 2.2),
    (100, 2.6),
    (200, 3.5),
    (300, 5.0),
    (400, 7.0),
    (500, 10.0),
]
QUIET_RISE = [row for row in CALORIMETRY if row[0] <= 50]
SKIN_AND_DIELECTRIC = [row for row in CALORIMETRY if row[0] >= 100]

TRANSMITTING = [name for name, family in catalogue().interfaces.items() if not family.receive_only]


def rated_power(family, frequency_hz, ambient_c=40.0):
    """Carrier allowed by heat on a matched line with PTFE cable, conservative and optimistic, in W."""
    request = MatrixRequest(
        families=[family],
        bands=[],
        frequencies_hz=[frequency_hz],
        powers_w=[1.0],
        mode="carrier",
        vswr=1.0,
        ambient_temperature_c=ambient_c,
        cable_dielectric="ptfe",
    )
    return matrix(request).heat_allowed_w[0][0]


@pytest.mark.parametrize(
    ("megahertz", "printed", "tolerance"),
    [
        (2000, 500, 0.01),
        (20, 5000, 0.1),
    ],  # the anchor, and two decades away by dissipation, not by a root law
)
def test_n_follows_the_published_curve(megahertz, printed, tolerance):
    """N's generous rating goes from 500 W at 2 GHz to about 5000 W at 20 MHz, as the article says."""
    _, generous = rated_power("n", megahertz * 1e6)

    assert generous == pytest.approx(printed, rel=tolerance), N_ARTICLE


@pytest.mark.parametrize(
    ("family", "gigahertz", "ambient", "printed", "source"),
    [
        ("n", 2.0, 40, 500, N_ARTICLE),
        ("n", 0.9, 40, 745, N_ARTICLE),  # its 1/sqrt(f) line
        ("n", 1.0, 40, 707, N_ARTICLE),
        ("sma", 2.0, 40, 500, SMA_NOTE),
        ("sma", 10.0, 40, 75, SMA_ARTICLE),
        ("7_16", 1.0, 25, 3000, DIN_TALK),
    ],
)
def test_published_rating_lies_in_the_computed_range(family, gigahertz, ambient, printed, source):
    """A published average power lies between the computed conservative and optimistic figure."""
    conservative, optimistic = rated_power(family, gigahertz * 1e9, ambient)

    assert conservative * 0.99 <= printed <= optimistic * 1.01, source


@pytest.mark.parametrize("family", [name for name in TRANSMITTING if name != "uhf"])
@pytest.mark.parametrize("end", [0, 1])
def test_rating_comes_back_at_its_own_conditions(family, end):
    """On a matched line at the rating's own frequency and air temperature the core allows the rated power."""
    ratings = catalogue().interfaces[family].average_power
    rating = (ratings.low, ratings.high)[end]

    allowed = rated_power(family, rating.frequency_hz, rating.ambient_temperature_c)[end]

    assert allowed == pytest.approx(rating.power_w, rel=1e-12)


@pytest.mark.parametrize(("end", "printed"), [(0, 1500), (1, 3000)])
def test_uhf_rating_comes_back_with_the_cable_it_assumes(end, printed):
    """UHF is rated with polyethylene cable at 85 °C, and with that cable the rating comes back."""
    request = MatrixRequest(families=["uhf"], bands=[], frequencies_hz=[30e6], powers_w=[1.0], mode="carrier", vswr=1.0)

    assert matrix(request).heat_allowed_w[0][0][end] == pytest.approx(printed, rel=1e-12)


def test_sma_at_18_ghz_is_below_100_w_by_the_cautious_rating_only():
    """The note that gives SMA 500 W at 2 GHz says below 100 W at 18 GHz; the core does not reach that far down.

    Scaled by its dissipation the generous rating comes to 122 W, steeper than the root law's 167 W yet 22 % over
    the note; the cautious rating, which decides the margin, gives 16 W.
    """
    conservative, optimistic = rated_power("sma", 18e9)

    assert conservative < 100, SMA_NOTE
    assert 100 < optimistic < 500 / (18 / 2) ** 0.5


@pytest.mark.parametrize(("megahertz", "watts"), QUIET_RISE)
@pytest.mark.parametrize("end", ["low", "high"])
def test_uhf_heat_at_hf_stays_under_the_measured_bound(end, megahertz, watts):
    """At HF the measured heat of a UHF pair is an upper bound, cable and instrument included."""
    heat = 1000 * dissipation(family_ratings("uhf", end), megahertz * 1e6, 0.0, 50.0).total

    assert heat < watts


@pytest.mark.parametrize(("megahertz", "watts"), SKIN_AND_DIELECTRIC)
@pytest.mark.parametrize("end", ["low", "high"])
def test_uhf_heat_at_vhf_is_within_a_factor_of_two(end, megahertz, watts):
    """From 100 to 500 MHz the computed heat of a UHF pair is within a factor of two of the measured."""
    heat = 1000 * dissipation(family_ratings("uhf", end), megahertz * 1e6, 0.0, 50.0).total

    assert watts / 2 < heat < watts * 2
