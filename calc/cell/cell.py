"""One cell of the matrix, with the record of the calls that made its number."""

import numpy as np

from ..catalogue import catalogue
from ..errors import known
from ..formulas import coax, voltage
from ..formulas.formula import Step, recording
from ..physics.cautions import CAUTIONS
from ..physics.columns import chosen_column
from ..physics.customary import customary_cable
from ..physics.derivation import Limits, limits_at_both_ends
from ..physics.families import family_head
from ..physics.family_ratings import family_ratings
from ..physics.gates import HOUSE, gate_results, missed_match, site_demands
from ..physics.house_limits import house_power
from ..physics.limits import LIMIT_NAMES, LimitId, air_density
from ..physics.losses import pair_losses
from ..physics.margins import LIMITS
from ..physics.station import Station, station_of
from .curves import curves
from .evidence import rating_checks
from .requests import CellRequest
from .results import CellResult, LimitResult, MatchResult
from .verdict import limit_sentence, match_sentence, verdict

__all__ = ["cell"]

SHOWN: list[LimitId] = ["contact", "cable", "voltage"]
"""In this order, but for the one that binds, which comes first."""


def cell(request: CellRequest) -> CellResult:
    """The margin of one family at one band or frequency and power, derived step by step.

    Raises InputError for unknown names, or when not just one of band and
    frequency_hz is given.
    """
    interface = known("family", request.family, catalogue().interfaces)
    column = chosen_column(request.band, request.frequency_hz, request.region)
    station = station_of(request)
    frequency, power_w = column.high_hz, request.power_w
    low, high = limits_at_both_ends(request.family, power_w, frequency, station)
    no_room = bool(low.contact.has_no_room(station) or low.cable.has_no_room(station))
    return_loss_db = float(low.match.return_loss_db), float(high.match.return_loss_db)
    demands = site_demands(request.family, request)
    cable = catalogue().cables[request.cable or customary_cable(request.family)]
    gates = gate_results(request.family, demands, frequency, power_w, station, no_room, return_loss_db, cable)
    refusing = next((gate for gate in gates if gate.hard and not gate.passed), None)
    margins_db = _least(low), _least(high)
    shown = margins_db if refusing is None else (None, None)
    binding = _binding(low) if margins_db[0] is not None else None
    contact_c, cable_c, peak_v = _state(power_w, low, station)
    house_w = float(house_power([request.family], np.array([frequency]))[0, 0])
    return CellResult(
        family=family_head(request.family, demands),
        column=column,
        power_w=power_w,
        frequency_hz=frequency,
        margin_db=shown[0],
        margin_high_db=shown[1],
        undecided=shown[0] is not None and shown[1] is not None and shown[0] < 0 <= shown[1],
        refused_by=refusing.id if refusing else None,
        verdict=verdict(interface.name, column, power_w, binding, margins_db, refusing, return_loss_db),
        cable_id=cable.id,
        cable_name=cable.spoken_name,
        cable_given=request.cable is not None,
        contact_temperature_c=contact_c,
        allowed_temperature_c=float(low.contact.allowed_temperature_c),
        cable_temperature_c=cable_c,
        cable_allowed_temperature_c=float(low.cable.allowed_temperature_c),
        peak_voltage_v=peak_v,
        largest_power_w=_largest(low, house_w)
        if not interface.receive_only and (not refusing or refusing.id == HOUSE)
        else None,
        limits=_limit_results(binding, low, high),
        match=_match_result(low, high, station),
        gates=gates,
        losses=pair_losses(request.family, frequency, station, high.match),
        ratings=rating_checks(request.family, cable.id, low),
        air_breakdown=_air_breakdown(request, station),
        curves=curves(request.family, power_w, frequency, station),
        cautions=CAUTIONS,
    )


def _binding(limits: Limits) -> LimitId:
    """The limit with the smallest margin; in a tie the first."""
    margins = {limit: margin for limit in LIMITS if (margin := limits.margins_db[limit]) is not None}
    return min(margins, key=margins.__getitem__)


def _least(limits: Limits) -> float | None:
    """The smallest margin [dB]; none in receive."""
    return min((margin for margin in limits.margins_db.values() if margin is not None), default=None)


def _state(power_w: float, low: Limits, station: Station) -> tuple[float, float, float]:
    """Temperatures of contact and cable [°C] and peak voltage [V] at the cell's power, recorded with their limits."""
    with recording("low") as steps:
        contact = low.contact.temperature_c(power_w, station)
    low.steps["contact"].extend(steps)
    with recording("low") as steps:
        cable = low.cable.temperature_c(power_w, station)
    low.steps["cable"].extend(steps)
    with recording("low") as steps:
        peak = voltage.peak_voltage(power_w, station.impedance_ohm, low.voltage.factor)
    low.steps["voltage"].extend(steps)
    # a pin is never cooler than the conductor soldered to it
    return float(max(contact, cable)), float(cable), float(peak)


def _largest(low: Limits, house_w: float) -> float | None:
    largest = float(min(low.contact.allowed_w, low.cable.allowed_w, low.voltage.allowed_w, house_w))
    return largest if largest > 0 else None


def _limit_results(binding: LimitId | None, low: Limits, high: Limits) -> list[LimitResult]:
    return [
        LimitResult(
            id=limit,
            name=LIMIT_NAMES[limit].capitalize(),
            binding=limit == binding,
            margin_db=low.margins_db[limit],
            margin_high_db=high.margins_db[limit],
            allowed_w=low.allowed_w(limit),
            allowed_high_w=high.allowed_w(limit),
            sentence=limit_sentence(limit, low, high),
            steps=low.steps[limit] + high.steps[limit],
        )
        for limit in sorted(SHOWN, key=lambda limit: limit != binding)
    ]


def _match_result(low: Limits, high: Limits, station: Station) -> MatchResult:
    return_loss_db = float(low.match.return_loss_db), float(high.match.return_loss_db)
    missed = missed_match(return_loss_db, station)
    return MatchResult(
        asked_db=station.return_loss_asked_db,
        return_loss_db=return_loss_db[0],
        return_loss_high_db=return_loss_db[1],
        state="misses" if missed.even_generous else "depends" if missed.cautious else "holds",
        sentence=match_sentence(return_loss_db, station.return_loss_asked_db),
        steps=low.match_steps + high.match_steps,
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
