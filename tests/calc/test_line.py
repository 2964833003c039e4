"""The whole line: power adds up, known lines have known answers, exchanges do what they say, bad lines are refused."""

import copy
import json
import math

import msgspec
import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from lines import CABLES, HOLDS, LINES, SEEDS, TRANSMITTING, ask, measured_text, passive, touchstone
from scenarios import examples

from jointwise.calc.catalogue import catalogue
from jointwise.calc.errors import InputError
from jointwise.calc.feedline.cable import cable_model
from jointwise.calc.feedline.elements import FeedlineRequest
from jointwise.calc.feedline.feedline import feedline_of
from jointwise.calc.formulas.line import power_ratio
from jointwise.calc.formulas.noise import lossy_noise_factor, system_noise_factor
from jointwise.calc.operations import call
from jointwise.calc.physics.cable_table import cable_ratings
from jointwise.calc.physics.customary import customary_cable
from jointwise.calc.physics.dissipation import dissipation
from jointwise.calc.physics.family_ratings import family_ratings
from jointwise.calc.physics.limits import worst_section
from jointwise.calc.physics.scenario import Scenario
from jointwise.calc.physics.station import station_of
from jointwise.calc.waves.two_port import drive, scattering

AGREE = 3e-9  # answers are rounded to a billionth of their unit
DOUBLE_DB = 10 * math.log10(2)

JOINT = {"kind": "joint", "family": "n"}
CABLE = {"kind": "cable", "cable": "rg_213", "length_m": 20.0}
PART = {"kind": "part", "loss_db": 0.3, "vswr": 1.2, "power_limit_w": 200.0, "voltage_limit_v": 500.0}
MATCHED = {"kind": "vswr", "vswr": 1.0}
ANTENNA = {"kind": "vswr", "vswr": 2.0, "angle_deg": 40.0}
STATION = {
    "elements": [
        JOINT,
        CABLE,
        {"kind": "joint", "family": "uhf"},
        {"kind": "cable", "cable": "rg_400", "length_m": 2.0},
        PART,
        {"kind": "joint", "family": "bnc", "adapter_to": "n"},
        {"kind": "cable", "cable": "rg_58", "length_m": 3.0},
    ],
    "load": ANTENNA,
    "band": "2m",
    "power_w": 400.0,
}


def line(**fields):
    """The answer for the station above, with other fields."""
    return ask("line", **STATION | fields)


def reflected_w(answer, request):
    """Power back out of the line's input [W]; of net power there is none."""
    if request["power_is"] == "net":
        return 0.0
    return answer["transmitter"]["forward_w"] * 10 ** (-answer["input"]["return_loss_db"] / 10)


@examples(25)
@given(request=LINES)
def test_every_watt_is_delivered_lost_or_reflected(request):
    """Delivered and reflected power and what every part turns into heat are the power sent."""
    answer = ask("line", **request)

    lost = [part["lost_w"] for part in answer["parts"]]

    assert min(lost) >= -AGREE * request["power_w"]
    assert answer["delivered_w"] + sum(lost) + reflected_w(answer, request) == pytest.approx(
        answer["transmitter"]["forward_w"], rel=AGREE, abs=0
    )


@examples(25)
@given(request=LINES)
def test_the_shares_of_the_loss_add_up(request):
    """The losses of all parts and the mismatch at the input are the loss of the line, and that of the powers."""
    answer = ask("line", **request)

    shares = [part["loss_db"] for part in answer["parts"]]

    assert sum(shares) + answer["mismatch_db"] == pytest.approx(answer["loss_db"], abs=len(shares) * AGREE)
    ratio = request["power_w"] / answer["delivered_w"]
    assert 10 * math.log10(ratio) == pytest.approx(answer["loss_db"], abs=AGREE)


def turned(element):
    """An element of a line seen from its other end."""
    if element["kind"] == "joint" and element.get("adapter_to"):
        return element | {"family": element["adapter_to"], "adapter_to": element["family"]}
    return element | {"ratio": 1 / element["ratio"]} if element["kind"] == "transformer" else element


def turns(element):
    """Whether an element can be described from its other end: no lossy transformer, measurement or tuner."""
    lossy = element["kind"] == "transformer" and element["loss_db"] > 0
    return not lossy and element["kind"] not in ("measured", "tuner")


@examples(20)
@given(request=LINES)
def test_a_line_passes_as_much_from_either_end(request):
    """Between matched ends a reciprocal line loses the same in both directions; a tuner is tuned for one of them."""
    elements = [one for one in request["elements"] if turns(one)] or [CABLE]
    between = request | {"load": MATCHED, "power_is": "forward", "transmitter": HOLDS}

    there = ask("line", **between | {"elements": elements})
    back = ask("line", **between | {"elements": [turned(one) for one in reversed(elements)]})

    assert back["loss_db"] == pytest.approx(there["loss_db"], abs=AGREE)


@examples(15)
@given(request=LINES)
def test_double_power_costs_three_decibels(request):
    """At double the power every margin is 3.01 dB lower, and the return loss of each part the same."""
    power = min(request["power_w"], 50_000.0)
    one, two = (ask("line", **request | {"power_w": times * power})["parts"] for times in (1, 2))

    for before, after in zip(one, two, strict=True):
        for limit, margin in before["margin_by_limit_db"].items():
            expected = None if margin is None else pytest.approx(margin - DOUBLE_DB, abs=AGREE)
            assert after["margin_by_limit_db"][limit] == expected
        assert after["return_loss_db"] == before["return_loss_db"]


