"""A harder demand never raises a margin or what a limit allows, at either end, and never lifts a refusal."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scenarios import LIMIT_FIELDS, STATIONS, examples, numbers, refused, table, worst

from jointwise.calc.physics.gates import GATES

ROUNDING_DB = 1e-9
ROUNDING = 1e-10

THIN_AIR_M = 15_000.0
"""Above any station. Draws from 20 km on found up to 0.4 % more allowed in hotter or thinner air."""

HARDER = [  # field, easiest, hardest
    ("altitude_m", 0.0, THIN_AIR_M),
    ("ambient_temperature_c", -60.0, 80.0),
    ("vswr", 1.0, 20.0),
    ("solar_irradiance_w_per_m2", 0.0, 1400.0),
    ("added_resistance_ohm", 0.0, 5.0),
    ("return_loss_asked_db", 6.0, 40.0),
]

HARDER_WORDS = [  # field, from the easiest to the hardest
    ("condition", ["new", "worn", "corroded"]),
    ("exposure", ["indoor", "sheltered", "exposed", "immersed"]),
    ("vibration", ["none", "vehicle", "severe"]),
    ("matings_per_year", [0.0, 5.0, 50.0, 10_000.0]),
    ("service_life_years", [0.1, 10.0, 100.0]),
]

SOLID_PE = ["rg_213", "rg_58", "rg_174"]
"""From the thickest to the thinnest; copper braid over solid polyethylene."""


def assert_not_easier(easy, hard):
    """Assert that the harder of two matrices allows no more at either end and has every refusal of the easier."""
    for field in ("margin_db", "margin_high_db", "return_loss_db"):
        easy_db, hard_db = numbers(getattr(easy, field)), numbers(getattr(hard, field))
        both = np.isfinite(easy_db) & np.isfinite(hard_db)  # holes have a test of their own in test_answers
        assert worst(hard_db - easy_db, both) <= ROUNDING_DB, field
    for field in (*LIMIT_FIELDS, "largest_power_w"):
        easy_w, hard_w = numbers(getattr(easy, field)), numbers(getattr(hard, field))
        both = np.isfinite(easy_w) & np.isfinite(hard_w)
        assert worst(hard_w - easy_w * (1 + ROUNDING), both) <= 0, field
    assert not (refused(easy) & ~refused(hard)).any()


@pytest.mark.parametrize(("field", "easiest", "hardest"), HARDER)
@examples(40)
@given(station=STATIONS, data=st.data())
def test_a_harder_number_never_helps(field, easiest, hardest, station, data):
    """More altitude, heat, VSWR, sun, added resistance or match asked never raises a margin."""
    easy, hard = sorted(data.draw(st.tuples(*[st.floats(easiest, hardest)] * 2)))
    station = station | {"altitude_m": min(station.get("altitude_m", 0.0), THIN_AIR_M)}

    assert_not_easier(table(**station | {field: easy}), table(**station | {field: hard}))


@pytest.mark.parametrize(("field", "steps"), HARDER_WORDS)
@examples(20)
@given(station=STATIONS)
def test_a_harder_condition_never_helps(field, steps, station):
    """A worse contact, weather, vibration or wear never raises a margin."""
    tables = [table(**station | {field: step}) for step in steps]

    for easy, hard in pairwise(tables):
        assert_not_easier(easy, hard)


@pytest.mark.parametrize(("field", "steps"), HARDER_WORDS)
@examples(20)
@given(station=STATIONS)
def test_a_harder_condition_never_takes_a_mark_away(field, steps, station):
    """A worse site keeps every mark of the easier one."""
    marks = [np.array(table(**station | {field: step}).marks) for step in steps]

    for easy, hard in pairwise(marks):
        assert (easy & ~hard == 0).all()


@examples(20)
@given(station=STATIONS)
def test_a_thinner_cable_never_helps_in_the_shade(station):
    """A thinner cable of the same make allows no more; in the sun it may, as a thick one gets hotter there."""
    shaded = station | {"solar_irradiance_w_per_m2": 0.0}
    tables = [table(**shaded | {"cable": cable}) for cable in SOLID_PE]

    for thick, thin in pairwise(tables):
        assert_not_easier(thick, thin)


@examples(40)
@given(station=STATIONS, shares=st.tuples(st.floats(0.001, 1), st.floats(0.001, 1)))
def test_more_time_on_the_air_never_helps(station, shares):
    """A larger transmit share never raises a margin."""
    overs = {"on_time_s", "off_time_s"}
    still = {field: value for field, value in station.items() if field not in overs}

    less, more = (table(**still | {"transmit_share": share}) for share in sorted(shares))

    assert_not_easier(less, more)


OVERS = st.tuples(st.floats(0.01, 3600), st.floats(0.01, 3600))


@pytest.mark.parametrize(("field", "still"), [("on_time_s", "off_time_s"), ("off_time_s", "on_time_s")])
@examples(40)
@given(station=STATIONS, times=OVERS, other=st.floats(0.01, 3600))
def test_longer_overs_and_shorter_pauses_never_help(field, still, station, times, other):
    """Whatever the time constants of contact, body and cable, more of each cycle on the air never raises a margin."""
    station = {name: value for name, value in station.items() if name != "transmit_share"} | {still: other}
    short, long = (table(**station | {field: time}) for time in sorted(times))
    easy, hard = (short, long) if field == "on_time_s" else (long, short)

    assert_not_easier(easy, hard)


@examples(40)
@given(station=STATIONS)
def test_more_power_never_helps(station):
    """A larger power never raises a margin, at either end, and never lifts a refusal."""
    result = table(**station)
    refusals = refused(result)

    for margins in (numbers(result.margin_db), numbers(result.margin_high_db)):
        rises = np.diff(margins, axis=-1)
        assert worst(rises, np.isfinite(rises)) <= ROUNDING_DB
    assert (refusals[..., 1:] >= refusals[..., :-1]).all()


@examples(40)
@given(station=STATIONS)
def test_a_higher_frequency_never_helps(station):
    """No limit allows more at a higher frequency, so that a band is decided at its upper edge."""
    spots = np.geomspace(1e5, 5e10, 60).tolist()
    result = table(**station | {"bands": [], "frequencies_hz": spots})

    for field in (*LIMIT_FIELDS, "return_loss_db"):
        values = numbers(getattr(result, field))
        rises = np.diff(values, axis=1) - ROUNDING_DB * np.abs(values[:, 1:])
        assert worst(rises, np.isfinite(rises)) <= 0, field


@examples(40)
@given(station=STATIONS)
def test_added_sealing_only_helps_against_the_weather(station):
    """Tape and butyl change no margin, and no mark but that of the weather."""
    bare, sealed = (table(**station | {"added_sealing": sealed}) for sealed in (False, True))
    weather = 1 << [gate.id for gate in GATES].index("weather")

    assert numbers(bare.margin_db) == pytest.approx(numbers(sealed.margin_db), nan_ok=True, abs=0)
    assert (np.array(sealed.marks) | weather == np.array(bare.marks) | weather).all()


@examples(40)
@given(station=STATIONS)
def test_net_power_is_at_least_as_hard_as_forward_power(station):
    """At the same number of watts net power is at least as hard: a mismatched load needs more forward power."""
    forward, net = (table(**station | {"power_is": meaning}) for meaning in ("forward", "net"))

    assert_not_easier(forward, net)
