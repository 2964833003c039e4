"""The kit: the fewest adapters that join what must be joined, traps refused, and bad requests told why."""

import json
from collections import Counter

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import LOSS_DB, answer, owned, port, tried_pairs, types_of
from scenarios import examples

from jointwise.calc.catalogue import catalogue
from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.errors import InputError
from jointwise.calc.kit.adapters import trade
from jointwise.calc.kit.chain_free_bound import chain_free_bound
from jointwise.calc.kit.kit import kit
from jointwise.calc.kit.requests import KitRequest
from jointwise.calc.kit.required_pairs import required_pairs
from jointwise.calc.operations import call

FAMILIES = ["uhf", "n", "bnc", "sma", "rp_sma", "3_5mm", "n_75", "bnc_75"]
ENDS = st.builds(port, st.sampled_from(FAMILIES), st.sampled_from(["plug", "jack"]))
OWNED = st.lists(
    st.sampled_from([owned(f"{one[0]} {one[1]}", f"{two[0]} {two[1]}") for one, two in trade()]), max_size=6
)


@st.composite
def questions(draw, most_ports=8, most_pairs=7):
    """Ports, pairs and owned adapters of a small station."""
    ports = draw(st.lists(ENDS, min_size=2, max_size=most_ports))
    every = [[one, other] for one in range(len(ports)) for other in range(one)]
    pairs = draw(st.lists(st.sampled_from(every), max_size=most_pairs, unique_by=tuple))
    return {"ports": ports, "pairs": pairs, "owned": draw(OWNED)}


def joins(bag, chains):
    """Whether all adapters of one of the chains are in the bag."""
    return any(chain <= bag for chain in chains)


def can_join(pairs, bag, more, seen):
    """Whether some bag with at most so many more adapters joins every pair: all chains of the first open one are tried.

    Each pair is given by its chains.
    """
    open_pair = next((chains for chains in pairs if not joins(bag, chains)), None)
    if open_pair is None:
        return True
    key = (frozenset(bag.items()), more)
    if key in seen:
        return False
    seen.add(key)
    larger = {frozenset((bag | chain).items()) for chain in open_pair}
    bags = (Counter(dict(items)) for items in larger)
    return any(can_join(pairs, one, more + bag.total() - one.total(), seen) for one in bags if fits(one, bag, more))


def fits(bag, before, more):
    """Whether the bag grew by no more than allowed."""
    return bag.total() - before.total() <= more


@pytest.mark.slow
@examples(120)
@given(question=questions(), most_in_series=st.integers(1, 2))
def test_no_kit_is_smaller(question, most_in_series):
    """The kit joins all that can be joined, and every smaller one, tried out, does not."""
    result = answer(**question, most_in_series=most_in_series)
    tried = tried_pairs(question["ports"], question["pairs"], most_in_series, question["owned"])
    owned_types = types_of(question["owned"])

    assert result.optimal
    assert result.joined == len(tried)
    assert all(joins(owned_types + types_of(result.adapters), chains) for chains in tried)
    assert result.added == 0 or not can_join(tried, owned_types, result.added - 1, set())


@pytest.mark.slow
@examples(25)
@given(question=questions(most_ports=4, most_pairs=3))
def test_no_kit_of_longer_chains_is_smaller(question):
    """The same holds with three adapters in series."""
    result = answer(**question, most_in_series=3)
    tried = tried_pairs(question["ports"], question["pairs"], 3, question["owned"])

    assert result.optimal
    assert result.joined == len(tried)
    assert result.added == 0 or not can_join(tried, types_of(question["owned"]), result.added - 1, set())


@examples(120)
@given(question=questions(), most_in_series=st.integers(1, 3))
def test_the_bound_for_too_many_chains_holds(question, most_in_series):
    """The bound found without any chain is never above the smallest kit."""
    request = KitRequest(**question, most_in_series=most_in_series, most_loss_db=LOSS_DB)
    result = kit(request)
    answered = zip(required_pairs(request), result.pairs, strict=True)
    open_pairs = [required for (_, required), pair in answered if pair.joined and not pair.joined_by_owned]

    assert result.optimal
    assert chain_free_bound(open_pairs, trade(), types_of(request.owned)) <= result.added


