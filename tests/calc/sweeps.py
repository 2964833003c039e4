"""Drawn lines with one known fault each, or none, and the sweep an analyser would take of them.

Their deviations are not those the search assumes: they are even between bounds, the wet insulation has another
loss, and a wrong part is a section of its own.
"""

from typing import NamedTuple

import numpy as np
from lines import touchstone

from jointwise.calc.feedline.elements import CableRun, Joint, KnownEnd
from jointwise.calc.feedline.feedline import feedline_at
from jointwise.calc.formulas.constants import C_0
from jointwise.calc.physics.columns import spot_column
from jointwise.calc.physics.ratings import CAUTIOUS, GENEROUS
from jointwise.calc.sweep.requests import SweepRequest
from jointwise.calc.waves.two_port import TwoPort, drive, joint_section, line_section

CABLES = ["rg_58", "rg_213", "rg_223", "foam_10_mm", "foam_6_mm", "rg_8x"]
FAMILIES = ["n", "uhf", "bnc", "tnc"]
ENDS = ["short", "open", "matched"]
TOPS_HZ = [300e6, 500e6, 1e9]
POINTS = [401, 801]
LOWEST_HZ = 1e6
KINDS = ["resistance", "shield", "water", "step"]
LENGTH, IMPEDANCE, LOSS = 0.02, 0.03, 0.1
"""Greatest deviations of a cable, each even between bounds."""
END = 0.01
WET_TANGENT = 0.04
Z_0 = 50.0


class DrawnLine(NamedTuple):
    """A line, what is wrong with it, and what it reflects without noise."""

    elements: list
    load: KnownEnd
    kind: str | None
    joint: int
    frequency_hz: np.ndarray
    reflection: np.ndarray
    intact: np.ndarray
    """The reflection of the same line, its good parts off by as much, without the fault."""
    deviations: list[tuple[float, float, float]]
    """Of each cable in electrical length, impedance and loss, as shares."""
    random: np.random.Generator

    def noisy(self, noise):
        """The reflection with complex noise of some rms level."""
        pairs = self.random.normal(size=(2, self.frequency_hz.size))
        return self.reflection + noise * (pairs[0] + 1j * pairs[1]) / np.sqrt(2)

    def request(self, reflection, **more):
        """The request about a reflection measured on this line."""
        text = touchstone(self.frequency_hz, np.asarray(reflection)[:, None, None])
        return SweepRequest(elements=self.elements, load=self.load, touchstone=text, **more)


def log_uniform(random, low, high):
    """A size drawn evenly on a logarithmic scale."""
    return float(np.exp(random.uniform(np.log(low), np.log(high))))


def draw(seed, kind):
    """A line of two to four cables with a fault of some kind at one of its joints; None for a sound one."""
    random = np.random.default_rng(seed)
    elements = [Joint(family=str(random.choice(FAMILIES)))]
    for _ in range(random.integers(2, 5)):
        elements += [CableRun(cable=str(random.choice(CABLES)), length_m=round(log_uniform(random, 2, 20), 2))]
        elements += [Joint(family=str(random.choice(FAMILIES)))]
    frequency = np.linspace(LOWEST_HZ, random.choice(TOPS_HZ), int(random.choice(POINTS)))
    load = KnownEnd(what=str(random.choice(ENDS)))
    joint = int(random.choice(np.arange(0, len(elements), 2)))
    built = feedline_at(SweepRequest(elements=elements, load=load, touchstone=""), elements, load, spot_column(1e8))
    faulty, intact, deviations = [], [], []
    for at, link in enumerate(built.links):
        wet = kind == "water" and at == (joint + 1 if joint < len(elements) - 1 else joint - 1)
        if link.kind == "cable":
            shares, dry, sections = drawn_cable(random, link, frequency, wet, at > joint)
            deviations.append(shares)
            intact.append(dry)
            faulty += sections
        else:
            intact.append(drawn_joint(random, link, frequency))
            faulty.append(intact[-1])
        if at == joint:
            faulty += lumped_fault(random, kind, 2 * np.pi * frequency)
    end = built.load.likely(frequency)[0] + END * (random.normal() + 1j * random.normal())
    reflection, sound = (drive(ports, end, Z_0, net=False).reflection(Z_0)[0] for ports in (faulty, intact))
    return DrawnLine(elements, load, kind, joint, frequency, reflection, sound, deviations, random)


def drawn_joint(random, link, frequency):
    """A joint anywhere between a typical one and the worst its standard allows."""
    typical, worst = (link.models[end].section(frequency) for end in (GENEROUS, CAUTIOUS))
    grade = random.uniform(0, 1)
    impedance = typical.impedance * (worst.impedance / typical.impedance) ** grade
    return joint_section(impedance, typical.angle * (worst.angle / typical.angle) ** grade, typical.contact_ohm)


def drawn_cable(random, link, frequency, wet, first):
    """A cable that is off in length, impedance and loss: by how much, dry, and wet at its first or last metres."""
    model = link.models[GENEROUS]
    conductor, dielectric, beta = model.constants(frequency)
    by_impedance, by_loss = random.uniform(-IMPEDANCE, IMPEDANCE), random.uniform(-LOSS, LOSS)
    by_length = random.uniform(-LENGTH, LENGTH)
    impedance = model.impedance(conductor, dielectric, beta) * (1 + by_impedance)
    alpha, beta = (conductor + dielectric) * (1 + by_loss), beta * (1 + by_length)
    shares, dry = (by_length, by_impedance, by_loss), line_section(impedance, (alpha + 1j * beta) * model.length_m)
    if not wet:
        return shares, dry, [dry]
    length, growth = min(log_uniform(random, 0.2, 2), model.length_m), log_uniform(random, 0.2, 1.5)
    slowing = np.sqrt(1 + growth)
    soaked = (alpha + beta * WET_TANGENT * growth / 2 + 1j * beta) * slowing
    parts = [line_section(impedance / slowing, soaked * length)]
    parts.append(line_section(impedance, (alpha + 1j * beta) * (model.length_m - length)))
    return shares, dry, parts if first else parts[::-1]


def lumped_fault(random, kind, omega):
    """What is wrong right at the joint."""
    one, zero = np.ones_like(omega) + 0j, np.zeros_like(omega) + 0j
    if kind == "resistance":
        return [TwoPort(one, log_uniform(random, 0.5, 50) + zero, zero, one)]
    if kind == "shield":
        return [TwoPort(one, log_uniform(random, 2, 100) + 1j * omega * log_uniform(random, 2e-8, 3e-7), zero, one)]
    if kind == "step":
        impedance = float(random.choice([75.0, 93.0]))
        return [line_section(impedance + zero, 1j * omega * log_uniform(random, 0.03, 0.08) / C_0)]
    return []