@examples(20)
@given(request=LINES, data=st.data())
def test_the_largest_power_leaves_no_margin(request, data):
    """At its largest power a part allows no power left in heat or voltage, whichever is nearer."""
    parts = ask("line", **request)["parts"]
    within = [at for at, part in enumerate(parts) if part["largest_power_w"] and part["largest_power_w"] <= 1e5]
    if not within:
        return
    at = data.draw(st.sampled_from(within))
    again = ask("line", **request | {"power_w": parts[at]["largest_power_w"]})["parts"][at]

    margins = again["margin_by_limit_db"].values()

    assert min(margin for margin in margins if margin is not None) == pytest.approx(0, abs=AGREE)


@examples(15)
@given(request=LINES)
def test_the_line_is_as_strong_as_its_weakest_part(request):
    """The line's margin and largest power are the smallest of its parts, unless one of them is refused."""
    answer = ask("line", **request)
    parts = answer["parts"]

    if any(part["refused_by"] for part in parts):
        assert answer["margin_db"] is answer["largest_power_w"] is None
        assert parts[answer["weakest"]]["refused_by"]
    else:
        margins = [part["margin_db"] for part in parts if part["margin_db"] is not None]
        assert answer["margin_db"] == min(margins, default=None)
        assert not margins or answer["margin_db"] == parts[answer["weakest"]]["margin_db"]
        largest = [part["largest_power_w"] for part in parts if part["largest_power_w"] is not None]
        assert answer["largest_power_w"] == min(largest, default=None)


def test_the_line_in_the_sweep_is_the_line_at_that_frequency():
    """A point of the sweep, asked for as a spot frequency, has the loss, VSWR and margin of the sweep."""
    sweep = line()["sweep"]
    fields = {key: value for key, value in STATION.items() if key != "band"}

    for at in range(4, len(sweep["band"]), 27):
        spot = ask("line", **fields, frequency_hz=sweep["frequency_hz"][at])
        assert sweep["loss_db"][at] == pytest.approx(spot["loss_db"], abs=AGREE)
        assert sweep["vswr"][at] == pytest.approx(spot["input"]["vswr"], rel=AGREE)
        assert sweep["margin_db"][at] == pytest.approx(spot["margin_db"], abs=AGREE)


def test_a_band_shows_the_worst_of_its_points():
    """A band's loss, VSWR and margin are the worst among its points in the sweep."""
    answer = line()
    sweep, band = answer["sweep"], next(one for one in answer["bands"] if one["column"]["id"] == "70cm")
    at = [row for row, name in enumerate(sweep["band"]) if name == "70cm"]

    assert band["loss_db"] == max(sweep["loss_db"][row] for row in at)
    assert band["vswr"] == pytest.approx(max(sweep["vswr"][row] for row in at), rel=AGREE)
    assert band["margin_db"] == min(sweep["margin_db"][row] for row in at)


def test_more_vswr_never_helps_a_long_cable():
    """On a cable of the line's impedance, longer than a wave, more VSWR never raises heat or voltage margin."""
    margins = [
        line(elements=[CABLE], load={"kind": "vswr", "vswr": vswr}, transmitter=HOLDS)["parts"][0]["margin_by_limit_db"]
        for vswr in (1.0, 1.2, 2.0, 5.0, 20.0, 100.0)
    ]

    for limit in ("cable", "voltage"):
        assert (np.diff([one[limit] for one in margins]) < 0).all(), limit


SITES = [
    ("ambient_temperature_c", [-40, 0, 40, 70]),
    ("altitude_m", [0, 3e3]),
    ("solar_irradiance_w_per_m2", [0, 500, 1000]),
]


@pytest.mark.parametrize(("field", "values"), SITES)
def test_warmer_or_thinner_air_or_sun_never_helps(field, values):
    """Margins of joints, and of a matched cable, never rise with air temperature, altitude or sun."""
    rows = []
    for value in values:
        joints = line(elements=[JOINT, PART, {"kind": "joint", "family": "uhf"}], **{field: value})["parts"]
        cable = line(elements=[CABLE], load=MATCHED, **{field: value})["parts"][0]
        rows.append([one["margin_by_limit_db"][limit] for one in joints for limit in one["margin_by_limit_db"]])
        rows[-1].append(cable["margin_by_limit_db"]["cable"])

    assert (np.diff(rows, axis=0) <= AGREE).all()
    assert (np.diff(rows, axis=0) < 0).any()


def test_in_receive_no_power_limit_counts():
    """At 0 W there is no heat, no voltage and no margin; losses are those of the same line on the air."""
    quiet, loud = line(power_w=0), line()

    assert quiet["loss_db"] == loud["loss_db"]
    assert quiet["largest_power_w"] == loud["largest_power_w"]
    assert {part["binding"] for part in quiet["parts"]} == {None}
    assert quiet["delivered_w"] == max(part["lost_w"] for part in quiet["parts"]) == 0


def test_net_power_is_what_goes_in():
    """With net power the line's mismatch costs nothing, and forward power of the same net power gives the same."""
    net = line(power_is="net")

    forward = line(power_w=STATION["power_w"] * 10 ** (line()["mismatch_db"] / 10))

    assert net["mismatch_db"] == pytest.approx(0, abs=AGREE)
    assert net["delivered_w"] == pytest.approx(forward["delivered_w"], rel=AGREE)
    assert net["input"] == pytest.approx(forward["input"])


def run(cable, length, **ratings):
    """The cautious model of a cable in an ordinary station, with some of its ratings exchanged."""
    return cable_model(cable_ratings(cable, "low")._replace(**ratings), length, station_of(Scenario()))


