"""Choosing a family: what passes, how it is ranked, why the others do not."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scenarios import FAMILIES, examples

from jointwise.calc.catalogue import catalogue
from jointwise.calc.errors import InputError
from jointwise.calc.operations import call

BANDS = ["160m", "20m", "6m", "2m", "70cm", "23cm", "3cm"]
EXPOSURES = ["indoor", "sheltered", "exposed", "immersed"]
VIBRATIONS = ["none", "vehicle", "severe"]


def choose(**fields):
    """The answer as plain data."""
    return json.loads(call("choose", json.dumps(fields).encode()))


HARDER = [  # field, an easier and a harder value
    ("power_w", st.floats(0.001, 1e4), lambda drawn, by: min(drawn * (1 + by), 1e5)),
    ("vswr", st.floats(1, 10), lambda drawn, by: min(drawn + by, 20)),
    ("ambient_temperature_c", st.floats(-20, 60), lambda drawn, by: min(drawn + by, 80)),
    ("altitude_m", st.floats(0, 9000), lambda drawn, by: drawn + 1000 * by),
    ("return_loss_asked_db", st.floats(6, 25), lambda drawn, by: drawn + by),
    ("matings_per_year", st.floats(0, 500), lambda drawn, by: drawn + 10 * by),
    ("service_life_years", st.floats(0.1, 50), lambda drawn, by: drawn + by),
    ("exposure", st.sampled_from(EXPOSURES), lambda drawn, by: EXPOSURES[min(EXPOSURES.index(drawn) + 1, 3)]),
    ("vibration", st.sampled_from(VIBRATIONS), lambda drawn, by: VIBRATIONS[min(VIBRATIONS.index(drawn) + 1, 2)]),
]

STATIONS = st.fixed_dictionaries(
    {
        "bands": st.lists(st.sampled_from(BANDS), min_size=1, max_size=3, unique=True),
        "power_w": st.sampled_from([1.0, 10.0, 100.0, 1000.0]),
        "mode": st.sampled_from(["ssb", "fm", "ft8"]),
        "installation": st.sampled_from(["fixed", "portable", "vehicle", "mast"]),
        "cable": st.sampled_from([None, "rg_58", "rg_213", "rg_316", "foam_10_mm"]),
        "added_sealing": st.booleans(),
    }
)


@pytest.mark.parametrize(("field", "easy", "harder"), HARDER, ids=[field for field, _, _ in HARDER])
def test_a_harder_demand_never_adds_a_family(field, easy, harder):
    """What passes under a harder demand passed under the easier one."""

    @examples(15)
    @given(STATIONS, easy, st.floats(0.1, 10))
    def check(station, value, by):
        before = choose(**(station | {field: value}))["passing"]
        after = choose(**(station | {field: harder(value, by)}))["passing"]
        assert set(after) <= set(before)

    check()


@examples(25)
@given(STATIONS, st.sampled_from(BANDS))
def test_one_more_band_never_adds_a_family(station, band):
    """A joint that must carry one more band has no more families to choose from."""
    fewer = choose(**station)["passing"]

    assert set(choose(**(station | {"bands": [*station["bands"], band]}))["passing"]) <= set(fewer)


@examples(30)
@given(STATIONS)
def test_every_family_either_passes_or_says_why(station):
    """Each family is in the table once, with a rank or with the demands it misses."""
    answer = choose(**station)

    assert sorted(choice["family"] for choice in answer["choices"]) == sorted(FAMILIES)
    for choice in answer["choices"]:
        assert choice["passes"] == (choice["rank"] is not None) == (choice["rejections"] == [])
        assert all(rejection["sentence"] for rejection in choice["rejections"])


SCORCHING = {"ambient_temperature_c": 80, "solar_irradiance_w_per_m2": 1400}
NAMED = [  # demands, family, name of what it misses, value asked and limit as its sentence has them
    ({"bands": ["70cm"]}, "uhf", "Customary frequency", ["440 MHz", "300 MHz"]),
    ({"bands": ["3cm"]}, "uhf", "TE11 cutoff", ["10.5 GHz", "6.341 GHz"]),
    ({"bands": ["3cm"]}, "bnc", "Published figures", ["10.5 GHz", "4 GHz"]),
    ({}, "f", "Receive only", ["100 W", "no standard"]),
    (
        {"power_w": 1500, "mode": "fm"},
        "bnc",
        "Heat of the cable",
        ["asked 1.5 kW", "allowed ", "by the heat of the cable"],
    ),
    (
        {"power_w": 1500, "vswr": 5},
        "mmcx",
        "Heat of the contact",
        ["asked 1.5 kW", "allowed ", "by the heat of the contact"],
    ),
    ({"power_w": 1500, "vswr": 5}, "mmcx", "Voltage", ["asked 1.5 kW", "allowed "]),
    ({"bands": ["23cm"]}, "uhf", "Match", ["return loss ", "It has ", "asked: 14 dB"]),
    (
        {"bands": ["70cm"], "return_loss_asked_db": 18},
        "uhf",
        "Match in doubt",
        ["return loss ", "It has ", "asked: 18 dB"],
    ),
    ({"exposure": "immersed"}, "n", "Immersion", ["immersed", "IP"]),
    ({"exposure": "exposed"}, "bnc", "Weather", ["exposed", "sheltered"]),
    ({"vibration": "severe"}, "bnc", "Vibration", ["severe", "vehicle"]),
    ({"matings_per_year": 60}, "n", "Wear", ["600", "500"]),
    ({"cable": "rg_213"}, "sma", "Cable fit", ["10.3 mm", "6.2 mm"]),
    ({"largest_diameter_m": 0.012}, "n", "Room", ["12 mm", "20.3 mm"]),
    (SCORCHING, "7_16", "Air temperature", ["°C with the sun", "allowed: 100 °C"]),  # that of its customary cable
    (SCORCHING | {"cable": "rg_213"}, "7_16", "Air temperature", ["°C with the sun", "allowed: 85 °C"]),
]


@pytest.mark.parametrize(("demands", "family", "name", "words"), NAMED, ids=[row[2] for row in NAMED])
def test_a_rejection_names_gate_value_and_limit(demands, family, name, words):
    """What a family misses is named, with the value asked for and the limit."""
    choice = next(choice for choice in choose(**demands)["choices"] if choice["family"] == family)
    sentences = {rejection["name"]: rejection["sentence"] for rejection in choice["rejections"]}

    assert name in sentences
    assert all(word in sentences[name] for word in words)


@examples(30)
@given(STATIONS, st.floats(6, 40))
def test_a_match_is_missed_or_in_doubt_by_its_return_loss(station, asked_db):
    """A family is rejected for its match just where a return loss, the cautious or even the generous, is too small."""
    for choice in choose(**station, return_loss_asked_db=asked_db)["choices"]:
        names = {rejection["name"] for rejection in choice["rejections"] if rejection["demand"] == "match"}
        low, high = choice["return_loss_db"], choice["return_loss_high_db"]

        assert low <= high
        # of several bands one may miss it and another be in doubt
        assert ("Match" in names) == (high < asked_db)
        assert bool(names) == (low < asked_db)


@examples(20)
@given(STATIONS)
def test_in_receive_there_is_no_margin_and_the_match_ranks(station):
    """Without power no family has a margin or a limit that binds, and ranks follow the return loss."""
    choices = choose(**station, use="receive")["choices"]
    passing = [choice for choice in choices if choice["passes"]]
    shown = [(choice["rank"], -round(choice["return_loss_db"], 1)) for choice in passing]

    assert all(choice["margin_db"] is choice["margin_high_db"] is choice["binding"] is None for choice in choices)
    assert all(choice["binding_column"] is None and not choice["undecided"] for choice in choices)
    assert shown == sorted(shown)


@examples(30)
@given(STATIONS)
def test_ranks_follow_the_margin_that_is_shown(station):
    """A larger margin ranks before a smaller one, and equal tenths of a decibel are ties."""
    passing = [choice for choice in choose(**station)["choices"] if choice["passes"]]
    shown = [(choice["rank"], -round(choice["margin_db"], 1)) for choice in passing]

    assert shown == sorted(shown)
    assert len({rank for rank, _ in shown}) == len({tenth for _, tenth in shown})


@examples(30)
@given(STATIONS)
def test_what_is_best_in_something_is_beaten_by_none(station):
    """The marked families are those no other passing family beats in margin, loss, size and torque."""
    passing = [choice for choice in choose(**station)["choices"] if choice["passes"]]
    merits = {
        choice["family"]: (choice["margin_db"], -choice["loss_db"], -choice["diameter_m"], -choice["torque_nm"])
        for choice in passing
    }

    for choice in passing:
        own = merits[choice["family"]]
        rivals = [other for other in merits.values() if other != own]
        beaten = any(all(b >= a for a, b in zip(own, other, strict=True)) for other in rivals)
        assert choice["best_in_something"] == (not beaten)


@examples(40)
@given(STATIONS)
def test_a_receive_only_family_is_never_offered_for_transmitting(station):
    """No part made to receive passes where power goes through it."""
    receive_only = {family for family, interface in catalogue().interfaces.items() if interface.receive_only}

    assert not receive_only & set(choose(**station)["passing"])


RELAXED = [  # situation in which nothing passes, the demand named, the field that gives way and what it may be set to
    ({"bands": ["3cm"], "power_w": 1500, "installation": "mast"}, "power", "power_w", lambda watts: 0 < watts < 1500),
    ({"matings_per_year": 365, "cable": "rg_58"}, "wear", "matings_per_year", lambda number: number == 50),
    ({"exposure": "immersed"}, "weather", "exposure", lambda weather: weather == "exposed"),
    ({"exposure": "exposed", "largest_diameter_m": 0.012}, "weather", "added_sealing", lambda taped: taped is True),
    ({"largest_diameter_m": 0.001, "cable": "rg_213"}, "room", "largest_diameter_m", lambda size: 0.01 < size < 0.03),
    ({"return_loss_asked_db": 40, "bands": ["3cm"]}, "match", "return_loss_asked_db", lambda loss: 14 < loss < 40),
    (
        {"bands": ["20m", "3cm"], "cable": "foam_15_mm", "return_loss_asked_db": 20},
        "frequency",
        "bands",
        lambda bands: bands == ["20m"],
    ),
    (
        {**SCORCHING, "cable": "rg_213", "power_w": 1},
        "air temperature",
        "solar_irradiance_w_per_m2",
        lambda sun: sun == 0,
    ),
    (
        {"cable": "corrugated_7_8", "largest_diameter_m": 0.012},
        "cable",
        "cable",
        lambda cable: cable in catalogue().cables,
    ),
    ({"port": "uhf", "bands": ["3cm"]}, "port", "port", lambda port: port in FAMILIES and port != "uhf"),
]


@pytest.mark.parametrize(("demands", "named", "field", "fits"), RELAXED, ids=[f"{row[1]} {row[2]}" for row in RELAXED])
def test_the_demand_to_relax_lets_a_family_pass(demands, named, field, fits):
    """Where nothing passes, the field and value given with a demand let a family named with it pass."""
    answer = choose(**demands)
    relaxation = next(entry for entry in answer["relaxations"] if entry["demand"] == named)

    assert answer["passing"] == []
    assert relaxation["field"] == field
    assert fits(relaxation["value"])
    assert set(relaxation["families"]) & set(choose(**(demands | {field: relaxation["value"]}))["passing"])


@examples(25)
@given(STATIONS, st.sampled_from(["uhf", "bnc", "mmcx"]), st.sampled_from(EXPOSURES), st.floats(100, 5000))
def test_every_concession_holds(station, port, exposure, watts):
    """Each field and value offered where nothing passes makes a family named with it pass, and changes one field."""
    demands = station | {"port": port, "exposure": exposure, "power_w": watts}

    for relaxation in choose(**demands)["relaxations"]:
        if field := relaxation["field"]:
            eased = choose(**(demands | {field: relaxation["value"]}))
            assert set(relaxation["families"]) & set(eased["passing"])


def test_the_plan_comes_first_whether_it_passes_or_not():
    """A family one has in mind is the first row, with its own reasons."""
    assert choose(plan="f")["choices"][0]["rejections"][0]["demand"] == "use"
    assert choose(plan="bnc")["choices"][0]["family"] == "bnc"


def test_a_port_that_stays_counts_for_every_other_family():
    """Behind a fixed UHF port no family has more margin or less loss than the port's own joint, which is on a panel."""
    asked = {"bands": ["70cm"], "power_w": 25}
    alone = {choice["family"]: choice for choice in choose(**asked)["choices"]}
    behind = choose(**asked, port="uhf")
    port = next(choice for choice in behind["choices"] if choice["family"] == "uhf")

    assert behind["port_doubts"] == ["Customarily used up to 300 MHz. Asked: up to 440 MHz."]
    assert port["margin_db"] < alone["uhf"]["margin_db"]  # a panel carries no heat away
    for choice in behind["choices"]:
        family = choice["family"]
        if choice["margin_db"] is not None:
            on_a_panel = next(one for one in choose(**asked, port=family)["choices"] if one["family"] == family)
            assert choice["margin_db"] == pytest.approx(min(on_a_panel["margin_db"], port["margin_db"]))
        own_db = alone[family]["loss_db"]
        assert choice["loss_db"] == pytest.approx(own_db + (port["loss_db"] if family != "uhf" else 0))
        assert choice["return_loss_db"] == alone[family]["return_loss_db"]


