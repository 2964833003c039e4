"""Touchstone texts are read as scikit-rf writes them and as the specification prints them; all else is refused.

The worked examples are those of the Touchstone File Format Specification, version 2.1 (IBIS Open Forum, 2024),
taken from copies of them in the example files of public parsers.
"""

import json
import math

import numpy as np
import pytest
import skrf
from hypothesis import given
from hypothesis import strategies as st
from scenarios import examples

from jointwise.calc.errors import InputError
from jointwise.calc.waves.measured import Measured, at_frequencies, covered, is_passive
from jointwise.calc.waves.touchstone import MOST_CHARACTERS, read_touchstone
from jointwise.calc.waves.touchstone_table import MOST_FREQUENCIES

FIELD = "elements[2].touchstone"
READING = {"ri": 1e-12, "ma": 1e-9, "db": 1e-9}  # rounding of the conversion that each form needs
CONVERSION = 1e-9  # rounding of Y or Z, both ways, of matrices not near to singular

EXAMPLE_8 = """! 1-port Z-parameter file, multiple frequency points
[Version] 2.1
# MHz Z MA
[Number of Ports] 1
[Number of Frequencies] 5
[Reference] 20.0
[Network Data]
! freq magZ11 angZ11
100 74.25 -4
200 60 -22
300 53.025 -45
400 30 -62
500 0.75 -89
[End]"""

EXAMPLE_9 = """! 1-port S-parameter file, single frequency point
# MHz S MA R 50
! freq magS11 angS11
2.000 0.894 -12.136"""

EXAMPLE_10 = """! 1-port Z-parameter file, multiple frequency points
# MHz Z MA R 75
! freq magZ11 angZ11
100 0.99 -4
200 0.80 -22
300 0.707 -45
400 0.40 -62
500 0.01 -89"""

EXAMPLE_12 = """! 2-port H-parameter file, single frequency point
# kHz H MA R 1
! freq magH11 angH11 magH21 angH21 magH12 angH12 magH22 angH22
2 0.95 -26 3.57 157 0.04 76 0.66 -14"""

EXAMPLE_14 = """! 2-port S-parameter file, three frequency points
# GHz S RI R 50.0
! freq ReS11 ImS11 ReS21 ImS21 ReS12 ImS12 ReS22 ImS22
1.0000 0.3926 -0.1211 -0.0003 -0.0021 -0.0003 -0.0021 0.3926 -0.1211
2.0000 0.3517 -0.3054 -0.0096 -0.0298 -0.0096 -0.0298 0.3517 -0.3054
10.000 0.3419 0.3336 -0.0134 0.0379 -0.0134 0.0379 0.3419 0.3336"""

EXAMPLE_19 = """! 2-port network, S-parameter and noise data
! Default MA format, GHz frequencies, 50-ohm reference, S-parameters
# !
! NETWORK PARAMETERS
2 0.95 -26 3.57 157 0.04 76 0.66 -14
22 0.60 -144 1.30 40 0.14 40 0.56 -85
! NOISE PARAMETERS
4 0.7 0.64 69 0.38
18 2.7 0.46 -33 0.40
"""

EXAMPLE_20 = """! 2-port network, S-parameter and noise data
[Version] 2.1
#
[Number of Ports] 2
[Two-Port Data Order] 21_12
[Number of Frequencies] 2
[Number of Noise Frequencies] 2
[Reference] 50 25.0
[Network Data]
2 0.95 -26 3.57 157 0.04 76 0.66 -14
22 0.60 -144 1.30 40 0.14 40 0.56 -85
[Noise Data]
4 0.7 0.64 69 19
18 2.7 0.46 -33 20
[End]"""

ONE_PORT = "# MHz S RI R 50\n1 0.1 0.2\n2 0.3 0.4\n"
TWO_PORT = "# MHz S RI R 50\n1 .11 0 .21 0 .12 0 .22 0\n2 .11 0 .21 0 .12 0 .22 0\n"
VERSION_2 = """[Version] 2.0
# MHz S RI R 50
[Number of Ports] 2
[Two-Port Data Order] 21_12
[Number of Frequencies] 1
[Reference] 50
50
[Begin Information]
[Maker] anything ! at all
[End Information]
[Matrix Format] Full
[Network Data]
1 .11 0 .21 0 .12 0 .22 0
[End]
"""
NOISY = VERSION_2.replace("[End]\n", "[Noise Data]\n1 2 .5 30 .3\n[End]\n")


def polar(magnitude, degrees):
    """A complex number by magnitude and angle in degrees."""
    return magnitude * complex(math.cos(math.radians(degrees)), math.sin(math.radians(degrees)))


def version_2(**changes):
    """The version 2 text with lines, named by how they start, put otherwise; None leaves one out."""
    lines = VERSION_2.splitlines()
    for start, line in changes.values():
        (place,) = [number for number, text in enumerate(lines) if text.startswith(start)]
        lines[place : place + 1] = [] if line is None else [line]
    return "\n".join(lines)


