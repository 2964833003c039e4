"""What is not known of a load: every phase counts, the worst is the worst of all, and nothing is made up."""

import msgspec
import numpy as np
import pytest
import skrf
from lines import HOLDS, ask
from skrf.media import DefinedGammaZ0

from jointwise.calc.feedline.elements import FeedlineRequest, GivenVswr, ResonantAntenna
from jointwise.calc.feedline.feedline import feedline_of
from jointwise.calc.feedline.load import load_reflection
from jointwise.calc.feedline.solve import margins, solve_every_way
from jointwise.calc.physics.ratings import CAUTIOUS, GENEROUS

ELEMENTS = [
    {"kind": "joint", "family": "uhf"},
    {"kind": "cable", "cable": "rg_58", "length_m": 7.3},
    {"kind": "joint", "family": "n"},
    {"kind": "cable", "cable": "rg_213", "length_m": 21.7},
    {"kind": "part", "loss_db": 0.2, "vswr": 1.2, "voltage_limit_v": 600.0},
]
STATION = {"elements": ELEMENTS, "power_w": 400.0, "mode": "ft8", "transmitter": HOLDS}
NEAR = 0.01
"""What the steps of 2° between the phases leave [dB]; a share of this size of powers and ratios."""

CASES = [(3.0, 28.4e6), (10.0, 14.2e6), (1.5, 145e6)]


def at(vswr, hertz, angle=None, **more):
    """The station's answer with an antenna of that VSWR."""
    load = {"kind": "vswr", "vswr": vswr} | ({} if angle is None else {"angle_deg": angle})
    return ask("line", **STATION, load=load, frequency_hz=hertz, **more)


@pytest.mark.parametrize(("vswr", "hertz"), CASES)
def test_the_worst_is_the_worst_of_720_phases(vswr, hertz):
    """Margin, power at the antenna and SWR at the input are those of the worst phase of an antenna of known SWR."""
    request = STATION | {"load": {"kind": "vswr", "vswr": vswr}, "frequency_hz": hertz}
    feedline, frequency = feedline_of(msgspec.convert(request, FeedlineRequest)), np.array([hertz])
    reflected = (vswr - 1) / (vswr + 1) * np.exp(2j * np.pi * np.arange(720) / 720)
    every = [solve_every_way(feedline, frequency, end, reflected[:, None]) for end in (CAUTIOUS, GENEROUS)]
    margins_db = [margins(allowed, STATION["power_w"]) for solution in every for allowed in solution.allowed]
    delivered = min(solution.waves.power_w[-1].min() for solution in every)

    unknown = at(vswr, hertz)

    assert unknown["margin_db"] == pytest.approx(np.min(margins_db), abs=NEAR)
    assert unknown["delivered_low_w"] == pytest.approx(delivered * STATION["power_w"], rel=NEAR)
    worst = np.abs(every[CAUTIOUS].reflection).max()
    assert unknown["input_cautious"]["vswr"] == pytest.approx((1 + worst) / (1 - worst), rel=NEAR)


def test_no_phase_asked_for_is_worse_than_the_worst():
    """Phase by phase as a caller asks, no part stands less and none is left out."""
    vswr, hertz = CASES[0]
    every = [at(vswr, hertz, float(angle)) for angle in range(0, 360, 10)]

    unknown = at(vswr, hertz)

    assert unknown["margin_db"] == pytest.approx(min(one["margin_db"] for one in every), abs=0.05)
    for row, part in enumerate(unknown["parts"]):
        peaks = max(one["parts"][row]["peak_voltage_v"] for one in every)
        assert part["peak_voltage_v"] == pytest.approx(peaks, rel=NEAR)


@pytest.mark.parametrize(("vswr", "hertz"), CASES)
def test_the_likely_is_the_middle_of_all_phases(vswr, hertz):
    """Half of all phases deliver more than is expected, and half less."""
    every = [at(vswr, hertz, float(angle)) for angle in np.arange(0, 360, 9)]

    unknown = at(vswr, hertz)

    assert unknown["delivered_w"] == pytest.approx(np.median([one["delivered_w"] for one in every]), rel=NEAR)
    assert unknown["margin_high_db"] == pytest.approx(np.median([one["margin_high_db"] for one in every]), abs=0.1)


def test_an_unknown_phase_makes_no_impedance_up():
    """Neither the antenna nor the line's input has one; with an angle both have."""
    unknown, known = at(3.0, 14.2e6), at(3.0, 14.2e6, 40.0)

    assert (unknown["phase_known"], known["phase_known"]) == (False, True)
    for end in ("antenna", "input", "input_cautious"):
        assert unknown[end]["resistance_ohm"] is None
        assert known[end]["resistance_ohm"] > 0
    assert unknown["antenna"]["vswr"] == pytest.approx(3.0)


