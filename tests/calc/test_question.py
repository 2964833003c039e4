"""A question typed in words: what is read of it, what is asked back, and that its answer is the cell's."""

import json
import random
import re

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.operations import InputError, call
from jointwise.calc.physics.margin_words import margin_step
from jointwise.calc.question.numerals import numbers_of
from jointwise.calc.question.phrases import squashed

SO239 = {"family": "uhf", "power_w": 1000, "mode": "ft8", "band": "10m", "vswr": 3}

READ = [
    ("Will the SO-239 on my tuner take 1 kW FT8 on 10 m at SWR 3?", SO239),
    ("so239 1kw ft8 10m swr 3", SO239),
    ("SWR3 10M FT8 1KW SO239", SO239),
    ("pl259, 1000 watts, ft-8, 10 metres, 3:1", SO239),
    ("PL-259 / SO-239 with 1 kW FT8 on 10 m, SWR 3", SO239),
    ("uhf 1.0 kW ft8 10-meter vswr of 3.0", SO239),
    ("so-239@10m ft8/1kw swr=3:1", SO239),
    ("Can I run a kilowatt of FT8 into an SO239 on ten metres with an SWR of three to one?", SO239),
    ("n 2m 100w", {"family": "n", "band": "2m", "power_w": 100}),
    ("type n 70cm 50 W FM", {"family": "n", "band": "70cm", "power_w": 50, "mode": "fm"}),
    ("N-type 70 cm 50w fm", {"family": "n", "band": "70cm", "power_w": 50, "mode": "fm"}),
    ("BNC plug 5 W cw 40m", {"family": "bnc", "power_w": 5, "mode": "cw", "band": "40m"}),
    ("bnc 75 ohm 6m 10w", {"family": "bnc_75", "band": "6m", "power_w": 10}),
    ("75 ohm bnc 6m 10w", {"family": "bnc_75", "band": "6m", "power_w": 10}),
    ("7/16 23cm 500w", {"family": "7_16", "band": "23cm", "power_w": 500}),
    ("7-16 DIN 23 cm 500 w", {"family": "7_16", "band": "23cm", "power_w": 500}),
    ("din 7/16 23 cms 500 watt", {"family": "7_16", "band": "23cm", "power_w": 500}),
    ("4.3-10 13cm 20w", {"family": "4_3_10", "band": "13cm", "power_w": 20}),
    ("4,3/10 13cm 20w", {"family": "4_3_10", "band": "13cm", "power_w": 20}),
    ("sma 3 cm 5 w", {"family": "sma", "band": "3cm", "power_w": 5}),
    ("RP SMA 13cm 0.1 watts", {"family": "rp_sma", "band": "13cm", "power_w": 0.1}),
    ("tnc 500 mW 9cm", {"family": "tnc", "power_w": 0.5, "band": "9cm"}),
    ("threaded bnc 20m 1k", {"family": "tnc", "band": "20m", "power_w": 1000}),
    ("c 100 w 15m", {"family": "c", "power_w": 100, "band": "15m"}),
    ("F connector 100w 70cm", {"family": "f", "power_w": 100, "band": "70cm"}),
    ("mini-uhf 25w 2 metres", {"family": "mini_uhf", "power_w": 25, "band": "2m"}),
    ("mini UHF 25w two metres", {"family": "mini_uhf", "power_w": 25, "band": "2m"}),
    ("3.5 mm 3cm 1w", {"family": "3_5mm", "band": "3cm", "power_w": 1}),
    ("n 14.2 MHz 400w", {"family": "n", "frequency_hz": 14.2e6, "power_w": 400}),
    ("n 28074 kHz 400w", {"family": "n", "frequency_hz": 28.074e6, "power_w": 400}),
    ("n 14.175 mhz 400w", {"family": "n", "frequency_hz": 14.175e6, "power_w": 400}),
    ("n 14,2 MHz 400w", {"family": "n", "frequency_hz": 14.2e6, "power_w": 400}),
    ("n 14074k 400w", {"family": "n", "frequency_hz": 14.074e6, "power_w": 400}),
    ("n 1.296 GHz 10 w", {"family": "n", "frequency_hz": 1.296e9, "power_w": 10}),
    ("n 14 074 kHz 400w", {"family": "n", "frequency_hz": 14.074e6, "power_w": 400}),
    ("n 50 megs 400w", {"family": "n", "frequency_hz": 50e6, "power_w": 400}),
    ("bnc 20m 1,5 kW", {"family": "bnc", "band": "20m", "power_w": 1500}),
    ("bnc 20m .5 kw", {"family": "bnc", "band": "20m", "power_w": 500}),
    ("bnc 20m 1'500 W", {"family": "bnc", "band": "20m", "power_w": 1500}),
    ("bnc 20m half a kilowatt", {"family": "bnc", "band": "20m", "power_w": 500}),
    ("bnc on twenty metres, a hundred watts", {"family": "bnc", "band": "20m", "power_w": 100}),
    ("bnc 20m fifteen hundred watts", {"family": "bnc", "band": "20m", "power_w": 1500}),
    ("bnc 20m 50 dBm", {"family": "bnc", "band": "20m", "power_w": 100}),
    ("bnc 20m vswr 1,5", {"family": "bnc", "band": "20m", "vswr": 1.5}),
    ("bnc 20m 2:1", {"family": "bnc", "band": "20m", "vswr": 2}),
    ("bnc 20m 1:2", {"family": "bnc", "band": "20m", "vswr": 2}),
    ("bnc 20m 2 to 1", {"family": "bnc", "band": "20m", "vswr": 2}),
    ("bnc 20m 2.5 swr", {"family": "bnc", "band": "20m", "vswr": 2.5}),
    ("bnc 20m s.w.r. 2", {"family": "bnc", "band": "20m", "vswr": 2}),
    ("swr 2 100 w n 2 m", {"vswr": 2, "power_w": 100, "family": "n", "band": "2m"}),
    ("swr 3, 10m n", {"vswr": 3, "band": "10m", "family": "n"}),
    ("n 20m key down", {"family": "n", "band": "20m", "mode": "carrier"}),
    ("n 20m phone", {"family": "n", "band": "20m", "mode": "ssb"}),
    ("n 20m compressed ssb", {"family": "n", "band": "20m", "mode": "ssb_processed"}),
    ("n 20m RTTY", {"family": "n", "band": "20m", "mode": "rtty"}),
    ("I am on AM with N on 80 m", {"family": "n", "band": "80m", "mode": "am"}),
    ("n top band", {"family": "n", "band": "160m"}),
    ("n 20m in the rain", {"family": "n", "band": "20m", "exposure": "exposed"}),
    ("n 20m exposed", {"family": "n", "band": "20m", "exposure": "exposed"}),
    ("n 20m indoors", {"family": "n", "band": "20m", "exposure": "indoor"}),
    ("n 20m under water", {"family": "n", "band": "20m", "exposure": "immersed"}),
    ("n 20m on the mast", {"family": "n", "band": "20m", "exposure": "exposed", "vibration": "vehicle"}),
    ("n 2m mobile", {"family": "n", "band": "2m", "exposure": "indoor", "vibration": "vehicle"}),
    ("n 2m mobile outside", {"family": "n", "band": "2m", "exposure": "exposed", "vibration": "vehicle"}),
    ("n 2m outside in the car", {"family": "n", "band": "2m", "exposure": "exposed", "vibration": "vehicle"}),
    ("n 20m taped outdoors", {"family": "n", "band": "20m", "added_sealing": True, "exposure": "exposed"}),
    ("n 20m outdoors, not sealed", {"family": "n", "band": "20m", "added_sealing": False, "exposure": "exposed"}),
    ("n 20m rg213", {"family": "n", "band": "20m", "cable": "rg_213"}),
    ("n 20m RG-58 C/U", {"family": "n", "band": "20m", "cable": "rg_58"}),
    ("n 20m 400 size", {"family": "n", "band": "20m", "cable": "foam_10_mm"}),
    ("7/16 20m 7/8 inch hardline", {"family": "7_16", "band": "20m", "cable": "corrugated_7_8"}),
    ("n 20m 10.3 mm cable", {"family": "n", "band": "20m", "cable_diameter_m": 0.0103}),
    ("n 20m 35c", {"family": "n", "band": "20m", "ambient_temperature_c": 35}),
    ("n 20m 95 F", {"family": "n", "band": "20m", "ambient_temperature_c": 35}),
    ("n 20m -10 °C", {"family": "n", "band": "20m", "ambient_temperature_c": -10}),
    ("n 20m 30 degrees celsius", {"family": "n", "band": "20m", "ambient_temperature_c": 30}),
    ("n 20m worn", {"family": "n", "band": "20m", "condition": "worn"}),
    ("my old corroded n on 20m", {"family": "n", "band": "20m", "condition": "corroded"}),
    ("n 20m 5000 ft", {"family": "n", "band": "20m", "altitude_m": 1524}),
    ("n 20m 1500 m up", {"family": "n", "band": "20m", "altitude_m": 1500}),
    ("n 20m 1500 m asl", {"family": "n", "band": "20m", "altitude_m": 1500}),
    ("n 20m altitude 1.5 km", {"family": "n", "band": "20m", "altitude_m": 1500}),
    ("n 20m 75 ohms", {"family": "n", "band": "20m", "system_impedance_ohm": 75}),
    ("n 20m 60% duty", {"family": "n", "band": "20m", "transmit_share": 0.6}),
    ("n 20m receive only", {"family": "n", "band": "20m", "power_w": 0}),
    ("4:1 balun with so239 on 40m", {"family": "uhf", "band": "40m"}),
    ("", {}),
    ("   ?! ", {}),
]
"""What is read whole."""

