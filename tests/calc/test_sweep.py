"""A sweep's answer names the joint that was made bad, with its size, and says what it can't tell."""

import numpy as np
import pytest
import skrf
from lines import ask, touchstone
from skrf.media import DefinedGammaZ0
from sweeps import draw

from jointwise.calc.errors import InputError
from jointwise.calc.feedline.elements import CableRun, Joint, KnownEnd
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.sweep.sweep import judge_sweep

NOISE = 0.01
SEEDS = {"resistance": 3, "shield": 1, "step": 1}
Z_0, VELOCITY = 50.0, 0.66
JUMPER = [
    {"kind": "joint", "family": "n"},
    {"kind": "cable", "cable": "rg_213", "length_m": 2.0},
    {"kind": "joint", "family": "n"},
]
SHORT = {"kind": "end", "what": "short"}
BAD_FILES = {  # what is wrong: the file, words of the sentence
    "binary": ("\x00\x01\x7fELF\x02", "on line 1"),
    "empty": ("", "on line 1"),
    "no data": ("# MHz S RI R 50\n", "on line 1, data after the option line"),
    "truncated": ("# MHz S RI R 50\n1 0.1 0\n2 0.1\n", "on line 3"),
    "wrong count": ("# MHz S RI R 50\n1 0.1 0\n2 0.1 0 0.3 0\n", "on line 3, 3 numbers"),
    "not a number": ("# MHz S RI R 50\n1 NaN 0\n", "on line 2, numbers such as"),
    "huge number": ("# MHz S RI R 50\n1 1e300 0\n", "on line 2, numbers of at most"),
    "falling frequency": ("! made up\n# MHz S RI R 50\n2 0 0\n1 0 0\n", "on line 4, a frequency above"),
    "no end": (
        "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 1\n[Number of Frequencies] 1\n[Network Data]\n1 0 0",
        "[End]",
    ),
    "three ports": ("[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 3\n[Network Data]\n", "on line 3"),
    "huge": ("! " + "x" * 3_500_000, "at most 3000000 characters"),
    "too many points": ("# MHz S RI R 50\n" + "".join(f"{at} 0 0\n" for at in range(1, 10_003)), "16 to 10001 points"),
    "too few points": ("# MHz S RI R 50\n1 0 0\n2 0 0\n", "a sweep of at least 16 points"),
}


def medium_of(band):
    """RG-213 at 20 °C as a medium of scikit-rf, by the catalogue's published attenuation."""
    law = next(cable for cable in ask("catalogue")["cables"] if cable["id"] == "rg_213")
    decibels = law["k1_db_per_m_sqrt_hz"] * np.sqrt(band.f) + law["k2_db_per_m_hz"] * band.f
    return DefinedGammaZ0(
        band, gamma=decibels * np.log(10) / 20 + 2j * np.pi * band.f / (299_792_458 * VELOCITY), z0=Z_0
    )


def resistor_line(ohm, length_m=10.0):
    """A sweep, by scikit-rf, of two cables with a resistor between them and a short at the end."""
    band = skrf.Frequency(1, 500, 401, "MHz")
    medium = medium_of(band)
    network = medium.line(length_m, "m") ** medium.resistor(ohm) ** medium.line(5.0, "m") ** medium.short()
    return band.f, network.s


@pytest.mark.parametrize("kind", SEEDS)
def test_the_bad_joint_is_named(kind):
    """A drawn line with a fault of each kind, measured with 1 % of noise, has that joint named."""
    drawn = draw(SEEDS[kind], kind)

    check = judge_sweep(drawn.request(drawn.noisy(NOISE))).line

    assert check.finding == "suspect"
    assert check.suspect == drawn.joint
    assert check.noise == pytest.approx(NOISE, rel=0.5)


def test_wet_cable_is_no_bad_joint():
    """A cable that is wet from a joint on is named as damaged, near that joint, and no joint is bad."""
    drawn = draw(0, "water")

    check = judge_sweep(drawn.request(drawn.noisy(NOISE))).line

    place = next(joint.distance_m for joint in check.joints if joint.element == drawn.joint)
    assert check.finding == "damage"
    assert abs(check.suspect - drawn.joint) == 1
    assert abs(check.faults[0].distance_m - place) < 1
    assert all(joint.state in ("sound", "behind", "hidden") for joint in check.joints)


