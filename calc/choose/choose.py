"""The families for one joint: gates and limits checked, the rest ranked by a stated rule."""

from typing import NamedTuple

import msgspec
import numpy as np

from ..catalogue import catalogue
from ..errors import known
from ..formulas.loss import dissipative_loss, mismatch_loss
from ..numeric.units import engineering
from ..physics.cautions import CAUTIONS
from ..physics.columns import Column, columns
from ..physics.gates import EXPOSURES, GATES, HOUSE, SEALED_TO, VIBRATIONS, family_reasons, gate_table, site_demands
from ..physics.limits import dissipation, match_limit
from ..physics.margins import LIMITS, Margins, evaluate
from ..physics.ratings import table_ratings
from ..physics.scenario import Scenario
from ..physics.station import Station, station_of
from .relax import relaxations
from .requests import ChooseRequest
from .results import Choice, ChooseResult, Rejection, Wear, Weather

__all__ = ["RULE", "choose"]

RULE = (
    "Families that meet every demand are ranked by their smallest cautious margin, to the tenth of a decibel that is"
    " shown; equal tenths are ties."
)
DEMAND_OF_GATE = {
    "te11": "frequency",
    "no_figures": "frequency",
    "customary_frequency": "frequency",
    "receive_only": "use",
    "no_heat_room": "air temperature",
    "immersion": "weather",
    "weather": "weather",
    "vibration": "vibration",
    "wear": "wear",
    "cable_fit": "cable",
    "cold": "cold",
    HOUSE: "house limit",
}
DEMAND_OF_LIMIT = {"heat": "power", "voltage": "power", "match": "match"}
LIMIT_NAMES = {"heat": "Heat", "voltage": "Voltage", "match": "Match"}


class _Evaluated(NamedTuple):
    """Margins [dB] by family; the column and limit that bind."""

    low_db: np.ndarray
    high_db: np.ndarray
    by_limit_db: np.ndarray
    """Limit x family: the smallest over the columns."""
    binding: np.ndarray
    column: np.ndarray
    """Limit x family: the column where it is smallest."""
    loss_db: np.ndarray


class _Judged(NamedTuple):
    """Every family against every demand, ranked, and what it was judged by."""

    choices: list[Choice]
    heads: list[Column]
    power_w: float
    margins: Margins
    port_doubts: list[str]

    @property
    def passing(self) -> list[str]:
        return [choice.family for choice in self.choices if choice.passes]


def choose(request: ChooseRequest) -> ChooseResult:
    """Check every family against every demand. Raises InputError for unknown names."""
    judged = _judged(request)
    edges = {head.id: head.high_hz for head in judged.heads}
    eased = [] if judged.passing else relaxations(request, judged.choices, judged.margins, edges, _passing)
    return ChooseResult(
        columns=judged.heads,
        power_w=judged.power_w,
        choices=sorted(judged.choices, key=lambda choice: choice.family != request.plan),
        passing=judged.passing,
        port_doubts=judged.port_doubts,
        rule=RULE,
        verdict=_verdict(request, judged.choices),
        relaxations=eased,
        cautions=CAUTIONS,
    )


def _passing(request: ChooseRequest) -> list[str]:
    return _judged(request).passing


def _judged(request: ChooseRequest) -> _Judged:
    asked = _settled(request)
    station = station_of(asked)
    heads = columns(request.region, request.bands, request.frequencies_hz)
    families = list(catalogue().interfaces)
    for field in ("port", "plan"):
        if getattr(request, field) is not None:
            known(field, getattr(request, field), catalogue().interfaces)
    power_w = request.power_w if request.use == "transmit" else 0.0
    highest_hz = np.array([head.high_hz for head in heads], dtype=np.float64)
    margins = evaluate(families, highest_hz, np.array([power_w], dtype=np.float64), station)
    evaluated = _evaluated(families, margins, highest_hz, station)
    demands = [site_demands(family, asked) for family in families]
    failed = gate_table(families, demands, highest_hz, np.array([power_w]), station, margins.heat).any(axis=(2, 3))
    if request.port is not None:
        evaluated = _with_port(evaluated, families.index(request.port))
    behind_port = _port_rejections(request, families, failed, evaluated)
    values = [_asked(power_w, highest_hz.max(), asked, *heat) for heat in _temperatures(margins, len(families))]
    heat_gate = [gate.id for gate in GATES].index("no_heat_room")
    choices = []
    for row, family in enumerate(families):
        reasons = family_reasons(family, demands[row])
        rejections = _gate_rejections(failed[:, row], reasons, values[row])
        rejections += _limit_rejections(
            evaluated, row, heads, power_w, request.return_loss_asked_db, bool(failed[heat_gate, row])
        )
        rejections += _room(family, request)
        rejections += behind_port if family != request.port else []
        choices.append(_choice(request, asked, family, row, evaluated, heads, rejections))
    return _Judged(_ranked(choices), heads, power_w, margins, _port_doubts(request, families, failed, demands, values))


