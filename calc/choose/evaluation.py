"""What is known of every family at the joint: margins, gates and loss, with the port's own joint in front of it."""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..errors import known
from ..formulas import direct_current
from ..formulas.loss import dissipative_loss, mismatch_loss
from ..physics.columns import Column, columns
from ..physics.direct_current import DirectCurrent, allowed_current
from ..physics.dissipation import dissipation
from ..physics.family_ratings import table_ratings
from ..physics.gates import EXPOSURES, VIBRATIONS, Demand, gate_table, missed_match, site_demands
from ..physics.limits import match_of
from ..physics.margins import LIMITS, Margins, evaluate
from ..physics.scenario import Scenario
from ..physics.station import Station, station_of
from .requests import ChooseRequest

__all__ = ["Evaluation", "evaluation_of", "harsher"]


class Evaluation(NamedTuple):
    """Every family of the catalogue at one joint. The last axis of each array is the family."""

    families: list[str]
    scenario: Scenario
    """With the named cable, and at least what the installation brings with it."""
    columns: list[Column]
    power_w: float
    margins: Margins
    demands: list[list[Demand]]
    """What the site asks, by family."""
    failed: np.ndarray
    """Gate x family: whether the gate fails at some column."""
    by_limit_db: np.ndarray
    """Limit x family: the smallest cautious margin over the columns [dB]."""
    tightest_column: np.ndarray
    """Limit x family: the column of that margin."""
    tightest_limit: np.ndarray
    """Which limit has the smallest cautious margin of all."""
    low_db: np.ndarray
    """That margin [dB], or the port's own where it is smaller."""
    high_db: np.ndarray
    """The smallest generous margin [dB], or the port's own where it is smaller."""
    loss_db: np.ndarray
    """Expected loss at the highest frequency [dB], the port's own joint included."""
    return_loss_db: np.ndarray
    """Ends x family: the smallest over the columns [dB]."""
    solar_rise_k: np.ndarray
    """The sun's share of the heating [K] in the column where it is largest."""
    allowed_temperature_c: np.ndarray
    """The temperature allowed [°C] in the column where it is lowest."""
    direct_current_a: np.ndarray
    """Direct current that heat allows without power beside it [A], or the port's own where it is smaller."""
    too_much_current: np.ndarray
    """By family: whether the direct current asked for is more than that."""
    cable_diameter_m: float | None
    """Of the cable asked about; None where none is."""

    @property
    def highest_hz(self) -> float:
        """The highest frequency the joint must carry [Hz]."""
        return max(column.high_hz for column in self.columns)


def evaluation_of(request: ChooseRequest) -> Evaluation:
    """Every family of the catalogue at the joint asked about. Raises InputError for unknown names."""
    scenario = _scenario(request)
    station = station_of(scenario)
    if request.port is not None:  # on a panel, which carries no heat away
        station = station._replace(cabled_sides=1)
    asked = columns(request.region, request.bands, request.frequencies_hz)
    families = list(catalogue().interfaces)
    for field in ("port", "plan"):
        if getattr(request, field) is not None:
            known(field, getattr(request, field), catalogue().interfaces)
    power_w = request.power_w if request.use == "transmit" else 0.0
    highest_hz = np.array([column.high_hz for column in asked], dtype=np.float64)
    powers_w = np.array([power_w], dtype=np.float64)
    direct = allowed_current(families, station)
    margins = evaluate(families, highest_hz, powers_w, station)
    if request.dc_current_a > 0 and power_w > 0:
        margins = _beside_direct_current(margins, _shares_left(direct, request))
    demands = [site_demands(family, scenario) for family in families]
    by_limit = margins.by_limit_db[..., 0]  # ends x limits x families x columns
    cautious = np.where(np.isnan(by_limit[0]), -np.inf, by_limit[0])
    smallest = cautious.min(axis=2)
    by_family = (len(families), highest_hz.size)
    evaluation = Evaluation(
        families=families,
        scenario=scenario,
        columns=asked,
        power_w=power_w,
        margins=margins,
        demands=demands,
        failed=gate_table(
            families,
            demands,
            highest_hz,
            powers_w,
            margins.no_heat_room,
            missed_match(margins.return_loss_db, station),
            margins.cable_cutoff_hz,
        ).max(axis=(2, 3)),
        by_limit_db=smallest,
        tightest_column=cautious.argmin(axis=2),
        tightest_limit=smallest.argmin(axis=0),
        low_db=smallest.min(axis=0),
        high_db=by_limit[1].min(axis=(0, 2)),
        loss_db=_loss(families, highest_hz.max(), station),
        return_loss_db=margins.return_loss_db.min(axis=2),
        solar_rise_k=np.broadcast_to(margins.contact.solar_rise_k, by_family).max(axis=1),
        allowed_temperature_c=np.broadcast_to(margins.contact.allowed_temperature_c, by_family).min(axis=1),
        direct_current_a=(current_a := np.minimum(direct.cable_a, direct.contact_a)[0]),
        too_much_current=request.dc_current_a > current_a,
        cable_diameter_m=_cable_diameter(scenario),
    )
    return evaluation if request.port is None else _behind_port(evaluation, families.index(request.port))


