"""Tuners against scikit-rf, the best of a search without wit, the balance of power, and in a line."""

import msgspec
import numpy as np
import pytest
import skrf
from hypothesis import given
from hypothesis import strategies as st
from lines import SEEDS, ask
from scenarios import examples
from scipy.optimize import minimize
from skrf.media import DefinedGammaZ0

from jointwise.calc.feedline.any_phase import ReflectionSize
from jointwise.calc.feedline.elements import FeedlineRequest
from jointwise.calc.feedline.feedline import feedline_of
from jointwise.calc.feedline.solve import solve
from jointwise.calc.feedline.tuner import TunerModel
from jointwise.calc.feedline.tuner_state import tuner_state
from jointwise.calc.physics.ratings import GENEROUS
from jointwise.calc.physics.scenario import Scenario
from jointwise.calc.physics.station import station_of
from jointwise.calc.waves.matching import MATCHED
from jointwise.calc.waves.tuner import Parts, branches, settled, tuner_two_port
from jointwise.calc.waves.two_port import cascade, drive, line_section

AGREE = 1e-9
Z_0 = 50.0
LOADS = 1000
SIXTY_DECIBELS = 1e-3  # of return loss, as a reflection
NETWORKS = ("l", "t", "pi")
SIZES = st.tuples(
    st.sampled_from(NETWORKS),
    st.floats(20, 500),
    st.floats(200, 5000),
    st.floats(1e-10, 5e-9),
    st.floats(1e-6, 5e-5),
).map(lambda drawn: Parts(*drawn))
TUNER = {"kind": "tuner", "network": "t"}
CABLE = {"kind": "cable", "cable": "rg_213", "length_m": 20.0}
BAD = {"kind": "vswr", "vswr": 5.0, "angle_deg": 170.0}


def drawn(seed, count=LOADS, most=0.98):
    """Frequencies [Hz] of short wave, rising, and reflections of random loads."""
    random = np.random.default_rng(seed)
    frequency = np.sort(np.exp(random.uniform(np.log(1.8e6), np.log(54e6), count)))
    return frequency, most * np.sqrt(random.uniform(size=count)) * np.exp(2j * np.pi * random.uniform(size=count))


def driven(parts, setting, frequency, load):
    """The waves on a tuner alone for 1 W of forward power."""
    return drive([tuner_two_port(parts, setting, frequency)], load, Z_0, net=False)


def arm(media, branch, in_series, there):
    """A branch of scikit-rf as a two-port, by frequency in series or across, or nothing at all."""
    two_port, across, nothing = media.match(nports=2), media.shunt(branch ** media.short()), media.thru()
    two_port.s = np.where(in_series[:, None, None], branch.s, across.s)
    two_port.s = np.where(there[:, None, None], two_port.s, nothing.s)
    return two_port


@pytest.mark.parametrize("network", NETWORKS)
@pytest.mark.parametrize("largest", [250e-12, 2e-9])
def test_the_match_is_one_in_scikit_rf(network, largest):
    """A ladder of lossy coils and capacitors with the values found has more than 60 dB of return loss in scikit-rf."""
    parts = Parts(network, 100.0, 1000.0, largest, 30e-6)
    frequency, load = drawn(seed=1)
    found = settled(parts, frequency, load, Z_0)
    media = DefinedGammaZ0(skrf.Frequency.from_f(frequency, unit="Hz"), z0=Z_0, gamma=2j * np.pi * frequency / 3e8)
    pulsation = 2 * np.pi * frequency

    def capacitor(farad):
        there = (farad > 0) & np.isfinite(farad)
        value = np.where(there, farad, largest)
        branch = media.resistor(1 / (pulsation * value * parts.capacitor_q)) ** media.capacitor(value)
        return arm(media, branch, found.tee, there)

    coil = media.resistor(pulsation * found.coil_h / parts.coil_q) ** media.inductor(found.coil_h)
    middle = arm(media, coil, ~found.tee, np.ones(LOADS, dtype=bool))

    seen = (capacitor(found.near_f) ** middle ** capacitor(found.far_f) ** media.load(load)).s[:, 0, 0]

    assert found.reachable.mean() > 0.3
    assert np.abs(seen[found.reachable]).max() < SIXTY_DECIBELS
    assert np.abs(seen) == pytest.approx(found.reflection, abs=AGREE)


@examples(40)
@given(parts=SIZES, seed=SEEDS)
def test_loss_by_part_adds_up(parts, seed):
    """What the parts of a tuner turn into heat is what its two-port loses, matched or not."""
    frequency, load = drawn(seed, 50)
    setting = settled(parts, frequency, load, Z_0)
    waves = driven(parts, setting, frequency, load)

    lost = branches(parts, setting, frequency, waves.at(0), waves.at(1)).lost_w

    assert lost.min() >= -AGREE
    assert lost.sum(axis=0) == pytest.approx(waves.power_w[0] - waves.power_w[1], abs=AGREE)


