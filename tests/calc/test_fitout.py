"""Sheets of a line: every family in every weather, halves and quantities that add up, labels, and refusals."""

import math
import string

import pytest
from hypothesis import given
from hypothesis import strategies as st
from lines import CABLES, ELEMENTS, ask
from scenarios import FAMILIES, examples

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.checks import TIGHTENED_BY
from jointwise.calc.errors import InputError
from jointwise.calc.fitout.galvanic import metal_of
from jointwise.calc.fitout.pairs import attachment
from jointwise.calc.fitout.sealing import tape_length
from jointwise.calc.physics.gates import EXPOSURES, GATES, VIBRATIONS

CIRCUMSTANCES = {
    "family": set(FAMILIES),
    "tightened_by": set(TIGHTENED_BY),
    "coupling": {interface.coupling.value for interface in catalogue().interfaces.values()},
    "exposure": set(EXPOSURES),
    "vibration": set(VIBRATIONS),
    "gasket": {"yes", "no"},
    "sealed": {"yes", "no"},
    "cable": {"yes"},
    "thin": {"yes", "no"},
    "attachment": set(catalogue().attachments),
    "screen": set(catalogue().screens),
    "dielectric": set(catalogue().cable_dielectrics),
    "centre": {cable.centre_conductor.value for cable in catalogue().cables.values()},
}
CABLE_WORDS = {"torque", "family", "cable", "diameter"}
WORDS = {
    "tools": CABLE_WORDS,
    "cable": CABLE_WORDS,
    "mate": {"torque", "family"},
    "measure": {"impedance"},
}
STATION = [
    {"kind": "joint", "family": "uhf"},
    {"kind": "cable", "cable": "rg_58", "length_m": 3},
    {"kind": "part", "loss_db": 0.1, "name": "Arrester"},
    {"kind": "joint", "family": "uhf", "adapter_to": "n"},
    {"kind": "cable", "cable": "rg_213", "length_m": 28},
    {"kind": "joint", "family": "n", "exposure": "exposed", "name": "Top"},
]
N = {"kind": "joint", "family": "n"}
BAD = [  # request fields, field named, words of the sentence
    ({"elements": []}, "elements", "a list of 1 to 60 entries"),
    ({"elements": [N | {"family": "nn"}]}, "elements[0].family", '"nn"; allowed: one of uhf,'),
    ({"elements": [N, N | {"adapter_to": "nn"}]}, "elements[1].adapter_to", '"nn"; allowed: one of uhf,'),
    ({"elements": [{"kind": "cable", "cable": "rope", "length_m": 1}]}, "elements[0].cable", '"rope"; allowed: one of'),
    ({"elements": [N | {"condition": "bent"}]}, "elements[0].condition", '"bent"; allowed: one of new,'),
    ({"elements": [N], "date": "2026-02-30"}, "date", "allowed: a day as YYYY-MM-DD"),
    ({"elements": [N], "date": "20260225"}, "date", "allowed: a day as YYYY-MM-DD"),
    ({"elements": [N], "date": "1899-12-31"}, "date", "of the years 1900 to 2200"),
    ({"elements": [N], "band": None}, "band", "either a band or a spot frequency"),
    ({"elements": [N], "station": "x" * 61}, "station", "a text of at most 60 characters"),
]


def sheets(elements, **fields):
    """The sheets of a line on 2 m."""
    return ask("fitout", **{"elements": elements, "band": "2m"} | fields)


def joint(family, **fields):
    """The sheet of one joint alone."""
    return sheets([{"kind": "joint", "family": family}], **fields)["joints"][0]