def test_a_cable_without_loss_repeats_its_load_every_half_wave():
    """Without loss a cable of another impedance shows its load again after half a wave, and after a hundred."""
    frequency = np.array([1e8])
    half = np.pi / run("rg_59", 1.0, k_1=0.0, k_2=0.0, clad=(None,)).constants(frequency)[2][0]
    load = np.array([0.4 - 0.5j])

    for waves in (1, 100):
        port = run("rg_59", waves * half, k_1=0.0, k_2=0.0, clad=(None,)).two_port(frequency)
        assert drive([port], load, 50.0, net=False).reflection(50.0)[0] == pytest.approx(load, abs=AGREE)


def densest(model, waves, frequency):
    """Greatest voltage and current squared and heat of a metre, by 20,001 places along a cable."""
    v, i = model.along(waves, 0, frequency, np.linspace(0, model.length_m, 20_001))
    conductor, dielectric, _ = model.constants(frequency)
    own = model.ratings.impedance_ohm
    return (v**2).max(), (i**2).max(), (2 * (conductor * i**2 * own + dielectric * v**2 / own)).max()


@examples(120)
@given(
    cable=st.sampled_from(CABLES),
    hertz=st.floats(5, 10),
    length=st.floats(-2, 2.3),
    reflection=st.floats(0, 0.98),
    angle=st.floats(0, 2 * math.pi),
)
@example("rg_6", 5.196, 2.195, 0.689, 4.804)  # loss and phase of one size: maxima far from where waves are in phase
@example("rg_316", 5.542, 2.142, 0.06, 1.618)
def test_the_worst_place_of_a_cable_is_found(cable, hertz, length, reflection, angle):
    """A cable's stress is the greatest along it, also where loss shifts the maxima and where there is none inside."""
    frequency, model = np.array([10**hertz]), run(cable, 10**length)
    load = np.array([reflection * np.exp(1j * angle)])
    waves = drive([model.two_port(frequency)], load, 50.0, net=False)
    stress = model.stress(waves, 0, frequency)
    voltage, current, heat = densest(model, waves, frequency)
    between = (model.constants(frequency)[2][0] * model.length_m / 20_000) ** 2  # what lies between two places

    assert stress.voltage_factor[0] * 50 == pytest.approx(voltage, rel=2e-5 + between)
    assert stress.current_factor[0] / 50 == pytest.approx(current, rel=2e-5 + between)
    # where conductors and dielectric heat alike, voltage and current maxima share the heat: 0.001 dB
    assert stress.heat_share[0] == pytest.approx(heat, rel=3e-4 + between)


COMPARED = ["loss_db", "lost_w", "peak_voltage_v", "peak_current_a", "forward_w", "reflected_w", "vswr"]


def test_a_cable_measured_is_the_cable():
    """A cable's own scattering parameters as a measured part give the loss and input of the cable in its place."""
    fields = {key: value for key, value in STATION.items() if key != "band"} | {"frequency_hz": 1e8}
    frequencies = np.array([1e7, 1e8, 1e9])
    model = run("rg_213", 20.0)
    s = np.moveaxis(np.array(scattering(model.two_port(frequencies), 75.0)), 0, -1).reshape(-1, 2, 2)
    measured = {"kind": "measured", "touchstone": touchstone(frequencies, s, 75.0)}
    elements = [measured if one is CABLE else one for one in STATION["elements"]]

    as_cable, as_measured = ask("line", **fields), ask("line", **fields | {"elements": elements})

    for field in ("delivered_w", "loss_db", "mismatch_db"):
        assert as_measured[field] == pytest.approx(as_cable[field], rel=AGREE)
    assert as_measured["input"] == pytest.approx(as_cable["input"], rel=AGREE)
    for own, other in zip(as_cable["parts"], as_measured["parts"], strict=True):
        for field in COMPARED if own["element"] != 1 else COMPARED[:2]:
            assert other[field] == pytest.approx(own[field], rel=AGREE)


def loads(vswr, degrees):
    """The same antenna on 145 MHz, given in five ways."""
    reflection = (vswr - 1) / (vswr + 1) * np.exp(1j * np.deg2rad(degrees))
    impedance = 50 * (1 + reflection) / (1 - reflection)
    given = {"resistance_ohm": impedance.real, "reactance_ohm": impedance.imag}
    hertz = [144e6, 146e6]
    spread = [reflection - 0.1j, reflection + 0.1j]  # the antenna is halfway between these two
    seen = [50 * (1 + one) / (1 - one) for one in spread]
    points = [
        {"frequency_hz": one, "resistance_ohm": z.real, "reactance_ohm": z.imag}
        for one, z in zip(hertz, seen, strict=True)
    ]
    at_75 = np.array([(impedance - 75) / (impedance + 75)] * 2).reshape(2, 1, 1)
    return [
        {"kind": "vswr", "vswr": vswr, "angle_deg": degrees},
        {"kind": "impedance", **given},
        {"kind": "table", "points": points},
        {"kind": "measured", "touchstone": touchstone(np.array(hertz), np.array(spread).reshape(2, 1, 1))},
        {"kind": "measured", "touchstone": touchstone(np.array(hertz), at_75, 75.0)},
    ]


