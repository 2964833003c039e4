"""Random draws of a line: repeatable, converging on what is known exactly, bounded, and steady in memory."""

import json
import tracemalloc

import msgspec
import numpy as np
import pytest
import skrf
from hypothesis import given
from lines import LINES, ask
from scenarios import examples
from skrf.media import DefinedGammaZ0
from skrf.network import a2s

from jointwise.calc.catalogue import catalogue
from jointwise.calc.feedline.elements import CableRun, GivenVswr, Joint, Part
from jointwise.calc.feedline.feedline import feedline_of
from jointwise.calc.feedline.reflection import bounds
from jointwise.calc.feedline.solve import solve_both_ends
from jointwise.calc.formulas.constants import C_0
from jointwise.calc.formulas.match import vswr_of_reflection
from jointwise.calc.numeric.draws import Stream
from jointwise.calc.operations import call
from jointwise.calc.physics.family_ratings import family_ratings
from jointwise.calc.spread.random_line import RandomLine
from jointwise.calc.spread.requests import SpreadRequest
from jointwise.calc.spread.spread import spread
from jointwise.calc.waves.two_port import TwoPort

AGREE = 1e-9
QUANTITIES = ["vswr", "loss_db", "margin_db"]
ELEMENTS = [
    {"kind": "joint", "family": "n"},
    {"kind": "cable", "cable": "rg_213", "length_m": 20.0},
    {"kind": "joint", "family": "uhf"},
    {"kind": "part", "loss_db": 0.2, "vswr": 1.3, "power_limit_w": 500.0},
    {"kind": "cable", "cable": "rg_58", "length_m": 3.0},
]
STATION = {"elements": ELEMENTS, "load": {"kind": "vswr", "vswr": 1.6}, "band": "2m", "draws": 1000}
HZ = np.array([1.9e6, 14.1e6, 145e6, 433e6, 1.27e9])


def typed(**fields):
    """A request for draws as the core takes it."""
    return SpreadRequest(**{"load": GivenVswr(vswr=1.0), "band": "2m", "draws": 1000} | fields)


def random_line(request, frequency=HZ):
    """The line of a request made ready for draws."""
    return RandomLine(request, feedline_of(request), frequency)


def reflections(request, draws, seed=1):
    """Magnitudes of the reflection at the transmitter, draws x frequency."""
    vswr = random_line(request).block(Stream(seed), draws).vswr
    return (vswr - 1) / (vswr + 1)


def test_the_same_seed_gives_the_same_bytes():
    """Asked twice the answer is the same to the byte."""
    body = json.dumps(STATION).encode()

    assert call("spread", body) == call("spread", body)


def test_another_seed_gives_other_draws():
    """Another seed moves every band a little, and none by more than the draws' own scatter."""
    one, two = (ask("spread", **STATION | {"seed": seed})["bands"] for seed in (1, 2))

    for band, other in zip(one, two, strict=True):
        assert band["vswr"] != other["vswr"]
        assert band["vswr"][2] == pytest.approx(other["vswr"][2], rel=0.1)


def test_more_draws_keep_the_first():
    """A block of draws does not depend on how many follow."""
    few = random_line(typed(elements=[CableRun(cable="rg_213", length_m=20.0)], load=GivenVswr(vswr=2.0)))

    one, two = (few.block(Stream(7, 3), 500) for _ in range(2))

    assert np.array_equal(one.loss_db, two.loss_db)


@examples(15)
@given(request=LINES)
def test_percentiles_rise_and_are_possible(request):
    """Percentiles never fall, no VSWR is below 1, no loss below 0, and the question comes back with the answer."""
    answer = ask("spread", **request | {"draws": 200, "seed": 3})

    assert (answer["draws"], answer["seed"]) == (200, 3)
    for band in answer["bands"]:
        for quantity in QUANTITIES:
            known = [value for value in band[quantity] if value is not None]
            assert known == sorted(known)
        assert all(value is None or value >= 1 - 1e-3 for value in band["vswr"])
        assert all(value is None or value >= -1e-3 for value in band["loss_db"])


def test_the_band_asked_for_comes_first_and_the_others_follow():
    """The first answer is that of the band looked at, and every band of the Region is there once."""
    ids = [band["column"]["id"] for band in ask("spread", **STATION)["bands"]]

    assert ids[0] == "2m"
    assert len(ids) == len(set(ids)) > 10


STRAIN_DB = 0.6
"""Draws take a run's greatest voltage and its greatest current for one place: its heat comes out that much too high."""


def test_what_is_known_exactly_does_not_spread():
    """Without joints and parts, with exact lengths and a known antenna, the draws are the line's own answer."""
    fields = {
        "elements": [ELEMENTS[1], ELEMENTS[4]],
        "load": {"kind": "impedance", "resistance_ohm": 30.0, "reactance_ohm": 12.0},
        "power_is": "net",
    }
    answer = ask("spread", **STATION | fields, length_tolerance=0)["bands"][0]
    exact = ask("line", **fields, band="2m")

    for percentile in range(5):
        assert answer["vswr"][percentile] == pytest.approx(exact["input"]["vswr"], abs=1e-6)
        assert answer["loss_db"][percentile] == pytest.approx(exact["loss_db"], abs=1e-6)
        assert exact["margin_db"] - STRAIN_DB <= answer["margin_db"][percentile] <= exact["margin_db"] + 1e-6