def test_a_match_has_no_phase():
    """SWR 1 leaves nothing unknown."""
    assert at(1.0, 14.2e6)["phase_known"]


def test_unknown_phases_are_drawn_as_most_and_least():
    """Every place of the cables has the voltage of its best and of its worst phase."""
    wave = at(3.0, 14.2e6)["standing_wave"]
    drawn = [at(3.0, 14.2e6, float(angle))["standing_wave"]["voltage_v"] for angle in np.arange(0, 360, 15)]

    assert wave["voltage_v"] == pytest.approx(np.max(drawn, axis=0).tolist(), rel=0.02)
    assert wave["voltage_low_v"] == pytest.approx(np.min(drawn, axis=0).tolist(), rel=0.06)


@pytest.mark.parametrize(("length_m", "ranged"), [(30.0, False), (90.0, True)])
def test_a_long_line_is_drawn_as_its_envelope(length_m, ranged):
    """Beyond ten half waves most and least are given, and the most is nowhere exceeded."""
    cable = {"kind": "cable", "cable": "rg_213", "length_m": length_m}
    load = {"kind": "vswr", "vswr": 3.0, "angle_deg": 20.0}
    wave = ask("line", elements=[cable], load=load, frequency_hz=28e6, transmitter=HOLDS)["standing_wave"]

    assert wave["half_waves"] == pytest.approx(2 * length_m * 28e6 / (0.66 * 299_792_458), rel=0.02)
    assert (wave["voltage_low_v"] is not None) == ranged
    if ranged:
        # away from the ends both waves meet in phase and out of phase within half a wave
        middle = len(wave["voltage_v"]) // 2
        assert wave["voltage_v"][middle] > 1.3 * wave["voltage_low_v"][middle]


def resonant(**fields):
    """The reflection of a resonant antenna for 50 Ω, of both resistances, by frequency."""
    load = ResonantAntenna(**{"resonance_hz": 7.1e6, "vswr": 1.4, "bandwidth_hz": 180e3} | fields)
    return load_reflection(load, 50.0, 7.1e6)


def test_a_resonant_antenna_has_the_swr_and_the_bandwidth_given():
    """At resonance its SWR, and at two frequencies apart by its bandwidth the edge's, whichever its resistance."""
    antenna = resonant()
    lower = -90e3 + np.hypot(7.1e6, 90e3)
    size = np.abs(antenna.likely(np.array([7.1e6, lower, lower + 180e3])))

    assert antenna.ways == 2
    assert size[:, 0] == pytest.approx(0.4 / 2.4)
    assert size[:, 1:] == pytest.approx(1 / 3)


def test_a_resonant_antenna_is_scikit_rfs_series_circuit():
    """Resistance, coil and capacitor in series, as scikit-rf builds them, reflect as much."""
    band = skrf.Frequency.from_f(np.linspace(6.9e6, 7.3e6, 21), unit="Hz")
    media = DefinedGammaZ0(band, z0=50)
    resistance = 50 / 1.4
    edge = 1 / 3
    reactance = np.sqrt((edge**2 * (resistance + 50) ** 2 - (resistance - 50) ** 2) / (1 - edge**2))
    coil = reactance / (2 * np.pi * 180e3)
    capacitor = 1 / ((2 * np.pi * 7.1e6) ** 2 * coil)
    circuit = media.inductor(coil) ** media.capacitor(capacitor) ** media.resistor(resistance) ** media.short()

    assert np.abs(resonant().likely(band.f)[0]) == pytest.approx(np.abs(circuit.s[:, 0, 0]), rel=1e-6)


def test_known_loads_are_known():
    """A VSWR with its angle is one load."""
    load = load_reflection(GivenVswr(vswr=2.0, angle_deg=90.0), 50.0, 1e7)

    assert load.known
    assert load.likely(np.array([1e7, 2e7])) == pytest.approx(np.full((1, 2), 1j / 3))


def test_a_dummy_load_counts_with_what_it_stands():
    """It is the last part, and the line is no stronger than it."""
    answer = ask(
        "line", elements=ELEMENTS[:1], load={"kind": "dummy", "power_limit_w": 50.0}, band="20m", mode="carrier"
    )

    dummy = answer["parts"][-1]

    assert (dummy["kind"], dummy["element"]) == ("load", 1)
    assert dummy["margin_db"] == pytest.approx(10 * np.log10(50 / 100), abs=0.05)
    assert answer["weakest"] == 1
