"""What can be wrong at a joint: kinds of fault, each a two-port in its place with one or two sizes."""

from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from ..formulas.constants import C_0
from ..physics.limits import assumption
from ..physics.ratings import GENEROUS
from ..waves.two_port import TwoPort, line_section
from .model import Line, Piece, product

__all__ = ["KINDS", "Fault", "Kind", "Lack", "Size", "faults_of"]

Number = np.ndarray


class Size(NamedTuple):
    """One size of a fault: what it is, its unit, and the values the search starts from."""

    name: str
    unit: str
    starts: tuple[float, ...]
    least: float
    most: float


class Lack(NamedTuple):
    """What would make up, right at a joint, for what a sound line lacks: each alone, by a linear estimate."""

    ohm: float
    henry: float
    per_farad: float
    farad: float
    siemens: float
    impedance_ohm: float
    """Of the line."""


class Kind(NamedTuple):
    """A kind of fault in words, its sizes, and those of a small one that makes up for a lack; none if it can't."""

    id: str
    name: str
    sizes: tuple[Size, ...]
    small: Callable[[Lack], list[float]]


RESISTANCE = Size("added resistance", "Ω", (0.3, 2.0, 10.0, 60.0, 500.0), 1e-3, 1e5)
INDUCTANCE = Size("added series inductance", "H", (3e-9, 3e-8, 3e-7), 1e-11, 1e-4)
GAP = Size("series capacitance of the gap", "F", (3e-13, 3e-12, 3e-11, 3e-10, 3e-9), 1e-14, 1e-6)
CAPACITANCE = Size("added shunt capacitance", "F", (3e-13, 3e-12, 3e-11, 3e-10), 1e-14, 1e-6)
LEAK = Size("leakage resistance", "Ω", (5.0, 50.0, 500.0, 3000.0), 1e-3, 1e5)
WET_LENGTH = Size("wet length", "m", (0.1, 0.3, 0.8, 2.0, 5.0), 0.01, 30.0)
WETNESS = Size("growth of the permittivity", "1", (0.1, 0.3, 0.8, 2.0), 1e-3, 20.0)
STEP_IMPEDANCE = Size("impedance of the wrong part", "Ω", (25.0, 35.0, 75.0, 100.0), 5.0, 300.0)
STEP_LENGTH = Size("electrical length of the wrong part", "m", (0.02, 0.04, 0.08, 0.16), 0.003, 0.5)

WRONG_PARTS = (1.5, 0.7)
"""Times the line's impedance: what a wrong part is taken for first, if it looks like more inductance, or like less."""


def _wrong_part(lack: Lack) -> list[float]:
    own = lack.impedance_ohm
    wrong = own * WRONG_PARTS[int(lack.henry < 0)]
    return [wrong, lack.henry * C_0 / (wrong - own**2 / wrong)]


def _inverse(value: float) -> list[float]:
    return [1 / value if value else np.inf]


def _none(_: Lack) -> list[float]:
    return []


KINDS = {
    kind.id: kind
    for kind in (
        Kind("resistance", "a bad contact", (RESISTANCE,), lambda lack: [lack.ohm]),
        Kind(
            "inductance",
            "a detour of the current, as at a loose or missing shield",
            (INDUCTANCE,),
            lambda lack: [lack.henry],
        ),
        Kind(
            "shield",
            "a shield that hangs by little, resistance and detour",
            (RESISTANCE, INDUCTANCE),
            lambda lack: [lack.ohm, lack.henry],
        ),
        Kind("gap", "a contact that does not touch", (GAP,), lambda lack: _inverse(lack.per_farad)),
        Kind("capacitance", "a squeezed or wet joint", (CAPACITANCE,), lambda lack: [lack.farad]),
        Kind("leak", "leakage across the joint", (LEAK,), lambda lack: _inverse(lack.siemens)),
        Kind("wet_before", "water in the cable on the transmitter's side", (WET_LENGTH, WETNESS), _none),
        Kind("wet_after", "water in the cable on the antenna's side", (WET_LENGTH, WETNESS), _none),
        Kind("step", "a part of the wrong impedance", (STEP_IMPEDANCE, STEP_LENGTH), _wrong_part),
    )
}


class Fault(NamedTuple):
    """One hypothesis: a kind of fault at a joint.

    `port(own, sizes)` is what stands in the place of a piece whose own matrix is `own`, in which it is linear.
    """

    index: int
    """Among the faults of the line."""
    joint: int
    """Index of the element that is the joint."""
    kind: Kind
    place: int
    """Index of the joint among the pieces."""
    at: int
    """Index of the piece it stands in: the joint, or a cable beside it."""
    port: Callable[[TwoPort, list[Number]], TwoPort]


def faults_of(line: Line) -> list[Fault]:
    """Every kind of fault at every joint of a line."""
    found = []
    lumped = _lumped(line.frequency_hz)
    for place, piece in enumerate(line.pieces):
        if piece.link.kind != "joint":
            continue
        joint = piece.link.element
        for kind, fault in lumped.items():
            found.append(Fault(len(found), joint, KINDS[kind], place, place, _behind(fault)))
        for kind, at in (("wet_before", place - 1), ("wet_after", place + 1)):
            if 0 <= at < len(line.pieces) and line.pieces[at].link.kind == "cable":
                wet = _wet(line.pieces[at], line.frequency_hz, first=kind == "wet_after")
                found.append(Fault(len(found), joint, KINDS[kind], place, at, wet))
    return found


def _behind(fault: Callable[..., TwoPort]) -> Callable[..., TwoPort]:
    return lambda own, sizes: product(own, fault(*sizes))


def _lumped(frequency: Number) -> dict[str, Callable[..., TwoPort]]:
    omega = 2 * np.pi * frequency
    return {
        "resistance": lambda ohm: _series(ohm + 0 * omega),
        "inductance": lambda henry: _series(1j * omega * henry),
        "shield": lambda ohm, henry: _series(ohm + 1j * omega * henry),
        "gap": lambda farad: _series(1 / (1j * omega * farad)),
        "capacitance": lambda farad: _shunt(1j * omega * farad),
        "leak": lambda ohm: _shunt(1 / ohm + 0 * omega),
        "step": lambda ohm, length: line_section(ohm + 0j * omega, 1j * omega * length / C_0),
    }


def _series(impedance: Number) -> TwoPort:
    one, none = np.ones_like(impedance), np.zeros_like(impedance)
    return TwoPort(one, impedance, none, one)


def _shunt(admittance: Number) -> TwoPort:
    one, none = np.ones_like(admittance), np.zeros_like(admittance)
    return TwoPort(one, none, admittance, one)


def _wet(piece: Piece, frequency: Number, *, first: bool) -> Callable[..., TwoPort]:
    """A cable whose first or last metres are wet: slower, of less impedance and more loss."""
    model = piece.link.models[GENEROUS]
    conductor, dielectric, beta = model.constants(frequency)
    impedance = model.impedance(conductor, dielectric, beta)
    tangent = float(assumption("wet_loss_tangent"))

    def port(own: TwoPort, sizes: list[Number]) -> TwoPort:
        length, growth = np.minimum(sizes[0], model.length_m), sizes[1]
        slower = np.sqrt(1 + growth)
        alpha = (conductor + dielectric) * slower + beta * slower * tangent * growth / 2
        wet = line_section(impedance / slower, (alpha + 1j * beta * slower) * length)
        # as much of the dry run is taken away again as is wet
        dry = line_section(impedance, -(conductor + dielectric + 1j * beta) * length)
        return product(product(wet, dry), own) if first else product(own, product(dry, wet))

    return port
