"""One cell of the matrix, with the record of the calls that made its number."""

from ..formulas import coax, voltage
from ..formulas.formula import Step, recording
from ..physics.cautions import CAUTIONS
from ..physics.columns import chosen_column
from ..physics.derivation import Limits
from ..physics.families import family_head
from ..physics.family_ratings import family_ratings
from ..physics.gates import missed_match
from ..physics.judgement import judged
from ..physics.limits import LIMIT_NAMES, LimitId, air_density
from ..physics.losses import pair_losses
from ..physics.station import Station
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
    column = chosen_column(request.band, request.frequency_hz, request.region)
    joint = judged(request.family, column, request.power_w, request)
    station, low, high = joint.station, joint.low, joint.high
    frequency, power_w = column.high_hz, request.power_w
    contact_c, cable_c, peak_v = _state(power_w, low, station)
    return CellResult(
        family=family_head(request.family, joint.demands),
        column=column,
        power_w=power_w,
        frequency_hz=frequency,
        margin_db=joint.margins_db[0],
        margin_high_db=joint.margins_db[1],
        undecided=joint.uncertain,
        refused_by=joint.refusing.id if joint.refusing else None,
        verdict=verdict(
            joint.interface.spoken_name,
            column,
            power_w,
            joint.binding,
            joint.computed_db,
            joint.refusing,
            joint.return_loss_db,
        ),
        cable_id=joint.cable.id,
        cable_name=joint.cable.spoken_name,
        cable_given=request.cable is not None,
        contact_temperature_c=contact_c,
        allowed_temperature_c=float(low.contact.allowed_temperature_c),
        cable_temperature_c=cable_c,
        cable_allowed_temperature_c=float(low.cable.allowed_temperature_c),
        peak_voltage_v=peak_v,
        largest_power_w=joint.largest_power_w,
        limits=_limit_results(joint.binding, low, high),
        match=_match_result(low, high, station),
        gates=joint.gates,
        losses=pair_losses(request.family, frequency, station, high.match),
        ratings=rating_checks(request.family, joint.cable.id, low),
        air_breakdown=_air_breakdown(request, station),
        curves=curves(request.family, power_w, frequency, station),
        cautions=CAUTIONS,
    )


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
