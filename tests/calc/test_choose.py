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
        "installation": st.sampled_from(["fixed", "portable", "vehicle", "mast", "handheld", "mast_taped"]),
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
    ({"bands": ["70cm"]}, "uhf", "Usual frequency", ["440 MHz", "300 MHz"]),
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
        "Match uncertain",
        ["return loss ", "It has ", "asked: 18 dB"],
    ),
    ({"exposure": "immersed"}, "n", "Immersion", ["under water", "IP"]),
    ({"exposure": "exposed"}, "bnc", "Weather", ["safe from damp", "in the weather"]),
    ({"vibration": "severe"}, "bnc", "Vibration", ["severe", "vehicle"]),
    ({"matings_per_year": 60}, "n", "Wear", ["600", "500"]),
    ({"cable": "rg_213"}, "sma", "Cable fit", ["10.3 mm", "6.2 mm"]),
    ({"dc_current_a": 50, "bands": ["2m"]}, "bnc", "Direct current", ["50 A", "allows "]),
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
def test_in_receive_there_is_no_margin_and_none_is_short_of_it(station):
    """Without power no family has a margin or a limit that binds, and every one that passes has what is asked for."""
    choices = choose(**station, use="receive", margin_asked_db=20)["choices"]

    assert all(choice["margin_db"] is choice["margin_high_db"] is choice["binding"] is None for choice in choices)
    assert all(choice["binding_column"] is None and not choice["undecided"] for choice in choices)
    assert all(choice["has_margin_asked"] == choice["passes"] for choice in choices)


def passing(answer):
    """The families that pass, by rank."""
    return [choice for choice in answer["choices"] if choice["passes"]]


@examples(30)
@given(STATIONS, st.floats(0, 20), st.sampled_from([None, "uhf", "n", "sma"]))
def test_the_order_is_total_and_what_has_the_margin_asked_for_comes_first(station, asked_db, port):
    """Ranks rise by one a family but for ties, none without the margin stands before one with it, each says why."""
    found = passing(choose(**station, margin_asked_db=asked_db, port=port))
    ranks = [choice["rank"] for choice in found]

    assert ranks == [1 + sum(other < rank for other in ranks) for rank in ranks]
    assert [choice["has_margin_asked"] for choice in found] == sorted(
        (choice["has_margin_asked"] for choice in found), reverse=True
    )
    for choice in found:
        # the tenth that is shown counts
        assert choice["has_margin_asked"] == (round(choice["margin_db"], 1) >= round(asked_db, 1))
        assert any("dB asked for" in words for words in choice["reasons"]) == (not choice["has_margin_asked"])
        assert choice["reasons"] or len(found) == 1


@examples(30)
@given(STATIONS, st.floats(0, 10), st.floats(0, 10))
def test_more_margin_asked_never_brings_up_a_family_that_has_less(station, asked_db, more_db):
    """Of two families, the one before that has as much margin stays before when more is asked for."""
    before = passing(choose(**station, margin_asked_db=asked_db))
    after = {
        choice["family"]: at for at, choice in enumerate(passing(choose(**station, margin_asked_db=asked_db + more_db)))
    }

    for at, first in enumerate(before):
        for second in before[at + 1 :]:
            if first["rank"] < second["rank"] and first["margin_db"] >= second["margin_db"]:
                assert after[first["family"]] < after[second["family"]]


@examples(20)
@given(STATIONS, st.sampled_from(["uhf", "n", "bnc", "sma"]))
def test_what_fits_the_port_as_it_is_comes_first(station, port):
    """With no margin asked for, the port's own family, where it passes, stands before all that need an adapter."""
    found = passing(choose(**station, margin_asked_db=0, port=port))

    if port in {choice["family"] for choice in found}:
        assert found[0]["family"] == port
        assert any("socket as it is" in words for words in found[0]["reasons"])
    assert all(any("adapter" in words for words in choice["reasons"]) for choice in found if choice["needs_adapter"])


@examples(20)
@given(STATIONS)
def test_the_verdict_names_the_first_and_the_second(station):
    """One sentence: what to fit, and what of the next speaks for it."""
    answer = choose(**station)
    found = passing(answer)

    assert answer["verdict"].endswith(".")
    assert ". " not in answer["verdict"]
    for choice in found[:2]:
        assert choice["name"] in answer["verdict"]
    assert answer["verdict"].startswith("Fit " if found else "No connector ")


VERDICTS = [  # what is asked, what is said
    (
        {"port": "uhf", "cable": "rg_58"},
        "Fit UHF (PL-259 / SO-239): it fits the UHF socket as it is, N needs an adapter.",
    ),
    ({"bands": ["23cm"], "cable": "foam_10_mm", "power_w": 10}, "it is made for this cable, TNC is seldom put on it."),
    ({"bands": ["2m"], "cable": "rg_316", "power_w": 5, "mode": "fm"}, "Fit SMA: BNC would do as well but is larger."),
    ({"power_w": 1500, "bands": ["10m"], "margin_asked_db": 9, "cable": "rg_213"}, "dB of the 9 dB asked for"),
    (
        {"power_w": 1500, "bands": ["10m"], "port": "uhf", "cable": "rg_213"},
        "Fit UHF (PL-259 / SO-239), though it is at the limit",
    ),
    ({"use": "receive", "bands": ["2m"], "system_impedance_ohm": 75}, "Fit F: "),
    ({"largest_diameter_m": 0.0036, "power_w": 10}, "Fit MMCX: nothing else meets every demand at 10 W PEP."),
]