def changed(start, line):
    """The version 2 text with the one line that starts like this put otherwise."""
    return version_2(only=(start, line))


def refusal(text):
    """The error with which a text is refused."""
    with pytest.raises(InputError) as caught:
        read_touchstone(text, FIELD)
    assert str(caught.value).encode()  # it must be possible to send the sentence
    return caught.value


def is_read(text):
    """Whether a text is read and not refused."""
    try:
        read_touchstone(text, FIELD)
    except InputError:
        return False
    return True


@st.composite
def networks(draw, ports=(1, 2), lowest=1e-3):
    """A small network of one or two ports whose matrices I - S and I + S are far from singular."""
    count = draw(st.sampled_from(ports))
    points = draw(st.integers(1, 5))
    steps = draw(st.lists(st.integers(1, 10**9), min_size=points, max_size=points))
    size = points * count * count
    magnitudes = draw(st.lists(st.floats(lowest, 0.45), min_size=size, max_size=size))
    angles = draw(st.lists(st.floats(-180, 180), min_size=size, max_size=size))
    s = np.array(magnitudes) * np.exp(1j * np.deg2rad(angles))
    frequency = skrf.Frequency.from_f(np.cumsum(steps), unit="hz")
    frequency.unit = draw(st.sampled_from(["hz", "khz", "mhz", "ghz"]))
    reference = draw(st.sampled_from([50, 75, 16.7]))
    return skrf.Network(frequency=frequency, s=s.reshape(points, count, count), z0=reference, name="drawn")


def written(network, **how):
    """The text that scikit-rf writes for a network."""
    return network.write_touchstone(return_string=True, r_ref=network.z0[0, 0].real, **how)


@examples(300)
@given(
    network=networks(),
    form=st.sampled_from(sorted(READING)),
    version=st.sampled_from(["1.0", "2.0", "2.1"]),
    end=st.sampled_from(["\n", "\r", "\r\n", "\n\n \r\n"]),
)
def test_s_parameters_are_read_as_scikit_rf_writes_them(network, form, version, end):
    """S of any form, unit, version and line end comes back at its own frequencies and reference."""
    read = read_touchstone(written(network, form=form, version=version).replace("\n", end), FIELD)

    np.testing.assert_allclose(read.s, network.s, rtol=0, atol=READING[form])
    np.testing.assert_allclose(read.frequencies_hz, network.f, rtol=1e-14)
    assert read.reference_ohm == network.z0[0, 0].real
    assert read.notes == []
    assert (read.s.dtype, read.frequencies_hz.dtype) == (np.complex128, np.float64)


@examples(300)
@given(
    network=networks(),
    form=st.sampled_from(sorted(READING)),
    version=st.sampled_from(["1.0", "2.0", "2.1"]),
    parameter=st.sampled_from("YZ"),
)
def test_y_and_z_parameters_become_the_s_they_were_made_from(network, form, version, parameter):
    """Y and Z, normalised in version 1 and in siemens or ohms in version 2, give back the S of the network."""
    read = read_touchstone(written(network, form=form, version=version, parameter=parameter), FIELD)

    np.testing.assert_allclose(read.s, network.s, rtol=0, atol=CONVERSION)
    assert read.reference_ohm == network.z0[0, 0].real


@examples(100)
@given(network=networks(ports=(2,)), order=st.permutations(["mHz", "s", "Ri", "r 50"]))
def test_options_stand_in_any_order_and_letter_case(network, order):
    """The option line reads alike in any order and case."""
    network.frequency.unit = "mhz"
    data = "".join(line for line in written(network).splitlines(True) if line[0] not in "!#")

    read = read_touchstone(f"# {' '.join(order)}\n{data}", FIELD)

    np.testing.assert_allclose(read.s, network.s, rtol=0, atol=READING["ri"])
    np.testing.assert_allclose(read.frequencies_hz, network.f, rtol=1e-14)


@pytest.mark.parametrize("breaks", [(1,), (3,), (5,), (7,), (3, 5), (1, 3, 5, 7)])
def test_pairs_carried_over_to_the_next_line_are_read(breaks):
    """A two-port whose pairs are wrapped over several lines reads like the same on one line."""
    option, *rows = TWO_PORT.splitlines()
    wrapped = [option]
    for row in rows:
        words = row.split()
        wrapped += [" ".join(words[a:b]) + " ! part" for a, b in zip((0, *breaks), (*breaks, 9), strict=True)]

    read = read_touchstone("\n".join(wrapped), FIELD)

    assert read.s.tolist() == read_touchstone(TWO_PORT, FIELD).s.tolist()


