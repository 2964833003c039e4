"""The stated rule by which the families that meet every demand are ranked: what one would fit, not what has most."""

from collections.abc import Sequence
from typing import NamedTuple

from ..catalogue import catalogue
from ..catalogue.schema import Interface
from ..physics.gates import EXPOSURES
from .adapters import adapters_from
from .evaluation import Evaluation
from .requests import ChooseRequest

__all__ = ["OTHER_CABLES", "RULE", "Contender", "Merit", "Unusual", "contenders"]

LOSS_STEP_DB = 0.05
"""Less than this between two joints is not noticed on the air, nor told apart by what a station measures with."""

SELDOM, NOT_MADE_FOR = 1, 4
"""What is made for something else comes behind all that is only seldom seen there, in all three ways."""
OTHER_CABLES = "seldom put on this cable"

RULE = (
    "Connectors that meet every demand are ranked in this order: the margin asked for (with less, the least last); no"
    " adapter and no tape needed; usual in the trade for this use, impedance, cable, frequency and power; the smallest"
    f" loss, in steps of {LOSS_STEP_DB:g} dB; the smaller body; the longer life in matings. Equals are ties."
)


class Unusual(NamedTuple):
    """A way in which the trade would not fit a family unasked."""

    words: str
    """As they follow "it is"."""
    weight: int


class Merit(NamedTuple):
    """How a family that passes stands in each criterion, the first that differs deciding; less is better."""

    short_tenths: int
    """Of a decibel, that the margin shown falls short of the one asked for."""
    changes: int
    """Adapters from the port, and the tape it needs against the weather."""
    unusual: int
    """In how many ways the trade would not fit it there unasked; what it is not made for at all counts more."""
    loss_steps: int
    """Whole steps of loss over that of the best."""
    size_tenths: int
    """Of a millimetre, the mated body's diameter."""
    wear: float
    """The matings it is good for, negative."""


class Contender(NamedTuple):
    """A family that passes, with what it is compared by."""

    row: int
    """Of the evaluation."""
    interface: Interface
    margin_db: float | None
    """None in receive, where no power limit counts."""
    adapters: int | None
    """From the port; None where there is no port."""
    taped: bool
    """Whether it, or the port's own joint in front of it, stands the weather only because it is taped or booted."""
    unusual: list[Unusual]
    """In what ways the trade would not fit it there unasked."""
    loss_db: float
    merit: Merit
    rank: int
    """1 is best; equals share one."""


def contenders(request: ChooseRequest, evaluation: Evaluation, rows: Sequence[int]) -> list[Contender]:
    """The families of the rows, which pass, by rank; ties in the order of the catalogue."""
    least_db = min((float(evaluation.loss_db[row]) for row in rows), default=0.0)
    found = [_contender(request, evaluation, row, least_db) for row in rows]
    ranked = sorted(found, key=lambda one: one.merit)
    return [one._replace(rank=1 + sum(other.merit < one.merit for other in found)) for one in ranked]


def _contender(request: ChooseRequest, evaluation: Evaluation, row: int, least_db: float) -> Contender:
    interface = catalogue().interfaces[evaluation.families[row]]
    margin_db = float(evaluation.low_db[row]) if evaluation.power_w > 0 else None
    adapters = adapters_from(request.port)[interface.id] if request.port is not None else None
    joints = [interface] if request.port is None else [interface, catalogue().interfaces[request.port]]
    taped = min(EXPOSURES.index(joint.exposure_mated) for joint in joints) < EXPOSURES.index(
        evaluation.scenario.exposure
    )
    against = _unusual(request, evaluation, interface)
    loss_db = float(evaluation.loss_db[row])
    short = 0 if margin_db is None else max(0, round(request.margin_asked_db * 10) - round(margin_db * 10))
    merit = Merit(
        short_tenths=short,
        changes=(adapters or 0) + taped,
        unusual=sum(one.weight for one in against),
        loss_steps=int((loss_db - least_db) / LOSS_STEP_DB),
        size_tenths=round(interface.body_diameter_m.value * 1e4),
        wear=-interface.durability_matings.low.value,
    )
    return Contender(row, interface, margin_db, adapters, taped, against, loss_db, merit, rank=1)


def _unusual(request: ChooseRequest, evaluation: Evaluation, interface: Interface) -> list[Unusual]:
    found = []
    if interface.special_use is not None:
        found.append(Unusual(f"made for {interface.special_use.value}", NOT_MADE_FOR))
    nominal_ohm = interface.nominal_impedance_ohm.value
    if interface.constant_impedance and nominal_ohm != request.system_impedance_ohm:
        found.append(Unusual(f"made for {nominal_ohm:g} Ω lines", NOT_MADE_FOR))
    cable_m, usual_m = evaluation.cable_diameter_m, interface.everyday_cable_diameter_m
    if cable_m is not None and usual_m is not None and not usual_m.low.value <= cable_m <= usual_m.high.value:
        found.append(Unusual(OTHER_CABLES, SELDOM))
    usual_hz = interface.everyday_lowest_frequency_hz
    if usual_hz is not None and min(column.low_hz for column in evaluation.columns) < usual_hz.value:
        found.append(Unusual(f"seldom seen below {usual_hz.value / 1e6:g} MHz", SELDOM))
    usual_w = interface.everyday_highest_power_w
    if usual_w is not None and evaluation.power_w > usual_w.value:
        found.append(Unusual(f"seldom used above {usual_w.value:g} W", SELDOM))
    return found