ASKED_BACK = [
    ("n 2m 1,500 W", {"family": "n", "band": "2m"}, {"1,500 W": ["1500 W", "1.5 W"]}),
    ("n 2m 1.500 w", {"family": "n", "band": "2m"}, {"1.500 w": ["1.5 W", "1500 W"]}),
    ("n 2m 1 500 W", {"family": "n", "band": "2m"}, {"1 500 W": ["1500 W", "500 W"]}),
    ("n 14,175 MHz", {"family": "n"}, {"14,175 MHz": ["14175 MHz", "14.175 MHz"]}),
    ("n 2m swr 1,500", {"family": "n", "band": "2m"}, {"swr 1,500": ["SWR 1.5"]}),
    ("n 2m 1.8", {"family": "n", "band": "2m"}, {"1.8": ["1.8 W", "1.8 MHz", "SWR 1.8"]}),
    ("n 10", {"family": "n"}, {"10": ["10 m", "10 W", "10 MHz", "SWR 10"]}),
    ("n 2m 1000 ft8", {"family": "n", "band": "2m", "mode": "ft8"}, {"1000": ["1000 W", "1000 MHz"]}),
    ("n 2m swr", {"family": "n", "band": "2m"}, {"swr": ["SWR 1.5", "SWR 2", "SWR 3"]}),
    ("n 2m 35 degrees", {"family": "n", "band": "2m"}, {"35 degrees": ["35 °C", "35 °F"]}),
    ("n 11m", {"family": "n"}, {"11m": ["12 m", "10 m"]}),
    ("bnc uhf 50 w", {"family": "bnc", "power_w": 50}, {"uhf": ["70 cm", "23 cm", "13 cm"]}),
    ("n on VHF", {"family": "n"}, {"VHF": ["6 m", "4 m", "2 m"]}),
    ("n 2m swr 30", {"family": "n", "band": "2m"}, {"swr 30": []}),
    ("n 2m 900 kW", {"family": "n", "band": "2m"}, {"900 kW": []}),
    ("n 2m 100 MW", {"family": "n", "band": "2m"}, {"100 MW": []}),
    ("n 1 Hz", {"family": "n"}, {"1 Hz": []}),
    ("n 2m or 70cm", {"family": "n", "band": "2m"}, {"70cm": []}),
    ("n or bnc 2m", {"family": "n", "band": "2m"}, {"bnc": []}),
    ("n 2m 50w 100w", {"family": "n", "band": "2m", "power_w": 50}, {"100w": []}),
    ("n 2m not outdoors", {"family": "n", "band": "2m"}, {"not outdoors": []}),
    ("n instead of uhf 2m", {"family": "n", "band": "2m"}, {"instead of uhf": []}),
    ("10 m of rg213, n, 2m", {"cable": "rg_213", "family": "n", "band": "2m"}, {"10 m of": []}),
    ("n 2m 6 ft", {"family": "n", "band": "2m"}, {"6 ft": ["6 ft up"]}),
    ("n 2m legal limit", {"family": "n", "band": "2m"}, {"legal limit": []}),
    ("n 2m desert", {"family": "n", "band": "2m"}, {"desert": []}),
    ("so-238 2m", {"band": "2m"}, {"so-238": ["SO-239"]}),
]
"""What is read beside something that is asked back, and what could be typed in its place."""