@examples(40)
@given(parts=SIZES, seed=SEEDS)
def test_a_setting_is_what_it_says(parts, seed):
    """The two-port of a setting leaves the reflection it says, and no part is larger than it can be made."""
    frequency, load = drawn(seed, 50)
    setting = settled(parts, frequency, load, Z_0)

    left = np.abs(driven(parts, setting, frequency, load).reflection(Z_0)[0])

    assert left == pytest.approx(setting.reflection, abs=AGREE)
    assert (setting.reachable == (setting.reflection < MATCHED)).all()
    assert (setting.coil_h <= parts.largest_coil_h * (1 + AGREE)).all()
    for farad in (setting.near_f, setting.far_f):
        assert (np.isinf(farad) | (farad <= parts.largest_capacitor_f * (1 + AGREE))).all()


@examples(15)
@given(parts=SIZES, seed=SEEDS)
def test_no_setting_is_better(parts, seed):
    """A search by value finds no match where none was found, and none with noticeably less loss."""
    frequency, load = (one[0] for one in drawn(seed, 1))
    setting = settled(parts, frequency, load, Z_0)
    layouts = {
        "t": [(True, 1, 1)],
        "pi": [(False, 1, 1)],
        "l": [(tee, *one) for tee in (True, False) for one in ((1, 0), (0, 1))],
    }
    lost = 1 - driven(parts, setting, frequency, load).power_w[1]
    for tee, near, far in layouts[parts.network]:
        for start in (0.1, 0.5, 0.9):

            def setting_of(sizes, tee=tee, near=near, far=far):
                share = np.clip(sizes, 1e-6, 1)
                absent = np.inf if tee else 0.0
                return setting._replace(
                    tee=np.array(tee),
                    near_f=np.array(share[0] * parts.largest_capacitor_f if near else absent),
                    coil_h=np.array(share[1] * parts.largest_coil_h),
                    far_f=np.array(share[2] * parts.largest_capacitor_f if far else absent),
                )

            def seen(sizes):
                waves = driven(parts, setting_of(sizes), frequency, load)
                return abs(waves.reflection(Z_0)[0])

            found = minimize(seen, np.full(3, start), method="Nelder-Mead", options={"xatol": 1e-9, "fatol": 1e-12})
            if setting.reachable:
                if found.fun < MATCHED and (parts.network != "l" or tee == setting.tee):
                    waves = driven(parts, setting_of(found.x), frequency, load)
                    assert lost < (1 - waves.power_w[1]) * 1.01 + 1e-6
            else:
                swr, nearest = ((1 + one) / (1 - one) for one in (setting.reflection, found.fun))
                assert swr < nearest * 1.01


def test_a_load_without_resistance_is_not_matched_for_nothing():
    """Looking at a short, an open or a pure reactance no more comes out than nothing, and all stays finite."""
    load = np.array([-1.0, 1.0, 1j, -1j])
    for network in NETWORKS:
        parts = Parts(network, 100.0, 1000.0, 1e-9, 30e-6)
        setting = settled(parts, 7e6, load, Z_0)
        waves = driven(parts, setting, 7e6, load)

        assert np.isfinite(waves.voltage).all()
        assert waves.power_w[1] == pytest.approx(0, abs=1e-9)


def model(**limits):
    """A T network tuner in a usual station."""
    parts = Parts("t", 100.0, 1000.0, 250e-12, 30e-6)
    return TunerModel(station_of(Scenario()), parts, **{"peak_v": np.inf, "current_a": np.inf} | limits)


def test_any_shape_of_loads():
    """Loads by exchange, variant and frequency are tuned each for itself."""
    frequency, load = drawn(2, 24)
    frequency, load = frequency[:4], load.reshape(3, 2, 4)

    together = model().settled(frequency, load).setting
    apart = model().settled(frequency[3], load[2, 1, 3]).setting

    assert together.near_f.shape == load.shape
    assert together.far_f[2, 1, 3] == pytest.approx(apart.far_f)


def test_a_tuner_leaves_nothing_of_any_phase():
    """Where every phase can be matched, nothing of a load of unknown phase is left; where not, what is left of them."""
    frequency = np.array([3.7e6, 14.2e6, 137e3])
    size = np.full(3, 0.6)

    left = model().any_phase(frequency, ReflectionSize(size, size))

    assert left.worst[:2] == pytest.approx(0, abs=MATCHED)
    assert 0.6 < left.likely[2] <= left.worst[2] <= 1


def test_limits_count_inside():
    """At the power allowed by voltage the worst capacitor has its limit, at that by current the coil."""
    tuner = model(peak_v=1000.0, current_a=3.0)
    frequency, load = drawn(3, 20)
    tuned = tuner.settled(frequency, load)
    waves = drive([tuned.two_port(frequency)], load, Z_0, net=False)
    inside = tuned.branches(waves, 0, frequency)

    heat_w, voltage_w = tuned.allowed(frequency, tuned.stress(waves, 0, frequency))

    assert np.sqrt(2 * voltage_w) * np.abs(inside.voltage[[0, 2]]).max(axis=0) == pytest.approx(1000.0)
    mean_w = heat_w * tuner.station.duty_factor * tuner.station.transmit_share
    assert np.sqrt(mean_w) * np.abs(inside.current[1]) == pytest.approx(3.0)