def test_version_1_two_ports_give_s21_before_s12():
    """The second pair of a version 1 two-port is S21."""
    assert read_touchstone(TWO_PORT, FIELD).s[0].tolist() == [[0.11, 0.12], [0.21, 0.22]]


@pytest.mark.parametrize(
    ("order", "matrix", "row", "s"),
    [
        ("21_12", "Full", ".11 0 .21 0 .12 0 .22 0", [[0.11, 0.12], [0.21, 0.22]]),
        ("12_21", "full", ".11 0 .12 0 .21 0 .22 0", [[0.11, 0.12], [0.21, 0.22]]),
        ("12_21", "Lower", ".11 0 .21 0 .22 0", [[0.11, 0.21], [0.21, 0.22]]),
        ("21_12", "UPPER", ".11 0\n.12 0 .22 0", [[0.11, 0.12], [0.12, 0.22]]),
    ],
)
def test_version_2_states_the_order_of_its_elements(order, matrix, row, s):
    """Data order and matrix format of version 2 put each pair in its place."""
    text = version_2(
        order=("[Two-Port", f"[two-port  data order] {order}"),
        matrix=("[Matrix", f"[Matrix Format] {matrix}"),
        row=("1 .11", f"1 {row}"),
    )

    read = read_touchstone(text, FIELD)

    assert read.s.tolist() == [s]
    assert read.frequencies_hz.tolist() == [1e6]
    assert read.reference_ohm == 50


def test_a_byte_order_mark_is_no_part_of_the_text():
    """A text that an editor has marked as Unicode reads like the plain one."""
    assert read_touchstone("\ufeff" + ONE_PORT, FIELD).s.tolist() == [[[0.1 + 0.2j]], [[0.3 + 0.4j]]]


def test_example_9_of_the_specification():
    """A one-port S-parameter file of a single frequency is read."""
    read = read_touchstone(EXAMPLE_9, FIELD)

    assert read.frequencies_hz.tolist() == [2e6]
    assert read.s[0, 0, 0] == pytest.approx(polar(0.894, -12.136), rel=1e-12)


def test_examples_8_and_10_of_the_specification_describe_the_same_impedance():
    """The normalised Z of version 1 and the Z in ohms of version 2 are the same impedances, as printed."""
    normalised, in_ohms = (read_touchstone(text, FIELD) for text in (EXAMPLE_10, EXAMPLE_8))
    impedances = [one.reference_ohm * (1 + one.s) / (1 - one.s) for one in (normalised, in_ohms)]

    assert (normalised.reference_ohm, in_ohms.reference_ohm) == (75, 20)
    np.testing.assert_allclose(*impedances, rtol=1e-12)
    assert impedances[0][1, 0, 0] == pytest.approx(polar(60, -22), rel=1e-12)
    assert normalised.frequencies_hz.tolist() == [1e8, 2e8, 3e8, 4e8, 5e8]


def test_example_12_of_the_specification_is_refused_in_words():
    """H-parameters are refused at the option line."""
    assert "on line 2, S-, Y- or Z-parameters, as G and H aren't read" in str(refusal(EXAMPLE_12))


def test_example_14_of_the_specification():
    """A two-port S-parameter file of three frequencies is read, and it is passive."""
    read = read_touchstone(EXAMPLE_14, FIELD)

    assert read.frequencies_hz.tolist() == [1e9, 2e9, 1e10]
    assert read.s[1].tolist() == [[0.3517 - 0.3054j, -0.0096 - 0.0298j], [-0.0096 - 0.0298j, 0.3517 - 0.3054j]]
    assert is_passive(read.s).all()


def test_example_19_of_the_specification():
    """All options may be left out; noise data behind a version 1 two-port is left aside with a note."""
    read = read_touchstone(EXAMPLE_19, FIELD)

    assert read.frequencies_hz.tolist() == [2e9, 22e9]
    assert read.reference_ohm == 50
    assert read.s[0, 1, 0] == pytest.approx(polar(3.57, 157), rel=1e-12)
    assert read.s[1, 0, 1] == pytest.approx(polar(0.14, 40), rel=1e-12)
    assert read.notes == ["The noise data from line 8 on are not used."]
    assert not is_passive(read.s).any()


def test_example_20_of_the_specification_has_its_second_port_converted():
    """Of ports with unlike references the second is brought to that of the first, as scikit-rf does; like ones stay."""
    alike = read_touchstone(EXAMPLE_20.replace("25.0", "50"), FIELD)
    unlike = read_touchstone(EXAMPLE_20, FIELD)
    network = skrf.Network(f=alike.frequencies_hz, f_unit="hz", s=alike.s, z0=np.tile([50, 25], (2, 1)))
    network.renormalize(50)

    np.testing.assert_allclose(alike.s, read_touchstone(EXAMPLE_19, FIELD).s, rtol=1e-15)
    assert alike.notes == ["The noise data from line 12 on are not used."]
    np.testing.assert_allclose(unlike.s, network.s, rtol=0, atol=1e-12)
    assert unlike.reference_ohm == 50
    assert unlike.notes[1:] == ["Port 2, measured against 25 ohm, is converted to the 50 ohm of port 1."]