def harsher(order: Sequence[str], first: str, second: str) -> str:
    """The later of two words in an order that rises."""
    return max(first, second, key=order.index)


def _scenario(request: ChooseRequest) -> Scenario:
    fields = {name: getattr(request, name) for name in Scenario.__struct_fields__}
    installation = known("installation", request.installation, catalogue().installations)
    fields["exposure"] = harsher(EXPOSURES, request.exposure, installation.least_exposure.value)
    fields["vibration"] = harsher(VIBRATIONS, request.vibration, installation.least_vibration.value)
    fields["added_sealing"] = request.added_sealing or installation.taped
    return Scenario(**fields)


def _shares_left(direct: DirectCurrent, request: ChooseRequest) -> np.ndarray:
    """Ends x limits x family: the share of the power allowed that the direct current leaves [1]."""
    shares = {
        "cable": direct_current.heat_share_left(request.dc_current_a, direct.cable_a),
        "contact": direct_current.heat_share_left(request.dc_current_a, direct.contact_a),
        "voltage": direct_current.voltage_share_left(request.dc_voltage_v, direct.peak_v),
    }
    return np.stack([shares[limit] for limit in LIMITS], axis=1)


def _beside_direct_current(margins: Margins, left: np.ndarray) -> Margins:
    """The limits of the power where a direct current has taken its share of them; `left` is by family."""
    left = left[..., None]
    with np.errstate(divide="ignore"):  # nothing left is no room
        cost_db = 10 * np.log10(left)
    return margins._replace(allowed_w=margins.allowed_w * left, by_limit_db=margins.by_limit_db + cost_db[..., None])


def _cable_diameter(scenario: Scenario) -> float | None:
    if scenario.cable is not None:
        return catalogue().cables[scenario.cable].outer_diameter_m.value
    return scenario.cable_diameter_m


def _loss(families: list[str], frequency_hz: float, station: Station) -> np.ndarray:
    """Expected loss of each family's mated pair [dB]."""
    ratings = table_ratings(families, "high")
    reflection = match_of(ratings, frequency_hz, station).reflection
    shares = dissipation(ratings, frequency_hz, station.added_resistance_ohm, station.impedance_ohm)
    return (dissipative_loss(shares.total) + mismatch_loss(reflection))[:, 0]


def _behind_port(evaluation: Evaluation, port: int) -> Evaluation:
    """Every other family sits behind an adapter, and so behind the port's own joint."""
    others = np.arange(len(evaluation.families)) != port
    low, high, loss = evaluation.low_db, evaluation.high_db, evaluation.loss_db
    current_a = evaluation.direct_current_a
    return evaluation._replace(
        low_db=np.where(others, np.minimum(low, low[port]), low),
        high_db=np.where(others, np.minimum(high, high[port]), high),
        loss_db=loss + np.where(others, loss[port], 0.0),
        direct_current_a=np.minimum(current_a, current_a[port]),
        too_much_current=evaluation.too_much_current | evaluation.too_much_current[port],
    )