@pytest.mark.parametrize("exposure", EXPOSURES)
@pytest.mark.parametrize("family", FAMILIES)
def test_a_sheet_has_the_torque_of_the_catalogue(family, exposure):
    """A sheet gives the catalogue's torque in two units, or says that there is none to set."""
    sheet, entry = joint(family, exposure=exposure), catalogue().interfaces[family]
    torque, ends = sheet["torque"], entry.coupling_torque_nm

    assert (torque["low_nm"], torque["high_nm"]) == (ends.low.value, ends.high.value)
    assert torque["high_in_lb"] == pytest.approx(ends.high.value * 8.8507, rel=1e-5)  # printed in unit tables
    assert torque["tightened"] == (entry.coupling.value == "threaded")
    wrenches = [tool for tool in sheet["tools"] if "torque wrench" in tool["text"].lower()]
    assert bool(wrenches) == ("wrench" in torque["tightened_by"])
    assert any(torque["figures"] in step["text"] for step in sheet["steps"]) or not torque["tightened"]


def test_a_uhf_plug_is_tightened_without_a_torque_wrench():
    """By hand or soft pliers: no word of its sheet sends anyone for a torque wrench, but the one that says not to."""
    sheet = joint("uhf")
    advice = [line["text"] for part in ("tools", "steps") for line in sheet[part]]
    advice += [check["text"] for check in sheet["inspection"]["checks"]]

    assert sheet["torque"]["sentence"].startswith("by hand or with soft pliers, not with a torque wrench")
    assert any("soft pliers" in text for text in advice)
    assert not any("torque wrench" in text.lower() for text in advice)


def test_a_knurled_nut_is_tightened_by_hand():
    """N is sold with a knurled and with a hexagonal nut: each has its own tool."""
    sheet = joint("n")

    assert sheet["torque"]["sentence"].endswith("; a knurled nut by hand")
    assert any("knurled one firmly by hand" in step["text"] for step in sheet["steps"])


@pytest.mark.parametrize("exposure", EXPOSURES)
@pytest.mark.parametrize("family", FAMILIES)
def test_the_sealing_brings_a_joint_to_its_weather(family, exposure):
    """Sealed as the sheet says, a joint stands its exposure, or is refused and the immersion gate says why."""
    sheet = joint(family, exposure=exposure)
    sealing = sheet["sealing"]
    sealed_to = EXPOSURES.index(sealing["stands_sealed"])

    assert sealing["refused"] == (sealed_to < EXPOSURES.index(exposure))
    assert sealing["refused"] == any(gate["id"] == "immersion" for gate in sheet["warnings"])
    assert not any(gate["id"] == "weather" for gate in sheet["warnings"])
    assert sealing["mated"] == catalogue().interfaces[family].sealing_mated.value
    assert bool(sealing["mated_meaning"]) == (sealing["mated"] != "none")


def test_a_dry_joint_is_not_taped_unless_wished():
    """Indoors no joint is taped of itself; when asked for, it is."""
    assert joint("n")["sealing"]["layers"] == []
    assert joint("n", added_sealing=True)["sealing"]["layers"]


def test_a_joint_in_the_open_is_taped_whatever_its_gasket():
    """In the open a gasketed joint has the same layers as one without, the sun cover last."""
    layers = [
        [layer["name"] for layer in joint(family, exposure="exposed")["sealing"]["layers"]] for family in ("n", "uhf")
    ]

    assert layers[0] == layers[1]
    assert "sun" in layers[0][-1]


def test_a_taped_joint_is_not_under_water():
    """Under water a joint that is not made for it is refused, and no tape is sold for it."""
    sealing = joint("n", exposure="immersed", added_sealing=True)["sealing"]

    assert sealing["refused"]
    assert sealing["layers"] == []
    assert "out of the water" in sealing["sentence"]


def test_tape_without_lap_covers_a_cylinder_once():
    """Without lap the tape's area is the cylinder's; half-lapped and twice over it is four times that."""
    area = math.pi * 0.02 * 0.1

    assert tape_length(0.02, 0.1, 0.025, 0.0, 1) * 0.025 == pytest.approx(area)
    assert tape_length(0.02, 0.1, 0.025, 0.5, 2) * 0.025 == pytest.approx(4 * area)