def commented(*comments, options="# MHz S RI"):
    """A one-port text whose frequencies each have a comment behind them, as simulators write them."""
    return "\n".join([options, *(f"{mhz} 0 0\n! Port Impedance {words}" for mhz, words in enumerate(comments, 1))])


PLAIN_BESIDE_THE_STANDARD = [  # text, the text that means the same, words of the note
    (ONE_PORT.replace("2 0.3", "# GHz S MA R 75\n2 0.3"), ONE_PORT, "The option line on line 3 is not used"),
    (ONE_PORT + "#\n", ONE_PORT, "The option line on line 4 is not used"),
    (changed("[Matrix", "# GHz Z DB"), VERSION_2, "The option line on line 11 is not used"),
    (changed("1 .11", "# MHz\n1 .11 0 .21 0 .12 0 .22 0"), VERSION_2, "The option line on line 13 is not used"),
    (ONE_PORT.replace("R 50", "r50"), ONE_PORT, "r50 on line 1 is read as R 50."),
    (ONE_PORT.replace("R 50", "R75.0"), ONE_PORT.replace("50", "75"), "R75.0 on line 1 is read as R 75.0."),
    ("# DB\n1 -inf 0\n2 -Inf 9\n3 -1.#INF 0", "# MA\n1 0 0\n2 0 0\n3 0 0", "Levels of -inf dB, at 3 frequencies"),
    (VERSION_2.replace("[End]\n", ""), VERSION_2, "The file has no [End], but every frequency it states."),
    (VERSION_2.replace("[End]\n", "\x1a"), VERSION_2, "The file has no [End]"),
    (ONE_PORT + "\x1amore", ONE_PORT, "What follows the file's end mark is not read."),
    (commented("75 0", "75.0 1e-9"), commented(options="# MHz S RI R 75") + "\n1 0 0\n2 0 0", "impedance, 75 ohm, is"),
]


@pytest.mark.parametrize(("text", "same", "words"), PLAIN_BESIDE_THE_STANDARD)
def test_what_is_plain_beside_the_standard_is_read_with_a_note(text, same, words):
    """What programs write that the standard does not know is read as what it means, and the note says so."""
    read, meant = (read_touchstone(one, FIELD) for one in (text, same))

    assert read.s.tolist() == meant.s.tolist()
    assert read.frequencies_hz.tolist() == meant.frequencies_hz.tolist()
    assert read.reference_ohm == meant.reference_ohm
    assert [words in note for note in read.notes] == [True]


@pytest.mark.parametrize(
    "text",
    [
        ONE_PORT + "\x1a",
        ONE_PORT + "\r\n\x1a\x1a\0\0",
        VERSION_2 + "\x1a",
        changed("[Matrix", "[Mixed-Mode Order] S1 s2"),
        commented("50 0", "50.00000 0", options="# MHz S RI R 50"),
        commented("50 0", "50 0", options="# MHz S RI R 50.01"),
        commented("of the line, see above", "75 0 75 0"),
    ],
)
def test_what_changes_nothing_is_read_without_a_note(text):
    """An end mark at the end, modes that are plain ports and comments that agree need no word."""
    assert read_touchstone(text, FIELD).notes == []


@examples(200)
@given(network=networks(ports=(2,)), other_ohm=st.floats(5, 500))
def test_unlike_references_are_converted_as_scikit_rf_does(network, other_ohm):
    """S against two unlike references comes back against the first, in either version."""
    first_ohm = network.z0[0, 0].real
    lines = written(network).splitlines()
    (option,) = [at for at, line in enumerate(lines) if line.startswith("#")]
    lines[option] += f" {other_ohm!r}"
    network.z0 = np.tile([first_ohm, other_ohm], (len(network.f), 1))
    network.renormalize(first_ohm)

    read = read_touchstone("\n".join(lines), FIELD)

    np.testing.assert_allclose(read.s, network.s, rtol=0, atol=CONVERSION)
    assert read.reference_ohm == first_ohm


def test_impedances_in_ohms_do_not_depend_on_the_references_they_come_with():
    """Z in ohms of a version 2 file gives the same S at port 1's reference whatever port 2 was measured against."""
    row = "1 80 5 20 -9 20 -9 30 1"
    text = version_2(options=("#", "# MHz Z RI"), row=("1 .11", row), reference=("[Reference]", "[Reference] 75"))
    unlike, alike = (read_touchstone(text.replace("\n50\n", f"\n{ohm}\n"), FIELD) for ohm in (20, 75))

    np.testing.assert_allclose(unlike.s, alike.s, rtol=0, atol=1e-12)


