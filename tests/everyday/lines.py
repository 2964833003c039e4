"""Whole lines, drawn: what is said of them, what is wrong with them, and the file an analyser writes."""

from dataclasses import dataclass, field
from typing import NamedTuple

import numpy as np

from .analyser import draw_noise, draw_port
from .cable import Cable, attenuation_db_per_m, draw_cable, nominal
from .ends import ENDS
from .faults import AT_JOINTS, IN_CABLES, WHAT, Fault, draw_damage
from .joint import JointDraw, draw_joint
from .waves import C_LIGHT, chain, ended

TRAINING, FRESH = 1, 1_000_001
"""First seeds: constants are chosen on the lines of the one and proved on those of the other."""

FAMILIES = {  # what each cable is usually fitted with
    "rg_58": ["uhf", "bnc", "n"],
    "rg_213": ["uhf", "n"],
    "rg_214": ["n"],
    "rg_223": ["n", "bnc", "tnc"],
    "rg_8x": ["uhf", "n"],
    "rg_8": ["uhf", "n"],
    "rg_142": ["n", "sma", "tnc"],
    "rg_174": ["bnc", "sma"],
    "rg_316": ["sma", "bnc"],
    "rg_400": ["n", "sma"],
    "foam_5_mm": ["n", "sma", "tnc"],
    "foam_6_mm": ["n", "tnc"],
    "foam_7_mm": ["n", "uhf"],
    "foam_10_mm": ["n", "uhf"],
    "foam_10_mm_stranded": ["n", "uhf"],
    "foam_15_mm": ["n"],
    "corrugated_1_2": ["n", "7_16"],
}
THIN = {"rg_174", "rg_316", "rg_142", "rg_400", "foam_5_mm"}  # jumpers, seldom long
LONGEST_THIN_M = 5.0
SPANS = [(1e6, 200e6, 201), (1e6, 30e6, 101), (50e6, 900e6, 401), (1e6, 450e6, 801), (1e6, 1300e6, 1601)]
LONGEST_M, SHORTEST_M = 60.0, 1.0
WITHIN_RANGE = 0.6  # of what the steps of the sweep reach
SLOWEST = 0.66
MOST_LOSS_DB = 12.0  # one way at the top: beyond, nobody expects to see the end
ADAPTER_SHARE = 0.25


class DrawnLine(NamedTuple):
    """A line and its sweep."""

    request: dict
    """Of the operation "sweep"."""
    truth: list[Fault]
    changes: list[float]
    """By how much each fault alters the reflection, the others being there, rms before noise."""
    frequency_hz: np.ndarray
    reflection: np.ndarray
    """As measured, with noise."""
    sound: np.ndarray
    """As it would be measured without fault and noise."""
    quality: str
    end: str
    places_m: dict[int, tuple[float, float]]
    """Of each element, where it begins and ends along the cables as described."""
    resolution_m: float
    """c*v/(2*span)."""


@dataclass
class _Built:
    """The parts of a line as they are: an adapter has two joints; what is wrong at which element."""

    elements: list[dict] = field(default_factory=list)
    parts: list[list[JointDraw] | Cable] = field(default_factory=list)
    joint_faults: dict[int, object] = field(default_factory=dict)


def draw_line(rng, quality="hobbyist", end="short", faults=()):
    """A line with faults of some kinds, none of them at the same element, and its sweep by an analyser.

    Quality is "hobbyist" or "good", the end one of ENDS, each fault one of WHAT.
    """
    low, high, points = SPANS[rng.integers(len(SPANS))]
    frequency = np.linspace(low, high, points)
    built = _draw_parts(rng, low, high, points, sum(one in IN_CABLES for one in faults))
    places = _places(built.elements)
    truth = _draw_faults(rng, built, faults, places)
    load, end_reflection = ENDS[end](rng, frequency, (low + high) / 2)
    port, noise = draw_port(rng, frequency, quality), draw_noise(rng, frequency, quality)
    everything = {one.element for one in truth}
    good = [_section(built, at, frequency, faulty=False) for at in range(len(places))]
    bad = {at: _section(built, at, frequency, faulty=True) for at in everything}

    def seen(faulty):
        whole = chain([bad[at] if at in faulty else one for at, one in enumerate(good)])
        return port.measured(ended(whole, end_reflection))

    clean = seen(everything)
    changes = [float(_rms(clean - seen(everything - {one.element}))) for one in truth]
    reflection = clean + noise
    velocity = np.mean([nominal(one["cable"]).velocity for one in built.elements if one["kind"] == "cable"])
    request = {"elements": built.elements, "load": load, "touchstone": touchstone(frequency, reflection)}
    resolution = float(velocity * C_LIGHT / (2 * (high - low)))
    return DrawnLine(request, truth, changes, frequency, reflection, seen(set()), quality, end, places, resolution)