def test_wear_says_when_it_runs_out():
    """Thirty matings a year use up the brass part's hundred in three years and four months."""
    sma = next(choice for choice in choose(matings_per_year=30)["choices"] if choice["family"] == "sma")

    assert sma["wear"]["runs_out_after_years"] == pytest.approx(sma["wear"]["good_for"] / 30)
    assert any(rejection["demand"] == "wear" for rejection in sma["rejections"])


@pytest.mark.parametrize(
    ("demands", "words"),
    [
        ({"port": "f"}, "is refused: Receive only"),
        ({"port": "uhf", "bands": ["23cm"]}, "is refused: Match"),
        ({"port": "mmcx", "power_w": 1500, "vswr": 5}, "dB over its limit"),
    ],
)
def test_behind_a_port_that_can_not_carry_it_nothing_passes(demands, words):
    """Where the port's own joint can't carry the power, every other family is refused for the port."""
    answer = choose(**demands)

    assert answer["passing"] == []
    for choice in answer["choices"]:
        rejections = [rejection for rejection in choice["rejections"] if rejection["demand"] == "port"]
        assert len(rejections) == (choice["family"] != demands["port"])
        assert all(words in rejection["sentence"] for rejection in rejections)


BAD = [
    ({"installation": "balloon"}, "installation"),
    ({"cable": "string"}, "cable"),
    ({"port": "hdmi"}, "port"),
    ({"plan": "x"}, "plan"),
    ({"bands": []}, "bands"),
    ({"use": "both"}, "use"),
    ({"largest_diameter_m": 9}, "largest_diameter_m"),
]


@pytest.mark.parametrize(("request_", "field"), BAD)
def test_bad_input_is_refused_by_field(request_, field):
    """A request that can't be answered is refused with the field named."""
    with pytest.raises(InputError, match="allowed: ") as refused:
        choose(**request_)
    assert refused.value.field == field