MALFORMED = [  # text, value shown, words of what is allowed
    ("", '""', "on line 1, an option line such as # MHz S RI R 50"),
    ("\n! nothing\n\n", '""', "on line 1, an option line such as"),
    ("1 0 0\n", '"1 0 0"', "on line 1, an option line such as"),
    ("\n\n\x00\x01\x02", '"\\u0000\\u0001\\u0002"', "on line 3, an option line such as"),
    ("\x89PNG\r\n\x1a\n# MHz", '"\\u0089PNG"', "on line 1, an option line such as"),
    ("# MHz S RI R 50", '"# MHz S RI R 50"', "on line 1, data after the option line"),
    ("# THz S RI R 50\n1 0 0", '"# THz S RI R 50"', "on line 1, options, each at most once: Hz, kHz, MHz or GHz"),
    ("# MHz GHz S RI\n1 0 0", '"# MHz GHz S RI"', "on line 1, options, each at most once"),
    ("# MHz S RI R\n1 0 0", '"# MHz S RI R"', "R with the reference resistance"),
    ("# 50 MHz\n1 0 0", '"# 50 MHz"', "on line 1, options, each at most once"),
    ("# G\n1 0 0", '"# G"', "on line 1, S-, Y- or Z-parameters, as G and H aren't read"),
    ("# R 0\n1 0 0", '"# R 0"', "on line 1, a reference resistance from 0.001 to 1e+06 ohm"),
    ("# R -50\n1 0 0", '"# R -50"', "a reference resistance from 0.001 to 1e+06 ohm"),
    ("# R 50 75\n1 0 0", '"# R 50 75"', "on line 1, one reference resistance for each port"),
    ("# R50 R50\n1 0 0", '"# R50 R50"', "on line 1, numbers such as"),
    (ONE_PORT + "3 -inf 0", '"3 -inf 0"', "on line 4, numbers such as 14.2 or -3e-4"),
    ("# DB\n1 0 -inf", '"1 0 -inf"', "on line 2, numbers such as"),
    ("# DB\n-inf 0 0", '"-inf 0 0"', "on line 2, a frequency of 0 or more"),
    ("# R -inf\n1 0 0", '"# R -inf"', "a reference resistance from 0.001 to 1e+06 ohm"),
    (commented("50 3"), '"! Port Impedance 50 3"', "on line 3, a pure resistance as port impedance"),
    (commented("1e999 0"), '"! Port Impedance 1e999 0"', "on line 3, a pure resistance as port impedance"),
    (commented("50 0", "51 0"), '"! Port Impedance 51 0"', "on line 5, the same port impedance at all frequencies"),
    (
        commented("75 0", options="# MHz S RI R 50"),
        '"! Port Impedance 75 0"',
        "on line 3, the option line's 50 ohm as port impedance, as either could be meant",
    ),
    ("# R 50 50 50\n1 0 0 0 0 0 0 0 0", '"# R 50 50 50"', "on line 1, one reference resistance for each port"),
    ("# R 50+1j\n1 0 0", '"# R 50+1j"', "on line 1, numbers such as 14.2 or -3e-4"),
    ("# R nan\n1 0 0", '"# R nan"', "on line 1, numbers such as"),
    (TWO_PORT + "3 0.1 0.2 0.3\n", '"3 0.1 0.2 0.3"', "on line 4, 3 numbers for each frequency of a one-port, or 9"),
    (TWO_PORT + "3 0.1 0.2", '"3 0.1 0.2"', "on line 4, 9 numbers for each frequency of a two-port"),
    (TWO_PORT + "3 0.1 0.2 1 0", '"3 0.1 0.2 1 0"', "on line 4, 9 numbers for each frequency of a two-port"),
    (ONE_PORT + "3 0.1", '"3 0.1"', "on line 4, 3 numbers for each frequency of a one-port"),
    (ONE_PORT + "3", '"3"', "on line 4, 3 numbers for each frequency of a one-port"),
    ("#\n1 0 0 0 0 0 0\n0 0 0 0 0 0\n0 0 0 0 0 0", '"0 0 0 0 0 0"', "on line 3, 3 numbers for each frequency of a one"),
    ("#\n1 0 0 0 0 0 0 0 0\n0 0 0 0 0 0 0 0", '"0 0 0 0 0 0 0 0"', "on line 3, 3 numbers for each frequency of a one"),
    ("#\n1 0 0 0 0", '"1 0 0 0 0"', "on line 2, 3 numbers for each frequency of a one-port, or 9"),
    ("#\n" + "1 " * 500, f'"{"1 " * 29}…', "on line 2, 3 numbers for each frequency of a one-port, or 9"),
    ("#\n1 2\n3 4 5", '"1 2"', "on line 2, a frequency followed by pairs of numbers"),
    (ONE_PORT + "2 0 0", '"2 0 0"', "on line 4, a frequency above the one before"),
    (ONE_PORT + "1.5 0 0", '"1.5 0 0"', "on line 4, a frequency above the one before"),
    (TWO_PORT + "1 0 0 0 0 0 0 0 0", '"1 0 0 0 0 0 0 0 0"', "on line 4, a frequency above the one before"),
    (TWO_PORT + "1 0 0 0 0\n2 0 0", '"2 0 0"', "on line 5, 5 numbers for each frequency of the noise data"),
    ("#\n-1 0 0", '"-1 0 0"', "on line 2, a frequency of 0 or more"),
    (ONE_PORT + "3 nan 0", '"3 nan 0"', "on line 4, numbers such as 14.2 or -3e-4"),
    (ONE_PORT + "3 0 inf", '"3 0 inf"', "on line 4, numbers such as"),
    (ONE_PORT + "3 0 1_0", '"3 0 1_0"', "on line 4, numbers such as"),
    (ONE_PORT + "3 0 ٣", '"3 0 ٣"', "on line 4, numbers such as"),
    (ONE_PORT + "3 0 1-2", '"3 0 1-2"', "on line 4, numbers such as"),
    (ONE_PORT + "3 0 0,5", '"3 0 0,5"', "on line 4, numbers such as"),
    (ONE_PORT + "3 0 1e999", '"3 0 1e999"', "on line 4, numbers of at most 1e+12 in size"),
    (ONE_PORT + "3 0 -1.1e12", '"3 0 -1.1e12"', "on line 4, numbers of at most 1e+12 in size"),
    (ONE_PORT + "[End]", '"[End]"', "on line 4, numbers such as"),
    ("# DB\n1 0 0\n2 240.1 0", '"2 240.1 0"', "on line 3, levels of at most 240 dB"),
    ("# Z RI\n1 0 0\n2 -1 0", '"2 -1 0"', "on line 3, parameters that have an S-matrix"),
    ("# Y RI\n1 0 0 1 0 1 0 0 0", '"1 0 0 1 0 1 0 0 0"', "on line 2, parameters that have an S-matrix"),
    ("[Version\n", '"[Version"', "on line 1, a keyword between [ and ]"),
    (changed("[Version]", "[Version] 1.0"), '"[Version] 1.0"', "on line 1, [Version] 2.0 or [Version] 2.1"),
    (changed("[Version]", "[Version]"), '"[Version]"', "on line 1, [Version] 2.0 or [Version] 2.1"),
    (changed("#", None), '"[Network Data]"', "on line 11, the option line before the data"),
    (changed("[Number of P", None), '"[Network Data]"', "on line 11, [Number of Ports] before the data"),
    (changed("[Number of F", None), '"[Network Data]"', "on line 11, [Number of Frequencies] before the data"),
    (changed("[Two-Port", None), '"[Network Data]"', "on line 11, [Two-Port Data Order] before the data"),
    (changed("[Network", None), '"1 .11 0 .21 0 .12 0 .22 0"', "on line 12, keywords before the data, each once"),
    (changed("[End]", None), '"1 .11 0 .21 0 .12 0 .22 0"', "on line 13, data closed by [End]"),
    (changed("[End]", "[Finish]"), '"[Finish]"', "on line 14, data closed by [End]"),
    (changed("[End]", "[End]\nmore"), '"more"', "on line 15, nothing but comments after [End]"),
    (changed("[Number of P", "[Number of Ports] 3"), '"[Number of Ports] 3"', "[Number of Ports] followed by 1 or 2"),
    (changed("[Two-Port", "[Two-Port Data Order] x"), '"[Two-Port Data Order] x"', "followed by 21_12 or 12_21"),
    (
        changed("[Matrix", "[Matrix Format]"),
        '"[Matrix Format]"',
        "on line 11, [Matrix Format] followed by full or lower",
    ),
    (
        changed("[Number of F", "[Number of Frequencies] 0"),
        "Frequencies] 0",
        "[Number of Frequencies] from 1 to 100001",
    ),
    (changed("[Number of F", "[Number of Frequencies] 1e3"), "] 1e3", "[Number of Frequencies] from 1 to 100001"),
    (
        changed("[Number of F", "[Number of Frequencies] 2"),
        '"[End]"',
        "as many frequencies before [End] as stated, 2, not 1",
    ),
    (changed("50", None), '"[Reference] 50"', "on line 6, one reference resistance for each port"),
    (changed("[Reference]", "[Reference] (50,0)"), '"[Reference] (50,0)"', "on line 6, numbers such as"),
    (changed("[End Inf", None), '"[Begin Information]"', "on line 8, [Begin Information] closed by [End Information]"),
    (
        changed("[Matrix", "[Mixed-Mode Order] D1,2"),
        '"[Mixed-Mode Order] D1,2"',
        "on line 11, a file of plain ports, as differential and common modes aren't read",
    ),
    (changed("[Matrix", "[Reference] 50 50"), '"[Reference] 50 50"', "on line 11, keywords before the data, each once"),
    (
        changed("1 .11", "1 .11 0 .21 0 .12 0"),
        '"1 .11 0 .21 0 .12 0"',
        "on line 13, 9 numbers for each frequency of a two",
    ),
    (changed("1 .11", "# MHz"), '"[End]"', "on line 14, as many frequencies before [End] as stated, 1, not 0"),
    ("[Version] 2.0", '"[Version] 2.0"', "on line 1, [Network Data] before the end of the file"),
]


