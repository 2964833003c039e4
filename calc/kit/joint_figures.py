"""A mated pair of every family between two ports: its margin, its loss, and why it is refused."""

from typing import NamedTuple

import msgspec
import numpy as np
from numpy.typing import NDArray

from ..catalogue import catalogue
from ..formulas import loss
from ..formulas.match import vswr_of_reflection
from ..numeric.units import engineering
from ..physics.dissipation import dissipation
from ..physics.family_ratings import table_ratings
from ..physics.gates import GATES, family_reasons, gate_table, missed_match, site_demands
from ..physics.limits import LIMIT_NAMES, match_of
from ..physics.margins import LIMITS, evaluate
from ..physics.ratings import ENDS
from ..physics.station import station_of
from .requests import KitRequest

__all__ = ["Duty", "JointFigures", "joint_figures"]


class Duty(NamedTuple):
    """What passes between two ports: frequency [Hz], peak envelope power [W], their impedances [Ω], the lower first."""

    frequency_hz: float
    power_w: float
    impedances_ohm: tuple[float, float]


class JointFigures(NamedTuple):
    """A joint under one duty, by family."""

    margin_db: dict[str, float]
    """The cautious one."""
    vswr: dict[str, float]
    """The cautious one, of the joint alone."""
    loss_db: dict[str, float]
    """The expected one."""
    refusal: dict[str, str]
    """Why it is refused, one sentence; empty where it is not."""
    notes: dict[str, list[str]]
    """What to mind: soft gates that fail."""
    impedance_step_loss_db: float
    """Mismatch between the two ports' own impedances, whatever joins them."""

    def allows(self, family: str) -> bool:
        """Whether a joint of the family may carry the duty."""
        return not self.refusal[family]


class _Tables(NamedTuple):
    """In a line of one impedance: arrays by family, frequency and power."""

    margin_db: NDArray[np.float64]
    limiting: NDArray[np.intp]
    """Index of the limit that is met first."""
    failed: NDArray[np.bool_]
    """By gate besides."""
    reflection: NDArray[np.float64]
    """The cautious one; by family and frequency alone."""
    loss_db: NDArray[np.float64]
    """By family and frequency alone."""


def joint_figures(request: KitRequest, duties: set[Duty]) -> dict[Duty, JointFigures]:
    """The figures of a joint of every family under each duty. Raises InputError for a bad scenario."""
    frequencies = sorted({duty.frequency_hz for duty in duties})
    powers = sorted({duty.power_w for duty in duties})
    impedances = {impedance for duty in duties for impedance in duty.impedances_ohm}
    tables = {ohm: _tables(request, ohm, np.array(frequencies), np.array(powers)) for ohm in impedances}
    demands = {family: site_demands(family, request) for family in catalogue().interfaces}
    reasons = {family: family_reasons(family, asked) for family, asked in demands.items()}
    return {
        duty: _figures(
            request,
            duty,
            [tables[ohm] for ohm in duty.impedances_ohm],
            (frequencies.index(duty.frequency_hz), powers.index(duty.power_w)),
            reasons,
        )
        for duty in duties
    }


def _tables(
    request: KitRequest, impedance_ohm: float, frequency_hz: NDArray[np.float64], power_w: NDArray[np.float64]
) -> _Tables:
    families = list(catalogue().interfaces)
    station = station_of(msgspec.structs.replace(request, system_impedance_ohm=impedance_ohm))
    margins = evaluate(families, frequency_hz, power_w, station)
    demands = [site_demands(family, request) for family in families]
    missed = missed_match(margins.return_loss_db, station)
    failed = gate_table(families, demands, frequency_hz, power_w, margins.no_heat_room, missed, margins.cable_cutoff_hz)
    ratings_by_end = [table_ratings(families, end) for end in ENDS]
    dissipated = dissipation(ratings_by_end[1], frequency_hz, station.added_resistance_ohm, impedance_ohm).total
    reflections = [match_of(ratings, frequency_hz, station).reflection for ratings in ratings_by_end]
    loss_db = loss.dissipative_loss(dissipated) + loss.mismatch_loss(np.minimum(*reflections))
    cautious_db = margins.by_limit_db[0]
    return _Tables(cautious_db.min(axis=0), cautious_db.argmin(axis=0), failed, np.maximum(*reflections), loss_db)


def _figures(
    request: KitRequest,
    duty: Duty,
    tables: list[_Tables],
    at: tuple[int, int],
    reasons: dict[str, dict[str, str]],
) -> JointFigures:
    """Of the lines on both sides the worse counts; `at` is the duty's place among frequencies and powers."""
    column, power = at
    margin_db: dict[str, float] = {}
    vswr: dict[str, float] = {}
    loss_db: dict[str, float] = {}
    refusal: dict[str, str] = {}
    notes: dict[str, list[str]] = {}
    for row, (family, interface) in enumerate(catalogue().interfaces.items()):
        worst = min(tables, key=lambda table: table.margin_db[row, column, power])
        margin_db[family] = float(worst.margin_db[row, column, power])
        vswr[family] = float(vswr_of_reflection(max(table.reflection[row, column] for table in tables)))
        loss_db[family] = float(max(table.loss_db[row, column] for table in tables))
        failed = [
            gate for index, gate in enumerate(GATES) if any(table.failed[index, row, column, power] for table in tables)
        ]
        hard = next((gate for gate in failed if gate.hard), None)
        name = interface.name
        notes[family] = [f"{name}: {reasons[family][gate.id]}" for gate in failed if not gate.hard]
        if hard:
            refusal[family] = f"{name}: {reasons[family][hard.id]}"
        elif not margin_db[family] >= 0:
            limit = LIMITS[worst.limiting[row, column, power]]
            over_db = -margin_db[family]
            refusal[family] = (
                f"{name} would be {over_db:.1f} dB over the limit by {LIMIT_NAMES[limit]} at {_duty_words(duty)}."
            )
        else:
            refusal[family] = _impedance_refusal(request, duty, family)
    low, high = duty.impedances_ohm
    step_db = float(loss.mismatch_loss((high - low) / (high + low))) if high > low else 0.0
    return JointFigures(margin_db, vswr, loss_db, refusal, notes, step_db)


def _impedance_refusal(request: KitRequest, duty: Duty, family: str) -> str:
    interface = catalogue().interfaces[family]
    own = interface.nominal_impedance_ohm.value
    if request.impedance_steps or not interface.constant_impedance or own in duty.impedances_ohm:
        return ""
    lines = " and ".join(f"{ohm:g}" for ohm in sorted(set(duty.impedances_ohm)))
    return f"{interface.name} is made for {own:g} Ω and would stand in a line of {lines} Ω."


def _duty_words(duty: Duty) -> str:
    power = f"{engineering(duty.power_w, 'W')} PEP" if duty.power_w else "receive only"
    return f"{engineering(duty.frequency_hz, 'Hz')}, {power}"