def test_the_size_of_a_resistance_is_found():
    """The resistor that scikit-rf put between two cables is found within three of the stated deviations."""
    frequency, s = resistor_line(3.0)
    elements = [CableRun(cable="rg_213", length_m=10.0), Joint(family="n"), CableRun(cable="rg_213", length_m=5.0)]
    noise = np.random.default_rng(1).normal(size=(2, *s.shape)) * 0.003
    text = touchstone(frequency, s + noise[0] + 1j * noise[1])

    check = judge_sweep(SweepRequest(elements=elements, load=KnownEnd(what="short"), touchstone=text)).line

    size = check.candidates[0].sizes[0]
    assert (check.suspect, check.candidates[0].kind) == (1, "resistance")
    assert abs(size.value - 3.0) < 3 * (size.high - size.low) / 2
    assert size.high - size.low < 1


@pytest.mark.parametrize("seed", [4, 9])
def test_a_sound_line_is_not_accused(seed):
    """A drawn line without a fault has no joint named, and no candidates."""
    drawn = draw(seed, None)

    check = judge_sweep(drawn.request(drawn.noisy(NOISE))).line

    assert check.finding == "sound"
    assert check.suspect is None
    assert check.candidates == []


def test_the_echo_of_the_fault_stands_out():
    """The measured echo at the bad joint exceeds its threshold, and joints before it do not."""
    drawn = draw(1, "shield")

    check = judge_sweep(drawn.request(drawn.noisy(NOISE))).line

    assert [joint.element for joint in check.joints if joint.seen] == [drawn.joint]
    assert all(joint.shadowed == (joint.element > drawn.joint) for joint in check.joints)


def test_an_open_end_hides_the_joint_before_it():
    """No current flows at an open end, so the answer says that its joint can't be judged and asks for a short."""
    drawn = draw(0, "resistance")
    assert drawn.load.what == "open"

    result = judge_sweep(drawn.request(drawn.noisy(NOISE)))

    assert result.line.joints[-1].least_resistance_ohm is None
    assert result.line.faults or any("with a short" in words for words in result.advice)


def test_joints_in_one_place_are_not_told_apart():
    """Two joints with nothing between them are both named."""
    frequency, s = resistor_line(5.0)
    elements = [
        CableRun(cable="rg_213", length_m=10.0),
        Joint(family="n"),
        Joint(family="n"),
        CableRun(cable="rg_213", length_m=5.0),
    ]

    text = touchstone(frequency, s + 0.002 * np.random.default_rng(2).normal(size=s.shape))
    result = judge_sweep(SweepRequest(elements=elements, load=KnownEnd(what="short"), touchstone=text))

    assert "element 2" in result.verdict
    assert "element 3" in result.verdict


def test_another_line_is_said_not_to_fit():
    """A sweep of a line three times as long is not blamed on a joint."""
    frequency, s = resistor_line(0.0, length_m=30.0)
    elements = [CableRun(cable="rg_213", length_m=6.0), Joint(family="n"), CableRun(cable="rg_213", length_m=5.0)]

    request = SweepRequest(elements=elements, load=KnownEnd(what="short"), touchstone=touchstone(frequency, s))
    result = judge_sweep(request)

    assert result.line.finding == "no fit"
    assert "does not fit" in result.verdict


def test_the_reference_of_the_file_does_not_matter():
    """The same sweep renormalised by scikit-rf to 75 Ω gives the same answer."""
    drawn = draw(1, "shield")
    measured = drawn.noisy(NOISE)
    network = skrf.Network(f=drawn.frequency_hz, f_unit="Hz", s=measured[:, None, None], z0=Z_0)
    network.renormalize(75)
    moved = touchstone(drawn.frequency_hz, network.s, 75.0)

    own = judge_sweep(drawn.request(measured)).line
    other = judge_sweep(SweepRequest(elements=drawn.elements, load=drawn.load, touchstone=moved)).line

    assert other.candidates[0].sizes[0].value == pytest.approx(own.candidates[0].sizes[0].value, rel=1e-3)
    assert other.suspect == own.suspect


def test_an_earlier_sweep_shows_the_change():
    """Against a sweep from before the fault, the joint's echo has changed by its excess."""
    drawn = draw(1, "shield")
    sound = draw(1, None)
    before = touchstone(sound.frequency_hz, sound.reflection[:, None, None])

    check = judge_sweep(drawn.request(drawn.noisy(NOISE), earlier=before)).line

    at = next(joint for joint in check.joints if joint.element == drawn.joint)
    assert at.change > at.threshold
    assert len(check.profile.earlier) == len(check.profile.distance_m)