@pytest.mark.parametrize(("asked", "words"), VERDICTS, ids=[words for _, words in VERDICTS])
def test_the_verdict_says_why(asked, words):
    """The criterion that decides between the first and the second is said."""
    assert words in choose(**asked)["verdict"]


@pytest.mark.parametrize("place", sorted(catalogue().installations))
def test_a_place_sets_weather_shaking_and_sealing(place):
    """Where the joint sits answers as its three fields would, and says what it set."""
    entry = catalogue().installations[place]
    single = {
        "exposure": entry.least_exposure.value,
        "vibration": entry.least_vibration.value,
        "added_sealing": entry.taped,
    }

    at_once, by_field = choose(bands=["2m"], installation=place), choose(bands=["2m"], **single)

    assert at_once["choices"] == by_field["choices"]
    assert at_once["place"] == by_field["place"]
    assert at_once["place"].endswith(", sealed with tape or a boot." if entry.taped else ", not sealed.")


def test_what_is_no_better_behind_an_adapter_is_not_held_against_the_port():
    """On 70 cm a UHF socket is doubted, yet its own plug comes before an adapter with the same joint in front of it."""
    answer = choose(bands=["70cm"], power_w=25, mode="fm", port="uhf", cable="rg_58")

    assert answer["port_doubts"] == ["Usually used up to 300 MHz. Asked: up to 440 MHz."]
    assert answer["passing"][0] == "uhf"


def test_an_adapter_keeps_no_water_from_the_port():
    """In the rain nothing passes behind a socket that must not stand there, until it is taped."""
    asked = {"bands": ["40m"], "port": "uhf", "exposure": "exposed"}

    assert choose(**asked)["passing"] == []
    assert choose(**asked, added_sealing=True)["passing"][0] == "uhf"


CURRENTS = st.floats(0.01, 20)


@examples(25)
@given(STATIONS, CURRENTS, st.floats(0.01, 20), st.sampled_from(["transmit", "receive"]))
def test_more_direct_current_never_adds_a_family_nor_margin(station, current_a, more_a, use):
    """Direct current takes of the margin, and of the families."""
    less, more = (choose(**station, use=use, dc_current_a=amperes) for amperes in (current_a, current_a + more_a))

    assert set(more["passing"]) <= set(less["passing"])
    margins = {choice["family"]: choice["margin_db"] for choice in less["choices"]}
    for choice in passing(more):
        assert choice["dc_stands_a"] >= current_a + more_a
        assert choice["margin_db"] is None or choice["margin_db"] <= margins[choice["family"]]


def test_too_much_direct_current_is_said_with_the_current_allowed():
    """A preamplifier's half ampere is nothing to RG-174; ten amperes are refused, and what would pass is offered."""
    asked = {"use": "receive", "bands": ["2m"], "cable": "rg_174"}

    assert set(choose(**asked, dc_current_a=0.5)["passing"]) == set(choose(**asked)["passing"])
    answer = choose(**asked, dc_current_a=10)
    bnc = next(choice for choice in answer["choices"] if choice["family"] == "bnc")
    assert answer["passing"] == []
    assert [one["demand"] for one in bnc["rejections"]] == ["direct current"]
    eased = next(one for one in answer["relaxations"] if one["demand"] == "direct current")
    assert eased["field"] == "dc_current_a"
    assert 0 < eased["value"] < 10
    assert choose(**(asked | {"dc_current_a": eased["value"]}))["passing"]


def test_direct_current_brings_its_notes():
    """What may block it, how it is reckoned, and what the cable loses are said where there is a current."""
    assert choose(bands=["2m"])["notes"] == []
    lost, *others = choose(bands=["2m"], dc_current_a=2, cable="rg_58")["notes"]
    assert lost == "RG-58 drops 0.11 V a metre at 2 A, there and back."
    assert any("Arresters" in note for note in others)


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

    assert behind["port_doubts"] == ["Usually used up to 300 MHz. Asked: up to 440 MHz."]
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
    ({"margin_asked_db": -1}, "margin_asked_db"),
    ({"dc_current_a": 51}, "dc_current_a"),
    ({"dc_voltage_v": 230}, "dc_voltage_v"),
]


@pytest.mark.parametrize(("request_", "field"), BAD)
def test_bad_input_is_refused_by_field(request_, field):
    """A request that can't be answered is refused with the field named."""
    with pytest.raises(InputError, match="allowed: ") as refused:
        choose(**request_)
    assert refused.value.field == field