def test_the_halves_follow_the_line():
    """Cable ends get plugs, devices have jacks, and the adapter has what meets them."""
    halves = [[(half["half"], half["on"]) for half in sheet["halves"]] for sheet in sheets(STATION)["joints"]]

    assert halves == [
        [("jack", "the transmitter"), ("plug", "RG-58")],
        [("jack", "Arrester"), ("plug", "the adapter")],
        [("jack", "the adapter"), ("plug", "RG-213")],
        [("plug", "RG-213"), ("jack", "the antenna")],
    ]


def test_an_adapter_is_named_by_both_its_ends():
    """Both sheets of an adapter name it, and the list has it once."""
    result = sheets(STATION)

    assert [sheet["adapter"] for sheet in result["joints"]] == [
        "",
        "UHF plug (PL-259) to N jack",
        "UHF plug (PL-259) to N jack",
        "",
    ]
    assert [row["quantity"] for row in result["quantities"] if row["what"] == "Adapter"] == [1]


@examples(40)
@given(elements=st.lists(ELEMENTS, min_size=1, max_size=12), exposure=st.sampled_from(EXPOSURES))
def test_the_list_adds_up(elements, exposure):
    """Plugs, jacks, adapters, parts, cable and two-wire line with their spare, and tape are those of the sheets."""
    result = ask("fitout", elements=elements, exposure=exposure, frequency_hz=144e6)
    rows, joints = result["quantities"], result["joints"]
    count = {unit: sum(row["quantity"] for row in rows if row["unit"] == unit) for unit in ("pieces", "m")}
    kinds = [element["kind"] for element in elements]
    adapters = sum(element.get("adapter_to") is not None for element in elements)
    spare = 1 + catalogue().assumptions["spare_cable_share"].quantity.value
    cable = sum(element["length_m"] for element in elements if element["kind"] in {"cable", "wires"})
    tape = sum(layer["length_m"] for sheet in joints for layer in sheet["sealing"]["layers"])
    halves = sum(half["on"] != "the adapter" for sheet in joints for half in sheet["halves"])

    assert len(joints) == kinds.count("joint") + adapters
    assert halves == 2 * len(joints) - 2 * adapters
    parts = sum(kind not in {"joint", "cable", "wires"} for kind in kinds)
    assert count["pieces"] == halves + adapters + parts
    assert count["m"] == pytest.approx(cable * spare + tape)


@pytest.mark.parametrize("cable", CABLES)
@pytest.mark.parametrize("family", FAMILIES)
def test_every_cable_can_be_attached_to_every_family(family, cable):
    """The half on a cable has an attachment, steps on that cable, its bends, and a known conductor surface."""
    elements = [{"kind": "cable", "cable": cable, "length_m": 1}, {"kind": "joint", "family": family}]
    sheet, entry = sheets(elements)["joints"][0], catalogue().cables[cable]

    assert sheet["halves"][0]["attachment"] == attachment(catalogue().interfaces[family], entry).name
    assert sheet["halves"][0]["cable_diameter_m"] == entry.outer_diameter_m.value
    assert any(step["at"] == entry.name for step in sheet["steps"])
    assert sheet["bends"][0]["fixed_radius_m"] == entry.fixed_bend_radius_m.value
    assert "cable conductor" in [check["contact"] for check in sheet["galvanic"]]


@pytest.mark.parametrize(
    ("family", "cable", "usual"),
    [
        ("uhf", "rg_213", "braid_solder"),
        ("n", "rg_213", "clamp"),
        ("bnc", "rg_58", "crimp"),
        ("sma", "rg_402", "tube_solder"),
        ("7_16", "corrugated_7_8", "corrugated_clamp"),
        ("f", "rg_6", "compression"),
    ],
)
def test_the_attachment_suits_the_cable(family, cable, usual):
    """The attachment usual in the trade is chosen for a family and a cable."""
    assert attachment(catalogue().interfaces[family], catalogue().cables[cable]).id == usual