def ask(text="", **fields):
    """The answer to a question."""
    return json.loads(call("question", json.dumps({"text": text, **fields}).encode()))


def read_of(answer):
    """What was typed, by field."""
    return {word["field"]: word["value"] for word in answer["read"]}


def cell_of(asked):
    """The cell of the request that a question was made into."""
    return json.loads(call("cell", json.dumps(asked).encode()))


@pytest.mark.parametrize(("text", "expected"), READ)
def test_what_is_typed_is_read_whole(text, expected):
    """Names, figures and words in any order and spelling, filler passed over."""
    answer = ask(text)

    assert answer["unread"] == []
    assert (
        read_of(answer) == pytest.approx(expected)
        if not text.strip(" ?!")
        else read_of(answer)
        == {field: pytest.approx(value) if isinstance(value, float) else value for field, value in expected.items()}
    )


@pytest.mark.parametrize(("text", "expected", "back"), ASKED_BACK)
def test_what_can_be_read_in_two_ways_is_asked_back(text, expected, back):
    """It is named as it was typed, with what could stand there; the rest is read."""
    answer = ask(text)

    assert read_of(answer) == expected
    near = {word["typed"]: word["near"] for word in answer["unread"]}
    assert near.keys() == back.keys()
    assert {typed: words[: len(back[typed])] for typed, words in near.items()} == back
    assert all(word["words"].endswith((".", "?")) for word in answer["unread"])