@pytest.mark.parametrize(("vswr", "degrees"), [(1.0, 0.0), (1.7, 0.0), (3.0, 135.0), (5.0, -60.0)])
def test_an_antenna_is_the_same_however_it_is_given(vswr, degrees):
    """VSWR and angle, impedance, a table and a measurement of either reference give the same line."""
    answers = [line(load=load) for load in loads(vswr, degrees)]

    for answer in answers[1:]:
        for field in ("loss_db", "margin_db", "delivered_w", "largest_power_w"):
            assert answer[field] == pytest.approx(answers[0][field], rel=AGREE)
        for end in ("input", "antenna"):
            for field, value in answers[0][end].items():
                assert answer[end][field] == pytest.approx(value, rel=1e-7, abs=1e-7)  # 100 dB of return loss


SHORT_JOINT_DB = 0.005
"""What a joint's length still changes at 1.8 MHz."""


def dielectric_weight_db(family, frequency):
    """The most that a joint is cooler in the cell, which takes the dielectric's share as of a wave matched to it."""
    here, view = station_of(Scenario()), family_ratings(family, "low")
    shares = dissipation(view, frequency, 0.0, here.impedance_ohm)
    section, _ = worst_section(view, frequency, here.impedance_ohm)
    by_voltage = shares.total + shares.dielectric * (here.impedance_ohm / section - 1)
    return 10 * math.log10(by_voltage / shares.total)


@pytest.mark.parametrize("family", TRANSMITTING)
def test_a_short_joint_between_its_cables_has_the_margins_of_its_cell(family):
    """A joint short against the wave, between its customary cables and before a matched load, heats as in its cell."""
    site = {"frequency_hz": 1.8e6, "power_w": 100.0, "mode": "carrier", "solar_irradiance_w_per_m2": 500.0}
    cable = customary_cable(family)
    impedance = catalogue().cables[cable].impedance_ohm.value
    site |= {"system_impedance_ohm": impedance}
    cell = ask("cell", family=family, vswr=1.0, **site)
    expected = {limit["id"]: limit["margin_db"] for limit in cell["limits"]}
    piece = {"kind": "cable", "cable": cable, "length_m": 0.01}

    near, joint, far = ask("line", elements=[piece, {"kind": "joint", "family": family}, piece], load=MATCHED, **site)[
        "parts"
    ]

    weight = abs(dielectric_weight_db(family, 1.8e6)) + SHORT_JOINT_DB
    assert joint["margin_by_limit_db"]["contact"] == pytest.approx(expected["contact"], abs=weight)
    assert joint["margin_by_limit_db"]["voltage"] == pytest.approx(expected["voltage"], abs=SHORT_JOINT_DB)
    assert near["margin_by_limit_db"]["cable"] == pytest.approx(expected["cable"], abs=2 * SHORT_JOINT_DB)
    assert joint["allowed_temperature_c"] == cell["allowed_temperature_c"]
    assert joint["return_loss_db"] == pytest.approx(cell["match"]["return_loss_db"], abs=AGREE)
    assert joint["temperature_c"] >= near["temperature_c"] - 0.01
    assert far["temperature_c"] == pytest.approx(cell["cable_temperature_c"], abs=0.1)


@pytest.mark.parametrize("element", range(len(STATION["elements"])))
def test_the_steps_reproduce_the_margins(element):
    """The calls behind an element's margins end, over both ends of the ratings, in the margins shown."""
    answer = line(explain=element)
    parts = [part for part in answer["parts"] if part["element"] == element]
    shown = {margin for part in parts for limit, margin in part["margin_by_limit_db"].items() if margin}

    reached = {step["result"]["value"] for step in answer["steps"] if step["formula"] == "margin"}

    assert all(any(one == pytest.approx(margin, abs=AGREE) for one in reached) for margin in shown)
    assert {step["end"] for step in answer["steps"]} == {"low", "high"}


@pytest.mark.parametrize("element", range(len(STATION["elements"])))
def test_every_source_of_a_step_can_be_looked_up(element):
    """What a derivation names as a number's source stands in the list of sources."""
    steps = line(explain=element)["steps"]

    assert {value["source"] for step in steps for value in step["inputs"]} - {""} <= set(catalogue().sources)


def test_a_reflection_a_little_above_all_is_clipped_with_a_note():
    """A file of 1.03 at one frequency is read as all of it, with a note; elsewhere it is what it says."""
    frequencies = np.array([140e6, 145e6, 150e6])
    clean, noisy = np.array([0.9, 0.95, 0.9]), np.array([0.9, 1.03, 0.9])
    fields = {key: value for key, value in STATION.items() if key != "band"} | {"frequency_hz": 141e6}

    def with_file(reflection, **changed):
        load = {"kind": "measured", "touchstone": touchstone(frequencies, reflection.reshape(-1, 1, 1))}
        return ask("line", **fields | {"load": load} | changed)

    mended = with_file(noisy)
    at_peak = with_file(noisy, frequency_hz=145e6)

    assert "up to 1.030" in mended["notes"][0]
    assert "145 MHz" in mended["notes"][0]
    assert with_file(clean)["notes"] == []
    assert at_peak["antenna"]["vswr"] > 1e5
    assert at_peak["delivered_w"] > 0
    assert with_file(noisy, frequency_hz=140e6)["antenna"]["vswr"] == pytest.approx(19.0, rel=1e-9)


def test_what_was_decided_in_reading_files_is_said():
    """The notes of a measured part's file and of the antenna's stand in the answer and say whose they are."""
    part, load = (measured_text(1, ports).replace("R 50", "R50") for ports in (2, 1))

    notes = line(elements=[{"kind": "measured", "touchstone": part}], load={"kind": "measured", "touchstone": load})[
        "notes"
    ]

    assert [note.partition(" on line")[0] for note in notes] == [
        "The file of Measured part: R50.0",
        "The antenna's file: R50.0",
    ]


