"""Packs: laid over the catalogue, marked, bound in every answer; refused whole with path and reason."""

import json
import re
from contextlib import suppress
from pathlib import Path

import msgspec
import pytest
from examples import EXAMPLES
from hypothesis import given
from hypothesis import strategies as st
from packs import HEAD, LIMIT, ask, built_in, edition, value
from scenarios import FAMILIES, STATIONS, examples

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.merge import edition_of
from jointwise.calc.catalogue.pack import MOST_PACK_BYTES, Document, Pack
from jointwise.calc.operations import OPERATIONS, InputError, call


def family(**changed):
    """A pack's own family: BNC with another id and name."""
    return built_in("interfaces", "bnc", id="club_bnc", name="Club bayonet", **changed)


def clad(*through):
    """A pack's own cable: RG-6 with other figures that its law goes through, of a frequency and a loss each."""
    fitted = [figure for figure in built_in("cables", "rg_6")["attenuation"] if not figure["through"]]
    low = [fitted[0] | {"frequency_hz": f, "db_per_m": loss, "fit": False, "through": True} for f, loss in through]
    return built_in("cables", "rg_6", id="own", name="Own", attenuation=low + fitted)


def band(**edges):
    """A pack's own band in Region 1."""
    usual = {"low_hz": 1e6, "high_hz": 2e6, "source": "sheet", "kind": "memory"}
    return {"id": "own", "name": "Own band", "regions": {"1": usual | edges}}


def adapters(joins=("n",), **changed):
    """A pack's adapters between Hn and others, in the place of the built-in ones, with a data sheet's figures."""
    figures = {"to": "n", "up_to_frequency_hz": 1e9, "loss_db": 0.1, "source": "sheet", "kind": "datasheet"} | changed
    return {"id": "hn", "joins": list(joins), "source": "sheet", "kind": "datasheet", "figures": [figures]}


HN = {"overrides": {"adapters": ["hn"]}}
POWER = "interfaces[0].average_power[0]"
RATING = {
    "power_w": 100,
    "frequency_hz": 1e9,
    "ambient_temperature_c": 40,
    "contact_temperature_c": 85,
    "altitude_m": 0,
    "source": "sheet",
    "kind": "datasheet",
}


def built(**changed):
    """A pack's own cable: RG-58 with other layers, or another temperature of its only power."""
    rg_58 = built_in("cables", "rg_58")
    power = {name: changed.pop(name) for name in list(changed) if name in rg_58["power"][0]}
    return rg_58 | {
        "id": "own",
        "name": "Own",
        "build": rg_58["build"] | changed,
        "power": [rg_58["power"][0] | power],
    }


