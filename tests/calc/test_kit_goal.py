"""The two goals of a kit, the price of each, what its headline names, and what ports are called in it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import answer, owned, port
from scenarios import examples

from jointwise.calc.kit.chain_quality import (
    ENOUGH_MARGIN_DB,
    ENOUGH_RETURN_LOSS_DB,
    LOSS_STEP_DB,
    STEP_DB,
)

ROUNDING_DB = 1e-5
ENDS = st.builds(
    port,
    st.sampled_from(["uhf", "n", "bnc", "sma", "tnc"]),
    st.sampled_from(["plug", "jack"]),
    st.sampled_from([30e6, 146e6, 435e6]),
    st.sampled_from([0.0, 5.0, 50.0]),
)
OWNED = st.lists(st.sampled_from([owned("uhf plug", "bnc jack"), owned("n plug", "bnc jack")]), max_size=2)


@st.composite
def stations(draw):
    """Ports of a small station used on several bands, pairs of them, and adapters owned."""
    ports = draw(st.lists(ENDS, min_size=3, max_size=7))
    every = [[one, other] for one in range(len(ports)) for other in range(one)]
    pairs = draw(st.lists(st.sampled_from(every), min_size=1, max_size=8, unique_by=tuple))
    return {"ports": ports, "pairs": pairs, "owned": draw(OWNED)}


STATION = {
    "ports": [
        port("n", "jack", 435e6, 100.0, name="Dummy load"),
        port("sma", "plug", 435e6, 5.0, name="Handheld"),
        port("uhf", "jack", 54e6, 100.0, name="Transceiver"),
        port("uhf", "plug", 30e6, 100.0, name="Dipole"),
    ],
    "pairs": [[0, 1], [0, 2], [1, 3]],
}
"""At 435 MHz an adapter of UHF would do, and spares one."""


def both(**question):
    """The answers for either goal."""
    return answer(**question, goal="fewest"), answer(**question, goal="best_joints")


def worst(pair):
    """Margin and return loss of a pair's worst joint, up to what is enough."""
    joints = pair.joined.joints
    margin_db = min((joint.margin_db for joint in joints if joint.margin_db is not None), default=ENOUGH_MARGIN_DB)
    return_loss_db = min(joint.return_loss_db for joint in joints)
    return min(margin_db, ENOUGH_MARGIN_DB), min(return_loss_db, ENOUGH_RETURN_LOSS_DB)


@pytest.mark.slow
@examples(60)
@given(question=stations())
def test_the_best_joints_are_never_worse(question):
    """No pair has a worse worst joint with the best joints than with the fewest adapters, by a step or more."""
    fewest, best = both(**question)

    assert best.joined == fewest.joined
    for few, good in zip(fewest.pairs, best.pairs, strict=True):
        if few.joined:
            (few_margin, few_match), (good_margin, good_match) = worst(few), worst(good)
            assert good_margin >= few_margin - STEP_DB - ROUNDING_DB
            assert good_margin > few_margin or good_match >= few_match - STEP_DB - ROUNDING_DB


@pytest.mark.slow
@examples(60)
@given(question=stations())
def test_the_fewest_are_never_more(question):
    """The fewest adapters are no more than the best joints take, and where they are fewer some pair loses by it."""
    fewest, best = both(**question)

    assert fewest.optimal
    assert best.optimal
    assert fewest.added <= best.added
    assert (fewest.added == best.added) == (fewest.price.pairs_changed == 0)
    if fewest.added == best.added:
        assert fewest.adapters == best.adapters


@pytest.mark.slow
@examples(60)
@given(question=stations())
def test_the_price_is_that_of_the_other_answer(question):
    """What an answer says of the other goal is what the other answer says of itself, pair for pair."""
    fewest, best = both(**question)

    assert (fewest.price.goal, fewest.price.added, fewest.price.optimal) == ("best_joints", best.added, best.optimal)
    assert (best.price.goal, best.price.added, best.price.optimal) == ("fewest", fewest.added, fewest.optimal)
    assert (fewest.price.fewest, fewest.price.best_joints) == (best.price.fewest, best.price.best_joints)
    for told, told_of in ((best.price.fewest, fewest), (fewest.price.best_joints, best)):
        if told:
            joined = next(pair.joined for pair in told_of.pairs if pair.ports == told.ports)
            assert (told.margin_db, told.return_loss_db, told.loss_db) == (
                joined.margin_db,
                joined.return_loss_db,
                joined.loss_db,
            )


def test_no_adapter_of_the_best_joints_can_be_spared():
    """Without one of its adapters the kit joins some pair only by worse joints: one has to be added again."""
    adapters = answer(**STATION, goal="best_joints").adapters

    for left_out in range(len(adapters)):
        rest = [
            owned(f"{one.one_family} {one.one_gender}", f"{one.other_family} {one.other_gender}", one.count)
            for at, one in enumerate(adapters)
            if at != left_out
        ]
        assert answer(**STATION, owned=rest, goal="best_joints").added > 0