def draw_case(seed, faults):
    """The line of a seed, its analyser and end drawn too, with so many faults (0, 1 or 2)."""
    rng = np.random.default_rng([seed, faults])
    quality = str(rng.choice(["hobbyist", "good"]))
    end = str(rng.choice(list(ENDS)))
    return draw_line(rng, quality, end, [str(one) for one in rng.choice(WHAT, faults, replace=False)])


def touchstone(frequency, reflection):
    """The text of a one-port file."""
    rows = (f"{hz:.0f} {one.real:.6f} {one.imag:.6f}" for hz, one in zip(frequency, reflection, strict=True))
    return "\n".join(["! an everyday line", "# Hz S RI R 50", *rows, ""])


def _rms(values):
    return np.sqrt(np.mean(np.abs(values) ** 2))


def _draw_parts(rng, low, high, points, fewest):
    """One to five cables, or `fewest`, each with the joints it usually has."""
    reach = SLOWEST * C_LIGHT * (points - 1) / (2 * (high - low))
    left = min(LONGEST_M, WITHIN_RANGE * reach) * np.exp(rng.uniform(np.log(0.15), 0))
    built, loss = _Built(), 0.0
    count = max(int(rng.integers(1, 6)), fewest)
    shares = rng.dirichlet(np.full(count, 1.2))
    families = None
    for share in shares:
        fitting = [name for name, own in FAMILIES.items() if families is None or set(own) & set(families)]
        name = str(rng.choice(fitting))
        length = max(SHORTEST_M, share * left)
        length = min(length, LONGEST_THIN_M) if name in THIN else length
        lost = float(attenuation_db_per_m(nominal(name), high))
        length = min(length, max(SHORTEST_M, (MOST_LOSS_DB - loss) / lost))
        length = round(float(length), 1 if length > 3 else 2)
        loss += length * lost
        shared = FAMILIES[name] if families is None else [one for one in FAMILIES[name] if one in families]
        _add_joint(rng, built, str(rng.choice(shared)))
        built.elements.append({"kind": "cable", "cable": name, "length_m": length})
        built.parts.append(draw_cable(rng, name, length))
        families = FAMILIES[name]
    _add_joint(rng, built, str(rng.choice(families)))
    return built


def _add_joint(rng, built, family):
    """A joint; at the analyser often an adapter from its own socket."""
    first = not built.elements
    if first and family != "sma" and rng.random() < ADAPTER_SHARE:
        built.elements.append({"kind": "joint", "family": "sma", "adapter_to": family})
        built.parts.append([draw_joint(rng, "sma"), draw_joint(rng, family)])
    else:
        built.elements.append({"kind": "joint", "family": family})
        built.parts.append([draw_joint(rng, family)])


def _places(elements):
    places, distance = {}, 0.0
    for at, element in enumerate(elements):
        length = element.get("length_m", 0.0)
        places[at] = (distance, distance + length)
        distance += length
    return places


def _draw_faults(rng, built, faults, places):
    truth = []
    for what in faults:
        at_joint = what in AT_JOINTS
        kind = "joint" if at_joint else "cable"
        free = [
            at
            for at, one in enumerate(built.elements)
            if one["kind"] == kind and at not in {other.element for other in truth}
        ]
        at = int(rng.choice(free))
        if at_joint:
            size, built.joint_faults[at] = AT_JOINTS[what](rng)
            truth.append(Fault(what, at, places[at][0], 0.0, size, in_cable=False))
        else:
            cable = built.parts[at]
            size, damage = draw_damage(rng, what, cable.length_m)
            cable.damages.append(damage)
            described = built.elements[at]["length_m"] / cable.length_m
            middle = places[at][0] + (damage.start_m + damage.length_m / 2) * described
            truth.append(Fault(what, at, middle, damage.length_m * described, size, in_cable=True))
    return sorted(truth, key=lambda one: one.place_m)


def _section(built, at, frequency, faulty):
    part = built.parts[at]
    if isinstance(part, Cable):
        return part.section(frequency, damaged=faulty)
    fault = built.joint_faults.get(at) if faulty else None
    return chain([*(joint.section(frequency) for joint in part[:-1]), part[-1].section(frequency, fault)])
