"""The drawn lines obey physics that other software knows, and share nothing with the core."""

import ast
from pathlib import Path

import numpy as np
import pytest
import skrf
from scipy.constants import c as c_light

from everyday.cable import draw_cable, internal_impedance, nominal
from everyday.ends import ENDS
from everyday.faults import WHAT
from everyday.lines import draw_case, draw_line
from everyday.waves import Section, across, chain, chain_pieces, ended, in_series, run

FREQUENCY = np.linspace(1e6, 1e9, 51)


def test_nothing_of_the_core_is_imported():
    """A simulator that shares code with the judge would share its errors."""
    for path in Path(__file__).parent.glob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            names = [one.name for one in node.names] if isinstance(node, ast.Import) else []
            names += [node.module or ""] if isinstance(node, ast.ImportFrom) else []
            assert not [name for name in names if name.startswith("jointwise")], path


def network(section):
    """A section as scikit-rf has it."""
    s = np.array([[section.near, section.through], [section.through, section.far]]).transpose(2, 0, 1)
    return skrf.Network(frequency=skrf.Frequency.from_f(FREQUENCY, unit="Hz"), s=s, z0=50)


def test_sections_join_as_in_scikit_rf():
    """Runs, series and shunt elements, and their chain with an end, agree with scikit-rf."""
    omega = 2 * np.pi * FREQUENCY
    parts = [
        run(63 + 0j, (0.02 + 1j) * omega * 2e-9),
        in_series(7 + 1j * omega * 5e-9),
        across(1j * omega * 3e-12),
        run(41 + 0j, 1j * omega * 4e-9),
    ]
    media = skrf.media.DefinedGammaZ0(skrf.Frequency.from_f(FREQUENCY, unit="Hz"), z0=50)
    lumps = media.resistor(7) ** media.inductor(5e-9) ** media.shunt_capacitor(3e-12)
    assert np.allclose(network(chain(parts[1:3])).s, lumps.s)
    whole = chain(parts)
    assert np.allclose(network(whole).s, (network(parts[0]) ** lumps ** network(parts[3])).s)
    pieces = Section(*(np.array(part) for part in zip(*parts, strict=True)))
    assert np.allclose(chain_pieces(pieces).near, whole.near)
    assert np.allclose(ended(whole, -0.9 + 0.1j), (network(whole) ** media.load(-0.9 + 0.1j)).s[:, 0, 0])


def test_a_cable_loses_what_its_sheet_says_and_is_slowed_as_much():
    """Attenuation near the published one; the phase that the conductors add is their loss, as skin effect has it."""
    cable = draw_cable(np.random.default_rng(1), "rg_213", 10.0)
    cable.impedance = cable.velocity = cable.conductor_loss = cable.dielectric_loss = 1.0
    cable.length_m, cable.uneven.sizes = 10.0, 0 * cable.uneven.sizes
    fine = np.linspace(1e6, 1e9, 1001)  # turns by less than half between points
    through = cable.section(fine).through
    assert -20 * np.log10(np.abs(through[-1])) == pytest.approx(2.69, rel=0.08)  # dealer's chart, 0.269 dB/m
    added = -np.unwrap(np.angle(through)) - 2 * np.pi * fine * 10.0 / (0.66 * c_light)
    own = nominal("rg_213")
    loss = 10.0 * own.conductor * internal_impedance(own, fine).real / (2 * own.impedance_ohm)
    assert added[-1] == pytest.approx(loss[-1], rel=0.05)


def test_a_damage_in_a_cable_echoes_where_it_is():
    """Without dispersion to speak of, the echo of a crushed stretch comes after its delay."""
    drawn = draw_line(np.random.default_rng(7), "good", "matched", ["crushed"])
    [fault], sweep = drawn.truth, drawn.frequency_hz
    echo = np.abs(np.fft.ifft((drawn.reflection - drawn.sound) * np.hanning(sweep.size), 16 * sweep.size))
    delay = echo[: echo.size // 2].argmax() / (16 * sweep.size * (sweep[1] - sweep[0]))
    before = [one for one in drawn.request["elements"][: fault.element] if one["kind"] == "cable"]
    runs = [(one["cable"], one["length_m"]) for one in before]
    runs.append((drawn.request["elements"][fault.element]["cable"], fault.place_m - sum(run[1] for run in runs)))
    expected = 2 * sum(length / nominal(name).velocity for name, length in runs) / c_light
    assert delay == pytest.approx(expected, rel=0.1, abs=1 / (sweep[-1] - sweep[0]))


@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("what", WHAT)
def test_every_fault_and_end_can_be_drawn(what, end):
    """A line with any fault and end gives out less power than goes in and says what is wrong."""
    drawn = draw_line(np.random.default_rng(3), "good", end, [what])
    assert [fault.what for fault in drawn.truth] == [what]
    assert drawn.changes[0] > 0
    assert np.abs(drawn.sound).max() < 1.05


def test_a_seed_has_one_line():
    """The same seed draws the same line, another one another."""
    first, again, other = (draw_case(seed, 2).request for seed in (5, 5, 6))
    assert first == again != other