@pytest.mark.slow
@examples(60)
@given(ports=st.lists(ENDS, min_size=2, max_size=8), owned_=OWNED)
def test_no_adapter_of_the_kit_can_be_spared(ports, owned_):
    """Without any one adapter of the kit some pair is no longer joined."""
    result = answer(ports, owned=owned_)
    pairs = [pair.ports for pair in result.pairs if pair.joined]
    tried = tried_pairs(ports, pairs, 2, owned_)
    bag = types_of(owned_) + types_of(result.adapters)

    for one in types_of(result.adapters):
        assert not all(joins(bag - Counter([one]), chains) for chains in tried)


@pytest.mark.slow
@examples(60)
@given(question=questions())
def test_owned_adapters_never_make_the_kit_larger(question):
    """What is owned joins what it can, and with it no more need be added than without."""
    bare = answer(ports=question["ports"], pairs=question["pairs"])
    result = answer(**question)
    tried = tried_pairs(question["ports"], question["pairs"], 2, question["owned"])

    assert result.added <= bare.added
    assert result.joined_by_owned == sum(joins(types_of(question["owned"]), chains) for chains in tried)


@examples(60)
@given(question=questions())
def test_a_chain_mates_and_keeps_its_limits(question):
    """Each joint of a chain joins plug to jack, loses and carries what its family's cell says, and adds up."""
    result = answer(**question, most_loss_db=0.5)

    for chain in (pair.joined for pair in result.pairs if pair.joined):
        assert all({joint.one_gender, joint.other_gender} == {"plug", "jack"} for joint in chain.joints)
        assert len(chain.joints) == len(chain.adapters) + 1 <= 3
        assert chain.loss_db == pytest.approx(sum(joint.loss_db for joint in chain.joints), rel=1e-12)
        assert chain.loss_db <= 0.5
        assert chain.margin_db == min(joint.margin_db for joint in chain.joints) >= 0


@pytest.mark.parametrize("family", ["uhf", "n", "bnc", "sma"])
def test_a_joint_is_that_of_the_cell(family):
    """Margin and loss of a plain joint are those of the family's cell at the same frequency and power."""
    result = answer([port(family, "plug", 146e6, 50.0), port(family, "jack", 440e6, 100.0)])
    joint = result.pairs[0].joined.joints[0]
    same = cell(CellRequest(family=family, frequency_hz=146e6, power_w=50.0))

    assert joint.margin_db == pytest.approx(same.margin_db, abs=1e-9)
    assert joint.loss_db == pytest.approx(same.losses.expected_db, rel=1e-9)


@pytest.mark.slow
def test_no_exchange_lowers_the_loss_any_more():
    """No exchange of one adapter of the kit for another loses less and joins as much."""
    ports = [port("uhf", "plug"), port("uhf", "jack"), port("sma", "jack"), port("bnc", "plug")]
    result = answer(ports)
    bag, lost = types_of(result.adapters), result.total_loss_db
    near = {one for one in trade() if {end.family for end in one} <= {"uhf", "sma", "bnc", "n"}}

    for out in bag:
        for one, other in near - set(bag):
            swapped = [owned(f"{a[0]} {a[1]}", f"{b[0]} {b[1]}", n) for (a, b), n in (bag - Counter([out])).items()]
            swapped.append(owned(f"{one[0]} {one[1]}", f"{other[0]} {other[1]}"))
            other_kit = answer(ports, owned=swapped)
            assert other_kit.joined_by_owned < len(other_kit.pairs) or other_kit.total_loss_db >= lost - 1e-5


def one_pair(*ports, **fields):
    """The answer for two ports."""
    return answer(list(ports), **fields).pairs[0]


def test_gender_decides():
    """Two plugs need a barrel of jacks, a plug and a jack nothing."""
    assert one_pair(port("n", "plug"), port("n", "jack")).joined.adapters == []
    assert one_pair(port("n", "plug"), port("n", "plug")).joined.adapters[0].name == "N jack to N jack"


@pytest.mark.parametrize(
    ("plug", "jack", "words"),
    [
        ("sma", "rp_sma", "two pins meet"),
        ("rp_sma", "sma", "two sockets meet"),
        ("n", "n_75", "spreads or splits"),
        ("n_75", "n", "no sure contact"),
        ("uhf", "n", "same 5/8-24"),
        ("bnc", "tnc", "cannot be locked"),
    ],
)
def test_a_trap_is_named(plug, jack, words):
    """Ports that look as if they mated are never joined as they are, and the pair says why."""
    pair = one_pair(port(plug, "plug"), port(jack, "jack"))

    assert words in pair.trap
    assert pair.joined is None or pair.joined.adapters