@pytest.mark.parametrize("typed", ["1,500 W", "1.500 W", "1000", "swr", "swr 1,500", "900 kW"])
def test_nothing_is_answered_beside_a_figure_that_is_not_read(typed):
    """With what is usual in its place the answer would mislead."""
    answer = ask(f"so239 10m {typed}")

    assert answer["verdict"] is None
    assert answer["asked"] is None
    assert len(answer["missing"]) == 1


def test_what_is_offered_in_the_place_of_something_can_be_read():
    """Each suggestion, put where it belongs, is understood."""
    offered = [(text, typed, word) for text, _, back in ASKED_BACK for typed, near in back.items() for word in near]

    assert len(offered) > 30
    for text, typed, word in offered:
        answer = ask(text.replace(typed, word))
        assert all("twice" in one["words"] for one in answer["unread"] if one["typed"] == word), (text, word)


PIECES = {
    "family": ["so239", "PL-259", "type N", "bnc", "7/16", "4.3-10", "SMA connector"],
    "band": ["10m", "20 m", "2 metres", "70cm", "6 m"],
    "power_w": ["1kw", "100 watts", "1.5 kW", "5 w"],
    "mode": ["ft8", "SSB", "key down", "RTTY", "fm"],
    "vswr": ["swr 3", "2:1", "VSWR 1.5", "swr2"],
    "exposure": ["outdoors", "indoors", "in the rain", "sheltered"],
    "cable": ["rg213", "RG-58", "400 size"],
    "condition": ["worn", "corroded", "new"],
    "altitude_m": ["5000 ft", "1500 m up"],
    "ambient_temperature_c": ["35c", "95 F"],
}
SEPARATORS = [" ", ", ", "  ", " - ", "; ", "\n"]
CASES = [str.lower, str.upper, str.title, str]


def test_order_and_case_do_not_matter():
    """The same pieces in any order, case and spacing mean the same."""
    draw = random.Random(18)
    for _ in range(150):
        fields = draw.sample(list(PIECES), draw.randint(2, len(PIECES)))
        pieces = [draw.choice(PIECES[field]) for field in fields]
        expected = [read_of(ask(piece)) for piece in pieces]
        draw.shuffle(pieces)
        text = draw.choice(SEPARATORS).join(draw.choice(CASES)(piece) for piece in pieces)
        answer = ask(text)
        assert answer["unread"] == [], text
        assert read_of(answer) == {field: value for one in expected for field, value in one.items()}, text


NONSENSE = ["zorp", "ft9x", "§", "😀", "ünïcödé", "\x00", "1e400", "0x10", "--", "kW", "10mswr3", "ohm", "½", "٣"]


@pytest.mark.parametrize("word", NONSENSE)
def test_nonsense_is_named(word):
    """What is no word of the trade is said not to be understood, and the rest is answered."""
    answer = ask(f"n {word} 2m")

    assert read_of(answer) == {"family": "n", "band": "2m"}
    assert [unread["typed"] for unread in answer["unread"]] == ([] if word == "--" else [word])


def test_no_text_breaks_the_reader():
    """Random letters, digits and marks are read or named; every word of a text is in one of both, or passed over."""
    draw = random.Random(7)
    letters = "abcdefkmnswW0123456789.,:;/-'\"°Ω%µ \t\n±×ÿİßǅ" + "so239 kw swr m "
    for _ in range(600):
        text = "".join(draw.choices(letters, k=draw.randint(0, 60)))
        answer = ask(text)
        for word in answer["unread"]:
            assert word["typed"]
            assert word["words"]