def test_a_receive_line_says_what_it_loses():
    """Without power the verdict tells the loss, in words and number."""
    answer = line(power_w=0)

    assert f"the line loses {answer['loss_db']:.2f} dB" in answer["verdict"]


def test_an_adapter_is_two_joints():
    """An adapter answers as the two joints it is made of."""
    adapter = line(elements=[CABLE, {"kind": "joint", "family": "uhf", "adapter_to": "n"}, CABLE])
    joints = line(elements=[CABLE, {"kind": "joint", "family": "uhf"}, {"kind": "joint", "family": "n"}, CABLE])

    for one, two in zip(adapter["parts"], joints["parts"], strict=True):
        assert one | {"element": None} == two | {"element": None}
    assert adapter["loss_db"] == joints["loss_db"]


def test_a_part_passes_no_more_than_its_reflection_leaves():
    """A part of less loss than its VSWR alone brings is lossless: it turns no power into heat, and makes none."""
    part = {"kind": "part", "loss_db": 0.0, "vswr": 3.0}

    answer = line(elements=[part], load=ANTENNA)

    assert answer["parts"][0]["matched_loss_db"] == pytest.approx(-10 * math.log10(1 - 0.25), abs=AGREE)
    assert answer["parts"][0]["lost_w"] == pytest.approx(0, abs=AGREE * STATION["power_w"])


@examples(40)
@given(request=LINES)
def test_a_link_is_refused_where_a_hard_gate_fails(request):
    """Over frequency a link is refused exactly where one of its gates, asked for that frequency alone, refuses it."""
    feedline = feedline_of(msgspec.convert(request, FeedlineRequest))
    frequency = np.array([feedline.frequency_hz / 3, feedline.frequency_hz, feedline.frequency_hz * 3])

    for link in feedline.links:
        gates = [link.gates(hertz, request["power_w"]) for hertz in frequency]
        refused = [any(gate.hard and not gate.passed for gate in at_frequency) for at_frequency in gates]
        assert link.refused(frequency, request["power_w"]).tolist() == refused


@pytest.mark.parametrize("cable", ["rg_213", "rg_400"])
def test_a_cable_colder_than_it_may_get_is_marked(cable):
    """A cable bears a mark below its lowest temperature, not at it, and only those that stand the cold are offered."""
    cables = catalogue().cables
    lowest_c = cables[cable].lowest_temperature_c.value
    mark = f"{cables[cable].name} is rated down to {lowest_c:g} °C; the site: {lowest_c - 1:g} °C."
    at_lowest, colder = (
        line(elements=[JOINT, CABLE | {"cable": cable}], ambient_temperature_c=air_c)
        for air_c in (lowest_c, lowest_c - 1)
    )
    offered = {step["to"] for change in colder["changes"] for step in change["steps"]} & set(cables)

    assert mark in colder["parts"][1]["marks"]
    assert not any("rated down to" in found for found in at_lowest["parts"][1]["marks"])
    assert all(cables[other].lowest_temperature_c.value < lowest_c for other in offered)


def test_a_cable_in_air_hotter_than_it_may_get_is_refused():
    """Where the air is as hot as a cable may get, the line is refused for it, and only on transmit."""
    hot = {"elements": [{"kind": "cable", "cable": "rg_6", "length_m": 5.0}], "ambient_temperature_c": 75.0}

    assert line(**hot)["parts"][0]["refused_by"] == "no_heat_room"
    assert line(**hot)["margin_db"] is line(**hot)["largest_power_w"] is None
    assert all(not band["refused"] or band["margin_db"] is None for band in line(**hot)["bands"])
    assert line(**hot, power_w=0)["parts"][0]["refused_by"] is None


def reception(**fields):
    """The station above in receive, with other fields."""
    return line(**fields)["reception"]


@pytest.mark.parametrize("frequency_hz", [1.9e6, 28.5e6])
def test_system_noise_of_a_matched_line_is_the_recommendations(frequency_hz):
    """A matched line's system noise is that of Recommendation ITU-R P.372 for a line of its loss and temperature."""
    answer = ask(
        "line",
        elements=[{"kind": "part", "loss_db": 4.0}],
        load=MATCHED,
        frequency_hz=frequency_hz,
        ambient_temperature_c=31.0,
        receiver={"noise_figure_db": 7.0, "environment": "residential"},
    )["reception"]
    external = power_ratio(
        max(72.5 - 27.7 * math.log10(frequency_hz / 1e6), 52.0 - 23.0 * math.log10(frequency_hz / 1e6))
    )

    expected = system_noise_factor(
        external, 1.0, 1.0, lossy_noise_factor(power_ratio(4.0), 31.0), power_ratio(4.0), power_ratio(7.0)
    )

    assert answer["external_noise_db"] == pytest.approx(10 * math.log10(external), abs=AGREE)
    assert answer["system_noise_db"] == pytest.approx(10 * math.log10(expected), abs=AGREE)
    alone = external + power_ratio(7.0) - 1
    assert answer["whole_cost_db"] == pytest.approx(10 * math.log10(expected / alone), abs=AGREE)


def listening(frequency_hz, loss_db=0.0, **receiver):
    """The reception of a matched part at 290 K before a receiver."""
    return ask(
        "line",
        elements=[{"kind": "part", "loss_db": loss_db}],
        load=MATCHED,
        frequency_hz=frequency_hz,
        ambient_temperature_c=16.85,
        receiver=receiver,
    )["reception"]