def test_an_impedance_step_is_refused_unless_asked_for():
    """50 Ω meets 75 Ω only when asked for, and then the mismatch counts as loss."""
    ports = [port("bnc", "plug"), port("bnc_75", "jack")]
    refused, asked = one_pair(*ports), one_pair(*ports, impedance_steps=True)

    assert (refused.joined, refused.reason) == (None, "impedance")
    assert "50 Ω would meet 75 Ω" in refused.sentence
    assert asked.joined.adapters == []
    assert asked.joined.loss_db > 0.177  # 10 log10(1 / (1 - 0.2²)) dB


def test_a_75_ohm_adapter_does_not_join_50_ohm_ports():
    """A BNC 75 Ω adapter mates with BNC ports but is not counted on in a line of 50 Ω."""
    barrel = owned("bnc_75 plug", "bnc_75 plug")
    pair = answer([port("bnc", "jack"), port("bnc", "jack")], owned=[barrel]).pairs[0]

    assert pair.joined_by_owned is None
    assert pair.joined.adapters[0].name == "BNC plug to BNC plug"


REASONS = [  # ports, request, reason, words
    ([port("f", "plug"), port("f", "jack")], {}, "port", "no standard gives it"),
    ([port("mmcx", "jack", 30e6, 1e4), port("mmcx", "plug", 30e6, 1e4)], {}, "port", "over the limit by voltage"),
    ([port("n", "plug", 30e9), port("n", "jack", 30e9)], {}, "port", "TE11 cutoff"),
    ([port("uhf", "jack"), port("mmcx", "jack")], {"most_in_series": 1}, "series", "It takes 2 adapters"),
    ([port("uhf", "jack"), port("n", "jack")], {"most_loss_db": 0.01, "condition": "corroded"}, "loss", "0.01 dB"),
    ([port("n", "jack"), port("n_75", "jack")], {}, "impedance", "14.0 dB"),
]


@pytest.mark.parametrize(("ports", "fields", "reason", "words"), REASONS)
def test_what_can_not_be_joined_is_explained(ports, fields, reason, words):
    """A pair that no adapters join says what stands in the way."""
    pair = one_pair(*ports, **fields)

    assert pair.joined is None
    assert pair.reason == reason
    assert words in pair.sentence


def test_two_of_a_type_are_needed_when_a_chain_holds_two():
    """A chain that takes the same adapter twice is not joined by owning one of them."""
    ends = [port("hn", "plug", 30e6), port("hn", "plug", 30e6)]
    chain = [owned("hn jack", "n plug"), owned("n jack", "n jack")]
    once = answer(ends, owned=chain, most_in_series=3).pairs[0]
    twice = answer(ends, owned=[owned("hn jack", "n plug", 2), chain[1]], most_in_series=3).pairs[0]

    assert once.joined_by_owned is None
    assert [adapter.name for adapter in twice.joined_by_owned.adapters] == [
        "HN jack to N plug",
        "N jack to N jack",
        "N plug to HN jack",
    ]


def test_what_the_trade_does_not_sell_is_not_added():
    """An odd adapter that is owned once joins what one of it can, and no second one is asked for."""
    ends = [port("hn", "plug"), port("hn", "plug")]
    odd = [owned("hn jack", "smb plug"), owned("smb jack", "smb jack")]
    result = answer(ends, owned=odd, most_in_series=3)

    assert result.joined_by_owned == 0
    assert [one.name for one in result.adapters] == ["HN jack to HN jack"]


@pytest.mark.slow
def test_a_longer_search_proves_what_a_shorter_leaves_open():
    """Fourteen unlike ports, every pair: a quick kit and its bound hold the proven one between them."""
    ends = ["sma plug", "mcx jack", "mmcx plug", "3_5mm jack", "3_5mm jack", "c plug", "mcx plug"]
    ends += ["7_16 jack", "mcx jack", "tnc plug", "mcx plug", "uhf plug", "sma jack", "uhf plug"]
    ports = [port(*end.split()) for end in ends]
    quick, thorough = (answer(ports, most_in_series=3, search=search) for search in ("quick", "thorough"))

    assert quick.lower_bound <= thorough.added <= quick.added
    assert not quick.optimal
    assert thorough.optimal