REFUSED = [
    ({"extra": 1}, "extra", "only the fields"),
    ({"__proto__": {}}, "__proto__", "only the fields"),
    ({"name": "=1+1"}, "name", "begins with none of"),
    (
        {"sources": [{"id": "a", "title": "A", "seen": "read", "address": "javascript:alert(1)"}]},
        "sources[0].address",
        "https",
    ),
    ({"sources": [{"id": "memory", "title": "A", "seen": "read"}]}, "sources[0].id", "no other source"),
    ({"interfaces": [built_in("interfaces", "bnc")]}, "interfaces[0].id", "overrides.interfaces"),
    ({"interfaces": [family() | {"id": "__proto__"}]}, "interfaces[0].id", "small letters"),
    ({"interfaces": [family() | {"id": "constructor"}]}, "interfaces[0].id", "small letters"),
    ({"interfaces": [family() | {"name": "BNC"}]}, "interfaces[0].name", "bnc has it"),
    ({"interfaces": [family(), family()]}, "interfaces[1].id", "given once"),
    ({"interfaces": [family(inner_diameter_m=value(0))]}, "interfaces[0].inner_diameter_m.value", "1e-05 to 0.2 m"),
    (
        {"interfaces": [family(inner_diameter_m=value(6.4e-3))]},
        "interfaces[0].outer_diameter_m.value",
        "times inner_diameter_m, 0.0064",
    ),
    ({"interfaces": [family(bead_length_m=value(0.5))]}, "interfaces[0].bead_length_m.value", "section_length_m"),
    ({"interfaces": [family(vibration=value("wild"))]}, "interfaces[0].vibration.value", "none, vehicle, severe"),
    ({"interfaces": [family(sealing_mated=value("IP99"))]}, "interfaces[0].sealing_mated.value", "IP67"),
    ({"interfaces": [family(dielectric=value("copper"))]}, "interfaces[0].dielectric.value", "ptfe"),
    ({"interfaces": [family(outer_plating=value("ptfe"))]}, "interfaces[0].outer_plating.value", "silver"),
    ({"interfaces": [family(constant_impedance=False)]}, "interfaces[0].constant_impedance", "a section"),
    ({"interfaces": [family(receive_only=True)]}, "interfaces[0].receive_only_reason", "a reason"),
    (
        {"interfaces": [family(coupling=value("x", source="nowhere"))]},
        "interfaces[0].coupling.source",
        "a source of the pack",
    ),
    (
        {"interfaces": [family(rated_frequency_hz={"low": value(9e9), "high": value(4e9)})]},
        "interfaces[0].rated_frequency_hz.low.value",
        "high end",
    ),
    (
        {"cables": [built_in("cables", "rg_58", id="own", name="Own", dielectric="jelly")]},
        "cables[0].dielectric",
        "solid_pe",
    ),
    ({"interfaces": [family(customary_cable=value("rope"))]}, "interfaces[0].customary_cable.value", "one of rg_174"),
    (
        {"interfaces": [family(generous_dielectric=value("copper"))]},
        "interfaces[0].generous_dielectric.value",
        "ptfe",
    ),
    ({"interfaces": [family(average_power=[RATING | {"cable": "rope"}])]}, f"{POWER}.cable", "one of rg_174"),
    ({"interfaces": [family(average_power=[RATING | {"power_w": 0}])]}, f"{POWER}.power_w", "0.001 to 1e+06"),
    ({"interfaces": [family(average_power=[RATING | {"source": "nowhere"}])]}, f"{POWER}.source", "a source of"),
    (
        {"interfaces": [family(average_power=[RATING | {"contact_temperature_c": 40}])]},
        f"{POWER}.contact_temperature_c",
        "above the air, 40 °C",
    ),
    ({"interfaces": [family(average_power=RATING)]}, "interfaces[0].average_power", "a list"),
    (
        {"cables": [built(conductor_temperature_c=40)]},
        "cables[0].power[0].conductor_temperature_c",
        "above the air, 40 °C",
    ),
    *(
        ({"cables": [built(**{layer: changed})]}, f"cables[0].build.{layer}.value", allowed)
        for layer, changed, allowed in [
            ("inner_diameter_m", value(3e-3), "less than dielectric_diameter_m, 0.00295"),
            ("dielectric_diameter_m", value(3.6e-3), "no more than screen_diameter_m, 0.00355"),
            ("screen_diameter_m", value(5e-3), "no more than the cable's outer_diameter_m, 0.00495"),
            ("inner_area_m2", value(0), "1e-09 to 0.01 m²"),
            ("inner_metal", value("ptfe_foam"), "one of "),
            ("screen_metal", value("unobtainium"), "copper"),
            ("jacket_material", value("velvet"), "pvc"),
        ]
    ),
    ({"cables": [clad((60e6, 0.05))]}, "cables[0].attenuation", "below those fitted"),
    ({"cables": [clad((1e6, 0.001))]}, "cables[0].attenuation", "more slowly than its root"),
    ({"cables": [clad((2e6, 0.03), (1e6, 0.0285))]}, "cables[0].attenuation", "by frequency"),
    ({"cables": [clad((1e6, 0.03), (1e6, 0.03))]}, "cables[0].attenuation", "by frequency"),
    ({"bands": [band(low_hz=3e6)]}, "bands[0].regions.1.low_hz", "less than high_hz"),
    ({"bands": [band(low_hz=1)]}, "bands[0].regions", "low_hz"),
    ({"bands": [{"id": "own", "name": "Own", "regions": {"4": {}}}]}, "bands[0].regions", "1, 2, 3"),
    ({"modes": [{"id": "own", "name": "Own", "duty_factor": value(2)}]}, "modes[0].duty_factor.value", "0.001 to 1"),
    (
        {"modes": [{"id": "own", "name": "Own", "duty_factor": value(1), "on_time_s": value(5)}]},
        "modes[0].off_time_s",
        "a time",
    ),
    (
        {"matings": [built_in("matings", next(iter(catalogue().matings)), id="own", plug="own")]},
        "matings[0].plug",
        "one of",
    ),
    ({"adapters": [{"id": "own", "joins": ["n"], "source": "sheet", "kind": "memory"}]}, "adapters[0].id", "one of"),
    (HN | {"adapters": [adapters(joins=["rope"])]}, "adapters[0].joins[0]", "one of"),
    (HN | {"adapters": [adapters(to="sma")]}, "adapters[0].figures[0].to", "one of n"),
    (HN | {"adapters": [adapters(return_loss_db=61)]}, "adapters[0].figures[0].return_loss_db", "0 to 60"),
    ({"overrides": {"bands": ["own"]}}, "overrides.bands[0]", "a built-in entry"),
    ({"overrides": {"bands": ["20m"]}}, "overrides.bands[0]", "bands of this pack"),
    ({"default_powers_w": [float("nan")]}, "default_powers_w[0]", "0 to 100000"),
    ({"house_limits": [LIMIT | {"power_w": -1}]}, "house_limits[0].power_w", "0 to 100000"),
    ({"house_limits": [LIMIT | {"reason": ""}]}, "house_limits[0].reason", "1 to 300"),
    ({"house_limits": [LIMIT | {"source": ""}]}, "house_limits[0].source", "1 to 100"),
    ({"house_limits": [LIMIT | {"bands": ["own"]}]}, "house_limits[0].bands[0]", "one of"),
    ({"house_limits": [LIMIT, LIMIT]}, "house_limits[1].id", "given once"),
]


