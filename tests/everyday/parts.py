"""Jumpers and adapters, drawn, and the two-port file that an analyser writes with what its calibration left."""

from typing import NamedTuple

import numpy as np

from .analyser import QUALITIES, draw_noise, draw_port, measured_part
from .cable import Damage, draw_cable
from .joint import draw_joint
from .lines import FAMILIES
from .waves import Section, chain, in_series

ADAPTED = [("sma", "n"), ("bnc", "n"), ("uhf", "n"), ("tnc", "n"), ("bnc", "uhf"), ("sma", "bnc")]
SPANS = [(1e6, 30e6, 101), (1e6, 200e6, 201), (1e6, 500e6, 401), (1e6, 1000e6, 801)]
WRONG = ["resistance", "worn", "crushed"]
JUMPER_SHARE = 0.7


class DrawnPart(NamedTuple):
    """A two-port and its sweep."""

    request: dict
    """Of the operation "sweep"."""
    wrong: str | None
    added_ohm: float
    """In series, more than when it was new."""
    change_ohm: float | None
    """Since the earlier sweep; None without one."""
    frequency_hz: np.ndarray
    real: Section
    """Its scattering as it is."""
    quality: str


def draw_part(rng, quality, wrong=None):
    """A jumper or an adapter, sound or with one thing of WRONG, and its sweep; half of them have an earlier one."""
    low, high, points = SPANS[rng.integers(len(SPANS))]
    frequency = np.linspace(low, high, points)
    jumper = wrong in ("worn", "crushed") or rng.random() < JUMPER_SHARE
    elements, sections = _jumper(rng, frequency, wrong) if jumper else _adapter(rng, frequency)
    added_ohm = float(np.exp(rng.uniform(np.log(0.5), np.log(20)))) if wrong == "resistance" else 0.0
    good = chain(sections)
    real = chain([sections[0], in_series(added_ohm + 0j * frequency), *sections[1:]])
    request = {
        "elements": elements,
        "load": {"kind": "end", "what": "matched"},
        "touchstone": _swept(rng, frequency, real, quality),
    }
    compared = rng.random() < 0.5 and wrong in (None, "resistance")
    if compared:
        request["earlier"] = _swept(rng, frequency, good, quality)
    return DrawnPart(request, wrong, added_ohm, added_ohm if compared else None, frequency, real, quality)


def draw_part_case(seed, faulty):
    """The part of a seed, its analyser drawn too, with one thing wrong or nothing."""
    rng = np.random.default_rng([seed, int(faulty)])
    quality = str(rng.choice(list(QUALITIES)))
    return draw_part(rng, quality, str(rng.choice(WRONG)) if faulty else None)


def _jumper(rng, frequency, wrong):
    name = str(rng.choice(list(FAMILIES)))
    families = [str(rng.choice(FAMILIES[name])) for _ in range(2)]
    length = round(float(np.exp(rng.uniform(np.log(0.3), np.log(5)))), 2)
    cable = draw_cable(rng, name, length, careful=True)
    if wrong == "worn":
        worn = rng.uniform(1.5, 3)
        cable.conductor_loss, cable.dielectric_loss = cable.conductor_loss * worn, cable.dielectric_loss * worn
    if wrong == "crushed":
        stretch = min(rng.uniform(0.02, 0.2), cable.length_m / 3)
        start = rng.uniform(0, cable.length_m - stretch)
        cable.damages.append(Damage(start, stretch, impedance=rng.uniform(0.4, 0.8)))
    first, last = (draw_joint(rng, family, careful=True) for family in families)
    elements = [
        {"kind": "joint", "family": families[0]},
        {"kind": "cable", "cable": name, "length_m": length},
        {"kind": "joint", "family": families[1]},
    ]
    return elements, [first.section(frequency), cable.section(frequency), last.section(frequency)]


def _adapter(rng, frequency):
    families = ADAPTED[rng.integers(len(ADAPTED))]
    sections = [draw_joint(rng, family, careful=True).section(frequency) for family in families]
    return [{"kind": "joint", "family": families[0], "adapter_to": families[1]}], sections


def _swept(rng, frequency, real, quality):
    """The text of a two-port file of a sweep with a calibration of its own."""
    shown = measured_part(real, *(draw_port(rng, frequency, quality) for _ in range(2)))
    near, forward, backward, far = (
        part + draw_noise(rng, frequency, quality) for part in (shown.near, shown.through, shown.through, shown.far)
    )
    rows = []
    for hz, *values in zip(frequency, near, forward, backward, far, strict=True):
        rows.append(" ".join([f"{hz:.0f}", *(f"{one.real:.6f} {one.imag:.6f}" for one in values)]))
    return "\n".join(["! an everyday part", "# Hz S RI R 50", *rows, ""])