@pytest.mark.parametrize("network", NETWORKS)
def test_a_tuner_matches_the_whole_line(network):
    """At the transmitter a tuner matches what it sees through the line at every band it reaches; power adds up."""
    tuner = TUNER | {"network": network, "largest_capacitor_f": 3e-9}
    answer = ask("line", elements=[tuner, CABLE], load=BAD, band="80m", power_w=100.0)

    assert answer["input"]["vswr"] == pytest.approx(1, abs=1e-5)
    lost = [part["lost_w"] for part in answer["parts"]]
    assert answer["delivered_w"] + sum(lost) == pytest.approx(100, rel=1e-8)
    within = [swr for band, swr in zip(answer["sweep"]["band"], answer["sweep"]["vswr"], strict=True) if band == "20m"]
    assert within == pytest.approx([1] * len(within), abs=1e-5)


def test_a_tuner_at_the_antenna_spares_the_line():
    """At the feed point a tuner takes the standing wave off the cable; at the transmitter it stays there."""
    at_rig = ask("line", elements=[TUNER, CABLE], load=BAD, band="80m")
    at_antenna = ask("line", elements=[CABLE, TUNER], load=BAD, band="80m")

    assert at_rig["parts"][1]["vswr"] > 3
    assert at_antenna["parts"][0]["vswr"] == pytest.approx(1, abs=0.02)
    assert at_antenna["parts"][0]["loss_db"] < at_rig["parts"][1]["loss_db"]


def test_a_tuner_follows_every_line_drawn():
    """In the spread of a line a tuner at the transmitter matches whatever is drawn, and its limits bear the rest."""
    tuner = TUNER | {"voltage_limit_v": 1000.0, "current_limit_a": 3.0}
    request = {"elements": [tuner, CABLE], "load": {"kind": "vswr", "vswr": 5.0}, "band": "80m", "power_w": 100.0}

    spread = ask("spread", **request, draws=500)["bands"][0]
    alone = [
        ask("line", **request | {"load": BAD | {"angle_deg": angle}})["parts"][0]["margin_db"]
        for angle in range(0, 360, 10)
    ]

    assert spread["vswr"] == pytest.approx([1] * len(spread["vswr"]), abs=1e-5)
    assert min(alone) - 0.2 < spread["margin_db"][0] < spread["margin_db"][-1] < max(alone) + 0.2


def state_of(**fields):
    """The state of the tuner that a line begins with, at 100 W, by the generous ratings, and its part of the answer."""
    request = {"elements": [TUNER | fields, CABLE], "load": BAD, "band": "80m", "power_w": 100.0}
    feedline = feedline_of(msgspec.convert(request, FeedlineRequest))
    frequency = np.array([feedline.frequency_hz])
    waves = solve(feedline, frequency, GENEROUS).waves
    return tuner_state(feedline.links[0].models[GENEROUS], waves, 0, frequency, 100.0), ask("line", **request)["parts"][
        0
    ]


def test_state_of_a_tuner_that_matches():
    """The state lists the parts in order, their losses add up to the tuner's, and the sentence has the numbers."""
    state, part = state_of()

    assert state.reachable
    assert [one.what for one in state.parts] == ["capacitor", "coil", "capacitor"]
    assert state.parts[2].farad == pytest.approx(250e-12)
    assert sum(one.lost_w for one in state.parts) == pytest.approx(part["lost_w"], rel=1e-6)
    assert max(one.peak_voltage_v for one in state.parts[::2]) == pytest.approx(part["peak_voltage_v"], rel=0.01)
    assert state.sentence.startswith("It matches and turns ")
    assert f"{state.parts[1].current_a:.2g} A in the coil" in state.sentence


def test_state_of_a_tuner_that_can_not_match():
    """A tuner whose parts are too small says how near it comes and what ends it."""
    state, _ = state_of(network="l", largest_capacitor_f=100e-12)

    assert not state.reachable
    assert len(state.parts) == 2
    assert "the nearest it comes to is an SWR of" in state.sentence
    assert "at its largest" in state.sentence


def test_a_tuner_that_is_set_stays_so():
    """Once set, a tuner does not follow its load; its two-port is that of its values at every frequency asked."""
    tuned = model().settled(np.array([3.7e6]), np.array([0.5j]))

    assert tuned.settled(np.array([3.7e6]), np.array([-0.5j])) is tuned
    elsewhere = tuned.two_port(np.array([7.4e6]))
    alone = cascade([line_section(Z_0, 0j), elsewhere])
    assert abs(drive([alone], np.array([0.5j]), Z_0, net=False).reflection(Z_0)[0, 0]) > 0.1
