"""Powers that someone states, held against what is computed: `pytest -s` prints the table."""

import pytest
from packs import ask, built_in, edition

from jointwise.calc.catalogue import catalogue
from jointwise.calc.physics.customary import customary_cable
from jointwise.calc.physics.evidence import UNDOCUMENTED

FAMILIES = list(catalogue().interfaces)
CABLES = list(catalogue().cables)
SPOTS_HZ = [3e6, 30e6, 300e6, 3e9]
DOCUMENTED = ["standard", "datasheet", "handbook"]
AIR_C = 30.0
EXACT = 1e-12


def cell(packed=None, **asked):
    """A cell at the conditions under which powers are rated: carrier, matched, in still air and shade."""
    rated = {"mode": "carrier", "transmit_share": 1.0, "vswr": 1.0, "ambient_temperature_c": AIR_C, "power_w": 1.0}
    return ask("cell", packed, **rated | asked)


def on_family(family, **asked):
    """The conditions of a family's ratings: a line of its own impedance."""
    return {"system_impedance_ohm": catalogue().interfaces[family].nominal_impedance_ohm.value, **asked}


def limits(answer):
    """What each limit of a cell allows, cautious and generous."""
    return {limit["id"]: (limit["allowed_w"], limit["allowed_high_w"]) for limit in answer["limits"]}


def rating(watts, frequency_hz, kind, **others):
    """A power of a pair or a cable that a pack states."""
    stated = {"power_w": watts, "frequency_hz": frequency_hz, "ambient_temperature_c": AIR_C, "kind": kind}
    return stated | {"source": "sheet" if kind != "memory" else "memory", **others}


def family_with(family, *ratings):
    """A pack's own family: a built-in one with other ratings, each of its contact at its hottest."""
    hottest = min(
        catalogue().interfaces[family].highest_temperature_c.value,
        catalogue().cables[customary_cable(family)].highest_temperature_c.value,
    )
    whole = [one | {"contact_temperature_c": hottest, "altitude_m": 0.0} for one in ratings]
    return edition(interfaces=[built_in("interfaces", family, id="own", name="Own", average_power=whole)])


def cable_with(cable, *ratings):
    """A pack's own cable: a built-in one with other ratings, each of its conductor at its hottest."""
    hottest = catalogue().cables[cable].highest_temperature_c.value
    whole = [one | {"conductor_temperature_c": hottest} for one in ratings]
    return edition(cables=[built_in("cables", cable, id="own", name="Own", power=whole)])


@pytest.mark.parametrize("family", FAMILIES)
def test_every_rating_of_a_cell_has_what_is_computed_for_it(family):
    """A cell lists each power stated for its family and its cable with what is computed at the same conditions."""
    answer = cell(family=family, band="2m")
    listed = {
        "contact": catalogue().interfaces[family].average_power,
        "cable": catalogue().cables[answer["cable_id"]].power,
    }

    for part, stated in listed.items():
        found = [one for one in answer["ratings"] if one["part"] == part]
        assert [(one["power_w"], one["frequency_hz"], one["source"], one["kind"]) for one in found] == [
            (one.power_w, one.frequency_hz, one.source, one.kind) for one in stated
        ]
    for one in answer["ratings"]:
        assert 0 < one["computed_w"] <= one["computed_high_w"]
        assert one["here_w"] > 0
        assert one["sentence"]
        assert (one["role"] == "not documented") == (one["kind"] in UNDOCUMENTED)


