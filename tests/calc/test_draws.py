"""Random numbers from a seed: the published stream, even spread, streams without relation."""

import numpy as np
import pytest

from jointwise.calc.numeric.draws import Stream

PUBLISHED = [  # SplitMix64 from seed 1234567, as printed beside several public implementations (from memory)
    6457827717110365317,
    3203168211198807973,
    9817491932198370423,
    4593380528125082431,
    16408922859458223821,
]


def test_the_words_are_the_published_ones():
    """A stream begins with the words printed for its seed."""
    assert Stream(1234567).words(5).tolist() == PUBLISHED


def test_parts_of_a_stream_follow_on():
    """Two short draws give what one long draw gives."""
    stream = Stream(7, 3)

    assert [*stream.uniform(10), *stream.uniform(5)] == Stream(7, 3).uniform(15).tolist()


@pytest.mark.parametrize("number", [0, 1, 2, 1000])
def test_the_numbers_are_even(number):
    """Of 200,000 draws each hundredth of the range holds its share within five standard deviations."""
    counts = np.bincount(Stream(1, number).integers(100, 200_000), minlength=100)

    assert np.abs(counts - 2000).max() < 5 * np.sqrt(2000)


def test_streams_of_one_seed_are_unrelated():
    """Neighbouring streams and neighbouring seeds correlate no more than chance."""
    drawn = [Stream(seed, number).uniform(100_000) for seed in (0, 1) for number in range(4)]
    correlation = np.corrcoef(drawn) - np.eye(len(drawn))

    assert np.abs(correlation).max() < 5 / np.sqrt(100_000)