@pytest.mark.parametrize(
    ("fields", "path", "allowed"), REFUSED, ids=[f"{path} {at}" for at, (_, path, _) in enumerate(REFUSED)]
)
def test_a_bad_pack_is_refused_with_its_path(fields, path, allowed):
    """A pack with one bad field is refused by that field's path behind its label, with what is allowed."""
    with pytest.raises(InputError) as refusal:
        edition(**fields)

    assert refusal.value.field == f"0.json: {path}"
    assert allowed in refusal.value.allowed


def test_a_data_sheet_s_figures_stand_beside_an_adapter_of_the_kit():
    """What is stated for an adapter is told with it, and what is computed for its joints stays as it was."""
    family = built_in("interfaces", "n", id="own", name="Own", order=500)
    sold = adapters() | {"id": "own"}
    plain = edition(interfaces=[family], adapters=[sold | {"figures": []}])
    stated = edition(interfaces=[family], adapters=[sold | {"figures": [sold["figures"][0] | {"return_loss_db": 26}]}])
    ports = [{"family": name, "gender": "jack", "highest_frequency_hz": 1e9} for name in ("own", "n")]
    told, computed = ask("kit", stated, ports=ports), ask("kit", plain, ports=ports)

    assert [one["stated"] for one in told["adapters"]] == ["Stated: 0.1 dB loss and 26 dB return loss to 1 GHz."]
    assert told["total_loss_db"] == computed["total_loss_db"]


def test_a_family_and_a_cable_are_given_as_a_pack_holds_them():
    """What the catalogue gives of a built-in entry can stand in a pack as it is."""
    given = ask("catalogue", entry="bnc", cable="rg_58")
    named = {"id": "own", "name": "Own"}
    packed = edition(interfaces=[given["entry"] | named], cables=[given["cable"] | named])

    assert given["cable"] == json.loads(json.dumps(built_in("cables", "rg_58")))
    laid = ask("catalogue", packed, cable="own")["cable"]
    assert [one["db_per_m"] for one in laid["attenuation"]] == [
        one["db_per_m"] for one in given["cable"]["attenuation"]
    ]


def test_a_cable_needs_no_power_and_no_build():
    """Powers are evidence, so a cable may have none; what it is built of may be left out too."""
    packed = edition(cables=[built_in("cables", "rg_58", id="own", name="Own", power=[], build=None)])

    assert ask("cell", packed, family="bnc", band="2m", cable="own")["margin_db"] is not None


@pytest.mark.parametrize(
    "text",
    [b"", b"[]", b"{", b"null", b"\xff", b"[" * 10_000, b'{"id": "a", "id": "b"}', b" " * 50_000_000],
    ids=["empty", "list", "cut", "null", "bytes", "deep", "twice", "50 MB"],
)
def test_what_is_no_pack_is_refused(text):
    """A text that is no pack, is nested deeper than any, or is longer than a pack may be gets one sentence."""
    with pytest.raises(InputError, match=r"^file: (pack|id) is .*; allowed: "):
        edition_of([Document("file", text)])


def test_a_long_pack_is_refused_unread():
    """A text beyond the greatest length is refused by its length, though it is no JSON at all."""
    with pytest.raises(InputError, match=f"up to {MOST_PACK_BYTES} bytes"):
        edition_of([Document("", b"{" * (MOST_PACK_BYTES + 1))])


