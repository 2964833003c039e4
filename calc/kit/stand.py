"""What every family stands between two ports: its margin, its loss, and why it is refused."""

from typing import NamedTuple

import msgspec
import numpy as np

from ..catalogue import catalogue
from ..formulas import loss
from ..numeric.units import engineering
from ..physics.gates import GATES, family_reasons, gate_table, site_demands
from ..physics.limits import dissipation, match_limit
from ..physics.margins import LIMITS, evaluate
from ..physics.ratings import ENDS, table_ratings
from ..physics.station import station_of
from .requests import KitRequest

__all__ = ["Duty", "Standing", "standings"]


class Duty(NamedTuple):
    """What passes between two ports: frequency [Hz], peak envelope power [W], their impedances [Ω], the lower first."""

    frequency_hz: float
    power_w: float
    impedances_ohm: tuple[float, float]


class Standing(NamedTuple):
    """By family: cautious margin [dB], expected loss [dB], why it is refused or "", and what it has against it."""

    margin_db: dict[str, float]
    loss_db: dict[str, float]
    refusal: dict[str, str]
    notes: dict[str, list[str]]
    step_loss_db: float
    """Mismatch between the two ports' own impedances."""

    def stands(self, family: str) -> bool:
        """Whether a joint of the family may carry the duty."""
        return not self.refusal[family]


class _Table(NamedTuple):
    """In a line of one impedance: arrays by family, frequency and power, the loss by family and frequency."""

    margin_db: np.ndarray
    binding: np.ndarray
    failed: np.ndarray
    loss_db: np.ndarray


def standings(request: KitRequest, duties: set[Duty]) -> dict[Duty, Standing]:
    """What every family of the catalogue stands under each duty. Raises InputError for a bad scenario."""
    frequencies = sorted({duty.frequency_hz for duty in duties})
    powers = sorted({duty.power_w for duty in duties})
    impedances = {impedance for duty in duties for impedance in duty.impedances_ohm}
    tables = {ohm: _table(request, ohm, np.array(frequencies), np.array(powers)) for ohm in impedances}
    demands = {family: site_demands(family, request) for family in catalogue().interfaces}
    reasons = {family: family_reasons(family, asked) for family, asked in demands.items()}
    return {
        duty: _standing(
            request,
            duty,
            [tables[ohm] for ohm in duty.impedances_ohm],
            (frequencies.index(duty.frequency_hz), powers.index(duty.power_w)),
            reasons,
        )
        for duty in duties
    }


def _table(request: KitRequest, impedance: float, frequencies: np.ndarray, powers: np.ndarray) -> _Table:
    families = list(catalogue().interfaces)
    station = station_of(msgspec.structs.replace(request, system_impedance_ohm=impedance))
    margins = evaluate(families, frequencies, powers, station)
    demands = [site_demands(family, request) for family in families]
    failed = gate_table(families, demands, frequencies, powers, station, margins.heat)
    ratings_by_end = [table_ratings(families, end) for end in ENDS]
    share = dissipation(ratings_by_end[1], frequencies, station.added_resistance_ohm, impedance).total
    reflection = np.minimum(*(match_limit(ratings, frequencies, station).reflection for ratings in ratings_by_end))
    lost = loss.dissipative_loss(share) + loss.mismatch_loss(reflection)
    return _Table(margins.by_limit_db[0].min(axis=0), margins.by_limit_db[0].argmin(axis=0), failed, lost)


def _standing(
    request: KitRequest,
    duty: Duty,
    tables: list[_Table],
    at: tuple[int, int],
    reasons: dict[str, dict[str, str]],
) -> Standing:
    families = list(catalogue().interfaces)
    column, power = at
    margin, lost, refusal, notes = {}, {}, {}, {}
    for row, family in enumerate(families):
        worst = min(tables, key=lambda table: table.margin_db[row, column, power])
        margin[family] = float(worst.margin_db[row, column, power])
        lost[family] = float(max(table.loss_db[row, column] for table in tables))
        failed = [
            gate for index, gate in enumerate(GATES) if any(table.failed[index, row, column, power] for table in tables)
        ]
        hard = next((gate for gate in failed if gate.hard), None)
        name = catalogue().interfaces[family].name
        notes[family] = [f"{name}: {reasons[family][gate.id]}" for gate in failed if not gate.hard]
        if hard:
            refusal[family] = f"{name}: {reasons[family][hard.id]}"
        elif not margin[family] >= 0:
            limit = LIMITS[worst.binding[row, column, power]]
            refusal[family] = f"{name} would be {-margin[family]:.1f} dB over its {limit} limit at {_duty_words(duty)}."
        else:
            refusal[family] = _impedance_refusal(request, duty, family)
    low, high = duty.impedances_ohm
    step = float(loss.mismatch_loss((high - low) / (high + low))) if high > low else 0.0
    return Standing(margin, lost, refusal, notes, step)


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
