"""One cell of the matrix, with the record of the calls that made its number."""

import numpy as np

from ..catalogue import catalogue
from ..errors import known
from ..formulas import coax, voltage
from ..formulas.formula import Step, recording
from ..formulas.heat import average_power, contact_temperature
from ..physics.cautions import CAUTIONS
from ..physics.columns import chosen_column
from ..physics.derivation import Limits, both_ends, limits_at
from ..physics.families import family_head
from ..physics.gates import HOUSE, gate_results, site_demands
from ..physics.house_limits import house_power
from ..physics.limits import LimitId, air_density, assumption, first_principles_power
from ..physics.losses import pair_losses
from ..physics.margins import agreement_ratio
from ..physics.ratings import ENDS, family_ratings
from ..physics.station import Station, station_of
from .curves import curves
from .requests import CellRequest
from .results import CellResult, CrossCheck, LimitResult
from .verdict import limit_sentence, verdict

__all__ = ["cell"]

NAMES: dict[LimitId, str] = {"heat": "Heat", "voltage": "Voltage", "match": "Match"}


def cell(request: CellRequest) -> CellResult:
    """The margin of one family at one band or frequency and power, derived step by step.

    Raises InputError for unknown names, or when not just one of band and
    frequency_hz is given.
    """
    interface = known("family", request.family, catalogue().interfaces)
    column = chosen_column(request.band, request.frequency_hz, request.region)
    station = station_of(request)
    frequency = column.high_hz
    by_limit = both_ends(request.family, frequency, station)
    low, high = (limits_at(request.power_w, frequency, station, end, by_limit) for end in ENDS)
    demands = site_demands(request.family, request)
    gates = gate_results(request.family, demands, column.high_hz, request.power_w, station, low.heat.path)
    refusing = next((gate for gate in gates if gate.hard and not gate.passed), None)
    binding = min(low.margins_db, key=lambda limit: _finite(low.margins_db[limit]))
    margins_db = _least(low), _least(high)
    temperature, peak = _state(request, low, station)
    return CellResult(
        family=family_head(request.family, demands),
        column=column,
        power_w=request.power_w,
        frequency_hz=frequency,
        margin_db=None if refusing else margins_db[0],
        margin_high_db=None if refusing else margins_db[1],
        undecided=not refusing and margins_db[0] < 0 <= margins_db[1],
        refused_by=refusing.id if refusing else None,
        verdict=verdict(interface.name, column, request.power_w, binding, margins_db, refusing),
        contact_temperature_c=temperature,
        allowed_temperature_c=float(low.heat.path.allowed_temperature_c),
        peak_voltage_v=peak,
        largest_power_w=_largest(low, house_power([request.family], np.array([frequency]))[0, 0])
        if not interface.receive_only and (not refusing or refusing.id == HOUSE)
        else None,
        limits=_limit_results(binding, low, high),
        gates=gates,
        losses=pair_losses(request.family, frequency, station, high.match),
        cross_check=_cross_check(request, low, high, station),
        air_breakdown=_air_breakdown(request, station),
        curves=curves(request.family, request.power_w, frequency, station),
        cautions=CAUTIONS,
    )


def _finite(margin_db: float | None) -> float:
    """In receive no power limit counts, and where nothing is allowed a gate refuses."""
    return np.inf if margin_db is None else margin_db


def _least(limits: Limits) -> float:
    return min(_finite(margin_db) for margin_db in limits.margins_db.values())


def _state(request: CellRequest, low: Limits, station: Station) -> tuple[float, float]:
    """Contact temperature [°C] and peak voltage [V] at the cell's power, recorded with their limits."""
    heat = low.heat
    with recording("low") as steps:
        mean = average_power(request.power_w, station.duty_factor, heat.path.time_share)
        temperature = contact_temperature(
            station.ambient_temperature_c,
            heat.path.solar_rise_k,
            mean,
            heat.factor,
            heat.share,
            heat.path.resistance_k_per_w,
        )
    low.steps["heat"].extend(steps)
    with recording("low") as steps:
        peak = voltage.peak_voltage(request.power_w, station.impedance_ohm, low.voltage.factor)
    low.steps["voltage"].extend(steps)
    return float(temperature), float(peak)


def _largest(low: Limits, house_w: float) -> float | None:
    largest = float(min(low.heat.allowed_w, low.voltage.allowed_w, house_w))
    return largest if low.match.margin_db >= 0 and largest > 0 else None


def _limit_results(binding: LimitId, low: Limits, high: Limits) -> list[LimitResult]:
    order = [binding, *(limit for limit in NAMES if limit != binding)]
    allowed = {limit: [float(getattr(end, limit).allowed_w) for end in (low, high)] for limit in ("heat", "voltage")}
    return [
        LimitResult(
            id=limit,
            name=NAMES[limit],
            binding=limit == binding,
            margin_db=low.margins_db[limit],
            margin_high_db=high.margins_db[limit],
            allowed_w=allowed[limit][0] if limit in allowed else None,
            allowed_high_w=allowed[limit][1] if limit in allowed else None,
            sentence=limit_sentence(limit, low, high),
            steps=low.steps[limit] + high.steps[limit],
        )
        for limit in order
    ]


def _cross_check(request: CellRequest, low: Limits, high: Limits, station: Station) -> CrossCheck:
    with recording() as steps:
        estimate = first_principles_power(family_ratings(request.family, "low"), low.heat, station)
    ratio = float(agreement_ratio(estimate, low.heat.allowed_w, high.heat.allowed_w)) if estimate > 0 else 1.0
    factor = assumption("agreement_factor")
    return CrossCheck(
        rating_allowed_w=float(low.heat.allowed_w),
        rating_allowed_high_w=float(high.heat.allowed_w),
        first_principles_allowed_w=float(estimate),
        ratio=ratio,
        agrees=1 / factor <= ratio <= factor,
        steps=steps,
    )


def _air_breakdown(request: CellRequest, station: Station) -> list[Step]:
    ratings = family_ratings(request.family, "low")
    with recording() as steps:
        density = air_density(station)
        gap = voltage.air_gap(ratings.outer_diameter_m, ratings.inner_diameter_m)
        voltage.uniform_breakdown_voltage(density, gap)
        voltage.peek_onset_voltage(density, ratings.inner_diameter_m, ratings.outer_diameter_m)
        coax.characteristic_impedance(ratings.outer_diameter_m, ratings.inner_diameter_m, ratings.permittivity)
        coax.te11_cutoff(ratings.te11_root, ratings.inner_diameter_m, ratings.permittivity)
        coax.te11_rule(ratings.outer_diameter_m, ratings.inner_diameter_m, ratings.permittivity)
    return steps