def test_a_text_is_bounded():
    """A longer text is refused by name."""
    assert ask("n 2m " + "x" * 295)["unread"]
    with pytest.raises(InputError, match="text is"):
        ask("x" * 301)


def test_what_is_typed_wins_over_the_fields():
    """Fields fill in what the text leaves out, and only that."""
    answer = ask("14.2 MHz 50 w", family="bnc", band="20m", power_w=400, mode="rtty")

    assert answer["asked"] == {"family": "bnc", "frequency_hz": 14.2e6, "power_w": 50, "mode": "rtty"}
    assert answer["taken"] == ["No SWR given: 1.5 is taken.", "No place given: indoors is taken."]


def test_what_must_be_said_is_asked_for():
    """Without connector or band nothing is answered, and the sentence says which is missing."""
    answer = ask("1 kW ft8")

    assert answer["verdict"] is None
    assert [sentence.split(",")[0] for sentence in answer["missing"]] == [
        "Say which connector",
        "Say which band or frequency",
    ]


@pytest.mark.parametrize(("field", "value"), [("family", "nothing"), ("band", "11m"), ("mode", "x"), ("cable", "x")])
def test_a_field_that_names_nothing_is_refused(field, value):
    """Fields are held to the catalogue, also where the text says nothing that needs them."""
    with pytest.raises(InputError, match=f"{field} is"):
        ask("", **{field: value})


def test_a_band_of_another_region_is_named():
    """A band the Region does not have is not taken silently."""
    assert [word["typed"] for word in ask("n 4m", region=2)["unread"]] == ["4m"]
    assert read_of(ask("n 4m", region=1)) == {"family": "n", "band": "4m"}


ANSWERED = [text for text, expected in READ if "family" in expected and {"band", "frequency_hz"} & expected.keys()]


@pytest.mark.parametrize(
    "text", [*ANSWERED, "so239 1.5kw rtty 20m rg-58 5000 ft", "uhf 10m 1kw ft8 swr 3 corroded 80c"]
)
def test_the_verdict_is_the_cells(text):
    """Margin, largest power and refusal are those of the cell that `asked` asks for, and the step follows from them."""
    answer = ask(text)
    cell = cell_of(answer["asked"])

    for figure in ("margin_db", "margin_high_db", "largest_power_w"):
        assert answer[figure] == cell[figure]
    step = answer["verdict"]["step"]
    assert (step == "refused") == (cell["refused_by"] is not None)
    assert (step == "uncertain") == cell["undecided"]
    if step not in ("refused", "uncertain", "receive"):
        assert step == margin_step(cell["margin_db"])
        assert answer["limited_by"]["id"] == next(limit["id"] for limit in cell["limits"] if limit["binding"])


IN_NEED = [
    "so239 1kw ft8 10m swr 3",
    "so239 1.5kw rtty 40 m swr 3",
    "bnc 1kw 20m rtty",
    "bnc 100 watts fm 2 metres outdoors",
    "uhf 23cm 10w fm",
    "uhf 100w 2m immersed",
    "sma 50w key down 23cm worn",
    "n 23cm 200w fm masthead",
    "f 100w 70cm",
    "uhf 10m 1kw ft8 swr 3 corroded 80c",
    "uhf 70cm 50w fm mobile",
    "pl259 1500w 80m ssb outdoors swr 2",
]


@pytest.mark.parametrize("text", IN_NEED)
def test_what_would_be_better_is(text):
    """Each change, made, gives the margin that is promised, and either that is more or something wrong is gone."""
    answer = ask(text)

    assert 1 <= len(answer["better"]) <= 5
    for change in answer["better"]:
        changed = cell_of({**answer["asked"], **change["changes"]})
        assert changed["margin_db"] == change["margin_db"]
        assert changed["largest_power_w"] == change["largest_power_w"]
        assert changed["refused_by"] is None
        again = ask("", **{**answer["asked"], **change["changes"]})
        more = answer["margin_db"] is None or change["margin_db"] > answer["margin_db"]
        assert more or len(again["doubts"]) < len(answer["doubts"])
    titles = [change["title"] for change in answer["better"]]
    assert len(set(titles)) == len(titles)