def test_a_request_without_a_view_looks_at_the_horizon():
    """Left out, the antenna looks at the horizon from 30 MHz up; below the environment alone counts."""
    for frequency_hz in (14.2e6, 145e6, 10.368e9):
        assert listening(frequency_hz) == listening(frequency_hz, antenna_view="horizon", environment="rural")
    below, above = (listening(hertz)["heard"] for hertz in (29.9e6, 30e6))
    assert (below, above) == ("Rural; where the antenna points counts from 30 MHz up", "Horizon; rural")


@pytest.mark.parametrize("frequency_hz", [1.9e6, 28.5e6])
def test_below_thirty_megahertz_the_view_is_of_no_account(frequency_hz):
    """On short wave every view hears the same."""
    horizon, *skies = (listening(frequency_hz, antenna_view=view) for view in ("horizon", "sky", "cold_sky"))

    assert all(sky["antenna_temperature_k"] == horizon["antenna_temperature_k"] for sky in skies)


def test_noise_powers_add():
    """On 2 m over the horizon galactic and man-made noise stand on top of the warm earth, each with its power."""
    kelvin = {
        place: listening(145e6, environment=place)["antenna_temperature_k"]
        for place in ("galactic", "rural", "residential")
    }
    man_made = {
        place: 290 * 10 ** ((median - 27.7 * math.log10(145)) / 10)
        for place, median in (("rural", 67.2), ("residential", 72.5))
    }
    galactic = 290 * 10 ** ((52.0 - 23.0 * math.log10(145)) / 10)

    for place, temperature in man_made.items():
        assert kelvin[place] - kelvin["galactic"] == pytest.approx(temperature, rel=1e-9)
    assert 0.9 * 290 < kelvin["galactic"] - galactic < 290


def test_a_given_temperature_is_what_comes_in():
    """A temperature given outright counts in its band, in dB and in kelvin; the other bands keep their view."""
    given, viewed = (
        listening(432e6, antenna_view="sky", noise_figure_db=1.0, **more)
        for more in ({"antenna_temperature_k": 64.0}, {})
    )
    places = given["bands"]

    assert (given["heard"], viewed["heard"]) == ("Antenna temperature as given", "Sky, 30° up; rural")
    assert given["antenna_temperature_k"] == 64.0
    assert given["external_noise_db"] == pytest.approx(10 * math.log10(64 / 290), abs=AGREE)
    assert given["system_temperature_k"] == pytest.approx(64 + 290 * (power_ratio(1.0) - 1), rel=1e-9)
    costs = (answer["half_decibel_cost_by_band_db"] for answer in (given, viewed))
    differing = [place for place, one, other in zip(places, *costs, strict=True) if one != other]
    assert differing == ["70cm"]


@pytest.mark.parametrize("noise_figure_db", [0.5, 1.0, 6.0])
def test_a_decibel_of_line_on_three_centimetres_costs_about_a_decibel(noise_figure_db):
    """Over the horizon on 10 GHz the antenna is about as warm as the line, which costs little more than its loss."""
    answer = listening(10.368e9, loss_db=1.0, noise_figure_db=noise_figure_db)

    assert 270 < answer["antenna_temperature_k"] < 290
    assert 1.0 < answer["whole_cost_db"] < 1.1


def test_the_sky_grows_colder_upwards():
    """The higher the antenna looks the less air is in its way; the horizon is warmer than any sky."""
    for frequency_hz in (1.296e9, 10.368e9):
        kelvin = [
            listening(frequency_hz, antenna_view="sky", elevation_deg=up)["antenna_temperature_k"]
            for up in (0, 5, 10, 30, 90)
        ]
        assert kelvin == sorted(kelvin, reverse=True)
        assert kelvin[0] < listening(frequency_hz, elevation_deg=90)["antenna_temperature_k"]


def test_a_line_without_loss_costs_nothing_on_receive():
    """Without loss and with a matched antenna no part costs any signal-to-noise ratio."""
    answer = reception(elements=[{"kind": "part", "loss_db": 0.0}] * 3, load=MATCHED)

    assert [cost["cost_db"] for cost in answer["costs"]] == pytest.approx([0.0] * 4, abs=AGREE)
    assert answer["whole_cost_by_band_db"] == pytest.approx([0.0] * len(answer["bands"]), abs=AGREE)


def test_a_preamplifier_without_gain_or_noise_changes_nothing():
    """An amplifier of 0 dB gain and 0 dB noise figure leaves every cost as it was, wherever it stands."""
    plain = reception()

    for at in range(len(STATION["elements"])):
        nothing = {"before_element": at, "gain_db": 0.0, "noise_figure_db": 0.0}
        amplified = reception(receiver={"preamplifier": nothing})
        assert amplified["whole_cost_db"] == pytest.approx(plain["whole_cost_db"], abs=AGREE)
        assert [cost["cost_db"] for cost in amplified["costs"]] == pytest.approx(
            [cost["cost_db"] for cost in plain["costs"]], abs=AGREE
        )


def test_a_preamplifier_helps_most_at_the_antenna():
    """The nearer to the antenna a good amplifier stands, the less the line costs."""
    costs = [
        reception(receiver={"environment": "quiet_rural", "preamplifier": {"before_element": at}})["whole_cost_db"]
        for at in range(len(STATION["elements"]))
    ]

    assert costs == sorted(costs, reverse=True)
    assert costs[-1] < reception(receiver={"environment": "quiet_rural"})["whole_cost_db"]