HIDDEN = ["\x1b[2J", "\x07", "\n", "\x9b2J", "\u202e", "\u2066", "\u200f", "\ufeff", "\u2028"]


@pytest.mark.parametrize("hidden", HIDDEN, ids=ascii)
def test_what_steers_a_terminal_is_refused_in_every_text(hidden):
    """A text of a pack, of whatever field, that holds a control character or a mark of direction is refused by name.

    The sentence itself holds none either.
    """
    text = f"Old{hidden}panel"
    source = {"id": "a", "title": "A", "seen": "read"}
    for fields, path in (
        ({"name": text}, "name"),
        ({"version": text}, "version"),
        ({"note": text}, "note"),
        ({"sources": [source | {"address": f"https://club.example/{text}"}]}, "sources[0].address"),
        ({"house_limits": [LIMIT | {"reason": text}]}, "house_limits[0].reason"),
        ({"interfaces": [family(summary=text)]}, "interfaces[0].summary"),
        ({"modes": [{"id": "own", "name": text, "duty_factor": value(0.3)}]}, "modes[0].name"),
        ({"modes": [{"id": "own", "name": "Own", "duty_factor": value(0.3, text)}]}, "modes[0].duty_factor.source"),
        ({text: 1}, None),
    ):
        with pytest.raises(InputError) as refusal:
            edition(**fields)

        assert refusal.value.field == f"0.json: {path}" or path is None
        assert str(refusal.value).isprintable()


def test_signs_of_the_trade_and_other_letters_stay():
    """What is seen as it is written, a blank that does not break too, is no hidden character."""
    assert edition(note="50\u00a0Ω ±5 % — « Gruß », 日本, \U0001f4e1").tables.packs[0].note.startswith("50")


TWICE = [
    (b'{"id": "club", ', b'"name": "Other", ', "name"),
    (b'{"id": "club", ', b'"sources": [], ', "sources"),
    (b'"title": "Invented sheet", ', b'"title": "Other", ', "title"),
]


@pytest.mark.parametrize(("before", "again", "field"), TWICE)
def test_a_field_given_twice_is_refused(before, again, field):
    """A pack that is good but for a field given twice is refused by the field, at the top and inside a list."""
    text = json.dumps(HEAD).encode()
    assert before in text

    with pytest.raises(InputError, match=rf"^file: {field} is .*; allowed: a field given once, not twice"):
        edition_of([Document("file", text.replace(before, before + again))])


@pytest.mark.parametrize(
    ("other", "path"),
    [
        ({"id": "club"}, "id"),
        ({"house_limits": [LIMIT]}, "house_limits[0].id"),
        ({"default_powers_w": [5]}, "default_powers_w"),
        ({"interfaces": [family()]}, "interfaces[0].id"),
    ],
)
def test_packs_in_conflict_are_refused(other, path):
    """A second pack with an id, a limit, powers or a family that the first has is refused by the field's path."""
    first = HEAD | {"house_limits": [LIMIT], "default_powers_w": [10], "interfaces": [family()]}

    with pytest.raises(InputError, match=re.escape(f"1.json: {path} is ")):
        edition(first, HEAD | {"id": "other"} | other)


@pytest.mark.parametrize("operation", OPERATIONS)
def test_an_empty_pack_changes_nothing(operation):
    """With a pack of no entries every operation answers the same bytes, but for the pack's name in the catalogue."""
    body = json.dumps(EXAMPLES[operation]).encode()
    with_pack = json.loads(call(operation, body, edition()))
    if operation == "catalogue":
        assert [pack["name"] for pack in with_pack["packs"]] == [HEAD["name"]]
        with_pack["packs"] = []

    assert with_pack == json.loads(call(operation, body))


ADDED = edition(
    interfaces=[family(order=500)],
    cables=[built_in("cables", "rg_58", id="own_cable", name="Own cable", order=500)],
    bands=[band(low_hz=4.9e10, high_hz=5e10)],
    modes=[{"id": "own", "name": "Own mode", "duty_factor": value(0.3)}],
)


@examples(20)
@given(station=STATIONS)
def test_a_pack_that_overrides_nothing_changes_no_answer(station):
    """Beside a pack's own entries every cell of the built-in families and bands is what it was."""
    asked = {"families": FAMILIES, "bands": ["20m", "2m", "3cm"], **station}

    assert ask("matrix", ADDED, **asked) == ask("matrix", **asked)