@pytest.mark.parametrize(("text", "value", "words"), MALFORMED)
def test_a_malformed_text_is_refused_in_one_sentence(text, value, words):
    """A malformed text is refused with the line, its number and what may stand there."""
    error = refusal(text)

    assert error.field == FIELD
    assert value in error.value
    assert words in error.allowed
    assert str(error) == f"{FIELD} is {error.value}; allowed: {error.allowed}."


def test_a_text_that_is_too_long_is_refused_by_its_length():
    """One character more than allowed is refused before anything is read."""
    whole = ONE_PORT + "!" * (MOST_CHARACTERS - len(ONE_PORT))

    assert len(read_touchstone(whole, FIELD).frequencies_hz) == 2
    assert str(refusal(whole + "!")) == f"{FIELD} is 3000001; allowed: at most 3000000 characters of text."


def test_one_frequency_too_many_is_refused():
    """The largest number of frequencies is read, one more is refused at its line."""
    most = "# Hz S RI\n" + "".join(f"{hertz} 0 0\n" for hertz in range(MOST_FREQUENCIES))

    assert len(read_touchstone(most, FIELD).frequencies_hz) == MOST_FREQUENCIES
    assert "on line 100003, the end of the data, as at most 100001 frequencies" in str(refusal(most + "100001 0 0"))