def test_the_price_is_said_with_its_numbers():
    """The sentence names what one more adapter avoids, where, and by how much the pair gains."""
    fewest, best = both(**STATION)
    few = next(pair.joined for pair in fewest.pairs if pair.ports == [0, 1])
    good = next(pair.joined for pair in best.pairs if pair.ports == [0, 1])

    assert best.added == fewest.added + 1
    assert few.loss_db - good.loss_db > LOSS_STEP_DB
    assert fewest.price.sentence == (
        "One more adapter avoids UHF between Dummy load and Handheld on 70 cm: "
        f"return loss {good.return_loss_db:.0f} dB in place of {few.return_loss_db:.0f}, "
        f"{few.loss_db - good.loss_db:.2f} dB less loss."
    )
    assert best.price.sentence == (
        "One adapter fewer puts UHF between Dummy load and Handheld on 70 cm: "
        f"return loss {few.return_loss_db:.0f} dB in place of {good.return_loss_db:.0f}, "
        f"{few.loss_db - good.loss_db:.2f} dB more loss."
    )


def test_on_short_wave_both_goals_have_one_kit():
    """At 30 MHz and 10 W any joint is good enough, and the fewest adapters have the best joints."""
    ports = [port("uhf", "jack"), port("n", "jack"), port("bnc", "jack"), port("sma", "plug")]
    fewest, best = both(ports=ports)

    assert fewest.adapters == best.adapters
    assert fewest.price.sentence == best.price.sentence == "The fewest adapters have the best joints too."


def test_the_return_loss_of_a_chain_is_that_of_its_vswrs_multiplied():
    """Two joints of one VSWR have its square at worst."""
    joined = answer([port("uhf", "jack", 435e6), port("uhf", "jack", 435e6)]).pairs[0].joined
    one = 10 ** (-joined.joints[0].return_loss_db / 20)
    vswr = ((1 + one) / (1 - one)) ** 2
    both_joints = (vswr - 1) / (vswr + 1)

    assert len(joined.joints) == 2
    assert 10 ** (-joined.return_loss_db / 20) == pytest.approx(both_joints, rel=1e-9)


def test_the_return_loss_of_a_chain_has_the_step_of_impedance():
    """From 50 to 75 Ω is a VSWR of 1.5, a return loss of 14 dB, before any joint."""
    joined = answer([port("bnc", "plug"), port("bnc_75", "jack")], impedance_steps=True).pairs[0].joined

    assert 13 < joined.return_loss_db < 13.98
    assert joined.joints[0].return_loss_db > 30


def test_the_headline_names_what_can_not_be_joined_and_why():
    """First the pair that is apart, by the names of its ports, and the cause; then what is to be carried."""
    ports = [port("n", "jack", name="Radio"), port("n_75", "jack"), port("n", "jack", name="Load")]
    result = answer(ports)

    assert result.headline == (
        "Port 2 (N 75 Ω jack) can't be joined with Radio or Load: 50 Ω would meet 75 Ω. 1 adapter joins the other pair."
    )
    assert result.verdict == result.headline
    assert result.pairs[0].names == ["Radio", "port 2 (N 75 Ω jack)"]


def test_the_verdict_goes_on_with_the_proof():
    """After the headline: whether fewer could do, and what is joined without them."""
    ports = [port("n", "jack"), port("n", "plug"), port("bnc", "jack"), port("sma", "jack")]
    fewest, best = both(ports=ports)

    assert fewest.verdict == f"{fewest.headline} No smaller set does. Without any: 1 of 6 pairs."
    assert best.verdict == f"{best.headline} No smaller set has joints as good. Without any: 1 of 6 pairs."


def test_nothing_to_add_is_said():
    """Ports that mate as they are need nothing, whatever the goal."""
    result = answer([port("n", "jack"), port("n", "plug")])

    assert result.verdict == result.headline == "Nothing to add: the pair can be joined."
    assert result.price.sentence == "No adapter is added for either."


def test_the_headline_counts_what_it_does_not_name():
    """Of many ports apart three are named; with all joined it says how many adapters join them."""
    radios = [port("n", "plug", name=f"Radio {at}") for at in range(1, 6)]
    result = answer([port("bnc_75", "jack", name="Camera"), *radios], pairs=[[0, at] for at in range(1, 6)])
    joined = answer([port("n", "jack"), port("n", "jack")], owned=[owned("n plug", "n jack")])

    assert result.headline == ("Camera can't be joined with Radio 1, Radio 2, Radio 3 or 2 more: 50 Ω would meet 75 Ω.")
    assert joined.headline == "1 more adapter joins the pair."


def test_a_cause_that_is_a_sentence_stands_for_itself():
    """A port that may not carry what is asked is named with the rule it breaks."""
    result = answer([port("f", "plug", name="Loop"), port("f", "jack", name="Receiver")])

    assert result.headline.startswith("Loop can't be joined with Receiver. F: ")
    assert result.headline.endswith("power rating.")


def test_ports_of_one_name_are_told_apart():
    """Two ports of one name are called by it and their number."""
    ports = [port("n", "jack", name="Radio"), port("n", "jack", name="Radio"), port("n", "jack", name="Load")]

    assert answer(ports).pairs[0].names == ["Radio (port 1)", "Radio (port 2)"]
    assert answer(ports).pairs[1].names == ["Radio (port 1)", "Load"]


def test_a_thorough_answer_tells_the_price_too():
    """A longer search finds the same small kits, and the same price."""
    quick, thorough = answer(**STATION), answer(**STATION, search="thorough")

    assert thorough.adapters == quick.adapters
    assert thorough.price == quick.price
