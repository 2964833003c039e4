"""Packs of an earlier version: read, with what they lack taken from a stated default, and the list of packs says so."""

import json

import pytest
from packs import HEAD, ask, built_in, edition, value

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.earlier import RETIRED, brought_up_to_date
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import Document
from jointwise.calc.errors import InputError

RATING = {
    "power_w": 60,
    "frequency_hz": 1e9,
    "ambient_temperature_c": 40,
    "contact_temperature_c": 85,
    "altitude_m": 0,
    "source": "sheet",
    "kind": "common practice",
    "note": "",
}
ENDS = {"low": RATING, "high": RATING | {"power_w": 150}}
USED_NO_MORE = {
    "altitude_voltage_rms_v": value(375),
    "thermal_time_constant_s": {"low": value(60), "high": value(150)},
    "cable_conductor_area_m2": value(3e-6),
    "usual_cable_diameter_m": value(5e-3),
}
NEW_OF_A_FAMILY = (
    "customary_cable",
    "generous_dielectric",
    "generous_bead_material",
    "stainless_torque_nm",
    "tightened_by",
)


def family(**changed):
    """A pack's own family as an earlier version had it: BNC with two ends of its power, fields retired, none new."""
    entry = built_in("interfaces", "bnc", id="club_bnc", name="Club bayonet", **USED_NO_MORE, average_power=ENDS)
    return {name: one for name, one in (entry | changed).items() if name not in NEW_OF_A_FAMILY}


def cable(**changed):
    """A pack's own cable as an earlier version had it: RG-58 of 6 mm, its powers with an end, no build."""
    rg_58 = built_in("cables", "rg_58", id="own", name="Own cable")
    powers = [one | {"end": end} for one, end in zip(rg_58["power"], ("low", "high", "both"), strict=False)]
    entry = rg_58 | {"power": powers, "outer_diameter_m": value(6e-3)} | changed
    return {name: one for name, one in entry.items() if name != "build"}


def taken(**fields):
    """What the list of packs says of a pack with some fields."""
    return ask("catalogue", edition(**fields))["packs"][0]["taken"]


def thickest_that_fits():
    """The thickest cable of 50 Ω that the family takes."""
    most = family()["cable_diameter_m"]["high"]["value"]
    alike = [one for one in catalogue().cables.values() if one.impedance_ohm.value == 50]
    return max((one for one in alike if one.outer_diameter_m.value <= most), key=lambda one: one.outer_diameter_m.value)


def test_a_family_of_an_earlier_version_has_margins():
    """Its cells have margins, on the thickest cable of like impedance that it takes."""
    packed = edition(interfaces=[family()])
    answer = ask("cell", packed, family="club_bnc", band="2m")
    row = ask("matrix", packed, families=["club_bnc"], bands=["20m", "2m", "70cm"], powers_w=[100])

    assert (answer["cable_id"], answer["cable_given"]) == (thickest_that_fits().id, False)
    assert answer["margin_db"] is not None
    assert all(margin is not None for column in row["margin_db"][0] for margin in column)


def test_what_a_family_of_an_earlier_version_lacks_is_said():
    """The list of packs names each field that is no longer used and what stands for what is missing."""
    assert taken(interfaces=[family()]) == [
        f"Club bayonet: {', '.join(USED_NO_MORE)} are no longer used.",
        "Club bayonet: the ends of average_power are taken as ratings to compare with.",
        f"Club bayonet: no customary cable is named; {thickest_that_fits().name} is taken.",
    ]


def test_its_text_of_today_is_told_and_changes_nothing():
    """The list of packs gives the text in today's shape, which lays the same entries, and none for a pack of today."""
    packed = edition(interfaces=[family()])
    (told,) = packed.tables.packs
    again = edition_of([Document("", told.today.encode())])

    assert again.tables.interfaces == packed.tables.interfaces
    assert [pack.today for pack in again.tables.packs] == [""]


@pytest.mark.parametrize("field", RETIRED["interfaces"])
def test_one_field_that_is_no_longer_used_is_said_too(field):
    """A family of today with one such field beside is read, and the field is named."""
    today = built_in("interfaces", "bnc", id="club_bnc", name="Club bayonet") | {field: USED_NO_MORE[field]}

    assert taken(interfaces=[today]) == [f"Club bayonet: {field} is no longer used."]


def test_the_ends_of_a_power_are_two_ratings():
    """Both ends of an earlier power are ratings of the cell, the same twice but once; none of them decides."""
    both = ask("cell", edition(interfaces=[family()]), family="club_bnc", band="2m")
    same = ask(
        "cell",
        edition(interfaces=[family(average_power={"low": RATING, "high": RATING})]),
        family="club_bnc",
        band="2m",
    )

    assert [one["power_w"] for one in both["ratings"] if one["part"] == "contact"] == [60, 150]
    assert [one["power_w"] for one in same["ratings"] if one["part"] == "contact"] == [60]
    assert both["limits"] == same["limits"]


