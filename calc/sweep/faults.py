"""What can be wrong at a joint: kinds of fault, each a two-port in its place with one or two sizes."""

from collections.abc import Callable, Sequence
from typing import NamedTuple

import numpy as np

from ..formulas.constants import C_0
from ..physics.ratings import assumption
from ..waves.two_port import TwoPort, cascade, line_section
from .arrays import NumberArray, RealArray
from .model import LineModel

__all__ = ["Fault", "FaultKind", "FaultSize", "LumpedEstimate", "faults_of"]


class FaultSize(NamedTuple):
    """One size of a fault: what it is, its unit, the values the search starts from, and its bounds."""

    name: str
    unit: str
    starts: tuple[float, ...]
    least: float
    most: float


class LumpedEstimate(NamedTuple):
    """Lumped elements at a joint, each alone the linear estimate of what the intact line's residual asks for."""

    series_ohm: float
    series_henry: float
    series_per_farad: float
    shunt_farad: float
    shunt_siemens: float
    line_impedance_ohm: float


class FaultKind(NamedTuple):
    """A kind of fault in words, its sizes, and those of a small one by the estimate; none where it says nothing."""

    id: str
    name: str
    sizes: tuple[FaultSize, ...]
    estimated_sizes: Callable[[LumpedEstimate], list[float]]


RESISTANCE = FaultSize("added resistance", "Ω", (0.3, 2.0, 10.0, 60.0, 500.0), 1e-3, 1e5)
INDUCTANCE = FaultSize("added series inductance", "H", (3e-9, 3e-8, 3e-7), 1e-11, 1e-4)
GAP = FaultSize("series capacitance of the gap", "F", (3e-13, 3e-12, 3e-11, 3e-10, 3e-9), 1e-14, 1e-6)
CAPACITANCE = FaultSize("added shunt capacitance", "F", (3e-13, 3e-12, 3e-11, 3e-10), 1e-14, 1e-6)
LEAKAGE = FaultSize("leakage resistance", "Ω", (5.0, 50.0, 500.0, 3000.0), 1e-3, 1e5)
WET_LENGTH = FaultSize("wet length", "m", (0.1, 0.3, 0.8, 2.0, 5.0), 0.01, 30.0)
WETNESS = FaultSize("growth of the permittivity", "1", (0.1, 0.3, 0.8, 2.0), 1e-3, 20.0)
STEP_IMPEDANCE = FaultSize("impedance of the wrong part", "Ω", (25.0, 35.0, 75.0, 100.0), 5.0, 300.0)
STEP_LENGTH = FaultSize("electrical length of the wrong part", "m", (0.02, 0.04, 0.08, 0.16), 0.003, 0.5)

WRONG_IMPEDANCES = (1.5, 0.7)
"""Times the line's impedance: where a wrong part starts, if it resembles more inductance, or less."""


def _wrong_part(estimate: LumpedEstimate) -> list[float]:
    z_0 = estimate.line_impedance_ohm
    wrong = z_0 * WRONG_IMPEDANCES[int(estimate.series_henry < 0)]
    return [wrong, estimate.series_henry * C_0 / (wrong - z_0**2 / wrong)]


def _inverse(value: float) -> list[float]:
    return [1 / value if value else np.inf]


def _no_estimate(_: LumpedEstimate) -> list[float]:
    return []