def test_draws_lie_between_the_typical_and_the_worst_joint():
    """With nothing but joints of a known side the median loss lies between those of the two ends of the ratings."""
    fields = {"elements": [ELEMENTS[2], ELEMENTS[2]], "load": {"kind": "impedance", "resistance_ohm": 50.0}}
    answer, exact = ask("spread", **STATION | fields)["bands"][0], ask("line", **fields, band="2m")

    assert exact["loss_db"] <= answer["loss_db"][2] <= exact["loss_high_db"]


SIDES = [(one, other) for one in (1, -1) for other in (1, -1)]


def pair_between(sides):
    """Reflection, by scikit-rf, of a UHF pair between two N pairs at their VSWR limit, each above 50 Ω (1) or below."""
    n, uhf = catalogue().interfaces["n"], catalogue().interfaces["uhf"].section
    band = skrf.Frequency.from_f(HZ, unit="Hz")
    ratio = np.sqrt(n.vswr_limit.at_dc.value + n.vswr_limit.slope_per_hz.value * HZ)
    bead = catalogue().materials[n.bead_material.value]
    long_n = n.section_length_m.value * np.sqrt(bead.relative_permittivity.value)

    def section(impedance, length_m):
        gamma = 2j * np.pi * HZ / C_0
        return DefinedGammaZ0(band, gamma=gamma, z0=impedance, z0_port=50.0).line(length_m, "m")

    before, after = (section(50.0 * ratio**side, long_n) for side in sides)
    middle = section(uhf.impedance_ohm.low.value, uhf.electrical_length_m.low.value)
    return np.abs((before**middle**after).s[:, 0, 0])


def test_joints_are_drawn_on_either_side_of_their_impedance():
    """The largest reflection drawn of N, UHF and N is the worst of all sides, not that with both N above 50 Ω."""
    elements = [Joint(family="n"), Joint(family="uhf"), Joint(family="n")]
    request = typed(elements=elements, load=GivenVswr(vswr=1.0))

    largest = reflections(request, 20_000).max(axis=0)

    by_sides = {sides: pair_between(sides) for sides in SIDES}
    contacts_ohm = sum(family_ratings(family, "low").centre_contact_resistance_ohm for family in ("n", "uhf", "n"))
    expected = np.max(list(by_sides.values()), axis=0)
    assert largest == pytest.approx(expected, rel=0.03, abs=contacts_ohm / 50)  # scikit-rf's have no resistance
    assert (largest > 1.5 * by_sides[1, 1])[HZ < 1e9].all()


def test_the_cautious_end_of_a_line_counts_joints_on_both_sides():
    """A line of N, UHF and N reflects at its cautious end as the worse of both N above 50 Ω and both below."""
    elements = [Joint(family="n"), Joint(family="uhf"), Joint(family="n")]
    request = typed(elements=elements, load=GivenVswr(vswr=1.0))

    cautious = solve_both_ends(feedline_of(request), HZ).cautious.waves.reflection(50.0)[0]

    expected = np.maximum(pair_between((1, 1)), pair_between((-1, -1)))
    assert np.abs(cautious) == pytest.approx(expected, rel=0.03, abs=1.5e-3)
    assert (np.abs(cautious) > 1.2 * pair_between((1, 1)))[HZ < 1e9].any()


TWO_PARTS = [Part(loss_db=0.0, vswr=1.02), Part(loss_db=0.0, vswr=1.03)]


def root_sum_square(elements, load_vswr):
    """Root of the mean square reflection of small steps of unrelated phases."""
    ratios = [element.vswr for element in elements] + [load_vswr]
    return np.sqrt(sum(((ratio - 1) / (ratio + 1)) ** 2 for ratio in ratios))


def test_small_reflections_add_up_in_squares():
    """The mean square reflection of small steps is the sum of their squares, within four standard errors."""
    request = typed(elements=TWO_PARTS, load=GivenVswr(vswr=1.04))
    squared = reflections(request, 20_000) ** 2
    error = squared.std(axis=0) / np.sqrt(len(squared))

    expected = root_sum_square(TWO_PARTS, 1.04) ** 2

    assert (np.abs(squared.mean(axis=0) - expected) < 4 * error).all()
    assert bounds(feedline_of(request), HZ)[1] ** 2 == pytest.approx(expected, rel=1e-3)  # fourth powers are left out


