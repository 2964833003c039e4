"""Transformers, sections, two-wire lines and rated parts in a line: their limits, their doubts, and who passes them."""

import pytest
from lines import ask, measured_text
from packs import ask as ask_with_pack
from packs import built_in, edition, value

from jointwise.calc.errors import InputError

AGREE = 1e-6
MATCHED = {"kind": "vswr", "vswr": 1.0}
HOLDS = {"behaviour": "keeps_forward"}
WIRES = {"kind": "wires", "line": "window_450_solid", "length_m": 20.0}
CABLE = {"kind": "cable", "cable": "rg_213", "length_m": 10.0}
JOINT = {"kind": "joint", "family": "n"}


def line(*elements, **fields):
    """The answer for some elements on 20 m with 100 W of steady carrier, whatever the SWR."""
    station = {"load": MATCHED, "band": "20m", "mode": "carrier", "transmit_share": 1.0, "transmitter": HOLDS}
    return ask("line", **station | {"elements": list(elements)} | fields)


def first(*elements, **fields):
    """The first part of that line."""
    return line(*elements, **fields)["parts"][0]


def resistance(ohm):
    """An antenna of a resistance."""
    return {"kind": "impedance", "resistance_ohm": ohm}


def test_a_transformer_bears_its_voltage_on_the_transmitters_side():
    """4:1 into 200 Ω with 100 W: 100 V peak on the 50 Ω side, whatever stands behind."""
    balun = {"kind": "transformer", "ratio": 4.0, "loss_db": 0.0, "voltage_limit_v": 200.0}

    part = first(balun, load=resistance(200.0))

    assert part["peak_voltage_v"] == pytest.approx(100.0)
    assert part["margin_by_limit_db"]["voltage"] == pytest.approx(6.0206, abs=1e-4)
    assert part["peak_current_a"] == pytest.approx(2.0)


@pytest.mark.parametrize(
    "element",
    [
        {"kind": "part", "loss_db": 0.0},
        {"kind": "transformer", "loss_db": 0.0},
        {"kind": "measured", "touchstone": measured_text(3, 2)},
    ],
)
def test_a_given_limit_is_checked_and_none_is_not(element):
    """What stands 50 W of 100 W lacks 3 dB; without limits there is no margin."""
    free = first(element)
    limited = first(element | {"power_limit_w": 50.0, "voltage_limit_v": 1e6})

    assert free["margin_db"] is free["largest_power_w"] is free["allowed_voltage_v"] is None
    assert limited["margin_by_limit_db"]["rating"] == pytest.approx(-3.0103, abs=1e-4)
    assert limited["allowed_voltage_v"] == 1e6


def test_a_transformer_loses_what_is_given_between_its_own_impedances():
    """Between 50 Ω and the transformed impedance 0.5 dB are lost, and no return loss is held against it."""
    part = first({"kind": "transformer", "ratio": 9.0, "loss_db": 0.5}, load=resistance(450.0))

    assert part["loss_db"] == pytest.approx(0.5, abs=AGREE)
    assert part["matched_loss_db"] == pytest.approx(0.5, abs=AGREE)
    assert part["return_loss_db"] is None


@pytest.mark.parametrize(("choking", "marked"), [(None, False), (999.0, True), (1000.0, False), (5000.0, False)])
def test_a_weak_choke_is_marked(choking, marked):
    """A choking impedance below 1 kΩ bears a mark; one not given bears none."""
    marks = first({"kind": "transformer", "choking_ohm": choking, "name": "Choke"})["marks"]

    assert marks == ["Choke chokes by 999 Ω; well over 1000 Ω keeps current off the outside of the line."] * marked


@pytest.mark.parametrize(("limit", "marked"), [(90.0, True), (130.0, True), (150.0, False)])
def test_an_arrester_says_that_it_fires(limit, marked):
    """100 W are 100 V peak: within 3 dB of it the words say what happens at an arrester's voltage."""
    arrester = {"kind": "part", "what": "arrester", "loss_db": 0.0, "voltage_limit_v": limit}

    assert first(arrester)["marks"] == ["At its voltage limit Arrester fires and shorts the line."] * marked
    assert first(arrester | {"what": "switch"})["marks"] == []