def test_metals_too_far_apart_are_named():
    """Gold on stainless steel, 0.50 V, is at the limit indoors and beyond it everywhere else."""
    passed = [joint("sma", exposure=exposure)["galvanic"][0]["passed"] for exposure in EXPOSURES]

    assert passed == [True, False, False, False]


@pytest.mark.parametrize("exposure", EXPOSURES)
def test_an_aluminium_foil_is_too_far_from_silver(exposure):
    """The foil of a low-loss cable on an N connector's silver is beyond the limit everywhere, and said so."""
    elements = [{"kind": "cable", "cable": "foam_10_mm", "length_m": 1}, {"kind": "joint", "family": "n"}]
    checks = sheets(elements, exposure=exposure)["joints"][0]["galvanic"]
    screen = next(check for check in checks if check["contact"] == "cable screen")

    assert (screen["one"], screen["difference_v"], screen["passed"]) == ("aluminium", 0.75, False)
    assert "seal the cable entry" in screen["sentence"]


def test_a_screen_of_unknown_metal_is_not_judged():
    """One braid is tinned, silvered or bare by the cable, so nothing is said of it."""
    elements = [{"kind": "cable", "cable": "rg_213", "length_m": 1}, {"kind": "joint", "family": "n"}]

    assert "cable screen" not in [check["contact"] for check in sheets(elements)["joints"][0]["galvanic"]]


def test_more_weather_and_shaking_never_lengthen_the_interval():
    """The inspection interval falls or stays from one exposure and one shaking to the next."""
    months = [
        [joint("n", exposure=exposure, vibration=shaking)["inspection"]["interval_months"] for shaking in VIBRATIONS]
        for exposure in EXPOSURES
    ]

    assert all(row == sorted(row, reverse=True) for row in months)
    assert all(list(column) == sorted(column, reverse=True) for column in zip(*months, strict=True))


@pytest.mark.parametrize(
    ("fitted", "vibration", "due"),
    [("2026-11-25", "none", "2028-11-25"), ("2026-11-30", "severe", "2027-02-28"), ("", "none", "")],
)
def test_the_next_inspection_has_a_date(fitted, vibration, due):
    """The next inspection falls on the same day of a later month, or on its 28th; without a date there is none."""
    assert joint("n", date=fitted, vibration=vibration)["inspection"]["due"] == due


@pytest.mark.parametrize(("yearly", "years"), [(0, None), (5, 100), (50, 10)])
def test_wear_is_durability_over_use(yearly, years):
    """A joint of 500 matings lasts 500 over the matings of a year; one never opened has no end."""
    assert joint("n", matings_per_year=yearly)["wear"]["lasts_years"] == years


def test_a_label_leads_back_to_its_own_numbers():
    """The label's fragment, read as a request, is the cell whose loss the label prints."""
    label = sheets(STATION, power_w=400, exposure="sheltered", date="2026-11-25")["joints"][3]["label"]
    texts = dict(pair.split("=") for pair in label["fragment"].split("&"))
    numbers = {"power_w", "cable_diameter_m"}
    request = {name: float(text) if name in numbers else {"true": True}.get(text, text) for name, text in texts.items()}

    assert label["fragment"].startswith("family=n&band=2m&power_w=400&")
    assert (label["name"], label["date"]) == ("Top", "2026-11-25")
    assert ask("cell", **request)["losses"]["expected_db"] == label["expected_loss_db"]
    assert label["expected_return_loss_db"] >= label["least_return_loss_db"]


def test_an_ordinary_joint_has_a_short_fragment():
    """Of an ordinary station the fragment has only the cell and the power."""
    assert joint("n")["label"]["fragment"] == "family=n&band=2m&power_w=100"