@pytest.mark.parametrize(
    ("start", "unit"),
    [
        ("", "\r"),
        ("", "!\n"),
        ("#\n", "1\n"),
        ("#\n!Port Impedance", " "),
        ("#\n!Port Impedance", "1 "),
        ("#\n", "1 1\n"),
        ("#\n", "1 "),
        ("#\n1 0 0\n", "9"),
        ("#", "9 "),
        ("[Version] 2.0\n", "["),
        ("[Version] 2.0\n[Reference]\n", "1\n"),
        ("[Version] 2.0\n[Begin Information]\n", "[x]\n"),
    ],
)
def test_a_long_monotonous_text_is_refused(start, unit):
    """As many characters as may be given, all of one kind, end in a short sentence."""
    text = start + unit * ((MOST_CHARACTERS - len(start)) // len(unit))

    assert len(str(refusal(text))) < 400


def answered_or_refused(text):
    """Whether a text is read as finite numbers that fit together, or refused with the number of a line."""
    try:
        read = read_touchstone(text, FIELD)
    except InputError as error:
        return error.allowed.startswith("on line ") and bool(str(error).encode())
    count, ports = read.s.shape[:2]
    is_passive(read.s)
    return (
        read.s.shape == (count, ports, ports)
        and read.frequencies_hz.shape == (count,)
        and bool(np.isfinite(read.s).all())
        and bool((np.diff(read.frequencies_hz) > 0).all())
    )


@examples(500)
@given(text=st.text(max_size=80))
def test_any_text_is_answered_or_refused(text):
    """Any text is read or refused with a sentence, also behind an option line or a keyword."""
    assert answered_or_refused(text)
    assert answered_or_refused(f"# Hz S RI\n{text}")
    assert answered_or_refused(f"[Version] 2.0\n{text}")
    assert answered_or_refused(f"{ONE_PORT}{text}")


@examples(300)
@given(data=st.binary(max_size=80), encoding=st.sampled_from(["latin-1", "utf-8", "utf-16"]))
def test_any_bytes_are_answered_or_refused(data, encoding):
    """Decoded bytes of any kind are read or refused with a sentence."""
    assert answered_or_refused(data.decode(encoding, "replace"))


TEXTS = [ONE_PORT, TWO_PORT, VERSION_2, NOISY, EXAMPLE_8, EXAMPLE_10, EXAMPLE_19, EXAMPLE_20]
SCRAPS = [
    "",
    " ",
    "\n",
    "!",
    "#",
    "[",
    "]",
    "-",
    "e9",
    "9" * 400,
    "1 ",
    ".",
    "nan",
    "Z ",
    "Y ",
    "DB ",
    "R ",
    "\x00",
    "\ud800",
]


@examples(1000)
@given(
    text=st.sampled_from(TEXTS),
    cuts=st.lists(st.tuples(st.floats(0, 1), st.integers(0, 6), st.sampled_from(SCRAPS)), min_size=1, max_size=3),
)
def test_a_spoilt_text_is_answered_or_refused(text, cuts):
    """A file with pieces cut out or put in is read as finite numbers or refused with a sentence."""
    for place, length, scrap in cuts:
        start = int(place * len(text))
        text = text[:start] + scrap + text[start + length :]

    assert answered_or_refused(text)


@pytest.mark.parametrize("text", [VERSION_2, NOISY, EXAMPLE_8])
def test_a_version_2_text_that_is_cut_off_is_refused(text):
    """Without its [End] a beginning of a version 2 text is taken for the whole only where no number can be missing."""
    whole = text.rstrip()
    s = read_touchstone(whole, FIELD).s

    taken = [end for end in range(len(whole)) if is_read(whole[:end])]

    assert all(read_touchstone(whole[:end], FIELD).s.tolist() == s.tolist() for end in taken)
    assert all("[End]" in read_touchstone(whole[:end], FIELD).notes[-1] for end in taken)
    assert taken[0] == min(whole.index(row, whole.index("[Network")) for row in ("[End]", "[Noise") if row in whole)


@examples(200)
@given(network=networks(), shares=st.lists(st.floats(0, 1), min_size=1, max_size=8))
def test_between_its_frequencies_a_file_is_interpolated_as_scikit_rf_does(network, shares):
    """Linear interpolation of real and imaginary part agrees with scikit-rf's."""
    first, last = network.f[[0, -1]]
    asked = np.unique(np.clip(first + np.array(shares) * (last - first), first, last))
    read = Measured(network.f, network.s, 50.0, [])

    s = at_frequencies(read, asked, FIELD)

    if len(network.f) > 1:
        expected = network.interpolate(skrf.Frequency.from_f(asked, unit="hz"), kind="linear", coords="cart").s
        np.testing.assert_allclose(s, expected, rtol=0, atol=1e-12)
    assert s.shape == (len(asked), *network.s.shape[1:])


def test_the_files_own_frequencies_are_covered_as_decimal_numbers():
    """Every decimal number of GHz in a file covers the same number of Hz, whatever its rounding."""
    for kilohertz in range(100_000, 1_000_000, 9_973):
        read = read_touchstone(f"# GHz S RI\n{kilohertz / 1e6!r} 1 0", FIELD)

        assert covered(read, np.array([kilohertz * 1e3])).all()
        assert at_frequencies(read, np.array([kilohertz * 1e3]), FIELD).tolist() == [[[1]]]


def test_frequencies_beyond_the_file_are_not_covered():
    """Only frequencies from the first to the last of the file are covered; NaN is not."""
    read = read_touchstone(ONE_PORT, FIELD)

    assert covered(read, np.array([0.999e6, 1e6, 1.5e6, 2e6, 2.001e6, np.nan])).tolist() == [
        False,
        True,
        True,
        True,
        False,
        False,
    ]


def test_a_span_that_the_file_does_not_cover_is_refused():
    """The sentence names the span asked and the range of the file."""
    with pytest.raises(InputError) as caught:
        at_frequencies(read_touchstone(ONE_PORT, FIELD), np.array([1.5e6, 144e6]), FIELD)

    assert str(caught.value) == (
        f'{FIELD} is "asked for 1.5 MHz to 144 MHz"; allowed: frequencies in the file\'s own range, 1 MHz to 2 MHz.'
    )


@examples(300)
@given(
    ports=st.sampled_from([1, 2]),
    parts=st.lists(st.floats(-1, 1), min_size=8, max_size=8),
    largest=st.sampled_from([0.1, 1 - 1e-3, 1, 1 + 0.9e-6, 1 + 1.1e-6, 1.001, 3]),
)
def test_passive_means_a_largest_singular_value_of_at_most_one(ports, parts, largest):
    """Passive agrees with the singular values that linear algebra finds, on both sides of the limit."""
    s = np.array(parts[:4]) + 1j * np.array(parts[4:]) + 1e-3
    s = s[: ports * ports].reshape(1, ports, ports)
    s = s * (largest / np.linalg.svd(s, compute_uv=False)[0, 0])

    assert is_passive(s).tolist() == [largest <= 1 + 1e-6]


@pytest.mark.parametrize("angle", [0.0, 0.3, math.pi / 4])
def test_a_lossless_two_port_is_passive(angle):
    """A unitary matrix, whose singular values are all 1, is passive, and no longer so when 0.0001 larger."""
    unitary = np.array([[[math.cos(angle), 1j * math.sin(angle)], [1j * math.sin(angle), math.cos(angle)]]])

    assert is_passive(unitary).tolist() == [True]
    assert is_passive(unitary * 1.0001).tolist() == [False]


def test_the_value_of_a_refusal_is_short():
    """A long line is repeated in short."""
    assert len(json.loads(refusal("#" + "x" * 1000).value[:-1] + '"')) < 60