def about(operation, interface, cable):
    """The example of an operation with one family in the place of all it names, and one cable."""
    example = EXAMPLES[operation]
    named = {"families": FAMILIES[:1]} if "families" in OPERATIONS[operation].request.__struct_fields__ else {}
    return exchanged(example | named, dict.fromkeys(FAMILIES, interface) | dict.fromkeys(catalogue().cables, cable))


def exchanged(found, names):
    """Plain data with each text that is a name exchanged for another."""
    if isinstance(found, dict):
        return {key: exchanged(one, names) for key, one in found.items()}
    if isinstance(found, list):
        return [exchanged(one, names) for one in found]
    return names.get(found, found) if isinstance(found, str) else found


@pytest.mark.parametrize("operation", [name for name in OPERATIONS if name != "catalogue"])
@pytest.mark.parametrize("original", FAMILIES)
def test_a_copied_family_answers_as_the_original(operation, original):
    """A pack's family with the values of a built-in one is answered by every operation, with the same numbers."""
    copied = built_in("interfaces", original, id="copy", name="Copy", order=500)
    barrel = {"id": "copy", "joins": ["copy"], "source": "sheet", "kind": "memory"}
    packed = edition(
        interfaces=[copied],
        adapters=[barrel],
        cables=[built_in("cables", "rg_58", id="copied", name="Copied", order=500)],
    )
    answered = ask(operation, packed, **about(operation, "copy", "copied"))
    expected = ask(operation, **about(operation, original, "rg_58"))

    msgspec.convert(answered, OPERATIONS[operation].result)
    for name in ("margin_db", "largest_power_w", "loss_db", "delivered_w", "total_loss_db", "undecided"):
        assert answered.get(name) == expected.get(name), name


def test_an_override_marks_just_what_it_changed():
    """Of an overridden family the changed value carries the pack into the derivation, the rest its own sources."""
    ends = {"low": value(300), "high": built_in("interfaces", "bnc")["working_voltage_rms_v"]["high"]}
    packed = edition(
        overrides={"interfaces": ["bnc"]}, interfaces=[built_in("interfaces", "bnc", working_voltage_rms_v=ends)]
    )
    answer = ask("cell", packed, family="bnc", band="20m")
    inputs = [one for limit in answer["limits"] for step in limit["steps"] for one in step["inputs"]]

    assert {(one["source"], one["value"]) for one in inputs if "." in one["source"]} == {("club.sheet", 300)}
    assert answer["family"]["pack"] == "Invented club"
    assert ask("catalogue", packed)["packs"][0]["changed"] == ["interfaces/bnc.working_voltage_rms_v.low"]
    told = msgspec.convert(ask("catalogue", packed), OPERATIONS["catalogue"].result)
    assert "club.sheet" in {source.id for source in told.sources}


def test_a_built_in_source_of_a_new_value_is_marked_too():
    """A pack's value that names a built-in source is still told from the built-in values."""
    packed = edition(modes=[{"id": "own", "name": "Own", "duty_factor": value(0.3, "memory", "memory")}])

    mode = next(mode for mode in ask("catalogue", packed)["modes"] if mode["id"] == "own")
    assert mode["duty_factor"]["source"] == "club.memory"


def test_the_edition_ends_with_the_call():
    """A call with packs leaves nothing behind for the calls after it."""
    before = call("matrix", b"{}")
    ask("matrix", edition(default_powers_w=[7], house_limits=[LIMIT]))

    assert call("matrix", b"{}") == before


RULED = edition(house_limits=[LIMIT | {"interfaces": ["bnc"], "bands": ["20m"]}])


def test_a_house_limit_binds_in_the_matrix():
    """On its band and family a power above the limit is refused, the largest power stops there; elsewhere nothing."""
    asked = {"families": ["bnc", "n"], "bands": ["20m", "2m"], "powers_w": [50, 51]}
    answer, free = ask("matrix", RULED, **asked), ask("matrix", **asked)
    refused = [[[at >= 0 for at in cell] for cell in row] for row in answer["refused_by"]]

    assert refused == [[[False, True], [False, False]], [[False, False], [False, False]]]
    assert answer["gates"][answer["refused_by"][0][0][1]]["id"] == "house"
    assert "Old panel." in answer["families"][0]["gate_reasons"]["house"]
    assert answer["largest_power_w"][0] == [50, free["largest_power_w"][0][1]]