def test_a_section_checks_its_voltage():
    """A quarter wave of 100 Ω before 200 Ω: the voltage at its far end is that of 100 W in 200 Ω."""
    section = {"kind": "section", "impedance_ohm": 100.0, "length_m": 5.2879, "voltage_limit_v": 400.0}

    part = first(section, load=resistance(200.0), frequency_hz=14.175e6, band=None)

    assert part["peak_voltage_v"] == pytest.approx(200.0, rel=1e-4)
    assert part["margin_db"] == pytest.approx(6.0206, abs=1e-3)
    assert part["matched_loss_db"] == 0


def test_a_two_wire_line_is_limited_by_voltage_alone():
    """No temperature is given of it; its voltage is that of the cautious source, less in thin air."""
    low, high = first(WIRES), first(WIRES, altitude_m=3000.0)

    assert low["temperature_c"] is None
    assert low["binding"] == "voltage"
    assert low["margin_by_limit_db"]["rating"] is None
    assert high["allowed_voltage_v"] < low["allowed_voltage_v"]


def test_outdoors_a_two_wire_line_is_marked_as_dry():
    """Rain is spoken of where it can fall, and the surroundings everywhere."""
    indoors, outdoors = (first(WIRES, exposure=exposure)["marks"] for exposure in ("indoor", "exposed"))

    assert len(indoors) == 1
    assert "a few spacings away" in indoors[0]
    (dry,) = (mark for mark in outdoors if mark not in indoors)
    assert dry.startswith("450-class window line, 1.0 mm solid counts as clean and dry. Wet or iced it may lose")


def test_a_joint_takes_no_heat_from_a_two_wire_line():
    """Beside a two-wire line a joint is as cool as beside nothing, and its own cable alone must fit it."""
    beside = line(CABLE, JOINT, WIRES)["parts"][1]
    alone = line(CABLE, JOINT, {"kind": "section", "impedance_ohm": 400.0, "length_m": 20.0})["parts"][1]

    assert beside["refused_by"] is None
    assert beside["margin_by_limit_db"].keys() == alone["margin_by_limit_db"].keys()


def test_the_standing_wave_is_drawn_along_every_run():
    """Cables, two-wire lines and sections have voltage and current along them, one after the other."""
    drawn = line(CABLE, WIRES, {"kind": "section", "impedance_ohm": 100.0, "length_m": 5.0})["standing_wave"]

    assert drawn["distance_m"] == sorted(drawn["distance_m"])
    assert drawn["distance_m"][-1] == pytest.approx(35.0)
    assert None not in drawn["voltage_v"] + drawn["current_a"]


def test_an_unknown_two_wire_line_is_refused():
    """The sentence names element and value, and those there are."""
    with pytest.raises(InputError, match=r"elements\[0\]\.line is .*clothes_line.*window_450_solid"):
        line(WIRES | {"line": "clothes_line"})


def test_no_exchange_is_offered_for_them():
    """Cables and joints alone are exchanged for others; what else may help is a tuner put in."""
    others = {"kind": "transformer"}, WIRES, {"kind": "section", "impedance_ohm": 75.0, "length_m": 1.0}

    offered = [step["action"] for change in line(*others)["changes"] for step in change["steps"]]

    assert set(offered) <= {"insert"}


def own_wires(**changed):
    """An edition with a two-wire line of a pack's own."""
    return edition(wire_lines=[built_in("wire_lines", "open_wire_600", id="cage", name="Cage line") | changed])


def test_a_packs_two_wire_line_is_used_and_marked():
    """A pack's line has its own impedance, and the part names the pack."""
    own = own_wires(impedance_ohm=value(450.0))
    request = {"elements": [WIRES | {"line": "cage"}], "load": resistance(450.0), "band": "20m"}

    answer = ask_with_pack("line", own, **request)

    assert answer["parts"][0]["pack"] == "Invented club"
    assert answer["input"]["resistance_ohm"] == pytest.approx(450.0, rel=0.002)


@pytest.mark.parametrize(
    ("changed", "field"),
    [
        ({"wire_diameter_m": value(0.02), "spacing_m": value(0.01)}, "wire_diameter_m"),
        ({"impedance_ohm": value(20.0)}, "impedance_ohm"),
        ({"attenuation": built_in("wire_lines", "open_wire_600")["attenuation"][:1]}, "attenuation"),
        ({"lowest_temperature_c": value(90.0)}, "lowest_temperature_c"),
    ],
)
def test_a_packs_two_wire_line_must_hold_together(changed, field):
    """Wires thicker than their spacing, no such impedance, one figure alone and a cold limit above the hot."""
    with pytest.raises(InputError, match=rf"wire_lines\[0\]\.{field}"):
        own_wires(**changed)