def test_documented_powers_lie_near_what_is_computed():
    """Each documented power lies within a factor of three of the computed range; `-s` shows those from memory too."""
    print(f"\n{'':16}{'MHz':>7}{'stated W':>10}{'computed W':>18}{'ratio':>7}")
    for part, names in (("contact", FAMILIES), ("cable", CABLES)):
        for name in names:
            asked = {"family": name} if part == "contact" else {"family": "n", "cable": name}
            for one in cell(**asked, band="2m")["ratings"]:
                if one["part"] != part:
                    continue
                computed = f"{one['computed_w']:.0f} to {one['computed_high_w']:.0f}"
                told = f"{one['frequency_hz'] / 1e6:7.0f}{one['power_w']:10.0f}{computed:>18}"
                print(f"{name:16}{told}{one['computed_w'] / one['power_w']:7.2f}  {one['kind']}, {one['role']}")
                if one["kind"] in DOCUMENTED:
                    assert one["computed_w"] / 3 < one["power_w"] < 3 * one["computed_high_w"], name


@pytest.mark.parametrize("kind", DOCUMENTED)
@pytest.mark.parametrize("frequency_hz", SPOTS_HZ)
@pytest.mark.parametrize("family", FAMILIES)
def test_a_documented_power_of_a_family_is_the_limit_at_its_own_conditions(family, frequency_hz, kind):
    """Where it lies below what is computed, the contact's cautious limit is just the documented power."""
    asked = on_family(family, frequency_hz=frequency_hz)
    free = limits(cell(**asked, family=family))
    stated = limits(cell(**asked, family=family))["contact"][0] / 4
    packed = family_with(family, rating(stated, frequency_hz, kind))
    answer = cell(packed, **asked, family="own")
    (one,) = [one for one in answer["ratings"] if one["part"] == "contact"]

    assert limits(answer)["contact"][0] == pytest.approx(stated, rel=EXACT)
    assert {name: ends for name, ends in limits(answer).items() if name != "contact"} == {
        name: ends for name, ends in free.items() if name != "contact"
    }
    assert limits(answer)["contact"][1] == free["contact"][1]
    assert (one["role"], one["here_w"]) == ("decides", pytest.approx(stated, rel=EXACT))
    assert one["computed_w"] == pytest.approx(4 * stated, rel=EXACT)


@pytest.mark.parametrize("kind", DOCUMENTED)
@pytest.mark.parametrize("frequency_hz", SPOTS_HZ)
@pytest.mark.parametrize("cable", CABLES)
def test_a_documented_power_of_a_cable_is_the_limit_at_its_own_conditions(cable, frequency_hz, kind):
    """Where it lies below what is computed, the cable's cautious limit is just the documented power."""
    asked = {"family": "n", "frequency_hz": frequency_hz}
    asked["system_impedance_ohm"] = catalogue().cables[cable].impedance_ohm.value
    bare = cable_with(cable)
    stated = limits(cell(bare, **asked, cable="own"))["cable"][0] / 4
    answer = cell(cable_with(cable, rating(stated, frequency_hz, kind)), **asked, cable="own")
    (one,) = [one for one in answer["ratings"] if one["part"] == "cable"]

    assert limits(answer)["cable"][0] == pytest.approx(stated, rel=EXACT)
    assert limits(answer)["cable"][1] == limits(cell(bare, **asked, cable="own"))["cable"][1]
    assert limits(answer)["contact"][0] <= stated * (1 + EXACT)
    assert (one["role"], one["here_w"]) == ("decides", pytest.approx(stated, rel=EXACT))


def test_a_documented_power_holds_for_other_conditions_by_the_network():
    """Away from its conditions a documented power changes the limit by the same share, its margins with it."""
    stated = limits(cell(family="bnc", frequency_hz=30e6))["contact"][0] / 4
    packed = family_with("bnc", rating(stated, 30e6, "datasheet"))
    elsewhere = {"frequency_hz": 432e6, "ambient_temperature_c": 45.0, "vswr": 2.0, "altitude_m": 2000.0}
    free, held = cell(**elsewhere, family="bnc"), cell(packed, **elsewhere, family="own")

    assert limits(held)["contact"][0] == pytest.approx(limits(free)["contact"][0] / 4, rel=EXACT)
    assert held["ratings"][0]["here_w"] == pytest.approx(limits(held)["contact"][0], rel=EXACT)