FAULT_KINDS = {
    kind.id: kind
    for kind in (
        FaultKind("resistance", "a bad contact", (RESISTANCE,), lambda estimate: [estimate.series_ohm]),
        FaultKind(
            "inductance",
            "a detour of the current, as at a loose or missing shield",
            (INDUCTANCE,),
            lambda estimate: [estimate.series_henry],
        ),
        FaultKind(
            "shield",
            "a shield that hangs by little, resistance and detour",
            (RESISTANCE, INDUCTANCE),
            lambda estimate: [estimate.series_ohm, estimate.series_henry],
        ),
        FaultKind("gap", "a contact that does not touch", (GAP,), lambda estimate: _inverse(estimate.series_per_farad)),
        FaultKind("capacitance", "a squeezed or wet joint", (CAPACITANCE,), lambda estimate: [estimate.shunt_farad]),
        FaultKind("leak", "leakage across the joint", (LEAKAGE,), lambda estimate: _inverse(estimate.shunt_siemens)),
        FaultKind("wet_before", "water in the cable on the transmitter's side", (WET_LENGTH, WETNESS), _no_estimate),
        FaultKind("wet_after", "water in the cable on the antenna's side", (WET_LENGTH, WETNESS), _no_estimate),
        FaultKind("step", "a part of the wrong impedance", (STEP_IMPEDANCE, STEP_LENGTH), _wrong_part),
    )
}

SizedTwoPort = Callable[..., TwoPort]
"""The chain matrix of a lumped fault by its sizes, one argument each."""


class Fault(NamedTuple):
    """One hypothesis: a kind of fault at a joint."""

    number: int
    """Its index among the faults of the line."""
    element: int
    """Index of the element that is the joint."""
    kind: FaultKind
    joint_position: int
    """Of the joint among the line's two-ports."""
    position: int
    """Of the two-port it changes: the joint, or a cable beside it."""
    matrix: Callable[[TwoPort, Sequence[float]], TwoPort]
    """The chain matrix with the fault, by that of the two-port without it, in which it is linear, and the sizes."""


def faults_of(line: LineModel) -> list[Fault]:
    """Every kind of fault at every joint of a line."""
    found: list[Fault] = []
    lumped = _lumped(line.frequency_hz)
    cables = line.cable_positions
    for joint in line.joint_positions:
        element = line.two_ports[joint].link.element
        for kind, sized in lumped.items():
            found.append(Fault(len(found), element, FAULT_KINDS[kind], joint, joint, _behind(sized)))
        for kind, cable in (("wet_before", joint - 1), ("wet_after", joint + 1)):
            if cable in cables:
                wet = _wet(line, cable, first=kind == "wet_after")
                found.append(Fault(len(found), element, FAULT_KINDS[kind], joint, cable, wet))
    return found


def _behind(sized: SizedTwoPort) -> Callable[[TwoPort, Sequence[float]], TwoPort]:
    return lambda own, sizes: cascade((own, sized(*sizes)))


def _lumped(frequency: RealArray) -> dict[str, SizedTwoPort]:
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


def _series(impedance: NumberArray) -> TwoPort:
    one, zero = np.ones_like(impedance), np.zeros_like(impedance)
    return TwoPort(one, impedance, zero, one)


def _shunt(admittance: NumberArray) -> TwoPort:
    one, zero = np.ones_like(admittance), np.zeros_like(admittance)
    return TwoPort(one, zero, admittance, one)


def _wet(line: LineModel, cable: int, *, first: bool) -> Callable[[TwoPort, Sequence[float]], TwoPort]:
    """A cable whose first or last metres are wet: slower, of less impedance and more loss."""
    model = line.cable(cable)
    conductor, dielectric, beta = model.constants(line.frequency_hz)
    impedance = model.impedance(conductor, dielectric, beta)
    tangent = float(assumption("wet_loss_tangent"))

    def matrix(own: TwoPort, sizes: Sequence[float]) -> TwoPort:
        length, growth = np.minimum(sizes[0], model.length_m), sizes[1]
        slowing = np.sqrt(1 + growth)
        alpha = (conductor + dielectric) * slowing + beta * slowing * tangent * growth / 2
        wet = line_section(impedance / slowing, (alpha + 1j * beta * slowing) * length)
        # as much of the dry run is removed again as is wet
        dry = line_section(impedance, -(conductor + dielectric + 1j * beta) * length)
        return cascade((cascade((wet, dry)), own)) if first else cascade((own, cascade((dry, wet))))

    return matrix