@pytest.mark.parametrize(
    "elements",
    [
        [{"kind": "part", "loss_db": 100}] * 60,
        [{"kind": "cable", "cable": "rg_58", "length_m": 10_000}] * 60,
        [{"kind": "joint", "family": "uhf", "added_resistance_ohm": 5}] * 60,
        [{"kind": "measured", "touchstone": measured_text(1, 2)}] * 60,
    ],
)
def test_the_longest_lines_are_answered(elements):
    """Sixty of the worst of each kind are answered on every band without a number that is not finite."""
    for frequency in (1e5, 5e10):
        answer = ask("line", elements=elements, load={"kind": "vswr", "vswr": 100}, frequency_hz=frequency, power_w=1e5)
        assert 0 <= answer["delivered_w"] <= 1e5
        assert answer["loss_db"] is None or answer["loss_db"] > 3


def gapped(ports):
    """A file that reaches from 100 to 200 MHz only."""
    return touchstone(np.array([1e8, 2e8]), passive(3, ports, 2))


def scattering_text(*rows):
    """A file of the rows given, frequency and eight numbers each."""
    return "\n".join(["# Hz S RI R 50", *rows])


THROUGH = "0 0 1 0 1 0 0 0"
BAD_LINES = [  # fields, field named, words of the sentence
    ({"elements": []}, "elements", "a list of 1 to 60 entries"),
    ({"elements": [JOINT] * 61}, "elements", "a list of 1 to 60 entries"),
    ({"elements": [CABLE, {**CABLE, "length_m": 0}]}, "elements[1].length_m", "0; allowed: a number from 0.01 to"),
    ({"elements": [{**CABLE, "length_m": -3}]}, "elements[0].length_m", "-3; allowed: a number from 0.01 to 10000"),
    ({"elements": [{**CABLE, "cable": "rope"}]}, "elements[0].cable", '"rope"; allowed: one of'),
    ({"elements": [JOINT, {**CABLE, "cable": "rope"}]}, "elements[1].cable", '"rope"; allowed: one of'),
    ({"elements": [JOINT, {**JOINT, "family": "zz"}]}, "elements[1].family", '"zz"; allowed: one of uhf,'),
    ({"elements": [{**JOINT, "adapter_to": "zz"}]}, "elements[0].adapter_to", '"zz"; allowed: one of uhf,'),
    ({"elements": [{**JOINT, "condition": "odd"}]}, "elements[0].condition", '"odd"; allowed: one of new,'),
    ({"elements": [{**JOINT, "exposure": "damp"}]}, "elements[0].exposure", "allowed: one of exposed,"),
    ({"elements": [{**PART, "vswr": 0.9}]}, "elements[0].vswr", "0.9; allowed: a number from 1 to 20"),
    ({"elements": [{**PART, "loss_db": -1}]}, "elements[0].loss_db", "-1; allowed: a number from 0 to 100"),
    ({"elements": [{"kind": "part"}]}, "elements[0].loss_db", "can't be left out"),
    ({"elements": [{"kind": "magic"}]}, "elements[0].kind", '"magic"; allowed: one of cable, joint, part, measured'),
    ({"elements": [{"family": "n"}]}, "elements[0].kind", "allowed: one of cable, joint, part, measured"),
    ({"elements": [{**JOINT, "length_m": 3}]}, "elements[0].length_m", "allowed: only the fields kind, family"),
    ({"elements": [3]}, "elements[0]", "3; allowed: a JSON object of kind"),
    ({"load": None}, "load", "null; allowed: a JSON object of kind"),
    ({"load": {"kind": "vswr", "vswr": 0}}, "load.vswr", "0; allowed: a number from 1 to 100"),
    ({"load": {"kind": "cable"}}, "load.kind", '"cable"; allowed: one of vswr, impedance, table, measured'),
    ({"load": {"kind": "impedance", "resistance_ohm": -1}}, "load.resistance_ohm", "-1; allowed: a number from 0"),
    ({"load": {"kind": "impedance", "resistance_ohm": 0}}, "load", "one that takes some"),
    ({"band": None}, "band", "either a band or a spot frequency"),
    ({"frequency_hz": 1e8}, "band", "either a band or a spot frequency"),
    ({"band": "11m"}, "band", '"11m"; allowed: one of 2200m,'),
    ({"explain": 7}, "explain", "7; allowed: 0 to 6"),
    ({"explain": -1}, "explain", "-1; allowed: a whole number from 0 to 59"),
    ({"receiver": {"environment": "moon"}}, "receiver.environment", '"moon"; allowed: one of city,'),
    ({"receiver": {"antenna_view": "moon"}}, "receiver.antenna_view", '"moon"; allowed: one of horizon,'),
    ({"receiver": {"elevation_deg": 91}}, "receiver.elevation_deg", "91; allowed: "),
    ({"receiver": {"antenna_temperature_k": 0}}, "receiver.antenna_temperature_k", "0; allowed: "),
    (
        {"receiver": {"preamplifier": {"before_element": 9}}},
        "receiver.preamplifier.before_element",
        "9; allowed: 0 to 6",
    ),
    ({"power_w": -1}, "power_w", "-1; allowed: a number from 0 to 100000"),
]


def element_file(text):
    """Fields of a line whose second element is a measured part."""
    return {"elements": [JOINT, {"kind": "measured", "touchstone": text}]}


def load_file(text):
    """Fields of a line whose load is measured."""
    return {"load": {"kind": "measured", "touchstone": text}}


def table_of(*hertz):
    """Fields of a line whose load is a table of 50 Ω at these frequencies."""
    return {"load": {"kind": "table", "points": [{"frequency_hz": one, "resistance_ohm": 50} for one in hertz]}}