@pytest.mark.parametrize("text", ["n 2m 100w", "so239 80m 100w", "7/16 1500w 70cm ft8", "sma rx 3cm"])
def test_what_is_well_is_left_alone(text):
    """Where nothing is wanting nothing is proposed."""
    assert ask(text)["better"] == []


def test_a_worn_contact_is_mended_first():
    """The first thing one would do about a bad contact that limits is to clean it."""
    titles = [change["title"] for change in ask("uhf 10m 1kw ft8 swr 3 corroded 80c")["better"]]

    assert titles[0].startswith("Clean the contacts")
    assert titles[1] == "Bring the SWR down to 1.5"


def test_a_connector_out_of_its_depth_is_told_plainly():
    """On 23 cm the trade fits N in the place of UHF, as the match decides and not power."""
    answer = ask("so239 10w fm 23cm")

    assert answer["verdict"]["step"] == "refused"
    assert "match" in answer["verdict"]["sentence"]
    assert answer["limited_by"]["id"] == "match"
    assert answer["better"][0]["changes"] == {"family": "n"}


def test_every_name_of_the_catalogue_is_read():
    """Each connector, cable, band and mode by its name and what else it is called."""
    tables = catalogue()
    for field, table in (("family", tables.interfaces), ("cable", tables.cables), ("band", tables.bands)):
        for entry in table.values():
            if field == "band" and "1" not in entry.regions:
                continue
            for name in (entry.name, *getattr(entry, "also_called", []), *entry.typed_as):
                assert read_of(ask(name)) == {field: entry.id}, name
    for mode in tables.modes.values():
        assert read_of(ask(mode.typed_as[0])) == {"mode": mode.id}
        assert read_of(ask(mode.name)) == {"mode": mode.id}


def test_no_two_entries_are_typed_alike():
    """A name means one thing, however it is spelled, and no small word is a name."""
    tables = catalogue()
    owners = {}
    for table in ("interfaces", "cables", "bands", "modes", "conditions", "installations", "site_words"):
        for entry in getattr(tables, table).values():
            called = set() if table == "installations" else {getattr(entry, "name", entry.id)}
            names = {*entry.typed_as, *getattr(entry, "also_called", []), *called}
            for name in {squashed(name) for name in names}:
                assert owners.setdefault(name, (table, entry.id)) == (table, entry.id), name
    small = {squashed(word) for words in tables.small_words.values() for word in words.words}
    assert small.isdisjoint(owners)


NUMBERS = [
    *(("1.5", [1.5]), ("1,5", [1.5]), ("1500", [1500]), (".5", [0.5]), (",5", [0.5]), ("0.500", [0.5])),
    *(("1,500", [1500, 1.5]), ("1.500", [1.5, 1500]), ("1,500.5", [1500.5]), ("1.500,5", [1500.5])),
    *(("1'500", [1500]), ("12,50", [12.5]), ("1,2,3", []), ("1.2.3", []), ("-10", [-10]), ("+3", [3])),
    *(("1,234,567", [1234567]), ("half a", [0.5]), ("two hundred", [200]), ("thousand", [1000])),
]


@pytest.mark.parametrize(("text", "numbers"), NUMBERS)
def test_a_separator_before_three_digits_could_be_either(text, numbers):
    """As in the page's own fields: a mark before exactly three digits groups thousands or leads decimals."""
    assert numbers_of(text) == numbers


@pytest.mark.parametrize(
    ("typed", "weak"),
    [("n 1.5kw rtty 23cm", "RG-213"), ("uhf 1kw fm 70cm", "UHF"), ("so239 5kw cw 40m", "UHF")],
)
def test_over_the_limit_names_what_gives_way(typed, weak):
    """Where the cable gives way first it is the cable that is said not to stand the power, not its connector."""
    assert ask(typed)["verdict"]["sentence"].startswith(f"No: {weak}")


def test_sentences_read_as_sentences():
    """Whatever is asked, each sentence begins with a capital and ends with a full stop, and says no inner name."""
    for text in (*IN_NEED, *ANSWERED):
        answer = ask(text)
        sentences = [answer["verdict"]["sentence"], *answer["taken"], *answer["missing"]]
        sentences += [change["sentence"] for change in answer["better"]]
        sentences += [doubt["sentence"] for doubt in answer["doubts"]]
        if answer["limited_by"]:
            sentences.append(answer["limited_by"]["sentence"])
        for sentence in sentences:
            assert re.fullmatch(r"[A-Z0-9].*[.]", sentence, re.DOTALL), sentence
            assert "_" not in sentence
            assert "None" not in sentence