def _settled(request: ChooseRequest) -> Scenario:
    """The scenario of the joint: the cable named, and at least what the installation brings with it."""
    fields = {name: getattr(request, name) for name in Scenario.__struct_fields__}
    installation = known("installation", request.installation, catalogue().installations)
    fields["exposure"] = _worse(EXPOSURES, request.exposure, installation.least_exposure.value)
    fields["vibration"] = _worse(VIBRATIONS, request.vibration, installation.least_vibration.value)
    if request.cable is not None:
        cable = known("cable", request.cable, catalogue().cables)
        fields |= {"cable_dielectric": cable.dielectric, "cable_diameter_m": cable.outer_diameter_m.value}
    return Scenario(**fields)


def _worse(order: list[str], one: str, other: str) -> str:
    return max(one, other, key=order.index)


def _evaluated(families: list[str], margins: Margins, highest_hz: np.ndarray, station: Station) -> _Evaluated:
    by_limit = margins.by_limit_db[..., 0]  # ends x limits x family x column
    cautious = np.where(np.isnan(by_limit[0]), -np.inf, by_limit[0])
    smallest = cautious.min(axis=2)
    ratings = table_ratings(families, "high")
    reflection = match_limit(ratings, highest_hz.max(), station).reflection
    shares = dissipation(ratings, highest_hz.max(), station.added_resistance_ohm, station.impedance_ohm)
    return _Evaluated(
        low_db=smallest.min(axis=0),
        high_db=by_limit[1].min(axis=(0, 2)),
        by_limit_db=smallest,
        binding=smallest.argmin(axis=0),
        column=cautious.argmin(axis=2),
        loss_db=(dissipative_loss(shares.total) + mismatch_loss(reflection))[:, 0],
    )


def _with_port(evaluated: _Evaluated, port: int) -> _Evaluated:
    """Every other family sits behind an adapter, and so behind the port's own joint."""
    others = np.arange(evaluated.low_db.size) != port
    return evaluated._replace(
        low_db=np.where(others, np.minimum(evaluated.low_db, evaluated.low_db[port]), evaluated.low_db),
        high_db=np.where(others, np.minimum(evaluated.high_db, evaluated.high_db[port]), evaluated.high_db),
        loss_db=evaluated.loss_db + np.where(others, evaluated.loss_db[port], 0.0),
    )


def _port_doubts(
    request: ChooseRequest, families: list[str], failed: np.ndarray, demands: list, values: list[dict[str, str]]
) -> list[str]:
    if request.port is None:
        return []
    row = families.index(request.port)
    reasons = family_reasons(request.port, demands[row])
    return [rejection.sentence for rejection in _gate_rejections(failed[:, row], reasons, values[row])]


def _temperatures(margins: Margins, count: int) -> list[tuple[float, float]]:
    """By family, the sun's share of the heating [K] and the temperature allowed [°C], in the tightest column."""
    rise, allowed = (
        np.broadcast_to(values, (count, 1)) if np.ndim(values) < 2 else values
        for values in (margins.heat.solar_rise_k, margins.heat.allowed_temperature_c)
    )
    return list(zip(rise.max(axis=1).tolist(), allowed.min(axis=1).tolist(), strict=True))


def _asked(power_w: float, highest_hz: float, scenario: Scenario, sun_k: float, allowed_c: float) -> dict[str, str]:
    """What is asked of a family, for the gates whose own sentence names the limit alone."""
    reach = f" Asked: up to {engineering(float(highest_hz), 'Hz')}."
    heated = scenario.ambient_temperature_c + sun_k
    return {
        **dict.fromkeys(("te11", "no_figures", "customary_frequency"), reach),
        "receive_only": f" Asked: to transmit {engineering(power_w, 'W')}.",
        "no_heat_room": f" Asked: {heated:.0f} °C with the sun; allowed: {allowed_c:.0f} °C.",
        "immersion": f" Asked: {scenario.exposure}.",
    }


def _gate_rejections(failed: np.ndarray, reasons: dict[str, str], values: dict[str, str]) -> list[Rejection]:
    return [
        Rejection(DEMAND_OF_GATE[gate.id], gate.name, gate.hard, reasons[gate.id] + values.get(gate.id, ""))
        for gate, fails in zip(GATES, failed, strict=True)
        if fails
    ]


def _limit_rejections(
    evaluated: _Evaluated,
    row: int,
    heads: list[Column],
    power_w: float,
    return_loss_db: float,
    no_heat_room: bool,
) -> list[Rejection]:
    """The limits a family is over; of heat nothing is said where a gate says that there is no room for it at all."""
    found = []
    for index, limit in enumerate(LIMITS):
        margin = evaluated.by_limit_db[index, row]
        if margin >= 0 or (limit == "heat" and no_heat_room):
            continue
        where = heads[evaluated.column[index, row]].name
        if not np.isfinite(margin):
            over = f"no room under its {limit} limit"
        else:
            if limit == "match":
                figures = f"return loss {return_loss_db + margin:.1f} dB, asked {return_loss_db:g} dB"
            else:
                allowed = float(power_w * 10 ** (margin / 10))
                figures = f"asked {engineering(power_w, 'W')}, allowed {engineering(allowed, 'W')}"
            over = f"{figures}, {-margin:.1f} dB over its {limit} limit"
        found.append(Rejection(DEMAND_OF_LIMIT[limit], LIMIT_NAMES[limit], False, f"On {where}: {over}."))
    return found