def jumper(ohm):
    """A two-port sweep, by scikit-rf, of the jumper as it should be with a resistor inside."""
    band = skrf.Frequency(10, 1000, 201, "MHz")
    medium = medium_of(band)
    return touchstone(band.f, (medium.line(1.0, "m") ** medium.resistor(ohm) ** medium.line(1.0, "m")).s)


def two_port(text, **more):
    """The answer about the jumper, in shade at 20 °C where its attenuation was published."""
    return ask("sweep", elements=JUMPER, load=SHORT, touchstone=text, ambient_temperature_c=20.0, **more)


def test_resistance_of_a_jumper_is_found():
    """The resistor in a jumper of scikit-rf's shows as its resistance in series."""
    part = two_port(jumper(2.0))["part"]

    assert part["resistance_ohm"] == pytest.approx(2.0, abs=0.1)


def test_a_good_jumper_passes_and_a_bad_one_fails():
    """A jumper as it should be keeps within the limits of its parts; with 20 Ω in it, it loses too much."""
    assert two_port(jumper(0.0))["part"]["passed"]
    bad = two_port(jumper(20.0))

    assert not bad["part"]["loss_passed"]
    assert "more than its parts may" in bad["verdict"]


@pytest.mark.parametrize("family", ["uhf", "n", "bnc", "sma"])
def test_a_good_pair_keeps_its_loss_limit(family):
    """What a good pair loses by heat and reflection is within the limit it is judged by, at every frequency."""
    elements = [{"kind": "joint", "family": family}]

    part = ask("sweep", elements=elements, load=SHORT, touchstone=jumper(0.0))["part"]

    assert all(most >= good for most, good in zip(part["limit_loss_db"], part["expected_loss_db"], strict=True))


def test_a_jumper_against_its_past():
    """An earlier sweep of the jumper tells how much its resistance has risen, beyond what two calibrations leave."""
    trend = two_port(jumper(6.5), earlier=jumper(0.5))["part"]["trend"]

    assert trend["resistance_change_ohm"] == pytest.approx(6.0, abs=0.1)
    assert "risen" in trend["sentence"]


def test_what_was_decided_in_reading_is_said_of_each_file():
    """A note of the sweep's own file stands as it is, those of an earlier sweep and of a part's file name it."""
    odd = jumper(0.0).replace("R 50", "R50")
    part = {"kind": "measured", "touchstone": odd, "name": "Arrester"}

    notes = ask("sweep", elements=[*JUMPER, part], load=SHORT, touchstone=odd, earlier=odd)["notes"]

    assert [note.partition("R50.0 on line 1")[0] for note in notes] == [
        "",
        "The earlier sweep: ",
        "The file of Arrester: ",
    ]


@pytest.mark.parametrize("fault", BAD_FILES)
def test_a_bad_file_is_refused_by_its_line(fault):
    """A file that can't be read gives one sentence that says where."""
    text, words = BAD_FILES[fault]

    with pytest.raises(InputError, match="touchstone") as refused:
        ask("sweep", elements=JUMPER, load=SHORT, touchstone=text)

    assert words in str(refused.value)


@pytest.mark.parametrize("joints", [0, 13])
def test_a_line_with_no_joint_or_too_many_is_refused(joints):
    """Joints are what is judged, each with every fault: a line has one to twelve of them."""
    elements = [JUMPER[1], *[JUMPER[0]] * joints]

    with pytest.raises(InputError, match=f'elements is "{joints} joints"; allowed: a line with 1 to 12 joints'):
        ask("sweep", elements=elements, load=SHORT, touchstone=touchstone(*resistor_line(0.0)))


def test_adapters_count_twice():
    """An adapter has two joints, so that a line of few elements may be too long."""
    adapter = {"kind": "joint", "family": "n", "adapter_to": "uhf"}

    with pytest.raises(InputError, match='elements is "17 parts"; allowed: at most 16 parts; an adapter is two'):
        ask("sweep", elements=[adapter, *[JUMPER[1]] * 15], load=SHORT, touchstone=touchstone(*resistor_line(0.0)))


def test_an_earlier_sweep_of_another_kind_is_refused():
    """A one-port can't be compared with a two-port."""
    with pytest.raises(InputError, match="earlier"):
        two_port(jumper(0.0), earlier=touchstone(*resistor_line(0.0)))