def test_a_house_limit_binds_in_a_cell():
    """A cell above the limit is refused in the pack's words and still tells the largest power."""
    answer = ask("cell", RULED, family="bnc", band="20m", power_w=51)

    assert (answer["refused_by"], answer["margin_db"], answer["largest_power_w"]) == ("house", None, 50)
    assert "House limit of Invented club on 20 m: at most 50 W PEP. Old panel." in answer["verdict"]
    assert ask("cell", RULED, family="bnc", band="2m", power_w=51)["refused_by"] is None


def test_a_house_limit_binds_in_a_line():
    """A line through the family is refused above the limit, and below it has no larger power than it."""
    asked = {"elements": [{"kind": "joint", "family": "bnc"}], "load": {"kind": "vswr", "vswr": 1.5}, "band": "20m"}
    over, under = ask("line", RULED, **asked, power_w=51), ask("line", RULED, **asked, power_w=50)
    bands = {one["column"]["id"]: one for one in under["bands"]}

    assert (over["parts"][0]["refused_by"], over["margin_db"]) == ("house", None)
    assert (under["largest_power_w"], bands["20m"]["largest_power_w"]) == (50, 50)
    assert bands["2m"]["largest_power_w"] > 50


def test_a_house_limit_binds_in_a_choice_and_a_kit():
    """Above the limit the family is not among those that may be fitted, and a kit can't join through it."""
    rejected = next(one for one in ask("choose", RULED, bands=["20m"], power_w=51)["choices"] if one["family"] == "bnc")
    asked = [{"family": "bnc", "gender": "plug", "highest_frequency_hz": 14e6, "power_w": 51}] * 2

    assert [one["demand"] for one in rejected["rejections"]] == ["house limit"]
    assert "Old panel." in ask("kit", edition(house_limits=[LIMIT]), ports=asked)["pairs"][0]["sentence"]


def test_default_powers_hold_where_none_are_asked_for():
    """A matrix that asks for no powers has the pack's; one that asks has its own."""
    packed = edition(default_powers_w=[10, 100])

    assert ask("matrix", packed)["powers_w"] == [10, 100]
    assert ask("matrix", packed, powers_w=[5])["powers_w"] == [5]


def test_the_readme_s_pack_works():
    """The example of the catalogue's README is a valid pack that does what the text around it says."""
    readme = (Path(__file__).parents[2] / "calc/catalogue/README.md").read_text()
    text = re.search(r"```json\n(.*?)```", readme, re.DOTALL).group(1)
    packed = edition_of([Document("README.md", text.encode())])

    assert packed.tables.packs[0].changed == ["modes/cw", "modes/cw.duty_factor", "default_powers_w"]
    assert ask("cell", packed, family="bnc", band="20m", power_w=51)["refused_by"] == "house"


@given(
    garbage=st.recursive(
        st.none() | st.booleans() | st.floats() | st.text(max_size=5),
        lambda inner: (
            st.lists(inner, max_size=3)
            | st.dictionaries(st.sampled_from(sorted(Pack.__struct_fields__)), inner, max_size=4)
        ),
        max_leaves=8,
    )
)
@examples(150)
def test_garbage_is_refused_in_one_sentence(garbage):
    """Whatever stands in a pack's fields, it is taken or refused by an InputError, never another."""
    text = json.dumps(HEAD | garbage if isinstance(garbage, dict) else garbage).encode()
    with suppress(InputError):
        edition_of([Document("file", text)])


@pytest.mark.parametrize(
    ("published", "asked", "guaranteed"),
    [
        (value(0.2, kind="standard"), {"frequency_hz": 3e9}, 0.2),
        (value(0.2, kind="standard"), {"frequency_hz": 14e6}, 0.2),
        (value(0.2, kind="standard"), {"frequency_hz": 3.001e9}, None),
        (value(0.2, kind="standard"), {"frequency_hz": 14e6, "condition": "worn"}, None),
        (value(0.01, kind="standard"), {"frequency_hz": 3e9}, None),
        (value(0.2, kind="datasheet"), {"frequency_hz": 3e9}, None),
    ],
)
def test_a_standard_guarantees_a_loss_up_to_its_frequency(published, asked, guaranteed):
    """A standard's loss is guaranteed up to its frequency, to a new pair of which no more is expected; else none is."""
    own = edition(interfaces=[family(insertion_loss={"loss_db": published, "at_frequency_hz": 3e9})])

    losses = ask("cell", own, family="club_bnc", **asked)["losses"]

    assert losses["guaranteed_db"] == guaranteed
    assert losses["published_db"] == published["value"]