def test_of_several_documented_powers_the_one_farthest_below_decides():
    """The documented power with the smallest share of what is computed decides; the others are no lower than it."""
    at_30, at_300 = (limits(cell(family="bnc", frequency_hz=f))["contact"][0] for f in (30e6, 300e6))
    powers = rating(at_30 / 2, 30e6, "handbook"), rating(at_300 / 3, 300e6, "datasheet"), rating(1, 30e6, "memory")
    packed = family_with("bnc", *powers)
    answer = cell(packed, family="own", frequency_hz=30e6)

    roles = [one["role"] for one in answer["ratings"] if one["part"] == "contact"]
    assert roles == ["higher", "decides", "not documented"]
    assert limits(answer)["contact"][0] == pytest.approx(at_30 / 3, rel=EXACT)


def matrix(packed, **asked):
    """A family's row of the matrix: its margins and whether a power from memory or habit is lower."""
    answer = ask("matrix", packed, powers_w=[5, 50, 500], **asked)
    fields = ("margin_db", "margin_high_db", "largest_power_w", "contact_allowed_w", "cable_allowed_w", "binding")
    assert len(answer["rating_below"]) == len(answer["families"]) == 1
    return [answer[name] for name in fields], answer["rating_below"][0]


@pytest.mark.parametrize("kind", sorted(UNDOCUMENTED))
@pytest.mark.parametrize("family", FAMILIES)
def test_a_power_of_a_family_from_memory_or_habit_only_marks(family, kind):
    """It changes no number, however low, and the family is marked where it lies below what is computed."""
    asked = on_family(family, frequency_hz=30e6)
    bare = family_with(family)
    computed = limits(cell(bare, **asked, family="own"))["contact"][0]

    for share, below in ((0.1, True), (10, False)):
        packed = family_with(family, rating(computed * share, 30e6, kind))
        numbers, marked = matrix(packed, families=["own"])
        expected, _ = matrix(bare, families=["own"])
        (one,) = [one for one in cell(packed, **asked, family="own")["ratings"] if one["part"] == "contact"]

        assert numbers == expected
        assert one["role"] == "not documented"
        assert one["here_w"] == pytest.approx(computed * share, rel=EXACT)
        # a figure of its cable may mark it as well
        assert marked == (below or matrix(bare, families=["own"])[1])


@pytest.mark.parametrize("kind", sorted(UNDOCUMENTED))
@pytest.mark.parametrize("cable", CABLES)
def test_a_power_of_a_cable_from_memory_or_habit_only_marks(cable, kind):
    """It changes no number, however low, and whatever family it is on is marked where it lies below."""
    asked = {"frequency_hz": 30e6, "system_impedance_ohm": catalogue().cables[cable].impedance_ohm.value}
    bare = cable_with(cable)
    computed = limits(cell(bare, **asked, family="bnc", cable="own"))["cable"][0]

    for share, below in ((0.1, True), (10, False)):
        packed = cable_with(cable, rating(computed * share, 30e6, kind))
        numbers, marked = matrix(packed, families=["bnc"], cable="own")
        expected, before = matrix(bare, families=["bnc"], cable="own")

        assert numbers == expected
        assert marked == (below or before)


@pytest.mark.parametrize("kind", DOCUMENTED)
def test_a_documented_power_above_what_is_computed_changes_nothing(kind):
    """It is listed as no lower than what decides, and neither number nor mark changes."""
    free = cell(family_with("bnc"), family="own", frequency_hz=30e6)
    packed = family_with("bnc", rating(2 * limits(free)["contact"][0], 30e6, kind))
    answer = cell(packed, family="own", frequency_hz=30e6)

    assert limits(answer) == limits(free)
    assert [one["role"] for one in answer["ratings"] if one["part"] == "contact"] == ["higher"]
    assert matrix(packed, families=["own"]) == matrix(family_with("bnc"), families=["own"])