def test_the_first_measurement_is_that_of_the_line():
    """The loss to expect is the line's own into a matched load, twice that when shorted, and the bound is lower."""
    measurement = sheets(STATION)["measurement"]
    line = ask("line", elements=STATION, band="2m", load={"kind": "vswr", "vswr": 1})

    assert measurement["expected_loss_db"] == pytest.approx(line["loss_db"], abs=1e-9)
    assert measurement["shorted_return_loss_db"] == 2 * measurement["expected_loss_db"]
    assert measurement["expected_return_loss_db"] == pytest.approx(line["input"]["return_loss_db"], abs=1e-9)
    assert measurement["least_return_loss_db"] <= measurement["expected_return_loss_db"]


def test_bonding_is_for_lines_from_outdoors():
    """A line that stays indoors has no bonding; with one joint outdoors it has, and the local code comes first."""
    assert sheets([N])["bonding"] == []
    assert "code" in sheets(STATION)["bonding"][0]["text"]


def test_every_sheet_carries_the_cautions():
    """The cautions come with the sheets."""
    assert sheets([N])["cautions"] == ask("cell", family="n", band="2m")["cautions"]


@pytest.mark.parametrize("rule", catalogue().rules.values(), ids=catalogue().rules)
def test_every_rule_can_hold_and_be_filled_in(rule):
    """A rule asks only for circumstances and words there are, and needs only words its part has."""
    braces = {name for _, name, _, _ in string.Formatter().parse(rule.text) if name}

    assert all(set(allowed) <= CIRCUMSTANCES[name] and allowed for name, allowed in rule.only.items())
    assert braces <= WORDS.get(rule.part, set())
    assert rule.part != "tools" or not braces & {"cable", "diameter"} or {"cable", "attachment"} & set(rule.only)


def test_the_fitting_tables_cover_the_catalogue():
    """Every cable has one screen, every family its platings, every exposure its limit and interval."""
    tables = catalogue()
    named = [cable for screen in tables.screens.values() for cable in screen.cables]
    screened = {cable: named.count(cable) for cable in {*named, *CABLES}}
    plated = {family: int(family in tables.platings_sold) for family in {*tables.platings_sold, *FAMILIES}}

    assert screened == dict.fromkeys(CABLES, 1), "fitting.toml lists each cable once, under its `screen`"
    assert plated == dict.fromkeys(FAMILIES, 1), "galvanic.toml has a `plating_sold` for each family"
    assert set(tables.galvanic_limits) == set(tables.inspections) == set(EXPOSURES)
    for sold in tables.platings_sold.values():
        entry = tables.interfaces[sold.id]
        assert entry.outer_plating.value in sold.outer
        assert entry.inner_plating.value in sold.inner
        assert all(metal_of(name) for name in sold.inner + sold.outer)
    assert all(metal_of(screen.surface) for screen in tables.screens.values() if screen.surface)


def test_a_hard_gate_warns_on_the_sheet():
    """A family that may only receive is named so on its sheet; in receive it is not."""
    refusals = {gate.id for gate in GATES if gate.hard}

    assert "receive_only" in refusals & {gate["id"] for gate in joint("f", power_w=100)["warnings"]}
    assert not refusals & {gate["id"] for gate in joint("f", power_w=0)["warnings"]}


def test_a_near_relative_is_named_from_both_sides():
    """What meets badly is named on the sheets of both families."""
    named = {family: [entry["family"] for entry in joint(family)["near_relatives"]] for family in ("sma", "rp_sma")}

    assert "rp_sma" in named["sma"]
    assert "sma" in named["rp_sma"]


@pytest.mark.parametrize(("fields", "field", "words"), BAD)
def test_a_bad_request_is_refused(fields, field, words):
    """A bad field is refused by its path, with the value and what is allowed."""
    with pytest.raises(InputError) as caught:
        sheets(**fields)

    assert caught.value.field == field
    assert words in str(caught.value)
