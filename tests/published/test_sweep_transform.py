"""Range, resolution, window and transform of a sweep against published guides, scipy and scikit-rf."""

import numpy as np
import pytest
import skrf
from scipy.signal.windows import kaiser

from jointwise.calc.formulas.sweep import (
    added_resistance,
    alias_free_distance,
    dissipated_loss,
    separating_span,
    sweep_resolution,
    window_broadening,
    window_side_lobe,
)
from jointwise.calc.sweep.transform import Propagation, distance_transform

ROUND_LIGHT = 3e8 / 299_792_458  # the guides reckon with 1.5e8 m/s there and back
NO_WINDOW = 1.0

# Measurement guide of a hand-held cable and antenna analyser, 2010: resolution = 1.5e8 vp / span,
# range = (points - 1) resolution; its three choices of points.
GUIDE_POINTS = [137, 275, 551]

# Broadcast engineer's article on distance to fault, stored copy: 95 MHz of span and a velocity factor
# of 0.86 reach 695 m, by 7.68e4 vf / span in MHz, which is 150 times 512 steps.
ARTICLE = (0.86, 95e6, 512, 695)


@pytest.mark.parametrize("points", GUIDE_POINTS)
def test_range_is_the_guides_number_of_resolutions(points):
    """Without a window a band-pass sweep reaches points - 1 times its resolution, as the guide says."""
    span, velocity = 100e6, 0.88

    resolution = sweep_resolution(velocity, NO_WINDOW, span)
    reached = alias_free_distance(velocity, span / (points - 1))

    assert resolution * ROUND_LIGHT == pytest.approx(1.5e8 * velocity / span, rel=1e-12)
    assert reached == pytest.approx((points - 1) * resolution, rel=1e-12)


def test_range_is_that_of_the_article():
    """The article's example of a span that reaches a tall tower's antenna comes out to its printed metre."""
    velocity, span, steps, printed_m = ARTICLE

    assert alias_free_distance(velocity, span / steps) * ROUND_LIGHT == pytest.approx(printed_m, abs=0.5)


def test_span_is_the_resolution_solved_for_it():
    """A sweep as wide as asked for to separate two joints has their distance as its resolution."""
    broadening = window_broadening(6.0)

    assert sweep_resolution(0.66, broadening, separating_span(0.66, broadening, 0.7)) == pytest.approx(0.7, rel=1e-12)


@pytest.mark.parametrize("shape", [2.0, 4.0, 6.0, 9.0])
def test_window_has_the_side_lobes_and_the_zero_stated(shape):
    """scipy's Kaiser window has its first zero and its highest side lobe where the two formulas put them."""
    points, fine = 512, 1 << 18
    level = np.abs(np.fft.rfft(kaiser(points, shape, sym=True), fine))
    level /= level[0]
    first_rise = int(np.argmax(np.diff(level) > 0))

    assert first_rise * points / fine == pytest.approx(window_broadening(shape), rel=0.01)
    assert -20 * np.log10(level[first_rise:].max()) == pytest.approx(window_side_lobe(shape), abs=0.2)


def test_resistance_is_that_of_scikit_rf():
    """A resistor in series in scikit-rf loses what the formula turns back into its resistance."""
    medium = skrf.media.DefinedGammaZ0(skrf.Frequency(1, 1, 1, "MHz"), z0=50)

    s = abs(medium.resistor(3.0).s[0])

    assert added_resistance(50.0, dissipated_loss(s[0, 0], s[1, 0])) == pytest.approx(3.0, rel=1e-9)


@pytest.mark.parametrize("start_hz", [0.0, 400e6])
def test_transform_is_that_of_scikit_rf(start_hz):
    """Two echoes, windowed by scikit-rf and transformed by numpy's FFT, come out the same in both modes.

    scikit-rf's window ends half a step beyond the band, which is worth 5e-4 of the echoes' sum.
    """
    frequency = np.linspace(start_hz, start_hz + 500e6, 501)
    echoes = 0.1 * np.exp(-2j * np.pi * frequency * 20e-9) - 0.3 * np.exp(-2j * np.pi * frequency * 83e-9)
    step, fine, shown = frequency[1] - frequency[0], 8000, 1200

    def theirs(reflection):
        network = skrf.Network(f=frequency, f_unit="Hz", s=reflection[:, None, None], z0=50)
        windowed = network.windowed(window=("kaiser", 6.0), normalize=False).s[:, 0, 0]
        return np.fft.irfft(windowed, fine) if start_hz == 0 else np.abs(np.fft.ifft(windowed, fine))

    expected = (theirs(echoes) / theirs(np.ones(frequency.size, dtype=complex)).max())[:shown]
    first = int(start_hz == 0)  # the core bridges the gap to zero itself
    transform = distance_transform(frequency[first:], 6.0, float(echoes[0].real))
    delays = np.arange(shown) / (fine * step)
    propagation = Propagation(delays, np.pi * delays[:, None] * frequency[first:], np.zeros((shown, 1)))
    found = transform.echoes(echoes[first:], transform.kernel(propagation))

    assert transform.low_pass == (start_hz == 0)
    assert (found if transform.low_pass else np.abs(found)) == pytest.approx(expected, abs=6e-4)