def test_the_retired_fields_change_no_number():
    """An earlier family has the numbers of one of today with the same values, as far as those are still used."""
    named = catalogue().cables["foam_6_mm"].id
    entry = {name: one for name, one in family().items() if name not in USED_NO_MORE}
    today = entry | {"average_power": [ENDS["low"], ENDS["high"]]}
    asked = {"family": "club_bnc", "band": "70cm", "cable": named}

    assert ask("cell", edition(interfaces=[family()]), **asked) == ask("cell", edition(interfaces=[today]), **asked)


def test_a_cable_of_an_earlier_version_has_margins():
    """It is built as the nearest cable of like insulation and impedance, not as RG-59, and the list says so."""
    packed = edition(cables=[cable()])
    answer = ask("cell", packed, family="bnc", band="2m", cable="own")
    powers = [one["power_w"] for one in answer["ratings"] if one["part"] == "cable"]

    assert answer["margin_db"] is not None
    assert powers == [one["power_w"] for one in cable()["power"]]
    assert taken(cables=[cable()]) == [
        "Own cable: end is no longer used; each power is a rating to compare with.",
        f"Own cable: no build is given; that of {catalogue().cables['rg_223'].name}, scaled to its diameter, is taken.",
    ]


def test_a_scaled_build_is_that_of_its_model():
    """A cable as thick as its model has the model's own numbers; a thicker one is scaled in every diameter."""
    same = built_in("cables", "rg_213", id="own", name="Own cable", build=None)
    asked = {"family": "n", "band": "2m"}
    copied = ask("cell", edition(cables=[same]), **asked, cable="own")
    original = ask("cell", **asked, cable="rg_213")

    for field in ("margin_db", "margin_high_db", "contact_temperature_c", "cable_temperature_c", "largest_power_w"):
        assert copied[field] == original[field], field
    thicker = same | {"outer_diameter_m": value(1.02 * same["outer_diameter_m"]["value"])}
    put_in = {
        one["symbol"]: one["value"]
        for limit in ask("cell", edition(cables=[thicker]), **asked, cable="own")["limits"]
        if limit["id"] == "cable"
        for step in limit["steps"]
        if step["formula"] == "shell_resistance" and step["end"] == "low"
        for one in step["inputs"]
    }
    model = built_in("cables", "rg_213")["build"]
    assert put_in["D_o"] == pytest.approx(1.02 * model["dielectric_diameter_m"]["value"], rel=1e-12)
    assert put_in["D_i"] == pytest.approx(1.02 * model["inner_diameter_m"]["value"], rel=1e-12)


def test_a_pack_of_today_has_nothing_taken():
    """A family and a cable that leave out nothing add no sentence, and the text is read as it stands."""
    fields = {
        "interfaces": [built_in("interfaces", "bnc", id="club_bnc", name="Club bayonet")],
        "cables": [built_in("cables", "rg_58", id="own", name="Own cable")],
    }
    text = json.dumps(HEAD | fields).encode()

    assert taken(**fields) == []
    assert brought_up_to_date(text) == (text, [])


BAD = [  # an earlier pack's bad field, its path, what is allowed
    ({"interfaces": [family(inner_diameter_m=value(0))]}, "interfaces[0].inner_diameter_m.value", "1e-05 to 0.2 m"),
    ({"interfaces": [family(coupling=value("x", source="nowhere"))]}, "interfaces[0].coupling.source", "a source of"),
    ({"interfaces": [family(colour="blue")]}, "interfaces[0].colour", "only the fields"),
    (
        {"interfaces": [family(average_power={"low": RATING | {"power_w": 0}, "high": RATING})]},
        "interfaces[0].average_power[0].power_w",
        "0.001 to 1e+06",
    ),
    (
        {"interfaces": [family(average_power={"low": RATING, "high": RATING | {"contact_temperature_c": 40}})]},
        "interfaces[0].average_power[1].contact_temperature_c",
        "above the air, 40 °C",
    ),
    ({"interfaces": [family(average_power={"low": RATING})]}, "interfaces[0].average_power", "a list"),
    (
        {"interfaces": [family(average_power=ENDS | {"middle": RATING})]},
        "interfaces[0].average_power",
        "a list",
    ),
    ({"cables": [cable(power=[RATING | {"end": "low"}])]}, "cables[0].power[0]", "only the fields"),
    ({"cables": [cable(velocity_factor=value(2))]}, "cables[0].velocity_factor.value", "0.2 to 1"),
    ({"modes": [{"id": "own", "name": "Own", "duty_factor": {"low": 1}}]}, "modes[0].duty_factor", ""),
]


@pytest.mark.parametrize(("fields", "path", "allowed"), BAD, ids=[path for _, path, _ in BAD])
def test_a_bad_value_of_an_earlier_pack_is_refused_with_its_path(fields, path, allowed):
    """What is bad in an earlier pack is refused by its place, as in one of today."""
    with pytest.raises(InputError) as refusal:
        edition(**fields)

    assert refusal.value.field.startswith(f"0.json: {path}")
    assert allowed in refusal.value.allowed