def _port_rejections(
    request: ChooseRequest, families: list[str], failed: np.ndarray, evaluated: _Evaluated
) -> list[Rejection]:
    """What every other family is refused for when the port's own joint in front of it can't carry the power."""
    if request.port is None:
        return []
    row, name = families.index(request.port), catalogue().interfaces[request.port].name
    refused = [gate.name for gate, fails in zip(GATES, failed[:, row], strict=True) if fails and gate.hard]
    if refused:
        sentence = f"The port's own {name} joint in front of it is refused: {', '.join(refused)}."
    elif evaluated.low_db[row] < 0:
        over = -evaluated.low_db[row]
        stands = f"is {over:.1f} dB over its limit" if np.isfinite(over) else "has no room"
        sentence = f"The port's own {name} joint in front of it {stands}."
    else:
        return []
    return [Rejection("port", "Port", bool(refused), sentence)]


def _room(family: str, request: ChooseRequest) -> list[Rejection]:
    body = catalogue().interfaces[family].body_diameter_m.value
    if request.largest_diameter_m is None or body <= request.largest_diameter_m:
        return []
    across, free = (f"{length * 1e3:.3g} mm" for length in (body, request.largest_diameter_m))
    return [Rejection("room", "Room", False, f"Its mated body is {across} across; there is room for {free}.")]


def _choice(
    request: ChooseRequest,
    asked: Scenario,
    family: str,
    row: int,
    evaluated: _Evaluated,
    heads: list[Column],
    rejections: list[Rejection],
) -> Choice:
    interface = catalogue().interfaces[family]
    refused = any(rejection.hard for rejection in rejections)
    low, high = float(evaluated.low_db[row]), float(evaluated.high_db[row])
    shown = np.isfinite(low) and not refused
    limit = int(evaluated.binding[row])
    stands = interface.exposure_mated
    good_for = interface.durability_matings.low.value
    return Choice(
        family=family,
        name=interface.name,
        pack=catalogue().pack_of("interfaces", family),
        passes=not rejections,
        rank=None,
        margin_db=low if shown else None,
        margin_high_db=high if shown and np.isfinite(high) else None,
        undecided=bool(shown and low < 0 <= high),
        binding=LIMITS[limit] if shown else None,
        port_binds=bool(evaluated.by_limit_db[limit, row] > low),
        binding_column=heads[evaluated.column[limit, row]].name if shown else None,
        loss_db=float(evaluated.loss_db[row]),
        diameter_m=interface.body_diameter_m.value,
        coupling=interface.coupling.value,
        torque_nm=interface.coupling_torque_nm.low.value,
        needs_adapter=request.port is not None and request.port != family,
        best_in_something=False,
        rejections=rejections,
        wear=Wear(
            needed=asked.matings_per_year * asked.service_life_years,
            good_for=good_for,
            runs_out_after_years=good_for / asked.matings_per_year if asked.matings_per_year > 0 else None,
        ),
        weather=Weather(
            stands=stands, stands_sealed=_worse(EXPOSURES, stands, EXPOSURES[SEALED_TO]), asked=asked.exposure
        ),
    )


def _ranked(choices: list[Choice]) -> list[Choice]:
    """Ranks, the Pareto set and the order shown."""
    passing = [choice for choice in choices if choice.passes]
    tenths = [round(choice.margin_db, 1) for choice in passing]
    ranked = [
        msgspec.structs.replace(
            choice,
            rank=1 + sum(other > tenth for other in tenths),
            best_in_something=not any(_beats(other, choice) for other in passing),
        )
        for choice, tenth in zip(passing, tenths, strict=True)
    ]
    ranked.sort(key=lambda choice: choice.rank)
    rest = [choice for choice in choices if not choice.passes]
    rest.sort(key=lambda choice: len({rejection.demand for rejection in choice.rejections}))
    return ranked + rest


def _beats(one: Choice, other: Choice) -> bool:
    """Whether one is nowhere worse than the other and somewhere better."""

    def merits(choice: Choice) -> tuple[float, ...]:
        return (choice.margin_db, -choice.loss_db, -choice.diameter_m, -choice.torque_nm)

    pairs = list(zip(merits(one), merits(other), strict=True))
    return all(a >= b for a, b in pairs) and any(a > b for a, b in pairs)


def _verdict(request: ChooseRequest, choices: list[Choice]) -> str:
    level = "for receive" if request.use == "receive" else f"at {engineering(request.power_w, 'W')} PEP"
    first = [choice.name for choice in choices if choice.rank == 1]
    if not first:
        return f"Nothing in the catalogue meets every demand {level}."
    count = sum(choice.passes for choice in choices)
    lead = next(choice for choice in choices if choice.rank == 1)
    names = " and ".join([", ".join(first[:-1]), first[-1]] if len(first) > 1 else first)
    passing = f"{count} of {len(choices)} families meet every demand {level}"
    return f"{passing}; most room: {names}, {lead.margin_db:.1f} dB."