@pytest.mark.slow
def test_a_large_station_is_answered_with_a_bound():
    """Sixty ports and four hundred pairs are answered with a kit and a bound beneath it."""
    families = ["uhf", "n", "bnc", "sma", "tnc", "rp_sma", "mini_uhf", "7_16", "4_3_10", "mcx"]
    ports = [port(families[at % 10], "plug" if at % 3 else "jack") for at in range(60)]
    pairs = [[one, other] for one in range(60) for other in range(one)][:400]
    result = answer(ports, pairs=pairs, most_in_series=4)

    assert result.joined == 400
    assert 1 <= result.lower_bound <= result.added
    assert result.optimal == (result.gap == 0)


def test_every_family_is_in_the_trade():
    """Every family has its barrels in the trade, and no pair of families is named twice."""
    entries = catalogue().adapters
    pairs = [frozenset({entry.id, family}) for entry in entries.values() for family in entry.joins]

    missing = [family for family in catalogue().interfaces if frozenset({family}) not in pairs]
    twice = {tuple(sorted(pair)) for pair in pairs if pairs.count(pair) > 1}

    assert not missing, f"adapters.toml has no entry with the barrels of {missing}: an `id` that is in its own `joins`"
    assert not twice, f"adapters.toml names {twice} twice: a pair stands under one of its families only"


N_PLUG = {"family": "n", "gender": "plug", "highest_frequency_hz": 1e8}
TWO = [N_PLUG, N_PLUG]
ADAPTER = {"one_family": "n", "one_gender": "plug", "other_family": "bnc", "other_gender": "jack"}
BAD = [  # request, field, words
    ({}, "ports", "a value, as this field can't be left out"),
    ({"ports": [N_PLUG]}, "ports", "a list of 2 to 60 entries"),
    ({"ports": [N_PLUG] * 61}, "ports", "a list of 2 to 60 entries"),
    ({"ports": [N_PLUG] * 30}, "pairs", "at most 400 pairs"),
    ({"ports": [N_PLUG, N_PLUG | {"family": "no_such"}]}, "ports[1].family", '"no_such"; allowed: one of uhf,'),
    ({"ports": [N_PLUG, N_PLUG | {"gender": "male"}]}, "ports[1].gender", "one of jack, plug"),
    ({"ports": [N_PLUG, N_PLUG | {"impedance_ohm": 75}]}, "ports[1].impedance_ohm", "another family (n_75)"),
    ({"ports": [N_PLUG, N_PLUG | {"highest_frequency_hz": 0}]}, "ports[1].highest_frequency_hz", "a number from"),
    ({"ports": [N_PLUG, N_PLUG | {"power_w": -1}]}, "ports[1].power_w", "a number from 0 to 100000"),
    ({"ports": TWO, "pairs": [[0, 2]]}, "pairs[0][1]", "the number of a port, 0 to 1"),
    ({"ports": TWO, "pairs": [[1, 1]]}, "pairs[0]", "two different ports"),
    ({"ports": TWO, "pairs": [[0, 1], [1, 0]]}, "pairs[1]", "a pair that is not named before"),
    ({"ports": TWO, "pairs": [[0]]}, "pairs[0]", "a list of 2 to 2 entries"),
    ({"ports": TWO, "pairs": [[0, -1]]}, "pairs[0][1]", "a whole number from 0 to 59"),
    ({"ports": TWO, "most_in_series": 5}, "most_in_series", "a whole number from 1 to 4"),
    ({"ports": TWO, "most_loss_db": 0}, "most_loss_db", "a number from 0.01 to 20"),
    ({"ports": TWO, "owned": [ADAPTER | {"other_family": "xyz"}]}, "owned[0].other_family", "one of uhf,"),
    ({"ports": TWO, "owned": [ADAPTER | {"count": 0}]}, "owned[0].count", "a whole number from 1 to 20"),
    ({"ports": TWO, "mode": "unheard_of"}, "mode", "one of ssb,"),
]


@pytest.mark.parametrize(("fields", "field", "words"), BAD)
def test_a_bad_request_is_refused(fields, field, words):
    """A bad field is refused by name, with what is allowed."""
    with pytest.raises(InputError) as caught:
        call("kit", json.dumps(fields).encode())

    assert caught.value.field == field
    assert words in str(caught.value)


def test_uhf_takes_the_impedance_it_is_given():
    """A UHF port of 75 Ω gear has no impedance of its own and meets a 75 Ω port without a step."""
    pair = answer([port("uhf", "jack", impedance_ohm=75.0, power_w=0.0), port("f", "jack", power_w=0.0)]).pairs[0]

    assert pair.joined.adapters[0].name == "UHF plug (PL-259) to F plug"