WITHIN = ("144e6", "146e6")
BAD_FILES = [
    (element_file("hello"), "elements[1].touchstone", "on line 1"),
    (element_file(measured_text(1, 1)), "elements[1].touchstone", "allowed: a two-port file"),
    (load_file(measured_text(1, 2)), "load.touchstone", "allowed: a one-port file"),
    (element_file(gapped(2)) | {"band": "70cm"}, "elements[1].touchstone", "allowed: figures that reach 435 MHz"),
    (load_file(gapped(1)) | {"band": "20m"}, "load.touchstone", "allowed: figures that reach 14.18 MHz"),
    (
        element_file(scattering_text(*(f"{one} 0 0 1.01 0 1.01 0 0 0" for one in WITHIN))),
        "elements[1].touchstone",
        "more power out than in at 144 MHz",
    ),
    (load_file(touchstone(np.array([1e8, 2e8]), 1.1 * np.ones((2, 1, 1)))), "load.touchstone", "a passive part"),
    (element_file(scattering_text("144e6 0 0 0 0 1 0 0 0", f"146e6 {THROUGH}")), "elements[1].touchstone", "s21 = 0"),
    (element_file(scattering_text(f"144e6 {THROUGH}", "146e6 0 0 -1 0 -1 0 0 0")), "elements", "no power passed"),
    (element_file(scattering_text("144e6 0 nan 1 0 1 0 0 0")), "elements[1].touchstone", "on line 2"),
    (load_file("# Hz S RI R 50\n144e6 1 0\n146e6 1 0"), "load", "one that takes some"),
    (table_of(144e6, 144e6), "load.points[1].frequency_hz", "more than the one before"),
    (table_of(140e6, 150e6, 149e6), "load.points[2].frequency_hz", "more than the one before"),
    (table_of(1e6, 2e6), "load.points", "figures that reach 145 MHz"),
    (table_of(1e8), "load.points", "a list of 2 to 2000 entries"),
]


@pytest.mark.parametrize("operation", ["line", "spread"])
@pytest.mark.parametrize(("fields", "field", "words"), BAD_LINES + BAD_FILES)
def test_a_bad_line_is_refused_in_its_own_words(fields, field, words, operation):
    """A line that can't be solved is refused with the element at fault, the value and what is allowed."""
    own = {"explain", "receiver"} & set(fields)
    if operation == "spread" and (own or words == "no power passed"):
        return
    with pytest.raises(InputError) as caught:
        ask(operation, **STATION | fields)

    assert caught.value.field == field
    assert words in str(caught.value)


@pytest.mark.parametrize("missing", ["elements", "load"])
def test_a_line_needs_elements_and_a_load(missing):
    """Without elements or without a load the field that is missing is named."""
    with pytest.raises(InputError, match=f"{missing} is null; allowed: a value, as this field can't be left out"):
        ask("line", **{key: value for key, value in STATION.items() if key != missing})


@pytest.mark.parametrize("word", ["NaN", "Infinity", "-Infinity"])
def test_a_length_that_is_not_finite_is_refused_by_name(word):
    """NaN and infinity inside an element are refused at their own field."""
    body = json.dumps(STATION).replace('"length_m": 2.0', f'"length_m": {word}').encode()

    with pytest.raises(InputError) as caught:
        call("line", body)

    assert caught.value.field == "elements[3].length_m"


WRONG = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(-3, 3),
    st.floats(),
    st.sampled_from([1e300, -1e300, 1e-300, "", "n", "rg_58", "table", "measured", [], {}, [[]], {"kind": "cable"}]),
    st.builds(measured_text, SEEDS, st.sampled_from([1, 2])),
)


def places(value):
    """The paths of everything inside a nested request."""
    inside = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else []
    return [path for key, below in inside for path in ([key], *([key, *rest] for rest in places(below)))]


def mutated(request, data):
    """A request with one to three of its nested values scaled, exchanged, dropped or doubled."""
    request = copy.deepcopy(request)
    for _ in range(data.draw(st.integers(1, 3))):
        *path, last = data.draw(st.sampled_from(places(request)))
        holder = request
        for key in path:
            holder = holder[key]
        number = isinstance(holder[last], (int, float)) and not isinstance(holder[last], bool)
        change = data.draw(st.sampled_from(["scale"] * 6 * number + ["exchange", "exchange", "drop", "double"]))
        if change == "scale":
            holder[last] *= data.draw(st.sampled_from([-1, 0, 1e-3, 0.5, 2, 10, 1000]))
        elif change == "exchange":
            holder[last] = copy.deepcopy(data.draw(WRONG))  # it may be spoilt in its turn
        elif change == "drop":
            del holder[last]
        elif isinstance(holder, list):
            holder.append(copy.deepcopy(holder[last]))
        else:
            holder[f"{last}_"] = holder[last]
        if not places(request):
            break
    return request


def finite_or_refused(operation, body):
    """Whether a body has an answer of finite numbers, or an InputError that can be sent; anything else escapes."""
    try:
        return bool(json.loads(call(operation, body), parse_constant=pytest.fail))
    except InputError as error:
        return bool(str(error).encode())


@pytest.mark.parametrize("operation", ["line", "spread"])
@examples(120)
@given(data=st.data())
def test_a_spoilt_line_is_answered_or_refused(operation, data):
    """A good request with some of its values spoilt is answered in finite numbers or refused with a sentence."""
    good = STATION | {"load": data.draw(st.sampled_from(loads(1.7, 30.0)))}
    good |= {"receiver": {"preamplifier": {"before_element": 1}}} if operation == "line" else {"draws": 100}

    assert finite_or_refused(operation, json.dumps(mutated(good, data)).encode())
