"""One cell of the matrix, with the record of the calls that made its number."""

import numpy as np

from ..catalogue import catalogue
from ..errors import InputError, known
from ..formulas import coax, loss, voltage
from ..formulas.formula import Step, recording
from ..formulas.heat import average_power, contact_temperature
from ..numeric.units import engineering
from ..physics.cautions import CAUTIONS
from ..physics.columns import Column, band_column, spot_column
from ..physics.derivation import Limits, both_ends, limits_at
from ..physics.families import family_head
from ..physics.gates import HOUSE, GateResult, gate_results, site_demands
from ..physics.house_limits import house_power
from ..physics.limits import LimitId, Match, air_density, assumption, dissipation, first_principles_power
from ..physics.losses import LossShares
from ..physics.margins import agreement_ratio
from ..physics.ratings import ENDS, family_ratings
from ..physics.station import Station, station_of
from .curves import curves
from .requests import CellRequest
from .results import CellResult, CrossCheck, LimitResult

__all__ = ["cell"]

NAMES: dict[LimitId, str] = {"heat": "Heat", "voltage": "Voltage", "match": "Match"}


def cell(request: CellRequest) -> CellResult:
    """The margin of one family at one band or frequency and power, derived step by step.

    Raises InputError for unknown names, or when not just one of band and
    frequency_hz is given.
    """
    interface = known("family", request.family, catalogue().interfaces)
    column = _column(request)
    station = station_of(request)
    frequency = column.high_hz
    by_limit = both_ends(request.family, frequency, station)
    low, high = (limits_at(request.power_w, frequency, station, end, by_limit) for end in ENDS)
    demands = site_demands(request.family, request)
    gates = gate_results(request.family, demands, column.high_hz, request.power_w, station, low.heat)
    refusing = next((gate for gate in gates if gate.hard and not gate.passed), None)
    binding = min(low.margins_db, key=lambda limit: _finite(low.margins_db[limit]))
    conservative = None if refusing else low.margins_db[binding]
    optimistic = None if refusing else min(m for m in high.margins_db.values() if m is not None)
    undecided = conservative is not None and conservative < 0 <= optimistic
    temperature, peak = _state(request, low, station)
    return CellResult(
        family=family_head(request.family, demands),
        column=column,
        power_w=request.power_w,
        frequency_hz=frequency,
        margin_db=conservative,
        margin_high_db=optimistic,
        undecided=undecided,
        refused_by=refusing.id if refusing else None,
        verdict=_verdict(request, column, binding, conservative, optimistic, refusing),
        contact_temperature_c=temperature,
        allowed_temperature_c=float(low.heat.allowed_temperature_c),
        peak_voltage_v=peak,
        largest_power_w=_largest(low, house_power([request.family], np.array([frequency]))[0, 0])
        if not interface.receive_only and (not refusing or refusing.id == HOUSE)
        else None,
        limits=_limit_results(binding, low, high),
        gates=gates,
        losses=_losses(request, frequency, station, high.match),
        cross_check=_cross_check(request, low, high, station),
        air_breakdown=_air_breakdown(request, station),
        curves=curves(request.family, request.power_w, frequency, station),
        cautions=CAUTIONS,
    )


def _column(request: CellRequest) -> Column:
    if (request.band is None) == (request.frequency_hz is None):
        raise InputError("band", request.band, "either a band or a frequency_hz, one of the two")
    if request.band is not None:
        return band_column(request.band, request.region)
    return spot_column(request.frequency_hz)


def _finite(value: float | None) -> float:
    return np.inf if value is None else value


def _state(request: CellRequest, low: Limits, station: Station) -> tuple[float | None, float]:
    """Contact temperature [°C] and peak voltage [V] at the cell's power, recorded with their limits."""
    heat = low.heat
    with recording("low") as steps:
        mean = average_power(request.power_w, station.duty_factor, heat.time_share)
        temperature = contact_temperature(
            station.ambient_temperature_c,
            heat.solar_rise_k,
            mean,
            heat.factor,
            heat.share,
            heat.resistance_k_per_w,
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
            sentence=_limit_sentence(limit, low, high),
            steps=low.steps[limit] + high.steps[limit],
        )
        for limit in order
    ]


def _limit_sentence(limit: LimitId, low: Limits, high: Limits) -> str:
    if limit == "heat":
        return (
            f"The centre contact reaches {low.heat.allowed_temperature_c:.0f} °C at"
            f" {engineering(float(low.heat.allowed_w), 'W')} PEP by the cautious rating and at"
            f" {engineering(float(high.heat.allowed_w), 'W')} by the generous one."
        )
    if limit == "voltage":
        return (
            f"The rated peak, {low.voltage.allowed_peak_v:.0f} V in this air, is reached at"
            f" {engineering(float(low.voltage.allowed_w), 'W')} PEP; the generous rating gives"
            f" {high.voltage.allowed_peak_v:.0f} V."
        )
    return (
        f"The joint alone has at least {low.match.return_loss_db:.1f} dB of return loss, typically"
        f" {high.match.return_loss_db:.1f} dB."
    )


def _verdict(
    request: CellRequest,
    column: Column,
    binding: LimitId,
    conservative: float | None,
    optimistic: float | None,
    refusing: GateResult | None,
) -> str:
    name = catalogue().interfaces[request.family].name
    level = f"{engineering(request.power_w, 'W')} PEP" if request.power_w else "receive only"
    where = f"{name} on {column.name} at {level}"
    if refusing:
        return f"{where}: refused. {refusing.sentence}"
    if conservative >= 0:
        return f"{where}: {conservative:.1f} dB of room; {binding} binds."
    if optimistic >= 0:
        return (
            f"{where}: undecided. The cautious sources put it {-conservative:.1f} dB over its {binding} limit,"
            f" the generous ones leave {optimistic:.1f} dB of room."
        )
    return f"{where}: {-conservative:.1f} dB over its {binding} limit."


def _losses(request: CellRequest, frequency: float, station: Station, expected: Match) -> LossShares:
    ratings = family_ratings(request.family, "high")
    shares = dissipation(ratings, frequency, station.added_resistance_ohm, station.impedance_ohm)
    loss_of = [
        float(loss.dissipative_loss(min(share, shares.total)))
        for share in (shares.contact, shares.conductor, shares.dielectric)
    ]
    mismatch = float(loss.mismatch_loss(expected.reflection))
    guaranteed = loss.guaranteed_loss(ratings.guaranteed_loss_db, frequency, ratings.guaranteed_loss_at_hz)
    return LossShares(
        contact_db=loss_of[0],
        conductor_db=loss_of[1],
        dielectric_db=loss_of[2],
        mismatch_db=mismatch,
        expected_db=float(loss.dissipative_loss(shares.total)) + mismatch,
        guaranteed_db=float(guaranteed),
        guaranteed_source=ratings.guaranteed_loss_db.source,
        guaranteed_kind=ratings.guaranteed_loss_db.kind,
    )


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
