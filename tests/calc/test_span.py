"""The span that is proposed for a line: what a sweep of it then shows, what it is limited by, and what is refused."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from lines import ask, touchstone
from scenarios import examples

from jointwise.calc.errors import InputError
from jointwise.calc.formulas.constants import C_0

LINE = [
    {"kind": "joint", "family": "n", "name": "Panel"},
    {"kind": "cable", "cable": "rg_213", "length_m": 17},
    {"kind": "joint", "family": "n", "name": "Foot"},
    {"kind": "cable", "cable": "rg_213", "length_m": 3},
    {"kind": "joint", "family": "n", "name": "Top"},
]
RG_213_AT_432_MHZ_DB = 0.1476
"""Loss of a metre, as `mailing_list_2010_rg213` of the catalogue's sources measured it: 4.5 dB in 100 ft."""


@examples(200)
@given(
    length_m=st.floats(1, 500),
    velocity_factor=st.floats(0.6, 0.95),
    lowest_hz=st.floats(1e5, 2e6),
    octaves=st.floats(4, 12),
    most_points=st.integers(16, 10_001),
)
def test_a_proposed_span_is_within_the_analyser_and_reaches_past_the_line(
    length_m, velocity_factor, lowest_hz, octaves, most_points
):
    """Edges and points are the analyser's; echoes fold back from beyond twice the line, or the span is an octave."""
    highest_hz = lowest_hz * 2**octaves
    span = ask(
        "span",
        length_m=length_m,
        velocity_factor=velocity_factor,
        lowest_hz=lowest_hz,
        highest_hz=highest_hz,
        most_points=most_points,
    )

    assert lowest_hz <= span["low_hz"] < span["high_hz"] <= highest_hz
    assert 16 <= span["points"] <= most_points
    step_hz = (span["high_hz"] - span["low_hz"]) / (span["points"] - 1)
    assert span["range_m"] == pytest.approx(C_0 * velocity_factor / (2 * step_hz), rel=1e-9)
    assert span["range_m"] >= 2 * length_m * (1 - 1e-9) or span["high_hz"] <= 2.2 * lowest_hz


@pytest.mark.parametrize("analyser", [{}, {"most_points": 101}, {"highest_hz": 5.5e7}, {"lowest_hz": 5e7}])
def test_a_sweep_as_proposed_shows_what_was_promised(analyser):
    """A file with the proposed edges and points has the range, the resolution and the transform that were told."""
    span = ask("span", elements=LINE, **analyser)
    frequencies = np.linspace(span["low_hz"], span["high_hz"], span["points"])
    text = touchstone(frequencies, np.full((span["points"], 1, 1), 0.1 + 0j))

    check = ask("sweep", elements=LINE, load={"kind": "end", "what": "short"}, touchstone=text)["line"]

    assert check["transform"] == span["transform"]
    assert check["range_m"] == pytest.approx(span["range_m"], rel=1e-3)
    assert check["resolution_m"] == pytest.approx(span["resolution_m"], rel=1e-3)


@pytest.mark.parametrize(
    ("analyser", "limited_by", "words"),
    [
        ({"most_points": 51}, "points", "fold back"),
        ({"highest_hz": 3e7}, "analyser", "your analyser ends there"),
        ({"highest_hz": 1e10, "most_points": 10_001}, "loss", "there and back"),
    ],
)
def test_what_limits_a_span_is_told(analyser, limited_by, words):
    """Few points, a low analyser or a lossy line: the sentence on the upper edge says which."""
    span = ask("span", elements=LINE, **analyser)

    assert span["limited_by"] == limited_by
    assert words in span["reasons"][1]


def test_a_long_line_is_not_swept_so_high_that_nothing_returns():
    """At the upper edge the line takes at most 20 dB there and back, at 432 MHz what was measured on such a cable."""
    elements = [{"kind": "cable", "cable": "rg_213", "length_m": 40}]

    span = ask("span", elements=elements, highest_hz=1e10, most_points=10_001, ambient_temperature_c=20.0)
    lower = ask("span", elements=elements, highest_hz=4.32e8, most_points=10_001, ambient_temperature_c=20.0)

    assert 15 < span["loss_db"] <= 20
    assert lower["high_hz"] == 4.3e8
    assert lower["loss_db"] == pytest.approx(2 * 40 * RG_213_AT_432_MHZ_DB, rel=0.1)


@pytest.mark.parametrize(("highest_hz", "told_apart"), [(2e7, False), (9e8, True)])
def test_the_closest_joints_are_said_to_show_as_one_or_as_two(highest_hz, told_apart):
    """The pair that lies closest is named with its distance, and whether the sweep tells it apart."""
    span = ask("span", elements=LINE, highest_hz=highest_hz)

    assert span["closest"] == {"names": ["Foot", "Top"], "apart_m": 3.0, "told_apart": told_apart}
    assert ("show as two" if told_apart else "show as one") in span["reasons"][2]


def test_a_line_of_joints_alone_is_as_long_as_is_said():
    """Without a cable in the description, the length and the velocity factor of the request count."""
    assert ask("span", elements=LINE[:1], length_m=12)["length_m"] == 12


def test_an_analyser_without_a_span_is_refused():
    """An analyser must reach at least an octave."""
    with pytest.raises(InputError, match=r"highest_hz is .*; allowed: at least 2 times where its range begins, 50 MHz"):
        ask("span", lowest_hz=5e7, highest_hz=9e7)