@pytest.mark.parametrize("draws", [100, 1000, 10_000])
def test_more_draws_come_nearer(draws):
    """Over sixteen seeds the mean square misses the sum of squares by about the standard error of the draws."""
    request = typed(elements=TWO_PARTS, load=GivenVswr(vswr=1.04))
    squares = [reflections(request, draws, seed)[:, 0] ** 2 for seed in range(16)]
    misses = np.array([one.mean() for one in squares]) - root_sum_square(TWO_PARTS, 1.04) ** 2

    standard_error = squares[0].std() / np.sqrt(draws)

    assert 0.5 * standard_error < np.sqrt(np.mean(misses**2)) < 2 * standard_error


@examples(30)
@given(request=LINES)
def test_no_draw_is_worse_than_the_worst(request):
    """No draw of joints, cables and parts reflects more than the bound of all its steps in phase."""
    elements = [one for one in request["elements"] if one["kind"] not in ("measured", "tuner")] or ELEMENTS
    request = request | {"elements": elements, "load": {"kind": "vswr", "vswr": 2.0}, "length_tolerance": 0.5}
    made = random_line(msgspec.json.decode(json.dumps(request).encode(), type=SpreadRequest))
    drawn = made.block(Stream(6), 500)

    worst, _ = bounds(made.feedline, made.frequency)

    assert ((drawn.vswr - 1) / (drawn.vswr + 1) <= worst + AGREE).all()


@examples(20)
@given(request=LINES)
def test_no_draw_delivers_more_than_is_sent(request):
    """No draw has a VSWR below 1, nor a loss below 0: a longer run is as passive as the line described."""
    typed_request = msgspec.json.decode(json.dumps(request).encode(), type=SpreadRequest)

    drawn = random_line(typed_request, np.array([request["frequency_hz"]])).block(Stream(5), 200)

    assert (drawn.loss_db >= -AGREE).all()
    assert (drawn.vswr >= 1).all()


@pytest.mark.parametrize("power_is", ["forward", "net"])
def test_a_draw_is_the_chain_that_scikit_rf_makes_of_it(power_is):
    """The very two-ports of one draw, cascaded by scikit-rf, have the reflection and the loss of that draw."""
    request = typed(
        elements=[Joint(family="n"), CableRun(cable="rg_213", length_m=20.0), Part(loss_db=0.2, vswr=1.3)],
        load=GivenVswr(vswr=1.6),
        power_is=power_is,
    )
    made, ports = random_line(request), []
    turn = np.exp(2j * np.pi * Stream(4).uniform(3)[:, None])
    for link in made.links:
        link.draw = recorded(link.draw, ports)
    drawn = made.block(Stream(4), 3)
    band = skrf.Frequency.from_f(HZ, unit="Hz")
    media = DefinedGammaZ0(band, gamma=1j * HZ, z0=50)
    whole = media.thru()
    for port in reversed(ports):
        whole = whole ** skrf.Network(frequency=band, s=a2s(at_draw(port, 1)), z0=50)
    load = np.full(HZ.size, 0.6 / 2.6) * turn[1]

    seen = whole.s[:, 0, 0] + whole.s[:, 0, 1] * whole.s[:, 1, 0] * load / (1 - whole.s[:, 1, 1] * load)
    gain = np.abs(whole.s[:, 1, 0] / (1 - whole.s[:, 1, 1] * load)) ** 2 * (1 - np.abs(load) ** 2)
    gain = gain / (1 - np.abs(seen) ** 2) if power_is == "net" else gain

    assert drawn.vswr[1] == pytest.approx(vswr_of_reflection(np.abs(seen)), rel=AGREE)
    assert drawn.loss_db[1] == pytest.approx(-10 * np.log10(gain), abs=AGREE)


def recorded(draw, ports):
    """A link's draw that keeps what it drew, the amplitude of a cable put back."""

    def drawing(random, draws, after):
        port = draw(random, draws, after)
        ports.append((port, getattr(draw.__self__, "scale", 1.0)))
        return port

    return drawing


def at_draw(drawn, row):
    """The chain matrices of one draw by frequency, as scikit-rf takes them."""
    port, scale = drawn
    entries = [np.broadcast_to(one, (3, HZ.size))[row] for one in TwoPort(*port)[:4]]
    # a cable's matrix is kept as that of its far end's amplitude: the rest of the loss comes back in
    amplitude = np.sqrt(np.broadcast_to(scale, HZ.shape))[:, None, None]
    return np.moveaxis(np.array(entries), 0, -1).reshape(-1, 2, 2) / amplitude


def peak_bytes(draws):
    """Most memory that a request's draws hold at once."""
    request = typed(
        elements=[Joint(family="n"), CableRun(cable="rg_213", length_m=20.0)], load=GivenVswr(vswr=2.0), draws=draws
    )
    spread(typed(elements=request.elements))  # the catalogue and caches once, before counting
    tracemalloc.start()
    try:
        spread(request)
        return tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()


def test_memory_does_not_grow_with_the_draws():
    """A hundred thousand draws hold hardly more memory than two thousand."""
    assert peak_bytes(100_000) < 1.2 * peak_bytes(2000)
